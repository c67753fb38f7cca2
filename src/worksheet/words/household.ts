import type { LineTable } from "./line-table.js";

/** The lines that the household module works out: each one's id, and the symbols of its terms. */
export interface HouseholdLines {
  "household.measured": "n" | "x";
  "household.error": "measured" | "amount";
  "household.errorPercent": "error" | "amount";
  "household.rateError": "error" | "area";
  "household.byVolume": "mass" | "density";
  "household.stock.strength": "product" | "stock";
  "household.stock.part": "amount" | "strength";
  "household.stock.measured": "strength" | "taken";
}

/** The wording of every line that the household module works out. */
export const HOUSEHOLD_WORDS: LineTable<HouseholdLines> = {
  "household.measured": {
    found: "amount measured out",
    terms: { n: "fills of tool {n}", x: "one fill of tool {n}" },
  },
  "household.error": {
    found: "error of measuring",
    terms: { measured: "amount measured out", amount: "amount wanted" },
  },
  "household.errorPercent": {
    found: "error of measuring, in percent of the amount",
    terms: { error: "error of measuring", amount: "amount wanted" },
  },
  "household.rateError": {
    found: "error of measuring as product per treated area",
    terms: { error: "error of measuring", area: "treated area" },
  },
  "household.byVolume": {
    found: "volume of the dry product",
    terms: { mass: "weight of the product", density: "bulk density of the product" },
  },
  "household.stock.strength": {
    found: "strength of the stock",
    terms: { product: "product in the stock", stock: "volume that the stock is made up to" },
  },
  "household.stock.part": {
    found: "part of the stock that holds the dose",
    terms: { amount: "amount wanted", strength: "strength of the stock" },
  },
  "household.stock.measured": {
    found: "amount measured out from the stock",
    terms: { strength: "strength of the stock", taken: "stock taken" },
  },
};
