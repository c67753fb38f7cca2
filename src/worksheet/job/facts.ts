import { equalRows, plotsOf } from "../../plan/plot.js";
import type { Plan, PlannedLoad } from "../../plan/result.js";
import { isRange, type SingleRate } from "../../tank-mix/label-rate.js";
import { floorDecided } from "../../units/decide.js";
import { filled, type Writer } from "../words/writer.js";

/** A fact of a summary. */
export interface SheetFact {
  /** Its name. */
  readonly name: string;
  /** Its value, with the unit. */
  readonly value: string;
}

/** Each product's rate as the label gives it: what a person checks the sheet against. Of a range the chosen rate. */
export function rateFacts({ input }: Plan, writer: Writer): SheetFact[] {
  return input.products.map(({ name, rate }) => ({
    name: filled(writer.messages.text.rateOf, { product: name }),
    value: rateText(isRange(rate) ? rate.chosen : rate, writer),
  }));
}

function rateText(rate: SingleRate, writer: Writer): string {
  const { messages, short } = writer;
  const { text } = messages;
  if ("activeIngredient" in rate)
    return filled(text.rateOfActive, { rate: rateText(rate.activeIngredient, writer) });
  if ("parts" in rate) {
    const words = rate.of === "mix" ? text.rateOfMix : text.rateOfWater;
    return filled(words, { parts: short(rate.parts), to: short(rate.to) });
  }
  if ("per" in rate) {
    const amount = short(rate.rate);
    return rate.per === "ground" ? filled(text.rateOnGround, { rate: amount }) : amount;
  }
  return short(rate);
}

/** The mix of the whole job and what it is made of; parts of nothing are left out. */
export function totalMixText({ carrier }: Plan, { messages: { text }, short }: Writer): string {
  const { total, sprayed, reserve, lines } = carrier;
  const extra = [
    ...(reserve.value > 0 ? [filled(text.mixExtra, { volume: short(reserve) })] : []),
    ...(lines.value > 0 ? [filled(text.mixInHose, { volume: short(lines) })] : []),
  ];
  if (extra.length === 0) return short(total);
  const parts = [filled(text.mixForPlot, { volume: short(sprayed) }), ...extra].join(" + ");
  return filled(text.totalOf, { total: short(total), parts });
}

/** A load's heading. */
export function loadTitle(number: number, { loads }: Plan, { messages, count }: Writer): string {
  return filled(messages.text.load, { number: count(number), count: count(loads.length) });
}

/** The area that a load covers; of one plot with rows of one length, how many rows that is as well. */
export function loadAreaText({ area }: PlannedLoad, { input, area: whole }: Plan, writer: Writer): string {
  const { messages, short } = writer;
  const [plot, other] = plotsOf(input.plot);
  const rows = plot && !other && plot.kind !== "beds" ? (equalRows(plot) ?? 0) : 0;
  const covered = (rows * area.value) / whole.treated.value;
  if (covered < 1 || area.unit !== whole.treated.unit) return short(area);
  return filled(messages.text.areaWithRows, { area: short(area), rows: rowsText(covered, writer) });
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
export function mixingText(order: readonly string[], { messages }: Writer): string {
  return filled(messages.text.mixingOrder, { order: order.join(", ") });
}

/** The plan's cautions in the table's words. */
export function cautionTexts({ cautions }: Plan, { messages }: Writer): string[] {
  return cautions.map(({ code, message }) => messages.cautions[code] ?? message);
}
