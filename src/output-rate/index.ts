export {
  type Calibration,
  type RecordedCalibration,
  rateOf,
  rateOfWorking,
} from "./calibration.js";
export {
  type CalibrationConditions,
  type CalibrationRecord,
  type CalibrationRecordInput,
  type ConditionName,
  calibrationRecord,
  readCalibrationRecord,
} from "./calibration-record.js";
export { type Catches, type CatchInput, catchRate, catchRateWorking } from "./catch.js";
export {
  type Densities,
  densityFactor,
  densityFactorWorking,
  type SolutionForWaterInput,
  solutionForWater,
  solutionForWaterWorking,
  type WaterForSolutionInput,
  waterForSolution,
  waterForSolutionWorking,
} from "./density.js";
export {
  type DirectReading,
  type DirectStripInput,
  directStripArea,
  directStripAreaWorking,
  directStripDistance,
  directStripDistanceWorking,
  directStripRate,
  directStripRateWorking,
  type ReadingPair,
} from "./direct-strip.js";
export { type HandSprayInput, handSprayRates, handSprayRatesWorking } from "./hand-spray.js";
export type {
  CatchMeasurement,
  DirectStripMeasurement,
  FlowMeasurement,
  HandMeasurement,
  KnownRate,
  Measurement,
  StripMeasurement,
  StripRunsMeasurement,
  TreeRowMeasurement,
} from "./measurement.js";
export {
  checkNozzles,
  checkNozzlesWorking,
  type NozzleAction,
  type NozzleCheck,
  type NozzleCheckInput,
  type NozzleReference,
  type NozzleRule,
  type NozzleVerdict,
} from "./nozzle-check.js";
export {
  type OutputAtPressure,
  type OutputAtPressureInput,
  outputAtPressure,
  outputAtPressureWorking,
  type PressureForOutput,
  type PressureForOutputInput,
  type PressureRange,
  pressureForOutput,
  pressureForOutputWorking,
  type RangeVerdict,
} from "./pressure.js";
export { type RateAtSpeedInput, rateAtSpeed, rateAtSpeedWorking } from "./rate-at-speed.js";
export {
  type OutputTerms,
  type SolvedOutput,
  type SolveInput,
  solveOutput,
  solveOutputWorking,
} from "./solve-output.js";
export {
  averageSpeed,
  averageSpeedWorking,
  type DistanceAtSpeed,
  speedFrom,
  speedFromWorking,
  type TimedDistance,
  type TimedPasses,
  timeFor,
  timeForWorking,
} from "./speed.js";
export { type StripRun, stripRate, stripRateWorking } from "./strip.js";
export {
  type StripRuns,
  type StripRunsInput,
  stripRuns,
  stripRunsSpreadWorking,
  stripRunsWorking,
} from "./strip-runs.js";
export {
  checkAgainstTarget,
  checkAgainstTargetWorking,
  type TargetCheck,
  type TargetCheckInput,
} from "./target-check.js";
export { type RowRates, type TreeRowInput, treeRowRate, treeRowRateWorking } from "./tree-row.js";
export {
  type RateUncertainty,
  rateUncertainty,
  rateUncertaintyWorking,
  type UncertaintyShare,
} from "./uncertainty.js";
export {
  type CalibrationChange,
  type TodaysConditions,
  type WhatChanged,
  whatChanged,
  whatChangedWorking,
} from "./what-changed.js";
