import type { Nutrient } from "../../tank-mix/nutrients.js";

/** The names that a line of working is written with. A number behind a symbol (`x2`) is put where the name has `{n}`, a measuring tool's name where it has `{tool}` or `{tools}`. */
export interface LineWords {
  /** What the line finds. */
  readonly found: string;
  /** What each symbol of the formula stands for. */
  readonly terms: Readonly<Record<string, string>>;
}

/**
 * The wording of the lines that `L` lists by id and symbols: a line or a symbol that is left out does not compile. It may
 * have more lines than that, for an app's own working.
 */
export type LineTable<L> = {
  readonly [Id in keyof L]: {
    /** What the line finds. */
    readonly found: string;
    /** What each symbol of the formula stands for. */
    readonly terms: Readonly<Record<L[Id] & string, string>> & LineWords["terms"];
  };
} & Readonly<Record<string, LineWords>>;

/** A line for each nutrient, which its name is put into. */
export function perNutrient<P extends string, W extends LineWords>(
  prefix: P,
  names: Readonly<Record<Nutrient, string>>,
  words: (name: string) => W,
): Readonly<Record<`${P}${Nutrient}`, W>> {
  const lines = Object.entries(names).map(([nutrient, name]) => [prefix + nutrient, words(name)]);
  return Object.fromEntries(lines) as Readonly<Record<`${P}${Nutrient}`, W>>;
}
