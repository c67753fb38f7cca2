import { checked } from "../../units/check.js";
import type { FieldCard } from "../field-card.js";
import type { WrittenAlert } from "../job/alerts.js";
import type { WrittenDose } from "../job/amounts.js";
import type { SheetFact } from "../job/facts.js";
import type { WrittenLine } from "../lines/written-line.js";
import type { WorkingSheet } from "../working-sheet.js";
import type { Worksheet } from "../worksheet.js";
import { SHEET } from "./sheet-fields.js";
import type { PrintableSheet, SheetBlock } from "./sheets.js";

/**
 * A line of working as parts that are equal to one another: what is found, the formula in words, with the numbers put in,
 * and the result. A change of unit is shown by its numbers alone; a sum of one is not written twice.
 */
export function partsOf({ id, found, words, numbers, result }: WrittenLine): string[] {
  if (id === "units.convert") return [found, numbers, result];
  return numbers === result ? [found, words, result] : [found, words, numbers, result];
}

/** A sheet as a title and parts in order: what is on it, and nothing of how it looks. */
export interface Page {
  readonly language: string;
  readonly title: string;
  readonly blocks: readonly SheetBlock[];
  /** The sources of all lines, in the order in which they come up: a line's source has its place here as its number. */
  readonly sources: readonly string[];
}

/** Lays a sheet's parts out in order. */
export function pageOf(given: PrintableSheet): Page {
  return partsInOrder(checked(given, SHEET, "sheet"));
}

/** A sheet's parts in order. Trusts its input. */
export function partsInOrder(sheet: PrintableSheet): Page {
  const { language, title } = sheet;
  const blocks = blocksOf(sheet);
  const inside = blocks.flatMap((block) => (block.kind === "group" ? block.blocks : [block]));
  const lines = inside.flatMap((block) => (block.kind === "lines" ? block.lines : []));
  return { language, title, blocks, sources: [...new Set(lines.map(({ source }) => source))] };
}

function blocksOf(sheet: PrintableSheet): readonly SheetBlock[] {
  switch (sheet.kind) {
    case "worksheet":
      return worksheetBlocks(sheet);
    case "working":
      return workingBlocks(sheet);
    case "field-card":
      return cardBlocks(sheet);
    case "practice":
    case "board":
      return sheet.blocks;
  }
}

function worksheetBlocks(sheet: Worksheet): SheetBlock[] {
  const { headings, refused, warnings, summary, steps, rounding, cautions } = sheet;
  return [
    ...(refused === undefined ? loadBlocks(sheet) : [text(refused)]),
    ...alerts(headings.warnings, warnings),
    heading(2, headings.summary),
    facts(headings.summary, headings, summary),
    heading(2, headings.working),
    text(rounding),
    ...steps.flatMap(({ number, title, lines }) => [heading(3, `${number}. ${title}`), ...working(lines)]),
    ...sourcesList(
      headings.sources,
      steps.some(({ lines }) => lines.length > 0),
    ),
    heading(2, headings.cautions),
    { kind: "list", items: cautions },
  ];
}

function loadBlocks({ headings, mixing, loads, totals }: Worksheet): SheetBlock[] {
  return [
    heading(2, headings.loads),
    ...(mixing === undefined ? [] : [text(mixing)]),
    ...loads.flatMap(({ title, fill, covers, doses }) => [
      heading(3, `${title}: ${fill}`),
      ...(covers === undefined ? [] : [text(covers)]),
      dosesTable(title, headings, doses),
    ]),
    heading(3, headings.totals),
    facts(headings.totals, { what: headings.product, howMuch: headings.amount }, totals),
  ];
}

function workingBlocks({ lines, rounding, sources: heads }: WorkingSheet): SheetBlock[] {
  return [text(rounding), ...working(lines), ...sourcesList(heads, lines.length > 0)];
}

function cardBlocks({ headings, warnings, facts: known, order, loads, cautions }: FieldCard): SheetBlock[] {
  return [
    ...alerts(headings.warnings, warnings),
    heading(2, headings.summary),
    facts(headings.summary, headings, known),
    heading(2, headings.loads),
    ...order.map(text),
    ...loads.flatMap(({ title, steps }): SheetBlock[] => [
      heading(3, title),
      { kind: "boxes", items: steps },
    ]),
    heading(2, headings.cautions),
    { kind: "list", items: cautions },
  ];
}

/** A heading. */
export function heading(level: 2 | 3, words: string): SheetBlock {
  return { kind: "heading", level, text: words };
}

/** A paragraph. */
export function text(words: string): SheetBlock {
  return { kind: "text", text: words };
}

function alerts(words: string, list: readonly WrittenAlert[]): SheetBlock[] {
  if (list.length === 0) return [];
  const items = list.map(({ severity, name, message }) => ({ severity, name, value: message }));
  return [heading(2, words), { kind: "alerts", items }];
}

/** Lines of working, where there are any. */
export function working(lines: readonly WrittenLine[]): SheetBlock[] {
  return lines.length === 0 ? [] : [{ kind: "lines", lines }];
}

/** The list of sources under its heading, where there are lines that cite them. */
export function sourcesList(words: string, some: boolean): SheetBlock[] {
  return some ? [heading(2, words), { kind: "sources" }] : [];
}

/** A table of two columns. */
export function facts(
  caption: string,
  { what, howMuch }: { readonly what: string; readonly howMuch: string },
  list: readonly SheetFact[],
  kind: "facts" | "table" = "facts",
): SheetBlock {
  return {
    kind,
    caption,
    columns: [what, howMuch],
    rows: list.map(({ name, value }) => [name, value]),
  };
}

function dosesTable(
  caption: string,
  { product, amount, measure }: Worksheet["headings"],
  doses: readonly WrittenDose[],
): SheetBlock {
  return {
    kind: "table",
    caption,
    columns: [product, amount, measure],
    rows: doses.map((dose) => [
      dose.product,
      dose.amount,
      dose.measures.length === 0 ? dose.remark : `${dose.measures.join(" + ")} (${dose.remark})`,
    ]),
  };
}
