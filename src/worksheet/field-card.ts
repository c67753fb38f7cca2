import type { Plan, PlannedLoad } from "../plan/result.js";
import { scale } from "../units/quantity.js";
import { type WrittenAlert, writtenAlerts } from "./job/alerts.js";
import { type Fact, type WrittenDose, writtenDoses } from "./job/amounts.js";
import { toldPlan } from "./job/plan-in-units.js";
import { rateFacts } from "./job/rates.js";
import { filled } from "./lines/line-text.js";
import { type Writer, writerFor } from "./words/writer.js";
import { cautionTexts, loadTitle, mixingText, type WorksheetOptions } from "./worksheet.js";

/** A load on the card. */
export interface CardLoad {
  /** Which load, and how far to fill. */
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
  readonly facts: readonly Fact[];
  /** How a load is mixed: the order of filling, and of products where it is known. */
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
 * The field card of a plan: load by load what to pour, in which order, measured with what, with a box to tick for each
 * step; refusals and warnings on top, the cautions below.
 *
 * Half of the water goes in first, then the products in their order of mixing (the order of the job where that is not
 * known), then water up to the mark: common practice, no source; the label's own order goes before it, and the card says
 * so. Printed amounts are rounded down. Where the plan refuses the job, the card says so in place of the loads; the
 * worksheet has their figures.
 *
 * @param plan - a finished plan
 * @param options - as for `worksheet`
 * @returns the texts, as data; `renderText`, `renderMarkdown`, `renderLatex` and `renderHtml` lay them out
 * @throws SprayMathError `out-of-range` or `unknown-choice` for an option
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
 *   tools: "us-spoons",
 * });
 * console.log(fieldCard(plan).loads[1]?.steps[1]); // Product A: 1.6 fl oz. Measure 3 × tablespoon + 1 × 1/2 teaspoon (1% under).
 * ```
 */
export function fieldCard(plan: Plan, options: WorksheetOptions = {}): FieldCard {
  const writer = writerFor(options);
  const { language, text } = writer.messages;
  const { plan: shown } = toldPlan(plan, options.units);
  const doses = writtenDoses(shown, writer).loads;
  // A card goes to the tank, where nobody reads twice: of what is not to be sprayed it does not tell how to mix it.
  const refused = shown.warnings.some(({ severity }) => severity === "refusal");
  const mixed = refused ? [] : shown.loads;
  const order = [text.fillingOrder, ...(shown.mixingOrder ? [mixingText(shown.mixingOrder, writer)] : [])];
  return {
    kind: "field-card",
    language,
    title: text.cardTitle,
    warnings: writtenAlerts(shown, writer, ["refusal", "warning"]),
    facts: [
      { name: text.treatedArea, value: writer.short(shown.area.treated) },
      { name: text.outputRate, value: writer.short(shown.rate) },
      ...rateFacts(shown, writer),
      { name: text.mixInAll, value: writer.short(shown.carrier.total) },
    ],
    order: refused ? [text.doNotMix] : order,
    loads: mixed.map((load, at) => ({
      title: loadTitle(load.number, shown, writer),
      steps: steps(load, inOrder(doses[at] ?? [], shown), writer),
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

function inOrder(doses: readonly WrittenDose[], { mixingOrder }: Plan): readonly WrittenDose[] {
  if (mixingOrder === undefined) return doses;
  return mixingOrder.flatMap((name) => doses.filter(({ product }) => product === name));
}

function steps(
  { carrier, water, area }: PlannedLoad,
  doses: readonly WrittenDose[],
  { messages: { text }, short, rough }: Writer,
): string[] {
  return [
    filled(text.halfFill, { half: rough(scale(water, 0.5), 2) }),
    ...doses.map(({ product, amount, measures, remark }) =>
      filled(measures.length === 0 ? text.pourOtherwise : text.pour, {
        product,
        amount,
        measures: measures.join(" + "),
        remark,
      }),
    ),
    filled(text.fillUp, { carrier: short(carrier), water: short(water) }),
    filled(text.spray, { area: short(area) }),
  ];
}
