import { linesOfStrip, rateOfStrip, STRIP_RUN, type StripRun } from "../../output-rate/strip.js";
import { convertValue, inUnit } from "../../units/convert.js";
import { drawnRectangle } from "./drawing.js";
import { readAs, roundedEarly, upsideDown } from "./routes.js";
import { each } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

/** The output rate from a test strip. */
export const STRIP_CALIBRATION: AnyTopic = /* @__PURE__ */ topic<StripRun>({
  difficulty: 2,
  drawing: ({ distance, swath }) => drawnRectangle(distance, swath),
  fields: STRIP_RUN,
  figures: ({ used, smallVolume, swaths, width, strips, length }) => ({
    used: each(smallVolume, used),
    swath: each(width, swaths),
    distance: each(length, strips),
  }),
  backwards: { follows: "used", answers: ({ rates }) => rates },
  unit: ({ rate }) => rate,
  answer: (given, { rate }) => inUnit(rateOfStrip(given), rate),
  working: (given) => linesOfStrip(given),
  mistakes: ({ used, swath, distance }, sizes, answer) => {
    const { perVolume, perLand, length, volume, landArea, otherLand, system } = sizes;
    const wide = inUnit(swath, length);
    const gallons = inUnit(used, volume);
    const acres = (wide * inUnit(distance, length)) / perLand;
    return {
      "small-unit-as-large": { times: perVolume },
      "width-in-small-unit": { given: { swath: readAs(swath, length) } },
      "rate-inverted": upsideDown(answer, sizes),
      "width-left-out": { times: wide },
      multiplied: { instead: gallons * acres },
      "land-unit-left": { times: 1 / perLand },
      "wrong-land-factor": { times: system === "metric" ? 0.1 : 4840 / perLand },
      "other-land-unit": { times: 1 / convertValue(1, landArea, otherLand) },
      "volume-factor-inverted": { times: perVolume * perVolume },
      "land-factor-inverted": { times: 1 / perLand ** 2 },
      "rounded-early": roundedEarly(1 / acres),
      "other-gallon": system === "metric" ? {} : { times: system === "us" ? 128 / 160 : 160 / 128 },
    };
  },
});
