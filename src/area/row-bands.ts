import { bandsFit } from "../swath/bands-fit.js";
import { checked } from "../units/check.js";
import { type EitherField, type ObjectField, object, optional } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import {
  alongRows,
  areasOfStrips,
  linesOfStrips,
  type RowsAlike,
  type RowsByLength,
  type StripNames,
  type Strips,
  stripsAlong,
  type TreatedRows,
} from "./strips.js";

/** The bands on rows. */
interface Bands {
  /** The treated width on one row. More than 0, at most the row spacing. */
  readonly bandWidth: Length;
  /** From one row to the next. More than 0; needed for the ground. */
  readonly rowSpacing?: Length | undefined;
}

/** Bands sprayed along rows. */
export type RowBandsInput = (RowsAlike | RowsByLength) & Bands;

/** The fields of bands, beside those of the rows. */
export const BANDS: ObjectField<Bands> = /* @__PURE__ */ object<Bands>(
  {
    bandWidth: quantity("The treated width on one row. More than 0, at most the row spacing.", "length"),
    rowSpacing: optional(quantity("From one row to the next. More than 0; needed for the ground.", "length")),
  },
  [({ bandWidth, rowSpacing }, check) => bandsFit(bandWidth, rowSpacing, "bandWidth", check)],
);

const ROW_BANDS: EitherField<RowBandsInput> = /* @__PURE__ */ alongRows(BANDS);

/**
 * Returns what bands along rows treat, and how much ground the rows take up.
 *
 * Formulas: treated = rows × row length × band width; ground = rows × row length × row spacing; treated part = band width /
 * row spacing (plane geometry). The ground so counted has half a spacing on each side of the outer rows, and no headlands.
 *
 * Bands wider than their spacing are an error and not a warning. The formula would count the overlap twice and order up to
 * twice the product; sprayed so, the overlap gets a double dose. Either the two numbers are swapped, or the whole ground is
 * sprayed and `treatAll` is the question. Bands just as wide as the spacing are allowed.
 *
 * @param input - the rows and their sizes, in any units of length
 * @returns the treated area, and with `rowSpacing` the ground and the treated part of it; in ft² or m² like the length
 * @throws SprayMathError `conflict` where rows overlap, or where the list of lengths and the count disagree; `too-few`,
 * `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { rowBandsArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { treated, ground, fraction } = rowBandsArea({
 *   rows: 14,
 *   rowLength: qty(160, "ft"),
 *   bandWidth: qty(30, "in"),
 *   rowSpacing: qty(5, "ft"),
 * });
 * console.log(treated); // { value: 5600, unit: 'ft2', of: 'treated' }
 * console.log(ground); // { value: 11200, unit: 'ft2', of: 'ground' }
 * console.log(fraction); // 0.5
 * ```
 */
export function rowBandsArea(input: RowBandsInput): TreatedRows {
  return areasOfBands(checked(input, ROW_BANDS));
}

/** The areas of bands along rows. Trusts its input. */
export function areasOfBands(input: RowBandsInput, at = ""): TreatedRows {
  return areasOfStrips(stripsOf(input), at);
}

/**
 * The working of {@link rowBandsArea}, line by line.
 *
 * @param input - as for {@link rowBandsArea}
 * @returns the lines; the last one's result is the treated area
 * @throws SprayMathError as {@link rowBandsArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rowBandsArea } from "swath-to-spoon/working";
 *
 * const lines = rowBandsArea({ rows: 14, rowLength: qty(160, "ft"), bandWidth: qty(2.5, "ft") });
 * console.log(lines.map((line) => line.formula)); // [ 'rows * rowLength * bandWidth' ]
 * ```
 */
export function rowBandsAreaWorking(input: RowBandsInput): WorkingLine[] {
  return linesOfBands(checked(input, ROW_BANDS));
}

/** The working of {@link areasOfBands}. Trusts its input. */
export function linesOfBands(input: RowBandsInput): WorkingLine[] {
  return linesOfStrips("area.rowBands", stripsOf(input), NAMES);
}

const NAMES: StripNames = {
  count: "rows",
  length: "rowLength",
  width: "bandWidth",
  spacing: "rowSpacing",
};

function stripsOf({ rows, rowLength, rowLengths, bandWidth, rowSpacing }: RowBandsInput): Strips {
  return stripsAlong(rows, rowLength, rowLengths, { width: bandWidth, spacing: rowSpacing });
}
