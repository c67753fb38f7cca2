import { doseOf, longestCount, type Measurable } from "../household/measure-out.js";
import type { MeasuringTool } from "../household/measuring-tool.js";
import { type Suggestion, suggestionsFor, toolFor } from "../household/suggest.js";
import { toolsIn } from "../household/tools.js";
import { checked } from "../units/check.js";
import type { Mass, Volume } from "../units/types.js";
import { doseRequest } from "./dose.js";
import type { Product } from "./input.js";
import { ANY_PLAN } from "./read-plan.js";
import type { AnyPlan, LoadProduct } from "./result.js";

/** What would do for a dose that can't be measured, or not without a long count. */
export interface DoseAdvice {
  /** The load's number. */
  readonly load: number;
  /** The product. */
  readonly product: string;
  /** What would do, the easiest first: another load, another tool, a stock. */
  readonly suggestions: readonly Suggestion[];
}

/**
 * Finds what would do for each dose of a plan that its tools can't measure, or only with a long count. That is another size of load
 * (on the tank's marks, where these are given), a tool to have besides, or a stock where the label permits one. Each has been
 * measured. Doses that are alike are named once, with their first load.
 *
 * @param plan - a finished plan
 * @returns the advice, in the order of the loads; none where every dose can be measured
 * @throws SprayMathError `not-a-quantity` for what is no plan, and what {@link readPlan} throws for one that was changed
 *
 * @example
 * ```ts
 * import { doseAdvice, planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   size: { kind: "volume", volume: qty(3, "gal") },
 *   sprayer: { tank: qty(4, "gal"), marks: qty(0.5, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(1.2, "fl_oz/100gal") }],
 *   tools: [{ name: "1/4 teaspoon", capacity: qty(0.25, "tsp") }],
 * });
 * const [dose] = doseAdvice(plan);
 * console.log(dose?.load, dose?.suggestions[0]?.message); // 1 Mix 3.5 gal instead of 3 gal.
 * ```
 */
export function doseAdvice(plan: AnyPlan): DoseAdvice[] {
  return adviceFor(checked(plan, ANY_PLAN, "plan"));
}

function adviceFor({ loads, input }: AnyPlan): DoseAdvice[] {
  const { products, tools, sprayer } = input;
  const seen = products.map(() => new Set<number>());
  return loads.flatMap(({ number, carrier, products: doses }) =>
    doses.flatMap(({ name, amount, measured }: LoadProduct, k): DoseAdvice[] => {
      // Bags go in whole: no tool helps.
      if (products[k]?.inSolubleBag) return [];
      const before = seen[k] as Set<number>;
      if ((measured.ok && longestCount(measured) === undefined) || before.has(amount.value)) return [];
      before.add(amount.value);
      const product = products[k] as Product;
      const { input: asked, volume } = doseRequest(amount, product, tools, undefined);
      // A powder that spoons are too coarse for is weighed.
      const scale = volume && withOneMore(amount, product, input)?.tool;
      const { workingFill: tank = sprayer.tank, marks } = sprayer;
      return [
        {
          load: number,
          product: name,
          suggestions: suggestionsFor({ ...asked, load: carrier, tank, marks }, scale),
        },
      ];
    }),
  );
}

/** A dose as it is measured with one more tool. */
export interface WithOneMore {
  readonly tool: MeasuringTool;
  readonly measured: Measurable;
}

/** How a dose that can't be measured would be with one more tool; nothing where no one tool does. Trusts its input. */
export function withOneMore(
  amount: Volume | Mass,
  product: Product,
  { tools }: AnyPlan["input"],
): WithOneMore | undefined {
  // What spoons are too coarse for is weighed: no syringe takes up a powder.
  const { input: asked } = doseRequest(amount, { ...product, bulkDensity: undefined }, tools, undefined);
  const dose = doseOf(asked);
  const tool = dose.ok ? dose.parts[0]?.tool : toolFor(asked);
  if (tool === undefined) return undefined;
  // The tool was chosen by measuring the dose with it.
  const measured = dose.ok ? dose : doseOf({ ...asked, tools: [...toolsIn(asked.tools), tool] });
  return { tool, measured: measured as Measurable };
}
