import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positive, positiveIn } from "../units/result.js";
import type { Density, Flow, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** A liquid's density, and the water's that it is compared with. */
export interface Densities {
  /** The density of what will be sprayed, from its label or a weighed measure. More than 0. */
  readonly density: Density;
  /** The density of the water used to calibrate; handbooks say 8.33 or 8.34 lb/gal. Always given, so that it is known which. */
  readonly waterDensity: Density;
}

const DENSITIES = object<Densities>({
  density: quantity(
    "The density of what will be sprayed, from its label or a weighed measure. More than 0.",
    "density",
  ),
  waterDensity: quantity(
    "The density of the water used to calibrate; handbooks say 8.33 or 8.34 lb/gal. Always given, so that it is known which.",
    "density",
  ),
});

/**
 * Returns the density factor of the handbooks' tables: how much more water than solution the same nozzle and pressure pass.
 *
 * Formula: factor = √(density / water density).
 * Source: Setting the Sprayer Flow Rate for Non-Water Solutions (University of Nebraska-Lincoln Extension, CropWatch, 2016).
 *
 * @param densities - the liquid's density and the water's
 * @returns the factor; 1 for water
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { densityFactor } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(densityFactor({ density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") })); // 1.2
 * ```
 */
export function densityFactor(densities: Densities): number {
  return factorOf(checked(densities, DENSITIES));
}

function factorOf({ density, waterDensity }: Densities): number {
  return positive(Math.sqrt(density.value / inUnit(waterDensity, density.unit)));
}

/**
 * The working of {@link densityFactor}, line by line.
 *
 * @param densities - as for {@link densityFactor}
 * @returns the lines; the last one's result is the factor
 * @throws SprayMathError as {@link densityFactor} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { densityFactor } from "swath-to-spoon/working";
 *
 * const lines = densityFactor({ density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") });
 * console.log(lines[0]?.formula); // sqrt(density / waterDensity)
 * ```
 */
export function densityFactorWorking(densities: Densities): WorkingLine[] {
  return factorLines(checked(densities, DENSITIES));
}

function factorLines(densities: Densities): WorkingLine[] {
  const { density, waterDensity } = densities;
  return formulaLines({
    id: "output-rate.density-factor",
    formula: "sqrt(density / waterDensity)",
    terms: { density: [density, density.unit], waterDensity: [waterDensity, density.unit] },
    result: factorOf(densities),
    source: SOURCE,
  });
}

/**
 * What the solution is to go out at.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface WaterForSolutionInput<Q extends Flow | VolumeRate> extends Densities {
  /** The flow or rate that the solution is to go out at. More than 0. */
  readonly solution: Q;
}

const SOLUTION = object<WaterForSolutionInput<Flow | VolumeRate>>({
  ...DENSITIES.fields,
  solution: quantity("The flow or rate that the solution is to go out at. More than 0.", [
    "flow",
    "volumeRate",
  ]),
});

/**
 * Returns the flow or rate to look for when calibrating with water, for the solution to go out as it should. A heavy liquid
 * flows more slowly than water, so the water has to show more.
 *
 * Formula: water = solution × √(density / water density).
 * Source: Setting the Sprayer Flow Rate for Non-Water Solutions (University of Nebraska-Lincoln Extension, CropWatch, 2016).
 *
 * @param input - the solution's flow or rate, its density and the water's
 * @returns the water's flow or rate, in the unit of `solution`
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { waterForSolution } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const densities = { density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") };
 * console.log(waterForSolution({ solution: qty(200, "L/ha"), ...densities })); // { value: 240, unit: 'L/ha' }
 * ```
 */
export function waterForSolution(input: WaterForSolutionInput<Flow>): Flow;
export function waterForSolution(input: WaterForSolutionInput<VolumeRate>): VolumeRate;
export function waterForSolution(
  input: WaterForSolutionInput<Flow> | WaterForSolutionInput<VolumeRate>,
): Flow | VolumeRate {
  return waterFor(checked(input, SOLUTION));
}

