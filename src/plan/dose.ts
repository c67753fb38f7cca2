import { byVolume } from "../household/by-volume.js";
import type { MeasuringRule } from "../household/measure.js";
import {
  type Measurable,
  type MeasureOutInput,
  measureOut,
  type NotMeasurable,
} from "../household/measure-out.js";
import { checkedTools, dimensionMeasured } from "../household/tools.js";
import { convert } from "../units/convert.js";
import { unitsLike } from "../units/systems.js";
import type { Mass, MassUnit, TreatedArea, Volume } from "../units/types.js";
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
  const needsScale = isMass(amount) && !checkedTools(tools).some(({ capacity }) => isMass(capacity));
  if (needsScale && bulkDensity !== undefined) {
    const volume = byVolume({ mass: amount, bulkDensity });
    return { input: { amount: volume, tools, rule: RULE, ...permission }, volume, scaleAssumed: false };
  }
  // Per acre or hectare, as rates are told.
  const perArea = convert(area, unitsLike(area.unit).landArea);
  return {
    input: { amount, tools: needsScale ? "scales" : tools, rule: RULE, perArea, ...permission },
    scaleAssumed: needsScale,
  };
}

function isMass(amount: Volume | Mass): amount is Mass {
  return dimensionMeasured(amount.unit as MassUnit) === "mass";
}

/** Measures one load's dose of a product, never over. */
export function doseMeasure(request: DoseRequest): DoseMeasure {
  const { input, volume, scaleAssumed } = request;
  const dose = measureOut(input);
  if (volume !== undefined) return { ...dose, volume };
  return scaleAssumed ? { ...dose, scaleAssumed } : dose;
}
