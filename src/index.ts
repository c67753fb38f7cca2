export * from "./area/index.js";
export { type ErrorCode, type Figures, type Issue, isSprayMathError, SprayMathError } from "./errors.js";
export * from "./household/index.js";
export * from "./output-rate/index.js";
export * from "./plan/index.js";
export * from "./swath/index.js";
export * from "./tank-mix/index.js";
export * from "./units/index.js";
export * from "./worksheet/index.js";
