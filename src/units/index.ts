export { convert, valueIn } from "./convert.js";
export { describeUnit, type UnitDescription } from "./describe.js";
export { dimensionOf } from "./dimensions.js";
export { type FormatOptions, formatQuantity, type LargestDenominator } from "./format.js";
export {
  fromIso11783,
  type Iso11783Purpose,
  type Iso11783Rate,
  type Iso11783Value,
  type SentRate,
  toIso11783,
} from "./iso11783.js";
export {
  type NumberOptions,
  type ParsedQuantity,
  type ParseOptions,
  parseNumber,
  parseQuantity,
} from "./parse.js";
export {
  compare as compareQuantities,
  qty,
  ratio as quantityRatio,
  sameDimension,
  scale as scaleQuantity,
  sum as sumQuantities,
} from "./quantity.js";
export { isUnit } from "./resolve.js";
export { systemOf } from "./systems.js";
export type * from "./types.js";
export { fromUcum, toUcum } from "./ucum.js";
export { unitsOf } from "./units-of.js";
export type { WorkingLine } from "./working-line.js";
