import type { WorkingLine } from "../../units/working.js";
import { ownName, type Writer } from "../words/writer.js";
import { type FormulaNode, parseFormula } from "./formula.js";
import { formulaText, foundName, termName } from "./line-text.js";

/** A term of a formula as it is written. */
export interface WrittenTerm {
  /** What it is. */
  readonly name: string;
  /** How much it is, rounded for reading. */
  readonly value: string;
}

/** A line of working in words and in numbers. */
export interface WrittenLine {
  /** Which formula. */
  readonly id: string;
  /** What is found. */
  readonly found: string;
  /** The formula in words. */
  readonly words: string;
  /** The formula with the numbers put in. */
  readonly numbers: string;
  /** The result, rounded for reading. */
  readonly result: string;
  /** Where the formula comes from. */
  readonly source: string;
  /** The formula in symbols, for a layout that writes it in its own way. */
  readonly formula: string;
  /** What its symbols stand for, and how the numbers in it are written. */
  readonly terms: Readonly<Record<string, WrittenTerm>>;
}

/** Writes lines of working. A change of unit that reads like one before it is left out: once is enough to read. */
export function writtenLines(lines: readonly WorkingLine[], writer: Writer): WrittenLine[] {
  const seen = new Set<string>();
  return lines
    .map((line) => writtenLine(line, writer))
    .filter(({ id, found, numbers }) => {
      if (id !== "units.convert") return true;
      const key = JSON.stringify([found, numbers]);
      const isNew = !seen.has(key);
      seen.add(key);
      return isNew;
    });
}

function writtenLine(line: WorkingLine, { messages, long, count }: Writer): WrittenLine {
  const formula = parseFormula(line.formula);
  const numbers = numbersIn(formula).map((digits): [string, WrittenTerm] => {
    const written = long(Number(digits));
    return [digits, { name: written, value: written }];
  });
  const symbols = Object.entries(line.terms).map(([symbol, term]): [string, WrittenTerm] => [
    symbol,
    { name: termName(messages.lines, line.id, symbol, count), value: long(term) },
  ]);
  const terms: Record<string, WrittenTerm> = Object.fromEntries([...numbers, ...symbols]);
  const text = (part: keyof WrittenTerm): string =>
    formulaText(formula, (leaf) => terms[leaf]?.[part] ?? leaf, messages.functions);
  return {
    id: line.id,
    found: foundName(messages.lines, line, count),
    words: text("name"),
    numbers: text("value"),
    result: long(line.result),
    source: ownName(messages.sources, line.source) ?? line.source,
    formula: line.formula,
    terms,
  };
}

function numbersIn(node: FormulaNode): string[] {
  switch (node.kind) {
    case "number":
      return [node.text];
    case "symbol":
      return [];
    case "group":
      return numbersIn(node.inner);
    case "sum":
      return [node.first, ...node.rest.map((term) => term.node)].flatMap(numbersIn);
    case "operation":
      return [...numbersIn(node.left), ...numbersIn(node.right)];
    case "call":
      return node.args.flatMap(numbersIn);
  }
}
