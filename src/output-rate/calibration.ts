import { joinPath } from "../errors.js";
import { checked } from "../units/check.js";
import { about, choice, type EitherField, kinds, named, object } from "../units/fields.js";
import type { VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { CALIBRATION_RECORD, type CalibrationRecord } from "./calibration-record.js";
import {
  linesOfMeasurement,
  MEASUREMENT_KINDS,
  type MeasuredRate,
  type Measurement,
  rateOfMeasurement,
} from "./measurement.js";

/** A calibration that was kept. */
export interface RecordedCalibration {
  /** Says that it is a record. */
  readonly kind: "record";
  /** The record, as it was kept. */
  readonly record: CalibrationRecord;
}

/** Every way to give a rate: a measurement, a known rate, or a record of one; `kind` says which it is. */
export type Calibration = Measurement | RecordedCalibration;

/** A calibration of any kind. */
export const CALIBRATION: EitherField<Calibration> = named(
  "Calibration",
  kinds<Calibration>("How the sprayer was calibrated: a measurement, a known rate, or a record of one.", {
    ...MEASUREMENT_KINDS,
    record: object<RecordedCalibration>({
      kind: choice("Says that it is a record.", ["record"]),
      record: about("The record, as it was kept.", CALIBRATION_RECORD),
    }),
  }),
);

/**
 * Returns the rate that a calibration gives, whichever way it was made.
 *
 * Formula: that of {@link stripRate}, {@link stripRuns}, {@link directStripRate}, {@link catchRate}, {@link treeRowRate},
 * {@link handSprayRates} or {@link solveOutput}, as `kind` says; a record is worked out again from what was measured.
 *
 * @param calibration - what was measured, with its `kind`
 * @returns the volume per area; a known rate in its own unit, others in `gal/ac`, `imp_gal/ac` or L/ha
 * @throws SprayMathError `unknown-choice` for a `kind` that is not known, `missing` at `rowSpacing` or `plantSpacing` for a
 * hand-held spray from which no area follows, or what the measurement's own function throws
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
  return rateOfCalibration(checked(calibration, CALIBRATION)).rate;
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
  return linesOfMeasurement(rateOfCalibration(checked(calibration, CALIBRATION)));
}

/** The measurement behind a calibration and its rate, worked out once. Trusts its input. */
export function rateOfCalibration(calibration: Calibration, at = ""): MeasuredRate {
  const place = calibration.kind === "record" ? joinPath(at, "record.measurement") : at;
  return rateOfMeasurement(measurementOf(calibration), place);
}

/** The measurement behind a calibration: itself, or the one that a record holds. Trusts its input. */
export function measurementOf(calibration: Calibration): Measurement {
  return calibration.kind === "record" ? calibration.record.measurement : calibration;
}
