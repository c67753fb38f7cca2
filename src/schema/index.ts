export type { Limits } from "../units/fields.js";
export type { NumberUnit } from "../units/types.js";
export type { Schema } from "./field-of.js";
export {
  type FormChoice,
  type FormField,
  type FormName,
  type FormOptions,
  formFields,
} from "./form-fields.js";
export { FORM_LABELS } from "./form-labels.js";
export { type JsonSchema, toJsonSchema } from "./json-schema.js";
export {
  parseBatchInput,
  parseCalibration,
  parseCalibrationRecord,
  parsePlanInput,
  parseSpreadingInput,
} from "./parse.js";
export type { ReadingOptions } from "./reading.js";
export {
  batchInputSchema,
  calibrationRecordSchema,
  calibrationSchema,
  labelRateSchema,
  measurementSchema,
  planInputSchema,
  plotSchema,
  productSchema,
  quantitySchema,
  reserveSchema,
  sprayerSchema,
  spreadingInputSchema,
  todaySchema,
  toolsSchema,
} from "./schemas.js";
