import { SprayMathError, shown } from "../errors.js";
import { checkDimension, dimensionOf } from "./dimensions.js";
import { checkedChoice, checkedObject, wrongDimension } from "./guard.js";
import { refusal } from "./message.js";
import { multiple } from "./multiples.js";
import { nearest } from "./nearest.js";
import { type Numeral, type NumeralSigns, numeralSigns } from "./numerals.js";
import { compare, qty, sum } from "./quantity.js";
import { isUnit } from "./resolve.js";
import { AMBIGUOUS_LETTERS, BARE, knownSpellings, type Meaning, MOST_WORDS } from "./spellings.js";
import { unitsIn, unitsLike, usualUnit } from "./systems.js";
import { stumbledOn, type Token, tokensOf, withPlainSigns } from "./tokens.js";
import type {
  BasedFraction,
  Dimension,
  Fraction,
  FractionBasis,
  Quantity,
  SimpleUnit,
  Unit,
  UnitSystem,
  UnitsByDimension,
} from "./types.js";

/** How {@link parseQuantity} is to understand what was written. */
export interface ParseOptions<D extends Dimension = Dimension> {
  /** Whose decimal and group signs the numbers have, as a language tag; `en-US` unless given. */
  readonly locale?: string;
  /** Whose gallons, pints, quarts, cups, spoons and fluid ounces are meant where the text does not say; `us` unless given. */
  readonly system?: UnitSystem;
  /** What a bare `oz` is: a fluid ounce or an ounce of weight. Refused unless given. */
  readonly ounce?: "liquid" | "dry";
  /** The dimension that is wanted; anything else is refused. */
  readonly dimension?: D;
}

/** What {@link parseQuantity} gives where a dimension is asked for. */
export type ParsedQuantity<D extends Dimension> = [D] extends ["fraction"]
  ? Fraction | BasedFraction
  : Quantity<UnitsByDimension[D]>;

// Nothing that a person writes as one quantity is longer; it also bounds the work on hostile text.
const MOST_LETTERS = 200;

/**
 * Reads a quantity as people write it: `2 1/2 gal`, `3' 6"`, `12 fl. oz. per acre`, `8 fl oz/100 gal`, `0.25% v/v`,
 * `1.5 oz wt per 1,000 sq ft`, `6½ qt`.
 *
 * A sum such as `3 ft 6 in` comes in its first unit. A bare `oz` is refused unless `ounce` says which is meant. A bare
 * gallon, pint, quart, cup, spoon or fluid ounce is a US one unless `system` says otherwise. Capitals are ignored except
 * where they tell two units apart (`ML`, `Mg`, `T`). A comma or point that the locale uses to group digits is read as
 * such only where the groups are right: `1,5` is refused in English, `1.5` in German. `pounds per square inch` is a
 * pressure unless `massRate` is asked for; `lb/sq in` is a weight per area unless `pressure` is asked for.
 *
 * Sources: the units' definitions as for `convert`; the spellings: common practice, no source.
 *
 * @param text - at most 200 characters; negative amounts are read too
 * @param options - see {@link ParseOptions}
 * @returns the quantity; with its basis where `v/v`, `w/v` or `w/w` follows a fraction
 * @throws SprayMathError `unreadable` or `unknown-unit` naming the part that was stumbled on, `ambiguous-unit`,
 *   `wrong-dimension`, `not-finite`, or `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { parseQuantity } from "swath-to-spoon/units";
 *
 * console.log(parseQuantity("2 1/2 gal")); // { value: 2.5, unit: 'gal' }
 * console.log(parseQuantity("1,5 l/ha", { locale: "de" })); // { value: 1.5, unit: 'L/ha' }
 * console.log(parseQuantity("0.25% v/v")); // { value: 0.25, unit: '%', basis: 'v/v' }
 * ```
 */
export function parseQuantity(
  text: string,
  options?: Omit<ParseOptions, "dimension">,
): Quantity | BasedFraction;
export function parseQuantity<D extends Dimension>(
  text: string,
  options: ParseOptions<D> & { readonly dimension: D },
): ParsedQuantity<D>;
export function parseQuantity(text: string, options: ParseOptions = {}): Quantity | BasedFraction {
  const known = checkedOptions(options);
  if (text === undefined || text === null) {
    throw new SprayMathError("missing", "text", 'Nothing given; wanted text such as "2.5 gal".');
  }
  if (typeof text !== "string") {
    throw new SprayMathError("unreadable", "text", `Given ${shown(text)}; wanted text such as "2.5 gal".`);
  }
  if (text.length > MOST_LETTERS) {
    const message = `Given ${text.length} characters; wanted one quantity, at most ${MOST_LETTERS}.`;
    throw new SprayMathError("unreadable", "text", message);
  }
  const signs = numeralSigns(known.locale);
  const plain = withPlainSigns(text, signs);
  const quantity = readQuantity({ text: plain, tokens: tokensOf(plain, signs), signs, known, at: 0 });
  return checkedDimension(quantity, known.dimension);
}

