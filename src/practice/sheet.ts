import { checked } from "../units/check.js";
import { list } from "../units/fields.js";
import { writtenLines } from "../worksheet/lines/written-line.js";
import { facts, heading, sourcesList, text, working } from "../worksheet/render/page.js";
import type { SheetBlock, SheetOfBlocks } from "../worksheet/render/sheets.js";
import { writerFor } from "../worksheet/words/writer.js";
import { PRACTICE_SHEET_OPTIONS, type PracticeSheetOptions } from "./options.js";
import type { PracticeProblem } from "./problem.js";
import { PROBLEM } from "./problem-field.js";
import type { PracticeAnswer } from "./topics/topic.js";
import { ENGLISH_PRACTICE_WORDS } from "./words.js";

const PROBLEMS = /* @__PURE__ */ list("", PROBLEM);

/**
 * Writes practice problems on one sheet: for students the problems alone, for the teacher with answer, working and the
 * common wrong answers.
 *
 * @param problems - problems from `practiceProblem`, made with the same locale and words
 * @param options - see {@link PracticeSheetOptions}
 * @returns the parts of the sheet in order, as data; `renderText`, `renderMarkdown`, `renderHtml` and `renderLatex` lay them out
 * @throws SprayMathError `missing`, `not-a-quantity`, `unknown-choice` or `unknown-field` for what are no problems, `too-few` for none, `out-of-range`,
 *   `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { practiceProblem, practiceSheet } from "swath-to-spoon/practice";
 * import { renderText } from "swath-to-spoon/worksheet";
 *
 * const problems = [practiceProblem("band", 1), practiceProblem("dilution", 1)];
 * const sheet = practiceSheet(problems, { answers: true });
 * console.log(sheet.blocks[0]); // { kind: 'heading', level: 2, text: 'Problem 1' }
 * console.log(renderText(sheet).split("\n")[0]); // Practice problems
 * ```
 */
export function practiceSheet(
  problems: readonly PracticeProblem[],
  options: PracticeSheetOptions = {},
): SheetOfBlocks {
  const all = checked(problems, PROBLEMS, "problems");
  const { answers = false, ...writing } = checked(options, PRACTICE_SHEET_OPTIONS, "options");
  const writer = writerFor(writing, ENGLISH_PRACTICE_WORDS);
  const { messages, short, fill } = writer;
  const { text: words, practice } = messages;
  const answerText = (answer: PracticeAnswer): string =>
    typeof answer === "string" ? answer : short(answer);
  const key = ({ answer, working: lines, mistakes }: PracticeProblem): SheetBlock[] => [
    facts(practice.answer, words, [{ name: practice.answer, value: answerText(answer) }]),
    heading(3, words.working),
    ...working(writtenLines(lines, writer)),
    heading(3, practice.mistakes),
    facts(
      practice.mistakes,
      { what: practice.wrongAnswer, howMuch: practice.shows },
      mistakes.map((one) => ({ name: answerText(one.answer), value: one.what })),
      "table",
    ),
  ];
  return {
    kind: "practice",
    language: messages.language,
    title: practice.title,
    blocks: [
      ...all.flatMap((problem, at) => [
        heading(2, fill(practice.problem, { number: at + 1 })),
        text(problem.problem),
        ...(answers ? key(problem) : []),
      ]),
      ...sourcesList(words.sources, answers),
    ],
  };
}
