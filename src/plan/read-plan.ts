import type { ErrorCode } from "../errors.js";
import { type Check, checked, Field } from "../units/check.js";
import { asGiven } from "../units/fields.js";
import { type VersionField, version } from "../units/version-field.js";
import { JOB_INPUT, type JobInput } from "./batch-input.js";
import { differences, resultsOf, resultsOfSpreading } from "./differences.js";
import { planOfJob } from "./plan.js";
import type { AnyPlan, LoadOf, LoadProduct, SpreadingPlan } from "./result.js";
import { planOfSpreading } from "./spreading.js";
import { SPREADING_INPUT, type SpreadingInput } from "./spreading-input.js";

const OBJECT: Field<object> = /* @__PURE__ */ asGiven<object>("A finished plan.");

const VERSION: VersionField<1> = version(
  "The version of this layout. A reader refuses one that it does not know.",
  1,
);

/** A kind of plan: by what it is known, and how it is worked out again. */
interface PlanKind<P, J> {
  /** A field that no other kind of plan has. */
  readonly mark: string;
  readonly job: Field<J>;
  readonly planOf: (job: J) => P;
  /** Every figure that a person goes by. */
  readonly figuresOf: (plan: P) => object;
}

/** A finished plan, which may have been saved and changed: it is worked out again from its input, and must be what comes out. */
class PlanField<P extends object, J> extends Field<P> {
  constructor(private readonly kind: PlanKind<P, J>) {
    super("A finished plan.");
  }

  read(input: unknown, check: Check): P | undefined {
    const { mark, job: jobField, planOf, figuresOf } = this.kind;
    const given = OBJECT.read(input, check);
    if (given === undefined) return undefined;
    if (!("input" in given && mark in given)) return noPlan("not-a-quantity", check);
    const known = check.readAt("version", VERSION, given);
    const job = check.readAt("input", jobField, given);
    if (known === undefined || job === undefined) return undefined;
    const plan = planOf(job);
    const [changed] = differences(figuresOf(plan), figuresOf(given as P), "");
    if (changed === undefined) return plan;
    return check.fault(
      "conflict",
      "plan-changed",
      changed.path,
      "This plan doesn't follow from its own input: it was changed, or another version of this library made it. Plan the job again.",
    );
  }

  missing(check: Check): undefined {
    return noPlan("missing", check);
  }
}

function noPlan(code: ErrorCode, check: Check): undefined {
  return check.fault(code, "plan-expected", "", "This isn't a finished plan. Plan the job first.");
}

function figuresOf(plan: AnyPlan): object {
  const loads = (plan.loads as readonly LoadOf<LoadProduct>[]).map(
    ({ carrier, water, pieces, mark, products }) => {
      return { carrier, water, pieces, mark, amounts: products.map(({ amount }) => amount) };
    },
  );
  return { ...resultsOf(plan), loads };
}

/** A finished plan. */
export const ANY_PLAN: Field<AnyPlan> = /* @__PURE__ */ new PlanField<AnyPlan, JobInput>({
  mark: "loads",
  job: JOB_INPUT,
  planOf: planOfJob,
  figuresOf,
});

/** A finished plan of a job of granules. */
export const SPREADING_PLAN: Field<SpreadingPlan> = /* @__PURE__ */ new PlanField<
  SpreadingPlan,
  SpreadingInput
>({
  mark: "hopper",
  job: SPREADING_INPUT,
  planOf: planOfSpreading,
  figuresOf: resultsOfSpreading,
});

/**
 * Reads a plan that was saved, from a file or another program. The plan is worked out again from its input, and every figure
 * must be the same. A plan is refused if somebody changed a number, or if this version of the library works one out otherwise.
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

/**
 * Reads a plan of granules that was saved, as {@link readPlan} reads one of a spray job.
 *
 * @param saved - what was saved, such as what `JSON.parse` returns
 * @returns the plan, as `planSpreading` returns it
 * @throws SprayMathError as {@link readPlan}, and what `planSpreading` throws, with `input.` first in the path
 *
 * @example
 * ```ts
 * import { planSpreading, readSpreadingPlan } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planSpreading({
 *   size: { kind: "count", count: qty(45, "tree") },
 *   spreader: { hopper: qty(5, "kg") },
 *   product: { name: "Product A", rate: qty(20, "g/tree") },
 * });
 * const saved = JSON.stringify(plan);
 * console.log(readSpreadingPlan(JSON.parse(saved)).total); // { value: 900, unit: 'g' }
 * ```
 */
export function readSpreadingPlan(saved: unknown): SpreadingPlan {
  return checked(saved, SPREADING_PLAN);
}
