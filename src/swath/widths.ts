import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import { choice, count, type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Fraction, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { bandsFit } from "./bands-fit.js";
import { OVERLAP, overlapFits, overlapIn } from "./overlap.js";

/** A boom with evenly spaced nozzles. */
export interface BoomWidthInput {
  /** How many nozzles spray. A whole number, 1 or more. */
  readonly nozzles: number;
  /** The distance from one nozzle to the next. More than 0. */
  readonly nozzleSpacing: Length;
}

const BOOM: ObjectField<BoomWidthInput> = object({
  nozzles: count("How many nozzles spray. A whole number, 1 or more."),
  nozzleSpacing: quantity("The distance from one nozzle to the next. More than 0.", "length"),
});

/**
 * Returns the width that a boom treats in one pass: nozzles × spacing, half a spacing past each outer nozzle included. Not the
 * length of the boom, and not the width that is wet: the outer half of the outer fans belongs to the next pass.
 *
 * This is the width for a test strip (refill method) and for a timed catch from the whole boom. For the catch from one
 * nozzle the width is the nozzle spacing: see {@link widthPerNozzle}.
 *
 * Formula: width = nozzles × nozzle spacing (Spray Application Manual, Grains Research and Development Corporation,
 * module 8.3, gives it for boom sections).
 *
 * @param input - the number of nozzles and their spacing
 * @returns the width of the pass, in ft or m like the spacing
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { boomWidth } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(boomWidth({ nozzles: 12, nozzleSpacing: qty(20, "in") })); // { value: 20, unit: 'ft' }
 * ```
 */
export function boomWidth(input: BoomWidthInput): Length {
  return widthOfBoom(checked(input, BOOM));
}

/** The width of a boom. Trusts its input. */
function widthOfBoom({ nozzles, nozzleSpacing }: BoomWidthInput): Length {
  const { length } = unitsLike(nozzleSpacing.unit);
  return positiveIn(nozzles * inUnit(nozzleSpacing, length), length);
}

/**
 * The working of {@link boomWidth}, line by line.
 *
 * @param input - as for {@link boomWidth}
 * @returns the lines; the last one's result is the width
 * @throws SprayMathError as {@link boomWidth} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { boomWidth } from "swath-to-spoon/working";
 *
 * const lines = boomWidth({ nozzles: 12, nozzleSpacing: qty(0.5, "m") });
 * console.log(lines.map((line) => line.formula)); // [ 'nozzles * nozzleSpacing' ]
 * ```
 */
export function boomWidthWorking(input: BoomWidthInput): WorkingLine[] {
  const given = checked(input, BOOM);
  const result = widthOfBoom(given);
  return formulaLines({
    id: "swath.boom",
    formula: "nozzles * nozzleSpacing",
    terms: { nozzles: given.nozzles, nozzleSpacing: [given.nozzleSpacing, result.unit] },
    result,
    source: "Spray Application Manual, Grains Research and Development Corporation, module 8.3",
  });
}

/** Bands sprayed in one pass. */
export interface BandsWidthInput {
  /** How many bands, one on each row, are sprayed in one pass. A whole number, 1 or more. */
  readonly bands: number;
  /** The treated width of one band, all nozzles of the row together. More than 0, at most the row spacing. */
  readonly bandWidth: Length;
  /** The distance from one row to the next. More than 0; needed for the ground that the pass moves over. */
  readonly rowSpacing?: Length | undefined;
}

const BANDS: ObjectField<BandsWidthInput> = object<BandsWidthInput>(
  {
    bands: count("How many bands, one on each row, are sprayed in one pass. A whole number, 1 or more."),
    bandWidth: quantity(
      "The treated width of one band, all nozzles of the row together. More than 0, at most the row spacing.",
      "length",
    ),
    rowSpacing: optional(
      quantity(
        "The distance from one row to the next. More than 0; needed for the ground that the pass moves over.",
        "length",
      ),
    ),
  },
  [({ bandWidth, rowSpacing }, check) => bandsFit(bandWidth, rowSpacing, "bandWidth", check)],
);

/** The two widths of a pass that sprays bands. They belong to two different rates. */
export interface BandsWidth {
  /** All bands together: the width for the rate per treated area, which is the label's. */
  readonly treated: Length;
  /** The rows that the pass covers: the width for the rate per area of ground, and for counting passes; only with the row spacing. */
  readonly ground?: Length | undefined;
}

/**
 * Returns the two widths of one pass that sprays bands: what it treats, and what it moves over.
 *
 * The treated width is the one for a calibration that is to be compared with the label: a label's rate holds inside the
 * band. The ground width counts the passes over a plot. Several nozzles on one row share its band: the band counts once, and
 * their catches are added up.
 *
 * Formulas: treated = bands × band width; ground = bands × row spacing (plane geometry).
 *
 * @param input - the bands of one pass
 * @returns the treated width, and with `rowSpacing` the ground width; in ft or m like the band width
 * @throws SprayMathError `conflict` for bands wider than their spacing, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { bandsWidth } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { treated, ground } = bandsWidth({ bands: 4, bandWidth: qty(12, "in"), rowSpacing: qty(30, "in") });
 * console.log(treated); // { value: 4, unit: 'ft' }
 * console.log(ground); // { value: 10, unit: 'ft' }
 * ```
 */
export function bandsWidth(input: BandsWidthInput): BandsWidth {
  return widthsOfBands(checked(input, BANDS));
}

/** Both widths of bands. Trusts its input. */
function widthsOfBands({ bands, bandWidth, rowSpacing }: BandsWidthInput): BandsWidth {
  const { length } = unitsLike(bandWidth.unit);
  const band = inUnit(bandWidth, length);
  if (rowSpacing === undefined) return { treated: positiveIn(bands * band, length) };
  const row = inUnit(rowSpacing, length);
  return {
    treated: positiveIn(bands * Math.min(band, row), length),
    ground: positiveIn(bands * row, length),
  };
}

/**
 * The working of {@link bandsWidth}, line by line: the ground width first where there is one, the treated width last.
 *
 * @param input - as for {@link bandsWidth}
 * @returns the lines; the last one's result is the treated width
 * @throws SprayMathError as {@link bandsWidth} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { bandsWidth } from "swath-to-spoon/working";
 *
 * const lines = bandsWidth({ bands: 4, bandWidth: qty(1, "ft"), rowSpacing: qty(2.5, "ft") });
 * console.log(lines.map((line) => line.formula)); // [ 'bands * rowSpacing', 'bands * bandWidth' ]
 * ```
 */
export function bandsWidthWorking(input: BandsWidthInput): WorkingLine[] {
  const given = checked(input, BANDS);
  const { treated, ground } = widthsOfBands(given);
  const { bands, bandWidth, rowSpacing } = given;
  const { length } = unitsLike(bandWidth.unit);
  const source = "plane geometry";
  return [
    ...(rowSpacing === undefined
      ? []
      : formulaLines({
          id: "swath.bands.ground",
          formula: "bands * rowSpacing",
          terms: { bands, rowSpacing: [rowSpacing, length] },
          result: ground as Length,
          source,
        })),
    ...formulaLines({
      id: "swath.bands.treated",
      formula: "bands * bandWidth",
      terms: { bands, bandWidth: [bandWidth, length] },
      result: treated,
      source,
    }),
  ];
}

/** A width, and the nozzles that share it. */
export interface WidthPerNozzleInput {
  /** The treated width that the nozzles share: a band, a row, or the whole boom. More than 0. */
  readonly width: Length;
  /** How many nozzles share it. A whole number, 1 or more. */
  readonly nozzles: number;
}

const SHARED: ObjectField<WidthPerNozzleInput> = object({
  width: quantity(
    "The treated width that the nozzles share: a band, a row, or the whole boom. More than 0.",
    "length",
  ),
  nozzles: count("How many nozzles share it. A whole number, 1 or more."),
});

/**
 * Returns the width that one nozzle stands for: the W of the nozzle formulas (5940 × gal/min / (mph × W in inches), or 60,000 × L/min
 * / (km/h × W in cm)), and the width for a catch from one nozzle.
 *
 * - broadcast boom: boom width / nozzles, which is the nozzle spacing
 * - band with one nozzle: the band width
 * - several nozzles directed at one row: the band width / nozzles on the row, for the rate per treated area (the row spacing /
 *   nozzles on the row gives the rate per area of ground)
 * - one boomless nozzle: its measured width less the overlap
 *
 * Formula: width per nozzle = width / nozzles (common practice, no source).
 *
 * @param input - the width and the nozzles that share it
 * @returns the width of one nozzle, in ft or m like the width
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { widthPerNozzle } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(widthPerNozzle({ width: qty(15, "in"), nozzles: 3 })); // { value: 0.4166666666666667, unit: 'ft' }
 * ```
 */
export function widthPerNozzle(input: WidthPerNozzleInput): Length {
  return widthOfNozzle(checked(input, SHARED));
}

/** The width of one nozzle. Trusts its input. */
function widthOfNozzle({ width, nozzles }: WidthPerNozzleInput): Length {
  const { length } = unitsLike(width.unit);
  return positiveIn(inUnit(width, length) / nozzles, length);
}

/**
 * The working of {@link widthPerNozzle}, line by line.
 *
 * @param input - as for {@link widthPerNozzle}
 * @returns the lines; the last one's result is the width
 * @throws SprayMathError as {@link widthPerNozzle} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { widthPerNozzle } from "swath-to-spoon/working";
 *
 * const lines = widthPerNozzle({ width: qty(0.4, "m"), nozzles: 2 });
 * console.log(lines.map((line) => line.formula)); // [ 'width / nozzles' ]
 * ```
 */
export function widthPerNozzleWorking(input: WidthPerNozzleInput): WorkingLine[] {
  const given = checked(input, SHARED);
  const result = widthOfNozzle(given);
  const { length } = unitsLike(given.width.unit);
  return formulaLines({
    id: "swath.perNozzle",
    formula: "width / nozzles",
    terms: { width: [given.width, length], nozzles: given.nozzles },
    result,
    source: "common practice, no source",
  });
}

/** Rows of trees, vines or bushes, sprayed from the alleys between them. */
export interface TreeRowWidthInput {
  /** The distance from one row to the next. More than 0. */
  readonly rowSpacing: Length;
  /** How many sides of the sprayer are open: 2 where it sprays the rows on its left and its right, 1 for one of them. */
  readonly sides: 1 | 2;
}

const TREE_ROW: ObjectField<TreeRowWidthInput> = object({
  rowSpacing: quantity("The distance from one row to the next. More than 0.", "length"),
  sides: choice(
    "How many sides of the sprayer are open: 2 where it sprays the rows on its left and its right, 1 for one of them.",
    [1, 2],
  ),
});

/**
 * Returns the width of ground that one pass down an alley stands for, when a canopy is sprayed from both sides. Each side of the
 * sprayer does half a row, so two sides are one row spacing and one side is half of it. Every alley is driven once with both
 * sides open, or twice with one.
 *
 * This is the width for the rate per area of ground, which is how labels for trees and vines are mostly written. A strip
 * sprayed under the trees is a band: {@link bandsWidth} with one band for each side.
 *
 * Formula: width = row spacing × sides / 2 (plane geometry).
 *
 * @param input - the row spacing and the open sides
 * @returns the width of the pass, in ft or m like the spacing
 * @throws SprayMathError `unknown-choice` for sides other than 1 or 2, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { treeRowWidth } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(treeRowWidth({ rowSpacing: qty(16, "ft"), sides: 1 })); // { value: 8, unit: 'ft' }
 * ```
 */
export function treeRowWidth(input: TreeRowWidthInput): Length {
  return widthOfTreeRow(checked(input, TREE_ROW));
}

/** The width of a pass between rows of trees. Trusts its input. */
function widthOfTreeRow({ rowSpacing, sides }: TreeRowWidthInput): Length {
  const { length } = unitsLike(rowSpacing.unit);
  return positiveIn((inUnit(rowSpacing, length) * sides) / 2, length);
}

/**
 * The working of {@link treeRowWidth}, line by line.
 *
 * @param input - as for {@link treeRowWidth}
 * @returns the lines; the last one's result is the width
 * @throws SprayMathError as {@link treeRowWidth} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { treeRowWidth } from "swath-to-spoon/working";
 *
 * const lines = treeRowWidth({ rowSpacing: qty(4, "m"), sides: 2 });
 * console.log(lines.map((line) => line.formula)); // [ 'rowSpacing * sides / 2' ]
 * ```
 */
export function treeRowWidthWorking(input: TreeRowWidthInput): WorkingLine[] {
  const given = checked(input, TREE_ROW);
  const result = widthOfTreeRow(given);
  const { length } = unitsLike(given.rowSpacing.unit);
  return formulaLines({
    id: "swath.treeRow",
    formula: "rowSpacing * sides / 2",
    terms: { rowSpacing: [given.rowSpacing, length], sides: given.sides },
    result,
    source: "plane geometry",
  });
}

/** A pass whose wet width was measured, as with a boomless nozzle, a wand or a spray gun. */
export interface EffectiveWidthInput {
  /** The width that is wet after one pass. More than 0. */
  readonly width: Length;
  /** How far the next pass runs over this one: a length, or a part of the width. 0 or more, less than the width. */
  readonly overlap: Length | Fraction;
}

const WET: ObjectField<EffectiveWidthInput> = object<EffectiveWidthInput>(
  {
    width: quantity("The width that is wet after one pass. More than 0.", "length"),
    overlap: OVERLAP,
  },
  [({ width, overlap }, check) => overlapFits(width, overlap, check)],
);

/**
 * Returns the width that one pass really adds, for a boomless nozzle, a wand or anything held by hand: the measured width less what
 * the next pass covers again. This is the width for the test strip and for counting passes; the wet width itself makes the
 * calibration too low, and the plot gets too much.
 *
 * Formula: effective width = width − overlap, or width × (1 − overlap) for a part (common practice, no source).
 *
 * @param input - the measured width and the overlap
 * @returns the width that counts, in ft or m like the width; the rounding error is within 8 ulp of the measured width
 * @throws SprayMathError `out-of-range` for an overlap as wide as the pass, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { effectiveWidth } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(effectiveWidth({ width: qty(5, "ft"), overlap: qty(6, "in") })); // { value: 4.5, unit: 'ft' }
 * console.log(effectiveWidth({ width: qty(4, "m"), overlap: qty(25, "%") })); // { value: 3, unit: 'm' }
 * ```
 */
export function effectiveWidth(input: EffectiveWidthInput): Length {
  return widthThatCounts(checked(input, WET));
}

/** The width that one pass adds. Trusts its input. */
function widthThatCounts({ width, overlap }: EffectiveWidthInput): Length {
  const { length } = unitsLike(width.unit);
  const whole = inUnit(width, length);
  return positiveIn(whole - overlapIn(overlap, whole, length), length);
}

/**
 * The working of {@link effectiveWidth}, line by line.
 *
 * @param input - as for {@link effectiveWidth}
 * @returns the lines; the last one's result is the width
 * @throws SprayMathError as {@link effectiveWidth} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { effectiveWidth } from "swath-to-spoon/working";
 *
 * const lines = effectiveWidth({ width: qty(5, "ft"), overlap: qty(0.5, "ft") });
 * console.log(lines.map((line) => line.formula)); // [ 'width - overlap' ]
 * ```
 */
export function effectiveWidthWorking(input: EffectiveWidthInput): WorkingLine[] {
  const given = checked(input, WET);
  const result = widthThatCounts(given);
  const { length } = unitsLike(given.width.unit);
  const isPart = dimensionOf(given.overlap.unit) === "fraction";
  return formulaLines({
    id: "swath.effective",
    formula: isPart ? "width * (1 - overlap)" : "width - overlap",
    terms: { width: [given.width, length], overlap: [given.overlap, isPart ? "1" : length] },
    result,
    source: "common practice, no source",
  });
}
