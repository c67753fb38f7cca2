import { convertValue } from "../../units/convert.js";
import { resolveUnit } from "../../units/resolve.js";
import type { Quantity, Unit } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";

/** Where a factor between two units comes from: so many of the one are one of the other. */
export interface Factor {
  readonly larger: Quantity;
  readonly smaller: Quantity;
  /** Whether the change multiplies by it, and does not divide. */
  readonly multiplies: boolean;
}

/** What a change of unit rests on: a factor for the unit over the stroke, one for that under it. */
export function factorsOf(line: WorkingLine): Factor[] {
  const { value } = line.terms;
  if (line.id !== "units.convert" || typeof value !== "object" || typeof line.result === "number") return [];
  const [from, to] = [resolveUnit(value.unit, "unit"), resolveUnit(line.result.unit, "unit")];
  const pairs = [
    [from.over, to.over],
    [to.per, from.per],
  ] as readonly (readonly [Unit | undefined, Unit | undefined])[];
  return pairs.flatMap(([a, b]) =>
    a === undefined || b === undefined || a === b ? [] : [factorBetween(a, b)],
  );
}

function factorBetween(from: Unit, to: Unit): Factor {
  const times = convertValue(1, from, to);
  return times >= 1
    ? { larger: { value: 1, unit: from }, smaller: { value: times, unit: to }, multiplies: true }
    : {
        larger: { value: 1, unit: to },
        smaller: { value: convertValue(1, to, from), unit: from },
        multiplies: false,
      };
}
