import { relocated, SprayMathError, within } from "../errors.js";
import { checkLabel, type Finding, type SeasonRate } from "../tank-mix/label-limits.js";
import { isRange, ownAreaUnit } from "../tank-mix/label-rate.js";
import { strengthOf } from "../tank-mix/strength.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { checkedList, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
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
import { ofProduct } from "./check-mix.js";
import { plotsOf } from "./plot.js";
import {
  type ApplicationDetails,
  type ApplicationRecord,
  applicationRecord,
  DETAIL_NAMES,
  longestWaits,
} from "./record.js";
import type { Plan } from "./result.js";

/** What really happened. Tell either what was left over all, or what was used on each plot. */
export interface ActualApplication extends ApplicationDetails {
  /** What was mixed in all; the plan's total unless given. */
  readonly mixed?: Volume;
  /** Water that went into the tank besides, without product. None unless given. */
  readonly addedWater?: Volume;
  /** What was left in tank and lines at the end. Each plot is then taken to have had the same rate. */
  readonly left?: Volume;
  /** What was used on each plot, in the order of the plan. */
  readonly used?: readonly Volume[];
}

/** A product as it was really applied. */
export interface AppliedProduct {
  /** The product. */
  readonly name: string;
  /** How much of it. */
  readonly applied: Volume | Mass;
  /** How much per treated area. */
  readonly rate: VolumeRate | MassRate;
  /** How far that is from the plan, in per cent of it; below 0 for less. */
  readonly fromPlanPercent: number;
}

/** A plot as it was really treated. */
export interface AppliedPlot {
  /** What the plot is called. */
  readonly name?: string;
  /** What was treated. */
  readonly treated: TreatedArea;
  /** How much mix was used. */
  readonly used: Volume;
  /** How much mix per treated area. */
  readonly rate: VolumeRate;
  /** How far that is from the calibrated rate, in per cent of it; below 0 for less. */
  readonly fromPlanPercent: number;
  /** The products. */
  readonly products: readonly AppliedProduct[];
}

/** A product's season after this application. */
export interface SeasonTotal {
  /** The product. */
  readonly name: string;
  /** Per treated area, all applications together; the plot that had most counts. Left out where what went before is not told per treated area. */
  readonly rate?: VolumeRate | MassRate;
  /** How many applications; left out where what went before is not told. */
  readonly applications?: number;
}

/** What became of a plan. */
export interface Reconciliation {
  /** The mix that was used on all plots. */
  readonly used: Volume;
  /** The mix that was left. */
  readonly left: Volume;
  /** How strong the mix was, in per cent of the plan; less than 100 where water was added without product. */
  readonly strengthPercent: number;
  /** Each plot. */
  readonly plots: readonly AppliedPlot[];
  /** What each product's label has against what was really applied, on the plot that had most of it; by name, as a plan warns. */
  readonly findings: readonly Finding[];
  /** Each product's season so far, this application included. */
  readonly season: readonly SeasonTotal[];
  /** The record to keep. */
  readonly record: ApplicationRecord;
}

/**
 * Compares what was really sprayed with the plan: the rate on each plot, its deviation from plan and label, the season so
 * far, and the record to keep.
 *
 * Formulas: used = mixed + added water − left, shared by treated area where plots are not told apart; rate = used /
 * treated area; product = strength × used, with strength = plan's strength × mixed / (mixed + added water). Water that was
 * added counts as mixed evenly into all of the mix: where it went into one load of several, that load was weaker than told here
 * (`strengthOf` tells how weak), the others were as strong as planned, and a little more product was applied. Sources: the
 * definition of a rate; 7 CFR 110.3(a) for the record. Local rules decide which records must be kept.
 *
 * @param plan - the plan that was followed
 * @param actual - what really happened
 * @returns plain data
 * @throws SprayMathError `conflict` where more was left or used than there was, or both `left` and `used` are given;
 *   `missing`, `unreadable`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or `too-few`
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
export function reconcile(plan: Plan, actual: ActualApplication): Reconciliation {
  checkedObject(plan, "plan");
  checkedObject(actual, "actual");
  const { used, left, strength } = within("actual", () => usedOf(plan, actual));
  const plots = plan.area.plots.map((_, i) => appliedPlot(plan, i, used[i] as number, strength));
  const unit = plan.carrier.total.unit;
  const applied = plan.totals.products.map(({ amount }, k) => ({
    value: plots.reduce((sum, plot) => sum + (plot.products[k] as AppliedProduct).applied.value, 0),
    unit: amount.unit,
  })) as (Volume | Mass)[];
  const waits = within("plan.input", () => longestWaits(plan.input.products));
  const most = plan.totals.products.map((_, k) => mostOf(plots, k));
  return {
    used: { value: used.reduce((sum, one) => sum + one, 0), unit },
    left,
    strengthPercent: 100 * strength,
    plots,
    findings: plan.input.products.flatMap((_, k) => findingsOf(plan, k, most[k] as AppliedPlot)),
    season: plan.input.products.map((_, k) => seasonOf(plan, k, most[k] as AppliedPlot)),
    record: within("actual", () =>
      applicationRecord(detailsOf(actual), plan.input.products, waits, applied, plan.area.treated),
    ),
  };
}

interface Used {
  /** The mix used on each plot, in the unit of the plan's mix. */
  readonly used: readonly number[];
  readonly left: Volume;
  /** The strength of the mix, as a part of the plan's. */
  readonly strength: number;
}

