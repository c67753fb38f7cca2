import { SprayMathError, shown } from "../errors.js";
import { checkedObject } from "../units/guard.js";
import type { Length } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { givenStrips, type Lanes, lanesArea, lanesWorking, type TreatedRows } from "./lanes.js";

/** Strips sprayed along rows of trees, vines or bushes. */
export type TreeRowsInput = (
  | {
      /** How many rows. A whole number, 1 or more. */
      readonly rows: number;
      /** The length of each row. More than 0. */
      readonly rowLength: Length;
      /** Not with `rowLength`. */
      readonly rowLengths?: never;
    }
  | {
      /** The length of each row, where they differ; each more than 0. */
      readonly rowLengths: readonly Length[];
      /** How many rows, as a check on the list; may be left out. */
      readonly rows?: number;
      /** Not with `rowLengths`. */
      readonly rowLength?: never;
    }
) & {
  /** The treated width on one side of the row, measured from the trunks. More than 0; all sides together at most the row spacing. */
  readonly stripWidth: Length;
  /** How many sides of the row are treated: 2 for a strip along each side of the trees, 1 for one side only. */
  readonly sides: 1 | 2;
  /** The distance from one row of trees to the next. More than 0; needed for the ground. */
  readonly rowSpacing?: Length;
};

/**
 * Strips along tree rows, such as a weed-free strip under the trees: what is treated, and how much ground the rows take up.
 *
 * Formulas: treated = rows × row length × sides × strip width; ground = rows × row length × row spacing; treated part =
 * sides × strip width / row spacing (plane geometry).
 *
 * A spray on the canopy goes by the ground, row spacing included, on most labels: read the label, and use the ground with
 * `treatAll` there. Strips that would meet past the middle of the alley are an error, for the double dose in the overlap.
 *
 * @param input - the rows and their sizes, in any units of length
 * @returns the treated area, and with `rowSpacing` the ground and the treated part of it; in ft² or m² as the length is told
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
  return lanesArea(lanesOf(input));
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
  return lanesWorking("area.treeRows", lanesOf(input));
}

const NAMES: Lanes["names"] = {
  count: "rows",
  length: "rowLength",
  lengths: "rowLengths",
  width: "stripWidth",
  spacing: "rowSpacing",
};

function lanesOf(input: TreeRowsInput): Lanes {
  const { rows, rowLength, rowLengths, stripWidth, sides, rowSpacing } = checkedObject(input, "");
  if (sides !== 1 && sides !== 2) {
    throw new SprayMathError(
      sides === undefined ? "missing" : "unknown-choice",
      "sides",
      `Given ${shown(sides)}; wanted 1 or 2: the number of sides of each row that are treated.`,
    );
  }
  return {
    strips: givenStrips(rows, rowLength, rowLengths, NAMES),
    width: stripWidth,
    sides,
    ...(rowSpacing !== undefined && { spacing: rowSpacing }),
    names: NAMES,
  };
}
