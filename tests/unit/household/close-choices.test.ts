import { describe, expect, it } from "vitest";
import { type MeasureOutInput, measureOut, suggestMeasures } from "../../../src/household/index.ts";
import { qty } from "../../../src/units/index.ts";

function parts(input: MeasureOutInput) {
  const dose = measureOut(input);
  if (!dose.ok) throw new Error(dose.issue.message);
  return dose.parts.map(({ tool, count, each, amount }) => [tool.name, count, each?.value, amount.value]);
}

describe("choices that are close", () => {
  // 0.53 % and 0.47 % under are both told as 0.5 %: the single scoop would win, but for a limit between the two.
  const tools = [
    { name: "jug", capacity: qty(994.7, "mL") },
    { name: "half jug", capacity: qty(497.65, "mL") },
  ];
  const litre = { amount: qty(1000, "mL"), tools, rule: "never-over" } as const;

  it("go by the scoops where both are within the limit", () => {
    expect(parts({ ...litre, limitPercent: 0.6 })).toEqual([["jug", 1, undefined, 994.7]]);
  });

  it("go by the limit where one of them is past it", () => {
    expect(parts({ ...litre, limitPercent: 0.5 })).toEqual([["half jug", 2, undefined, 995.3]]);
  });
});

describe("a tool with marks", () => {
  const cylinder = { name: "cylinder", capacity: qty(50, "mL"), graduation: qty(1, "mL") };

  it("is filled several times to one mark, and what that comes to is told", () => {
    expect(parts({ amount: qty(150, "mL"), tools: [cylinder], rule: "never-over" })).toEqual([
      ["cylinder", 3, 50, 150],
    ]);
  });

  it("is filled whole first, then with the rest", () => {
    expect(parts({ amount: qty(60, "mL"), tools: [cylinder], rule: "never-over" })).toEqual([
      ["cylinder", 1, 50, 50],
      ["cylinder", 1, 10, 10],
    ]);
  });

  it("may have a single one", () => {
    const single = { name: "beaker", capacity: qty(10, "mL"), graduation: qty(10, "mL") };
    expect(parts({ amount: qty(10, "mL"), tools: [single], rule: "never-over" })).toEqual([
      ["beaker", 1, 10, 10],
    ]);
  });

  it("may have as many as can be counted", () => {
    const tank = { name: "tank", capacity: qty(1e6, "mL"), graduation: qty(1, "mL") };
    expect(parts({ amount: qty(5, "mL"), tools: [tank], rule: "never-over" })).toEqual([["tank", 1, 5, 5]]);
  });
});

describe("a suggested tool", () => {
  it("is never called as one that is there already", () => {
    const own = [{ name: "1 mL syringe", capacity: qty(1, "mL") }];
    const suggestions = suggestMeasures({ amount: qty(0.3, "mL"), tools: own, rule: "never-over" });
    expect(suggestions.map(({ kind }) => kind)).toEqual(["batch"]);
  });
});
