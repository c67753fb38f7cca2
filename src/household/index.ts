export {
  type DoseTableCell,
  type DoseTableInput,
  type DoseTableRow,
  doseTable,
  type EvenStepsInput,
  evenSteps,
  type TableRate,
} from "./dose-table.js";
export type { MeasuringRule } from "./measure.js";
export {
  type Measurable,
  type MeasuredDose,
  type MeasureOutInput,
  measureOut,
  type NotMeasurable,
} from "./measure-out.js";
export type { MeasuringTool } from "./measuring-tool.js";
export type { MeasuredPart } from "./parts.js";
export { type MeasuringInput, measuringRules } from "./request.js";
export {
  type NoStockDilution,
  type StockDilution,
  type StockDilutionInput,
  stockDilution,
} from "./stock-dilution.js";
export {
  type BatchSuggestion,
  type StockSuggestion,
  type Suggestion,
  suggestMeasures,
  type ToolSuggestion,
} from "./suggest.js";
export { type ToolSetName, type Tools, toolSet, toolSetNames, usualTools } from "./tools.js";
export { type VolumeOfWeightInput, volumeOfWeight } from "./volume-of-weight.js";
