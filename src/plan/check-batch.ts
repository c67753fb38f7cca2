import { joinPath } from "../errors.js";
import type { BatchSize } from "../tank-mix/batch-volume.js";
import { ratesOf } from "../tank-mix/label-limits.js";
import { readRate, type SingleRate, sizesFor } from "../tank-mix/label-rate.js";
import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import { orderOf } from "../units/quantity.js";
import { resolveUnit } from "../units/resolve.js";
import { systemOf } from "../units/systems.js";
import type { CountUnit, Volume, VolumePerCount, VolumeUnit } from "../units/types.js";
import type { BatchInput } from "./batch-input.js";
import { mixWarnings } from "./check-mix.js";
import { dosesWarnings, singlesOf } from "./check-product.js";
import type { KnownMix } from "./mix.js";
import type { CoversBatch, LoadProduct, MixOf, ProductTotal } from "./result.js";
import { THRESHOLDS } from "./thresholds.js";
import { type Warning, warning } from "./warnings.js";

/** What a rate per something else than the job's size is refused with: what would fit. */
const FITS: Readonly<Record<BatchSize["kind"], readonly [key: string, template: string]>> = {
  volume: [
    "rate-for-volume",
    "{given} is {is.dimension}, and this job is a volume of mix. Enter a rate per volume of mix, a percentage or a ratio, or the treated area too.",
  ],
  count: [
    "rate-for-count",
    "{given} is {is.dimension}, and this job is a number of plants. Enter a rate per plant or per volume of mix, or the treated area too.",
  ],
  "row-length": [
    "rate-for-row",
    "{given} is {is.dimension}, and this job is a length of row. Enter a rate per length of row or per volume of mix, or the treated area too.",
  ],
};

/** Notes the rates and limits that don't fit what sizes the job. */
export function ratesFitBatch({ size, area, products }: BatchInput, check: Check): void {
  const has: Readonly<Record<string, boolean>> = {
    carrierRate: area !== undefined,
    carrierPerCount: size.kind === "count",
    carrierPerLength: size.kind === "row-length",
  };
  const fits = (rate: SingleRate): boolean =>
    sizesFor(rate, { carrierPerLength: true }).every((name) => has[name] === true);
  products.forEach((product, i) => {
    const at = `products[${i}]`;
    for (const [place, rate] of ratesOf(product)) {
      // What was used is held against the season's limit only.
      if (place === "soFar.rate" && product.label?.seasonMax === undefined) continue;
      for (const [end, single] of rate === undefined ? [] : singlesOf(rate))
        if (!fits(single)) refuseRate(single, size, joinPath(joinPath(at, place), end), check);
    }
    for (const limit of ["leastCarrier", "mostCarrier"] as const)
      if (product.label?.[limit] !== undefined && area === undefined)
        check.fault(
          "conflict",
          "limit-needs-area",
          `${at}.label.${limit}`,
          "This limit is per area, and this job has no area. Enter the treated area, or leave the limit out.",
        );
  });
}

function refuseRate(rate: SingleRate, size: BatchSize, at: string, check: Check): void {
  const read = readRate(rate);
  if (read.kind === "parts") return;
  const { quantity, per } = read;
  if (per === "ground") {
    check.fault(
      "conflict",
      "rate-needs-plot",
      at,
      "This rate is per area of ground, and this job has no plot. Enter a rate that fits, or plan the plot.",
    );
    return;
  }
  const [key, template] = FITS[size.kind];
  check.fault("conflict", key, at, template, { given: quantity, is: dimensionOf(quantity.unit) });
}

/** What a careful colleague would question in a job by volume, count or row. Trusts its input. */
export function batchWarnings(
  input: BatchInput,
  { carrier, loads, totals }: MixOf<LoadProduct, CoversBatch>,
  sizes: KnownMix["sizes"],
): Warning[] {
  const { lastLoadPercent } = THRESHOLDS;
  return [
    ...eachWarnings(input, sizes.carrierPerCount),
    ...input.products.flatMap((product, i) => {
      const doses = [{ sizes, rate: product.rate }];
      const { strength } = totals.products[i] as ProductTotal;
      return dosesWarnings(product, i, doses, strength).map(inBatch);
    }),
    ...manyLoads(loads.length, carrier.total, input),
    ...mixWarnings(input, carrier, loads, { lastLoadPercent: lastLoadPercent.value }),
  ];
}

// A large tree sprayed to run-off takes less: common practice, no source.
const MOST_EACH = { us: { value: 30, unit: "gal" }, metric: { value: 115, unit: "L" } } as const;

/** A volume for each that only a slip in its unit, or all of them together, would come to. */
function eachWarnings({ size }: BatchInput, each: VolumePerCount | undefined): Warning[] {
  if (each === undefined || size.kind !== "count") return [];
  const { over, per } = resolveUnit(each.unit, "unit");
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
const IN_BATCH: Readonly<Record<string, readonly [key: string, template: string]>> = {
  "carrier-under-least": [
    "carrier-under-least-batch",
    "{product}: this is {carrierRate} of mix on the area entered, below the label minimum of {least}. Use more water with the same product.",
  ],
  "carrier-near-least": [
    "carrier-near-least-batch",
    "{product}: this is {carrierRate} of mix on the area entered, at or near the label minimum of {least}. Check the area and the volume.",
  ],
  "carrier-over-most": [
    "carrier-over-most-batch",
    "{product}: this is {carrierRate} of mix on the area entered, over the label maximum of {most}. Use less water with the same product.",
  ],
};

function inBatch(found: Warning): Warning {
  const [key, template] = IN_BATCH[found.code] ?? [];
  if (key === undefined || template === undefined) return found;
  return warning(found.code, found.severity, "size", template, found.figures, key);
}
