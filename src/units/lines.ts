import { convert } from "./convert.js";
import type { Quantity, Unit } from "./types.js";
import { conversionLines, type WorkingLine } from "./working.js";

/** A symbol's value: a bare number, or a quantity with the unit that makes the formula true as plain numbers. */
export type GivenTerm = number | readonly [given: Quantity, unit: Unit];

/** One formula, as {@link formulaLines} writes it out. */
export interface FormulaLine extends Omit<WorkingLine, "terms" | "about"> {
  /** The value of each symbol. */
  readonly terms: Readonly<Record<string, GivenTerm>>;
}

/** The working of one formula: the changes of unit that it needs, then the formula itself. */
export function formulaLines({ id, formula, terms, result, source }: FormulaLine): WorkingLine[] {
  const lines: WorkingLine[] = [];
  const shown: Record<string, Quantity | number> = {};
  for (const [symbol, term] of Object.entries(terms)) {
    if (typeof term === "number") {
      shown[symbol] = term;
    } else {
      const [given, unit] = term;
      lines.push(...conversionLines(`${id}.${symbol}`, given, unit));
      shown[symbol] = convert(given, unit as never);
    }
  }
  return [...lines, { id, formula, terms: shown, result, source }];
}
