import { CALIBRATION, rateOfCalibration } from "../output-rate/calibration.js";
import { BATCH_SIZE, volumeOfBatch } from "../tank-mix/batch-volume.js";
import { RESERVE } from "../tank-mix/carrier.js";
import { checked } from "../units/check.js";
import type { VolumeRate } from "../units/types.js";
import { batchMix } from "./batch.js";
import type { BatchInput, JobInput } from "./batch-input.js";
import { type PlanInput, PRODUCT, type Product, SPRAYER } from "./input.js";
import { amountsIn, mixOnArea } from "./mix.js";
import { areaWithNumber, type JobNumber, type Keys, movedInputs, withNumber } from "./moved-inputs.js";
import { mixInput } from "./plan.js";
import type { JobArea } from "./plot-areas.js";
import { ANY_PLAN } from "./read-plan.js";
import type { AnyPlan } from "./result.js";

/** How far one input moves the products of a job. */
export interface InputSensitivity extends JobNumber {
  /** By what percentage that moves the whole mix, below 0 for less. */
  readonly mix: number;
  /** By what percentage that moves each product in all loads, below 0 for less. */
  readonly products: readonly {
    /** The product. */
    readonly name: string;
    /** By what percentage. */
    readonly percent: number;
  }[];
}

/**
 * Returns how the doses move when an input does: which number to check again before anything is poured.
 *
 * Formula: by one percent of an input, the first derivative of the logarithm, as a central difference; for a count, the job
 * with one more. What is refused with more or with less, such as a part of the ground that is all of it, is moved the other way
 * alone. A count that has to stay as it is is left out. A reserve that rounds up to a convenient volume, or to the tank's marks, is
 * held at what it came to, since it moves in jumps. Source: first-order sensitivity, as for uncertainty in JCGM 100:2008, 5.1.3.
 *
 * @param plan - a finished plan
 * @returns every measured input and count that moves something, the strongest first; corners and stations of a boundary
 *   are left out, since one of them alone says little, and so are lists of more than 50 lengths, spots, runs or catches
 *
 * @example
 * ```ts
 * import { planApplication, planSensitivity } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "row-bands", rows: 10, rowLength: qty(50, "m"), bandWidth: qty(60, "cm") },
 *   calibration: { kind: "strip", used: qty(2, "L"), swath: qty(60, "cm"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * const [first] = planSensitivity(plan);
 * console.log(first?.path, first?.change, first?.products[0]?.percent); // plot.rows one-more 10
 * ```
 */
export function planSensitivity(plan: AnyPlan): InputSensitivity[] {
  return sensitivityOf(checked(plan, ANY_PLAN, "plan"));
}

/** A job on an area, as far as its amounts depend on it. */
interface AreaJob {
  readonly input: PlanInput;
  readonly area: JobArea;
  readonly rate: VolumeRate;
}

/** A job as far as its amounts depend on it. */
type Job = AreaJob | { readonly input: BatchInput };

function sensitivityOf(plan: AnyPlan): InputSensitivity[] {
  const job = (
    "area" in plan ? { input: held(plan), area: plan.area, rate: plan.rate } : { input: held(plan) }
  ) as Job;
  const moved = movedInputs(partsOf(plan), amountsOf(job), (keys, value) =>
    amountsOf(replaced(job, keys, value)),
  );
  return moved.map(({ moves, ...one }) => {
    const [mix, ...products] = moves as [number, ...number[]];
    return {
      ...one,
      mix,
      products: products.map((percent, i) => ({ name: (plan.input.products[i] as Product).name, percent })),
    };
  });
}

/** The whole mix and each product in it. */
function amountsOf(job: Job): number[] {
  const mix =
    "area" in job
      ? mixOnArea(mixInput(job.input, job.area, job.rate), "plot")
      : batchMix(job.input, volumeOfBatch(job.input.size));
  return [mix.carrier.total.value, ...amountsIn(mix).map(({ amount }) => amount.value)];
}

function held(plan: AnyPlan): JobInput {
  const { input, carrier } = plan;
  return isRounded(plan) ? { ...input, reserve: { volume: carrier.reserve } } : input;
}

function isRounded({ input: { reserve }, toMark }: AnyPlan): boolean {
  return toMark !== undefined || (reserve !== undefined && "roundUpTo" in reserve);
}

/** The job with another number in one place. Only the part that the number stands in is checked and worked out again. */
function replaced(job: Job, [part, ...keys]: Keys, value: number): Job {
  const changed = (whole: unknown, rest: Keys): unknown => withNumber(whole, rest, value);
  const withInput = (input: Partial<JobInput>): Job => ({ ...job, input: { ...job.input, ...input } }) as Job;
  switch (part) {
    case "plot":
      return withArea(job as AreaJob, keys, value);
    case "calibration": {
      const calibration = checked(changed((job as AreaJob).input.calibration, keys), CALIBRATION);
      return { ...(job as AreaJob), rate: rateOfCalibration(calibration).rate };
    }
    case "size":
      return withInput({ size: checked(changed((job.input as BatchInput).size, keys), BATCH_SIZE) });
    case "products": {
      const [i, ...rest] = keys as [number, ...Keys];
      const { products } = job.input;
      const product = checked(changed(products[i], rest), PRODUCT);
      return withInput({ products: products.map((one, k) => (k === i ? product : one)) });
    }
    case "sprayer":
      return withInput({ sprayer: checked(changed(job.input.sprayer, keys), SPRAYER) });
    default:
      return withInput({ reserve: checked(changed(job.input.reserve, keys), RESERVE) });
  }
}

function withArea(job: AreaJob, keys: Keys, value: number): AreaJob {
  return { ...job, area: areaWithNumber(job.input.plot, job.area, keys, value) };
}

/** What is looked at. */
function partsOf(plan: AnyPlan): object {
  const { input } = plan;
  const { sprayer, reserve, products } = input;
  const size = "size" in input ? { size: input.size } : { plot: input.plot, calibration: input.calibration };
  return { ...size, sprayer, ...(!isRounded(plan) && { reserve }), products };
}
