import { AMOUNT } from "../units/amounts.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { decided, moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { about, choice, count, object, optional, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { measured, quantity } from "../units/quantity-field.js";
import { finite, positive } from "../units/result.js";
import type {
  Flow,
  Fraction,
  Length,
  Mass,
  MassFlow,
  MassRate,
  Measured,
  Speed,
  Volume,
  VolumeRate,
} from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type Catches, catchesAgree, catchesOf, rateOfCatch, rowsAreWhole, WORKING_SPEED } from "./catch.js";
import type { TimedDistance } from "./speed.js";
import { spreadLines, standardDeviation } from "./strip-runs.js";

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
  /** The flow that a nozzle of this kind should have at this pressure, where nozzles are held against it. More than 0. */
  readonly rated?: (A extends Volume ? Flow : MassFlow) | undefined;
  /**
   * How far off is too far. More than 0. Unless given: 5% of the mean (MontGuide MT 2000-14; Alberta Agdex 606-1), 10% of
   * the others' mean (Mississippi State University Extension), 10% of the rated flow (USGA Green Section), 10% of spread
   * (Texas Cooperative Extension). Several handbooks allow 10% of the mean: give that limit to follow them.
   */
  readonly limit?: Fraction | undefined;
  /** The working speed, for the rate that the boom really gives; with the width. */
  readonly speed?: Measured<Speed> | TimedDistance | undefined;
  /** The width that one nozzle treats, or a row's nozzles together; with the speed. */
  readonly width?: Measured<Length> | undefined;
  /** How many nozzles spray the same row or band. A whole number; 1 unless given. */
  readonly nozzlesPerRow?: number | undefined;
}

type AnyNozzleCheck = Omit<NozzleCheckInput<Volume | Mass>, "rated"> & {
  /** The flow that a nozzle of this kind should have at this pressure, where nozzles are held against it. More than 0. */
  readonly rated?: Flow | MassFlow | undefined;
};

const NOZZLES = object<AnyNozzleCheck>(
  {
    ...catchesOf(AMOUNT, 2).fields,
    against: choice("What to hold each nozzle against.", ["mean", "others", "rated", "spread"]),
    rated: optional(
      quantity(
        "The flow that a nozzle of this kind should have at this pressure, where nozzles are held against it. More than 0.",
        ["flow", "massFlow"],
      ),
    ),
    limit: optional(
      quantity(
        "How far off is too far. More than 0. Unless given: 5% of the mean (MontGuide MT 2000-14; Alberta Agdex 606-1), 10% of " +
          "the others' mean (Mississippi State University Extension), 10% of the rated flow (USGA Green Section), 10% of spread " +
          "(Texas Cooperative Extension). Several handbooks allow 10% of the mean: give that limit to follow them.",
        "fraction",
      ),
    ),
    speed: optional(
      about("The working speed, for the rate that the boom really gives; with the width.", WORKING_SPEED),
    ),
    width: optional(
      measured("The width that one nozzle treats, or a row's nozzles together; with the speed.", "length"),
    ),
    nozzlesPerRow: optional(
      count("How many nozzles spray the same row or band. A whole number; 1 unless given."),
    ),
  },
  [catchesAgree, rowsAreWhole, ratedFits, speedWithWidth],
);

/** Notes a rated flow that is missing, or that nothing is held against, or of another kind than the catches. */
function ratedFits({ against, rated, catches }: Partly<AnyNozzleCheck>, check: Check): void {
  if (against === undefined) return;
  if (against === "rated" && rated === undefined && !check.hasFault("rated"))
    check.fault("missing", "rated-missing", "rated", "Enter the flow that each nozzle should have.");
  if (against !== "rated" && rated !== undefined)
    check.fault(
      "conflict",
      "rated-unused",
      "rated",
      "This flow isn't used here. Leave it out, or choose to compare the nozzles with it.",
    );
  const [first] = catches ?? [];
  if (rated === undefined || first === undefined) return;
  if ((dimensionOf(rated.unit) === "flow") === (dimensionOf(first.unit) === "volume")) return;
  check.fault(
    "wrong-dimension",
    "rated-differs",
    "rated",
    "The rated flow of {given} doesn't fit catches such as {first}. Use volumes for both, or weights for both.",
    { given: rated, first: { value: first.value, unit: first.unit } },
  );
}

/** Notes a speed without a width, and the reverse: a rate takes both. */
function speedWithWidth({ speed, width }: Partly<AnyNozzleCheck>, check: Check): void {
  if ((speed === undefined) === (width === undefined)) return;
  const missing = speed === undefined ? "speed" : "width";
  if (check.hasFault(missing)) return;
  check.fault(
    "missing",
    "speed-and-width",
    missing,
    "For the rate of the boom, enter both the speed and the width.",
  );
}

