import { type Page, pageOf, partsOf } from "./page.js";
import { plain } from "./plain.js";
import type { PrintableSheet, SheetBlock } from "./sheets.js";

const BLANK = 30;

/**
 * Writes a sheet as Markdown: CommonMark, with the tables and task lists of GitHub Flavored Markdown. Everything in
 * names that Markdown would read as its own is escaped.
 *
 * Source: CommonMark 0.31.2, section 2.4 (backslash escapes); GitHub Flavored Markdown 0.29, sections 4.10 and 5.3.
 *
 * @param sheet - a worksheet, a sheet of working, a field card or a practice sheet
 * @returns the text, with a line break at its end
 * @throws SprayMathError `not-a-quantity` for what is no sheet; `missing`, `unknown-choice` or `unknown-field` in one that
 *   was changed
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRate } from "swath-to-spoon/working";
 * import { renderMarkdown, workingSheet } from "swath-to-spoon/worksheet";
 *
 * const lines = stripRate({ used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") });
 * console.log(renderMarkdown(workingSheet({ title: "Test strip | 1", lines })).split("\n")[0]); // # Test strip \| 1
 * ```
 */
export function renderMarkdown(sheet: PrintableSheet): string {
  const page = pageOf(sheet);
  return `# ${escaped(page.title)}\n\n${joined(page.blocks, page)}\n`;
}

/** Parts in order; those that Markdown has no way to show leave nothing behind. */
function joined(blocks: readonly SheetBlock[], page: Page): string {
  const parts = blocks.map((block) => laidOut(block, page));
  return parts.filter((part) => part !== "").join("\n\n");
}

function laidOut(block: SheetBlock, page: Page): string {
  const { sources } = page;
  switch (block.kind) {
    case "heading":
      return `${"#".repeat(block.level)} ${escaped(block.text)}`;
    case "text":
      return escaped(block.text);
    case "alerts":
      return list(block.items.map(({ name, value }) => `**${escaped(name)}:** ${escaped(value)}`));
    case "list":
      return list(block.items.map(escaped));
    case "boxes":
      return list(block.items.map((item) => `[ ] ${escaped(item)}`));
    case "table":
    case "facts":
      return [
        block.columns.map(escaped),
        block.columns.map(() => "---"),
        ...block.rows.map((one) => one.map(escaped)),
      ]
        .map(row)
        .join("\n");
    case "lines":
      return list(
        block.lines.map((line) => {
          const parts = partsOf(line).map(escaped);
          return `${parts.slice(0, -1).join(" = ")} = **${parts.at(-1)}** \\[${sources.indexOf(line.source) + 1}\\]`;
        }),
      );
    case "sources":
      return list(sources.map(escaped), "1.");
    case "blanks":
      return block.items.map((item) => `${escaped(item)}: ${"\\_".repeat(BLANK)}`).join("  \n");
    case "room":
      return Array.from({ length: block.lines }, () => "&nbsp;").join("\n\n");
    case "drawing":
      return "";
    case "group": {
      const parts = joined(block.blocks, page);
      return block.as === "card" ? `---\n\n${parts}` : parts;
    }
  }
}

function list(items: readonly string[], mark = "-"): string {
  return items.map((item) => `${mark} ${item}`).join("\n");
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(" | ")} |`;
}

// Signs that mean something anywhere, the start of a bare address, and what makes a line a heading, a list or a rule.
function escaped(text: string): string {
  return plain(text)
    .trim()
    .replace(/[\\`*_[\]<>|~$&!{}@]/g, "\\$&")
    .replace(/:\/\//g, ":\\/\\/")
    .replace(/www\./gi, (found) => `${found.slice(0, -1)}\\.`)
    .replace(/^([-+#=])/, "\\$1")
    .replace(/^(\d+)([.)])(?=\s|$)/, "$1\\$2");
}
