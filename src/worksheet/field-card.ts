import { isSpare } from "../plan/coverage.js";
import { withOneMore } from "../plan/dose-advice.js";
import type { Product } from "../plan/input.js";
import { endsOf, type LoadEnd } from "../plan/load-ends.js";
import { ANY_PLAN } from "../plan/read-plan.js";
import { isRefused } from "../plan/refused.js";
import type { AnyPlan, LoadProduct } from "../plan/result.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { withoutNoise } from "../units/three-figures.js";
import { cardAlerts, type WrittenAlert } from "./job/alerts.js";
import { alike, loadsTitle } from "./job/alike.js";
import { inOrder, isInBags, type WrittenDose, writtenDoses, writtenMeasure } from "./job/amounts.js";
import {
  aboutText,
  cautionTexts,
  coveredByAll,
  coveredByEach,
  coversText,
  lastSprayed,
  leftAtEnd,
  nameFacts,
  outputFacts,
  outText,
  rateFacts,
  type SheetFact,
  sizeFacts,
  totalText,
  waitFacts,
} from "./job/facts.js";
import { byJug, fillOf, halfOf, inFluidOunces, inTank, numbersIn, roughly, waterOf } from "./job/fit.js";
import { coveredText, doneText, endsNarrow, placeText, stopText } from "./job/places.js";
import { inPlotUnits, planInUnits } from "./job/plan-in-units.js";
import { WORKSHEET_OPTIONS, type WorksheetOptions } from "./options.js";
import { ENGLISH_WORDS } from "./words/english.js";
import type { Messages } from "./words/messages.js";
import { type Writer, writerFor } from "./words/writer.js";

/** A load on the card, or several that are mixed alike. */
export interface CardLoad {
  /** Which loads. */
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
  /** Refusals and warnings, and the note that a scale is needed; other notes are left to the worksheet. */
  readonly warnings: readonly WrittenAlert[];
  /** What the sprayer is set for. */
  readonly facts: readonly SheetFact[];
  /** That the label's own order of mixing goes before the card's. Where the job is refused, not to mix. */
  readonly order: readonly string[];
  /** The loads, in the order of mixing; loads that are mixed alike once. */
  readonly loads: readonly CardLoad[];
  /** The cautions. */
  readonly cautions: readonly string[];
  /** The headings of the parts and of the table's columns. */
  readonly headings: Readonly<
    Record<"summary" | "warnings" | "loads" | "cautions" | "what" | "howMuch", string>
  >;
}

/**
 * Returns the field card of a plan: load by load what to do, in order, with a box to check for each step. Loads that are mixed alike stand
 * there once. Refusals and warnings stand on top, the cautions below.
 *
 * Half the water goes in first, then the products in their order of mixing (the order of the job where that is not known), then
 * water up to the mark: common practice, no source. The label's own order takes precedence, and the card says so. No
 * number has more than three figures, unless somebody entered it. What the tank is filled to is rounded up and amounts of product
 * down, so the strength never goes over the label. The tank's fill is in the tank's own unit. For a dose that can't be measured
 * the card names one more tool, and what to measure with it.
 *
 * Where the plot has rows, the card says where each load should end, and when to stop and calibrate again: see `loadEnds`. If
 * the plan refuses the job, the card says so and gives no mixing steps.
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
  const made = checked(plan, ANY_PLAN, "plan");
  const writer = { ...writerFor(given, ENGLISH_WORDS), entered: numbersIn(made.input) };
  const { language, text } = writer.messages;
  const shown = inPlotUnits(planInUnits(made, given.units));
  const refused = isRefused(shown);
  const order = writer.fill(text.fillingOrder, { products: shown.input.products.length });
  return {
    kind: "field-card",
    language,
    title: text.cardTitle,
    warnings: cardAlerts(shown, writer),
    facts: [
      ...nameFacts(shown, writer),
      ...sizeFacts(shown, writer),
      ...outputFacts(shown, writer),
      ...rateFacts(shown, writer),
      ...waitFacts(shown.input.products, writer),
      ...(refused ? [] : [{ name: text.totalMix, value: totalText(shown, writer) }]),
    ],
    // A card goes to the tank, where nobody reads twice: it gives no mixing steps for what must not be sprayed.
    order: [refused ? text.doNotMix : order],
    loads: refused ? [] : cardLoads(shown, writer),
    cautions: cautionTexts(shown, writer),
    headings: cardHeadings(text),
  };
}

/** The headings of a card. */
export function cardHeadings(text: Messages["text"]): FieldCard["headings"] {
  const { summary, warnings, loads, cautions, what, howMuch } = text;
  return { summary, warnings, loads, cautions, what, howMuch };
}

