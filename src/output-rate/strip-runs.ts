import { AMOUNT, amountsAgree } from "../units/amounts.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { list, type ObjectField, object, optional, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { quantity } from "../units/quantity-field.js";
import { finite, positive } from "../units/result.js";
import type { Fraction, Mass, MassRate, Quantity, Volume, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { linesOfStrip, rateOfStrip, type StripRun, stripRunOf } from "./strip.js";

/**
 * Several runs over a test strip.
 *
 * @typeParam A - a volume for a sprayer, a mass for a spreader
 */
export interface StripRunsInput<A extends Volume | Mass = Volume> {
  /** The runs, 2 to 500; they need not be over the same strip. */
  readonly runs: readonly StripRun<A>[];
  /**
   * How far a run may lie from the mean of the others. More than 0; 5% unless given: common practice, no source.
   */
  readonly limit?: Fraction | undefined;
}

// Nobody walks a strip more often; a longer list is a mistake in the input.
const MOST_RUNS = 500;

/* @__NO_SIDE_EFFECTS__ */
function stripRunsOf(amounts: readonly ("volume" | "mass")[]): ObjectField<StripRunsInput<Volume | Mass>> {
  return object<StripRunsInput<Volume | Mass>>(
    {
      runs: list("The runs, 2 to 500; they need not be over the same strip.", stripRunOf(amounts), {
        least: 2,
        most: MOST_RUNS,
      }),
      // A statistical test is no help here: Grubbs's test needs more runs than anyone walks.
      limit: optional(
        quantity(
          "How far a run may lie from the mean of the others. More than 0; 5% unless given: common practice, no source.",
          "fraction",
        ),
      ),
    },
    [runsAgree],
  );
}

function runsAgree({ runs }: Partly<StripRunsInput<Volume | Mass>>, check: Check): void {
  if (runs === undefined) return;
  amountsAgree(
    runs.map(({ used }) => used),
    (at) => `runs[${at}].used`,
    check,
  );
}

/** Several runs over a test strip, of a sprayer. */
export const STRIP_RUNS: ObjectField<StripRunsInput> = stripRunsOf(["volume"]) as ObjectField<StripRunsInput>;

const ANY_STRIP_RUNS = stripRunsOf(AMOUNT);

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
    /** How far it lies from the mean of the other runs, in percent of that mean; below 0 where it is lower. */
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
 * @param input - the runs, and the limit where it is not to be 5%
 * @returns rates in the units of the first run, `gal/ac`, `imp_gal/ac` or L/ha (lb/ac or kg/ha for masses)
 * @throws SprayMathError `too-few` for fewer than two runs, `out-of-range` for more than 500, or what {@link stripRate} throws, with the run in the path:
 * `runs[1].used`
 *
 * @example
 * ```ts
 * import { stripRuns } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
 * const runs = [2, 2.1, 2.5].map((liters) => ({ ...strip, used: qty(liters, "L") }));
 * console.log(stripRuns({ runs }).rate); // { value: 220, unit: 'L/ha' }
 * console.log(stripRuns({ runs }).standsOut); // 2
 * ```
 */
export function stripRuns(input: StripRunsInput<Volume>): StripRuns<VolumeRate>;
export function stripRuns(input: StripRunsInput<Mass>): StripRuns<MassRate>;
export function stripRuns(
  input: StripRunsInput<Volume> | StripRunsInput<Mass>,
): StripRuns<VolumeRate> | StripRuns<MassRate> {
  return runsTogether(checked(input, ANY_STRIP_RUNS)) as StripRuns<VolumeRate> | StripRuns<MassRate>;
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
  const given = checked(input, ANY_STRIP_RUNS);
  return linesOfRuns(given, runsTogether(given));
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
  const { runs, rate } = runsTogether(checked(input, ANY_STRIP_RUNS));
  return spreadLines(
    "output-rate.strip-runs",
    runs.map((run) => run.rate),
    rate,
  );
}

/** How far the runs of a calibration may differ unless given: common practice, no source. */
export const RUNS_LIMIT: Fraction = { value: 5, unit: "%" };
const MEAN_SOURCE = "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.1 and 1.3.5.6";

/** What several runs say together. Trusts its input. */
export function runsTogether(
  { runs, limit = RUNS_LIMIT }: StripRunsInput<Volume | Mass>,
  at = "",
): StripRuns<VolumeRate | MassRate> {
  const own = runs.map((run) => rateOfStrip(run, at));
  const { unit } = own[0] as VolumeRate | MassRate;
  const rateOf = (value: number) => ({ value, unit }) as VolumeRate | MassRate;
  const rates = own.map((rate) => rateOf(inUnit(rate, unit)));
  const mean = meanOf(rates);
  const deviations = rates.map(({ value }, place) => {
    const others = meanOf(rates.filter((_, other) => other !== place));
    return finite((100 * (value - others)) / others, at);
  });
  const most = inUnit(limit, "%");
  const beyond = deviations.map((deviation) => moreThan(Math.abs(deviation), most));
  const values = rates.map(({ value }) => value);
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const spread = standardDeviation(values, mean, at);
  return {
    rate: rateOf(positive(mean, at)),
    lowest: rateOf(lowest),
    highest: rateOf(highest),
    range: rateOf(highest - lowest),
    standardDeviation: rateOf(spread),
    coefficientOfVariation: { value: (100 * spread) / mean, unit: "%" },
    runs: rates.map((rate, place) => ({
      rate,
      deviation: { value: deviations[place] as number, unit: "%" },
    })),
    limit: { ...limit },
    agree: !beyond.includes(true),
    standsOut: rates.length > 2 && beyond.includes(true) ? furthest(deviations) : null,
  };
}

/** The working of the mean of {@link runsTogether}. Trusts its input. */
export function linesOfRuns(
  { runs }: StripRunsInput<Volume | Mass>,
  { rate }: StripRuns<VolumeRate | MassRate>,
): WorkingLine[] {
  const each = runs.map((run) => linesOfStrip(run));
  const rates = each.map((lines) => lines.at(-1)?.result as Quantity);
  return [
    ...each.flat(),
    ...formulaLines({
      id: "output-rate.strip-runs",
      formula: `(${rates.map((_, at) => `x${at + 1}`).join(" + ")}) / n`,
      terms: {
        ...Object.fromEntries(rates.map((one, at) => [`x${at + 1}`, [one, rate.unit] as const])),
        n: rates.length,
      },
      result: rate,
      source: MEAN_SOURCE,
    }),
  ];
}

function meanOf(rates: readonly Quantity[]): number {
  return sumOf(rates).value / rates.length;
}

function furthest(deviations: readonly number[]): number {
  const sizes = deviations.map(Math.abs);
  return sizes.indexOf(Math.max(...sizes));
}

/** The sample standard deviation, with n − 1. */
export function standardDeviation(values: readonly number[], mean: number, at = ""): number {
  const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
  return finite(Math.sqrt(squares / (values.length - 1)), at);
}

/** The lines of a standard deviation and of the coefficient of variation that follows from it. */
export function spreadLines(id: string, values: readonly Quantity[], mean: Quantity): WorkingLine[] {
  const { unit } = mean;
  const spread = standardDeviation(
    values.map(({ value }) => value),
    mean.value,
  );
  const symbols = values.map((_, at) => `x${at + 1}`);
  return [
    {
      id: `${id}-spread`,
      formula: `sqrt((${symbols.map((symbol) => `(${symbol} - mean)^2`).join(" + ")}) / (n - 1))`,
      terms: {
        ...Object.fromEntries(symbols.map((symbol, at) => [symbol, values[at] as Quantity])),
        mean,
        n: values.length,
      },
      result: { value: spread, unit },
      source: MEAN_SOURCE,
    },
    {
      id: `${id}-cv`,
      formula: "100 * spread / mean",
      terms: { spread: { value: spread, unit }, mean },
      result: { value: (100 * spread) / mean.value, unit: "%" },
      source: MEAN_SOURCE,
    },
  ];
}
