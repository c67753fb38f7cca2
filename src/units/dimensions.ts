import { NAMES } from "./names.js";
import { resolveUnit } from "./resolve.js";
import { COMPOUNDS, type SimpleDimension, TABLE } from "./table.js";
import type { Dimension, Unit } from "./types.js";

/** The names of all dimensions. */
export const DIMENSIONS: readonly Dimension[] = /* @__PURE__ */ Object.keys(NAMES.dimension) as Dimension[];

/** A dimension as an error message names it: `a volume per area`. */
export function dimensionInWords(dimension: Dimension): string {
  return NAMES.dimension[dimension];
}

/**
 * Returns the dimension of a unit: what kind of thing it measures.
 *
 * @param unit - any unit
 * @returns the dimension's name
 * @throws SprayMathError `missing` or `unknown-unit`
 *
 * @example
 * ```ts
 * import { dimensionOf } from "swath-to-spoon/units";
 *
 * console.log(dimensionOf("gal/ac")); // volumeRate
 * ```
 */
export function dimensionOf(unit: Unit): Dimension {
  return resolveUnit(unit).dimension;
}

const lists = new Map<Dimension, readonly Dimension[]>();

/** The list of one dimension, always the same, so that what was read by it is found by it. */
export function alone<D extends Dimension>(dimension: D): readonly D[] {
  let list = lists.get(dimension);
  if (list === undefined) {
    list = [dimension];
    lists.set(dimension, list);
  }
  return list as readonly D[];
}

/** The units of a dimension, compounds included, in a fixed order. */
export function unitsMeasuring(dimension: Dimension): Unit[] {
  const simple = (name: SimpleDimension): string[] => Object.keys(TABLE[name]);
  if (Object.hasOwn(TABLE, dimension)) return simple(dimension as SimpleDimension) as Unit[];
  const { over, per } = COMPOUNDS[dimension as keyof typeof COMPOUNDS];
  const compounds = simple(over).flatMap((top) => simple(per).map((bottom) => `${top}/${bottom}`));
  return (dimension === "speed" ? ["mph", ...compounds] : compounds) as Unit[];
}

let total = 0;

/** How many valid units there are, compounds included. */
export function countUnits(): number {
  if (total === 0) {
    for (const dimension of DIMENSIONS) total += unitsMeasuring(dimension).length;
  }
  return total;
}
