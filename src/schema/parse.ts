import { CALIBRATION, type Calibration } from "../output-rate/calibration.js";
import { CALIBRATION_RECORD, type CalibrationRecord } from "../output-rate/calibration-record.js";
import { BATCH_INPUT, type BatchInput } from "../plan/batch-input.js";
import { PLAN_INPUT, type PlanInput } from "../plan/input.js";
import { SPREADING_INPUT, type SpreadingInput } from "../plan/spreading-input.js";
import { checkedOptions, type ReadingOptions, readBy } from "./reading.js";

/**
 * Reads a whole spray job from what a form or a file has, and reports every fault of it at once. A quantity may be an object
 * (`{ value, unit }`) or text (`"2 1/2 gal"`), and a number may be text (`"1,000"`): see `parseQuantity` and `parseNumber`.
 *
 * The checks are those of `planApplication`: fields that are missing or not known, kinds, choices, dimensions and ranges.
 * Fields must also agree with one another: no fill over the tank. Only what has to be worked out is left to `planApplication`,
 * such as two runs that disagree. Reading stops at 1000 faults.
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
 *   tools: "us-cups-and-spoons",
 * };
 * try {
 *   parsePlanInput(form);
 * } catch (error) {
 *   if (error instanceof SprayMathError) console.log(error.issues.map(({ code, path }) => `${code} ${path}`).join(", ")); // wrong-dimension plot.width, not-a-quantity sprayer.tank
 * }
 * ```
 */
export function parsePlanInput(value: unknown, options?: ReadingOptions): PlanInput {
  return readBy(PLAN_INPUT, value, checkedOptions(options));
}

/**
 * Reads a job by volume, by count or by length of row, as {@link parsePlanInput} reads one on an area.
 *
 * @param value - anything, such as parsed JSON
 * @param options - as for {@link parsePlanInput}
 * @returns the job, as plain data for `planApplication`
 * @throws SprayMathError with `issues`, as {@link parsePlanInput} does
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { parseBatchInput } from "swath-to-spoon/schema";
 *
 * const job = parseBatchInput({
 *   size: { kind: "count", count: "300 pots", each: "4 fl oz" },
 *   sprayer: { tank: "4 gal" },
 *   products: [{ name: "Product A", form: "liquid", rate: "8 fl oz/100 gal" }],
 *   tools: "us-spoons",
 * });
 * console.log(planApplication(job).carrier.total); // { value: 9.375, unit: 'gal' }
 * ```
 */
export function parseBatchInput(value: unknown, options?: ReadingOptions): BatchInput {
  return readBy(BATCH_INPUT, value, checkedOptions(options));
}

/**
 * Reads a job of granules or dry fertilizer, as {@link parsePlanInput} reads a spray job.
 *
 * @param value - anything, such as parsed JSON
 * @param options - as for {@link parsePlanInput}
 * @returns the job, as plain data for `planSpreading`
 * @throws SprayMathError with `issues`, as {@link parsePlanInput} does
 *
 * @example
 * ```ts
 * import { planSpreading } from "swath-to-spoon/plan";
 * import { parseSpreadingInput } from "swath-to-spoon/schema";
 *
 * const job = parseSpreadingInput({
 *   plot: { kind: "rectangle", length: "180 ft", width: "100 ft" },
 *   spreader: { hopper: "20 lb" },
 *   product: { name: "Product A", rate: "5 lb/1000 sq ft" },
 * });
 * console.log(planSpreading(job).total); // { value: 90, unit: 'lb' }
 * ```
 */
export function parseSpreadingInput(value: unknown, options?: ReadingOptions): SpreadingInput {
  return readBy(SPREADING_INPUT, value, checkedOptions(options));
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
  return readBy(CALIBRATION, value, checkedOptions(options));
}

/**
 * Reads a calibration record that was kept, as {@link parsePlanInput} reads a job. Unlike `readCalibrationRecord` it takes text.
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
  return readBy(CALIBRATION_RECORD, value, checkedOptions(options));
}
