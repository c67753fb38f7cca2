import { expect, it } from "vitest";
import {
  carrierFor,
  productAmount,
  productInLoads,
  productRate,
  type SingleRate,
  splitLoads,
} from "../../src/tank-mix/index.ts";
import { convert, qty, type TreatedArea, type Unit, type Volume, valueIn } from "../../src/units/index.ts";
import { agrees, type Check, type HandbookCase, publicationErrs, topic } from "./harness.ts";

const input = (one: HandbookCase, key: string): number => one.inputs[key]?.[0] as number;
const list = (one: HandbookCase, key: string): readonly number[] => one.inputs[key]?.[0] as readonly number[];
const treated = (value: number, unit: TreatedArea["unit"]): TreatedArea => ({ value, unit, of: "treated" });
const percent = (value: number) => ({ value, unit: "%", basis: "v/v" }) as const;

/** A product's amount in a mix, in the unit that was printed. */
function amountIn(
  unit: Unit,
  rate: SingleRate,
  form: "liquid" | "dry",
  carrier: number,
  carrierUnit: "gal" | "fl_oz" = "gal",
): number {
  return valueIn(productAmount({ rate, form, carrier: qty(carrier, carrierUnit) }).amount, unit as never);
}

/** A row of the table that gives pints per acre for a content in lb/gal and rates of active ingredient in lb/acre. */
function pintsPerAcre(one: HandbookCase, within: readonly number[]): (Check & { right: number })[] {
  const content = input(one, "concentration");
  return list(one, "ai_rates").map((rate, i) => ({
    key: `at_${rate}`,
    ours: valueIn(
      productRate({ activeIngredient: qty(rate, "lb/ac"), contains: qty(content, "lb/gal"), form: "liquid" }),
      "pt/ac" as never,
    ),
    // Eight pints to the gallon.
    right: (8 * rate) / content,
    within: within[i] as number,
  }));
}

const ROD = 16.5 ** 2; // A square rod in square feet.

/** A row of the table that gives mL per square rod and per 1,000 ft². */
function millilitres(one: HandbookCase, within: readonly [number, number]): (Check & { right: number })[] {
  const [rate, content] = [input(one, "ai_rate"), input(one, "concentration")];
  const product = productRate({
    activeIngredient: qty(rate, "lb/ac"),
    contains: qty(content, "lb/gal"),
    form: "liquid",
  });
  // 231 cubic inches of 2.54 cm to the gallon.
  const perSquareFoot = ((rate / content) * 231 * 2.54 ** 3) / 43560;
  return [
    {
      key: "per_rod2",
      ours: valueIn(product, "mL/ft2" as never) * ROD,
      right: perSquareFoot * ROD,
      within: within[0],
    },
    {
      key: "per_1000",
      ours: valueIn(product, "mL/1000ft2" as never),
      right: perSquareFoot * 1000,
      within: within[1],
    },
  ];
}

/** A row of the table that gives grams per square rod and per 1,000 ft². The rod column is cut, not rounded. */
function grams(one: HandbookCase): Check[] {
  const product = productRate({
    activeIngredient: qty(input(one, "ai_rate"), "lb/ac"),
    contains: { value: input(one, "ai_fraction"), unit: "%", basis: "w/w" },
    form: "dry",
  });
  return [
    { key: "per_rod2", ours: valueIn(product, "g/ft2" as never) * ROD, within: 0.1 },
    { key: "per_1000", ours: valueIn(product, "g/1000ft2" as never), within: 0.5 },
  ];
}

/** A row of the table that gives product per 100 gal for active ingredient per 100 gal. */
function per100Gallons(
  one: HandbookCase,
  form: "liquid" | "dry",
  within: number,
): (Check & { right: number })[] {
  const strength = input(one, "strength");
  return list(one, "ai_wanted").map((wanted) => ({
    key: `for_${wanted}lb`,
    ours: amountIn(
      form === "liquid" ? "gal" : "lb",
      {
        activeIngredient: qty(wanted, "lb/100gal"),
        contains: form === "liquid" ? qty(strength, "lb/gal") : { value: strength, unit: "1", basis: "w/w" },
      },
      form,
      100,
    ),
    right: wanted / strength,
    within,
  }));
}

