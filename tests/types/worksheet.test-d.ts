import { planApplication } from "../../src/plan/index.ts";
import { ENGLISH_PRACTICE_WORDS, type PracticeMessages, practiceProblem } from "../../src/practice/index.ts";
import {
  ENGLISH_WORDS,
  type Messages,
  renderHtml,
  renderText,
  workingSheet,
  worksheet,
} from "../../src/worksheet/index.ts";
import { TWO_PRODUCTS } from "../helpers/jobs.ts";

const plan = planApplication(TWO_PRODUCTS);

// A table is complete or does not compile: a text, a line, a term, a caution, a problem.
const { title: _title, ...texts } = ENGLISH_WORDS.text;
// @ts-expect-error the title is missing
export const noTitle: Messages = { ...ENGLISH_WORDS, text: texts };
export const noLines: Messages = {
  ...ENGLISH_WORDS,
  // @ts-expect-error the words of most lines are missing
  lines: { "plan.treated": { found: "all", terms: { x: "plot" } } },
};
export const noTerm: Messages = {
  ...ENGLISH_WORDS,
  // @ts-expect-error the width's name is missing
  lines: { ...ENGLISH_WORDS.lines, "area.rectangle": { found: "area", terms: { length: "length" } } },
};
const { label: _label, ...cautions } = ENGLISH_WORDS.cautions;
// @ts-expect-error a caution is missing
export const noCaution: Messages = { ...ENGLISH_WORDS, cautions };
const { dilution: _dilution, ...topics } = ENGLISH_PRACTICE_WORDS.topics;
// @ts-expect-error a topic is missing
export const noTopic: PracticeMessages = { ...ENGLISH_PRACTICE_WORDS, topics };
const { "not-halved": _mistake, ...mistakes } = ENGLISH_PRACTICE_WORDS.mistakes;
// @ts-expect-error a mistake is missing
export const noMistake: PracticeMessages = { ...ENGLISH_PRACTICE_WORDS, mistakes };

// A table may have lines of an app's own.
export const more: Messages = {
  ...ENGLISH_WORDS,
  lines: { ...ENGLISH_WORDS.lines, "my-app.sum": { found: "sum", terms: { a: "one", b: "other" } } },
};

// @ts-expect-error not a system of units
worksheet(plan, { units: "stone" });
// @ts-expect-error not a topic
practiceProblem("cooking", 1);
// @ts-expect-error a sheet, and not a plan, is laid out
renderText(plan);
// @ts-expect-error no option of this name
renderHtml(worksheet(plan), { script: "x" });
// @ts-expect-error lines are needed
workingSheet({ title: "x" });
// @ts-expect-error words for worksheets alone have no problems
practiceProblem("band", 1, { words: ENGLISH_WORDS });
worksheet(plan, { words: ENGLISH_PRACTICE_WORDS });
