import { type BatchSize, type BatchVolume, volumeOfBatch } from "../tank-mix/batch-volume.js";
import { carrierOfVolume } from "../tank-mix/carrier.js";
import { agreed } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ratioOf } from "../units/quantity.js";
import { resultIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, TreatedArea, Volume, VolumeRate } from "../units/types.js";
import type { BatchInput, BatchSplit } from "./batch-input.js";
import { CAUTIONS } from "./cautions.js";
import { batchWarnings } from "./check-batch.js";
import { mixCost } from "./cost.js";
import { measuredLoads } from "./dose.js";
import { type ChoiceLimits, type ChosenSplits, easiestSplits, ONE } from "./easiest.js";
import { DEFAULT_SPLIT } from "./input.js";
import { type KnownMix, type MixSplit, mixInLoads } from "./mix.js";
import { ratesFitBatch } from "./rates-fit.js";
import { markedIfRefused } from "./refused.js";
import type { BatchPlan, CoversBatch } from "./result.js";

/** The plan of a job by volume, count or row. Trusts its input. */
export function planOfBatch(input: BatchInput): BatchPlan {
  agreed(input, (check) => ratesFitBatch(input, check));
  const sized = volumeOfBatch(input.size, "size");
  const { volume: _, ...each } = sized;
  const asked = batchMix(input, sized);
  const job = input.split === "easiest" ? { ...asked, split: splitsOfBatch(input, asked, ONE)[0] } : asked;
  const { carrierRate: rate } = job.sizes;
  const covers = coversOf(input, sized);
  const mix = mixInLoads(job, covers, { size: "size", split: "split" });
  const loads = measuredLoads(mix.loads, input, (volume) => covers(volume).area);
  const { carrier, mixingOrder, totals, toMark, leftover } = mix;
  const cost = mixCost(input, { loads, totals });
  const warnings = batchWarnings(input, { ...mix, loads }, job.sizes);
  return {
    version: 1,
    ...each,
    ...(rate && { rate }),
    carrier,
    loads: markedIfRefused(loads, warnings),
    ...(mixingOrder && { mixingOrder }),
    totals,
    ...(toMark && { toMark }),
    leftover,
    ...(cost && { cost }),
    warnings,
    cautions: CAUTIONS,
    input: { ...input, split: input.split ?? DEFAULT_SPLIT },
  };
}

/** A job's mix, from the volume that it takes. Trusts its input. */
export function batchMix(
  input: BatchInput,
  { volume, carrierPerCount, carrierPerLength }: BatchVolume,
): KnownMix {
  const { size, area, sprayer, reserve, products, split = DEFAULT_SPLIT, mixing } = input;
  const carrier = carrierOfVolume(volume, { lineVolume: sprayer.lineVolume, reserve }, "size");
  const carrierRate = area && rateOn(area, volume);
  return {
    carrier,
    sizes: { carrierRate, carrierPerCount, carrierPerLength },
    sprayer,
    products,
    split: splitOf(split, size),
    mixing,
  };
}

function splitOf(split: BatchSplit, size: BatchSize): MixSplit {
  // The easiest way is found from the mix, whatever its loads.
  if (split === "easiest") return DEFAULT_SPLIT;
  if (split !== "whole-plants" || size.kind !== "count") return split as MixSplit;
  return { pieces: inUnit(size.count, "plant") };
}

/** The easiest ways to split a mix by volume, count or row. Trusts its input. */
function splitsOfBatch(
  { products, tools, reserve }: BatchInput,
  mix: KnownMix,
  limits: ChoiceLimits,
): ChosenSplits {
  return easiestSplits({ mix, products, tools, reserve }, limits, { size: "size", split: "split" });
}

/** The mix per treated area. */
function rateOn(area: TreatedArea, volume: Volume): VolumeRate {
  const { volumeRate } = unitsLike(volume.unit);
  const direct = { value: volume.value / area.value, unit: `${volume.unit}/${area.unit}` } as VolumeRate;
  return resultIn(direct, volumeRate, "area");
}

/** The easiest ways to split the mix of a plan. Trusts its input. */
export function splitsOfMix({ input }: BatchPlan, limits: ChoiceLimits): ChosenSplits {
  return splitsOfBatch(input, batchMix(input, volumeOfBatch(input.size)), limits);
}

/** What a volume of the mix is enough for: its part of the plants, the row and the area. Trusts its input. */
export function coversOf({ size, area }: BatchInput, sized: BatchVolume): (volume: Volume) => CoversBatch {
  return (volume) => {
    const share = ratioOf(volume, sized.volume);
    const part = <Q extends Quantity>(whole: Q): Q => ({ ...whole, value: whole.value * share });
    return {
      ...(size.kind === "count" && { count: part(size.count) }),
      ...(size.kind === "row-length" && { rowLength: part(size.length) }),
      ...(area && { area: part(area) }),
    };
  };
}
