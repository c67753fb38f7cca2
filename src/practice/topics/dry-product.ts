import { object } from "../../units/fields.js";
import { quantity, treatedArea } from "../../units/quantity-field.js";
import type { MassRate, TreatedArea } from "../../units/types.js";
import { linesOfProduct, productOn } from "./product.js";
import { labelRateMistakes } from "./routes.js";
import { each, numbers, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Dry {
  /** What is sprayed. More than 0. */
  readonly area: TreatedArea;
  /** The label rate. More than 0. */
  readonly rate: MassRate;
}

const productOf = ({ rate, area }: Dry, { landArea, smallMass }: Sizes): Parameters<typeof productOn>[0] => ({
  rate,
  area: { value: area.value, unit: area.unit },
  per: landArea,
  unit: smallMass,
});

/** A dry product, by weight. */
export const DRY_PRODUCT: AnyTopic = /* @__PURE__ */ topic<Dry>({
  difficulty: 2,
  isDose: true,
  fields: object<Dry>({
    area: treatedArea("What is sprayed. More than 0.", { unmarked: true }),
    rate: quantity("The label rate. More than 0.", "massRate"),
  }),
  figures: ({ landArea, mass, system }) => ({
    area: numbers(0.05, 1.5, 0.05).map((value) => ({ value, unit: landArea, of: "treated" as const })),
    rate: each(`${mass}/${landArea}`, system === "metric" ? numbers(0.2, 3, 0.1) : numbers(0.5, 4, 0.25)),
  }),
  unit: ({ smallMass }) => smallMass,
  answer: (given, sizes) => productOn(productOf(given, sizes)),
  working: (given, sizes) => linesOfProduct(productOf(given, sizes)),
  mistakes: ({ area }, sizes) => {
    const { perMass, system, water } = sizes;
    const { "rate-per-other-land": otherLand, "per-lawn-for-land": perLawn } = labelRateMistakes(sizes);
    return {
      "mass-unit-left": { times: 1 / perMass },
      "unscaled-product": { times: 1 / area.value },
      "divided-by-area": { times: 1 / area.value ** 2 },
      "rate-per-other-land": otherLand,
      "per-lawn-for-land": perLawn,
      ...(system === "metric"
        ? {}
        : {
            "pound-of-12": { times: 12 / perMass },
            // What weighs so much if it is as heavy as water: 128 (160) fluid ounces and 8.34 (10) pounds to the gallon.
            "weighed-by-water": { times: sizes.perVolume / (water * perMass) },
          }),
    };
  },
});
