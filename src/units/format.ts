import { checked } from "./check.js";
import { decided, floorDecided } from "./decide.js";
import { descriptionOf } from "./describe.js";
import { decimal } from "./exact.js";
import { choice, count, type ObjectField, object, optional } from "./fields.js";
import { locale } from "./locale-field.js";
import type { Marked } from "./marks.js";
import { multipleOf, multipliedOut } from "./multiples.js";
import { numberFormat, percentGap } from "./numerals.js";
import { anyQuantity } from "./quantity-field.js";
import { resolveUnit } from "./resolve.js";
import type { Quantity, Unit } from "./types.js";

/** The denominators that {@link formatQuantity} rounds to. */
export type LargestDenominator = 2 | 3 | 4 | 8 | 16 | 32 | 64;

/** How {@link formatQuantity} is to write. */
export interface FormatOptions {
  /** Whose decimal and group signs the numbers have, as a language tag; `en-US` unless given. Unit names stay English. */
  readonly locale?: string | undefined;
  /** How many significant digits, from 1 to 17; 4 unless given. */
  readonly digits?: number | undefined;
  /** Write a fraction instead of decimals: the nearest one with this denominator, cut down (4/8 is 1/2). 3 gives thirds. */
  readonly fraction?: LargestDenominator | undefined;
  /** `down` where what is printed must not be more than the amount, as for a dose; `nearest` unless given. */
  readonly rounding?: "nearest" | "down" | undefined;
  /** `symbol` for `2 gal/ac`, `name` for `2 gallons per acre`; `symbol` unless given. */
  readonly unitStyle?: "symbol" | "name" | undefined;
}

const OPTIONS: ObjectField<FormatOptions> = object<FormatOptions>({
  locale: optional(
    locale(
      "Whose decimal and group signs the numbers have, as a language tag; `en-US` unless given. Unit names stay English.",
    ),
  ),
  digits: optional(count("How many significant digits, from 1 to 17; 4 unless given.", 1, 17)),
  fraction: optional(
    choice(
      "Write a fraction instead of decimals: the nearest one with this denominator, cut down (4/8 is 1/2). 3 gives thirds.",
      [2, 3, 4, 8, 16, 32, 64],
    ),
  ),
  rounding: optional(
    choice(
      "`down` where what is printed must not be more than the amount, as for a dose; `nearest` unless given.",
      ["nearest", "down"],
    ),
  ),
  unitStyle: optional(
    choice("`symbol` for `2 gal/ac`, `name` for `2 gallons per acre`; `symbol` unless given.", [
      "symbol",
      "name",
    ]),
  ),
});

const WRITING: ObjectField<{ readonly quantity: Quantity; readonly options?: FormatOptions | undefined }> =
  object({
    quantity: anyQuantity("What is written."),
    options: optional(OPTIONS),
  });

/**
 * Writes a quantity for people to read, with the unit as the trade spells it: `12 fl oz/ac`, `2 1/2 tsp`,
 * `1.5 oz wt/1,000 sq ft`, `0.25% v/v`. What is written in symbols, `parseQuantity` with the same locale reads back.
 *
 * Rounding: to `digits` significant digits, or to the nearest fraction where `fraction` is given. Where that fraction
 * would be 0 but the amount is not, the amount is written with significant digits. With `rounding: "down"` what is printed is
 * never more than the amount, noise in the 12th digit aside (and a negative amount never less): for doses. To choose what
 * to measure a dose with, use `measureOut`.
 *
 * The name is singular where the printed number is 1, or a fraction below it (`1/2 teaspoon`). An amount of `1000ft2`,
 * `100gal` or `100L` is multiplied out: `200 gal`.
 *
 * Source: number formats by `Intl.NumberFormat` (ECMA-402); the spellings: common practice, no source.
 *
 * @param quantity - any quantity; a fraction's basis is written after it
 * @param options - see {@link FormatOptions}
 * @returns the text
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, or `unknown-choice` and `out-of-range`
 *   for an option
 *
 * @example
 * ```ts
 * import { formatQuantity, qty } from "swath-to-spoon/units";
 *
 * console.log(formatQuantity(qty(2.5, "tsp"), { fraction: 8 })); // 2 1/2 tsp
 * console.log(formatQuantity(qty(3.3876, "fl_oz"), { digits: 3, rounding: "down" })); // 3.38 fl oz
 * console.log(formatQuantity(qty(20, "gal/ac"), { unitStyle: "name" })); // 20 gallons per acre
 * console.log(formatQuantity(qty(1234.5, "L/ha"), { locale: "de-DE", digits: 5 })); // 1.234,5 L/ha
 * ```
 */
