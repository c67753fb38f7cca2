import { joinPath } from "../errors.js";
import { isRange, type LabelRate, ownUnitOr, rateUsed } from "../tank-mix/label-rate.js";
import { mixStrengthOf } from "../tank-mix/strength.js";
import { checked } from "../units/check.js";
import { convertValue, inUnit } from "../units/convert.js";
import { list, type ObjectField, object, optional } from "../units/fields.js";
import { refusal } from "../units/message.js";
import { quantity } from "../units/quantity-field.js";
import { perUnit } from "../units/resolve.js";
import { finite } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Mass, MassRate, TreatedArea, Unit, Volume, VolumeRate, VolumeUnit } from "../units/types.js";
import {
  appliedAmount,
  leftOrUsed,
  perArea,
  percentMore,
  type SeasonTotal,
  seasonOf,
  type Used,
  usedAndLeft,
  usedOnEachPlot,
} from "./applied.js";
import { labelWarnings, type PlaceDose, sizesOnPlot } from "./check-product.js";
import type { Product } from "./input.js";
import { type PlotName, plotNames, plotsOf } from "./plot.js";
import type { PlotAreas } from "./plot-areas.js";
import { ANY_PLAN } from "./read-plan.js";
import { type BatchReconciliation, reconciledBatch } from "./reconcile-batch.js";
import { type ApplicationDetails, type ApplicationRecord, DETAILS, endFollows, recordOf } from "./record.js";
import type { AnyPlan, BatchPlan, Plan } from "./result.js";
import type { Warning } from "./warnings.js";

/** What really happened. Give either what was left in all (`left`), or what was used on each plot (`used`). */
export interface ActualApplication extends ApplicationDetails {
  /** The total that was mixed; the plan's total unless given. */
  readonly mixed?: Volume | undefined;
  /** Water that went into the tank besides, without product. None unless given. */
  readonly addedWater?: Volume | undefined;
  /** What was left in tank and lines at the end. Each plot is then taken to have had the same rate. */
  readonly left?: Volume | undefined;
  /** What was used on each plot, in the order of the plan. */
  readonly used?: readonly Volume[] | undefined;
}

const ACTUAL: ObjectField<ActualApplication> = /* @__PURE__ */ object<ActualApplication>(
  {
    ...DETAILS,
    mixed: optional(quantity("The total that was mixed; the plan's total unless given.", "volume")),
    addedWater: optional(
      quantity(
        "Water that went into the tank besides, without product. None unless given.",
        "volume",
        "nonnegative",
      ),
    ),
    left: optional(
      quantity(
        "What was left in tank and lines at the end. Each plot is then taken to have had the same rate.",
        "volume",
        "nonnegative",
      ),
    ),
    used: optional(
      list(
        "What was used on each plot, in the order of the plan.",
        quantity("What was used on a plot.", "volume", "nonnegative"),
      ),
    ),
  },
  [endFollows, leftOrUsed],
);

interface Reconciled {
  readonly plan: AnyPlan;
  readonly actual: ActualApplication;
}

const RECONCILED: ObjectField<Reconciled> = /* @__PURE__ */ object<Reconciled>(
  { plan: ANY_PLAN, actual: ACTUAL },
  [({ plan, actual }, check) => usedOnEachPlot(plan && placesOf(plan), actual, check)],
);

/** A product as it was really applied. */
export interface AppliedProduct {
  /** The product. */
  readonly name: string;
  /** How much of it. */
  readonly applied: Volume | Mass;
  /** How much per treated area. */
  readonly rate: VolumeRate | MassRate;
  /** How far that is from the plan, in percent of it; below 0 for less. */
  readonly fromPlanPercent: number;
}

/** A plot as it was really treated. */
export interface AppliedPlot {
  /** What the plot is called. */
  readonly name?: string | undefined;
  /** What was treated. */
  readonly treated: TreatedArea;
  /** How much mix was used. */
  readonly used: Volume;
  /** How much mix per treated area. */
  readonly rate: VolumeRate;
  /** How far that is from the calibrated rate, in percent of it; below 0 for less. */
  readonly fromPlanPercent: number;
  /** The products. */
  readonly products: readonly AppliedProduct[];
}

