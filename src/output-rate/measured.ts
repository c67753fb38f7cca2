import { SprayMathError } from "../errors.js";
import { inUnit } from "../units/guard.js";
import type { Measured, Quantity, UnitLike } from "../units/types.js";

/**
 * The standard uncertainty of a reading, in the reading's own unit; nothing where it does not say. A reading to the
 * nearest step r lies anywhere within r/2 of the truth, so its standard uncertainty is r/√12 (JCGM 100:2008, 4.3.7 and
 * F.2.2.1).
 */
export function standardUncertainty(measured: Measured<Quantity>, path: string): number | undefined {
  const { unit, resolution, uncertainty } = measured;
  if (resolution !== undefined && uncertainty !== undefined) {
    throw new SprayMathError(
      "conflict",
      path,
      "Given both a resolution and an uncertainty; wanted one of them. Leave the resolution out where the uncertainty already counts it.",
    );
  }
  if (uncertainty !== undefined)
    return inUnit(uncertainty as Quantity<UnitLike<typeof unit>>, unit, `${path}.uncertainty`, "nonnegative");
  if (resolution !== undefined)
    return inUnit(resolution as Quantity<UnitLike<typeof unit>>, unit, `${path}.resolution`) / Math.sqrt(12);
  return undefined;
}
