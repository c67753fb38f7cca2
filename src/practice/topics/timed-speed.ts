import { linesOfPass, speedOfPass, TIMED_DISTANCE, type TimedDistance } from "../../output-rate/speed.js";
import { convertValue, inUnit } from "../../units/convert.js";
import type { Unit } from "../../units/types.js";
import { readAs } from "./routes.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

/** The speed from a timed distance. */
export const TIMED_SPEED: AnyTopic = /* @__PURE__ */ topic<TimedDistance>({
  difficulty: 1,
  fields: TIMED_DISTANCE,
  figures: ({ system, length }) => ({
    // 88 feet a minute are a mile an hour.
    distance: each(
      length,
      system === "metric"
        ? [25, 30, 40, 50, 60, 75, 100]
        : [66, 88, 110, 132, 154, 176, 198, 220, 264, 308, 330],
    ),
    time: each("s", numbers(10, 90, 0.1)),
  }),
  backwards: {
    follows: "time",
    inverse: true,
    answers: ({ system }) =>
      system === "metric"
        ? [3, 3.6, 4, 4.5, 4.8, 5, 5.4, 6, 7.2]
        : [2, 2.2, 2.4, 2.5, 2.75, 3, 3.2, 3.5, 4, 4.5, 5],
  },
  unit: ({ speed }) => speed,
  answer: (given, { speed }) => inUnit(speedOfPass(given), speed),
  working: (given) => linesOfPass(given),
  mistakes: ({ time }, { system, speed, length }) => {
    const perSecond = convertValue(1, speed, `${length}/s` as Unit);
    return {
      "per-second-left": { times: perSecond },
      "speed-inverted": { isInverse: true },
      "speed-factor-inverted": { times: perSecond * perSecond },
      "per-minute-left": { times: perSecond * 60 },
      "seconds-as-minutes": { given: { time: readAs(time, "min") } },
      "time-taken-as-minute": { given: { time: { value: 1, unit: "min" } } },
      "other-speed-unit": { times: convertValue(1, speed, system === "metric" ? "mph" : "km/h") },
    };
  },
});
