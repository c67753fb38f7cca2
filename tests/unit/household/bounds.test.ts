import { describe, expect, it } from "vitest";
import {
  type MeasuringTool,
  measureOut,
  measuringRules,
  stockDilution,
} from "../../../src/household/index.ts";
import { bestFills, orderedFills } from "../../../src/household/search.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

/** Sizes that are close to whole milliliters and share no measure: no sum of them comes near to half a milliliter. */
const closeToWhole = (many: number): MeasuringTool[] =>
  Array.from({ length: many }, (_, i) => ({
    name: `tool ${i}`,
    capacity: qty(10 + i + (1e-6 * ((i * i * 7919) % 97)) / 97, "mL"),
  }));

describe("a search with no end in sight", () => {
  const cases: [string, MeasuringTool[], number][] = [
    ["50 tools whose sums avoid the amount", closeToWhole(50), 500.5],
    [
      "two tools with a million marks",
      [
        { name: "a", capacity: qty(1e6, "mL"), graduation: qty(1.0000001, "mL") },
        { name: "b", capacity: qty(999_999, "mL"), graduation: qty(Math.PI, "mL") },
      ],
      1_000_000.8333,
    ],
    [
      "50 tools with 100,000 marks, none of them near its end",
      closeToWhole(50).map((tool) => ({
        ...tool,
        graduation: qty(tool.capacity.value / 100_010, "mL"),
        least: qty(tool.capacity.value * 0.9, "mL"),
      })) as MeasuringTool[],
      123.456789,
    ],
  ];
  const asked = cases.flatMap(([name, tools, amount]) =>
    measuringRules.flatMap((rule) =>
      [16, 100].map((maxScoops) => ({ name, rule, maxScoops, tools, amount: qty(amount, "mL") })),
    ),
  );
  it.each(asked)("ends, by the rule: $name, $rule, $maxScoops", ({ name: _, ...input }) => {
    // Without a bound it takes minutes, far past the time that a test has.
    const answer = measureOut({ ...input, closeEnoughPercent: 0 });
    // A tenth of a percent and less: what no choice comes nearer to, or next to it.
    expect(answer.ok && Math.abs(answer.errorPercent)).toBeLessThan(0.11);
    if (input.rule === "never-over") expect(answer.ok && answer.error.value).toBeLessThanOrEqual(0);
    if (input.rule === "never-under") expect(answer.ok && answer.error.value).toBeGreaterThanOrEqual(0);
  });

  it("ends for a stock, which takes many searches", () => {
    const tools = [...closeToWhole(48), { name: "drum", capacity: qty(50_000, "mL") }];
    for (const rule of measuringRules) {
      const input = { amount: qty(0.0401, "mL"), tools, rule, limitPercent: 0.1, labelPermitsDilution: true };
      expect(stockDilution(input)).toHaveProperty("ok");
    }
  });

  it("falls back on the largest first, which is never over", () => {
    const fills = [
      { min: 6, max: 6, step: 6 },
      { min: 4, max: 4, step: 4 },
      { min: 2, max: 10, step: 2 },
    ];
    const target = {
      amount: 19,
      margin: 1e-11,
      closeEnough: 0.1,
      mayBeOver: false,
      mayBeUnder: true,
      maxScoops: 16,
    };
    expect(bestFills(orderedFills(fills), { ...target, effort: { left: 0 } })).toEqual({
      fills: [{ index: 0, count: 3, total: 18 }],
      total: 18,
      scoops: 3,
    });
    const under = { ...target, mayBeOver: true, mayBeUnder: false };
    expect(bestFills(orderedFills(fills), { ...under, effort: { left: 0 } })).toBe(undefined);
  });

  it.each([
    // Whole ones, then the rest to a mark.
    [19, 1e-11, 16, 18, 2],
    [12, 0, 16, 12, 2],
    [11.9, 0, 16, 10, 1],
    // Noise aside, two whole ones.
    [20, 1e-11, 16, 20, 2],
    [20 - 1e-12, 1e-11, 16, 20, 2],
    [19, 1e-11, 1, 10, 1],
    [39, 1e-11, 3, 30, 3],
  ])("which fills a tool whole and then to a mark: %f", (amount, margin, maxScoops, total, scoops) => {
    const found = bestFills(orderedFills([{ min: 2, max: 10, step: 2 }]), {
      amount,
      margin,
      closeEnough: 0,
      mayBeOver: false,
      mayBeUnder: true,
      maxScoops,
      effort: { left: 0 },
    });
    expect(found).toEqual({ fills: [{ index: 0, count: scoops, total }], total, scoops });
  });

  it("takes away from the effort what it looked at", () => {
    const effort = { left: 100 };
    const fills = orderedFills([{ min: 1, max: 100, step: 1 }]);
    bestFills(fills, {
      amount: 7.5,
      margin: 1e-11,
      closeEnough: 0.1,
      mayBeOver: false,
      mayBeUnder: true,
      maxScoops: 16,
      effort,
    });
    expect(effort.left).toBeGreaterThan(90);
    expect(effort.left).toBeLessThan(100);
  });
});

describe("a list of tools", () => {
  it("is refused before it is read where it is longer than anybody's shelf", () => {
    const tools = Array.from({ length: 10_000 }, (_, i) => ({
      name: `spoon ${i}`,
      capacity: qty(i + 1, "mL"),
    }));
    const ask = (): unknown => measureOut({ amount: qty(5, "mL"), tools, rule: "never-over" });
    expect(refusal(ask)).toMatchObject({ code: "out-of-range", path: "tools", issues: { length: 1 } });
  });
});
