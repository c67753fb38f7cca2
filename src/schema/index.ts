export { calibrationRecordSchema, calibrationSchema, measurementSchema, todaySchema } from "./calibration.js";
export type { Schema } from "./fields.js";
export { type JsonSchema, toJsonSchema } from "./json-schema.js";
export type { ReadingOptions } from "./options.js";
export { parseCalibration, parseCalibrationRecord, parsePlanInput } from "./parse.js";
export { planInputSchema, reserveSchema, sprayerSchema, toolsSchema } from "./plan-input.js";
export { plotSchema } from "./plot.js";
export { labelRateSchema, productSchema } from "./product.js";
export { quantitySchema } from "./quantity.js";
