import { shortened, shown } from "../errors.js";
import { type Check, Field, isGiven } from "./check.js";
import type { ExpectedName } from "./names.js";
import { nearest } from "./nearest.js";
import type { NumberUnit, UnitSystem } from "./types.js";

/** A field that may be left out. */
export type Optional<T> = Field<T> & { readonly optional: true };

/** The fields of an object type; those that are never given (`?: never`) are left out. */
export type FieldsOf<T> = {
  readonly [K in keyof T as Exclude<T[K], undefined> extends never ? never : K]-?: undefined extends T[K]
    ? Optional<Exclude<T[K], undefined>>
    : Field<T[K]>;
};

/* @__NO_SIDE_EFFECTS__ */
function changed<F extends Field<unknown>>(field: F, change: Partial<Field<unknown>>): F {
  return Object.assign(Object.create(Object.getPrototypeOf(field)), field, change);
}

/** The same field, which may be left out; `usual` is what then holds. */
/* @__NO_SIDE_EFFECTS__ */
export function optional<T>(field: Field<T>, usual?: T): Optional<T> {
  return changed(field, { optional: true, ...(usual !== undefined && { usual }) }) as Optional<T>;
}

/**
 * The same field as a part with a name, for what is used in several places. A JSON Schema describes it once, under this name
 * and with this sentence, whatever the fields say that hold it.
 */
/* @__NO_SIDE_EFFECTS__ */
export function named<F extends Field<unknown>>(name: string, field: F): F {
  return changed(field, { part: { name, about: field.about } });
}

/** The same field with another sentence. */
/* @__NO_SIDE_EFFECTS__ */
export function about<F extends Field<unknown>>(text: string, field: F): F {
  return changed(field, { about: text });
}

/** The same field, where an agreement of what holds it says that it is missing. */
/* @__NO_SIDE_EFFECTS__ */
export function askedByAgreement<F extends Field<unknown>>(field: F): F {
  return changed(field, { missing: () => undefined });
}

/** What a number may be. */
export interface Limits {
  /** What it is a number of, where that is fixed: text may end in it. */
  readonly unit?: NumberUnit | undefined;
  /** More than this. */
  readonly above?: number | undefined;
  /** This or more. */
  readonly min?: number | undefined;
  /** This or less. */
  readonly max?: number | undefined;
  /** Whole numbers only. */
  readonly whole?: boolean | undefined;
}

/** A bare number: a count, a percentage, an angle. */
export class NumberField<T extends number = number> extends Field<T> {
  constructor(
    about: string,
    readonly limits: Limits,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): T | undefined {
    const value =
      typeof input === "string" && check.texts
        ? check.fromText((texts) => texts.number(input, this.limits.unit))
        : input;
    if (value === undefined) return undefined;
    if (typeof value !== "number") {
      return check.noNumber(value);
    }
    return inLimits(value, this.limits, check) ? ((value + 0) as T) : undefined;
  }

  missing(check: Check): undefined {
    return check.fault("missing", "enter-number", "", "Enter a number here.");
  }
}

function inLimits(value: number, { above, min, max, whole }: Limits, check: Check): boolean {
  const fault = (key: string, template: string, limit = 0): boolean => {
    check.fault("out-of-range", key, "", template, { given: value, limit });
    return false;
  };
  if (!Number.isFinite(value)) {
    check.fault("not-finite", "finite-number", "", "Enter a number here.", { given: String(value) });
    return false;
  }
  if (whole && (!Number.isSafeInteger(value) || value < (min ?? 0)))
    return fault("whole-number", "Enter a whole number, {limit} or more.", min);
  if (above !== undefined && value <= above) return fault("more-than", "Must be more than {limit}.", above);
  if (min !== undefined && value < min) return fault("at-least", "Must be {limit} or more.", min);
  if (max !== undefined && value > max) return fault("at-most", "Must be {limit} or less.", max);
  return true;
}

/** A bare number within limits. */
/* @__NO_SIDE_EFFECTS__ */
export function number(text: string, limits: Limits = {}): NumberField {
  return new NumberField(text, limits);
}

/** A whole number, 1 or more unless said otherwise. */
/* @__NO_SIDE_EFFECTS__ */
export function count(text: string, min = 1, max?: number): NumberField {
  return new NumberField(text, { whole: true, min, ...(max !== undefined && { max }) });
}

