import type { Messages } from "../words/messages.js";
import type { FormulaNode } from "./formula.js";

const SIGNS: Readonly<Record<string, string>> = { "*": " × ", "/": " ÷ ", "+": " + ", "-": " − ", "^": "^" };

/** Fills the places of a text: `{count}` with `count`. */
export function filled(text: string, values: Readonly<Record<string, string>>): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) =>
    Object.hasOwn(values, name) ? (values[name] as string) : place,
  );
}

/** Writes a formula on one line, each symbol and each number in it as `written` gives it. */
export function formulaText(
  node: FormulaNode,
  written: (leaf: string) => string,
  functions: Messages["functions"],
): string {
  const inner = (one: FormulaNode): string => formulaText(one, written, functions);
  switch (node.kind) {
    case "number":
      return written(node.text);
    case "symbol":
      return node.name === "pi" ? "π" : written(node.name);
    case "group":
      return `(${inner(node.inner)})`;
    case "sum":
      return inner(node.first) + node.rest.map((term) => signed(term.sign, term.node, inner)).join("");
    case "operation":
      return operation(node, inner);
    case "call": {
      const args = node.args.map(inner).join("; ");
      const text = functions[node.name as keyof Messages["functions"]];
      return text === undefined ? `${node.name}(${args})` : filled(text, { x: args });
    }
  }
}

function operation(
  { operator, left, right }: Extract<FormulaNode, { kind: "operation" }>,
  inner: (node: FormulaNode) => string,
): string {
  const [a, b] = [inner(left), inner(right)];
  // "5 ft^2" would read as square feet.
  const base = operator === "^" && left.kind === "symbol" && (/\s/.test(a) || isSigned(a)) ? `(${a})` : a;
  return base + signed(operator, right, () => b);
}

/** A sign and what stands behind it; in brackets where that begins with a minus of its own. */
function signed(sign: string, node: FormulaNode, inner: (node: FormulaNode) => string): string {
  const text = inner(node);
  return (SIGNS[sign] ?? sign) + (node.kind === "symbol" && isSigned(text) ? `(${text})` : text);
}

/** Whether a written number has a sign before it, in any locale's hand. */
function isSigned(text: string): boolean {
  return /^[\u200e\u200f\u061c]*[-−]/.test(text);
}

/** How a whole number is written. */
type Count = (count: number) => string;

/** A term's name: from the line's own words, with the symbol's number (`x2`) where the name has `{n}`. */
export function termName(lines: Messages["lines"], id: string, symbol: string, count: Count): string {
  const terms = lines[id]?.terms ?? {};
  const [, stem = symbol, number = ""] = /^(.*?)(\d*)$/.exec(symbol) ?? [];
  const name = Object.hasOwn(terms, symbol)
    ? terms[symbol]
    : Object.hasOwn(terms, stem)
      ? terms[stem]
      : undefined;
  if (name === undefined) return symbol;
  return filled(name, { n: number === "" ? "" : count(Number(number)) }).trim();
}

/** What a line finds: for a change of unit, the term it was made for. */
export function foundName(
  lines: Messages["lines"],
  line: { readonly id: string; readonly about?: string },
  count: Count,
): string {
  if (line.about === undefined) return lines[line.id]?.found ?? line.id;
  const whole = lines[line.about]?.found;
  if (whole !== undefined) return whole;
  const dot = line.about.lastIndexOf(".");
  return termName(lines, line.about.slice(0, dot), line.about.slice(dot + 1), count);
}
