export { type Calibration, type RecordedCalibration, rateOf } from "./calibration.js";
export {
  type CalibrationConditions,
  type CalibrationRecord,
  type CalibrationRecordInput,
  type ConditionName,
  calibrationRecord,
  readCalibrationRecord,
} from "./calibration-record.js";
export { type Catches, type CatchInput, catchRate } from "./catch.js";
export { type CoverTimeInput, timeToCover } from "./cover-time.js";
export {
  type Densities,
  densityFactor,
  type SolutionForWaterInput,
  solutionForWater,
  type WaterForSolutionInput,
  waterForSolution,
} from "./density.js";
export {
  type DirectReading,
  type DirectStripInput,
  directStripArea,
  directStripDistance,
  directStripRate,
  type ReadingPair,
} from "./direct-strip.js";
export { type HandSprayInput, handSprayRates } from "./hand-spray.js";
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
  type NozzleAction,
  type NozzleCheck,
  type NozzleCheckInput,
  type NozzleReference,
  type NozzleRule,
  type NozzleVerdict,
} from "./nozzle-check.js";
export { type RatePerPlantInput, ratePerPlant } from "./per-plant.js";
export {
  type OutputAtPressure,
  type OutputAtPressureInput,
  outputAtPressure,
  type PressureForOutput,
  type PressureForOutputInput,
  type PressureRange,
  pressureForOutput,
  type RangeVerdict,
} from "./pressure.js";
export { type RateAtSpeedInput, rateAtSpeed } from "./rate-at-speed.js";
export { type OutputTerms, type SolvedOutput, type SolveInput, solveOutput } from "./solve-output.js";
export {
  averageSpeed,
  type DistanceAtSpeed,
  speedFrom,
  type TimedDistance,
  type TimedPasses,
  timeFor,
} from "./speed.js";
export {
  type CatchOnArea,
  type CatchOnRow,
  checkSpreader,
  type SpreaderArea,
  type SpreaderAreaCheck,
  type SpreaderCatchInput,
  type SpreaderCheck,
  type SpreaderCheckInput,
  type SpreaderFinding,
  type SpreaderRow,
  type SpreaderRowCheck,
  type SpreaderStrip,
  type SpreaderTest,
  spreaderCatch,
  spreaderRate,
} from "./spreader.js";
export { type StripRun, stripRate } from "./strip.js";
export { type StripRuns, type StripRunsInput, stripRuns } from "./strip-runs.js";
export { checkAgainstTarget, type TargetCheck, type TargetCheckInput } from "./target-check.js";
export {
  averageFlow,
  flowFrom,
  type PlantTimeInput,
  type PlantTiming,
  type SprayTimeInput,
  type TimedCatch,
  type TimedCatches,
  timePerPlant,
  timeToSpray,
  volumePerPlant,
} from "./timing.js";
export { type RowRates, type TreeRowInput, treeRowRate } from "./tree-row.js";
export { type CanopyInput, type DiluteRateInput, diluteRate, treeRowVolume } from "./tree-row-volume.js";
export { type RateUncertainty, rateUncertainty, type UncertaintyShare } from "./uncertainty.js";
export {
  type CalibrationChange,
  type TodaysConditions,
  type WhatChanged,
  whatChanged,
} from "./what-changed.js";
