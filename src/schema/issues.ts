import type * as z from "zod/mini";
import { type ErrorCode, type Issue, joinPath, SprayMathError, shown } from "../errors.js";

type RawIssue = z.core.$ZodRawIssue;
type FinalIssue = z.core.$ZodIssue;

const WANTED: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "text",
  boolean: "true or false",
  array: "a list",
  tuple: "a list",
  object: "an object with its fields",
};

/** What is wrong with a plain field, in the words of the library's guards: given, wanted. */
export function told(issue: RawIssue): string {
  const { input } = issue;
  const nothing = input === undefined || input === null;
  switch (issue.code) {
    case "invalid_type": {
      if (typeof input === "number" && issue.expected === "number")
        return `Given ${input}; wanted a finite number.`;
      const wanted = WANTED[issue.expected] ?? issue.expected;
      return nothing ? `Nothing given; wanted ${wanted}.` : `Given ${shown(input)}; wanted ${wanted}.`;
    }
    case "invalid_value": {
      const choices = `wanted one of: ${issue.values.map(String).join(", ")}.`;
      return nothing ? `Nothing given; ${choices}` : `Given ${shown(input)}; ${choices}`;
    }
    case "too_small":
      return `Given ${size(input)}; wanted ${issue.inclusive ? `${issue.minimum} or more` : `more than ${issue.minimum}`}.`;
    case "too_big":
      return `Given ${size(input)}; wanted ${issue.inclusive ? `${issue.maximum} or fewer` : `less than ${issue.maximum}`}.`;
    case "invalid_format":
      return `Given ${shown(input)}; wanted some words.`;
    default:
      return `Given ${shown(input)}, which is not right here.`;
  }
}

function size(input: unknown): string {
  return Array.isArray(input) ? `${input.length} of them` : shown(input);
}

/** The library's code for what zod found; the schemas' own findings bring theirs along. */
function codeOf(issue: FinalIssue): ErrorCode {
  const { input } = issue;
  const nothing = input === undefined || input === null;
  switch (issue.code) {
    case "custom":
      return (issue.params as { code: ErrorCode }).code;
    case "invalid_type":
      if (nothing) return "missing";
      return typeof input === "number" && issue.expected === "number" ? "not-finite" : "not-a-quantity";
    case "invalid_value":
      return nothing ? "missing" : "unknown-choice";
    case "too_small":
      return issue.origin === "array" ? "too-few" : "out-of-range";
    case "invalid_format":
      return "unreadable";
    default:
      return "out-of-range";
  }
}

/** A fault that a guard of the library found, as zod keeps it. */
export function asRawIssue(error: SprayMathError, input: unknown): RawIssue {
  const path = (error.path.match(/[^.[\]]+/g) ?? []).map((part) =>
    /^\d+$/.test(part) ? Number(part) : part,
  );
  return { code: "custom", message: error.message, params: { code: error.code }, input, path };
}

/** All faults that zod found, as the library's one error; its path is the first one's. */
export function asSprayMathError(found: readonly FinalIssue[]): SprayMathError {
  const issues = found.map(
    (issue): Issue => ({
      code: codeOf(issue),
      key: codeOf(issue),
      path: pathOf(issue.path),
      figures: {},
      message: issue.message,
    }),
  );
  const { code, path, message } = issues[0] as Issue;
  return new SprayMathError(
    code,
    path,
    issues.length === 1 ? message : `${message} (The first of ${issues.length} faults.)`,
    { issues },
  );
}

// A field's name comes from the input: a very long one is cut.
const MOST_LETTERS = 40;

function pathOf(path: readonly PropertyKey[]): string {
  return path.reduce<string>((before, part) => {
    const name = String(part);
    return joinPath(
      before,
      typeof part === "number"
        ? `[${name}]`
        : name.length > MOST_LETTERS
          ? `${name.slice(0, MOST_LETTERS)}…`
          : name,
    );
  }, "");
}
