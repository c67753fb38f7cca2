import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestFills, type Fill, newEffort, orderedFills, type Target } from "../../../src/household/search.ts";

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
  percent: fc.constantFrom(0.5, 5, 20, 50),
  maxScoops: fc.integer({ min: 1, max: 5 }),
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
    limit: (amount * percent) / 100,
    mayBeOver: rule !== "never-over",
    mayBeUnder: rule !== "never-under",
    maxScoops,
    effort: newEffort(),
  };
}

interface Total {
  readonly total: number;
  readonly scoops: number;
}

/** Every total that so many scoops come to, the slow way. */
function totalsOf(fills: readonly Fill[], maxScoops: number): Total[] {
  let totals = new Map([["0 0", { total: 0, scoops: 0 }]]);
  for (const { min, max, step } of fills) {
    let reached = totals;
    for (let scoop = 0; scoop < maxScoops; scoop++) {
      const next = new Map(reached);
      for (const { total, scoops } of reached.values()) {
        if (scoops === maxScoops) continue;
        for (let one = min; one <= max; one += step)
          next.set(`${total + one} ${scoops + 1}`, { total: total + one, scoops: scoops + 1 });
      }
      reached = next;
    }
    totals = reached;
  }
  return [...totals.values()];
}

/** The best by the rule as it is told: within the limit, then to a tenth of a per cent, then scoops, then the rest. */
function slowlyBest(fills: readonly Fill[], target: Target): Total | undefined {
  const { amount, margin, limit, mayBeOver, mayBeUnder, maxScoops } = target;
  const allowed = totalsOf(fills, maxScoops).filter(
    ({ total }) => (mayBeOver || total <= amount + margin) && (mayBeUnder || total >= amount - margin),
  );
  const rank = ({ total, scoops }: Total): number[] => {
    const error = Math.abs(total - amount);
    return [error > limit + margin ? 1 : 0, Math.round((1000 * error) / amount), scoops, error];
  };
  return allowed.sort((a, b) => {
    const [one, other] = [rank(a), rank(b)];
    const at = one.findIndex((value, i) => Math.abs(value - (other[i] as number)) > 1e-9);
    return at < 0 ? 0 : (one[at] as number) - (other[at] as number);
  })[0];
}

describe("bestFills", () => {
  it("finds what a look at every choice finds", () => {
    for (const { fills, ...ask } of fc.sample(asked, { numRuns: 700, seed: 11 })) {
      const target = targetOf(ask);
      const [found, wanted] = [bestFills(orderedFills(fills), target), slowlyBest(fills, target)];
      const told = JSON.stringify({ fills, target, found, wanted });
      expect(found === undefined, told).toBe(wanted === undefined);
      if (found === undefined || wanted === undefined) continue;
      expect(Math.abs(found.total - target.amount), told).toBeCloseTo(
        Math.abs(wanted.total - target.amount),
        9,
      );
      expect(found.scoops, told).toBe(wanted.scoops);
      // What is taken of each comes to the total, and each is a number of its fills.
      expect(
        found.totals.reduce((sum, one) => sum + one, 0),
        told,
      ).toBe(found.total);
      expect(
        found.counts.reduce((sum, one) => sum + one, 0),
        told,
      ).toBe(found.scoops);
      for (const [i, { min, max, step }] of fills.entries()) {
        const [count, total] = [found.counts[i] as number, found.totals[i] as number];
        expect(total, told).toBeGreaterThanOrEqual(count * min);
        expect(total, told).toBeLessThanOrEqual(count * max);
        expect((total - count * min) % step, told).toBe(0);
      }
    }
  });

  it("finds it in searches so long that it remembers where it has been", () => {
    const many = fc.record({
      fills: fc.array(spoon, { minLength: 5, maxLength: 7 }),
      amount: fc.integer({ min: 150, max: 700 }).map((n) => n / 3),
      rule: fc.constantFrom<Rule>("never-over", "never-under", "nearest"),
      percent: fc.constantFrom(0.5, 5),
      maxScoops: fc.integer({ min: 6, max: 12 }),
    });
    for (const { fills, ...ask } of fc.sample(many, { numRuns: 40, seed: 13 })) {
      const even = fills.map(({ min }) => ({ min: 4 * min, max: 4 * min, step: 4 * min }));
      for (const sizes of [fills, even]) {
        const target = targetOf(ask);
        const [found, wanted] = [bestFills(orderedFills(sizes), target), slowlyBest(sizes, target)];
        const told = JSON.stringify({ sizes, target, found, wanted });
        expect(found?.scoops, told).toBe(wanted?.scoops);
        if (found && wanted)
          expect(Math.abs(found.total - ask.amount), told).toBeCloseTo(
            Math.abs(wanted.total - ask.amount),
            9,
          );
      }
    }
  });

  it("finds the same where sizes are no whole numbers", () => {
    for (const { fills, ...ask } of fc.sample(asked, { numRuns: 200, seed: 12 })) {
      const by = Math.PI / 10;
      const scaled = fills.map(({ min, max, step }) => ({ min: min * by, max: max * by, step: step * by }));
      const target = targetOf({ ...ask, amount: ask.amount * by });
      const [found, wanted] = [bestFills(orderedFills(scaled), target), slowlyBest(fills, targetOf(ask))];
      const told = JSON.stringify({ fills, ask, found, wanted });
      expect(found?.scoops, told).toBe(wanted?.scoops);
      if (found && wanted)
        expect(Math.abs(found.total / by - ask.amount), told).toBeCloseTo(
          Math.abs(wanted.total - ask.amount),
          6,
        );
    }
  });
});
