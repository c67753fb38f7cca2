import { linesOfCatch, rateOfCatch } from "../../output-rate/catch.js";
import { convertValue, inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, Speed, Time, Unit, Volume } from "../../units/types.js";
import { readAs, roundedEarly, upsideDown } from "./routes.js";
import { each } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Catch {
  /** What one nozzle gave. More than 0. */
  readonly caught: Volume;
  /** How long it was caught for. More than 0. */
  readonly time: Time;
  /** How far apart the nozzles are. More than 0. */
  readonly width: Length;
  /** The working speed. More than 0. */
  readonly speed: Speed;
}

// Liters a second: 4 L/min, common practice, no source.
const MOST_FLOW = 4 / 60;

/** Whether a nozzle of a small sprayer gives so much. */
export function isUsualFlow(caught: Volume, time: Time): boolean {
  return inUnit(caught, "L") / inUnit(time, "s") <= MOST_FLOW;
}

const catchOf = ({ caught, ...given }: Catch) => ({ ...given, catches: [caught] });

/** The output rate from what one nozzle gives. */
export const CATCH_CALIBRATION: AnyTopic = /* @__PURE__ */ topic<Catch>({
  difficulty: 2,
  fields: object<Catch>({
    caught: quantity("What one nozzle gave. More than 0.", "volume"),
    time: quantity("How long it was caught for. More than 0.", "time"),
    width: quantity("How far apart the nozzles are. More than 0.", "length"),
    speed: quantity("The working speed. More than 0.", "speed"),
  }),
  figures: ({ used, smallVolume, nozzles, width, speeds, speed }) => ({
    caught: each(smallVolume, used),
    time: each("s", [30, 36, 40, 45, 48, 54, 60]),
    width: each(width, nozzles),
    speed: each(speed, speeds),
  }),
  backwards: { follows: "caught", answers: ({ rates }) => rates },
  fits: ({ caught, time }) => isUsualFlow(caught, time),
  unit: ({ rate }) => rate,
  answer: (given, { rate }) => inUnit(rateOfCatch(catchOf(given)), rate),
  working: (given) => linesOfCatch(catchOf(given)),
  mistakes: ({ caught, time, width, speed }, sizes, answer) => {
    const { perVolume, perLength, length, landArea, otherLand } = sizes;
    const flow = inUnit(caught, sizes.volume) / inUnit(time, "min");
    return {
      "small-unit-as-large": { times: perVolume },
      "time-taken-as-minute": { given: { time: { value: 1, unit: "min" } } },
      "width-in-small-unit": { given: { width: readAs(width, length) } },
      "seconds-as-minutes": { given: { time: readAs(time, "min") } },
      "width-in-large-unit": { times: perLength },
      "rate-inverted": upsideDown(answer, sizes),
      "speed-in-other-unit": { given: { speed: readAs(speed, `${length}/s` as Unit as "ft/s") } },
      "width-left-out": { times: inUnit(width, length) },
      "factors-left-out": { instead: flow / (speed.value * width.value) },
      "other-land-unit": { times: 1 / convertValue(1, landArea, otherLand) },
      "volume-factor-inverted": { times: perVolume * perVolume },
      "rounded-early": roundedEarly(flow, 1),
    };
  },
});
