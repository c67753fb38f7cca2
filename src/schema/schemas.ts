import { TOOLS, type Tools } from "../household/tools.js";
import { CALIBRATION, type Calibration } from "../output-rate/calibration.js";
import { CALIBRATION_RECORD, type CalibrationRecord } from "../output-rate/calibration-record.js";
import { MEASUREMENT, type Measurement } from "../output-rate/measurement.js";
import { TODAY, type TodaysConditions } from "../output-rate/what-changed.js";
import { BATCH_INPUT, type BatchInput } from "../plan/batch-input.js";
import { PLAN_INPUT, type PlanInput, PRODUCT, type Product, SPRAYER, type Sprayer } from "../plan/input.js";
import { PLOT, type Plot } from "../plan/plot.js";
import { SPREADING_INPUT, type SpreadingInput } from "../plan/spreading-input.js";
import { RESERVE, type Reserve } from "../tank-mix/carrier.js";
import { LABEL_RATE, type LabelRate } from "../tank-mix/label-rate.js";
import { checked, type Field } from "../units/check.js";
import { quantity } from "../units/quantity-field.js";
import type { Dimension, Quantity, UnitsByDimension } from "../units/types.js";
import { DIMENSION } from "../units/units-of.js";
import type { Schema } from "./field-of.js";
import type { ReadingOptions } from "./reading.js";
import { schemaOf } from "./zod.js";

/**
 * Returns the schema of a whole spray job, as a form collects it: what `planApplication` takes, with text allowed for quantities.
 *
 * It composes with an app's own schemas, and zod's tools work on it. An app that wants the library's errors calls
 * {@link parsePlanInput} instead. No code is made from text, so a strict Content-Security-Policy allows it.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { planInputSchema } from "swath-to-spoon/schema";
 * import * as z from "zod/mini";
 *
 * const order = z.object({ customer: z.string(), job: planInputSchema() });
 * const read = order.safeParse({ customer: "Example Farm", job: { tools: "spoons" } });
 * console.log(read.error?.issues.map((issue) => issue.path.join("."))); // [ 'job.plot', 'job.calibration', 'job.sprayer', 'job.products', 'job.tools' ]
 * ```
 */
export function planInputSchema(options?: ReadingOptions): Schema<PlanInput> {
  return schemaOf(PLAN_INPUT, options);
}

/**
 * Returns the schema of a job by volume, by count or by length of row: a spot tank, pots, transplants, an orchard by the tree. Text is
 * allowed for quantities.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { batchInputSchema } from "swath-to-spoon/schema";
 *
 * const read = batchInputSchema().safeParse({ size: { kind: "volume", volume: "3 gal" } });
 * console.log(read.error?.issues.map((issue) => issue.path.join("."))); // [ 'sprayer', 'products', 'tools' ]
 * ```
 */
export function batchInputSchema(options?: ReadingOptions): Schema<BatchInput> {
  return schemaOf(BATCH_INPUT, options);
}

/**
 * Returns the schema of a job of granules or dry fertilizer: what `planSpreading` takes, with text allowed for quantities.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { spreadingInputSchema } from "swath-to-spoon/schema";
 *
 * const read = spreadingInputSchema().safeParse({ size: { kind: "count", count: "45 trees" } });
 * console.log(read.error?.issues.map((issue) => issue.path.join("."))); // [ 'spreader', 'product' ]
 * ```
 */
export function spreadingInputSchema(options?: ReadingOptions): Schema<SpreadingInput> {
  return schemaOf(SPREADING_INPUT, options);
}

/**
 * Returns the schema of one plot, of any kind.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { plotSchema } from "swath-to-spoon/schema";
 *
 * const plot = plotSchema().parse({ kind: "rectangle", length: "40 m", width: "25 m" });
 * console.log(plot.kind === "rectangle" && plot.length); // { value: 40, unit: 'm' }
 * ```
 */
export function plotSchema(options?: ReadingOptions): Schema<Plot> {
  return schemaOf(PLOT, options);
}

/**
 * Returns the schema of a calibration: a measurement, a known rate, or a record of one.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { calibrationSchema } from "swath-to-spoon/schema";
 *
 * const strip = { kind: "strip", used: "34 fl oz", swath: "30 in", distance: "120 ft" };
 * console.log(calibrationSchema().safeParse(strip).success); // true
 * ```
 */
export function calibrationSchema(options?: ReadingOptions): Schema<Calibration> {
  return schemaOf(CALIBRATION, options);
}

/**
 * Returns the schema of a calibration that was kept.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { calibrationRecordSchema } from "swath-to-spoon/schema";
 *
 * const kept = { version: 1, date: "2025-04-12", measurement: { kind: "known", rate: "200 L/ha" }, conditions: {} };
 * console.log(calibrationRecordSchema().safeParse(kept).success); // true
 * ```
 */
