export { CAUTIONS, type Caution } from "./cautions.js";
export { type ComparedValue, comparePlans, type Difference, type PlanComparison } from "./compare.js";
export type { DoseMeasure } from "./dose.js";
export type { PlanInput, Product, Split, Sprayer } from "./input.js";
export type { Currency, PlanCost, Price, ProductCost } from "./money.js";
export { planApplication } from "./plan.js";
export type {
  CompositeShape,
  GroundPlot,
  KnownGround,
  KnownTreated,
  PartPlot,
  Plot,
  PlotAreas,
  Shape,
} from "./plot.js";
export {
  type ActualApplication,
  type AppliedPlot,
  type AppliedProduct,
  type Reconciliation,
  reconcile,
  type SeasonTotal,
} from "./reconcile.js";
export type { ApplicationDetails, ApplicationRecord, RecordedProduct } from "./record.js";
export type { LoadProduct, Plan, PlannedLoad, ProductTotal } from "./result.js";
export { type InputSensitivity, planSensitivity } from "./sensitivity.js";
export { THRESHOLDS, type Threshold, type Thresholds } from "./thresholds.js";
export type { Severity, Warning, WarningCode } from "./warnings.js";
export type { PlanStep } from "./working.js";
