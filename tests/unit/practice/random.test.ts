import { describe, expect, it } from "vitest";
import { drawFrom, MOST_SEED, nextState } from "../../../src/practice/random.ts";

describe("the random numbers of practice problems", () => {
  it("are those of the minimal standard generator: 1,043,618,065 after 10,000 steps from 1 (Park and Miller, 1988)", () => {
    let state = 1;
    for (let i = 0; i < 10_000; i++) state = nextState(state);
    expect(state).toBe(1_043_618_065);
  });

  it("stay within what is drawn from, at both ends of the seeds, and reach all of it", () => {
    const list = Array.from({ length: 15 }, (_, i) => i);
    const seen = new Set<number>();
    for (let seed = 0; seed < 3000; seed++)
      seen.add(drawFrom(seed % 2 === 0 ? seed : MOST_SEED - seed).pick(list));
    expect([...seen].sort((a, b) => a - b)).toEqual(list);
  });

  it("draw the last of a list by the largest state, and halve the states for a list of two", () => {
    // The generator run backwards, five steps from each state: its multiplier has an inverse by the modulus.
    const seeds = [
      [1_537_600_785, 2 ** 31 - 2, "b"],
      [1_378_683_253, 2 ** 30, "b"],
      [768_800_392, 2 ** 30 - 1, "a"],
      [609_882_860, 1, "a"],
    ] as const;
    for (const [seed, state, drawn] of seeds) {
      let reached = seed + 1;
      for (let i = 0; i < 5; i++) reached = nextState(reached);
      expect(reached).toBe(state);
      expect(drawFrom(seed).pick(["a", "b"])).toBe(drawn);
    }
  });

  it("fall evenly on a list", () => {
    const counts = [0, 0, 0, 0];
    for (let seed = 0; seed < 4000; seed++) {
      const at = drawFrom(seed * 7919).pick([0, 1, 2, 3]);
      counts[at] = (counts[at] ?? 0) + 1;
    }
    // 1,000 each; five standard deviations of a binomial count are 137.
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(137);
  });
});
