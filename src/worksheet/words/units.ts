import type { LineTable } from "./line-table.js";

/** The line that units work out: its id, and the symbols of its terms. */
export interface UnitsLines {
  "units.convert": "value" | "size";
}

/** The wording of a change of unit. What it was made for is named by the term that the line's `about` points at. */
export const UNITS_WORDS: LineTable<UnitsLines> = {
  "units.convert": {
    found: "the same amount in another unit",
    terms: { value: "amount", size: "conversion factor" },
  },
};
