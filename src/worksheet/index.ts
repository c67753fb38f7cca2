export type { IssueNames } from "../units/names.js";
export { loadChoiceText } from "./choice-text.js";
export { type CardLoad, type FieldCard, fieldCard } from "./field-card.js";
export type { WrittenAlert } from "./job/alerts.js";
export type { WrittenDose } from "./job/amounts.js";
export type { SheetFact } from "./job/facts.js";
export type { WrittenStep } from "./job/steps.js";
export type { WrittenLine, WrittenTerm } from "./lines/written-line.js";
export type { WorksheetOptions, WritingOptions } from "./options.js";
export { doseText, issueText, type PhraseOptions } from "./phrases.js";
export { type HtmlOptions, renderHtml } from "./render/html.js";
export { SHEET_STYLE_HASH } from "./render/html-style.js";
export { renderMarkdown } from "./render/markdown.js";
export type {
  AlertsBlock,
  BlanksBlock,
  BoxesBlock,
  DrawingBlock,
  DrawingPoint,
  GroupBlock,
  HeadingBlock,
  LinesBlock,
  ListBlock,
  PrintableSheet,
  RoomBlock,
  SheetAlert,
  SheetBlock,
  SheetOfBlocks,
  SourcesBlock,
  TableBlock,
  TextBlock,
} from "./render/sheets.js";
export { renderText } from "./render/text.js";
export { spreadingCard } from "./spreading-card.js";
export { spreadingSheet } from "./spreading-sheet.js";
export { ENGLISH_WORDS } from "./words/english.js";
export type { KnownLines } from "./words/known-lines.js";
export type { LineTable, LineWords } from "./words/line-table.js";
export type { Messages, PhraseWords, TextKey, ToolNames } from "./words/messages.js";
export { type WorkingSheet, type WorkingSheetInput, workingSheet } from "./working-sheet.js";
export { type Worksheet, type WrittenLoad, worksheet } from "./worksheet.js";
