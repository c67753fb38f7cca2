import { checked } from "../units/check.js";
import { list, type ObjectField, object, text } from "../units/fields.js";
import type { WorkingLine } from "../units/working-line.js";
import { WORKING_LINE } from "./lines/working-line.js";
import { sheetLines, type WrittenLine } from "./lines/written-line.js";
import { WRITING_OPTIONS, type WritingOptions } from "./options.js";
import { ENGLISH_WORDS } from "./words/english.js";
import { writerFor } from "./words/writer.js";

/** Lines of working, and what they are about. */
export interface WorkingSheetInput {
  /** The heading. */
  readonly title: string;
  /** The lines, as the functions of `swath-to-spoon/working` give them, or several of these joined. */
  readonly lines: readonly WorkingLine[];
}

const WORKING_SHEET: ObjectField<WorkingSheetInput> = object({
  title: text("The heading."),
  lines: list(
    "The lines, as the functions of `swath-to-spoon/working` give them, or several of these joined.",
    WORKING_LINE,
    { least: 0 },
  ),
});

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
 * @throws SprayMathError `missing`, `not-a-quantity` or `unknown-field` for what are no lines of working, `unreadable` for a formula that is not
 *   one, `out-of-range`, `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { boomHeight } from "swath-to-spoon/working";
 * import { renderText, workingSheet } from "swath-to-spoon/worksheet";
 *
 * const lines = boomHeight({ angleDegrees: 80, nozzleSpacing: qty(20, "in"), overlap: qty(50, "%") });
 * const sheet = workingSheet({ title: "Boom height", lines });
 * console.log(sheet.lines.at(-1)?.found); // height of the boom above the target
 * console.log(renderText(sheet).split("\n")[0]); // Boom height
 * ```
 */
export function workingSheet(input: WorkingSheetInput, options: WritingOptions = {}): WorkingSheet {
  const { title, lines } = checked(input, WORKING_SHEET);
  const writer = writerFor(checked(options, WRITING_OPTIONS, "options"), ENGLISH_WORDS);
  const { language, text } = writer.messages;
  return {
    kind: "working",
    language,
    title,
    lines: sheetLines([lines], writer, true)[0] as WrittenLine[],
    rounding: text.rounding,
    sources: text.sources,
  };
}
