import { SprayMathError } from "../errors.js";
import { decided, moreThan } from "../units/decide.js";
import { checkedChoice, checkedObject, inUnit } from "../units/guard.js";
import type {
  Flow,
  Fraction,
  Length,
  Mass,
  MassFlow,
  MassRate,
  Measured,
  Quantity,
  Speed,
  Unit,
  Volume,
  VolumeRate,
} from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { type Catches, type CatchInput, catchRate, checkedCatches } from "./catch.js";
import { toldIn, totalOf } from "./result.js";
import type { TimedDistance } from "./speed.js";
import { spreadLines, standardDeviation } from "./strip-runs.js";
import { toldLines } from "./told-lines.js";

/**
 * What each nozzle is held against. Handbooks differ, so the choice is the caller's and the result names it.
 *
 * - `mean`: the average of all the nozzles
 * - `others`: the average of the other nozzles
 * - `rated`: a flow that is given: the maker's figure, or that of a new nozzle of the same kind
 * - `spread`: nothing but the others' spread: the highest less the lowest, against the average
 */
export type NozzleReference = "mean" | "others" | "rated" | "spread";

/** What to do with a nozzle: leave it, clean it and catch again, or replace it. */
export type NozzleAction = "keep" | "clean" | "replace";

/** The rule that nozzles were judged by. */
export interface NozzleRule {
  /** What they were held against. */
  readonly against: NozzleReference;
  /** How far they may be off. */
  readonly limit: Fraction;
  /** Where the limit comes from; `the caller` for one that was given. */
  readonly source: string;
}

/**
 * What the nozzles put out, and how to judge it.
 *
 * @typeParam A - a volume for nozzles, a mass for the outlets of a spreader
 */
export interface NozzleCheckInput<A extends Volume | Mass = Volume> extends Catches<A> {
  /** What to hold each nozzle against. */
  readonly against: NozzleReference;
  /** The flow that a nozzle of this kind should have at this pressure; with `against: "rated"` only. More than 0. */
  readonly rated?: A extends Volume ? Flow : MassFlow;
  /**
   * How far off is too far, more than 0. Unless given: 5 % of the mean (MontGuide MT 2000-14; Alberta Agdex 606-1), 10 % of the
   * others' mean (Mississippi State University Extension), 10 % of the rated flow (USGA Green Section), 10 % of spread
   * (Texas Cooperative Extension). Several handbooks allow 10 % of the mean: give that limit to follow them.
   */
  readonly limit?: Fraction;
  /** The working speed, where the rate that the boom really gives is wanted too; with `width`. */
  readonly speed?: Measured<Speed> | TimedDistance;
  /** The width that one nozzle treats, or a row's nozzles together; with `speed`. */
  readonly width?: Measured<Length>;
  /** How many nozzles spray the same row or band; 1 unless given. */
  readonly nozzlesPerRow?: number;
}

/** One nozzle's verdict. */
export interface NozzleVerdict {
  /** What it puts out. */
  readonly flow: Flow | MassFlow;
  /** How far that is from what it is held against (from the mean, for a rule on spread), in per cent; below 0 where lower. */
  readonly deviation: Fraction;
  /** What to do with it. A low nozzle is cleaned first, and replaced if it stays low; a high one is worn. */
  readonly action: NozzleAction;
}

/** The verdict on a boom. */
export interface NozzleCheck {
  /** Each nozzle, in the order given. */
  readonly nozzles: readonly NozzleVerdict[];
  /** The mean flow of a nozzle. */
  readonly mean: Flow | MassFlow;
  /** The flows that are still within the limit; only where all nozzles are held against one figure (`mean`, `rated`). */
  readonly allowed?: {
    /** The lowest flow allowed. */
    readonly lowest: Flow | MassFlow;
    /** The highest flow allowed. */
    readonly highest: Flow | MassFlow;
  };
  /** The highest flow less the lowest, in per cent of the mean. */
  readonly spread: Fraction;
  /** The standard deviation of the whole boom (n − 1) in per cent of the mean. */
  readonly coefficientOfVariation: Fraction;
  /** The places, from 0, of the nozzles to clean. */
  readonly clean: readonly number[];
  /** The places, from 0, of the nozzles to replace. */
  readonly replace: readonly number[];
  /** The rule that was used. */
  readonly rule: NozzleRule;
  /** The rate that the boom really gives; only where speed and width were given. */
  readonly rate?: VolumeRate | MassRate;
}

