import type { LineWords } from "./types.js";

/** The wording of a change of unit. What it was made for is named by the term that the line's `about` points at. */
export const UNITS_WORDS: Record<string, LineWords> = {
  "units.convert": {
    found: "the same amount in another unit",
    terms: { value: "amount as given", size: "conversion factor" },
  },
};
