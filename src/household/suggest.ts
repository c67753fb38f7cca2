import type { Figures, Sentence } from "../errors.js";
import { type UsableMark, usableMarks } from "../tank-mix/tank-marks.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { decided, moreThan } from "../units/decide.js";
import { messageOf } from "../units/message.js";
import { systemOf } from "../units/systems.js";
import type { MassUnit, Quantity, UnitSystem, Volume, VolumeUnit } from "../units/types.js";
import { type Kit, kitOf } from "./kit.js";
import { type NearestFills, nearestFills, percentOff, type Way } from "./measure.js";
import { doseOf, longestCount, MEASURE_OUT, type MeasureOutInput } from "./measure-out.js";
import type { MeasuringTool } from "./measuring-tool.js";
import { kindOf, wayOf } from "./request.js";
import { newEffort } from "./search.js";
import { findStock, type StockDilution } from "./stock-dilution.js";
import { plainName, type ToolSetName, toolsIn } from "./tools.js";

/** What every suggestion has: a sentence, which `issueText` says in other languages. */
interface Said {
  /** Which sentence. */
  readonly key: string;
  /** Its figures. */
  readonly figures: Figures;
  /** The suggestion in plain English. */
  readonly message: string;
}

/** A tool with which the amount could be measured within the limit, or with fewer scoops. */
export interface ToolSuggestion extends Said {
  /** Marks this kind of suggestion. */
  readonly kind: "tool";
  /** The tool to have besides the present ones. */
  readonly tool: MeasuringTool;
}

/** A batch of another size, which the present tools would measure. */
export interface BatchSuggestion<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> extends Said {
  /** Marks this kind of suggestion. */
  readonly kind: "batch";
  /** The size of that batch over the size of this one: multiply carrier and area by it. */
  readonly times: number;
  /** The amount for a batch of that size, which the present tools measure. */
  readonly amount: Quantity<U>;
  /** The volume of mix in that batch, where `load` was given. */
  readonly load?: Volume | undefined;
  /** How many scoops it takes. */
  readonly scoops: number;
}

/** A stock from which the present tools would measure the amount: only where the label permits diluting first. */
export interface StockSuggestion<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> extends Said {
  /** Marks this kind of suggestion. */
  readonly kind: "stock";
  /** The stock and what to take of it. */
  readonly stock: StockDilution<U>;
}

/** What would make an amount measurable. */
export type Suggestion<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> =
  | BatchSuggestion<U>
  | ToolSuggestion
  | StockSuggestion<U>;

/**
 * Finds what would make an amount measurable that the tools can't measure within the limit. The easiest comes first: a load of
 * another size, then a tool to have besides, then a stock where the label permits it. With the tank's `marks`, the load is the
 * nearest mark that will do. A load of half or twice the size, or
 * further from it, comes last. Where a dose fills one tool more than six times, a larger tool is suggested. Each suggestion
 * has been measured: it does.
 *
 * @param input - what {@link measureOut} was asked
 * @returns the suggestions; none where the amount can be measured as it is
 * @throws SprayMathError as {@link measureOut}
 *
 * @example
 * ```ts
 * import { suggestMeasures } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const input = { amount: qty(0.117, "tsp"), tools: "us-spoons", rule: "never-over" } as const;
 * const suggestions = suggestMeasures({ ...input, load: qty(0.41, "gal") });
 * console.log(suggestions[0]?.message); // Mix 0.44 gal instead of 0.41 gal.
 * console.log(suggestions[1]?.message); // Use this tool as well: 1 mL syringe.
 * ```
 */
export function suggestMeasures<U extends VolumeUnit | MassUnit>(input: MeasureOutInput<U>): Suggestion<U>[] {
  return suggestionsFor(checked(input, MEASURE_OUT) as MeasureOutInput<U>);
}

