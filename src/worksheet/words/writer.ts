import { describeUnit } from "../../units/describe.js";
import { formatQuantity } from "../../units/format.js";
import { messageOf } from "../../units/message.js";
import { numberFormat } from "../../units/numerals.js";
import type { Quantity, Unit } from "../../units/types.js";
import type { WritingOptions } from "../options.js";
import { ENGLISH_WORDS } from "./english.js";
import type { Messages, ToolNames } from "./messages.js";

/** Writes numbers and names for one locale, with one table of words. */
export interface Writer<M extends Messages = Messages> {
  /** The table of words. */
  readonly messages: M;
  /** An amount for a summary. */
  readonly short: (value: Quantity | number) => string;
  /** An amount for the working, with or without a unit. */
  readonly long: (value: Quantity | number) => string;
  /** An amount to a number of significant digits. */
  readonly rough: (quantity: Quantity | number, digits: number) => string;
  /** An amount with no more than so many decimals. */
  readonly decimals: (quantity: Quantity, decimals: number) => string;
  /** A whole number. */
  readonly count: (count: number) => string;
  /** A unit's sign. */
  readonly unit: (unit: Unit) => string;
  /** One tool, by the name that it has: `tablespoon`. */
  readonly tool: (name: string) => string;
  /** So many of a tool, without the number: `tablespoons`, `fills of the 1/4 cup`. Many in general, unless a count is given. */
  readonly tools: (name: string, count?: number) => string;
}

const SUMMARY_DIGITS = 4;

/** The writer for these options. Trusts its input. */
export function writerFor<M extends Messages = Messages>(
  { locale = "en-US", messages, digits = 6 }: WritingOptions & { readonly messages?: M | undefined },
  english: M = ENGLISH_WORDS as M,
): Writer<M> {
  const table = messages ?? english;
  const written = (value: Quantity | number, significant: number): string => {
    if (typeof value === "number") return numberFormat(locale, significant).format(value);
    const unit = ownText(table.units, value.unit);
    // A part of one is a bare number.
    if (unit === undefined && value.unit === "1") return written(value.value, significant);
    if (unit === undefined) return formatQuantity(value, { locale, digits: significant });
    return `${numberFormat(locale, significant).format(value.value)} ${unit}`;
  };
  const names = (tool: string): ToolNames | undefined => ownText(table.tools, tool);
  return {
    messages: table,
    short: (value) => written(value, SUMMARY_DIGITS),
    long: (value) => written(value, digits),
    rough: written,
    decimals: ({ value, unit }, decimals) => {
      // As many significant digits as the fixed decimals come to.
      const whole = Math.max(1, Math.floor(Math.log10(Math.abs(value) || 1)) + 1);
      return written({ value, unit }, Math.min(17, whole + decimals));
    },
    count: (count) => numberFormat(locale, "whole").format(count),
    unit: (unit) => ownText(table.units, unit) ?? describeUnit(unit).symbol,
    tool: (tool) => names(tool)?.one ?? tool,
    tools: (tool, count) => {
      const known = names(tool);
      if (known === undefined) return filled(table.text.fillsOf, { tool });
      const form = count === undefined ? "other" : new Intl.PluralRules(table.language).select(count);
      return known[form] ?? known.other;
    },
  };
}

/** The table's own entry for a name; none for what only `Object` has, such as `constructor`. */
export function ownText<T>(table: Readonly<Partial<Record<string, T>>>, name: string): T | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}

/** Fills the places of a text: `{count}` with `count`. */
export function filled(text: string, values: Readonly<Record<string, string>>): string {
  return messageOf(text, values);
}
