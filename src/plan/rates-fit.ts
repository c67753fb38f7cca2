import { joinPath } from "../errors.js";
import type { BatchSize } from "../tank-mix/batch-volume.js";
import { ratesOf } from "../tank-mix/label-limits.js";
import { isRange, type LabelRate, readRate, type SingleRate, sizesFor } from "../tank-mix/label-rate.js";
import type { Check } from "../units/check.js";
import { dimensionOf } from "../units/dimensions.js";
import type { BatchInput } from "./batch-input.js";
import type { Product } from "./input.js";
import type { JobArea } from "./plot-areas.js";

/** The rates of a product: its own, its label's and its season's. */
export type RatesOfProduct = Parameters<typeof ratesOf>[0];

/** Notes the rates that ask for rows or for ground where the plot has none. */
export function ratesFitPlot(products: readonly Product[], area: JobArea, check: Check): void {
  products.forEach((product, i) => {
    productFitsPlot(product, `products[${i}]`, area, check);
  });
}

/** Notes the rates of one product that ask for rows or for ground where the plot has none; `at` is its place. */
export function productFitsPlot(product: RatesOfProduct, at: string, area: JobArea, check: Check): void {
  for (const [place, single] of comparedRates(product)) {
    rateIsNotCounted(single, joinPath(at, place), check);
    for (const size of sizesFor(single))
      if ((size === "ground" || size === "rowLength") && area[size] === undefined)
        check.fault(
          "conflict",
          size === "ground" ? "rate-needs-ground" : "rate-needs-rows",
          joinPath(at, place),
          size === "ground"
            ? "This rate is per area of ground, and the ground of this plot isn't known. Enter the row spacing or the ground area."
            : "This rate is per length of row, and this plot isn't in rows. Choose a plot in rows, or a rate per area.",
        );
  }
}

/** Every single rate of a product that the job is held against, with its place. */
export function comparedRates(product: RatesOfProduct): (readonly [place: string, rate: SingleRate])[] {
  return ratesOf(product).flatMap(([place, rate]) => {
    // What was used is held against the season's limit only.
    const isIdle = place === "soFar.rate" && product.label?.seasonMax === undefined;
    if (isIdle) return [];
    return singlesOf(rate).map(([end, single]) => [joinPath(place, end), single] as const);
  });
}

/** Whether a rate of a job's products, or of their labels' limits, is per area of ground. */
export function usesGround(products: readonly Product[]): boolean {
  return products
    .flatMap((product) => ratesOf(product))
    .some(([, rate]) => singlesOf(rate).some(([, one]) => sizesFor(one).includes("ground")));
}

/** Notes a rate per plant in a job that is for an area. */
export function rateIsNotCounted(rate: SingleRate, at: string, check: Check): boolean {
  const read = readRate(rate);
  if (read.kind !== "count") return true;
  check.fault(
    "conflict",
    "rate-needs-count",
    at,
    "{given} is a rate per plant, and this job is for an area. Enter a rate per area, or plan the job by the number of plants.",
    { given: read.quantity },
  );
  return false;
}

/** The single rates of a rate, with their places in it. */
export function singlesOf(rate: LabelRate): readonly (readonly [end: string, rate: SingleRate])[] {
  return isRange(rate)
    ? [
        ["low", rate.low],
        ["high", rate.high],
        ["chosen", rate.chosen],
      ]
    : [["", rate]];
}

interface Sentence {
  readonly key: string;
  readonly template: string;
}

/** What a rate per something else than the job's size is refused with: what would fit. */
const FITS: Readonly<Record<BatchSize["kind"], Sentence>> = {
  volume: {
    key: "rate-for-volume",
    template:
      "{given} is {is.dimension}, and this job is a volume of mix. Enter a rate per volume of mix, a percentage or a ratio, or plan it by area.",
  },
  count: {
    key: "rate-for-count",
    template:
      "{given} is {is.dimension}, and this job is a number of plants. Enter a rate per plant or per volume of mix, or plan it by area.",
  },
  "row-length": {
    key: "rate-for-row",
    template:
      "{given} is {is.dimension}, and this job is a length of row. Enter a rate per length of row or per volume of mix, or plan it by area.",
  },
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
    for (const [place, single] of comparedRates(product)) {
      const read = readRate(single);
      if (read.kind !== "parts" && !fits(single)) refuseRate(read, size, joinPath(at, place), check);
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

/** A rate as it was read that isn't parts of a mix: those fit any size. */
type PerSomething = Exclude<ReturnType<typeof readRate>, { readonly kind: "parts" }>;

function refuseRate({ quantity, per }: PerSomething, size: BatchSize, at: string, check: Check): void {
  if (per === "ground") {
    check.fault(
      "conflict",
      "rate-needs-plot",
      at,
      "This rate is per area of ground, and this job has no plot. Enter a rate that fits, or plan the plot.",
    );
    return;
  }
  const { key, template } = FITS[size.kind];
  check.fault("conflict", key, at, template, { given: quantity, is: dimensionOf(quantity.unit) });
}
