/**
 * What kind of fault a {@link SprayMathError} reports.
 *
 * - `missing`: a value that is needed was not given
 * - `not-a-quantity`: something that is not `{ value, unit }`, such as a bare number or a numeric string
 * - `not-finite`: `NaN` or an infinity, given or reached
 * - `unknown-unit`: a unit that the library does not know
 * - `ambiguous-unit`: a unit that means two things, such as a bare `oz`
 * - `wrong-dimension`: a weight where a volume is wanted, and the like
 * - `wrong-area`: ground area where treated area is wanted, or the reverse
 * - `out-of-range`: zero, negative, too large, or not a whole number where it cannot be
 * - `too-few`: a list shorter than the formula needs
 * - `conflict`: values that cannot all be true, or one too many to solve for
 * - `unknown-choice`: a name that is not among the ones offered
 * - `unreadable`: text that could not be read as a quantity
 * - `not-measurable`: an amount that cannot be measured with the tools within the limit
 */
export type ErrorCode =
  | "missing"
  | "not-a-quantity"
  | "not-finite"
  | "unknown-unit"
  | "ambiguous-unit"
  | "wrong-dimension"
  | "wrong-area"
  | "out-of-range"
  | "too-few"
  | "conflict"
  | "unknown-choice"
  | "unreadable"
  | "not-measurable";

/** One fault of several found at once. */
export interface Issue {
  /** The kind of fault. */
  readonly code: ErrorCode;
  /** The argument's place, such as `products[1].rate`; empty for the whole input. */
  readonly path: string;
  /** What was given, what is wanted, how to mend it. */
  readonly message: string;
}

/**
 * The one error this library throws.
 *
 * @example
 * ```ts
 * import { qty, SprayMathError } from "swath-to-spoon";
 *
 * try {
 *   qty(Number.NaN, "ft");
 * } catch (error) {
 *   if (error instanceof SprayMathError) console.log(error.code, error.path); // not-finite value
 * }
 * ```
 */
export class SprayMathError extends Error implements Issue {
  /** The kind of fault. */
  readonly code: ErrorCode;
  /** The argument's place, such as `products[1].rate`; empty for the whole input. */
  readonly path: string;
  /** Every fault found, where more than one was looked for; otherwise this one alone. */
  readonly issues: readonly Issue[];

  /**
   * @param code - the kind of fault
   * @param path - the argument's place
   * @param message - what was given, what is wanted, how to mend it
   * @param issues - every fault found, where several were looked for
   */
  constructor(code: ErrorCode, path: string, message: string, issues?: readonly Issue[]) {
    super(message);
    this.name = "SprayMathError";
    this.code = code;
    this.path = path;
    this.issues = issues ?? [{ code, path, message }];
  }
}

/** Puts two parts of a path together: `products[1]` and `rate` give `products[1].rate`. */
export function joinPath(prefix: string, path: string): string {
  if (prefix === "" || path === "") return prefix + path;
  return path.startsWith("[") ? prefix + path : `${prefix}.${path}`;
}

/** Runs `work`, and puts `prefix` before the path of any {@link SprayMathError} it throws. */
export function within<T>(prefix: string, work: () => T): T {
  return moved((path) => joinPath(prefix, path), work);
}

/** Runs `work`, and moves an error's path to where the caller has the argument: `tank` to `sprayer.tank`. */
export function relocated<T>(places: Readonly<Record<string, string>>, work: () => T): T {
  return moved((path) => {
    const [head = ""] = path.split(/[.[]/, 1);
    const place = Object.hasOwn(places, head) ? places[head] : undefined;
    return place === undefined ? path : place + path.slice(head.length);
  }, work);
}

/** Runs `work`, and has the path of any {@link SprayMathError} it throws changed by `move`. */
export function moved<T>(move: (path: string) => string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    const issues = error.issues.map((issue) => ({ ...issue, path: move(issue.path) }));
    throw new SprayMathError(error.code, move(error.path), error.message, issues);
  }
}

/** A value as an error message shows it: short, and telling a string from a number. */
export function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value);
  if (Array.isArray(value)) return "a list";
  if (value !== null && typeof value === "object") return "an object";
  if (typeof value === "function") return "a function";
  return String(value);
}
