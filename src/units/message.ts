import { type ErrorCode, type Figures, type QuantityFigure, SprayMathError } from "../errors.js";
import { descriptionOf } from "./describe.js";
import { type IssueNames, NAMES } from "./names.js";
import { isUnit } from "./resolve.js";
import type { Unit } from "./types.js";

type Figure = Figures[string];

/** How a language writes what stands in the places of a template. */
export interface Phrasing {
  /** A number. */
  readonly number: (value: number) => string;
  /** A quantity with its unit. */
  readonly quantity: (figure: QuantityFigure) => string;
  /** A quantity as `parseQuantity` reads it: for what a person is to type. */
  readonly typed: (figure: QuantityFigure) => string;
  /** The unit of a quantity. */
  readonly unit: (figure: QuantityFigure) => string;
  /** The plural form that a count asks for. */
  readonly plural: (count: number) => string;
  /** The name of a key in a list of names; nothing where there is none. */
  readonly name: (list: string, key: string) => string | undefined;
  /** Several names, of which one is enough. */
  readonly oneOf: (names: readonly string[]) => string;
}

// There are as many templates as sentences: each is taken apart once.
const taken = new Map<string, readonly (string | undefined)[]>();

/** A template taken apart: text, the name of a place, the part of it that is asked for, plural forms, text, and so on. */
function partsOf(template: string): readonly (string | undefined)[] {
  let parts = taken.get(template);
  if (parts === undefined) {
    parts = template.split(/\{(\w+)(?:\.(\w+)|:([^{}]*))?\}/);
    taken.set(template, parts);
  }
  return parts;
}

/**
 * Fills the places of a template: `{limit}` with the figure of that name, `{limit.value}` with its number and `{limit.unit}`
 * with its unit. `{example.typed}` is what a person types, `{given.dimension}` its name in a list of names, and
 * `{loads:one=load;other=loads}` the word for so many.
 */
export function phrased(template: string, figures: Figures, phrasing: Phrasing): string {
  const parts = partsOf(template);
  let text = parts[0] as string;
  for (let i = 1; i < parts.length; i += 4) {
    const name = parts[i] as string;
    text += Object.hasOwn(figures, name)
      ? placed(figures[name], parts[i + 1], parts[i + 2], phrasing)
      : `{${name}}`;
    text += parts[i + 3];
  }
  return text;
}

function placed(
  figure: Figure | undefined,
  part: string | undefined,
  forms: string | undefined,
  phrasing: Phrasing,
): string {
  if (forms !== undefined) return formFor(figure, forms, phrasing);
  if (part === undefined) return written(figure, phrasing);
  if (part === "value") return written(isQuantity(figure) ? figure.value : figure, phrasing);
  if (part === "unit") return unitOf(figure, phrasing);
  if (part === "typed") return isQuantity(figure) ? phrasing.typed(figure) : written(figure, phrasing);
  const keys = [figure].flat().map(String);
  const names = keys.map((key) =>
    part === "field" ? fieldNames(key, phrasing) : (phrasing.name(part, key) ?? key),
  );
  return part === "expected" ? phrasing.oneOf(names) : names.join(", ");
}

/** Fields that belong together, in words: `row spacing + plant spacing` for `rowSpacing + plantSpacing`. */
function fieldNames(keys: string, phrasing: Phrasing): string {
  const inWords = (key: string) => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return keys
    .split(" + ")
    .map((key) => phrasing.name("field", key) ?? inWords(key))
    .join(" + ");
}

/** The unit of a quantity, or what a unit's name stands for. */
function unitOf(figure: Figure | undefined, phrasing: Phrasing): string {
  if (isQuantity(figure)) return phrasing.unit(figure);
  return typeof figure === "string" ? phrasing.unit({ value: SEVERAL, unit: figure }) : "";
}

// A count that every language has its plural for.
const SEVERAL = 100;

