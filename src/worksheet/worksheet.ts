import { isSpare } from "../plan/coverage.js";
import { endsOf } from "../plan/load-ends.js";
import { usesGround } from "../plan/rates-fit.js";
import { ANY_PLAN } from "../plan/read-plan.js";
import { isRefused } from "../plan/refused.js";
import type { AnyPlan, Plan } from "../plan/result.js";
import { checked } from "../units/check.js";
import { convert } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, Unit } from "../units/types.js";
import { type WrittenAlert, writtenAlerts } from "./job/alerts.js";
import { alike, loadsTitle } from "./job/alike.js";
import { inOrder, type WrittenDose, type WrittenDoses, writtenDoses } from "./job/amounts.js";
import {
  cautionTexts,
  coveredByAll,
  coversText,
  leftAtEnd,
  mixingText,
  nameFacts,
  outputFacts,
  rateFacts,
  type SheetFact,
  sizeFacts,
  totalMixText,
  waitFacts,
} from "./job/facts.js";
import { fillOf, inFluidOunces, inTank, numbersIn } from "./job/fit.js";
import { inPlotUnits, planInUnits } from "./job/plan-in-units.js";
import { type WrittenStep, writtenSteps } from "./job/steps.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { ENGLISH_WORDS } from "./words/english.js";
import type { Messages } from "./words/messages.js";
import { type Writer, writerFor } from "./words/writer.js";

/** A load as it is mixed, or several that are mixed alike. */
export interface WrittenLoad {
  /** Which loads. */
  readonly title: string;
  /** The numbers of the loads. */
  readonly numbers: readonly number[];
  /** How far to fill. */
  readonly fill: string;
  /** What it covers, where more than its volume is known. */
  readonly covers?: string | undefined;
  /** What to pour, in the order of mixing where it is known. */
  readonly doses: readonly WrittenDose[];
}

