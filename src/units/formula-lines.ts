import { inUnit } from "./convert.js";
import type { Quantity, Unit } from "./types.js";
import { conversionLines, type WorkingLine } from "./working-line.js";

/** A symbol's value: a bare number, or a quantity with the unit that makes the formula true as plain numbers. */
export type GivenTerm = number | readonly [given: Quantity, unit: Unit];

/** One formula, as {@link formulaLines} writes it out. */
export interface FormulaLine extends Omit<WorkingLine, "terms" | "about"> {
  /** The value of each symbol. */
  readonly terms: Readonly<Record<string, GivenTerm>>;
}

/**
 * The working of one formula: the changes of unit that it needs, the formula itself, and the change of its result to
 * `unit`, if that is another. A term is shown as its number and unit alone, whatever else a reading or an area says.
 */
export function formulaLines({ terms, ...line }: FormulaLine, unit?: Unit): WorkingLine[] {
  const { id, result } = line;
  const lines: WorkingLine[] = [];
  const shown: Record<string, Quantity | number> = {};
  for (const [symbol, term] of Object.entries(terms)) {
    if (typeof term === "number") {
      shown[symbol] = term;
      continue;
    }
    const [{ value, unit: from }, to] = term;
    lines.push(...conversionLines(`${id}.${symbol}`, { value, unit: from }, to));
    shown[symbol] = { value: inUnit({ value, unit: from }, to), unit: to };
  }
  lines.push({ ...line, terms: shown });
  return unit === undefined || typeof result === "number"
    ? lines
    : [...lines, ...conversionLines(id, result, unit)];
}
