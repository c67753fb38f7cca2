import type { LineTable } from "./line-table.js";

/** The lines that the household module works out: each one's id, and the symbols of its terms. */
export interface HouseholdLines {
  "household.measured": "n" | "x" | "t" | "m";
  "household.error": "measured" | "amount";
  "household.errorPercent": "error" | "amount";
  "household.rateError": "error" | "area";
  "household.volumeOfWeight": "mass" | "density";
  "household.stock.strength": "product" | "stock";
  "household.stock.part": "amount" | "strength";
  "household.stock.measured": "strength" | "taken";
}

/** The wording of every line that the household module works out. */
export const HOUSEHOLD_WORDS: LineTable<HouseholdLines> = {
  "household.measured": {
    found: "amount measured out",
    terms: {
      n: "number of {tools}",
      x: "one {tool} holds",
      t: "times the {tool} is used",
      m: "reading on the {tool}",
    },
  },
  "household.error": {
    found: "measuring error",
    terms: { measured: "amount measured out", amount: "amount needed" },
  },
  "household.errorPercent": {
    found: "measuring error, %",
    terms: { error: "measuring error", amount: "amount needed" },
  },
  "household.rateError": {
    found: "measuring error per treated area",
    terms: { error: "measuring error", area: "treated area" },
  },
  "household.volumeOfWeight": {
    found: "volume of the dry product",
    terms: { mass: "weight of the product", density: "bulk density of the product" },
  },
  "household.stock.strength": {
    found: "strength of the stock",
    terms: { product: "product in the stock", stock: "total volume of the stock" },
  },
  "household.stock.part": {
    found: "stock that holds the dose",
    terms: { amount: "amount needed", strength: "strength of the stock" },
  },
  "household.stock.measured": {
    found: "amount measured out from the stock",
    terms: { strength: "strength of the stock", taken: "stock taken" },
  },
};
