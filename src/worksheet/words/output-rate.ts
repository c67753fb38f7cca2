import type { LineWords } from "./types.js";

/** The wording of every line that the output-rate module works out. */
export const OUTPUT_RATE_WORDS: Record<string, LineWords> = {
  "output-rate.strip": {
    found: "rate over the test strip",
    terms: { used: "amount used", swath: "width of the pass", distance: "distance travelled" },
  },
};