function usedOf(plan: Plan, { mixed, addedWater, left, used }: ActualApplication): Used {
  const { unit, value } = plan.carrier.total;
  const whole = mixed === undefined ? value : inUnit(mixed, unit, "mixed");
  const water = addedWater === undefined ? 0 : inUnit(addedWater, unit, "addedWater", "nonnegative");
  const there = whole + water;
  const mix: Volume = { value: whole, unit };
  const strength =
    water === 0 ? 1 : strengthOf({ mix, addedWater: { value: water, unit } }).strength.value / 100;
  if (used !== undefined) {
    if (left !== undefined) {
      throw new SprayMathError(
        "conflict",
        "left",
        "Given both what was left and what was used on each plot; wanted one of them.",
      );
    }
    const each = usedOnPlots(plan, used);
    const sum = each.reduce((total, one) => total + one, 0);
    if (moreThan(sum, there)) throw tooMuch("used", sum, there, unit);
    return { used: each, left: { value: Math.max(0, there - sum), unit }, strength };
  }
  const rest = inUnit(left as Volume, unit, "left", "nonnegative");
  if (!moreThan(there, rest)) throw tooMuch("left", rest, there, unit);
  const areas = plan.area.plots.map(({ treated }) => convertValue(treated.value, treated.unit, "m2"));
  const all = areas.reduce((sum, one) => sum + one, 0);
  return { used: areas.map((area) => ((there - rest) * area) / all), left: { value: rest, unit }, strength };
}

function usedOnPlots(plan: Plan, used: readonly Volume[]): number[] {
  checkedList(used, "used");
  if (used.length !== plan.area.plots.length) {
    throw new SprayMathError(
      "conflict",
      "used",
      `Given ${used.length} amounts for ${plan.area.plots.length} plots; wanted one for each, in the order of the plan.`,
    );
  }
  return used.map((one, i) => inUnit(one, plan.carrier.total.unit, `used[${i}]`, "nonnegative"));
}

function tooMuch(path: string, given: number, there: number, unit: Unit): SprayMathError {
  return new SprayMathError(
    "conflict",
    path,
    `Given ${Number(given.toPrecision(6))} ${unit} of the ${Number(there.toPrecision(6))} ${unit} that was mixed; wanted less. Tell how much was mixed, if it was more.`,
  );
}

