import { isSpare } from "../../plan/coverage.js";
import type { LoadEnd } from "../../plan/load-ends.js";
import { type Plot, rowLengthsOf } from "../../plan/plot.js";
import { longest } from "../../plan/record.js";
import type { AnyPlan, BatchPlan, CoversBatch, SpreadingPlan } from "../../plan/result.js";
import { isRange, type SingleRate } from "../../tank-mix/label-rate.js";
import { onTank } from "../../tank-mix/tank-marks.js";
import { inUnit } from "../../units/convert.js";
import { floorDecided, moreThan } from "../../units/decide.js";
import { orderOf } from "../../units/quantity.js";
import { atLeast } from "../../units/three-figures.js";
import type { Length, Quantity, Time, Volume, VolumePerCount } from "../../units/types.js";
import type { Writer } from "../words/writer.js";
import { asEntered, inAcres, inFluidOunces, inLargeUnits, inTank } from "./fit.js";
import { coveredText, lastPassText, MOST_PARTED, plantsText, plotName, plotsOfJob } from "./places.js";

/** A fact of a summary. */
export interface SheetFact {
  /** Its name. */
  readonly name: string;
  /** Its value, with the unit. */
  readonly value: string;
}

/** Each product's rate as the label gives it: what a person checks the sheet against. Of a range the chosen rate. */
export function rateFacts({ input }: AnyPlan, writer: Writer): SheetFact[] {
  return input.products.map(({ name, rate }) => ({
    name: writer.fill(writer.messages.text.rateOf, { product: name }),
    value: rateText(isRange(rate) ? rate.chosen : rate, writer),
  }));
}

interface Waits {
  readonly name: string;
  readonly reEntryHours?: number | undefined;
  readonly preHarvestDays?: number | undefined;
}

/**
 * How long the labels keep people out, and the harvest waiting: by the longest of them, and by those whose wait nobody entered. Nothing where
 * none is entered.
 */
export function waitFacts(products: readonly Waits[], writer: Writer): SheetFact[] {
  const { text } = writer.messages;
  const fact = (name: string, wait: "reEntryHours" | "preHarvestDays", say: (longest: number) => string) => {
    const most = longest(products, wait);
    if (most === undefined) return [];
    const others = products.flatMap((product) => (product[wait] === undefined ? [product.name] : []));
    const value = say(most);
    if (others.length === 0) return [{ name, value }];
    return [{ name, value: writer.fill(text.waitOrMore, { wait: value, products: others }) }];
  };
  return [
    ...fact(text.reEntry, "reEntryHours", (value) => writer.decimals({ value, unit: "h" }, 1)),
    ...fact(text.beforeHarvest, "preHarvestDays", (days) => writer.fill(text.days, { days })),
  ];
}

function rateText(rate: SingleRate, writer: Writer): string {
  const { messages, fill, exact } = writer;
  const { text } = messages;
  if ("activeIngredient" in rate)
    return fill(text.rateOfActive, { rate: rateText(rate.activeIngredient, writer) });
  if ("parts" in rate) {
    const words = rate.of === "mix" ? text.rateOfMix : text.rateOfWater;
    return fill(words, { parts: rate.parts, to: rate.to });
  }
  if ("per" in rate) {
    const given = exact(asEntered(rate.rate, writer));
    return rate.per === "ground" ? fill(text.rateOnGround, { rate: given }) : given;
  }
  const given = exact(asEntered(rate, writer));
  if (!("basis" in rate)) return given;
  return fill(rate.basis === "v/v" ? text.byVolume : text.weightInVolume, { rate: given });
}

/** The mix of the whole job and what it is made of, as the tank's marks are; parts of nothing are left out. */
export function totalMixText(plan: AnyPlan, writer: Writer): string {
  const { messages, fill, three, exact } = writer;
  const { text } = messages;
  const { sprayed, reserve, lines } = plan.carrier;
  const total = totalText(plan, writer);
  const { lineVolume = lines } = plan.input.sprayer;
  const { toMark } = plan;
  const upTo = toMark === undefined ? 0 : inUnit(toMark.carrier, reserve.unit);
  const asked = { ...reserve, value: reserve.value - upTo };
  const small = (volume: Volume): string => three(inFluidOunces(inTank(volume, plan)));
  const extra = [
    ...(moreThan(asked.value, 0) ? [fill(text.mixExtra, { volume: small(asked) })] : []),
    ...(toMark ? [fill(text.mixToMark, { volume: small(toMark.carrier) })] : []),
    ...(lines.value > 0 ? [fill(text.mixInHose, { volume: exact(asEntered(lineVolume, writer)) })] : []),
  ];
  if (extra.length === 0) return total;
  const volume = three(onTank(sprayed, plan.input.sprayer.tank));
  const parts = [fill("area" in plan ? text.mixForPlot : text.mixForJob, { volume }), ...extra].join(" + ");
  return fill(text.totalOf, { total, parts });
}

