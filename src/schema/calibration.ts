import type { Calibration, RecordedCalibration } from "../output-rate/calibration.js";
import type { CalibrationConditions, CalibrationRecord } from "../output-rate/calibration-record.js";
import type { CatchInput } from "../output-rate/catch.js";
import type {
  CatchMeasurement,
  DirectStripMeasurement,
  FlowMeasurement,
  HandMeasurement,
  KnownRate,
  Measurement,
  StripMeasurement,
  StripRunsMeasurement,
  TreeRowMeasurement,
} from "../output-rate/measurement.js";
import type { TimedDistance } from "../output-rate/speed.js";
import type { StripRun } from "../output-rate/strip.js";
import type { TodaysConditions } from "../output-rate/what-changed.js";
import { checked } from "../units/check.js";
import { date } from "../units/date-field.js";
import {
  about,
  choice,
  count,
  fields,
  type Kinds,
  kindOf,
  list,
  maybe,
  named,
  number,
  only,
  reader,
  type Schema,
  type Shape,
  sides,
  words,
} from "./fields.js";
import { madeOnce, type ReadingOptions } from "./options.js";
import { byField, byGiven } from "./picks.js";
import { type Quantities, quantities } from "./quantity.js";

// Nobody measures more; what comes after would only take time.
const MOST_READINGS = 500;

function runFields({ measured }: Quantities): Shape<StripRun> {
  return {
    used: about(
      measured("volume"),
      "What went out over the strip: the refill that brings the tank back to its mark. More than 0.",
    ),
    swath: about(measured("length"), "The width treated in the pass. More than 0."),
    distance: about(measured("length"), "The distance travelled while spraying. More than 0."),
  };
}

const TIMED = ["distance", "time"];

function catchSchema({ measured, measuredOrElse }: Quantities): Schema<CatchMeasurement> {
  const timed = fields<TimedDistance>({
    distance: about(measured("length"), "The distance between the stakes. More than 0."),
    time: about(measured("time"), "The time taken, at working speed. More than 0."),
  });
  const speed = choice<CatchInput["speed"]>()(
    [timed, measuredOrElse("SpeedMeasuredAtOnce", TIMED, "speed")],
    byField(...TIMED),
  );
  return fields<CatchMeasurement>({
    kind: only("catch"),
    catches: about(
      list(measured("volume"), 1, MOST_READINGS),
      "What was caught under each nozzle, one after the other along the boom; each more than 0.",
    ),
    time: about(measured("time"), "How long each was caught for. More than 0."),
    speed: about(speed, "The working speed: a speed, or a distance and the time it took."),
    width: about(
      measured("length"),
      "The width that one nozzle treats, or that all nozzles of a row treat together. More than 0.",
    ),
    nozzlesPerRow: maybe(count(), "How many nozzles spray the same row or band. 1 unless given."),
  });
}

function handSchema(q: Quantities): Schema<HandMeasurement> {
  const length = q.measured("length");
  const on = {
    area: about(q.measuredTreated, "The treated area that it was used on. More than 0."),
    rowLength: about(
      length,
      "The length of row that it was used on, all sides that are sprayed. More than 0.",
    ),
    plants: about(count(), "The number of plants that it was used on. A whole number, 1 or more."),
  };
  const common = {
    kind: only("hand"),
    used: about(q.measured("volume"), "What was used. More than 0."),
    plantSpacing: maybe(length, "From plant to plant in the row. More than 0."),
    rowSpacing: maybe(length, "From row to row. More than 0."),
  };
  type Common = Omit<HandMeasurement, keyof typeof on>;
  type With<K extends keyof typeof on> = Common & {
    readonly [P in K]: Exclude<HandMeasurement[P], undefined>;
  };
  // The type leaves open which of the three is given; the schema does not.
  return choice<HandMeasurement>()(
    [
      fields<With<"area">>({ ...common, area: on.area }),
      fields<With<"rowLength">>({ ...common, rowLength: on.rowLength }),
      fields<With<"plants">>({ ...common, plants: on.plants }),
    ] as unknown as readonly [Schema<HandMeasurement>],
    byGiven([["area"], ["rowLength"], ["plants"]]),
  );
}

