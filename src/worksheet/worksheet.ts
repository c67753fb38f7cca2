import type { DoseMeasure } from "../plan/dose.js";
import type { Plan } from "../plan/result.js";
import { planWorking } from "../plan/working.js";
import { convert } from "../units/convert.js";
import { formatQuantity } from "../units/format.js";
import { numberFormat } from "../units/numerals.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, Unit } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { ENGLISH } from "./english.js";
import { parseFormula } from "./formula.js";
import type { Messages } from "./messages.js";
import { printedShares } from "./shares.js";
import { filled, formulaText, foundName, termName } from "./write.js";

/** How a worksheet is written. */
export interface WorksheetOptions {
  /** Whose numbers are printed, as a language tag; `en-US` unless given. */
  readonly locale?: string;
  /** Every word of the sheet; English unless given. */
  readonly messages?: Messages;
  /** The significant digits of the working, 3 to 12; 6 unless given. */
  readonly digits?: number;
}

/** A line of working in words and in numbers. */
export interface WrittenLine {
  /** What is found. */
  readonly found: string;
  /** The formula in words. */
  readonly words: string;
  /** The formula with the numbers put in. */
  readonly numbers: string;
  /** The result, rounded for reading. */
  readonly result: string;
  /** Where the formula comes from. */
  readonly source: string;
}

/** A fact of the summary. */
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

/** A load as it is mixed. */
export interface WrittenLoad {
  /** Which load. */
  readonly title: string;
  /** How far to fill. */
  readonly fill: string;
  /** How much water that takes, and what it treats. */
  readonly water: string;
  /** What to pour. */
  readonly doses: readonly WrittenDose[];
}

/** A worksheet: every text of it, ready to be laid out. */
export interface Worksheet {
  /** The heading. */
  readonly title: string;
  /** What to look at before anything else: severity and sentence. */
  readonly warnings: readonly Fact[];
  /** The job in numbers. */
  readonly summary: readonly Fact[];
  /** The order in which products go in, where it is known. */
  readonly mixing?: string;
  /** The loads, in the order of mixing. */
  readonly loads: readonly WrittenLoad[];
  /** Each product in all loads, as the printed amounts add up. */
  readonly totals: readonly Fact[];
  /** The working, step by step. */
  readonly steps: readonly { readonly title: string; readonly lines: readonly WrittenLine[] }[];
  /** The cautions. */
  readonly cautions: readonly string[];
  /** The headings of the parts. */
  readonly headings: Readonly<
    Record<"summary" | "warnings" | "totals" | "working" | "source" | "cautions", string>
  >;
  /** That numbers are rounded for reading only. */
  readonly rounding: string;
}

interface Writer {
  readonly messages: Messages;
  /** A number of the summary. */
  readonly short: (quantity: Quantity) => string;
  /** A number of the working, with or without a unit. */
  readonly long: (value: Quantity | number) => string;
  /** A number with a fixed number of decimals. */
  readonly decimals: (quantity: Quantity, decimals: number) => string;
}

/**
 * Writes out a plan: the summary, what goes into each load, and the working of every step.
 *
 * @param plan - a finished plan
 * @param options - see {@link WorksheetOptions}
 * @returns the texts, as data; `renderText` lays them out
 * @throws SprayMathError `out-of-range` for an option
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { worksheet } from "swath-to-spoon/worksheet";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *   calibration: { kind: "strip", used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * const [line] = worksheet(plan).steps[0]?.lines ?? [];
 * console.log(line?.numbers, "=", line?.result); // 40 m × 25 m = 1,000 m²
 * ```
 */
export function worksheet(plan: Plan, options: WorksheetOptions = {}): Worksheet {
  const writer = writerFor(options);
  const { messages } = writer;
  const { text } = messages;
  return {
    title: text.title,
    warnings: plan.warnings.map(({ severity, message }) => ({
      name: severityName(severity, messages),
      value: message,
    })),
    summary: summary(plan, writer),
    ...(plan.mixingOrder && { mixing: filled(text.mixingOrder, { order: plan.mixingOrder.join(", ") }) }),
    ...loadsAndTotals(plan, writer),
    steps: planWorking(plan).map(({ step, product = "", load = 0, lines }) => ({
      title: filled(messages.steps[step], { product, load: String(load) }),
      lines: lines.map((line) => writtenLine(line, writer)),
    })),
    cautions: plan.cautions.map(({ code, message }) => messages.cautions[code] ?? message),
    headings: {
      summary: text.summary,
      warnings: text.warnings,
      totals: text.totalInLoads,
      working: text.working,
      source: text.source,
      cautions: text.cautions,
    },
    rounding: text.rounding,
  };
}

