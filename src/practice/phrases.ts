import { intl } from "../units/engine.js";
import type { SheetFact } from "../worksheet/job/facts.js";
import { facts } from "../worksheet/render/page.js";
import type { SheetBlock } from "../worksheet/render/sheets.js";
import { orEnglish, type Writer } from "../worksheet/words/writer.js";
import type { PracticeAnswer } from "./topics/topic.js";
import type { PracticeMessages } from "./words.js";

/** An answer as it is printed: letters as they are. */
export function answerText(answer: PracticeAnswer, { short }: Writer<PracticeMessages>): string {
  return typeof answer === "string" ? answer : short(answer);
}

/** Several things as a sentence lists them: `3 ft, 4 ft, and 5 ft`. */
export function listText(
  texts: readonly string[],
  { messages: { language } }: Pick<Writer<PracticeMessages>, "messages">,
): string {
  return new (intl("ListFormat"))(orEnglish(language), { type: "conjunction" }).format(texts);
}

/** The table of wrong answers, each with what it shows. */
export function mistakesTable(
  rows: readonly SheetFact[],
  { messages: { practice } }: Writer<PracticeMessages>,
): SheetBlock {
  return facts(practice.mistakes, { what: practice.wrongAnswer, howMuch: practice.shows }, rows, "table");
}
