import { doseLines } from "../household/measure-out.js";
import { volumeLines } from "../household/volume-of-weight.js";
import { rateOfCalibration } from "../output-rate/calibration.js";
import { linesOfMeasurement } from "../output-rate/measurement.js";
import { linesOfBatch, volumeOfBatch } from "../tank-mix/batch-volume.js";
import { linesOfCarrier, linesOfTotal } from "../tank-mix/carrier.js";
import { linesOfLoads } from "../tank-mix/loads.js";
import { linesOfAmount } from "../tank-mix/product.js";
import { productInLoadsLines } from "../tank-mix/product-in-loads.js";
import { checked } from "../units/check.js";
import { formulaLines } from "../units/formula-lines.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { batchMix, coversOf } from "./batch.js";
import { doseRequest } from "./dose.js";
import type { Product } from "./input.js";
import { carrierInput, type KnownMix, loadsInput, mixOnArea, productInput, treatedBy } from "./mix.js";
import { mixInput } from "./plan.js";
import { type Plot, plotsOf } from "./plot.js";
import { type JobArea, linesOfPlot } from "./plot-areas.js";
import { ANY_PLAN } from "./read-plan.js";
import type { AnyPlan, BatchPlan, LoadProduct, Plan } from "./result.js";

/** The working of one step of a plan. */
export interface PlanStep {
  /** Which step. */
  readonly step: "area" | "rate" | "size" | "carrier" | "loads" | "product" | "dose";
  /** The product, for the steps that each product has. */
  readonly product?: string | undefined;
  /** The load's number, for a dose. */
  readonly load?: number | undefined;
  /** The lines, in order. */
  readonly lines: readonly WorkingLine[];
}

/**
 * The working of a whole plan, step by step, from the plot to the measured dose.
 *
 * @param plan - a finished plan
 * @returns the steps in the order in which they are worked out
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { planApplication as planLines } from "swath-to-spoon/working";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *   calibration: { kind: "strip", used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * console.log(planLines(plan).map((step) => step.step).join(" ")); // area rate carrier loads product dose
 * ```
 */
export function planWorking(plan: AnyPlan): PlanStep[] {
  return stepsOfPlan(checked(plan, ANY_PLAN, "plan"));
}

/** The working of a plan. Trusts its input. */
export function stepsOfPlan(plan: AnyPlan): PlanStep[] {
  return stepsOf(plan).map((step) => ({ ...step, lines: withoutRepeats(step.lines) }));
}

