import { evaluate } from "mathjs";
import { expect } from "vitest";
import type { WorkingLine } from "../../src/units/working.ts";

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
    const found: number = evaluate(line.formula, scope);
    expect(Math.abs(found - result), `${line.id}: ${line.formula}`).toBeLessThanOrEqual(
      1e-12 * Math.abs(result),
    );
  }
}
