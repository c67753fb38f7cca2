import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { AreaUnit, Quantity, TreatedArea, Volume, VolumeRate, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";

/** What {@link leftoverArea} is given. */
export interface LeftoverInput {
  /** What is left: finished mix, or rinse water. */
  readonly volume: Volume;
  /** What the sprayer puts out per treated area. */
  readonly rate: VolumeRate;
}

interface Terms {
  readonly volume: number;
  readonly volumeUnit: VolumeUnit;
  readonly area: AreaUnit;
}

function termsOf(input: LeftoverInput): Terms {
  const { volume, rate } = checkedObject(input, "");
  inUnit(rate, "gal/ac", "rate");
  const { over, per } = resolveUnit(rate.unit, "rate.unit");
  const volumeUnit = over as VolumeUnit;
  return {
    volume: inUnit(volume, volumeUnit, "volume", "nonnegative") + 0,
    volumeUnit,
    area: per as AreaUnit,
  };
}

/**
 * The area that a leftover could still treat at the same rate: where the label allows it, spraying it out there is how
 * it is used up, on ground that has not had its rate yet.
 *
 * Formula: area = volume / rate. Source: rate = volume / area, by definition.
 *
 * @param input - volume 0 or more, rate more than 0
 * @returns treated area in ft2 or m2, by the volume's system; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
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
  const { volume, area } = termsOf(input);
  const unit = unitsLike(input.volume.unit).area;
  const value = convertValue(volume / input.rate.value, area, unit);
  if (!Number.isFinite(value)) {
    throw new SprayMathError("not-finite", "volume", "The area that comes out is too large to compute with.");
  }
  return { value, unit, of: "treated" };
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
  const { volume, volumeUnit, area } = termsOf(input);
  const treated: Quantity = { value: volume / input.rate.value, unit: area };
  return [
    ...conversionLines("tank-mix.leftoverArea.volume", input.volume, volumeUnit),
    {
      id: "tank-mix.leftoverArea",
      formula: "volume / rate",
      terms: { volume: { value: volume, unit: volumeUnit }, rate: input.rate },
      result: treated,
      source: "rate = volume / area, by definition",
    },
    ...conversionLines("tank-mix.leftoverArea", treated, unitsLike(input.volume.unit).area),
  ];
}
