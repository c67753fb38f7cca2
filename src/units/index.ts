export { convert, valueIn } from "./convert.js";
export { describeUnit, type UnitDescription } from "./describe.js";
export { dimensionOf, sameDimension, unitsOf } from "./dimensions.js";
export { type FormatOptions, formatQuantity, type LargestDenominator } from "./format.js";
export {
  fromIso11783,
  type Iso11783Purpose,
  type Iso11783Rate,
  type Iso11783Value,
  type SentRate,
  toIso11783,
} from "./iso11783.js";
export { type ParsedQuantity, type ParseOptions, parseNumber, parseQuantity } from "./parse.js";
export { compare, qty, ratio, scale, sum } from "./quantity.js";
export { isUnit } from "./resolve.js";
export { systemOf } from "./systems.js";
export type * from "./types.js";
export { fromUcum, toUcum } from "./ucum.js";
export type { WorkingLine } from "./working.js";
