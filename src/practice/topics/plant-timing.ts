import { linesOfPlantTime, type TimedCatch, timeOfPlant } from "../../output-rate/timing.js";
import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Time, Volume } from "../../units/types.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Timing {
  /** What the hand gun or wand put into a bucket. More than 0. */
  readonly caught: Volume;
  /** How long it was caught for. More than 0. */
  readonly time: Time;
  /** What each plant or tree is to get. More than 0. */
  readonly each: Volume;
}

// Liters a minute, from a wand to a hand gun, and how long it is held on a plant: common practice, no source.
const FLOWS = [2, 20] as const;
const SECONDS = [2, 60] as const;

const isWithin = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

const flowOf = ({ caught, time }: Timing): TimedCatch => ({ caught, time });

const secondsOf = (given: Timing): number =>
  inUnit(timeOfPlant({ flow: flowOf(given), each: given.each }), "s");

/** How long a hand gun or wand is held on each plant. */
export const PLANT_TIMING: AnyTopic = /* @__PURE__ */ topic<Timing>({
  difficulty: 2,
  fields: object<Timing>({
    caught: quantity("What the hand gun or wand put into a bucket. More than 0.", "volume"),
    time: quantity("How long it was caught for. More than 0.", "time"),
    each: quantity("What each plant or tree is to get. More than 0.", "volume"),
  }),
  figures: ({ system, volume, smallVolume }) => ({
    caught: each(volume, system === "metric" ? numbers(1, 12, 0.5) : numbers(0.5, 3, 0.25)),
    time: each("s", [15, 20, 24, 30, 36, 40, 45, 48, 60]),
    each: each(smallVolume, system === "metric" ? numbers(200, 2000, 50) : numbers(8, 64, 4)),
  }),
  fits: (given) =>
    isWithin(inUnit(given.caught, "L") / inUnit(given.time, "min"), FLOWS) &&
    isWithin(secondsOf(given), SECONDS),
  unit: () => "s",
  answer: secondsOf,
  working: (given) => linesOfPlantTime({ flow: flowOf(given), each: given.each }),
  mistakes: (given, { system, volume, smallVolume, perVolume }, seconds) => {
    const time = inUnit(given.time, "s");
    const perSecond = inUnit(given.caught, volume) / time;
    const inLarge = inUnit(given.each, volume);
    return {
      "volumes-in-two-units": { times: perVolume },
      "minutes-for-seconds": { times: 1 / 60 },
      "time-taken-as-minute": { given: { time: { value: 1, unit: "min" } } },
      "flow-multiplied": [
        { instead: inLarge * perSecond },
        { instead: inUnit(given.each, smallVolume) * perSecond },
      ],
      "time-of-catch": { instead: time },
      "plants-from-catch": { instead: time / seconds },
      "fraction-inverted": { isInverse: true },
      "volume-factor-inverted": { times: perVolume * perVolume },
      ...(system !== "metric" && { "other-gallon": { times: system === "us" ? 128 / 160 : 160 / 128 } }),
    };
  },
});
