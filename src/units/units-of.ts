import { checked } from "./check.js";
import { DIMENSIONS, unitsMeasuring } from "./dimensions.js";
import { type ChoiceField, choice } from "./fields.js";
import type { Dimension, UnitsByDimension } from "./types.js";

/** The name of a dimension. */
export const DIMENSION: ChoiceField<Dimension> = choice("What kind of thing it is.", DIMENSIONS);

/**
 * Returns the units of a dimension, compounds included, in a fixed order.
 *
 * @param dimension - a dimension's name
 * @returns every unit of it
 * @throws SprayMathError `missing` or `unknown-choice`
 *
 * @example
 * ```ts
 * import { unitsOf } from "swath-to-spoon/units";
 *
 * console.log(unitsOf("mass").join(" ")); // oz lb mg g kg
 * ```
 */
export function unitsOf<D extends Dimension>(dimension: D): UnitsByDimension[D][] {
  return unitsMeasuring(checked(dimension, DIMENSION, "dimension")) as UnitsByDimension[D][];
}
