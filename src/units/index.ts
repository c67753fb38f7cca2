export { convert, valueIn } from "./convert.js";
export { dimensionOf, sameDimension, unitsOf } from "./dimensions.js";
export { compare, qty, ratio, scale, sum } from "./quantity.js";
export { isUnit } from "./resolve.js";
export { systemOf } from "./systems.js";
export type * from "./types.js";
