import { linesOfAmount, type ProductInput, productAmountOf } from "../../tank-mix/product.js";
import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Density, Quantity, Volume, VolumeRate } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { labelRateMistakes, roundedEarly, weightMistakes } from "./routes.js";
import { each } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Tank {
  /** The label rate. More than 0. */
  readonly rate: VolumeRate;
  /** The output rate. More than 0. */
  readonly carrierRate: VolumeRate;
  /** What the tank is filled to. More than 0. */
  readonly fill: Volume;
  /** What the product weighs. More than 0. */
  readonly density: Density;
}

const inputOf = ({ rate, carrierRate, fill }: Tank): ProductInput => ({
  rate,
  carrierRate,
  form: "liquid",
  carrier: fill,
});

/** The product in a full tank. */
export const PRODUCT_PER_TANK: AnyTopic = /* @__PURE__ */ topic<Tank>({
  difficulty: 2,
  isDose: true,
  notNeeded: ["density"],
  fields: object<Tank>({
    rate: quantity("The label rate. More than 0.", "volumeRate"),
    carrierRate: quantity("The output rate. More than 0.", "volumeRate"),
    fill: quantity("What the tank is filled to. More than 0.", "volume"),
    density: quantity("What the product weighs. More than 0.", "density"),
  }),
  figures: ({ product, products, rate, rates, volume, tanks, density, densities }) => ({
    rate: each(product, products),
    carrierRate: each(rate, rates),
    fill: each(volume, tanks),
    density: each(density, densities),
  }),
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, { smallVolume }) => inUnit(productAmountOf(inputOf(given)).amount, smallVolume),
  working: (given, { smallVolume }) => {
    const input = inputOf(given);
    const { amount } = productAmountOf(input);
    return [...linesOfAmount(input), ...conversionLines("tank-mix.amount", amount as Quantity, smallVolume)];
  },
  mistakes: ({ carrierRate, fill, density }, sizes) => {
    const acres = inUnit(fill, sizes.volume) / inUnit(carrierRate, sizes.rate);
    return {
      "unscaled-tank": { times: 1 / acres },
      // Before the pint of another system, which comes to nearly the same where a gallon weighs ten pounds.
      ...weightMistakes(inUnit(density, sizes.density), sizes),
      ...labelRateMistakes(sizes),
      "area-for-product": { instead: acres },
      inverted: { times: 1 / acres ** 2 },
      "rate-per-volume": { times: inUnit(carrierRate, sizes.rate) },
      "rounded-early": roundedEarly(acres, 1),
    };
  },
});
