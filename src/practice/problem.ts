import type { Figures } from "../errors.js";
import { checked } from "../units/check.js";
import { convertValue } from "../units/convert.js";
import { type ChoiceField, choice, count } from "../units/fields.js";
import { refusal } from "../units/message.js";
import { firstSystem, systemOf } from "../units/systems.js";
import type { Quantity, Unit, UnitSystem } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { foundName } from "../worksheet/lines/written-line.js";
import type { Writer } from "../worksheet/words/writer.js";
import type { MistakeCode, MistakeWords } from "./mistakes.js";
import { PRACTICE_OPTIONS, PROBLEM_OPTIONS, type PracticeOptions, type ProblemOptions } from "./options.js";
import { listText } from "./phrases.js";
import { drawFrom, MOST_SEED } from "./random.js";
import { isRightRounding } from "./rounding.js";
import { PRACTICE_TOPICS, type PracticeTopic, TOPICS } from "./topics/all.js";
import { letterOf, type MixingKind } from "./topics/mixing-order.js";
import { type Sizes, sizesIn } from "./topics/sizes.js";
import {
  type AnyTopic,
  type Difficulty,
  figuresDrawer,
  type Given,
  type GivenFigure,
  inAnswerUnit,
  type PracticeAnswer,
} from "./topics/topic.js";
import type { PracticeMessages } from "./words.js";
import { practiceWriter } from "./writer.js";
import { wrongAnswers } from "./wrong-answers.js";

/** A mistake with its words. */
export interface ShownMistake extends MistakeWords {
  /** Which one. */
  readonly mistake: MistakeCode;
}

/** A common wrong answer. */
export interface PracticeMistake extends ShownMistake {
  /** The answer that it leads to, unrounded. */
  readonly answer: PracticeAnswer;
  /** Other mistakes that lead to the same answer. */
  readonly also: readonly MistakeCode[];
}

/** A practice problem with its key. Plain data. */
export interface PracticeProblem {
  /** What it is about. */
  readonly topic: PracticeTopic;
  /** How hard it is: 1 a short formula; 2 a longer one, or two short ones; 3 steps that build on each other. */
  readonly difficulty: Difficulty;
  /** The system of units that it is set in. */
  readonly units: UnitSystem;
  /** The seed that it was made from; none for figures of one's own. */
  readonly seed?: number | undefined;
  /** Which of the topic's four wordings it has, from 1. */
  readonly wording: number;
  /** The problem in words. */
  readonly problem: string;
  /** What the problem gives, by name. */
  readonly given: Given;
  /** The right answer, unrounded. */
  readonly answer: PracticeAnswer;
  /** What else is said of the answer, such as which nozzle it is. */
  readonly note?: string | undefined;
  /** The way to it, line by line. */
  readonly working: readonly WorkingLine[];
  /** The common wrong answers, the likelier ones first: each apart from the right one, and from one another, by more than 2%; counts differ at all. */
  readonly mistakes: readonly PracticeMistake[];
}

/** The topics of practice problems, from easy to hard. */
export const practiceTopics: readonly PracticeTopic[] = PRACTICE_TOPICS;

/**
 * Returns a practice problem for a class: a realistic job in round figures, the answer, its working, and the common wrong answers
 * with the mistake that each shows.
 *
 * The same topic, seed and options give the same problem on every machine. Sizes, rates and speeds are drawn from what
 * small farms and their sprayers have (common practice, no source). The answer has at most three figures. Mistakes
 * that lead to the same answer within 2% are one (to the same count, where things are counted). Random numbers: the "minimal standard" generator of S. K. Park
 * and K. W. Miller, Communications of the ACM 31 (10), 1988.
 *
 * @param topic - one of `practiceTopics`
 * @param seed - a whole number from 0 to 2³¹ − 3
 * @param options - see {@link PracticeOptions}
 * @returns the problem; `practiceSheet` lays out several, `checkAnswer` checks an answer to one
 * @throws SprayMathError `unknown-choice` for a topic, a system or a locale that is not one, `out-of-range` for a seed,
 *   `unknown-field` for an option that there is not
 *
 * @example
 * ```ts
 * import { practiceProblem } from "swath-to-spoon/practice";
 *
 * const { problem, answer, mistakes } = practiceProblem("percent-mix", 7);
 * console.log(problem); // You treat the nursery beds at Brackenby. The label says to add 0.5% v/v of a spreader. The tank is filled to 4 gal. How much spreader is that (fl oz)?
 * console.log(answer, mistakes[0]?.mistake); // { value: 2.56, unit: 'fl_oz' } percent-as-part
 * ```
 */
