export { CAUTIONS, type Caution } from "./cautions.js";
export type { DoseMeasure } from "./dose.js";
export type { Calibration, PlanInput, Product, Sprayer } from "./input.js";
export {
  type LoadProduct,
  type Plan,
  type PlannedLoad,
  type ProductTotal,
  planApplication,
} from "./plan.js";
export type { Plot, PlotAreas } from "./plot.js";
export type { Severity, Warning } from "./warnings.js";
export { type PlanStep, planWorking } from "./working.js";
