import { SprayMathError } from "../errors.js";
import { checkedObject, inUnit } from "../units/guard.js";
import { unitsLike } from "../units/systems.js";
import type { Density, Mass, Quantity, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";

/** What {@link byVolume} is asked. */
export interface ByVolumeInput {
  /** The weight of dry product wanted; more than 0. */
  readonly mass: Mass;
  /** The bulk density of this very product, from its label or from a weighed cup of it; more than 0. */
  readonly bulkDensity: Density;
}

/**
 * The volume that a weight of a dry product fills, so that it can be spooned.
 *
 * Only with the bulk density of that very product: an ounce of weight of different powders fills from 2 to 6 level
 * tablespoons (New England Vegetable Management Guide, dilution tables, New England land-grant extension services), so
 * there is no density to fall back on. Where it is not known, weigh the product.
 *
 * Formula: volume = mass / bulk density.
 *
 * @param input - see {@link ByVolumeInput}
 * @returns the volume in the small unit of the weight's system: `fl_oz` or `mL`
 * @throws SprayMathError `missing` (no bulk density: weigh it), `not-a-quantity`, `not-finite`, `unknown-unit`,
 *   `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { byVolume } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(byVolume({ mass: qty(12, "g"), bulkDensity: qty(0.6, "kg/L") })); // { value: 20, unit: 'mL' }
 * ```
 */
export function byVolume(input: ByVolumeInput): Quantity<"fl_oz" | "imp_fl_oz" | "mL"> {
  const { mass, density, unit } = terms(input);
  return { value: mass.value / density.value, unit };
}

/**
 * The working of {@link byVolume}.
 *
 * @param input - see {@link ByVolumeInput}
 * @returns its lines
 * @throws SprayMathError as {@link byVolume}
 *
 * @example
 * ```ts
 * import { byVolumeWorking } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(byVolumeWorking({ mass: qty(12, "g"), bulkDensity: qty(0.6, "g/mL") })[0]?.formula); // mass / density
 * ```
 */
export function byVolumeWorking(input: ByVolumeInput): WorkingLine[] {
  const { mass, density, unit } = terms(input);
  return [
    ...conversionLines("household.byVolume.density", input.bulkDensity, density.unit),
    {
      id: "household.byVolume",
      formula: "mass / density",
      terms: { mass, density },
      result: { value: mass.value / density.value, unit },
      source: "definition of bulk density",
    },
  ];
}

function terms(input: ByVolumeInput): {
  mass: Mass;
  density: Density;
  unit: "fl_oz" | "imp_fl_oz" | "mL";
} {
  const { mass, bulkDensity } = checkedObject(input, "");
  inUnit(mass, "g", "mass");
  if (bulkDensity === undefined || bulkDensity === null) {
    throw new SprayMathError(
      "missing",
      "bulkDensity",
      "No bulk density given; wanted that of this very product. Without it, weigh the product: an ounce of weight fills from 2 to 6 level tablespoons.",
    );
  }
  const unit = unitsLike(mass.unit).smallVolume;
  const densityUnit: `${Mass["unit"]}/${VolumeUnit}` = `${mass.unit}/${unit}`;
  const density = inUnit(bulkDensity, densityUnit, "bulkDensity");
  const volume = mass.value / density;
  if (!Number.isFinite(volume))
    throw new SprayMathError(
      "not-finite",
      "bulkDensity",
      `Given ${bulkDensity.value} ${bulkDensity.unit}, too thin for ${mass.value} ${mass.unit}.`,
    );
  return { mass, density: { value: density, unit: densityUnit }, unit };
}
