import { joinPath } from "../errors.js";
import { CALIBRATION, rateOfCalibration } from "../output-rate/calibration.js";
import { BATCH_SIZE, volumeOfBatch } from "../tank-mix/batch-volume.js";
import { RESERVE } from "../tank-mix/carrier.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import type { Quantity, VolumeRate } from "../units/types.js";
import { batchMix } from "./batch.js";
import type { BatchInput, JobInput } from "./batch-input.js";
import { type PlanInput, PRODUCT, type Product, SPRAYER } from "./input.js";
import { amountsIn, mixOnArea } from "./mix.js";
import { mixInput } from "./plan.js";
import { PLOT, plotsOf } from "./plot.js";
import { areasOfPlot, type JobArea, type PlotAreas } from "./plot-areas.js";
import { ANY_PLAN } from "./read-plan.js";
import type { AnyPlan } from "./result.js";

/** How far one input moves the products of a job. */
export interface InputSensitivity {
  /** The input's place, such as `calibration.used`. */
  readonly path: string;
  /** Its value. */
  readonly value: Quantity | number;
  /** What is changed: the value by one percent, or a count by one more. */
  readonly change: "one-percent" | "one-more";
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

/** Counts, which move by whole steps. Other whole numbers, such as the sides of a row, are choices and no measurements. */
const COUNTS = new Set(["rows", "beds", "count", "plants", "nozzlesPerRow"]);
/** Bare numbers that are measured or chosen from a scale. */
const NUMBERS = new Set(["percent", "fraction", "angleDegrees", "parts", "to"]);
const STEP = 1e-4;
/** Of longer lists in a plot or a calibration no entry moves much, and each takes a look at all. */
const MOST_ALIKE = 50;

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
  const start = amountsOf(job);
  const moved = leavesOf(plan).flatMap(({ path, keys, value, count }): InputSensitivity[] => {
    const at = (changed: number): number[] | undefined =>
      possible(() => amountsOf(replaced(job, keys, changed)));
    const number = typeof value === "number" ? value : value.value;
    const moves = count
      ? at(number + 1)?.map((after, i) => after / (start[i] as number) - 1)
      : derivative(at, number, start);
    if (moves === undefined) return [];
    const [mix, ...products] = moves.map(percent) as [number, ...number[]];
    return [
      {
        path,
        value,
        change: count ? "one-more" : "one-percent",
        mix,
        products: products.map((moves, i) => ({
          name: (plan.input.products[i] as Product).name,
          percent: moves,
        })),
      },
    ];
  });
  return moved.filter((one) => strongest(one) > 0).sort((a, b) => strongest(b) - strongest(a));
}

/** The whole mix and each product in it. */
function amountsOf(job: Job): number[] {
  const mix =
    "area" in job
      ? mixOnArea(mixInput(job.input, job.area, job.rate), "plot")
      : batchMix(job.input, volumeOfBatch(job.input.size));
  return [mix.carrier.total.value, ...amountsIn(mix).map(({ amount }) => amount.value)];
}

// A job next to a limit, such as bands as wide as their spacing, is refused on the other side of it.
function possible<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

function held(plan: AnyPlan): JobInput {
  const { input, carrier } = plan;
  return isRounded(plan) ? { ...input, reserve: { volume: carrier.reserve } } : input;
}

function isRounded({ input: { reserve }, toMark }: AnyPlan): boolean {
  return toMark !== undefined || (reserve !== undefined && "roundUpTo" in reserve);
}

type Keys = readonly (string | number)[];

