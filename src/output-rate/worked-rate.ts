import { dimensionOf } from "../units/dimensions.js";
import { perUnit } from "../units/resolve.js";
import { resultIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  MassRate,
  MassRateUnit,
  MassUnit,
  Quantity,
  Unit,
  VolumeRate,
  VolumeRateUnit,
  VolumeUnit,
} from "../units/types.js";

/** A rate that was divided out: both the number and its working read it. */
export interface WorkedRate<R extends Quantity> {
  /** As the division gives it, such as in `fl_oz/ft2`. */
  readonly quotient: Quantity;
  /** In the unit that it is reported in. */
  readonly rate: R;
}

/** A rate from the number that the division gives, its unit, and the unit that it is reported in. */
export function workedRate<U extends Unit>(
  value: number,
  direct: Unit,
  unit: U,
  at: string,
): WorkedRate<Quantity<U>> {
  const quotient = { value, unit: direct };
  return { quotient, rate: resultIn(quotient, unit, at) };
}

/** An amount per area, reported in the system of the amount: `gal/ac`, `imp_gal/ac` or L/ha, lb/ac or kg/ha. */
export function workedPerArea(
  value: number,
  amount: VolumeUnit | MassUnit,
  area: "ft2" | "m2",
  at: string,
): WorkedRate<VolumeRate | MassRate> {
  const { volumeRate, massRate } = unitsLike(amount);
  const unit = dimensionOf(amount) === "volume" ? volumeRate : massRate;
  return workedRate<VolumeRateUnit | MassRateUnit>(value, perUnit(amount, area), unit, at) as WorkedRate<
    VolumeRate | MassRate
  >;
}
