import { checkedList, checkedObject } from "../units/guard.js";
import type { WorkingLine } from "../units/working.js";
import { type WrittenLine, writtenLines } from "./lines/written-line.js";
import { type WritingOptions, writerFor } from "./words/writer.js";

/** Lines of working, and what they are about. */
export interface WorkingSheetInput {
  /** The heading. */
  readonly title: string;
  /** The lines, as any of the library's `...Working` functions gives them, or several of these joined. */
  readonly lines: readonly WorkingLine[];
}

/** Lines of working in words and numbers, ready to be laid out. */
export interface WorkingSheet {
  /** Says what it is. */
  readonly kind: "working";
  /** The language of the words, as a language tag. */
  readonly language: string;
  /** The heading. */
  readonly title: string;
  /** The lines. */
  readonly lines: readonly WrittenLine[];
  /** That numbers are rounded for reading only. */
  readonly rounding: string;
  /** The heading of the list of sources. */
  readonly sources: string;
}

/**
 * Writes out the working of any function of the library: what is found, the formula in words, with the numbers put in,
 * the result, and where the formula comes from. The units are those of the lines.
 *
 * @param input - a heading and the lines
 * @param options - locale, words and significant digits
 * @returns the texts, as data; `renderText`, `renderMarkdown`, `renderLatex` and `renderHtml` lay them out
 * @throws SprayMathError `missing` or `not-a-quantity` for lines that are not a list, `unreadable` for a formula that is not
 *   one, `out-of-range` or `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { boomHeightWorking } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 * import { renderText, workingSheet } from "swath-to-spoon/worksheet";
 *
 * const lines = boomHeightWorking({ angleDegrees: 80, nozzleSpacing: qty(20, "in"), overlap: qty(50, "%") });
 * const sheet = workingSheet({ title: "Boom height", lines });
 * console.log(sheet.lines.at(-1)?.found); // height of the boom above the target
 * console.log(renderText(sheet).split("\n")[0]); // Boom height
 * ```
 */
export function workingSheet(input: WorkingSheetInput, options: WritingOptions = {}): WorkingSheet {
  const { title, lines } = checkedObject(input, "");
  const writer = writerFor(options);
  const { language, text } = writer.messages;
  return {
    kind: "working",
    language,
    title: String(title),
    lines: writtenLines(checkedList(lines, "lines", 0), writer),
    rounding: text.rounding,
    sources: text.sources,
  };
}