/** One nozzle's verdict. */
export interface NozzleVerdict {
  /** What it puts out. */
  readonly flow: Flow | MassFlow;
  /** How far that is from what it is held against (from the mean, for a rule on spread), in percent; below 0 where lower. */
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
  readonly allowed?:
    | {
        /** The lowest flow allowed. */
        readonly lowest: Flow | MassFlow;
        /** The highest flow allowed. */
        readonly highest: Flow | MassFlow;
      }
    | undefined;
  /** The highest flow less the lowest, in percent of the mean. */
  readonly spread: Fraction;
  /** The standard deviation of the whole boom (n − 1) in percent of the mean. */
  readonly coefficientOfVariation: Fraction;
  /** The places, from 0, of the nozzles to clean. */
  readonly clean: readonly number[];
  /** The places, from 0, of the nozzles to replace. */
  readonly replace: readonly number[];
  /** The rule that was used. */
  readonly rule: NozzleRule;
  /** The rate that the boom really gives; only where speed and width were given. */
  readonly rate?: VolumeRate | MassRate | undefined;
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
  const given = checked(input, NOZZLES);
  const { flows, mean, deviations, limit, source } = workedBoom(given);
  const { against, speed, width } = given;
  const most = inUnit(limit, "%");
  const values = flows.map(({ value }) => value);
  const spread = (100 * (Math.max(...values) - Math.min(...values))) / mean.value;
  const odd = against === "spread" ? furthestFromMedian(values) : undefined;
  const actions = deviations.map((deviation, at): NozzleAction => {
    const beyond = odd ? moreThan(spread, most) && odd.includes(at) : moreThan(Math.abs(deviation), most);
    if (!beyond) return "keep";
    return deviation > 0 ? "replace" : "clean";
  });
  const figure = against === "rated" ? inUnit(given.rated as Flow, mean.unit) : mean.value;
  const allowed = (share: number) =>
    ({ value: positive(figure * share), unit: mean.unit }) as Flow | MassFlow;
  return {
    nozzles: flows.map((flow, at) => ({
      flow,
      deviation: { value: deviations[at] as number, unit: "%" },
      action: actions[at] as NozzleAction,
    })),
    mean,
    ...((against === "mean" || against === "rated") &&
      most < 100 && { allowed: { lowest: allowed(1 - most / 100), highest: allowed(1 + most / 100) } }),
    spread: { value: finite(spread), unit: "%" },
    coefficientOfVariation: {
      value: finite((100 * standardDeviation(values, mean.value)) / mean.value),
      unit: "%",
    },
    clean: placesOf(actions, "clean"),
    replace: placesOf(actions, "replace"),
    rule: { against, limit: { ...limit }, source },
    ...(speed && width && { rate: rateOfCatch({ ...given, speed, width }) }),
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
  const given = checked(input, NOZZLES);
  const { flows, mean, references, deviations, source } = workedBoom(given);
  const { catches, time } = given;
  const caughtUnit = (catches[0] as Volume | Mass).unit;
  return [
    ...flows.flatMap((flow, at) =>
      formulaLines({
        id: "output-rate.nozzle-flow",
        formula: "caught / time",
        terms: { caught: [catches[at] as Volume | Mass, caughtUnit], time: [time, time.unit] },
        result: flow,
        source: "definition of a flow",
      }),
    ),
    ...formulaLines({
      id: "output-rate.nozzle-mean",
      formula: `(${flows.map((_, at) => `x${at + 1}`).join(" + ")}) / n`,
      terms: {
        ...Object.fromEntries(flows.map((flow, at) => [`x${at + 1}`, [flow, flow.unit] as const])),
        n: flows.length,
      },
      result: mean,
      source: "definition of a mean",
    }),
    ...flows.flatMap((flow, at) =>
      formulaLines({
        id: "output-rate.nozzle-deviation",
        formula: "100 * (flow - reference) / reference",
        terms: {
          flow: [flow, flow.unit],
          reference: [{ value: references[at] as number, unit: flow.unit }, flow.unit],
        },
        result: { value: deviations[at] as number, unit: "%" },
        source,
      }),
    ),
    ...spreadLines("output-rate.nozzle", flows, mean),
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

interface WorkedBoom {
  readonly flows: readonly (Flow | MassFlow)[];
  readonly mean: Flow | MassFlow;
  /** What each nozzle is held against, in the unit of the flows. */
  readonly references: readonly number[];
  /** How far each nozzle is off, in percent. */
  readonly deviations: readonly number[];
  readonly limit: Fraction;
  readonly source: string;
}

function workedBoom({ catches, time, against, rated, limit }: AnyNozzleCheck): WorkedBoom {
  const caughtUnit = (catches[0] as Volume | Mass).unit;
  const unit = `${caughtUnit}/${time.unit}` as Flow["unit"];
  const flowOf = (value: number): Flow | MassFlow => ({ value: positive(value), unit });
  const flows = catches.map((caught) => flowOf(inUnit(caught, caughtUnit) / time.value));
  const total = sumOf(flows).value;
  const mean = flowOf(total / flows.length);
  const references = flows.map(({ value }) => {
    if (rated !== undefined) return inUnit(rated, unit);
    return against === "others" ? (total - value) / (flows.length - 1) : mean.value;
  });
  const rule = RULES[against];
  return {
    flows,
    mean,
    references,
    deviations: flows.map(({ value }, at) => {
      const reference = references[at] as number;
      return finite((100 * (value - reference)) / reference);
    }),
    limit: limit ?? rule.limit,
    source: limit === undefined ? rule.source : "the caller",
  };
}

function furthestFromMedian(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  const median = ((sorted[Math.floor(middle)] as number) + (sorted[Math.ceil(middle)] as number)) / 2;
  const away = values.map((value) => decided(Math.abs(value - median)).toNumber());
  const most = Math.max(...away);
  return away.flatMap((distance, at) => (distance === most ? [at] : []));
}

function placesOf(actions: readonly NozzleAction[], one: NozzleAction): number[] {
  return actions.flatMap((action, at) => (action === one ? [at] : []));
}
