import { describe, expect, it } from "vitest";
import {
  checkAnswer,
  type GivenFigure,
  type PracticeAnswer,
  type PracticeProblem,
  type PracticeTopic,
  practiceProblem,
  practiceSheet,
  practiceTopics,
  problemFrom,
} from "../../../src/practice/index.ts";
import type { Quantity, UnitSystem } from "../../../src/units/index.ts";
import { ENGLISH_WORDS } from "../../../src/worksheet/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectPrintedTrue, numberReader } from "../../helpers/printed-lines.ts";
import { runs } from "../../helpers/runs.ts";

const SYSTEMS: readonly UnitSystem[] = ["us", "metric", "imperial"];
const CASES = practiceTopics.flatMap((topic) => SYSTEMS.map((units) => [topic, units] as const));
const SEEDS = runs(500).numRuns;

const sizes = new Map<string, number>();

/** The size of a unit, worked out once: a million figures are compared here. */
function sizeOf(unit: Quantity["unit"]): number {
  const size = sizes.get(unit) ?? exactSize(unit).toNumber();
  sizes.set(unit, size);
  return size;
}

/** An amount in SI units (liters for volume) by the tests' own definitions; a count as it is. */
function si(one: GivenFigure | PracticeAnswer | undefined): number {
  if (typeof one === "number") return one;
  if (typeof one !== "object" || !("unit" in one)) throw new Error("not one amount");
  return one.value * sizeOf(one.unit);
}

type Given = PracticeProblem["given"];

const treated = ({ rows, rowLength, bandWidth }: Given) => si(rows) * si(rowLength) * si(bandWidth);
const stripRate = ({ used, swath, bandWidth, distance }: Given) =>
  si(used) / (si(swath ?? bandWidth) * si(distance));

const mean = (catches: GivenFigure | undefined) =>
  (catches as Quantity[]).reduce((sum, one) => sum + si(one), 0) / (catches as Quantity[]).length;

const unitOf = (figure: GivenFigure | undefined) => (figure as Quantity).unit as keyof typeof STRIPS;

// The strips on which a catch reads as the rate, in square meters: 1/128 and 1/160 acre, and 10 square meters.
const ACRE = 4046.8564224;
const STRIPS = { fl_oz: ACRE / 128, imp_fl_oz: ACRE / 160, mL: 10 };

/** Each topic worked out again, from what the problem gives, in SI units. */
const SOLVERS: Record<PracticeTopic, (given: Given) => number> = {
  "rectangle-area": (g) => si(g.length) * si(g.width),
  "triangle-area": (g) => (si(g.base) * si(g.height)) / 2,
  "trapezoid-area": (g) => ((si(g.base) + si(g.top)) / 2) * si(g.height),
  "strip-calibration": stripRate,
  "catch-calibration": (g) => si(g.caught) / si(g.time) / (si(g.speed) * si(g.width)),
  "tank-loads": (g) => Math.ceil((si(g.area) * si(g.rate)) / si(g.fill) - 1e-9),
  "product-per-tank": (g) => (si(g.rate) / si(g.carrierRate)) * si(g.fill),
  "household-measure": (g) => Math.floor(si(g.amount) / si(g.spoon) + 1e-9),
  "timed-speed": (g) => si(g.distance) / si(g.time),
  "strip-reading": (g) => ((si(g.caught) / si(g.time)) * si(g.walk)) / STRIPS[unitOf(g.caught)],
  "season-limit": (g) => Math.floor(si(g.limit) / si(g.rate) - si(g.done) + 1e-9),
  // Checked by the order of Oklahoma State University Extension, "Herbicide Mixing Order".
  "mixing-order": () => Number.NaN,
  "boom-catch": (g) => mean(g.catches) / si(g.time) / (si(g.speed) * si(g.width)),
  "nozzle-check": (g) => {
    const average = mean(g.catches);
    return Math.max(...(g.catches as Quantity[]).map((one) => Math.abs(si(one) - average))) / average;
  },
  "lawn-rate": (g) => si(g.length) * si(g.width) * si(g.rate),
  granules: (g) => si(g.length) * si(g.width) * si(g.rate),
  fertilizer: (g) => (si(g.needed) * si(g.area)) / (si(g.nitrogen) / 100),
  "row-length": (g) => si(g.rows) * si(g.rowLength) * si(g.rate),
  "dry-product": (g) => si(g.area) * si(g.rate),
  "plant-timing": (g) => (si(g.time) * si(g.each)) / si(g.caught),
  "spot-tank": (g) => si(g.spots) * si(g.each) * si(g.percent),
  injector: (g) => si(g.rate) * si(g.ratio) * si(g.stock),
  reserve: (g) => si(g.area) * si(g.rate) * (1 + si(g.extra) / 100),
  // Canopy in cubic meters, whose liters the definitions have.
  "tree-row-volume": (g) => ((si(g.height) * si(g.width)) / si(g.rowSpacing)) * si(g.spray) * 1000,
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
  length: [8, 140],
  width: [0.35, 140],
  base: [15, 140],
  top: [15, 140],
  height: [15, 140],
  distance: [20, 125],
  swath: [0.4, 2.1],
  bandWidth: [0.4, 1.1],
  rowLength: [30, 125],
  rowSpacing: [1.2, 3.7],
  rows: [6, 30],
  walk: [15, 60],
  limit: [3e-4, 30e-4],
  done: [1, 4],
  catches: [0.05, 4],
  spots: [16, 80],
  each: [0.05, 0.41],
  ratio: [50, 200],
  stock: [3, 35],
  extra: [5, 20],
  used: [0.15, 10],
  caught: [0.05, 4],
  time: [10, 91],
  speed: [0.44704, 2.2352],
  ground: [1500, 21_000],
  area: [200, 20_001],
  fill: [1.9, 310],
  carrierRate: [5 * 9.354e-4, 200 * 9.354e-4],
  amount: [0.015, 0.24],
  spoon: [0.0049, 0.0151],
  density: [1.04, 1.26],
  percent: [0.0025, 0.05],
  from: [0.05, 0.2],
  to: [0.005, 0.04],
  // Kilograms of nitrogen per square meter.
  needed: [2e-3, 8.1e-3],
  nitrogen: [5, 46],
  volume: [2, 50],
};
// What has another size on trees than on a field.
const ON_TREES: Partial<Record<PracticeTopic, typeof REALISTIC>> = {
  "plant-timing": { caught: [1, 14], each: [0.19, 2] },
  // Liters of spray in a liter of canopy.
  "tree-row-volume": {
    height: [2, 5],
    width: [1, 3.1],
    rowSpacing: [3, 7.4],
    spray: [0.9e-4, 1.6e-4],
  },
};
// Liters per square meter: of spray for loads, of product elsewhere.
const RATES: Partial<Record<PracticeTopic, readonly [number, number]>> = {
  "tank-loads": [5 * 9.354e-4, 200 * 9.354e-4],
  "lawn-rate": [0.4e-4, 13e-4],
  // Kilograms per square meter.
  granules: [4e-3, 31e-3],
  "dry-product": [0.2e-4, 5e-4],
  // Liters per meter of row.
  "row-length": [0.4e-4, 7e-4],
  // Liters in a liter.
  injector: [1e-4, 20e-4],
};
const PRODUCT_RATE = [0.3e-4, 6e-4] as const;

