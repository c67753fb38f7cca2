import { checkedObject } from "../units/guard.js";
import type { Length } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { givenStrips, type Lanes, lanesArea, lanesWorking, type TreatedRows } from "./lanes.js";

/** Bands sprayed along rows. */
export type RowBandsInput = (
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
  /** The treated width on one row, all nozzles of the row together. More than 0, at most the row spacing. */
  readonly bandWidth: Length;
  /** The distance from one row to the next. More than 0; needed for the ground and the treated part of it. */
  readonly rowSpacing?: Length;
};

/**
 * Bands along rows: what is treated, and how much ground the rows take up.
 *
 * Formulas: treated = rows × row length × band width; ground = rows × row length × row spacing; treated part = band width /
 * row spacing (plane geometry). The ground so counted has half a spacing on each side of the outer rows, and no headlands.
 *
 * Bands wider than their spacing are an error and not a warning: the formula would count the overlap twice and so order
 * up to twice the product, and a grower who sprays so gives the overlap a double dose. Either the two numbers are swapped,
 * or the whole ground is sprayed and `treatAll` is the question. Bands just as wide as the spacing are allowed.
 *
 * @param input - the rows and their sizes, in any units of length
 * @returns the treated area, and with `rowSpacing` the ground and the treated part of it; in ft² or m² as the length is told
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
  return lanesArea(lanesOf(input));
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
  return lanesWorking("area.rowBands", lanesOf(input));
}

const NAMES: Lanes["names"] = {
  count: "rows",
  length: "rowLength",
  lengths: "rowLengths",
  width: "bandWidth",
  spacing: "rowSpacing",
};

function lanesOf(input: RowBandsInput): Lanes {
  const { rows, rowLength, rowLengths, bandWidth, rowSpacing } = checkedObject(input, "");
  return {
    strips: givenStrips(rows, rowLength, rowLengths, NAMES),
    width: bandWidth,
    ...(rowSpacing !== undefined && { spacing: rowSpacing }),
    names: NAMES,
  };
}
