import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { compareDecided } from "../units/decide.js";
import { number, type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positive, positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Fraction, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

const SOURCE = "plane trigonometry";

const FAN = { above: 0, max: 179 };

/** Fan nozzles on a boom, and how much their fans are to overlap. */
export interface BoomHeightInput {
  /** The distance from one nozzle to the next. More than 0. */
  readonly nozzleSpacing: Length;
  /** The angle of the fan, in degrees, as the nozzle's maker states it for the pressure in use. More than 0, at most 179. */
  readonly angleDegrees: number;
  /**
   * How far each fan reaches past the point half way to the next nozzle, both sides together, as a part of the nozzle
   * spacing: 0 where the edges just meet, 100% where each fan reaches to the next nozzle. 0 or more.
   */
  readonly overlap: Fraction;
}

const HEIGHT: ObjectField<BoomHeightInput> = object<BoomHeightInput>({
  nozzleSpacing: quantity("The distance from one nozzle to the next. More than 0.", "length"),
  angleDegrees: number(
    "The angle of the fan, in degrees, as the nozzle's maker states it for the pressure in use. More than 0, at most 179.",
    FAN,
  ),
  overlap: quantity(
    "How far each fan reaches past the point half way to the next nozzle, both sides together, as a part of the nozzle " +
      "spacing: 0 where the edges just meet, 100% where each fan reaches to the next nozzle. 0 or more.",
    "fraction",
    "nonnegative",
  ),
});

/**
 * Returns the height of the boom above the target at which fans overlap that much.
 *
 * Formula: height = spacing × (1 + overlap) / (2 × tan(angle / 2)) (plane trigonometry). Overlap as a part of the spacing is
 * how trade guides give it (common practice, no source); the nozzle's label says how much it needs. Real fans are narrower
 * than the nominal angle at low pressure: check the pattern on dry concrete.
 *
 * @param input - nozzle spacing, fan angle and overlap
 * @returns the height above what is to be hit (crop, weeds or soil), in ft or m like the spacing
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { boomHeight } from "swath-to-spoon/swath";
 * import { convert, qty } from "swath-to-spoon/units";
 *
 * const height = boomHeight({ nozzleSpacing: qty(20, "in"), angleDegrees: 80, overlap: qty(100, "%") });
 * console.log(convert(height, "in").value.toFixed(1)); // 23.8
 * ```
 */
export function boomHeight(input: BoomHeightInput): Length {
  return heightOfBoom(checked(input, HEIGHT));
}

/** The height of a boom. Trusts its input. */
function heightOfBoom({ nozzleSpacing, angleDegrees, overlap }: BoomHeightInput): Length {
  const { length } = unitsLike(nozzleSpacing.unit);
  const spacing = inUnit(nozzleSpacing, length);
  return positiveIn((spacing * (1 + inUnit(overlap, "1"))) / (2 * tanOfHalf(angleDegrees)), length);
}

/**
 * The working of {@link boomHeight}, line by line.
 *
 * @param input - as for {@link boomHeight}
 * @returns the lines; the last one's result is the height
 * @throws SprayMathError as {@link boomHeight} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { boomHeight } from "swath-to-spoon/working";
 *
 * const lines = boomHeight({ nozzleSpacing: qty(0.5, "m"), angleDegrees: 110, overlap: qty(1, "1") });
 * console.log(lines.at(-1)?.formula); // nozzleSpacing * (1 + overlap) / (2 * tan(angleDegrees * pi / 360))
 * ```
 */
export function boomHeightWorking(input: BoomHeightInput): WorkingLine[] {
  const given = checked(input, HEIGHT);
  const result = heightOfBoom(given);
  const { nozzleSpacing, angleDegrees, overlap } = given;
  const { length } = unitsLike(nozzleSpacing.unit);
  return formulaLines({
    id: "swath.boomHeight",
    formula: "nozzleSpacing * (1 + overlap) / (2 * tan(angleDegrees * pi / 360))",
    terms: { nozzleSpacing: [nozzleSpacing, length], overlap: [overlap, "1"], angleDegrees },
    result,
    source: SOURCE,
  });
}

/** Fan nozzles on a boom at a height. */
export interface BoomCoverageInput {
  /** The height of the nozzles above what is to be hit. More than 0. */
  readonly height: Length;
  /** The angle of the fan, in degrees. More than 0, at most 179. */
  readonly angleDegrees: number;
  /** The distance from one nozzle to the next. More than 0. */
  readonly nozzleSpacing: Length;
}

const COVERAGE: ObjectField<BoomCoverageInput> = object<BoomCoverageInput>({
  height: quantity("The height of the nozzles above what is to be hit. More than 0.", "length"),
  angleDegrees: number("The angle of the fan, in degrees. More than 0, at most 179.", FAN),
  nozzleSpacing: quantity("The distance from one nozzle to the next. More than 0.", "length"),
});

/** How fans cover the ground. */
export interface BoomCoverage {
  /** The width of one fan at the target. */
  readonly fanWidth: Length;
  /** The overlap as a part of the nozzle spacing, in %; 0 where the fans do not meet. */
  readonly overlap: Fraction;
  /** The unsprayed strip between two fans; 0 where they meet. */
  readonly gap: Length;
}

/**
 * Does the reverse of {@link boomHeight}: how wide fans are at a height, and how much they overlap or leave between them.
 *
 * Formulas: fan width = 2 × height × tan(angle / 2); overlap = (fan width − spacing) / spacing; gap = spacing − fan width
 * (plane trigonometry).
 *
 * @param input - height, fan angle and nozzle spacing
 * @returns fan width and gap in ft or m like the height, the overlap in %
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { boomCoverage } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { overlap, gap } = boomCoverage({ height: qty(50, "cm"), angleDegrees: 110, nozzleSpacing: qty(50, "cm") });
 * console.log(overlap.value.toFixed(0), gap.value); // 186 0
 * ```
 */
export function boomCoverage(input: BoomCoverageInput): BoomCoverage {
  return coverageOfFans(checked(input, COVERAGE));
}

/** What fans cover at a height. Trusts its input. */
function coverageOfFans({ height, angleDegrees, nozzleSpacing }: BoomCoverageInput): BoomCoverage {
  const { length } = unitsLike(height.unit);
  const fanWidth = positiveIn(2 * inUnit(height, length) * tanOfHalf(angleDegrees), length);
  const spacing = inUnit(nozzleSpacing, length);
  const order = compareDecided(fanWidth.value, spacing);
  const overlap = order > 0 ? positive(((fanWidth.value - spacing) / spacing) * 100) : 0;
  const gap = order < 0 ? spacing - fanWidth.value : 0;
  return { fanWidth, overlap: { value: overlap, unit: "%" }, gap: { value: gap, unit: length } };
}

/**
 * The working of {@link boomCoverage}, line by line: the width of a fan, then the overlap, or the gap where fans do not meet.
 *
 * @param input - as for {@link boomCoverage}
 * @returns the lines
 * @throws SprayMathError as {@link boomCoverage} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { boomCoverage } from "swath-to-spoon/working";
 *
 * const lines = boomCoverage({ height: qty(0.5, "m"), angleDegrees: 110, nozzleSpacing: qty(0.5, "m") });
 * console.log(lines.map((line) => line.id)); // [ 'swath.fanWidth', 'swath.overlap' ]
 * ```
 */
export function boomCoverageWorking(input: BoomCoverageInput): WorkingLine[] {
  const given = checked(input, COVERAGE);
  const { fanWidth, overlap, gap } = coverageOfFans(given);
  const { height, angleDegrees, nozzleSpacing } = given;
  const { length } = unitsLike(height.unit);
  return [
    ...formulaLines({
      id: "swath.fanWidth",
      formula: "2 * height * tan(angleDegrees * pi / 360)",
      terms: { height: [height, length], angleDegrees },
      result: fanWidth,
      source: SOURCE,
    }),
    ...formulaLines({
      id: gap.value > 0 ? "swath.gap" : "swath.overlap",
      formula:
        gap.value > 0 ? "nozzleSpacing - fanWidth" : "(fanWidth - nozzleSpacing) / nozzleSpacing * 100",
      terms: { fanWidth: [fanWidth, length], nozzleSpacing: [nozzleSpacing, length] },
      result: gap.value > 0 ? gap : overlap,
      source: SOURCE,
    }),
  ];
}

function tanOfHalf(angleDegrees: number): number {
  return Math.tan((angleDegrees * Math.PI) / 360);
}