/**
 * Reads a bare number as people write it: `14`, `1,000`, `2 1/2`, `½`.
 *
 * The decimal and group signs are those of the locale, as for {@link parseQuantity}.
 *
 * @param text - at most 200 characters; negative numbers are read too
 * @param options - `locale`: whose decimal and group signs the number has, as a language tag; `en-US` unless given
 * @returns the number
 * @throws SprayMathError `missing` for blank text, `unreadable`, or `unknown-choice` for the locale
 *
 * @example
 * ```ts
 * import { parseNumber } from "swath-to-spoon/units";
 *
 * console.log(parseNumber("2 1/2")); // 2.5
 * console.log(parseNumber("1.000,5", { locale: "de" })); // 1000.5
 * ```
 */
export function parseNumber(text: string, options: Pick<ParseOptions, "locale"> = {}): number {
  const { locale = "en-US" } = checkedObject(options, "options");
  const signs = numeralSigns(locale);
  const given = text ?? "";
  if (typeof given !== "string")
    throw refusal("unreadable", "enter-text", "text", "Enter a number as text, not {given}.", {
      given: shown(given),
    });
  if (given.trim() === "") throw refusal("missing", "enter-number", "text", "Enter a number here.");
  if (text.length > MOST_LETTERS)
    throw refusal("unreadable", "text-long", "text", "Enter one number, at most {limit} characters.", {
      given: text.length,
      limit: MOST_LETTERS,
    });
  const plain = withPlainSigns(text, signs);
  const known: KnownOptions = { locale, system: "us", ounce: undefined, dimension: undefined };
  const reading: Reading = { text: plain, tokens: tokensOf(plain, signs), signs, known, at: 0 };
  const negative = takes(reading, "-");
  if (!negative) takes(reading, "+");
  const value = readAmount(reading);
  const left = reading.tokens[reading.at];
  if (left !== undefined)
    throw refusal("unreadable", "number-alone", "text", "Enter a number alone, without {given}.", {
      given: shown(plain.slice(left.start)),
    });
  return (negative ? -value : value) + 0;
}

interface KnownOptions {
  readonly locale: string;
  readonly system: UnitSystem;
  readonly ounce: "liquid" | "dry" | undefined;
  readonly dimension: Dimension | undefined;
}

function checkedOptions(options: ParseOptions): KnownOptions {
  const { locale = "en-US", system = "us", ounce, dimension } = checkedObject(options, "options");
  checkedChoice(system, ["us", "imperial", "metric"], "options.system");
  if (ounce !== undefined) checkedChoice(ounce, ["liquid", "dry"], "options.ounce");
  if (dimension !== undefined) checkDimension(dimension, "options.dimension");
  return { locale, system, ounce, dimension };
}

function checkedDimension(quantity: Quantity, dimension: Dimension | undefined): Quantity {
  if (dimension === undefined || dimensionOf(quantity.unit) === dimension) return quantity;
  throw wrongDimension(quantity, usualUnit(dimension, unitsLike(quantity.unit)), "text");
}

/** A text on the way to being read: its tokens, and which comes next. */
interface Reading {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly signs: NumeralSigns;
  readonly known: KnownOptions;
  at: number;
}

function readQuantity(reading: Reading): Quantity {
  if (reading.tokens.length === 0) {
    throw new SprayMathError("unreadable", "text", 'Given no text; wanted a quantity such as "2.5 gal".');
  }
  const negative = takes(reading, "-");
  if (!negative) takes(reading, "+");
  const amount = readSum(reading);
  const unit = readPer(reading, amount.unit);
  const basis = readBasis(reading, unit);
  const left = reading.tokens[reading.at];
  if (left !== undefined) throw stumbledOn(reading.text.slice(left.start), reading.text, "nothing more");
  const quantity = qty(negative ? -amount.value : amount.value, unit);
  return basis === undefined ? quantity : ({ ...quantity, basis } as BasedFraction);
}

/** Passes over the next token if it is this one. */
function takes(reading: Reading, key: string): boolean {
  const found = reading.tokens[reading.at]?.key === key;
  if (found) reading.at++;
  return found;
}

