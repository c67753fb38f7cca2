import { SPREADING_PLAN } from "../plan/read-plan.js";
import { isRefused } from "../plan/refused.js";
import type { SpreadingPlan } from "../plan/result.js";
import { checked } from "../units/check.js";
import { cardHeadings, type FieldCard } from "./field-card.js";
import { spreadingAlerts } from "./job/alerts.js";
import { cautionTexts } from "./job/facts.js";
import { numbersIn } from "./job/fit.js";
import { fillLoads, spreadAmounts, spreadingFacts, spreadingInUnits } from "./job/spreading.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { ENGLISH_WORDS } from "./words/english.js";
import { writerFor } from "./words/writer.js";

/**
 * Returns the field card of a plan of granules: what to weigh out for each plot, row or bed, or to fill the hopper with. Each step has a box
 * to tick. Refusals and warnings stand on top, the cautions below.
 *
 * Printed amounts are rounded down. If the plan refuses the job, the card says so and gives no fills.
 *
 * @param plan - a finished plan of `planSpreading`
 * @param options - as for `worksheet`
 * @returns the texts, as data; `renderText`, `renderMarkdown`, `renderLatex` and `renderHtml` lay them out
 * @throws SprayMathError `not-a-quantity` for what is no plan and `conflict` for one that was changed; `out-of-range`, `missing`,
 *   `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { planSpreading } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { spreadingCard } from "swath-to-spoon/worksheet";
 *
 * const plan = planSpreading({
 *   plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
 *   spreader: { hopper: qty(20, "lb") },
 *   product: { name: "Product A", rate: qty(5, "lb/1000ft2") },
 * });
 * console.log(spreadingCard(plan).loads[0]?.steps[0]); // Fill the hopper with 20 lb and spread it. Do this 4 times.
 * ```
 */
export function spreadingCard(plan: SpreadingPlan, options: WorksheetOptions = {}): FieldCard {
  const given = checked(options, WORKSHEET_OPTIONS, "options");
  const made = checked(plan, SPREADING_PLAN, "plan");
  const writer = { ...writerFor(given, ENGLISH_WORDS), entered: numbersIn(made.input) };
  const { language, text } = writer.messages;
  const shown = spreadingInUnits(made, given.units);
  const amounts = spreadAmounts(shown, writer);
  const refused = isRefused(shown);
  return {
    kind: "field-card",
    language,
    title: text.cardTitle,
    warnings: spreadingAlerts(shown, writer, ["refusal", "warning"]),
    facts: spreadingFacts(shown, amounts, writer),
    order: refused ? [text.doNotFill] : [],
    loads: refused ? [] : fillLoads(shown, amounts, writer),
    cautions: cautionTexts(shown, writer),
    headings: { ...cardHeadings(text), loads: text.fillsAndPlots },
  };
}
