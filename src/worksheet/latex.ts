import { type FormulaNode, parseFormula } from "./lines/formula.js";
import type { WrittenLine, WrittenTerm } from "./lines/written-line.js";
import { type Page, pageOf } from "./render/page.js";
import { plain } from "./render/plain.js";
import type { PrintableSheet, SheetBlock } from "./render/sheets.js";

/**
 * Writes a sheet as a LaTeX document of its own, formulas set as fractions. It needs the packages that every LaTeX has
 * (amsmath, amssymb, geometry, iftex). Everything in names that LaTeX would read as its own is escaped; names in
 * scripts that T1 fonts lack need LuaLaTeX or XeLaTeX and a font that has them.
 *
 * @param sheet - a worksheet, a sheet of working, a field card or a practice sheet
 * @returns the document, with a line break at its end
 * @throws SprayMathError `not-a-quantity` for what is no sheet; `missing`, `unknown-choice`, `unknown-field` or `unreadable` in one that
 *   was changed
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRate } from "swath-to-spoon/working";
 * import { workingSheet } from "swath-to-spoon/worksheet";
 * import { renderLatex } from "swath-to-spoon/worksheet/latex";
 *
 * const lines = stripRate({ used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") });
 * const latex = renderLatex(workingSheet({ title: "Strip 1 & 2", lines }));
 * console.log(latex.includes("Strip 1 \\& 2")); // true
 * console.log(latex.includes("\\frac{\\text{3 L}}{\\text{1 m} \\times \\text{100 m}}")); // true
 * ```
 */
export function renderLatex(sheet: PrintableSheet): string {
  const page = pageOf(sheet);
  return [
    "\\documentclass[10pt]{article}",
    "\\usepackage{iftex}",
    "\\ifPDFTeX\\usepackage[T1]{fontenc}\\usepackage{textcomp}\\fi",
    "\\usepackage{amsmath}",
    "\\usepackage{amssymb}",
    "\\usepackage[margin=18mm]{geometry}",
    "\\setlength{\\parindent}{0pt}",
    "\\setlength{\\parskip}{0.4em}",
    "\\setcounter{secnumdepth}{0}",
    "\\raggedright",
    "\\begin{document}",
    `\\section{${escaped(page.title)}}`,
    ...page.blocks.map((block) => laidOut(block, page)),
    "\\end{document}",
    "",
  ].join("\n");
}

// What a line of handwriting takes.
const LINE_OF_WORK = 8;

function laidOut(block: SheetBlock, page: Page): string {
  const { sources } = page;
  switch (block.kind) {
    case "heading":
      return `\\${block.level === 2 ? "subsection" : "subsubsection"}{${escaped(block.text)}}`;
    case "text":
      return `${escaped(block.text)}\n`;
    case "alerts":
      return list(
        block.items.map(({ name, value }) => `\\item \\textbf{${escaped(name)}:} ${escaped(value)}`),
      );
    case "list":
      return list(block.items.map(item));
    case "boxes":
      return list(block.items.map((one) => `\\item[$\\square$] ${escaped(one)}`));
    case "table":
    case "facts":
      return table(block);
    case "lines":
      return list(block.lines.map((line) => working(line, sources)));
    case "sources":
      return list(sources.map(item), true);
    case "blanks":
      return `${block.items.map((one) => `${escaped(one)}: \\hrulefill`).join("\\qquad ")}\n`;
    case "room":
      return `\\vspace*{${block.lines * LINE_OF_WORK}mm}\n`;
    case "drawing":
      return "";
    case "group":
      return together(block, page);
  }
}

/** Parts that no page breaks apart; a card has a frame to cut along. */
function together({ as, blocks }: Extract<SheetBlock, { kind: "group" }>, page: Page): string {
  const inner = blocks.map((block) => laidOut(block, page)).join("\n");
  const isCard = as === "card";
  const width = isCard ? "\\dimexpr\\linewidth-2\\fboxsep-2\\fboxrule\\relax" : "\\linewidth";
  const box = `\\begin{minipage}{${width}}\n\\raggedright\n${inner}\n\\end{minipage}`;
  return `${isCard ? `\\fbox{${box}}` : box}\\par\\medskip\n`;
}

// A text in brackets at an item's start would be taken for its label.
function item(text: string): string {
  return `\\item {}${escaped(text)}`;
}

function list(items: readonly string[], ordered = false): string {
  const name = ordered ? "enumerate" : "itemize";
  return [`\\begin{${name}}`, "\\setlength{\\itemsep}{0pt}", ...items, `\\end{${name}}`].join("\n");
}