/** Whether an input is another object of the library, which it notes as a fault. */
export type OtherObject = (input: object, check: Check) => boolean;

const CHOOSE = "Choose one of: {choices}.";

/** One of a few names (or small numbers). */
export class ChoiceField<T extends string | number> extends Field<T> {
  constructor(
    about: string,
    readonly choices: readonly T[],
    /** What a form offers first, by the system of units. */
    readonly first?: Readonly<Record<UnitSystem, T>> | undefined,
  ) {
    super(about);
  }

  /** The choice that is given. A form has a number that was chosen as text. */
  protected chosen(input: unknown, { texts }: Check): T | undefined {
    return this.choices.find((name) => name === input || (texts !== undefined && String(name) === input));
  }

  read(input: unknown, check: Check): T | undefined {
    const found = this.chosen(input, check);
    if (found !== undefined) return found;
    const choices = this.choices.map(String);
    // An object or a list has no spelling that a name could be near to.
    if (typeof input === "object") return check.fault("unknown-choice", "choose", "", CHOOSE, { choices });
    const meant = typeof input === "string" ? nearest(shortened(input), choices) : undefined;
    return check.fault(
      "unknown-choice",
      meant === undefined ? "choice-unknown" : "choice-misspelled",
      "",
      meant === undefined
        ? "There is no choice {given}. Choose one of: {choices}."
        : "There is no choice {given}. Did you mean {meant}? Choose one of: {choices}.",
      { given: shown(input), choices, ...(meant !== undefined && { meant }) },
    );
  }

  missing(check: Check): undefined {
    return check.fault("missing", "choose", "", CHOOSE, { choices: this.choices.map(String) });
  }
}

/** One of a few names. */
/* @__NO_SIDE_EFFECTS__ */
export function choice<const T extends string | number>(
  text: string,
  choices: readonly T[],
  first?: Readonly<Record<UnitSystem, T>>,
): ChoiceField<T> {
  return new ChoiceField(text, choices, first);
}

/** Text: a name, a date. */
export class TextField extends Field<string> {
  /** @param format - what the text must be, beside not blank: an example, and what notes a fault where it is not */
  constructor(
    about: string,
    readonly format?: {
      readonly name: "date" | "local-time" | "locale" | "time-zone";
      readonly example: string;
      readonly check: (text: string, check: Check) => boolean;
    },
  ) {
    super(about);
  }

  read(input: unknown, check: Check): string | undefined {
    const { format } = this;
    if (typeof input !== "string") {
      const given = shown(input);
      return format === undefined
        ? check.fault("not-a-quantity", "text-expected", "", "Enter some text, not {given}.", { given })
        : check.fault("not-a-quantity", "text-such-as", "", "Enter text such as {example}, not {given}.", {
            example: format.example,
            given,
          });
    }
    if (input.trim() === "") return this.missing(check);
    return format === undefined || format.check(input, check) ? input : undefined;
  }

  missing(check: Check): undefined {
    const { format } = this;
    return format === undefined
      ? check.fault("missing", "enter-text", "", "Enter some text here.")
      : check.fault("missing", "enter-text-such-as", "", "Enter text such as {example}.", {
          example: format.example,
        });
  }
}

/** Text that is not blank. */
/* @__NO_SIDE_EFFECTS__ */
export function text(sentence: string): TextField {
  return new TextField(sentence);
}

/** Yes or no. */
export class FlagField extends Field<boolean> {
  read(input: unknown, check: Check): boolean | undefined {
    if (typeof input === "boolean") return input;
    return check.fault("not-a-quantity", "yes-or-no-expected", "", "Enter true or false, not {given}.", {
      given: shown(input),
    });
  }

  missing(check: Check): undefined {
    return check.fault("missing", "yes-or-no", "", "Enter true or false.");
  }
}

/** Yes or no. */
/* @__NO_SIDE_EFFECTS__ */
export function flag(sentence: string): FlagField {
  return new FlagField(sentence);
}

/** An object of which every field is given. */
export type Complete<T> = { readonly [K in keyof T]-?: Exclude<T[K], undefined> };

/** What of an object could be read. */
export type Partly<T> = { readonly [K in keyof T]?: T[K] | undefined };

