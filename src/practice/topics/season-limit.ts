import { inUnit } from "../../units/convert.js";
import { ceilDecided, floorDecided } from "../../units/decide.js";
import { count, object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { VolumeRate } from "../../units/types.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Season {
  /** The most that the label allows in a season. More than 0. */
  readonly limit: VolumeRate;
  /** What one application puts on. More than 0. */
  readonly rate: VolumeRate;
  /** How many applications there were. A whole number, 1 or more. */
  readonly done: number;
}

const leftOf = ({ limit, rate, done }: Season): number => inUnit(limit, rate.unit) / rate.value - done;

/** How many more applications the season's limit allows. */
export const SEASON_LIMIT: AnyTopic = /* @__PURE__ */ topic<Season>({
  difficulty: 1,
  fields: object<Season>(
    {
      limit: quantity("The most that the label allows in a season. More than 0.", "volumeRate"),
      rate: quantity("What one application puts on. More than 0.", "volumeRate"),
      done: count("How many applications there were. A whole number, 1 or more."),
    },
    [
      (given, check) => {
        if (given.limit === undefined || given.rate === undefined || given.done === undefined) return;
        if (leftOf(given as Season) < 1)
          check.fault(
            "conflict",
            "season-used-up",
            "done",
            "After {done} applications of {rate} the limit of {limit} leaves none. Enter fewer.",
            { done: given.done, rate: given.rate, limit: given.limit },
          );
      },
    ],
  ),
  figures: ({ product }) => ({
    limit: each(product, numbers(3, 20, 0.5)),
    rate: each(product, numbers(0.5, 3, 0.25)),
    done: [2, 3, 4],
  }),
  fits: (given) => leftOf(given) >= 1 && leftOf(given) <= 8,
  answer: (given) => floorDecided(leftOf(given)),
  working: (given) => {
    const { limit, rate, done } = given;
    return [
      {
        id: "practice.seasonLeft",
        formula: "floor((limit - done * rate) / rate)",
        terms: { limit: { value: inUnit(limit, rate.unit), unit: rate.unit }, done, rate },
        result: floorDecided(leftOf(given)),
        source: "definition of a rate per area",
      },
    ];
  },
  mistakes: (given) => {
    const left = leftOf(given);
    return {
      "applied-ignored": { instead: floorDecided(left + given.done) },
      "limit-passed": { instead: ceilDecided(left) },
      "limit-unrounded": { instead: left },
      "one-application-subtracted": { instead: floorDecided(left + given.done - 1) },
      "rate-left-for-count": { instead: left * given.rate.value },
    };
  },
});
