import type { Issue, Sentence } from "../errors.js";
import { marksFit, TANK_MARKS, type TankMarks } from "../tank-mix/tank-marks.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, decided, moreThan } from "../units/decide.js";
import {
  about,
  type Complete,
  flag,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { messageOf } from "../units/message.js";
import { orderOf } from "../units/quantity.js";
import { quantity, treatedArea } from "../units/quantity-field.js";
import { perUnit } from "../units/resolve.js";
import { atMost } from "../units/three-figures.js";
import type { AreaUnit, MassUnit, Quantity, TreatedArea, Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import type { Kit } from "./kit.js";
import { type NearestFills, nearestFills, percentOff, type Way } from "./measure.js";
import { amountOf, isWeight, type MeasuringTool } from "./measuring-tool.js";
import type { MeasuredPart } from "./parts.js";
import { MEASURING, type MeasuringInput, toolsFit, wayOf } from "./request.js";
import { type Effort, newEffort } from "./search.js";
import { scaleFor, toolsIn } from "./tools.js";

/** The input of {@link measureOut}. */
export interface MeasureOutInput<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit>
  extends MeasuringInput<U> {
  /** The treated area that this amount is for: the error is then given as product per area too. More than 0. */
  readonly perArea?: TreatedArea | undefined;
  /** True where the label permits diluting the product first: a dose too small may then be measured from a stock. */
  readonly labelPermitsDilution?: boolean | undefined;
  /** The volume of mix that this amount is for: another size of load is then suggested as a volume. More than 0. */
  readonly load?: Volume | undefined;
  /** What the tank holds: no larger load is suggested. More than 0. */
  readonly tank?: Volume | undefined;
  /** The tank's marks: another size of load is then one of them. Not without `load` and `tank`. */
  readonly marks?: TankMarks | undefined;
}

/** The fields of {@link MeasureOutInput}. */
export const MEASURE_OUT: ObjectField<MeasureOutInput> = /* @__PURE__ */ object<MeasureOutInput>(
  {
    ...MEASURING,
    perArea: optional(
      treatedArea(
        "The treated area that this amount is for: the error is then given as product per area too. More than 0.",
      ),
    ),
    labelPermitsDilution: optional(
      flag(
        "True where the label permits diluting the product first: a dose too small may then be measured from a stock.",
      ),
    ),
    load: optional(
      quantity(
        "The volume of mix that this amount is for: another size of load is then suggested as a volume. More than 0.",
        "volume",
      ),
    ),
    tank: optional(quantity("What the tank holds: no larger load is suggested. More than 0.", "volume")),
    marks: optional(
      about(
        "The tank's marks: another size of load is then one of them. Not without `load` and `tank`.",
        TANK_MARKS,
      ),
    ),
  },
  [toolsFit, marksFit, marksAreOfALoad],
);

/** Notes marks without the load and the tank that they are for. */
function marksAreOfALoad(given: Partly<MeasureOutInput>, check: Check): void {
  if (given.marks === undefined) return;
  const example = { value: 4, unit: check.system === "metric" ? "L" : "gal" };
  for (const field of ["load", "tank"] as const)
    if (given[field] === undefined && !check.hasFault(field))
      check.fault(
        "missing",
        "marks-of-a-load",
        field,
        "With the tank's marks, enter this too, such as {example}.",
        {
          example,
        },
      );
}

/** An amount as it is measured with tools. */
export interface MeasuredDose<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** What to take with which tool, the largest first. */
  readonly parts: readonly MeasuredPart[];
  /** What the parts come to, in the unit of the amount. */
  readonly measured: Quantity<U>;
  /** `measured` less the amount: less than 0 where under. */
  readonly error: Quantity<U>;
  /** The error in percent of the amount. */
  readonly errorPercent: number;
  /** The error as product per treated area, where `perArea` was given. */
  readonly rateError?: Quantity<`${U}/${AreaUnit}`> | undefined;
  /** How many times a tool is filled, in all. */
  readonly scoops: number;
}

/** The amount can be measured within the limit. */
export interface Measurable<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> extends MeasuredDose<U> {
  /** True: it can be measured. */
  readonly ok: true;
}

/** The amount cannot be measured within the limit. */
export interface NotMeasurable<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** False: do not measure it this way. */
  readonly ok: false;
  /** What is wrong, with the code `not-measurable`. */
  readonly issue: Issue;
  /** What the tools come nearest to under the rule: not to be used. Left out where it is nothing at all. */
  readonly best?: MeasuredDose<U> | undefined;
}

