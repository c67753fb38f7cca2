import { type Plot, plotsOf, rowLengthsOf } from "../../plan/plot.js";
import type { JobArea } from "../../plan/plot-areas.js";
import { isRefused } from "../../plan/refused.js";
import type { SpreadingPlan } from "../../plan/result.js";
import { planSpreading } from "../../plan/spreading.js";
import { inUnit } from "../../units/convert.js";
import { floorDecided, moreThan } from "../../units/decide.js";
import { orderOf } from "../../units/quantity.js";
import { unitsLike } from "../../units/systems.js";
import { atMost } from "../../units/three-figures.js";
import type { Length, Mass, MassUnit, UnitSystem } from "../../units/types.js";
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
  /** What each plant gets, in a job by count. */
  readonly each?: string | undefined;
  readonly plots: readonly PlotText[];
}

interface PlotText {
  readonly amount: string;
  readonly each?: string | undefined;
  /** What each of a few rows gets that are of different lengths. */
  readonly rows?: readonly string[] | undefined;
  /** What so much length gets, where such rows are many. */
  readonly run?: string | undefined;
}

// More rows than these nobody weighs out for one by one.
const MOST_ROWS = 12;

/** A length that one paces off. */
function runOf(length: Length): Length {
  return unitsLike(length.unit).length === "ft" ? { value: 100, unit: "ft" } : { value: 10, unit: "m" };
}

// What a scale shows of less than one of these.
const SMALLER: Partial<Record<MassUnit, MassUnit>> = { lb: "oz", kg: "g" };

/** Writes the amounts of a job of granules, as they are weighed: in the hopper's unit, and less than a pound or kilogram in ounces or grams. */
export function spreadAmounts(
  { total, hopper, plots = [], bags, area, input }: SpreadingPlan,
  { exact }: Writer,
): SpreadAmounts {
  const { spreader } = input;
  const size = "size" in input ? input.size : undefined;
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
    ...(size?.kind === "count" && { each: once({ ...total, value: total.value / size.count.value }) }),
    plots: plots.map(({ amount, each, rows }, i) => ({
      amount: once(amount),
      ...(each && { each: once(each) }),
      ...(rows &&
        (rows.length > MOST_ROWS
          ? { run: once(onRun(amount, area?.plots[i]?.rowLength as Length)) }
          : { rows: rows.map(once) })),
    })),
  };
}

/** What goes on the length that one paces off, of an amount for so much of it. */
function onRun({ value, unit }: Mass, all: Length): Mass {
  return { value: (value * inUnit(runOf(all), all.unit)) / all.value, unit };
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

/** What to weigh out, place by place or hopper by hopper, and to spread. */
export function fillLoads(plan: SpreadingPlan, amounts: SpreadAmounts, writer: Writer): CardLoad[] {
  const { messages, fill } = writer;
  const { text } = messages;
  const byPlace = placeSteps(plan, amounts, writer);
  const steps = [
    ...eachSteps(plan, amounts, writer),
    ...(byPlace.length > 0 ? byPlace : hopperSteps(plan, amounts, writer)),
    text.spreadRest,
  ];
  if (plan.input.spreader.directions !== 2) return [{ title: text.spreadIt, steps }];
  return [text.lengthwise, text.crosswise].map((title) => ({
    title: fill(title, { perDirection: amounts.perDirection }),
    steps,
  }));
}

function hopperSteps(
  { hopper: { fills, lastFill: last }, input: { spreader } }: SpreadingPlan,
  { lastFill }: SpreadAmounts,
  { messages: { text }, fill }: Writer,
): string[] {
  const { hopper } = spreader;
  // A last fill that is a whole hopper is one more of the others.
  const isFull = orderOf(last, hopper) === 0;
  const full = isFull ? fills : fills - 1;
  return [
    ...(full === 1 ? [fill(text.fillHopper, { hopper })] : []),
    ...(full > 1 ? [fill(text.fillHopperTimes, { hopper, times: full })] : []),
    ...(isFull ? [] : [fill(full > 0 ? text.lastFill : text.onlyFill, { lastFill })]),
  ];
}

/** What each plant gets, and how many of them a full hopper does. */
function eachSteps(
  { input, hopper: { perDirection } }: SpreadingPlan,
  { each }: SpreadAmounts,
  writer: Writer,
): string[] {
  if (!("size" in input) || input.size.kind !== "count" || each === undefined) return [];
  const { messages, fill, exact } = writer;
  const { text } = messages;
  const { count } = input.size;
  const { hopper } = input.spreader;
  const enough = floorDecided((count.value * inUnit(hopper, perDirection.unit)) / perDirection.value);
  return [
    fill(text.giveEach, { each }),
    ...(enough > 0 && enough < count.value
      ? [fill(text.hopperFor, { count: exact({ ...count, value: enough }) })]
      : []),
  ];
}

/** What to weigh out for each plot, row or bed. Nothing where the job has one place. */
function placeSteps(
  { input, plots = [] }: SpreadingPlan,
  { plots: written }: SpreadAmounts,
  writer: Writer,
): string[] {
  const { messages, fill, count } = writer;
  const { text } = messages;
  const { hopper, directions = 1 } = input.spreader;
  const given = "plot" in input ? plotsOf(input.plot) : [];
  // A job of one plot is named for its place.
  const named = given.length === 1 ? [{ name: input.name, ...given[0] }] : given;
  const steps = plots.flatMap(({ pieces }, i): string[] => {
    const { amount, each } = written[i] as SpreadAmounts["plots"][number];
    const plot = plotName(i, named, writer);
    if (pieces !== undefined && pieces > 1 && each !== undefined) {
      const rows = fill(given[i]?.kind === "beds" ? text.beds : text.rows, {
        n: count(pieces),
        count: pieces,
      });
      return [fill(text.spreadPieces, { plot, amount, each, rows })];
    }
    const lengths = given[i] && rowLengthsOf(given[i]);
    if (lengths !== undefined && lengths.length > 1)
      return unequalSteps(lengths, i, named, written[i] as PlotText, writer);
    return plots.length > 1 ? [fill(text.spreadPlot, { plot, amount })] : [];
  });
  const isLarge = plots.some(({ amount, each = amount, rows = [each] }) =>
    rows.some((row) => moreThan(inUnit(row, hopper.unit) / directions, hopper.value)),
  );
  return steps.length > 0 && isLarge ? [fill(text.hopperHolds, { hopper }), ...steps] : steps;
}

/** What to weigh out for rows of different lengths: for each of a few, of many for a length. */
function unequalSteps(
  lengths: readonly Length[],
  at: number,
  plots: readonly Partial<Pick<Plot, "kind" | "name">>[],
  { amount, rows = [], run }: PlotText,
  writer: Writer,
): string[] {
  const { messages, fill, count, exact } = writer;
  const { text } = messages;
  const isBeds = plots[at]?.kind === "beds";
  const plot = plotName(at, plots, writer);
  if (run !== undefined) {
    const n = lengths.length;
    const all = fill(isBeds ? text.beds : text.rows, { n: count(n), count: n });
    return [
      fill(text.spreadRun, { plot, amount, each: run, length: runOf(lengths[0] as Length), rows: all }),
    ];
  }
  return lengths.map((length, i) => {
    const row = fill(isBeds ? text.bedNumber : text.rowNumber, { number: count(i + 1) });
    const place = plots.length > 1 ? fill(text.placeInPlot, { place: row, plot }) : row;
    return fill(text.spreadRow, {
      amount: rows[i] as string,
      place,
      length: exact(asEntered(length, writer)),
    });
  });
}
