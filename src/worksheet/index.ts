export {
  type PracticeMistake,
  type PracticeOptions,
  type PracticeProblem,
  practiceProblem,
  practiceTopics,
} from "../practice/problem.js";
export {
  type PracticeSheet,
  type PracticeSheetOptions,
  practiceSheet,
  type WrittenProblem,
} from "../practice/sheet.js";
export type { MistakeCode, PracticeTopic, ProblemKind } from "../practice/topics/drawn-problem.js";
export { type CardLoad, type FieldCard, fieldCard } from "./field-card.js";
export type { WrittenAlert } from "./job/alerts.js";
export type { Fact, WrittenDose } from "./job/amounts.js";
export { renderLatex } from "./latex.js";
export type { WrittenLine, WrittenTerm } from "./lines/written-line.js";
export { type HtmlOptions, renderHtml } from "./render/html.js";
export { STYLE_HASH } from "./render/html-style.js";
export { renderMarkdown } from "./render/markdown.js";
export type { Sheet } from "./render/page.js";
export { renderText } from "./render/text.js";
export { ENGLISH } from "./words/english.js";
export type { KnownLines } from "./words/known-lines.js";
export type { LineTable, LineWords } from "./words/line-table.js";
export type { Messages, TextKey } from "./words/messages.js";
export type { WritingOptions } from "./words/writer.js";
export { type WorkingSheet, type WorkingSheetInput, workingSheet } from "./working-sheet.js";
export {
  type Worksheet,
  type WorksheetOptions,
  type WrittenLoad,
  type WrittenStep,
  worksheet,
} from "./worksheet.js";
