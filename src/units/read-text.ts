import { type Sentence, type SprayMathError, shown } from "../errors.js";
import type { TextReader } from "./check.js";
import { inUnit } from "./convert.js";
import { descriptionOf } from "./describe.js";
import { dimensionOf } from "./dimensions.js";
import { type Marked, remade } from "./marks.js";
import { refusal } from "./message.js";
import { multiple } from "./multiples.js";
import type { ExpectedName } from "./names.js";
import { editsBetween, nearest } from "./nearest.js";
import { meantNumber, type Numeral, type NumeralSigns, numeralSigns, remembered } from "./numerals.js";
import { sumOf } from "./quantity.js";
import { isUnit, unknownUnitOr } from "./resolve.js";
import {
  ACRE_OR_ARE,
  AMBIGUOUS_LETTERS,
  BARE,
  knownSpellings,
  type Meaning,
  MOST_WORDS,
  numberSpellings,
  type Question,
  WHICH_OUNCE,
} from "./spellings.js";
import { systemOf, unitsIn, usualUnit } from "./systems.js";
import { COMPOUNDS } from "./table.js";
import { type Advice, incomplete, type Token, tokensOf, unreadable, withPlainSigns } from "./tokens.js";
import type {
  BasedFraction,
  Dimension,
  FractionBasis,
  NumberUnit,
  Quantity,
  SimpleUnit,
  Unit,
  UnitSystem,
} from "./types.js";

/** How a text is understood. */
interface Understanding {
  readonly locale?: string | undefined;
  readonly system?: UnitSystem | undefined;
  readonly ounce?: "liquid" | "dry" | undefined;
}

// Nothing that a person writes as one quantity is longer; it also bounds the work on hostile text.
const MOST_LETTERS = 200;

/** A text on the way to being read: its tokens, and which comes next. */
interface Reading {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly signs: NumeralSigns;
  at: number;
}

/** A text on the way to being read as a quantity. */
interface QuantityReading extends Reading {
  readonly system: UnitSystem;
  readonly ounce: Understanding["ounce"];
  readonly dimensions: readonly Dimension[];
  /** A right quantity, as near to what was written as is known so far. */
  example: Quantity;
}

