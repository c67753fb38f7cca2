import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { finite } from "../units/result.js";
import type { Fraction, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** A measured rate and the one that is aimed at. */
export interface TargetCheckInput {
  /** The rate that was measured. More than 0. */
  readonly rate: VolumeRate;
  /** The rate that is aimed at, such as the carrier volume on the label. More than 0. */
  readonly target: VolumeRate;
  /**
   * How far the rate may be off. More than 0; 5% unless given: Spray Gun (calibration), Pesticide Environmental
   * Stewardship; its page on granular bands allows 10%.
   */
  readonly limit?: Fraction | undefined;
}

const TARGET = object<TargetCheckInput>({
  rate: quantity("The rate that was measured. More than 0.", "volumeRate"),
  target: quantity(
    "The rate that is aimed at, such as the carrier volume on the label. More than 0.",
    "volumeRate",
  ),
  limit: optional(
    quantity(
      "How far the rate may be off. More than 0; 5% unless given: Spray Gun (calibration), Pesticide Environmental " +
        "Stewardship; its page on granular bands allows 10%.",
      "fraction",
    ),
  ),
});

/** How a measured rate compares with the one aimed at. */
export interface TargetCheck {
  /** How far the rate is from the target, in percent of the target; below 0 where it is lower. */
  readonly deviation: Fraction;
  /** The limit that was used. */
  readonly limit: Fraction;
  /** Whether the deviation is within the limit; if not, adjust and measure again. */
  readonly within: boolean;
}

/**
 * Returns whether a measured rate is close enough to the one aimed at.
 *
 * Formula: deviation = 100 × (rate − target) / target.
 * Source: definition of a relative deviation; the limit of 5% from Spray Gun (Pesticide Environmental Stewardship).
 *
 * @param input - the rate, the target, and the limit where it is not to be 5%
 * @returns the deviation in percent, the limit, and the verdict
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
  const given = checked(input, TARGET);
  const { limit = DEFAULT_LIMIT } = given;
  const deviation = deviationOf(given);
  return {
    deviation,
    limit: { ...limit },
    within: !moreThan(Math.abs(deviation.value), inUnit(limit, "%")),
  };
}

const DEFAULT_LIMIT: Fraction = { value: 5, unit: "%" };

function deviationOf({ rate, target }: TargetCheckInput): Fraction {
  const off = inUnit(rate, target.unit) - target.value;
  return { value: finite((100 * off) / target.value), unit: "%" };
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
  const given = checked(input, TARGET);
  const { rate, target } = given;
  return formulaLines({
    id: "output-rate.target-check",
    formula: "100 * (rate - target) / target",
    terms: { rate: [rate, target.unit], target: [target, target.unit] },
    result: deviationOf(given),
    source: "Spray Gun (calibration), Pesticide Environmental Stewardship",
  });
}
