import { decided } from "../units/decide.js";
import { intl } from "../units/engine.js";
import type { WorkingLine } from "../units/working-line.js";
import type { SheetFact } from "../worksheet/job/facts.js";
import { factorsOf } from "../worksheet/lines/factors.js";
import { facts } from "../worksheet/render/page.js";
import type { SheetBlock } from "../worksheet/render/sheets.js";
import { orEnglish, SUMMARY_DIGITS, type Writer } from "../worksheet/words/writer.js";
import type { AnyTopic, PracticeAnswer } from "./topics/topic.js";
import type { PracticeMessages } from "./words.js";

/** An answer as it is printed: letters as they are. */
export function answerText(answer: PracticeAnswer, { short }: Writer<PracticeMessages>): string {
  return typeof answer === "string" ? answer : short(answer);
}

/** A right answer as it is printed. More product than the exact amount is wrong, so no figure of one is rounded up. */
export function rightText(
  answer: PracticeAnswer,
  { isDose = false }: Pick<AnyTopic, "isDose">,
  writer: Writer<PracticeMessages>,
): string {
  const down = (value: number): number => decided(value).prec(SUMMARY_DIGITS, 0).toNumber();
  // A dose is an amount: what is counted is a whole number, and is never over.
  if (!isDose || typeof answer !== "object") return answerText(answer, writer);
  return answerText({ ...answer, value: down(answer.value) }, writer);
}

/** A wrong answer as a student has it: 11,979 sq ft left as acres is no 11,980. */
export function wrongAnswerText(answer: PracticeAnswer, writer: Writer<PracticeMessages>): string {
  const value = typeof answer === "object" ? answer.value : answer;
  return typeof answer !== "string" && Number(value) >= 1000
    ? writer.long(answer)
    : answerText(answer, writer);
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

/** What a change of unit rests on: `1 gal = 128 fl oz`. The name of such a unit as 1,000 sq ft says its size. */
export function factorTexts(line: WorkingLine, { long }: Pick<Writer<PracticeMessages>, "long">): string[] {
  return factorsOf(line)
    .filter(({ larger }) => !/^\d/.test(larger.unit))
    .map(({ larger, smaller }) => `${long(larger)} = ${long(smaller)}`);
}