/**
 * Compares what the nozzles of a boom put out, and says which to clean and which to replace.
 *
 * Formula: deviation = 100 × (flow − reference) / reference; CV = 100 × √(Σ (flow − mean)² / (n − 1)) / mean; spread =
 * 100 × (highest − lowest) / mean. A nozzle at the limit passes. Under a rule on spread, a boom that fails has the nozzle
 * (or nozzles) furthest from the median named.
 * Source: Sprayer Calibrations and Calculations (Montana State University Extension Service, MontGuide MT 2000-14, 2000),
 * Crop Protection (Alberta Agriculture, Agdex 606-1), The 10-Percent Rule (USGA Green Section, 2016), Simple steps to
 * accurate sprayer calibration (Mississippi State University Extension, 2009), Take time to calibrate your sprayer
 * (Texas Cooperative Extension).
 *
 * @param input - at least two catches, their time, what to hold them against
 * @returns each nozzle's deviation and what to do, the boom's spread and CV, the rule used, and the rate where it follows
 * @throws SprayMathError `too-few` for fewer than two catches, `out-of-range` for more than 500, `unknown-choice`,
 * `missing` for a rule on the rated flow without one or for only one of speed and width, `conflict` for a rated flow that
 * the rule does not use, `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { checkNozzles } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const catches = [30, 30, 31, 36, 27, 30].map((ounces) => qty(ounces, "fl_oz"));
 * const check = checkNozzles({ catches, time: qty(1, "min"), against: "mean" });
 * console.log(check.clean, check.replace); // [ 4 ] [ 3 ]
 * console.log(check.rule.limit); // { value: 5, unit: '%' }
 * ```
 */
export function checkNozzles(input: NozzleCheckInput<Volume> | NozzleCheckInput<Mass>): NozzleCheck {
  const { values, mean, unit, against, limit, source, reference } = checkedBoom(input);
  const most = inUnit(limit, "%", "limit");
  const spread = (100 * (Math.max(...values) - Math.min(...values))) / mean;
  const deviations = values.map((value, at) => percentFrom(value, reference(at)));
  const odd = against === "spread" ? furthestFromMedian(values) : undefined;
  const actions = deviations.map((deviation, at): NozzleAction => {
    const beyond = odd ? moreThan(spread, most) && odd.includes(at) : moreThan(Math.abs(deviation), most);
    if (!beyond) return "keep";
    return deviation > 0 ? "replace" : "clean";
  });
  const flow = (value: number): Flow | MassFlow => toldIn({ value, unit }, unit as Flow["unit"]);
  const rate = boomRate(input);
  return {
    nozzles: values.map((value, at) => ({
      flow: flow(value),
      deviation: { value: deviations[at] as number, unit: "%" },
      action: actions[at] as NozzleAction,
    })),
    mean: flow(mean),
    ...((against === "mean" || against === "rated") && most < 100
      ? {
          allowed: {
            lowest: flow(reference(0) * (1 - most / 100)),
            highest: flow(reference(0) * (1 + most / 100)),
          },
        }
      : {}),
    spread: { value: spread, unit: "%" },
    coefficientOfVariation: { value: (100 * standardDeviation(values, mean)) / mean, unit: "%" },
    clean: placesOf(actions, "clean"),
    replace: placesOf(actions, "replace"),
    rule: { against, limit: { value: limit.value, unit: limit.unit }, source },
    ...(rate && { rate }),
  };
}

/**
 * The working of {@link checkNozzles}: the mean, each nozzle's deviation, and the boom's coefficient of variation.
 *
 * @param input - as for {@link checkNozzles}
 * @returns the lines; the last one's result is the coefficient of variation
 * @throws SprayMathError as {@link checkNozzles} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { checkNozzles } from "swath-to-spoon/working";
 *
 * const catches = [qty(30, "fl_oz"), qty(31, "fl_oz")];
 * const lines = checkNozzles({ catches, time: qty(1, "min"), against: "mean" });
 * console.log(lines.map((line) => line.formula).slice(2, 5).join(", ")); // (x1 + x2) / n, 100 * (flow - reference) / reference, 100 * (flow - reference) / reference
 * ```
 */
