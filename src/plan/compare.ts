import { checked } from "../units/check.js";
import { type ObjectField, object } from "../units/fields.js";
import { type Difference, differences, resultsOf, resultsOfSpreading } from "./differences.js";
import { ANY_PLAN, SPREADING_PLAN } from "./read-plan.js";
import type { AnyPlan, SpreadingPlan } from "./result.js";
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
  const plans = checked({ before, after }, TWO_PLANS);
  const comparison = comparisonOf(plans, resultsOf);
  // Nothing else is another: the same mix may still be split in another way.
  return comparison.results.length > 0
    ? comparison
    : { ...comparison, results: differencesOf(plans, fillsOf) };
}

/**
 * Returns what changed from one plan of granules to another, as {@link comparePlans} does for two spray jobs: a rate, a bag, a setting of the gate.
 *
 * Formula: percent = 100 × (after / before − 1).
 *
 * @param before - a finished plan of granules
 * @param after - another
 * @returns the differences of inputs and results, and of warnings; results are areas, the rate and its nutrients, the product in all
 *   and on each plot, hopper, bags, the test and the cost
 * @throws SprayMathError `not-a-quantity` for what is no plan of granules, `conflict` for one that was changed
 *
 * @example
 * ```ts
 * import { compareSpreadingPlans, planSpreading } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = (bag: number) =>
 *   planSpreading({
 *     plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *     spreader: { hopper: qty(10, "kg") },
 *     product: { name: "Product A", rate: qty(250, "kg/ha"), bag: qty(bag, "kg") },
 *   });
 * const { results } = compareSpreadingPlans(plan(20), plan(10));
 * console.log(results.map(({ path, before, after }) => [path, before, after])[0]); // [ 'bags.bags', 2, 3 ]
 * ```
 */
export function compareSpreadingPlans(before: SpreadingPlan, after: SpreadingPlan): PlanComparison {
  return comparisonOf(checked({ before, after }, TWO_SPREADING_PLANS), resultsOfSpreading);
}

/** Two plans of a kind. */
interface TwoPlans<P> {
  readonly before: P;
  readonly after: P;
}

const TWO_PLANS: ObjectField<TwoPlans<AnyPlan>> = /* @__PURE__ */ object({
  before: ANY_PLAN,
  after: ANY_PLAN,
});

const TWO_SPREADING_PLANS: ObjectField<TwoPlans<SpreadingPlan>> = /* @__PURE__ */ object({
  before: SPREADING_PLAN,
  after: SPREADING_PLAN,
});

function comparisonOf<P extends AnyPlan | SpreadingPlan>(
  plans: TwoPlans<P>,
  resultsIn: (plan: P) => object,
): PlanComparison {
  const codes = (plan: P): WarningCode[] => [...new Set(plan.warnings.map(({ code }) => code))];
  const [first, second] = [codes(plans.before), codes(plans.after)];
  return {
    inputs: differencesOf<P>(plans, ({ input }) => input),
    results: differencesOf(plans, resultsIn),
    newWarnings: second.filter((code) => !first.includes(code)),
    goneWarnings: first.filter((code) => !second.includes(code)),
  };
}

function differencesOf<P>({ before, after }: TwoPlans<P>, part: (plan: P) => object): Difference[] {
  return differences(part(before), part(after), "");
}

function fillsOf({ loads }: AnyPlan): object {
  return { loads: loads.map(({ carrier }) => ({ carrier })) };
}
