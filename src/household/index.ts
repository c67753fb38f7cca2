export { type ByVolumeInput, byVolume, byVolumeWorking } from "./by-volume.js";
export {
  type DoseTableCell,
  type DoseTableInput,
  type DoseTableRow,
  doseTable,
  steps,
  type TableRate,
} from "./dose-table.js";
export type { MeasuredPart, MeasuringRule } from "./measure.js";
export {
  type Measurable,
  type MeasuredDose,
  type MeasureOutInput,
  measureOut,
  measureOutWorking,
  type NotMeasurable,
} from "./measure-out.js";
export { type MeasuringInput, measuringRules } from "./request.js";
export {
  type NoStockDilution,
  type StockDilution,
  type StockDilutionInput,
  stockDilution,
  stockDilutionWorking,
} from "./stock-dilution.js";
export type { BatchSuggestion, StockSuggestion, Suggestion, ToolSuggestion } from "./suggest.js";
export { type MeasuringTool, type ToolSetName, toolSet, toolSetNames } from "./tools.js";
