import { type FertilizerInput, fertilizerOf, linesOfFertilizer } from "../../tank-mix/nutrients.js";
import { convertValue } from "../../units/convert.js";
import { number, object } from "../../units/fields.js";
import { quantity, treatedArea } from "../../units/quantity-field.js";
import type { MassRate, TreatedArea } from "../../units/types.js";
import { linesOfProduct, productOn } from "./product.js";
import { each, numbers, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Feeding {
  /** How much nitrogen the ground needs. More than 0. */
  readonly needed: MassRate;
  /** What is spread. More than 0. */
  readonly area: TreatedArea;
  /** The first number on the bag: nitrogen in percent by weight. More than 0, up to 100. */
  readonly nitrogen: number;
}

const inputOf = ({ needed, nitrogen }: Feeding): FertilizerInput => ({
  nutrient: "N",
  amount: needed,
  contains: { N: nitrogen },
});

const onArea = (given: Feeding, { lawn, mass }: Sizes) => ({
  rate: fertilizerOf(inputOf(given)).product,
  area: given.area,
  per: lawn,
  unit: mass,
});

/** The fertilizer for so much nitrogen on a lawn. */
export const FERTILIZER: AnyTopic = /* @__PURE__ */ topic<Feeding>({
  difficulty: 2,
  isDose: true,
  fields: object<Feeding>({
    needed: quantity("How much nitrogen the ground needs. More than 0.", "massRate"),
    area: treatedArea("What is spread. More than 0.", { unmarked: true }),
    nitrogen: number("The first number on the bag: nitrogen in percent by weight. More than 0, up to 100.", {
      above: 0,
      max: 100,
    }),
  }),
  figures: ({ system, mass, lawn, area }) => ({
    needed: each(
      `${mass}/${lawn}` as MassRate["unit"],
      system === "metric" ? numbers(0.2, 0.8, 0.1) : numbers(0.5, 1.5, 0.25),
    ),
    area: (system === "metric" ? numbers(200, 2000, 100) : numbers(3000, 20_000, 1000)).map((value) => ({
      value,
      unit: area,
      of: "treated" as const,
    })),
    nitrogen: [5, 8, 10, 12, 16, 20, 24, 25, 28, 32, 40, 46],
  }),
  unit: ({ mass }) => mass,
  answer: (given, sizes) => productOn(onArea(given, sizes)),
  working: (given, sizes) => [
    ...linesOfFertilizer(inputOf(given)),
    ...linesOfProduct(onArea(given, sizes), "practice.fertilizer"),
  ],
  mistakes: ({ area, nitrogen }, { system, lawn, landArea, perMass }) => {
    const part = nitrogen / 100;
    const lawns = convertValue(area.value, area.unit, lawn);
    return {
      "nutrient-for-product": { times: part },
      "content-multiplied": { times: part ** 2 },
      "unscaled-lawn": { times: 1 / lawns },
      "land-for-lawn": { times: convertValue(1, lawn, landArea) },
      "lawn-size-left-out": { times: convertValue(1, lawn, area.unit) },
      "lawn-ten-times": { times: 10 },
      "small-mass-for-large": { times: perMass },
      ...(system === "metric" ? {} : { "pounds-as-kilograms": { times: convertValue(1, "lb", "kg") } }),
    };
  },
});