/** Every kind of measurement, named so that a JSON Schema tells each once. */
const measurements: (options?: ReadingOptions) => Kinds<Measurement> = /* @__PURE__ */ madeOnce((options) => {
  const q = quantities(options);
  const { measured } = q;
  const run = runFields(q);
  return {
    strip: named(
      "StripMeasurement",
      fields<StripMeasurement>({ kind: only("strip"), ...run }),
      "One run over a test strip.",
    ),
    "strip-runs": named(
      "StripRunsMeasurement",
      fields<StripRunsMeasurement>({
        kind: only("strip-runs"),
        runs: about(list(fields<StripRun>(run), 2, MOST_READINGS), "The runs, at least two."),
        limit: maybe(
          q.of("fraction"),
          "How far a run may lie from the mean of the others. More than 0; 5 % unless given.",
        ),
      }),
      "Several runs over a test strip.",
    ),
    "direct-strip": named(
      "DirectStripMeasurement",
      fields<DirectStripMeasurement>({
        kind: only("direct-strip"),
        caught: about(measured("volume"), "What one nozzle put out over the strip. More than 0."),
        catchUnit: about(q.unit("volume"), "The unit that the catch is read in, such as fl_oz."),
        rateUnit: about(q.unit("volumeRate"), "The unit that the rate is wanted in, such as gal/ac."),
      }),
      "A catch over a strip of the length at which it reads as the rate.",
    ),
    catch: named("CatchMeasurement", catchSchema(q), "A timed catch, with the speed and the width."),
    "tree-row": named(
      "TreeRowMeasurement",
      fields<TreeRowMeasurement>({
        kind: only("tree-row"),
        used: about(
          measured("volume"),
          "What was used along the row length, on the sides told. More than 0.",
        ),
        sides: about(sides(), "How many sides of the row it was sprayed on: 1 or 2."),
        rowLength: about(measured("length"), "The length of row sprayed. More than 0."),
        rowSpacing: about(measured("length"), "From row to row. More than 0."),
        plantSpacing: maybe(measured("length"), "From plant to plant in the row. More than 0."),
      }),
      "A row sprayed from one side or both.",
    ),
    hand: named(
      "HandMeasurement",
      handSchema(q),
      "A hand-held spray; with the spacings that a rate per area needs.",
    ),
    flow: named(
      "FlowMeasurement",
      fields<FlowMeasurement>({
        kind: only("flow"),
        flow: about(measured("flow"), "The flow of everything that sprays the width. More than 0."),
        speed: about(measured("speed"), "The working speed. More than 0."),
        width: about(measured("length"), "The width that the flow treats. More than 0."),
      }),
      "A flow, such as a nozzle's from its maker's table, with the speed and the width.",
    ),
    known: named(
      "KnownRate",
      fields<KnownRate>({
        kind: only("known"),
        rate: about(measured("volumeRate"), "The rate. More than 0."),
      }),
      "A rate that is known from elsewhere.",
    ),
  };
});

/**
 * The schema of a measurement of the output: a strip, a catch, a known rate and so on.
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
export const measurementSchema: (options?: ReadingOptions) => Schema<Measurement> = /* @__PURE__ */ madeOnce(
  (options) =>
    named(
      "Measurement",
      kindOf<Measurement>(measurements(options)),
      "How the output was measured; the kind says which way.",
    ),
);

function dateSchema(): Schema<string> {
  return reader(
    (input) => checked(input, date("The day.")),
    () => ({ type: "string", format: "date", pattern: "^\\d{4}-\\d{2}-\\d{2}$" }),
  );
}

function conditionsSchema({ of }: Quantities): Schema<CalibrationConditions> {
  return named(
    "CalibrationConditions",
    fields<CalibrationConditions>({
      operator: maybe(words(), "Who sprayed."),
      nozzle: maybe(words(), "The nozzle's type and size, as it is marked."),
      nozzleCount: maybe(count(), "How many nozzles. A whole number, 1 or more."),
      nozzleSpacing: maybe(of("length"), "From nozzle to nozzle along the boom. More than 0."),
      pressure: maybe(of("pressure"), "The pressure at the nozzle. More than 0."),
      speed: maybe(of("speed"), "The working speed. More than 0."),
      gear: maybe(words(), "The gear and throttle, or another setting that stands for the speed."),
      ground: maybe(words(), "The ground: bare, stubble, wet grass, a slope."),
      liquid: maybe(words(), "What was sprayed: clean water, as a rule."),
      density: maybe(of("density"), "The liquid's density. More than 0."),
    }),
    "The conditions that a calibration holds for. What is not recorded cannot be compared later.",
  );
}

/** The parts of a record and of the day of spraying, which tell the same conditions. */
const conditions: (options?: ReadingOptions) => Schema<CalibrationConditions> = /* @__PURE__ */ madeOnce(
  (options) => conditionsSchema(quantities(options)),
);

/**
 * The schema of a calibration that was kept.
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
export const calibrationRecordSchema: (options?: ReadingOptions) => Schema<CalibrationRecord> =
  /* @__PURE__ */ madeOnce((options) =>
    named(
      "CalibrationRecord",
      fields<CalibrationRecord>({
        version: about(only(1), "The version of this layout."),
        date: about(dateSchema(), "The day of the measurement, as year-month-day."),
        measurement: about(measurementSchema(options), "What was measured."),
        conditions: about(conditions(options), "The conditions it was measured under."),
      }),
      "A calibration to keep. It holds what was measured, so that the rate can be worked out again.",
    ),
  );

/**
 * The schema of a calibration: a measurement, a known rate, or a record of one.
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
export const calibrationSchema: (options?: ReadingOptions) => Schema<Calibration> = /* @__PURE__ */ madeOnce(
  (options) => {
    const record = fields<RecordedCalibration>({
      kind: only("record"),
      record: about(calibrationRecordSchema(options), "The record, as it was kept."),
    });
    return named(
      "Calibration",
      kindOf<Calibration>({ ...measurements(options), record }),
      "How the sprayer was calibrated: a measurement, a known rate, or a record of one.",
    );
  },
);

/**
 * The schema of the day of spraying, which a calibration record is compared with.
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
 * console.log(today.conditions.speed); // { value: 3, unit: 'mph' }
 * ```
 */
export const todaySchema: (options?: ReadingOptions) => Schema<TodaysConditions> = /* @__PURE__ */ madeOnce(
  (options) =>
    named(
      "TodaysConditions",
      fields<TodaysConditions>({
        date: about(dateSchema(), "The day, as year-month-day."),
        conditions: about(conditions(options), "The conditions of the day."),
        longestAge: maybe(
          number({ above: 0 }),
          "How many days a calibration is trusted for. More than 0; never too old unless given.",
        ),
      }),
      "How things are on the day of spraying.",
    ),
);
