import { equalRows, plotsOf } from "../../plan/plot.js";
import type { AnyPlan, CoversBatch, Plan } from "../../plan/result.js";
import { isRange, type SingleRate } from "../../tank-mix/label-rate.js";
import { floorDecided } from "../../units/decide.js";
import type { TreatedArea } from "../../units/types.js";
import type { Writer } from "../words/writer.js";

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

function rateText(rate: SingleRate, writer: Writer): string {
  const { messages, fill, short } = writer;
  const { text } = messages;
  if ("activeIngredient" in rate)
    return fill(text.rateOfActive, { rate: rateText(rate.activeIngredient, writer) });
  if ("parts" in rate) {
    const words = rate.of === "mix" ? text.rateOfMix : text.rateOfWater;
    return fill(words, { parts: rate.parts, to: rate.to });
  }
  if ("per" in rate) {
    return rate.per === "ground" ? fill(text.rateOnGround, { rate: rate.rate }) : short(rate.rate);
  }
  return short(rate);
}

/** The mix of the whole job and what it is made of; parts of nothing are left out. */
export function totalMixText(plan: AnyPlan, { messages: { text }, fill, short }: Writer): string {
  const { total, sprayed, reserve, lines } = plan.carrier;
  const extra = [
    ...(reserve.value > 0 ? [fill(text.mixExtra, { volume: reserve })] : []),
    ...(lines.value > 0 ? [fill(text.mixInHose, { volume: lines })] : []),
  ];
  if (extra.length === 0) return short(total);
  const parts = [fill("area" in plan ? text.mixForPlot : text.mixForJob, { volume: sprayed }), ...extra].join(
    " + ",
  );
  return fill(text.totalOf, { total, parts });
}

/** A load's heading. */
export function loadTitle(number: number, { loads }: AnyPlan, { messages, fill }: Writer): string {
  return fill(messages.text.load, { number, count: loads.length });
}

/** What sizes a job, and what goes on each part of it. */
export function sizeFacts(plan: AnyPlan, writer: Writer): SheetFact[] {
  const { short, messages } = writer;
  const { text } = messages;
  if ("area" in plan) return [{ name: text.treatedArea, value: short(plan.area.treated) }];
  const { size, area } = plan.input;
  const { carrierPerCount, carrierPerLength } = plan;
  return [
    ...(size.kind === "count" ? [{ name: text.number, value: short(size.count) }] : []),
    ...(carrierPerCount ? [{ name: text.eachGets, value: short(carrierPerCount) }] : []),
    ...(size.kind === "row-length" ? [{ name: text.rowLength, value: short(size.length) }] : []),
    ...(carrierPerLength ? [{ name: text.perLength, value: short(carrierPerLength) }] : []),
    ...(area ? [{ name: text.treatedArea, value: short(area) }] : []),
  ];
}

/** The output rate, where one is known. */
export function outputFacts({ rate }: AnyPlan, { messages: { text }, short }: Writer): SheetFact[] {
  return rate === undefined ? [] : [{ name: text.outputRate, value: short(rate) }];
}

/** What a load, or what is left over, is enough for; nothing where only its volume is known. */
export function coversText(covers: CoversBatch, plan: AnyPlan, writer: Writer): string | undefined {
  const { count, rowLength, area } = covers;
  if ("area" in plan) return onRowsText(area as TreatedArea, plan, writer);
  // Half a plant gets half its dose: the whole ones count.
  if (count !== undefined) return writer.short({ ...count, value: floorDecided(count.value) });
  const size = rowLength ?? area;
  return size && writer.short(size);
}

/** An area; of one plot with rows of one length, how many rows that is as well. */
function onRowsText(area: TreatedArea, { input, area: whole }: Plan, writer: Writer): string {
  const { messages, fill, short } = writer;
  const [plot, other] = plotsOf(input.plot);
  const rows = plot && !other && plot.kind !== "beds" ? (equalRows(plot) ?? 0) : 0;
  const covered = (rows * area.value) / whole.treated.value;
  if (covered < 1 || area.unit !== whole.treated.unit) return short(area);
  return fill(messages.text.areaWithRows, { area, rows: rowsText(covered, writer) });
}

// What a person can see in a row that is sprayed in part, as spoken.
const PARTS: readonly (readonly [number, string])[] = [
  [0, ""],
  [1 / 4, " 1/4"],
  [1 / 3, " 1/3"],
  [1 / 2, " 1/2"],
  [2 / 3, " 2/3"],
  [3 / 4, " 3/4"],
  [1, ""],
];

function rowsText(rows: number, { count }: Writer): string {
  const whole = floorDecided(rows);
  const off = (part: number): number => Math.abs(rows - whole - part);
  const [part, text] = PARTS.reduce((best, one) => (off(one[0]) < off(best[0]) ? one : best));
  return count(whole + Math.floor(part)) + text;
}

/** The order of mixing in words. */
export function mixingText(order: readonly string[], { messages, fill }: Writer): string {
  return fill(messages.text.mixingOrder, { order });
}

/** The plan's cautions in the table's words. */
export function cautionTexts({ cautions }: Pick<AnyPlan, "cautions">, { messages }: Writer): string[] {
  return cautions.map(({ code, message }) => messages.cautions[code] ?? message);
}