export function checkNozzlesWorking(input: NozzleCheckInput<Volume> | NozzleCheckInput<Mass>): WorkingLine[] {
  checkNozzles(input);
  const { values, mean, unit, source, reference } = checkedBoom(input);
  const first = (input.catches[0] as Quantity).unit;
  const flow = (value: number): Quantity => ({ value, unit });
  const symbols = values.map((_, at) => `x${at + 1}`);
  return [
    ...values.flatMap((value, at) =>
      toldLines({
        id: "output-rate.nozzle-flow",
        formula: "caught / time",
        terms: { caught: [input.catches[at] as Quantity, first], time: [input.time, input.time.unit] },
        result: flow(value),
        source: "definition of a flow",
      }),
    ),
    ...toldLines({
      id: "output-rate.nozzle-mean",
      formula: `(${symbols.join(" + ")}) / n`,
      terms: {
        ...Object.fromEntries(
          symbols.map((symbol, at) => [symbol, [flow(values[at] as number), unit] as const]),
        ),
        n: values.length,
      },
      result: flow(mean),
      source: "definition of a mean",
    }),
    ...values.flatMap((value, at) =>
      toldLines({
        id: "output-rate.nozzle-deviation",
        formula: "100 * (flow - reference) / reference",
        terms: { flow: [flow(value), unit], reference: [flow(reference(at)), unit] },
        result: { value: percentFrom(value, reference(at)), unit: "%" },
        source,
      }),
    ),
    ...spreadLines("output-rate.nozzle", values, mean, unit),
  ];
}

const RULES: Record<NozzleReference, { limit: Fraction; source: string }> = {
  mean: {
    limit: { value: 5, unit: "%" },
    source:
      "Sprayer Calibrations and Calculations, Montana State University Extension Service, MontGuide MT 2000-14, 2000; Crop Protection, Alberta Agriculture, Agdex 606-1",
  },
  others: {
    limit: { value: 10, unit: "%" },
    source: "Simple steps to accurate sprayer calibration, Mississippi State University Extension, 2009",
  },
  rated: { limit: { value: 10, unit: "%" }, source: "The 10-Percent Rule, USGA Green Section, 2016" },
  spread: {
    limit: { value: 10, unit: "%" },
    source: "Take time to calibrate your sprayer, Texas Cooperative Extension",
  },
};

interface CheckedBoom {
  /** Each nozzle's flow, in `unit`. */
  readonly values: readonly number[];
  readonly mean: number;
  readonly unit: Unit;
  readonly against: NozzleReference;
  readonly limit: Fraction;
  readonly source: string;
  /** What the nozzle at a place is held against. */
  readonly reference: (at: number) => number;
}

function checkedBoom(input: NozzleCheckInput<Volume> | NozzleCheckInput<Mass>): CheckedBoom {
  const { against, rated, limit } = checkedObject(input, "");
  const { unit: caught, values: amounts, time } = checkedCatches(input, 2);
  checkedChoice(against, ["mean", "others", "rated", "spread"], "against");
  const unit = `${caught}/${input.time.unit}` as Unit;
  const values = amounts.map((amount) => amount / time);
  const total = totalOf(values);
  const mean = toldIn({ value: total / values.length, unit }, unit).value;
  const given = ratedFlow(against, rated, unit);
  return {
    values,
    mean,
    unit,
    against,
    limit: limit === undefined ? RULES[against].limit : limit,
    source: limit === undefined ? RULES[against].source : "the caller",
    reference: (at) =>
      given ?? (against === "others" ? (total - (values[at] as number)) / (values.length - 1) : mean),
  };
}

function ratedFlow(
  against: NozzleReference,
  rated: Flow | MassFlow | undefined,
  unit: Unit,
): number | undefined {
  if (against === "rated") return inUnit<Unit>(rated as Quantity, unit, "rated");
  if (rated === undefined) return undefined;
  throw new SprayMathError(
    "conflict",
    "rated",
    `Given a rated flow and against: "${against}", which does not use it; wanted against: "rated", or no rated flow.`,
  );
}

function boomRate(
  input: NozzleCheckInput<Volume> | NozzleCheckInput<Mass>,
): VolumeRate | MassRate | undefined {
  const { catches, time, speed, width, nozzlesPerRow } = input;
  if (speed === undefined && width === undefined) return undefined;
  return catchRate({
    catches,
    time,
    speed,
    width,
    ...(nozzlesPerRow !== undefined && { nozzlesPerRow }),
  } as CatchInput);
}

function percentFrom(value: number, reference: number): number {
  return (100 * (value - reference)) / reference;
}

function furthestFromMedian(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  const median = ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
  const away = values.map((value) => decided(Math.abs(value - median)).toNumber());
  const most = Math.max(...away);
  return away.flatMap((distance, at) => (distance === most ? [at] : []));
}

function placesOf(actions: readonly NozzleAction[], wanted: NozzleAction): number[] {
  return actions.flatMap((action, at) => (action === wanted ? [at] : []));
}
