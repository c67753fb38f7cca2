import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import { finite } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { AreaUnit, Quantity, TreatedArea, Volume, VolumeRate, VolumeUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** The input of {@link leftoverArea}. */
export interface LeftoverInput {
  /** What is left: finished mix, or rinse water. 0 or more. */
  readonly volume: Volume;
  /** What the sprayer puts out per treated area. More than 0. */
  readonly rate: VolumeRate;
}

const LEFTOVER: ObjectField<LeftoverInput> = object<LeftoverInput>({
  volume: quantity("What is left: finished mix, or rinse water. 0 or more.", "volume", "nonnegative"),
  rate: quantity("What the sprayer puts out per treated area. More than 0.", "volumeRate"),
});

/** A leftover's area, in the unit that the rate is per and in the one that it is reported in. */
interface LeftoverSteps {
  readonly held: VolumeUnit;
  readonly treated: Quantity<AreaUnit>;
  readonly area: TreatedArea;
}

function stepsOf({ volume, rate }: LeftoverInput, at: string): LeftoverSteps {
  const { over, per } = resolveUnit(rate.unit);
  const held = over as VolumeUnit;
  const treated = { value: inUnit(volume, held) / rate.value, unit: per as AreaUnit };
  const { area: unit } = unitsLike(volume.unit);
  return { held, treated, area: { value: finite(inUnit(treated, unit), at), unit, of: "treated" } };
}

/** The area that a leftover could still treat; `at` is the volume's place. Trusts its input. */
export function leftoverAreaOf(input: LeftoverInput, at = "volume"): TreatedArea {
  return stepsOf(input, at).area;
}

/**
 * Returns the area that a leftover could still treat at the same rate. Where the label allows it, it is used up there, on ground that
 * has not had its rate yet.
 *
 * Formula: area = volume / rate. Source: rate = volume / area, by definition.
 *
 * @param input - volume 0 or more, rate more than 0
 * @returns treated area in ft2 or m2, by the volume's system; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { leftoverArea } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(leftoverArea({ volume: qty(0.5, "gal"), rate: qty(20, "gal/ac") })); // { value: 1089, unit: 'ft2', of: 'treated' }
 * ```
 */
export function leftoverArea(input: LeftoverInput): TreatedArea {
  return leftoverAreaOf(checked(input, LEFTOVER));
}

/**
 * The working of {@link leftoverArea}.
 *
 * @param input - as for {@link leftoverArea}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link leftoverArea} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { leftoverArea } from "swath-to-spoon/working";
 *
 * const lines = leftoverArea({ volume: qty(0.5, "gal"), rate: qty(20, "gal/ac") });
 * console.log(lines[0]?.formula); // volume / rate
 * ```
 */
export function leftoverAreaWorking(input: LeftoverInput): WorkingLine[] {
  const given = checked(input, LEFTOVER);
  const { volume, rate } = given;
  const { held, treated, area } = stepsOf(given, "volume");
  return formulaLines(
    {
      id: "tank-mix.leftoverArea",
      formula: "volume / rate",
      terms: { volume: [volume, held], rate: [rate, rate.unit] },
      result: treated,
      source: "rate = volume / area, by definition",
    },
    area.unit,
  );
}
