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

describe("a part that several tools have a mark for", () => {
  const jug = { name: "jug", capacity: qty(200, "mL") };
  const cylinder = (mL: number, apart: number, least = apart) => ({
    name: `${mL} mL by ${apart}`,
    capacity: qty(mL, "mL"),
    graduation: qty(apart, "mL"),
    least: qty(least, "mL"),
  });
  const asked = { rule: "never-over", closeEnoughPercent: 0 } as const;
  it.each([
    // From the least that the small one reads to its last mark.
    [204, cylinder(10, 1, 4), "10 mL by 1 4"],
    [210, cylinder(10, 1, 4), "10 mL by 1 10"],
    [203, cylinder(10, 1, 4), "100 mL by 1 3"],
    [250, cylinder(10, 1, 4), "100 mL by 1 50"],
    // 3 and 6 mL are marks, 4 mL is none.
    [204, cylinder(9, 3), "100 mL by 1 4"],
    [206, cylinder(9, 3), "9 mL by 3 6"],
  ])("is read on the smallest of them: %f mL", (mL, small, wanted) => {
    const taken = parts({ ...asked, amount: qty(mL, "mL"), tools: [jug, cylinder(100, 1), small] });
    expect(taken.map(([name, , each]) => `${name} ${each ?? "whole"}`)).toEqual(["jug whole", wanted]);
  });

  it("stays with its tool where another is no smaller, and the larger part comes first", () => {
    // 7.5 mL and 8 mL: neither tool has a mark at both.
    const tools = [cylinder(10, 2.5), { ...cylinder(10, 2.5), name: "its like" }, cylinder(10, 2)];
    expect(parts({ ...asked, amount: qty(15.5, "mL"), tools })).toEqual([
      ["10 mL by 2", 1, 8, 8],
      ["10 mL by 2.5", 1, 7.5, 7.5],
    ]);
  });
});

describe("a suggested tool", () => {
  it("is never called as one that is there already", () => {
    const own = [{ name: "1 mL syringe", capacity: qty(1, "mL") }];
    const suggestions = suggestMeasures({ amount: qty(0.3, "mL"), tools: own, rule: "never-over" });
    expect(suggestions.map(({ kind }) => kind)).toEqual(["batch"]);
  });
});