/**
 * Measures an amount of product with the tools at hand.
 *
 * Tries every combination of tools. Of those that are close enough, it takes the fewest scoops, then the fewest different tools,
 * then the smallest error. If none is close enough, it takes the smallest error, then the fewest scoops. Under `never-over` the
 * measured amount is never over the amount. Amounts that differ by less than 1 part in 10^8 count as equal, as a dose that is shared
 * out over loads does from the spoons it came from: `measured` is then the amount itself and the error 0.
 *
 * An amount that cannot be measured within the limit is an ordinary answer, which a form shows and a plan warns of. It comes
 * back as data (`ok: false`), and only misuse throws. {@link suggestMeasures} finds what would do instead.
 *
 * Formula: error = Σ(count × fill) − amount; errorPercent = error / amount × 100; rateError = error / area. The
 * limit of 5%, the 2% that are close enough and the 16 scoops are common practice, no source. The error is within one unit in the last place of the
 * amount.
 *
 * @param input - see {@link MeasureOutInput}
 * @returns the parts and the error, in the unit of the amount; or why it can't be measured
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` (an amount that is
 *   neither a volume nor a weight, or no tool for its kind), `wrong-area`, `out-of-range`, `too-few` (no tools),
 *   `unknown-choice` or `unknown-field`
 *
 * @example
 * ```ts
 * import { measureOut } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 * import { doseText } from "swath-to-spoon/worksheet";
 *
 * const dose = measureOut({ amount: qty(1.3, "fl_oz"), tools: "us-spoons", rule: "never-over" });
 * console.log(doseText(dose)); // 2 tablespoons + 1 teaspoon + 1/2 teaspoon + 1/4 teaspoon
 * if (dose.ok) console.log(dose.errorPercent.toFixed(1)); // -0.6
 * ```
 */
export function measureOut<U extends VolumeUnit | MassUnit>(
  input: MeasureOutInput<U>,
): Measurable<U> | NotMeasurable<U> {
  return doseOf(checked(input, MEASURE_OUT) as MeasureOutInput<U>);
}

/** An amount as it is measured, or why it can't be. Several doses may share an effort. Trusts its input. */
export function doseOf<U extends VolumeUnit | MassUnit>(
  input: MeasureOutInput<U>,
  at = "amount",
  effort: Effort = newEffort(),
): Measurable<U> | NotMeasurable<U> {
  const { kit, way } = wayOf(input, effort);
  const found = nearestFills(input.amount, kit, way, at);
  const dose = found && found.scoops > 0 ? measuredDose(input, found) : undefined;
  if (dose !== undefined && !moreThan(Math.abs(dose.errorPercent), way.limitPercent))
    return { ok: true, ...dose };
  const { key, template, figures } = whyNot(input.amount, kit, way, found, dose);
  const issue: Issue = {
    code: "not-measurable",
    key,
    path: at,
    figures,
    message: messageOf(template, figures),
  };
  return { ok: false, issue, ...(dose && { best: dose }) };
}

function measuredDose<U extends VolumeUnit | MassUnit>(
  { amount, perArea }: MeasureOutInput<U>,
  { parts, value, scoops }: NearestFills,
): MeasuredDose<U> {
  const { unit } = amount;
  const error = value - amount.value;
  return {
    parts,
    measured: { value, unit },
    error: { value: error, unit },
    errorPercent: percentOff(value, amount.value),
    ...(perArea && {
      rateError: { value: error / perArea.value, unit: perUnit(unit, perArea.unit) as `${U}/${AreaUnit}` },
    }),
    scoops,
  };
}

/** More fills of one tool than this are miscounted where they needn't be: common practice, no source. */
const LONG_COUNT = 6;

/** The part of a dose that fills one tool so often that people lose count. */
export function longestCount({ parts }: Pick<MeasuredDose, "parts">): MeasuredPart | undefined {
  return parts.find(({ count }) => count > LONG_COUNT);
}

/** All the scoops are of one tool, and the amount is not reached: neither finer tools nor a dilution help. */
function isTooMuch(dose: MeasuredDose | undefined, maxScoops: number): boolean {
  return dose !== undefined && dose.error.value < 0 && (dose.parts[0] as MeasuredPart).count === maxScoops;
}

function whyNot(
  { value, unit }: Quantity<VolumeUnit | MassUnit>,
  kit: Kit,
  { limitPercent, maxScoops }: Way,
  found: NearestFills | undefined,
  dose: MeasuredDose | undefined,
): Sentence {
  // Down, as every sheet has the amount.
  const amount = { value: decided(value).prec(3, 0).toNumber(), unit };
  const limit = { value: limitPercent, unit: "%" };
  if (found === undefined || isTooMuch(dose, maxScoops))
    return {
      key: "amount-too-large",
      template: "{amount} is too much to measure with these tools. Use a larger measure.",
      figures: { amount },
    };
  if (dose === undefined) {
    const least = smallestFill(kit);
    // A larger batch is no way out where the load fills the tank: a finer scale is.
    const finer = finerScale({ value, unit });
    // Ounces can't be held against a scale's grams, or against teaspoons.
    const isOther = least.unit !== amount.unit;
    const same = atMost({ value: inUnit(amount, least.unit), unit: least.unit });
    return finer === undefined
      ? {
          ...TOO_SMALL[isOther ? "amountInOther" : "amount"],
          figures: { amount, least, ...(isOther && { same }) },
        }
      : {
          ...TOO_SMALL[isOther ? "weightInOther" : "weight"],
          figures: { amount, least, ...(isOther && { same }), marks: finer },
        };
  }
  // Up to the next tenth: what is past the limit is shown as past it.
  const off = { value: ceilDecided(Math.abs(dose.errorPercent) * 10) / 10, unit: "%" };
  const figures = { amount, limit, off };
  return dose.error.value < 0
    ? {
        key: "closest-under",
        template:
          "These tools can't measure {amount} within {limit} (closest: {off} under). Use finer tools, or dilute it first if the label allows.",
        figures,
      }
    : {
        key: "closest-over",
        template:
          "These tools can't measure {amount} within {limit} (closest: {off} over). Use finer tools, or dilute it first if the label allows.",
        figures,
      };
}

