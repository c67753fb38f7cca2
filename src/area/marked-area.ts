import { checked } from "../units/check.js";
import {
  groundArea as groundField,
  type QuantityField,
  treatedArea as treatedField,
} from "../units/quantity-field.js";
import type { Area, GroundArea, TreatedArea } from "../units/types.js";

const GROUND: QuantityField<GroundArea> = groundField("An area of ground. More than 0.", { unmarked: true });
const TREATED: QuantityField<TreatedArea> = treatedField("A treated area. More than 0.", { unmarked: true });

/**
 * Says that a measured area is ground: the plot with everything on it, sprayed or not.
 *
 * @param area - any area that does not say yet what it is an area of; more than 0
 * @returns the same area, marked `of: "ground"`
 * @throws SprayMathError `wrong-area` where it is marked as treated already, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { groundArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(groundArea(qty(2.5, "ac"))); // { value: 2.5, unit: 'ac', of: 'ground' }
 * ```
 */
export function groundArea(area: Area & { readonly of?: "ground" | undefined }): GroundArea {
  return checked(area, GROUND, "area");
}

/**
 * Says that a measured area is what the spray really lands on, such as the treated acres on a work order. Where it
 * has to be worked out from a plot, use `treatAll`, `treatPart`, `rowBandsArea` and the like instead.
 *
 * @param area - any area that does not say yet what it is an area of; more than 0
 * @returns the same area, marked `of: "treated"`
 * @throws SprayMathError `wrong-area` where it is marked as ground already, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { treatedArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(treatedArea(qty(5600, "ft2"))); // { value: 5600, unit: 'ft2', of: 'treated' }
 * ```
 */
export function treatedArea(area: Area & { readonly of?: "treated" | undefined }): TreatedArea {
  return checked(area, TREATED, "area");
}
