import type { WorkingLine } from "../../units/working-line.js";
import { filled, ownText, type Writer } from "../words/writer.js";
import { type FormulaNode, formulaText, parseFormula } from "./formula.js";

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

function writtenLine(line: WorkingLine, writer: Writer): WrittenLine {
  const { messages, long } = writer;
  const formula = parseFormula(line.formula);
  const numbers = numbersIn(formula).map((digits): [string, WrittenTerm] => {
    const written = long(Number(digits));
    return [digits, { name: written, value: written }];
  });
  const symbols = Object.entries(line.terms).map(([symbol, term]): [string, WrittenTerm] => [
    symbol,
    { name: termName(line.id, symbol, line, writer), value: long(term) },
  ]);
  const terms: Record<string, WrittenTerm> = Object.fromEntries([...numbers, ...symbols]);
  const text = (part: keyof WrittenTerm): string =>
    formulaText(formula, (leaf) => terms[leaf]?.[part] ?? leaf, messages.functions);
  return {
    id: line.id,
    found: foundName(line, writer),
    words: text("name"),
    numbers: text("value"),
    result: long(line.result),
    source: ownText(messages.sources, line.source) ?? line.source,
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

/** A term's name from the table, with the number of the symbol (`x2`) and the tool it belongs to where the name has a place for them. */
function termName(id: string, symbol: string, { tools = {} }: WorkingLine, writer: Writer): string {
  const { messages, count } = writer;
  const terms = messages.lines[id]?.terms ?? {};
  const [, stem = symbol, number = ""] = /^(.*?)(\d*)$/.exec(symbol) ?? [];
  const name = ownText(terms, symbol) ?? ownText(terms, stem);
  if (name === undefined) return symbol;
  const n = number === "" ? "" : count(Number(number));
  const tool = ownText(tools, number);
  if (tool === undefined) return filled(name, { n }).trim();
  // One tool may be filled to two marks.
  const again = Object.values(tools).filter((one) => one === tool).length > 1 ? ` (${n})` : "";
  return filled(name, { n, tool: writer.tool(tool) + again, tools: writer.tools(tool) + again });
}

/** What a line finds: for a change of unit, the term it was made for. */
function foundName(line: WorkingLine, writer: Writer): string {
  const { lines } = writer.messages;
  if (line.about === undefined) return lines[line.id]?.found ?? line.id;
  const whole = lines[line.about]?.found;
  if (whole !== undefined) return whole;
  const dot = line.about.lastIndexOf(".");
  return termName(line.about.slice(0, dot), line.about.slice(dot + 1), line, writer);
}
