import { type FormulaLine, formulaLines } from "../units/lines.js";
import type { Unit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";

/**
 * The working of one formula, and the change of its result to the unit that it is told in, if that is another. Readings
 * come in with their resolution and uncertainty; the lines show the reading alone.
 */
export function toldLines(line: FormulaLine, unit?: Unit): WorkingLine[] {
  const terms = Object.fromEntries(
    Object.entries(line.terms).map(([symbol, term]) => {
      if (typeof term === "number") return [symbol, term];
      const [{ value, unit: given }, wanted] = term;
      return [symbol, [{ value, unit: given }, wanted] as const];
    }),
  );
  const lines = formulaLines({ ...line, terms });
  if (unit === undefined || typeof line.result === "number") return lines;
  return [...lines, ...conversionLines(line.id, line.result, unit)];
}