/** A worksheet: every text of it, ready to be laid out. */
export interface Worksheet {
  /** Says what it is. */
  readonly kind: "worksheet";
  /** The language of the words, as a language tag. */
  readonly language: string;
  /** The heading. */
  readonly title: string;
  /** Where the job is refused: not to mix it. */
  readonly refused?: string | undefined;
  /** What to check, what matters most first. Nothing that the sheet shows anyway. */
  readonly warnings: readonly WrittenAlert[];
  /** The job in numbers. */
  readonly summary: readonly SheetFact[];
  /** The order in which several products go in, where it is known. */
  readonly mixing?: string | undefined;
  /** The loads, in the order of mixing; loads that are mixed alike once. None where the job is refused. */
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
 * Writes out a plan: what goes into each load, what to check, the job in numbers, and the working of every step. Of a job that the plan
 * refuses, no load, no amount of product and none of their working.
 *
 * With `units`, the job is planned again from an input whose every quantity is in that system's units (a yard as meters,
 * pints per acre as liters per hectare), and that plan is printed. Each printed line is then true by itself, and the doses
 * are the same amounts, to the digits that a plan gives amounts in. Tools and the sprayer keep their own units. A strip laid out for two
 * units that read alike keeps these in its one line, since they are the method; its result is in the system.
 *
 * Printed amounts of product are rounded down, and those of the loads add up to the printed totals. Working that says nothing, such as
 * times one, isn't printed, and the ground only where a rate goes by it. How far each dose is off is the last part, with
 * `measuringErrors`.
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
 * console.log(worksheet(plan, { units: "us" }).summary[1]?.value); // 32.1 gal/ac
 * ```
 */
export function worksheet(plan: AnyPlan, options: WorksheetOptions = {}): Worksheet {
  const given = checked(options, WORKSHEET_OPTIONS, "options");
  const made = checked(plan, ANY_PLAN, "plan");
  const writer = { ...writerFor(given, ENGLISH_WORDS), entered: numbersIn(made.input) };
  const { messages } = writer;
  const { text } = messages;
  const worked = planInUnits(made, given.units);
  const shown = inPlotUnits(worked);
  const refused = isRefused(shown);
  const doses = writtenDoses(shown, writer);
  return {
    kind: "worksheet",
    language: messages.language,
    title: text.title,
    ...(refused && { refused: text.doNotMix }),
    loads: refused ? [] : writtenLoads(shown, doses.loads, writer),
    totals: refused ? [] : doses.totals,
    ...(shown.mixingOrder &&
      shown.input.products.length > 1 &&
      !refused && { mixing: mixingText(shown.mixingOrder, writer) }),
    warnings: writtenAlerts(shown, writer, ["refusal", "warning", "note"]),
    summary: summary(shown, writer, refused),
    steps: writtenSteps(worked, made, given.measuringErrors ?? false, writer),
    cautions: cautionTexts(shown, writer),
    rounding: text.rounding,
    headings: worksheetHeadings(text),
  };
}

/** The headings of a worksheet. */
export function worksheetHeadings(text: Messages["text"]): Worksheet["headings"] {
  return {
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
  };
}

type Load = AnyPlan["loads"][number];

function writtenLoads(plan: AnyPlan, doses: WrittenDoses["loads"], writer: Writer): WrittenLoad[] {
  const { messages, fill, exact } = writer;
  const { text } = messages;
  const ends = endsOf(plan);
  const mixed = plan.loads.map((load, at) => {
    const carrier = fillOf(load, plan);
    return {
      fill:
        carrier === undefined
          ? text.fillAll
          : fill(load.mark ? text.fillToMark : text.fillTo, { carrier: exact(carrier) }),
      doses: inOrder(doses[at] as readonly WrittenDose[], plan),
    };
  });
  const read = mixed.map((load, at) => JSON.stringify([load, isSpare(plan.loads[at] as Load)]));
  return alike(read).map((places) => {
    const [first = 0] = places;
    const load = plan.loads[first] as Load;
    const area =
      places.length === 1 ? coversText(load, ends[first], writer) : coveredByAll(places, ends, plan, writer);
    const covers = isSpare(load) ? text.spareLoad : area && fill(text.covers, { area });
    return {
      title: loadsTitle(places, plan, writer),
      numbers: places.map((at) => at + 1),
      ...(mixed[first] as (typeof mixed)[number]),
      ...(covers !== undefined && { covers }),
    };
  });
}

function summary(plan: AnyPlan, writer: Writer, refused: boolean): SheetFact[] {
  const { text } = writer.messages;
  const facts = [
    ...nameFacts(plan, writer),
    ...("area" in plan ? areaFacts(plan, writer) : sizeFacts(plan, writer)),
    ...outputFacts(plan, writer),
    ...rateFacts(plan, writer),
    ...waitFacts(plan.input.products, writer),
  ];
  if (refused) return facts;
  const left = leftoverText(plan, writer);
  return [
    ...facts,
    { name: text.totalMix, value: totalMixText(plan, writer) },
    ...(left === undefined ? [] : [{ name: "area" in plan ? text.leftover : text.leftoverJob, value: left }]),
  ];
}

/** The treated area in land units as well; the ground, where a rate goes by it. */
function areaFacts({ area, input }: Plan, writer: Writer): SheetFact[] {
  const { text } = writer.messages;
  const { landArea } = unitsLike(area.treated.unit);
  const isUsed = area.ground !== undefined && usesGround(input.products);
  return [
    { name: text.treatedArea, value: both(area.treated, landArea, writer) },
    ...(isUsed ? [{ name: text.groundArea, value: both(area.ground as Quantity, landArea, writer) }] : []),
  ];
}

/** The mix that is left over, where there is any. */
function leftoverText(plan: AnyPlan, writer: Writer): string | undefined {
  const { three, fill, messages } = writer;
  const leftover = leftAtEnd(plan);
  if (leftover.carrier.value === 0) return undefined;
  const mix = three(inFluidOunces(inTank(leftover.carrier, plan)));
  if (leftover.reserve.value === 0) return mix;
  const covered =
    "area" in plan
      ? both(leftover.area as Quantity, unitsLike(plan.area.treated.unit).landArea, writer)
      : coversText(leftover, undefined, writer);
  return covered === undefined ? mix : fill(messages.text.leftoverWithArea, { leftover: mix, area: covered });
}

function both(quantity: Quantity, unit: Unit, { three }: Writer): string {
  const other = convert(quantity, unit as never) as Quantity;
  return quantity.unit === unit || moreThan(LEAST_LAND, other.value)
    ? three(quantity)
    : `${three(quantity)} (${three(other)})`;
}

// Nobody thinks of a smaller part of an acre or a hectare.
const LEAST_LAND = 0.01;
