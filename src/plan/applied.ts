import type { SeasonSoFar } from "../tank-mix/label-limits.js";
import type { SeasonRate } from "../tank-mix/label-rate.js";
import { convertValue, inUnit } from "../units/convert.js";
import { resolveUnit } from "../units/resolve.js";
import type {
  Mass,
  MassRate,
  Quantity,
  TreatedArea,
  Unit,
  Volume,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import type { Product } from "./input.js";
import type { ProductTotal } from "./result.js";

/** What was used of a mix, and how strong it was. */
export interface Used {
  /** The mix used on each plot, in the unit of the plan's mix. */
  readonly used: readonly number[];
  readonly left: Volume;
  /** The strength of the mix, as a part of the plan's. */
  readonly strength: number;
}

/** A product's season after this application. */
export interface SeasonTotal {
  /** The product. */
  readonly name: string;
  /**
   * What the next plan takes as `soFar`: the rate per treated area, all applications together, on the plot that had most,
   * and how many there were. Each is left out where what went before isn't given that way.
   */
  readonly soFar: SeasonSoFar;
}

/** A product in a volume of the mix, of which the strength is a part of the plan's. */
export function appliedAmount({ amount, strength }: ProductTotal, mix: Volume, part: number): Volume | Mass {
  const { per } = resolveUnit(strength.unit);
  const value = strength.value * inUnit(mix, per as VolumeUnit) * part;
  return { value, unit: amount.unit } as Volume | Mass;
}

/** An amount on a treated area, in a unit of rate. */
export function perArea(amount: Quantity, { value, unit }: TreatedArea, rateUnit: Unit): Quantity {
  const rate = { value: amount.value / value, unit: `${amount.unit}/${unit}` as Unit };
  return { value: convertValue(rate.value, rate.unit, rateUnit), unit: rateUnit };
}

// Two chains of floats that come to the same rate differ by noise.
export function percentMore(actual: number, planned: number): number {
  return Number((100 * (actual / planned - 1)).toFixed(9)) + 0;
}

/** A product's season with one application more. */
export function seasonOf({ name, soFar }: Product, rate: VolumeRate | MassRate | undefined): SeasonTotal {
  if (soFar === undefined) return { name, soFar: {} };
  const { applications } = soFar;
  const together = rate && withEarlier(rate, soFar);
  return {
    name,
    soFar: {
      ...(together && { rate: together }),
      ...(applications !== undefined && { applications: applications + 1 }),
    },
  };
}

/** This rate and what went before; nothing where that isn't known per treated area. */
function withEarlier(
  rate: VolumeRate | MassRate,
  { rate: before, applications }: SeasonSoFar,
): VolumeRate | MassRate | undefined {
  const plain = perTreated(before);
  if (plain === undefined && applications !== 0) return undefined;
  const earlier = plain === undefined ? 0 : inUnit(plain, rate.unit);
  return { value: rate.value + earlier, unit: rate.unit } as VolumeRate | MassRate;
}

/** What was used per treated area, where it is given that way. */
function perTreated(rate: SeasonRate | undefined): VolumeRate | MassRate | undefined {
  if (rate === undefined || "unit" in rate) return rate;
  return "per" in rate && rate.per !== "ground" ? rate.rate : undefined;
}
