import { BULK_DENSITIES, ProductDensityField } from "../tank-mix/content.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Density, Mass, Quantity, VolumeUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** The input of {@link volumeOfWeight}. */
export interface VolumeOfWeightInput {
  /** The weight of dry product. More than 0. */
  readonly mass: Mass;
  /** The bulk density of this very product, from its label or from a weighed cup of it. More than 0. */
  readonly bulkDensity: Density;
}

/** A bulk density, which is never guessed: where there is none the product is weighed. */
class BulkDensityField extends ProductDensityField {
  override missing(check: Check): undefined {
    return check.fault(
      "missing",
      "bulk-density-missing",
      "",
      "Enter the bulk density of this product, or weigh the product: an ounce of weight fills from 2 to 6 level tablespoons.",
    );
  }
}

/* @__NO_SIDE_EFFECTS__ */
function bulkDensity(sentence: string): BulkDensityField {
  return new BulkDensityField(sentence, BULK_DENSITIES);
}

const WEIGHT: ObjectField<VolumeOfWeightInput> = /* @__PURE__ */ object<VolumeOfWeightInput>({
  mass: quantity("The weight of dry product. More than 0.", "mass"),
  bulkDensity: bulkDensity(
    "The bulk density of this very product, from its label or from a weighed cup of it. More than 0.",
  ),
});

/**
 * Returns the volume that a weight of a dry product fills, to be spooned.
 *
 * Only with the bulk density of that very product. An ounce of weight of different powders fills from 2 to 6 level tablespoons
 * (New England Vegetable Management Guide, dilution tables, New England land-grant extension services), so there is no density
 * to fall back on. Where it is not known, weigh the product.
 *
 * Formula: volume = mass / bulk density.
 *
 * @param input - see {@link VolumeOfWeightInput}
 * @returns the volume in the small unit of the weight's system: `fl_oz`, `imp_fl_oz` or `mL`
 * @throws SprayMathError `missing` (no bulk density: weigh it), `not-a-quantity`, `not-finite`, `unknown-unit`,
 *   `wrong-dimension`, `out-of-range` or `unknown-field`
 *
 * @example
 * ```ts
 * import { volumeOfWeight } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(volumeOfWeight({ mass: qty(12, "g"), bulkDensity: qty(0.6, "kg/L") })); // { value: 20, unit: 'mL' }
 * ```
 */
export function volumeOfWeight(input: VolumeOfWeightInput): Quantity<"fl_oz" | "imp_fl_oz" | "mL"> {
  return volumeFilled(checked(input, WEIGHT));
}

/** The volume that a weight fills. Trusts its input. */
export function volumeFilled({
  mass,
  bulkDensity,
}: VolumeOfWeightInput): Quantity<"fl_oz" | "imp_fl_oz" | "mL"> {
  const unit = unitsLike(mass.unit).smallVolume;
  return positiveIn(mass.value / inUnit(bulkDensity, `${mass.unit}/${unit}`), unit);
}

/**
 * The working of {@link volumeOfWeight}.
 *
 * @param input - see {@link VolumeOfWeightInput}
 * @returns its lines
 * @throws SprayMathError as {@link volumeOfWeight}
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { volumeOfWeight } from "swath-to-spoon/working";
 *
 * const lines = volumeOfWeight({ mass: qty(12, "g"), bulkDensity: qty(0.6, "g/mL") });
 * console.log(lines[0]?.formula); // mass / density
 * ```
 */
export function volumeOfWeightWorking(input: VolumeOfWeightInput): WorkingLine[] {
  return volumeLines(checked(input, WEIGHT));
}

/** The lines of {@link volumeFilled}. Trusts its input. */
export function volumeLines(input: VolumeOfWeightInput): WorkingLine[] {
  const { mass, bulkDensity } = input;
  const result = volumeFilled(input);
  const densityUnit: `${Mass["unit"]}/${VolumeUnit}` = `${mass.unit}/${result.unit}`;
  return formulaLines({
    id: "household.volumeOfWeight",
    formula: "mass / density",
    terms: { mass: [mass, mass.unit], density: [bulkDensity, densityUnit] },
    result,
    source: "definition of bulk density",
  });
}
