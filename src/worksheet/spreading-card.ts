import { plotsOf } from "../plan/plot.js";
import { SPREADING_PLAN } from "../plan/read-plan.js";
import type { SpreadingPlan } from "../plan/result.js";
import { planSpreading } from "../plan/spreading.js";
import { checked } from "../units/check.js";
import type { Mass, UnitSystem } from "../units/types.js";
import type { CardLoad, FieldCard } from "./field-card.js";
import { isRefused, writtenAlerts } from "./job/alerts.js";
import { cautionTexts, type SheetFact } from "./job/facts.js";
import { atMost } from "./job/fit.js";
import { plotName } from "./job/places.js";
import { inUnits } from "./job/plan-in-units.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { type Writer, writerFor } from "./words/writer.js";

/**
 * The field card of a plan of granules: what to fill the hopper with, how often, and what goes on each plot or bed. Each step has a box
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
  const writer = writerFor(given);
  const { language, text } = writer.messages;
  const shown = spreadingInUnits(checked(plan, SPREADING_PLAN, "plan"), given.units);
  const amounts = writtenAmounts(shown, writer);
  const refused = isRefused(shown);
  return {
    kind: "field-card",
    language,
    title: text.cardTitle,
    warnings: writtenAlerts(shown, writer, ["refusal", "warning"]).map((alert) =>
      alert.severity === "refusal" ? { ...alert, name: text.doNotSpread } : alert,
    ),
    facts: [...sizeFacts(shown, writer), ...productFacts(shown, amounts, writer)],
    order: refused ? [text.doNotFill] : [],
    loads: refused ? [] : [...fillLoads(shown, amounts, writer), ...plotLoads(shown, amounts, writer)],
    cautions: cautionTexts(shown, writer),
    headings: {
      summary: text.summary,
      warnings: text.warnings,
      loads: text.fillsAndPlots,
      cautions: text.cautions,
      what: text.what,
      howMuch: text.howMuch,
    },
  };
}

// As for a spray job: planned again, so that what is printed follows from what is printed.
function spreadingInUnits(plan: SpreadingPlan, units: UnitSystem | undefined): SpreadingPlan {
  return units === undefined ? plan : planSpreading(inUnits(plan.input, units) as SpreadingPlan["input"]);
}

/** The amounts of a card, in three figures and none of them over. */
interface Amounts {
  readonly total: string;
  readonly perDirection: string;
  readonly lastFill: string;
  readonly plots: readonly { readonly amount: string; readonly each?: string | undefined }[];
}

function writtenAmounts({ total, hopper, plots = [] }: SpreadingPlan, { exact }: Writer): Amounts {
  const amountText = (amount: Mass): string => exact(atMost(amount));
  return {
    total: amountText(total),
    perDirection: amountText(hopper.perDirection),
    lastFill: amountText(hopper.lastFill),
    plots: plots.map(({ amount, each }) => ({
      amount: amountText(amount),
      ...(each && { each: amountText(each) }),
    })),
  };
}

function sizeFacts({ input, area }: SpreadingPlan, { messages: { text }, short }: Writer): SheetFact[] {
  if ("size" in input)
    return input.size.kind === "count"
      ? [{ name: text.number, value: short(input.size.count) }]
      : [{ name: text.rowLength, value: short(input.size.length) }];
  return area ? [{ name: text.treatedArea, value: short(area.treated) }] : [];
}

function productFacts(
  { input, rate, nutrients = {}, bags, check }: SpreadingPlan,
  amounts: Amounts,
  { messages: { text }, fill, short, decimals }: Writer,
): SheetFact[] {
  const { product, spreader } = input;
  const perPass = { value: rate.value / (spreader.directions ?? 1), unit: rate.unit };
  return [
    { name: fill(text.rateOf, { product: product.name }), value: short(rate) },
    ...(spreader.directions === 2 ? [{ name: text.perPass, value: short(perPass) }] : []),
    ...(check ? [{ name: text.testResult, value: short(check.rate) }] : []),
    ...Object.entries(nutrients).map(([nutrient, amount]) => ({
      name: fill(text.nutrient, { nutrient }),
      value: short(amount),
    })),
    { name: fill(text.totalOfProduct, { product: product.name }), value: amounts.total },
    ...(bags
      ? [{ name: text.bags, value: fill(text.bagsAndRest, { bags: bags.bags, rest: bags.leftOver }) }]
      : []),
    ...(product.reEntryHours === undefined
      ? []
      : [{ name: text.reEntry, value: decimals({ value: product.reEntryHours, unit: "h" }, 1) }]),
  ];
}

function fillLoads(
  { hopper, input: { spreader } }: SpreadingPlan,
  { perDirection, lastFill }: Amounts,
  { messages: { text }, fill }: Writer,
): CardLoad[] {
  const { fills } = hopper;
  const full = fills - 1;
  const steps = [
    ...(full > 0 ? [fill(text.fillHopper, { hopper: spreader.hopper, times: full })] : []),
    fill(full > 0 ? text.lastFill : text.onlyFill, { lastFill }),
  ];
  if (spreader.directions !== 2) return [{ title: text.spreadIt, steps }];
  return [text.lengthwise, text.crosswise].map((title) => ({
    title: fill(title, { perDirection }),
    steps,
  }));
}

function plotLoads(
  { input, plots = [] }: SpreadingPlan,
  { plots: written }: Amounts,
  writer: Writer,
): CardLoad[] {
  const { messages, fill } = writer;
  const { text } = messages;
  const named = "plot" in input ? plotsOf(input.plot) : [];
  const steps = plots.flatMap(({ pieces }, i): string[] => {
    const { amount, each } = written[i] as Amounts["plots"][number];
    const plot = plotName(i, named, writer);
    if (pieces !== undefined && pieces > 1 && each !== undefined)
      return [fill(text.plotInPieces, { plot, amount, pieces, each })];
    return plots.length > 1 ? [fill(text.onPlot, { plot, amount })] : [];
  });
  return steps.length === 0 ? [] : [{ title: text.byPlot, steps }];
}
