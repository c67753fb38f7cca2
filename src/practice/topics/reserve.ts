import { carrierOf, linesOfCarrier } from "../../tank-mix/carrier.js";
import { linesOfAmount, type ProductInput, productAmountOf } from "../../tank-mix/product.js";
import { inUnit } from "../../units/convert.js";
import { number, object } from "../../units/fields.js";
import { quantity, treatedArea } from "../../units/quantity-field.js";
import type { Quantity, TreatedArea, VolumeRate } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { labelRateMistakes } from "./routes.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface WithReserve {
  /** What is sprayed. More than 0. */
  readonly area: TreatedArea;
  /** The output rate. More than 0. */
  readonly carrierRate: VolumeRate;
  /** How much is mixed to spare, in percent of what is sprayed. More than 0. */
  readonly extra: number;
  /** The label rate. More than 0. */
  readonly rate: VolumeRate;
}

const carrierInput = ({ area, carrierRate, extra }: WithReserve) => ({
  area,
  rate: carrierRate,
  reserve: { percent: extra },
});

const productInput = (given: WithReserve): ProductInput => ({
  rate: given.rate,
  carrierRate: given.carrierRate,
  form: "liquid",
  carrier: carrierOf(carrierInput(given)).total,
});

/** The product for a mix with some to spare: the spare mix is as strong as the rest. */
export const RESERVE: AnyTopic = /* @__PURE__ */ topic<WithReserve>({
  difficulty: 3,
  isDose: true,
  fields: object<WithReserve>({
    area: treatedArea("What is sprayed. More than 0.", { unmarked: true }),
    carrierRate: quantity("The output rate. More than 0.", "volumeRate"),
    extra: number("How much is mixed to spare, in percent of what is sprayed. More than 0.", { above: 0 }),
    rate: quantity("The label rate. More than 0.", "volumeRate"),
  }),
  figures: ({ landArea, rate, rates, product, products }) => ({
    area: numbers(0.2, 2, 0.1).map((value) => ({ value, unit: landArea, of: "treated" as const })),
    carrierRate: each(rate, rates),
    extra: [5, 10, 15, 20],
    rate: each(product, products),
  }),
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, { smallVolume }) => inUnit(productAmountOf(productInput(given)).amount, smallVolume),
  working: (given, { smallVolume }) => {
    const input = productInput(given);
    return [
      ...linesOfCarrier(carrierInput(given)),
      ...linesOfAmount(input),
      ...conversionLines("tank-mix.amount", productAmountOf(input).amount as Quantity, smallVolume),
    ];
  },
  mistakes: (given, sizes) => {
    const whole = 1 + given.extra / 100;
    const { total } = carrierOf(carrierInput(given));
    return {
      "reserve-without-product": { times: 1 / whole },
      "product-for-reserve-only": { times: (whole - 1) / whole },
      "reserve-subtracted": { times: (2 - whole) / whole },
      "unscaled-reserve": { times: 1 / (whole * given.area.value) },
      "mix-for-product": [sizes.volume, sizes.smallVolume].map((unit) => ({ instead: inUnit(total, unit) })),
      ...labelRateMistakes(sizes),
    };
  },
});