export function calibrationRecordSchema(options?: ReadingOptions): Schema<CalibrationRecord> {
  return schemaOf(CALIBRATION_RECORD, options);
}

/**
 * Returns the schema of a measurement of the output: a strip, a catch, a known rate and so on.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { measurementSchema } from "swath-to-spoon/schema";
 *
 * console.log(measurementSchema().parse({ kind: "known", rate: "20 gal/ac" })); // { kind: 'known', rate: { value: 20, unit: 'gal/ac' } }
 * ```
 */
export function measurementSchema(options?: ReadingOptions): Schema<Measurement> {
  return schemaOf(MEASUREMENT, options);
}

/**
 * Returns the schema of the day of spraying, which a calibration record is compared with.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { todaySchema } from "swath-to-spoon/schema";
 *
 * const today = todaySchema().parse({ date: "2025-06-01", conditions: { speed: "3 mph" } });
 * console.log(today.conditions?.speed); // { value: 3, unit: 'mph' }
 * ```
 */
export function todaySchema(options?: ReadingOptions): Schema<TodaysConditions> {
  return schemaOf(TODAY, options);
}

/**
 * Returns the schema of a sprayer.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { sprayerSchema } from "swath-to-spoon/schema";
 *
 * console.log(sprayerSchema({ system: "imperial" }).parse({ tank: "4 gal" })); // { tank: { value: 4, unit: 'imp_gal' } }
 * ```
 */
export function sprayerSchema(options?: ReadingOptions): Schema<Sprayer> {
  return schemaOf(SPRAYER, options);
}

/**
 * Returns the schema of a reserve: extra mix, beyond what the job needs.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { reserveSchema } from "swath-to-spoon/schema";
 *
 * console.log(reserveSchema().parse({ roundUpTo: "1 qt" })); // { roundUpTo: { value: 1, unit: 'qt' } }
 * ```
 */
export function reserveSchema(options?: ReadingOptions): Schema<Reserve> {
  return schemaOf(RESERVE, options);
}

/**
 * Returns the schema of the tools that doses are measured with: the name of a set, or a list.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { toolsSchema } from "swath-to-spoon/schema";
 *
 * console.log(toolsSchema().parse("metric-spoons")); // metric-spoons
 * console.log(toolsSchema().parse([{ name: "jug", capacity: "1 L", graduation: "50 mL" }]).length); // 1
 * ```
 */
export function toolsSchema(options?: ReadingOptions): Schema<Tools> {
  return schemaOf(TOOLS, options);
}

/**
 * Returns the schema of a product that goes into the tank.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { productSchema } from "swath-to-spoon/schema";
 *
 * const product = productSchema().parse({ name: "Product A", form: "liquid", rate: "1 1/2 pt/ac" });
 * console.log(product.rate); // { value: 1.5, unit: 'pt/ac' }
 * ```
 */
export function productSchema(options?: ReadingOptions): Schema<Product> {
  return schemaOf(PRODUCT, options);
}

/**
 * Returns the schema of a rate as a label gives it.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { labelRateSchema } from "swath-to-spoon/schema";
 *
 * console.log(labelRateSchema().parse("0.25% v/v")); // { value: 0.25, unit: '%', basis: 'v/v' }
 * ```
 */
export function labelRateSchema(options?: ReadingOptions): Schema<LabelRate> {
  return schemaOf(LABEL_RATE, options);
}

// The same field each time, which the schemas are kept by.
const quantityFields = /* @__PURE__ */ new Map<Dimension, Field<Quantity>>();

function quantityOf(dimension: Dimension): Field<Quantity> {
  const known = quantityFields.get(dimension) ?? quantity("", dimension);
  quantityFields.set(dimension, known);
  return known;
}

/**
 * Returns the schema of a quantity of one dimension, more than 0: an object or text.
 *
 * @param dimension - what it is to measure
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same dimension and options
 * @throws SprayMathError `unknown-choice` for a dimension or an option
 *
 * @example
 * ```ts
 * import { quantitySchema } from "swath-to-spoon/schema";
 *
 * console.log(quantitySchema("volume").parse("2 1/2 gal")); // { value: 2.5, unit: 'gal' }
 * console.log(quantitySchema("volumeRate", { locale: "de" }).parse("1,5 l/ha")); // { value: 1.5, unit: 'L/ha' }
 * ```
 */
export function quantitySchema<D extends Dimension>(
  dimension: D,
  options?: ReadingOptions,
): Schema<Quantity<UnitsByDimension[D]>> {
  return schemaOf(quantityOf(checked(dimension, DIMENSION, "dimension")), options) as Schema<
    Quantity<UnitsByDimension[D]>
  >;
}
