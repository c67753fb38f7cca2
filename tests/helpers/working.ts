import { expect } from "vitest";
import type { Quantity } from "../../src/units/types.ts";
import type { WorkingLine } from "../../src/units/working-line.ts";
import { evaluated } from "./printed-lines.ts";

// What tools measure is the amount itself where the two differ by less than one part in 10^8: of that, and of no other line.
const WITHIN: Readonly<Record<string, number>> = { "household.measured": 1e-8 };

/** Every line must be true when an evaluator that is not ours puts the numbers into the formula, and say where it is from. */
export function expectLinesTrue(lines: readonly WorkingLine[]): void {
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) {
    expect(line.id).toMatch(/^[a-z-]+\.[a-z]/i);
    expect(line.source, line.id).toMatch(/^\w.{4}/);
    const scope = Object.fromEntries(
      Object.entries(line.terms).map(([symbol, term]) => [
        symbol,
        typeof term === "number" ? term : term.value,
      ]),
    );
    const result = typeof line.result === "number" ? line.result : line.result.value;
    const found = evaluated(line.formula, scope);
    expect(Math.abs(found - result), `${line.id}: ${line.formula}`).toBeLessThanOrEqual(
      (WITHIN[line.id] ?? 1e-12) * Math.abs(result),
    );
  }
}

/** Every quantity in a line must be one that was given, or what an earlier line found: no number comes from nowhere. */
export function expectLinesFrom(lines: readonly WorkingLine[], input: unknown): void {
  const known = quantitiesIn(input);
  for (const { id, terms, result } of lines) {
    for (const [symbol, term] of Object.entries(terms)) {
      if (typeof term === "number") continue;
      const from = known.some((one) => plain(one.unit) === plain(term.unit) && near(one.value, term.value));
      expect(from, `${id}: ${symbol} is ${term.value} ${term.unit}`).toBe(true);
    }
    if (typeof result !== "number") known.push(result);
  }
}

// A kilogram in a kilogram is a part of one.
function plain(unit: string): string {
  return unit === "kg/kg" ? "1" : unit;
}

function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-12 * Math.abs(other);
}

function quantitiesIn(node: unknown): Quantity[] {
  if (typeof node !== "object" || node === null) return [];
  const inner = Object.values(node).flatMap(quantitiesIn);
  return "unit" in node && "value" in node ? [node as Quantity, ...inner] : inner;
}