/** `one=load;other=loads`: the word for so many. */
function formFor(figure: Figure | undefined, forms: string, phrasing: Phrasing): string {
  const form = phrasing.plural(isQuantity(figure) ? figure.value : Number(figure));
  let words = plurals.get(forms);
  if (words === undefined) {
    words = new Map(forms.split(";").map((one) => one.split("=") as [string, string]));
    plurals.set(forms, words);
  }
  return words.get(form) ?? words.get("other") ?? "";
}

// As many as there are in the templates.
const plurals = new Map<string, ReadonlyMap<string, string>>();

function written(figure: Figure | undefined, phrasing: Phrasing): string {
  if (typeof figure === "number") return phrasing.number(figure);
  if (figure === undefined || typeof figure === "string") return figure ?? "";
  return isQuantity(figure) ? phrasing.quantity(figure) : figure.join(", ");
}

function isQuantity(figure: Figure | undefined): figure is QuantityFigure {
  return typeof figure === "object" && "unit" in figure;
}

/** A number with a sign between its groups of digits: `12,000`. */
function number(value: number): string {
  const text = String(value);
  if (Math.abs(value) < 1000) return text;
  return text.replace(/^-?\d+/, (whole) => whole.replace(/\B(?=(\d{3})+$)/g, ","));
}

function unit({ value, unit: name }: QuantityFigure): string {
  if (!isUnit(name)) return name;
  const { singular, symbol, plural } = descriptionOf(name);
  // Plants, pots and cups have no symbol: they are counted in their name.
  return value !== 1 && symbol === singular ? plural : symbol;
}

function quantity(figure: QuantityFigure): string {
  return spoonName(figure) ?? withUnit(number(figure.value), figure);
}

const SPOONS: readonly string[] = [
  "tsp",
  "tbsp",
  "cup",
  "metric_tsp",
  "metric_tbsp",
  "metric_cup",
] satisfies Unit[];
const SPOON_PARTS = [
  [1 / 8, "1/8"],
  [1 / 4, "1/4"],
  [1 / 3, "1/3"],
  [1 / 2, "1/2"],
] as const;

/** What a part of a spoon or a cup is called, which nobody has a decimal for: `1/8 teaspoon`. Nothing for any other amount. */
export function spoonName({ value, unit: name }: QuantityFigure): string | undefined {
  if (!SPOONS.includes(name)) return undefined;
  // Figures are read in three digits.
  const part = SPOON_PARTS.find(([size]) => Math.abs(size - value) < 0.0005);
  return part && `${part[1]} ${descriptionOf(name as Unit).singular}`;
}

// Without signs between groups: text for another locale is read with that locale's.
function typed(figure: QuantityFigure): string {
  return withUnit(String(figure.value), figure);
}

function withUnit(value: string, figure: QuantityFigure): string {
  const symbol = unit(figure);
  // 2 × 100 gal: "2 100 gal" would be read as 2,100.
  const gap = symbol === "%" ? "" : /^1/.test(symbol) ? " × " : " ";
  return `${value}${gap}${symbol}`.trim();
}

/** English, with figures read in so many digits. */
function english(digits: number): Phrasing {
  const read = ({ value, unit }: QuantityFigure): QuantityFigure => ({
    value: readable(value, digits),
    unit,
  });
  return {
    number: (value) => number(readable(value, digits)),
    unit: (figure) => unit(read(figure)),
    quantity: (figure) => quantity(read(figure)),
    typed: (figure) => typed(read(figure)),
    plural: (count) => (count === 1 ? "one" : "other"),
    name: (list, key) => nameIn(NAMES)(list, key),
    oneOf: (names) => names.join(" or "),
  };
}

/** Looks names up in the lists of a language. */
export function nameIn(lists: IssueNames): Phrasing["name"] {
  return (list, key) => {
    const names: Readonly<Record<string, string>> = Object.hasOwn(lists, list)
      ? lists[list as keyof IssueNames]
      : {};
    return Object.hasOwn(names, key) ? names[key] : undefined;
  };
}

