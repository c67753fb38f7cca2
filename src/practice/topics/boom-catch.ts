import { linesOfCatch, rateOfCatch } from "../../output-rate/catch.js";
import { inUnit } from "../../units/convert.js";
import { list, object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, Speed, Time, Unit, Volume } from "../../units/types.js";
import { isUsualFlow } from "./catch.js";
import { readAs, upsideDown } from "./routes.js";
import { each } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Boom {
  /** What each nozzle gave: 2 to 20 of them. */
  readonly catches: readonly Volume[];
  /** How long each was caught for. More than 0. */
  readonly time: Time;
  /** How far apart the nozzles are. More than 0. */
  readonly width: Length;
  /** The working speed. More than 0. */
  readonly speed: Speed;
}

// How catches on one boom differ, in steps of what is read: none of them calls for another nozzle.
const PATTERNS = [
  [1, -1, 0],
  [-1, 0, 1, 0],
  [0, 1, 1, -2],
  [1, 0, -1, 1, -1],
];

/** The output rate from the catches of several nozzles. */
export const BOOM_CATCH: AnyTopic = /* @__PURE__ */ topic<Boom>({
  difficulty: 2,
  fields: object<Boom>({
    catches: list(
      "What each nozzle gave: 2 to 20 of them.",
      quantity("What one nozzle gave. More than 0.", "volume"),
      {
        least: 2,
        most: 20,
      },
    ),
    time: quantity("How long each was caught for. More than 0.", "time"),
    width: quantity("How far apart the nozzles are. More than 0.", "length"),
    speed: quantity("The working speed. More than 0.", "speed"),
  }),
  figures: ({ used, smallVolume, system, nozzles, width, speeds, speed }) => ({
    catches: used.slice(8).flatMap((mean) =>
      PATTERNS.map((pattern) =>
        each(
          smallVolume,
          pattern.map((off) => mean + off * (system === "metric" ? 10 : 0.5)),
        ),
      ),
    ),
    time: each("s", [30, 36, 40, 45, 48, 54, 60]),
    width: each(width, nozzles),
    speed: each(speed, speeds),
  }),
  fits: (given, { rate, rates }) => {
    const found = inUnit(rateOfCatch(given), rate);
    const [first] = given.catches;
    return rates.includes(Number(found.toPrecision(9))) && isUsualFlow(first as Volume, given.time);
  },
  unit: ({ rate }) => rate,
  answer: (given, { rate }) => inUnit(rateOfCatch(given), rate),
  working: (given) => linesOfCatch(given),
  mistakes: (given, sizes, answer) => {
    const { catches, width, speed, time } = given;
    const nozzles = catches.length;
    const [first] = catches as readonly [Volume];
    const { perVolume, perLength, length } = sizes;
    return {
      "boom-on-one-width": { times: nozzles },
      "average-for-boom": { times: 1 / nozzles },
      "one-nozzle-for-boom": { given: { catches: [first] }, times: 1 / nozzles },
      "boom-one-spacing-short": { times: nozzles / (nozzles - 1) },
      "first-nozzle-only": { given: { catches: [first] } },
      "small-unit-as-large": { times: perVolume },
      "width-in-small-unit": { given: { width: readAs(width, length) } },
      "time-taken-as-minute": { given: { time: { value: 1, unit: "min" } } },
      "seconds-as-minutes": { given: { time: readAs(time, "min") } },
      "speed-in-other-unit": { given: { speed: readAs(speed, `${length}/s` as Unit as "ft/s") } },
      "nozzles-squared": { times: nozzles ** 2 },
      "width-in-large-unit": { times: perLength },
      "rate-inverted": upsideDown(answer, sizes),
    };
  },
});
