import type { SeasonSoFar } from "../tank-mix/label-limits.js";
import type { SeasonRate } from "../tank-mix/label-rate.js";
import type { Check } from "../units/check.js";
import { convertValue, inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
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

/** How much was used: what was left of all there was, or what went on each plot. */
interface LeftOrUsed<Q extends Quantity> {
  readonly left?: Q | undefined;
  readonly used?: readonly Q[] | undefined;
}

/** Notes that it isn't known what was used, or that it is given twice. */
export function leftOrUsed<Q extends Quantity>({ left, used }: LeftOrUsed<Q>, check: Check): void {
  if (check.hasFault("left") || check.hasFault("used")) return;
  if (left === undefined && used === undefined)
    check.fault(
      "missing",
      "left-or-used",
      "left",
      "Enter what was left over, or what was used on each plot.",
    );
  if (left !== undefined && used !== undefined)
    check.fault(
      "conflict",
      "left-and-used",
      "left",
      "Enter what was left over or what was used on each plot, not both.",
    );
}

/** Notes amounts that aren't one for each plot of the plan. */
export function usedOnEachPlot<Q extends Quantity>(
  plots: number | undefined,
  actual: LeftOrUsed<Q> | undefined,
  check: Check,
): void {
  if (plots === undefined || actual?.used === undefined || actual.used.length === plots) return;
  check.fault(
    "conflict",
    "used-of-each-plot",
    "actual.used",
    "The plan has {plots} {plots:one=plot;other=plots}, not {given}. Enter one amount for each, in the order of the plan.",
    { plots, given: actual.used.length },
  );
}

/** What was used in each place of what there was, in its unit, and what was left of it: shared out by the places' parts unless given for each. */
export function usedAndLeft<Q extends Quantity>(
  { left, used }: LeftOrUsed<Q>,
  there: Q,
  parts: readonly number[],
  tooMuch: (field: "left" | "used", given: Q) => Error,
): { readonly used: readonly number[]; readonly left: Q } {
  const { value: whole, unit } = there;
  if (used !== undefined) {
    const each = used.map((one) => inUnit(one, unit));
    const sum = each.reduce((total, one) => total + one, 0);
    if (moreThan(sum, whole)) throw tooMuch("used", { ...there, value: sum });
    return { used: each, left: { ...there, value: Math.max(0, whole - sum) } };
  }
  const rest = inUnit(left as Q, unit);
  if (!moreThan(whole, rest)) throw tooMuch("left", { ...there, value: rest });
  const all = parts.reduce((sum, one) => sum + one, 0);
  return { used: parts.map((part) => ((whole - rest) * part) / all), left: { ...there, value: rest } };
}

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
export function seasonOf(
  { name, soFar }: Pick<Product, "name" | "soFar">,
  rate: VolumeRate | MassRate | undefined,
): SeasonTotal {
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
