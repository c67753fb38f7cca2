import { joinPath } from "../errors.js";
import { readRate } from "../tank-mix/label-rate.js";
import type { Check } from "../units/check.js";
import { dimensionOf } from "../units/dimensions.js";
import type { JobArea } from "./plot-areas.js";
import { comparedRates, productFitsPlot, type RatesOfProduct } from "./rates-fit.js";
import type { GranulesRate, SpreadingInput, SpreadingSize } from "./spreading-input.js";

/** Notes the rates, the limits and the test that don't fit a job of granules. */
export function spreadingFits(
  input: SpreadingInput,
  rate: GranulesRate,
  area: JobArea | undefined,
  check: Check,
): void {
  const { label, soFar } = input.product;
  const rates: RatesOfProduct = { rate, label, soFar };
  if ("size" in input) ratesFitSize(rates, input.size, check);
  else productFitsPlot(rates, "product", area as JobArea, check);
  testFits(input, rate, check);
}

/** What a rate per something else than the job's size is refused with: what would fit. */
const FITS = {
  count: {
    kind: "count",
    key: "rate-for-count-spreading",
    template:
      "{given} is {is.dimension}, and this job is a number of plants. Enter a rate per plant, or plan the plot instead.",
  },
  "row-length": {
    kind: "length",
    key: "rate-for-row-spreading",
    template:
      "{given} is {is.dimension}, and this job is a length of row. Enter a rate per length of row, or plan the plot instead.",
  },
} as const;

function ratesFitSize(rates: RatesOfProduct, size: SpreadingSize, check: Check): void {
  const { kind, key, template } = FITS[size.kind];
  for (const [place, rate] of comparedRates(rates)) {
    const read = readRate(rate);
    if (read.kind === kind || read.kind === "parts") continue;
    const { quantity: given } = read;
    check.fault("conflict", key, joinPath("product", place), template, {
      given,
      is: dimensionOf(given.unit),
    });
  }
}

function testFits({ test }: SpreadingInput, rate: GranulesRate, check: Check): void {
  if (test === undefined) return;
  const dimension = dimensionOf(rate.unit);
  const isAlongRow = "rowLength" in test;
  if (dimension === "massPerCount")
    check.fault(
      "conflict",
      "test-for-plants",
      "test",
      "The rate is for each plant, and a spreader's test is per area or row. Leave the test out, or weigh out each plant's share.",
    );
  else if (isAlongRow && dimension === "massRate")
    check.fault(
      "conflict",
      "test-along-row",
      "test",
      "The rate is per area, and the test is along a row. Test over a strip or an area, or enter a rate per length of row.",
    );
  else if (!isAlongRow && dimension === "massPerLength")
    check.fault(
      "conflict",
      "test-over-area",
      "test",
      "The rate is per length of row, and the test is over an area. Test along a row, or enter a rate per area.",
    );
}