export function formatQuantity(quantity: Quantity, options?: FormatOptions): string {
  const given = checked({ quantity, options }, WRITING);
  return formatted(multipliedOut(given.quantity), given.options);
}

/** A quantity as people read it, in its own unit: 2 of `100gal` is `2 × 100 gal`, as the working needs it. Trusts its input. */
export function formatted(quantity: Marked, options: FormatOptions = {}): string {
  const { locale = "en-US", digits = 4, fraction, rounding = "nearest", unitStyle = "symbol" } = options;
  const { value, unit, basis } = quantity;
  const down = rounding === "down";
  const number =
    (fraction && asFraction(value, fraction, down, locale)) ??
    asDigits(down ? cutTo(value, digits) : value, digits, locale);
  const name = unitStyle === "name" ? nameOf(unit, number.one, locale) : symbolOf(unit, number.one, locale);
  const gap = unit === "%" && unitStyle === "symbol" ? percentGap(locale) : " ";
  return `${number.text}${gap}${name}${basis === undefined ? "" : ` ${basis}`}`;
}

/** A number as it is printed, and whether a name after it stands for one or less. */
interface Printed {
  readonly text: string;
  readonly one: boolean;
}

/** A number of so many significant digits that is no further from 0. */
function cutTo(value: number, digits: number): number {
  // More digits than decisions are made on are cut as they are.
  const exact = digits > 12 ? decimal(String(value)) : decided(value);
  return value === 0 ? 0 : exact.prec(digits, 0).toNumber();
}

function asDigits(value: number, digits: number, locale: string): Printed {
  const text = numberFormat(locale, digits).format(value + 0);
  return { text, one: Math.abs(Number(value.toPrecision(digits))) === 1 };
}

// None where it would hide an amount, or where there are no eighths left between two floats.
function asFraction(value: number, denominator: number, down: boolean, locale: string): Printed | undefined {
  const exact = Math.abs(value) * denominator;
  const parts = down ? floorDecided(exact) : Math.round(exact);
  if ((parts === 0 && value !== 0) || !Number.isSafeInteger(parts)) return undefined;
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  const signed = value < 0 ? -whole : whole;
  const wholeText = numberFormat(locale, "whole").format(signed);
  if (rest === 0) return { text: wholeText, one: whole === 1 };
  const shared = greatestDivisor(rest, denominator);
  const part = `${rest / shared}/${denominator / shared}`;
  if (whole > 0) return { text: `${wholeText} ${part}`, one: false };
  return { text: value < 0 ? `-${part}` : part, one: true };
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}

function nameOf(unit: Unit, one: boolean, locale: string): string {
  const { singular, plural } = descriptionOf(unit);
  const top = multipleOf(resolveUnit(unit).over);
  // "2 × 100 gallons": the singular of a multiple says how many.
  return localised(top === undefined ? (one ? singular : plural) : `× ${singular}`, locale);
}

function symbolOf(unit: Unit, one: boolean, locale: string): string {
  const { symbol } = descriptionOf(unit);
  if (unit === "mph") return symbol;
  const { over } = resolveUnit(unit);
  const { singular, plural, symbol: top } = descriptionOf(over);
  // A unit without a symbol is named, and one whose symbol is its name (cup) takes the plural.
  if (top === "") return one ? singular : plural;
  const inflected = top === singular && !one ? plural + symbol.slice(top.length) : symbol;
  return localised(multipleOf(over) === undefined ? inflected : `× ${inflected}`, locale);
}

// The one numeral in the table's names that is grouped.
function localised(text: string, locale: string): string {
  return text.replaceAll("1,000", numberFormat(locale, "whole").format(1000));
}
