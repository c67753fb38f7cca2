import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fewScoops } from "../../../src/household/few-scoops.ts";
import {
  bestFills,
  closerThan,
  type Fill,
  type Found,
  holdsNone,
  newEffort,
  orderedFills,
  type Target,
} from "../../../src/household/search.ts";

type Rule = "never-over" | "never-under" | "nearest";

/** Whole sizes: spoons, and tools with marks, in any order. */
const spoon = fc.integer({ min: 1, max: 40 }).map((size): Fill => ({ min: size, max: size, step: size }));
const marked = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 0, max: 6 }))
  .map(([step, least, more]): Fill => ({ min: step * least, max: step * (least + more), step }));
const asked = fc.record({
  fills: fc.array(fc.oneof({ arbitrary: spoon, weight: 2 }, marked), { minLength: 1, maxLength: 4 }),
  amount: fc.integer({ min: 1, max: 400 }).map((n) => n / 3),
  rule: fc.constantFrom<Rule>("never-over", "never-under", "nearest"),
  percent: fc.constantFrom(0, 0.5, 5, 20, 50),
  maxScoops: fc.integer({ min: 1, max: 5 }),
});

/** Sizes and amounts that take many scoops. */
const many = fc.record({
  fills: fc.array(spoon, { minLength: 5, maxLength: 7 }),
  amount: fc.integer({ min: 150, max: 700 }).map((n) => n / 3),
  rule: fc.constantFrom<Rule>("never-over", "never-under", "nearest"),
  percent: fc.constantFrom(0, 0.5, 5),
  maxScoops: fc.integer({ min: 6, max: 12 }),
});

function targetOf({
  amount,
  rule,
  percent,
  maxScoops,
}: Omit<typeof asked extends fc.Arbitrary<infer A> ? A : never, "fills">): Target {
  return {
    amount,
    margin: amount * 1e-12,
    closeEnough: (amount * percent) / 100,
    mayBeOver: rule !== "never-over",
    mayBeUnder: rule !== "never-under",
    maxScoops,
    effort: newEffort(),
  };
}

interface Total {
  readonly total: number;
  readonly scoops: number;
  /** How many different fills. */
  readonly tools: number;
}

/** Every total that so many scoops and different fills come to, the slow way. */
function totalsOf(fills: readonly Fill[], maxScoops: number): Total[] {
  const keyOf = ({ total, scoops, tools }: Total): string => `${total} ${scoops} ${tools}`;
  let totals = new Map([["0 0 0", { total: 0, scoops: 0, tools: 0 }]]);
  for (const { min, max, step } of fills) {
    const before = [...totals.values()];
    const reached = new Map(totals);
    let taken = before.map((one) => ({ ...one, tools: one.tools + 1 }));
    for (let scoop = 0; scoop < maxScoops; scoop++) {
      const next = new Map<string, Total>();
      for (const { total, scoops, tools } of taken) {
        if (scoops === maxScoops) continue;
        for (let one = min; one <= max; one += step) {
          const more = { total: total + one, scoops: scoops + 1, tools };
          next.set(keyOf(more), more);
        }
      }
      taken = [...next.values()];
      for (const one of taken) reached.set(keyOf(one), one);
    }
    totals = reached;
  }
  return [...totals.values()];
}

/** The best by the rule as it is written: close enough with the fewest scoops, then tools, then error; or else the closest. */
function slowlyBest(fills: readonly Fill[], target: Target): Total | undefined {
  const { amount, margin, closeEnough, mayBeOver, mayBeUnder, maxScoops } = target;
  const allowed = totalsOf(fills, maxScoops).filter(
    ({ total }) => (mayBeOver || total <= amount + margin) && (mayBeUnder || total >= amount - margin),
  );
  const rank = ({ total, scoops, tools }: Total): number[] => {
    const error = Math.abs(total - amount);
    return error > closeEnough + 2 * margin ? [1, error, scoops] : [0, scoops, tools, error];
  };
  return allowed.sort((a, b) => {
    const [one, other] = [rank(a), rank(b)];
    const at = one.findIndex((value, i) => Math.abs(value - (other[i] as number)) > 1e-9);
    return at < 0 ? 0 : (one[at] as number) - (other[at] as number);
  })[0];
}

/** A choice in the same order; the number of tools counts only where it is close enough. */
function expectAsGood(found: Found | undefined, wanted: Total | undefined, target: Target, by = 1): void {
  const told = JSON.stringify({ target, found, wanted });
  expect(found === undefined, told).toBe(wanted === undefined);
  if (found === undefined || wanted === undefined) return;
  expect(Math.abs(found.total - target.amount) / by, told).toBeCloseTo(
    Math.abs(wanted.total - target.amount / by),
    by === 1 ? 9 : 6,
  );
  expect(found.scoops, told).toBe(wanted.scoops);
  if (Math.abs(found.total - target.amount) <= target.closeEnough + 2 * target.margin)
    expect(found.fills.length, told).toBe(wanted.tools);
}

