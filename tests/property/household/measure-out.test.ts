import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import {
  type MeasureOutInput,
  type MeasuringRule,
  type MeasuringTool,
  measureOut,
  measuringRules,
  suggestMeasures,
  type ToolSetName,
  toolSet,
  toolSetNames,
} from "../../../src/household/index.ts";
import { convert, type MassUnit, type VolumeUnit } from "../../../src/units/index.ts";
import { measureOut as measureOutLines } from "../../../src/working/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

type Size = MeasuringTool["capacity"];

const UNITS: VolumeUnit[] = ["tsp", "tbsp", "fl_oz", "cup", "pt", "gal", "mL", "L", "imp_fl_oz", "au_tbsp"];

/** Exactly what a size says, in liters or kilograms: the decimal it is written as, times the definition of the unit. */
function exact({ value, unit }: Size): Rational {
  return Rational.fromDecimal(plain(value)).times(exactSize(unit));
}

function plain(value: number): string {
  const [mantissa = "", exponent = "0"] = String(value).split("e");
  const shift = Number(exponent);
  if (shift === 0) return mantissa;
  const [whole = "", part = ""] = mantissa.split(".");
  if (shift < 0) return `0.${"0".repeat(-shift - whole.length)}${whole}${part}`;
  return whole + part.padEnd(shift, "0");
}

const anyTool = fc
  .record({
    value: fc.oneof(
      fc.double({ min: 0.01, max: 500, noNaN: true }),
      fc.integer({ min: 1, max: 400 }).map((n) => n / 8),
    ),
    unit: fc.constantFrom(...UNITS.filter((unit) => unit !== "gal" && unit !== "L")),
    marks: fc.option(fc.integer({ min: 2, max: 100 }), { nil: undefined }),
    leastMarks: fc.option(fc.integer({ min: 1, max: 2 }), { nil: undefined }),
  })
  .map(({ value, unit, marks, leastMarks }): MeasuringTool => {
    if (marks === undefined) return { name: `${value} ${unit} spoon`, capacity: { value, unit } };
    const graduation = { value: value / marks, unit };
    return {
      name: `${value} ${unit} cylinder`,
      capacity: { value, unit },
      graduation,
      ...(leastMarks !== undefined && { least: { value: graduation.value * leastMarks, unit } }),
    };
  });

const volumeSets = toolSetNames.filter(
  (name) => toolSet(name)[0]?.capacity.unit !== undefined && !/scale/.test(name),
);
const anyTools = fc.oneof(
  fc.constantFrom(...volumeSets),
  fc.uniqueArray(anyTool, { minLength: 1, maxLength: 6, selector: ({ name }) => name }),
  fc
    .tuple(fc.constantFrom(...volumeSets), fc.constantFrom(...volumeSets))
    // Two sets may share tools, and a list holds each name once.
    .map(([a, b]) => [...new Map([...toolSet(a), ...toolSet(b)].map((tool) => [tool.name, tool])).values()]),
);

const anyInput: fc.Arbitrary<MeasureOutInput<VolumeUnit>> = fc.record({
  amount: fc.record({
    // Evenly over the orders of size.
    value: fc.double({ min: -3, max: 3, noNaN: true }).map((power) => 10 ** power),
    unit: fc.constantFrom(...UNITS),
  }),
  tools: anyTools as fc.Arbitrary<ToolSetName | MeasuringTool[]>,
  rule: fc.constantFrom(...measuringRules),
  limitPercent: fc.double({ min: 0.1, max: 50, noNaN: true }),
  closeEnoughPercent: fc.oneof(fc.constantFrom(undefined, 0, 2), fc.double({ min: 0, max: 50, noNaN: true })),
  maxScoops: fc.integer({ min: 1, max: 20 }),
});

/** To 12 digits: a float without its noise. */
const told = (value: number): number => Number(value.toPrecision(12));