function appliedPlot(plan: Plan, i: number, used: number, strength: number): AppliedPlot {
  const { treated } = plan.area.plots[i] as Plan["area"]["plots"][number];
  const { name } = plotsOf(plan.input.plot)[i] as { readonly name?: string };
  const mix: Volume = { value: used, unit: plan.carrier.total.unit };
  const rate = perArea(mix, treated, plan.rate.unit) as VolumeRate;
  return {
    ...(name !== undefined && { name }),
    treated,
    used: mix,
    rate,
    fromPlanPercent: percentMore(rate.value, plan.rate.value),
    products: plan.totals.products.map((product, k) => {
      const applied = appliedAmount(product, mix, strength);
      const unit = rateUnit(plan, k, applied);
      const planned = appliedAmount(product, { value: 1, unit: mix.unit }, 1).value / perMix(plan, mix.unit);
      const productRate = perArea(applied, treated, unit);
      return {
        name: product.name,
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

/** The unit to tell a rate in: the label's own where that is per area, so that the two can be held side by side. */
function rateUnit(plan: Plan, k: number, { unit }: Volume | Mass): Unit {
  const { rate, form } = plan.input.products[k] as Plan["input"]["products"][number];
  const own = ownAreaUnit(isRange(rate) ? rate.chosen : rate, form, `products[${k}].rate`);
  return own ?? (`${unit}/${unitsLike(plan.rate.unit).landArea}` as Unit);
}

/** The area, in m², that one unit of mix treats at the calibrated rate. */
function perMix(plan: Plan, unit: VolumeUnit): number {
  return 1 / convertValue(plan.rate.value, plan.rate.unit, `${unit}/m2`);
}

function appliedAmount(
  { amount, strength }: Plan["totals"]["products"][number],
  mix: Volume,
  part: number,
): Volume | Mass {
  const { per } = resolveUnit(strength.unit, "strength");
  const value = strength.value * convertValue(mix.value, mix.unit, per as VolumeUnit) * part;
  return { value, unit: amount.unit } as Volume | Mass;
}

function perArea(amount: Quantity, { value, unit }: TreatedArea, rateUnit: Unit): Quantity {
  const rate = { value: amount.value / value, unit: `${amount.unit}/${unit}` as Unit };
  return { value: convertValue(rate.value, rate.unit, rateUnit), unit: rateUnit };
}

// Two chains of floats that come to the same rate differ by noise.
function percentMore(actual: number, planned: number): number {
  return Number((100 * (actual / planned - 1)).toFixed(9)) + 0;
}

function mostOf(plots: readonly AppliedPlot[], product: number): AppliedPlot {
  const rate = (plot: AppliedPlot): number => (plot.products[product] as AppliedProduct).rate.value;
  return plots.reduce((most, plot) => (rate(plot) > rate(most) ? plot : most));
}

function findingsOf(plan: Plan, k: number, plot: AppliedPlot): Finding[] {
  const {
    name,
    form,
    rate: planned,
    label,
    soFar,
  } = plan.input.products[k] as Plan["input"]["products"][number];
  const { rate, applied } = plot.products[k] as AppliedProduct;
  // A range that the label gives limits what was applied too.
  const ranged = isRange(planned);
  if (applied.value === 0 || (label === undefined && !ranged)) return [];
  const { ground, rowLength } = plan.area;
  const findings = relocated({ label: `products[${k}].label`, soFar: `products[${k}].soFar` }, () =>
    checkLabel({
      rate: ranged ? { ...planned, chosen: rate } : rate,
      form,
      carrierRate: plot.rate,
      label: label ?? {},
      area: plan.area.treated,
      ...(ground && { ground }),
      ...(rowLength && { rowLength }),
      ...(soFar && { soFar }),
    }),
  );
  return findings.map((finding) => ofProduct(finding, name, `products[${k}]`));
}

function seasonOf(plan: Plan, k: number, plot: AppliedPlot): SeasonTotal {
  const { name, soFar } = plan.input.products[k] as Plan["input"]["products"][number];
  const { rate } = plot.products[k] as AppliedProduct;
  if (soFar === undefined) return { name };
  const plain = perTreated(soFar.rate, `products[${k}].soFar.rate`);
  const known = plain !== undefined || soFar.applications === 0;
  const earlier =
    plain === undefined
      ? 0
      : inUnit(
          plain as Quantity<"gal/ac">,
          rate.unit as "gal/ac",
          `products[${k}].soFar.rate`,
          "nonnegative",
        );
  return {
    name,
    ...(known && { rate: { value: rate.value + earlier, unit: rate.unit } as VolumeRate | MassRate }),
    ...(soFar.applications !== undefined && { applications: soFar.applications + 1 }),
  };
}

/** What was used per treated area, where it is told so. */
function perTreated(rate: SeasonRate | undefined, path: string): VolumeRate | MassRate | undefined {
  if (rate === undefined || "unit" in checkedObject(rate, path)) return rate as VolumeRate | undefined;
  const treated = "per" in rate && (rate.per === "treated" || rate.per === "broadcast");
  return treated ? rate.rate : undefined;
}

function detailsOf(actual: ActualApplication): ApplicationDetails {
  // What a record says of itself (its version, its dates) is not for the caller to write over.
  return Object.fromEntries(
    DETAIL_NAMES.flatMap((name) => (actual[name] === undefined ? [] : [[name, actual[name]]])),
  ) as unknown as ApplicationDetails;
}
