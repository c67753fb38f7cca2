import { plotsOf } from "../../plan/plot.js";
import type { JobArea } from "../../plan/plot-areas.js";
import { isRefused } from "../../plan/refused.js";
import type { SpreadingPlan } from "../../plan/result.js";
import { planSpreading } from "../../plan/spreading.js";
import { inUnit } from "../../units/convert.js";
import { moreThan } from "../../units/decide.js";
import { orderOf } from "../../units/quantity.js";
import { atMost } from "../../units/three-figures.js";
import type { Mass, MassUnit, UnitSystem } from "../../units/types.js";
import type { CardLoad } from "../field-card.js";
import type { Writer } from "../words/writer.js";
import { nameFacts, type SheetFact, waitFacts } from "./facts.js";
import { asEntered } from "./fit.js";
import { plotName } from "./places.js";
import { inUnits } from "./plan-in-units.js";

/** The same job with every quantity in the units of a system: planned again, so that what is printed follows from what is printed. */
export function spreadingInUnits(plan: SpreadingPlan, units: UnitSystem | undefined): SpreadingPlan {
  return units === undefined ? plan : planSpreading(inUnits(plan.input, units) as SpreadingPlan["input"]);
}

/** The amounts of a job of granules as they are printed: in three figures, and none of them over. */
export interface SpreadAmounts {
  readonly total: string;
  readonly perDirection: string;
  readonly lastFill: string;
  /** What is left over in the last bag. */
  readonly rest: string;
  readonly plots: readonly { readonly amount: string; readonly each?: string | undefined }[];
}

// What a scale shows of less than one of these.
const SMALLER: Partial<Record<MassUnit, MassUnit>> = { lb: "oz", kg: "g" };

/** Writes the amounts of a job of granules, as they are weighed: in the hopper's unit, and less than a pound or kilogram in ounces or grams. */
export function spreadAmounts(
  { total, hopper, plots = [], bags, input: { spreader } }: SpreadingPlan,
  { exact }: Writer,
): SpreadAmounts {
  const { unit } = spreader.hopper;
  // Each direction is weighed out by itself.
  const once = (amount: Mass): string =>
    amountText({ ...amount, value: amount.value / (spreader.directions ?? 1) });
  const amountText = (amount: Mass): string => {
    const value = inUnit(amount, unit);
    const small = SMALLER[unit];
    return exact(
      atMost(small && moreThan(1, value) ? { value: inUnit(amount, small), unit: small } : { value, unit }),
    );
  };
  return {
    total: amountText(total),
    perDirection: amountText(hopper.perDirection),
    lastFill: amountText(hopper.lastFill),
    rest: bags ? amountText(bags.leftOver) : "",
    plots: plots.map(({ amount, each }) => ({
      amount: once(amount),
      ...(each && { each: once(each) }),
    })),
  };
}

/** What sizes the job, the rates, and what it takes. */
export function spreadingFacts(plan: SpreadingPlan, amounts: SpreadAmounts, writer: Writer): SheetFact[] {
  return [...nameFacts(plan, writer), ...sizeFacts(plan, writer), ...productFacts(plan, amounts, writer)];
}

function sizeFacts({ input, area }: SpreadingPlan, writer: Writer): SheetFact[] {
  const { messages, exact, three } = writer;
  const { text } = messages;
  if ("size" in input)
    return input.size.kind === "count"
      ? [{ name: text.number, value: exact(asEntered(input.size.count, writer)) }]
      : [{ name: text.rowLength, value: exact(asEntered(input.size.length, writer)) }];
  return [{ name: text.treatedArea, value: three((area as JobArea).treated) }];
}

function productFacts(
  { input, rate, nutrients = {}, bags, check, warnings }: SpreadingPlan,
  amounts: SpreadAmounts,
  writer: Writer,
): SheetFact[] {
  const { messages, fill, exact, three } = writer;
  const { text } = messages;
  const { product, spreader } = input;
  // What it takes in all is what a refused job must not be filled with.
  const refused = isRefused({ warnings });
  const hasRest = bags && bags.leftOver.value > 0;
  const perPass = { value: rate.value / (spreader.directions ?? 1), unit: rate.unit };
  return [
    { name: fill(text.rateOf, { product: product.name }), value: exact(asEntered(rate, writer)) },
    ...(spreader.directions === 2 ? [{ name: text.perPass, value: three(perPass) }] : []),
    ...(check ? [{ name: text.testResult, value: three(check.rate) }] : []),
    ...Object.entries(nutrients).map(([nutrient, amount]) => ({
      name: fill(text.nutrient, { nutrient }),
      value: three(amount),
    })),
    ...(refused
      ? []
      : [{ name: fill(text.totalOfProduct, { product: product.name }), value: amounts.total }]),
    ...(bags && !refused
      ? [
          {
            name: text.bags,
            value: fill(hasRest ? text.bagsAndRest : "{bags}", { bags: bags.bags, rest: amounts.rest }),
          },
        ]
      : []),
    ...waitFacts([product], writer),
  ];
}

/** What to fill the hopper with. */
export function fillLoads(
  { hopper: { fills, lastFill: last }, input: { spreader } }: SpreadingPlan,
  { perDirection, lastFill }: SpreadAmounts,
  { messages: { text }, fill }: Writer,
): CardLoad[] {
  const { hopper, directions } = spreader;
  // A last fill that is a whole hopper is one more of the others.
  const isFull = orderOf(last, hopper) === 0;
  const full = isFull ? fills : fills - 1;
  const steps = [
    ...(full === 1 ? [fill(text.fillHopper, { hopper })] : []),
    ...(full > 1 ? [fill(text.fillHopperTimes, { hopper, times: full })] : []),
    ...(isFull ? [] : [fill(full > 0 ? text.lastFill : text.onlyFill, { lastFill })]),
  ];
  if (directions !== 2) return [{ title: text.spreadIt, steps }];
  return [text.lengthwise, text.crosswise].map((title) => ({
    title: fill(title, { perDirection }),
    steps,
  }));
}

/** How much of it goes where: part of what is filled, and nothing to do by itself. Nothing where the job has one place. */
export function plotShares(
  { input, plots = [] }: SpreadingPlan,
  { plots: written }: SpreadAmounts,
  writer: Writer,
): { readonly title: string; readonly lines: readonly string[] } | undefined {
  const { messages, fill, count } = writer;
  const { text } = messages;
  const given = "plot" in input ? plotsOf(input.plot) : [];
  // A job of one plot is named for its place.
  const named = given.length === 1 ? [{ name: input.name, ...given[0] }] : given;
  const lines = plots.flatMap(({ pieces }, i): string[] => {
    const { amount, each } = written[i] as SpreadAmounts["plots"][number];
    const plot = plotName(i, named, writer);
    if (pieces !== undefined && pieces > 1 && each !== undefined) {
      const rows = fill(given[i]?.kind === "beds" ? text.beds : text.rows, {
        n: count(pieces),
        count: pieces,
      });
      return [fill(text.plotInPieces, { plot, amount, each, rows })];
    }
    return plots.length > 1 ? [fill(text.onPlot, { plot, amount })] : [];
  });
  const title = input.spreader.directions === 2 ? text.byPlotBoth : text.byPlot;
  return lines.length === 0 ? undefined : { title, lines };
}
