import { moreThan } from "../units/decide.js";
import { systemOf } from "../units/systems.js";
import type { MassUnit, Quantity, UnitSystem, VolumeUnit } from "../units/types.js";
import { type Measured, measure, percentOff } from "./measure.js";
import type { MeasuringRequest } from "./request.js";
import { findStock, type StockDilution } from "./stock-dilution.js";
import { dimensionMeasured, type MeasuringTool, toolSet } from "./tools.js";

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

/** What would make an amount measurable that is not: a tool, a batch of another size, and a stock where the label permits it. */
export function suggestionsFor<U extends VolumeUnit | MassUnit>(
  request: MeasuringRequest<U>,
  labelPermitsDilution: boolean,
): Suggestion<U>[] {
  const tool = toolThatWouldDo(request);
  const batch = batchThatWouldDo(request);
  const stock = labelPermitsDilution ? findStock(request) : undefined;
  return [
    ...(tool ? [tool] : []),
    ...(batch ? [batch] : []),
    ...(stock ? [{ kind: "stock" as const, stock }] : []),
  ];
}

function toolThatWouldDo(request: MeasuringRequest): ToolSuggestion | undefined {
  const { amount, tools, limitPercent } = request;
  let best: { readonly tool: MeasuringTool; readonly scoops: number; readonly off: number } | undefined;
  for (const [tool, more] of withOneMore(tools, amount.unit)) {
    // A tool that takes more scoops than the best one known is no better, so it need not be looked at further.
    const maxScoops = best?.scoops ?? request.maxScoops;
    const found = measure({ ...request, tools: more, maxScoops });
    if (found === undefined) continue;
    const off = Math.abs(percentOff(found.value, amount.value));
    if (moreThan(off, limitPercent)) continue;
    const { scoops } = found;
    if (best === undefined || scoops < best.scoops || (scoops === best.scoops && off < best.off))
      best = { tool, scoops, off };
  }
  return best && { kind: "tool", tool: best.tool };
}

type OneMore = readonly [tool: MeasuringTool, tools: readonly MeasuringTool[]];

const KEPT = new WeakMap<readonly MeasuringTool[], Map<UnitSystem, readonly OneMore[]>>();

/** Each tool that one could have besides, with the list that it then makes: the same lists for the same tools. */
function withOneMore(tools: readonly MeasuringTool[], unit: VolumeUnit | MassUnit): readonly OneMore[] {
  const system = systemOf(unit);
  const bySystem = KEPT.get(tools) ?? new Map<UnitSystem, readonly OneMore[]>();
  KEPT.set(tools, bySystem);
  const before = bySystem.get(system);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (before !== undefined) return before;
  const lists = candidates(unit, system)
    .filter((tool) => !tools.some(({ name }) => name === tool.name))
    .map((tool): OneMore => [tool, [...tools, tool]]);
  bySystem.set(system, lists);
  return lists;
}

function candidates(unit: VolumeUnit | MassUnit, system: UnitSystem): MeasuringTool[] {
  if (dimensionMeasured(unit) === "mass")
    return system === "metric" ? toolSet("scales") : [...toolSet("us-scales"), ...toolSet("scales")];
  const kitchen = {
    us: "us-household",
    imperial: "imperial-measures",
    metric: "metric-cups-and-spoons",
  } as const;
  return [...toolSet(kitchen[system]), ...toolSet("syringes"), ...toolSet("cylinders")];
}

// A larger batch where the tools are too coarse: the least that they measure from this amount up. A smaller one where
// they are too small: the most that so many scoops come to. Either is measured without error.
function batchThatWouldDo<U extends VolumeUnit | MassUnit>(
  request: MeasuringRequest<U>,
): BatchSuggestion<U> | undefined {
  const { amount } = request;
  const found: Measured | undefined =
    measure({ ...request, rule: "never-under" }) ?? measure({ ...request, rule: "never-over" });
  if (found === undefined || found.scoops === 0) return undefined;
  return {
    kind: "batch",
    times: found.value / amount.value,
    amount: { value: found.value, unit: amount.unit },
    scoops: found.scoops,
  };
}