/** The number of an answer; letters have none. */
const numberOf = (answer: PracticeAnswer) => (typeof answer === "object" ? answer.value : answer);

describe.each(CASES)("practice problems on %s in %s units", (topic, units) => {
  const problems = Array.from({ length: SEEDS }, (_, seed) => practiceProblem(topic, seed, { units }));

  it("have the answer that plain arithmetic gives", () => {
    for (const { given, answer, problem } of problems) {
      if (topic === "mixing-order") {
        const order = ["water-conditioner", "WP", "WG", "SC", "EC", "adjuvant"];
        const codes = [...String(answer)].map(
          (letter) => (given.products as string[])["ABCDEF".indexOf(letter)],
        );
        expect(codes).toEqual(order.filter((code) => codes.includes(code)));
        expect(codes.length).toBe((given.products as string[]).length);
        continue;
      }
      const found = SOLVERS[topic](given);
      expect(Math.abs(si(answer) / found - 1), problem).toBeLessThan(1e-9);
    }
  });

  it("are set in round figures of a realistic size", () => {
    for (const { given, problem, seed } of problems) {
      for (const [name, one] of Object.entries(given)) {
        for (const figure of Array.isArray(one) ? one : [one]) {
          if (typeof figure === "string") continue;
          const value = typeof figure === "number" ? figure : (figure as Quantity).value;
          expect(Number(value.toPrecision(4)), `${seed} ${name}: ${problem}`).toBe(value);
          const [least, most] =
            name === "rate"
              ? (RATES[topic] ?? PRODUCT_RATE)
              : (ON_TREES[topic]?.[name] ?? (REALISTIC[name] as [number, number]));
          expect(si(figure as Quantity), `${seed} ${name}: ${problem}`).toBeGreaterThanOrEqual(least);
          expect(si(figure as Quantity), `${seed} ${name}: ${problem}`).toBeLessThanOrEqual(most);
        }
      }
      // Every figure stands in the text, and no place is left unfilled.
      expect(problem).not.toMatch(/[{}]|undefined|NaN/);
    }
  });

  it("come to answers that end after three figures, and that a field could have", () => {
    for (const { answer, problem, working } of problems) {
      const value = numberOf(answer);
      // As it is written out, without noise of the arithmetic.
      if (typeof value === "number") expect(Number(value.toPrecision(3)), problem).toBe(value);
      if (topic.endsWith("calibration")) {
        expect(si(answer), problem).toBeGreaterThan(5 * 9.354e-4);
        expect(si(answer), problem).toBeLessThan(200 * 9.354e-4);
      }
      if (topic.endsWith("area")) expect(si(answer), problem).toBeLessThan(20_000);
      if (topic === "tank-loads") expect(answer).toBeLessThanOrEqual(12);
      if (topic === "household-measure") expect(answer).toBeLessThanOrEqual(16);
      // A tenth of a milliliter at the least.
      if (typeof answer === "object" && !topic.endsWith("area"))
        expect(si(answer), problem).toBeGreaterThan(1e-4 / 1000);
      expect(working.length).toBeGreaterThan(topic === "mixing-order" ? -1 : 0);
    }
  });

  it("are the same again from the same seed, and many different ones from different seeds", () => {
    for (const problem of problems.slice(0, 20)) {
      expect(practiceProblem(topic, problem.seed as number, { units })).toEqual(problem);
    }
    expect(new Set(problems.map(({ problem }) => problem)).size).toBeGreaterThan(Math.min(200, SEEDS / 2));
    // Each wording has its turn.
    expect(
      new Set(problems.map(({ problem }) => problem.replace(/\d[\d.,]*/g, "").slice(0, 12))).size,
    ).toBeGreaterThan(3);
  });

  it("have working that ends in the answer and is true as printed", () => {
    const read = numberReader("en-US");
    for (const problem of problems.slice(0, 50)) {
      if (topic === "mixing-order") continue;
      const last = problem.working.at(-1)?.result;
      expect(si(last) / si(problem.answer), problem.problem).toBeCloseTo(1, 9);
      expect(typeof last === "object" && last.unit).toBe(
        typeof problem.answer === "object" && problem.answer.unit,
      );
      const { blocks } = practiceSheet([problem], { key: "long" });
      const lines = blocks
        .flatMap((block) => (block.kind === "group" ? block.blocks : []))
        .flatMap((block) => (block.kind === "lines" ? block.lines : []));
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) {
        expectPrintedTrue(line, { read, digits: 6, functions: ENGLISH_WORDS.functions });
      }
    }
  });

  it("are the same as problems from their figures", () => {
    for (const { given, answer, mistakes, working } of problems.slice(0, 20))
      expect(problemFrom(topic, given, { units })).toMatchObject({ given, answer, mistakes, working, units });
  });
});