/** What the fields of an object have to do with one another; notes a fault where they don't go together. */
export type Agreement<T> = (given: Partly<T>, check: Check) => void;

/** An object with named fields. One that it does not know is a fault: a limit that is misspelled must not disappear. */
export class ObjectField<T extends object> extends Field<T> {
  readonly names: readonly string[];
  private readonly all: readonly Field<unknown>[];
  private readonly needsNothing: boolean;
  /** The fields that a person is to be shown first: those that must be there, or else all. */
  private readonly toName: readonly string[];

  constructor(
    readonly fields: FieldsOf<T>,
    readonly agree: readonly Agreement<T>[],
    about: string,
    /** What is no such object, though it is one: notes that as a fault, and none of its fields is read. */
    private readonly isOther?: OtherObject | undefined,
  ) {
    super(about);
    this.names = Object.keys(fields);
    this.all = Object.values(fields);
    const needed = this.names.filter((_, i) => !this.all[i]?.optional);
    this.needsNothing = needed.length === 0;
    this.toName = this.needsNothing ? this.names : needed;
  }

  read(input: unknown, check: Check): T | undefined {
    if (!isObject(input, check, this.toName) || this.isOther?.(input, check)) return undefined;
    const { names, all, fields } = this;
    const before = check.issues.length;
    const output: Record<string, unknown> = {};
    for (let i = 0; i < names.length; i++) {
      const name = names[i] as string;
      const value = check.readAt(name, all[i] as Field<unknown>, input);
      if (value !== undefined) output[name] = value;
    }
    for (const name in input)
      if (!Object.hasOwn(fields, name) && isGiven(name, input)) check.unknownField(name, names, input);
    for (const agrees of this.agree) agrees(output as Partly<T>, check);
    // With nothing that it needs, an object is right by what could be read of it: others may be held against that.
    return check.issues.length === before || this.needsNothing ? (output as T) : undefined;
  }

  missing(check: Check): undefined {
    return check.fault("missing", "object-missing", "", "This part is missing. Enter: {fields}.", {
      fields: this.toName,
    });
  }
}