function nextIs(reading: Reading, kind: Token["kind"]): boolean {
  return reading.tokens[reading.at]?.kind === kind;
}

// 3 ft 6 in: each part must be in a smaller unit of the same dimension.
function readSum(reading: Reading): Quantity<SimpleUnit> {
  const parts = [readPart(reading)];
  while (nextIs(reading, "number")) {
    const start = reading.tokens[reading.at]?.start;
    const part = readPart(reading);
    const before = (parts.at(-1) as Quantity).unit;
    if (
      dimensionOf(part.unit) !== dimensionOf(before) ||
      compare(qty(1, part.unit), qty(1, before) as never) !== -1
    ) {
      const written = reading.text.slice(start, reading.tokens[reading.at - 1]?.end);
      throw stumbledOn(written, reading.text, `nothing more, or a part in a smaller unit than ${before}`);
    }
    parts.push(part);
  }
  return sum(parts as never);
}

function readPart(reading: Reading): Quantity<SimpleUnit> {
  const value = readAmount(reading);
  const unit = takes(reading, "×") || takes(reading, "*") ? readMultiple(reading) : readUnit(reading);
  return qty(value, unit);
}

// 5, 1/2, 2 1/2, 2-1/2, 1,000 1/2
function readAmount(reading: Reading): number {
  const first = readNumeral(reading);
  const fraction = first.plain ? takesFraction(reading, first) : undefined;
  if (fraction !== undefined) return fraction.part / fraction.whole;
  const value = checkedValue(reading, first);
  if (!first.whole) return value;
  const back = reading.at;
  const hyphen = reading.tokens[reading.at];
  if (hyphen?.key === "-" && hyphen.start === reading.tokens[reading.at - 1]?.end) reading.at++;
  const second = reading.tokens[reading.at]?.numeral;
  if (second?.plain) {
    reading.at++;
    const proper = takesFraction(reading, second);
    if (proper !== undefined && proper.part < proper.whole) {
      return (value * proper.whole + proper.part) / proper.whole;
    }
  }
  reading.at = back;
  return value;
}

function readNumeral(reading: Reading): Numeral {
  const next = reading.tokens[reading.at];
  if (next?.numeral !== undefined) {
    reading.at++;
    return next.numeral;
  }
  const part = reading.text.slice(next?.start ?? 0);
  throw stumbledOn(part, reading.text, "a number first");
}

function takesFraction(reading: Reading, part: Numeral): { part: number; whole: number } | undefined {
  const whole = reading.tokens[reading.at + 1]?.numeral;
  if (reading.tokens[reading.at]?.key !== "/" || !whole?.plain || Number(whole.text) === 0) return undefined;
  // Somebody who writes 8/100 gal has most likely left out a unit: 8 of what in 100 gallons?
  if (whole.text === "100" || whole.text === "1000") {
    const written = `${part.text}/${whole.text}`;
    throw stumbledOn(written, reading.text, "a unit before the stroke, or a decimal if a fraction is meant");
  }
  reading.at += 2;
  return { part: Number(part.text), whole: Number(whole.text) };
}

function checkedValue({ text, signs }: Reading, numeral: Numeral): number {
  if (numeral.value !== undefined) return numeral.value;
  const { locale, decimal, group } = signs;
  const grouping = group === "" ? "" : ` and ${shown(group)} between full groups of digits`;
  throw stumbledOn(
    numeral.text,
    text,
    `${shown(decimal)} before decimals${grouping}, as ${locale} writes numbers; or the locale named that it was written for`,
  );
}

/** 100 gal, 1,000 sq ft: the units that are a round number of another. */
function readMultiple(reading: Reading): SimpleUnit {
  const start = reading.tokens[reading.at]?.start;
  const count = nextIs(reading, "number") ? checkedValue(reading, readNumeral(reading)) : 1;
  const of = readUnit(reading);
  const unit = multiple(count, of);
  if (unit !== undefined) return unit;
  const written = reading.text.slice(start, reading.tokens[reading.at - 1]?.end);
  throw new SprayMathError(
    "unknown-unit",
    "text",
    `Given ${shown(written)} as a unit; wanted one of ${of} (so divide the amount), 1,000 sq ft, 100 gal (US) or 100 L.`,
  );
}

