import { measureOutWorking } from "../household/measure-out.js";
import { volumeOfWeightWorking } from "../household/volume-of-weight.js";
import { rateOfWorking } from "../output-rate/calibration.js";
import { carrierForWorking } from "../tank-mix/carrier.js";
import { splitLoadsWorking } from "../tank-mix/loads.js";
import { productAmountWorking } from "../tank-mix/product.js";
import { productInLoadsWorking } from "../tank-mix/product-in-loads.js";
import { formulaLines } from "../units/lines.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { doseRequest } from "./dose.js";
import type { PlanInput, Product } from "./input.js";
import { carrierInput, loadsInput, productInput } from "./job.js";
import { plotAreasWorking, plotsOf } from "./plot.js";
import type { Plan } from "./result.js";

/** The working of one step of a plan. */
export interface PlanStep {
  /** Which step. */
  readonly step: "area" | "rate" | "carrier" | "loads" | "product" | "dose";
  /** The product, for the steps that each product has. */
  readonly product?: string;
  /** The load's number, for a dose. */
  readonly load?: number;
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
export function planWorking(plan: Plan): PlanStep[] {
  return stepsOf(plan).map((step) => ({ ...step, lines: withoutRepeats(step.lines) }));
}

// Two formulas of one step may change the same term to the same unit: once is enough to read.
function withoutRepeats(lines: readonly WorkingLine[]): WorkingLine[] {
  const seen = new Set<string>();
  return lines.filter(({ id, terms, result }) => {
    if (id !== "units.convert") return true;
    const key = JSON.stringify([terms, result]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function stepsOf(plan: Plan): PlanStep[] {
  const { input } = plan;
  return [
    { step: "area", lines: areaLines(plan) },
    { step: "rate", lines: rateOfWorking(input.calibration) },
    { step: "carrier", lines: carrierForWorking(carrierInput(input, plan.rate, plan.area.treated)) },
    { step: "loads", lines: splitLoadsWorking(loadsInput(input, plan.carrier, plan.area)) },
    ...input.products.flatMap((product, i) => productSteps(plan, product, i)),
  ];
}

function areaLines({ input, area }: Plan): WorkingLine[] {
  const plots = plotsOf(input.plot);
  const lines = plots.flatMap(plotAreasWorking);
  if (plots.length === 1) return lines;
  const terms = area.plots.map(({ treated }, i) => [`x${i + 1}`, [treated, area.treated.unit]] as const);
  const total = formulaLines({
    id: "plan.treated",
    formula: terms.map(([symbol]) => symbol).join(" + "),
    terms: Object.fromEntries(terms),
    result: area.treated,
    source: "sum of the plots",
  });
  return [...lines, ...total];
}

function productSteps(plan: Plan, product: Product, i: number): PlanStep[] {
  const amount = productAmountWorking(productInput(product, plan));
  const { result } = amount[amount.length - 1] as WorkingLine;
  const shares = productInLoadsWorking({ amount: result as Volume | Mass, loads: plan.loads });
  const doses = differentDoses(plan, product, i);
  const lines = [...amount, ...doses.map(({ load }) => shares[load - 1] as WorkingLine)];
  return [
    { step: "product", product: product.name, lines },
    ...doses.map(({ load, lines }): PlanStep => ({ step: "dose", product: product.name, load, lines })),
  ];
}

// Full loads are alike: the working of one of them is enough.
function differentDoses(plan: Plan, product: Product, i: number): { load: number; lines: WorkingLine[] }[] {
  const seen = new Set<number>();
  return plan.loads.flatMap(({ number, area, products }) => {
    const dose = products[i];
    if (dose === undefined || seen.has(dose.amount.value)) return [];
    seen.add(dose.amount.value);
    return [{ load: number, lines: doseLines(dose.amount, product, plan.input.tools, area) }];
  });
}

function doseLines(
  amount: Volume | Mass,
  product: Product,
  tools: PlanInput["tools"],
  area: TreatedArea,
): WorkingLine[] {
  const { input, volume } = doseRequest(amount, product, tools, area);
  const lines = measureOutWorking(input);
  if (volume === undefined || product.bulkDensity === undefined) return lines;
  return [...volumeOfWeightWorking({ mass: amount as Mass, bulkDensity: product.bulkDensity }), ...lines];
}
