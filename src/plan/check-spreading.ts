import type { SpreaderCheck } from "../output-rate/spreader.js";
import type { HopperLoads } from "../tank-mix/granules.js";
import type { NutrientsBrought } from "../tank-mix/nutrients.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { orderOf } from "../units/quantity.js";
import { systemOf } from "../units/systems.js";
import { atMost } from "../units/three-figures.js";
import type { Mass, Quantity } from "../units/types.js";
import { labelWarnings, type PlaceDose } from "./check-product.js";
import { type PlotName, plotNames } from "./plot.js";
import type { JobArea } from "./plot-areas.js";
import type { GranulesRate, SpreadingInput, SpreadingProduct } from "./spreading-input.js";
import { type Warning, warning } from "./warnings.js";

/** What a job of granules comes to, as its warnings need it. */
interface Spread {
  readonly rate: GranulesRate;
  readonly nutrients?: NutrientsBrought | undefined;
  readonly total: Mass;
  readonly hopper: HopperLoads;
  readonly area?: JobArea | undefined;
  readonly check?: SpreaderCheck | undefined;
}

/** What a careful colleague would question in a job of granules. Trusts its input. */
export function spreadingWarnings(input: SpreadingInput, spread: Spread): Warning[] {
  return [
    ...rateWarnings(input.product.name, spread),
    ...spreadLabelWarnings(
      input.product,
      placesSpread(input, spread.area, () => spread.rate),
    ),
    ...testWarnings(input, spread),
    ...manyFills(input, spread),
  ];
}

type Dimension = "massRate" | "massPerLength" | "massPerCount";
type InSystems = Readonly<Record<"us" | "metric", Quantity>>;

// Lime goes on at 50 lb/1000 ft² and more, and hardly anything else comes near: from memory; twice that is common practice, no source.
const MOST_RATES: Readonly<Record<Dimension, InSystems>> = {
  massRate: { us: { value: 100, unit: "lb/1000ft2" }, metric: { value: 5000, unit: "kg/ha" } },
  massPerLength: { us: { value: 100, unit: "lb/1000ft" }, metric: { value: 15, unit: "kg/100m" } },
  massPerCount: { us: { value: 30, unit: "lb/tree" }, metric: { value: 15, unit: "kg/tree" } },
};

// More nitrogen than heavy feeders get in a season: common practice, no source.
const MOST_NITROGEN: InSystems = {
  us: { value: 300, unit: "lb/ac" },
  metric: { value: 350, unit: "kg/ha" },
};

function limitFor({ unit }: Quantity, limits: InSystems): Quantity {
  return limits[systemOf(unit) === "metric" ? "metric" : "us"];
}

/** A rate that only a slip in its unit, or of product for nutrient, would come to. */
function rateWarnings(product: string, { rate, nutrients }: Spread): Warning[] {
  const most = limitFor(rate, MOST_RATES[dimensionOf(rate.unit) as Dimension]);
  const nitrogen = nutrients?.N;
  const mostNitrogen = nitrogen && limitFor(nitrogen, MOST_NITROGEN);
  if (
    nitrogen &&
    mostNitrogen &&
    dimensionOf(rate.unit) === "massRate" &&
    orderOf(nitrogen, mostNitrogen) === 1
  )
    return [
      warning(
        "nutrient-implausible",
        "warning",
        "product.rate.amount",
        "{product}: {given} of nitrogen is more than crops get in a season ({limit}). Check whether this is a rate of product.",
        { product, given: nitrogen, limit: mostNitrogen },
      ),
    ];
  if (orderOf(rate, most) !== 1) return [];
  return [
    warning(
      "rate-implausible",
      "warning",
      "product.rate",
      "{product}: {given} of product is more than is usual ({limit}). Check the number and its unit.",
      { product, given: rate, limit: most },
      "rate-high-spreading",
    ),
  ];
}

// Limits are held against a rate by the mix that brings it. Granules have none: one unit of it stands in, and cancels out.
const STAND_IN = {
  massRate: { carrierRate: { value: 1, unit: "L/ha" } },
  massPerLength: { carrierPerLength: { value: 1, unit: "L/m" } },
  massPerCount: { carrierPerCount: { value: 1, unit: "L/plant" } },
} as const;

/** The places that a label's limits are held against, each plot by itself, with the rate that each gets. */
export function placesSpread(
  input: SpreadingInput,
  area: JobArea | undefined,
  rateOn: (place: number) => GranulesRate,
): PlaceDose[] {
  if ("size" in input || area === undefined) {
    const rate = rateOn(0);
    return [{ sizes: STAND_IN[dimensionOf(rate.unit) as Dimension], rate }];
  }
  const { carrierRate } = STAND_IN.massRate;
  const places = area.plots.length > 1 ? area.plots : [area];
  const names = plotNames(input.plot);
  return places.map(({ treated, ground, rowLength }, i) => ({
    name: names[i] as PlotName,
    sizes: { carrierRate, area: treated, ground, rowLength },
    rate: rateOn(i),
  }));
}

/** What a product's label has against these places, as it is said of a spreader. */
export function spreadLabelWarnings(
  { name, label, soFar }: SpreadingProduct,
  places: readonly PlaceDose[],
): Warning[] {
  return labelWarnings({ name, form: "dry", label, soFar }, "product", places).map(ofSpreader);
}

/** A finding of the label, as it is said of a spreader. */
function ofSpreader(found: Warning): Warning {
  if (found.code !== "rate-near-max") return found;
  return warning(
    found.code,
    found.severity,
    found.path,
    "{product}: The rate of {rate} is at or near the label maximum of {max}. A gate a notch too wide would put you over.",
    found.figures,
    "rate-near-max-spreading",
  );
}

// As near as a test comes to what it was set for: the same 10% as a spreader may be off.
const ALIKE_PERCENT = 10;

/** What a test of the spreader found, and whether it was set for the nutrient. */
function testWarnings({ product: { name, rate }, spreader }: SpreadingInput, { check }: Spread): Warning[] {
  if (check?.finding === undefined) return [];
  if ("nutrient" in rate && check.finding.code === "spreader-light") {
    const { nutrient, amount } = rate;
    const meant = inUnit(amount, check.rate.unit as typeof amount.unit) / (spreader.directions ?? 1);
    if (!moreThan(Math.abs(100 * (check.rate.value / meant - 1)), ALIKE_PERCENT))
      return [
        warning(
          "spreader-light",
          "warning",
          "test.used",
          "{product}: The spreader put out {rate}, about the rate of {nutrient}. Open the gate until the same test gives {toCatch} of product.",
          { product: name, rate: check.rate, nutrient, toCatch: atMost(check.toCatch) },
          "spreader-set-for-nutrient",
        ),
      ];
  }
  return [{ ...check.finding, path: "test.used" }];
}

// Whoever fills so often has a larger spreader, or a unit is wrong: common practice, no source.
const MANY_FILLS = 50;

function manyFills({ spreader }: SpreadingInput, { total, hopper }: Spread): Warning[] {
  const fills = hopper.fills * (spreader.directions ?? 1);
  if (fills <= MANY_FILLS) return [];
  return [
    warning(
      "fills-many",
      "warning",
      "spreader.hopper",
      "This job takes {total} of product, which is {fills} fills of a {hopper} hopper. Check the size of the job, the rate, and their units.",
      { total, fills, hopper: spreader.hopper },
    ),
  ];
}
