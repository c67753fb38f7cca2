import { isWeight } from "../../household/measuring-tool.js";
import type { MeasuredPart } from "../../household/parts.js";
import type { AnyPlan, DoseMeasure, LoadProduct } from "../../plan/result.js";
import { decided } from "../../units/decide.js";
import { atMost } from "../../units/three-figures.js";
import type { Quantity } from "../../units/types.js";
import type { PhraseWords } from "../words/messages.js";
import type { Writer } from "../words/writer.js";
import type { SheetFact } from "./facts.js";

/** A product's line in a load. */
export interface WrittenDose {
  /** The product. */
  readonly product: string;
  /** The amount, rounded down. */
  readonly amount: string;
  /** What to measure with which tool; empty where it can't be measured with these tools, and of bags that go in whole. */
  readonly measures: readonly string[];
  /** How far the measured amount is off, or why it isn't measured. */
  readonly remark: string;
}

/** Each load's products, and each product in all loads, as the printed amounts add up. */
export interface WrittenDoses {
  /** The products of each load, in the order of the job. */
  readonly loads: readonly (readonly WrittenDose[])[];
  /** Each product in all loads. */
  readonly totals: readonly SheetFact[];
}

/** Writes the doses of all loads so that what is printed adds up, and nothing printed is over. */
export function writtenDoses(plan: AnyPlan, writer: Writer): WrittenDoses {
  const printed = plan.totals.products.map((_, i) =>
    plan.loads.map((load) => atMost((load.products[i] as LoadProduct).amount as Quantity)),
  );
  return {
    loads: plan.loads.map(({ products }, at) =>
      products.map(
        ({ name, measured }, i): WrittenDose => ({
          product: name,
          amount: writer.exact((printed[i] as Quantity[])[at] as Quantity),
          ...(isInBags(name, plan)
            ? { measures: [], remark: writer.messages.text.wholeBags }
            : writtenMeasure(measured, writer)),
        }),
      ),
    ),
    totals: plan.totals.products.map(({ name }, i) => ({
      name,
      value: writer.exact(totalOf(printed[i] as Quantity[])),
    })),
  };
}

/** The products of a load in their order of mixing, in the order of the job where that is not known. */
export function inOrder(doses: readonly WrittenDose[], { mixingOrder }: AnyPlan): readonly WrittenDose[] {
  if (mixingOrder === undefined) return doses;
  return mixingOrder.flatMap((name) => doses.filter(({ product }) => product === name));
}

/** Whether a product goes in as bags that dissolve, unopened: nobody measures it. */
export function isInBags(product: string, { input }: AnyPlan): boolean {
  return input.products.some(({ name, inSolubleBag }) => name === product && inSolubleBag === true);
}

/** The total of amounts as a reader adds them up. */
function totalOf(amounts: readonly Quantity[]): Quantity {
  const { unit } = amounts[0] as Quantity;
  const total = amounts.reduce((sum, { value }) => sum.plus(decided(value)), decided(0));
  return { value: total.toNumber(), unit };
}

// Nobody measures so closely: what is nearer reads as exact.
const EXACT_PERCENT = 0.1;

/** What to measure with which tool, and how far that is off. */
export function writtenMeasure(
  measured: DoseMeasure,
  writer: Writer,
): Pick<WrittenDose, "measures" | "remark"> {
  const { text } = writer.messages;
  if (!measured.ok) return { measures: [], remark: text.doNotMeasure };
  const { parts, errorPercent } = measured;
  return {
    measures: parts.map((part) => measureText(part, writer)),
    remark: offText(errorPercent, writer),
  };
}

/** How far what is measured is off: `1.8% under`. */
export function offText(errorPercent: number, { messages: { text }, fill }: Writer<PhraseWords>): string {
  const off = Math.abs(errorPercent);
  const percent = { value: Number(off.toFixed(off < 10 ? 1 : 0)), unit: "%" };
  if (off < EXACT_PERCENT) return text.exactly;
  return fill(errorPercent < 0 ? text.under : text.over, { percent });
}

// More fills than these are counted, not written one by one.
const MOST_NAMED = 6;

/** A part of a dose as people say it: `2 tablespoons`. */
export function measureText({ tool, count, each }: MeasuredPart, writer: Writer<PhraseWords>): string {
  const { text } = writer.messages;
  const name = writer.tool(tool.name);
  // "1 1/2 teaspoon" would read as one and a half, and "3 1/2 teaspoons" as seven halves.
  const hasNumber = /^\p{N}/u.test(name);
  if (each === undefined) {
    // "2 fills of the 1/3 cup + 2 tablespoons" could be twice all of it.
    if (hasNumber && count <= MOST_NAMED) return Array.from({ length: count }, () => name).join(" + ");
    const several = hasNumber ? writer.fill(text.fillsOf, { tool: name }) : writer.tools(tool.name, count);
    return writer.fill(text.fills, { count, tools: count === 1 ? name : several });
  }
  const isScale = isWeight(tool.capacity);
  const [once, times] = isScale ? [text.weigh, text.weighTimes] : [text.toMark, text.toMarkTimes];
  return writer.fill(count === 1 ? once : times, { count, tool: writer.theTool(tool.name), mark: each });
}