/**
 * The working of {@link waterForSolution}, line by line.
 *
 * @param input - as for {@link waterForSolution}
 * @returns the lines; the last one's result is the water's flow or rate
 * @throws SprayMathError as {@link waterForSolution} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { waterForSolution } from "swath-to-spoon/working";
 *
 * const densities = { density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") };
 * console.log(waterForSolution({ solution: qty(200, "L/ha"), ...densities }).at(-1)?.formula); // solution * factor
 * ```
 */
export function waterForSolutionWorking(
  input: WaterForSolutionInput<Flow> | WaterForSolutionInput<VolumeRate>,
): WorkingLine[] {
  const given = checked(input, SOLUTION);
  const { solution } = given;
  return [
    ...factorLines(given),
    ...formulaLines({
      id: "output-rate.water-for-solution",
      formula: "solution * factor",
      terms: { solution: [solution, solution.unit], factor: factorOf(given) },
      result: waterFor(given),
      source: SOURCE,
    }),
  ];
}

function waterFor({ solution, ...densities }: WaterForSolutionInput<Flow | VolumeRate>): Flow | VolumeRate {
  return positiveIn(solution.value * factorOf(densities), solution.unit) as Flow | VolumeRate;
}

/**
 * What the water showed.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface SolutionForWaterInput<Q extends Flow | VolumeRate> extends Densities {
  /** The flow or rate that was measured with water. More than 0. */
  readonly water: Q;
}

const WATER = object<SolutionForWaterInput<Flow | VolumeRate>>({
  ...DENSITIES.fields,
  water: quantity("The flow or rate that was measured with water. More than 0.", ["flow", "volumeRate"]),
});

/**
 * Returns the flow or rate at which a solution goes out of a sprayer that was calibrated with water.
 *
 * Formula: solution = water / √(density / water density).
 * Source: Setting the Sprayer Flow Rate for Non-Water Solutions (University of Nebraska-Lincoln Extension, CropWatch, 2016).
 *
 * @param input - the water's flow or rate, the solution's density and the water's
 * @returns the solution's flow or rate, in the unit of `water`
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { solutionForWater } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const densities = { density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") };
 * console.log(solutionForWater({ water: qty(240, "L/ha"), ...densities })); // { value: 200, unit: 'L/ha' }
 * ```
 */
export function solutionForWater(input: SolutionForWaterInput<Flow>): Flow;
export function solutionForWater(input: SolutionForWaterInput<VolumeRate>): VolumeRate;
export function solutionForWater(
  input: SolutionForWaterInput<Flow> | SolutionForWaterInput<VolumeRate>,
): Flow | VolumeRate {
  return solutionFor(checked(input, WATER));
}

/**
 * The working of {@link solutionForWater}, line by line.
 *
 * @param input - as for {@link solutionForWater}
 * @returns the lines; the last one's result is the solution's flow or rate
 * @throws SprayMathError as {@link solutionForWater} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { solutionForWater } from "swath-to-spoon/working";
 *
 * const densities = { density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") };
 * console.log(solutionForWater({ water: qty(240, "L/ha"), ...densities }).at(-1)?.formula); // water / factor
 * ```
 */
export function solutionForWaterWorking(
  input: SolutionForWaterInput<Flow> | SolutionForWaterInput<VolumeRate>,
): WorkingLine[] {
  const given = checked(input, WATER);
  const { water } = given;
  return [
    ...factorLines(given),
    ...formulaLines({
      id: "output-rate.solution-for-water",
      formula: "water / factor",
      terms: { water: [water, water.unit], factor: factorOf(given) },
      result: solutionFor(given),
      source: SOURCE,
    }),
  ];
}

function solutionFor({ water, ...densities }: SolutionForWaterInput<Flow | VolumeRate>): Flow | VolumeRate {
  return positiveIn(water.value / factorOf(densities), water.unit) as Flow | VolumeRate;
}

const SOURCE =
  "Setting the Sprayer Flow Rate for Non-Water Solutions, University of Nebraska-Lincoln Extension (CropWatch), 2016";
