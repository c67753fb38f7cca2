export type { WrittenAlert } from "./alerts.js";
export { ENGLISH } from "./english.js";
export { type CardLoad, type FieldCard, fieldCard } from "./field-card.js";
export { type HtmlOptions, renderHtml } from "./html.js";
export { STYLE_HASH } from "./html-style.js";
export { renderLatex } from "./latex.js";
export type { WrittenLine, WrittenTerm } from "./lines.js";
export type { Fact, WrittenDose } from "./loads.js";
export { renderMarkdown } from "./markdown.js";
export type { Messages, TextKey } from "./messages.js";
export type { Sheet } from "./page.js";
export {
  type PracticeMistake,
  type PracticeOptions,
  type PracticeProblem,
  practiceProblem,
  practiceTopics,
} from "./practice/practice.js";
export {
  type PracticeSheet,
  type PracticeSheetOptions,
  practiceSheet,
  type WrittenProblem,
} from "./practice/sheet.js";
export type { MistakeCode, PracticeTopic, ProblemKind } from "./practice/types.js";
export { renderText } from "./text.js";
export type { KnownLines } from "./words/all.js";
export type { LineTable, LineWords } from "./words/types.js";
export { type WorkingSheet, type WorkingSheetInput, workingSheet } from "./working-sheet.js";
export {
  type Worksheet,
  type WorksheetOptions,
  type WrittenLoad,
  type WrittenStep,
  worksheet,
} from "./worksheet.js";
export type { WritingOptions } from "./writer.js";
