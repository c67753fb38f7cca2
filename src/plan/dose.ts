import { kitFor } from "../household/kit.js";
import type { MeasuringRule } from "../household/measure.js";
import {
  type Measurable,
  type MeasureOutInput,
  measureOut,
  type NotMeasurable,
} from "../household/measure-out.js";
import { isWeight } from "../household/measuring-tool.js";
import { TOOLS } from "../household/tools.js";
import { volumeOfWeight } from "../household/volume-of-weight.js";
import { checked } from "../units/check.js";
import { convert } from "../units/convert.js";
import { unitsLike } from "../units/systems.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";
import type { PlanInput, Product } from "./input.js";

/** A dose as a person measures it, or why it can't be. */
export type DoseMeasure = (Measurable | NotMeasurable) & {
  /** For a dry product that is spooned by its own bulk density: the volume that the dose fills. */
  readonly volume?: Volume;
  /** True where the tools given hold no scale and a common one is taken for the product's weight. */
  readonly scaleAssumed?: true;
};

/** A label's rate is a maximum: no dose in a plan is measured over it. */
const RULE: MeasuringRule = "never-over";

/** How one dose is measured: what `measureOut` is asked, and what it took to get there. */
export interface DoseRequest {
  /** What is asked of `measureOut`. */
  readonly input: MeasureOutInput;
  /** The volume that a dry dose fills, where it is spooned. */
  readonly volume?: Volume;
  /** Whether a scale had to be assumed. */
  readonly scaleAssumed: boolean;
}

/** How a dose is measured: a weight on a scale, or spooned by its bulk density; where there is neither, on a common scale. */
export function doseRequest(
  amount: Volume | Mass,
  { bulkDensity, labelPermitsDilution }: Product,
  tools: PlanInput["tools"],
  area: TreatedArea,
): DoseRequest {
  const permission = labelPermitsDilution === undefined ? {} : { labelPermitsDilution };
  const needsScale = isWeight(amount) && kitFor(checked(tools, TOOLS, "tools"), "weight") === undefined;
  if (needsScale && bulkDensity !== undefined) {
    const volume = volumeOfWeight({ mass: amount as Mass, bulkDensity });
    return { input: { amount: volume, tools, rule: RULE, ...permission }, volume, scaleAssumed: false };
  }
  // Per acre or hectare, as rates are told.
  const perArea = convert(area, unitsLike(area.unit).landArea);
  return {
    input: { amount, tools: needsScale ? "scales" : tools, rule: RULE, perArea, ...permission },
    scaleAssumed: needsScale,
  };
}

/** Measures one load's dose of a product, never over. */
export function doseMeasure(request: DoseRequest): DoseMeasure {
  const { input, volume, scaleAssumed } = request;
  const dose = measureOut(input);
  if (volume !== undefined) return { ...dose, volume };
  return scaleAssumed ? { ...dose, scaleAssumed } : dose;
}
