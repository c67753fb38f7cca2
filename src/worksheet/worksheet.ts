import { ANY_PLAN } from "../plan/read-plan.js";
import type { AnyPlan, Plan } from "../plan/result.js";
import { checked } from "../units/check.js";
import { convert } from "../units/convert.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, Unit } from "../units/types.js";
import { type WrittenAlert, writtenAlerts } from "./job/alerts.js";
import { type WrittenDose, writtenDoses } from "./job/amounts.js";
import {
  cautionTexts,
  coversText,
  loadTitle,
  mixingText,
  outputFacts,
  rateFacts,
  type SheetFact,
  sizeFacts,
  totalMixText,
} from "./job/facts.js";
import { planInUnits, workingInUnits } from "./job/plan-in-units.js";
import { type WrittenLine, writtenLines } from "./lines/written-line.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { type Writer, writerFor } from "./words/writer.js";

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

/** The working of one step. */
export interface WrittenStep {
  /** Which step. */
  readonly number: string;
  /** Its heading. */
  readonly title: string;
  /** Its lines. */
  readonly lines: readonly WrittenLine[];
}

/** A worksheet: every text of it, ready to be laid out. */
export interface Worksheet {
  /** Says what it is. */
  readonly kind: "worksheet";
  /** The language of the words, as a language tag. */
  readonly language: string;
  /** The heading. */
  readonly title: string;
  /** What to look at before anything else, what matters most first. */
  readonly warnings: readonly WrittenAlert[];
  /** The job in numbers. */
  readonly summary: readonly SheetFact[];
  /** The order in which products go in, where it is known. */
  readonly mixing?: string | undefined;
  /** The loads, in the order of mixing. */
  readonly loads: readonly WrittenLoad[];
  /** Each product in all loads, as the printed amounts add up. */
  readonly totals: readonly SheetFact[];
  /** The working, step by step. */
  readonly steps: readonly WrittenStep[];
  /** The cautions. */
  readonly cautions: readonly string[];
  /** That numbers are rounded for reading only. */
  readonly rounding: string;
  /** The headings of the parts, of the tables and of their columns. */
  readonly headings: Readonly<
    Record<
      | "summary"
      | "warnings"
      | "totals"
      | "working"
      | "sources"
      | "cautions"
      | "what"
      | "howMuch"
      | "product"
      | "amount"
      | "measure"
      | "loads",
      string
    >
  >;
}

/**
 * Writes out a plan: the warnings, the summary, what goes into each load, and the working of every step.
 *
 * With `units`, the job is planned again from an input whose every quantity is in that system's units (a yard as meters,
 * pints per acre as liters per hectare), and that plan is printed. Each printed line is then true by itself, and the doses
 * are the same amounts, to the digits that a plan gives amounts in. Tools keep their own units. A strip laid out for two
 * units that read alike keeps these in its one line, since they are the method; its result is in the system.
 *
 * Printed amounts of product are rounded down, and those of the loads add up to the printed totals.
 *
 * @param plan - a finished plan
 * @param options - see {@link WorksheetOptions}
 * @returns the texts, as data; `renderText`, `renderMarkdown`, `renderLatex` and `renderHtml` lay them out
 * @throws SprayMathError `not-a-quantity` for what is no plan and what `readPlan` throws for one that was changed;
 *   `out-of-range`, `missing`, `unknown-choice` or `unknown-field` for an option
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
 * console.log(worksheet(plan, { units: "us" }).summary[2]?.value); // 32.07 gal/ac
 * ```
 */
export function worksheet(plan: AnyPlan, options: WorksheetOptions = {}): Worksheet {
  const given = checked(options, WORKSHEET_OPTIONS, "options");
  const writer = writerFor(given);
  const { messages } = writer;
  const { text } = messages;
  const made = checked(plan, ANY_PLAN, "plan");
  const shown = planInUnits(made, given.units);
  const doses = writtenDoses(shown, writer);
  return {
    kind: "worksheet",
    language: messages.language,
    title: text.title,
    warnings: writtenAlerts(shown, writer, ["refusal", "warning", "note"]),
    summary: summary(shown, writer),
    ...(shown.mixingOrder && { mixing: mixingText(shown.mixingOrder, writer) }),
    loads: shown.loads.map((load, at) => ({
      title: loadTitle(load.number, shown, writer),
      fill: writer.fill(text.fillTo, { carrier: load.carrier }),
      water: waterText(load, shown, writer),
      doses: doses.loads[at] as readonly WrittenDose[],
    })),
    totals: doses.totals,
    // A dose that cannot be measured has no working.
    steps: workingInUnits(shown, made)
      .filter(({ lines }) => lines.length > 0)
      .map(({ step, product = "", load = 0, lines }, at) => ({
        number: writer.count(at + 1),
        title: writer.fill(messages.steps[step], { product, load }),
        lines: writtenLines(lines, writer),
      })),
    cautions: cautionTexts(shown, writer),
    rounding: text.rounding,
    headings: {
      summary: text.summary,
      warnings: text.warnings,
      totals: text.totalProduct,
      working: text.working,
      sources: text.sources,
      cautions: text.cautions,
      what: text.what,
      howMuch: text.howMuch,
      product: text.product,
      amount: text.amount,
      measure: text.measure,
      loads: text.loads,
    },
  };
}

function waterText(load: AnyPlan["loads"][number], plan: AnyPlan, writer: Writer): string {
  const { text } = writer.messages;
  const { water } = load;
  const area = coversText(load, plan, writer);
  return area === undefined
    ? writer.fill(text.waterOnly, { water })
    : writer.fill(text.waterFor, { water, area });
}

function summary(plan: AnyPlan, writer: Writer): SheetFact[] {
  const { text } = writer.messages;
  return [
    ...("area" in plan ? areaFacts(plan, writer) : sizeFacts(plan, writer)),
    ...outputFacts(plan, writer),
    ...rateFacts(plan, writer),
    { name: text.totalMix, value: totalMixText(plan, writer) },
    { name: "area" in plan ? text.leftover : text.leftoverJob, value: leftoverText(plan, writer) },
  ];
}

/** The areas in land units as well. */
function areaFacts({ area, rate }: Plan, writer: Writer): SheetFact[] {
  const { text } = writer.messages;
  const { landArea } = unitsLike(rate.unit);
  return [
    { name: text.treatedArea, value: both(area.treated, landArea, writer) },
    ...(area.ground ? [{ name: text.groundArea, value: both(area.ground, landArea, writer) }] : []),
  ];
}

function leftoverText(plan: AnyPlan, writer: Writer): string {
  const { leftover } = plan;
  const { carrier: mix, area } = leftover;
  const covered =
    "area" in plan
      ? area && both(area, unitsLike(plan.rate.unit).landArea, writer)
      : coversText(leftover, plan, writer);
  if (covered === undefined) return writer.short(mix);
  return writer.fill(writer.messages.text.leftoverWithArea, { leftover: mix, area: covered });
}

function both(quantity: Quantity, unit: Unit, { short }: Writer): string {
  return quantity.unit === unit
    ? short(quantity)
    : `${short(quantity)} (${short(convert(quantity, unit as never))})`;
}
