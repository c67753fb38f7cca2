import { type Check, checked, Field } from "../units/check.js";
import { asGiven } from "../units/fields.js";
import { type VersionField, version } from "../units/version-field.js";
import { JOB_INPUT } from "./batch-input.js";
import { differences, resultsOf } from "./differences.js";
import { planOfJob } from "./plan.js";
import type { AnyPlan, LoadOf, LoadProduct } from "./result.js";

const OBJECT: Field<AnyPlan> = /* @__PURE__ */ asGiven<AnyPlan>("A finished plan.");

const VERSION: VersionField<1> = version(
  "The version of this layout. A reader refuses one that it does not know.",
  1,
);

/** A finished plan, which may have been saved and changed: it is worked out again from its input, and must be what comes out. */
class PlanField extends Field<AnyPlan> {
  read(input: unknown, check: Check): AnyPlan | undefined {
    const given = OBJECT.read(input, check);
    if (given === undefined) return undefined;
    if (!("input" in given && "loads" in given))
      return check.fault(
        "not-a-quantity",
        "plan-expected",
        "",
        "This isn't a finished plan. Plan the job first.",
      );
    const known = check.readAt("version", VERSION, given);
    const job = check.readAt("input", JOB_INPUT, given);
    if (known === undefined || job === undefined) return undefined;
    const plan = planOfJob(job);
    const [changed] = differences(figuresOf(plan), figuresOf(given), "");
    if (changed === undefined) return plan;
    return check.fault(
      "conflict",
      "plan-changed",
      changed.path,
      "This plan doesn't follow from its own input: one of them was changed. Plan the job again.",
    );
  }

  missing(check: Check): undefined {
    return OBJECT.missing(check);
  }
}

/** Every figure that a person goes by. */
function figuresOf(plan: AnyPlan): object {
  const loads = (plan.loads as readonly LoadOf<LoadProduct>[]).map(
    ({ carrier, water, pieces, mark, products }) => {
      return { carrier, water, pieces, mark, amounts: products.map(({ amount }) => amount) };
    },
  );
  return { ...resultsOf(plan), loads };
}

/** A finished plan. */
export const ANY_PLAN: Field<AnyPlan> = /* @__PURE__ */ new PlanField("A finished plan.");

/**
 * Reads a plan that was saved, from a file or another program. The plan is worked out again from its input, and every figure
 * must be the same: a plan in which somebody changed a number is refused.
 *
 * @param saved - what was saved, such as what `JSON.parse` returns
 * @returns the plan, as {@link planApplication} returns it
 * @throws SprayMathError `unknown-choice` for a version that isn't known, `conflict` where the figures don't follow from the
 *   input, `not-a-quantity` for what is no plan, or what {@link planApplication} throws, with `input.` first in the path
 *
 * @example
 * ```ts
 * import { planApplication, readPlan } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *   calibration: { kind: "known", rate: qty(200, "L/ha") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * const saved = JSON.stringify(plan);
 * console.log(readPlan(JSON.parse(saved)).carrier.total); // { value: 20, unit: 'L' }
 * ```
 */
export function readPlan(saved: unknown): AnyPlan {
  return checked(saved, ANY_PLAN);
}
