import { checked } from "../units/check.js";
import { type ObjectField, object } from "../units/fields.js";
import { type Difference, differences, resultsOf } from "./differences.js";
import { ANY_PLAN } from "./read-plan.js";
import type { AnyPlan } from "./result.js";
import type { WarningCode } from "./warnings.js";

/** What changed from one plan to another. */
export interface PlanComparison {
  /** What was put in differently. */
  readonly inputs: readonly Difference[];
  /** What came out differently: areas, rate, mix, loads, products, what is left, cost. */
  readonly results: readonly Difference[];
  /** The warnings that the second plan has and the first has not. */
  readonly newWarnings: readonly WarningCode[];
  /** The warnings that the first plan has and the second has not. */
  readonly goneWarnings: readonly WarningCode[];
}

/**
 * Returns what changed from one plan to another, and by how much: a nozzle, a pace, a tank.
 *
 * Quantities are compared in the unit of the first plan, noise aside: the same job in other units differs in nothing.
 *
 * Formula: percent = 100 × (after / before − 1).
 *
 * @param before - a finished plan
 * @param after - another
 * @returns the differences of inputs and results, and of warnings
 *
 * @example
 * ```ts
 * import { comparePlans, planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = (used: number) =>
 *   planApplication({
 *     plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *     calibration: { kind: "strip", used: qty(used, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *     sprayer: { tank: qty(15, "L") },
 *     products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *     tools: "syringes",
 *   });
 * const { inputs, results } = comparePlans(plan(2), plan(3));
 * console.log(inputs.map(({ path, percent }) => [path, percent])); // [ [ 'calibration.used', 50 ] ]
 * console.log(results.map(({ path }) => path).join(" ")); // rate carrier.sprayed carrier.total totals.products[0].strength
 * ```
 */
export function comparePlans(before: AnyPlan, after: AnyPlan): PlanComparison {
  return comparisonOf(checked({ before, after }, TWO_PLANS));
}

const TWO_PLANS: ObjectField<{ readonly before: AnyPlan; readonly after: AnyPlan }> = /* @__PURE__ */ object({
  before: ANY_PLAN,
  after: ANY_PLAN,
});

function comparisonOf({
  before,
  after,
}: {
  readonly before: AnyPlan;
  readonly after: AnyPlan;
}): PlanComparison {
  const codes = (plan: AnyPlan): WarningCode[] => [...new Set(plan.warnings.map(({ code }) => code))];
  const [first, second] = [codes(before), codes(after)];
  const results = differences(resultsOf(before), resultsOf(after), "");
  return {
    inputs: differences(before.input, after.input, ""),
    // Nothing else is another: the same mix may still be split in another way.
    results: results.length > 0 ? results : differences(fillsOf(before), fillsOf(after), ""),
    newWarnings: second.filter((code) => !first.includes(code)),
    goneWarnings: first.filter((code) => !second.includes(code)),
  };
}

function fillsOf({ loads }: AnyPlan): object {
  return { loads: loads.map(({ carrier }) => ({ carrier })) };
}
