import { checked } from "../units/check.js";
import { moreThan } from "../units/decide.js";
import { systemOf } from "../units/systems.js";
import type { MassUnit, Quantity, UnitSystem, VolumeUnit } from "../units/types.js";
import { type Kit, kitOf } from "./kit.js";
import { type NearestFills, nearestFills, percentOff, type Way } from "./measure.js";
import { doseOf, MEASURE_OUT, type MeasureOutInput } from "./measure-out.js";
import type { MeasuringTool } from "./measuring-tool.js";
import { kindOf, wayOf } from "./request.js";
import { findStock, type StockDilution } from "./stock-dilution.js";
import { plainName, type ToolSetName, toolsIn } from "./tools.js";

/** A tool with which the amount could be measured within the limit. */
export interface ToolSuggestion {
  /** Marks this kind of suggestion. */
  readonly kind: "tool";
  /** The tool to have besides the present ones. */
  readonly tool: MeasuringTool;
}

/** A batch of another size, which the present tools would measure. */
export interface BatchSuggestion<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** Marks this kind of suggestion. */
  readonly kind: "batch";
  /** The size of that batch over the size of this one: multiply carrier and area by it. */
  readonly times: number;
  /** The amount for a batch of that size; the present tools measure it without error. */
  readonly amount: Quantity<U>;
  /** How many scoops it takes. */
  readonly scoops: number;
}

/** A stock from which the present tools would measure the amount: only where the label permits diluting first. */
export interface StockSuggestion<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** Marks this kind of suggestion. */
  readonly kind: "stock";
  /** The stock and what to take of it. */
  readonly stock: StockDilution<U>;
}

/** What would make an amount measurable. */
export type Suggestion<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> =
  | ToolSuggestion
  | BatchSuggestion<U>
  | StockSuggestion<U>;

/**
 * Finds what would make an amount measurable that the tools can't measure within the limit. That is the tool to have besides,
 * if one would do; the size of the batch that the tools measure without error; and a stock, where the label permits it.
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
 * const input = { amount: qty(0.11, "tsp"), tools: "us-spoons", rule: "never-over" } as const;
 * console.log(suggestMeasures(input).map(({ kind }) => kind)); // [ 'tool', 'batch' ]
 * ```
 */
export function suggestMeasures<U extends VolumeUnit | MassUnit>(input: MeasureOutInput<U>): Suggestion<U>[] {
  const asked = checked(input, MEASURE_OUT) as MeasureOutInput<U>;
  if (doseOf(asked).ok) return [];
  const { amount, labelPermitsDilution } = asked;
  const { kit, way } = wayOf(asked);
  const batch = batchThatWouldDo(amount, kit, way);
  const tool = toolThatWouldDo(amount, kit, way);
  const stock = labelPermitsDilution ? findStock(asked) : undefined;
  return [...(tool ? [tool] : []), batch, ...(stock ? [{ kind: "stock" as const, stock }] : [])];
}

function toolThatWouldDo(
  amount: Quantity<VolumeUnit | MassUnit>,
  kit: Kit,
  way: Way,
): ToolSuggestion | undefined {
  let best: { readonly tool: MeasuringTool; readonly scoops: number; readonly off: number } | undefined;
  for (const { tool, kit: more } of kitsWithOneMore(kit, amount)) {
    // A tool that takes more scoops than the best one known is no better, so it need not be looked at further.
    const maxScoops = best?.scoops ?? way.maxScoops;
    const found = nearestFills(amount, more, { ...way, maxScoops }, "amount");
    if (found === undefined) continue;
    const off = Math.abs(percentOff(found.value, amount.value));
    if (moreThan(off, way.limitPercent)) continue;
    const { scoops } = found;
    if (best === undefined || scoops < best.scoops || (scoops === best.scoops && off < best.off))
      best = { tool, scoops, off };
  }
  return best && { kind: "tool", tool: best.tool };
}

interface OneMore {
  readonly tool: MeasuringTool;
  readonly kit: Kit;
}

const KEPT = new WeakMap<Kit, Map<UnitSystem, readonly OneMore[]>>();

/** Each tool that one could have besides, with the kit that it then makes: the same kits for the same tools. */
function kitsWithOneMore(kit: Kit, amount: Quantity<VolumeUnit | MassUnit>): readonly OneMore[] {
  const system = systemOf(amount.unit);
  const bySystem = KEPT.get(kit) ?? new Map<UnitSystem, readonly OneMore[]>();
  KEPT.set(kit, bySystem);
  const before = bySystem.get(system);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (before !== undefined) return before;
  const tools = kit.tools.map(({ tool }) => tool);
  const names = new Set(tools.map(({ name }) => plainName(name)));
  const kits = CANDIDATES[kindOf(amount)][system]
    .flatMap(toolsIn)
    .filter((tool) => !names.has(plainName(tool.name)))
    .map((tool): OneMore => ({ tool, kit: kitOf([...tools, tool]) }));
  bySystem.set(system, kits);
  return kits;
}

const CANDIDATES: Record<"volume" | "weight", Record<UnitSystem, ToolSetName[]>> = {
  volume: {
    us: ["us-household", "syringes", "cylinders"],
    imperial: ["imperial-measures", "syringes", "cylinders"],
    metric: ["metric-cups-and-spoons", "syringes", "cylinders"],
  },
  weight: {
    us: ["us-scales", "scales", "fine-scales"],
    imperial: ["us-scales", "scales", "fine-scales"],
    metric: ["scales", "fine-scales"],
  },
};

// A larger batch where the tools are too coarse: the least that they measure from this amount up. A smaller one where
// they are too small: the most that so many scoops come to. Either is measured without error.
function batchThatWouldDo<U extends VolumeUnit | MassUnit>(
  amount: Quantity<U>,
  kit: Kit,
  way: Way,
): BatchSuggestion<U> {
  const found =
    nearestFills(amount, kit, { ...way, rule: "never-under" }, "amount") ??
    (nearestFills(amount, kit, { ...way, rule: "never-over" }, "amount") as NearestFills);
  return {
    kind: "batch",
    times: found.value / amount.value,
    amount: { value: found.value, unit: amount.unit },
    scoops: found.scoops,
  };
}
