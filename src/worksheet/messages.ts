import type { LineWords } from "./words/types.js";

/**
 * Every word of a worksheet. An app passes its own table for another language; a key that is missing there does not
 * compile. Texts hold places such as `{number}` that are filled in.
 */
export interface Messages {
  /** The names of results and terms, by the id of the line of working. */
  readonly lines: Readonly<Record<string, LineWords>>;
  /** How a function is written in a formula; `{x}` is what it is taken of. */
  readonly functions: Readonly<
    Record<"sqrt" | "ceil" | "floor" | "min" | "max" | "sin" | "cos" | "tan", string>
  >;
  /** The headings of the steps. */
  readonly steps: Readonly<Record<"area" | "rate" | "carrier" | "loads" | "product" | "dose", string>>;
  /** The cautions, by code. English where a code is missing. */
  readonly cautions: Readonly<Record<string, string>>;
  /** The names of measuring tools, by the name that the tool has. As it is where it is missing. */
  readonly tools: Readonly<Record<string, string>>;
  /** Everything else. */
  readonly text: Readonly<Record<TextKey, string>>;
}

/** The keys of single texts. */
export type TextKey =
  | "title"
  | "summary"
  | "treatedArea"
  | "groundArea"
  | "outputRate"
  | "mixInAll"
  | "sprayed"
  | "reserve"
  | "lines"
  | "leftover"
  | "leftoverArea"
  | "load"
  | "fillTo"
  | "waterFor"
  | "mixingOrder"
  | "exactly"
  | "under"
  | "over"
  | "fillOf"
  | "toMark"
  | "doNotMeasure"
  | "totalInLoads"
  | "working"
  | "rounding"
  | "source"
  | "cautions"
  | "warnings"
  | "severityNote"
  | "severityWarning"
  | "severityRefusal";