function table({ columns, rows }: Extract<SheetBlock, { kind: "table" | "facts" }>): string {
  const widths = columns.length === 2 ? ["0.33", "0.61"] : ["0.24", "0.2", "0.48"];
  const row = (cells: readonly string[]): string =>
    `${cells.map((cell) => `{}${escaped(cell)}`).join(" & ")} \\\\`;
  return [
    `\\begin{tabular}{@{}${widths.map((width) => `p{${width}\\linewidth}`).join("")}@{}}`,
    row(columns),
    "\\hline",
    ...rows.map(row),
    "\\end{tabular}\n",
  ].join("\n");
}

function working(line: WrittenLine, sources: readonly string[]): string {
  const formula = parseFormula(line.formula);
  const set = (part: keyof WrittenTerm): string =>
    math(formula, (symbol) => line.terms[symbol]?.[part] ?? symbol);
  const sums = line.id === "units.convert" ? [set("value")] : [set("name"), set("value")];
  return [
    `\\item {}${escaped(line.found)}`,
    ...sums.map((sum) => `$\\displaystyle = ${sum}$`),
    `$= \\text{\\bfseries ${escaped(line.result)}}$ [${sources.indexOf(line.source) + 1}]`,
  ].join(" ");
}

const FUNCTIONS: Readonly<Record<string, readonly [before: string, after: string]>> = {
  sqrt: ["\\sqrt{", "}"],
  ceil: ["\\left\\lceil ", " \\right\\rceil"],
  floor: ["\\left\\lfloor ", " \\right\\rfloor"],
  min: ["\\min\\left(", "\\right)"],
  max: ["\\max\\left(", "\\right)"],
  sin: ["\\sin\\left(", "\\right)"],
  cos: ["\\cos\\left(", "\\right)"],
  tan: ["\\tan\\left(", "\\right)"],
};

function math(node: FormulaNode, written: (symbol: string) => string): string {
  const inner = (one: FormulaNode): string => math(one, written);
  switch (node.kind) {
    case "number":
      return `\\text{${escaped(written(node.text))}}`;
    case "symbol":
      return node.name === "pi" ? "\\pi" : `\\text{${escaped(written(node.name))}}`;
    case "group":
      return bracketed(inner(node.inner));
    case "call": {
      const [before, after] = FUNCTIONS[node.name] ?? ["\\left(", "\\right)"];
      return before + node.args.map(inner).join("; ") + after;
    }
    case "sum":
      return inner(node.first) + node.rest.map((term) => ` ${term.sign} ${inner(term.node)}`).join("");
    case "operation": {
      const { operator, left, right } = node;
      if (operator === "/") return `\\frac{${inner(bare(left))}}{${inner(bare(right))}}`;
      if (operator !== "^") return `${inner(left)} \\times ${inner(right)}`;
      const base = left.kind === "symbol" ? bracketed(inner(left)) : inner(left);
      return `{${base}}^{${inner(right)}}`;
    }
  }
}

// Brackets that grow with a fraction keep a line from breaking between them; a long sum must break.
function bracketed(text: string): string {
  return /\\(frac|sqrt)/.test(text) ? `\\left(${text}\\right)` : `(${text})`;
}

/** A fraction's stroke does what brackets did. */
function bare(node: FormulaNode): FormulaNode {
  return node.kind === "group" ? node.inner : node;
}

const ESCAPES: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}",
  "{": "\\{",
  "}": "\\}",
  $: "\\$",
  "&": "\\&",
  "#": "\\#",
  "%": "\\%",
  _: "\\_",
  "^": "\\textasciicircum{}",
  "~": "\\textasciitilde{}",
  "<": "\\textless{}",
  ">": "\\textgreater{}",
  "|": "\\textbar{}",
  '"': "\\textquotedbl{}",
  "`": "\\textasciigrave{}",
  "'": "\\textquotesingle{}",
  "-": "{-}",
  "[": "{[}",
  "]": "{]}",
  "\u00a0": "~",
  "\u202f": "\\,",
  "\u061c": "",
  "\u200e": "",
  "\u200f": "",
  "×": "\\texttimes{}",
  "÷": "\\textdiv{}",
  "−": "\\textminus{}",
  "√": "\\ensuremath{\\surd}",
  π: "\\ensuremath{\\pi}",
  "°": "\\textdegree{}",
  "²": "\\textsuperscript{2}",
  "³": "\\textsuperscript{3}",
};

function escaped(text: string): string {
  // Every sign alone, so that what one stands for is not escaped again.
  return Array.from(plain(text), (sign) => ESCAPES[sign] ?? sign)
    .join("")
    .replace(/,(?=,)/g, ",{}");
}
