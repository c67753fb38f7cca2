import type { Caution } from "../../plan/cautions.js";
import type { WarningCode } from "../../plan/warnings.js";
import type { MistakeCode, ProblemKind } from "../../practice/topics/drawn-problem.js";
import type { KnownLines } from "./known-lines.js";
import type { LineTable } from "./line-table.js";

/**
 * Every word of a worksheet, a field card and a practice sheet. An app passes its own table for another language; a key
 * that is missing there does not compile. Texts hold places such as `{number}` that are filled in.
 */
export interface Messages {
  /** The language that the table is written in, as a language tag such as `en`; an HTML page is marked with it. */
  readonly language: string;
  /** The names of results and terms, by the id of the line of working. */
  readonly lines: LineTable<KnownLines>;
  /** How a function is written in a formula; `{x}` is what it is taken of. */
  readonly functions: Readonly<
    Record<"sqrt" | "ceil" | "floor" | "min" | "max" | "sin" | "cos" | "tan", string>
  >;
  /** The headings of the steps. */
  readonly steps: Readonly<Record<"area" | "rate" | "carrier" | "loads" | "product" | "dose", string>>;
  /** The cautions, by code. */
  readonly cautions: Readonly<Record<Caution["code"], string>>;
  /**
   * The warnings, by code. Each figure of the warning has a place by its name, such as `{rate}`, and `{product}` is the
   * product that it is about. Where a code is missing, the plan's own English sentence stands.
   */
  readonly warnings: Readonly<Partial<Record<WarningCode, string>>>;
  /** The names of measuring tools, by the name that the tool has. As it is where it is missing. */
  readonly tools: Readonly<Record<string, string>>;
  /** How units are written, by the library's own name such as `gal/ac`. The usual sign where it is missing. */
  readonly units: Readonly<Record<string, string>>;
  /** Where formulas come from, by the line's own text. As it is where it is missing. */
  readonly sources: Readonly<Record<string, string>>;
  /** The practice problems. */
  readonly problems: Readonly<Record<ProblemKind, string>>;
  /** What a wrong answer shows. */
  readonly mistakes: Readonly<Record<MistakeCode, string>>;
  /** Everything else. */
  readonly text: Readonly<Record<TextKey, string>>;
}

/** The keys of single texts. */
export type TextKey =
  | "title"
  | "cardTitle"
  | "practiceTitle"
  | "summary"
  | "what"
  | "howMuch"
  | "treatedArea"
  | "groundArea"
  | "outputRate"
  | "mixInAll"
  | "mixParts"
  | "leftover"
  | "leftoverWithArea"
  | "rateOf"
  | "rateOfActive"
  | "rateOfMix"
  | "rateOfWater"
  | "rateOnGround"
  | "load"
  | "loads"
  | "product"
  | "amount"
  | "measure"
  | "fillTo"
  | "waterFor"
  | "mixingOrder"
  | "doNotMix"
  | "halfFill"
  | "pour"
  | "pourOtherwise"
  | "fillUp"
  | "spray"
  | "fillingOrder"
  | "exactly"
  | "under"
  | "over"
  | "fillOf"
  | "toMark"
  | "weigh"
  | "weighTimes"
  | "doNotMeasure"
  | "totalInLoads"
  | "working"
  | "rounding"
  | "sources"
  | "cautions"
  | "warnings"
  | "severityNote"
  | "severityWarning"
  | "severityRefusal"
  | "problem"
  | "answer"
  | "mistakes"
  | "wrongAnswer"
  | "shows";
