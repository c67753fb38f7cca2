import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { sum } from "../units/quantity.js";
import type { Quantity, Unit } from "../units/types.js";

/**
 * A computed amount in the unit it is told in. Inputs so large or so small that the arithmetic runs out of numbers are
 * refused here: neither an infinity nor a zero that is not one leaves the library.
 */
export function toldIn<U extends Unit>(computed: Quantity, unit: U): Quantity<U> {
  const value = convertValue(computed.value, computed.unit, unit);
  if (!Number.isFinite(value) || value <= 0) {
    throw new SprayMathError(
      "not-finite",
      "",
      `The amounts given lead to ${value} ${unit}; wanted amounts that a sprayer can put out.`,
    );
  }
  return { value, unit };
}

/** The sum of numbers in one unit, as exact as {@link sum}. */
export function totalOf(values: readonly number[]): number {
  return sum(values.map((value) => ({ value, unit: "1" as const }))).value;
}
