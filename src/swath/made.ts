import { SprayMathError } from "../errors.js";
import type { Quantity, Unit } from "../units/types.js";

/** A computed amount. Neither an infinity nor a zero that is not one leaves the library. */
export function positive<U extends Unit>(value: number, unit: U): Quantity<U> {
  if (!Number.isFinite(value) || value <= 0) {
    throw new SprayMathError(
      "not-finite",
      "",
      `The sizes given lead to ${value} ${unit}; wanted sizes that a sprayer can have.`,
    );
  }
  return { value, unit };
}
