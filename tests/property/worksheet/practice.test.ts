import { describe, expect, it } from "vitest";
import {
  ENGLISH_PRACTICE_WORDS,
  type PracticeProblem,
  type PracticeTopic,
  practiceProblem,
  practiceSheet,
  practiceTopics,
} from "../../../src/practice/index.ts";
import type { Quantity, UnitSystem } from "../../../src/units/index.ts";
import { ENGLISH_WORDS } from "../../../src/worksheet/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectPrintedTrue, numberReader } from "../../helpers/printed-lines.ts";
import { runs } from "../../helpers/runs.ts";

const SYSTEMS: readonly UnitSystem[] = ["us", "metric", "imperial"];
const CASES = practiceTopics.flatMap((topic) => SYSTEMS.map((units) => [topic, units] as const));
const SEEDS = runs(1000).numRuns;

const sizes = new Map<string, number>();

/** The size of a unit, worked out once: a million figures are compared here. */
function sizeOf(unit: Quantity["unit"]): number {
  const size = sizes.get(unit) ?? exactSize(unit).toNumber();
  sizes.set(unit, size);
  return size;
}

/** An amount in SI units (liters for volume) by the tests' own definitions; a count as it is. */
function si(one: Quantity | number | undefined): number {
  if (one === undefined) throw new Error("not given");
  return typeof one === "number" ? one : one.value * sizeOf(one.unit);
}

type Given = PracticeProblem["given"];

const treated = ({ rows, rowLength, bandWidth }: Given) => si(rows) * si(rowLength) * si(bandWidth);
const stripRate = ({ used, swath, bandWidth, distance }: Given) =>
  si(used) / (si(swath ?? bandWidth) * si(distance));

/** Each topic worked out again, from what the problem gives, in SI units. */
const SOLVERS: Record<PracticeTopic, (given: Given) => number> = {
  area: (g) =>
    g.length !== undefined
      ? si(g.length) * si(g.width)
      : g.top === undefined
        ? (si(g.base) * si(g.height)) / 2
        : ((si(g.base) + si(g.top)) / 2) * si(g.height),
  "strip-calibration": stripRate,
  "catch-calibration": (g) => si(g.caught) / si(g.time) / (si(g.speed) * si(g.width)),
  "tank-loads": (g) => Math.ceil((si(g.area) * si(g.rate)) / si(g.fill) - 1e-9),
  "product-per-tank": (g) => (si(g.rate) / si(g.carrierRate)) * si(g.fill),
  "household-measure": (g) => Math.floor(si(g.amount) / si(g.spoon) + 1e-9),
  band: (g) => treated(g) * si(g.rate),
  "percent-mix": (g) => si(g.percent) * si(g.fill),
  dilution: (g) => (si(g.volume) * si(g.to)) / si(g.from),
  "whole-job": (g) => {
    const rate = stripRate(g);
    const mix = treated(g) * rate;
    const last = mix - (Math.ceil(mix / si(g.fill) - 1e-9) - 1) * si(g.fill);
    return (last * si(g.rate)) / rate;
  },
};

// What is realistic on a small farm, in SI units: common practice, no source. Rates and speeds are the bounds past which a
// plan would question them (5 to 200 gal/ac, 1 to 5 mph).
const REALISTIC: Record<string, readonly [least: number, most: number]> = {
  length: [15, 125],
  width: [0.35, 125],
  base: [15, 125],
  top: [15, 125],
  height: [15, 125],
  distance: [50, 125],
  swath: [0.4, 1.1],
  bandWidth: [0.4, 1.1],
  rowLength: [30, 125],
  rowSpacing: [1.2, 3.1],
  rows: [8, 30],
  used: [0.15, 10],
  caught: [0.05, 3],
  time: [20, 60],
  speed: [0.44704, 2.2352],
  ground: [1500, 21_000],
  area: [450, 13_000],
  fill: [1.9, 310],
  carrierRate: [5 * 9.354e-4, 200 * 9.354e-4],
  amount: [0.01, 0.15],
  spoon: [0.0049, 0.0051],
  density: [1.04, 1.26],
  percent: [0.0025, 0.02],
  from: [0.05, 0.2],
  to: [0.005, 0.04],
  volume: [2, 50],
};
// Liters per square meter: of spray for loads, of product elsewhere.
const RATES: Partial<Record<PracticeTopic, readonly [number, number]>> = {
  "tank-loads": [5 * 9.354e-4, 200 * 9.354e-4],
};
const PRODUCT_RATE = [0.3e-4, 6e-4] as const;

