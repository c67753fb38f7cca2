/** The names that a line of working is written with. */
export interface LineWords {
  /** What the line finds. */
  readonly found: string;
  /** What each symbol of the formula stands for. */
  readonly terms: Readonly<Record<string, string>>;
}
