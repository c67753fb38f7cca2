import { type FormulaLine, formulaLines } from "../units/lines.js";
import type { Quantity, Unit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";

/** The working of one formula, and the change of its result to the unit that it is told in. */
export function toldLines(line: FormulaLine & { readonly result: Quantity }, unit: Unit): WorkingLine[] {
  return [...formulaLines(line), ...conversionLines(line.id, line.result, unit)];
}
