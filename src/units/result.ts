import { inUnit } from "./convert.js";
import { refusal } from "./message.js";
import type { GroundArea, Quantity, TreatedArea, Unit } from "./types.js";

/** A result that must be a number to go on with: each input may be right by itself and all of them together out of reach. */
export function finite(value: number, path = ""): number {
  if (Number.isFinite(value)) return value;
  throw outOfReach(path);
}

/** A result that must be more than 0 as well. */
export function positive(value: number, path = ""): number {
  if (value > 0 && value < Number.POSITIVE_INFINITY) return value;
  throw outOfReach(path);
}

/** A quantity that must be more than 0. */
export function positiveIn<U extends Unit>(value: number, unit: U, path = ""): Quantity<U> {
  return { value: positive(value, path), unit };
}

/** A computed quantity in the unit that it is reported in; more than 0. */
export function resultIn<U extends Unit>(computed: Quantity, unit: U, path = ""): Quantity<U> {
  return positiveIn(inUnit(computed, unit), unit, path);
}

/** Ground of a size that a plot can have. */
export function groundOf(value: number, unit: GroundArea["unit"], path = ""): GroundArea {
  return { value: positive(value, path), unit, of: "ground" };
}

/** A treated area of a size that a plot can have. */
export function treatedOf(value: number, unit: TreatedArea["unit"], path = ""): TreatedArea {
  return { value: positive(value, path), unit, of: "treated" };
}

function outOfReach(path: string): Error {
  return refusal(
    "not-finite",
    "result-out-of-reach",
    path,
    "The result is too large or too small to compute with. Check the numbers and their units.",
  );
}