type Load = AnyPlan["loads"][number];

function cardLoads(plan: AnyPlan, writer: Writer): CardLoad[] {
  const doses = writtenDoses(plan, writer).loads;
  const pour = pourer(plan, writer);
  const mixing = plan.loads.map((load, at) =>
    mixingSteps(load, inOrder(doses[at] as readonly WrittenDose[], plan), pour, plan, writer),
  );
  const ends = endsOf(plan);
  const read = mixing.map((steps, at) => [...steps, isSpare(plan.loads[at] as Load)].join("\n"));
  return alike(read).map((places) => {
    const [first = 0] = places;
    const steps = mixing[first] as readonly string[];
    return {
      title: loadsTitle(places, plan, writer),
      // Boxes are ticked from the top: at the end it would be mixed.
      steps: isSpare(plan.loads[first] as Load)
        ? [writer.messages.text.spareLoad, ...steps, writer.messages.text.spraySpare]
        : [...steps, ...sprayingSteps(places, ends, plan, writer)],
    };
  });
}

type Pour = (dose: WrittenDose, load: Load) => string;

/** Says what to pour. For what these tools can't measure, a tool that can is looked for once, though every load has it. */
function pourer(plan: AnyPlan, writer: Writer): Pour {
  const { messages, fill, tool: nameOf } = writer;
  const { text } = messages;
  const known = new Map<string, string>();
  const pourWith = ({ product, amount }: WrittenDose, { products }: Load): string => {
    const at = products.findIndex(({ name }) => name === product);
    const more = withOneMore(
      (products[at] as LoadProduct).amount,
      plan.input.products[at] as Product,
      plan.input,
    );
    if (more === undefined) return fill(text.pourOtherwise, { product, amount });
    const { measures, remark } = writtenMeasure(more.measured, writer);
    const tool = nameOf(more.tool.name);
    return fill(text.pourWithTool, { product, amount, tool, measures: measures.join(" + "), remark });
  };
  return (dose, load) => {
    const { product, amount, measures, remark } = dose;
    if (isInBags(product, plan)) return fill(text.pourBags, { product, amount });
    if (measures.length > 0)
      return fill(text.pour, { product, amount, measures: measures.join(" + "), remark });
    const same = `${product} ${amount}`;
    const step = known.get(same) ?? pourWith(dose, load);
    known.set(same, step);
    return step;
  };
}

function mixingSteps(
  load: Load,
  doses: readonly WrittenDose[],
  pour: Pour,
  plan: AnyPlan,
  writer: Writer,
): string[] {
  const { messages, fill, exact } = writer;
  return [
    fill(messages.text.halfFill, { half: exact(halfOf(load, plan)) }),
    ...doses.map((dose) => pour(dose, load)),
    ...topUpSteps(load, plan, writer),
  ];
}

/** The rinse, and how far to fill the tank. A fill that nobody entered may be at no mark: then a jug has the water for both. */
function topUpSteps(load: Load, plan: AnyPlan, writer: Writer): string[] {
  const { messages, fill, exact } = writer;
  const { text } = messages;
  const carrier = fillOf(load, plan);
  if (carrier === undefined) return [text.rinse, text.topUpFull];
  const figures = { carrier: exact(carrier) };
  const steps = [text.rinse, fill(load.mark ? text.topUpToMark : text.topUp, figures)];
  const { tank, workingFill } = plan.input.sprayer;
  if (load.mark || [tank, workingFill].includes(carrier)) return steps;
  const all = waterOf(load, plan);
  const rest = { ...all, value: all.value - inUnit(halfOf(load, plan), all.unit) };
  const water = byJug(withoutNoise(rest)).map(exact).join(" + ");
  return [fill(text.waterByJug, { ...figures, water }), ...steps];
}

/** What loads that are mixed alike are sprayed on, and where each should end. */
function sprayingSteps(
  places: readonly number[],
  ends: readonly LoadEnd[],
  plan: AnyPlan,
  writer: Writer,
): string[] {
  const [first] = places;
  const stop = first === 0 && ends[0] ? stopText(ends[0], plan, writer) : undefined;
  const left = places.includes(lastSprayed(plan)) ? leftText(plan, writer) : undefined;
  return [...coverageSteps(places, ends, plan, writer), stop, left].filter((step) => step !== undefined);
}