describe("measureOut", () => {
  test.prop([anyInput], runs(1500))(
    "is never over under never over, never under under never under, exactly, for any dose, tools and limit",
    (input) => {
      const { amount, rule, limitPercent = 5, maxScoops = 0 } = input;
      const answer = measureOut(input);
      const dose = answer.ok ? answer : answer.best;
      if (dose === undefined) return;

      // What the parts really come to, worked out apart from the library.
      let sum = Rational.of(0);
      let scoops = 0;
      for (const { tool, count, each, amount: part } of dose.parts) {
        const fill = exact(each ?? tool.capacity);
        sum = sum.plus(fill.times(Rational.of(count)));
        scoops += count;
        expect(
          Math.abs(
            exact(part)
              .over(fill.times(Rational.of(count)))
              .toNumber() - 1,
          ),
        ).toBeLessThan(1e-15);
        const { graduation } = tool;
        expect(each === undefined).toBe(graduation === undefined);
        if (graduation && each) {
          // A mark that the tool has: a whole number of graduations, within its ends.
          expect(told(fill.over(exact(tool.capacity)).toNumber())).toBeLessThanOrEqual(1);
          expect(told(fill.over(exact(tool.least ?? graduation)).toNumber())).toBeGreaterThanOrEqual(1);
          const marks = fill.over(exact(graduation)).toNumber();
          expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-9);
        }
      }
      expect(dose.scoops).toBe(scoops);
      expect(scoops).toBeLessThanOrEqual(maxScoops);

      // The same where they differ by less than one part in 10^8; never over beyond that.
      const real = sum.over(exactSize(amount.unit));
      const noise = Rational.fromNumber(amount.value).times(Rational.of(1, 10n ** 8n));
      const wanted = Rational.fromDecimal(plain(amount.value));
      expect(Math.abs(dose.measured.value / real.toNumber() - 1)).toBeLessThan(1e-8);
      if (rule === "never-over") {
        expect(real.lessThan(wanted.plus(noise))).toBe(true);
        expect(dose.measured.value).toBeLessThanOrEqual(amount.value);
        expect(dose.error.value).toBeLessThanOrEqual(0);
      }
      if (rule === "never-under") {
        expect(wanted.minus(noise).lessThan(real)).toBe(true);
        expect(dose.measured.value).toBeGreaterThanOrEqual(amount.value);
        expect(dose.error.value).toBeGreaterThanOrEqual(0);
      }
      expect(dose.error.value).toBe(dose.measured.value - amount.value);
      const off = Math.abs(told(dose.errorPercent));
      if (answer.ok) expect(off).toBeLessThanOrEqual(told(limitPercent));
      else expect(off).toBeGreaterThan(told(limitPercent));
    },
  );

  test.prop(
    [anyInput, fc.array(fc.nat({ max: 3 }), { minLength: 6, maxLength: 6 }), fc.constantFrom(-1, 0, 1)],
    runs(1000),
  )(
    "finds an amount that the tools make without error under every rule, noise in the last digit aside",
    (input, counts, noise) => {
      const tools = typeof input.tools === "string" ? toolSet(input.tools) : input.tools;
      let sum = Rational.of(0);
      let scoops = 0;
      for (const [i, count] of counts.entries()) {
        const tool = tools[i];
        if (tool === undefined || tool.graduation) continue;
        sum = sum.plus(exact(tool.capacity).times(Rational.of(count)));
        scoops += count;
      }
      if (scoops === 0) return;
      const { unit } = input.amount;
      const value = sum.over(exactSize(unit)).toNumber() * (1 + noise * 2 ** -50);
      for (const rule of measuringRules)
        for (const closeEnoughPercent of [0, 1]) {
          const dose = measureOut({
            amount: { value, unit },
            tools,
            rule,
            closeEnoughPercent,
            maxScoops: 20,
          });
          expect(dose).toMatchObject({ ok: true });
          // Fewer scoops may be close enough; but none is off by more.
          if (dose.ok) {
            expect(Math.abs(dose.errorPercent)).toBeLessThanOrEqual(closeEnoughPercent * (1 + 1e-9));
            expect(dose.scoops).toBeLessThanOrEqual(scoops);
          }
        }
    },
  );

  test.prop([anyInput, fc.constantFrom(...UNITS)], runs(500))(
    "takes the same whatever unit the amount is told in",
    (input, unit) => {
      const other = measureOut({ ...input, amount: convert(input.amount, unit as never) });
      const one = measureOut(input);
      expect(other.ok).toBe(one.ok);
      const parts = (dose: typeof one): unknown => (dose.ok ? dose.parts : dose.best?.parts);
      expect(parts(other as typeof one)).toEqual(parts(one));
    },
  );

  test.prop([anyInput], runs(500))("suggests only what does", (input) => {
    const answer = measureOut({ ...input, labelPermitsDilution: true });
    if (answer.ok) return;
    const tools = typeof input.tools === "string" ? toolSet(input.tools) : input.tools;
    for (const one of suggestMeasures({ ...input, labelPermitsDilution: true })) {
      if (one.kind === "tool") {
        const dose = measureOut({ ...input, tools: [...tools, one.tool] });
        expect(dose.ok).toBe(true);
      } else if (one.kind === "batch") {
        const dose = measureOut({ ...input, amount: one.amount });
        expect(dose.ok).toBe(true);
        expect(one.amount.value / input.amount.value).toBe(one.times);
      } else {
        expect(Math.abs(one.stock.errorPercent)).toBeLessThanOrEqual((input.limitPercent ?? 0) * (1 + 1e-9));
      }
    }
  });

  test.prop([anyInput], runs(300))("shows working that is true line by line", (input) => {
    const lines = measureOutLines(input);
    const answer = measureOut(input);
    const dose = answer.ok ? answer : answer.best;
    if (dose === undefined) expect(lines).toEqual([]);
    else {
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toBe(dose.errorPercent);
    }
  });
});

