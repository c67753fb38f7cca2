import type { LineTable } from "../worksheet/words/line-table.js";

/** The lines that practice problems add to those of the library: each one's id, and the symbols of its terms. */
export interface PracticeLines {
  "practice.spoons": "amount";
  "practice.product": "rate" | "area";
}

/** The wording of the lines that practice problems add. */
export const PRACTICE_WORDS: LineTable<PracticeLines> = {
  "practice.spoons": { found: "whole level spoons", terms: { amount: "spoons that the amount fills" } },
  "practice.product": {
    found: "product for the plot",
    terms: { rate: "rate of product", area: "treated area" },
  },
};
