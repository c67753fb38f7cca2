import { linesOfCheck } from "../output-rate/spreader.js";
import { linesOfBags, linesOfGranules, linesOfHopper } from "../tank-mix/granules.js";
import { linesOfFertilizer } from "../tank-mix/nutrients.js";
import { checked } from "../units/check.js";
import type { WorkingLine } from "../units/working-line.js";
import { linesOfAreas, withoutRepeats } from "./plan-steps.js";
import { SPREADING_PLAN } from "./read-plan.js";
import type { SpreadingPlan } from "./result.js";
import { granulesInput, spreaderCheckInput } from "./spreading.js";

/** The working of one step of a plan of granules. */
export interface SpreadingStep {
  /** Which step. */
  readonly step: "area" | "fertilizer" | "amount" | "hopper" | "bags" | "test";
  /** The lines, in order. */
  readonly lines: readonly WorkingLine[];
}

/**
 * The working of a whole plan of granules, step by step: area, fertilizer for the nutrient, amount, hopper, bags and the spreader's test. A step that the job doesn't have is left out.
 *
 * @param plan - a finished plan
 * @returns the steps in the order in which they are worked out
 * @throws SprayMathError `not-a-quantity` for what is no plan, `conflict` for one that was changed
 *
 * @example
 * ```ts
 * import { planSpreading } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { planSpreading as spreadingLines } from "swath-to-spoon/working";
 *
 * const plan = planSpreading({
 *   size: { kind: "count", count: qty(45, "tree") },
 *   spreader: { hopper: qty(5, "kg") },
 *   product: { name: "Product A", rate: qty(20, "g/tree") },
 * });
 * console.log(spreadingLines(plan).map(({ step }) => step).join(" ")); // amount hopper
 * ```
 */
export function spreadingWorking(plan: SpreadingPlan): SpreadingStep[] {
  return stepsOfSpreading(checked(plan, SPREADING_PLAN, "plan"));
}

/** The working of a plan of granules. Trusts its input. */
export function stepsOfSpreading({ input, area, rate, total }: SpreadingPlan): SpreadingStep[] {
  const { product, spreader, test } = input;
  const steps: readonly SpreadingStep[] = [
    { step: "area", lines: "plot" in input && area ? linesOfAreas(input.plot, area) : [] },
    { step: "fertilizer", lines: "nutrient" in product.rate ? linesOfFertilizer(product.rate) : [] },
    { step: "amount", lines: linesOfGranules(granulesInput(input, rate, area)) },
    { step: "hopper", lines: linesOfHopper({ total, ...spreader }) },
    { step: "bags", lines: product.bag ? linesOfBags({ total, bag: product.bag }) : [] },
    { step: "test", lines: test ? linesOfCheck(spreaderCheckInput(input, rate)) : [] },
  ];
  return steps
    .filter(({ lines }) => lines.length > 0)
    .map((step) => ({ ...step, lines: withoutRepeats(step.lines) }));
}