interface Choice {
  readonly close: boolean;
  readonly scoops: number;
  /** How many different tools. */
  readonly tools: number;
  readonly error: Rational;
}

/** Close enough: by the scoops, the tools, the error. Else the closest, by the scoops. */
function better(one: Choice, other: Choice): boolean {
  if (one.close !== other.close) return one.close;
  if (one.close) {
    if (one.scoops !== other.scoops) return one.scoops < other.scoops;
    if (one.tools !== other.tools) return one.tools < other.tools;
    return one.error.lessThan(other.error);
  }
  if (one.error.lessThan(other.error)) return true;
  return !other.error.lessThan(one.error) && one.scoops < other.scoops;
}

/** Every choice of up to `maxScoops` fills of the tools, tried one by one. */
function bruteForce(
  tools: readonly (readonly Rational[])[],
  amount: Rational,
  rule: MeasuringRule,
  maxScoops: number,
  closeEnoughPercent: number,
): Choice | undefined {
  let best: Choice | undefined;
  const enough = amount.times(Rational.fromDecimal(plain(closeEnoughPercent))).over(Rational.of(100));
  const fills = tools.flatMap((sizes, tool) => sizes.map((size) => ({ size, tool })));
  function tryFrom(first: number, scoops: number, sum: Rational, used: readonly number[]): void {
    const over = amount.lessThan(sum);
    const under = sum.lessThan(amount);
    if (!(rule === "never-over" && over) && !(rule === "never-under" && under)) {
      const error = sum.minus(amount).abs();
      const choice = { close: !enough.lessThan(error), scoops, tools: new Set(used).size, error };
      if (best === undefined || better(choice, best)) best = choice;
    }
    if (scoops === maxScoops) return;
    for (let i = first; i < fills.length; i++) {
      const { size, tool } = fills[i] as { size: Rational; tool: number };
      tryFrom(i, scoops + 1, sum.plus(size), [...used, tool]);
    }
  }
  tryFrom(0, 0, Rational.of(0), []);
  return best;
}

/** Every single fill that a tool can have. */
function everyFill({ capacity, graduation, least }: MeasuringTool): Rational[] {
  if (graduation === undefined) return [exact(capacity)];
  const all: Rational[] = [];
  for (let k = 1; k <= 1000; k++) {
    const fill = exact(graduation).times(Rational.of(k));
    if (exact(capacity).lessThan(fill)) break;
    if (!fill.lessThan(exact(least ?? graduation))) all.push(fill);
  }
  return all;
}

const smallTool = fc
  .record({
    eighths: fc.integer({ min: 1, max: 40 }),
    unit: fc.constantFrom<VolumeUnit | MassUnit>("tsp", "mL", "metric_tsp", "imp_fl_oz"),
    marks: fc.option(fc.integer({ min: 2, max: 6 }), { nil: undefined }),
    least: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ eighths, unit, marks, least }): MeasuringTool => {
    const step = eighths / 8;
    if (marks === undefined) return { name: "spoon", capacity: { value: step, unit } as Size };
    return {
      name: "cylinder",
      capacity: { value: step * marks + 0.01, unit } as Size,
      graduation: { value: step, unit } as Size,
      least: { value: step * least, unit } as Size,
    };
  });

describe("measureOut against brute force", () => {
  test.prop(
    [
      fc.array(smallTool, { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 1, max: 4000 }),
      fc.constantFrom(...measuringRules),
      fc.integer({ min: 1, max: 4 }),
      fc.constantFrom(0, 0.33, 2, 5, 50),
    ],
    runs(1500),
  )("finds as good a choice on small cases", (drawn, hundredths, rule, maxScoops, closeEnoughPercent) => {
    const tools = drawn.map((tool, i) => ({ ...tool, name: `${tool.name} ${i}` }));
    const amount = { value: hundredths / 100, unit: "tsp" } as const;
    const answer = measureOut({ amount, tools, rule, maxScoops, limitPercent: 50, closeEnoughPercent });
    const dose = answer.ok ? answer : answer.best;
    const best = bruteForce(tools.map(everyFill), exact(amount), rule, maxScoops, closeEnoughPercent);
    if (best === undefined || best.scoops === 0) {
      expect(dose).toBe(undefined);
      return;
    }
    expect(dose?.scoops).toBe(best.scoops);
    // A single fill may be read more closely in a smaller tool, and tools of one size may stand for one another.
    if (best.close)
      expect(new Set(dose?.parts.map(({ tool }) => tool.name)).size).toBeLessThanOrEqual(best.tools);
    const error = best.error.over(exactSize("tsp")).toNumber();
    const off = Math.abs(dose?.error.value ?? Number.NaN) - error;
    expect(Math.abs(off)).toBeLessThanOrEqual(4e-16 * (amount.value + error));
  });
});