/** The mix of the whole job. */
export function totalText({ carrier, input }: AnyPlan, { exact }: Writer): string {
  return exact(atLeast(onTank(carrier.total, input.sprayer.tank)));
}

/** What the plots, or the place, are called. */
export function nameFacts(plan: AnyPlan | SpreadingPlan, writer: Writer): SheetFact[] {
  const { text } = writer.messages;
  const { input } = plan;
  const plots = plotsOfJob(plan);
  const isNamed = plots.length <= MOST_NAMED && plots.some(({ name }) => name !== undefined);
  const names = isNamed ? plots.map((_, at) => plotName(at, plots, writer)).join("; ") : undefined;
  const name = "name" in input ? input.name : undefined;
  // Where a load ends is counted from the first plot on.
  if ("loads" in plan && plots.length > 1 && names !== undefined)
    return [
      ...(name === undefined ? [] : [{ name: text.where, value: name }]),
      { name: text.plotOrder, value: names },
    ];
  const where = name ?? names;
  return [...(where === undefined ? [] : [{ name: text.where, value: where }]), ...rowFacts(plots, writer)];
}

/** Rows of several lengths, in the order that they are counted in. */
function rowFacts(plots: readonly Plot[], writer: Writer): SheetFact[] {
  const { messages, exact } = writer;
  const [plot] = plots;
  const [first, ...others] = (plots.length === 1 && plot && rowLengthsOf(plot)) || [];
  if (first === undefined || others.length >= MOST_NAMED || others.every((one) => orderOf(one, first) === 0))
    return [];
  return [
    {
      name: messages.text.rowOrder,
      value: [first, ...others].map((length) => exact(asEntered(length, writer))).join(", "),
    },
  ];
}

// More names than these nobody reads on a card.
const MOST_NAMED = 12;

/** What sizes a job, and what goes on each part of it. */
export function sizeFacts(plan: AnyPlan, writer: Writer): SheetFact[] {
  const { three, exact, messages } = writer;
  const { text } = messages;
  if ("area" in plan) {
    const last = lastPassText(plan, writer);
    return [
      { name: text.treatedArea, value: three(inAcres(plan.area.treated)) },
      ...widthFacts(plan, writer),
      ...(last === undefined ? [] : [{ name: text.lastPassOf, value: last }]),
    ];
  }
  const { size, area } = plan.input;
  const { carrierPerCount, carrierPerLength } = plan;
  return [
    ...(size.kind === "count" ? [{ name: text.number, value: exact(asEntered(size.count, writer)) }] : []),
    ...(carrierPerCount ? [{ name: text.eachGets, value: eachText(plan, carrierPerCount, writer) }] : []),
    ...(size.kind === "row-length"
      ? [{ name: text.rowLength, value: exact(asEntered(size.length, writer)) }]
      : []),
    ...(carrierPerLength ? [{ name: text.perLength, value: three(carrierPerLength) }] : []),
    ...(area ? [{ name: text.treatedArea, value: exact(asEntered(area, writer)) }] : []),
  ];
}

/** What is sprayed along each row, where that is the same on all plots. */
function widthFacts(plan: AnyPlan, writer: Writer): SheetFact[] {
  const [first, ...others] = plotsOfJob(plan).map((plot) => widthFact(plot, writer));
  return first !== undefined && others.every((one) => one?.name === first.name && one.value === first.value)
    ? [first]
    : [];
}

function widthFact(plot: Plot, writer: Writer): SheetFact | undefined {
  const { messages, fill, exact } = writer;
  const { text } = messages;
  const widthText = (length: Length): string => exact(asEntered(length, writer));
  if (plot.kind === "row-bands")
    return { name: text.band, value: fill(text.onEachRow, { width: widthText(plot.bandWidth) }) };
  if (plot.kind !== "tree-rows") return undefined;
  const words = plot.sides === 2 ? text.onBothSides : text.onOneSide;
  return { name: text.strip, value: fill(words, { width: widthText(plot.stripWidth) }) };
}

/** What each plant gets: with a timed wand for how long it is sprayed, which is all that a person sees. */
function eachText({ input }: BatchPlan, each: VolumePerCount, writer: Writer): string {
  const { messages, fill, three, exact } = writer;
  const volume = three(inLargeUnits(each));
  const given = input.size.kind === "count" ? input.size.each : undefined;
  return given !== undefined && "flow" in given
    ? fill(messages.text.eachTimed, { time: exact(asEntered(given.time as Time, writer)), volume })
    : volume;
}

/** The output rate, where one is known. */
export function outputFacts({ rate }: AnyPlan, { messages: { text }, three }: Writer): SheetFact[] {
  return rate === undefined ? [] : [{ name: text.outputRate, value: three(rate) }];
}

/** What a load covers, or what is left over is enough for; nothing where only its volume is known. */
export function coversText(
  covers: CoversBatch,
  end: LoadEnd | undefined,
  writer: Writer,
): string | undefined {
  const { messages, fill, three } = writer;
  const { count, rowLength, area } = covers;
  if (count !== undefined) return plantsText({ ...count, value: plantsOf(count.value, end) }, writer);
  const size = rowLength ?? (area && inAcres(area));
  if (size === undefined) return undefined;
  const part = coveredText(end, writer);
  return part === undefined
    ? three(size)
    : fill(messages.text.areaWithRows, { area: three(size), rows: part });
}

