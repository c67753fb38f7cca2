import { groundOfRectangle, linesOfRectangle } from "../../area/shapes.js";
import { convertValue, inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, MassRate, MassUnit, Quantity, VolumeRate, VolumeUnit } from "../../units/types.js";
import { drawnRectangle } from "./drawing.js";
import { linesOfProduct, productOn } from "./product.js";
import { each, numbers, type Sizes } from "./sizes.js";
import { type AnyTopic, type Routes, type Topic, topic } from "./topic.js";

interface Lawn {
  /** How long the plot is. More than 0. */
  readonly length: Length;
  /** How wide the plot is. More than 0. */
  readonly width: Length;
  readonly rate: Quantity;
}

interface SprayedLawn extends Lawn {
  /** The label rate. More than 0. */
  readonly rate: VolumeRate;
}

interface SpreadLawn extends Lawn {
  /** The label rate. More than 0. */
  readonly rate: MassRate;
}

const LENGTH = quantity("How long the plot is. More than 0.", "length");
const WIDTH = quantity("How wide the plot is. More than 0.", "length");

/** What topics on small plots with square corners have in common. */
function lawnTopic<G extends Lawn>(
  more: Pick<Topic<G>, "fields" | "figures"> & {
    readonly unit: (sizes: Sizes) => VolumeUnit | MassUnit;
    readonly mistakes: (sizes: Sizes) => Routes<G>;
  },
): AnyTopic {
  const { unit } = more;
  const on = (given: G, sizes: Sizes) => {
    const { value, unit: area } = groundOfRectangle(given);
    return { rate: given.rate, area: { value, unit: area }, per: sizes.lawn, unit: unit(sizes) };
  };
  return topic<G>({
    ...more,
    difficulty: 2,
    isDose: true,
    drawing: ({ length, width }) => drawnRectangle(length, width),
    fits: ({ length, width }) => length.value > width.value,
    answer: (given, sizes) => productOn(on(given, sizes)),
    working: (given, sizes) => [
      ...linesOfRectangle(given),
      ...linesOfProduct(on(given, sizes), "practice.productOnGround"),
    ],
    mistakes: (given, sizes) => {
      const [long, wide] = [inUnit(given.length, sizes.length), inUnit(given.width, sizes.length)];
      const lawn = convertValue(1, sizes.lawn, sizes.area);
      const times = (long * wide) / lawn;
      return {
        "land-for-lawn": { times: convertValue(1, sizes.lawn, sizes.landArea) },
        "lawn-size-left-out": { times: lawn },
        "unscaled-lawn": { times: 1 / times },
        "sides-added": { times: (long + wide) / (long * wide) },
        "divided-by-area": { times: 1 / times ** 2 },
        "lawn-ten-times": { times: 10 },
        "area-for-product": [{ instead: times }, { instead: long * wide }],
        ...more.mistakes(sizes),
      };
    },
  });
}

const sides = ({
  system,
  length,
}: Sizes): { readonly length: readonly Length[]; readonly width: readonly Length[] } =>
  system === "metric"
    ? { length: each(length, numbers(10, 60, 5)), width: each(length, numbers(5, 40, 5)) }
    : { length: each(length, numbers(30, 200, 10)), width: each(length, numbers(20, 120, 10)) };

/** A liquid at a rate per 1,000 square feet, or per 100 square meters. */
export const LAWN_RATE: AnyTopic = /* @__PURE__ */ lawnTopic<SprayedLawn>({
  fields: object<SprayedLawn>({
    length: LENGTH,
    width: WIDTH,
    rate: quantity("The label rate. More than 0.", "volumeRate"),
  }),
  figures: (sizes) => ({
    ...sides(sizes),
    rate: each(
      `${sizes.smallVolume}/${sizes.lawn}` as VolumeRate["unit"],
      sizes.system === "metric" ? numbers(5, 60, 5) : numbers(0.5, 4, 0.25),
    ),
  }),
  unit: ({ smallVolume }) => smallVolume,
  mistakes: ({ perVolume }) => ({ "volume-unit-left": { times: 1 / perVolume } }),
});

/** Granules at a rate per 1,000 square feet, or per 100 square meters. */
export const GRANULES: AnyTopic = /* @__PURE__ */ lawnTopic<SpreadLawn>({
  fields: object<SpreadLawn>({
    length: LENGTH,
    width: WIDTH,
    rate: quantity("The label rate. More than 0.", "massRate"),
  }),
  figures: (sizes) => ({
    ...sides(sizes),
    rate: each(
      `${sizes.mass}/${sizes.lawn}` as MassRate["unit"],
      sizes.system === "metric" ? numbers(0.5, 3, 0.25) : numbers(1, 6, 0.25),
    ),
  }),
  unit: ({ mass }) => mass,
  mistakes: ({ perMass, system }) => ({
    "small-mass-for-large": { times: perMass },
    ...(system === "metric" ? {} : { "pounds-as-kilograms": { times: convertValue(1, "lb", "kg") } }),
  }),
});
