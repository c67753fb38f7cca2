/**
 * What kind of fault a {@link SprayMathError} reports.
 *
 * - `missing`: a value that is needed was not given
 * - `not-a-quantity`: something that is not `{ value, unit }`, such as a bare number or a numeric string
 * - `not-finite`: `NaN` or an infinity, given or reached
 * - `unknown-unit`: a unit that the library does not know
 * - `ambiguous-unit`: a unit that means two things, such as a bare `oz`
 * - `wrong-dimension`: a weight where a volume is expected, and the like
 * - `wrong-area`: ground area where treated area is expected, or the reverse
 * - `out-of-range`: zero, negative, too large, or not a whole number where it cannot be
 * - `too-few`: a list shorter than the formula needs
 * - `conflict`: values that cannot all be true, or one too many to solve for
 * - `unknown-choice`: a name that is not among the ones offered
 * - `unknown-field`: a field that the function does not know, such as a misspelled one
 * - `incomplete`: text that is only begun, such as a number whose unit is not typed yet
 * - `ambiguous-number`: a number that means two things, such as `1.000`, `11/2` or `10 400`
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
  | "unknown-field"
  | "incomplete"
  | "ambiguous-number"
  | "unreadable"
  | "not-measurable";

/** A quantity in the figures of a message. */
export interface QuantityFigure {
  /** How many. */
  readonly value: number;
  /** Of what. */
  readonly unit: string;
}

/** What a message is about, as data: what was given, the limit, the choices, what was probably meant. */
export type Figures = Readonly<Record<string, QuantityFigure | number | string | readonly string[]>>;

/** A sentence of an error or a warning: its key, its English template, and the figures for that. */
export interface Sentence {
  readonly key: string;
  readonly template: string;
  readonly figures: Figures;
}

/** One fault, as data first and words second, so that an app can put it into its own words or language. */
export interface Issue {
  /** The kind of fault. */
  readonly code: ErrorCode;
  /** Which fault of its kind, such as `bands-overlap`: one key for each sentence. */
  readonly key: string;
  /** The argument's place, such as `products[1].rate`; empty for the whole input. */
  readonly path: string;
  /** The figures of the message. */
  readonly figures: Figures;
  /** What is wrong and what to do, in plain English. */
  readonly message: string;
}

/** An error as plain data. */
export interface PlainError extends Issue {
  /** Says what it is. */
  readonly name: "SprayMathError";
  /** Every fault found. */
  readonly issues: readonly Issue[];
}

const MARK: unique symbol = Symbol.for("swath-to-spoon.SprayMathError") as never;

/**
 * The one error that this library throws for an input.
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
  /** Which fault of its kind. */
  readonly key: string;
  /** The argument's place, such as `products[1].rate`; empty for the whole input. */
  readonly path: string;
  /** The figures of the message. */
  readonly figures: Figures;
  /** Every fault found, where more than one was looked for; otherwise this one alone. */
  readonly issues: readonly Issue[];

  /**
   * @param code - the kind of fault
   * @param path - the argument's place
   * @param message - what is wrong and what to do
   * @param more - the finer key, the figures of the message, and every fault where several were found
   */
  constructor(
    code: ErrorCode,
    path: string,
    message: string,
    more: {
      readonly key?: string | undefined;
      readonly figures?: Figures | undefined;
      readonly issues?: readonly Issue[] | undefined;
    } = {},
  ) {
    super(message);
    const { key = code, figures = {}, issues } = more;
    this.name = "SprayMathError";
    this.code = code;
    this.key = key;
    this.path = path;
    this.figures = figures;
    this.issues = issues ?? [{ code, key, path, figures, message }];
    Object.defineProperty(this, MARK, { value: true });
  }

  /** The error as plain data, for a message to another thread or a server's answer. */
  toJSON(): PlainError {
    const { code, key, path, figures, message, issues } = this;
    return { name: "SprayMathError", code, key, path, figures, message, issues };
  }
}

/**
 * Returns whether a value is this library's error: one thrown by this copy of the library, by another copy in the same program (the
 * CommonJS one beside the ESM one, another realm), or what {@link SprayMathError.toJSON} made of one.
 *
 * @param value - anything, such as what was caught
 * @returns true for this library's errors
 *
 * @example
 * ```ts
 * import { isSprayMathError, qty } from "swath-to-spoon";
 *
 * try {
 *   qty(Number.NaN, "ft");
 * } catch (error) {
 *   console.log(isSprayMathError(error)); // true
 *   console.log(isSprayMathError(JSON.parse(JSON.stringify(error)))); // true
 * }
 * ```
 */
export function isSprayMathError(value: unknown): value is SprayMathError {
  if (typeof value !== "object" || value === null) return false;
  const error = value as {
    readonly name?: unknown | undefined;
    readonly issues?: unknown | undefined;
    readonly [MARK]?: unknown | undefined;
  };
  try {
    return error[MARK] === true || (error.name === "SprayMathError" && Array.isArray(error.issues));
  } catch {
    // Anything can be thrown, also what fails when it is looked at.
    return false;
  }
}

/** The error for several faults found at once: that of the first, with all of them in `issues`. */
export function errorOf(issues: readonly Issue[]): SprayMathError {
  const [first] = issues as readonly [Issue];
  const { code, key, path, figures, message } = first;
  const count = issues.length;
  return new SprayMathError(code, path, count === 1 ? message : `${message} (${count} errors.)`, {
    key,
    figures,
    issues,
  });
}

/** Puts two parts of a path together: `products[1]` and `rate` give `products[1].rate`. */
export function joinPath(prefix: string, path: string): string {
  if (prefix === "" || path === "") return prefix + path;
  return path.startsWith("[") ? prefix + path : `${prefix}.${path}`;
}

/** A value as an error message shows it: short, with strings in quotes. */
export function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(shortened(value));
  if (value !== null && typeof value === "object") return isList(value) ? "a list" : "an object";
  if (typeof value === "function") return "a function";
  return shortened(String(value));
}

function isList(value: object): boolean {
  try {
    return Array.isArray(value);
  } catch {
    // A proxy that was revoked can't be asked even that.
    return false;
  }
}

/** The first letters of a text, where it is longer than a message should be. */
export function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
