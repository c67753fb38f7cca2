import type { Severity } from "../../plan/warnings.js";
import type { FieldCard } from "../field-card.js";
import type { SheetFact } from "../job/facts.js";
import type { WrittenLine } from "../lines/written-line.js";
import type { WorkingSheet } from "../working-sheet.js";
import type { Worksheet } from "../worksheet.js";

/** Everything that the renderers lay out. */
export type PrintableSheet = Worksheet | WorkingSheet | FieldCard | SheetOfBlocks;

/** A sheet made of parts in order, such as practice problems. */
export interface SheetOfBlocks {
  /** Says what it is; an HTML page's style goes by it. */
  readonly kind: "practice";
  /** The language of the words, as a language tag. */
  readonly language: string;
  /** The heading. */
  readonly title: string;
  /** The parts, in order. */
  readonly blocks: readonly SheetBlock[];
}

/** A heading of the second or third order. */
export interface HeadingBlock {
  /** Says what it is. */
  readonly kind: "heading";
  /** Its order. */
  readonly level: 2 | 3;
  /** What it says. */
  readonly text: string;
}

/** A paragraph. */
export interface TextBlock {
  /** Says what it is. */
  readonly kind: "text";
  /** What it says. */
  readonly text: string;
}

/** What to look at first. */
export interface AlertsBlock {
  /** Says what it is. */
  readonly kind: "alerts";
  /** Each with how much it matters. */
  readonly items: readonly SheetAlert[];
}

/** A fact with how much it matters. */
export interface SheetAlert extends SheetFact {
  /** How much it matters. */
  readonly severity: Severity;
}

/** A list. */
export interface ListBlock {
  /** Says what it is. */
  readonly kind: "list";
  /** Its items. */
  readonly items: readonly string[];
}

/** A list with boxes to tick. */
export interface BoxesBlock {
  /** Says what it is. */
  readonly kind: "boxes";
  /** Its items. */
  readonly items: readonly string[];
}

/** A table. The first cell of each row names it; `facts` are names and values that need no heads of columns to be read. */
export interface TableBlock {
  /** Says what it is. */
  readonly kind: "table" | "facts";
  /** What it is about. */
  readonly caption: string;
  /** The heads of its columns. */
  readonly columns: readonly string[];
  /** Its rows, each a list of cells. */
  readonly rows: readonly (readonly string[])[];
}

/** Lines of working. */
export interface LinesBlock {
  /** Says what it is. */
  readonly kind: "lines";
  /** The lines. */
  readonly lines: readonly WrittenLine[];
}

/** Where the formulas come from: the page's sources, numbered. */
export interface SourcesBlock {
  /** Says what it is. */
  readonly kind: "sources";
}

/** A part of a sheet. Renderers know these and nothing of what a sheet is about. */
export type SheetBlock =
  | HeadingBlock
  | TextBlock
  | AlertsBlock
  | ListBlock
  | BoxesBlock
  | TableBlock
  | LinesBlock
  | SourcesBlock;
