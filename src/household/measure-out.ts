import { type Issue, SprayMathError } from "../errors.js";
import { valueIn } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { describeUnit } from "../units/describe.js";
import { areaIn } from "../units/guard.js";
import type { AreaUnit, MassUnit, Quantity, TreatedArea, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import { type Measured, type MeasuredPart, type MeasuringRule, measure, percentOff } from "./measure.js";
import { checkedPermission, checkedRequest, type MeasuringInput, type MeasuringRequest } from "./request.js";
import { type Suggestion, suggestionsFor } from "./suggest.js";

/** What {@link measureOut} is asked. */
export interface MeasureOutInput<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit>
  extends MeasuringInput<U> {
  /** The treated area that this amount is for: the error is then told as product per area too. */
  readonly perArea?: TreatedArea;
  /** True where the label permits diluting the product first: a dose too small may then be measured from a stock. */
  readonly labelPermitsDilution?: boolean;
}

/** An amount as it is measured with tools. */
export interface MeasuredDose<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** What to take with which tool, the largest first. */
  readonly parts: readonly MeasuredPart[];
  /** What the parts come to, in the unit of the amount. */
  readonly measured: Quantity<U>;
  /** `measured` less the amount: less than 0 where under. */
  readonly error: Quantity<U>;
  /** The error in per cent of the amount. */
  readonly errorPercent: number;
  /** The error as product per treated area, where `perArea` was given. */
  readonly rateError?: Quantity<`${U}/${AreaUnit}`>;
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
  /** False: do not measure it so. */
  readonly ok: false;
  /** What is wrong and what would do, with the code `not-measurable`. */
  readonly issue: Issue;
  /** What the tools come nearest to under the rule: not to be used. Left out where it is nothing at all. */
  readonly best?: MeasuredDose<U>;
  /** The tool that would do, the batch size at which the present tools would, and a stock where the label permits it; each may be missing. */
  readonly suggestions: readonly Suggestion<U>[];
}

/**
 * Tells an amount of product as what a person can measure with the tools at hand.
 *
 * The best choice of tools is found by a search of all that could be better, not by taking the largest first: the smallest
 * error to a tenth of a per cent of the amount (kitchen tools are no truer than that), then the fewest scoops, then the
 * smallest error; and never one past the limit where there is one within it. Under `never-over` the measured amount is
 * never over the amount. Noise aside: two amounts that differ by less than one part in 10^12 are the same in every
 * decision of this library; `measured` is then the amount itself and the error 0.
 *
 * An amount that cannot be measured within the limit is an ordinary answer, which a form shows and a plan warns of: so
 * it comes back as data (`ok: false`) with what would do instead, and only misuse throws.
 *
 * Formula: error = Σ(count × fill) − amount; errorPercent = error / amount × 100; rateError = error / area. The
 * limit of 5 % and the 16 scoops are common practice, no source. The error is within one unit in the last place of the
 * amount.
 *
 * @param input - see {@link MeasureOutInput}
 * @returns the parts and the error, in the unit of the amount; or why not, and what would do
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` (an amount that is
 *   neither a volume nor a weight, or no tool for its kind), `wrong-area`, `out-of-range`, `too-few` (no tools) or
 *   `unknown-choice`
 *
 * @example
 * ```ts
 * import { measureOut } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const dose = measureOut({ amount: qty(1.3, "fl_oz"), tools: "us-spoons", rule: "never-over" });
 * if (dose.ok) {
 *   console.log(dose.parts.map((part) => `${part.count} × ${part.tool.name}`).join(" + ")); // 2 × tablespoon + 1 × teaspoon + 1 × 1/2 teaspoon + 1 × 1/4 teaspoon
 *   console.log(dose.errorPercent.toFixed(1)); // -0.6
 * }
 * ```
 */
