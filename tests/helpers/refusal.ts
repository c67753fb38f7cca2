import { expect } from "vitest";
import { type ErrorCode, SprayMathError } from "../../src/errors.ts";
import { faultsOfIssue } from "./plain-words.ts";

/** What `work` throws, which must be the library's own error, with sentences that an app could show. */
export function refusal(work: () => unknown): SprayMathError {
  try {
    work();
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    expect(error.message).toMatch(/^["A-Z0-9].{8,}[.?)]$/s);
    expect([error, ...error.issues].flatMap((issue) => faultsOfIssue(issue))).toEqual([]);
    return error;
  }
  throw new Error("nothing was refused");
}

/** `work` must be refused with this code, at this place, with a message that has these words. */
export function expectRefused(work: () => unknown, code: ErrorCode, path: string, words = ""): void {
  const error = refusal(work);
  expect({ code: error.code, path: error.path }).toEqual({ code, path });
  expect(error.message).toContain(words);
}
