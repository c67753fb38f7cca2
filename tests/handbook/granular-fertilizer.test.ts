import { checkSpreader, spreaderCatch, spreaderRate } from "../../src/output-rate/index.ts";
import {
  activeIngredientRate,
  bagsFor,
  convertNutrient,
  type FertilizerContent,
  fertilizerFor,
  granulesFor,
  type Nutrient,
  nutrientsFrom,
  productRate,
  readGrade,
} from "../../src/tank-mix/index.ts";
import { convert, type MassRate, type Quantity, qty, scaleQuantity, valueIn } from "../../src/units/index.ts";
import { agrees, type Check, publicationErrs, topic } from "./harness.ts";

/** The fertilizer for an amount of nutrient. */
const product = (nutrient: Nutrient, amount: MassRate, contains: FertilizerContent): number =>
  fertilizerFor({ nutrient, amount, contains }).product.value;

/** What so many pounds or kilograms of a fertilizer bring. */
const brought = (nutrient: Nutrient, amount: number, contains: FertilizerContent): number =>
  (nutrientsFrom({ product: qty(amount, "kg"), contains })[nutrient] as Quantity).value;

const converted = (from: Nutrient, to: Nutrient, amount = 1): number =>
  convertNutrient({ amount: qty(amount, "kg"), from, to }).value;

const perSquareFoot = (pounds: number): MassRate => qty(pounds, "lb/1000ft2");

