import { inUnit } from "../units/convert.js";
import { orderOf } from "../units/quantity.js";
import { resolveUnit } from "../units/resolve.js";
import { systemOf } from "../units/systems.js";
import type { CountUnit, Volume, VolumePerCount, VolumeUnit } from "../units/types.js";
import type { BatchInput } from "./batch-input.js";
import { mixWarnings } from "./check-mix.js";
import { dosesWarnings } from "./check-product.js";
import type { KnownMix } from "./mix.js";
import type { CoversBatch, LoadProduct, MixOf, ProductTotal } from "./result.js";
import { USUAL } from "./thresholds.js";
import { type Warning, warning } from "./warnings.js";

interface Sentence {
  readonly key: string;
  readonly template: string;
}

/** What a careful colleague would question in a job by volume, count or row. Trusts its input. */
export function batchWarnings(
  input: BatchInput,
  { carrier, loads, totals, toMark }: MixOf<LoadProduct, CoversBatch>,
  sizes: KnownMix["sizes"],
): Warning[] {
  return [
    ...eachWarnings(input, sizes.carrierPerCount),
    ...input.products.flatMap((product, i) => {
      const doses = [{ sizes, rate: product.rate }];
      const { strength } = totals.products[i] as ProductTotal;
      return dosesWarnings(product, i, doses, strength).map(inBatch);
    }),
    ...manyLoads(loads.length, carrier.total, input),
    ...mixWarnings(input, { carrier, loads, toMark }, USUAL),
  ];
}

// A large tree sprayed to run-off takes less: common practice, no source.
const MOST_EACH = { us: { value: 30, unit: "gal" }, metric: { value: 115, unit: "L" } } as const;

/** A volume for each that only a slip in its unit, or all of them together, would come to. */
function eachWarnings({ size }: BatchInput, each: VolumePerCount | undefined): Warning[] {
  if (each === undefined || size.kind !== "count") return [];
  const { over, per } = resolveUnit(each.unit);
  const one = inUnit({ value: 1, unit: "plant" }, per as CountUnit);
  const given = { value: each.value * one, unit: over as VolumeUnit };
  const limit = MOST_EACH[systemOf(given.unit) === "metric" ? "metric" : "us"];
  if (orderOf(given, limit) !== 1) return [];
  return [
    warning(
      "each-implausible",
      "warning",
      "size.each",
      "{given} for each is more than a large tree takes ({limit}). Check the number and its unit: it is what one gets, not all of them.",
      { given, limit },
    ),
  ];
}

// A person who fills so often has a larger sprayer, or a unit is wrong: common practice, no source.
const MANY_LOADS = 50;

function manyLoads(loads: number, total: Volume, { sprayer: { tank } }: BatchInput): Warning[] {
  if (loads <= MANY_LOADS) return [];
  return [
    warning(
      "loads-many",
      "warning",
      "size",
      "This job takes {total} of mix, which is {loads} loads of a {tank} tank. Check the size of the job, and its units.",
      { total, loads, tank },
    ),
  ];
}

/** Findings of the carrier, as they are said where nothing was calibrated. */
const IN_BATCH: Readonly<Record<string, Sentence>> = {
  "carrier-under-least": {
    key: "carrier-under-least-batch",
    template:
      "{product}: this is {carrierRate} of mix on the area entered, below the label minimum of {least}. Use more water with the same product.",
  },
  "carrier-near-least": {
    key: "carrier-near-least-batch",
    template:
      "{product}: this is {carrierRate} of mix on the area entered, at or near the label minimum of {least}. Check the area and the volume.",
  },
  "carrier-over-most": {
    key: "carrier-over-most-batch",
    template:
      "{product}: this is {carrierRate} of mix on the area entered, over the label maximum of {most}. Use less water with the same product.",
  },
};

function inBatch(found: Warning): Warning {
  const sentence = IN_BATCH[found.code];
  if (sentence === undefined) return found;
  const { key, template } = sentence;
  return warning(found.code, found.severity, "size", template, found.figures, key);
}
