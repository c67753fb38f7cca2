import { choice, count, flag, number, type ObjectField, object, optional } from "../units/fields.js";
import { locale } from "../units/locale-field.js";
import type { UnitSystem } from "../units/types.js";
import { WRITING_OPTIONS, type WritingOptions } from "../worksheet/options.js";
import { PRACTICE_MESSAGES, type PracticeMessages } from "./words.js";

/** How the teacher's own problem is written. */
export interface ProblemOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** Which of the topic's wordings is used, 1 to 4; the first unless given. */
  readonly wording?: number | undefined;
  /** The system that the answer is in; that of the figures unless given. */
  readonly units?: UnitSystem | undefined;
}

/** How a practice problem is made and written. */
export interface PracticeOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** The system of units that it is set in; `us` unless given. */
  readonly units?: UnitSystem | undefined;
}

/** How a practice sheet is written. */
export interface PracticeSheetOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** Whether answers, working and common wrong answers are on it, as a teacher needs it; not unless given. */
  readonly answers?: boolean | undefined;
}

/** How an answer is checked. */
export interface AnswerOptions {
  /** Every word of what is said about it; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** Whose numbers are read and printed, as a language tag; `en-US` unless given. */
  readonly locale?: string | undefined;
  /** How far off a right answer may be, in per cent of it, 0 to 5; 1 unless given. */
  readonly tolerancePercent?: number | undefined;
}

const SYSTEMS = ["us", "metric", "imperial"] as const;
const WORDS = { words: optional(PRACTICE_MESSAGES) };

/** The fields of {@link ProblemOptions}. */
export const PROBLEM_OPTIONS: ObjectField<ProblemOptions> = object<ProblemOptions>({
  ...WRITING_OPTIONS.fields,
  ...WORDS,
  units: optional(choice("The system that the answer is in; that of the figures unless given.", SYSTEMS)),
  wording: optional(count("Which of the topic's wordings is used, 1 to 4; the first unless given.", 1, 4)),
});

/** The fields of {@link PracticeOptions}. */
export const PRACTICE_OPTIONS: ObjectField<PracticeOptions> = object<PracticeOptions>({
  ...WRITING_OPTIONS.fields,
  ...WORDS,
  units: optional(choice("The system of units that it is set in; `us` unless given.", SYSTEMS)),
});

/** The fields of {@link PracticeSheetOptions}. */
export const PRACTICE_SHEET_OPTIONS: ObjectField<PracticeSheetOptions> = object<PracticeSheetOptions>({
  ...WRITING_OPTIONS.fields,
  ...WORDS,
  answers: optional(
    flag(
      "Whether answers, working and common wrong answers are on it, as a teacher needs it; not unless given.",
    ),
  ),
});

/** The fields of {@link AnswerOptions}. */
export const ANSWER_OPTIONS: ObjectField<AnswerOptions> = object<AnswerOptions>({
  ...WORDS,
  locale: optional(locale("Whose numbers are read and printed, as a language tag; `en-US` unless given.")),
  tolerancePercent: optional(
    number("How far off a right answer may be, in per cent of it, 0 to 5; 1 unless given.", {
      min: 0,
      max: 5,
    }),
  ),
});
