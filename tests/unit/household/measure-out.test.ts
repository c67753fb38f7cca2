import { describe, expect, it } from "vitest";
import {
  type MeasureOutInput,
  type MeasuringTool,
  measureOut,
  type Suggestion,
  suggestMeasures,
  toolSet,
} from "../../../src/household/index.ts";
import { convert, qty, type Volume } from "../../../src/units/index.ts";
import { measureOut as measureOutLines } from "../../../src/working/index.ts";
import { HOUSEHOLD_WORDS } from "../../../src/worksheet/words/household.ts";
import { Rational } from "../../helpers/rational.ts";
import { expectLinesTrue } from "../../helpers/working.ts";
import { faultOf } from "./fault.ts";

/** The parts as a person reads them: "2 × tablespoon + 1 × 10 mL syringe to 4.5". */
function taken(input: MeasureOutInput): string {
  const dose = measureOut(input);
  const parts = (dose.ok ? dose : dose.best)?.parts ?? [];
  return parts
    .map(({ count, tool, each }) => `${count} × ${tool.name}${each ? ` to ${each.value}` : ""}`)
    .join(" + ");
}

const spoons = "us-spoons";

/** What kind of thing is suggested, and the tool where it is one. */
function suggested(input: MeasureOutInput): string[] {
  return suggestMeasures(input).map((one: Suggestion) => (one.kind === "tool" ? one.tool.name : one.kind));
}

const acre = { value: 0.25, unit: "ac", of: "treated" } as const;

