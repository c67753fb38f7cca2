export type { MeasuredPart, MeasuringRule } from "./measure.js";
export {
  type Measurable,
  type MeasuredDose,
  type MeasureOutInput,
  measureOut,
  measureOutWorking,
  measuringRules,
  type NotMeasurable,
} from "./measure-out.js";
export type { BatchSuggestion, Suggestion, ToolSuggestion } from "./suggest.js";
export { type MeasuringTool, type ToolSetName, toolSet, toolSetNames } from "./tools.js";
