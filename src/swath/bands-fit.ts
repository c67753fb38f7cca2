import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import type { Length } from "../units/types.js";

/**
 * Notes parallel bands, beds or strips that are wider than they are apart: what lies in two of them would get a double dose.
 * `sides` is how many strips of that width each row has.
 */
export function bandsFit(
  width: Length | undefined,
  spacing: Length | undefined,
  at: string,
  check: Check,
  sides = 1,
): void {
  if (width === undefined || spacing === undefined) return;
  if (!moreThan(sides * inUnit(width, spacing.unit), spacing.value)) return;
  check.fault(
    "conflict",
    sides === 1 ? "bands-overlap" : "sides-overlap",
    at,
    sides === 1
      ? "Bands or beds {width} wide and {spacing} apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all."
      : "Two sides of {width} on rows {spacing} apart overlap: a double dose there. Check both numbers, or choose whole block if you spray it all.",
    { width, spacing },
  );
}