describe("measureOut", () => {
  it("measures what spoons measure exactly", () => {
    const dose = measureOut({ amount: qty(1.5, "fl_oz"), tools: spoons, rule: "never-over" });
    expect(dose).toEqual({
      ok: true,
      parts: [{ tool: toolSet(spoons)[4], count: 3, amount: qty(3, "tbsp") }],
      measured: qty(1.5, "fl_oz"),
      error: qty(0, "fl_oz"),
      errorPercent: 0,
      scoops: 3,
    });
  });

  // A dose of 1.6 tablespoons printed as "about 2" is 25 % over the label: the reason for "never over".
  it("never rounds 1.6 tablespoons up to 2", () => {
    const input = { amount: qty(1.6, "tbsp"), tools: spoons, rule: "never-over" } as const;
    expect(taken(input)).toBe("1 × tablespoon + 1 × teaspoon + 1 × 1/2 teaspoon + 1 × 1/4 teaspoon");
    const dose = measureOut(input);
    expect(dose.ok && dose.measured.value).toBeCloseTo(4.75 / 3, 12);
    expect(dose.ok && dose.errorPercent).toBeCloseTo((4.75 / 4.8 - 1) * 100, 9);
  });

  it("goes to the other side under the other rules", () => {
    const amount = qty(4.8, "tsp");
    expect(taken({ amount, tools: spoons, rule: "never-under" })).toBe(
      "1 × tablespoon + 1 × teaspoon + 1 × 1/2 teaspoon + 1 × 1/4 teaspoon + 1 × 1/8 teaspoon",
    );
    expect(taken({ amount, tools: spoons, rule: "nearest" })).toBe(
      "1 × tablespoon + 1 × teaspoon + 1 × 1/2 teaspoon + 1 × 1/4 teaspoon",
    );
    expect(taken({ amount: qty(4.86, "tsp"), tools: spoons, rule: "nearest" })).toContain("1/8");
  });

  it("is not greedy: two of the middle size where the largest first would leave a rest", () => {
    const tools = [1, 4, 6].map((value) => ({ name: `${value} mL spoon`, capacity: qty(value, "mL") }));
    expect(taken({ amount: qty(8, "mL"), tools, rule: "never-over" })).toBe("2 × 4 mL spoon");
    const odd = [4, 6].map((value) => ({ name: `${value} mL spoon`, capacity: qty(value, "mL") }));
    expect(taken({ amount: qty(15, "mL"), tools: odd, rule: "never-over" })).toBe(
      "1 × 6 mL spoon + 2 × 4 mL spoon",
    );
  });

  it("takes the fewest scoops among equals", () => {
    expect(taken({ amount: qty(3, "tsp"), tools: spoons, rule: "nearest" })).toBe("1 × tablespoon");
    expect(taken({ amount: qty(1, "qt"), tools: "us-household", rule: "never-over" })).toBe(
      "1 × quart measure",
    );
  });

  it("takes a thirds cup as exactly 16 teaspoons", () => {
    const dose = measureOut({ amount: qty(1 / 3, "gal"), tools: "us-household", rule: "never-under" });
    expect(dose.ok && [dose.measured, dose.errorPercent, dose.scoops]).toEqual([qty(1 / 3, "gal"), 0, 3]);
  });

  it("does not mind noise in the sixteenth digit, on either side", () => {
    for (const value of [0.1 + 0.2, 0.3, 0.29999999999999993]) {
      for (const rule of ["never-over", "never-under", "nearest"] as const) {
        const tools = [{ name: "0.1 mL spoon", capacity: qty(0.1, "mL") }];
        const dose = measureOut({ amount: qty(value, "mL"), tools, rule });
        expect(dose.ok && [dose.scoops, dose.measured.value, dose.errorPercent]).toEqual([3, value, 0]);
      }
    }
  });

  it("takes the same of two that are as far off, whatever unit the amount is in", () => {
    // 1 L in 5 scoops: 4 cups of 240 mL and 60 mL are 2% over, with 20 mL in their place 2% under. 1 L in pints is a hair less.
    const tools = [20, 60, 240].map((size) => ({ name: `${size} mL cup`, capacity: qty(size, "mL") }));
    const take = (amount: Volume) => {
      const dose = measureOut({ amount, tools, rule: "nearest", limitPercent: 0.1, maxScoops: 5 });
      return dose.ok ? undefined : dose.best?.parts.map(({ tool }) => tool.name);
    };
    const liter = qty(1, "L");
    expect(take(liter)).toHaveLength(2);
    expect(take(convert(liter, "pt"))).toEqual(take(liter));
  });

  it("tells amounts apart that differ in the eighth digit, and no finer", () => {
    const tools = [{ name: "1 mL spoon", capacity: qty(1, "mL") }];
    const short = measureOut({
      amount: qty(1.9999999, "mL"),
      tools,
      rule: "never-over",
      limitPercent: 40,
    });
    expect(short).toMatchObject({ ok: false, best: { scoops: 1 } });
    const over = measureOut({ amount: qty(2.0000001, "mL"), tools, rule: "never-over" });
    expect(over.ok && over.scoops).toBe(2);
    // 2 tsp are a third of a fluid ounce, which a plan cuts at the eleventh digit.
    const third = measureOut({ amount: qty(0.33333333333, "fl_oz"), tools: "us-spoons", rule: "never-over" });
    expect(third).toMatchObject({
      ok: true,
      scoops: 2,
      measured: qty(0.33333333333, "fl_oz"),
      errorPercent: 0,
    });
  });

  it("reads a tool with marks to its mark, in one fill where that does", () => {
    expect(taken({ amount: qty(4.7, "mL"), tools: "syringes", rule: "never-over", limitPercent: 5 })).toBe(
      "1 × 5 mL syringe to 4 + 1 × 1 mL syringe to 0.7",
    );
    const ten = toolSet("syringes").filter(({ name }) => name.startsWith("10"));
    expect(taken({ amount: qty(4.7, "mL"), tools: ten, rule: "never-over" })).toBe(
      "1 × 10 mL syringe to 4.5",
    );
    expect(taken({ amount: qty(4.7, "mL"), tools: ten, rule: "never-under", limitPercent: 7 })).toBe(
      "1 × 10 mL syringe to 5",
    );
    expect(taken({ amount: qty(24.6, "mL"), tools: ten, rule: "never-over" })).toBe(
      "2 × 10 mL syringe to 10 + 1 × 10 mL syringe to 4.5",
    );
  });

  it("never fills a tool below the least that it reads", () => {
    const cylinder: MeasuringTool = {
      name: "cylinder",
      capacity: qty(10, "mL"),
      graduation: qty(1, "mL"),
      least: qty(4, "mL"),
    };
    const ask = { tools: [cylinder], rule: "never-over" } as const;
    expect(taken({ ...ask, amount: qty(12, "mL") })).toBe("1 × cylinder to 8 + 1 × cylinder to 4");
    expect(taken({ ...ask, amount: qty(23, "mL") })).toBe(
      "1 × cylinder to 10 + 1 × cylinder to 9 + 1 × cylinder to 4",
    );
    expect(measureOut({ ...ask, amount: qty(3, "mL") }).ok).toBe(false);
  });

  it("rounds a least that is between marks up to the next mark", () => {
    const scale = { name: "scale", capacity: qty(100, "g"), graduation: qty(3, "g"), least: qty(10, "g") };
    const dose = measureOut({ amount: qty(10, "g"), tools: [scale], rule: "nearest", limitPercent: 50 });
    expect(dose.ok && dose.measured).toEqual(qty(12, "g"));
  });

  it("weighs a weight on scales and passes over the spoons beside them", () => {
    const tools = [...toolSet("us-spoons"), ...toolSet("scales")];
    const dose = measureOut({ amount: qty(12, "oz"), tools, rule: "never-over" });
    expect(dose.ok && dose.parts.every(({ tool }) => tool.name.includes("scale"))).toBe(true);
    expect(dose.ok && dose.measured.unit).toBe("oz");
  });

  it("tells the error as product per treated area", () => {
    const dose = measureOut({ amount: qty(1.3, "fl_oz"), tools: spoons, rule: "never-over", perArea: acre });
    // 7 ¾ teaspoons against 7.8: 0.05 tsp is 1/120 fl oz, on a quarter of an acre.
    expect(dose.ok && dose.rateError?.unit).toBe("fl_oz/ac");
    expect(dose.ok && dose.rateError?.value).toBeCloseTo(-4 / 120, 12);
  });

  it("accepts an error of exactly the limit and refuses more", () => {
    const tools = [{ name: "spoon", capacity: qty(19, "mL") }];
    const ask = { amount: qty(20, "mL"), tools, rule: "never-over" } as const;
    expect(measureOut({ ...ask, limitPercent: 5 }).ok).toBe(true);
    expect(measureOut({ ...ask, limitPercent: 4.999 }).ok).toBe(false);
    expect(measureOut({ ...ask, limitPercent: 0.1 }).ok).toBe(false);
    expect(measureOut({ ...ask, amount: qty(38, "mL"), limitPercent: 0.1 }).ok).toBe(true);
  });

  it("measures a rounding error away in the limit's comparison", () => {
    const tools = [{ name: "spoon", capacity: qty(0.095, "mL") }];
    expect(measureOut({ amount: qty(0.1, "mL"), tools, rule: "never-over", limitPercent: 5 }).ok).toBe(true);
  });

  it("takes 12 tools of three systems together", () => {
    const tools = [...toolSet("us-spoons"), ...toolSet("metric-spoons"), ...toolSet("imperial-measures")];
    const ask = { amount: qty(100, "mL"), tools: tools.slice(0, 12), rule: "never-over" } as const;
    const dose = measureOut(ask);
    expect(dose.ok && Math.abs(dose.errorPercent)).toBeLessThan(2);
    const closest = measureOut({ ...ask, closeEnoughPercent: 0 });
    expect(closest.ok && Math.abs(closest.errorPercent)).toBeLessThan(0.05);
  });
});

