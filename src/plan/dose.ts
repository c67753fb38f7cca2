import type { MeasuringRule } from "../household/measure.js";
import {
  type Measurable,
  type MeasureOutInput,
  measureOut,
  type NotMeasurable,
} from "../household/measure-out.js";
import { checkedTools, dimensionMeasured, type MeasuringTool, type ToolSetName } from "../household/tools.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";

/** A dose as a person measures it, or why it can't be. */
export type DoseMeasure = (Measurable | NotMeasurable) & {
  /** True where the tools given hold no scale and a common one is taken for the product's weight. */
  readonly scaleAssumed?: true;
};

/** A label's rate is a maximum: no dose in a plan is measured over it. */
const RULE: MeasuringRule = "never-over";

/** What a job asks of `measureOut` for one dose. */
export function doseInput(
  amount: Volume | Mass,
  tools: ToolSetName | readonly MeasuringTool[],
  perArea: TreatedArea,
): MeasureOutInput {
  return { amount, tools: lacksScale(amount, tools) ? "scales" : tools, rule: RULE, perArea };
}

// A weight needs a scale, also where none is among the tools given.
function lacksScale(amount: Volume | Mass, tools: ToolSetName | readonly MeasuringTool[]): boolean {
  const weighs = (unit: Volume["unit"] | Mass["unit"]): boolean => dimensionMeasured(unit) === "mass";
  return weighs(amount.unit) && !checkedTools(tools).some(({ capacity }) => weighs(capacity.unit));
}

/** Measures one load's dose of a product, never over. */
export function doseMeasure(
  amount: Volume | Mass,
  tools: ToolSetName | readonly MeasuringTool[],
  perArea: TreatedArea,
): DoseMeasure {
  const measured = measureOut(doseInput(amount, tools, perArea));
  return lacksScale(amount, tools) ? { ...measured, scaleAssumed: true } : measured;
}
