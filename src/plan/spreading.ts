import { checkOfSpreader, type SpreaderCheckInput } from "../output-rate/spreader.js";
import { bagsOf, type GranulesInput, granulesOf, loadsOfHopper } from "../tank-mix/granules.js";
import { fertilizerOf, type NutrientsBrought } from "../tank-mix/nutrients.js";
import { agreed, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import { sumOf } from "../units/quantity.js";
import type { Length, Mass } from "../units/types.js";
import { SPREADING_CAUTIONS } from "./cautions.js";
import { spreadingWarnings } from "./check-spreading.js";
import { amountCost } from "./cost.js";
import { DEFAULT_DECIMALS } from "./money.js";
import { equalRows, type Plot, plotsOf, rowLengthsOf } from "./plot.js";
import { areasOfJob, type JobArea, type PlotAreas } from "./plot-areas.js";
import type { PlotAmount, SpreadingCost, SpreadingPlan } from "./result.js";
import { spreadingFits } from "./spreading-fits.js";
import {
  type GranulesRate,
  SPREADING_INPUT,
  type SpreadingInput,
  type SpreadingProduct,
  type SpreadingSize,
  type SpreadRate,
} from "./spreading-input.js";

/**
 * Works out a whole job of granules or dry fertilizer: the total product and that for each plot, bed or row, hopper fills and
 * the bags to buy. A test of the spreader is held against the rate.
 *
 * A rate of a nutrient is changed to one of product first. The rate must fit what sizes the job: per treated area on a plot, per
 * length of row on rows, per plant for a count. What does not fit is refused with what would.
 *
 * Formulas: product = nutrient / content; total = rate × area, rate × row length, or rate × plants; fills = ceil(total / directions /
 * hopper); bags = ceil(total / bag). The steps are those of `area`, `output-rate` and `tank-mix`, where each formula has its source.
 *
 * @param input - the job; plain data
 * @returns the plan; plain data, the same for the same input. The total is in the unit over the stroke of the rate
 * @throws SprayMathError with the `path` of what is at fault in the input, such as `product.rate`
 *
 * @example
 * ```ts
 * import { planSpreading } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planSpreading({
 *   plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
 *   spreader: { hopper: qty(20, "lb"), directions: 2 },
 *   product: { name: "Product A", rate: qty(5, "lb/1000ft2"), bag: qty(40, "lb") },
 * });
 * console.log(plan.total, plan.hopper.fills); // { value: 90, unit: 'lb' } 3
 * console.log(plan.bags); // { bags: 3, leftOver: { value: 30, unit: 'lb' } }
 * ```
 */
export function planSpreading(input: SpreadingInput): SpreadingPlan {
  return planOfSpreading(checked(input, SPREADING_INPUT));
}

/** The plan of a job of granules. Trusts its input. */
export function planOfSpreading(input: SpreadingInput): SpreadingPlan {
  const { product, spreader, test, currency } = input;
  const area = "plot" in input ? areasOfJob(input.plot) : undefined;
  const { rate, nutrients } = productRateOf(product);
  agreed(input, (check) => spreadingFits(input, rate, area, check));
  const total = granulesOf(granulesInput(input, rate, area));
  const hopper = loadsOfHopper({ total, ...spreader });
  const bags = product.bag && bagsOf({ total, bag: product.bag });
  const check = test && checkOfSpreader(spreaderCheckInput(input, rate), "test");
  const cost = product.price && costOfSpreading(total, product.price, currency);
  const plots = "plot" in input && area ? plotAmounts(plotsOf(input.plot), area, rate) : undefined;
  return {
    version: 1,
    ...(area && { area }),
    rate,
    ...(nutrients && { nutrients }),
    total,
    ...(plots && { plots }),
    hopper,
    ...(bags && { bags }),
    ...(check && { check }),
    ...(cost && { cost }),
    warnings: spreadingWarnings(input, { rate, nutrients, total, hopper, area, check }),
    cautions: SPREADING_CAUTIONS,
    input,
  };
}

/** A label's rate without the area that it names: granules land on the treated one. */
export function plainRate(rate: SpreadRate): GranulesRate {
  return "per" in rate ? rate.rate : rate;
}

/** The rate of product, and what comes with it. Trusts its input. */
export function productRateOf({ rate }: SpreadingProduct): {
  readonly rate: GranulesRate;
  readonly nutrients?: NutrientsBrought | undefined;
} {
  if (!("nutrient" in rate)) return { rate: plainRate(rate) };
  const { product, brings } = fertilizerOf(rate, "product.rate.amount");
  return { rate: product as GranulesRate, nutrients: brings };
}

/** What the whole job asks of its product. Trusts its input. */
export function granulesInput(
  input: SpreadingInput,
  rate: GranulesRate,
  area: JobArea | undefined,
): GranulesInput {
  if ("size" in input) return onSize(input.size, rate);
  return onPlaces(area as JobArea, rate);
}

function onSize(size: SpreadingSize, rate: GranulesRate): GranulesInput {
  // The list of fields and the agreement with the size have seen to the dimension of the rate.
  return (
    size.kind === "count" ? { rate, plants: inUnit(size.count, "plant") } : { rate, rowLength: size.length }
  ) as GranulesInput;
}

function onPlaces({ treated, rowLength }: Pick<PlotAreas, "treated" | "rowLength">, rate: GranulesRate) {
  return (isPerArea(rate) ? { rate, area: treated } : { rate, rowLength }) as GranulesInput;
}

function isPerArea(rate: GranulesRate): boolean {
  return dimensionOf(rate.unit) === "massRate";
}

function plotAmounts(plots: readonly Plot[], { plots: areas }: JobArea, rate: GranulesRate): PlotAmount[] {
  return plots.map((plot, i) => {
    const amount = granulesOf(onPlaces(areas[i] as PlotAreas, rate));
    const lengths = rowLengthsOf(plot);
    if (lengths !== undefined) return { amount, rows: amountsByLength(amount, lengths) };
    const pieces = equalRows(plot);
    if (pieces === undefined) return { amount };
    return { amount, pieces, each: { value: amount.value / pieces, unit: amount.unit } };
  });
}

/** A plot's product by the length of its rows, which are all as wide. */
function amountsByLength({ value, unit }: Mass, lengths: readonly Length[]): Mass[] {
  const all = sumOf(lengths);
  return lengths.map((length) => ({ value: (value * inUnit(length, all.unit)) / all.value, unit }));
}

/** The test of a job's spreader, held against its rate. Trusts its input. */
export function spreaderCheckInput(
  { test, spreader: { directions }, product: { label } }: SpreadingInput,
  rate: GranulesRate,
): SpreaderCheckInput {
  const max = label?.max && plainRate(label.max);
  // A maximum per something else is held against the rate by the label's limits alone.
  const isAlike = max !== undefined && dimensionOf(max.unit) === dimensionOf(rate.unit);
  return { ...test, target: rate, directions, ...(isAlike && { max }) } as SpreaderCheckInput;
}

function costOfSpreading(
  total: Mass,
  price: NonNullable<SpreadingProduct["price"]>,
  { code = "", decimals = DEFAULT_DECIMALS }: Partial<NonNullable<SpreadingInput["currency"]>> = {},
): SpreadingCost {
  return { currency: { code, decimals }, total: amountCost(total, price, decimals) };
}
