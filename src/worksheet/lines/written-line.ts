import type { Quantity } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";
import { filled, ownText, type Writer } from "../words/writer.js";
import { factorsOf } from "./factors.js";
import { formulaText, numbersOf, parseFormula } from "./formula.js";
import { saysNothing, simplified } from "./simplify.js";

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
  const changes = new Set<string>();
  return lines
    .map((line) => writtenLine(line, writer))
    .filter((line) => line.id !== "units.convert" || isNew(line, changes));
}

/**
 * Writes the lines of steps for a sheet: without what says nothing, and with the constants of a change of unit written out. What
 * reads like a line before it in its step, or like a change of unit in any step, is left out. So is a line of which only `x = x` is left, unless every
 * result is to be kept.
 */
export function sheetLines(
  steps: readonly (readonly WorkingLine[])[],
  writer: Writer,
  keepsAll = false,
): WrittenLine[][] {
  const changes = new Set<string>();
  return steps.map((lines) => {
    const kept = lines.map(simplified).filter((line) => keepsAll || !saysNothing(line));
    const written = kept.map((line) => withConstants(line, writtenLine(line, writer), writer));
    const step = new Set<string>();
    return written.filter((line) => isNew(line, line.id === "units.convert" ? changes : step));
  });
}

/** Whether a line reads like none before it. */
function isNew({ found, numbers, result }: WrittenLine, seen: Set<string>): boolean {
  const before = seen.size;
  return seen.add(JSON.stringify([found, numbers, result])).size > before;
}

// A unit has a part over the stroke, and one under it.
const CONSTANTS = ["a", "b"] as const;

/** A change of a compound unit by the numbers that its factor is made of: `43,560 sq ft in 1 ac ÷ 128 fl oz in 1 gal`. */
function withConstants(line: WorkingLine, written: WrittenLine, writer: Writer): WrittenLine {
  const factors = factorsOf(line);
  const { value } = written.terms;
  if (factors.length < 2 || value === undefined) return written;
  // "1,000 sq ft in 1 1,000 sq ft" is no help to anybody.
  if (factors.some(({ larger }) => /^\p{N}/u.test(writer.unit(larger.unit, 1)))) return written;
  // What is multiplied by stands first.
  const ordered = [...factors].sort((a, b) => Number(b.multiplies) - Number(a.multiplies));
  const constants = ordered.map(({ larger, smaller }, i): [string, WrittenTerm] => {
    const constant = writer.fill(writer.messages.text.unitsInOne, {
      amount: writer.long(smaller),
      unit: writer.unit(larger.unit, 1),
    });
    return [CONSTANTS[i] as string, { name: constant, value: constant }];
  });
  const formula = ordered.reduce(
    (so, { multiplies }, i) => `${so} ${multiplies ? "*" : "/"} ${CONSTANTS[i]}`,
    "value",
  );
  const terms: Record<string, WrittenTerm> = { value, ...Object.fromEntries(constants) };
  const node = parseFormula(formula);
  const text = (part: keyof WrittenTerm): string =>
    formulaText(node, (leaf) => terms[leaf]?.[part] ?? leaf, writer.messages.functions);
  return { ...written, formula, terms, words: text("name"), numbers: text("value") };
}

function writtenLine(line: WorkingLine, writer: Writer): WrittenLine {
  const { messages, long } = writer;
  const formula = parseFormula(line.formula);
  const numbers = numbersOf(formula).map((digits): [string, WrittenTerm] => {
    const written = long(Number(digits));
    return [digits, { name: written, value: written }];
  });
  const symbols = Object.entries(line.terms).map(([symbol, term]): [string, WrittenTerm] => [
    symbol,
    { name: termName(line.id, symbol, line, writer), value: long(isPercentOf(line) ? numberOf(term) : term) },
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

/** Whether a line makes a plain number of a percentage: "0.5% ÷ 100 = 0.005" would be false, as the sign is the division. */
function isPercentOf({ id, result }: WorkingLine): boolean {
  return id === "units.convert" && typeof result === "object" && result.unit === "1";
}

function numberOf(term: Quantity | number): number {
  return typeof term === "object" ? term.value : term;
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
export function foundName(line: WorkingLine, writer: Writer): string {
  const { lines } = writer.messages;
  if (line.about === undefined) return lines[line.id]?.found ?? line.id;
  const whole = lines[line.about]?.found;
  if (whole !== undefined) return whole;
  const dot = line.about.lastIndexOf(".");
  return termName(line.about.slice(0, dot), line.about.slice(dot + 1), line, writer);
}
