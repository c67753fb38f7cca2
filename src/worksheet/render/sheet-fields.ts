import type { Check, Field } from "../../units/check.js";
import { choice, count, EitherField, kinds, list, number, optional } from "../../units/fields.js";
import { made, table, written } from "../../units/made.js";
import type { CardLoad, FieldCard } from "../field-card.js";
import type { WrittenAlert } from "../job/alerts.js";
import type { WrittenDose } from "../job/amounts.js";
import type { SheetFact } from "../job/facts.js";
import type { WrittenStep } from "../job/steps.js";
import type { WrittenLine, WrittenTerm } from "../lines/written-line.js";
import type { WorkingSheet } from "../working-sheet.js";
import type { Worksheet, WrittenLoad } from "../worksheet.js";
import type { DrawingPoint, PrintableSheet, SheetAlert, SheetBlock, SheetOfBlocks } from "./sheets.js";

/** A list that may be empty. */
function listOf<T>(item: Field<T>): Field<readonly T[]> {
  return list("", item, { least: 0 });
}

/** What every sheet has. */
function head<K extends string>(kind: K): { kind: Field<K>; language: Field<string>; title: Field<string> } {
  return { kind: choice<K>("", [kind]), language: written(), title: written() };
}

/** Headings, by name. */
function headings<N extends string>(names: readonly N[]): Field<Readonly<Record<N, string>>> {
  return made(Object.fromEntries(names.map((name) => [name, written()])) as never);
}

/** A sheet: what this library made, read again before it is laid out, since it may come from a file or another program. */
class SheetField extends EitherField<PrintableSheet> {
  override missing(check: Check): undefined {
    return noSheet(check);
  }
}

function noSheet(check: Check): undefined {
  return check.fault("not-a-quantity", "sheet-expected", "", "This isn't a sheet. Make the sheet first.");
}

/** A sheet. */
export const SHEET: Field<PrintableSheet> = /* @__PURE__ */ (() => {
  const severity = choice("", ["note", "warning", "refusal"]);
  const fact = made<SheetFact>({ name: written(), value: written() });
  const alert = made<WrittenAlert>({ severity, name: written(), message: written() });
  const line = made<WrittenLine>({
    id: written(),
    found: written(),
    words: written(),
    numbers: written(),
    result: written(),
    source: written(),
    formula: written(),
    terms: table(made<WrittenTerm>({ name: written(), value: written() })),
  });
  const lines = listOf(line);
  const texts = listOf(written());
  const dose = made<WrittenDose>({
    product: written(),
    amount: written(),
    measures: texts,
    remark: written(),
  });
  const worksheet = made<Worksheet>({
    ...head("worksheet"),
    refused: optional(written()),
    warnings: listOf(alert),
    summary: listOf(fact),
    mixing: optional(written()),
    loads: listOf(
      made<WrittenLoad>({
        title: written(),
        numbers: listOf(count("")),
        fill: written(),
        covers: optional(written()),
        doses: listOf(dose),
      }),
    ),
    totals: listOf(fact),
    steps: listOf(made<WrittenStep>({ number: written(), title: written(), lines })),
    cautions: texts,
    rounding: written(),
    headings: headings([
      "summary",
      "warnings",
      "totals",
      "working",
      "sources",
      "cautions",
      "what",
      "howMuch",
      "product",
      "amount",
      "measure",
      "loads",
    ]),
  });
  const working = made<WorkingSheet>({
    ...head("working"),
    lines,
    rounding: written(),
    sources: written(),
  });
  const card = made<FieldCard>({
    ...head("field-card"),
    warnings: listOf(alert),
    facts: listOf(fact),
    order: texts,
    loads: listOf(made<CardLoad>({ title: written(), steps: texts })),
    cautions: texts,
    headings: headings(["summary", "warnings", "loads", "cautions", "what", "howMuch"]),
  });
  const rows = listOf(texts);
  const ofKind = <K extends SheetBlock["kind"]>(kind: K): { kind: Field<K> } => ({
    kind: choice<K>("", [kind]),
  });
  const tableOf = <K extends "table" | "facts">(kind: K) =>
    made({ ...ofKind(kind), caption: written(), columns: texts, rows });
  const point = made<DrawingPoint>({ x: number(""), y: number("") });
  const parts = {
    heading: made({ ...ofKind("heading"), level: choice("", [2, 3]), text: written() }),
    text: made({ ...ofKind("text"), text: written() }),
    alerts: made({
      ...ofKind("alerts"),
      items: listOf(made<SheetAlert>({ severity, name: written(), value: written() })),
    }),
    list: made({ ...ofKind("list"), items: texts }),
    boxes: made({ ...ofKind("boxes"), items: texts }),
    table: tableOf("table"),
    facts: tableOf("facts"),
    lines: made({ ...ofKind("lines"), lines }),
    sources: made(ofKind("sources")),
    blanks: made({ ...ofKind("blanks"), items: texts }),
    room: made({ ...ofKind("room"), lines: count("", 1, 100) }),
    drawing: made({
      ...ofKind("drawing"),
      caption: written(),
      width: number("", { above: 0 }),
      height: number("", { above: 0 }),
      areas: listOf(made({ of: choice("", ["treated", "ground"]), corners: listOf(point) } as never)),
      labels: listOf(made({ at: point, text: written() } as never)),
    }),
  };
  const block = kinds<SheetBlock>("", {
    ...parts,
    group: made({
      ...ofKind("group"),
      as: choice("", ["part", "card", "slide"]),
      blocks: listOf(kinds("", parts as never)),
    }),
  } as never);
  const ofBlocks = (kind: SheetOfBlocks["kind"]): Field<PrintableSheet> =>
    made<SheetOfBlocks>({ ...head(kind), blocks: listOf(block) });

  const sheets: Record<PrintableSheet["kind"], Field<PrintableSheet>> = {
    worksheet,
    working,
    "field-card": card,
    practice: ofBlocks("practice"),
    board: ofBlocks("board"),
  };
  const names = Object.keys(sheets);
  return new SheetField("", Object.values(sheets), (input, check) => {
    const kind = typeof input === "object" && input !== null && (input as { readonly kind?: unknown }).kind;
    const at = typeof kind === "string" ? names.indexOf(kind) : -1;
    return at < 0 ? noSheet(check) : at;
  });
})();
