import type { LineTable } from "./line-table.js";

/** The lines that the plan module works out: each one's id, and the symbols of its terms. */
export interface PlanLines {
  "plan.treated": "x";
}

/** The wording of every line that the plan adds to those of the modules it is made of. */
export const PLAN_WORDS: LineTable<PlanLines> = {
  "plan.treated": { found: "total treated area", terms: { x: "plot {n}" } },
};