topic("07_tank_mix", () => {
  agrees("tank_crc_partial", (one) => {
    const rate = qty(input(one, "rate"), "gal/ac");
    const mix = carrierFor({ rate, area: treated(input(one, "area"), "ac") }).total;
    const product = productAmount({
      rate: qty(input(one, "product_rate"), "lb/ac"),
      form: "dry",
      carrier: mix,
      carrierRate: rate,
    });
    return [
      { key: "mix", ours: mix.value, within: 0.05 },
      { key: "product", ours: valueIn(product.amount, "lb" as never), within: 0.05 },
    ];
  });

  agrees("tank_ps_300", (one) => [
    { key: "product", ours: amountIn("lb", qty(2, "lb/100gal"), "dry", input(one, "tank")), within: 0 },
  ]);
  for (const id of ["tank_ps_20_dry", "tank_ps_10_dry"]) {
    agrees(id, (one) => [
      { key: "product", ours: amountIn("oz", qty(2, "lb/100gal"), "dry", input(one, "tank")), within: 1e-9 },
    ]);
  }
  agrees("tank_ps_300_liq", (one) => [
    { key: "product", ours: amountIn("pt", qty(2, "pt/100gal"), "liquid", input(one, "tank")), within: 0 },
  ]);

  agrees("tank_mu_liquid", (one) => {
    const carrierRate = qty(input(one, "rate"), "gal/ac");
    const tank = qty(input(one, "tank"), "gal");
    const rate = {
      activeIngredient: qty(input(one, "ai_rate"), "lb/ac"),
      contains: qty(input(one, "concentration"), "lb/gal"),
    };
    const product = productRate({ ...rate, form: "liquid" });
    const { amount } = productAmount({ rate, form: "liquid", carrier: tank, carrierRate });
    return [
      { key: "product_gal", ours: valueIn(product, "gal/ac" as never), within: 0.0005 },
      { key: "product_pt", ours: valueIn(product, "pt/ac" as never), within: 0.05 },
      { key: "acres", ours: tank.value / carrierRate.value, within: 0 },
      { key: "per_tank_pt", ours: valueIn(amount, "pt" as never), within: 0.5 },
      // 9.375 is cut to 9.37.
      { key: "per_tank_gal", ours: valueIn(amount, "gal" as never), within: 0.005 },
    ];
  });

  agrees("tank_ca_4tanks", (one) => {
    const { total } = carrierFor({
      rate: qty(input(one, "rate"), "L/ha"),
      area: treated(input(one, "area"), "ha"),
    });
    const { count } = splitLoads({ total, tank: qty(input(one, "tank"), "L"), split: "full-then-part" });
    return [
      { key: "mix", ours: total.value, within: 0 },
      { key: "tanks", ours: count, within: 0 },
    ];
  });

  agrees("tank_alberta_total", (one) => {
    const { total } = carrierFor({
      rate: qty(input(one, "rate"), "L/ac"),
      area: treated(input(one, "area"), "ac"),
    });
    expect(splitLoads({ total, tank: qty(input(one, "tank"), "L"), split: "equal" }).count).toBe(1);
    return [{ key: "mix", ours: total.value, within: 0 }];
  });

  agrees("tank_army_gal", (one) => {
    const area = input(one, "length") * input(one, "width");
    const { total } = carrierFor({
      rate: qty(input(one, "rate"), "gal/1000ft2"),
      area: treated(area, "ft2"),
    });
    return [
      { key: "area", ours: area, within: 0 },
      { key: "mix", ours: total.value, within: 0 },
    ];
  });

  agrees("tank_army_emulsion", (one) => {
    const rate = productRate({
      activeIngredient: qty(input(one, "ai_rate"), "lb/ac"),
      contains: { value: input(one, "finished_strength"), unit: "%", basis: "w/w" },
      density: qty(input(one, "density"), "lb/gal"),
      form: "liquid",
    });
    return [{ key: "volume", ours: valueIn(rate, "gal/ac" as never), within: 0.05 }];
  });

  agrees("tank_il_half_pct", (one) => [
    {
      key: "product",
      ours: amountIn("fl_oz", percent(input(one, "strength")), "liquid", input(one, "tank")),
      within: 1e-9,
    },
  ]);

  agrees("tank_okc_gal1000", (one) => {
    const { sprayed } = carrierFor({ rate: qty(input(one, "rate"), "gal/ac"), area: treated(1000, "ft2") });
    return [{ key: "rate_1000", ours: sprayed.value, within: 0.005 }];
  });

  agrees("tank_okc_oz1000", (one) => [
    {
      key: "product_1000",
      ours: convert(qty(input(one, "product_rate"), "pt/ac"), "fl_oz/1000ft2").value,
      within: 0.05,
    },
  ]);

  agrees("tank_okc_order", (one) => {
    const carrierRate = qty(40, "gal/ac");
    const carrier = carrierFor({ rate: carrierRate, area: treated(input(one, "area"), "ac") }).total;
    const { amount } = productAmount({
      rate: qty(input(one, "product_rate"), "pt/ac"),
      form: "liquid",
      carrier,
      carrierRate,
    });
    return [{ key: "order", ours: valueIn(amount, "gal" as never), within: 0.005 }];
  });

  agrees("hand_slides", (one) => {
    const { amount } = productAmount({
      rate: qty(input(one, "product_rate"), "qt/ac"),
      form: "liquid",
      carrier: qty(input(one, "tank"), "gal"),
      carrierRate: qty(input(one, "rate"), "gal/ac"),
    });
    return [
      { key: "product", ours: valueIn(amount, "fl_oz" as never), within: 0.05 },
      { key: "product_ml", ours: valueIn(amount, "mL" as never), within: 0.5 },
      // 1.6 tablespoons printed as "about 2": a quarter over the rate if it is measured so.
      { key: "product_tbsp", ours: valueIn(amount, "tbsp" as never), within: 0.5 },
    ];
  });

  publicationErrs("hand_nc_perGal", "1.0667 is cut to 1.06, and would round to 1.07", (one) => [
    {
      key: "per_gal",
      ours: productAmount({
        rate: qty(input(one, "product_rate"), "fl_oz/ac"),
        form: "liquid",
        carrier: qty(1, "gal"),
        carrierRate: qty(input(one, "rate"), "gal/ac"),
      }).strength.value,
      right: 8 / 7.5,
      within: 0.005,
    },
  ]);

  agrees("hand_nc_load", (one) => [
    {
      key: "load",
      ours: amountIn("fl_oz", qty(input(one, "per_gal"), "fl_oz/gal"), "liquid", input(one, "tank")),
      within: 0.05,
    },
    // The sheet takes a fluid ounce as two metric tablespoons, 30 mL, and goes on from its printed 3.2.
    { key: "load_ml", ours: convert(qty(2 * 3.2, "metric_tbsp"), "mL").value, within: 0.5 },
  ]);

  for (const id of ["pct_modot_5_1gal", "pct_modot_10_1gal", "pct_modot_6_2gal", "pct_modot_8_1gal"]) {
    agrees(id, (one) => [
      {
        key: "product",
        ours: amountIn("fl_oz", percent(input(one, "strength")), "liquid", input(one, "mix"), "fl_oz"),
        within: 0.05,
      },
    ]);
  }
  for (const id of ["pct_modot_5_1.5pt", "pct_modot_8_1.5pt"]) {
    publicationErrs(id, "the 1.5-pint column is scaled wrongly on several rows", (one) => [
      {
        key: "product",
        ours: amountIn("fl_oz", percent(input(one, "strength")), "liquid", input(one, "mix"), "fl_oz"),
        right: (input(one, "mix") * input(one, "strength")) / 100,
        within: 0.05,
      },
    ]);
  }

  const tenth = Array<number>(6).fill(0.05);
  for (const id of ["pnw_pints_2.0", "pnw_pints_3.34", "pnw_pints_4.0", "pnw_pints_5.0", "pnw_pints_6.7"]) {
    agrees(id, (one) => pintsPerAcre(one, tenth));
  }
  // This row is printed in quarter pints; an eighth of a pint is half of one.
  agrees("pnw_pints_2.64", (one) => pintsPerAcre(one, Array<number>(6).fill(0.125)));
  agrees("pnw_pints_6.0", (one) => pintsPerAcre(one, [0.005, 0.05, 0.05, 0.005, 0.05, 0.05]));
  publicationErrs("pnw_pints_7.0", "0.857 pints is printed as 0.87", (one) =>
    pintsPerAcre(one, [0.005, 0.005, 0.005, 0.005, 0.05, 0.05]),
  );

  for (const id of ["pnw_ml_0.67", "pnw_ml_1.0", "pnw_ml_2.0"]) {
    agrees(id, (one) => millilitres(one, [0.5, 0.5]));
  }
  // The rod column of this row is printed in half millilitres.
  agrees("pnw_ml_7.0", (one) => millilitres(one, [0.25, 0.5]));
  publicationErrs("pnw_ml_2.5", "9.46 mL per square rod is printed as 10", (one) =>
    millilitres(one, [0.5, 0.5]),
  );
  for (const id of ["pnw_g_70", "pnw_g_50", "pnw_g_20"]) agrees(id, grams);

  for (const id of ["nev_1.5EC", "nev_4EC", "nev_8EC"]) {
    agrees(id, (one) => per100Gallons(one, "liquid", 5e-7));
  }
  publicationErrs(
    "nev_6EC",
    "the last two cells of the 6 lb/gal row repeat the 8 lb/gal row: right are 2 qt and 3 1/3 qt",
    (one) => per100Gallons(one, "liquid", 5e-7),
  );
  for (const id of ["nev_15WP", "nev_40WP"]) agrees(id, (one) => per100Gallons(one, "dry", 5e-7));
  for (const id of ["nev_2.5pct_dust", "nev_5pct_dust"]) agrees(id, (one) => per100Gallons(one, "dry", 0.5));

  agrees("trade_uga_pct", (one) => {
    const { amount } = productAmount({
      rate: qty(input(one, "rate"), "gal/ac"),
      form: "liquid",
      carrier: qty(100, "gal"),
      carrierRate: qty(input(one, "carrier"), "gal/ac"),
    });
    return [{ key: "percent", ours: valueIn(amount as Volume, "gal"), within: 0.005 }];
  });
  it("gives a printed load the same whether it is worked out alone or shared out of the whole job", () => {
    const loads = [{ carrier: qty(20, "gal") }, { carrier: qty(10, "gal") }];
    const { amount } = productAmount({ rate: qty(2, "lb/100gal"), form: "dry", carrier: qty(30, "gal") });
    // tank_ps_20_dry and tank_ps_10_dry print 6.4 and 3.2 ounces.
    expect(productInLoads({ amount, loads }).amounts).toEqual([qty(6.4, "oz"), qty(3.2, "oz")]);
  });
});