export function practiceProblem(
  topic: PracticeTopic,
  seed: number,
  options: PracticeOptions = {},
): PracticeProblem {
  checked(topic, TOPIC, "topic");
  // A seed of -0 is 0.
  const from = checked(seed, count("A whole number.", 0, MOST_SEED), "seed");
  const { units = "us", ...writing } = checked(options, PRACTICE_OPTIONS, "options");
  const draw = drawFrom(from);
  const sizes = sizesIn(units);
  const given = drawn(topic, from, sizes, draw);
  const scene = { wording: draw.pick([1, 2, 3, 4]), farm: draw.pick(FARMS) };
  const problem = problemOf(topic, given, sizes, scene, practiceWriter(writing));
  return { ...problem, seed: from };
}

/**
 * Returns a practice problem with figures of one's own: the same problem, answer, working and mistakes as one that is drawn.
 *
 * @param topic - one of `practiceTopics`
 * @param given - every figure that the topic gives, by name: the guide page about teaching lists them
 * @param options - see {@link ProblemOptions}
 * @returns the problem
 * @throws SprayMathError `missing` or `unknown-field` for a figure that is missing or that the topic does not have, with its
 *   path; what the figures' formula throws; `unknown-choice`, `unknown-field` or `out-of-range` for a topic or an option
 *
 * @example
 * ```ts
 * import { problemFrom } from "swath-to-spoon/practice";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { answer, problem } = problemFrom("strip-calibration", {
 *   used: qty(43, "fl_oz"),
 *   swath: qty(36, "in"),
 *   distance: qty(200, "ft"),
 * });
 * console.log(problem); // On a test strip of 200 ft at Quillmere, sprayed 36 in wide, the sprayer used 43 fl oz of water. What is the output rate (gal/ac)?
 * console.log(answer); // { value: 24.3890625, unit: 'gal/ac' }
 * ```
 */
export function problemFrom(
  topic: PracticeTopic,
  given: Given,
  options: ProblemOptions = {},
): PracticeProblem {
  checked(topic, TOPIC, "topic");
  const figures = checked(given, TOPICS[topic].fields, "given");
  const {
    wording = 1,
    units = systemOfFigures(figures),
    ...writing
  } = checked(options, PROBLEM_OPTIONS, "options");
  const scene = { wording, farm: FARMS[0] as string };
  const writer = practiceWriter(writing);
  return problemOf(topic, figures, sizesIn(units), scene, writer);
}

/** The system of figures. Imperial measure shares its feet and pounds with the US: a gallon or a pint shows which it is. */
function systemOfFigures(given: Given): UnitSystem {
  const all = Object.values(given).flat() as (Quantity | number | string)[];
  const isImperial = all.some((one) => typeof one === "object" && systemOf(one.unit) === "imperial");
  return isImperial ? "imperial" : firstSystem(given);
}

/** A topic. */
export const TOPIC: ChoiceField<PracticeTopic> = /* @__PURE__ */ choice("What it is about.", practiceTopics);

// Invented names, which need no translation.
const FARMS = [
  "Quillmere",
  "Dunnock Rise",
  "Tansy Hollow",
  "Otterwell",
  "Brackenby",
  "Saltgrass Farm",
  "Larkmoor",
  "Thistlecombe",
  "Pebblewick",
  "Marrow Hill",
];

// A few thousand draws are dropped at the very most; the bound is for a topic that could give none.
const MOST_DRAWS = 1_000_000;

function drawn(topic: PracticeTopic, seed: number, sizes: Sizes, draw: ReturnType<typeof drawFrom>): Given {
  const drawOnce = figuresDrawer(TOPICS[topic], sizes);
  for (let i = 0; i < MOST_DRAWS; i++) {
    const given = drawOnce(draw);
    if (given !== undefined) return given;
  }
  throw refusal("out-of-range", "seed-empty", "seed", "This seed gives no problem. Choose another.", {
    given: seed,
  });
}

interface Scene {
  /** Which wording, from 1. */
  readonly wording: number;
  readonly farm: string;
}

function problemOf(
  name: PracticeTopic,
  given: Given,
  sizes: Sizes,
  { wording, farm }: Scene,
  writer: Writer<PracticeMessages>,
): PracticeProblem {
  const topic = TOPICS[name];
  const { messages, fill, unit } = writer;
  const asked = topic.unit?.(sizes);
  const right = topic.answer(given, sizes);
  const answerUnit = asked === undefined ? {} : { unit: unit(asked) };
  const figures: Figures = { ...figuresIn(given, writer), ...answerUnit, farm };
  return {
    topic: name,
    difficulty: topic.difficulty,
    units: sizes.system,
    wording,
    problem: fill(messages.topics[name].problems[wording - 1] as string, figures),
    given,
    answer: inAnswerUnit(topic, right, sizes),
    ...noteOf(name, given, writer),
    working: topic.working(given, sizes),
    mistakes: wrongAnswers(topic, given, sizes)
      // What a sheet counts as right is in no key as wrong.
      .filter(({ answer }) => !isCountedRight(answer, right, topic))
      .map(({ answer, mistakes: [mistake], also, step }) => ({
        ...shownMistake(mistake as MistakeCode, sizes, writer, { step }),
        answer: inAnswerUnit(topic, answer, sizes),
        also,
      })),
  };
}