function readUnit(reading: Reading): SimpleUnit {
  const { tokens, text, at } = reading;
  const rest = tokens.slice(at);
  const last = rest.findIndex(({ kind }) => kind !== "word");
  const words = last < 0 ? rest : rest.slice(0, last);
  for (let count = Math.min(words.length, MOST_WORDS); count > 0; count--) {
    const key = words
      .slice(0, count)
      .map((word) => word.key)
      .join(" ");
    const meaning = knownSpellings().get(key);
    const [first] = words as [Token];
    const letters =
      count === 1 && Object.hasOwn(AMBIGUOUS_LETTERS, first.text) ? AMBIGUOUS_LETTERS[first.text] : undefined;
    if (letters !== undefined) throw ambiguous(first.text, letters);
    if (meaning !== undefined) {
      reading.at += count;
      return meant(meaning, text.slice(first.start, tokens[reading.at - 1]?.end), reading.known);
    }
  }
  throw noUnit(reading, words);
}

function meant(meaning: Meaning, written: string, { system, ounce }: KnownOptions): SimpleUnit {
  if ("unit" in meaning) return meaning.unit;
  const measure = meaning.bare === "oz" && ounce === "liquid" ? "fl_oz" : meaning.bare;
  if (measure === "oz") {
    if (ounce === "dry") return "oz";
    throw ambiguous(
      written,
      "It may be a fluid ounce or an ounce of weight; write fl oz or oz wt (or set the option ounce to liquid or dry).",
    );
  }
  const found = BARE[measure][system];
  if (typeof found === "string") throw ambiguous(written, found);
  return found.unit;
}

function ambiguous(written: string, why: string): SprayMathError {
  return new SprayMathError("ambiguous-unit", "text", `Given ${shown(written)} as a unit. ${why}`);
}

function noUnit({ text, tokens, at, known }: Reading, words: readonly Token[]): SprayMathError {
  const per = words.findIndex(({ key }) => key === "per");
  const named = per < 0 ? words : words.slice(0, per);
  const [first] = named;
  if (first === undefined) {
    const next = tokens[at];
    if (next !== undefined && next.kind !== "word" && next.key !== "/") {
      return stumbledOn(text.slice(next.start), text, "a unit before it");
    }
    const before = tokens[at - 1];
    if (before !== undefined && (before.key === "/" || before.key === "per")) {
      return stumbledOn(text.slice(before.start), text, 'a unit after it, such as "gal/ac"');
    }
    const number = text.slice(0, next?.start).trim();
    const example = usualUnit(known.dimension ?? "volume", unitsIn(known.system));
    return stumbledOn(number, text, `a unit after the number, such as "5 ${example}"`);
  }
  const written = text.slice(first.start, named.at(-1)?.end);
  const guess = nearest(written.slice(0, 40), [...knownSpellings().keys()]);
  const hint =
    guess === undefined ? 'wanted a unit such as "gal", "fl oz" or "ac".' : `did you mean "${guess}"?`;
  return new SprayMathError(
    "unknown-unit",
    "text",
    `Given ${shown(written)} as a unit, which is not known here; ${hint}`,
  );
}

function readPer(reading: Reading, over: SimpleUnit): Unit {
  const inWords = reading.tokens[reading.at]?.key === "per";
  if (!inWords && reading.tokens[reading.at]?.key !== "/") return over;
  const start = reading.tokens[reading.at]?.start;
  reading.at++;
  const unit = shortUnit(`${over}/${readMultiple(reading)}`, inWords, reading.known.dimension);
  if (isUnit(unit)) return unit;
  const written = reading.text.slice(start, reading.tokens[reading.at - 1]?.end);
  throw new SprayMathError(
    "unknown-unit",
    "text",
    `Given ${shown(written)} after ${over}, which makes no unit known here; wanted one such as gal/ac, oz/1000ft2 or gal/min.`,
  );
}

// In words, "miles per hour" is mph and "pounds per square inch" the pressure; with a stroke they are what they say.
function shortUnit(unit: string, inWords: boolean, dimension: Dimension | undefined): string {
  if (unit === "mi/h" && inWords) return "mph";
  const asPressure = dimension === "pressure" || (inWords && dimension !== "massRate");
  return unit === "lb/in2" && asPressure ? "psi" : unit;
}

function readBasis(reading: Reading, unit: Unit): FractionBasis | undefined {
  if (dimensionOf(unit) !== "fraction") return undefined;
  const [first, second] = reading.tokens.slice(reading.at);
  if (first?.kind === "basis") {
    if (first.key === "v/w") throw stumbledOn(first.text, reading.text, "v/v, w/v or w/w");
    reading.at++;
    return first.key as FractionBasis;
  }
  if (first?.key !== "by" || (second?.key !== "volume" && second?.key !== "weight")) return undefined;
  reading.at += 2;
  return second.key === "volume" ? "v/v" : "w/w";
}