describe("what measureOut refuses", () => {
  it("names the batch at which the spoon would do, and the tool that would", () => {
    const input = { amount: qty(0.11, "tsp"), tools: spoons, rule: "never-over" } as const;
    expect(measureOut(input)).toEqual({
      ok: false,
      issue: {
        code: "not-measurable",
        key: "amount-too-small",
        path: "amount",
        figures: { amount: qty(0.11, "tsp"), least: qty(0.125, "tsp") },
        message:
          "0.11 tsp is too small to measure with these tools, which start at 1/8 teaspoon. Use finer tools, or dilute it first if the label allows.",
      },
    });
    expect(suggestMeasures(input)).toMatchObject([
      {
        kind: "batch",
        amount: qty(0.125, "tsp"),
        times: 0.125 / 0.11,
        scoops: 1,
        message: "Mix a batch that takes 1/8 teaspoon of product instead of 0.11 tsp.",
      },
      { kind: "tool", tool: { name: "1 mL syringe" }, message: "Use this tool as well: 1 mL syringe." },
    ]);
  });

  it("says how far over it would be, and by how much less under never-under", () => {
    const dose = measureOut({ amount: qty(0.11, "tsp"), tools: spoons, rule: "never-under" });
    expect(!dose.ok && dose.best?.errorPercent).toBeCloseTo((0.125 / 0.11 - 1) * 100, 9);
    // 13.636… %, up to the next tenth.
    expect(!dose.ok && dose.issue.message).toContain("closest: 13.7% over");
  });

  it("refuses to count 768 tablespoons and names the larger tool", () => {
    const input = { amount: qty(3, "gal"), tools: spoons, rule: "never-over" } as const;
    expect(measureOut(input)).toMatchObject({ ok: false, best: { scoops: 16 } });
    expect(suggestMeasures(input)).toMatchObject([
      { kind: "tool", tool: { name: "gallon measure" } },
      { kind: "batch", amount: { unit: "gal" }, scoops: 16 },
    ]);
    const under = measureOut({ amount: qty(3, "gal"), tools: spoons, rule: "never-under" });
    expect(!under.ok && under.best).toBe(undefined);
    expect(!under.ok && under.issue.message).toContain("too much to measure with these tools");
  });

  it.each<[MeasureOutInput, string]>([
    [
      { amount: qty(0.11, "tsp"), tools: spoons, rule: "never-under" },
      "These tools can't measure 0.11 tsp within 5% (closest: 13.7% over). Use finer tools, or dilute it first if the label allows.",
    ],
    [
      { amount: qty(0.17, "tsp"), tools: spoons, rule: "nearest" },
      "These tools can't measure 0.17 tsp within 5% (closest: 26.5% under). Use finer tools, or dilute it first if the label allows.",
    ],
    [
      { amount: qty(0.22, "tsp"), tools: spoons, rule: "nearest" },
      "These tools can't measure 0.22 tsp within 5% (closest: 13.7% over). Use finer tools, or dilute it first if the label allows.",
    ],
    [
      // 5.8535 mL, read as 5.8: 0.914 % under, up to the next tenth.
      { amount: qty(0.197933, "fl_oz"), tools: "cylinders", rule: "never-over", limitPercent: 0.1 },
      "These tools can't measure 0.197 fl oz within 0.1% (closest: 1% under). Use finer tools, or dilute it first if the label allows.",
    ],
    [
      { amount: qty(3, "gal"), tools: spoons, rule: "never-under", maxScoops: 3 },
      "3 gal is too much to measure with these tools. Use a larger measure.",
    ],
    // The least that any of them reads, wherever it stands in the list.
    [
      {
        amount: qty(0.3, "mL"),
        tools: [...toolSet("cylinders"), ...toolSet("metric-spoons")],
        rule: "never-over",
      },
      "0.3 mL (0.06 metric tsp) is too small to measure with these tools, which start at 1/8 metric teaspoon. Use finer tools, or dilute it first if the label allows.",
    ],
    [
      { amount: qty(0.3, "mL"), tools: [...toolSet("cylinders")].reverse(), rule: "never-over" },
      "0.3 mL is too small to measure with these tools, which start at 1 mL. Use finer tools, or dilute it first if the label allows.",
    ],
    [
      { amount: qty(3, "gal"), tools: spoons, rule: "never-over", maxScoops: 3 },
      "3 gal is too much to measure with these tools. Use a larger measure.",
    ],
    [
      {
        amount: qty(0.05, "tsp"),
        tools: "us-cups-and-spoons",
        rule: "never-over",
        labelPermitsDilution: true,
      },
      "0.05 tsp is too small to measure with these tools, which start at 1/8 teaspoon. Use finer tools, or dilute it first if the label allows.",
    ],
  ])("says in one sentence what is wrong: %j", (input, message) => {
    const dose = measureOut(input);
    expect(!dose.ok && dose.issue).toMatchObject({ code: "not-measurable", path: "amount", message });
  });

  it.each<[MeasureOutInput, string]>([
    [{ amount: qty(3, "gal"), tools: spoons, rule: "never-over" }, "amount-too-large"],
    [{ amount: qty(0.17, "tsp"), tools: spoons, rule: "nearest" }, "closest-under"],
    [{ amount: qty(0.22, "tsp"), tools: spoons, rule: "nearest" }, "closest-over"],
    // One spoon, which is all that are to be counted, and over the amount: finer tools would help.
    [{ amount: qty(0.11, "tsp"), tools: spoons, rule: "never-under", maxScoops: 1 }, "closest-over"],
  ])("says what is wrong under its key: %j", (input, key) => {
    const dose = measureOut(input);
    expect(!dose.ok && dose.issue.key).toBe(key);
  });

  it("names the first of the smallest tools that are alike", () => {
    const tools = [
      { name: "three teaspoons", capacity: qty(3, "tsp") },
      { name: "a tablespoon", capacity: qty(1, "tbsp") },
    ];
    const dose = measureOut({ amount: qty(1, "tsp"), tools, rule: "never-over" });
    expect(!dose.ok && dose.issue.figures).toEqual({ amount: qty(1, "tsp"), least: qty(3, "tsp") });
  });

  it("counts further where that is asked for", () => {
    const ask = { amount: qty(20, "tbsp"), tools: spoons, rule: "never-over" } as const;
    expect(measureOut(ask).ok).toBe(false);
    expect(taken({ ...ask, maxScoops: 20 })).toBe("20 × tablespoon");
    expect(taken({ ...ask, amount: qty(100, "tbsp"), maxScoops: 100, closeEnoughPercent: 0 })).toBe(
      "100 × tablespoon",
    );
  });

  it("offers a stock only where the label permits diluting first", () => {
    const ask = { amount: qty(0.05, "tsp"), tools: "us-cups-and-spoons", rule: "never-over" } as const;
    // Two and a half times as large a batch comes last.
    expect(suggested(ask)).toEqual(["1 mL syringe", "batch"]);
    expect(suggested({ ...ask, labelPermitsDilution: false })).not.toContain("stock");
    expect(suggested({ ...ask, labelPermitsDilution: true })).toContain("stock");
  });

  it("suggests measures of the amount's own system", () => {
    const first = (amount: MeasureOutInput["amount"]): string | undefined => {
      const tools = [{ name: "drum", capacity: { value: 500, unit: amount.unit } as never }];
      return suggested({ amount, tools, rule: "never-over" })[0];
    };
    expect(first(qty(1, "imp_pt"))).toBe("imperial pint measure");
    expect(first(qty(250, "mL"))).toBe("metric cup");
    expect(first(qty(8, "oz"))).toBe("5 lb scale");
    expect(first(qty(150, "g"))).toBe("200 g scale");
  });

  it("suggests a load that is easy to read, and that the tank holds", () => {
    // 0.117 tsp for 0.41 gal: 0.125 tsp, the least that spoons measure, for 0.438 gal. With 0.44 gal it is 0.1256 tsp.
    const ask = {
      amount: qty(0.117, "tsp"),
      tools: spoons,
      rule: "never-over",
      load: qty(0.41, "gal"),
    } as const;
    const [batch] = suggestMeasures({ ...ask, tank: qty(1, "gal") });
    expect(batch).toMatchObject({
      kind: "batch",
      load: qty(0.44, "gal"),
      scoops: 1,
      key: "suggest-load",
      message: "Mix 0.44 gal instead of 0.41 gal.",
    });
    expect(suggestMeasures({ ...ask, tank: qty(0.43, "gal") }).map(({ kind }) => kind)).toEqual(["tool"]);
    // In another unit, and where less fits: 16 tablespoons are half a pint, 8/50 of it.
    const large = { ...ask, amount: qty(50, "fl_oz"), load: qty(20, "L"), tank: qty(5, "gal") };
    expect(suggestMeasures(large).map(({ message }) => message)).toEqual([
      "Use this tool as well: pint measure.",
      "Mix 3.2 L instead of 20 L.",
    ]);
  });

  it("fills no spoon more than three times where cups are at hand", () => {
    // Every 32nd of a teaspoon up to a cup and a half, and larger amounts further apart.
    for (let parts = 4; parts < 48 * 16 * 32; parts += Math.ceil(parts / 2000)) {
      const dose = measureOut({
        amount: qty(parts / 32, "tsp"),
        tools: "us-cups-and-spoons",
        rule: "never-over",
      });
      if (dose.ok)
        for (const { tool, count } of dose.parts)
          if (tool.name.includes("spoon")) expect(count, `${parts / 32} tsp`).toBeLessThanOrEqual(3);
    }
  });

  it("names the tool that makes a long count short", () => {
    const ask = { amount: qty(12, "tbsp"), tools: spoons, rule: "never-over" } as const;
    expect(measureOut(ask)).toMatchObject({ ok: true, scoops: 12 });
    expect(suggested(ask)).toEqual(["1/4 cup"]);
    expect(suggested({ ...ask, amount: qty(6, "tbsp") })).toEqual([]);
    // 12 gallons: no larger tool is known.
    expect(suggested({ ...ask, amount: qty(12, "gal"), tools: "us-household" })).toEqual([]);
  });

  it("suggests nothing where the amount can be measured as it is", () => {
    expect(suggestMeasures({ amount: qty(1, "tsp"), tools: spoons, rule: "never-over" })).toEqual([]);
  });

  it("suggests another batch alone where no tool would do", () => {
    const tools = [{ name: "drop", capacity: qty(1e-6, "mL") }];
    expect(suggested({ amount: qty(100, "L"), tools, rule: "never-over" })).toEqual(["batch"]);
    expect(suggested({ amount: qty(1e-9, "mL"), tools: spoons, rule: "never-over" })).toEqual(["batch"]);
  });

  it("survives amounts and tools as small and as large as may be", () => {
    for (const value of [1e-75, 1e-40, 1e40, 1e75]) {
      for (const capacity of [1e-75, 1, 1e75]) {
        for (const rule of ["never-over", "never-under", "nearest"] as const) {
          const tools = [{ name: "tool", capacity: qty(capacity, "tsp") }];
          const perArea = { value, unit: "ac", of: "treated" } as const;
          const input = { amount: qty(value, "gal"), tools, rule, perArea };
          expect(JSON.stringify([measureOut(input), suggestMeasures(input)])).not.toContain("null");
        }
      }
    }
  });
});

