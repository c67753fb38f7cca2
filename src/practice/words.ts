import { frozen } from "../frozen.js";
import type { Field } from "../units/check.js";
import { list, optional } from "../units/fields.js";
import { made, table, written } from "../units/made.js";
import { ENGLISH_WORDS } from "../worksheet/words/english.js";
import type { KnownLines } from "../worksheet/words/known-lines.js";
import type { LineTable } from "../worksheet/words/line-table.js";
import type { Messages } from "../worksheet/words/messages.js";
import { COMMON_PARTS, MessagesField, texts } from "../worksheet/words/messages-field.js";
import { ENGLISH_MISTAKES, type MistakeCode, type MistakeWords } from "./mistakes.js";
import { ENGLISH_TOPICS, type TopicWords } from "./topic-words.js";
import type { PracticeTopic } from "./topics/all.js";
import type { MixingKind } from "./topics/mixing-order.js";
import type { Wordings } from "./topics/topic.js";

/** The lines that practice problems add to those of the library: each one's id, and the symbols of its terms. */
export interface PracticeLines {
  "practice.spoons": "amount" | "spoon";
  "practice.product": "rate" | "area";
  "practice.productOnGround": "rate" | "area";
  "practice.fertilizer": "rate" | "area";
  "practice.spotMix": "spots" | "each";
  "practice.seasonLeft": "limit" | "done" | "rate";
  "practice.catchOnStrip": "caught" | "walk" | "time";
  "practice.catchMean": "x" | "n";
  "practice.nozzleOff": "worst" | "mean";
  "practice.solution": "ratio" | "stock";
  "practice.lastLoad": "total" | "loads" | "fill";
  "practice.allRows": "rows" | "rowLength";
  "practice.productOnRows": "rate" | "rowLength";
}

/** Every word of practice problems and their keys: a table for worksheets as well, with more in it. */
export interface PracticeMessages extends Messages {
  /** The names of results and terms, by the id of the line of working. */
  readonly lines: LineTable<KnownLines & PracticeLines>;
  /** The kinds of products in the topic on mixing order. */
  readonly kinds: Readonly<Record<MixingKind, string>>;
  /** What students type where the library reads another spelling, several apart by commas: `{ L: "litro,litros" }`. The names of `units` are read without it. */
  readonly spellings: Readonly<Record<string, string>>;
  /** The topics, with four wordings each. */
  readonly topics: Readonly<Record<PracticeTopic, TopicWords>>;
  /** The mistakes. */
  readonly mistakes: Readonly<Record<MistakeCode, MistakeWords>>;
  /** The rest of a practice sheet, and what is said of an answer that was checked. */
  readonly practice: Readonly<Record<PracticeText, string>>;
}

/** The keys of single texts. */
export type PracticeText =
  | "title"
  | "problem"
  | "answer"
  | "answerIs"
  | "mistakes"
  | "wrongAnswer"
  | "shows"
  | "right"
  | "rounded"
  | "otherUnit"
  | "otherUnitRounded"
  | "mistake"
  | "twoMistakes"
  | "unknownHigh"
  | "unknownLow"
  | "tooHigh"
  | "tooLow"
  | "timesHigh"
  | "timesLow"
  | "minus"
  | "levelSpoons"
  | "joining"
  | "about"
  | "eachLetter"
  | "tolerance"
  | "factors"
  | "roundings"
  | "doses"
  | "titleOfSet"
  | "titleOfKey"
  | "name"
  | "date"
  | "toScale"
  | "theProblem"
  | "estimate"
  | "estimateOf"
  | "estimateOthers"
  | "roundedTo"
  | "step"
  | "stepIn"
  | "unitsOnly"
  | "cancel"
  | "check"
  | "checkMore"
  | "checkOf"
  | "checkSame"
  | "hundreds"
  | "thousands";

