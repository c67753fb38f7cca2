import type { Caution } from "../../plan/cautions.js";
import type { PlanStep } from "../../plan/plan-steps.js";
import type { SpreadingStep } from "../../plan/spreading-steps.js";
import type { IssueNames } from "../../units/names.js";
import type { KnownLines } from "./known-lines.js";
import type { LineTable } from "./line-table.js";

/**
 * Every word of a worksheet and a field card, of errors and warnings. An app passes its own table for another language; a key
 * that is missing there does not compile. Texts hold places such as `{area}` that are filled in: `{area.value}` is the number
 * alone, `{area.unit}` the unit alone, and `{loads:one=load;other=loads}` the word for so many, by the plural forms of the
 * language.
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
  readonly steps: Readonly<Record<PlanStep["step"] | SpreadingStep["step"] | "error", string>>;
  /** The cautions, by code. */
  readonly cautions: Readonly<Record<Caution["code"], string>>;
  /**
   * The sentences of errors and warnings, by key. Each figure has a place by its name, such as `{rate}`. Where a key is missing,
   * the English sentence stands.
   */
  readonly issues: Readonly<Record<string, string>>;
  /** The names in such sentences: `{given.dimension}` is looked up in the list `dimension`. */
  readonly names: IssueNames;
  /** What measuring tools are called, by the name that the tool has. That name where it is missing. */
  readonly tools: Readonly<Record<string, ToolNames>>;
  /**
   * How units are written, by the library's own name such as `gal`: one text, or one for each plural form. A compound that is
   * missing is put together from its parts, and a unit that is missing has its usual sign.
   */
  readonly units: Readonly<Record<string, string | ToolNames>>;
  /** Where formulas come from, by the line's own text. As it is where it is missing. */
  readonly sources: Readonly<Record<string, string>>;
  /** Everything else. */
  readonly text: Readonly<Record<TextKey, string>>;
}

/** The part of a table of words that single phrases are written with. */
export type PhraseWords = Pick<Messages, "language" | "issues" | "names" | "tools" | "units" | "text">;

/**
 * What one tool and several of it are called, by the plural forms of the language: `{ one: "cup", other: "cups" }`. English has
 * these two; other languages may have more (Unicode CLDR, plural rules). `the` is one of them with its article, as in "12.5 mL in the
 * syringe", where the language puts that by the noun.
 */
export type ToolNames = Readonly<
  Record<"one" | "other", string> & Partial<Record<Intl.LDMLPluralRule | "the", string>>
>;

/** The keys of single texts. */
export type TextKey =
  | "title"
  | "cardTitle"
  | "summary"
  | "what"
  | "howMuch"
  | "treatedArea"
  | "groundArea"
  | "outputRate"
  | "number"
  | "eachGets"
  | "eachTimed"
  | "band"
  | "strip"
  | "onEachRow"
  | "onOneSide"
  | "onBothSides"
  | "rowLength"
  | "perLength"
  | "totalMix"
  | "totalOf"
  | "mixForPlot"
  | "mixForJob"
  | "mixExtra"
  | "mixInHose"
  | "leftover"
  | "leftoverJob"
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
  | "areaWithRows"
  | "where"
  | "plotOrder"
  | "rowOrder"
  | "plotNumber"
  | "loadsAlike"
  | "loadsPair"
  | "loadsFromTo"
  | "byVolume"
  | "weightInVolume"
  | "about"
  | "upTo"
  | "covers"
  | "rows"
  | "beds"
  | "passes"
  | "lengthOfRow"
  | "rowNumber"
  | "bedNumber"
  | "passNumber"
  | "passesAlong"
  | "partOfPlot"
  | "partOf"
  | "endOf"
  | "bothSides"
  | "plotEnd"
  | "lastPassOf"
  | "lastPass"
  | "lastPassRows"
  | "lastPasses"
  | "downRow"
  | "halfDownRow"
  | "placeInPlot"
  | "sprayTo"
  | "sprayRest"
  | "sprayAll"
  | "runOut"
  | "loadRunsOut"
  | "doesRest"
  | "stopBefore"
  | "stopOutside"
  | "sprayOut"
  | "useOut"
  | "outCovers"
  | "outTo"
  | "outEach"
  | "topUpFull"
  | "fillAll"
  | "spareLoad"
  | "spraySpare"
  | "leftInTank"
  | "leftInTankFor"
  | "mixToMark"
  | "fillToMark"
  | "topUpToMark"
  | "mixingOrder"
  | "doNotMix"
  | "rinse"
  | "halfFill"
  | "pour"
  | "pourOtherwise"
  | "pourWithTool"
  | "pourBags"
  | "wholeBags"
  | "topUp"
  | "waterByJug"
  | "spray"
  | "use"
  | "useAll"
  | "severalLoads"
  | "fillingOrder"
  | "exactly"
  | "under"
  | "over"
  | "fills"
  | "fillsOf"
  | "toMark"
  | "toMarkTimes"
  | "weigh"
  | "weighTimes"
  | "doNotMeasure"
  | "totalProduct"
  | "working"
  | "unitsInOne"
  | "rounding"
  | "sources"
  | "cautions"
  | "warnings"
  | "severityNote"
  | "severityWarning"
  | "severityRefusal"
  | "ofProduct"
  | "ofPlot"
  | "ofProductOnPlot"
  | "perPass"
  | "testResult"
  | "nutrient"
  | "totalOfProduct"
  | "bags"
  | "bagsAndRest"
  | "reEntry"
  | "waitOrMore"
  | "beforeHarvest"
  | "days"
  | "fillsAndPlots"
  | "spreadIt"
  | "lengthwise"
  | "crosswise"
  | "fillHopper"
  | "fillHopperTimes"
  | "lastFill"
  | "spreadPlot"
  | "spreadPieces"
  | "spreadRow"
  | "spreadRun"
  | "hopperHolds"
  | "giveEach"
  | "hopperFor"
  | "spreadRest"
  | "onlyFill"
  | "doNotSpread"
  | "doNotFill"
  | "spreadingTitle";