describe("what measureOut says was measured", () => {
  // Sizes that share no measure with the unit: 1 gal is 3.785411784 L (NIST Handbook 44 (2024), Appendix C).
  it.each([1.1406, 2.3, 5.9])("is the float nearest to the liters in %f gal", (gallons) => {
    const tools = [{ name: "liter jug", capacity: qty(1, "L") }];
    const dose = measureOut({
      amount: qty(gallons, "gal"),
      tools,
      rule: "never-over",
      limitPercent: 50,
      maxScoops: 40,
    });
    const liters = Rational.of(BigInt(Math.floor(gallons * 3.785411784)));
    const exact = liters.over(Rational.fromDecimal("3.785411784")).toNumber();
    expect(dose.ok && dose.measured).toEqual({ value: exact, unit: "gal" });
  });
});

describe("what measureOut throws at", () => {
  const good = { amount: qty(1, "tbsp"), tools: spoons, rule: "never-over" };
  const bad = (change: object): string => faultOf(() => measureOut({ ...good, ...change } as never));

  it.each([
    ["no input", () => faultOf(() => measureOut(undefined as never)), "missing "],
    ["a list", () => faultOf(() => measureOut([] as never)), "not-a-quantity "],
    ["no amount", () => bad({ amount: undefined }), "missing amount"],
    ["a bare number", () => bad({ amount: 3 }), "not-a-quantity amount"],
    ["a number as text", () => bad({ amount: { value: "3", unit: "tsp" } }), "not-a-quantity amount.value"],
    ["not a number", () => bad({ amount: { value: Number.NaN, unit: "tsp" } }), "not-finite amount.value"],
    ["an infinity", () => bad({ amount: { value: 1 / 0, unit: "tsp" } }), "not-finite amount.value"],
    ["an unknown unit", () => bad({ amount: { value: 3, unit: "spoon" } }), "unknown-unit amount.unit"],
    ["a length", () => bad({ amount: { value: 3, unit: "ft" } }), "wrong-dimension amount"],
    ["a rate", () => bad({ amount: { value: 3, unit: "pt/ac" } }), "wrong-dimension amount"],
    ["nothing to measure", () => bad({ amount: qty(0, "tsp") }), "out-of-range amount"],
    ["less than nothing", () => bad({ amount: qty(-1, "tsp") }), "out-of-range amount"],
    ["ounces of weight for spoons", () => bad({ amount: qty(1, "oz") }), "wrong-dimension tools"],
    ["fluid ounces for a scale", () => bad({ tools: "scales" }), "wrong-dimension tools"],
    ["no tools", () => bad({ tools: undefined }), "missing tools"],
    ["an empty list of tools", () => bad({ tools: [] }), "too-few tools"],
    ["an unknown set", () => bad({ tools: "uk-spoons" }), "unknown-choice tools"],
    ["a tool that is none", () => bad({ tools: [null] }), "missing tools[0]"],
    ["a set inside a list", () => bad({ tools: ["us-spoons"] }), "not-a-quantity tools"],
    ["a tool without a name", () => bad({ tools: [{ capacity: qty(1, "mL") }] }), "missing tools[0].name"],
    ["a blank name", () => bad({ tools: [{ name: " ", capacity: qty(1, "mL") }] }), "missing tools[0].name"],
    ["a tool without a capacity", () => bad({ tools: [{ name: "cup" }] }), "missing tools[0].capacity"],
    [
      "an empty tool",
      () => bad({ tools: [{ name: "cup", capacity: qty(0, "mL") }] }),
      "out-of-range tools[0].capacity",
    ],
    [
      "a tool in feet",
      () => bad({ tools: [{ name: "rod", capacity: qty(1, "ft") }] }),
      "wrong-dimension tools[0].capacity",
    ],
    [
      "marks of weight on a cylinder",
      () => bad({ tools: [{ name: "x", capacity: qty(9, "mL"), graduation: qty(1, "g") }] }),
      "wrong-dimension tools[0].graduation",
    ],
    [
      "marks further apart than the tool is high",
      () => bad({ tools: [{ name: "x", capacity: qty(9, "mL"), graduation: qty(10, "mL") }] }),
      "out-of-range tools[0].graduation",
    ],
    [
      "a least over the capacity",
      () =>
        bad({
          tools: [{ name: "x", capacity: qty(9, "mL"), graduation: qty(1, "mL"), least: qty(10, "mL") }],
        }),
      "out-of-range tools[0].least",
    ],
    [
      "a least without marks",
      () => bad({ tools: [{ name: "x", capacity: qty(9, "mL"), least: qty(1, "mL") }] }),
      "missing tools[0].graduation",
    ],
    [
      "marks of nothing",
      () => bad({ tools: [{ name: "x", capacity: qty(9, "mL"), graduation: qty(0, "mL") }] }),
      "out-of-range tools[0].graduation",
    ],
    ["no rule", () => bad({ rule: undefined }), "missing rule"],
    ["an unknown rule", () => bad({ rule: "about" }), "unknown-choice rule"],
    ["a limit finer than any tool", () => bad({ limitPercent: 0 }), "out-of-range limitPercent"],
    ["a negative limit", () => bad({ limitPercent: -1 }), "out-of-range limitPercent"],
    ["a limit over 50", () => bad({ limitPercent: 51 }), "out-of-range limitPercent"],
    ["a limit as text", () => bad({ limitPercent: "5" }), "not-a-quantity limitPercent"],
    ["no scoops", () => bad({ maxScoops: 0 }), "out-of-range maxScoops"],
    ["half a scoop", () => bad({ maxScoops: 1.5 }), "out-of-range maxScoops"],
    ["a thousand scoops", () => bad({ maxScoops: 1000 }), "out-of-range maxScoops"],
    ["ground area", () => bad({ perArea: { value: 1, unit: "ac", of: "ground" } }), "wrong-area perArea"],
    ["a bare area", () => bad({ perArea: qty(1, "ac") }), "wrong-area perArea"],
    [
      "an area too small to tell an error on",
      () => bad({ amount: qty(1.01, "tsp"), perArea: { value: 1e-322, unit: "ac", of: "treated" } }),
      "out-of-range perArea",
    ],
    ["zero area", () => bad({ perArea: { value: 0, unit: "ac", of: "treated" } }), "out-of-range perArea"],
    [
      "a permission that is not yes or no",
      () => bad({ labelPermitsDilution: "yes" }),
      "not-a-quantity labelPermitsDilution",
    ],
  ])("%s", (_, fault, expected) => {
    expect(fault()).toBe(expected);
  });

  it("says which of the two ounces was meant where they are mixed up", () => {
    expect(() => measureOut({ amount: qty(1, "oz"), tools: spoons, rule: "never-over" })).toThrow(
      /oz \(weight\) and fl oz \(volume\) are different/,
    );
    expect(() => measureOut({ amount: qty(1, "fl_oz"), tools: "scales", rule: "never-over" })).toThrow(
      /oz \(weight\) and fl oz \(volume\) are different/,
    );
  });
});

