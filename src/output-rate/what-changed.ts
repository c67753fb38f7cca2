import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { date } from "../units/date-field.js";
import { compareDecided, moreThan } from "../units/decide.js";
import { about, named, number, type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { positiveIn } from "../units/result.js";
import type { Fraction, Quantity, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import {
  CALIBRATION_RECORD,
  type CalibrationConditions,
  type CalibrationRecord,
  CONDITIONS,
  type ConditionName,
  conditionsOf,
} from "./calibration-record.js";
import { type Measurement, rateOfMeasurement } from "./measurement.js";

/** How things are on the day of spraying. */
export interface TodaysConditions {
  /** The day, as year-month-day. */
  readonly date: string;
  /** The conditions of the day. */
  readonly conditions?: CalibrationConditions | undefined;
  /** How many days a calibration is trusted for. More than 0; 90 unless given: common practice, no source. */
  readonly longestAge?: number | undefined;
}

/** How many days a calibration is trusted for: nozzles wear and seals leak within a season. Common practice, no source. */
export const LONGEST_AGE = 90;

/** How things are on the day of spraying. */
export const TODAY: ObjectField<TodaysConditions> = named(
  "Today",
  object<TodaysConditions>(
    {
      date: date("The day, as year-month-day."),
      conditions: optional(about("The conditions of the day.", CONDITIONS)),
      longestAge: optional(
        number(
          "How many days a calibration is trusted for. More than 0; 90 unless given: common practice, no source.",
          { unit: "days", above: 0 },
        ),
      ),
    },
    [],
    "How things are on the day of spraying.",
  ),
);

interface RecordAndToday {
  readonly record: CalibrationRecord;
  readonly today: TodaysConditions;
}

const RECORD_AND_TODAY = object<RecordAndToday>({ record: CALIBRATION_RECORD, today: TODAY }, [
  ({ record, today }, check) => dayFollows(record, today, check),
]);

/** Notes a day of spraying before the day of the calibration. */
export function dayFollows(
  record: CalibrationRecord | undefined,
  today: TodaysConditions | undefined,
  check: Check,
): void {
  // Days written this way sort as they follow one another.
  if (record === undefined || today === undefined || record.date <= today.date) return;
  check.fault(
    "conflict",
    "day-too-early",
    "today.date",
    "{today} is before the calibration of {calibrated}. Check the two dates.",
    { today: today.date, calibrated: record.date },
  );
}

/** One thing that is not as it was when the sprayer was calibrated. */
export interface CalibrationChange {
  /** What changed; `date` where the calibration is older than the longest age. */
  readonly what: ConditionName | "date";
  /** As it was. */
  readonly before: string | number | Quantity;
  /** As it is. */
  readonly now: string | number | Quantity;
  /** How far this alone moves the rate, in percent of the recorded rate, below 0 for less; null where it cannot be computed. */
  readonly shift: Fraction | null;
}

/** What became of a calibration. */
export interface WhatChanged {
  /** Whether anything changed: if so, calibrate again. */
  readonly stale: boolean;
  /** What changed, in a fixed order. */
  readonly changes: readonly CalibrationChange[];
  /** The rate as it was measured. */
  readonly rate: VolumeRate;
  /** The rate to expect from all the changes that can be computed, and from those alone: a reason to calibrate, no substitute for it. */
  readonly expected: VolumeRate;
  /** How old the calibration is, in days. */
  readonly age: number;
  /** The conditions that only one side gives, or neither. */
  readonly notCompared: readonly ConditionName[];
}

/**
 * Compares a kept calibration with the day of spraying: what makes it stale, and how far the rate would move where that
 * can be computed.
 *
 * Formula: pressure moves the rate by √(now / before); speed by before / now; density by √(before / now); nozzle spacing by
 * before / now. The number of nozzles doesn't move it where both sides give the spacing, since the swath grows with it. Both
 * are for a boom whose nozzles share the swath evenly. A hand-held spray to wetness does not follow a walking speed. Operator,
 * nozzle, gear, ground and liquid are named without a number. Source: as for {@link outputAtPressure}, {@link rateAtSpeed} and
 * {@link solutionForWater}.
 *
 * @param record - the record, as it was kept
 * @param today - the day of spraying
 * @returns what changed, the rate as measured and as it is to be expected, and what could not be compared
 * @throws SprayMathError with the place in the path, `record.` or `today.` first: `conflict` for a day before the record's,
 * or what {@link readCalibrationRecord} throws
 *
 * @example
 * ```ts
 * import { calibrationRecord, whatChanged } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const record = calibrationRecord({
 *   date: "2025-04-12",
 *   measurement: { kind: "strip", used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") },
 *   conditions: { operator: "Sam", speed: qty(4, "km/h") },
 * });
 * const changed = whatChanged(record, { date: "2025-06-01", conditions: { operator: "Ana", speed: qty(5, "km/h") } });
 * console.log(changed.changes.map((change) => change.what)); // [ 'operator', 'speed' ]
 * console.log(changed.expected); // { value: 160, unit: 'L/ha' }
 * ```
 */
export function whatChanged(record: CalibrationRecord, today: TodaysConditions): WhatChanged {
  const given = checked({ record, today }, RECORD_AND_TODAY);
  return compareConditions(given.record, given.today);
}

/** What became of a calibration. Trusts its input. */
export function compareConditions(record: CalibrationRecord, today: TodaysConditions, at = ""): WhatChanged {
  const { changes, ...found } = compared(record, today, at);
  return {
    stale: changes.length > 0,
    changes: changes.map(({ factor, ...change }) => ({
      ...change,
      shift: factor === undefined ? null : { value: 100 * factor - 100, unit: "%" },
    })),
    ...found,
  };
}

/**
 * The working of the rate that {@link whatChanged} expects: each computable change's factor, then their product.
 *
 * @param record - as for {@link whatChanged}
 * @param today - as for {@link whatChanged}
 * @returns the lines; the last one's result is the rate to expect. None where no change can be computed
 * @throws SprayMathError as {@link whatChanged} does
 *
 * @example
 * ```ts
 * import { calibrationRecord } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 * import { whatChanged } from "swath-to-spoon/working";
 *
 * const record = calibrationRecord({
 *   date: "2025-04-12",
 *   measurement: { kind: "known", rate: qty(200, "L/ha") },
 *   conditions: { speed: qty(4, "km/h") },
 * });
 * const lines = whatChanged(record, { date: "2025-06-01", conditions: { speed: qty(5, "km/h") } });
 * console.log(lines.map((line) => line.formula).join(", ")); // before / now, rate * x1
 * ```
 */
export function whatChangedWorking(record: CalibrationRecord, today: TodaysConditions): WorkingLine[] {
  const given = checked({ record, today }, RECORD_AND_TODAY);
  const { rate, expected, changes } = compared(given.record, given.today, "");
  const computed = changes.filter(({ what }) => Object.hasOwn(FORMULAS, what));
  if (computed.length === 0) return [];
  const symbols = computed.map((_, at) => `x${at + 1}`);
  return [
    ...computed.flatMap(({ what, before, now, factor }) => {
      const { unit } = before as Quantity;
      return formulaLines({
        id: `output-rate.changed-${what}`,
        formula: FORMULAS[what as keyof typeof FORMULAS],
        terms: { before: [before as Quantity, unit], now: [now as Quantity, unit] },
        result: factor as number,
        source: "follows from rate = flow / (speed * width) and the law of flow through an orifice",
      });
    }),
    {
      id: "output-rate.changed",
      formula: ["rate", ...symbols].join(" * "),
      terms: {
        rate,
        ...Object.fromEntries(computed.map(({ factor }, at) => [symbols[at] as string, factor as number])),
      },
      result: expected,
      source: "follows from rate = flow / (speed * width) and the law of flow through an orifice",
    },
  ];
}

const FORMULAS = {
  nozzleSpacing: "before / now",
  pressure: "sqrt(now / before)",
  speed: "before / now",
  density: "sqrt(before / now)",
} as const;

interface ComparedChange extends Omit<CalibrationChange, "shift"> {
  /** What the rate is to be multiplied by; left out where that cannot be computed. */
  readonly factor?: number | undefined;
}

interface Compared extends Omit<WhatChanged, "stale" | "changes"> {
  readonly changes: readonly ComparedChange[];
}

const MILLISECONDS_A_DAY = 24 * 60 * 60 * 1000;

function compared(record: CalibrationRecord, today: TodaysConditions, at: string): Compared {
  const { measurement } = record;
  const kept = conditionsOf(record);
  const { conditions = {} } = today;
  const { rate } = rateOfMeasurement(measurement, at);
  const age = (Date.parse(today.date) - Date.parse(record.date)) / MILLISECONDS_A_DAY;
  const changes: ComparedChange[] = [];
  const notCompared: ConditionName[] = [];
  if (moreThan(age, today.longestAge ?? LONGEST_AGE))
    changes.push({ what: "date", before: record.date, now: today.date });
  for (const what of CONDITIONS.names as readonly ConditionName[]) {
    const [before, now] = [kept[what], conditions[what]];
    if (before === undefined || now === undefined) {
      notCompared.push(what);
    } else if (differ(before, now)) {
      const factor = rateFactor(what, measurement, kept, conditions);
      changes.push({ what, before, now, ...(factor !== undefined && { factor }) });
    }
  }
  const expected = changes.reduce((value, { factor = 1 }) => value * factor, 1) * rate.value;
  return { changes, rate, expected: positiveIn(expected, rate.unit, at), age, notCompared };
}

type Condition = string | number | Quantity;

function differ(before: Condition, now: Condition): boolean {
  if (typeof before !== "object" || typeof now !== "object") return before !== now;
  return compareDecided(before.value, inUnit(now, before.unit)) !== 0;
}

/** What the rate is to be multiplied by for one change; nothing where that cannot be computed. */
function rateFactor(
  what: ConditionName,
  measurement: Measurement,
  before: CalibrationConditions,
  now: CalibrationConditions,
): number | undefined {
  switch (what) {
    case "pressure":
      return Math.sqrt(ratio(now.pressure, before.pressure));
    case "density":
      return Math.sqrt(ratio(before.density, now.density));
    case "speed":
      return measurement.kind === "hand" ? undefined : ratio(before.speed, now.speed);
    case "nozzleSpacing":
      return sharesSwath(measurement) ? ratio(before.nozzleSpacing, now.nozzleSpacing) : undefined;
    case "nozzleCount":
      return sharesSwath(measurement) && before.nozzleSpacing && now.nozzleSpacing ? 1 : undefined;
    default:
      return undefined;
  }
}

function ratio(a: Quantity | undefined, b: Quantity | undefined): number {
  const { value, unit } = a as Quantity;
  return value / inUnit(b as Quantity, unit);
}

// A hand-held spray has no boom, and rows are as wide as they are planted, whatever the nozzles do.
function sharesSwath({ kind }: Measurement): boolean {
  return kind !== "hand" && kind !== "tree-row";
}
