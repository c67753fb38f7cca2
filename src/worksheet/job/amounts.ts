import { dimensionMeasured } from "../../household/tools.js";
import type { DoseMeasure } from "../../plan/dose.js";
import type { Plan } from "../../plan/result.js";
import type { MassUnit, Quantity } from "../../units/types.js";
import { filled } from "../lines/line-text.js";
import type { Writer } from "../words/writer.js";
import { printedShares } from "./shares.js";

/** A fact of a summary. */
export interface Fact {
  /** Its name. */
  readonly name: string;
  /** Its value, with the unit. */
  readonly value: string;
}

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
  readonly totals: readonly Fact[];
}

const AMOUNT_DIGITS = 4;

/** Writes the doses of all loads so that what is printed adds up, and nothing printed is over. */
export function writtenDoses(plan: Plan, writer: Writer): WrittenDoses {
  const printed = plan.totals.products.map((_, i) =>
    printedShares(
      plan.loads.map((load) => load.products[i]?.amount as Quantity),
      AMOUNT_DIGITS,
    ),
  );
  return {
    loads: plan.loads.map(({ products }, at) =>
      products.map(({ name, measured }, i): WrittenDose => {
        const { amounts, decimals } = printed[i] as (typeof printed)[number];
        return {
          product: name,
          amount: writer.decimals(amounts[at] as Quantity, decimals),
          ...writtenMeasure(measured, writer),
        };
      }),
    ),
    totals: plan.totals.products.map(({ name }, i) => {
      const { total, decimals } = printed[i] as (typeof printed)[number];
      return { name, value: writer.decimals(total, decimals) };
    }),
  };
}

function writtenMeasure(measured: DoseMeasure, writer: Writer): Pick<WrittenDose, "measures" | "remark"> {
  const { text } = writer.messages;
  if (!measured.ok) return { measures: [], remark: text.doNotMeasure };
  const percent = writer.rough({ value: Math.abs(measured.errorPercent), unit: "%" }, 2);
  const off = measured.errorPercent < 0 ? text.under : text.over;
  return {
    measures: measured.parts.map(({ tool, count, each }) => {
      const isScale = dimensionMeasured(tool.capacity.unit as MassUnit) === "mass";
      const weighed = count === 1 ? text.weigh : text.weighTimes;
      return filled(each === undefined ? text.fillOf : isScale ? weighed : text.toMark, {
        count: writer.count(count),
        tool: writer.tool(tool.name),
        mark: each === undefined ? "" : writer.short(each),
      });
    }),
    remark: measured.errorPercent === 0 ? text.exactly : filled(off, { percent }),
  };
}