describe("the working of measureOut", () => {
  const asks: MeasureOutInput[] = [
    { amount: qty(1.3, "fl_oz"), tools: spoons, rule: "never-over", perArea: acre },
    { amount: qty(24.6, "mL"), tools: "syringes", rule: "nearest" },
    { amount: qty(12, "oz"), tools: "scales", rule: "never-under" },
    { amount: qty(3, "gal"), tools: spoons, rule: "never-over" },
  ];
  it.each(asks)("is true line by line, and has words for every term: $amount", (ask) => {
    const lines = measureOutLines(ask);
    expectLinesTrue(lines);
    const dose = measureOut(ask);
    const best = dose.ok ? dose : dose.best;
    expect(lines.at(-1)?.result).toEqual(best?.rateError ?? best?.errorPercent);
    for (const line of lines.filter(({ id }) => id !== "units.convert")) {
      const words = HOUSEHOLD_WORDS[line.id]?.terms ?? {};
      // n1, n2 … are named by n.
      const named = (term: string) => words[term] ?? words[term.replace(/\d+$/, "")];
      expect(Object.keys(line.terms).filter((term) => named(term) === undefined)).toEqual([]);
    }
  });

  it("counts what is filled whole and reads what is filled to a mark, each under its number and name", () => {
    const tools = [
      { name: "cup", capacity: qty(1, "cup") },
      { name: "cylinder", capacity: qty(50, "mL"), graduation: qty(1, "mL") },
    ];
    // A cup is 236.5882365 mL (NIST Handbook 44 (2024), Appendix C); two of them and 40 mL are 513.176473 mL.
    const lines = measureOutLines({
      amount: qty(513.2, "mL"),
      tools,
      rule: "never-over",
      closeEnoughPercent: 0,
    });
    const names = { 1: "cup", 2: "cylinder" };
    expect(lines.slice(0, 2)).toEqual([
      {
        id: "units.convert",
        about: "household.measured.x1",
        formula: "value * size",
        terms: { value: qty(1, "cup"), size: 236.5882365 },
        tools: names,
        result: qty(236.5882365, "mL"),
        source: "NIST Handbook 44 (2024), Appendix C",
      },
      {
        id: "household.measured",
        formula: "n1 * x1 + t2 * m2",
        terms: { n1: 2, x1: qty(236.5882365, "mL"), t2: 1, m2: qty(40, "mL") },
        tools: names,
        result: qty(513.176473, "mL"),
        source: "sum of what the tools hold",
      },
    ]);
    expect(lines.map(({ id }) => id).slice(2)).toEqual(["household.error", "household.errorPercent"]);
  });

  it("has nothing to show where nothing can be measured", () => {
    expect(measureOutLines({ amount: qty(0.01, "tsp"), tools: spoons, rule: "never-over" })).toEqual([]);
  });
});
