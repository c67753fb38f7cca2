import type { Check } from "../units/check.js";
import {
  choice,
  count,
  type FieldsOf,
  flag,
  list,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
  text,
} from "../units/fields.js";
import { locale } from "../units/locale-field.js";
import type { UnitSystem } from "../units/types.js";
import { WRITING_OPTIONS, type WritingOptions } from "../worksheet/options.js";
import { PRACTICE_TOPICS, type PracticeTopic, TOPICS } from "./topics/all.js";
import type { Difficulty } from "./topics/topic.js";
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

/** How a worked example is written. */
export interface ExampleOptions extends WritingOptions {
  /** Every word of the example; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** `full` shows units, factors, a check and mistakes; `short` the estimate and the sums alone. `full` unless given. */
  readonly detail?: "full" | "short" | undefined;
}

/** How a practice problem is made and written. */
export interface PracticeOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** The system of units that it is set in; `us` unless given. */
  readonly units?: UnitSystem | undefined;
}

/** How a set of problems is made and written. */
export interface PracticeSetOptions extends PracticeOptions {
  /** The topics; all of them unless given. */
  readonly topics?: readonly PracticeTopic[] | undefined;
  /** The hardest that a topic may be, 1 to 3; 3 unless given. */
  readonly difficulty?: Difficulty | undefined;
  /** How many problems, 1 to 60, as many of one topic as of another; one of each topic unless given. */
  readonly problems?: number | undefined;
}

/** How the sets of a class are made and written. */
export interface PracticeSetsOptions extends PracticeSetOptions {
  /** The number of the first set, 1 to 99,900; 1 unless given. */
  readonly first?: number | undefined;
}

/** How a practice sheet is written. */
export interface PracticeSheetOptions extends WritingOptions {
  /** Every word of the problems; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** The heading; `Practice problems` in the language of the sheet unless given. */
  readonly title?: string | undefined;
  /** The class, printed under the heading; none unless given. */
  readonly className?: string | undefined;
  /** The number of the set, printed on sheet and key; none unless given. */
  readonly set?: string | undefined;
  /** What makes it a key: `short` has answers and the six likeliest mistakes, `long` how to mend them and the working. No key unless given. */
  readonly key?: "short" | "long" | undefined;
  /** Lines for name and date; there unless given, and never on a key. */
  readonly nameAndDate?: boolean | undefined;
  /** The factors between units that the problems need; there unless given, and never on a key. */
  readonly factors?: boolean | undefined;
  /** How many lines to work on each problem has, 0 to 30; none unless given, and never on a key. */
  readonly workLines?: number | undefined;
  /** Whether plots and strips are drawn to scale, in HTML; not unless given. */
  readonly drawings?: boolean | undefined;
  /** Whether each problem is a card to cut out; not unless given. */
  readonly cards?: boolean | undefined;
  /** How far off a right answer may be, in percent of it, 0 to 5, printed on the sheet; 1 unless given. */
  readonly tolerancePercent?: number | undefined;
}

