export { type AnswerCheck, type AnswerVerdict, checkAnswer } from "./check-answer.js";
export type { MistakeCode, MistakeWords } from "./mistakes.js";
export type {
  AnswerOptions,
  ExampleOptions,
  PracticeOptions,
  PracticeSetOptions,
  PracticeSetsOptions,
  PracticeSheetOptions,
  ProblemOptions,
} from "./options.js";
export {
  type PracticeMistake,
  type PracticeProblem,
  practiceProblem,
  practiceTopics,
  problemFrom,
  type ShownMistake,
} from "./problem.js";
export { type PracticeSet, practiceSet, practiceSets } from "./sets.js";
export { practiceSheet } from "./sheet.js";
export type { TopicWords } from "./topic-words.js";
export type { PracticeTopic } from "./topics/all.js";
export type { MixingKind } from "./topics/mixing-order.js";
export type { Difficulty, Given, GivenFigure, PracticeAnswer, Wordings } from "./topics/topic.js";
export {
  ENGLISH_PRACTICE_WORDS,
  type PracticeLines,
  type PracticeMessages,
  type PracticeText,
} from "./words.js";
export { workedExample } from "./worked-example.js";
