import type { Severity } from "../../plan/warnings.js";
import type { FieldCard } from "../field-card.js";
import type { SheetFact } from "../job/facts.js";
import type { WrittenLine } from "../lines/written-line.js";
import type { WorkingSheet } from "../working-sheet.js";
import type { Worksheet } from "../worksheet.js";

/** Everything that the renderers lay out. */
export type PrintableSheet = Worksheet | WorkingSheet | FieldCard | SheetOfBlocks;

/** A sheet made of parts in order: practice problems, or slides for the board. */
export interface SheetOfBlocks {
  /** Says what it is; an HTML page's style goes by it. */
  readonly kind: "practice" | "board";
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

/** Lines to be filled in by hand, such as a name. */
export interface BlanksBlock {
  /** Says what it is. */
  readonly kind: "blanks";
  /** What goes on each line. */
  readonly items: readonly string[];
}

/** Room to work in. */
export interface RoomBlock {
  /** Says what it is. */
  readonly kind: "room";
  /** How many lines of writing it takes. */
  readonly lines: number;
}

/** A point of a drawing. */
export interface DrawingPoint {
  /** How far across, from the left. */
  readonly x: number;
  /** How far down, from the top. */
  readonly y: number;
}

/** A drawing to scale, in any unit of length: a plot, a strip. HTML shows it; other formats have its words only. */
export interface DrawingBlock {
  /** Says what it is. */
  readonly kind: "drawing";
  /** What it shows. */
  readonly caption: string;
  /** How wide it is. */
  readonly width: number;
  /** How high it is. */
  readonly height: number;
  /** Its areas, those behind first. */
  readonly areas: readonly {
    /** Whether it is sprayed, or only ground. */
    readonly of: "treated" | "ground";
    /** Its corners. */
    readonly corners: readonly DrawingPoint[];
  }[];
  /** The lengths in it. */
  readonly labels: readonly {
    /** Where it stands. */
    readonly at: DrawingPoint;
    /** What it says. */
    readonly text: string;
  }[];
}

/** Parts that stay together: on a page, on a card to cut out, on a slide. */
export interface GroupBlock {
  /** Says what it is. */
  readonly kind: "group";
  /** What it is: a part of the sheet, a card to cut out, or a slide to show alone. */
  readonly as: "part" | "card" | "slide";
  /** Its parts, in order. */
  readonly blocks: readonly Exclude<SheetBlock, GroupBlock>[];
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
  | SourcesBlock
  | BlanksBlock
  | RoomBlock
  | DrawingBlock
  | GroupBlock;