topic("16_granular_fertilizer", () => {
  // A table of pounds per acre as pounds per 100 sq ft, and per 1,000 sq ft in pounds and whole ounces.
  for (const pounds of [100, 700, 800, 1000])
    agrees(`trade_nmsu_${pounds}`, (): Check[] => {
      const rate = qty(pounds, "lb/ac");
      return [
        { key: "per100", ours: convert(rate, "lb/100ft2").value, within: 0.005 },
        { key: "per1000", ours: convert(rate, "lb/1000ft2").value, within: 0.5 / 16 },
      ];
    });

  agrees("trade_turfm_bags", () => {
    const area = { value: 45, unit: "ac", of: "treated" } as const;
    const total = granulesFor({ rate: perSquareFoot(3.6), area });
    return [{ key: "bags", ours: bagsFor({ total, bag: qty(50, "lb") }).bags, within: 0 }];
  });

  agrees("trade_lsu_20", () => {
    const rate = fertilizerFor({ nutrient: "N", amount: perSquareFoot(1), contains: { N: 20 } }).product;
    const caught = spreaderCatch({ target: rate, swath: qty(10, "ft"), distance: qty(100, "ft") });
    return [{ key: "product", ours: valueIn(caught, "lb"), within: 0.005 }];
  });

  agrees("trade_turfm_n", () => [{ key: "n", ours: brought("N", 1250, { N: 5 }), within: 0.05 }]);

  agrees("gran_uf_strip", () => {
    const rate = spreaderRate({ used: qty(20, "lb"), swath: qty(10, "ft"), distance: qty(435, "ft") });
    const active = activeIngredientRate({
      product: rate,
      contains: { value: 20, unit: "%", basis: "w/w" },
    });
    return [
      { key: "rate", ours: rate.value, within: 0.5 },
      { key: "ai", ours: active.value, within: 0.5 },
    ];
  });

  publicationErrs("gran_ext_fireant", "1.7755 is cut to 1.77, where it rounds to 1.78", () => {
    const rate = spreaderRate({ used: qty(3, "oz"), swath: qty(23, "ft"), distance: qty(200, "ft") });
    return [{ key: "rate", ours: rate.value, within: 0.005, right: (43_560 * 0.1875) / 4600 }];
  });

  agrees("gran_cr_drop", () => {
    const rate = spreaderRate({ used: qty(0.5, "lb"), area: { value: 50, unit: "ft2", of: "treated" } });
    return [
      { key: "per100", ours: valueIn(rate, "lb/100ft2"), within: 1e-12 },
      { key: "per1000", ours: valueIn(rate, "lb/1000ft2"), within: 1e-12 },
    ];
  });

  // Held to 5%: both ends of the range are still right, and what is beyond is not.
  agrees("gran_umass_total", () => {
    const target = fertilizerFor({
      nutrient: "N",
      amount: perSquareFoot(1),
      contains: readGrade("20-5-10"),
    }).product;
    const area = { value: 1000, unit: "ft2", of: "treated" } as const;
    const isRight = (pounds: number): boolean =>
      checkSpreader({ used: qty(pounds, "lb"), area, target, limit: qty(5, "%") }).within;
    const tried = Array.from({ length: 101 }, (_, hundredths) => 4.5 + hundredths / 100).filter(isRight);
    return [
      { key: "product", ours: target.value, within: 0.005 },
      { key: "low", ours: Math.min(...tried), within: 0.005 },
      { key: "high", ours: Math.max(...tried), within: 0.005 },
    ];
  });

  agrees("gran_umass_half", () => {
    const { perPass } = checkSpreader({
      used: qty(1, "lb"),
      area: { value: 400, unit: "ft2", of: "treated" },
      target: perSquareFoot(5),
      directions: 2,
    });
    return [{ key: "per_pass", ours: perPass.value, within: 0 }];
  });

  agrees("gran_rutgers_half", () => {
    const { perPass } = checkSpreader({
      used: qty(1, "lb"),
      area: { value: 400, unit: "ft2", of: "treated" },
      target: perSquareFoot(0.9),
      directions: 2,
    });
    return [{ key: "per_pass", ours: perPass.value, within: 0 }];
  });

  agrees("gran_mo_653", () => {
    const caught = spreaderCatch({
      target: qty(40, "lb/ac"),
      swath: qty(10, "in"),
      distance: qty(653, "ft"),
    });
    return [{ key: "divisor", ours: (40 * 10) / valueIn(caught, "oz"), within: 0.5 }];
  });

  agrees("gran_uga_sixteenth", () => {
    const rate = spreaderRate({ used: qty(1, "oz"), swath: qty(12, "in"), distance: qty(340.3, "ft") });
    return [{ key: "rate", ours: rate.value, within: 0.5 }];
  });

  agrees("gran_army_dust", () => {
    const contains = { value: 5, unit: "%", basis: "w/w" } as const;
    const dust = productRate({ activeIngredient: qty(10, "lb/ac"), contains, form: "dry" });
    return [{ key: "product", ours: valueIn(dust as never, "lb/ac" as never), within: 1e-9 }];
  });

  agrees("gran_vaturf_area", () => {
    const rate = perSquareFoot(50 / 6);
    const area = { value: 9000, unit: "ft2", of: "treated" } as const;
    return [{ key: "total", ours: granulesFor({ rate, area }).value, within: 1e-12 }];
  });

  publicationErrs("fert_unl_28", "3.57 is multiplied by 6 after it was rounded: 21.43", () => {
    const rate = fertilizerFor({
      nutrient: "N",
      amount: perSquareFoot(1),
      contains: readGrade("28-3-6"),
    }).product;
    const area = { value: 6000, unit: "ft2", of: "treated" } as const;
    return [
      { key: "product", ours: rate.value, within: 0.005, right: 1 / 0.28 },
      { key: "total", ours: granulesFor({ rate, area }).value, within: 0.005, right: 6 / 0.28 },
    ];
  });

  agrees("fert_tamu_21", () => [
    { key: "product", ours: product("N", perSquareFoot(1), readGrade("21-0-0")), within: 0.005 },
  ]);

  agrees("fert_psu_kmag", () => [
    { key: "product", ours: product("K2O", perSquareFoot(2), readGrade("0-0-22")), within: 0.05 },
  ]);

  agrees("fert_nsw_p", () => [
    { key: "product", ours: product("P", qty(20, "kg/ha"), { P: 8.8 }), within: 0.5 },
  ]);

  agrees("fert_nsw_super", () => [
    { key: "p", ours: brought("P", 125, readGrade("0:8.8:0:11", { as: "elements" })), within: 0.5 },
  ]);

  agrees("fert_nz_46", () => [
    { key: "product", ours: product("N", qty(50, "kg/ha"), { N: 46 }), within: 0.5 },
  ]);

  agrees("fert_ie_bags", () => {
    const compound = readGrade("18-6-12", { as: "elements" });
    return [
      { key: "can_n", ours: brought("N", 50, { N: 27.5 }), within: 0.05 },
      { key: "n", ours: brought("N", 50, compound), within: 0.05 },
      { key: "p", ours: brought("P", 50, compound), within: 0.05 },
      { key: "k", ours: brought("K", 50, compound), within: 0.05 },
    ];
  });

  agrees("fert_rb209_20", () => {
    const compound = readGrade("20:10:10");
    return [
      { key: "n", ours: brought("N", 1000, compound), within: 1e-9 },
      { key: "p2o5", ours: brought("P2O5", 1000, compound), within: 1e-9 },
      { key: "k2o", ours: brought("K2O", 1000, compound), within: 1e-9 },
    ];
  });

  agrees("fert_turfai_units", () => [
    { key: "per_area", ours: convert(qty(200, "kg/ha"), "g/m2").value, within: 1e-12 },
    { key: "product", ours: product("N", qty(200, "kg/ha"), { N: 8 }), within: 1e-9 },
  ]);

  agrees("fert_icl_35", () => {
    const spread = convert(qty(35, "g/m2"), "kg/ha");
    const { N } = nutrientsFrom({ product: spread, contains: readGrade("14-0-0") });
    return [
      { key: "kg_ha", ours: spread.value, within: 1e-12 },
      { key: "n", ours: (N as Quantity).value, within: 1e-9 },
    ];
  });

  agrees("fert_maine_bag", () => {
    const contains = readGrade("5-10-15");
    return [
      { key: "n", ours: brought("N", 80, contains), within: 1e-12 },
      { key: "p2o5", ours: brought("P2O5", 80, contains), within: 1e-12 },
      { key: "k2o", ours: brought("K2O", 80, contains), within: 1e-12 },
    ];
  });

  agrees("fert_maine_swap", () => {
    const { N } = nutrientsFrom({ product: perSquareFoot(40), contains: readGrade("5-10-10") });
    return [{ key: "product", ours: product("N", N as MassRate, { N: 8 }), within: 1e-12 }];
  });

  agrees("fert_illinois_bag", () => [
    { key: "n", ours: brought("N", 10, readGrade("5-10-5")), within: 1e-12 },
  ]);

  agrees("fert_vt_to_element", () => [{ key: "ca", ours: converted("CaO", "Ca"), within: 0.00005 }]);

  // Atomic weights: O 15.999, P 30.974, K 39.098, Mg 24.305 (IUPAC, 2021, abridged).
  publicationErrs(
    "fert_vt_p_mg",
    "with today's atomic weights P is 0.4364 of P2O5, K 0.83015 of K2O and Mg 0.6030 of MgO",
    () => [
      {
        key: "p",
        ours: converted("P2O5", "P"),
        within: 0.00005,
        right: (2 * 30.974) / (2 * 30.974 + 5 * 15.999),
      },
      {
        key: "k",
        ours: converted("K2O", "K"),
        within: 0.00005,
        right: (2 * 39.098) / (2 * 39.098 + 15.999),
      },
      { key: "mg", ours: converted("MgO", "Mg"), within: 0.00005, right: 24.305 / (24.305 + 15.999) },
    ],
  );

  publicationErrs(
    "fert_vt_to_oxide",
    "with today's atomic weights P is multiplied by 2.2913 and K by 1.2046",
    () => [
      {
        key: "p2o5",
        ours: converted("P", "P2O5"),
        within: 0.00005,
        right: (2 * 30.974 + 5 * 15.999) / (2 * 30.974),
      },
      {
        key: "k2o",
        ours: converted("K", "K2O"),
        within: 0.00005,
        right: (2 * 39.098 + 15.999) / (2 * 39.098),
      },
    ],
  );

  agrees("fert_vt_kcl", () => [{ key: "k2o", ours: converted("K", "K2O", 49.8), within: 0.5 }]);

  agrees("fert_lmi_oxides", () => [
    { key: "p2o5", ours: converted("P", "P2O5"), within: 0.005 },
    { key: "k2o", ours: converted("K", "K2O"), within: 0.05 },
    { key: "mgo", ours: converted("Mg", "MgO"), within: 0.005 },
    { key: "so3", ours: converted("S", "SO3"), within: 0.05 },
    { key: "cao", ours: converted("Ca", "CaO"), within: 0.05 },
  ]);

  agrees("fert_ng_bags", () => {
    const bag = qty(50, "kg");
    const bags = (contains: FertilizerContent): number => {
      const { product: total } = fertilizerFor({ nutrient: "N", amount: qty(60, "kg"), contains });
      return bagsFor({ total, bag }).bags;
    };
    const sulfate = { N: 21, S: 24 };
    const six = scaleQuantity(bag, bags(sulfate));
    return [
      { key: "bags", ours: bags(readGrade("15-15-15")), within: 0 },
      { key: "as_bags", ours: bags(sulfate), within: 0 },
      { key: "s", ours: brought("S", six.value, sulfate), within: 1e-9 },
    ];
  });

  agrees("fert_pe_dap", () => {
    const { product: dap, brings } = fertilizerFor({
      nutrient: "P2O5",
      amount: qty(100, "kg/ha"),
      contains: readGrade("18-46-0"),
    });
    return [
      { key: "product", ours: dap.value, within: 0.5 },
      { key: "n", ours: (brings.N as Quantity).value, within: 0.5 },
    ];
  });

  agrees("fert_pe_urea", () => [
    { key: "urea", ours: product("N", qty(81, "kg/ha"), { N: 46 }), within: 0.5 },
    { key: "kcl", ours: product("K2O", qty(80, "kg/ha"), { K2O: 60 }), within: 0.5 },
  ]);

  agrees("fert_bo_maize", () => [
    { key: "an", ours: product("N", qty(115, "kg/ha"), readGrade("34-00-00")), within: 0.5 },
    { key: "tsp", ours: product("P2O5", qty(90, "kg/ha"), readGrade("00-46-00")), within: 0.5 },
    { key: "kcl", ours: product("K2O", qty(75, "kg/ha"), readGrade("00-00-60")), within: 0.5 },
  ]);

  agrees("fert_mx_dap", () => {
    const dap = readGrade("18-46-0");
    return [
      { key: "n", ours: brought("N", 150, dap), within: 1e-9 },
      { key: "p2o5", ours: brought("P2O5", 150, dap), within: 1e-9 },
      { key: "urea_n", ours: brought("N", 400, { N: 46 }), within: 1e-9 },
    ];
  });
});
