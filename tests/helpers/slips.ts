import { expect } from "vitest";
import type { ErrorCode } from "../../src/errors.ts";
import { isSprayMathError } from "../../src/index.ts";
import type { Severity, Warning, WarningCode } from "../../src/plan/index.ts";
import { faultsOfIssue } from "./plain-words.ts";

/** What a slip must lead to: a warning, or a refusal by an error. */
export type Expected =
  | { readonly warning: WarningCode; readonly severity: Severity; readonly words?: string }
  | { readonly error: ErrorCode; readonly path: string };

/** What a job leads to: the fault, or its warnings. */
function outcome(plan: () => { readonly warnings: readonly Warning[] }) {
  try {
    return { warnings: plan().warnings, error: undefined, issues: [] };
  } catch (error) {
    if (!isSprayMathError(error)) throw error;
    return { warnings: [], error: { error: error.code, path: error.path }, issues: error.issues };
  }
}

/** The right job is planned and not questioned for the slip; the slip leads to what is expected, in plain words. */
export function expectSlip(
  right: () => { readonly warnings: readonly Warning[] },
  wrong: () => { readonly warnings: readonly Warning[] },
  expected: Expected,
): void {
  const [good, bad] = [outcome(right), outcome(wrong)];
  expect(good.error).toBeUndefined();
  if ("error" in expected) {
    expect(bad.error).toEqual(expected);
    expect(bad.issues.flatMap((issue) => faultsOfIssue(issue))).toEqual([]);
    return;
  }
  const { warning, severity, words = "" } = expected;
  expect(good.warnings.filter(({ code }) => code === warning)).toEqual([]);
  const found = bad.warnings.find(({ code }) => code === warning);
  expect(found).toMatchObject({ code: warning, severity });
  expect(found?.message).toContain(words);
  expect(bad.warnings.flatMap((one) => faultsOfIssue(one))).toEqual([]);
}
