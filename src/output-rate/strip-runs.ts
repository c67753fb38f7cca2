import { SprayMathError, within } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { checkedList, checkedObject, inUnit } from "../units/guard.js";
import type { Fraction, Mass, MassRate, Quantity, Unit, Volume, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { toldIn, totalOf } from "./result.js";
import { type StripRun, stripRate, stripRateWorking } from "./strip.js";
import { toldLines } from "./told-lines.js";

/**
 * Several runs over a test strip.
 *
 * @typeParam A - a volume for a sprayer, a mass for a spreader
 */
export interface StripRunsInput<A extends Volume | Mass = Volume> {
  /** The runs, 2 to 500; they need not be over the same strip. */
  readonly runs: readonly StripRun<A>[];
  /**
   * How far a run may lie from the mean of the others, more than 0. 5 % unless given: common practice, no source. A
   * statistical test is no help here: Grubbs's test needs more runs than anyone walks.
   */
  readonly limit?: Fraction;
}

/**
 * What several runs over a test strip say together.
 *
 * @typeParam R - a volume or a mass per area
 */
export interface StripRuns<R extends VolumeRate | MassRate = VolumeRate> {
  /** The mean of the runs' rates: the rate to use. */
  readonly rate: R;
  /** The lowest run's rate. */
  readonly lowest: R;
  /** The highest run's rate. */
  readonly highest: R;
  /** The highest less the lowest. */
  readonly range: R;
  /** The standard deviation of the runs, with n − 1. */
  readonly standardDeviation: R;
  /** The standard deviation as a percentage of the mean. */
  readonly coefficientOfVariation: Fraction;
  /** Each run, in the order given. */
  readonly runs: readonly {
    /** The run's rate. */
    readonly rate: R;
    /** How far it lies from the mean of the other runs, in per cent of that mean; below 0 where it is lower. */
    readonly deviation: Fraction;
  }[];
  /** The limit that was used. */
  readonly limit: Fraction;
  /** Whether every run lies within the limit. */
  readonly agree: boolean;
  /**
   * The place in the list, from 0, of the one run that lies furthest from the others and beyond the limit: measure it
   * again. Null where no run is beyond the limit, and for two runs, of which neither can be called the odd one.
   */
  readonly standsOut: number | null;
}

/**
 * Puts several runs over a test strip together: mean rate, range, coefficient of variation, and the run that stands out.
 *
 * Formula: mean = Σ rate / n; CV = 100 × √(Σ (rate − mean)² / (n − 1)) / mean; a run's deviation = 100 × (rate − mean of
 * the others) / mean of the others.
 * Source: definitions of the mean and the sample standard deviation (NIST/SEMATECH e-Handbook of Statistical Methods,
 * 1.3.5.1 and 1.3.5.6); the limit is common practice, no source.
 *
 * @param input - the runs, and the limit where it is not to be 5 %
 * @returns rates in the units of the first run, gal/ac, imp_gal/ac or L/ha (lb/ac or kg/ha for masses)
 * @throws SprayMathError `too-few` for fewer than two runs, `out-of-range` for more than 500, or what {@link stripRate} throws, with the run in the path:
 * `runs[1].used`
 *
 * @example
 * ```ts
 * import { stripRuns } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
 * const runs = [2, 2.1, 2.5].map((litres) => ({ ...strip, used: qty(litres, "L") }));
 * console.log(stripRuns({ runs }).rate); // { value: 220, unit: 'L/ha' }
 * console.log(stripRuns({ runs }).standsOut); // 2
 * ```
 */
export function stripRuns(input: StripRunsInput<Volume>): StripRuns<VolumeRate>;
export function stripRuns(input: StripRunsInput<Mass>): StripRuns<MassRate>;
export function stripRuns(
  input: StripRunsInput<Volume> | StripRunsInput<Mass>,
): StripRuns<VolumeRate> | StripRuns<MassRate> {
  const { limit = DEFAULT_LIMIT } = checkedObject(input, "");
  const most = inUnit(limit, "%", "limit");
  const { rates, unit, mean } = checkedRuns(input);
  const lowest = Math.min(...rates);
  const highest = Math.max(...rates);
  const spread = standardDeviation(rates, mean);
  const deviations = rates.map((rate, at) => {
    const others = totalOf(rates.filter((_, place) => place !== at)) / (rates.length - 1);
    return (100 * (rate - others)) / others;
  });
  const beyond = deviations.map((deviation) => moreThan(Math.abs(deviation), most));
  const quantity = (value: number): Quantity => ({ value, unit });
  return {
    rate: quantity(mean),
    lowest: quantity(lowest),
    highest: quantity(highest),
    range: quantity(highest - lowest),
    standardDeviation: quantity(spread),
    coefficientOfVariation: { value: (100 * spread) / mean, unit: "%" },
    runs: rates.map((rate, at) => ({
      rate: quantity(rate),
      deviation: { value: deviations[at] as number, unit: "%" },
    })),
    limit: { value: limit.value, unit: limit.unit },
    agree: !beyond.includes(true),
    standsOut: rates.length > 2 && beyond.includes(true) ? furthest(deviations) : null,
  } as StripRuns<VolumeRate> | StripRuns<MassRate>;
}

/**
 * The working of the mean rate that {@link stripRuns} gives: each run, then the mean.
 *
 * @param input - as for {@link stripRuns}
 * @returns the lines; the last one's result is the mean rate
 * @throws SprayMathError as {@link stripRuns} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRuns } from "swath-to-spoon/working";
 *
 * const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
 * const lines = stripRuns({ runs: [{ ...strip, used: qty(2, "L") }, { ...strip, used: qty(2.1, "L") }] });
 * console.log(lines.at(-1)?.formula); // (x1 + x2) / n
 * ```
 */
export function stripRunsWorking(input: StripRunsInput<Volume> | StripRunsInput<Mass>): WorkingLine[] {
  const { told, unit, mean } = checkedRuns(input);
  const symbols = told.map((_, at) => `x${at + 1}`);
  return [
    ...input.runs.flatMap((run) => stripRateWorking(run)),
    ...toldLines({
      id: "output-rate.strip-runs",
      formula: `(${symbols.join(" + ")}) / n`,
      terms: {
        ...Object.fromEntries(symbols.map((symbol, at) => [symbol, [told[at] as Quantity, unit] as const])),
        n: told.length,
      },
      result: { value: mean, unit },
      source: MEAN_SOURCE,
    }),
  ];
}

/**
 * The working of the standard deviation and the coefficient of variation that {@link stripRuns} gives.
 *
 * @param input - as for {@link stripRuns}
 * @returns the lines; the last one's result is the coefficient of variation
 * @throws SprayMathError as {@link stripRuns} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRunsSpread } from "swath-to-spoon/working";
 *
 * const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
 * const lines = stripRunsSpread({ runs: [{ ...strip, used: qty(2, "L") }, { ...strip, used: qty(2.1, "L") }] });
 * console.log(lines.at(-1)?.formula); // 100 * spread / mean
 * ```
 */
export function stripRunsSpreadWorking(input: StripRunsInput<Volume> | StripRunsInput<Mass>): WorkingLine[] {
  const { rates, unit, mean } = checkedRuns(input);
  return spreadLines("output-rate.strip-runs", rates, mean, unit);
}

// Nobody walks a strip more often; a longer list is a mistake in the input.
const MOST_RUNS = 500;
const DEFAULT_LIMIT: Fraction = { value: 5, unit: "%" };
const MEAN_SOURCE = "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.1 and 1.3.5.6";

interface CheckedRuns {
  /** Each run's rate in its own system. */
  readonly told: readonly Quantity[];
  /** Each run's rate in the first run's unit. */
  readonly rates: readonly number[];
  readonly unit: Unit;
  readonly mean: number;
}

function checkedRuns(input: StripRunsInput<Volume> | StripRunsInput<Mass>): CheckedRuns {
  const { runs } = checkedObject(input, "");
  const list = checkedList<StripRun<Volume> | StripRun<Mass>>(runs, "runs", 2);
  if (list.length > MOST_RUNS) {
    throw new SprayMathError(
      "out-of-range",
      "runs",
      `Given ${list.length} runs; wanted ${MOST_RUNS} or fewer, those of one calibration.`,
    );
  }
  const told = list.map((run, at): Quantity => within(`runs[${at}]`, () => stripRate(run)));
  const { unit } = told[0] as Quantity;
  const rates = told.map((rate, at) =>
    convertValue(rate.value, rate.unit, unit, `runs[${at}].used`, "runs[0].used"),
  );
  const mean = toldIn({ value: totalOf(rates) / rates.length, unit }, unit).value;
  return { told, rates, unit, mean };
}

function furthest(deviations: readonly number[]): number {
  const sizes = deviations.map(Math.abs);
  return sizes.indexOf(Math.max(...sizes));
}

/** The sample standard deviation, with n − 1. */
export function standardDeviation(values: readonly number[], mean: number): number {
  return Math.sqrt(values.reduce((squares, value) => squares + (value - mean) ** 2, 0) / (values.length - 1));
}

/** The lines of a standard deviation and of the coefficient of variation that follows from it. */
export function spreadLines(id: string, values: readonly number[], mean: number, unit: Unit): WorkingLine[] {
  const symbols = values.map((_, at) => `x${at + 1}`);
  const spread = standardDeviation(values, mean);
  return [
    {
      id: `${id}-spread`,
      formula: `sqrt((${symbols.map((symbol) => `(${symbol} - mean)^2`).join(" + ")}) / (n - 1))`,
      terms: {
        ...Object.fromEntries(symbols.map((symbol, at) => [symbol, { value: values[at] as number, unit }])),
        mean: { value: mean, unit },
        n: values.length,
      },
      result: { value: spread, unit },
      source: MEAN_SOURCE,
    },
    {
      id: `${id}-cv`,
      formula: "100 * spread / mean",
      terms: { spread: { value: spread, unit }, mean: { value: mean, unit } },
      result: { value: (100 * spread) / mean, unit: "%" },
      source: MEAN_SOURCE,
    },
  ];
}