describe("the results of the steps before the answer", () => {
  const { numRuns } = runs(3000);

  it("are never right, and each is found as a mistake with a name", () => {
    const answers = CASES.flatMap(([topic, units], i) =>
      Array.from({ length: Math.ceil(numRuns / CASES.length) }, (_, seed) => {
        const problem = practiceProblem(topic, 1000 * i + seed, { units });
        const { answer, working } = problem;
        const isChangeOfGiven = ({ id, about = "" }: (typeof working)[number]) =>
          id === "units.convert" && !working.some((line) => line.id === about);
        return working
          .filter((line) => !isChangeOfGiven(line))
          .map(({ result }) => result)
          .filter((result) => !isNear(result, answer))
          .map((result) => [problem, result] as const);
      }).flat(),
    );
    expect(answers.length).toBeGreaterThan(numRuns);
    for (const [problem, result] of answers) {
      const { verdict, mistakes } = checkAnswer(problem, result);
      expect([verdict, mistakes.length], `${problem.problem} ${JSON.stringify(result)}`).toEqual([
        "mistake",
        1,
      ]);
      expect(mistakes[0]?.mistake, `${problem.problem} ${JSON.stringify(result)}`).not.toBe(
        "other-kind-of-unit",
      );
    }
  });
});

/** Whether a step's result or its mere number is within 5% of the answer: nobody can say then that it was not meant. */
function isNear(result: Quantity | number, answer: PracticeAnswer): boolean {
  const numbers = Number(numberOf(result)) / Number(numberOf(answer));
  return [si(result) / si(answer), numbers].some((times) => Math.abs(times - 1) <= 0.05);
}

describe("the common wrong answers", () => {
  const { numRuns } = runs(10_000);

  it("are apart from the right one and from each other by more than the tolerance, and each is found again", () => {
    let checks = 0;
    for (let i = 0; i < numRuns; i++) {
      const [topic, units] = CASES[i % CASES.length] as (typeof CASES)[number];
      const problem = practiceProblem(topic, 100_000 + i, { units });
      const { mistakes, answer } = problem;
      expect(mistakes.length, problem.problem).toBeGreaterThanOrEqual(2);
      const all = [answer, ...mistakes.map((one) => one.answer)].map(numberOf);
      // Nobody rounds a count: 12.2 spoons are another answer than 12.
      const apart = typeof answer === "number" ? 1e-9 : 0.019;
      for (const [k, a] of all.entries())
        for (const b of all.slice(k + 1))
          if (typeof a === "number" && typeof b === "number")
            expect(Math.abs(a - b), problem.problem).toBeGreaterThan(apart * Math.max(a, b));
          else expect(a).not.toBe(b);
      expect(checkAnswer(problem, answer).verdict).toBe("right");
      // A few of each, since every check works all of them out.
      for (const wrong of [mistakes[i % mistakes.length], mistakes.at(-1)]) {
        if (wrong === undefined) continue;
        const { verdict, mistakes: found } = checkAnswer(problem, wrong.answer);
        expect([verdict, found.map(({ mistake }) => mistake)], problem.problem).toEqual([
          "mistake",
          [wrong.mistake],
        ]);
        checks++;
      }
    }
    expect(checks).toBe(2 * numRuns);
  });
});
