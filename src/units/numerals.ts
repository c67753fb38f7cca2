import { type Sentence, shown } from "../errors.js";
import { intl } from "./engine.js";
import { refusal } from "./message.js";

// An app uses a few locales and widths; whatever it asks for, the cache does not grow beyond this.
const MOST_CACHED = 64;

/** Looks `key` up, or makes and keeps it; a full cache is emptied first. */
export function remembered<T>(cache: Map<string, T>, key: string, make: () => T): T {
  const known = cache.get(key);
  if (known !== undefined) return known;
  if (cache.size >= MOST_CACHED) cache.clear();
  const fresh = make();
  cache.set(key, fresh);
  return fresh;
}

const formats = new Map<string, Intl.NumberFormat>();

/** How many number formats are held at the moment. */
export function cachedFormats(): number {
  return formats.size;
}

/** The locale's way to write numbers with so many significant digits, or whole ones. */
export function numberFormat(locale: string, digits: number | "whole"): Intl.NumberFormat {
  return remembered(formats, `${locale} ${digits}`, () =>
    makeFormat(
      locale,
      digits === "whole" ? { maximumFractionDigits: 0 } : { maximumSignificantDigits: digits },
    ),
  );
}

function makeFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  if (isLocale(locale)) return new (intl("NumberFormat"))(locale, options);
  const { key, template, figures } = unknownLocale(locale);
  throw refusal("unknown-choice", key, "options.locale", template, figures);
}

const locales = new Map<string, boolean>();

/**
 * Whether the engine knows how a language writes numbers. For a tag that it doesn't know it takes the computer's own language:
 * "1,500" would be read as 1500 on one and as 1.5 on another.
 */
export function isLocale(locale: unknown): boolean {
  if (typeof locale !== "string") return false;
  return remembered(locales, locale, () => isTag(locale, 1));
}

/** Whether a text is a language tag; of at least so many languages that the engine knows. */
export function isTag(text: string, known = 0): boolean {
  const Format = intl("NumberFormat");
  try {
    return Format.supportedLocalesOf(text).length >= known;
  } catch {
    return false;
  }
}

/** The fault of what is no language tag. */
export function unknownLocale(locale: unknown): Sentence {
  return {
    key: "locale-unknown",
    template: 'The language {given} isn\'t known here. Use a tag such as "en-US" or "de".',
    figures: { given: shown(locale) },
  };
}

const gaps = new Map<string, string>();

/** What a locale puts between a number and a percent sign after it: nothing, or a space. */
export function percentGap(locale: string): string {
  return remembered(gaps, locale, () => {
    const parts = makeFormat(locale, { style: "percent" }).formatToParts(1);
    return parts.some(({ type, value }) => type === "literal" && /^\s$/.test(value)) ? "\u00a0" : "";
  });
}

/** The signs that a locale writes numbers with. */
export interface NumeralSigns {
  /** The locale they belong to. */
  readonly locale: string;
  /** The sign before the decimals. */
  readonly decimal: string;
  /** The sign between groups of digits; a plain space stands for every kind of space, `'` for every apostrophe. */
  readonly group: string;
  /** How many digits the last group has. */
  readonly lastGroup: number;
  /** How many digits the groups before it have: 3, or 2 in India. */
  readonly otherGroups: number;
  /** The ten digits from 0 to 9. */
  readonly digits: readonly string[];
}

const signs = new Map<string, NumeralSigns>();

/** Learns from `Intl` how a locale writes numbers. */
export function numeralSigns(locale: string): NumeralSigns {
  return remembered(signs, locale, () => {
    const parts = makeFormat(locale, {}).formatToParts(1234567890.5);
    const first = (type: string): string => parts.find((part) => part.type === type)?.value ?? "";
    const groups = parts.filter((part) => part.type === "integer").map((part) => part.value.length);
    const plain = makeFormat(locale, { useGrouping: false, minimumIntegerDigits: 10 });
    return {
      locale,
      decimal: first("decimal"),
      group: plainSign(first("group")),
      lastGroup: groups.at(-1) ?? 3,
      otherGroups: groups.at(-2) ?? 3,
      digits: [...plain.format(123456789)],
    };
  });
}

/** One sign for every kind of space, and one for every apostrophe. */
function plainSign(sign: string): string {
  if (/^\s$/.test(sign)) return " ";
  return sign === "’" ? "'" : sign;
}

/** A number as it stands in a text. */
export interface Numeral {
  /** As it was written. */
  readonly text: string;
  /** The number; undefined where the signs in it do not make one in this locale. */
  readonly value: number | undefined;
  /** Whether it is digits and nothing else, so that it may be a part of a fraction. */
  readonly plain: boolean;
  /** Whether it has no decimals, so that a fraction may follow it. */
  readonly whole: boolean;
}

/**
 * The number that begins at `start`, or undefined where none does. Both `.` and `,` belong to the number whatever the
 * locale, so that `1,5` is never cut into 1 and something else.
 */
export function numeralAt(text: string, start: number, known: NumeralSigns): Numeral | undefined {
  let end = start;
  while (
    isDigit(text[end]) ||
    (isSign(text[end], known) && isDigit(text[end + 1]) && joins(text, end, known))
  ) {
    end++;
  }
  if (end === start) return undefined;
  const written = text.slice(start, end);
  return {
    text: written,
    value: numberIn(written, known),
    plain: /^\d+$/.test(written),
    whole: !written.includes(known.decimal),
  };
}

function isDigit(sign: string | undefined): boolean {
  return sign !== undefined && sign >= "0" && sign <= "9";
}

function isSign(sign: string | undefined, { decimal, group }: NumeralSigns): boolean {
  return sign === "." || sign === "," || sign === decimal || sign === group;
}

// A space or an apostrophe also stands between two numbers (2 1/2, 3'6"), so it joins only a full group to a digit.
function joins(text: string, at: number, { group, lastGroup }: NumeralSigns): boolean {
  const sign = text[at];
  if (sign !== group || (sign !== " " && sign !== "'")) return true;
  let end = at + 1;
  while (isDigit(text[end])) end++;
  return isDigit(text[at - 1]) && end - at - 1 === lastGroup;
}

function numberIn(
  written: string,
  { decimal, group, lastGroup, otherGroups }: NumeralSigns,
): number | undefined {
  const [whole = "", decimals = "", ...rest] = written.split(decimal);
  if (rest.length > 0 || /\D/.test(decimals)) return undefined;
  const groups = whole.split(group);
  if (groups.some((digits) => /\D/.test(digits))) return undefined;
  if (groups.length > 1) {
    const [first = "", ...later] = groups;
    const last = later.pop();
    const rightGroups =
      /^[1-9]/.test(first) &&
      first.length <= otherGroups &&
      last?.length === lastGroup &&
      later.every((digits) => digits.length === otherGroups);
    if (!rightGroups) return undefined;
  }
  return Number(`${groups.join("") || "0"}.${decimals || "0"}`);
}

/** The number that was probably meant, where its one point or comma that is wrong here stands before decimals. */
export function meantNumber(written: string, { decimal }: NumeralSigns): string | undefined {
  const at = written.search(/\D\d*$/);
  const sign = written[at];
  if (sign === undefined || sign === decimal || written.indexOf(sign) !== at) return undefined;
  const whole = written.slice(0, at).replace(/\D/g, "") || "0";
  return `${whole}${decimal}${written.slice(at + 1)}`;
}
