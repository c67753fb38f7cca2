import type { Figures, QuantityFigure } from "../../errors.js";
import { descriptionOf } from "../../units/describe.js";
import { intl } from "../../units/engine.js";
import { formatQuantity, formatted } from "../../units/format.js";
import { messageOf, nameIn, type Phrasing, phrased, spoonName } from "../../units/message.js";
import { multipleOf, multipliedOut } from "../../units/multiples.js";
import { numberFormat } from "../../units/numerals.js";
import { isUnit, resolveUnit } from "../../units/resolve.js";
import type { BasedFraction, Quantity, Unit } from "../../units/types.js";
import type { Messages, PhraseWords, ToolNames } from "./messages.js";

/** Writes numbers and names for one locale, with one table of words. */
export interface Writer<M extends PhraseWords = Messages> {
  /** The table of words. */
  readonly messages: M;
  /** The numbers that somebody entered, for a sheet of a job: they are printed as they are. */
  readonly entered?: ReadonlySet<number>;
  /** Fills the places of a text, amounts as for a summary unless given the digits. */
  readonly fill: (text: string, figures: Figures, digits?: number) => string;
  /** An amount for a summary. */
  readonly short: (value: Quantity | number) => string;
  /** An amount for the field, in the three figures that a tape or a tank shows. */
  readonly three: (value: Quantity) => string;
  /** An amount whose figures are chosen already. */
  readonly exact: (value: Quantity) => string;
  /** An amount for the working, with or without a unit. */
  readonly long: (value: Quantity | number) => string;
  /** An amount with no more than so many decimals. */
  readonly decimals: (quantity: Quantity, decimals: number) => string;
  /** A whole number. */
  readonly count: (count: number) => string;
  /** A unit's sign, as for several unless given a count. */
  readonly unit: (unit: Unit, count?: number) => string;
  /** One tool, by the name that it has: `tablespoon`. */
  readonly tool: (name: string) => string;
  /** One tool that is pointed at, with its article where the table has that: `la jeringa de 5 mL`. */
  readonly theTool: (name: string) => string;
  /** So many of a tool, without the number: `tablespoons`, `fills of the 1/4 cup`. Many in general, unless a count is given. */
  readonly tools: (name: string, count?: number) => string;
}

/** What a writer is made with. */
interface Writing<M> {
  readonly locale?: string | undefined;
  readonly words?: M | undefined;
  readonly digits?: number | undefined;
}

/** The figures of a summary. */
export const SUMMARY_DIGITS = 4;
const FIELD_DIGITS = 3;
const EXACT_DIGITS = 12;

