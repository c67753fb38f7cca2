import { checkedList } from "../units/guard.js";
import type { Fact } from "../worksheet/job/amounts.js";
import { filled } from "../worksheet/lines/line-text.js";
import { type WrittenLine, writtenLines } from "../worksheet/lines/written-line.js";
import { type WritingOptions, writerFor } from "../worksheet/words/writer.js";
import type { PracticeProblem } from "./problem.js";

/** How a practice sheet is written. */
export interface PracticeSheetOptions extends WritingOptions {
  /** Whether answers, working and usual wrong answers are on it, as a teacher needs it; not unless given. */
  readonly answers?: boolean;
}

/** A problem as it is written, with its key on a teacher's sheet. */
export interface WrittenProblem {
  /** Its heading. */
  readonly title: string;
  /** The problem in words. */
  readonly problem: string;
  /** Answer, working and usual wrong answers. */
  readonly key?: {
    /** The answer, rounded. */
    readonly answer: string;
    /** The working. */
    readonly lines: readonly WrittenLine[];
    /** Each wrong answer, and what it shows. */
    readonly mistakes: readonly Fact[];
  };
}

/** Practice problems, ready to be laid out. */
export interface PracticeSheet {
  /** Says what it is. */
  readonly kind: "practice";
  /** The language of the words, as a language tag. */
  readonly language: string;
  /** The heading. */
  readonly title: string;
  /** The problems. */
  readonly problems: readonly WrittenProblem[];
  /** The headings of the parts and of the tables' columns. */
  readonly headings: Readonly<
    Record<
      "answer" | "working" | "mistakes" | "sources" | "what" | "howMuch" | "wrongAnswer" | "shows",
      string
    >
  >;
}

/**
 * Writes practice problems on one sheet: for pupils the problems alone, for the teacher with answer, working and the usual
 * wrong answers.
 *
 * @param problems - problems from `practiceProblem`, made with the same locale and words
 * @param options - see {@link PracticeSheetOptions}
 * @returns the texts, as data; `renderText`, `renderMarkdown`, `renderLatex` and `renderHtml` lay them out
 * @throws SprayMathError `missing` or `not-a-quantity` for problems that are not a list, `too-few` for none, `out-of-range` or
 *   `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { practiceProblem, practiceSheet, renderText } from "swath-to-spoon/worksheet";
 *
 * const problems = [practiceProblem("area", 1), practiceProblem("dilution", 1)];
 * const sheet = practiceSheet(problems, { answers: true });
 * console.log(sheet.problems[1]?.title); // Problem 2
 * console.log(renderText(sheet).split("\n")[0]); // Practice problems
 * ```
 */
export function practiceSheet(
  problems: readonly PracticeProblem[],
  options: PracticeSheetOptions = {},
): PracticeSheet {
  const writer = writerFor(options);
  const { messages, short, count } = writer;
  const { language, text } = messages;
  return {
    kind: "practice",
    language,
    title: text.practiceTitle,
    problems: checkedList(problems, "problems").map(({ problem, answer, working, mistakes }, at) => ({
      title: filled(text.problem, { number: count(at + 1) }),
      problem,
      ...(options.answers === true && {
        key: {
          answer: short(answer),
          lines: writtenLines(working, writer),
          mistakes: mistakes.map((one) => ({ name: short(one.answer), value: one.shows })),
        },
      }),
    })),
    headings: {
      answer: text.answer,
      working: text.working,
      mistakes: text.mistakes,
      sources: text.sources,
      what: text.what,
      howMuch: text.howMuch,
      wrongAnswer: text.wrongAnswer,
      shows: text.shows,
    },
  };
}