// What a tape, a jug or a scale shows, and what a decision goes by (decide.ts).
const READ_DIGITS = 3;
const TYPED_DIGITS = 4;
const WHOLE_DIGITS = 6;
const DECIDED_DIGITS = 12;

/**
 * Figures as a person reads them. A number of few digits was typed and stays as it is. Where it is known what was `entered`, an
 * amount that wasn't is read in three figures or its whole part. Nothing is rounded so far that two figures look alike and are not: "5 is more
 * than 5".
 */
export function asRead(figures: Figures, entered?: ReadonlySet<number>): Figures {
  const typedDigits = (value: number) => (entered?.has(value) === false ? 0 : TYPED_DIGITS);
  const digits = digitsToTellApart(figures, typedDigits);
  const read = (value: number): number => readable(value, digits, typedDigits(value));
  const rounded: Record<string, Figure> = {};
  for (const name of Object.keys(figures)) {
    const figure = figures[name] as Figure;
    if (typeof figure === "number") rounded[name] = readable(figure, digits);
    else rounded[name] = isQuantity(figure) ? { ...figure, value: read(figure.value) } : figure;
  }
  return rounded;
}

/** The digits that a tool shows, or as many more as it takes that no two figures look alike and are not. */
function digitsToTellApart(figures: Figures, typedDigits: (value: number) => number): number {
  const all = Object.values(figures) as Figure[];
  let digits = READ_DIGITS;
  for (let i = 1; i < all.length; i++)
    for (let k = 0; k < i; k++) {
      const [a, b] = inOneUnit(all[k] as Figure, all[i] as Figure);
      const areAlike = (at: number) => readable(a, at, typedDigits(a)) === readable(b, at, typedDigits(b));
      // So far apart, as nearly always, that no rounding brings them together.
      if (!(Math.abs(a - b) < 0.02 * Math.abs(a)) || !areAlike(digits) || areAlike(DECIDED_DIGITS)) continue;
      while (areAlike(digits)) digits++;
    }
  return digits;
}

/** Two figures as numbers that can be taken for each other; not numbers where they can't. */
function inOneUnit(a: Figure, b: Figure): readonly [number, number] {
  if (typeof a === "number" && typeof b === "number") return [a, b];
  return isQuantity(a) && isQuantity(b) && a.unit === b.unit ? [a.value, b.value] : APART;
}

const APART = [Number.NaN, Number.NaN] as const;

function readable(value: number, digits: number, typedDigits = TYPED_DIGITS): number {
  // Few digits at sight: text would say the same, and messages are most of what many plans take.
  if (Number.isInteger(value) && Math.abs(value) < 10 ** TYPED_DIGITS) return value + 0;
  const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
  const enough = Math.max(digits, typedDigits);
  if (typedDigits > 0 && isNearDigits(value, enough - whole)) {
    const typed = Number(value.toPrecision(enough));
    if (typed === Number(value.toPrecision(DECIDED_DIGITS))) return typed;
  }
  // All of the whole part: 10,845 sq ft, not 10,800.
  return Number(value.toPrecision(Math.max(digits, Math.min(whole, WHOLE_DIGITS))));
}

/** Whether a value may have so few decimals. Where it is far off, no text is needed to see it. */
function isNearDigits(value: number, decimals: number): boolean {
  const times = value * 10 ** decimals;
  return Math.abs(times - Math.round(times)) <= 1e-6;
}

const ANY_TYPED = () => TYPED_DIGITS;
const ENGLISH = english(READ_DIGITS);

/** Fills a template of the library's own, in English. */
export function messageOf(template: string, figures: Figures): string {
  const digits = digitsToTellApart(figures, ANY_TYPED);
  return phrased(template, figures, digits === READ_DIGITS ? ENGLISH : english(digits));
}

/** The error for one fault: its template stands beside the place that raises it. */
export function refusal(
  code: ErrorCode,
  key: string,
  path: string,
  template: string,
  figures: Figures = {},
): SprayMathError {
  return new SprayMathError(code, path, messageOf(template, figures), { key, figures });
}
