import type { Severity } from "../../plan/warnings.js";
import type { PracticeSheet } from "../../practice/sheet.js";
import type { FieldCard } from "../field-card.js";
import type { WrittenAlert } from "../job/alerts.js";
import type { Fact, WrittenDose } from "../job/amounts.js";
import type { WrittenLine } from "../lines/written-line.js";
import type { WorkingSheet } from "../working-sheet.js";
import type { Worksheet } from "../worksheet.js";

/**
 * A line of working as parts that are equal to one another: what is found, the formula in words, with the numbers put in,
 * and the result. A change of unit is told by its numbers alone.
 */
export function partsOf({ id, found, words, numbers, result }: WrittenLine): string[] {
  return id === "units.convert" ? [found, numbers, result] : [found, words, numbers, result];
}

/** Everything that the renderers lay out. */
export type Sheet = Worksheet | WorkingSheet | FieldCard | PracticeSheet;

/** A part of a page. Renderers know these and nothing of what a sheet is about. */
export type Block =
  | { readonly kind: "heading"; readonly level: 2 | 3; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  | {
      readonly kind: "alerts";
      readonly items: readonly (Fact & { readonly severity: Severity })[];
    }
  | { readonly kind: "list"; readonly ordered: boolean; readonly items: readonly string[] }
  | { readonly kind: "boxes"; readonly items: readonly string[] }
  /** The first cell of each row names it; `facts` are names and values that need no heads of columns to be read. */
  | {
      readonly kind: "table" | "facts";
      readonly caption: string;
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: "lines"; readonly lines: readonly WrittenLine[] }
  /** Where the formulas come from: the page's sources, numbered. */
  | { readonly kind: "sources" };

/** A sheet as a title and parts in order: what is on it, and nothing of how it looks. */
export interface Page {
  readonly language: string;
  readonly title: string;
  readonly blocks: readonly Block[];
  /** The sources of all lines, in the order in which they come up: a line's source has its place here as its number. */
  readonly sources: readonly string[];
}

/** Lays a sheet's parts out in order. */
export function pageOf(sheet: Sheet): Page {
  const { language, title } = sheet;
  const blocks = blocksOf(sheet);
  const lines = blocks.flatMap((block) => (block.kind === "lines" ? block.lines : []));
  return { language, title, blocks, sources: [...new Set(lines.map(({ source }) => source))] };
}

function blocksOf(sheet: Sheet): Block[] {
  switch (sheet.kind) {
    case "worksheet":
      return worksheetBlocks(sheet);
    case "working":
      return workingBlocks(sheet);
    case "field-card":
      return cardBlocks(sheet);
    case "practice":
      return practiceBlocks(sheet);
  }
}

function worksheetBlocks(sheet: Worksheet): Block[] {
  const { headings, warnings, summary, mixing, loads, totals, steps, rounding, cautions } = sheet;
  return [
    ...alerts(headings.warnings, warnings),
    heading(2, headings.summary),
    facts(headings.summary, headings, summary),
    heading(2, headings.loads),
    ...(mixing === undefined ? [] : [text(mixing)]),
    ...loads.flatMap(({ title, fill, water, doses }) => [
      heading(3, `${title}: ${fill}`),
      text(water),
      dosesTable(title, headings, doses),
    ]),
    heading(3, headings.totals),
    facts(headings.totals, { what: headings.product, howMuch: headings.amount }, totals),
    heading(2, headings.working),
    text(rounding),
    ...steps.flatMap(({ number, title, lines }) => [heading(3, `${number}. ${title}`), ...working(lines)]),
    ...sourcesList(
      headings.sources,
      steps.some(({ lines }) => lines.length > 0),
    ),
    heading(2, headings.cautions),
    { kind: "list", ordered: false, items: cautions },
  ];
}

function workingBlocks({ lines, rounding, sources: heads }: WorkingSheet): Block[] {
  return [text(rounding), ...working(lines), ...sourcesList(heads, lines.length > 0)];
}

function cardBlocks({ headings, warnings, facts: known, order, loads, cautions }: FieldCard): Block[] {
  return [
    ...alerts(headings.warnings, warnings),
    heading(2, headings.summary),
    facts(headings.summary, headings, known),
    heading(2, headings.loads),
    ...order.map(text),
    ...loads.flatMap(({ title, steps }): Block[] => [heading(3, title), { kind: "boxes", items: steps }]),
    heading(2, headings.cautions),
    { kind: "list", ordered: false, items: cautions },
  ];
}

function practiceBlocks({ problems, headings }: PracticeSheet): Block[] {
  return [
    ...problems.flatMap(({ title, problem, key }): Block[] => [
      heading(2, title),
      text(problem),
      ...(key === undefined
        ? []
        : [
            facts(headings.answer, headings, [{ name: headings.answer, value: key.answer }]),
            heading(3, headings.working),
            ...working(key.lines),
            heading(3, headings.mistakes),
            facts(
              headings.mistakes,
              { what: headings.wrongAnswer, howMuch: headings.shows },
              key.mistakes,
              "table",
            ),
          ]),
    ]),
    ...sourcesList(
      headings.sources,
      problems.some(({ key }) => key !== undefined),
    ),
  ];
}

function heading(level: 2 | 3, words: string): Block {
  return { kind: "heading", level, text: words };
}

function text(words: string): Block {
  return { kind: "text", text: words };
}

function alerts(words: string, list: readonly WrittenAlert[]): Block[] {
  if (list.length === 0) return [];
  const items = list.map(({ severity, name, message }) => ({ severity, name, value: message }));
  return [heading(2, words), { kind: "alerts", items }];
}

function working(lines: readonly WrittenLine[]): Block[] {
  return lines.length === 0 ? [] : [{ kind: "lines", lines }];
}

function sourcesList(words: string, some: boolean): Block[] {
  return some ? [heading(2, words), { kind: "sources" }] : [];
}

function facts(
  caption: string,
  { what, howMuch }: { readonly what: string; readonly howMuch: string },
  list: readonly Fact[],
  kind: "facts" | "table" = "facts",
): Block {
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
): Block {
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