/** The writer for these options; `english` unless they have words. It has no default, which every phrase would carry along. Trusts its input. */
export function writerFor<M extends PhraseWords>(
  { locale = "en-US", words, digits = 6 }: Writing<M>,
  english: M,
): Writer<M> {
  const table = words ?? english;
  const plural = pluralsOf(table.language);
  const number = (value: number, significant: number): string =>
    numberFormat(locale, significant).format(value);
  const written = (value: Quantity | number, significant: number): string => {
    if (typeof value === "number") return number(value, significant);
    // A part of one is a bare number.
    if (value.unit === "1" && !Object.hasOwn(table.units, "1")) return number(value.value, significant);
    const name = unitName(value.unit, Number(value.value.toPrecision(significant)), table, plural, locale);
    if (name === undefined) return formatted(value, { locale, digits: significant });
    const { basis } = value as BasedFraction;
    // "2 × 100 gal" is 200 gal; "2 100 gal" would be read as 2100.
    const times = /^\d/.test(name) ? "× " : "";
    return `${number(value.value, significant)} ${times}${name}${basis === undefined ? "" : ` ${basis}`}`;
  };
  // Outside of the working, whose sums go by the unit, 2 × 100 gal is 200 gal.
  const summed = (value: Quantity | number, significant: number): string =>
    written(typeof value === "number" ? value : multipliedOut(value), significant);
  const unit = (name: Unit, count: number): string =>
    unitName(name, count, table, plural, locale) ?? descriptionOf(name).symbol;
  const names = (tool: string): ToolNames | undefined => ownText(table.tools, tool);
  const phrasing = (significant: number): Phrasing => ({
    number: (value) => number(value, significant),
    quantity: (figure) => {
      const spoon = spoonName(figure);
      if (spoon !== undefined) return names(spoon)?.one ?? spoon;
      return isQuantity(figure)
        ? summed(figure, significant)
        : `${number(figure.value, significant)} ${figure.unit}`;
    },
    typed: (figure) =>
      isQuantity(figure)
        ? formatQuantity(figure, { locale, digits: significant })
        : `${number(figure.value, significant)} ${figure.unit}`,
    unit: ({ value, unit: name }) => (isUnit(name) ? unit(name, value) : name),
    plural,
    name: (list, key) => (list === "tool" ? names(key)?.one : nameIn(table.names)(list, key)),
    oneOf: (names) =>
      new (intl("ListFormat"))(orEnglish(table.language), { type: "disjunction" }).format(names),
  });
  return {
    messages: table,
    fill: (text, figures, significant = SUMMARY_DIGITS) => phrased(text, figures, phrasing(significant)),
    short: (value) => summed(value, SUMMARY_DIGITS),
    three: (value) => summed(value, FIELD_DIGITS),
    exact: (value) => written(value, EXACT_DIGITS),
    long: (value) => written(value, digits),
    decimals: ({ value, unit: name }, decimals) => {
      // As many significant digits as the fixed decimals come to.
      const whole = Math.max(1, Math.floor(Math.log10(Math.abs(value) || 1)) + 1);
      return written({ value, unit: name }, Math.min(17, whole + decimals));
    },
    count: (count) => numberFormat(locale, "whole").format(count),
    unit: (name, count = MANY) => unit(name, count),
    tool: (tool) => names(tool)?.one ?? tool,
    theTool: (tool) => names(tool)?.the ?? names(tool)?.one ?? tool,
    tools: (tool, count = MANY) => {
      const known = names(tool);
      return known === undefined ? filled(table.text.fillsOf, { tool }) : formOf(known, plural(count));
    },
  };
}

// A count that every language has its plural for.
const MANY = 100;

/** Languages to write by: English for one that the engine doesn't know, and not the computer's own. */
export function orEnglish(language: string): string[] {
  return [language, "en"];
}

/** The plural forms of a language; its rules are looked up where there is a count. */
function pluralsOf(language: string): (count: number) => Intl.LDMLPluralRule {
  let rules: Intl.PluralRules | undefined;
  return (count) => {
    rules ??= new (intl("PluralRules"))(orEnglish(language));
    return rules.select(count);
  };
}

function formOf(names: string | ToolNames, form: Intl.LDMLPluralRule): string {
  return typeof names === "string" ? names : (names[form] ?? names.other);
}

/** What the table calls so many of a unit, a compound by its parts; nothing where it has no words for it. */
function unitName(
  unit: Unit,
  count: number,
  table: PhraseWords,
  plural: (count: number) => Intl.LDMLPluralRule,
  locale: string,
): string | undefined {
  const own = ownText(table.units, unit);
  if (own !== undefined) return formOf(own, plural(count));
  const named = (part: Unit, times: number): string | undefined =>
    unitName(part, times, table, plural, locale);
  const multiple = multipleOf(unit);
  if (multiple !== undefined && !unit.includes("/")) {
    const of = named(multiple.of, multiple.count);
    return of && `${numberFormat(locale, "whole").format(multiple.count)} ${of}`;
  }
  const { over, per } = resolveUnit(unit);
  if (per === undefined || unit === "mph") return undefined;
  const [top, bottom] = [named(over, count), named(per, 1)];
  if (top === undefined && bottom === undefined) return undefined;
  return `${top ?? descriptionOf(over).symbol}/${bottom ?? descriptionOf(per).symbol}`;
}

/** Whether a figure has a unit of the library, and not one of an app's own. */
function isQuantity(figure: QuantityFigure): figure is Quantity {
  return isUnit(figure.unit);
}

/** The table's own entry for a name; none for what only `Object` has, such as `constructor`. */
export function ownText<T>(table: Readonly<Partial<Record<string, T>>>, name: string): T | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}

/** Fills the places of a text with texts: `{count}` with `count`. */
export function filled(text: string, values: Readonly<Record<string, string>>): string {
  return messageOf(text, values);
}