/** Whether a wrong answer is the right one rounded. No count is rounded. */
function isCountedRight(value: number | string, right: number | string, topic: AnyTopic): boolean {
  return (
    topic.unit !== undefined &&
    typeof value === "number" &&
    typeof right === "number" &&
    isRightRounding({ value, right }, topic)
  );
}

/** The note to an answer, for a topic that has one. */
export function noteOf(
  name: PracticeTopic,
  given: Given,
  { messages, fill }: Writer<PracticeMessages>,
): Pick<PracticeProblem, "note"> {
  const { note } = messages.topics[name];
  const figures = TOPICS[name].noteFigures?.(given);
  return note === undefined || figures === undefined ? {} : { note: fill(note, figures) };
}

/** What a problem gives as it is filled into its words: several amounts as one text, products with a letter each. */
function figuresIn(given: Given, writer: Writer<PracticeMessages>): Figures {
  const { short, messages } = writer;
  const written = (one: Quantity | string, at: number): string =>
    typeof one === "string" ? `(${letterOf(at)}) ${messages.kinds[one as MixingKind]}` : short(one);
  const figure = (one: GivenFigure): Figures[string] =>
    Array.isArray(one) ? listText(one.map(written), writer) : (one as Quantity | number);
  const figures = Object.fromEntries(Object.entries(given).map(([name, one]) => [name, figure(one)]));
  // Given as a plain number of percent.
  const { extra } = given;
  return { ...figures, ...(typeof extra === "number" && { extra: { value: extra, unit: "%" } }) };
}

/** What a mistake's words may name: the unit that is asked for, and the step whose result was given. */
interface Named {
  readonly asked?: Unit | undefined;
  readonly step?: WorkingLine | undefined;
}

/** A mistake in words, with the units and factors of a system. */
export function shownMistake(
  mistake: MistakeCode,
  sizes: Sizes,
  writer: Writer<PracticeMessages>,
  { asked, step }: Named,
): ShownMistake {
  const { messages, fill } = writer;
  const { what, see, mend } = messages.mistakes[mistake];
  const figures: Figures = {
    ...figuresOf(sizes),
    ...(asked !== undefined && { asked }),
    ...(step !== undefined && { step: foundName(step, writer) }),
  };
  return { mistake, what: fill(what, figures), see: fill(see, figures), mend: fill(mend, figures) };
}

/** The figures that a mistake's words may have places for. */
function figuresOf(sizes: Sizes): Figures {
  const { perVolume, perLabel, perLand, perLength, perMass, ...units } = sizes;
  const { length, speed, walking } = units;
  const perSecond = convertValue(1, speed, `${length}/s` as Unit);
  const tenthOf = (unit: Unit, of: Unit): Quantity => ({ value: convertValue(1, unit, of) / 10, unit: of });
  const named = {
    small: units.smallVolume,
    volume: units.volume,
    label: units.label,
    land: units.landArea,
    otherLand: units.otherLand,
    lawn: units.lawn,
    row: units.row,
    canopy: units.canopy,
    area: units.area,
    length,
    width: units.width,
    speed,
    mass: units.mass,
    smallMass: units.smallMass,
  };
  return {
    perVolume,
    perLabel,
    perLand,
    perLength,
    perMass,
    perSecond,
    perMinute: perSecond * 60,
    // The number of the formula with volume per minute, speed and width: 5,940 with gal/min, mph and in.
    widthFormula: (perLand * perLength) / (perSecond * 60),
    tenthOfLawn: tenthOf(units.lawn, units.area),
    tenthOfRow: tenthOf(units.row, length),
    thousand: 1000,
    onePercent: { value: 1, unit: "%" },
    wholePercent: { value: 100, unit: "%" },
    water: { value: units.water, unit: units.density },
    walking: { value: walking, unit: speed },
    walkingPerSecond: inTwoFigures(walking * perSecond),
    hectare: { value: 1, unit: "ha" },
    acres: { value: inTwoFigures(convertValue(1, "ha", "ac")), unit: "ac" },
    mile: { value: inTwoFigures(convertValue(1, "mi", "km")), unit: "km" },
    pound: { value: inTwoFigures(convertValue(1, "lb", "kg")), unit: "kg" },
    ...named,
    // "1 acre" and "per acre", in languages whose units have plurals.
    ...Object.fromEntries(Object.entries(named).map(([name, unit]) => [ofOne(name), { value: 1, unit }])),
  };
}

const ofOne = (name: string): string => `one${name.charAt(0).toUpperCase()}${name.slice(1)}`;

const inTwoFigures = (value: number): number => Number(value.toPrecision(2));
