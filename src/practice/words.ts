import { frozen } from "../frozen.js";
import { ENGLISH_WORDS } from "../worksheet/words/english.js";
import type { KnownLines } from "../worksheet/words/known-lines.js";
import type { LineTable } from "../worksheet/words/line-table.js";
import type { Messages } from "../worksheet/words/messages.js";
import { COMMON_PARTS, MessagesField, texts } from "../worksheet/words/messages-field.js";
import type { MistakeCode, ProblemKind } from "./topics/drawn-problem.js";

/** The lines that practice problems add to those of the library: each one's id, and the symbols of its terms. */
export interface PracticeLines {
  "practice.spoons": "amount";
  "practice.product": "rate" | "area";
}

/** Every word of practice problems and their keys: a table for worksheets as well, with more in it. */
export interface PracticeMessages extends Messages {
  /** The names of results and terms, by the id of the line of working. */
  readonly lines: LineTable<KnownLines & PracticeLines>;
  /** The problems. Each figure has a place by its name; `{unit}` is the unit of the answer. */
  readonly problems: Readonly<Record<ProblemKind, string>>;
  /** What a wrong answer shows. */
  readonly mistakes: Readonly<Record<MistakeCode, string>>;
  /** The headings of a practice sheet. */
  readonly practice: Readonly<
    Record<"title" | "problem" | "answer" | "mistakes" | "wrongAnswer" | "shows", string>
  >;
}

/** Practice problems in English. */
export const ENGLISH_PRACTICE_WORDS: PracticeMessages = /* @__PURE__ */ frozen(
  (() => ({
    ...ENGLISH_WORDS,
    lines: {
      ...ENGLISH_WORDS.lines,
      "practice.spoons": { found: "whole level spoons", terms: { amount: "spoons that the amount fills" } },
      "practice.product": {
        found: "product for the plot",
        terms: { rate: "product rate", area: "treated area" },
      },
    },
    problems: {
      "area-rectangle": "A plot is a rectangle, {length} long and {width} wide. What is its area ({unit})?",
      "area-triangle":
        "A plot is a triangle. Its base is {base}, and the height on that base is {height}. What is its area ({unit})?",
      "area-trapezoid":
        "A plot has two parallel sides, {base} and {top}, which are {height} apart. What is its area ({unit})?",
      "strip-calibration":
        "On a test strip of {distance}, sprayed {swath} wide, the sprayer used {used} of water. What is the output rate ({unit})?",
      "catch-calibration":
        "One nozzle of a boom delivers {caught} of water in {time}. The nozzles are {width} apart, and the sprayer travels at {speed}. What is the output rate ({unit})?",
      "tank-loads":
        "On a field of {ground}, {area} are sprayed. The output rate is {rate}, and the tank is filled to {fill}. How many loads does the job take?",
      "product-per-tank":
        "The label rate is {rate}. The output rate is {carrierRate}, and the tank holds {fill}. The product weighs {density}. How much product goes into a full tank ({unit})?",
      "household-measure":
        "A tank load takes {amount} of product. How many whole level spoons of {spoon} each can go in without going over?",
      band: "{rows} rows, each {rowLength} long and {rowSpacing} apart, are each sprayed in a {bandWidth} band. The label rate is {rate} of treated area. How much product is needed for all the rows ({unit})?",
      "percent-mix":
        "The label calls for {percent} of an additive in the mix. How much of it goes into a tank of {fill} ({unit})?",
      dilution:
        "A sprayer cleaner is sold at a strength of {from}. You need {volume} at {to}. How much cleaner do you add to water to make it ({unit})?",
      "whole-job":
        "{rows} rows, each {rowLength} long and {rowSpacing} apart, are each sprayed in a {bandWidth} band. On a test strip of {distance}, in the same band, the sprayer used {used} of water. The tank is filled to {fill}: full tanks first, then a last load with the rest. The label rate is {rate} of treated area. How much product goes into the last load ({unit})?",
    },
    mistakes: {
      "sides-added": "Length and width were added instead of multiplied.",
      "not-halved": "The half was forgotten: this is the rectangle around the plot.",
      "long-side-only": "Only the longer of the two parallel sides was counted.",
      "wrong-land-unit":
        "The area was divided by the wrong number of square feet per acre (square meters per hectare).",
      "inverted-ratio": "The ratio was turned upside down.",
      "small-unit-as-large": "The amount was read in the small unit and used as if it were the large one.",
      "width-in-small-unit":
        "The width was left in inches (centimeters) while the distance was in feet (meters).",
      "width-left-out": "The width of the strip was left out.",
      "seconds-as-minute": "The catch was taken as that of a whole minute.",
      "rounded-down": "The part load was left out: some of the plot would get no spray.",
      "rounded-up": "The last spoon was rounded up: that is over the amount.",
      "ground-area": "The whole field was counted instead of only what is sprayed.",
      "ground-for-treated":
        "The ground between the bands was counted as well: product for ground that gets none.",
      "one-row-too-few": "The gaps between the rows were counted instead of the rows.",
      "unscaled-product": "The amount for one unit of area was put into each tank, whatever the tank covers.",
      "weighed-as-volume": "The amount by volume was weighed: fluid ounces and ounces are different.",
      "large-spoon": "The spoons were counted as if each held three times as much.",
      "percent-as-part": "The percent was not divided by 100.",
      "per-mille": "The percent was divided by 1,000.",
      "parts-of-water": "The strength was taken as parts to the water instead of parts of the whole mix.",
      "took-the-water": "This is the water that is added, not the cleaner.",
      "full-tank-dose": "The last load got the product of a full tank: it is too strong.",
    },
    practice: {
      title: "Practice problems",
      problem: "Problem {number}",
      answer: "Answer",
      mistakes: "Common wrong answers",
      wrongAnswer: "Wrong answer",
      shows: "What it shows",
    },
  }))(),
);

const PARTS = /* @__PURE__ */ (() => ({
  ...COMMON_PARTS,
  problems: texts(ENGLISH_PRACTICE_WORDS.problems),
  mistakes: texts(ENGLISH_PRACTICE_WORDS.mistakes),
  practice: texts(ENGLISH_PRACTICE_WORDS.practice),
}))();

/** The table of words of practice problems. */
export const PRACTICE_MESSAGES: MessagesField<PracticeMessages> =
  /* @__PURE__ */ new MessagesField<PracticeMessages>(
    "Every word of the problems; English unless given.",
    PARTS,
  );
