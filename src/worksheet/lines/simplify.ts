import type { WorkingLine } from "../../units/working-line.js";
import { type FormulaNode, parseFormula, symbolsOf } from "./formula.js";

type Terms = WorkingLine["terms"];

/** Whether a line finds what it is given: `x = x`. */
export function saysNothing({ id, formula }: WorkingLine): boolean {
  return id !== "units.convert" && parseFormula(formula).kind === "symbol";
}

/** The line without what says nothing: times one, divided by one, plus nothing. */
export function simplified(line: WorkingLine): WorkingLine {
  const { id, formula, terms } = line;
  // A change of unit is its factor, whatever the number.
  if (id === "units.convert") return line;
  const before = parseFormula(formula);
  const node = bare(plain(before, terms));
  const used = new Set(symbolsOf(node));
  if (used.size === symbolsOf(before).length) return line;
  return {
    ...line,
    formula: asText(node),
    terms: Object.fromEntries(Object.entries(terms).filter(([symbol]) => used.has(symbol))),
  };
}

function plain(node: FormulaNode, terms: Terms): FormulaNode {
  const inner = (one: FormulaNode): FormulaNode => plain(one, terms);
  switch (node.kind) {
    case "group": {
      const all = inner(node.inner);
      return all.kind === "symbol" || all.kind === "call" ? all : { ...node, inner: all };
    }
    case "call":
      return { ...node, args: node.args.map(inner) };
    case "sum": {
      const first = inner(node.first);
      const rest = node.rest
        .map(({ sign, node: term }) => ({ sign, node: inner(term) }))
        .filter(({ node: term }) => !isNothing(term, terms));
      const [next, ...others] = rest;
      if (next === undefined) return first;
      if (!isNothing(first, terms) || next.sign === "-") return { ...node, first, rest };
      return others.length === 0 ? next.node : { ...node, first: next.node, rest: others };
    }
    case "operation": {
      const [left, right] = [inner(node.left), inner(node.right)];
      if (isOne(right, terms)) return left;
      return node.operator === "*" && isOne(left, terms) ? right : { ...node, left, right };
    }
    default:
      return node;
  }
}

function bare(node: FormulaNode): FormulaNode {
  return node.kind === "group" ? node.inner : node;
}

function isOne(node: FormulaNode, terms: Terms): boolean {
  return node.kind === "symbol" && terms[node.name] === 1;
}

function isNothing(node: FormulaNode, terms: Terms): boolean {
  const term = node.kind === "symbol" ? terms[node.name] : undefined;
  return (typeof term === "object" ? term.value : term) === 0;
}

/** A formula in symbols again. */
function asText(node: FormulaNode): string {
  switch (node.kind) {
    case "number":
      return node.text;
    case "symbol":
      return node.name;
    case "group":
      return `(${asText(node.inner)})`;
    case "call":
      return `${node.name}(${node.args.map(asText).join(", ")})`;
    case "sum":
      return asText(node.first) + node.rest.map((term) => ` ${term.sign} ${asText(term.node)}`).join("");
    case "operation":
      return `${asText(node.left)} ${node.operator} ${asText(node.right)}`;
  }
}
