import { describe, expect, it } from "vitest";
import { type MixInput, type PlanInput, planApplication, planMix } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const MIX: MixInput = {
  area: { value: 0.25, unit: "ac", of: "treated" },
  rate: qty(20, "gal/ac"),
  sprayer: { tank: qty(4, "gal") },
  products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
};

const bad = (change: object) => () => planMix({ ...MIX, ...change } as MixInput);

describe("planMix", () => {
  it("is what a plan of the same job has", () => {
    const input: PlanInput = {
      plot: {
        kind: "row-bands",
        rows: 12,
        rowLength: qty(90, "ft"),
        bandWidth: qty(2, "ft"),
        rowSpacing: qty(5, "ft"),
      },
      calibration: { kind: "strip", used: qty(40, "fl_oz"), swath: qty(2, "ft"), distance: qty(340, "ft") },
      sprayer: { tank: qty(1, "gal"), workingFill: qty(3, "qt"), lineVolume: qty(6, "fl_oz") },
      reserve: { percent: 5 },
      split: "whole-rows",
      products: [
        { name: "Product A", form: "liquid", rate: qty(3, "fl_oz/1000ft"), formulation: "EC" },
        {
          name: "Product B",
          form: "dry",
          rate: { rate: qty(8, "oz/ac"), per: "ground" },
          formulation: "WP",
          inSolubleBag: true,
        },
      ],
      tools: "us-spoons",
    };
    const { area, rate, carrier, loads, mixingOrder, totals, leftover } = planApplication(input);
    const { treated, ground, rowLength } = area;
    const mix = planMix({
      area: treated,
      ...(ground && { ground }),
      ...(rowLength && { rowLength }),
      rate,
      sprayer: input.sprayer,
      reserve: { percent: 5 },
      products: input.products as MixInput["products"],
      split: { pieces: 12 },
    });
    expect(mix.loads.length).toBeGreaterThan(1);
    expect(mix).toEqual({
      carrier,
      loads: loads.map(({ products, ...load }) => ({
        ...load,
        products: products.map(({ measured: _, ...share }) => share),
      })),
      mixingOrder,
      totals,
      leftover,
    });
  });

  it("splits a mix into full tanks, equal loads or whole pieces, by hand", () => {
    // 0.25 ac at 20 gal/ac is 5 gal; 2 pt/ac is 0.5 pt = 8 fl oz.
    const amounts = (split?: MixInput["split"]) =>
      planMix({ ...MIX, ...(split && { split }) }).loads.map(({ carrier, products }) => [
        carrier.value,
        products[0]?.amount.value,
      ]);
    for (const split of [undefined, "full-then-part"] as const)
      expect(amounts(split)).toEqual([
        [4, 6.4],
        [1, 1.6],
      ]);
    expect(amounts("equal")).toEqual([
      [2.5, 4],
      [2.5, 4],
    ]);
    expect(amounts({ pieces: 5 })).toEqual([
      [3, 4.8],
      [2, 3.2],
    ]);
  });

  it("says how many pieces a load is for, and only where the mix is split by them", () => {
    const fields = (split: MixInput["split"]) => planMix({ ...MIX, split }).loads.map(Object.keys);
    for (const load of fields("equal")) expect(load).not.toContain("pieces");
    for (const load of fields({ pieces: 5 })) expect(load).toContain("pieces");
  });

  it("takes the mix that stays in the lines along with the first load, by hand", () => {
    // 5 gal on 5 rows and 1 gal in the lines: 3 rows of 1 gal fit a tank of 4 gal beside the lines' gallon.
    const sprayer = { tank: qty(4, "gal"), lineVolume: qty(1, "gal") };
    const { loads } = planMix({ ...MIX, sprayer, split: { pieces: 5 } });
    expect(loads.map(({ carrier }) => carrier.value)).toEqual([4, 2]);
  });

  it("refuses what a mix doesn't need, what it lacks, and products of one name, each at its place", () => {
    const product = MIX.products[0];
    expectRefused(bad({ products: [{ ...product, label: {} }] }), "unknown-field", "products[0].label");
    expectRefused(bad({ tools: "us-spoons" }), "unknown-field", "tools");
    expectRefused(bad({ products: [] }), "too-few", "products");
    const many = Array.from({ length: 101 }, (_, i) => ({ ...product, name: `Product ${i}` }));
    expectRefused(bad({ products: many }), "out-of-range", "products");
    expect(bad({ products: [product, { ...product, name: "ProductA" }] })).not.toThrow();
    expectRefused(
      bad({ products: [product, { ...product, name: " product  a" }] }),
      "conflict",
      "products[1].name",
    );
    expectRefused(bad({ split: "whole-rows" }), "unknown-choice", "split");
    expectRefused(bad({ split: { pieces: 0 } }), "out-of-range", "split.pieces");
    expectRefused(bad({ split: [4] }), "unknown-choice", "split");
    expectRefused(bad({ area: { value: 1, unit: "ac", of: "ground" } }), "wrong-area", "area");
    expectRefused(bad({ products: [{ ...product, rate: qty(1, "fl_oz/1000ft") }] }), "missing", "rowLength");
    const perGround = { rate: qty(1, "pt/ac"), per: "ground" };
    expectRefused(bad({ products: [{ ...product, rate: perGround }] }), "missing", "ground");
    expectRefused(
      bad({ products: [{ ...product, rate: qty(1, "oz/ac") }] }),
      "wrong-dimension",
      "products[0].rate",
    );
    expectRefused(
      bad({ products: [{ ...product, rate: qty(9000, "gal/ac") }] }),
      "conflict",
      "products[0].rate",
    );
    expectRefused(bad({ area: { value: 9e4, unit: "ac", of: "treated" } }), "out-of-range", "area");
    const least = { tank: qty(4, "gal"), leastLoad: qty(3, "gal") };
    expectRefused(bad({ sprayer: least }), "conflict", "sprayer.leastLoad");
    expectRefused(bad({ split: { pieces: 1 } }), "conflict", "split");
  });
});
