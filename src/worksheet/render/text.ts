import type { WrittenLine } from "../lines/written-line.js";
import { type Page, pageOf, partsOf } from "./page.js";
import { plain } from "./plain.js";
import type { PrintableSheet, SheetBlock } from "./sheets.js";

const WIDTH = 80;
const BLANK = 30;

/**
 * Lays a sheet out as plain text for a terminal, 80 columns wide. Control characters in the names of products and tools are
 * taken out, so that no name steers the terminal.
 *
 * @param sheet - a worksheet, a sheet of working, a field card or a practice sheet
 * @returns the text, with a line break at its end
 * @throws SprayMathError `not-a-quantity` for what is no sheet; `missing`, `unknown-choice` or `unknown-field` in one that
 *   was changed
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { renderText, worksheet } from "swath-to-spoon/worksheet";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *   calibration: { kind: "strip", used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * console.log(renderText(worksheet(plan)).split("\n")[0]); // Spray job worksheet
 * ```
 */
export function renderText(sheet: PrintableSheet): string {
  const page = pageOf(sheet);
  const lines = [
    ...underlined(page.title, "="),
    ...page.blocks.flatMap((block) => ["", ...laidOut(block, page)]),
  ];
  return `${lines.join("\n")}\n`;
}

function laidOut(block: SheetBlock, page: Page): string[] {
  const { sources } = page;
  switch (block.kind) {
    case "heading":
      return block.level === 2 ? underlined(block.text, "-") : wrapped(block.text, "", "");
    case "text":
      return wrapped(block.text, "", "");
    case "alerts":
      return block.items.flatMap(({ name, value }) => wrapped(`${name}: ${value}`, "- ", "  "));
    case "list":
      return block.items.flatMap((item) => wrapped(item, "- ", "  "));
    case "boxes":
      return block.items.flatMap((item) => wrapped(item, "[ ] ", "    "));
    case "table":
    case "facts":
      return block.columns.length > 2 ? block.rows.flatMap(entry) : aligned(block.rows);
    case "lines":
      return block.lines.flatMap((line) => working(line, sources));
    case "sources":
      return sources.flatMap((source, at) => wrapped(source, `[${at + 1}] `, "    "));
    case "blanks":
      return block.items.map((item) => `${plain(item)}: ${"_".repeat(BLANK)}`);
    case "room":
      return Array.from({ length: block.lines }, () => "");
    case "drawing":
      return [];
    case "group": {
      const lines = block.blocks.flatMap((one) => ["", ...laidOut(one, page)]).slice(1);
      return block.as === "card" ? ["-".repeat(WIDTH), ...lines, "-".repeat(WIDTH)] : lines;
    }
  }
}

function underlined(text: string, sign: string): string[] {
  const shown = plain(text);
  return [shown, sign.repeat([...shown].length)];
}

function entry([name = "", amount = "", ...others]: readonly string[]): string[] {
  return [
    ...wrapped(`${name}: ${amount}`, "", "    "),
    ...others.flatMap((other) => wrapped(other, "    ", "    ")),
  ];
}

// A column of names, unless one of them would leave the values no room.
function aligned(rows: readonly (readonly string[])[]): string[] {
  const names = rows.map(([name = ""]) => plain(name));
  const width = Math.max(0, ...names.map((name) => [...name].length));
  if (width > WIDTH / 2) return rows.flatMap(entry);
  return rows.flatMap(([, value = ""], i) =>
    wrapped(value, `${(names[i] ?? "").padEnd(width)}  `, " ".repeat(width + 2)),
  );
}

function working(line: WrittenLine, sources: readonly string[]): string[] {
  const number = `[${sources.indexOf(line.source) + 1}]`;
  const [found = "", first = "", ...others] = partsOf(line);
  const whole = plain(`${[found, first, ...others].join(" = ")} ${number}`);
  if (whole.length + 2 <= WIDTH) return [`  ${whole}`];
  return [
    ...wrapped(`${found} = ${first}`, "  ", "      "),
    ...others.flatMap((part, i) =>
      wrapped(`= ${part}${i === others.length - 1 ? ` ${number}` : ""}`, "    ", "      "),
    ),
  ];
}

function wrapped(text: string, first: string, rest: string): string[] {
  const lines: string[] = [];
  let line = first;
  for (const word of plain(text).trim().split(" ")) {
    const empty = line === first || line === rest;
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = rest + word;
    } else line += empty ? word : ` ${word}`;
  }
  return [...lines, line];
}
