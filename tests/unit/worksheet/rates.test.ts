import { describe, expect, it } from "vitest";
import { type Product, planApplication } from "../../../src/plan/index.ts";
import type { LabelRate } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { fieldCard, type WorksheetOptions, worksheet } from "../../../src/worksheet/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";

const named = "Product A rate";

// The figure that a person can hold against the label, in the label's own words as far as they go.
describe("a product's rate on worksheet and card", () => {
  it.each<[LabelRate, string, WorksheetOptions?]>([
    [qty(1.5, "pt/ac"), "1.5 pt/ac"],
    [qty(2, "fl_oz/1000ft2"), "2 fl oz/1,000 sq ft"],
    [qty(1.5, "pt/ac"), "1.75 L/ha", { units: "metric" }],
    [{ low: qty(1, "pt/ac"), high: qty(2, "pt/ac"), chosen: qty(1.25, "pt/ac") }, "1.25 pt/ac"],
    [{ rate: qty(2, "pt/ac"), per: "broadcast" }, "2 pt/ac"],
    [{ rate: qty(2, "pt/ac"), per: "ground" }, "2 pt/ac of ground"],
    [{ value: 0.25, unit: "%", basis: "v/v" }, "0.25% v/v (by volume)"],
    [qty(8, "fl_oz/100gal"), "8 fl oz/100 gal"],
    [{ parts: 1, to: 100, of: "mix" }, "1 part in 100 parts of mix"],
    [{ parts: 1, to: 100, of: "water" }, "1 part to 100 parts of water"],
    [{ activeIngredient: qty(0.5, "lb/ac"), contains: qty(4, "lb/gal") }, "0.5 lb/ac of active ingredient"],
  ])("%j is %s", (rate, text, options = {}) => {
    const plan = planApplication({
      ...TWO_PRODUCTS,
      products: [{ name: "Product A", form: "liquid", rate } as Product],
    });
    for (const facts of [worksheet(plan, options).summary, fieldCard(plan, options).facts])
      expect(facts.find(({ name }) => name === named)?.value).toBe(text);
  });
});

it("says what a dry product's percentage is of", () => {
  const products = [
    { name: "Product A", form: "dry", rate: { value: 0.5, unit: "%", basis: "w/v" } },
  ] as const;
  const { facts } = fieldCard(planApplication({ ...TWO_PRODUCTS, products }));
  expect(facts.find(({ name }) => name === named)?.value).toBe("0.5% w/v (weight in volume)");
});

describe("the working of a worksheet", () => {
  it("has no heading without a line, as for a dose that cannot be measured", () => {
    const tools = [{ name: "bucket", capacity: qty(1, "gal") }];
    const { steps } = worksheet(planApplication({ ...TWO_PRODUCTS, tools }));
    expect(steps.every(({ lines }) => lines.length > 0)).toBe(true);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => String(i + 1)));
  });
});
