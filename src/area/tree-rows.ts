import { bandsFit } from "../swath/bands-fit.js";
import { checked } from "../units/check.js";
import { choice, type EitherField, type ObjectField, object, optional } from "../units/fields.js";
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

/** The strips on rows of trees. */
interface TreeStrips {
  /** The treated width on one side of the row, from the trunks. More than 0. */
  readonly stripWidth: Length;
  /** How many sides of the row are treated: 1 or 2. */
  readonly sides: 1 | 2;
  /** From one row of trees to the next. More than 0; needed for the ground. */
  readonly rowSpacing?: Length | undefined;
}

/** Strips sprayed along rows of trees, vines or bushes. */
export type TreeRowsInput = (RowsAlike | RowsByLength) & TreeStrips;

/** The fields of strips along trees, beside those of the rows. */
export const TREE_STRIPS: ObjectField<TreeStrips> = /* @__PURE__ */ object<TreeStrips>(
  {
    stripWidth: quantity("The treated width on one side of the row, from the trunks. More than 0.", "length"),
    sides: choice("How many sides of the row are treated: 1 or 2.", [1, 2]),
    rowSpacing: optional(
      quantity("From one row of trees to the next. More than 0; needed for the ground.", "length"),
    ),
  },
  [
    ({ stripWidth, sides, rowSpacing }, check) =>
      bandsFit(stripWidth, rowSpacing, "stripWidth", check, sides),
  ],
);

const TREE_ROWS: EitherField<TreeRowsInput> = /* @__PURE__ */ alongRows(TREE_STRIPS);

/**
 * Returns the area of strips along tree rows, such as a weed-free strip under the trees: what is treated, and how much ground the rows take up.
 *
 * Formulas: treated = rows × row length × sides × strip width; ground = rows × row length × row spacing; treated part =
 * sides × strip width / row spacing (plane geometry).
 *
 * A spray on the canopy goes by the ground, row spacing included, on most labels: read the label, and use the ground with
 * `treatAll` there. Strips that would meet past the middle of the alley are an error, for the double dose in the overlap.
 *
 * @param input - the rows and their sizes, in any units of length
 * @returns the treated area, and with `rowSpacing` the ground and the treated part of it; in ft² or m² like the length
 * @throws SprayMathError `conflict` where rows overlap, or where the list of lengths and the count disagree; `too-few`,
 * `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `unknown-choice` or `out-of-range`
 *
 * @example
 * ```ts
 * import { treeRowsArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { treated, fraction } = treeRowsArea({
 *   rows: 10,
 *   rowLength: qty(100, "m"),
 *   stripWidth: qty(0.6, "m"),
 *   sides: 2,
 *   rowSpacing: qty(4.8, "m"),
 * });
 * console.log(treated); // { value: 1200, unit: 'm2', of: 'treated' }
 * console.log(fraction); // 0.25
 * ```
 */
export function treeRowsArea(input: TreeRowsInput): TreatedRows {
  return areasOfTreeRows(checked(input, TREE_ROWS));
}

/** The areas of strips along tree rows. Trusts its input. */
export function areasOfTreeRows(input: TreeRowsInput, at = ""): TreatedRows {
  return areasOfStrips(stripsOf(input), at);
}

/**
 * The working of {@link treeRowsArea}, line by line.
 *
 * @param input - as for {@link treeRowsArea}
 * @returns the lines; the last one's result is the treated area
 * @throws SprayMathError as {@link treeRowsArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { treeRowsArea } from "swath-to-spoon/working";
 *
 * const lines = treeRowsArea({ rows: 10, rowLength: qty(100, "m"), stripWidth: qty(0.6, "m"), sides: 2 });
 * console.log(lines.map((line) => line.formula)); // [ 'rows * rowLength * sides * stripWidth' ]
 * ```
 */
export function treeRowsAreaWorking(input: TreeRowsInput): WorkingLine[] {
  return linesOfTreeRows(checked(input, TREE_ROWS));
}

/** The working of {@link areasOfTreeRows}. Trusts its input. */
export function linesOfTreeRows(input: TreeRowsInput): WorkingLine[] {
  return linesOfStrips("area.treeRows", stripsOf(input), NAMES);
}

const NAMES: StripNames = {
  count: "rows",
  length: "rowLength",
  width: "stripWidth",
  spacing: "rowSpacing",
};

function stripsOf({ rows, rowLength, rowLengths, stripWidth, sides, rowSpacing }: TreeRowsInput): Strips {
  return stripsAlong(rows, rowLength, rowLengths, { width: stripWidth, sides, spacing: rowSpacing });
}