/** Whether an input is an object, and no list; notes a fault where it isn't, with its fields where they are known. */
export function isObject(input: unknown, check: Check, fields: readonly string[] = []): input is object {
  if (typeof input === "object" && input !== null && !Array.isArray(input)) return true;
  if (typeof input === "string" && /^\s*\{/.test(input)) {
    check.fault("not-a-quantity", "json-text", "", "This is text. Read it with JSON.parse first.");
    return false;
  }
  const isKnown = fields.length > 0;
  check.fault(
    "not-a-quantity",
    isKnown ? "fields-expected" : "object-expected",
    "",
    isKnown ? "Enter an object, not {given}: {fields}." : "This must be an object, not {given}.",
    { given: shown(input), ...(isKnown && { fields }) },
  );
  return false;
}

/**
 * An object with these fields; `agree` looks at several of them together, also where others are at fault. `isOther` notes what
 * is another object of the library.
 */
/* @__NO_SIDE_EFFECTS__ */
export function object<T extends object>(
  fields: FieldsOf<T>,
  agree: readonly Agreement<T>[] = [],
  sentence = "",
  isOther?: OtherObject,
): ObjectField<T> {
  return new ObjectField(fields, agree, sentence, isOther);
}

/** An object with the fields of two lists, and what each of them asks. */
/* @__NO_SIDE_EFFECTS__ */
export function joined<A extends object, B extends object>(
  one: ObjectField<A>,
  other: ObjectField<B>,
  sentence = "",
): ObjectField<A & B> {
  const fields = { ...one.fields, ...other.fields } as unknown as FieldsOf<A & B>;
  return new ObjectField(fields, [...one.agree, ...other.agree], sentence);
}

/** An object that is taken as it is and not copied: a table of words, what another function of the library returned. */
export class AsGivenField<T extends object> extends Field<T> {
  read(input: unknown, check: Check): T | undefined {
    return isObject(input, check) ? (input as T) : undefined;
  }

  missing(check: Check): undefined {
    return check.fault("missing", "part-missing", "", "This part is missing.");
  }
}

/** An object that is taken as it is. */
/* @__NO_SIDE_EFFECTS__ */
export function asGiven<T extends object>(sentence: string): AsGivenField<T> {
  return new AsGivenField(sentence);
}

/** An object of which some fields are read, once, and the rest is left alone. */
class PickedField<T extends object> extends AsGivenField<T> {
  constructor(
    sentence: string,
    private readonly names: readonly string[],
  ) {
    super(sentence);
  }

  override read(input: unknown, check: Check): T | undefined {
    const given = super.read(input, check) as Readonly<Record<string, unknown>> | undefined;
    if (given === undefined) return undefined;
    return Object.fromEntries(
      this.names.filter((name) => name in given).map((name) => [name, given[name]]),
    ) as T;
  }
}

/** An object of which some fields are read, once, and the rest is left alone. */
/* @__NO_SIDE_EFFECTS__ */
export function picked<T extends object>(sentence: string, names: readonly string[]): Field<T> {
  return new PickedField(sentence, names);
}

/** A list. */
export class ListField<T> extends Field<readonly T[]> {
  constructor(
    about: string,
    readonly item: Field<T>,
    readonly least: number,
    readonly most: number,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): readonly T[] | undefined {
    if (!Array.isArray(input))
      return check.fault("not-a-quantity", "list-expected", "", "This must be a list, not {given}.", {
        given: shown(input),
      });
    const { item, least, most } = this;
    const { length } = input;
    if (length < least)
      return check.fault("too-few", "list-short", "", 'Enter at least {limit} under "{list.field}".', {
        list: check.name,
        given: length,
        limit: least,
      });
    if (length > most)
      return check.fault("out-of-range", "list-long", "", 'Enter at most {limit} under "{list.field}".', {
        list: check.name,
        given: length,
        limit: most,
      });
    const before = check.issues.length;
    const output: T[] = [];
    for (let i = 0; i < length; i++) output.push(check.readAt(i, item, input) as T);
    return check.issues.length === before ? output : undefined;
  }

  missing(check: Check): undefined {
    return check.fault("missing", "list-missing", "", 'Enter at least {limit} under "{list.field}".', {
      list: check.name,
      limit: this.least,
    });
  }
}

/** A list of `least` to `most` items of one kind. */
/* @__NO_SIDE_EFFECTS__ */
export function list<T>(
  sentence: string,
  item: Field<T>,
  {
    least = 1,
    most = Number.POSITIVE_INFINITY,
  }: { readonly least?: number | undefined; readonly most?: number | undefined } = {},
): ListField<T> {
  return new ListField(sentence, item, least, most);
}

/** A list of a fixed length, each place with its own field: a pair of numbers. */
export class TupleField<T extends readonly unknown[]> extends Field<T> {
  constructor(
    about: string,
    /** What to enter. */
    readonly expected: ExpectedName,
    readonly items: { readonly [K in keyof T]: Field<T[K]> },
    /** Whether more may follow, which is not looked at. */
    readonly open: boolean,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): T | undefined {
    const { items, expected, open } = this;
    const { length } = items;
    if (!Array.isArray(input) || input.length < length || (input.length > length && !open))
      return Array.isArray(input)
        ? check.fault(
            "not-a-quantity",
            "list-of-so-many",
            "",
            "Enter {expected.expected}, not a list of {given}.",
            { expected, given: input.length },
          )
        : check.fault("not-a-quantity", "list-of-expected", "", "Enter {expected.expected}, not {given}.", {
            expected,
            given: shown(input),
          });
    const before = check.issues.length;
    const output = items.map((item, i) => check.readAt(i, item, input));
    return check.issues.length === before ? (output as readonly unknown[] as T) : undefined;
  }

  missing(check: Check): undefined {
    const { expected } = this;
    return check.fault("missing", "list-of", "", "Enter {expected.expected}.", { expected });
  }
}

/** A list of a fixed length; `expected` names what to enter. */
/* @__NO_SIDE_EFFECTS__ */
export function tuple<T extends readonly unknown[]>(
  sentence: string,
  expected: ExpectedName,
  items: { readonly [K in keyof T]: Field<T[K]> },
  { open = false }: { readonly open?: boolean | undefined } = {},
): TupleField<T> {
  return new TupleField(sentence, expected, items, open);
}

/** Which of its options an input is meant for: its place, or nothing where a fault was noted. */
export type Pick = (input: unknown, check: Check) => number | undefined;

/** One of several shapes. The faults reported are those of the one that is meant. */
export class EitherField<T> extends Field<T> {
  constructor(
    about: string,
    readonly options: readonly Field<T>[],
    readonly pick: Pick,
    /** The kind of each option, where their `kind` says which it is. */
    readonly kinds: readonly string[] = [],
  ) {
    super(about);
  }

  read(input: unknown, check: Check): T | undefined {
    const at = this.pick(input, check);
    return at === undefined ? undefined : (this.options[at] as Field<T>).read(input, check);
  }

  missing(check: Check): undefined {
    const { kinds } = this;
    if (kinds.length === 0) return (this.options[0] as Field<T>).missing(check);
    return choice("", kinds).missing(check);
  }
}

/** One of several shapes, distinguished by `pick`. */
/* @__NO_SIDE_EFFECTS__ */
export function either<T>(sentence: string, options: readonly Field<T>[], pick: Pick): EitherField<T> {
  return new EitherField(sentence, options, pick);
}

/** A pick by which group of fields is given: `[["percent"], ["volume"]]`; `otherwise` where none is. */
/* @__NO_SIDE_EFFECTS__ */
export function byGiven(groups: readonly (readonly string[])[], otherwise?: number): Pick {
  return (input, check) => {
    const isThere = (group: readonly string[]): boolean => hasField(input, group);
    const first = groups.findIndex(isThere);
    const second = first < 0 ? -1 : groups.findIndex((group, i) => i > first && isThere(group));
    const known = first < 0 ? otherwise : first;
    if (second < 0 && known !== undefined) return known;
    const choices = groups.map((group) => group.join(" + "));
    if (second < 0) {
      // A bare number doesn't say which of them it is.
      const code = typeof input === "object" && !Array.isArray(input) ? "missing" : "not-a-quantity";
      return check.fault(code, "choose-fields", "", "Enter one of: {choices.field}.", { choices });
    }
    return check.fault(
      "conflict",
      "fields-exclude",
      (groups[second] as readonly string[]).find((name) => hasField(input, [name])) as string,
      "Enter {first.field} or {second.field}, not both.",
      { first: choices[first as number] as string, second: choices[second] as string, choices },
    );
  };
}

/** Whether an input is an object in which any of these fields is given. */
export function hasField(input: unknown, names: readonly string[]): boolean {
  if (typeof input !== "object" || input === null) return false;
  for (const name of names) {
    const value = (input as Record<string, unknown>)[name];
    if (value !== undefined && value !== null) return true;
  }
  return false;
}

/** Notes what holds the object that is meant, in a field of its own, with the sentence that says so. */
/* @__NO_SIDE_EFFECTS__ */
export function holderOf(
  field: string,
  { key, template }: { readonly key: string; readonly template: string },
): OtherObject {
  return (input, check) => {
    if (!hasField(input, [field])) return false;
    check.fault("conflict", key, "", template);
    return true;
  };
}

/** A field for each kind. */
export type Kinds<T extends { readonly kind: string }> = {
  readonly [K in T["kind"]]: Field<Extract<T, { readonly kind: K }>>;
};

/** One of several shapes, distinguished by their `kind`. */
/* @__NO_SIDE_EFFECTS__ */
export function kinds<T extends { readonly kind: string }>(sentence: string, all: Kinds<T>): EitherField<T> {
  const names = Object.keys(all);
  const kind = choice("Which kind it is.", names);
  const pick: Pick = (input, check) => {
    if (!isObject(input, check)) return undefined;
    const found = check.readAt("kind", kind, input);
    return found === undefined ? undefined : names.indexOf(found);
  };
  return new EitherField(sentence, Object.values(all) as Field<T>[], pick, names);
}

/** An object that says which kind it is, and has these fields beside. */
/* @__NO_SIDE_EFFECTS__ */
export function ofKind<K extends string, T extends object>(
  kind: K,
  says: string,
  rest: ObjectField<T>,
  sentence = "",
): ObjectField<{ readonly kind: K } & T> {
  return joined(object<{ readonly kind: K }>({ kind: choice<K>(says, [kind]) } as never), rest, sentence);
}
