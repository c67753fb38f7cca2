import { within } from "../errors.js";
import { checkedChoice, checkedObject } from "../units/guard.js";
import type { VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { MEASUREMENT_KINDS, type Measurement, measuredRate, measuredRateWorking } from "./measurement.js";
import { type CalibrationRecord, readCalibrationRecord } from "./record.js";

/** A calibration that was kept. */
export interface RecordedCalibration {
  /** Says that it is a record. */
  readonly kind: "record";
  /** The record, as it was kept. */
  readonly record: CalibrationRecord;
}

/** Every way to tell a rate: a measurement, a known rate, or a record of one; `kind` tells them apart. */
export type Calibration = Measurement | RecordedCalibration;

/**
 * The rate that a calibration gives, whichever way it was made.
 *
 * Formula: that of {@link stripRate}, {@link stripRuns}, {@link directStripRate}, {@link catchRate}, {@link treeRowRate},
 * {@link handRate} or {@link solveOutput}, as `kind` says; a record is worked out again from what was measured.
 *
 * @param calibration - what was measured, with its `kind`
 * @returns the volume per area; a known rate in its own unit, others in gal/ac, imp_gal/ac or L/ha
 * @throws SprayMathError `unknown-choice` for a `kind` that is not known, `missing` at `rowSpacing` or `plantSpacing` for a
 * hand-held spray that tells no area, or what the measurement's own function throws
 *
 * @example
 * ```ts
 * import { rateOf } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(rateOf({ kind: "strip", used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") })); // { value: 200, unit: 'L/ha' }
 * console.log(rateOf({ kind: "known", rate: qty(20, "gal/ac") })); // { value: 20, unit: 'gal/ac' }
 * ```
 */
export function rateOf(calibration: Calibration): VolumeRate {
  const measurement = measurementOf(calibration);
  return within(calibration.kind === "record" ? "record.measurement" : "", () => measuredRate(measurement));
}

/**
 * The working of {@link rateOf}, line by line.
 *
 * @param calibration - as for {@link rateOf}
 * @returns the lines; the last one's result is the rate. None for a known rate
 * @throws SprayMathError as {@link rateOf} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rateOf } from "swath-to-spoon/working";
 *
 * const lines = rateOf({ kind: "strip", used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") });
 * console.log(lines[0]?.formula); // used / (swath * distance)
 * ```
 */
export function rateOfWorking(calibration: Calibration): WorkingLine[] {
  rateOf(calibration);
  return measuredRateWorking(measurementOf(calibration));
}

/** The measurement behind a calibration: itself, or the one that a record holds. */
export function measurementOf(calibration: Calibration): Measurement {
  const { kind } = checkedObject(calibration, "");
  checkedChoice(kind, [...MEASUREMENT_KINDS, "record"], "kind");
  if (calibration.kind !== "record") return calibration;
  return within("record", () => readCalibrationRecord(calibration.record)).measurement;
}
