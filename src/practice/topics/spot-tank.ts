import { inUnit } from "../../units/convert.js";
import { count, object } from "../../units/fields.js";
import { basedOr, quantity } from "../../units/quantity-field.js";
import type { BasedFraction, Volume } from "../../units/types.js";
import { byVolume, linesOfPercent, percentMistakes, percentOf } from "./percent-mix.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface SpotTank {
  /** How many spots there are. A whole number, 1 or more. */
  readonly spots: number;
  /** The mix that one spot takes. More than 0. */
  readonly each: Volume;
  /** What the label calls for, by volume. More than 0. */
  readonly percent: BasedFraction;
}

const mixOf = ({ spots, each }: SpotTank): Volume => ({ value: spots * each.value, unit: each.unit });

/** The product for spots that are sprayed one by one, in percent of the mix. */
export const SPOT_TANK: AnyTopic = /* @__PURE__ */ topic<SpotTank>({
  difficulty: 2,
  isDose: true,
  fields: object<SpotTank>({
    spots: count("How many spots there are. A whole number, 1 or more."),
    each: quantity("The mix that one spot takes. More than 0.", "volume"),
    percent: basedOr("What the label calls for, by volume. More than 0.", [], ["v/v"]),
  }),
  figures: ({ system, smallVolume }) => ({
    spots: numbers(16, 80, 4),
    each: each(smallVolume, system === "metric" ? numbers(50, 400, 50) : numbers(2, 12, 1)),
    percent: [0.5, 1, 1.5, 2, 2.5, 3, 5].map(byVolume),
  }),
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, sizes) => percentOf(given.percent, mixOf(given), sizes),
  working: (given, sizes) => [
    {
      id: "practice.spotMix",
      formula: "spots * each",
      terms: { spots: given.spots, each: given.each },
      result: mixOf(given),
      source: "by definition of the rate",
    },
    ...linesOfPercent(given.percent, mixOf(given), sizes),
  ],
  mistakes: (given, sizes) => {
    const mix = inUnit(mixOf(given), sizes.smallVolume);
    const part = inUnit(given.percent, "1");
    // Spots are reckoned in the small unit: no gallons to take for others.
    const { "pint-for-gallon": _, "other-gallon": __, ...ofPercent } = percentMistakes(given.percent, sizes);
    return {
      ...ofPercent,
      "one-spot-only": { given: { spots: 1 } },
      "took-the-water": { instead: mix * (1 - part) },
      "added-on-top": { times: 1 + part },
      "mix-for-product": { instead: mix },
    };
  },
});
