import { type Figures, type SprayMathError, shown } from "../errors.js";
import { refusal } from "./message.js";
import { withoutAccents } from "./nearest.js";
import { type Numeral, type NumeralSigns, numeralAt } from "./numerals.js";
import { TRADE_TERMS } from "./spellings.js";

/** A piece of a text that a quantity is read from. */
export interface Token {
  /** A number, a word of letters (with `%`, `°`, `'` and `"`), a basis such as `v/v`, or another sign. */
  readonly kind: "number" | "word" | "basis" | "sign";
  /** As it was written. */
  readonly text: string;
  /** In small letters without accents: many keyboards have none. */
  readonly key: string;
  /** Where it begins and ends in the text. */
  readonly start: number;
  readonly end: number;
  /** What it says, for a number. */
  readonly numeral?: Numeral | undefined;
}

/** What to do about text that can't be read: a key, a sentence and its figures. Said alone of text that is only begun. */
export interface Advice {
  readonly key: string;
  readonly advice: string;
  readonly figures?: Figures | undefined;
}

/** The error for text that can't be read, naming the part that was stumbled on. */
export function unreadable(part: string, { key, advice, figures }: Advice): SprayMathError {
  const all = { given: shown(part.trim()), ...figures };
  return refusal("unreadable", `unread-${key}`, "text", `Couldn't read {given}. ${advice}`, all);
}

/** The error for text that is only begun. */
export function incomplete({ key, advice, figures }: Advice): SprayMathError {
  return refusal("incomplete", key, "text", advice, figures);
}

const VULGAR: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅐": "1/7",
  "⅑": "1/9",
  "⅒": "1/10",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** The same text with one sign for every kind of space, prime, stroke and minus, and with digits from 0 to 9. */
export function withPlainSigns(text: string, { digits }: NumeralSigns): string {
  return (
    text
      .normalize("NFC")
      .replace(/[\u200e\u200f\u061c]/g, "")
      .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${VULGAR[sign] ?? sign} `)
      .replace(/\p{Nd}/gu, (digit) => (digits.includes(digit) ? String(digits.indexOf(digit)) : digit))
      .replace(
        /(\p{L})\^?([²³23])/gu,
        (_, letter, power) => letter + (power === "²" ? "2" : power === "³" ? "3" : power),
      )
      .replace(/\((weight|wt|[vw]\/[vw])\)/gi, " $1 ")
      // How Spanish sheets explain them. An "área" by itself is more often a plot.
      .replace(/área(s?) \(100 m2\)/gi, "are$1")
      .replace(/\((?:16\.5|66) pies\)/gi, " ")
      .replace(/\s/g, " ")
      .replace(/[−‐‑–—]/g, "-")
      .replace(/[⁄∕]/g, "/")
      .replace(/[′’‘]/g, "'")
      .replace(/[″”“]|''/g, '"')
  );
}

const LETTER = /\p{L}/u;
const DIGIT = /\d/;
const BASIS = /[vw]\/[vw](?!\p{L})/iuy;

/** Cuts a text with plain signs into tokens, from left to right in one go; `advice` is for what belongs to none. */
export function tokensOf(text: string, signs: NumeralSigns, advice: Advice): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    if (isBreak(text, at)) {
      at++;
      continue;
    }
    const token =
      numberAt(text, at, signs) ?? basisAt(text, at) ?? wordAt(text, at) ?? signAt(text, at, advice);
    tokens.push(...spelledOut(token));
    at = token.end;
  }
  return tokens;
}

// A space, the point of an abbreviation (fl. oz.), or what stands for a space between two words (fl_oz, fl-oz).
function isBreak(text: string, at: number): boolean {
  const sign = text[at] as string;
  if (sign === " ") return true;
  if (!LETTER.test(text[at - 1] ?? "")) return false;
  if (sign === ".") return !DIGIT.test(text[at + 1] ?? "");
  return (sign === "_" || sign === "-") && LETTER.test(text[at + 1] ?? "");
}

function numberAt(text: string, start: number, signs: NumeralSigns): Token | undefined {
  const numeral = numeralAt(text, start, signs);
  if (numeral === undefined) return undefined;
  // In "ft.6" the point may end a word or begin a decimal.
  if (numeral.text.startsWith(".") && LETTER.test(text[start - 1] ?? "")) {
    throw unreadable(numeral.text, {
      key: "space-missing",
      advice: "Put a space between the unit and the next number.",
    });
  }
  const end = start + numeral.text.length;
  return { kind: "number", text: numeral.text, key: numeral.text, start, end, numeral };
}

function basisAt(text: string, start: number): Token | undefined {
  BASIS.lastIndex = start;
  const match = BASIS.exec(text);
  return match === null ? undefined : token("basis", text, start, start + match[0].length);
}

function wordAt(text: string, start: number): Token | undefined {
  if (`%°'"`.includes(text[start] as string)) return token("word", text, start, start + 1);
  let end = start;
  while (LETTER.test(text[end] ?? "")) end++;
  if (end === start) return undefined;
  // A power (ft2), unless it begins a number of its own (3ft2in, ft 25).
  if (/[23]/.test(text[end] ?? "") && !/[\p{L}\d.,'"]/u.test(text[end + 1] ?? "")) end++;
  return token("word", text, start, end);
}

function signAt(text: string, start: number, advice: Advice): Token {
  if ("/×*+-".includes(text[start] as string)) return token("sign", text, start, start + 1);
  const space = text.indexOf(" ", start);
  const rest = text.slice(start, space < 0 ? undefined : space);
  if (/^[.,٫]$/.test(rest) && space < 0 && /^(|.*\d)$/.test(text.slice(0, start)))
    throw incomplete({ key: "number-unfinished", advice: "Finish the number." });
  // 5 lb, and 3 oz to come
  if (text.slice(start).trimEnd() === "," && LETTER.test(text[start - 1] ?? ""))
    throw incomplete({ key: "text-unfinished", advice: "Finish what you're typing." });
  throw unreadable(rest, advice);
}

function token(kind: Token["kind"], text: string, start: number, end: number): Token {
  const written = text.slice(start, end);
  return { kind, text: written, key: withoutAccents(written.toLowerCase()), start, end };
}

// Ksf and MSF: a number of square feet.
const COUNTED = /^(?:k(?=[sl]f|sq|ft|gal)|m(?=sf|sq))/;

// gpa is read as gal/ac, x between numbers as a multiplication sign, and Ksf as K sf.
function spelledOut(word: Token): Token[] {
  if (word.kind !== "word") return [word];
  if (word.key === "x") return [{ ...word, kind: "sign", key: "×" }];
  if (COUNTED.test(word.key)) {
    const [cut, at] = [word.text.slice(1), word.start + 1];
    return [
      { ...word, text: word.text.slice(0, 1).toUpperCase(), key: word.key.slice(0, 1), end: at },
      { ...word, text: cut, key: word.key.slice(1), start: at },
    ];
  }
  const term = Object.hasOwn(TRADE_TERMS, word.key) ? TRADE_TERMS[word.key] : undefined;
  if (term === undefined) return [word];
  const [over, per] = term;
  return [
    { ...word, key: over },
    { ...word, kind: "sign", key: "/" },
    { ...word, key: per },
  ];
}
