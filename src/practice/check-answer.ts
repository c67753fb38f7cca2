import { SprayMathError } from "../errors.js";
import { type Check, checked, Field } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, compareDecided, floorDecided, moreThan } from "../units/decide.js";
import { descriptionOf } from "../units/describe.js";
import { dimensionOf } from "../units/dimensions.js";
import { figure } from "../units/made.js";
import { withoutAccents } from "../units/nearest.js";
import { textReader } from "../units/parse.js";
import { isUnit } from "../units/resolve.js";
import type { Quantity, Unit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import type { Writer } from "../worksheet/words/writer.js";
import type { MistakeCode } from "./mistakes.js";
import { ANSWER_OPTIONS, type AnswerOptions } from "./options.js";
import { listText, rightText } from "./phrases.js";
import { noteOf, type PracticeProblem, type ShownMistake, shownMistake } from "./problem.js";
import { PROBLEM } from "./problem-field.js";
import { isRightRounding, isRounding, isWithin, MOST_ROUNDED } from "./rounding.js";
import { TOPICS } from "./topics/all.js";
import { LETTERS } from "./topics/mixing-order.js";
import { type Sizes, sizesIn } from "./topics/sizes.js";
import { type AnyTopic, type Given, inAnswerUnit, type PracticeAnswer } from "./topics/topic.js";
import { ENGLISH_PRACTICE_WORDS, type PracticeMessages } from "./words.js";
import { practiceWriter } from "./writer.js";
import {
  allWrongAnswers,
  doublyWrongAnswers,
  listed,
  stepForAnswer,
  stepsOf,
  type WrongAnswer,
  wrongAnswers,
} from "./wrong-answers.js";

/** What an answer turns out to be: right as it is, right but rounded, right in another unit, a known mistake, or none of these. */
export type AnswerVerdict = "right" | "rounded" | "other-unit" | "mistake" | "unknown";

/** What can be said of an answer. */
export interface AnswerCheck {
  /** What it is. */
  readonly verdict: AnswerVerdict;
  /** The verdict in words, with the mistakes. */
  readonly says: string;
  /** The answer as it was read. */
  readonly answer: PracticeAnswer;
  /** How far off it is, as a part of the right answer: 0.25 is 25% too high. None for letters and for another kind of unit. */
  readonly off?: number | undefined;
  /** The mistake that leads there, or two that were made together. */
  readonly mistakes: readonly ShownMistake[];
}

/**
 * What was typed, with the unit names of a table of words as the library reads them: `2.5 galones` as `2.5 gal`. Students leave
 * accents out.
 */
function inSpellings(typed: string, { units, spellings }: PracticeMessages): string {
  const known = Object.entries(units).filter(([unit]) => isUnit(unit));
  const named = known.flatMap(([unit, names]) =>
    Object.values(typeof names === "string" ? [names] : names).map(
      (name) => [name, descriptionOf(unit as Unit).symbol] as const,
    ),
  );
  const typedAs = Object.entries(spellings).flatMap(([spelling, names]) =>
    names.split(",").map((name) => [name, spelling] as const),
  );
  const read = new Map(
    [...typedAs, ...named].map(([name, spelling]) => [withoutAccents(name).toLowerCase(), spelling]),
  );
  // "pies cuadrados" before "pies".
  const longestFirst = [...read.keys()]
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  const pattern = new RegExp(oneOf(longestFirst), "giu");
  return withoutAccents(typed).replace(pattern, (name) => read.get(name.toLowerCase()) ?? name);
}

/** The pattern of any of these words, by itself. */
function oneOf(words: readonly string[]): string {
  return `(?<!\\p{L})(?:${words.join("|")})(?!\\p{L})`;
}

function isOfLetters(word: string): boolean {
  return [...word].every((letter) => LETTERS.includes(letter));
}

/** An answer as it comes in: a quantity, a number, or text as a student types it. */
class AnswerField extends Field<PracticeAnswer> {
  constructor(
    private readonly unit: Unit | undefined,
    private readonly isLetters: boolean,
    private readonly hasSize: boolean,
    private readonly reader: ReturnType<typeof textReader>,
    private readonly words: PracticeMessages = ENGLISH_PRACTICE_WORDS,
  ) {
    super("The answer.");
  }

  read(input: unknown, check: Check): PracticeAnswer | undefined {
    if (typeof input !== "string") return figure().read(input, check);
    if (this.isLetters) return this.fromLetters(input, check);
    const typed = this.amountIn(input);
    try {
      return this.reader.number(typed);
    } catch (error) {
      if (!(error instanceof SprayMathError)) throw error;
      return this.fromText(typed, check);
    }
  }

  /** The amount alone, without the sum before it (`330 x 264 / 43,560 = 2`), words that say it is rounded, and the end of the sentence. */
  private amountIn(input: string): string {
    const about = new RegExp(`${oneOf(this.words.practice.about.split(","))}\\.?|[~≈]`, "giu");
    return input
      .replace(/^.*=/s, "")
      .replace(about, "")
      .replace(/(?<=\d)\s*[.?]\s*$/, "")
      .trim();
  }

  /** The letters of an order, without the words between them: `B, D, and A`. */
  private fromLetters(input: string, check: Check): string | undefined {
    const joining = this.words.practice.joining.toUpperCase().split(",");
    const words = input
      .toUpperCase()
      .split(/\P{L}/u)
      .filter((word) => !joining.includes(word));
    const apart = words.filter((word) => word.length === 1);
    // A letter that isn't on the list is a mistake, and no word.
    const typed = apart.length > 1 ? apart : words.filter((word) => isOfLetters(word) || word.length === 1);
    const order = typed.join("");
    if (order !== "") return order;
    return check.fault("unreadable", "letters-only", "", "Enter only the letters, in their order.");
  }

  private fromText(input: string, check: Check): PracticeAnswer | undefined {
    const dimensions = this.unit === undefined ? [] : [dimensionOf(this.unit)];
    const typed = this.hasSize ? this.withoutSpoons(input) : input;
    try {
      return this.reader.quantity(inSpellings(typed, this.words), dimensions, () => this.unit);
    } catch (error) {
      if (this.unit !== undefined) return check.caught(error);
      if (new RegExp(`\\d.*${oneOf(this.words.practice.joining.split(","))}`, "iu").test(input))
        return check.fault(
          "unreadable",
          "one-count",
          "",
          "Enter one number: all that the question asks you to count.",
        );
      // "5 loads": what is counted is no unit. Of spoons, a word may say that they are others: heaped ones.
      const count = this.hasSize ? undefined : /^([^\p{L}]*\d[^\p{L}]*?)\s[\p{L}\s]+\.?$/u.exec(input)?.[1];
      try {
        return this.reader.number(count ?? typed);
      } catch (noNumber) {
        return check.caught(noNumber);
      }
    }
  }

  /** "9 level spoons" are 9 of those that are asked for. */
  private withoutSpoons(input: string): string {
    return input.replace(new RegExp(oneOf(this.words.practice.levelSpoons.split(",")), "giu"), "");
  }

  missing(check: Check): undefined {
    return check.fault("missing", "enter-number", "", "Enter a number here.");
  }
}

/**
 * Checks an answer to a practice problem, and finds the mistake behind a wrong one, or two that were made together.
 *
 * An amount of product that is rounded up is a mistake of its own: it is too much. A bare number is taken in the
 * unit of the question; where it would be right in another unit, that is the mistake.
 *
 * @param problem - a problem from `practiceProblem` or `problemFrom`
 * @param answer - a quantity, a number, or text as a student types it: `"3 gal"`, `"22.5"`, `"1 1/2"`; for an order, its letters
 * @param options - see {@link AnswerOptions}
 * @returns the verdict in code and in words
 * @throws SprayMathError `missing`, `unreadable`, `incomplete`, `ambiguous-number`, `unknown-unit` or `not-finite` for an answer that can't be
 *   read; what is no problem is refused as by `practiceSheet`; `out-of-range` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { checkAnswer, problemFrom } from "swath-to-spoon/practice";
 * import { qty } from "swath-to-spoon/units";
 *
 * const problem = problemFrom("rectangle-area", { length: qty(330, "ft"), width: qty(264, "ft") });
 * console.log(checkAnswer(problem, "2 ac").verdict); // right
 * console.log(checkAnswer(problem, "87,120 sq ft").verdict); // other-unit
 * console.log(checkAnswer(problem, 1).mistakes[0]?.what); // The area was cut in half, as for a triangle.
 * ```
 */
export function checkAnswer(
  problem: PracticeProblem,
  answer: Quantity | number | string,
  options: AnswerOptions = {},
): AnswerCheck {
  const { topic: name, units, given: figures } = checked(problem, PROBLEM, "problem");
  const topic = TOPICS[name];
  const given = checked(figures, topic.fields, "problem.given");
  const { tolerancePercent = 1, locale, words } = checked(options, ANSWER_OPTIONS, "options");
  const sizes = sizesIn(units);
  const right = topic.answer(given, sizes);
  const unit = topic.unit?.(sizes);
  const reader = textReader({ locale, system: units });
  const writer = practiceWriter({ locale, words });
  const field = new AnswerField(unit, typeof right === "string", topic.counted !== undefined, reader, words);
  const read = checked(answer, field, "answer");
  const found = verdictOn(read, { topic, given, sizes, right, unit, tolerance: tolerancePercent / 100 });
  const { note } = noteOf(name, given, writer);
  return dressed(found, read, right, { topic, given, sizes, writer, note, tolerancePercent });
}

/** A problem as answers are held against it. */
interface Key {
  readonly topic: AnyTopic;
  readonly given: Given;
  readonly sizes: Sizes;
  readonly right: number | string;
  readonly unit: Unit | undefined;
  /** How far off a right answer may be, as a part of it. */
  readonly tolerance: number;
}

interface Found {
  readonly verdict: AnswerVerdict;
  /** Whether an answer in another unit is rounded too. */
  readonly rounded?: boolean | undefined;
  readonly off?: number | undefined;
  readonly mistakes: readonly MistakeCode[];
  /** The step whose result was given as the answer. */
  readonly step?: WorkingLine | undefined;
}

const found = (verdict: AnswerVerdict, off?: number, mistakes: readonly MistakeCode[] = []): Found => ({
  verdict,
  off,
  mistakes,
});

/** A mistake that leads to an answer. */
const known = ({ mistakes, step }: WrongAnswer, off?: number): Found => ({
  ...found("mistake", off, mistakes),
  step,
});

function verdictOn(read: PracticeAnswer, key: Key): Found {
  const { right, unit } = key;
  if (typeof right === "string") return onLetters(String(read), key);
  // Text is read as letters only where they are asked for.
  const amount = read as Quantity | number;
  const answer = key.topic.mayHaveMinus?.(key.given) === true ? withoutMinus(amount) : amount;
  if (typeof answer === "number") return onNumber(answer, key, { value: answer, right, isBare: true });
  // What is counted may have a size: 9 tsp are nine spoons of 1 tsp.
  const one = unit === undefined ? key.topic.counted?.(key.given) : { value: 1, unit };
  const isNumberRight = one?.value === 1 && isRight(onNumber(answer.value, key));
  if (one === undefined || dimensionOf(answer.unit) !== dimensionOf(one.unit)) {
    if (isNumberRight) return found("mistake", undefined, ["right-number"]);
    const step = stepWith(answer, key);
    return step === undefined ? found("mistake", undefined, ["other-kind-of-unit"]) : known(step);
  }
  const asked = inUnit(answer, one.unit) / one.value;
  const whole = { value: right * one.value, unit: one.unit };
  const typed = { value: answer.value, right: inUnit(whole, answer.unit), isBare: false };
  const inIts = onNumber(asked, key, typed);
  // Spoons of another size are no count of those that are asked for: near it, they may well be under the dose.
  if (!isRight(inIts)) {
    if (isNumberRight) return found("mistake", inIts.off, ["right-number"]);
    return unit === undefined ? ofOtherSize(answer, one, inIts, key) : inIts;
  }
  // Nine spoons of 5 mL are 9 metric teaspoons too.
  const isSame = compareDecided(inUnit({ value: 1, unit: answer.unit }, one.unit), 1) === 0;
  const isAsAsked = isSame || (unit === undefined && answer.value === right);
  return isAsAsked ? inIts : { ...inIts, verdict: "other-unit", rounded: inIts.verdict === "rounded" };
}

/** The verdict on so many of a measure that isn't the one that the question counts. */
function ofOtherSize({ value, unit }: Quantity, one: Quantity, inIts: Found, key: Key): Found {
  const isSame = compareDecided(inUnit({ value: 1, unit }, one.unit), one.value) === 0;
  if (isSame || inIts.verdict === "mistake") return inIts;
  const byNumber = onNumber(value, key);
  return byNumber.verdict === "mistake" ? byNumber : found("mistake", undefined, ["other-kind-of-unit"]);
}

const isRight = ({ verdict }: Found): boolean => verdict === "right" || verdict === "rounded";

function withoutMinus(answer: Quantity | number): Quantity | number {
  return typeof answer === "number" ? Math.abs(answer) : { ...answer, value: Math.abs(answer.value) };
}

function onLetters(answer: string, { right, topic, given, sizes }: Key): Found {
  if (answer === right) return found("right");
  const mistake = wrongAnswers(topic, given, sizes).find((one) => one.answer === answer);
  return mistake === undefined ? found("unknown") : found("mistake", undefined, mistake.mistakes);
}

// What is written out with four figures or more is no rounding.
const EXACT = 0.0005;

/** A number as it was typed, beside the right one in the same unit: people round what they type. */
interface Typed {
  readonly value: number;
  readonly right: number;
  /** Whether it came without a unit. */
  readonly isBare: boolean;
}

/** The verdict on a number in the unit of the question. */
function onNumber(value: number, key: Key, inIts?: Typed): Found {
  const { topic, given, sizes, unit, tolerance } = key;
  const right = key.right as number;
  const typed = inIts ?? { value, right, isBare: false };
  // Nobody rounds a count.
  const limit = unit === undefined ? 0 : tolerance;
  const off = value / right - 1;
  if (compareDecided(value, right) === 0 || Math.abs(off) < Math.min(EXACT, limit))
    return found("right", off);
  const isOver = topic.isDose === true && moreThan(value, right);
  const rounded = isOver ? found("mistake", off, ["dose-rounded-up"]) : found("rounded", off);
  if (isWithin(off, limit)) return rounded;
  // The sheet says that such a rounding is right, whatever mistake leads near it. An amount is the same in any unit, so it is judged
  // in the unit of the question.
  if (limit > 0 && isRightRounding({ value, right }, topic)) return rounded;
  const isRoundedUp = limit > 0 && isOver && isWithin(off, MOST_ROUNDED) && isRounding(typed, ceilDecided);
  const single = singleNear(value, key);
  // In a unit of the student's own, a rounding up is the plainer mistake than one on the way.
  const isPlainer = isRoundedUp && typed.value !== value && single?.mistakes.includes("rounded-early");
  if (single !== undefined && !isPlainer) return known(single, off);
  if (isRoundedUp) return rounded;
  // Nobody moves the point of a count, and no two mistakes lead to one.
  if (unit === undefined) return found("unknown", off);
  if (isPointMoved(value / right)) return found("mistake", off, ["decimal-point"]);
  if (typed.isBare && isInAnotherUnit(value, right, unit, key))
    return found("mistake", off, ["number-in-other-unit"]);
  // However coarse a rounding is, nobody made two mistakes for it, nor for what is so near.
  if (isWithin(off, MOST_ROUNDED)) return found("unknown", off);
  if ([floorDecided, ceilDecided].some((round) => isRounding(typed, round)))
    return isOver ? rounded : found("unknown", off);
  // A number of two figures is near to too many of them by chance.
  const near = inTwoFigures(typed.value) === typed.value ? 0 : tolerance / 2;
  const double = nearest(doublyWrongAnswers(topic, given, sizes), value, near);
  return double === undefined ? found("unknown", off) : found("mistake", off, double.mistakes);
}

/** Whether a number has the right digits, and its decimal point is one to three places off. */
function isPointMoved(times: number): boolean {
  const places = Math.round(Math.log10(times));
  return places !== 0 && Math.abs(places) <= 3 && Math.abs(times / 10 ** places - 1) < EXACT;
}

/** The wrong answer that is the result of a step in a unit of its own: the total mix where its product is asked for. */
function stepWith(answer: Quantity, key: Key): WrongAnswer | undefined {
  const { topic, given, sizes, tolerance } = key;
  const step = stepsOf(topic, given, sizes).find(
    ({ result }) =>
      typeof result === "object" &&
      dimensionOf(result.unit) === dimensionOf(answer.unit) &&
      isWithin(inUnit(answer, result.unit) / result.value - 1, tolerance),
  );
  if (step === undefined) return undefined;
  const { value } = step.result as Quantity;
  // A key lists no step whose number is near the right one.
  return singleNear(value, key) ?? stepForAnswer(step, value);
}

/** The known wrong answer that a value is nearest to. */
function singleNear(value: number, { topic, given, sizes, tolerance }: Key): WrongAnswer | undefined {
  // First as a key lists them; then those that were too near to another one for a key.
  const all = allWrongAnswers(topic, given, sizes);
  return nearest(listed(topic, all), value, tolerance) ?? nearest(all, value, tolerance);
}

/** The wrong answer that a value is nearest to, within a tolerance. */
function nearest(all: readonly WrongAnswer[], value: number, tolerance: number): WrongAnswer | undefined {
  const away = ({ answer }: WrongAnswer): number => Math.abs(value / (answer as number) - 1);
  const near = all.filter(
    (one) => compareDecided(value, one.answer as number) === 0 || isWithin(away(one), tolerance),
  );
  return near.sort((a, b) => away(a) - away(b))[0];
}

/** Whether a bare number is the right answer in another unit that a student could have had in mind. */
function isInAnotherUnit(value: number, right: number, unit: Unit, { sizes, tolerance }: Key): boolean {
  const { volume, smallVolume, label, area, landArea, lawn, mass, smallMass } = sizes;
  return [volume, smallVolume, label, area, landArea, lawn, mass, smallMass].some(
    (other) =>
      dimensionOf(other) === dimensionOf(unit) &&
      isWithin(inUnit({ value, unit: other }, unit) / right - 1, tolerance),
  );
}

interface Dressing extends Pick<Key, "topic" | "given" | "sizes"> {
  readonly note: string | undefined;
  readonly tolerancePercent: number;
  readonly writer: Writer<PracticeMessages>;
}

const inTwoFigures = (value: number): number => Number(value.toPrecision(2));

/**
 * How far off an answer is, in percent of the right one, in two figures. Three, rounded up, where two would say that it is within a limit
 * that it is over: 1.04% is more than 1%.
 */
function percentOff(off: number, limits: readonly number[]): number {
  const percent = Number((Math.abs(off) * 100).toPrecision(12));
  const short = inTwoFigures(percent);
  if (!limits.some((limit) => percent > limit && short <= limit)) return short;
  const step = 10 ** (Math.floor(Math.log10(percent)) - 2);
  return Number((Math.ceil(Number((percent / step).toPrecision(10))) * step).toPrecision(3));
}

/** How many times the larger of two answers is the smaller one; nothing that a text says where one of them is 0. */
const timesOff = (off: number): number => (off > -1 ? Math.max(1 + off, 1 / (1 + off)) : 0);

const lettersOf = (answer: PracticeAnswer): string[] =>
  typeof answer === "string" ? [...answer].sort() : [];

// From here on, a percentage is harder to read than so many times.
const MANY_TIMES = 3;

/** What is said of an answer that nothing explains. */
function unknownText(
  off: number | undefined,
  answer: PracticeAnswer,
  key: PracticeAnswer,
  { practice, mistakes }: PracticeMessages,
  asked: Unit | undefined,
): string {
  if (off === undefined)
    return lettersOf(answer).join() === lettersOf(key).join()
      ? `${practice.mistake} ${mistakes["order-as-listed"].mend}`
      : practice.eachLetter;
  // Less than nothing: a percentage would say no more.
  if (off < -1) return practice.mistake;
  const isHigh = off > 0;
  // Nobody reads a percentage of a percentage.
  if (asked === "%") return isHigh ? practice.tooHigh : practice.tooLow;
  const isFar = timesOff(off) >= MANY_TIMES;
  if (isHigh) return isFar ? practice.timesHigh : practice.unknownHigh;
  return isFar ? practice.timesLow : practice.unknownLow;
}

/** A verdict in words. */
function dressed(
  { verdict, rounded, off, mistakes: codes, step }: Found,
  answer: PracticeAnswer,
  right: number | string,
  { topic, given, sizes, writer, note, tolerancePercent }: Dressing,
): AnswerCheck {
  const { messages, fill, short } = writer;
  const { practice } = messages;
  const asked = topic.unit?.(sizes) ?? topic.counted?.(given).unit;
  const mistakes = codes.map((code) => shownMistake(code, sizes, writer, { asked, step }));
  const key = inAnswerUnit(topic, right, sizes);
  const figures = {
    answer: rightText(key, topic, writer),
    percent: short({ value: percentOff(off ?? 0, [tolerancePercent, MOST_ROUNDED * 100]), unit: "%" }),
    times: inTwoFigures(timesOff(off ?? 0)),
    letters: listText(lettersOf(key), writer),
  };
  const isOnlyMinus = isWithin((off ?? 0) + 2, Math.max(EXACT, tolerancePercent / 100));
  const opening = {
    right: practice.right,
    rounded: practice.rounded,
    "other-unit": rounded ? practice.otherUnitRounded : practice.otherUnit,
    mistake: mistakes.length === 2 ? practice.twoMistakes : practice.mistake,
    unknown: isOnlyMinus ? practice.minus : unknownText(off, answer, key, messages, asked),
  }[verdict];
  // How far off one mistake alone would be isn't how far off two of them are.
  const texts = mistakes.flatMap(({ what, see, mend }) =>
    mistakes.length === 2 ? [what, mend] : [what, see, mend],
  );
  return {
    verdict,
    says: [fill(opening, figures), ...texts, ...(note === undefined ? [] : [note])].join(" "),
    answer,
    ...(off !== undefined && { off }),
    mistakes,
  };
}
