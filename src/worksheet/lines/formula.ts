import { SprayMathError } from "../../errors.js";

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
  return new SprayMathError(
    "unreadable",
    "formula",
    `Given ${JSON.stringify(formula)}, which is not a formula.`,
  );
}

// Loosest first. Both group to the left; no formula here has a power of a power.
const LEVELS = ["*/", "^"] as const;

/** Takes a formula in symbols apart: `used / (swath * distance)`. */
export function parseFormula(formula: string): FormulaNode {
  const list = tokens(formula);
  let at = 0;

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
    let left = operation(level + 1);
    for (
      let operator = list[at];
      operator !== undefined && operators.includes(operator);
      operator = list[at]
    ) {
      at++;
      left = { kind: "operation", operator, left, right: operation(level + 1) };
    }
    return left;
  }

  function operand(): FormulaNode {
    const token = list[at++];
    if (token === "(") {
      const inner = sum();
      close();
      return { kind: "group", inner };
    }
    if (token === undefined || /^[-+*/^),]$/.test(token)) throw unreadable(formula);
    if (/^\d/.test(token)) return { kind: "number", text: token };
    if (list[at] !== "(") return { kind: "symbol", name: token };
    at++;
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