/** What would make an amount measurable; `known` is the tool for it, where that isn't one of its kind. Trusts its input. */
export function suggestionsFor<U extends VolumeUnit | MassUnit>(
  asked: MeasureOutInput<U>,
  known?: MeasuringTool,
): Suggestion<U>[] {
  const { amount, labelPermitsDilution } = asked;
  const { kit, way } = wayOf(asked);
  const dose = doseOf(asked);
  if (dose.ok) {
    if (longestCount(dose) === undefined) return [];
    const tool = toolThatWouldDo(amount, kit, { ...way, maxScoops: dose.scoops - 1 });
    return tool ? [tool] : [];
  }
  const batch = batchThatWouldDo(asked, kit, way);
  const tool = known ? toolSuggestion(known) : toolThatWouldDo(amount, kit, way);
  const stock = labelPermitsDilution ? findStock(asked) : undefined;
  const others = [...(tool ? [tool] : []), ...(stock ? [stockSuggestion(stock)] : [])];
  if (batch === undefined) return others;
  // A load of half or twice the size is another job: the last thing to try.
  const isNear = batch.times > 0.5 && batch.times < 2;
  return isNear ? [batch, ...others] : [...others, batch];
}

/** The tool to have besides the present ones for an amount that they can't measure. Trusts its input. */
export function toolFor(asked: MeasureOutInput): MeasuringTool | undefined {
  const { kit, way } = wayOf(asked);
  return toolThatWouldDo(asked.amount, kit, way)?.tool;
}

function said({ key, template, figures }: Sentence): Said {
  return { key, figures, message: messageOf(template, figures) };
}

function stockSuggestion<U extends VolumeUnit | MassUnit>(stock: StockDilution<U>): StockSuggestion<U> {
  const { product, stock: volume, taken } = stock;
  return {
    kind: "stock",
    stock,
    ...said({
      key: "suggest-stock",
      template:
        "Dilute it first: put {product} of product in a measure, add water to {stock} and stir. Your dose is {taken} of that.",
      figures: { product: product.amount, stock: volume, taken },
    }),
  };
}

/** The tool that takes the fewest scoops, of the first set in which one would do: kitchen measures before laboratory ones. */
function toolThatWouldDo(
  amount: Quantity<VolumeUnit | MassUnit>,
  kit: Kit,
  way: Way,
): ToolSuggestion | undefined {
  for (const set of kitsWithOneMore(kit, amount)) {
    let best: { readonly tool: MeasuringTool; readonly scoops: number; readonly off: number } | undefined;
    for (const { tool, kit: more } of set) {
      // A tool that takes more scoops than the best one known is no better, so it need not be looked at further.
      const maxScoops = best?.scoops ?? way.maxScoops;
      const found = nearestFills(amount, more, { ...way, maxScoops });
      if (found === undefined) continue;
      const off = Math.abs(percentOff(found.value, amount.value));
      if (moreThan(off, way.limitPercent)) continue;
      const { scoops } = found;
      if (best === undefined || scoops < best.scoops || (scoops === best.scoops && off < best.off))
        best = { tool, scoops, off };
    }
    if (best === undefined) continue;
    return toolSuggestion(best.tool);
  }
  return undefined;
}

function toolSuggestion(tool: MeasuringTool): ToolSuggestion {
  return {
    kind: "tool",
    tool,
    ...said({
      key: "suggest-tool",
      template: "Use this tool as well: {tool.tool}.",
      figures: { tool: tool.name },
    }),
  };
}

interface OneMore {
  readonly tool: MeasuringTool;
  readonly kit: Kit;
}

/** The tools of a set that one could have besides, each with the kit that it then makes. */
type SetOfOneMore = readonly OneMore[];

const KEPT = new WeakMap<Kit, Map<UnitSystem, readonly SetOfOneMore[]>>();

/** Each tool that one could have besides, set by set: the same kits for the same tools. */
function kitsWithOneMore(kit: Kit, amount: Quantity<VolumeUnit | MassUnit>): readonly SetOfOneMore[] {
  const system = systemOf(amount.unit);
  const bySystem = KEPT.get(kit) ?? new Map<UnitSystem, readonly SetOfOneMore[]>();
  KEPT.set(kit, bySystem);
  const before = bySystem.get(system);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (before !== undefined) return before;
  const tools = kit.tools.map(({ tool }) => tool);
  const names = new Set(tools.map(({ name }) => plainName(name)));
  const sets = CANDIDATES[kindOf(amount)][system].map((set) =>
    toolsIn(set)
      .filter((tool) => !names.has(plainName(tool.name)))
      .map((tool): OneMore => ({ tool, kit: kitOf([...tools, tool]) })),
  );
  bySystem.set(system, sets);
  return sets;
}