/** Two formulas of one step may change the same term to the same unit: once is enough to read. */
export function withoutRepeats(lines: readonly WorkingLine[]): WorkingLine[] {
  const seen = new Set<string>();
  return lines.filter(({ id, terms, result }) => {
    if (id !== "units.convert") return true;
    const key = JSON.stringify([terms, result]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function stepsOf(plan: AnyPlan): PlanStep[] {
  const { steps, mix, treats } = "area" in plan ? stepsOnArea(plan) : stepsOfBatch(plan);
  return [
    ...steps,
    { step: "loads", lines: linesOfLoads(loadsInput(splitAsPlanned(plan, mix))) },
    ...plan.input.products.flatMap((product, i) => productSteps(plan, { mix, treats }, product, i)),
  ];
}

/** The mix with the split that was found for it, where the easiest one was asked for. */
function splitAsPlanned({ input, loads }: AnyPlan, mix: KnownMix): KnownMix {
  if (input.split !== "easiest") return mix;
  const counted = loads.map(({ pieces = 0 }) => pieces);
  const pieces = counted.reduce((sum, one) => sum + one, 0);
  const split =
    pieces > 0
      ? { pieces, perLoad: Math.max(...counted) }
      : { fills: loads.map(({ mark }) => mark as Volume) };
  return { ...mix, split };
}

/** The steps up to the mix in all, that mix, and what area a volume of it is enough for. */
interface StepsToMix {
  readonly steps: readonly PlanStep[];
  readonly mix: KnownMix;
  readonly treats: (mix: Volume) => TreatedArea | undefined;
}

function stepsOnArea(plan: Plan): StepsToMix {
  const { input, area, rate } = plan;
  const job = mixInput(input, area, rate);
  const steps: readonly PlanStep[] = [
    { step: "area", lines: linesOfAreas(input.plot, area) },
    { step: "rate", lines: linesOfMeasurement(rateOfCalibration(input.calibration)) },
    { step: "carrier", lines: linesOfCarrier(carrierInput(job)) },
  ];
  return { steps, mix: mixOnArea(job, "plot"), treats: (volume) => treatedBy(volume, rate) };
}

function stepsOfBatch({ input, carrier }: BatchPlan): StepsToMix {
  const { size, sprayer, reserve } = input;
  const spare = { lineVolume: sprayer.lineVolume, reserve };
  const steps: readonly PlanStep[] = [
    { step: "size", lines: linesOfBatch(size) },
    { step: "carrier", lines: linesOfTotal(carrier.sprayed, spare) },
  ];
  const sized = volumeOfBatch(size);
  const covers = coversOf(input, sized);
  return { steps, mix: batchMix(input, sized), treats: (volume) => covers(volume).area };
}

/** The working of a job's areas, plot by plot and together. Trusts its input. */
export function linesOfAreas(
  plot: Plot | readonly Plot[],
  { plots: areas, treated }: JobArea,
): WorkingLine[] {
  const plots = plotsOf(plot);
  const lines = plots.flatMap(linesOfPlot);
  if (plots.length === 1) return lines;
  const terms = areas.map((one, i) => [`x${i + 1}`, [one.treated, treated.unit]] as const);
  const total = formulaLines({
    id: "plan.treated",
    formula: terms.map(([symbol]) => symbol).join(" + "),
    terms: Object.fromEntries(terms),
    result: treated,
    source: "sum of the plots",
  });
  return [...lines, ...total];
}

function productSteps(
  plan: AnyPlan,
  { mix: { sizes }, treats }: Omit<StepsToMix, "steps">,
  product: Product,
  i: number,
): PlanStep[] {
  const amount = linesOfAmount(productInput(product, sizes, plan.carrier));
  const { result } = amount[amount.length - 1] as WorkingLine;
  const shares = productInLoadsLines(result as Volume | Mass, plan.loads);
  const doses = differentDoses(plan.loads, i);
  return [
    {
      step: "product",
      product: product.name,
      lines: [...amount, ...doses.map(({ load }) => shares[load.number - 1] as WorkingLine)],
    },
    ...doses.map(
      ({ load, dose }): PlanStep => ({
        step: "dose",
        product: product.name,
        load: load.number,
        lines: linesOfDose(plan, product, treats(load.carrier), dose),
      }),
    ),
  ];
}

// The digits that sharing out leaves alike.
const SURE = 9;

// Full loads are alike: the working of one of them is enough.
function differentDoses(
  loads: AnyPlan["loads"],
  i: number,
): { readonly load: AnyPlan["loads"][number]; readonly dose: LoadProduct }[] {
  const seen = new Set<string>();
  return loads.flatMap((load) => {
    const dose = load.products[i] as LoadProduct;
    // Equal loads share out the last digits of the mix.
    const amount = dose.amount.value.toPrecision(SURE);
    if (seen.has(amount)) return [];
    seen.add(amount);
    return [{ load, dose }];
  });
}

function linesOfDose(
  { input }: AnyPlan,
  product: Product,
  area: TreatedArea | undefined,
  { amount, measured }: LoadProduct,
): WorkingLine[] {
  const { input: asked, volume } = doseRequest(amount, product, input.tools, area);
  const lines = doseLines(asked, measured);
  const { bulkDensity } = product;
  if (volume === undefined || bulkDensity === undefined) return lines;
  return [...volumeLines({ mass: amount as Mass, bulkDensity }), ...lines];
}
