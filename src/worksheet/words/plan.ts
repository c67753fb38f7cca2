import type { LineWords } from "./types.js";

/** The wording of every line that the plan adds to those of the modules it is made of. */
export const PLAN_WORDS: Record<string, LineWords> = {
  "plan.treated": { found: "treated area of all plots", terms: { x: "plot" } },
};
