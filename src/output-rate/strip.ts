import { AMOUNT } from "../units/amounts.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { measured } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Length, Mass, MassRate, Measured, Volume, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type WorkedRate, workedPerArea } from "./worked-rate.js";

/**
 * What was measured in one run over a test strip.
 *
 * @typeParam A - a volume for a sprayer, a mass for a spreader
 */
export interface StripRun<A extends Volume | Mass = Volume> {
  /** What went out over the strip: the refill that brings the tank back to its mark. More than 0. */
  readonly used: Measured<A>;
  /** The width treated in the pass. More than 0. */
  readonly swath: Measured<Length>;
  /** The distance travelled while spraying. More than 0. */
  readonly distance: Measured<Length>;
}

/** A run over a test strip whose amount is of one of these kinds. */
/* @__NO_SIDE_EFFECTS__ */
export function stripRunOf(amounts: readonly ("volume" | "mass")[]): ObjectField<StripRun<Volume | Mass>> {
  return object<StripRun<Volume | Mass>>({
    used: measured(
      "What went out over the strip: the refill that brings the tank back to its mark. More than 0.",
      amounts,
    ),
    swath: measured("The width treated in the pass. More than 0.", "length"),
    distance: measured("The distance travelled while spraying. More than 0.", "length"),
  });
}

/** A run over a test strip, of a sprayer. */
export const STRIP_RUN: ObjectField<StripRun> = stripRunOf(["volume"]) as ObjectField<StripRun>;

const ANY_STRIP_RUN = stripRunOf(AMOUNT);

/**
 * Returns the rate from a test strip (the refill method): what was used, over the area it was used on.
 *
 * Formula: rate = used / (swath × distance).
 * Source: the definition of a rate per area; worked examples in Hand Sprayer Calibration (Colorado Environmental
 * Pesticide Education Program, Fact Sheet 204, 2006).
 *
 * @param run - what was used, the width of the pass and the distance, each more than 0
 * @returns the rate in the units of `used`: `gal/ac`, `imp_gal/ac` or L/ha for a volume, lb/ac or kg/ha for a mass
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, or
 * `out-of-range` where nothing was used or a length is not more than 0
 *
 * @example
 * ```ts
 * import { stripRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(stripRate({ used: qty(4, "gal"), swath: qty(20, "ft"), distance: qty(217.8, "ft") })); // { value: 40, unit: 'gal/ac' }
 * ```
 */
export function stripRate(run: StripRun<Volume>): VolumeRate;
export function stripRate(run: StripRun<Mass>): MassRate;
export function stripRate(run: StripRun<Volume> | StripRun<Mass>): VolumeRate | MassRate;
export function stripRate(run: StripRun<Volume> | StripRun<Mass>): VolumeRate | MassRate {
  return rateOfStrip(checked(run, ANY_STRIP_RUN));
}

/**
 * The working of {@link stripRate}, line by line.
 *
 * @param run - as for {@link stripRate}
 * @returns the lines; the last one's result is the rate
 * @throws SprayMathError as {@link stripRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRate } from "swath-to-spoon/working";
 *
 * const lines = stripRate({ used: qty(4, "gal"), swath: qty(20, "ft"), distance: qty(217.8, "ft") });
 * console.log(lines.map((line) => line.formula).join(", ")); // used / (swath * distance), value * size
 * ```
 */
export function stripRateWorking(run: StripRun<Volume> | StripRun<Mass>): WorkingLine[] {
  return linesOfStrip(checked(run, ANY_STRIP_RUN));
}

/** The rate of a run. Trusts its input. */
export function rateOfStrip(run: StripRun<Volume | Mass>, at = ""): VolumeRate | MassRate {
  return workedStrip(run, at).rate;
}

/** The working of {@link rateOfStrip}. Trusts its input. */
export function linesOfStrip(run: StripRun<Volume | Mass>, at = ""): WorkingLine[] {
  const { length, quotient, rate } = workedStrip(run, at);
  return formulaLines(
    {
      id: "output-rate.strip",
      formula: "used / (swath * distance)",
      terms: {
        used: [run.used, run.used.unit],
        swath: [run.swath, length],
        distance: [run.distance, length],
      },
      result: quotient,
      source: "definition of a rate per area",
    },
    rate.unit,
  );
}

interface WorkedStrip extends WorkedRate<VolumeRate | MassRate> {
  readonly length: "ft" | "m";
}

function workedStrip({ used, swath, distance }: StripRun<Volume | Mass>, at: string): WorkedStrip {
  const { length, area } = unitsLike(swath.unit);
  const value = used.value / (inUnit(swath, length) * inUnit(distance, length));
  const { quotient, rate } = workedPerArea(value, used.unit, area, at);
  return { length, quotient, rate };
}
