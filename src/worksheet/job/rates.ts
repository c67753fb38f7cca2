import type { Plan } from "../../plan/result.js";
import { isRange, type SingleRate } from "../../tank-mix/label-rate.js";
import { filled } from "../lines/line-text.js";
import type { Writer } from "../words/writer.js";
import type { Fact } from "./amounts.js";

/** Each product's rate as the label tells it: what a person can hold the sheet against. Of a range the chosen rate. */
export function rateFacts({ input }: Plan, writer: Writer): Fact[] {
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
    const told = short(rate.rate);
    return rate.per === "ground" ? filled(text.rateOnGround, { rate: told }) : told;
  }
  return short(rate);
}
