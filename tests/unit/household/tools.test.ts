import { describe, expect, it } from "vitest";
import { type MeasuringTool, measureOut, toolSet, toolSetNames } from "../../../src/household/index.ts";
import { convert, qty, type Volume, valueIn } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { Rational } from "../../helpers/rational.ts";
import { faultOf } from "./fault.ts";

function milliliters({ capacity }: MeasuringTool): string {
  const exact = Rational.fromDecimal(String(capacity.value))
    .times(exactSize(capacity.unit))
    .times(Rational.of(1000));
  return `${exact.n}/${exact.d}`;
}

const mL = (text: string): string => {
  const exact = Rational.fromDecimal(text);
  return `${exact.n}/${exact.d}`;
};

describe("the sets of tools", () => {
  // NIST Handbook 44 (2024), Appendix C: a gallon is 231 cubic inches of 2.54 cm, 768 teaspoons, 256 tablespoons, 16 cups.
  it("hold US customary spoons and cups exactly", () => {
    expect(toolSet("us-household").map(milliliters)).toEqual(
      [
        "0.61611519921875",
        "1.2322303984375",
        "2.464460796875",
        "4.92892159375",
        "14.78676478125",
        "59.147059125",
        "78.8627455",
        "118.29411825",
        "236.5882365",
        "473.176473",
        "946.352946",
        "3785.411784",
      ].map(mL),
    );
  });

  // 21 CFR 101.9(b)(5)(viii): "a teaspoon means 5 milliliters (mL), a tablespoon means 15 mL, a cup means 240 mL".
  it("hold the spoons and cups of US nutrition labels", () => {
    const sizes = Object.fromEntries(
      toolSet("us-legal-cups-and-spoons").map(({ name, capacity }) => [name.split(" (")[0], capacity.value]),
    );
    expect(sizes).toMatchObject({
      teaspoon: 5,
      tablespoon: 15,
      cup: 240,
      "1/4 teaspoon": 1.25,
      "1/3 cup": 80,
    });
  });

  // Conversion chart of the "spoon sets approved by the Standards Association of Australia": ¼ tsp 1.25 mL, ½ tsp 2.5 mL,
  // 1 tsp 5 mL, 1 tbsp 20 mL (Healthy Kids, NSW Ministry of Health, year not shown).
  it("hold the Australian spoons, whose tablespoon is a third larger than the metric one", () => {
    expect(toolSet("australian-spoons").map(milliliters)).toEqual(["1.25", "2.5", "5", "10", "20"].map(mL));
    expect(toolSet("metric-spoons").map(milliliters)).toEqual(["0.625", "1.25", "2.5", "5", "15"].map(mL));
  });

  // Weights and Measures Act 1985, Schedule 1: a gallon is 4.54609 cubic decimetres, 8 pints, 160 fluid ounces.
  it("hold the imperial measures exactly", () => {
    expect(toolSet("imperial-measures").map(milliliters)).toEqual(
      ["28.4130625", "142.0653125", "284.130625", "568.26125", "1136.5225", "4546.09"].map(mL),
    );
  });

  it("are from the smallest to the largest, each name once, all of one kind", () => {
    for (const name of toolSetNames) {
      const tools = toolSet(name);
      const weight = name.endsWith("scales");
      const sizes = tools.map(({ capacity }) =>
        valueIn(convert(capacity as Volume, (weight ? "g" : "mL") as never), (weight ? "g" : "mL") as never),
      );
      expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
      expect(new Set(tools.map((tool) => tool.name)).size).toBe(tools.length);
    }
  });

  it("have marks that fit: each set measures its own largest tool in one fill", () => {
    for (const name of toolSetNames) {
      const { capacity } = toolSet(name).at(-1) as MeasuringTool;
      const dose = measureOut({ amount: capacity, tools: name, rule: "nearest" });
      expect(dose).toMatchObject({ ok: true, scoops: 1, errorPercent: 0 });
    }
  });

  it("come as a new list, so that one may be changed without the other", () => {
    toolSet("us-spoons").pop();
    expect(toolSet("us-spoons")).toHaveLength(5);
  });

  it("are found by their name only", () => {
    expect(faultOf(() => toolSet("spoons" as never))).toBe("unknown-choice name");
    expect(faultOf(() => toolSet(undefined as never))).toBe("missing name");
    expect(faultOf(() => toolSet("toString" as never))).toBe("unknown-choice name");
  });

  // Confusing them is one of the mistakes that this library is there to stop.
  it("tell a US, a metric and an Australian tablespoon apart", () => {
    const spoonsIn = (tools: "us-spoons" | "metric-spoons" | "australian-spoons"): number => {
      const dose = measureOut({ amount: qty(60, "mL"), tools, rule: "never-over" });
      return dose.ok ? (dose.parts[0]?.count ?? 0) : 0;
    };
    expect([spoonsIn("us-spoons"), spoonsIn("metric-spoons"), spoonsIn("australian-spoons")]).toEqual([
      4, 4, 3,
    ]);
  });
});