function answerOf({ answer }: Pick<PracticeProblem, "answer">): number {
  return typeof answer === "number" ? answer : answer.value;
}

describe.each(CASES)("practice problems on %s in %s units", (topic, units) => {
  const problems = Array.from({ length: SEEDS }, (_, seed) => practiceProblem(topic, seed, { units }));

  it("have the answer that plain arithmetic gives", () => {
    for (const { given, answer, problem } of problems) {
      const found = SOLVERS[topic](given);
      expect(Math.abs(si(answer) / found - 1), problem).toBeLessThan(1e-9);
    }
  });

  it("are set in round figures of a realistic size", () => {
    for (const { given, problem, seed } of problems) {
      for (const [name, one] of Object.entries(given)) {
        const value = typeof one === "number" ? one : one.value;
        expect(Number(value.toPrecision(3)), `${seed} ${name}: ${problem}`).toBe(value);
        const [least, most] =
          name === "rate" ? (RATES[topic] ?? PRODUCT_RATE) : (REALISTIC[name] as [number, number]);
        expect(si(one), `${seed} ${name}: ${problem}`).toBeGreaterThanOrEqual(least);
        expect(si(one), `${seed} ${name}: ${problem}`).toBeLessThanOrEqual(most);
      }
      // Every figure stands in the text, and no place is left unfilled.
      expect(problem).not.toMatch(/[{}]|undefined|NaN/);
    }
  });

  it("come to answers that a field could have", () => {
    for (const { answer, problem, working } of problems) {
      if (topic.endsWith("calibration")) {
        expect(si(answer), problem).toBeGreaterThan(5 * 9.354e-4);
        expect(si(answer), problem).toBeLessThan(200 * 9.354e-4);
      }
      if (topic === "area") expect(si(answer), problem).toBeLessThan(20_000);
      if (topic === "tank-loads") expect(answer).toBeLessThanOrEqual(12);
      // A tenth of a milliliter at the least.
      if (typeof answer !== "number" && topic !== "area")
        expect(si(answer), problem).toBeGreaterThan(1e-4 / 1000);
      expect(working.length).toBeGreaterThan(0);
    }
  });

  it("have common wrong answers, each apart from the right one and from the others", () => {
    for (const { mistakes, answer, problem } of problems) {
      expect(mistakes.length).toBeGreaterThanOrEqual(2);
      const values = [answerOf({ answer }), ...mistakes.map(answerOf)];
      for (const [i, a] of values.entries()) {
        expect(a, problem).toBeGreaterThanOrEqual(0);
        for (const b of values.slice(i + 1)) expect(Math.abs(a / b - 1), problem).toBeGreaterThan(0.02);
      }
      for (const { answer: wrong, shows, mistake } of mistakes) {
        expect(shows).toBe(ENGLISH_PRACTICE_WORDS.mistakes[mistake]);
        if (typeof answer !== "number") expect((wrong as Quantity).unit).toBe(answer.unit);
      }
    }
  });

  it("are the same again from the same seed, and many different ones from different seeds", () => {
    for (const problem of problems.slice(0, 20)) {
      expect(practiceProblem(topic, problem.seed, { units })).toEqual(problem);
    }
    expect(new Set(problems.map(({ problem }) => problem)).size).toBeGreaterThan(Math.min(20, SEEDS / 20));
  });

  it("have working that ends in the answer and is true as printed", () => {
    const read = numberReader("en-US");
    for (const problem of problems.slice(0, 50)) {
      expect(problem.working.at(-1)?.result, problem.problem).toEqual(problem.answer);
      const { blocks } = practiceSheet([problem], { answers: true });
      const lines = blocks.flatMap((block) => (block.kind === "lines" ? block.lines : []));
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) {
        expectPrintedTrue(line, { read, digits: 6, functions: ENGLISH_WORDS.functions });
      }
    }
  });
});