/** How an answer is checked. */
export interface AnswerOptions {
  /** Every word of what is said about it; English unless given. */
  readonly words?: PracticeMessages | undefined;
  /** Whose numbers are read and printed, as a language tag; `en-US` unless given. */
  readonly locale?: string | undefined;
  /** How far off a right answer may be, in percent of it, 0 to 5; 1 unless given. */
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

/** The fields of {@link ExampleOptions}. */
export const EXAMPLE_OPTIONS: ObjectField<ExampleOptions> = object<ExampleOptions>({
  ...WRITING_OPTIONS.fields,
  ...WORDS,
  detail: optional(
    choice(
      "`full` shows units, factors, a check and mistakes; `short` the estimate and the sums alone. `full` unless given.",
      ["full", "short"],
    ),
  ),
});

/** The fields of {@link PracticeOptions}. */
export const PRACTICE_OPTIONS: ObjectField<PracticeOptions> = object<PracticeOptions>({
  ...WRITING_OPTIONS.fields,
  ...WORDS,
  units: optional(choice("The system of units that it is set in; `us` unless given.", SYSTEMS)),
});

/** The largest number of a set. */
export const MOST_SET = 99_999;

const SET_FIELDS: FieldsOf<PracticeSetOptions> = {
  ...PRACTICE_OPTIONS.fields,
  topics: optional(list("The topics; all of them unless given.", choice("A topic.", PRACTICE_TOPICS))),
  difficulty: optional(choice("The hardest that a topic may be, 1 to 3; 3 unless given.", [1, 2, 3])),
  problems: optional(
    count(
      "How many problems, 1 to 60, as many of one topic as of another; one of each topic unless given.",
      1,
      60,
    ),
  ),
};

/** The fields of {@link PracticeSetOptions}. */
export const PRACTICE_SET_OPTIONS: ObjectField<PracticeSetOptions> = object<PracticeSetOptions>(SET_FIELDS, [
  someTopicIsEasy,
]);

/** The fields of {@link PracticeSetsOptions}. */
export const PRACTICE_SETS_OPTIONS: ObjectField<PracticeSetsOptions> = object<PracticeSetsOptions>(
  {
    ...SET_FIELDS,
    first: optional(count("The number of the first set, 1 to 99,900; 1 unless given.", 1, 99_900)),
  },
  [someTopicIsEasy],
);

/** Notes topics of which none is as easy as it should be. */
function someTopicIsEasy(
  { topics = PRACTICE_TOPICS, difficulty = 3 }: Partly<PracticeSetOptions>,
  check: Check,
): void {
  if (topics.some((topic) => TOPICS[topic].difficulty <= difficulty)) return;
  check.fault(
    "conflict",
    "topics-too-hard",
    "difficulty",
    "All of these topics are harder than {given}. Add an easier topic.",
    {
      given: difficulty,
    },
  );
}

const TOLERANCE = { min: 0, max: 5 };

/** The fields of {@link PracticeSheetOptions}. */
export const PRACTICE_SHEET_OPTIONS: ObjectField<PracticeSheetOptions> = object<PracticeSheetOptions>({
  ...WRITING_OPTIONS.fields,
  ...WORDS,
  title: optional(text("The heading; `Practice problems` in the language of the sheet unless given.")),
  className: optional(text("The class, printed under the heading; none unless given.")),
  set: optional(text("The number of the set, printed on sheet and key; none unless given.")),
  key: optional(
    choice(
      "What makes it a key: `short` has answers and the six likeliest mistakes, `long` how to mend them and the working. No key unless given.",
      ["short", "long"],
    ),
  ),
  nameAndDate: optional(flag("Lines for name and date; there unless given, and never on a key.")),
  factors: optional(
    flag("The factors between units that the problems need; there unless given, and never on a key."),
  ),
  workLines: optional(
    count(
      "How many lines to work on each problem has, 0 to 30; none unless given, and never on a key.",
      0,
      30,
    ),
  ),
  drawings: optional(flag("Whether plots and strips are drawn to scale, in HTML; not unless given.")),
  cards: optional(flag("Whether each problem is a card to cut out; not unless given.")),
  tolerancePercent: optional(
    number(
      "How far off a right answer may be, in percent of it, 0 to 5, printed on the sheet; 1 unless given.",
      TOLERANCE,
    ),
  ),
});

/** The fields of {@link AnswerOptions}. */
export const ANSWER_OPTIONS: ObjectField<AnswerOptions> = object<AnswerOptions>({
  ...WORDS,
  locale: optional(locale("Whose numbers are read and printed, as a language tag; `en-US` unless given.")),
  tolerancePercent: optional(
    number("How far off a right answer may be, in percent of it, 0 to 5; 1 unless given.", {
      min: 0,
      max: 5,
    }),
  ),
});