/** What is taken of each comes to the total, and each is a number of its fills. */
function expectTrue(fills: readonly Fill[], found: Found): void {
  expect(found.fills.reduce((sum, { total }) => sum + total, 0)).toBe(found.total);
  expect(found.fills.reduce((sum, { count }) => sum + count, 0)).toBe(found.scoops);
  expect(new Set(found.fills.map(({ index }) => index)).size).toBe(found.fills.length);
  for (const { index, count, total } of found.fills) {
    const { min, max, step } = fills[index] as Fill;
    expect(count).toBeGreaterThan(0);
    expect(total).toBeGreaterThanOrEqual(count * min);
    expect(total).toBeLessThanOrEqual(count * max);
    expect((total - count * min) % step).toBe(0);
  }
}

describe("bestFills", () => {
  it("finds what a look at every choice finds", () => {
    for (const { fills, ...ask } of fc.sample(asked, { numRuns: 700, seed: 11 })) {
      const target = targetOf(ask);
      const found = bestFills(orderedFills(fills), target);
      expectAsGood(found, slowlyBest(fills, target), target);
      if (found) expectTrue(fills, found);
    }
  });

  it("finds it with many scoops of many fills", () => {
    for (const { fills, ...ask } of fc.sample(many, { numRuns: 40, seed: 13 })) {
      // Past 40 no two of these are far apart, and few sums of them are alike.
      const even = fills.map(({ min }) => ({ min: 4 * min + 160, max: 4 * min + 160, step: 4 * min + 160 }));
      for (const [sizes, amount] of [
        [fills, ask.amount],
        [even, 6 * ask.amount],
      ] as const) {
        const target = targetOf({ ...ask, amount });
        expectAsGood(bestFills(orderedFills(sizes), target), slowlyBest(sizes, target), target);
      }
    }
  });

  it("finds it where sums are often alike and none comes close", () => {
    // Multiples of 60 and one other size: many sums are alike, and few come close.
    const sizes = [60, 66, 72, 78, 84, 90, 96, 102].map((size) => ({
      min: 10 * size,
      max: 10 * size,
      step: 10 * size,
    }));
    const fills = [...sizes, { min: 605, max: 605, step: 605 }];
    for (const rule of ["never-over", "never-under", "nearest"] as const)
      for (const amount of [3333, 4444, 5551]) {
        const target = targetOf({ amount, rule, percent: 0, maxScoops: 6 });
        expectAsGood(bestFills(orderedFills(fills), target), slowlyBest(fills, target), target);
      }
  });

  it("finds the same where sizes are no whole numbers", () => {
    for (const { fills, ...ask } of fc.sample(asked, { numRuns: 200, seed: 12 })) {
      const by = Math.PI / 10;
      const scaled = fills.map(({ min, max, step }) => ({ min: min * by, max: max * by, step: step * by }));
      const target = targetOf({ ...ask, amount: ask.amount * by });
      expectAsGood(bestFills(orderedFills(scaled), target), slowlyBest(fills, targetOf(ask)), target, by);
    }
  });
});

/** What is worth finding about 100, where a quarter is noise. */
const HUNDRED: Target = {
  amount: 100,
  margin: 0.25,
  closeEnough: 4.75,
  mayBeOver: true,
  mayBeUnder: true,
  maxScoops: 16,
  effort: newEffort(),
};
const filled = (size: number): Fill => ({ min: size, max: size, step: size });

describe("the bounds of a search", () => {
  it("are past noise, which is less than the margin", () => {
    expect(closerThan(100.125, HUNDRED)).toEqual({
      low: Number.POSITIVE_INFINITY,
      high: Number.NEGATIVE_INFINITY,
    });
    expect(closerThan(100.25, HUNDRED)).toEqual({ low: 99.75, high: 100.25 });
    expect(closerThan(97, HUNDRED)).toEqual({ low: 97.25, high: 102.75 });
    expect(closerThan(97, { ...HUNDRED, mayBeOver: false })).toEqual({ low: 97.25, high: 100.25 });
  });

  it.each([
    [4, 5, 3, true],
    [4, 6, 3, false],
    [3, 5, 3, false],
    [5, 5, 5, false],
    [5, 4, 1, true],
    // Without a common measure there may be any total, where there is one at all.
    [5, 5, 0, false],
    [5, 6, 0, false],
    [6, 5, 0, true],
  ])("hold a multiple or none: from %f to %f of %f", (low, high, of, none) => {
    expect(holdsNone({ low, high }, of)).toBe(none);
  });

  it("go by multiples where every size is whole", () => {
    const whole = (min: number, step: number): boolean => orderedFills([{ min, max: 9, step }]).whole;
    expect([whole(1, 1), whole(1, 0.5), whole(0.5, 1), whole(0.5, 0.5)]).toEqual([true, false, false, false]);
  });
});

