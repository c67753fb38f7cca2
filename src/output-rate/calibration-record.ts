import { checked } from "../units/check.js";
import { date } from "../units/date-field.js";
import { about, count, named, type ObjectField, object, optional, text } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Density, Length, Pressure, Speed } from "../units/types.js";
import { version } from "../units/version-field.js";
import { isTimed } from "./catch.js";
import { MEASUREMENT, type Measurement, rateOfMeasurement } from "./measurement.js";
import { speedOfPass } from "./speed.js";

/** The conditions that a calibration holds for. Each is optional; what is not recorded cannot be compared later. */
export interface CalibrationConditions {
  /** Who sprayed. */
  readonly operator?: string | undefined;
  /** The nozzle's type and size, as it is marked. */
  readonly nozzle?: string | undefined;
  /** How many nozzles. A whole number, 1 or more. */
  readonly nozzleCount?: number | undefined;
  /** The distance from nozzle to nozzle along the boom. More than 0. */
  readonly nozzleSpacing?: Length | undefined;
  /** The pressure at the nozzle. More than 0. */
  readonly pressure?: Pressure | undefined;
  /** The working speed. More than 0. */
  readonly speed?: Speed | undefined;
  /** The gear and throttle, or another setting that stands for the speed. */
  readonly gear?: string | undefined;
  /** The ground: bare, stubble, wet grass, a slope. */
  readonly ground?: string | undefined;
  /** What was sprayed: clean water, as a rule. */
  readonly liquid?: string | undefined;
  /** The liquid's density. More than 0. */
  readonly density?: Density | undefined;
}

/** The conditions of a calibration, or of the day of spraying. */
export const CONDITIONS: ObjectField<CalibrationConditions> = named(
  "Conditions",
  object<CalibrationConditions>(
    {
      operator: optional(text("Who sprayed.")),
      nozzle: optional(text("The nozzle's type and size, as it is marked.")),
      nozzleCount: optional(count("How many nozzles. A whole number, 1 or more.")),
      nozzleSpacing: optional(
        quantity("The distance from nozzle to nozzle along the boom. More than 0.", "length"),
      ),
      pressure: optional(quantity("The pressure at the nozzle. More than 0.", "pressure")),
      speed: optional(quantity("The working speed. More than 0.", "speed")),
      gear: optional(text("The gear and throttle, or another setting that stands for the speed.")),
      ground: optional(text("The ground: bare, stubble, wet grass, a slope.")),
      liquid: optional(text("What was sprayed: clean water, as a rule.")),
      density: optional(quantity("The liquid's density. More than 0.", "density")),
    },
    [],
    "The conditions that a calibration holds for. What is not recorded cannot be compared later.",
  ),
);

/** The name of a condition. */
export type ConditionName = keyof CalibrationConditions;

/** A calibration to keep: plain data that survives JSON. It holds what was measured: the rate is worked out again from it. */
export interface CalibrationRecord {
  /** The version of this layout. A reader refuses one that it does not know. */
  readonly version: 1;
  /** The day of the measurement, as year-month-day: 2025-04-12. */
  readonly date: string;
  /** What was measured. */
  readonly measurement: Measurement;
  /** The conditions it was measured under. */
  readonly conditions: CalibrationConditions;
}

/** A calibration that was kept. */
export const CALIBRATION_RECORD: ObjectField<CalibrationRecord> = named(
  "CalibrationRecord",
  object<CalibrationRecord>(
    {
      version: version("The version of this layout. A reader refuses one that it does not know.", 1),
      date: date("The day of the measurement, as year-month-day: 2025-04-12."),
      measurement: about("What was measured.", MEASUREMENT),
      conditions: about("The conditions it was measured under.", CONDITIONS),
    },
    [],
    "A calibration to keep. It holds what was measured: the rate is worked out again from it.",
  ),
);

/** What a record is made from. */
export interface CalibrationRecordInput {
  /** The day of the measurement, as year-month-day: 2025-04-12. */
  readonly date: string;
  /** What was measured. */
  readonly measurement: Measurement;
  /** The conditions it was measured under. A speed that is part of the measurement need not be given again. */
  readonly conditions?: CalibrationConditions | undefined;
}

const RECORD_INPUT = object<CalibrationRecordInput>({
  date: date("The day of the measurement, as year-month-day: 2025-04-12."),
  measurement: about("What was measured.", MEASUREMENT),
  conditions: optional(
    about(
      "The conditions it was measured under. A speed that is part of the measurement need not be given again.",
      CONDITIONS,
    ),
  ),
});

/**
 * Makes the record of a calibration, checked, for keeping as JSON.
 *
 * @param input - the day, what was measured, and the conditions
 * @returns plain data, a copy
 * @throws SprayMathError with the place in the path, such as `measurement.used` or `conditions.pressure`: `unreadable` for
 * a date that is not one, or what {@link rateOf} throws
 *
 * @example
 * ```ts
 * import { calibrationRecord } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const record = calibrationRecord({
 *   date: "2025-04-12",
 *   measurement: { kind: "strip", used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") },
 *   conditions: { operator: "Sam", pressure: qty(2, "bar") },
 * });
 * console.log(record.version, record.conditions); // 1 { operator: 'Sam', pressure: { value: 2, unit: 'bar' } }
 * ```
 */
export function calibrationRecord(input: CalibrationRecordInput): CalibrationRecord {
  const { conditions = {}, ...measured } = checked(input, RECORD_INPUT);
  return complete({ version: 1, ...measured, conditions });
}

/** A record whose rate can be worked out, with the speed among its conditions that its measurement was made at. */
function complete(record: CalibrationRecord): CalibrationRecord {
  rateOfMeasurement(record.measurement, "measurement");
  return { ...record, conditions: conditionsOf(record) };
}

/** The conditions of a record. Else a catch made at one speed would pass for one at any. Trusts its input. */
export function conditionsOf({ measurement, conditions }: CalibrationRecord): CalibrationConditions {
  if (measurement.kind !== "catch" && measurement.kind !== "flow") return conditions;
  const { speed } = measurement;
  const { value, unit } = isTimed(speed) ? speedOfPass(speed) : speed;
  return { speed: { value, unit }, ...conditions };
}

/**
 * Reads a record back, from JSON or wherever it was kept, and checks all of it.
 *
 * @param value - what was kept, parsed; not JSON text
 * @returns the record
 * @throws SprayMathError `missing` or `unknown-choice` at `version` for one without a version or of a later one, or what
 * {@link calibrationRecord} throws
 *
 * @example
 * ```ts
 * import { readCalibrationRecord } from "swath-to-spoon/output-rate";
 *
 * const kept = '{"version":1,"date":"2025-04-12","measurement":{"kind":"known","rate":{"value":200,"unit":"L/ha"}},"conditions":{}}';
 * console.log(readCalibrationRecord(JSON.parse(kept)).measurement.kind); // known
 * ```
 */
export function readCalibrationRecord(value: unknown): CalibrationRecord {
  return complete(checked(value, CALIBRATION_RECORD));
}
