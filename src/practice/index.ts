export type { PracticeOptions, PracticeSheetOptions } from "./options.js";
export { type PracticeMistake, type PracticeProblem, practiceProblem, practiceTopics } from "./problem.js";
export { practiceSheet } from "./sheet.js";
export type { MistakeCode, PracticeTopic, ProblemKind } from "./topics/drawn-problem.js";
export { ENGLISH_PRACTICE_WORDS, type PracticeLines, type PracticeMessages } from "./words.js";
