import { checkNozzles } from "../../output-rate/nozzle-check.js";
import { inUnit } from "../../units/convert.js";
import { list, object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Volume } from "../../units/types.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Nozzles {
  /** What each nozzle gave: 2 to 20 of them. */
  readonly catches: readonly Volume[];
}

// Steps off the average, the furthest one up or down: the sum is none.
const PATTERNS = [
  [0, 3, -1, -2],
  [-4, 1, 1, 2],
  [-1, -2, 5, -2],
  [2, 0, 1, -3, 0],
  [-1, 4, -1, -2, 0],
];

/** The catches in the unit of the first, the one that is furthest off the average, and the average. */
function comparedIn({ catches }: Nozzles): {
  readonly values: readonly number[];
  readonly worst: number;
  /** Which nozzle that is, from 1. */
  readonly number: number;
  readonly mean: number;
} {
  const { unit } = catches[0] as Volume;
  const values = catches.map((one) => inUnit(one, unit));
  // A catch in a minute is a flow per minute.
  const { mean, nozzles } = checkNozzles({ catches, time: { value: 1, unit: "min" }, against: "mean" });
  const offs = nozzles.map(({ deviation }) => Math.abs(deviation.value));
  const at = offs.indexOf(Math.max(...offs));
  return { values, worst: values[at] as number, number: at + 1, mean: mean.value };
}

/** How far the worst nozzle is off the average. */
export const NOZZLE_CHECK: AnyTopic = /* @__PURE__ */ topic<Nozzles>({
  difficulty: 2,
  fields: object<Nozzles>({
    catches: list(
      "What each nozzle gave: 2 to 20 of them.",
      quantity("What one nozzle gave. More than 0.", "volume"),
      {
        least: 2,
        most: 20,
      },
    ),
  }),
  figures: ({ system, smallVolume }) => {
    const metric = system === "metric";
    return {
      catches: (metric
        ? numbers(240, 1000, 20)
        : [12, 15, 16, 18, 20, 21, 24, 25, 27, 28, 30, 32, 36, 40, 45, 48, 50, 60]
      ).flatMap((mean) =>
        PATTERNS.flatMap((pattern) =>
          (metric ? [10, 20] : [0.5, 1, 1.5]).map((step) =>
            each(
              smallVolume,
              pattern.map((off) => mean + off * step),
            ),
          ),
        ),
      ),
    };
  },
  fits: (given) => offOf(given) <= 30,
  unit: () => "%",
  answer: (given) => offOf(given),
  mayHaveMinus: (given) => {
    const { worst, mean } = comparedIn(given);
    return worst < mean;
  },
  working: (given) => {
    const { values, worst, number, mean } = comparedIn(given);
    const { unit } = given.catches[0] as Volume;
    const symbol = `worst${number}`;
    const caught = (value: number): Volume => ({ value, unit });
    return [
      {
        id: "practice.catchMean",
        formula: `(${values.map((_, i) => `x${i + 1}`).join(" + ")}) / n`,
        terms: {
          ...Object.fromEntries(values.map((value, i) => [`x${i + 1}`, caught(value)])),
          n: values.length,
        },
        result: caught(mean),
        source: "definition of a mean",
      },
      {
        id: "practice.nozzleOff",
        formula: `100 * (${worst > mean ? `${symbol} - mean` : `mean - ${symbol}`}) / mean`,
        terms: { [symbol]: caught(worst), mean: caught(mean) },
        result: { value: offOf(given), unit: "%" },
        source: "definition of a fraction",
      },
    ];
  },
  noteFigures: (given) => {
    const { number, worst, mean } = comparedIn(given);
    const { unit } = given.catches[0] as Volume;
    return { nozzle: number, caught: { value: worst, unit }, average: { value: mean, unit } };
  },
  mistakes: (given) => {
    const { values, worst, mean } = comparedIn(given);
    const others = (mean * values.length - worst) / (values.length - 1);
    const [least, most] = [Math.min(...values), Math.max(...values)];
    const off = Math.abs(worst - mean);
    return {
      "difference-as-percent": { instead: off },
      "off-itself": { instead: (100 * off) / worst },
      "off-the-others": { instead: (100 * Math.abs(worst - others)) / others },
      "share-of-average": { instead: (100 * worst) / mean },
      "spread-taken": { instead: (100 * (most - least)) / mean },
      "off-the-lowest": { instead: (100 * (most - least)) / least },
      "part-not-percent": { instead: off / mean },
    };
  },
});

/** How far the worst nozzle is off, in percent of the average. */
function offOf(given: Nozzles): number {
  const { worst, mean } = comparedIn(given);
  return (100 * Math.abs(worst - mean)) / mean;
}
