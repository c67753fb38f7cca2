import { type SprayMathError, shown } from "../../errors.js";
import { refusal } from "../../units/message.js";
import type { Messages } from "../words/messages.js";
import { filled } from "../words/writer.js";

/** A formula taken apart, ready to be written with words or with numbers. */
export type FormulaNode =
  | { readonly kind: "number"; readonly text: string }
  | { readonly kind: "symbol"; readonly name: string }
  | { readonly kind: "call"; readonly name: string; readonly args: readonly FormulaNode[] }
  /** Flat, since a job of many plots is a sum of as many terms. */
  | { readonly kind: "sum"; readonly first: FormulaNode; readonly rest: readonly SumTerm[] }
  | {
      readonly kind: "operation";
      readonly operator: string;
      readonly left: FormulaNode;
      readonly right: FormulaNode;
    }
  | { readonly kind: "group"; readonly inner: FormulaNode };

/** A term of a sum after the first, with its sign. */
interface SumTerm {
  readonly sign: "+" | "-";
  readonly node: FormulaNode;
}

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|([A-Za-z][A-Za-z0-9]*)|([-+*/^(),]))/y;

function tokens(formula: string): string[] {
  const found: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < formula.length) {
    const match = TOKEN.exec(formula);
    if (match === null) throw unreadable(formula);
    found.push(match[0].trim());
  }
  return found;
}

function unreadable(formula: string): SprayMathError {
  return refusal("unreadable", "formula-unreadable", "formula", "{given} isn't a formula.", {
    given: shown(formula),
  });
}

// Loosest first. Both group to the left; no formula here has a power of a power.
const LEVELS = ["*/", "^"] as const;

// The deepest formula of the library has 5 operations in one another. Whoever writes one out goes into it by calls, which end
// somewhere.
const MOST_DEPTH = 200;

/** Takes a formula in symbols apart: `used / (swath * distance)`. */
export function parseFormula(formula: string): FormulaNode {
  const list = tokens(formula);
  let at = 0;
  let depth = 0;

  function deeper(): void {
    if (++depth > MOST_DEPTH) throw unreadable(formula);
  }

  function sum(): FormulaNode {
    const first = operation(0);
    const rest: SumTerm[] = [];
    for (let sign = list[at]; sign === "+" || sign === "-"; sign = list[at]) {
      at++;
      rest.push({ sign, node: operation(0) });
    }
    return rest.length === 0 ? first : { kind: "sum", first, rest };
  }

  function operation(level: number): FormulaNode {
    const operators = LEVELS[level];
    if (operators === undefined) return operand();
    const outside = depth;
    let left = operation(level + 1);
    for (
      let operator = list[at];
      operator !== undefined && operators.includes(operator);
      operator = list[at]
    ) {
      at++;
      deeper();
      left = { kind: "operation", operator, left, right: operation(level + 1) };
    }
    depth = outside;
    return left;
  }

  function operand(): FormulaNode {
    const token = list[at++];
    if (token === "(") {
      deeper();
      const inner = sum();
      close();
      return { kind: "group", inner };
    }
    if (token === undefined || /^[-+*/^),]$/.test(token)) throw unreadable(formula);
    if (/^\d/.test(token)) return { kind: "number", text: token };
    if (list[at] !== "(") return { kind: "symbol", name: token };
    at++;
    deeper();
    const args = [sum()];
    while (list[at] === ",") {
      at++;
      args.push(sum());
    }
    close();
    return { kind: "call", name: token, args };
  }

  function close(): void {
    if (list[at++] !== ")") throw unreadable(formula);
  }

  const node = sum();
  if (at !== list.length) throw unreadable(formula);
  return node;
}

const SIGNS: Readonly<Record<string, string>> = { "*": " × ", "/": " ÷ ", "+": " + ", "-": " − ", "^": "^" };

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

/** The symbols of a formula, each as often as it stands there. */
export function symbolsOf(node: FormulaNode): string[] {
  return leavesOf(node).flatMap((leaf) => (leaf.kind === "symbol" && leaf.name !== "pi" ? [leaf.name] : []));
}

/** The numbers of a formula, as they are written in it. */
export function numbersOf(node: FormulaNode): string[] {
  return leavesOf(node).flatMap((leaf) => (leaf.kind === "number" ? [leaf.text] : []));
}

function leavesOf(node: FormulaNode): readonly Extract<FormulaNode, { kind: "number" | "symbol" }>[] {
  switch (node.kind) {
    case "group":
      return leavesOf(node.inner);
    case "sum":
      return [node.first, ...node.rest.map((term) => term.node)].flatMap(leavesOf);
    case "operation":
      return [...leavesOf(node.left), ...leavesOf(node.right)];
    case "call":
      return node.args.flatMap(leavesOf);
    default:
      return [node];
  }
}
