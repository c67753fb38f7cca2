import { expect } from "vitest";
import { type ErrorCode, type Issue, SprayMathError } from "../../src/errors.ts";
import { SPANISH_WORDS } from "../../src/words/es.ts";
import { faultsOfIssue } from "./plain-words.ts";

/**
 * What is said must have a sentence in another language too, under its key, and a figure for every place of both sentences. One
 * that a test made up, whose key says it, has none.
 */
export function expectSayable({ key, figures, message }: Pick<Issue, "key" | "figures" | "message">): void {
  if (key.startsWith("made-up")) return;
  expect(message).not.toMatch(/\{\w+[}.:]/);
  const other = SPANISH_WORDS.issues?.[key];
  expect(other, `key "${key}" of: ${message}`).toBeDefined();
  for (const [, place] of (other as string).matchAll(/\{(\w+)/g))
    expect(figures, `figures of: ${message}`).toHaveProperty(place as string);
}

/** What `work` throws, which must be the library's own error, with sentences that an app could show. */
export function refusal(work: () => unknown): SprayMathError {
  try {
    work();
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    expect(error.message).toMatch(/^["A-Z0-9].{8,}[.?)]$/s);
    error.issues.forEach(expectSayable);
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