/** Practice problems in English. */
export const ENGLISH_PRACTICE_WORDS: PracticeMessages = /* @__PURE__ */ frozen(
  (() => ({
    ...ENGLISH_WORDS,
    lines: {
      ...ENGLISH_WORDS.lines,
      "practice.spoons": {
        found: "whole level spoons",
        terms: { amount: "amount of product", spoon: "one spoon" },
      },
      "practice.product": {
        found: "product for the plot",
        terms: { rate: "product rate", area: "treated area" },
      },
      "practice.productOnGround": {
        found: "product for the plot",
        terms: { rate: "product rate", area: "ground area" },
      },
      "practice.fertilizer": {
        found: "fertilizer for the plot",
        terms: { rate: "fertilizer", area: "area of the plot" },
      },
      "practice.spotMix": {
        found: "total mix for all spots",
        terms: { spots: "number of spots", each: "mix for one spot" },
      },
      "practice.seasonLeft": {
        found: "applications left",
        terms: { limit: "season's limit", done: "applications so far", rate: "rate of one application" },
      },
      "practice.catchOnStrip": {
        found: "catch in the time for the strip",
        terms: { caught: "catch", walk: "time for the strip", time: "time of the catch" },
      },
      "practice.catchMean": {
        found: "average catch",
        terms: { x: "catch of nozzle {n}", n: "number of nozzles" },
      },
      "practice.nozzleOff": {
        found: "deviation from the average (larger − smaller)",
        terms: {
          worst: "catch of worst nozzle {n}",
          mean: "average catch",
        },
      },
      "practice.solution": {
        found: "solution (the mix) that the stock makes",
        terms: { ratio: "parts of solution per part of stock", stock: "stock" },
      },
      "practice.lastLoad": {
        found: "mix in the last load",
        terms: { total: "total mix to make", loads: "number of loads", fill: "tank fill" },
      },
      "practice.allRows": {
        found: "length of all rows",
        terms: { rows: "number of rows", rowLength: "length of one row" },
      },
      "practice.productOnRows": {
        found: "product for the rows",
        terms: { rate: "product rate", rowLength: "length of all rows" },
      },
    },
    kinds: {
      "water-conditioner": "a water conditioner",
      WP: "a wettable powder (WP)",
      WG: "water-dispersible granules (WG)",
      SC: "a suspension concentrate (SC)",
      EC: "an emulsifiable concentrate (EC)",
      adjuvant: "an adjuvant",
    },
    spellings: { ft2: "sf,sqft", lb: "#" },
    topics: ENGLISH_TOPICS,
    mistakes: ENGLISH_MISTAKES,
    practice: {
      title: "Practice problems",
      problem: "Problem {number}",
      answer: "Answer",
      answerIs: "Answer: {answer}",
      mistakes: "Common wrong answers",
      wrongAnswer: "Wrong answer",
      shows: "What it shows",
      right: "Right.",
      rounded: "Right, but rounded. The exact answer is {answer}.",
      otherUnit: "Right, but in another unit. In the unit of the question it is {answer}.",
      otherUnitRounded: "Right, but rounded, and in another unit. The exact answer is {answer}.",
      mistake: "Not right.",
      twoMistakes: "Not right. Two mistakes could explain this answer.",
      unknownHigh: "Not right: {percent} too high.",
      unknownLow: "Not right: {percent} too low.",
      tooHigh: "Not right: too high.",
      tooLow: "Not right: too low.",
      timesHigh: "Not right: about {times} times the right answer.",
      timesLow: "Not right: the right answer is about {times} times as much.",
      minus: "Not right. The number is right without the minus.",
      // Words that students may write with a count of the spoons that are asked for.
      levelSpoons: "level,spoon,spoons",
      // Words between two counts.
      joining: "and,plus",
      // Words that say of a number that it is rounded.
      about: "about,approximately,approx,around,roughly,or so",
      eachLetter: "Not right. Write each letter once: {letters}.",
      tolerance: "An answer is right if it is within {percent} of the exact answer.",
      roundings:
        "The exact answer in the unit of the question, rounded to one, two, or three figures, is right too if it is within {roundest}.",
      doses: "Round an amount of product down: more than the exact answer is wrong. A count must be exact.",
      factors: "You may need: {factors}.",
      titleOfSet: "{title}, set {set}",
      titleOfKey: "{title}: key",
      name: "Name",
      date: "Date",
      toScale: "Drawn to scale",
      theProblem: "The problem",
      estimate: "Estimate",
      estimateOf: "Round {figures}. It comes to about {answer}.",
      estimateOthers: "Round {figures}. With the other figures as given, it comes to about {answer}.",
      roundedTo: "{given} to {round}",
      step: "Step {number}: {found}",
      stepIn: "Step {number}: {found} in {unit}",
      unitsOnly: "Units: {units}",
      cancel: "{units} {count:one=cancels;other=cancel}.",
      check: "Check in other units",
      checkMore: "Check in other units, continued",
      checkOf: "In the other units: {figures}.",
      checkSame: "That is the same answer.",
      hundreds: "hundreds of {unit}",
      thousands: "thousands of {unit}",
    },
  }))(),
);

const WORDINGS: Field<Wordings> = /* @__PURE__ */ (() =>
  list("", written(), { least: 4, most: 4 }) as Field<unknown> as Field<Wordings>)();

const PARTS = /* @__PURE__ */ (() => ({
  ...COMMON_PARTS,
  topics: table(
    made<TopicWords>({ name: written(), problems: WORDINGS, note: optional(written()) }),
    Object.keys(ENGLISH_TOPICS),
  ),
  mistakes: table(
    made<MistakeWords>({ what: written(), see: written(), mend: written() }),
    Object.keys(ENGLISH_MISTAKES),
  ),
  kinds: texts(ENGLISH_PRACTICE_WORDS.kinds),
  spellings: table(written()),
  practice: texts(ENGLISH_PRACTICE_WORDS.practice),
}))();

/** The table of words of practice problems. */
export const PRACTICE_MESSAGES: MessagesField<PracticeMessages> =
  /* @__PURE__ */ new MessagesField<PracticeMessages>(
    "Every word of the problems; English unless given.",
    PARTS,
  );
