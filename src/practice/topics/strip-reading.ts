import { type DirectReading, linesOfReading, rateOfReading } from "../../output-rate/direct-strip.js";
import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Time, Volume } from "../../units/types.js";
import { isUsualFlow } from "./catch.js";
import { each, numbers, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface StripReading {
  /** How long the strip takes at working speed. More than 0. */
  readonly walk: Time;
  /** What one nozzle gave. More than 0. */
  readonly caught: Volume;
  /** How long it was caught for. More than 0. */
  readonly time: Time;
}

const onStrip = ({ walk, caught, time }: StripReading): Volume => ({
  value: (caught.value * inUnit(walk, "s")) / inUnit(time, "s"),
  unit: caught.unit,
});

const readingOf = (given: StripReading, { smallVolume, rate }: Sizes): DirectReading => ({
  caught: onStrip(given),
  catchUnit: smallVolume,
  rateUnit: rate,
});

/**
 * The rate read off the catch: on a strip of 1/128 acre fluid ounces are gallons per acre, on one of 10 square meters
 * milliliters are liters per hectare.
 */
export const STRIP_READING: AnyTopic = /* @__PURE__ */ topic<StripReading>({
  difficulty: 1,
  isReading: true,
  fields: object<StripReading>({
    walk: quantity("How long the strip takes at working speed. More than 0.", "time"),
    caught: quantity("What one nozzle gave. More than 0.", "volume"),
    time: quantity("How long it was caught for. More than 0.", "time"),
  }),
  figures: ({ smallVolume, system }) => ({
    walk: each("s", numbers(15, 60, 1)),
    caught: each(smallVolume, system === "metric" ? numbers(200, 2000, 10) : numbers(8, 120, 0.5)),
    time: each("s", [30, 45, 60]),
  }),
  backwards: { follows: "caught", answers: ({ rates }) => rates },
  fits: ({ walk, caught, time }) => isUsualFlow(caught, time) && walk.value !== time.value,
  unit: ({ rate }) => rate,
  answer: (given, sizes) => inUnit(rateOfReading(readingOf(given, sizes)), sizes.rate),
  working: (given, sizes) => [
    {
      id: "practice.catchOnStrip",
      formula: "caught * walk / time",
      terms: { caught: given.caught, walk: given.walk, time: given.time },
      result: onStrip(given),
      source: "definition of a flow",
    },
    ...linesOfReading(readingOf(given, sizes)),
  ],
  mistakes: ({ walk, caught, time }, { perVolume, smallVolume }) => {
    const seconds = inUnit(walk, "s") / inUnit(time, "s");
    return {
      "catch-unscaled": { instead: inUnit(caught, smallVolume) },
      "times-upside-down": { times: 1 / seconds ** 2 },
      "catch-per-minute": { times: 60 / inUnit(walk, "s") },
      "reading-divided": { times: 1 / perVolume },
      "reading-multiplied": { times: perVolume },
    };
  },
});
