import type { Issue } from "../../src/errors.ts";

// What keeps the words from being plain, of everything that a person reads.

const MOST_WORDS = 30;
const MOST_DIGITS = 6;
const MOST_SENTENCES = 2;
const MOST_LETTERS = 160;

/** Why a sentence can't stay. `Given …;` is how messages once began. */
const FAULTS: readonly (readonly [name: string, pattern: RegExp])[] = [
  ["a number is given or shown, not told", /\b(?:told|(?<!can't )tells?|telling)\b/i],
  ["say needed or expected, not wanted", /\b(?:wanted|unwanted)\b/i],
  ["say split, not parted", /\bparted\b/i],
  ['"Given …;"', /\bGiven [^.]*;/],
  ["an identifier outside code", /\b[A-Za-z0-9]+_[A-Za-z0-9_]+/],
];

/** The sentences of a text, with the place that each begins at. */
export function sentencesIn(text: string): { readonly start: number; readonly text: string }[] {
  const sentences: { start: number; text: string }[] = [];
  let start = 0;
  for (const { index, 0: stop } of text.matchAll(/[.!?:]["”)*_]*\s+(?=["“(*[]*[\p{Lu}\d])|$/gu)) {
    const sentence = text.slice(start, index + stop.length);
    if (sentence.trim() !== "") sentences.push({ start, text: sentence.trim() });
    start = index + stop.length;
  }
  return sentences;
}

const wordsOf = (sentence: string): string[] =>
  sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));

/** Numbers of more digits than anybody reads: zeros at either end don't count. */
function longNumbers(sentence: string): string[] {
  const numbers = sentence.match(/(?<![\w.])\d[\d,]*(?:\.\d+)?/g) ?? [];
  return numbers.filter((number) => {
    const digits = number.replace(/[,.]/g, "").replace(/^0+/, "");
    return (number.includes(".") ? digits : digits.replace(/0+$/, "")).length > MOST_DIGITS;
  });
}

/** What is wrong with a sentence, in the words of the one who has to mend it. */
export function faultsOfSentence(sentence: string): string[] {
  const faults = FAULTS.filter(([, pattern]) => pattern.test(sentence)).map(([name]) => name);
  const words = wordsOf(sentence).length;
  if (words > MOST_WORDS) faults.push(`${words} words in a sentence, at most ${MOST_WORDS}`);
  faults.push(...longNumbers(sentence).map((number) => `${number} has more than ${MOST_DIGITS} digits`));
  return faults;
}

/** What is wrong with any text: each of its sentences. */
export function faultsOfText(text: string): string[] {
  return sentencesIn(text).flatMap((sentence) =>
    faultsOfSentence(sentence.text).map((fault) => `${fault}: ${sentence.text}`),
  );
}

/** How long a message may be in a language: translations are longer than English. */
const LETTERS = { en: MOST_LETTERS, es: 200 } as const;

// Messages that list what to choose from are as long as the list.
const LISTS = /(?:one of(?: these)?|fields are|is missing|de estas|de estos|campos son|esta parte): /;

// The largest numbers of a message between machines (ISO 11783) and of a seed: a limit has to be said in full.
const EXACT = /\b(?:2,147,483,64[57]|214,748\.36\d+)\b/g;

/** What is wrong with a message: its sentences, how many there are, and its length. What it quotes is not its own. */
export function faultsOfMessage(message: string, language: keyof typeof LETTERS = "en"): string[] {
  const own = message
    .replace(/"[^"]*"/g, "this")
    .replace(EXACT, "9")
    .replace(/ \(\d+ errors\.\)$/, "");
  if (LISTS.test(own)) return faultsOfText(own.replace(/: .*/s, "."));
  const faults = faultsOfText(own);
  const sentences = own.split(/[.?!]\s+(?=[\p{Lu}¿])/u).length;
  if (sentences > MOST_SENTENCES) faults.push(`${sentences} sentences, at most ${MOST_SENTENCES}: ${own}`);
  const most = LETTERS[language];
  if (own.length > most) faults.push(`${own.length} letters, at most ${most}: ${own}`);
  return faults;
}

// Places that hold a bare number.
const COUNTS = new Set(["times", "count", "loads"]);

/** A template as its message will be about as long: each place with a figure in it. */
export function sampleOf(template: string): string {
  return template.replace(
    /\{(\w+)(?:\.(\w+)|:([^{}]*))?\}/g,
    (_, name: string, part?: string, forms?: string) => {
      if (forms !== undefined) return /other=([^;]*)/.exec(forms)?.[1] ?? "";
      if (name.length === 1 || COUNTS.has(name)) return "2.5";
      return part === "value" ? "12.5" : part === "unit" ? "gal" : "12.5 gal";
    },
  );
}

/** What is wrong with the message of an error or a warning, without what it repeats of the input and the name of its product. */
export function faultsOfIssue(
  issue: Pick<Issue, "message" | "figures">,
  language: keyof typeof LETTERS = "en",
): string[] {
  const repeated = Object.values(issue.figures)
    .flat()
    .filter((figure) => typeof figure === "string" && /\d/.test(figure));
  const own = repeated.reduce<string>((rest, text) => rest.replaceAll(String(text), "this"), issue.message);
  return faultsOfMessage(own.replace(/^Product [A-Z]\b[^:]*: /, ""), language);
}
