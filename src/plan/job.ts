import { SprayMathError } from "../errors.js";
import type { Carrier, CarrierInput } from "../tank-mix/carrier.js";
import type { LabelInput } from "../tank-mix/label-limits.js";
import type { LoadSplit, LoadsInput } from "../tank-mix/loads.js";
import type { ProductInput } from "../tank-mix/product.js";
import { checkedChoice } from "../units/guard.js";
import { compare, sum } from "../units/quantity.js";
import type { TreatedArea, VolumeRate } from "../units/types.js";
import type { PlanInput, Product, Split } from "./input.js";
import { equalRows, plotsOf } from "./plot.js";
import type { Plan } from "./result.js";

// What a job asks of each function that it is made of. The plan computes with these, and its working shows them, so the
// two cannot differ.

/** What a product's rate asks of the plot and the plot does not have, such as ground area: an error shows it at the rate. */
export const PRODUCT_PLACES: Readonly<Record<string, string>> = {
  area: "rate",
  ground: "rate",
  rowLength: "rate",
  carrier: "rate",
  carrierRate: "rate",
};

/** How a mix is parted where nothing is said. */
export const DEFAULT_SPLIT: Split = "full-then-part";

/** What a job asks of `carrierFor`. */
export function carrierInput(
  { sprayer: { lineVolume }, reserve }: PlanInput,
  rate: VolumeRate,
  area: TreatedArea,
): CarrierInput {
  return {
    rate,
    area,
    ...(lineVolume !== undefined && { lineVolume }),
    ...(reserve !== undefined && { reserve }),
  };
}

/** What a job asks of `splitLoads`. */
export function loadsInput(input: PlanInput, carrier: Carrier, area: Plan["area"]): LoadsInput {
  const { tank, workingFill, leastLoad } = input.sprayer;
  return {
    total: carrier.total,
    tank,
    split: loadSplit(input, carrier, area),
    ...(workingFill !== undefined && { workingFill }),
    ...(leastLoad !== undefined && { leastLoad }),
  };
}

function loadSplit(
  { split = DEFAULT_SPLIT, plot }: PlanInput,
  carrier: Carrier,
  area: Plan["area"],
): LoadSplit {
  checkedChoice(split, ["full-then-part", "equal", "whole-rows", "whole-plots"], "split");
  if (split === "full-then-part" || split === "equal") return split;
  const extra = sum([carrier.reserve, carrier.lines]);
  const plots = plotsOf(plot);
  const rows =
    split === "whole-rows" && plots.length === 1 ? equalRows(plots[0] as (typeof plots)[number]) : undefined;
  if (rows !== undefined) return { pieces: rows, extra };
  const [first, ...others] = area.plots;
  if (
    split === "whole-plots" &&
    first &&
    others.every(({ treated }) => compare(treated, first.treated) === 0)
  ) {
    return { pieces: plots.length, extra };
  }
  throw new SprayMathError(
    "conflict",
    "split",
    split === "whole-rows"
      ? "Given whole rows to a load; wanted one plot of rows that are all of one length. Part the mix into equal loads instead."
      : "Given whole plots to a load; wanted plots of one treated area. Part the mix into equal loads instead.",
  );
}

/** What a job asks of `productAmount`. */
export function productInput(
  { rate, form }: Product,
  job: Pick<Plan, "rate" | "carrier" | "area">,
): ProductInput {
  return { rate, form, carrier: job.carrier.total, carrierRate: job.rate, ...plotSizes(job.area) };
}

/** What a job asks of `checkLabel`. */
export function labelInput(
  { rate, form, label = {}, soFar }: Product,
  job: Pick<Plan, "rate" | "area">,
): LabelInput {
  return {
    rate,
    form,
    label,
    carrierRate: job.rate,
    ...plotSizes(job.area),
    ...(soFar !== undefined && { soFar }),
  };
}

function plotSizes({
  treated,
  ground,
  rowLength,
}: Plan["area"]): Pick<LabelInput, "area" | "ground" | "rowLength"> {
  return { area: treated, ...(ground && { ground }), ...(rowLength && { rowLength }) };
}
