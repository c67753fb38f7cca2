import { SprayMathError, shown } from "../errors.js";
import { resolveUnit } from "./resolve.js";
import { checkShape } from "./shape.js";
import { COMPOUNDS, type SimpleDimension, TABLE } from "./table.js";
import type { Dimension, Quantity, Unit, UnitsByDimension } from "./types.js";

const WORDS: Record<Dimension, string> = {
  length: "a length",
  area: "an area",
  volume: "a volume",
  mass: "a weight",
  time: "a time",
  pressure: "a pressure",
  fraction: "a fraction",
  speed: "a speed",
  flow: "a volume over a time",
  massFlow: "a weight over a time",
  volumeRate: "a volume per area",
  massRate: "a weight per area",
  density: "a weight per volume",
  volumeConcentration: "a volume in a volume",
  massFraction: "a weight in a weight",
  volumePerLength: "a volume per length",
  massPerLength: "a weight per length",
};

/** A dimension as an error message names it: `a volume per area`. */
export function dimensionInWords(dimension: Dimension): string {
  return WORDS[dimension];
}

/**
 * The dimension of a unit: what kind of thing it measures.
 *
 * @param unit - any unit
 * @returns the dimension's name
 * @throws SprayMathError `unknown-unit`
 *
 * @example
 * ```ts
 * import { dimensionOf } from "swath-to-spoon/units";
 *
 * console.log(dimensionOf("gal/ac")); // volumeRate
 * ```
 */
export function dimensionOf(unit: Unit): Dimension {
  return resolveUnit(unit, "unit").dimension;
}

/**
 * Whether two quantities measure the same kind of thing, so that one can be converted to the other's unit.
 *
 * @param a - any quantity
 * @param b - any quantity
 * @returns true where their dimensions are the same
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite` or `unknown-unit`
 *
 * @example
 * ```ts
 * import { qty, sameDimension } from "swath-to-spoon/units";
 *
 * console.log(sameDimension(qty(5, "oz"), qty(5, "fl_oz"))); // false
 * ```
 */
export function sameDimension(a: Quantity, b: Quantity): boolean {
  checkShape(a, "a");
  checkShape(b, "b");
  return dimensionOf(a.unit) === dimensionOf(b.unit);
}

/**
 * The units of a dimension, compounds included, in a fixed order.
 *
 * @param dimension - a dimension's name
 * @returns every unit of it
 * @throws SprayMathError `unknown-choice`
 *
 * @example
 * ```ts
 * import { unitsOf } from "swath-to-spoon/units";
 *
 * console.log(unitsOf("mass").join(" ")); // oz lb mg g kg
 * ```
 */
export function unitsOf<D extends Dimension>(dimension: D): UnitsByDimension[D][] {
  checkDimension(dimension, "dimension");
  const simple = (name: SimpleDimension): string[] => Object.keys(TABLE[name]);
  if (Object.hasOwn(TABLE, dimension)) return simple(dimension as SimpleDimension) as UnitsByDimension[D][];
  const { over, per } = COMPOUNDS[dimension as keyof typeof COMPOUNDS];
  const compounds = simple(over).flatMap((top) => simple(per).map((bottom) => `${top}/${bottom}`));
  return (dimension === "speed" ? ["mph", ...compounds] : compounds) as UnitsByDimension[D][];
}

/** Refuses what is not the name of a dimension. */
export function checkDimension(dimension: string, path: string): asserts dimension is Dimension {
  if (!Object.hasOwn(WORDS, dimension)) {
    const names = Object.keys(WORDS).join(", ");
    throw new SprayMathError("unknown-choice", path, `Given ${shown(dimension)}; wanted one of: ${names}.`);
  }
}

let total = 0;

/** How many valid units there are, compounds included. */
export function countUnits(): number {
  if (total === 0) {
    for (const dimension of Object.keys(WORDS) as Dimension[]) total += unitsOf(dimension).length;
  }
  return total;
}