function writerFor({ locale = "en-US", messages = ENGLISH, digits = 6 }: WorksheetOptions): Writer {
  return {
    messages,
    short: (quantity) => formatQuantity(quantity, { locale, digits: 4 }),
    long: (value) =>
      typeof value === "number"
        ? numberFormat(locale, digits).format(value)
        : formatQuantity(value, { locale, digits }),
    decimals: ({ value, unit }, decimals) => {
      // As many significant digits as the fixed decimals come to.
      const whole = Math.max(1, Math.floor(Math.log10(Math.abs(value) || 1)) + 1);
      return formatQuantity({ value, unit }, { locale, digits: Math.min(17, whole + decimals) });
    },
  };
}

function severityName(severity: Plan["warnings"][number]["severity"], { text }: Messages): string {
  return { note: text.severityNote, warning: text.severityWarning, refusal: text.severityRefusal }[severity];
}

function writtenLine(line: WorkingLine, { messages, long }: Writer): WrittenLine {
  const formula = parseFormula(line.formula);
  const words = (symbol: string): string => termName(messages.lines, line.id, symbol);
  const numbers = (symbol: string): string => long(line.terms[symbol] ?? Number.NaN);
  return {
    found: foundName(messages.lines, line),
    words: formulaText(formula, words, messages.functions),
    numbers: formulaText(formula, numbers, messages.functions),
    result: long(line.result),
    source: line.source,
  };
}

function summary({ area, rate, carrier, leftover }: Plan, { messages: { text }, short }: Writer): Fact[] {
  const { landArea } = unitsLike(rate.unit);
  const both = (quantity: Quantity, unit: Unit): string =>
    quantity.unit === unit
      ? short(quantity)
      : `${short(quantity)} (${short(convert(quantity, unit as never))})`;
  return [
    { name: text.treatedArea, value: both(area.treated, landArea) },
    ...(area.ground ? [{ name: text.groundArea, value: both(area.ground, landArea) }] : []),
    { name: text.outputRate, value: short(rate) },
    {
      name: text.mixInAll,
      value:
        `${short(carrier.total)} (${text.sprayed} ${short(carrier.sprayed)}, ` +
        `${text.reserve} ${short(carrier.reserve)}, ${text.lines} ${short(carrier.lines)})`,
    },
    {
      name: text.leftover,
      value:
        short(leftover.carrier) +
        (leftover.area ? `, ${text.leftoverArea} ${both(leftover.area, landArea)}` : ""),
    },
  ];
}

function loadsAndTotals(plan: Plan, writer: Writer): Pick<Worksheet, "loads" | "totals"> {
  const { text } = writer.messages;
  const printed = plan.totals.products.map((_, i) =>
    printedShares(
      plan.loads.map((load) => load.products[i]?.amount as Quantity),
      4,
    ),
  );
  const loads = plan.loads.map(({ number, carrier, water, area, products }, at) => ({
    title: filled(text.load, { number: String(number), count: String(plan.loads.length) }),
    fill: filled(text.fillTo, { carrier: writer.short(carrier) }),
    water: filled(text.waterFor, { water: writer.short(water), area: writer.short(area) }),
    doses: products.map(({ name, measured }, i): WrittenDose => {
      const { amounts, decimals } = printed[i] as (typeof printed)[number];
      return {
        product: name,
        amount: writer.decimals(amounts[at] as Quantity, decimals),
        ...writtenMeasure(measured, writer),
      };
    }),
  }));
  const totals = plan.totals.products.map(({ name }, i) => {
    const { total, decimals } = printed[i] as (typeof printed)[number];
    return { name, value: writer.decimals(total, decimals) };
  });
  return { loads, totals };
}

function writtenMeasure(
  measured: DoseMeasure,
  { messages, short }: Writer,
): Pick<WrittenDose, "measures" | "remark"> {
  const { text, tools } = messages;
  if (!measured.ok) return { measures: [], remark: text.doNotMeasure };
  const percent = short({ value: Math.abs(Number(measured.errorPercent.toPrecision(2))), unit: "%" });
  const off = measured.errorPercent < 0 ? text.under : text.over;
  return {
    measures: measured.parts.map(({ tool, count, each }) =>
      filled(each ? text.toMark : text.fillOf, {
        count: String(count),
        tool: tools[tool.name] ?? tool.name,
        mark: each ? short(each) : "",
      }),
    ),
    remark: measured.errorPercent === 0 ? text.exactly : filled(off, { percent }),
  };
}
