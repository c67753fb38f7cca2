import { measurementOf, rateOfCalibration } from "../output-rate/calibration.js";
import type { Measurement } from "../output-rate/measurement.js";
import { isFillList } from "../tank-mix/loads.js";
import { agreed, type Check, checked } from "../units/check.js";
import { orderOf } from "../units/quantity.js";
import type { VolumeRate } from "../units/types.js";
import { planOfBatch } from "./batch.js";
import { type BatchInput, JOB_INPUT, type JobInput } from "./batch-input.js";
import { CAUTIONS } from "./cautions.js";
import { areaWarnings } from "./check-area.js";
import { calibrationWarnings } from "./check-calibration.js";
import { mixWarnings } from "./check-mix.js";
import { productWarnings } from "./check-product.js";
import { planCost } from "./cost.js";
import { measuredLoads } from "./dose.js";
import { type ChoiceLimits, type ChosenSplits, easiestSplits, ONE } from "./easiest.js";
import { DEFAULT_SPLIT, type PlanInput, type Split } from "./input.js";
import { type MixInput, type MixSplit, mixFor, mixOnArea, treatedBy } from "./mix.js";
import { equalRows, type Plot, plotsOf } from "./plot.js";
import { areasOfJob, type JobArea, type PlotAreas } from "./plot-areas.js";
import { ratesFitPlot } from "./rates-fit.js";
import { markedIfRefused } from "./refused.js";
import type { AnyPlan, BatchPlan, Plan, ProductTotal } from "./result.js";
import { thresholdsOf } from "./thresholds.js";

/**
 * Works out a whole spray job, from the plot and the calibration to the dose in each load and the tools that measure it. Where area
 * and output rate are known already, {@link planMix} does the middle of it.
 *
 * Formulas: rate = used / (swath × distance); sprayed = rate × treated area; total = sprayed + reserve + lines; loads =
 * ceil(total / fill); product = label rate / output rate × mix. The steps are those of `area`, `output-rate`, `tank-mix`
 * and `household`, where each formula has its source; the result is rounded nowhere on the way.
 *
 * The strength is the same in every load, reserve included, and the loads' amounts add up to the totals exactly, as the
 * decimals they print as. No dose is measured over its amount.
 *
 * @param input - the job; plain data
 * @returns the plan; plain data, the same for the same input
 * @throws SprayMathError with the `path` of what is at fault in the input, such as `products[1].rate`
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(121, "ft"), width: qty(90, "ft") },
 *   calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(4, "ft"), distance: qty(272.25, "ft") },
 *   sprayer: { tank: qty(4, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
 *   tools: "us-cups-and-spoons",
 * });
 * console.log(plan.rate); // { value: 20, unit: 'gal/ac' }
 * console.log(plan.loads.map((load) => load.carrier.value)); // [ 4, 1 ]
 * console.log(plan.loads.map((load) => load.products[0]?.amount.value)); // [ 6.4, 1.6 ]
 * ```
 */
export function planApplication(input: PlanInput): Plan;
export function planApplication(input: BatchInput): BatchPlan;
export function planApplication(input: JobInput): AnyPlan;
export function planApplication(input: JobInput): AnyPlan {
  return planOfJob(checked(input, JOB_INPUT));
}

/** The plan of a job of any size. Trusts its input. */
export function planOfJob(job: JobInput): AnyPlan {
  return "size" in job ? planOfBatch(job) : planFor(job);
}

/** The plan of a job on an area. Trusts its input. */
export function planFor(input: PlanInput): Plan {
  const area = areasOfJob(input.plot);
  const calibrated = rateOfCalibration(input.calibration, "calibration");
  const { rate } = calibrated;
  agreed(input, (check) => areaFits(input, area, check));
  const job = mixInput(input, area, rate);
  const mix = mixFor(input.split === "easiest" ? { ...job, split: splitsOnArea(input, job, ONE)[0] } : job, {
    area: "plot",
    split: "split",
  });
  const loads = measuredLoads(mix.loads, input, (volume) => treatedBy(volume, rate));
  const { carrier, mixingOrder, totals, toMark, leftover } = mix;
  const cost = planCost(input, { area, loads, totals });
  const thresholds = thresholdsOf(input.thresholds);
  const warnings = [
    ...areaWarnings(input, area, calibrated.measurement, thresholds.bandSwath),
    ...calibrationWarnings(input, calibrated, thresholds),
    ...input.products.flatMap((product, i) =>
      productWarnings(product, i, input, area, rate, totals.products[i] as ProductTotal),
    ),
    ...mixWarnings(input, { carrier, loads, toMark }, thresholds),
  ];
  return {
    version: 1,
    area,
    rate,
    carrier,
    loads: markedIfRefused(loads, warnings),
    ...(mixingOrder && { mixingOrder }),
    totals,
    ...(toMark && { toMark }),
    leftover,
    ...(cost && { cost }),
    warnings,
    cautions: CAUTIONS,
    input: { ...input, split: input.split ?? DEFAULT_SPLIT },
  };
}

