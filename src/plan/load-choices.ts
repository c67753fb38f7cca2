import type { Carrier } from "../tank-mix/carrier.js";
import type { FillList } from "../tank-mix/loads.js";
import { agreed, checked } from "../units/check.js";
import { count, type ObjectField, object, optional } from "../units/fields.js";
import { splitsOfMix } from "./batch.js";
import { JOB_INPUT, type JobInput } from "./batch-input.js";
import { type ChoiceLimits, costOf, type LoadCost, ONE } from "./easiest.js";
import { marksAreGiven, type RowsPerLoad } from "./input.js";
import { planOfJob, splitsOnPlot } from "./plan.js";
import type { AnyPlan } from "./result.js";

/** How {@link loadChoices} looks for ways to split a job. */
export interface LoadChoiceOptions {
  /** How many ways are returned, 1 to 20. 3 unless given. */
  readonly most?: number | undefined;
  /** How many loads more than necessary a way may take, 0 to 10. 1 unless given. */
  readonly moreLoads?: number | undefined;
}

const OPTIONS: ObjectField<LoadChoiceOptions> = /* @__PURE__ */ object<LoadChoiceOptions>({
  most: optional(count("How many ways are returned, 1 to 20. 3 unless given.", 1, 20)),
  moreLoads: optional(
    count("How many loads more than necessary a way may take, 0 to 10. 1 unless given.", 0, 10),
  ),
});

/** A way to split a job into loads that end on marks, and what it costs the person who mixes it. */
export interface LoadChoice {
  /** What to give as the `split` of the job for these loads. */
  readonly split: FillList | RowsPerLoad;
  /** The mix for these loads: what they go up by is part of the reserve. */
  readonly carrier: Carrier;
  /** The loads, each with its mark and with each dose as it is measured. */
  readonly loads: AnyPlan["loads"];
  /** The mix left over when the job is done, reserve and lines, and what the reserve could still treat. */
  readonly leftover: AnyPlan["leftover"];
  /** What the doses cost. */
  readonly cost: LoadCost;
}

/**
 * Finds the easiest ways to split a job into loads that end on the tank's marks, so that the doses fall on what a person can
 * measure.
 *
 * It looks at every way with no more than two different fills: equal loads, full loads and a rest, and any other two fills. Where
 * the plot has rows of one length, it also looks at whole rows to a load. Of the ways with the same two fills it keeps the best.
 * No dose of any of them is over the label. They are ranked by the fewest doses that can't be measured, then the fewest different
 * tools, the fewest measures in all loads, the smallest left-over, and the fewest loads.
 *
 * No way takes more mix than full tanks and a rest, or equal loads, take on these marks. `reserve: { percent: 0, upTo: 10 }` sets
 * other limits: the extra mix may then be anything from 0 to 10 percent. `split: "easiest"` in the job takes the first way, with
 * one load more than necessary at most. The `split` of the job itself isn't looked at. The order of what matters is common
 * practice, no source.
 *
 * @param input - the job, whose sprayer has `marks`
 * @param options - see {@link LoadChoiceOptions}
 * @returns the ways, the easiest first; at least one
 * @throws SprayMathError `missing` where the tank's marks aren't given, `conflict` where the marks allow nothing within the limits
 *   of the reserve, or what {@link planApplication} throws
 *
 * @example
 * ```ts
 * import { loadChoices } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const [easiest] = loadChoices({
 *   plot: { kind: "rectangle", length: qty(121, "ft"), width: qty(90, "ft") },
 *   calibration: { kind: "known", rate: qty(26, "gal/ac") },
 *   sprayer: { tank: qty(4, "gal"), marks: qty(0.25, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(1, "qt/ac") }],
 *   tools: "us-spoons",
 * });
 * console.log(easiest?.loads.map(({ mark }) => mark?.value)); // [ 3.25, 3.25 ]
 * console.log(easiest?.cost); // { notMeasurable: 0, tools: [ 'tablespoon' ], measures: 16 }
 * ```
 */
export function loadChoices(input: JobInput, options: LoadChoiceOptions = {}): LoadChoice[] {
  const job = checked(input, JOB_INPUT);
  const { most = 3, moreLoads = ONE.moreLoads } = checked(options, OPTIONS, "options");
  agreed(job, (check) => marksAreGiven(job.sprayer, check));
  return choicesOf(job, { most, moreLoads });
}

/** The easiest ways to split a job whose tank has marks. Trusts its input. */
function choicesOf(job: JobInput, limits: ChoiceLimits): LoadChoice[] {
  // Whatever its split, a plan has the areas and the rate that the ways to split it go by.
  const planned = planOfJob({ ...job, split: "full-then-part" } as JobInput);
  const splits = "area" in planned ? splitsOnPlot(planned, limits) : splitsOfMix(planned, limits);
  return splits.map((way): LoadChoice => {
    const split = "fills" in way ? way : { rowsPerLoad: way.perLoad };
    const { carrier, loads, leftover } = planOfJob({ ...job, split } as JobInput);
    const doses = loads.flatMap(({ products }) => products.map(({ measured }) => measured));
    return { split, carrier, loads, leftover, cost: costOf(doses) };
  });
}
