import { SprayMathError } from "../errors.js";
import type { AreaUnit, GroundArea, TreatedArea } from "../units/types.js";

/** A computed area of ground. */
export function madeGround(value: number, unit: AreaUnit): GroundArea {
  return { value: checkedResult(value, unit), unit, of: "ground" };
}

/** A computed treated area. */
export function madeTreated(value: number, unit: AreaUnit): TreatedArea {
  return { value: checkedResult(value, unit), unit, of: "treated" };
}

function checkedResult(value: number, unit: AreaUnit): number {
  return positiveNumber(value, ` ${unit}`);
}

/**
 * Refuses what sizes so large or so small lead to that the arithmetic runs out of numbers: neither an infinity nor a zero
 * that is not one leaves the library.
 */
export function positiveNumber(value: number, unit = ""): number {
  if (!Number.isFinite(value) || value <= 0) {
    throw new SprayMathError(
      "not-finite",
      "",
      `The sizes given lead to ${value}${unit}; wanted sizes that a plot of ground can have.`,
    );
  }
  return value;
}
