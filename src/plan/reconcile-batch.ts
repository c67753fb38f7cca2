import { isRange, type LabelRate, ownUnitOr, rateUsed } from "../tank-mix/label-rate.js";
import { convertValue, inUnit } from "../units/convert.js";
import { ratioOf } from "../units/quantity.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type {
  Mass,
  Quantity,
  Unit,
  Volume,
  VolumePerCount,
  VolumePerLength,
  VolumeRate,
} from "../units/types.js";
import { appliedAmount, percentMore, type SeasonTotal, seasonOf, type Used } from "./applied.js";
import { labelWarnings } from "./check-product.js";
import type { Product } from "./input.js";
import type { KnownMix } from "./mix.js";
import {
  type ApplicationDetails,
  type ApplicationRecord,
  type RecordedProduct,
  recordOf,
  sizeOnRecord,
} from "./record.js";
import type { BatchPlan, ProductTotal } from "./result.js";
import type { Warning } from "./warnings.js";

/** A product as it was really applied in a job by volume, count or row. */
export interface BatchApplied extends Pick<RecordedProduct, "rate" | "each"> {
  /** The product. */
  readonly name: string;
  /** How much of it. */
  readonly applied: Volume | Mass;
  /** How far that is from the plan, in percent of it; below 0 for less. */
  readonly fromPlanPercent: number;
}

/** What became of a plan by volume, count or row. */
export interface BatchReconciliation {
  /** The mix that was used. */
  readonly used: Volume;
  /** The mix that was left. */
  readonly left: Volume;
  /** How strong the mix was, in percent of the plan; less than 100 where water was added without product. */
  readonly strengthPercent: number;
  /** How far the mix used is from the plan, in percent of it; below 0 for less. */
  readonly fromPlanPercent: number;
  /** The mix that each plant, pot or tree got, where they are counted. */
  readonly carrierPerCount?: VolumePerCount | undefined;
  /** The mix per length of row, where it is for rows. */
  readonly carrierPerLength?: VolumePerLength | undefined;
  /** The mix per treated area, where the area is given. */
  readonly rate?: VolumeRate | undefined;
  /** The products. */
  readonly products: readonly BatchApplied[];
  /** The label limits that the job exceeded or came near, by product name, as a plan warns. */
  readonly findings: readonly Warning[];
  /** Each product's season so far, this application included. */
  readonly season: readonly SeasonTotal[];
  /** The record to keep. */
  readonly record: ApplicationRecord;
}

/** What became of a plan by volume, count or row. Trusts its input. */
export function reconciledBatch(
  plan: BatchPlan,
  { used: [value], left, strength }: Used,
  details: ApplicationDetails,
): BatchReconciliation {
  const { input, carrier, totals } = plan;
  const { size, area, name, products } = input;
  const used: Volume = { value: value as number, unit: carrier.total.unit };
  const part = ratioOf(used, carrier.sprayed);
  const sizes = sizesUsed(plan, part);
  const applied = products.map((product, k): BatchApplied => {
    const total = totals.products[k] as ProductTotal;
    return {
      name: product.name,
      applied: appliedAmount(total, used, strength),
      ...ratesOfProduct(product, total, sizes, strength),
      fromPlanPercent: percentMore(part * strength, 1),
    };
  });
  const { carrierRate: rate, carrierPerCount, carrierPerLength } = sizes;
  return {
    used,
    left,
    strengthPercent: 100 * strength,
    fromPlanPercent: percentMore(part, 1),
    ...(carrierPerCount && { carrierPerCount }),
    ...(carrierPerLength && { carrierPerLength }),
    ...(rate && { rate }),
    products: applied,
    findings: products.flatMap((product, k) => findingsOf(product, k, applied[k] as BatchApplied, sizes)),
    season: products.map((product, k) => seasonOf(product, applied[k]?.rate)),
    record: recordOf(
      details,
      [{ name }],
      products,
      applied.map(({ applied, rate, each }) => ({
        applied,
        ...(rate && { rate }),
        ...(each && { each }),
      })),
      {
        ...(area && { treated: area }),
        ...sizeOnRecord(size),
        mix: used,
      },
      "actual",
    ),
  };
}

/** What each place really got of the mix. */
function sizesUsed({ rate, carrierPerCount, carrierPerLength }: BatchPlan, part: number): KnownMix["sizes"] {
  const times = <Q extends Quantity>(one: Q | undefined): Q | undefined =>
    one && { ...one, value: one.value * part };
  return {
    carrierRate: times(rate),
    carrierPerCount: times(carrierPerCount),
    carrierPerLength: times(carrierPerLength),
  };
}

/** A product per treated area where that is given, and per plant, per length of row or per volume of mix. */
function ratesOfProduct(
  { rate: planned }: Product,
  { strength, amount }: ProductTotal,
  { carrierRate, carrierPerCount, carrierPerLength }: KnownMix["sizes"],
  part: number,
): Pick<RecordedProduct, "rate" | "each"> {
  const [single] = rateUsed(planned, "");
  const along = (carrier: Quantity, usual: Unit): Quantity => {
    const { per = "" } = resolveUnit(carrier.unit);
    const { per: mixUnit = "" } = resolveUnit(strength.unit);
    const value = strength.value * part * inUnit(carrier, perUnit(mixUnit, per));
    const unit = ownUnitOr(single, usual);
    return { value: convertValue(value, perUnit(resolveUnit(strength.unit).over, per), unit), unit };
  };
  const each = carrierPerCount ?? carrierPerLength;
  return {
    ...(carrierRate && {
      rate: along(
        carrierRate,
        perUnit(amount.unit, unitsLike(carrierRate.unit).landArea),
      ) as RecordedProduct["rate"],
    }),
    each: (each === undefined
      ? ofMix(strength, part, ownUnitOr(single, strength.unit))
      : along(each, perUnit(amount.unit, resolveUnit(each.unit).per as Unit))) as RecordedProduct["each"],
  };
}

function ofMix({ value, unit }: ProductTotal["strength"], part: number, to: Unit): Quantity {
  return { value: convertValue(value * part, unit, to), unit: to };
}

function findingsOf(
  product: Product,
  k: number,
  { rate, each, applied }: BatchApplied,
  sizes: KnownMix["sizes"],
): Warning[] {
  if (applied.value === 0) return [];
  const { rate: planned } = product;
  const used = (rate ?? each) as LabelRate;
  const given = isRange(planned) ? ({ ...planned, chosen: used } as LabelRate) : used;
  return labelWarnings(product, `products[${k}]`, [{ sizes, rate: given }]);
}
