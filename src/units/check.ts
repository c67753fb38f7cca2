import { type ErrorCode, errorOf, type Figures, type Issue, isSprayMathError, joinPath } from "../errors.js";
import { messageOf, refusal } from "./message.js";
import type { Dimension, Quantity, UnitSystem } from "./types.js";

/** Reads what a person typed, where an input may be text. */
export interface TextReader {
  /** The quantity in a text; throws where there is none. */
  readonly quantity: (text: string, dimensions: readonly Dimension[]) => Quantity;
  /** The number in a text; throws where there is none. */
  readonly number: (text: string) => number;
}

// Nobody mends more at a time, and an input with a fault in every field is read to its end in no time.
const MOST_ISSUES = 1000;

/** One reading of an input from the outside in: where it is, and every fault met so far. */
export class Check {
  readonly issues: Issue[] = [];
  /** The fields and list places on the way to what is being read. */
  readonly path: (string | number)[] = [];
  /** The system of the first unit met: examples in messages follow it. */
  system: UnitSystem | undefined;

  /** Where an input may be text: how it is read. */
  readonly texts: TextReader | undefined;

  constructor(texts?: TextReader, system?: UnitSystem) {
    this.texts = texts;
    this.system = system;
  }

  /** Notes a fault at a place below the one being read; gives back nothing, as a reader does where it finds a fault. */
  fault(code: ErrorCode, key: string, at: string, template: string, figures: Figures = {}): undefined {
    if (this.issues.length >= MOST_ISSUES) return undefined;
    const path = joinPath(this.path.reduce<string>(withStep, ""), at);
    this.issues.push({ code, key, path, figures, message: messageOf(template, figures) });
    return undefined;
  }

  /** Notes what was thrown by a reader of text. */
  caught(error: unknown): undefined {
    if (!isSprayMathError(error)) throw error;
    const { code, key, figures, message } = error;
    if (this.issues.length < MOST_ISSUES)
      this.issues.push({ code, key, figures, message, path: this.path.reduce<string>(withStep, "") });
    return undefined;
  }
}

function withStep(path: string, step: string | number): string {
  return joinPath(path, typeof step === "number" ? `[${step}]` : step);
}

/**
 * What an input must be: the one place that says what a field means, what it may hold, and how it is read. A function checks
 * its input by it, the schemas and forms are made from it, and a test holds the docstrings to its sentences.
 */
export abstract class Field<T> {
  /** May be left out: `undefined` and `null` mean "not given". */
  readonly optional: boolean = false;
  /** For a part that is used in several places: its name, and what it means by itself. */
  readonly part?: { readonly name: string; readonly about: string };

  /** @param about - what it means, in a sentence or two: docstring, schema and form say the same */
  constructor(readonly about: string) {}

  /** Reads a value that is there: a copy of it, or nothing where a fault was noted. */
  abstract read(input: unknown, check: Check): T | undefined;

  /** Notes that a value that is needed is not there. */
  abstract missing(check: Check): undefined;

  /** Reads a value that may not be there. */
  readOrMissing(input: unknown, check: Check): T | undefined {
    if (input !== undefined && input !== null) return this.read(input, check);
    return this.optional ? undefined : this.missing(check);
  }
}

/**
 * Checks an input against the list of its fields, once and as a whole, and gives back a copy that holds these fields only.
 * Whatever is computed from the copy need not look at it again.
 */
export function checked<T>(input: unknown, field: Field<T>, path = "", check: Check = new Check()): T {
  if (path !== "") check.path.push(path);
  let value: T | undefined;
  try {
    value = field.readOrMissing(input, check);
  } catch (error) {
    if (isSprayMathError(error)) throw error;
    // A getter that throws, a proxy that was revoked.
    throw refusal(
      "unreadable",
      "input-unreadable",
      path,
      "This input can't be read: reading one of its fields failed.",
    );
  }
  if (check.issues.length > 0) throw errorOf(check.issues);
  return value as T;
}
