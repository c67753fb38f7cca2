import { ANY_PLAN } from "../plan/read-plan.js";
import type { AnyPlan } from "../plan/result.js";
import { checked } from "../units/check.js";
import { scale } from "../units/quantity.js";
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
} from "./job/facts.js";
import { planInUnits } from "./job/plan-in-units.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { type Writer, writerFor } from "./words/writer.js";

/** A load on the card. */
export interface CardLoad {
  /** Which load. */
  readonly title: string;
  /** What to do, in order; each with a box to tick. */
  readonly steps: readonly string[];
}

/** The short form of a job, to take to the tank. */
export interface FieldCard {
  /** Says what it is. */
  readonly kind: "field-card";
  /** The language of the words, as a language tag. */
  readonly language: string;
  /** The heading. */
  readonly title: string;
  /** Refusals and warnings; mere notes are left to the worksheet. */
  readonly warnings: readonly WrittenAlert[];
  /** What the sprayer is set for. */
  readonly facts: readonly SheetFact[];
  /** How a load is mixed: the order of filling, and of products where it is known; or, where the job is refused, not to mix. */
  readonly order: readonly string[];
  /** The loads, in the order of mixing. */
  readonly loads: readonly CardLoad[];
  /** The cautions. */
  readonly cautions: readonly string[];
  /** The headings of the parts and of the table's columns. */
  readonly headings: Readonly<
    Record<"summary" | "warnings" | "loads" | "cautions" | "what" | "howMuch", string>
  >;
}

/**
 * The field card of a plan: load by load what to pour, in which order and measured with what, with a box to tick for each step.
 * Refusals and warnings stand on top, the cautions below.
 *
 * Half the water goes in first, then the products in their order of mixing (the order of the job where that is not known), then
 * water up to the mark: common practice, no source. The label's own order takes precedence, and the card says so. Printed
 * amounts are rounded down. If the plan refuses the job, the card says so and gives no mixing steps; the worksheet still has
 * the figures.
 *
 * @param plan - a finished plan
 * @param options - as for `worksheet`
 * @returns the texts, as data; `renderText`, `renderMarkdown`, `renderLatex` and `renderHtml` lay them out
 * @throws SprayMathError `not-a-quantity` for what is no plan and what `readPlan` throws for one that was changed;
 *   `out-of-range`, `missing`, `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 * import { fieldCard } from "swath-to-spoon/worksheet";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(121, "ft"), width: qty(90, "ft") },
 *   calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(4, "ft"), distance: qty(272.25, "ft") },
 *   sprayer: { tank: qty(4, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
 *   tools: "us-cups-and-spoons",
 * });
 * console.log(fieldCard(plan).loads[1]?.steps[1]); // Product A: 1.6 fl oz. Measure 3 tablespoons + 1/2 teaspoon (1% under).
 * ```
 */
export function fieldCard(plan: AnyPlan, options: WorksheetOptions = {}): FieldCard {
  const given = checked(options, WORKSHEET_OPTIONS, "options");
  const writer = writerFor(given);
  const { language, text } = writer.messages;
  const shown = planInUnits(checked(plan, ANY_PLAN, "plan"), given.units);
  const doses = writtenDoses(shown, writer).loads;
  // A card goes to the tank, where nobody reads twice: it gives no mixing steps for what must not be sprayed.
  const refused = shown.warnings.some(({ severity }) => severity === "refusal");
  const mixed = refused ? [] : shown.loads;
  const filling = writer.fill(text.fillingOrder, { products: shown.input.products.length });
  const order = [filling, ...(shown.mixingOrder ? [mixingText(shown.mixingOrder, writer)] : [])];
  return {
    kind: "field-card",
    language,
    title: text.cardTitle,
    warnings: writtenAlerts(shown, writer, ["refusal", "warning"]),
    facts: [
      ...sizeFacts(shown, writer),
      ...outputFacts(shown, writer),
      ...rateFacts(shown, writer),
      { name: text.totalMix, value: writer.short(shown.carrier.total) },
    ],
    order: refused ? [text.doNotMix] : order,
    loads: mixed.map((load, at) => ({
      title: loadTitle(load.number, shown, writer),
      steps: steps(load, inOrder(doses[at] ?? [], shown), shown, writer),
    })),
    cautions: cautionTexts(shown, writer),
    headings: {
      summary: text.summary,
      warnings: text.warnings,
      loads: text.loads,
      cautions: text.cautions,
      what: text.what,
      howMuch: text.howMuch,
    },
  };
}

function inOrder(doses: readonly WrittenDose[], { mixingOrder }: AnyPlan): readonly WrittenDose[] {
  if (mixingOrder === undefined) return doses;
  return mixingOrder.flatMap((name) => doses.filter(({ product }) => product === name));
}

function steps(
  load: AnyPlan["loads"][number],
  doses: readonly WrittenDose[],
  plan: AnyPlan,
  writer: Writer,
): string[] {
  const { messages, fill } = writer;
  const { text } = messages;
  const { carrier, water } = load;
  const { value, unit } = scale(water, 0.5);
  return [
    fill(text.halfFill, { half: { value: Number(value.toPrecision(2)), unit } }),
    ...doses.map(({ product, amount, measures, remark }) =>
      fill(measures.length === 0 ? text.pourOtherwise : text.pour, {
        product,
        amount,
        measures: measures.join(" + "),
        remark,
      }),
    ),
    fill(text.topUp, { carrier, water }),
    useText(coversText(load, plan, writer), plan, writer),
  ];
}

function useText(area: string | undefined, plan: AnyPlan, { messages: { text }, fill }: Writer): string {
  if (area === undefined) return text.useAll;
  return fill("area" in plan ? text.spray : text.use, { area });
}
