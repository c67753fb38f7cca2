import { rateOfSpreader } from "../output-rate/spreader.js";
import { granulesOf } from "../tank-mix/granules.js";
import { checked } from "../units/check.js";
import { areaWithNumber, type JobNumber, type Keys, movedInputs, withNumber } from "./moved-inputs.js";
import type { JobArea } from "./plot-areas.js";
import { SPREADING_PLAN } from "./read-plan.js";
import type { SpreadingPlan } from "./result.js";
import { granulesInput, productRateOf } from "./spreading.js";
import { SPREADING_INPUT, type SpreadingInput } from "./spreading-input.js";

/** How far one input moves the granules of a job. */
export interface SpreadingSensitivity extends JobNumber {
  /** By what percentage that moves the product in all, below 0 for less. */
  readonly total: number;
  /** By what percentage that moves what the spreader puts out by its test, below 0 for less; where there was a test. */
  readonly output?: number | undefined;
}

/**
 * Returns how the product of a job of granules moves when an input does: which number to check again before anything is spread.
 *
 * Formula: as for {@link planSensitivity}. A reading of the spreader's test moves no amount, but what the spreader is found to put
 * out. Source: first-order sensitivity, as for uncertainty in JCGM 100:2008, 5.1.3.
 *
 * @param plan - a finished plan
 * @returns every measured input and count that moves something, the strongest first; left out is what {@link planSensitivity}
 *   leaves out, and the hopper and the bags, which move no amount
 * @throws SprayMathError `not-a-quantity` for what is no plan, `conflict` for one that was changed
 *
 * @example
 * ```ts
 * import { planSpreading, spreadingSensitivity } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planSpreading({
 *   plot: { kind: "beds", beds: 4, bedLength: qty(60, "ft"), bedWidth: qty(3, "ft") },
 *   spreader: { hopper: qty(5, "lb") },
 *   product: { name: "Product A", rate: qty(2, "lb/1000ft2") },
 * });
 * const [first] = spreadingSensitivity(plan);
 * console.log(first?.path, first?.change, first?.total); // plot.beds one-more 25
 * ```
 */
export function spreadingSensitivity(plan: SpreadingPlan): SpreadingSensitivity[] {
  return sensitivityOf(checked(plan, SPREADING_PLAN, "plan"));
}

function sensitivityOf({ input, area }: SpreadingPlan): SpreadingSensitivity[] {
  const amountsWith = ([part, ...keys]: Keys, value: number): number[] =>
    part === "plot" && "plot" in input && area
      ? amountsOf(input, areaWithNumber(input.plot, area, keys, value))
      : amountsOf(
          checked(withNumber(input, [part as string, ...keys], value), SPREADING_INPUT) as SpreadingInput,
          area,
        );
  const { test, product } = input;
  const size = "size" in input ? { size: input.size } : { plot: input.plot };
  const parts = { ...size, product: { rate: product.rate }, test };
  return movedInputs(parts, amountsOf(input, area), amountsWith).map(({ moves, ...one }) => {
    const [total, output] = moves as [number, number | undefined];
    return { ...one, total, ...(output !== undefined && { output }) };
  });
}

/** The product in all, and what the spreader puts out by its test. */
function amountsOf(input: SpreadingInput, area: JobArea | undefined): number[] {
  const total = granulesOf(granulesInput(input, productRateOf(input.product).rate, area));
  return [total.value, ...(input.test ? [rateOfSpreader(input.test).value] : [])];
}