export function measureOut<U extends VolumeUnit | MassUnit>(
  input: MeasureOutInput<U>,
): Measurable<U> | NotMeasurable<U> {
  const request = checkedRequest(input);
  const { amount, limitPercent } = request;
  const { perArea, labelPermitsDilution } = input;
  if (perArea !== undefined) areaIn(perArea, "treated", "ft2", "perArea");
  const permitted = labelPermitsDilution !== undefined && checkedPermission(labelPermitsDilution);
  const found = measure(request);
  const dose = found && doseOf(found, amount, perArea);
  // Stryker disable next-line ConditionalExpression,EqualityOperator: nothing at all is 100 % off, past any limit
  if (dose && dose.scoops > 0 && !moreThan(Math.abs(dose.errorPercent), limitPercent))
    return { ok: true, ...dose };
  const suggestions = suggestionsFor(request, permitted);
  return {
    ok: false,
    issue: {
      code: "not-measurable",
      key: "not-measurable",
      path: "amount",
      figures: { amount },
      message: refusal(request, dose, suggestions),
    },
    ...(dose && dose.scoops > 0 && { best: dose }),
    suggestions,
  };
}

function doseOf<U extends VolumeUnit | MassUnit>(
  { parts, value, scoops }: Measured,
  amount: Quantity<U>,
  perArea: TreatedArea | undefined,
): MeasuredDose<U> {
  const { unit } = amount;
  const error = value - amount.value;
  const rateError = perArea && error / perArea.value;
  if (rateError !== undefined && !Number.isFinite(rateError)) {
    throw new SprayMathError(
      "not-finite",
      "perArea",
      // Stryker disable next-line OptionalChaining: an error per area has an area
      `Given ${perArea?.value} ${perArea?.unit}, too small to tell an error of ${error} ${unit} on it.`,
    );
  }
  return {
    parts,
    measured: { value, unit },
    error: { value: error, unit },
    errorPercent: percentOff(value, amount.value),
    ...(perArea &&
      rateError !== undefined && {
        rateError: { value: rateError, unit: `${unit}/${perArea.unit}` as const },
      }),
    scoops,
  };
}

function refusal<U extends VolumeUnit | MassUnit>(
  { amount, rule, limitPercent, maxScoops }: MeasuringRequest<U>,
  dose: MeasuredDose<U> | undefined,
  suggestions: readonly Suggestion<U>[],
): string {
  const given = `Given ${rounded(amount.value)} ${describeUnit(amount.unit).symbol}`;
  const so = { "never-over": ", without going over", "never-under": ", without falling short", nearest: "" }[
    rule
  ];
  const how = `in ${maxScoops} scoops or fewer${so}`;
  const comes =
    dose === undefined
      ? `more than these tools come to in ${maxScoops} scoops`
      : dose.scoops === 0
        ? `too little for these tools${so}`
        : `to which these tools come no nearer than ${rounded(Math.abs(dose.errorPercent))} % ${dose.error.value < 0 ? "under" : "over"} ${how}`;
  const ways = suggestions.map((one) => {
    if (one.kind === "tool") return `use a ${one.tool.name} as well`;
    if (one.kind === "batch") return `make a batch ${batchTimes(one.times, rule)} times as large`;
    return "take it from a stock, as the label permits";
  });
  const instead = ways.length > 0 ? ways.join(", or ") : "use other tools";
  return `${given}, ${comes}; wanted within ${limitPercent} %: ${instead}.`;
}

// To be read: rounded to the side on which the measured amount keeps to the rule.
function batchTimes(times: number, rule: MeasuringRule): number {
  const near = rounded(times);
  const unit = 10 ** (Math.floor(Math.log10(times)) - 2);
  if (rule === "never-over" && near < times) return rounded(near + unit);
  if (rule === "never-under" && near > times) return rounded(near - unit);
  return near;
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

/**
 * The working of {@link measureOut}: the sum of the parts, the error, the error in per cent and per area.
 *
 * @param input - see {@link MeasureOutInput}
 * @returns the lines, or none where nothing can be measured
 * @throws SprayMathError as {@link measureOut}
 *
 * @example
 * ```ts
 * import { measureOutWorking } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const lines = measureOutWorking({ amount: qty(2, "tsp"), tools: "us-spoons", rule: "never-over" });
 * console.log(lines.map((line) => line.formula).join("; ")); // n1 * x1; measured - amount; error / amount * 100
 * ```
 */
export function measureOutWorking<U extends VolumeUnit | MassUnit>(input: MeasureOutInput<U>): WorkingLine[] {
  const answer = measureOut(input);
  const dose = answer.ok ? answer : answer.best;
  if (dose === undefined) return [];
  const { amount, perArea } = input;
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
          [symbol, { value: valueIn(fill as Quantity, amount.unit), unit: amount.unit }],
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
