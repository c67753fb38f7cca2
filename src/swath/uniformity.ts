import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { decimal } from "../units/exact.js";
import {
  type ChoiceField,
  choice,
  type ListField,
  list,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { refusal } from "../units/message.js";
import { type Expected, QuantityField, quantity, refuseDimension } from "../units/quantity-field.js";
import { positiveIn } from "../units/result.js";
import { unitsIn, unitsLike } from "../units/systems.js";
import type { Fraction, Length, Quantity, Unit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/**
 * How neighbouring passes are driven.
 *
 * - `one-way`: all in one direction (round and round the plot, or back along the edge without spraying), so that the left
 *   edge of a pass meets the right edge of the next
 * - `back-and-forth`: each in the direction opposite to the one before it, so that left meets left and right meets right
 */
export type Travel = "one-way" | "back-and-forth";

/** A spray pattern as it was caught across one pass. */
export interface CaughtPattern<U extends Unit = Unit> {
  /**
   * What was caught at each place across the whole pass, from left to right, the place in the middle under the middle of
   * the sprayer. All of one dimension (mL, g, or whatever was read); 0 or more, not all 0. 2 to 200 of them.
   */
  readonly catches: readonly Quantity<U>[];
  /** The distance from one place to the next. More than 0. */
  readonly spacing: Length;
  /** How the passes are driven. */
  readonly travel: Travel;
}

/** A spray pattern, and the distance between passes. */
export interface PatternUniformityInput<U extends Unit = Unit> extends CaughtPattern<U> {
  /** The distance from the middle of one pass to the middle of the next. At least the spacing of the catches, at most 1000 times the width of the pattern. */
  readonly swath: Length;
}

/** What was caught at one place: a volume, a weight, or whatever was read. */
class CaughtField extends QuantityField<Quantity> {
  override expected(check: Check): Expected {
    const unit = unitsIn(check.system).smallVolume;
    return { expected: "caught", example: { value: 5, unit } };
  }
}

const CATCHES: ListField<Quantity> = list(
  "What was caught at each place across the whole pass, from left to right, the place in the middle under the middle of " +
    "the sprayer. All of one dimension (mL, g, or whatever was read); 0 or more, not all 0. 2 to 200 of them.",
  new CaughtField("", { dimensions: [], range: "nonnegative" }),
  { least: 2, most: 200 },
);
const SPACING: QuantityField<Length> = quantity(
  "The distance from one place to the next. More than 0.",
  "length",
);
const TRAVEL: ChoiceField<Travel> = choice("How the passes are driven.", ["one-way", "back-and-forth"]);

const UNIFORMITY: ObjectField<PatternUniformityInput> = /* @__PURE__ */ object<PatternUniformityInput>(
  {
    catches: CATCHES,
    spacing: SPACING,
    travel: TRAVEL,
    swath: quantity(
      "The distance from the middle of one pass to the middle of the next. At least the spacing of the catches, at most " +
        "1000 times the width of the pattern.",
      "length",
    ),
  },
  [catchesAddUp, swathFits],
);

/** Notes catches of several kinds, and catches of nothing. */
function catchesAddUp({ catches }: Partly<CaughtPattern>, check: Check): void {
  const [first] = catches ?? [];
  if (catches === undefined || first === undefined) return;
  const dimension = dimensionOf(first.unit);
  for (const [i, caught] of catches.entries())
    if (dimensionOf(caught.unit) !== dimension) refuseDimension(caught, [dimension], check, `catches[${i}]`);
  if (catches.every(({ value }) => value === 0))
    check.fault("out-of-range", "catches-zero", "catches", "All catches are 0. Enter what was caught.");
}

/** Notes a swath that the catches can't show. */
function swathFits({ catches, spacing, swath }: Partly<PatternUniformityInput>, check: Check): void {
  if (catches === undefined || spacing === undefined || swath === undefined) return;
  const places = inUnit(swath, spacing.unit) / spacing.value;
  const [count, figures] = [catches.length, { given: swath, spacing, count: catches.length }];
  if (moreThan(1, places))
    check.fault(
      "out-of-range",
      "swath-too-narrow",
      "swath",
      "Must be at least the spacing of the catches, {spacing}.",
      figures,
    );
  if (moreThan(places, 1000 * count))
    check.fault(
      "out-of-range",
      "swath-too-wide",
      "swath",
      "{given} is too wide for {count} {count:one=catch;other=catches} at {spacing}. Check the units.",
      figures,
    );
}

/** How even the ground is covered by passes that overlap. */
export interface PatternUniformity<U extends Unit = Unit> {
  /** The coefficient of variation of what lands on the ground, in %. 0 is perfectly even. */
  readonly cv: Fraction;
  /** What lands on the ground on the average. */
  readonly mean: Quantity<U>;
  /** The least that lands anywhere. */
  readonly least: Quantity<U>;
  /** The most that lands anywhere. */
  readonly most: Quantity<U>;
}

/**
 * Returns how even a pattern is when passes are laid side by side at a swath.
 *
 * Each catch stands for a strip of ground as wide as the spacing. The strips of all passes that reach a place are added up,
 * over one swath for `one-way` travel and over two for `back-and-forth`, and weighed by their widths.
 *
 * Formula: CV = standard deviation / mean × 100, where the standard deviation is √(Σ wᵢ × (xᵢ − mean)² / Σ wᵢ). The whole
 * pattern is known, so the sum is divided by the whole width. A guide that divides by n − 1 gives a CV that is higher by √(n /
 * (n − 1)), 3% of it for 18 catches. The CV is textbook statistics; laying the caught pattern side by side is common practice,
 * no source (ASAE S386.2 and ASTM E642 lay down such tests for aircraft).
 *
 * @param input - the catches, their spacing, the way of travel and the swath
 * @returns CV, mean, least and most, amounts in the unit of the first catch
 * @throws SprayMathError `out-of-range` for a swath narrower than the spacing or catches that are all 0 or more than 200, `too-few`, `missing`,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-choice` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { patternUniformity } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * const catches = [10, 20, 30, 30, 20, 10].map((caught) => qty(caught, "mL"));
 * const pattern = { catches, spacing: qty(0.5, "m"), travel: "one-way" } as const;
 * console.log(patternUniformity({ ...pattern, swath: qty(2, "m") }).cv); // { value: 0, unit: '%' }
 * console.log(patternUniformity({ ...pattern, swath: qty(3, "m") }).cv.value.toFixed(1)); // 40.8
 * ```
 */
export function patternUniformity<U extends Unit>(input: PatternUniformityInput<U>): PatternUniformity<U> {
  const { cv, unit, mean, least, most } = coverageOf(checked(input, UNIFORMITY));
  const amountOf = (value: number): Quantity<U> => ({ value, unit: unit as U });
  return {
    cv: { value: cv, unit: "%" },
    mean: amountOf(mean),
    least: amountOf(least),
    most: amountOf(most),
  };
}

/**
 * The working of {@link patternUniformity}, line by line: the mean over the strips, and the CV.
 *
 * @param input - as for {@link patternUniformity}
 * @returns the lines; the last one's result is the CV. The widths w1, w2 … are parts of the spacing
 * @throws SprayMathError as {@link patternUniformity} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { patternUniformity } from "swath-to-spoon/working";
 *
 * const catches = [10, 20].map((caught) => qty(caught, "mL"));
 * const lines = patternUniformity({ catches, spacing: qty(1, "m"), travel: "one-way", swath: qty(2, "m") });
 * console.log(lines[0]?.formula); // (w1 * x1 + w2 * x2) / (w1 + w2)
 * ```
 */
export function patternUniformityWorking(input: PatternUniformityInput): WorkingLine[] {
  const { strips, mean, cv, unit } = coverageOf(checked(input, UNIFORMITY));
  const terms: Record<string, Quantity | number> = {};
  for (const [i, { width, amount }] of strips.entries()) {
    terms[`w${i + 1}`] = width;
    terms[`x${i + 1}`] = { value: amount, unit };
  }
  const added = (one: (i: number) => string): string => strips.map((_, i) => one(i + 1)).join(" + ");
  const widths = added((i) => `w${i}`);
  return [
    {
      id: "swath.uniformity.mean",
      formula: `(${added((i) => `w${i} * x${i}`)}) / (${widths})`,
      terms,
      result: { value: mean, unit },
      source: "textbook statistics",
    },
    {
      id: "swath.uniformity.cv",
      formula: `sqrt((${added((i) => `w${i} * (x${i} - mean)^2`)}) / (${widths})) / mean * 100`,
      terms: { ...terms, mean: { value: mean, unit } },
      result: { value: cv, unit: "%" },
      source: "textbook statistics",
    },
  ];
}

/** A spray pattern, and how uneven it may become. */
export interface WidestSwathInput<U extends Unit = Unit> extends CaughtPattern<U> {
  /** The highest coefficient of variation that is still good enough. There is no default: guides differ with the job. */
  readonly limit: Fraction;
  /** How finely swaths are tried, from the whole width of the pattern down; the spacing of the catches if left out. At least a hundredth of that spacing, and a two-thousandth of the whole width. */
  readonly step?: Length | undefined;
}

const WIDEST: ObjectField<WidestSwathInput> = /* @__PURE__ */ object<WidestSwathInput>(
  {
    catches: CATCHES,
    spacing: SPACING,
    travel: TRAVEL,
    limit: quantity(
      "The highest coefficient of variation that is still good enough. There is no default: guides differ with the job.",
      "fraction",
      "nonnegative",
    ),
    step: optional(
      quantity(
        "How finely swaths are tried, from the whole width of the pattern down; the spacing of the catches if left out. At " +
          "least a hundredth of that spacing, and a two-thousandth of the whole width.",
        "length",
      ),
    ),
  },
  [catchesAddUp, stepFits],
);

/** Notes a step that is finer than the catches can show, or takes too long. */
function stepFits({ catches = [], spacing, step }: Partly<WidestSwathInput>, check: Check): void {
  if (spacing === undefined || step === undefined) return;
  const limit = { value: spacing.value * Math.max(1 / 100, catches.length / 2000), unit: spacing.unit };
  if (moreThan(limit.value, inUnit(step, spacing.unit)))
    check.fault(
      "out-of-range",
      "step-too-fine",
      "step",
      "Must be {limit} or more: the catches can't show finer steps.",
      { given: step, limit },
    );
}

/** The widest swath under a limit. */
export interface WidestSwath {
  /** The distance from the middle of one pass to the middle of the next. */
  readonly swath: Length;
  /** The coefficient of variation at that swath, in %. */
  readonly cv: Fraction;
}

/**
 * Returns the widest swath at which the overlapped pattern stays as even as a limit asks.
 *
 * Swaths are tried from the whole width of the pattern (wider ones leave ground unsprayed) down to the spacing of the catches,
 * one step at a time. The first that keeps the limit is the answer. A narrower swath is not always more even: look at its CV
 * too before you choose one.
 *
 * @param input - the pattern and the limit
 * @returns the swath, in ft or m like the spacing, and its CV
 * @throws SprayMathError `conflict` where no swath keeps the limit, `out-of-range`, `too-few`, `missing`, `not-a-quantity`,
 * `not-finite`, `unknown-unit`, `unknown-choice` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { widestSwath } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * const catches = [10, 20, 30, 30, 20, 10].map((caught) => qty(caught, "mL"));
 * const found = widestSwath({ catches, spacing: qty(0.5, "m"), travel: "one-way", limit: qty(15, "%") });
 * console.log(found.swath); // { value: 2, unit: 'm' }
 * ```
 */
export function widestSwath<U extends Unit>(input: WidestSwathInput<U>): WidestSwath {
  const { limit, step: tried, ...caught } = checked(input, WIDEST);
  const pattern = patternOf(caught);
  const { length: unit } = unitsLike(caught.spacing.unit);
  const spacing = inUnit(caught.spacing, unit);
  const step = tried === undefined ? spacing : inUnit(tried, unit);
  const [most, count] = [inUnit(limit, "%"), pattern.amounts.length];
  let best = Number.POSITIVE_INFINITY;
  for (let k = 0; ; k++) {
    // As people subtract: 6 × 0.6 − 6 × 0.2 is 2.4, which floating point misses.
    const swath = decimal(spacing).times(count).minus(decimal(step).times(k)).toNumber();
    if (moreThan(spacing, swath)) break;
    const { cv } = evenness(pattern, swath / spacing);
    if (!moreThan(cv, most)) return { swath: positiveIn(swath, unit), cv: { value: cv, unit: "%" } };
    best = Math.min(best, cv);
  }
  throw refusal(
    "conflict",
    "no-swath-so-even",
    "limit",
    "No swath is that even: the most even has {best}. Check the nozzles and the boom height, or allow more.",
    { given: limit, best: { value: Number(best.toPrecision(3)), unit: "%" } },
  );
}

interface Pattern {
  readonly amounts: readonly number[];
  /** The unit of the amounts. */
  readonly unit: Unit;
  readonly travel: Travel;
}

function patternOf({ catches, travel }: CaughtPattern): Pattern {
  const { unit } = catches[0] as Quantity;
  return { amounts: catches.map((caught) => inUnit(caught, unit)), unit, travel };
}

/** What lands on a strip of ground; its width in spacings of the catches. */
interface Strip {
  readonly width: number;
  readonly amount: number;
}

interface Evenness {
  readonly strips: readonly Strip[];
  readonly mean: number;
  /** In %. */
  readonly cv: number;
  readonly least: number;
  readonly most: number;
}

function coverageOf(input: PatternUniformityInput): Evenness & { readonly unit: Unit } {
  const pattern = patternOf(input);
  return {
    ...evenness(pattern, inUnit(input.swath, input.spacing.unit) / input.spacing.value),
    unit: pattern.unit,
  };
}

function evenness(pattern: Pattern, swath: number): Evenness {
  const strips = overlapped(pattern, swath);
  const amounts = strips.map(({ amount }) => amount);
  const [least, most] = [Math.min(...amounts), Math.max(...amounts)];
  // An even pattern has no deviation at all, not the rounding errors of its sums.
  if (!moreThan(most, least)) return { strips, mean: most, cv: 0, least: most, most };
  const added = (part: (strip: Strip) => number): number => strips.reduce((sum, one) => sum + part(one), 0);
  const width = added((strip) => strip.width);
  const mean = added((strip) => strip.width * strip.amount) / width;
  const variance = added((strip) => strip.width * (strip.amount - mean) ** 2) / width;
  return { strips, mean, cv: (Math.sqrt(variance) / mean) * 100, least, most };
}

/**
 * What lands on the ground between the middles of two passes (one-way) or of three (back-and-forth), strip by strip; widths in
 * spacings of the catches.
 */
function overlapped({ amounts, travel }: Pattern, swath: number): Strip[] {
  const count = amounts.length;
  // Stryker disable next-line ConditionalExpression,StringLiteral: twice the ground of one-way passes is as even as once
  const period = travel === "one-way" ? swath : 2 * swath;
  // Stryker disable next-line ArithmeticOperator: passes too far away to reach the ground add nothing
  const reach = Math.ceil(count / 2 / swath);
  const passes: { readonly left: number; readonly caught: readonly number[] }[] = [];
  const mirrored = [...amounts].reverse();
  const edges = [period];
  // Stryker disable next-line EqualityOperator: the last pass is one of those too far away
  for (let k = -reach; k <= period / swath + reach; k++) {
    const left = k * swath - count / 2;
    // Stryker disable next-line EqualityOperator: seen in a mirror the ground is as even
    const turned = travel === "back-and-forth" && k % 2 !== 0;
    passes.push({ left, caught: turned ? mirrored : amounts });
    for (let i = Math.max(0, Math.ceil(-left)); i <= count && left + i < period; i++) edges.push(left + i);
  }
  // Edges that meet on the ground differ by rounding here: no strip of noise is left between them.
  const noise = 1e-12 * (count + period);
  const strips: Strip[] = [];
  let from = 0;
  for (const to of Float64Array.from(edges).sort()) {
    if (to - from <= noise) continue;
    const middle = (from + to) / 2;
    const amount = passes.reduce(
      (sum, { left, caught }) => sum + (caught[Math.floor(middle - left)] ?? 0),
      0,
    );
    strips.push({ width: to - from, amount });
    from = to;
  }
  return strips;
}