/** What became of a plan. */
export interface Reconciliation {
  /** The mix that was used on all plots. */
  readonly used: Volume;
  /** The mix that was left. */
  readonly left: Volume;
  /** How strong the mix was, in percent of the plan; less than 100 where water was added without product. */
  readonly strengthPercent: number;
  /** Each plot. */
  readonly plots: readonly AppliedPlot[];
  /** The label limits that the job exceeded or came near, by product name, as a plan warns. Of like findings on several plots, the one that is furthest off. */
  readonly findings: readonly Warning[];
  /** Each product's season so far, this application included. */
  readonly season: readonly SeasonTotal[];
  /** The record to keep. */
  readonly record: ApplicationRecord;
}

/**
 * Compares what was really sprayed with the plan: the rate on each plot, its deviation from plan and label, the season so
 * far, and the record to keep.
 *
 * Formulas: used = mixed + added water − left, shared by treated area where the plots aren't given one by one; rate = used /
 * treated area; product = strength × used, with strength = plan's strength × mixed / (mixed + added water). Water that was
 * added counts as mixed evenly into all of the mix. Where it went into one load of several, that load was weaker than reported here
 * (`strengthOf` says how weak), the others were as strong as planned, and a little more product was applied. Sources: the
 * definition of a rate; 7 CFR 110.3(a) and 40 CFR 170.311(b), both of the United States, for the record. Local rules decide which
 * records must be kept.
 *
 * @param plan - the plan that was followed
 * @param actual - what really happened
 * @returns plain data
 * @throws SprayMathError `conflict` where more was left or used than there was, or both `left` and `used` are given;
 *   `missing`, `unreadable`, `unknown-field`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or `too-few`
 *
 * @example
 * ```ts
 * import { planApplication, reconcile } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(100, "m"), width: qty(50, "m") },
 *   calibration: { kind: "known", rate: qty(200, "L/ha") },
 *   sprayer: { tank: qty(150, "L") },
 *   reserve: { percent: 10 },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha"), reEntryHours: 12 }],
 *   tools: "cylinders",
 * });
 * const done = reconcile(plan, { finished: "2026-05-02T09:30", left: qty(20, "L") });
 * console.log(done.plots[0]?.rate, done.plots[0]?.fromPlanPercent); // { value: 180, unit: 'L/ha' } -10
 * console.log(done.plots[0]?.products[0]?.applied); // { value: 900, unit: 'mL' }
 * console.log(done.record.reEntry); // 2026-05-02T21:30
 * ```
 */
export function reconcile(plan: Plan, actual: ActualApplication): Reconciliation;
export function reconcile(plan: BatchPlan, actual: ActualApplication): BatchReconciliation;
export function reconcile(plan: AnyPlan, actual: ActualApplication): Reconciliation | BatchReconciliation;
export function reconcile(plan: AnyPlan, actual: ActualApplication): Reconciliation | BatchReconciliation {
  const given = checked({ plan, actual }, RECONCILED);
  return "area" in given.plan
    ? reconciled(given.plan, given.actual)
    : reconciledBatch(given.plan, usedOf(given.plan, given.actual), detailsOf(given.actual));
}

function detailsOf(actual: ActualApplication): ApplicationDetails {
  const { mixed: _, addedWater: __, left: ___, used: ____, ...details } = actual;
  return details;
}

/** How many places a plan is for: its plots, or the one of a job by volume, count or row. */
function placesOf(plan: AnyPlan): number {
  return "area" in plan ? plan.area.plots.length : 1;
}

function reconciled(plan: Plan, actual: ActualApplication): Reconciliation {
  const { products, plot } = plan.input;
  const { used, left, strength } = usedOf(plan, actual);
  const names = plotNames(plot);
  const plots = plan.area.plots.map((_, i) => appliedPlot(plan, i, used[i] as number, strength));
  const applied = plan.totals.products.map(({ amount }, k) => ({
    value: plots.reduce((sum, one) => sum + (one.products[k] as AppliedProduct).applied.value, 0),
    unit: amount.unit,
  })) as (Volume | Mass)[];
  const most = products.map((_, k) => mostOf(plots, k));
  return {
    used: { value: used.reduce((sum, one) => sum + one, 0), unit: plan.carrier.total.unit },
    left,
    strengthPercent: 100 * strength,
    plots,
    findings: products.flatMap((product, k) => findingsOf(product, k, plan.area.plots, plots, names)),
    season: products.map((product, k) => seasonOf(product, (most[k] as AppliedProduct).rate)),
    record: recordOf(
      detailsOf(actual),
      plotsOf(plot),
      products,
      applied.map((amount, k) => ({ applied: amount, rate: (most[k] as AppliedProduct).rate })),
      { treated: plan.area.treated },
      "actual",
    ),
  };
}

