import { joinPath } from "../errors.js";
import type { NutrientsBrought } from "../tank-mix/nutrients.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import { list, type ObjectField, object, optional } from "../units/fields.js";
import { refusal } from "../units/message.js";
import { ratioOf } from "../units/quantity.js";
import { quantity } from "../units/quantity-field.js";
import { perUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { Mass, MassPerCount, MassPerLength, MassRate, TreatedArea } from "../units/types.js";
import {
  leftOrUsed,
  perArea,
  percentMore,
  type SeasonTotal,
  seasonOf,
  usedAndLeft,
  usedOnEachPlot,
} from "./applied.js";
import { placesSpread, spreadLabelWarnings } from "./check-spreading.js";
import { type Plot, plotsOf } from "./plot.js";
import type { JobArea, PlotAreas } from "./plot-areas.js";
import { SPREADING_PLAN } from "./read-plan.js";
import {
  type ApplicationDetails,
  type ApplicationRecord,
  DETAILS,
  endFollows,
  type RecordedProduct,
  recordOf,
  sizeOnRecord,
} from "./record.js";
import type { SpreadingPlan } from "./result.js";
import type { GranulesRate } from "./spreading-input.js";
import type { Warning } from "./warnings.js";

/** What really happened in a job of granules. Give either what was left, or what was used on each plot. */
export interface ActualSpreading extends ApplicationDetails {
  /** The total that went into the hopper; the plan's total unless given. More than 0. */
  readonly filled?: Mass | undefined;
  /** What was left of it in the hopper at the end. Each plot is then taken to have had the same rate. */
  readonly left?: Mass | undefined;
  /** What was used on each plot, in the order of the plan. */
  readonly used?: readonly Mass[] | undefined;
}

const ACTUAL: ObjectField<ActualSpreading> = /* @__PURE__ */ object<ActualSpreading>(
  {
    ...DETAILS,
    filled: optional(
      quantity("The total that went into the hopper; the plan's total unless given. More than 0.", "mass"),
    ),
    left: optional(
      quantity(
        "What was left of it in the hopper at the end. Each plot is then taken to have had the same rate.",
        "mass",
        "nonnegative",
      ),
    ),
    used: optional(
      list(
        "What was used on each plot, in the order of the plan.",
        quantity("What was used on a plot.", "mass", "nonnegative"),
      ),
    ),
  },
  [endFollows, leftOrUsed],
);

interface Reconciled {
  readonly plan: SpreadingPlan;
  readonly actual: ActualSpreading;
}

const RECONCILED: ObjectField<Reconciled> = /* @__PURE__ */ object<Reconciled>(
  { plan: SPREADING_PLAN, actual: ACTUAL },
  [({ plan, actual }, check) => usedOnEachPlot(plan && amountsOf(plan).length, actual, check)],
);

interface PlaceSpread {
  /** How much product was used. */
  readonly used: Mass;
  /** The rate of product, in the unit of the plan's. */
  readonly rate: GranulesRate;
  /** How far that is from the plan, in percent of it; below 0 for less. */
  readonly fromPlanPercent: number;
}

/** A plot as it was really spread. */
export interface SpreadPlot extends PlaceSpread {
  /** What the plot is called. */
  readonly name?: string | undefined;
  /** What was treated. */
  readonly treated: TreatedArea;
}

/** What became of a plan of granules. */
export interface SpreadingReconciliation {
  /** The product that was used in all. */
  readonly used: Mass;
  /** The product that was left. */
  readonly left: Mass;
  /** The rate of product over the whole job, in the unit of the plan's. */
  readonly rate: GranulesRate;
  /** How far that is from the plan, in percent of it; below 0 for less. */
  readonly fromPlanPercent: number;
  /** For a rate of a nutrient: every nutrient that came with the product, in the unit of the rate. */
  readonly nutrients?: NutrientsBrought | undefined;
  /** Each plot; for a job on plots. */
  readonly plots?: readonly SpreadPlot[] | undefined;
  /** The label limits that the job exceeded or came near, as a plan warns. Of like findings on several plots, the one that is furthest off. */
  readonly findings: readonly Warning[];
  /** The product's season so far, this application included. */
  readonly season: SeasonTotal;
  /** The record to keep. */
  readonly record: ApplicationRecord;
}

/**
 * Compares what was really spread with the plan. It reports the rate on each plot, on the rows or for each plant, and how far that
 * is from plan and label. It also gives the season so far and the record to keep.
 *
 * Formulas: used = filled − left, shared as the plan shares the product where the plots aren't given one by one; rate = planned
 * rate × used / planned amount. Sources: the definition of a rate; 7 CFR 110.3(a) and 40 CFR 170.311(b), both of the United
 * States, for the record. Local rules decide which records must be kept.
 *
 * @param plan - the plan that was followed
 * @param actual - what really happened
 * @returns plain data
 * @throws SprayMathError `conflict` where more was left or used than there was, or both `left` and `used` are given;
 *   `missing`, `unreadable`, `unknown-field`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or `too-few`
 *
 * @example
 * ```ts
 * import { planSpreading, reconcileSpreading } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planSpreading({
 *   plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
 *   spreader: { hopper: qty(20, "lb") },
 *   product: { name: "Product A", rate: qty(5, "lb/1000ft2"), reEntryHours: 12 },
 * });
 * const done = reconcileSpreading(plan, { finished: "2026-05-02T09:30", filled: qty(100, "lb"), left: qty(1, "lb") });
 * console.log(done.rate, done.fromPlanPercent); // { value: 5.5, unit: 'lb/1000ft2' } 10
 * console.log(done.record.products[0]?.applied, done.record.reEntry); // { value: 99, unit: 'lb' } 2026-05-02T21:30
 * ```
 */
export function reconcileSpreading(plan: SpreadingPlan, actual: ActualSpreading): SpreadingReconciliation {
  const given = checked({ plan, actual }, RECONCILED);
  return reconciledSpreading(given.plan, given.actual);
}

function reconciledSpreading(plan: SpreadingPlan, actual: ActualSpreading): SpreadingReconciliation {
  const { input, area, rate, nutrients, total } = plan;
  const { product } = input;
  const amounts = amountsOf(plan);
  const { used, left } = usedOf(plan, actual, amounts);
  const places = used.map((value, i) => placeSpread(rate, { ...total, value }, amounts[i] as Mass));
  const all = placeSpread(rate, { ...total, value: used.reduce((sum, one) => sum + one, 0) }, total);
  const doses = placesSpread(input, area, (i) => (places[i] as PlaceSpread).rate);
  const onRecord = ratesOnRecord(plan, places);
  return {
    used: all.used,
    left,
    rate: all.rate,
    fromPlanPercent: all.fromPlanPercent,
    ...(nutrients && { nutrients: nutrientsIn(nutrients, ratioOf(all.used, total)) }),
    ...("plot" in input && area && { plots: spreadPlots(plotsOf(input.plot), area, places) }),
    findings: spreadLabelWarnings(
      product,
      doses.filter((_, i) => places[i]?.used.value !== 0),
    ),
    season: seasonOf(product, onRecord.rate),
    record: recordOf(
      detailsOf(actual),
      placesNamed(input),
      [product],
      [{ applied: all.used, ...onRecord }],
      "size" in input ? sizeOnRecord(input.size) : { treated: area?.treated },
      "actual",
    ),
  };
}

/** What the plan gives each place: each plot, or the rows or plants together. */
function amountsOf({ plots, total }: SpreadingPlan): readonly Mass[] {
  return plots === undefined ? [total] : plots.map(({ amount }) => amount);
}

function usedOf({ total }: SpreadingPlan, actual: ActualSpreading, amounts: readonly Mass[]) {
  const { filled = total } = actual;
  const there: Mass = { value: inUnit(filled, total.unit), unit: total.unit };
  const parts = amounts.map(({ value }) => value);
  return usedAndLeft(actual, there, parts, (field, given) => tooMuch(field, given, there));
}

function tooMuch(field: "left" | "used", given: Mass, filled: Mass): Error {
  return refusal(
    "conflict",
    field === "used" ? "used-over-filled" : "left-over-filled",
    joinPath("actual", field),
    field === "used"
      ? "You can't use {given} of the {filled} that went into the hopper. If more went in, enter how much."
      : "You can't have {given} left of the {filled} that went into the hopper. If more went in, enter how much.",
    { given, filled },
  );
}

function detailsOf({ filled: _, left: __, used: ___, ...details }: ActualSpreading): ApplicationDetails {
  return details;
}

/** What was used in a place, of what was planned there. */
function placeSpread(planned: GranulesRate, used: Mass, amount: Mass): PlaceSpread {
  const part = ratioOf(used, amount);
  return { used, rate: times(planned, part), fromPlanPercent: percentMore(part, 1) };
}

function times<Q extends GranulesRate>(rate: Q, part: number): Q {
  return { ...rate, value: rate.value * part };
}

function nutrientsIn(nutrients: NutrientsBrought, part: number): NutrientsBrought {
  const entries = Object.entries(nutrients) as [keyof NutrientsBrought, GranulesRate][];
  return Object.fromEntries(entries.map(([nutrient, rate]) => [nutrient, times(rate, part)]));
}

function spreadPlots(
  plots: readonly Plot[],
  { plots: areas }: JobArea,
  places: readonly PlaceSpread[],
): SpreadPlot[] {
  return plots.map(({ name }, i) => ({
    ...(name !== undefined && { name }),
    treated: (areas[i] as PlotAreas).treated,
    ...(places[i] as PlaceSpread),
  }));
}

/** The rate per treated area, on the plot that had most; or per plant or length of row, where that sized the job. */
function ratesOnRecord(
  { area, rate }: SpreadingPlan,
  places: readonly PlaceSpread[],
): Pick<RecordedProduct, "rate" | "each"> {
  if (area === undefined) return { each: places[0]?.rate as MassPerCount | MassPerLength };
  const isPerArea = dimensionOf(rate.unit) === "massRate";
  const { landArea } = unitsLike(rate.unit);
  const onArea = places.map(({ used, rate }, i) =>
    isPerArea
      ? (rate as MassRate)
      : (perArea(used, (area.plots[i] as PlotAreas).treated, perUnit(used.unit, landArea)) as MassRate),
  );
  return { rate: onArea.reduce((most, one) => (one.value > most.value ? one : most)) };
}

/** What the place is called: its plots, or the job where none of them has a name. */
function placesNamed(input: SpreadingPlan["input"]): readonly Pick<Plot, "name">[] {
  const plots = "plot" in input ? plotsOf(input.plot) : [];
  return plots.some(({ name }) => name !== undefined) ? plots : [{ name: input.name }];
}
