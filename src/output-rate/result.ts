import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { checkShape } from "../units/shape.js";
import { type SystemUnits, unitsLike } from "../units/systems.js";
import type { Quantity, Unit } from "../units/types.js";

/** The units that go with a quantity's system of measure, once it is known to be a quantity at all. */
export function unitsWith(quantity: Quantity, path: string): SystemUnits {
  checkShape(quantity, path);
  return unitsLike(quantity.unit);
}

/**
 * A computed amount in the unit it is told in. Inputs so large or so small that the arithmetic runs out of numbers are
 * refused here: neither an infinity nor a zero that is not one leaves the library.
 */
export function positiveResult<U extends Unit>(value: number, from: Unit, to: U): Quantity<U> {
  const told = convertValue(value, from, to, "", "");
  if (!Number.isFinite(told) || told <= 0) {
    throw new SprayMathError(
      "not-finite",
      "",
      `The amounts given lead to ${value} ${from}; wanted amounts that a sprayer can put out.`,
    );
  }
  return { value: told, unit: to };
}