const CANDIDATES: Record<"volume" | "weight", Record<UnitSystem, ToolSetName[]>> = {
  volume: {
    us: ["us-household", "syringes", "cylinders"],
    imperial: ["imperial-measures", "syringes", "cylinders"],
    metric: ["metric-cups-and-spoons", "syringes", "cylinders"],
  },
  weight: {
    us: ["us-scales", "scales", "fine-scales"],
    // Stryker disable next-line ArrayDeclaration,StringLiteral: no unit of weight is imperial alone
    imperial: ["us-scales", "scales", "fine-scales"],
    metric: ["scales", "fine-scales"],
  },
};

// A larger batch where the tools are too coarse: the least that they measure from this amount up. A smaller one where
// they are too small, or the tank is: the most that so many scoops come to.
function batchThatWouldDo<U extends VolumeUnit | MassUnit>(
  asked: MeasureOutInput<U>,
  kit: Kit,
  way: Way,
): BatchSuggestion<U> | undefined {
  const { amount, load, tank, marks } = asked;
  // Stryker disable next-line ConditionalExpression,LogicalOperator: marks come with a load and a tank
  if (load && tank && marks) return loadOnMark(asked, load, usableMarks({ tank, marks }, load.unit));
  const most = load && tank ? inUnit(tank, load.unit) / load.value : Number.POSITIVE_INFINITY;
  for (const rule of ["never-under", "never-over"] as const) {
    const found = nearestFills(amount, kit, { ...way, rule });
    if (found === undefined || found.scoops === 0) continue;
    const batch = batchOf(asked, kit, way, found.value / amount.value);
    if (!moreThan(batch.times, most)) return batch;
  }
  return undefined;
}

/** The load that ends on the nearest mark with which the dose can be measured. */
function loadOnMark<U extends VolumeUnit | MassUnit>(
  asked: MeasureOutInput<U>,
  load: Volume,
  marks: readonly UsableMark[],
): BatchSuggestion<U> | undefined {
  const { amount } = asked;
  const effort = newEffort();
  const times = ({ value }: UsableMark): number => value / load.value;
  const distance = (mark: UsableMark): number => Math.abs(Math.log(times(mark)));
  for (const mark of [...marks].sort((a, b) => distance(a) - distance(b))) {
    const batch = { value: amount.value * times(mark), unit: amount.unit };
    // Stryker disable next-line StringLiteral: a dose of a load that the tank holds is in reach
    const dose = doseOf({ ...asked, amount: batch }, "amount", effort);
    if (dose.ok)
      return loadSuggestion(
        { times: times(mark), amount: batch, load: mark.mark, scoops: dose.scoops },
        load,
      );
  }
  return undefined;
}

function loadSuggestion<U extends VolumeUnit | MassUnit>(
  batch: Omit<BatchSuggestion<U>, "kind" | keyof Said> & { readonly load: Volume },
  given: Volume,
): BatchSuggestion<U> {
  const figures = { load: batch.load, given };
  return {
    kind: "batch",
    ...batch,
    ...said({ key: "suggest-load", template: "Mix {load} instead of {given}.", figures }),
  };
}

/** A batch so many times as large; the load to the fewest figures, from two up, with which its dose can be measured. */
function batchOf<U extends VolumeUnit | MassUnit>(
  asked: MeasureOutInput<U>,
  kit: Kit,
  way: Way,
  times: number,
): BatchSuggestion<U> {
  const { amount, load } = asked;
  const size = (load ?? amount).value;
  const amountFor = (one: number): Quantity<U> => ({ value: amount.value * (one / size), unit: amount.unit });
  const sizes = [2, 3, 4].map((digits) =>
    // Away from this batch: towards it would be out of reach of the tools again.
    decided(size * times)
      .prec(digits, times > 1 ? 3 : 0)
      .toNumber(),
  );
  const readable = load && sizes.find((one) => doseOf({ ...asked, amount: amountFor(one) }).ok);
  const one = readable ?? size * times;
  const larger = amountFor(one);
  const batch = {
    times: larger.value / amount.value,
    amount: larger,
    scoops: (nearestFills(larger, kit, way) as NearestFills).scoops,
  };
  if (load !== undefined) return loadSuggestion({ ...batch, load: { value: one, unit: load.unit } }, load);
  return {
    kind: "batch",
    ...batch,
    ...said({
      key: "suggest-batch",
      template: "Mix a batch that takes {amount} of product instead of {given}.",
      figures: { amount: larger, given: amount },
    }),
  };
}