function coverageSteps(
  places: readonly number[],
  ends: readonly LoadEnd[],
  plan: AnyPlan,
  writer: Writer,
): string[] {
  const { messages, fill } = writer;
  const { text } = messages;
  const [first = 0] = places;
  const last = lastSprayed(plan);
  if (ends.length === 0) return [text.useAll];
  if (places.length === 1) return [(first === last ? lastText : outToText)(first, ends, plan, writer)];
  const known = endsText(places, ends, plan, writer);
  // Where loads differ, the places where they end say how.
  const isSaid = known !== undefined && coveredByEach(places, ends, plan, writer) === undefined;
  const area = isSaid ? undefined : coveredByAll(places, ends, plan, writer);
  const covers = area === undefined ? "" : fill(text.outEach, { covers: area });
  return [outText(places, covers, plan, writer), ...(known === undefined ? [] : [known])];
}

/** Where each of several loads runs out. Nothing where that can't be said of all of them. */
function endsText(
  places: readonly number[],
  ends: readonly LoadEnd[],
  plan: AnyPlan,
  writer: Writer,
): string | undefined {
  const { messages, fill } = writer;
  const { text } = messages;
  const last = lastSprayed(plan);
  const out = places.filter((at) => at !== last);
  if (out.length > MOST_ENDS) return undefined;
  const done = out.flatMap((at) => {
    const end = ends[at];
    const place = end && doneText(end, plan, writer);
    return place === undefined ? [] : [fill(text.loadRunsOut, { load: at + 1, done: place })];
  });
  if (done.length < out.length) return undefined;
  return fill(text.runOut, { ends: done });
}

// More places than these nobody looks up.
const MOST_ENDS = 6;

/** What the last load is sprayed on: to the end of the job. */
function lastText(at: number, ends: readonly LoadEnd[], plan: AnyPlan, writer: Writer): string {
  const { messages, fill } = writer;
  const { text } = messages;
  if (plan.loads.length === 1 && "area" in plan) return text.sprayAll;
  const end = ends[at] as LoadEnd;
  const area = coversText(plan.loads[at] as Load, end, writer);
  if (area === undefined) return text.useAll;
  if (!("area" in plan)) return fill(text.use, { area });
  const place = placeText(end, plan, writer);
  if (place === undefined) return fill(text.spray, { area: aboutText(area, end, writer) });
  // Of less than a pass an area says nothing, nor does a part of a pass of one that is only narrower.
  const covers = endsNarrow(end)
    ? undefined
    : (coveredText(end, writer) ?? (end.unit === "part" ? area : undefined));
  return covers === undefined ? fill(text.sprayRest, { place }) : fill(text.sprayTo, { covers, place });
}

/** A load that another one follows, and about where it runs out. */
function outToText(at: number, ends: readonly LoadEnd[], plan: AnyPlan, writer: Writer): string {
  const { messages, fill } = writer;
  const { text } = messages;
  const end = ends[at] as LoadEnd;
  const area = coversText(plan.loads[at] as Load, end, writer);
  if (area === undefined) return outText([at], "", plan, writer);
  const place = "area" in plan ? placeText(end, plan, writer) : undefined;
  const covers =
    place === undefined
      ? fill(text.outCovers, { covers: aboutText(area, end, writer) })
      : fill(text.outTo, { covers: coveredText(end, writer) ?? area, place });
  return outText([at], covers, plan, writer);
}

/** What should be left at the end, where there is extra mix, and what it would be enough for. */
function leftText(plan: AnyPlan, writer: Writer): string | undefined {
  const { messages, fill, exact } = writer;
  const { text } = messages;
  const leftover = leftAtEnd(plan);
  const reserve = inTank(leftover.reserve, plan);
  const mix = roughly(reserve);
  if (mix.value === 0) return undefined;
  // Two figures of a gallon that are no quarters become ounces, and these come from the mix itself: rounded twice, they'd be off.
  const ounces = inFluidOunces(mix);
  const left = exact(ounces === mix ? mix : roughly({ ...ounces, value: inUnit(reserve, ounces.unit) }));
  const area = coversText(leftover, undefined, writer);
  return area === undefined ? fill(text.leftInTank, { left }) : fill(text.leftInTankFor, { left, area });
}
