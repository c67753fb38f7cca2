import type { WarningCode } from "../../plan/warnings.js";
import { describeUnit } from "../../units/describe.js";
import { formatQuantity } from "../../units/format.js";
import { checkedCount, checkedNumber, checkedObject } from "../../units/guard.js";
import { numberFormat } from "../../units/numerals.js";
import type { Quantity, Unit } from "../../units/types.js";
import { ENGLISH } from "./english.js";
import type { Messages } from "./messages.js";

/** Whose numbers and whose words a sheet is written in. */
export interface WritingOptions {
  /** Whose numbers are printed, as a language tag; `en-US` unless given. */
  readonly locale?: string;
  /** Every word of the sheet; English unless given. */
  readonly messages?: Messages;
  /** The significant digits of the working, 3 to 12; 6 unless given. */
  readonly digits?: number;
}

/** Writes numbers and names for one locale, with one table of words. */
export interface Writer {
  /** The table of words. */
  readonly messages: Messages;
  /** An amount for a summary. */
  readonly short: (value: Quantity | number) => string;
  /** An amount for the working, with or without a unit. */
  readonly long: (value: Quantity | number) => string;
  /** An amount to a number of significant digits. */
  readonly rough: (quantity: Quantity, digits: number) => string;
  /** An amount with no more than so many decimals. */
  readonly decimals: (quantity: Quantity, decimals: number) => string;
  /** A whole number. */
  readonly count: (count: number) => string;
  /** A unit's sign. */
  readonly unit: (unit: Unit) => string;
  /** A tool's name. */
  readonly tool: (name: string) => string;
}

const SUMMARY_DIGITS = 4;

/** The writer for these options, checked. */
export function writerFor(options: WritingOptions): Writer {
  const { locale = "en-US", messages = ENGLISH, digits = 6 } = checkedObject(options, "options");
  checkedNumber(checkedCount(digits, "options.digits", 3), "options.digits", { max: 12 });
  checkedObject(messages, "options.messages");
  const written = (value: Quantity | number, significant: number): string => {
    if (typeof value === "number") return numberFormat(locale, significant).format(value);
    const unit = ownName(messages.units, value.unit);
    // A part of one is a bare number.
    if (unit === undefined && value.unit === "1") return written(value.value, significant);
    if (unit === undefined) return formatQuantity(value, { locale, digits: significant });
    return `${numberFormat(locale, significant).format(value.value)} ${unit}`;
  };
  return {
    messages,
    short: (value) => written(value, SUMMARY_DIGITS),
    long: (value) => written(value, digits),
    rough: written,
    decimals: ({ value, unit }, decimals) => {
      // As many significant digits as the fixed decimals come to.
      const whole = Math.max(1, Math.floor(Math.log10(Math.abs(value) || 1)) + 1);
      return written({ value, unit }, Math.min(17, whole + decimals));
    },
    count: (count) => numberFormat(locale, "whole").format(count),
    unit: (unit) => ownName(messages.units, unit) ?? describeUnit(unit).symbol,
    tool: (name) => ownName(messages.tools, name) ?? name,
  };
}

/** The table's own text for a name; none for what only `Object` has, such as `constructor`. */
export function ownName(
  table: Readonly<Partial<Record<string | WarningCode, string>>>,
  name: string,
): string | undefined {
  return Object.hasOwn(table, name) ? table[name] : undefined;
}
