import { plotNames } from "../../plan/plot.js";
import type { JobArea } from "../../plan/plot-areas.js";
import type { SpreadingPlan } from "../../plan/result.js";
import { planSpreading } from "../../plan/spreading.js";
import type { Quantity, UnitSystem } from "../../units/types.js";
import type { CardLoad } from "../field-card.js";
import type { Writer } from "../words/writer.js";
import { printedAmounts } from "./amounts.js";
import type { SheetFact } from "./facts.js";
import { inUnits } from "./plan-in-units.js";

/** The same job with every quantity in the units of a system: planned again, so that what is printed follows from what is printed. */
export function spreadingInUnits(plan: SpreadingPlan, units: UnitSystem | undefined): SpreadingPlan {
  return units === undefined ? plan : planSpreading(inUnits(plan.input, units) as SpreadingPlan["input"]);
}

/** The amounts of a job of granules as they are printed: all with the same decimals, and none of them over. */
export interface SpreadAmounts {
  readonly total: string;
  readonly perDirection: string;
  readonly lastFill: string;
  readonly plots: readonly { readonly amount: string; readonly each?: string | undefined }[];
}

/** Writes the amounts of a job of granules. */
export function spreadAmounts({ total, hopper, plots = [] }: SpreadingPlan, writer: Writer): SpreadAmounts {
  const { perDirection, lastFill } = hopper;
  const all = [
    total,
    perDirection,
    lastFill,
    ...plots.flatMap(({ amount, each = amount }) => [amount, each]),
  ];
  const { amounts, decimals } = printedAmounts(all);
  const texts = amounts.map((amount: Quantity) => writer.decimals(amount, decimals));
  const [totalText, perDirectionText, lastFillText, ...plotTexts] = texts as [
    string,
    string,
    string,
    ...string[],
  ];
  return {
    total: totalText,
    perDirection: perDirectionText,
    lastFill: lastFillText,
    plots: plots.map((plot, i) => ({
      amount: plotTexts[2 * i] as string,
      ...(plot.each && { each: plotTexts[2 * i + 1] as string }),
    })),
  };
}

/** What sizes the job, the rates, and what it takes. */
export function spreadingFacts(plan: SpreadingPlan, amounts: SpreadAmounts, writer: Writer): SheetFact[] {
  return [...sizeFacts(plan, writer), ...productFacts(plan, amounts, writer)];
}

function sizeFacts({ input, area }: SpreadingPlan, { messages: { text }, short }: Writer): SheetFact[] {
  if ("size" in input)
    return input.size.kind === "count"
      ? [{ name: text.number, value: short(input.size.count) }]
      : [{ name: text.rowLength, value: short(input.size.length) }];
  return [{ name: text.treatedArea, value: short((area as JobArea).treated) }];
}

function productFacts(
  { input, rate, nutrients = {}, bags, check }: SpreadingPlan,
  amounts: SpreadAmounts,
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

/** What to fill the hopper with, and what goes where. */
export function fillsAndPlots(plan: SpreadingPlan, amounts: SpreadAmounts, writer: Writer): CardLoad[] {
  return [...fillLoads(plan, amounts, writer), ...plotLoads(plan, amounts, writer)];
}

function fillLoads(
  { hopper, input: { spreader } }: SpreadingPlan,
  { perDirection, lastFill }: SpreadAmounts,
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
  { plots: written }: SpreadAmounts,
  { messages: { text }, fill }: Writer,
): CardLoad[] {
  const names = "plot" in input ? plotNames(input.plot) : [];
  const steps = plots.flatMap(({ pieces }, i): string[] => {
    const { amount, each } = written[i] as SpreadAmounts["plots"][number];
    const plot = names[i] as string;
    if (pieces !== undefined && pieces > 1 && each !== undefined)
      return [fill(text.plotInPieces, { plot, amount, pieces, each })];
    return plots.length > 1 ? [fill(text.onPlot, { plot, amount })] : [];
  });
  return steps.length === 0 ? [] : [{ title: text.byPlot, steps }];
}
