import { SprayMathError, shown } from "../errors.js";
import { checkedChoice, checkedCount, checkedNumber, checkedObject } from "../units/guard.js";
import type { MassUnit, Quantity, VolumeUnit } from "../units/types.js";
import { type MeasuringRule, MOST_SCOOPS } from "./measure.js";
import {
  checkedSize,
  checkedTools,
  dimensionMeasured,
  type MeasuringTool,
  type ToolSetName,
} from "./tools.js";

/** What every measuring function is asked. */
export interface MeasuringInput<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  /** The amount of product wanted: a volume or a weight, more than 0. */
  readonly amount: Quantity<U>;
  /** A named set, or a list of tools. Those that measure the other kind (scales for a volume) are passed over. */
  readonly tools: ToolSetName | readonly MeasuringTool[];
  /** `never-over` where the amount is a label's maximum, `never-under` where it is a minimum, or `nearest`. */
  readonly rule: MeasuringRule;
  /** The largest error that is taken, in per cent of the amount, from 0.1 to 50; 5 where nothing is given. */
  readonly limitPercent?: number;
  /** The most scoops that are taken, from 1 to 100; 16 where nothing is given: a longer count goes wrong. */
  readonly maxScoops?: number;
}

/** The same, checked. */
export interface MeasuringRequest<U extends VolumeUnit | MassUnit = VolumeUnit | MassUnit> {
  readonly amount: Quantity<U>;
  /** The tools that measure the amount's kind. */
  readonly tools: readonly MeasuringTool[];
  /** Every tool given. */
  readonly allTools: readonly MeasuringTool[];
  readonly rule: MeasuringRule;
  readonly limitPercent: number;
  readonly maxScoops: number;
}

/** The names of the rules, for a form's list of choices. */
export const measuringRules: readonly MeasuringRule[] = ["never-over", "never-under", "nearest"];

/** Guards the arguments that every measuring function has. */
export function checkedRequest<U extends VolumeUnit | MassUnit>(
  input: MeasuringInput<U>,
): MeasuringRequest<U> {
  const { amount, tools, rule, limitPercent = 5, maxScoops = MOST_SCOOPS } = checkedObject(input, "");
  checkedSize(amount, "amount");
  const allTools = checkedTools(tools);
  const fitting = toolsFor(amount, allTools);
  checkedChoice(rule, measuringRules, "rule");
  checkedNumber(limitPercent, "limitPercent", { min: 0.1, max: 50 });
  if (checkedCount(maxScoops, "maxScoops") > 100)
    throw new SprayMathError("out-of-range", "maxScoops", `Given ${maxScoops}; wanted 100 or fewer.`);
  return { amount, tools: fitting, allTools, rule, limitPercent, maxScoops };
}

function toolsFor(
  amount: Quantity<VolumeUnit | MassUnit>,
  tools: readonly MeasuringTool[],
): readonly MeasuringTool[] {
  const kind = dimensionMeasured(amount.unit);
  const fitting = ofKind(tools, kind);
  if (fitting.length > 0) return fitting;
  const given = `Given ${amount.value} ${amount.unit}, a ${kind === "mass" ? "weight" : "volume"}, and no tool that measures one`;
  throw new SprayMathError(
    "wrong-dimension",
    "tools",
    kind === "mass"
      ? `${given}; wanted a scale: a weight is weighed, not spooned, unless the product's own bulk density is known. An ounce of weight (oz) is not a fluid ounce (fl_oz).`
      : `${given}; wanted spoons, a syringe or a cylinder. A fluid ounce (fl_oz) is not an ounce of weight (oz).`,
  );
}

type Kind = ReturnType<typeof dimensionMeasured>;

const KEPT = new WeakMap<readonly MeasuringTool[], Map<Kind, readonly MeasuringTool[]>>();

// The same list for the same tools, so that their sizes are compared once.
function ofKind(tools: readonly MeasuringTool[], kind: Kind): readonly MeasuringTool[] {
  const byKind = KEPT.get(tools) ?? new Map<Kind, readonly MeasuringTool[]>();
  const before = byKind.get(kind);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (before !== undefined) return before;
  const fitting = tools.filter(({ capacity }) => dimensionMeasured(capacity.unit) === kind);
  KEPT.set(tools, byKind.set(kind, fitting));
  return fitting;
}

/** Whether the label permits diluting first: true or false, and never taken for granted. */
export function checkedPermission(permits: boolean | undefined): boolean {
  if (typeof permits === "boolean") return permits;
  throw new SprayMathError(
    permits === undefined || permits === null ? "missing" : "unknown-choice",
    "labelPermitsDilution",
    `Given ${shown(permits)}; wanted true or false: whether the label permits diluting this product before it goes into the tank.`,
  );
}
