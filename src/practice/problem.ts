import { frozen } from "../frozen.js";
import { checked } from "../units/check.js";
import { choice, count } from "../units/fields.js";
import { refusal } from "../units/message.js";
import type { Quantity, UnitSystem } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type Writer, writerFor } from "../worksheet/words/writer.js";
import { PRACTICE_OPTIONS, type PracticeOptions } from "./options.js";
import { drawFrom, MOST_SEED } from "./random.js";
import { drawCatchCalibration, drawStripCalibration } from "./topics/calibration.js";
import type { DrawnProblem, DrawProblem, MistakeCode, PracticeTopic } from "./topics/drawn-problem.js";
import { drawArea, drawBand } from "./topics/fields.js";
import {
  drawDilution,
  drawHouseholdMeasure,
  drawPercentMix,
  drawProductPerTank,
  drawTankLoads,
} from "./topics/mixing.js";
import { drawWholeJob } from "./topics/whole-job.js";
import { ENGLISH_PRACTICE_WORDS, type PracticeMessages } from "./words.js";

/** A common wrong answer. */
export interface PracticeMistake {
  /** Which mistake it shows. */
  readonly mistake: MistakeCode;
  /** The answer that it leads to, unrounded. */
  readonly answer: Quantity | number;
  /** The mistake in words. */
  readonly shows: string;
}

/** A practice problem with its key. Plain data. */
export interface PracticeProblem {
  /** What it is about. */
  readonly topic: PracticeTopic;
  /** The seed that it was made from. */
  readonly seed: number;
  /** The system of units that it is set in. */
  readonly units: UnitSystem;
  /** The problem in words. */
  readonly problem: string;
  /** What the problem gives, by name. */
  readonly given: Readonly<Record<string, Quantity | number>>;
  /** The right answer, unrounded. */
  readonly answer: Quantity | number;
  /** The way to it, line by line. */
  readonly working: readonly WorkingLine[];
  /** The common wrong answers: each apart from the right one, and from one another, by more than rounding. */
  readonly mistakes: readonly PracticeMistake[];
}

const TOPICS: Readonly<Record<PracticeTopic, DrawProblem>> = {
  area: drawArea,
  "strip-calibration": drawStripCalibration,
  "catch-calibration": drawCatchCalibration,
  "tank-loads": drawTankLoads,
  "product-per-tank": drawProductPerTank,
  "household-measure": drawHouseholdMeasure,
  band: drawBand,
  "percent-mix": drawPercentMix,
  dilution: drawDilution,
  "whole-job": drawWholeJob,
};

/** The topics of practice problems, from easy to hard as far as can be said. */
export const practiceTopics: readonly PracticeTopic[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ Object.keys(TOPICS) as PracticeTopic[],
);

/**
 * A practice problem for a class: a realistic job in round figures, the answer, its working, and the common wrong answers
 * with the mistake that each shows.
 *
 * The same topic, seed and options give the same problem on every machine. Sizes, rates and speeds are drawn from what small
 * farms and their sprayers have (common practice, no source). A draw whose wrong answers come within 3 % of the right one, or
 * of one another, is dropped for the next. Random numbers: the "minimal standard" generator of S. K. Park and K. W. Miller,
 * Communications of the ACM 31 (10), 1988.
 *
 * @param topic - one of `practiceTopics`
 * @param seed - a whole number from 0 to 2³¹ − 3
 * @param options - see {@link PracticeOptions}
 * @returns the problem; `practiceSheet` lays out several
 * @throws SprayMathError `unknown-choice` for a topic, a system or a locale that is not one, `out-of-range` for a seed,
 *   `unknown-field` for an option that there is not
 *
 * @example
 * ```ts
 * import { practiceProblem } from "swath-to-spoon/practice";
 *
 * const { problem, answer, mistakes } = practiceProblem("percent-mix", 7);
 * console.log(problem); // The label calls for 0.5% v/v of an additive in the mix. How much of it goes into a tank of 8 gal (fl oz)?
 * console.log(answer, mistakes[0]?.mistake); // { value: 5.12, unit: 'fl_oz' } percent-as-part
 * ```
 */
export function practiceProblem(
  topic: PracticeTopic,
  seed: number,
  options: PracticeOptions = {},
): PracticeProblem {
  checked(topic, choice("What it is about.", practiceTopics), "topic");
  // A seed of -0 is 0.
  const from = checked(seed, count("A whole number.", 0, MOST_SEED), "seed");
  const { units = "us", ...writing } = checked(options, PRACTICE_OPTIONS, "options");
  const writer = writerFor(writing, ENGLISH_PRACTICE_WORDS);
  const { kind, given, answer, working, slips } = drawn(topic, from, units);
  return {
    topic,
    seed: from,
    units,
    problem: problemText(writer, { kind, given, answer }),
    given,
    answer,
    working,
    mistakes: slips.map((slip) => ({ ...slip, shows: writer.messages.mistakes[slip.mistake] })),
  };
}

// A few dozen draws are dropped at the very most; the bound is for a topic that could give none.
const MOST_DRAWS = 10_000;

function drawn(topic: PracticeTopic, seed: number, units: UnitSystem): DrawnProblem {
  const draw = drawFrom(seed);
  for (let i = 0; i < MOST_DRAWS; i++) {
    const problem = TOPICS[topic](draw, units);
    if (problem !== undefined && tellsApart(problem)) return problem;
  }
  throw refusal("out-of-range", "seed-empty", "seed", "This seed gives no problem. Choose another.", {
    given: seed,
  });
}

const APART = 0.03;

function tellsApart({ answer, slips }: DrawnProblem): boolean {
  const values = [answer, ...slips.map((slip) => slip.answer)].map((one) =>
    typeof one === "number" ? one : one.value,
  );
  return values.every((a, i) =>
    values.slice(i + 1).every((b) => Math.abs(a - b) > APART * Math.max(Math.abs(a), Math.abs(b))),
  );
}

function problemText(
  { messages, fill, unit }: Writer<PracticeMessages>,
  { kind, given, answer }: Pick<DrawnProblem, "kind" | "given" | "answer">,
): string {
  const asked = typeof answer === "number" ? "" : unit(answer.unit);
  return fill(messages.problems[kind], { ...given, unit: asked });
}
