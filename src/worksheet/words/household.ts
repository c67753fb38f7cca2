import type { LineWords } from "./types.js";

// No dose is measured with more than 100 scoops, so no sum has more terms.
const FILLS = Object.fromEntries(
  Array.from({ length: 100 }, (_, i) => [
    [`n${i + 1}`, `number of fills, tool ${i + 1}`],
    [`x${i + 1}`, `one fill, tool ${i + 1}`],
  ]).flat(),
);

/** The wording of every line that the household module works out. */
export const HOUSEHOLD_WORDS: Record<string, LineWords> = {
  "household.measured": { found: "amount measured out", terms: FILLS },
  "household.error": {
    found: "error of measuring",
    terms: { measured: "amount measured out", amount: "amount wanted" },
  },
  "household.errorPercent": {
    found: "error of measuring in per cent of the amount",
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
