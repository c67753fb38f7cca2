import { mkdirSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { afterAll, expect } from "vitest";
import { Rational, ulpError } from "./rational.ts";

const worst = new Map<string, { ulp: number; promised: number; inputs: number }>();

/**
 * The float must be within so many ulp of the exact value. The worst error seen is kept under the function's name for
 * the table of docs/accuracy.md.
 */
export function expectExact(name: string, ours: number, exact: Rational, promised = 8): void {
  expectWithin(name, ulpError(ours, exact), promised);
}

/** The same for a difference: its error is counted in ulp of the amount that something was taken from. */
export function expectExactBeside(name: string, ours: number, exact: Rational, amount: Rational): void {
  const float = amount.toNumber();
  const error = Rational.fromNumber(ours).minus(exact).abs();
  expectWithin(name, ulpError(float, Rational.fromNumber(float).plus(error)), 8);
}

function expectWithin(name: string, ulp: number, promised: number): void {
  const seen = worst.get(name);
  worst.set(name, {
    ulp: Math.max(ulp, seen?.ulp ?? 0),
    promised: Math.max(promised, seen?.promised ?? 0),
    inputs: (seen?.inputs ?? 0) + 1,
  });
  expect(ulp, name).toBeLessThanOrEqual(promised);
}

/** Writes down what `expectExact` has seen, for the generated page. Called once in each file of properties. */
export function keepWorstErrors(folder: string): void {
  // Files share this module.
  worst.clear();
  afterAll(() => {
    const out = process.env.CONFORMANCE_OUT;
    if (out === undefined) return;
    mkdirSync(`${out}/ulp`, { recursive: true });
    writeFileSync(
      `${out}/ulp/${basename(folder)}.json`,
      JSON.stringify({ folder, worst: Object.fromEntries(worst) }),
    );
  });
}