/** The job with another number in one place. Only the part that the number stands in is checked and worked out again. */
function replaced(job: Job, [part, ...keys]: Keys, value: number): Job {
  const changed = (whole: unknown, rest: Keys): unknown => withNumber(whole, rest, value);
  const withInput = (input: Partial<JobInput>): Job => ({ ...job, input: { ...job.input, ...input } }) as Job;
  switch (part) {
    case "plot":
      return { ...(job as AreaJob), area: withPlot(job as AreaJob, keys, value) };
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

/** The areas of a job with another number in one plot. */
function withPlot({ input: { plot }, area }: AreaJob, keys: Keys, value: number): JobArea {
  const [i, rest] = Array.isArray(plot) ? [keys[0] as number, keys.slice(1)] : [0, keys];
  const before = area.plots[i] as PlotAreas;
  const after = areasOfPlot(checked(withNumber(plotsOf(plot)[i], rest, value), PLOT), "plot");
  // The difference alone is added: a job of a thousand plots isn't summed up again for each number.
  const together = <Q extends Quantity>(all: Q, one: Quantity, other: Quantity): Q => {
    return { ...all, value: all.value + inUnit(other, all.unit) - inUnit(one, all.unit) };
  };
  const { treated, ground, rowLength, plots } = area;
  return {
    treated: together(treated, before.treated, after.treated),
    // What all plots have together, each of them has.
    ...(ground && { ground: together(ground, before.ground as Quantity, after.ground as Quantity) }),
    ...(rowLength && {
      rowLength: together(rowLength, before.rowLength as Quantity, after.rowLength as Quantity),
    }),
    plots,
  };
}

// From both sides, or from the one that is possible.
function derivative(
  at: (changed: number) => number[] | undefined,
  number: number,
  start: readonly number[],
): number[] {
  const [up, down] = [at(number * (1 + STEP)), at(number * (1 - STEP))];
  const width = Math.log((up === undefined ? 1 : 1 + STEP) / (down === undefined ? 1 : 1 - STEP));
  const [after, before] = [up ?? start, down ?? start];
  return start.map((_, i) => Math.log((after[i] as number) / (before[i] as number)) / width / 100);
}

// The difference of two floats leaves noise near the 8th digit.
function percent(share: number): number {
  return Number((100 * share).toFixed(6)) + 0;
}

function strongest({ mix, products }: InputSensitivity): number {
  return Math.max(Math.abs(mix), ...products.map((product) => Math.abs(product.percent)));
}

interface Leaf {
  readonly path: string;
  readonly keys: Keys;
  readonly value: Quantity | number;
  readonly count: boolean;
}

/** The measured inputs and counts of a job. */
function leavesOf(plan: AnyPlan): Leaf[] {
  const { input } = plan;
  const { sprayer, reserve, products } = input;
  const size = "size" in input ? { size: input.size } : { plot: input.plot, calibration: input.calibration };
  return leaves({ ...size, sprayer, ...(!isRounded(plan) && { reserve }), products }, "", []);
}

function leaves(node: unknown, path: string, keys: Keys): Leaf[] {
  if (typeof node !== "object" || node === null) return [];
  if (isQuantity(node)) {
    const { value, unit } = node;
    const count = dimensionOf(unit) === "count";
    return value === 0 ? [] : [{ path, keys: [...keys, "value"], value: { value, unit }, count }];
  }
  if (Array.isArray(node)) {
    // The plots themselves are a list too, and each of them is checked and worked out alone.
    if (node.length > MOST_ALIKE && path !== "plot") return [];
    return node.flatMap((one, i) => leaves(one, `${path}[${i}]`, [...keys, i]));
  }
  return Object.entries(node).flatMap(([key, value]): Leaf[] => {
    const place = joinPath(path, key);
    if (typeof value !== "number") return leaves(value, place, [...keys, key]);
    const count = COUNTS.has(key);
    if (!count && !NUMBERS.has(key)) return [];
    // All of the ground cannot become more.
    return value === 0 || (key === "fraction" && value === 1)
      ? []
      : [{ path: place, keys: [...keys, key], value, count }];
  });
}

// Nothing else in a checked job has a value.
function isQuantity(node: object): node is Quantity {
  return "value" in node;
}

function withNumber(node: unknown, [key, ...rest]: Keys, value: number): unknown {
  if (key === undefined) return value;
  if (Array.isArray(node)) return node.map((one, i) => (i === key ? withNumber(one, rest, value) : one));
  const object = node as Readonly<Record<string, unknown>>;
  return { ...object, [key]: withNumber(object[key], rest, value) };
}