function usedOf(plan: AnyPlan, actual: ActualApplication): Used {
  const { mixed, addedWater } = actual;
  const { unit, value } = plan.carrier.total;
  const whole = mixed === undefined ? value : inUnit(mixed, unit);
  const water = addedWater === undefined ? 0 : inUnit(addedWater, unit);
  const mix: Volume = { value: whole, unit };
  const strength =
    water === 0 ? 1 : mixStrengthOf({ mix, addedWater: { value: water, unit } }).strength.value / 100;
  const areas = "area" in plan ? plan.area.plots.map(({ treated }) => inUnit(treated, "m2")) : [1];
  const mixedInAll: Volume = { value: finite(whole + water, "actual"), unit };
  return {
    ...usedAndLeft(actual, mixedInAll, areas, (field, given) => tooMuch(field, given, mixedInAll)),
    strength,
  };
}

function tooMuch(field: "left" | "used", given: Volume, mixed: Volume): Error {
  return refusal(
    "conflict",
    field === "used" ? "used-over-mixed" : "left-over-mixed",
    joinPath("actual", field),
    field === "used"
      ? "You can't use {given} of the {mixed} that was mixed. If more was mixed, enter how much."
      : "You can't have {given} left of the {mixed} that was mixed. If more was mixed, enter how much.",
    { given, mixed },
  );
}

function appliedPlot(plan: Plan, i: number, used: number, strength: number): AppliedPlot {
  const { treated } = plan.area.plots[i] as PlotAreas;
  const { plot } = plan.input;
  const { name } = (Array.isArray(plot) ? plot[i] : plot) as { readonly name?: string | undefined };
  const mix: Volume = { value: used, unit: plan.carrier.total.unit };
  const rate = perArea(mix, treated, plan.rate.unit) as VolumeRate;
  return {
    ...(name !== undefined && { name }),
    treated,
    used: mix,
    rate,
    fromPlanPercent: percentMore(rate.value, plan.rate.value),
    products: plan.totals.products.map((total, k) => {
      const applied = appliedAmount(total, mix, strength);
      const unit = rateUnit(plan, k, applied);
      const planned = appliedAmount(total, { value: 1, unit: mix.unit }, 1).value / perMix(plan, mix.unit);
      const productRate = perArea(applied, treated, unit);
      return {
        name: total.name,
        applied,
        rate: productRate as VolumeRate | MassRate,
        fromPlanPercent: percentMore(
          productRate.value,
          convertValue(planned, `${applied.unit}/m2` as Unit, unit),
        ),
      };
    }),
  };
}

/** The unit of a rate: the label's own where that is per area, for the two to be held side by side. */
function rateUnit(plan: Plan, k: number, { unit }: Volume | Mass): Unit {
  const { rate } = plan.input.products[k] as Product;
  return ownUnitOr(rateUsed(rate, "")[0], perUnit(unit, unitsLike(plan.rate.unit).landArea));
}

/** The area, in m², that one unit of mix treats at the calibrated rate. */
function perMix(plan: Plan, unit: VolumeUnit): number {
  return 1 / convertValue(plan.rate.value, plan.rate.unit, `${unit}/m2`);
}

/** A product on the plot that had most of it. */
function mostOf(plots: readonly AppliedPlot[], k: number): AppliedProduct {
  const shares = plots.map(({ products }) => products[k] as AppliedProduct);
  return shares.reduce((most, one) => (one.rate.value > most.rate.value ? one : most));
}

/** What a label has against what was applied: a range that the label gives limits that too. */
function findingsOf(
  product: Product,
  k: number,
  areas: readonly PlotAreas[],
  plots: readonly AppliedPlot[],
  names: readonly PlotName[],
): Warning[] {
  const { rate: planned, label } = product;
  if (label === undefined && !isRange(planned)) return [];
  const doses = plots.flatMap(({ rate: carrierRate, products }, i): PlaceDose[] => {
    const { rate, applied } = products[k] as AppliedProduct;
    if (applied.value === 0) return [];
    const given: LabelRate = isRange(planned) ? { ...planned, chosen: rate } : rate;
    const sizes = sizesOnPlot(areas[i] as PlotAreas, carrierRate);
    return [{ sizes, name: names[i] as PlotName, rate: given }];
  });
  return labelWarnings(product, `products[${k}]`, doses);
}
