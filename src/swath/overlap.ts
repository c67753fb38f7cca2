import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { type QuantityField, quantity } from "../units/quantity-field.js";
import type { Fraction, Length } from "../units/types.js";

/** How far one pass runs over the next. */
export const OVERLAP: QuantityField<Length | Fraction> = quantity(
  "How far the next pass runs over this one: a length, or a part of the width. 0 or more, less than the width.",
  ["length", "fraction"],
  "nonnegative",
);

/** How much of a width an overlap takes: a length, or a part of that width. */
export function overlapIn(overlap: Length | Fraction, width: number, unit: "ft" | "m"): number {
  return dimensionOf(overlap.unit) === "fraction" ? width * inUnit(overlap, "1") : inUnit(overlap, unit);
}

/** Notes an overlap as wide as the pass itself. */
export function overlapFits(
  width: Length | undefined,
  overlap: Length | Fraction | undefined,
  check: Check,
): void {
  if (width === undefined || overlap === undefined) return;
  const whole = inUnit(width, "m");
  if (moreThan(whole, overlapIn(overlap, whole, "m"))) return;
  check.fault("out-of-range", "overlap-too-wide", "overlap", "Must be less than the whole pass of {width}.", {
    given: overlap,
    width,
  });
}
