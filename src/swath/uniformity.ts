import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { checkedChoice, checkedList, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { sum } from "../units/quantity.js";
import { checkShape } from "../units/shape.js";
import type { Fraction, Length, Quantity, Unit } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { positive } from "./made.js";

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
   * the sprayer. All of one dimension (mL, g, or whatever was read); 0 or more, not all 0.
   */
  readonly catches: readonly Quantity<U>[];
  /** The distance from one place to the next. More than 0. */
  readonly spacing: Length;
  /** How the passes are driven. */
  readonly travel: Travel;
}

/** A spray pattern, and the distance between passes. */
export interface PatternUniformityInput<U extends Unit = Unit> extends CaughtPattern<U> {
  /** The distance from the middle of one pass to the middle of the next. At least the spacing of the catches. */
  readonly swath: Length;
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
 * How even a pattern is when passes are laid side by side at a swath.
 *
 * Each catch stands for a strip of ground as wide as the spacing. The strips of all passes that reach a place are added up,
 * over one swath for `one-way` travel and over two for `back-and-forth`, and weighed by their widths.
 *
 * Formula: CV = standard deviation / mean × 100, where the standard deviation is √(Σ wᵢ × (xᵢ − mean)² / Σ wᵢ). The whole
 * pattern is known, so the sum is divided by the whole width; a guide that divides by n − 1 tells a CV that is higher by
 * √(n / (n − 1)), 3 % of it for 18 catches. The CV is textbook statistics; laying the caught pattern side by side is common
 * practice, no source (ASAE S386.2 and ASTM E642 lay down such tests for aircraft).
 *
 * @param input - the catches, their spacing, the way of travel and the swath
 * @returns CV, mean, least and most, amounts in the unit of the first catch
 * @throws SprayMathError `out-of-range` for a swath narrower than the spacing or catches that are all 0, `too-few`, `missing`,
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
  const pattern = checkedPattern(input);
  const { mean, cv, least, most } = evenness(overlapped(pattern, checkedSwath(input, pattern)));
  const told = (value: number): Quantity<U> => ({ value, unit: pattern.amount as U });
  return { cv: { value: cv, unit: "%" }, mean: told(mean), least: told(least), most: told(most) };
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
  const pattern = checkedPattern(input);
  const strips = overlapped(pattern, checkedSwath(input, pattern));
  const { mean, cv } = evenness(strips);
  const unit = pattern.amount;
  const terms: Record<string, Quantity | number> = {};
  for (const [i, { width, amount }] of strips.entries()) {
    terms[`w${i + 1}`] = width / CELL;
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
  /** How finely swaths are tried, from the whole width of the pattern down; the spacing of the catches if left out. At least a hundredth of that spacing. */
  readonly step?: Length;
}

/** The widest swath under a limit. */
export interface WidestSwath {
  /** The distance from the middle of one pass to the middle of the next. */
  readonly swath: Length;
  /** The coefficient of variation at that swath, in %. */
  readonly cv: Fraction;
}

/**
 * The widest swath at which the overlapped pattern stays as even as a limit asks.
 *
 * Swaths are tried from the whole width of the pattern (wider ones leave ground unsprayed) down to the spacing of the
 * catches, one step at a time; the first that keeps the limit is the answer. A narrower swath is not always more even: look
 * at its CV too before you choose one.
 *
 * @param input - the pattern and the limit
 * @returns the swath, in ft or m as the spacing is told, and its CV
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
  const pattern = checkedPattern(input);
  const { spacing, unit } = pattern;
  const limit = inUnit(input.limit, "%", "limit", "nonnegative");
  const step = input.step === undefined ? CELL : cells(inUnit(input.step, unit, "step"), spacing);
  if (step < CELL / 100) {
    throw new SprayMathError(
      "out-of-range",
      "step",
      "Given a step finer than a hundredth of the spacing of the catches; the catches cannot tell swaths so near apart.",
    );
  }
  let best = Number.POSITIVE_INFINITY;
  for (let swath = pattern.amounts.length * CELL; swath >= CELL; swath -= step) {
    const { cv } = evenness(overlapped(pattern, swath));
    if (!moreThan(cv, limit))
      return { swath: positive((swath / CELL) * spacing, unit), cv: { value: cv, unit: "%" } };
    best = Math.min(best, cv);
  }
  throw new SprayMathError(
    "conflict",
    "limit",
    `Given a limit of ${input.limit.value} ${input.limit.unit}; no swath keeps it, the most even one has ${Number(best.toPrecision(3))} %. ` +
      "Check the nozzles and the boom height, or allow more.",
  );
}

// Swaths are whole numbers of billionths of the spacing, so that the edges of strips that meet do meet and no strip of
// floating-point noise is left between them.
const CELL = 1e9;

function cells(width: number, spacing: number): number {
  return Math.round((width / spacing) * CELL);
}

interface CheckedPattern {
  readonly amounts: readonly number[];
  readonly amount: Unit;
  readonly spacing: number;
  readonly unit: "ft" | "m";
  readonly travel: Travel;
}

function checkedPattern(input: CaughtPattern): CheckedPattern {
  const { catches, spacing, travel } = checkedObject(input, "");
  checkedList(catches, "catches", 2);
  checkShape(catches[0], "catches[0]");
  const { unit: amount } = catches[0];
  const amounts = catches.map((caught, i) =>
    inUnit<Unit>(caught as Quantity<never>, amount, `catches[${i}]`, "nonnegative"),
  );
  if (amounts.every((one) => one === 0))
    throw new SprayMathError(
      "out-of-range",
      "catches",
      "Given catches of 0 only; wanted some spray to measure.",
    );
  const { length: unit } = unitsWith(spacing, "spacing");
  checkedChoice(travel, ["one-way", "back-and-forth"], "travel");
  return { amounts, amount, spacing: inUnit(spacing, unit, "spacing"), unit, travel };
}

function checkedSwath({ swath }: PatternUniformityInput, { spacing, unit, amounts }: CheckedPattern): number {
  const whole = cells(inUnit(swath, unit, "swath"), spacing);
  if (whole < CELL || whole > 1000 * amounts.length * CELL) {
    throw new SprayMathError(
      "out-of-range",
      "swath",
      `Given a swath of ${swath.value} ${swath.unit} for ${amounts.length} catches; wanted at least the spacing of the catches, and a width that they can cover.`,
    );
  }
  return whole;
}

interface Strip {
  readonly width: number;
  readonly amount: number;
}

/** What lands on the ground between the middles of two passes (one-way) or of three (back-and-forth), strip by strip. */
function overlapped({ amounts, travel }: CheckedPattern, swath: number): Strip[] {
  const full = amounts.length * CELL;
  // Stryker disable next-line ConditionalExpression,StringLiteral: twice the ground of one-way passes is as even as once
  const period = travel === "one-way" ? swath : 2 * swath;
  // Stryker disable next-line ArithmeticOperator: passes too far away to reach the ground add nothing
  const reach = Math.ceil(full / 2 / swath);
  const passes: { left: number; amounts: readonly number[] }[] = [];
  // Stryker disable next-line EqualityOperator: the last pass is one of those too far away
  for (let k = -reach; k <= period / swath + reach; k++) {
    // Stryker disable next-line EqualityOperator: seen in a mirror the ground is as even
    const turned = travel === "back-and-forth" && k % 2 !== 0;
    passes.push({ left: k * swath - full / 2, amounts: turned ? [...amounts].reverse() : amounts });
  }
  const edges = new Set([0, period]);
  for (const { left } of passes) {
    for (let i = 0; i <= amounts.length; i++) {
      const edge = left + i * CELL;
      // Stryker disable next-line EqualityOperator: both ends are edges already
      if (edge > 0 && edge < period) edges.add(edge);
    }
  }
  const sorted = [...edges].sort((a, b) => a - b);
  return sorted.slice(1).map((to, i) => {
    const from = sorted[i] as number;
    const middle = (from + to) / 2;
    const landed = passes.map(({ left, amounts: row }) => row[Math.floor((middle - left) / CELL)] ?? 0);
    return { width: to - from, amount: landed.reduce((a, b) => a + b, 0) };
  });
}

function evenness(strips: readonly Strip[]): { mean: number; cv: number; least: number; most: number } {
  const most = strips.reduce((a, b) => Math.max(a, b.amount), 0);
  if (!Number.isFinite(most)) {
    throw new SprayMathError(
      "not-finite",
      "catches",
      "The catches given are too large to add up; wanted what a cup can hold.",
    );
  }
  const least = strips.reduce((a, b) => Math.min(a, b.amount), most);
  // An even pattern has no deviation at all, not the rounding error of its mean.
  if (least === most) return { mean: most, cv: 0, least, most };
  // Told in a power of two near the most, which changes no digit, so that no square is too large or too small for a number.
  const scale = 2 ** Math.floor(Math.log2(most));
  const added = (of: (amount: number) => number): number =>
    sum(strips.map(({ width, amount }) => ({ value: width * of(amount / scale), unit: "1" as const }))).value;
  const width = added(() => 1);
  const mean = added((amount) => amount) / width;
  const variance = added((amount) => (amount - mean) ** 2) / width;
  return { mean: mean * scale, cv: (Math.sqrt(variance) / mean) * 100, least, most };
}