describe("one fill of a tool with marks", () => {
  it("is read on the smallest that has the mark, up to the border of what is close enough", () => {
    const large = { min: 1, max: 100, step: 1 };
    const small = { min: 1, max: 10, step: 1 };
    for (const fills of [
      [large, small],
      [small, large],
    ])
      expect(
        bestFills(orderedFills(fills), targetOf({ amount: 5, rule: "never-over", percent: 5, maxScoops: 3 })),
      ).toEqual({
        fills: [{ index: fills.indexOf(small), count: 1, total: 5 }],
        total: 5,
        scoops: 1,
      });
    // 4.75 and noise of 0.25: up to 105.
    const border = [315, 210].map((max) => ({ min: 105, max, step: 105 }));
    expect(bestFills(orderedFills(border), HUNDRED)?.fills).toEqual([{ index: 1, count: 1, total: 105 }]);
  });
});

describe("fewScoops", () => {
  const kept = (sizes: number[], target: Target): Found | undefined => {
    const fills = sizes.map(filled);
    return fewScoops(fills, orderedFills(fills), (found) => found)(target);
  };

  it("takes what is at the border of what is close enough, where that takes fewer scoops", () => {
    const target = { ...HUNDRED, closeEnough: 9.75 };
    expect(kept([90, 33], { ...target, mayBeOver: false })).toMatchObject({ total: 90, scoops: 1 });
    expect(kept([110, 34], { ...target, mayBeUnder: false })).toMatchObject({ total: 110, scoops: 1 });
  });

  it("takes the lower of two that are as close, and of two that noise tells apart", () => {
    expect(kept([98, 102], HUNDRED)).toMatchObject({ total: 98, scoops: 1 });
    expect(kept([97, 97.25], { ...HUNDRED, mayBeOver: false })).toMatchObject({ total: 97, scoops: 1 });
    expect(kept([97, 97.5], { ...HUNDRED, mayBeOver: false })).toMatchObject({ total: 97.5, scoops: 1 });
  });

  it("finds what a look at every choice finds", () => {
    const whole = asked.map((ask) => ({
      ...ask,
      fills: ask.fills.map(({ max }) => ({ min: max, max, step: max })),
    }));
    for (const { fills, ...ask } of fc.sample(whole, { numRuns: 700, seed: 14 })) {
      const target = targetOf(ask);
      const found = fewScoops(fills, orderedFills(fills), (found) => found)(target);
      expectAsGood(found, slowlyBest(fills, target), target);
      if (found) expectTrue(fills, found);
    }
  });

  it("finds it with many scoops of many fills, or leaves it to the search", () => {
    let looked = 0;
    for (const { fills, ...ask } of fc.sample(many, { numRuns: 60, seed: 15 })) {
      const target = targetOf(ask);
      const found = fewScoops(fills, orderedFills(fills), (found) => found)(target);
      if (found === undefined) continue;
      looked++;
      const searched = bestFills(orderedFills(fills), target) as Found;
      expectAsGood(found, { ...searched, tools: searched.fills.length }, target);
    }
    expect(looked).toBeGreaterThan(30);
  });

  it("leaves to the search what takes more scoops than it keeps", () => {
    // 20 sizes: more than 20,000 choices of 5 scoops (C(24, 5) = 42,504), and fewer of 4 (C(23, 4) = 8,855).
    const fills = Array.from({ length: 20 }, (_, i) => ({ min: 100 + i, max: 100 + i, step: 100 + i }));
    const few = fewScoops(fills, orderedFills(fills), (found) => found);
    const ask = { rule: "never-over", percent: 5, maxScoops: 16 } as const;
    expect(few(targetOf({ ...ask, amount: 4 * 110 }))).toMatchObject({ scoops: 4 });
    expect(few(targetOf({ ...ask, amount: 5 * 110 }))).toBe(undefined);
    // Four of the smallest are the closest that is not under.
    const under = { rule: "never-under", percent: 0, maxScoops: 16 } as const;
    expect(few(targetOf({ ...under, amount: 399.5 }))).toMatchObject({ total: 400, scoops: 4 });
    // None is close enough with four or fewer, and the closest may take more.
    expect(few(targetOf({ ...ask, amount: 505.5, percent: 0 }))).toBe(undefined);
  });
});
