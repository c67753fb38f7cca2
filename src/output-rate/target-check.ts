import { moreThan } from "../units/decide.js";
import { checkedObject, inUnit, unitsWith } from "../units/guard.js";
import type { Fraction, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { toldLines } from "./told-lines.js";

/** A measured rate and the one that is wanted. */
export interface TargetCheckInput {
  /** The rate that was measured. More than 0. */
  readonly rate: VolumeRate;
  /** The rate that is wanted, such as the carrier volume on the label. More than 0. */
  readonly target: VolumeRate;
  /**
   * How far the rate may be off, more than 0. 5 % unless given: Spray Gun (calibration), Pesticide Environmental
   * Stewardship; its page on granular bands allows 10 %.
   */
  readonly limit?: Fraction;
}

/** How a measured rate compares with the one wanted. */
export interface TargetCheck {
  /** How far the rate is from the target, in per cent of the target; below 0 where it is lower. */
  readonly deviation: Fraction;
  /** The limit that was used. */
  readonly limit: Fraction;
  /** Whether the deviation is within the limit; if not, adjust and measure again. */
  readonly within: boolean;
}

/**
 * Whether a measured rate is close enough to the one wanted.
 *
 * Formula: deviation = 100 × (rate − target) / target.
 * Source: definition of a relative deviation; the limit of 5 % from Spray Gun (Pesticide Environmental Stewardship).
 *
 * @param input - the rate, the target, and the limit where it is not to be 5 %
 * @returns the deviation in per cent, the limit, and the verdict
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { checkAgainstTarget } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const check = checkAgainstTarget({ rate: qty(212, "L/ha"), target: qty(200, "L/ha") });
 * console.log(check.deviation, check.within); // { value: 6, unit: '%' } false
 * ```
 */
export function checkAgainstTarget(input: TargetCheckInput): TargetCheck {
  const { rate, target, limit = DEFAULT_LIMIT } = checkedObject(input, "");
  unitsWith(target, "target");
  const wanted = inUnit(target, target.unit, "target");
  inUnit(target, "gal/ac", "target");
  const deviation = (100 * (inUnit(rate, target.unit, "rate") - wanted)) / wanted;
  const most = inUnit(limit, "%", "limit");
  return {
    deviation: { value: deviation, unit: "%" },
    limit: { value: limit.value, unit: limit.unit },
    within: !moreThan(Math.abs(deviation), most),
  };
}

/**
 * The working of {@link checkAgainstTarget}, line by line.
 *
 * @param input - as for {@link checkAgainstTarget}
 * @returns the lines; the last one's result is the deviation
 * @throws SprayMathError as {@link checkAgainstTarget} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { checkAgainstTarget } from "swath-to-spoon/working";
 *
 * const lines = checkAgainstTarget({ rate: qty(212, "L/ha"), target: qty(200, "L/ha") });
 * console.log(lines[0]?.formula); // 100 * (rate - target) / target
 * ```
 */
export function checkAgainstTargetWorking(input: TargetCheckInput): WorkingLine[] {
  const result = checkAgainstTarget(input).deviation;
  const { rate, target } = input;
  return toldLines({
    id: "output-rate.target-check",
    formula: "100 * (rate - target) / target",
    terms: { rate: [rate, target.unit], target: [target, target.unit] },
    result,
    source: "Spray Gun (calibration), Pesticide Environmental Stewardship",
  });
}

const DEFAULT_LIMIT: Fraction = { value: 5, unit: "%" };
