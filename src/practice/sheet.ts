import { checked, type Field } from "../units/check.js";
import { list } from "../units/fields.js";
import { sheetLines } from "../worksheet/lines/written-line.js";
import { heading, sourcesList, text, working } from "../worksheet/render/page.js";
import type { GroupBlock, SheetBlock, SheetOfBlocks } from "../worksheet/render/sheets.js";
import type { Writer } from "../worksheet/words/writer.js";
import { PRACTICE_SHEET_OPTIONS, type PracticeSheetOptions } from "./options.js";
import { factorTexts, mistakesTable, rightText, wrongAnswerText } from "./phrases.js";
import type { PracticeMistake, PracticeProblem } from "./problem.js";
import { drawingOf } from "./problem-drawing.js";
import { PROBLEM } from "./problem-field.js";
import { MOST_ROUNDED } from "./rounding.js";
import { PRACTICE_TOPICS, TOPICS } from "./topics/all.js";
import type { PracticeMessages } from "./words.js";
import { practiceWriter } from "./writer.js";

const PROBLEMS: Field<readonly PracticeProblem[]> = /* @__PURE__ */ list("", PROBLEM);

type Part = GroupBlock["blocks"][number];

/**
 * Writes practice problems on one sheet, from easy to hard. A student's sheet has the problems alone. A teacher's key has answers
 * and common wrong answers, a long one the working as well.
 *
 * @param problems - problems from `practiceProblem`, `problemFrom` or a set, made with the same locale and words
 * @param options - see {@link PracticeSheetOptions}
 * @returns the parts of the sheet in order, as data; `renderText`, `renderMarkdown`, `renderHtml` and `renderLatex` lay them out
 * @throws SprayMathError `missing`, `not-a-quantity`, `unknown-choice` or `unknown-field` for what are no problems, `too-few` for none, `out-of-range`,
 *   `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { practiceSet, practiceSheet } from "swath-to-spoon/practice";
 * import { renderText } from "swath-to-spoon/worksheet";
 *
 * const { set, problems } = practiceSet(7, { topics: ["band", "dilution"] });
 * const sheet = practiceSheet(problems, { set, className: "Pesticide safety, evening class", workLines: 6 });
 * const key = practiceSheet(problems, { set, key: "long" });
 * console.log(renderText(sheet).split("\n")[0]); // Practice problems, set A-7
 * console.log(key.title); // Practice problems, set A-7: key
 * ```
 */
export function practiceSheet(
  problems: readonly PracticeProblem[],
  options: PracticeSheetOptions = {},
): SheetOfBlocks {
  const all = checked(problems, PROBLEMS, "problems");
  const {
    className,
    nameAndDate = true,
    factors = true,
    tolerancePercent = 1,
    ...others
  } = checked(options, PRACTICE_SHEET_OPTIONS, "options");
  const writer = practiceWriter(others);
  const { messages, fill, short } = writer;
  const { practice } = messages;
  const isKey = others.key !== undefined;
  const inOrder = [...all].sort(
    (a, b) => PRACTICE_TOPICS.indexOf(a.topic) - PRACTICE_TOPICS.indexOf(b.topic),
  );
  const rules = [practice.tolerance, ...(tolerancePercent > 0 ? [practice.roundings] : []), practice.doses];
  const ruleOfRounding = fill(rules.join(" "), {
    percent: short({ value: tolerancePercent, unit: "%" }),
    roundest: short({ value: MOST_ROUNDED * 100, unit: "%" }),
  });
  return {
    kind: "practice",
    language: messages.language,
    title: titleOf(others, writer),
    blocks: [
      ...(className === undefined ? [] : [text(className)]),
      ...(nameAndDate && !isKey ? [{ kind: "blanks", items: [practice.name, practice.date] } as const] : []),
      text(ruleOfRounding),
      ...(factors && !isKey ? factorsText(inOrder, writer) : []),
      ...inOrder.map((problem, at) => grouped(problem, at + 1, others, writer)),
      ...sourcesList(
        messages.text.sources,
        others.key === "long" && all.some(({ working: lines }) => lines.length > 0),
      ),
    ],
  };
}

/** The factors between units that the problems need, each once: a student may know them, or not. */
function factorsText(problems: readonly PracticeProblem[], writer: Writer<PracticeMessages>): SheetBlock[] {
  const texts = problems.flatMap(({ working: lines }) => lines.flatMap((line) => factorTexts(line, writer)));
  if (texts.length === 0) return [];
  const { messages, fill } = writer;
  return [text(fill(messages.practice.factors, { factors: [...new Set(texts)].join("; ") }))];
}

function titleOf(
  { title, set, key }: PracticeSheetOptions,
  { messages: { practice }, fill }: Writer<PracticeMessages>,
): string {
  const plain = title ?? practice.title;
  const numbered = set === undefined ? plain : fill(practice.titleOfSet, { title: plain, set });
  return key === undefined ? numbered : fill(practice.titleOfKey, { title: numbered });
}

/** A problem with what belongs to it, which no page breaks apart: a long key may take several pages. */
function grouped(
  problem: PracticeProblem,
  number: number,
  options: PracticeSheetOptions,
  writer: Writer<PracticeMessages>,
): SheetBlock {
  const { messages, fill } = writer;
  const { key, cards = false, workLines = 0, drawings = false } = options;
  const blocks = [
    heading(2, fill(messages.practice.problem, { number })),
    text(problem.problem),
    ...(drawings ? drawingOf(problem, writer) : []),
    ...(key === undefined && workLines > 0 ? [{ kind: "room", lines: workLines } as const] : []),
    ...(key === undefined ? [] : keyOf(problem, key, writer)),
  ] as readonly Part[];
  return { kind: "group", as: cards ? "card" : "part", blocks };
}

// More than these nobody looks through at a desk; `checkAnswer` knows them all.
const MOST_MISTAKES = 6;

/** The likeliest mistakes, each once. */
function likeliest(mistakes: readonly PracticeMistake[]): PracticeMistake[] {
  const codes = mistakes.map(({ mistake }) => mistake);
  return mistakes.filter(({ mistake }, at) => codes.indexOf(mistake) === at).slice(0, MOST_MISTAKES);
}

function keyOf(
  { topic, answer, note, working: lines, mistakes }: PracticeProblem,
  key: "short" | "long",
  writer: Writer<PracticeMessages>,
): SheetBlock[] {
  const { text: words, practice } = writer.messages;
  const isLong = key === "long";
  const wrong = mistakesTable(
    likeliest(mistakes).map(({ answer: one, what, see, mend }) => ({
      name: wrongAnswerText(one, writer),
      value: isLong ? [what, see, mend].join(" ") : what,
    })),
    writer,
  );
  const answers = [
    heading(3, writer.fill(practice.answerIs, { answer: rightText(answer, TOPICS[topic], writer) })),
    ...(note === undefined ? [] : [text(note)]),
  ];
  if (!isLong) return [...answers, wrong];
  return [
    ...answers,
    ...(lines.length === 0 ? [] : [heading(3, words.working)]),
    // Every result is kept: a later line calls it by its new name.
    ...sheetLines([lines], writer, true).flatMap(working),
    heading(3, practice.mistakes),
    wrong,
  ];
}
