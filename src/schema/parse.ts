import type { Calibration } from "../output-rate/calibration.js";
import type { CalibrationRecord } from "../output-rate/calibration-record.js";
import type { PlanInput } from "../plan/input.js";
import { calibrationRecordSchema, calibrationSchema } from "./calibration.js";
import type { Schema } from "./fields.js";
import { asSprayMathError } from "./issues.js";
import type { ReadingOptions } from "./options.js";
import { planInputSchema } from "./plan-input.js";

// `jitless` holds for this call alone: whatever schemas an app has put in, nothing here makes code from text.
function parsed<T>(schema: Schema<T>, value: unknown): T {
  const read = schema.safeParse(value, { jitless: true, reportInput: true });
  if (read.success) return read.data;
  throw asSprayMathError(read.error.issues);
}

/**
 * Reads a whole spray job from what a form or a file has, and finds every fault of it at once. Quantities may be objects
 * (`{ value, unit }`) or text (`"2 1/2 gal"`), as `parseQuantity` reads it.
 *
 * What is looked at: that every field that is needed is there and none that is not known (undefined ones aside), kinds and
 * choices, dimensions, ranges, and rates against the product's form. What only the whole job shows, such as a fill over the
 * tank or bands wider than their spacing, `planApplication` finds.
 *
 * @param value - anything, such as parsed JSON
 * @param options - whose numbers and measures text is in: `locale`, `system`, and what a bare `oz` is
 * @returns the job, as plain data for `planApplication`, with text read into quantities
 * @throws SprayMathError with `issues`, one for each fault: `code`, `path` such as `products[1].rate`, and `message`; its own
 * `path` is the first one's. Every code of the library may come. `unknown-choice` at `options.locale` and the like for an option
 *
 * @example
 * ```ts
 * import { parsePlanInput } from "swath-to-spoon/schema";
 * import { SprayMathError } from "swath-to-spoon";
 *
 * const form = {
 *   plot: { kind: "rectangle", length: "121 ft", width: "90 gal" },
 *   calibration: { kind: "known", rate: "20 gal/ac" },
 *   sprayer: { tank: 4 },
 *   products: [{ name: "Product A", form: "liquid", rate: "2 pt/ac" }],
 *   tools: "us-spoons",
 * };
 * try {
 *   parsePlanInput(form);
 * } catch (error) {
 *   if (error instanceof SprayMathError) console.log(error.issues.map(({ code, path }) => `${code} ${path}`).join(", ")); // wrong-dimension plot.width, not-a-quantity sprayer.tank
 * }
 * ```
 */
export function parsePlanInput(value: unknown, options?: ReadingOptions): PlanInput {
  return parsed(planInputSchema(options), value);
}

/**
 * Reads a calibration, as {@link parsePlanInput} reads a job.
 *
 * @param value - anything, such as parsed JSON
 * @param options - as for {@link parsePlanInput}
 * @returns the calibration, for `rateOf` and `planApplication`
 * @throws SprayMathError with `issues`, as {@link parsePlanInput} does
 *
 * @example
 * ```ts
 * import { rateOf } from "swath-to-spoon/output-rate";
 * import { parseCalibration } from "swath-to-spoon/schema";
 *
 * const strip = parseCalibration({ kind: "strip", used: "2 L", swath: "2 m", distance: "50 m" });
 * console.log(rateOf(strip)); // { value: 200, unit: 'L/ha' }
 * ```
 */
export function parseCalibration(value: unknown, options?: ReadingOptions): Calibration {
  return parsed(calibrationSchema(options), value);
}

/**
 * Reads a calibration record that was kept, as {@link parsePlanInput} reads a job. Unlike `readCalibrationRecord` it finds every fault
 * at once and refuses fields that it does not know.
 *
 * @param value - anything, such as parsed JSON
 * @param options - as for {@link parsePlanInput}
 * @returns the record, for `whatChanged`
 * @throws SprayMathError with `issues`, as {@link parsePlanInput} does
 *
 * @example
 * ```ts
 * import { parseCalibrationRecord } from "swath-to-spoon/schema";
 *
 * const kept = { version: 1, date: "2025-04-12", measurement: { kind: "known", rate: "200 L/ha" }, conditions: {} };
 * console.log(parseCalibrationRecord(kept).measurement); // { kind: 'known', rate: { value: 200, unit: 'L/ha' } }
 * ```
 */
export function parseCalibrationRecord(value: unknown, options?: ReadingOptions): CalibrationRecord {
  return parsed(calibrationRecordSchema(options), value);
}
