import type { FormulaNode } from "./formula.js";
import type { Messages } from "./messages.js";

const SIGNS: Readonly<Record<string, string>> = { "*": " × ", "/": " ÷ ", "+": " + ", "-": " − ", "^": "^" };

/** Fills the places of a text: `{count}` with `count`. */
export function filled(text: string, values: Readonly<Record<string, string>>): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) => values[name] ?? place);
}

/** Writes a formula on one line, each symbol as `written` gives it. */
export function formulaText(
  node: FormulaNode,
  written: (symbol: string) => string,
  functions: Messages["functions"],
): string {
  const inner = (one: FormulaNode): string => formulaText(one, written, functions);
  switch (node.kind) {
    case "number":
      return node.text;
    case "symbol":
      return node.name === "pi" ? "π" : written(node.name);
    case "group":
      return `(${inner(node.inner)})`;
    case "operation":
      return inner(node.left) + (SIGNS[node.operator] ?? node.operator) + inner(node.right);
    case "call": {
      const args = node.args.map(inner).join(", ");
      const text = functions[node.name as keyof Messages["functions"]];
      return text === undefined ? `${node.name}(${args})` : filled(text, { x: args });
    }
  }
}

/** A term's or result's name: from the line's own words, with a number behind it where the symbol has one (`x2`). */
export function termName(lines: Messages["lines"], id: string, symbol: string): string {
  const terms = lines[id]?.terms ?? {};
  const own = terms[symbol];
  if (own !== undefined) return own;
  const [, stem = symbol, number = ""] = /^(.*?)(\d*)$/.exec(symbol) ?? [];
  return terms[stem] === undefined ? symbol : `${terms[stem]} ${number}`;
}

/** What a line finds: for a change of unit, the term it was made for. */
export function foundName(
  lines: Messages["lines"],
  line: { readonly id: string; readonly about?: string },
): string {
  if (line.about === undefined) return lines[line.id]?.found ?? line.id;
  const whole = lines[line.about]?.found;
  if (whole !== undefined) return whole;
  const dot = line.about.lastIndexOf(".");
  return termName(lines, line.about.slice(0, dot), line.about.slice(dot + 1));
}
