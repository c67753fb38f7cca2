import { isWeight } from "../../household/measuring-tool.js";
import type { MeasuredPart } from "../../household/parts.js";
import type { AnyPlan, DoseMeasure } from "../../plan/result.js";
import { decided } from "../../units/decide.js";
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
  /** What to measure with which tool; empty where it can't be measured with these tools. */
  readonly measures: readonly string[];
  /** How far the measured amount is off, or why it can't be measured. */
  readonly remark: string;
}

/** Each load's products, and each product in all loads, as the printed amounts add up. */
export interface WrittenDoses {
  /** The products of each load, in the order of the job. */
  readonly loads: readonly (readonly WrittenDose[])[];
  /** Each product in all loads. */
  readonly totals: readonly SheetFact[];
}

const AMOUNT_DIGITS = 3;

/** Writes the doses of all loads so that what is printed adds up, and nothing printed is over. */
export function writtenDoses(plan: AnyPlan, writer: Writer): WrittenDoses {
  const printed = plan.totals.products.map((_, i) =>
    printedAmounts(plan.loads.map((load) => load.products[i]?.amount as Quantity)),
  );
  return {
    loads: plan.loads.map(({ products }, at) =>
      products.map(({ name, measured }, i): WrittenDose => {
        const { amounts, decimals } = printed[i] as PrintedAmounts;
        return {
          product: name,
          amount: writer.decimals(amounts[at] as Quantity, decimals),
          ...writtenMeasure(measured, writer),
        };
      }),
    ),
    totals: plan.totals.products.map(({ name }, i) => {
      const { total, decimals } = printed[i] as PrintedAmounts;
      return { name, value: writer.decimals(total, decimals) };
    }),
  };
}

/** Amounts as they are printed, and their total as a reader adds it up. */
interface PrintedAmounts {
  readonly amounts: readonly Quantity[];
  readonly total: Quantity;
  readonly decimals: number;
}

/**
 * Rounds a product's amounts for print so that the printed ones add up to the printed total. All get the decimals that give the
 * smallest of them three significant digits. All are rounded down, so nothing printed is over.
 */
export function printedAmounts(amounts: readonly Quantity[]): PrintedAmounts {
  // No spread: a job may have more loads than a call has room for arguments.
  const smallest = amounts.reduce((least, { value }) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const decimals = Math.min(12, Math.max(0, AMOUNT_DIGITS - 1 - Math.floor(Math.log10(smallest))));
  const { unit } = amounts[0] as Quantity;
  const rounded = amounts.map(({ value }) => decided(value).round(decimals, 0));
  const total = rounded.reduce((sum, one) => sum.plus(one));
  return {
    amounts: rounded.map((one) => ({ value: one.toNumber(), unit })),
    total: { value: total.toNumber(), unit },
    decimals,
  };
}

function writtenMeasure(measured: DoseMeasure, writer: Writer): Pick<WrittenDose, "measures" | "remark"> {
  const { text } = writer.messages;
  if (!measured.ok) return { measures: [], remark: text.doNotMeasure };
  const { parts, errorPercent } = measured;
  const percent = { value: Number(Math.abs(errorPercent).toPrecision(2)), unit: "%" };
  return {
    measures: parts.map((part) => measureText(part, writer)),
    remark:
      errorPercent === 0 ? text.exactly : writer.fill(errorPercent < 0 ? text.under : text.over, { percent }),
  };
}

/** A part of a dose as people say it: `2 tablespoons`. */
export function measureText({ tool, count, each }: MeasuredPart, writer: Writer<PhraseWords>): string {
  const { text } = writer.messages;
  const name = writer.tool(tool.name);
  // "1 1/2 teaspoon" would read as one and a half, and "3 1/2 teaspoons" as seven halves.
  const hasNumber = /^\p{N}/u.test(name);
  if (each === undefined) {
    if (count === 1 && hasNumber) return name;
    const several = hasNumber ? writer.fill(text.fillsOf, { tool: name }) : writer.tools(tool.name, count);
    return writer.fill(text.fills, { count, tools: count === 1 ? name : several });
  }
  const isScale = isWeight(tool.capacity);
  const [once, times] = isScale ? [text.weigh, text.weighTimes] : [text.toMark, text.toMarkTimes];
  return writer.fill(count === 1 ? once : times, { count, tool: name, mark: each });
}
