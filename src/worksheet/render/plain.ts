// Line breaks and tabs would break a table row; the other control characters drive a terminal, and those of direction
// (Unicode Standard Annex 9, explicit formatting) show text in another order than it has.
const SPACES = /[\t\n\v\f\r \u0085\u2028\u2029]+/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what it is for
const CONTROLS = /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;

/** Text of a user on one line, without anything that steers what shows it. */
export function plain(text: string): string {
  return text.replace(SPACES, " ").replace(CONTROLS, "");
}
