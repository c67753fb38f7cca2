import { SPREADING_PLAN } from "../plan/read-plan.js";
import { isRefused } from "../plan/refused.js";
import type { SpreadingPlan } from "../plan/result.js";
import { type SpreadingStep, stepsOfSpreading } from "../plan/spreading-steps.js";
import { checked } from "../units/check.js";
import { spreadingAlerts } from "./job/alerts.js";
import { cautionTexts } from "./job/facts.js";
import { numbersIn } from "./job/fit.js";
import { fillLoads, spreadAmounts, spreadingFacts, spreadingInUnits } from "./job/spreading.js";
import type { WrittenStep } from "./job/steps.js";
import { sheetLines } from "./lines/written-line.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { ENGLISH_WORDS } from "./words/english.js";
import { writerFor } from "./words/writer.js";
import { type Worksheet, worksheetHeadings } from "./worksheet.js";

/**
 * Writes out a plan of granules: the fills of the hopper, what goes on each plot or bed, what to check, the job, and the working of
 * every step. Of a job that the plan refuses, no fill and no amount.
 *
 * With `units` the job is planned again in the units of that system, as for `worksheet`. Printed amounts are rounded down. There is
 * no tank and so no tank load: `loads` is empty, and `totals` has the fills and the plots.
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
 * import { spreadingSheet } from "swath-to-spoon/worksheet";
 *
 * const plan = planSpreading({
 *   plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
 *   spreader: { hopper: qty(20, "lb") },
 *   product: { name: "Product A", rate: qty(5, "lb/1000ft2") },
 * });
 * const line = spreadingSheet(plan).steps[1]?.lines.at(-1);
 * console.log(line?.found, "=", line?.result); // product to spread = 90 lb
 * ```
 */
export function spreadingSheet(plan: SpreadingPlan, options: WorksheetOptions = {}): Worksheet {
  const given = checked(options, WORKSHEET_OPTIONS, "options");
  const made = checked(plan, SPREADING_PLAN, "plan");
  const writer = { ...writerFor(given, ENGLISH_WORDS), entered: numbersIn(made.input) };
  const { messages } = writer;
  const { language, text } = messages;
  const shown = spreadingInUnits(made, given.units);
  const amounts = spreadAmounts(shown, writer);
  const refused = isRefused(shown);
  const steps = stepsOfSpreading(shown).filter(({ step }) => !(refused && AMOUNT_STEPS.includes(step)));
  const lines = sheetLines(
    steps.map((step) => step.lines),
    writer,
  );
  return {
    kind: "worksheet",
    language,
    title: text.spreadingTitle,
    ...(refused && { refused: text.doNotFill }),
    warnings: spreadingAlerts(shown, writer, ["refusal", "warning", "note"]),
    summary: spreadingFacts(shown, amounts, writer),
    loads: [],
    totals: refused
      ? []
      : [
          ...fillLoads(shown, amounts, writer).map(({ title, steps }) => ({
            name: title,
            value: steps.join(" "),
          })),
        ],
    steps: steps
      .map(({ step }, at) => ({ title: messages.steps[step], lines: lines[at] as WrittenStep["lines"] }))
      .filter((step) => step.lines.length > 0)
      .map((step, at) => ({ number: writer.count(at + 1), ...step })),
    cautions: cautionTexts(shown, writer),
    rounding: text.rounding,
    headings: {
      ...worksheetHeadings(text),
      totals: text.howMuch,
      product: text.what,
      amount: text.howMuch,
      loads: text.fillsAndPlots,
    },
  };
}

// The steps that come to what is spread.
const AMOUNT_STEPS: readonly SpreadingStep["step"][] = ["fertilizer", "amount", "hopper", "bags"];