/** What a load covers as what it is about; where it has rows with it, they are. */
export function aboutText(covers: string, end: LoadEnd | undefined, writer: Writer): string {
  const { messages, fill } = writer;
  return coveredText(end, writer) === undefined ? fill(messages.text.about, { area: covers }) : covers;
}

/** What each of several loads covers: about so much, or up to the most that one of them does. */
export function coveredByAll(
  places: readonly number[],
  ends: readonly LoadEnd[],
  { loads }: AnyPlan,
  writer: Writer,
): string | undefined {
  const { messages, fill } = writer;
  const alike = coveredByEach(places, ends, { loads }, writer);
  if (alike !== undefined) return aboutText(alike, ends[places[0] as number], writer);
  // Of loads that are mixed alike some cover less: what fills the hose, and what is extra.
  const size = (at: number): number => sizeOf(loads[at] as CoversBatch, ends[at]);
  const most = places.reduce((best, at) => (moreThan(size(at), size(best)) ? at : best));
  // Rows are of one length in one plot alone.
  const isInOne = places.every((at) => ends[at]?.plot === ends[most]?.plot && ends[at]?.covers !== undefined);
  const { count } = loads[most] as CoversBatch;
  const end = count || isInOne ? ends[most] : undefined;
  const area = coversText(loads[most] as CoversBatch, end, writer);
  return area && fill(messages.text.upTo, { area });
}

/** What each of several loads covers, where it is the same for all of them. */
export function coveredByEach(
  places: readonly number[],
  ends: readonly LoadEnd[],
  { loads }: Pick<AnyPlan, "loads">,
  writer: Writer,
): string | undefined {
  const [first, ...others] = places.map((at) => coversText(loads[at] as CoversBatch, ends[at], writer));
  return others.every((one) => one === first) ? first : undefined;
}

function sizeOf({ count, rowLength, area }: CoversBatch, end: LoadEnd | undefined): number {
  return count === undefined ? ((rowLength ?? area)?.value ?? 0) : plantsOf(count.value, end);
}

/**
 * What is left when the job is done, and how much of that is reserve. A load of nothing but extra mix isn't mixed unless somebody runs
 * short, so it isn't counted.
 */
export function leftAtEnd({ leftover, carrier, loads }: AnyPlan): AnyPlan["leftover"] & { reserve: Volume } {
  const { unit, value } = carrier.reserve;
  const spare = loads.filter(isSpare).reduce((sum, load) => sum + inUnit(load.carrier, unit), 0);
  if (spare === 0) return { ...leftover, reserve: carrier.reserve };
  const left = moreThan(value, spare + REST_TO_SEE * carrier.sprayed.value) ? value - spare : 0;
  const part = <Q extends Quantity>(all: Q): Q => ({ ...all, value: (all.value * left) / value });
  const { count, rowLength, area } = leftover as CoversBatch;
  return {
    carrier: { value: left + inUnit(carrier.lines, unit), unit },
    reserve: { value: left, unit },
    ...(count && { count: part(count) }),
    ...(rowLength && { rowLength: part(rowLength) }),
    ...(area && { area: part(area) }),
  };
}

/** The last load that is sprayed: it comes to the end of the job, with the extra mix still in it. */
export function lastSprayed({ loads }: AnyPlan): number {
  return loads.filter((load) => !isSpare(load)).length - 1;
}

/** To spray loads until the tank is empty, with what they cover. The last load of the job has only to come to its end. */
export function outText(places: readonly number[], covers: string, plan: AnyPlan, writer: Writer): string {
  const { messages, fill } = writer;
  const { text } = messages;
  const step = fill("area" in plan ? text.sprayOut : text.useOut, { covers });
  const last = lastSprayed(plan);
  return places.includes(last) ? `${step} ${fill(text.doesRest, { load: last + 1 })}` : step;
}

// Less than this part of the job nobody sees in a tank.
const REST_TO_SEE = 0.001;

/**
 * How many plants. Of many they are whole ones, and the load after begins with what this one left of a plant; so are those that what is
 * left over is enough for.
 */
function plantsOf(count: number, end: LoadEnd | undefined): number {
  if (end === undefined) return floorDecided(count);
  const { done, covers = done } = end;
  return moreThan(covers, MOST_PARTED) ? floorDecided(done) - floorDecided(done - covers) : covers;
}

/** The order of mixing in words. */
export function mixingText(order: readonly string[], { messages, fill }: Writer): string {
  return fill(messages.text.mixingOrder, { order });
}

/** The plan's cautions in the table's words. */
export function cautionTexts({ cautions }: Pick<AnyPlan, "cautions">, { messages }: Writer): string[] {
  return cautions.map(({ code, message }) => messages.cautions[code] ?? message);
}
