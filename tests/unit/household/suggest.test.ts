import { describe, expect, it } from "vitest";
import { type MeasureOutInput, type Suggestion, suggestMeasures } from "../../../src/household/index.ts";
import { qty } from "../../../src/units/index.ts";

/** The sentences of what is suggested. */
const said = (input: MeasureOutInput): string[] => suggestMeasures(input).map(({ message }) => message);

describe("what is suggested", () => {
  it("is said under a key, with the figures of the sentence", () => {
    const ask = { amount: qty(0.05, "tsp"), tools: "us-cups-and-spoons", rule: "never-over" } as const;
    const found = suggestMeasures({ ...ask, labelPermitsDilution: true });
    // 1/8 teaspoon in a cup, of which 19 teaspoons of 48; two and a half times the batch takes 1/8 teaspoon.
    expect(found.map(({ key, figures, message }: Suggestion) => ({ key, figures, message }))).toEqual([
      {
        key: "suggest-tool",
        figures: { tool: "1 mL syringe" },
        message: "Use this tool as well: 1 mL syringe.",
      },
      {
        key: "suggest-stock",
        figures: { product: qty(0.125, "tsp"), stock: qty(1, "cup"), taken: qty(19 / 48, "cup") },
        message:
          "Dilute it first: put 1/8 teaspoon of product in a measure, add water to 1 cup and stir. Your dose is 0.396 cups of that.",
      },
      {
        key: "suggest-batch",
        figures: { amount: qty(0.125, "tsp"), given: qty(0.05, "tsp") },
        message: "Mix a batch that takes 1/8 teaspoon of product instead of 0.05 tsp.",
      },
    ]);
  });

  it("is a load of half the size last of all, as of less", () => {
    const tools = [{ name: "spoon", capacity: qty(1, "tsp") }];
    const ask = { amount: qty(2, "tsp"), tools, rule: "never-over", maxScoops: 1 } as const;
    // Two teaspoons are 9.86 mL (NIST Handbook 44 (2024), Appendix C): 9.5 mL are 3.6 % under.
    expect(suggestMeasures(ask)).toMatchObject([
      { kind: "tool", tool: { name: "10 mL syringe" } },
      { kind: "batch", times: 0.5 },
    ]);
    // A little more than half.
    expect(suggestMeasures({ ...ask, amount: qty(1.99, "tsp") }).map(({ kind }) => kind)).toEqual([
      "batch",
      "tool",
    ]);
  });

  it("is of two tools that take as many scoops the one that comes closer", () => {
    const tools = [{ name: "drum", capacity: qty(500, "L") }];
    const ask = { amount: qty(4.5, "mL"), tools, rule: "nearest", limitPercent: 2.5 } as const;
    // 7 × 0.625 mL are 2.8 % under, 4.4 mL and 4.6 mL 2.2 % off, and 4.5 mL is a mark of the 10 mL syringe.
    expect(said(ask)[0]).toBe("Use this tool as well: 10 mL syringe.");
  });

  it("is a load without a tank, and a batch where the load is not known", () => {
    const ask = { amount: qty(0.117, "tsp"), tools: "us-spoons", rule: "never-over" } as const;
    expect(said({ ...ask, load: qty(0.41, "gal") })[0]).toBe("Mix 0.44 gal instead of 0.41 gal.");
    expect(said({ ...ask, tank: qty(1, "gal") })[0]).toBe(
      "Mix a batch that takes 1/8 teaspoon of product instead of 0.117 tsp.",
    );
  });

  it("is rounded down where the load is smaller", () => {
    // 16 tablespoons are 8 fl oz, for 3.04 L of 19 L.
    const ask = {
      amount: qty(50, "fl_oz"),
      tools: "us-spoons",
      rule: "never-over",
      load: qty(19, "L"),
    } as const;
    expect(said(ask).at(-1)).toBe("Mix 3 L instead of 19 L.");
  });
});
