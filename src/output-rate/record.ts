import { SprayMathError, shown, within } from "../errors.js";
import { checkedCount, checkedObject, inUnit } from "../units/guard.js";
import type { Density, Length, Pressure, Quantity, Speed, Unit } from "../units/types.js";
import { isTimed } from "./catch.js";
import { type Measurement, measuredRate } from "./measurement.js";
import { readingsOf } from "./readings.js";
import { speedFrom } from "./speed.js";

/** The conditions that a calibration holds for. Each is optional; what is not recorded cannot be compared later. */
export interface CalibrationConditions {
  /** Who sprayed. */
  readonly operator?: string;
  /** The nozzle's type and size, as it is marked. */
  readonly nozzle?: string;
  /** How many nozzles. A whole number, 1 or more. */
  readonly nozzleCount?: number;
  /** The distance from nozzle to nozzle along the boom. More than 0. */
  readonly nozzleSpacing?: Length;
  /** The pressure at the nozzle. More than 0. */
  readonly pressure?: Pressure;
  /** The working speed. More than 0. */
  readonly speed?: Speed;
  /** The gear and throttle, or another setting that stands for the speed. */
  readonly gear?: string;
  /** The ground: bare, stubble, wet grass, a slope. */
  readonly ground?: string;
  /** What was sprayed: clean water, as a rule. */
  readonly liquid?: string;
  /** The liquid's density. More than 0. */
  readonly density?: Density;
}

/** The name of a condition. */
export type ConditionName = keyof CalibrationConditions;

/** A calibration to keep: plain data that survives JSON. It holds what was measured, so that the rate can be worked out again. */
export interface CalibrationRecord {
  /** The version of this layout. A reader refuses one that it does not know. */
  readonly version: 1;
  /** The day of the measurement, as year-month-day: `2025-04-12`. */
  readonly date: string;
  /** What was measured. */
  readonly measurement: Measurement;
  /** The conditions it was measured under. */
  readonly conditions: CalibrationConditions;
}

/** What a record is made from. */
export interface CalibrationRecordInput {
  /** The day of the measurement, as year-month-day: `2025-04-12`. */
  readonly date: string;
  /** What was measured. */
  readonly measurement: Measurement;
  /** The conditions it was measured under. A speed that the measurement tells need not be told again. */
  readonly conditions?: CalibrationConditions;
}

/**
 * Makes the record of a calibration, checked, for keeping as JSON.
 *
 * @param input - the day, what was measured, and the conditions
 * @returns plain data; it holds no more than the fields known here
 * @throws SprayMathError with the place in the path, such as `measurement.used` or `conditions.pressure`: `unreadable` for
 * a date that is not one, or what the guards of a measurement throw
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
  const { date, measurement, conditions = {} } = checkedObject(input, "");
  within("measurement", () => {
    measuredRate(measurement);
    readingsOf(measurement);
  });
  return {
    version: 1,
    date: checkedDate(date, "date"),
    measurement: knownFields(measurement) as Measurement,
    conditions: { ...measuredSpeed(measurement), ...checkedConditions(conditions, "conditions") },
  };
}

// Else a catch made at one speed would pass for one at any.
function measuredSpeed(measurement: Measurement): { readonly speed?: Speed } {
  if (measurement.kind !== "catch" && measurement.kind !== "flow") return {};
  const { speed } = measurement;
  return { speed: isTimed(speed) ? speedFrom(speed) : { value: speed.value, unit: speed.unit } };
}

/**
 * Reads a record back, from JSON or wherever it was kept, and checks all of it. Fields that are not known here are dropped.
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
  const record = checkedObject(value as Partial<CalibrationRecord>, "");
  if (record.version === undefined)
    throw new SprayMathError(
      "missing",
      "version",
      "Nothing given; wanted a calibration record, with version 1.",
    );
  if (record.version !== 1) {
    throw new SprayMathError(
      "unknown-choice",
      "version",
      `Given version ${shown(record.version)}; wanted 1. A later version of this library wrote it: update, or calibrate again.`,
    );
  }
  return calibrationRecord(record as CalibrationRecord);
}

/** A day written as year-month-day, and a real one. */
export function checkedDate(date: string, path: string): string {
  if (date === undefined || date === null)
    throw new SprayMathError("missing", path, "Nothing given; wanted a date such as 2025-04-12.");
  const day =
    typeof date === "string" && /^\d{4}-\d{2}-\d{2}$/.test(date) ? new Date(`${date}T00:00:00Z`) : undefined;
  if (day === undefined || Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== date) {
    throw new SprayMathError(
      "unreadable",
      path,
      `Given ${shown(date)}; wanted a date as year-month-day, such as 2025-04-12.`,
    );
  }
  return date;
}

const TEXTS = ["operator", "nozzle", "gear", "ground", "liquid"] as const;
const QUANTITIES = { nozzleSpacing: "m", pressure: "kPa", speed: "km/h", density: "kg/L" } as const;

/** The names of all conditions, in the order they are reported. */
export const CONDITION_NAMES: readonly ConditionName[] = [
  "operator",
  "nozzle",
  "nozzleCount",
  "nozzleSpacing",
  "pressure",
  "speed",
  "gear",
  "ground",
  "liquid",
  "density",
];

/** Checks every condition that is given, and leaves out all else. */
export function checkedConditions(given: CalibrationConditions, path: string): CalibrationConditions {
  checkedObject(given, path);
  const conditions: Record<string, unknown> = {};
  for (const name of CONDITION_NAMES) {
    const value = given[name];
    if (value === undefined) continue;
    const place = `${path}.${name}`;
    if (name === "nozzleCount") conditions[name] = checkedCount(value as number, place);
    else if ((TEXTS as readonly string[]).includes(name))
      conditions[name] = checkedText(value as string, place);
    else {
      inUnit<Unit>(value as Quantity, QUANTITIES[name as keyof typeof QUANTITIES], place);
      conditions[name] = knownFields(value);
    }
  }
  return conditions as CalibrationConditions;
}

function checkedText(text: string, path: string): string {
  if (typeof text === "string" && text.trim() !== "") return text;
  throw new SprayMathError(
    text === undefined || text === null ? "missing" : "not-a-quantity",
    path,
    `Given ${shown(text)}; wanted some words. Leave it out where it is not known.`,
  );
}

// Every field that a measurement can have, at any depth. What has been checked holds no other that matters.
const FIELDS: ReadonlySet<string> = new Set([
  ...[
    "kind",
    "runs",
    "used",
    "swath",
    "distance",
    "limit",
    "caught",
    "catchUnit",
    "rateUnit",
    "catches",
    "time",
  ],
  ...[
    "speed",
    "width",
    "nozzlesPerRow",
    "sides",
    "rowLength",
    "rowSpacing",
    "plantSpacing",
    "area",
    "plants",
  ],
  ...["flow", "rate", "value", "unit", "of", "resolution", "uncertainty"],
]);

function knownFields(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(knownFields);
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([field, inner]) => FIELDS.has(field) && inner !== undefined)
      .map(([field, inner]) => [field, knownFields(inner)]),
  );
}
