import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positiveIn } from "../units/result.js";
import type { Speed, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** A rate that is known at one speed, and another speed. */
export interface RateAtSpeedInput {
  /** The rate at the first speed. More than 0. */
  readonly rate: VolumeRate;
  /** The speed that the rate was measured at. More than 0. */
  readonly speed: Speed;
  /** The speed that is asked about. More than 0. */
  readonly newSpeed: Speed;
}

const SPEEDS = object<RateAtSpeedInput>({
  rate: quantity("The rate at the first speed. More than 0.", "volumeRate"),
  speed: quantity("The speed that the rate was measured at. More than 0.", "speed"),
  newSpeed: quantity("The speed that is asked about. More than 0.", "speed"),
});

/**
 * Returns the rate at another speed, everything else unchanged: walking twice as fast halves it. It holds for a pump that runs
 * at its own pace, not for one driven by the ground wheel.
 *
 * Formula: new rate = rate × speed / new speed.
 * Source: follows from rate = flow / (speed × width), Sprayer Calibrations and Calculations (Montana State University
 * Extension Service, MontGuide MT 2000-14, 2000).
 *
 * @param input - the rate, its speed and the new speed
 * @returns the rate in the unit of `rate`
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { rateAtSpeed } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(rateAtSpeed({ rate: qty(40, "gal/ac"), speed: qty(2, "mph"), newSpeed: qty(2.5, "mph") })); // { value: 32, unit: 'gal/ac' }
 * ```
 */
export function rateAtSpeed(input: RateAtSpeedInput): VolumeRate {
  return newRate(checked(input, SPEEDS));
}

function newRate({ rate, speed, newSpeed }: RateAtSpeedInput): VolumeRate {
  return positiveIn(rate.value * (speed.value / inUnit(newSpeed, speed.unit)), rate.unit);
}

/**
 * The working of {@link rateAtSpeed}, line by line.
 *
 * @param input - as for {@link rateAtSpeed}
 * @returns the lines; the last one's result is the new rate
 * @throws SprayMathError as {@link rateAtSpeed} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rateAtSpeed } from "swath-to-spoon/working";
 *
 * const lines = rateAtSpeed({ rate: qty(40, "gal/ac"), speed: qty(2, "mph"), newSpeed: qty(2.5, "mph") });
 * console.log(lines[0]?.formula); // rate * speed / newSpeed
 * ```
 */
export function rateAtSpeedWorking(input: RateAtSpeedInput): WorkingLine[] {
  const given = checked(input, SPEEDS);
  const { rate, speed, newSpeed } = given;
  return formulaLines({
    id: "output-rate.rate-at-speed",
    formula: "rate * speed / newSpeed",
    terms: { rate: [rate, rate.unit], speed: [speed, speed.unit], newSpeed: [newSpeed, speed.unit] },
    result: newRate(given),
    source:
      "Sprayer Calibrations and Calculations, Montana State University Extension Service, MontGuide MT 2000-14, 2000",
  });
}
