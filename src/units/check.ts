import {
  type ErrorCode,
  errorOf,
  type Figures,
  type Issue,
  joinPath,
  SprayMathError,
  shortened,
  shown,
} from "../errors.js";
import { checkEngine, EngineError } from "./engine.js";
import { messageOf } from "./message.js";
import type { ExpectedName } from "./names.js";
import { nearest } from "./nearest.js";
import { firstSystem } from "./systems.js";
import type { Dimension, NumberUnit, Quantity, Unit, UnitSystem } from "./types.js";

/** Reads what a person typed, where an input may be text. */
export interface TextReader {
  /**
   * The quantity in a text; throws where there is none. `asked`: finds the unit of an example; `small` for a volume in fluid ounces
   * or milliliters. `called`: what messages call the place.
   */
  readonly quantity: (
    text: string,
    dimensions: readonly Dimension[],
    asked?: () => Unit | "small" | undefined,
    called?: ExpectedName,
  ) => Quantity;
  /** The number in a text, which may end in its own unit; throws where there is none. */
  readonly number: (text: string, unit?: NumberUnit) => number;
}

// Nobody mends more at a time. Reading ends there, so an input with a million faults takes no longer.
const MOST_ISSUES = 1000;

const LONGEST_PATH = 300;

/** One reading of an input from the outside in: where it is, and every fault met so far. */
export class Check {
  readonly issues: Issue[] = [];
  /** The fields and list places on the way to what is being read. */
  readonly path: (string | number)[] = [];

  private followed: UnitSystem | undefined;

  /**
   * @param input - the whole input
   * @param texts - where an input may be text: how it is read
   * @param system - the system that examples in messages follow; that of the first unit in the input unless given
   */
  constructor(
    readonly input?: unknown,
    readonly texts: TextReader | undefined = undefined,
    system?: UnitSystem,
  ) {
    this.followed = system;
  }

  /** The system that examples in messages follow; looked for only where there is a fault. */
  get system(): UnitSystem {
    this.followed ??= firstSystem(this.input);
    return this.followed;
  }

  /** The name of what is being read; of a place in a list, the list's. What is read by itself has none, and only lists are asked. */
  get name(): string {
    return this.path.filter((step) => typeof step === "string").at(-1) ?? "list";
  }

  /** Reads a field of what is being read, or a place in a list. */
  readAt<T>(step: string | number, field: Field<T>, holder: object): T | undefined {
    this.path.push(step);
    const value = field.readOrMissing((holder as Record<string | number, unknown>)[step], this);
    this.path.pop();
    return value;
  }

  /** Notes a fault at a place below the one being read; gives back nothing, as a reader does where it finds a fault. */
  fault(code: ErrorCode, key: string, at: string, template: string, figures: Figures = {}): undefined {
    return this.note({ code, key, figures, message: messageOf(template, figures) }, at);
  }

  /** Whether a fault was noted at a field of what is being read, or below it. */
  hasFault(field: string): boolean {
    const place = joinPath(this.path.reduce<string>(withStep, ""), field);
    return this.issues.some(({ path }) => path === place || path.startsWith(`${place}.`));
  }

  /** What a text is read as, where an input may be text; notes a fault of it. */
  fromText<T>(read: (texts: TextReader) => T): T | undefined {
    try {
      return this.texts && read(this.texts);
    } catch (error) {
      return this.caught(error);
    }
  }

  /** Notes what was thrown by a reader of text. */
  caught(error: unknown): undefined {
    if (!(error instanceof SprayMathError)) throw error;
    return this.note(error, "");
  }

  /** Notes a value that is no number. */
  noNumber(value: unknown, at = ""): undefined {
    const isText = typeof value === "string";
    return this.fault(
      "not-a-quantity",
      isText ? "number-not-text" : "enter-number",
      at,
      isText ? "Enter a number, not text." : "Enter a number here.",
      { given: shown(value) },
    );
  }

  /** Notes a field that is not known, with the one it was probably meant to be: one that isn't there yet. */
  unknownField(name: string, known: readonly string[], holder: object): undefined {
    const at = shortened(name);
    const left = known.filter((other) => !isGiven(other, holder));
    const meant = nearest(at, left);
    const figures = { given: shown(name), choices: known };
    return meant === undefined
      ? this.fault(
          "unknown-field",
          "field-unknown",
          at,
          "There is no field {given} here. The fields are: {choices}.",
          figures,
        )
      : this.fault(
          "unknown-field",
          "field-misspelled",
          at,
          "There is no field {given} here. Did you mean {meant}?",
          { ...figures, meant },
        );
  }

  /** Notes a fault that has its words already. */
  note({ code, key, figures, message }: Omit<Issue, "path">, at: string): undefined {
    const whole = joinPath(this.path.reduce<string>(withStep, ""), at);
    // A name in it may come from outside.
    const path = whole.length > LONGEST_PATH ? `${whole.slice(0, LONGEST_PATH)}…` : whole;
    this.issues.push({ code, key, path, figures, message });
    if (this.issues.length === MOST_ISSUES) throw errorOf(this.issues);
  }
}

/** Whether an object has something of its own under this name. */
export function isGiven(name: string, input: object): boolean {
  if (!Object.hasOwn(input, name)) return false;
  const value = (input as Record<string, unknown>)[name];
  return value !== undefined && value !== null;
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
  readonly optional: boolean;
  /** What holds where nothing is given, for a schema or a form to say; whoever computes from the input has it in. */
  readonly usual?: T;
  /** For a part that is used in several places: its name, and what it means by itself. */
  readonly part?: { readonly name: string; readonly about: string };

  /** @param about - what it means, in a sentence or two: docstring, schema and form say the same */
  constructor(readonly about: string) {
    // Not as a field with a value: the CommonJS build takes that for the export of the same name, and writes over it.
    this.optional = false;
  }

  /** Reads a value that is there: a copy of it, or nothing where a fault was noted. */
  abstract read(input: unknown, check: Check): T | undefined;

  /** Notes that a value that is needed is not there. */
  abstract missing(check: Check): undefined;

  /** Reads a value that may not be there, as in a form's field that is left blank. */
  readOrMissing(input: unknown, check: Check): T | undefined {
    if (!isLeftOut(input, check)) return this.read(input, check);
    return this.optional ? undefined : this.missing(check);
  }
}

/** Whether a value is not given, or as a form has a field that is left blank. */
export function isLeftOut(input: unknown, { texts }: Check): boolean {
  if (input === undefined || input === null) return true;
  return texts !== undefined && typeof input === "string" && input.trim() === "";
}

/**
 * Checks an input against the list of its fields, once and as a whole, and gives back a copy that holds these fields only.
 * Whatever is computed from the copy need not look at it again.
 */
export function checked<T>(input: unknown, field: Field<T>, path = "", check: Check = new Check(input)): T {
  checkEngine();
  if (path !== "") check.path.push(path);
  let value: T | undefined;
  try {
    value = field.readOrMissing(input, check);
  } catch (error) {
    if (error instanceof SprayMathError || error instanceof EngineError) throw error;
    // A getter that throws, a proxy that was revoked.
    check.fault("unreadable", "input-unreadable", "", "This can't be read: it fails when it is looked at.");
  }
  if (check.issues.length > 0) throw errorOf(check.issues);
  return value as T;
}

/** Holds an input against what was computed from it, and throws every fault that is noted. */
export function agreed(input: unknown, look: (check: Check) => void): void {
  const check = new Check(input);
  look(check);
  if (check.issues.length > 0) throw errorOf(check.issues);
}