const TOO_SMALL = {
  amount: {
    key: "amount-too-small",
    template:
      "{amount} is too small to measure with these tools, which start at {least}. Use finer tools, or dilute it first if the label allows.",
  },
  amountInOther: {
    key: "amount-too-small-other",
    template:
      "{amount} ({same}) is too small to measure with these tools, which start at {least}. Use finer tools, or dilute it first if the label allows.",
  },
  weight: {
    key: "weight-too-small",
    template:
      "{amount} is too small to weigh with these tools: the least they weigh is {least}. Use a scale that reads {marks}.",
  },
  weightInOther: {
    key: "weight-too-small-other",
    template:
      "{amount} ({same}) is too small to weigh with these tools: the least they weigh is {least}. Use a scale that reads {marks}.",
  },
} as const;

/** The marks of the coarsest of the usual scales that weighs the amount. */
function finerScale(amount: Quantity<VolumeUnit | MassUnit>): Quantity | undefined {
  if (!isWeight(amount)) return undefined;
  const [{ graduation, least }] = toolsIn(scaleFor(amount)) as readonly [Complete<MeasuringTool>];
  return orderOf(least, amount) === 1 ? undefined : graduation;
}

function smallestFill({ tools }: Kit): Quantity {
  const { tool, least } = tools.reduce((a, b) => (b.fill.min < a.fill.min ? b : a));
  return amountOf(tool.graduation ?? tool.capacity, least);
}

/**
 * The working of {@link measureOut}: the sum of the parts, the error, the error in percent and per area.
 *
 * @param input - see {@link MeasureOutInput}
 * @returns the lines of the dose, or of the closest one if it is outside the limit; none if the tools can't measure any of it
 * @throws SprayMathError as {@link measureOut}
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { measureOut } from "swath-to-spoon/working";
 *
 * const lines = measureOut({ amount: qty(2, "tsp"), tools: "us-spoons", rule: "never-over" });
 * console.log(lines.map((line) => line.formula).join("; ")); // n1 * x1; measured - amount; error / amount * 100
 * console.log(lines[0]?.tools); // { '1': 'teaspoon' }
 * ```
 */
export function measureOutWorking<U extends VolumeUnit | MassUnit>(input: MeasureOutInput<U>): WorkingLine[] {
  const asked = checked(input, MEASURE_OUT);
  return doseLines(asked, doseOf(asked));
}

/** The lines of a dose that {@link doseOf} found: they read the same result. Trusts its input. */
export function doseLines(
  { amount, perArea }: MeasureOutInput,
  answer: Measurable | NotMeasurable,
): WorkingLine[] {
  const dose = answer.ok ? answer : answer.best;
  if (dose === undefined) return [];
  const { measured, error, errorPercent, rateError } = dose;
  // A tool is filled whole so many times (n, x), or to a mark (t, m).
  const fills = dose.parts.map(({ tool, count, each }, i) => ({
    times: `${each === undefined ? "n" : "t"}${i + 1}`,
    symbol: `${each === undefined ? "x" : "m"}${i + 1}`,
    count,
    fill: each ?? tool.capacity,
  }));
  const tools = Object.fromEntries(dose.parts.map(({ tool }, i) => [`${i + 1}`, tool.name]));
  return [
    ...fills.flatMap(({ symbol, fill }) =>
      conversionLines(`household.measured.${symbol}`, fill, amount.unit).map((line) => ({ ...line, tools })),
    ),
    {
      id: "household.measured",
      formula: fills.map(({ times, symbol }) => `${times} * ${symbol}`).join(" + "),
      terms: Object.fromEntries(
        fills.flatMap(({ times, symbol, count, fill }) => [
          [times, count],
          [symbol, { value: inUnit(fill, amount.unit), unit: amount.unit }],
        ]),
      ),
      tools,
      result: measured,
      source: "sum of what the tools hold",
    },
    {
      id: "household.error",
      formula: "measured - amount",
      terms: { measured, amount },
      result: error,
      source: "definition",
    },
    {
      id: "household.errorPercent",
      formula: "error / amount * 100",
      terms: { error, amount },
      result: errorPercent,
      source: "definition",
    },
    // Stryker disable next-line LogicalOperator: there are both or neither
    ...(rateError && perArea
      ? [
          {
            id: "household.rateError",
            formula: "error / area",
            terms: { error, area: perArea },
            result: rateError,
            source: "definition",
          },
        ]
      : []),
  ];
}