/** What a job asks of its mix. Trusts its input. */
export function mixInput(
  { sprayer, reserve, products, split = DEFAULT_SPLIT, mixing, plot }: PlanInput,
  { treated, ground, rowLength }: JobArea,
  rate: VolumeRate,
): MixInput {
  return {
    area: treated,
    ground,
    rowLength,
    rate,
    sprayer,
    reserve,
    products,
    mixing,
    split: mixSplit(split, plotsOf(plot)),
  };
}

function mixSplit(split: Split, plots: readonly Plot[]): MixSplit {
  // The easiest way is found from the mix, whatever its loads.
  if (split === "easiest") return DEFAULT_SPLIT;
  if (split === "whole-plots") return { pieces: plots.length };
  if (split === "full-then-part" || split === "equal" || isFillList(split)) return split;
  const pieces = equalRows(plots[0] as Plot) as number;
  return split === "whole-rows" ? { pieces } : { pieces, perLoad: split.rowsPerLoad };
}

/** The easiest ways to split the mix of a plan. Trusts its input. */
export function splitsOnPlot({ input, area, rate }: Plan, limits: ChoiceLimits): ChosenSplits {
  return splitsOnArea(input, mixInput(input, area, rate), limits);
}

/** The easiest ways to split the mix of a job on an area. Trusts its input. */
function splitsOnArea(
  { plot, products, tools, reserve }: PlanInput,
  job: MixInput,
  limits: ChoiceLimits,
): ChosenSplits {
  const [first, ...others] = plotsOf(plot) as readonly [Plot, ...Plot[]];
  const rows = others.length === 0 ? equalRows(first) : undefined;
  const choice = { mix: mixOnArea(job, "plot"), products, tools, reserve, rows };
  return easiestSplits(choice, limits, { size: "plot", split: "split" });
}

/** Notes what only the areas show: rates and splits that need rows or ground, a rate per ground for a part of it. */
function areaFits({ plot, calibration, products, split }: PlanInput, area: JobArea, check: Check): void {
  const plots = plotsOf(plot);
  groundFits(measurementOf(calibration), plots, area, check);
  ratesFitPlot(products, area, check);
  const [first, ...others] = area.plots as readonly [PlotAreas, ...PlotAreas[]];
  const inRows = split === "whole-rows" || (typeof split === "object" && "rowsPerLoad" in split);
  if (inRows && (plots.length > 1 || equalRows(plots[0] as Plot) === undefined))
    check.fault(
      "conflict",
      "rows-of-one-length",
      "split",
      "Whole rows to a load need one plot with rows of one length. Choose equal loads instead.",
    );
  if (split === "whole-plots" && others.some(({ treated }) => orderOf(treated, first.treated) !== 0))
    check.fault(
      "conflict",
      "plots-of-one-size",
      "split",
      "Whole plots to a load need plots of one treated area. Choose equal loads instead.",
    );
}

// Rows sprayed with their alleys counted in give a rate per area of ground. On strips or bands alone it would make each drop
// of the mix several times too strong.
function groundFits(measurement: Measurement, plots: readonly Plot[], area: JobArea, check: Check): void {
  const isPerGround =
    measurement.kind === "tree-row" || (measurement.kind === "hand" && measurement.area === undefined);
  const isPart = plots.some(({ kind }, i) => {
    const { treated, ground } = area.plots[i] as PlotAreas;
    return ground === undefined ? kind !== "treated-area" : orderOf(treated, ground) === -1;
  });
  if (!isPerGround || !isPart) return;
  check.fault(
    "conflict",
    "rate-per-ground",
    "calibration",
    "This output rate counts the alleys, but only part of this plot is treated. Enter all of the ground as the plot, or calibrate on the treated part.",
  );
}
