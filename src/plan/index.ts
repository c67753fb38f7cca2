export { type ApplicationKind, MOST_RATES } from "./application.js";
export type { SeasonTotal } from "./applied.js";
export type { BatchInput, BatchSplit, BatchSprayer, JobInput } from "./batch-input.js";
export { CAUTIONS, type Caution } from "./cautions.js";
export { comparePlans, compareSpreadingPlans, type PlanComparison } from "./compare.js";
export type { ComparedValue, Difference } from "./differences.js";
export { type DoseAdvice, doseAdvice } from "./dose-advice.js";
export type { LoadCost } from "./easiest.js";
export type {
  DryProduct,
  LiquidProduct,
  MixDry,
  MixLiquid,
  MixProduct,
  PlanInput,
  Product,
  RowsPerLoad,
  Split,
  Sprayer,
} from "./input.js";
export { type LoadChoice, type LoadChoiceOptions, loadChoices } from "./load-choices.js";
export { type EndUnit, type LoadEnd, loadEnds } from "./load-ends.js";
export { type MixInput, type MixSplit, planMix, type RowsOrPlots } from "./mix.js";
export type { Currency, MixCost, PlanCost, Price, ProductCost } from "./money.js";
export { planApplication } from "./plan.js";
export type { PlanStep } from "./plan-steps.js";
export type {
  CompositeShape,
  GroundPlot,
  KnownGround,
  KnownTreated,
  PartPlot,
  Plot,
  Shape,
} from "./plot.js";
export type { JobArea, PlotAreas } from "./plot-areas.js";
export { readPlan, readSpreadingPlan } from "./read-plan.js";
export {
  type ActualApplication,
  type AppliedPlot,
  type AppliedProduct,
  type Reconciliation,
  reconcile,
} from "./reconcile.js";
export type { BatchApplied, BatchReconciliation } from "./reconcile-batch.js";
export {
  type ActualSpreading,
  reconcileSpreading,
  type SpreadingReconciliation,
  type SpreadPlot,
} from "./reconcile-spreading.js";
export {
  type ApplicationDetails,
  type ApplicationRecord,
  type RecordedProduct,
  readRecord,
} from "./record.js";
export type {
  AnyPlan,
  BatchPlan,
  CoversArea,
  CoversBatch,
  DoseMeasure,
  LoadAmount,
  LoadOf,
  LoadProduct,
  Mix,
  MixLoad,
  MixOf,
  Plan,
  PlannedLoad,
  PlotAmount,
  ProductTotal,
  SpreadingCost,
  SpreadingPlan,
} from "./result.js";
export { type SeasonInput, seasonSoFar } from "./season.js";
export { type InputSensitivity, planSensitivity } from "./sensitivity.js";
export { planSpreading } from "./spreading.js";
export type {
  GranulesRate,
  NutrientRate,
  SpreadAreaRate,
  Spreader,
  SpreadingBySize,
  SpreadingCount,
  SpreadingInput,
  SpreadingLabel,
  SpreadingOnPlot,
  SpreadingProduct,
  SpreadingRow,
  SpreadingSize,
  SpreadRate,
} from "./spreading-input.js";
export { type SpreadingSensitivity, spreadingSensitivity } from "./spreading-sensitivity.js";
export type { SpreadingStep } from "./spreading-steps.js";
export { THRESHOLDS, type Threshold, type Thresholds, type ThresholdTable } from "./thresholds.js";
export type { Severity, Warning, WarningCode } from "./warnings.js";
