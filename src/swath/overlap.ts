import { SprayMathError } from "../errors.js";
import { dimensionOf } from "../units/dimensions.js";
import { inUnit } from "../units/guard.js";
import { checkShape } from "../units/shape.js";
import type { Fraction, Length } from "../units/types.js";

/** How much of a width an overlap takes: a length, or a part of that width. Always less than the width. */
export function overlapIn(overlap: Length | Fraction, width: number, unit: "ft" | "m", path: string): number {
  checkShape(overlap, path);
  const taken =
    dimensionOf(overlap.unit) === "fraction"
      ? width * inUnit(overlap as Fraction, "1", path, "nonnegative")
      : inUnit(overlap as Length, unit, path, "nonnegative");
  if (taken >= width) {
    throw new SprayMathError(
      "out-of-range",
      path,
      `Given an overlap of ${overlap.value} ${overlap.unit}, as much as the whole pass of ${width} ${unit} or more; wanted less.`,
    );
  }
  return taken;
}