// 5'-6" and 5 ft-6 in: the dash is no range.
const FEET_DASH = /('|\bft|\bfeet|\bfoot)-(?=\d[\d\s./]*(?:"|in))/giu;

// 5 lb, 3 oz: the comma is no decimal sign.
const COMMA_BETWEEN = /(?<=[\p{L}.'"]) ?, +(?=\d)/gu;

function begun(text: string, locale: string, advice: Advice): Reading {
  if (text.length > MOST_LETTERS)
    throw refusal("unreadable", "text-long", "text", "This is too long. Enter at most {limit} characters.", {
      given: text.length,
      limit: MOST_LETTERS,
    });
  const signs = numeralSigns(locale);
  const plain = withPlainSigns(text, signs).replace(FEET_DASH, "$1 ").replace(COMMA_BETWEEN, " ");
  return { text: plain, tokens: tokensOf(plain, signs, advice), signs, at: 0 };
}

/** The number in a text, which may end in its own unit. Trusts its options. */
export function numberIn(text: string, locale = "en-US", unit?: NumberUnit): number {
  if (text.trim() === "") throw refusal("missing", "enter-number", "text", "Enter a number here.");
  const advice = { key: "one-number", advice: "Enter only a number, in the unit of the field." };
  const reading = begun(text, locale, advice);
  const sign = readSign(reading);
  const value = sign * readAmount(reading, advice) + 0;
  const left = reading.tokens[reading.at];
  if (left === undefined) return value;
  refuseUnfinishedFraction(reading);
  const rest = reading.text.slice(left.start);
  if (unit === undefined) throw unreadable(rest, advice);
  refuseRange(reading);
  const written = joined(reading.tokens.slice(reading.at));
  if (numberSpellings(unit).includes(written)) return value;
  if (numberSpellings(unit).some((spelling) => spelling.startsWith(written))) throw unitUnfinished(rest);
  const { key, template } = NUMBER_OF[unit];
  throw refusal("unreadable", key, "text", template, { example: exampleNumber(value, written, unit) });
}

const NUMBER_OF: Readonly<Record<NumberUnit, Question>> = {
  hours: { key: "number-of-hours", template: "Enter the number of hours, such as {example}." },
  days: { key: "number-of-days", template: "Enter the number of days, such as {example}." },
  percent: { key: "number-percent", template: "Enter the percentage, such as {example}." },
  degrees: { key: "number-of-degrees", template: "Enter the number of degrees, such as {example}." },
};

const USUAL_NUMBERS: Readonly<Record<NumberUnit, number>> = { hours: 24, days: 7, percent: 5, degrees: 90 };
const HOURS_IN_DAY = 24;

/** The number to enter for one in another unit: 96 hours for 4 days. A usual one where that isn't known, or no whole number. */
function exampleNumber(value: number, written: string, unit: NumberUnit): number {
  const inDays = unit === "hours" && numberSpellings("days").includes(written);
  const inHours = unit === "days" && numberSpellings("hours").includes(written);
  const meant = inDays ? value * HOURS_IN_DAY : inHours ? value / HOURS_IN_DAY : 0;
  return meant > 0 && Number.isInteger(meant) ? meant : USUAL_NUMBERS[unit];
}

// Most of what people type is a short number and a unit that was typed before. In such a text the two are read one by one, in
// every locale with a decimal point. Three decimals that end in 0 may be thousands, so they aren't short; in eighths they don't.
const SHORT = /^\d{1,6}(?:\.\d{1,2}|\.\d{0,4}[1-9])? \D+$/;
const MOST_KNOWN = 100;

/** What a short text says after its number. */
type Written = Pick<Marked, "unit" | "basis">;

/** What short texts said, by the list of what they may measure. A list is found faster than a text put together from it. */
type KnownTexts = WeakMap<readonly Dimension[], Map<string, Written>>;

const known = new Map<string, KnownTexts>();

/**
 * Reads quantities, all understood in one way; `dimensions` decide between what would else be read in two ways, and give the
 * examples in messages. Trusts its options.
 */
export function quantityReader(how: Understanding): TextReader["quantity"] {
  const { locale = "en-US", system, ounce } = how;
  const texts = remembered(known, `${locale} ${system} ${ounce}`, (): KnownTexts => new WeakMap());
  const hasPoint = numeralSigns(locale).decimal === ".";
  return (typed, dimensions, asked, called) => {
    const text = OF_ACTIVE.includes(called) ? typed.replace(ACTIVE_WORDS, " ") : typed;
    if (!hasPoint || !SHORT.test(text)) return readQuantity(text, dimensions, how, asked);
    const space = text.indexOf(" ");
    const number = Number(text.slice(0, space));
    const written = text.slice(space + 1);
    const those = textsFor(dimensions, texts);
    const said = those.get(written);
    if (said !== undefined) return remade(said, number, said.unit);
    const quantity: Marked = readQuantity(text, dimensions, how, asked);
    // Words that change the number, such as a dozen, show in it; in 0 they don't.
    if (quantity.value !== number || number === 0) return quantity;
    if (those.size >= MOST_KNOWN) those.clear();
    those.set(written, { unit: quantity.unit, basis: quantity.basis });
    return quantity;
  };
}

function textsFor(dimensions: readonly Dimension[], texts: KnownTexts): Map<string, Written> {
  let those = texts.get(dimensions);
  if (those === undefined) {
    those = new Map();
    texts.set(dimensions, those);
  }
  return those;
}

/**
 * The unit of an example for a place that takes one of these dimensions. Of a product, gallons per acre are many times what labels say:
 * whoever copied the example would go over. So it is of what is caught in a jug.
 */
function exampleUnit(
  [first = "volume", ...others]: readonly Dimension[],
  system: UnitSystem,
  unit: Unit | "small" | undefined,
): Unit {
  if (unit !== undefined && unit !== "small") return unit;
  const units = unitsIn(system);
  if (unit === "small" && first === "volume") return units.smallVolume;
  const usual = usualUnit(first, units);
  return others.length > 0 ? (usual.replace("gal/ac", "pt/ac") as Unit) : usual;
}

// In examples, where no number was typed.
const USUAL_NUMBER = 5;

function readQuantity(
  text: string,
  dimensions: readonly Dimension[],
  { locale = "en-US", system = "us", ounce }: Understanding,
  asked?: () => Unit | "small" | undefined,
): Quantity {
  const example = { value: USUAL_NUMBER, unit: exampleUnit(dimensions, system, asked?.()) };
  if (text.trim() === "")
    throw refusal("missing", "enter-quantity", "text", "Enter {expected.expected}, such as {example}.", {
      expected: "amount",
      example,
    });
  if (dimensions.includes("fraction")) refuseRatio(text);
  refuseActive(text);
  const reading = { ...begun(text, locale, oneAmount(example)), system, ounce, dimensions, example };
  const sign = readSign(reading);
  const amount = readSum(reading);
  const per = readPer(reading, amount);
  const basis = readBasis(reading, per);
  refuseRest(reading, { value: amount.value, unit: per });
  const quantity = { value: sign * amount.value + 0, unit: per };
  return basis === undefined ? quantity : ({ ...quantity, basis } as BasedFraction);
}

// 1:100, where a percentage could stand: an object with its parts can say of what it is, a text can't.
function refuseRatio(text: string): void {
  if (!/^\s*\d[\d.,]*\s*(?::\s*\d|in\s+\d[\d.,]*\s*$)/i.test(text)) return;
  throw refusal(
    "unreadable",
    "ratio",
    "text",
    "{given} is a ratio. Enter its two parts, and whether it is in water or in mix.",
    { given: shown(text.trim()) },
  );
}

// 2 lb ai/ac, 4 lb (a.e.) per gal
const ACTIVE_WORDS = /\(?(?<!\p{L})(?:a\.? ?[ie]\.?|active(?: ingredients?)?|acid equivalent)(?!\p{L})\)?/iu;

// Where it goes without saying.
const OF_ACTIVE: readonly unknown[] = ["activeRate", "content"] satisfies ExpectedName[];

function refuseActive(text: string): void {
  if (!ACTIVE_WORDS.test(text)) return;
  throw refusal(
    "unreadable",
    "rate-of-active",
    "text",
    "{given} is a rate of active ingredient. Enter the product's rate, or the active ingredient with what the product contains.",
    { given: shown(text.trim()) },
  );
}

function oneAmount(example: Quantity): Advice {
  return {
    key: "one-amount",
    advice: "Enter one amount with its unit, such as {example.typed}.",
    figures: { example },
  };
}

function readSign(reading: Reading): 1 | -1 {
  if (takes(reading, "-")) return -1;
  takes(reading, "+");
  return 1;
}

// What people write between the parts of a sum: 5 pounds and 3 ounces, 1 tbsp + 1 tsp.
const AND = ["and", "y", "+"];

// What a person may be about to write after a quantity, and after a fraction.
const ENDINGS = ["per", ...AND];
const BASIS_ENDINGS = ["by volume", "by weight", "v/v", "w/v", "w/w"];

function refuseRest(reading: QuantityReading, read: Quantity): void {
  const { unit } = read;
  const left = reading.tokens[reading.at];
  if (left === undefined) return;
  refuseRange(reading);
  const rest = reading.text.slice(left.start).trimEnd();
  const endings = dimensionOf(unit) === "fraction" ? BASIS_ENDINGS : isPerLength(unit) ? ROW_ENDINGS : [];
  if ([...ENDINGS, ...endings].some((ending) => ending.startsWith(rest.toLowerCase())))
    throw incomplete({ key: "text-unfinished", advice: "Finish what you're typing." });
  throw unreadable(rest, oneAmount(exampleLike(read, reading)));
}

/** An example for the place with what was read so far, where that can stand there: another unit's number would mislead. */
function exampleLike({ value, unit }: Quantity, reading: QuantityReading): Quantity {
  const { dimensions, example } = reading;
  const isOfPlace = dimensions.length === 0 || dimensions.includes(dimensionOf(unit));
  return isOfPlace
    ? { value: forExample(value, reading), unit }
    : { value: USUAL_NUMBER, unit: example.unit };
}

// 1-2 pt/ac, 1 to 2 pt/ac
function refuseRange({ tokens, at, text }: Reading): void {
  const [between, next] = tokens.slice(at);
  if (between === undefined || next?.kind !== "number" || !["-", "to", "or"].includes(between.key)) return;
  const ofRates = /\p{L}\s*\/|\bper\b/iu.test(text);
  throw refusal(
    "unreadable",
    ofRates ? "range-of-rates" : "range",
    "text",
    ofRates
      ? "{given} is a range. Choose one rate from it."
      : "{given} is a range. Choose one amount from it.",
    { given: shown(text.trim()) },
  );
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
function readSum(reading: QuantityReading): Quantity<SimpleUnit> {
  const parts = [readPart(reading)];
  while (nextIs(reading, "number") || takesAnd(reading)) {
    const start = reading.tokens[reading.at]?.start;
    const before = parts.at(-1) as Quantity<SimpleUnit>;
    const part = readPart(reading, before);
    if (!isPartOf(part.unit, before.unit))
      throw unreadable(reading.text.slice(start, reading.tokens[reading.at - 1]?.end), {
        key: "sum-order",
        advice: "Enter one amount, or parts from large to small, such as 3 ft 6 in.",
      });
    parts.push(part);
  }
  return sumOf(parts);
}

/** Passes over an "and" between two parts. */
function takesAnd(reading: Reading): boolean {
  const [word, next] = reading.tokens.slice(reading.at, reading.at + 2);
  if (next?.kind !== "number" || !AND.includes(word?.key as string)) return false;
  reading.at++;
  return true;
}

function isPartOf(unit: SimpleUnit, whole: SimpleUnit): boolean {
  return dimensionOf(unit) === dimensionOf(whole) && inUnit({ value: 1, unit }, whole) < 1;
}

/** What people go on with after a unit: 5 lb 3 oz. */
const NEXT_SMALLER: Partial<Record<SimpleUnit, SimpleUnit>> = {
  mi: "ft",
  yd: "ft",
  ft: "in",
  m: "cm",
  gal: "qt",
  qt: "pt",
  pt: "fl_oz",
  cup: "tbsp",
  tbsp: "tsp",
  imp_gal: "imp_qt",
  imp_qt: "imp_pt",
  imp_pt: "imp_fl_oz",
  L: "mL",
  lb: "oz",
  kg: "g",
  h: "min",
  min: "s",
};

/** One part of a sum; `before` is the part before it. */
function readPart(reading: QuantityReading, before?: Quantity<SimpleUnit>): Quantity<SimpleUnit> {
  const start = reading.tokens[reading.at]?.start;
  const value = readAmount(reading, {
    key: "number-first",
    advice: "Start with a number, such as {example.typed}.",
    figures: { example: reading.example },
  });
  const { unit } = reading.example;
  reading.example = {
    value: forExample(value, reading),
    unit: before === undefined ? unit : (NEXT_SMALLER[before.unit] ?? before.unit),
  };
  if (before !== undefined && reading.at === reading.tokens.length)
    throw lastUnitMissing(reading.text.slice(0, start).trim(), before, reading.example);
  refuseProduct(reading);
  // 4 × tablespoon
  if (!takes(reading, "×")) takes(reading, "*");
  passOf(reading);
  const part = { value, unit: readUnit(reading, undefined, before?.unit) };
  refuseProduct(reading, part.unit);
  return part;
}

// 1/2 of a cup, 1/2 a gallon, 1/2 de taza
const OF = ["of", "de"];
const ONE_OF_IT = ["a", "an", "un", "una"];

/** Passes over what a person says between a fraction and its unit. */
function passOf(reading: Reading): void {
  const wordAt = (at: number): string | undefined => {
    const token = reading.tokens[at];
    return token?.kind === "word" ? token.key : undefined;
  };
  if (OF.includes(wordAt(reading.at) ?? "") && wordAt(reading.at + 1) !== undefined) reading.at++;
  if (ONE_OF_IT.includes(wordAt(reading.at) ?? "") && wordAt(reading.at + 1) !== undefined) reading.at++;
}

// 50 x 100 ft, 50 ft by 100 ft, 14 rows × 160 ft, 3 times 100 ft; in Spanish, too.
const TIMES = ["×", "*", "by", "por", "times", "veces"];
const ROWS = ["row", "rows", "bed", "beds", "hilera", "hileras", "surco", "surcos", "cama", "camas"];

/** Refuses two numbers where one is asked for, such as the two sides of a plot; after a number, or after its `unit`. */
function refuseProduct({ tokens, at, text, dimensions }: QuantityReading, unit?: SimpleUnit): void {
  const [first, second] = tokens.slice(at);
  const word = first?.key as string;
  const isProduct = ROWS.includes(word)
    ? unit === undefined && (word.endsWith("s") || tokens.slice(at).some(({ kind }) => kind === "number"))
    : TIMES.includes(word) && second?.kind === "number";
  // 5 mL por 100 L is a rate.
  if (!isProduct || (word === "por" && unit !== undefined && dimensionOf(unit) !== "length")) return;
  const { key, template } =
    dimensions.length > 1 ? ONE_AMOUNT : (ONE_OF[dimensions[0] as Dimension] ?? ONE_AMOUNT);
  throw refusal("unreadable", key, "text", template, { given: shown(text.trim()) });
}

const ONE_AMOUNT: Question = { key: "not-a-product", template: "Enter one amount, not {given}." };

const ONE_OF: Partial<Record<Dimension, Question>> = {
  length: {
    key: "not-two-lengths",
    template: "Enter one length, not {given}. Each side, and the number of rows, has its own field.",
  },
  area: {
    key: "not-two-sides",
    template: "Enter one area, not {given}. Multiply the sides, or enter a rectangle's length and width.",
  },
};

/** 160 ft 6: the last number is most likely in the next smaller unit. */
function lastUnitMissing(text: string, before: Quantity, example: Quantity): SprayMathError {
  if (example.unit === before.unit) return incomplete(oneAmount(before));
  return incomplete({
    key: "last-unit-not-typed",
    advice: "Add the unit of the last number, such as {text} {example.typed}.",
    figures: { text, example },
  });
}

/** What was typed as the number of an example; no rate is 0. English messages say 1.5, which can't be typed where a comma is the decimal sign. */
function forExample(value: number, { signs, example }: QuantityReading): number {
  if (value === 0 && example.unit.includes("/")) return example.value;
  return Number.isInteger(value) || signs.decimal === "." ? value : example.value;
}

// 2 1, 2 1/ and 1/ on the way to 2 1/2 and 1/2
function refuseUnfinishedFraction({ tokens, at }: Reading): void {
  const rest = tokens.slice(at).map(({ key, numeral }) => (numeral?.plain ? "1" : key));
  if (["1", "1/", "/"].includes(rest.join("")))
    throw incomplete({ key: "number-unfinished", advice: "Finish the number." });
}

// 5, 1/2, 2 1/2, 2-1/2, 1,000 1/2
function readAmount(reading: Reading, advice: Advice): number {
  const start = reading.tokens[reading.at]?.start as number;
  const first = readNumeral(reading, advice);
  const fraction = first.plain ? takesFraction(reading, first) : undefined;
  if (fraction !== undefined) {
    askForSpace(fraction);
    return fraction.part / fraction.whole;
  }
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
  if (first.plain) refuseSpaced(reading, start);
  return value;
}

// 10 400 m2, where the locale groups digits with another sign.
const SPACED = /^\d{1,3}(?: \d{3}(?![\d/]))+(?:[.,]\d+)?/;

function refuseSpaced({ text, signs }: Reading, start: number): void {
  const [spaced] = SPACED.exec(text.slice(start)) ?? [];
  if (spaced === undefined) return;
  const digits = spaced.replaceAll(" ", "");
  throw refusal(
    "ambiguous-number",
    "number-with-space",
    "text",
    "Is {given} one number? Write it without the space: {meant}.",
    { given: shown(spaced), meant: meantNumber(digits, signs) ?? digits },
  );
}

function readNumeral(reading: Reading, advice: Advice): Numeral {
  const next = reading.tokens[reading.at];
  if (next?.numeral !== undefined) {
    reading.at++;
    return next.numeral;
  }
  // Nothing yet, or a sign that a number may follow.
  if (next === undefined) throw incomplete(advice);
  throw unreadable(reading.text.slice(next.start), advice);
}

function takesFraction(reading: Reading, part: Numeral): { part: number; whole: number } | undefined {
  const whole = reading.tokens[reading.at + 1]?.numeral;
  if (reading.tokens[reading.at]?.key !== "/" || !whole?.plain || Number(whole.text) === 0) return undefined;
  // Somebody who writes 8/100 gal has most likely left out a unit: 8 of what in 100 gallons?
  if (whole.text === "100" || whole.text === "1000")
    throw unreadable(`${part.text}/${whole.text}`, {
      key: "unit-before-stroke",
      advice: "Write what it is {part} of, such as {part} fl oz/{whole} gal, or use a decimal.",
      figures: { part: part.text, whole: whole.text },
    });
  reading.at += 2;
  return { part: Number(part.text), whole: Number(whole.text) };
}

// In 11/2 a space was lost, or it is eleven halves.
function askForSpace({ part, whole }: { readonly part: number; readonly whole: number }): void {
  if (part < whole) return;
  const digits = String(part);
  for (let cut = digits.length - 1; cut > 0; cut--) {
    const over = Number(digits.slice(cut));
    if (digits[cut] === "0" || over >= whole) continue;
    throw refusal(
      "ambiguous-number",
      "space-lost",
      "text",
      "Is {given} meant as {mixed} or as {decimal}? Write the one you mean.",
      {
        given: `${part}/${whole}`,
        mixed: `${digits.slice(0, cut)} ${over}/${whole}`,
        // To be typed as it is, so in more digits than messages have.
        decimal: String(Number((part / whole).toPrecision(6))),
      },
    );
  }
}

function checkedValue({ signs }: Reading, numeral: Numeral): number {
  const { decimal } = signs;
  if (numeral.value === undefined) {
    const meant = meantNumber(numeral.text, signs);
    throw unreadable(
      numeral.text,
      meant === undefined
        ? { key: "number-signs", advice: "Check the signs between its digits." }
        : {
            key: "decimal-sign",
            advice: "Use {sign.sign} for decimals: {meant}.",
            figures: { sign: decimal, meant },
          },
    );
  }
  // Whoever groups digits with the sign that is for decimals here means a thousand times as much.
  const [whole = "", decimals] = numeral.text.split(decimal);
  if (decimals === "000" && /^[1-9]\d{0,2}$/.test(whole))
    throw refusal(
      "ambiguous-number",
      "thousands",
      "text",
      "Is {given} meant as {small} or as {large}? Write the one you mean.",
      { given: numeral.text, small: whole, large: `${whole}${signs.group}000` },
    );
  return numeral.value;
}

// 100 row feet, 100 linear feet, and 100 feet of row.
const ROW_WORDS = ["row", "linear"];
const ROW_ENDINGS = ["row", "of row", "of rows", "of the row"];

/** What stands under the stroke: gal, 100 gal, 1,000 sq ft. */
function readUnder(reading: QuantityReading, over: SimpleUnit): SimpleUnit {
  const start = reading.tokens[reading.at]?.start;
  const count = readCount(reading);
  if (count > 1 && reading.at === reading.tokens.length) {
    const { area, volume } = unitsIn(reading.system);
    throw incomplete({
      key: "per-unit-not-typed",
      advice: 'Add the unit after {given}, such as "{area.unit}" or "{volume.unit}".',
      figures: { given: count, area: { value: count, unit: area }, volume: { value: count, unit: volume } },
    });
  }
  const ofRow = ROW_WORDS.some((word) => takes(reading, word));
  const read = readUnit(reading, over);
  const of = ofRow ? read : squared(read, reading);
  // A row has no area and no volume.
  if (ofRow && dimensionOf(of) !== "length")
    throw unreadable(
      reading.text.slice(start, reading.tokens[reading.at - 1]?.end),
      oneAmount(reading.example),
    );
  const unit = multiple(count, of);
  if (unit !== undefined) return unit;
  throw refusal("unknown-unit", "per-several", "text", "Enter the amount for {one}, not for {given}.", {
    one: { value: 1, unit: of },
    given: { value: count, unit: of },
  });
}

// per thousand sq ft, por mil pies cuadrados
const COUNTS: Readonly<Record<string, number>> = {
  thousand: 1000,
  mil: 1000,
  k: 1000,
  hundred: 100,
  cien: 100,
};

// 100, one hundred, 1K
function readCount(reading: QuantityReading): number {
  const isNumber = nextIs(reading, "number");
  const number = isNumber ? readAmount(reading, oneAmount(reading.example)) : 1;
  if (!isNumber) takes(reading, "one");
  const [word, next] = reading.tokens.slice(reading.at);
  // "k m2" is 1,000 square meters or a square kilometer.
  const isUnclear = word?.key === "k" && knownSpellings().has(`k${next?.key}`);
  const times = isUnclear ? undefined : Object.keys(COUNTS).find((one) => takes(reading, one));
  return times === undefined ? number : number * (COUNTS[times] as number);
}

/** 1,000 ft 2 and 1,000 ft sq are square feet. */
function squared(unit: SimpleUnit, reading: Reading): SimpleUnit {
  const square = `${unit}2`;
  const isSquare = isUnit(square) && ["2", "sq", "square", "squared"].some((word) => takes(reading, word));
  return isSquare ? (square as SimpleUnit) : unit;
}

function readUnit(reading: QuantityReading, over?: SimpleUnit, beside?: SimpleUnit): SimpleUnit {
  const { tokens, text, at } = reading;
  const rest = tokens.slice(at);
  const last = rest.findIndex(({ kind }) => kind !== "word");
  const words = last < 0 ? rest : rest.slice(0, last);
  for (let count = Math.min(words.length, MOST_WORDS); count > 0; count--) {
    const [first] = words as [Token];
    const meaning = knownSpellings().get(joined(words.slice(0, count)));
    if (count === 1 && Object.hasOwn(AMBIGUOUS_LETTERS, first.text))
      throw whichUnit(first.text, AMBIGUOUS_LETTERS[first.text] as Question);
    if (meaning !== undefined) {
      reading.at += count;
      return meant(meaning, text.slice(first.start, tokens[reading.at - 1]?.end), reading, over, beside);
    }
  }
  throw noUnit(reading, words, over);
}

function joined(words: readonly Token[]): string {
  return words.map((word) => word.key).join(" ");
}

function meant(
  meaning: Meaning,
  written: string,
  reading: QuantityReading,
  over: SimpleUnit | undefined,
  beside: SimpleUnit | undefined,
): SimpleUnit {
  if ("unit" in meaning) return meaning.unit;
  const { system, ounce } = beside === undefined ? reading : likeUnit(beside, reading);
  const measure = meaning.bare === "oz" && ounce === "liquid" ? "fl_oz" : meaning.bare;
  if (measure === "oz") {
    if (ounce === "dry") return "oz";
    throw whichUnit(written, WHICH_OUNCE);
  }
  // Pints per "a" are pints per acre; liters per "a" and a bare "a" may go by the are.
  if (written === "a" && (over === undefined || systemOf(over) === "metric"))
    throw whichUnit(written, ACRE_OR_ARE);
  const found = BARE[measure][system];
  if ("template" in found) throw whichUnit(written, found);
  return found.unit;
}

const SYSTEMS = ["us", "imperial", "metric"] as const;

/** How a bare measure is understood after this unit: beside pounds an ounce is one of weight, beside imperial gallons a pint is imperial. */
function likeUnit(unit: SimpleUnit, { system }: QuantityReading): Pick<QuantityReading, "system" | "ounce"> {
  const named = SYSTEMS.find((one) =>
    Object.values(BARE).some((measure) => "unit" in measure[one] && measure[one].unit === unit),
  );
  return { system: named ?? system, ounce: dimensionOf(unit) === "volume" ? "liquid" : "dry" };
}

function whichUnit(written: string, { key, template }: Question): SprayMathError {
  return refusal("ambiguous-unit", key, "text", template, { given: shown(written) });
}

// What holds more or less from one to the next, in English and Spanish. A cap is no cup.
const NO_SIZE =
  /^(?:cap|scoop|tank|backpack|load|handful|tap(?:a|ón|on)|bomba|tanque|mochila|puñado)(?:s|es|ful|fuls)?$/iu;

function noUnit(
  reading: QuantityReading,
  words: readonly Token[],
  over: SimpleUnit | undefined,
): SprayMathError {
  refuseRange(reading);
  const { text, tokens, at, example } = reading;
  const per = words.findIndex(({ key }) => key === "per");
  const named = per < 0 ? words : words.slice(0, per);
  const [first] = named;
  const isLast = at + named.length === tokens.length;
  if (first === undefined) {
    refuseUnfinishedFraction(reading);
    const next = tokens[at];
    if (isLast)
      return incomplete({
        key: "unit-not-typed",
        advice: "Add the unit that was measured or that the label gives, such as {example.typed}.",
        figures: { example },
      });
    if (next?.key === "/" || next?.key === "per")
      return unreadable(text.slice(0, next.start), {
        key: "unit-after-number",
        advice: "Write a unit after the number, such as {example.typed}.",
        figures: { example },
      });
    return unreadable(text.slice(next?.start), oneAmount(example));
  }
  const written = text.slice(first.start, named.at(-1)?.end);
  const spellings = [...knownSpellings().keys()];
  const typed = joined(named);
  if (isLast && [...spellings, ...ROW_WORDS].some((spelling) => spelling.startsWith(typed)))
    return unitUnfinished(written);
  if (NO_SIZE.test(written))
    return refusal(
      "unknown-unit",
      "no-one-size",
      "text",
      "There is no one size of {given}. Measure what it holds, and enter that.",
      { given: shown(written) },
    );
  const [meant, other] = nearestSigns(
    written.slice(0, 40),
    slippedNames(typed, spellings).filter((spelling) => canStand(meaningOf(spelling), over, reading)),
  );
  const given = shown(written);
  if (meant !== undefined && other !== undefined)
    return unknown({
      key: "unit-either",
      template: 'The unit {given} isn\'t known here. Write "{meant}" or "{other}", whichever was measured.',
      figures: { given, meant, other },
    });
  return meant === undefined && over !== undefined
    ? unknownPer(given, reading)
    : unknown(unknownUnitOr(given, meant, descriptionOf(example.unit).symbol));
}

// What rates are given per, by what that measures: in US units, and in others.
const PER: Partial<Record<Dimension, readonly (readonly [Unit, Unit])[]>> = {
  area: [
    ["ac", "1000ft2"],
    ["ha", "100m2"],
  ],
  volume: [
    ["gal", "100gal"],
    ["L", "100L"],
  ],
  length: [
    ["100ft", "1000ft"],
    ["100m", "1000m"],
  ],
  count: [["plant", "1000plant"]],
  time: [["min", "h"]],
  mass: [["lb", "kg"]],
};

/** The error for what can't stand under a stroke. It offers no other rate: the number would stay, and be another amount. */
function unknownPer(given: string, { example, system }: QuantityReading): SprayMathError {
  const [, per] = example.unit.split("/");
  const pers = per === undefined ? undefined : PER[dimensionOf(per as Unit)];
  const those = system === "us" ? pers?.[0] : pers?.at(-1);
  if (those === undefined)
    return unknown(unknownUnitOr(given, undefined, descriptionOf(example.unit).symbol));
  const [one, other] = those.map((unit) => ({ value: 1, unit })) as [Quantity, Quantity];
  return unknown({
    key: "per-unit-unknown",
    template: "The unit {given} isn't known here. Write how much that is per {one.unit} or per {other.unit}.",
    figures: { given, one, other },
  });
}

/**
 * Those of all the names that a text may be with a slip in it. What stands before a name is no slip: K sq ft and Cft are a number of
 * them, and hPa isn't kPa.
 */
function slippedNames(text: string, names: readonly string[]): readonly string[] {
  const rest = text.slice(1);
  if (names.includes(text)) return [text];
  if (/^[a-z] /i.test(text) || names.includes(rest)) return [];
  return names.filter((name) => name[0] === text[0] && editsBetween(rest, name) >= editsBetween(text, name));
}

function unitUnfinished(written: string): SprayMathError {
  return incomplete({
    key: "unit-unfinished",
    advice: "Finish the unit {given}.",
    figures: { given: shown(written) },
  });
}

/** The sign of the unit that is spelled most like a text, and that of another one that is as near; neither where none is near. */
function nearestSigns(text: string, spellings: readonly string[]): readonly string[] {
  const guess = nearest(text, spellings);
  if (guess === undefined) return [];
  const edits = editsBetween(text, guess);
  const alike = spellings.filter((spelling) => editsBetween(text, spelling) === edits);
  return [...new Set([guess, ...alike].map((spelling) => signOf(meaningOf(spelling))))];
}

function meaningOf(spelling: string): Meaning {
  return knownSpellings().get(spelling) as Meaning;
}

/** Whether what a spelling means can stand here: over the stroke or under it, where the place says what it takes. */
function canStand(
  meaning: Meaning,
  over: SimpleUnit | undefined,
  { dimensions }: Pick<QuantityReading, "dimensions">,
): boolean {
  if (dimensions.length === 0) return true;
  const simple = simpleDimension(meaning);
  return dimensions.some((dimension) => {
    const parts = COMPOUNDS[dimension as keyof typeof COMPOUNDS];
    if (parts === undefined) return over === undefined && dimension === simple;
    return over === undefined
      ? parts.over === simple
      : parts.over === dimensionOf(over) && parts.per === simple;
  });
}

function simpleDimension(meaning: Meaning): Dimension {
  if ("unit" in meaning) return dimensionOf(meaning.unit);
  return meaning.bare === "a" ? "area" : meaning.bare === "oz" ? "mass" : "volume";
}

/** The sign of what a spelling means: it is the same in every language, and its name is not. */
function signOf(meaning: Meaning): string {
  return "unit" in meaning ? descriptionOf(meaning.unit).symbol : meaning.bare.replace("_", " ");
}

function unknown({ key, template, figures }: Sentence): SprayMathError {
  return refusal("unknown-unit", key, "text", template, figures);
}

function readPer(reading: QuantityReading, { value, unit: over }: Quantity<SimpleUnit>): Unit {
  const start = reading.tokens[reading.at - 1]?.end;
  const inWords = takesPer(reading);
  if (!inWords && !takes(reading, "/")) return over;
  const ofPlace = reading.dimensions.length > 0 ? reading.example.unit : unitsIn(reading.system).volumeRate;
  const meant = ratePer(over, reading);
  reading.example =
    meant === undefined
      ? { value: USUAL_NUMBER, unit: ofPlace }
      : { value: forExample(value, reading), unit: meant };
  const unit = shortUnit(`${over}/${readUnder(reading, over)}`, inWords, reading.dimensions);
  if (isUnit(unit)) {
    passRow(reading, unit);
    return unit;
  }
  const written = reading.text.slice(start, reading.tokens[reading.at - 1]?.end);
  throw unknownPer(shown(descriptionOf(over).symbol + written), reading);
}

// What people say for "per": 2 tbsp in a gallon, 2 fl oz for 1,000 sq ft. The longer ones come first.
const FOR_PER: readonly (readonly string[])[] = [
  ...["for each", "for every", "for a", "for an", "in a", "in an", "por cada"],
  ...["for", "in", "each", "every", "por", "a", "an"],
].map((words) => words.split(" "));

/** Passes over what says "per". All but the word itself need something behind them. */
function takesPer(reading: Reading): boolean {
  if (takes(reading, "per")) return true;
  const { tokens, at } = reading;
  // Most texts are at their end, or at a stroke.
  if (!nextIs(reading, "word")) return false;
  const said = FOR_PER.find((words) => {
    const next = tokens[at + words.length];
    // An inch isn't followed by a number.
    const isNext =
      next?.kind === "number" || (next?.kind === "word" && words[0] !== "in") || words.length > 1;
    return isNext && next !== undefined && words.every((word, i) => tokens[at + i]?.key === word);
  });
  reading.at += said?.length ?? 0;
  return said !== undefined;
}

// 4 oz per 1,000 ft of row
function passRow(reading: Reading, unit: Unit): void {
  if (!isPerLength(unit)) return;
  const rest = joined(reading.tokens.slice(reading.at));
  if (ROW_ENDINGS.includes(rest)) reading.at = reading.tokens.length;
}

function isPerLength(unit: Unit): boolean {
  return /PerLength$/.test(dimensionOf(unit));
}

/** A compound with this unit over the stroke, such as the place takes or as rates are given in; nothing where there is none. */
function ratePer(over: Unit, { dimensions, system, example }: QuantityReading): Unit | undefined {
  const [, per = unitsIn(system).landArea] = example.unit.split("/");
  const unit = `${over}/${per}`;
  if (!isUnit(unit)) return undefined;
  return dimensions.length === 0 || dimensions.includes(dimensionOf(unit)) ? unit : undefined;
}

// In words, "miles per hour" is mph and "pounds per square inch" the pressure; with a stroke they are what they say.
function shortUnit(unit: string, inWords: boolean, dimensions: readonly Dimension[]): string {
  if (unit === "mi/h" && inWords) return "mph";
  const asPressure = dimensions.includes("pressure") || (inWords && !dimensions.includes("massRate"));
  return unit === "lb/in2" && asPressure ? "psi" : unit;
}

function readBasis(reading: Reading, unit: Unit): FractionBasis | undefined {
  if (dimensionOf(unit) !== "fraction") return undefined;
  const [first, second] = reading.tokens.slice(reading.at);
  if (first?.kind === "basis") {
    if (first.key === "v/w")
      throw unreadable(first.text, {
        key: "no-such-basis",
        advice: "Write v/v (by volume), w/v (weight in volume) or w/w (by weight).",
      });
    reading.at++;
    return first.key as FractionBasis;
  }
  if (first?.key !== "by" || (second?.key !== "volume" && second?.key !== "weight")) return undefined;
  reading.at += 2;
  return second.key === "volume" ? "v/v" : "w/w";
}
