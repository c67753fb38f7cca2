import { describe } from "vitest";
import {
  type BatchInput,
  type Product,
  planApplication,
  planSpreading,
  type SpreadingInput,
} from "../../src/plan/index.ts";
import { readGrade } from "../../src/tank-mix/index.ts";
import { convert, qty, valueIn } from "../../src/units/index.ts";
import { type HandbookCase, planAgrees } from "./harness.ts";

// Published values that the steps of a job give elsewhere, here from the whole job in one call.

const number = (one: HandbookCase, key: string): number => Number(one.inputs[key]?.[0]);
const text = (one: HandbookCase, key: string): string => String(one.inputs[key]?.[0]);

const spread = (
  area: number,
  unit: "ft2" | "ac",
  product: Omit<SpreadingInput["product"], "name">,
  directions: 1 | 2 = 1,
) =>
  planSpreading({
    plot: { kind: "treated-area", treated: { value: area, unit, of: "treated" } },
    spreader: { hopper: qty(50, "lb"), directions },
    product: { name: "Product A", ...product },
  });

describe("jobs with a spreader", () => {
  planAgrees("trade_turfm_bags", (one) => {
    const rate = qty(number(one, "product"), "lb/1000ft2");
    const { bags } = spread(number(one, "area"), "ac", { rate, bag: qty(number(one, "bag"), "lb") });
    return [{ key: "bags", ours: bags?.bags as number, within: 0 }];
  });

  planAgrees("trade_lsu_20", (one) => {
    const amount = qty(number(one, "nutrient"), "lb/1000ft2");
    const rate = { nutrient: "N", amount, contains: { N: number(one, "content") } } as const;
    const { total } = spread(number(one, "length") * number(one, "width"), "ft2", { rate });
    return [{ key: "product", ours: valueIn(total, "lb"), within: 0.005 }];
  });

  planAgrees("gran_vaturf_area", (one) => {
    const rate = qty((1000 * number(one, "product")) / number(one, "on"), "lb/1000ft2");
    return [{ key: "total", ours: spread(number(one, "area"), "ft2", { rate }).total.value, within: 1e-12 }];
  });

  planAgrees("gran_umass_half", (one) => {
    const amount = qty(number(one, "nutrient"), "lb/1000ft2");
    const rate = { nutrient: "N", amount, contains: readGrade(text(one, "grade")) } as const;
    const { hopper } = spread(1000, "ft2", { rate }, 2);
    return [{ key: "per_pass", ours: valueIn(hopper.perDirection, "lb"), within: 1e-12 }];
  });

  planAgrees("fert_tamu_21", (one) => {
    const amount = qty(number(one, "nutrient"), "lb/1000ft2");
    const rate = { nutrient: "N", amount, contains: readGrade(text(one, "grade")) } as const;
    return [{ key: "product", ours: spread(1000, "ft2", { rate }).rate.value, within: 0.005 }];
  });
});

const mixed = (input: Omit<BatchInput, "sprayer" | "tools">) =>
  planApplication({ ...input, sprayer: { tank: qty(500, "gal") }, tools: "us-household" });
const inTank = (one: HandbookCase, rate: Product["rate"], form: "liquid" | "dry") => {
  const size = { kind: "volume", volume: qty(number(one, "tank"), "gal") } as const;
  const [product] = mixed({ size, products: [{ name: "Product A", form, rate } as Product] }).totals.products;
  return product?.amount as { readonly value: number; readonly unit: "fl_oz" };
};

describe("jobs by volume or by count", () => {
  for (const [id, unit, within] of [
    ["tank_ps_300", "lb", 0.5],
    ["tank_ps_20_dry", "oz", 0.05],
    ["tank_ps_10_dry", "oz", 0.05],
  ] as const)
    planAgrees(id, (one) => {
      const amount = inTank(one, qty(number(one, "product_rate"), "lb/100gal"), "dry");
      return [{ key: "product", ours: convert(amount as never, unit as "fl_oz").value, within }];
    });

  planAgrees("tank_ps_300_liq", (one) => {
    const amount = inTank(one, qty(number(one, "product_rate"), "pt/100gal"), "liquid");
    return [{ key: "product", ours: convert(amount, "pt").value, within: 0.5 }];
  });

  planAgrees("tank_il_half_pct", (one) => {
    const rate = { value: number(one, "strength"), unit: "%", basis: "v/v" } as const;
    return [{ key: "product", ours: convert(inTank(one, rate, "liquid"), "fl_oz").value, within: 0.005 }];
  });

  planAgrees("hand_nc_load", (one) => {
    const amount = inTank(one, qty(number(one, "per_gal"), "fl_oz/gal"), "liquid");
    return [{ key: "load", ours: convert(amount, "fl_oz").value, within: 0.05 }];
  });

  planAgrees("hand_pes_tree", (one) => {
    const flow = { caught: qty(number(one, "caught"), "qt"), time: qty(number(one, "time"), "s") };
    const each = { flow, time: qty(number(one, "each"), "s") };
    const plan = mixed({
      size: { kind: "count", count: qty(number(one, "trees"), "tree"), each },
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "fl_oz/gal") }],
    });
    return [
      { key: "per_tree", ours: valueIn(plan.carrierPerCount as never, "qt/tree" as never), within: 0.5 },
      { key: "total", ours: plan.carrier.total.value, within: 0.5 },
    ];
  });
});
