import { describe, expect, it } from "vitest";
import {
  calibrationRecord,
  type Measurement,
  rateOf,
  readCalibrationRecord,
  type TimedDistance,
  whatChanged,
} from "../../../src/output-rate/index.ts";
import { type Measured, qty, type Speed } from "../../../src/units/index.ts";
import { CONDITIONS, MEASUREMENTS } from "../../helpers/output-rate-samples.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const strip = { kind: "strip", used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") } as const;
const kept = calibrationRecord({ date: "2025-04-12", measurement: strip, conditions: CONDITIONS });
const on = (conditions: object, date = "2025-06-01") => ({
  date,
  conditions: { ...CONDITIONS, ...conditions },
});

describe("a calibration record", () => {
  it("survives JSON whatever was measured, its uncertainties too", () => {
    for (const measurement of Object.values(MEASUREMENTS)) {
      const record = calibrationRecord({ date: "2025-04-12", measurement, conditions: CONDITIONS });
      const back = readCalibrationRecord(JSON.parse(JSON.stringify(record)));
      expect(back).toEqual(record);
      expect(back.measurement).toEqual(measurement);
      expect(rateOf({ kind: "record", record: back })).toEqual(rateOf(measurement));
    }
  });

  it("refuses fields that it does not know, at any depth, each with its place", () => {
    const noisy = {
      ...kept,
      farm: "Far Field",
      measurement: { ...strip, note: 1, used: { ...strip.used, jug: "blue" } },
      conditions: { ...CONDITIONS, moon: "full" },
    };
    const { issues } = refusal(() => readCalibrationRecord(noisy));
    expect(issues.map(({ code, path }) => [code, path])).toEqual(
      ["measurement.used.jug", "measurement.note", "conditions.moon", "farm"].map((path) => [
        "unknown-field",
        path,
      ]),
    );
  });

  it("takes null for a condition that is not known", () => {
    const conditions = { ...CONDITIONS, operator: null, pressure: undefined };
    const { operator: _, pressure: __, ...known } = CONDITIONS;
    expect(
      calibrationRecord({ date: "2025-04-12", measurement: strip, conditions } as never).conditions,
    ).toEqual(known);
  });

  it("is its own copy: a later change to what it was made from does not reach it", () => {
    const measurement = { ...strip, used: { value: 2, unit: "L" as const } };
    const record = calibrationRecord({ date: "2025-04-12", measurement });
    measurement.used.value = 99;
    expect(rateOf({ kind: "record", record })).toEqual(qty(200, "L/ha"));
  });

  it("keeps the speed that a measurement tells, so that another one is noticed", () => {
    const today = { date: "2025-06-01", conditions: { speed: qty(6, "mph") } };
    const of = (kind: "catch" | "flow", speed: Measured<Speed> | TimedDistance) => {
      const measurement = { ...MEASUREMENTS[kind], speed } as Measurement;
      const record = calibrationRecord({ date: "2025-04-12", measurement });
      return [record.conditions.speed, whatChanged(record, today).changes[0]?.shift];
    };
    const half = [qty(3, "mph"), qty(-50, "%")];
    expect(of("flow", { ...qty(3, "mph"), uncertainty: qty(0.1, "mph") })).toEqual(half);
    expect(of("catch", qty(3, "mph"))).toEqual(half);
    expect(of("catch", { distance: qty(132, "ft"), time: qty(30, "s") })).toEqual(half);
    const told = calibrationRecord({
      date: "2025-04-12",
      measurement: MEASUREMENTS.flow,
      conditions: CONDITIONS,
    });
    expect(told.conditions.speed).toEqual(CONDITIONS.speed);
  });

  it("refuses a version it does not know, and none at all", () => {
    expectRefused(
      () => readCalibrationRecord({ ...kept, version: 2 }),
      "unknown-choice",
      "version",
      "later version",
    );
    expectRefused(() => readCalibrationRecord({ ...kept, version: "1" }), "unknown-choice", "version");
    const { version: _, ...bare } = kept;
    expectRefused(() => readCalibrationRecord(bare), "missing", "version");
  });

  it.each([null, undefined, "record", 5, [], true])("refuses %j for a record", (junk) => {
    expect(() => readCalibrationRecord(junk)).toThrowError(expect.objectContaining({ path: "" }));
  });

  it("says where a kept record is wrong", () => {
    const broken = (change: object) => () => readCalibrationRecord({ ...kept, ...change });
    expectRefused(broken({ measurement: undefined }), "missing", "measurement");
    expectRefused(
      broken({ measurement: { ...strip, used: qty(0, "L") } }),
      "out-of-range",
      "measurement.used",
    );
    expectRefused(
      broken({ measurement: { ...strip, kind: "record" } }),
      "unknown-choice",
      "measurement.kind",
    );
    expectRefused(
      broken({ measurement: { ...strip, used: { ...strip.used, resolution: "1" } } }),
      "not-a-quantity",
      "measurement.used.resolution",
    );
    expectRefused(broken({ conditions: "dry" }), "not-a-quantity", "conditions");
    expectRefused(
      broken({ conditions: { pressure: qty(2, "m") } }),
      "wrong-dimension",
      "conditions.pressure",
    );
    expectRefused(broken({ conditions: { nozzleCount: 2.5 } }), "out-of-range", "conditions.nozzleCount");
    expectRefused(broken({ conditions: { operator: " " } }), "missing", "conditions.operator");
    expectRefused(broken({ conditions: { operator: 7 } }), "not-a-quantity", "conditions.operator");
    expectRefused(broken({ date: undefined }), "missing", "date");
    for (const date of ["12.04.2025", "2025-02-30", "2025-13-01", "today", "10000-01-01", "+012025-04-12"])
      expectRefused(broken({ date }), "unreadable", "date", "2025-04-12");
    expectRefused(broken({ date: 20250412 }), "not-a-quantity", "date");
  });
});

describe("whatChanged", () => {
  it("finds nothing where nothing changed, in whatever units the day is told", () => {
    const same = whatChanged(kept, on({ pressure: qty(200, "kPa"), nozzleSpacing: qty(0.5, "m") }));
    expect(same).toMatchObject({
      stale: false,
      changes: [],
      expected: qty(200, "L/ha"),
      age: 50,
      notCompared: [],
    });
  });

  it("compares the age alone on a day without conditions", () => {
    const { date } = on({});
    expect(whatChanged(kept, { date })).toMatchObject({ stale: false, changes: [], age: 50 });
    expect(whatChanged(kept, { date, longestAge: 30 })).toMatchObject({
      changes: [{ what: "date" }],
      expected: qty(200, "L/ha"),
    });
    expect(whatChanged(kept, { date }).notCompared).toContain("pressure");
  });

  it.each([
    // From memory: square-root law; speed, spacing and density as in the docstring.
    ["pressure", qty(8, "bar"), 100],
    ["speed", qty(8, "km/h"), -50],
    ["nozzleSpacing", qty(1, "m"), -50],
    ["density", qty(4, "kg/L"), -50],
  ] as const)("moves the rate by the %s", (what, now, percent) => {
    const changed = whatChanged(kept, on({ [what]: now }));
    expect(changed.stale).toBe(true);
    expect(changed.changes).toHaveLength(1);
    expect(changed.changes[0]).toMatchObject({ what, before: CONDITIONS[what], now });
    expect(changed.changes[0]?.shift?.value).toBeCloseTo(percent, 10);
    expect(changed.expected.value).toBeCloseTo(200 * (1 + percent / 100), 10);
  });

  it("multiplies the changes that can be computed", () => {
    const changed = whatChanged(
      kept,
      on({ pressure: qty(8, "bar"), speed: qty(8, "km/h"), operator: "Ana" }),
    );
    expect(changed.expected.value).toBeCloseTo(200, 10);
    expect(changed.changes.map(({ what, shift }) => [what, shift === null])).toEqual([
      ["operator", true],
      ["pressure", false],
      ["speed", false],
    ]);
  });

  it.each(["operator", "nozzle", "gear", "ground", "liquid"] as const)(
    "calls a new %s stale without a number",
    (what) => {
      const changed = whatChanged(kept, on({ [what]: "another" }));
      expect(changed).toMatchObject({ stale: true, expected: changed.rate });
      expect(changed.changes).toEqual([{ what, before: CONDITIONS[what], now: "another", shift: null }]);
    },
  );

  it("takes more nozzles at the same spacing for a wider swath at the same rate", () => {
    expect(whatChanged(kept, on({ nozzleCount: 6 })).changes[0]?.shift).toEqual(qty(0, "%"));
    const { nozzleSpacing: _, ...unspaced } = CONDITIONS;
    const today = { date: "2025-06-01", conditions: { ...unspaced, nozzleCount: 6 } };
    expect(whatChanged(kept, today).changes[0]?.shift).toBeNull();
  });

  it("ties a hand-held spray to neither speed nor boom, and rows to no nozzle spacing", () => {
    const shifts = (measurement: (typeof MEASUREMENTS)[keyof typeof MEASUREMENTS]) => {
      const record = calibrationRecord({ date: "2025-04-12", measurement, conditions: CONDITIONS });
      const today = on({ speed: qty(8, "km/h"), nozzleSpacing: qty(1, "m"), nozzleCount: 5 });
      return whatChanged(record, today).changes.map(({ shift }) => shift?.value ?? null);
    };
    expect(shifts(MEASUREMENTS.hand)).toEqual([null, null, null]);
    expect(shifts(MEASUREMENTS["tree-row"])).toEqual([null, null, -50]);
  });

  it("says what it could not compare", () => {
    const today = { date: "2025-04-12", conditions: { operator: "Sam", speed: qty(4, "km/h") } };
    expect(whatChanged(kept, today)).toMatchObject({
      stale: false,
      age: 0,
      notCompared: [
        "nozzle",
        "nozzleCount",
        "nozzleSpacing",
        "pressure",
        "gear",
        "ground",
        "liquid",
        "density",
      ],
    });
  });

  it("grows stale after 90 days, or the age that is given", () => {
    expect(whatChanged(kept, on({}, "2025-07-11"))).toMatchObject({ age: 90, stale: false });
    const old = whatChanged(kept, on({}, "2025-07-12"));
    expect(old.changes).toEqual([{ what: "date", before: "2025-04-12", now: "2025-07-12", shift: null }]);
    // A calibration of the year before.
    expect(whatChanged(kept, on({}, "2026-05-01"))).toMatchObject({ age: 384, stale: true });
    expect(whatChanged(kept, { ...on({}, "2026-04-12"), longestAge: 365 }).stale).toBe(false);
    expect(whatChanged(kept, { ...on({}, "2026-04-13"), longestAge: 365 }).stale).toBe(true);
    expect(whatChanged(kept, { ...on({}, "2026-05-01"), longestAge: null } as never).stale).toBe(true);
  });

  it("refuses days that no calendar of four digits has", () => {
    for (const date of ["10000-01-01", "-000001-01-01", "2025-04-31", "2025-4-12"])
      expectRefused(() => whatChanged(kept, on({}, date)), "unreadable", "today.date", "2025-04-12");
    expect(whatChanged(kept, on({}, "9999-12-31")).stale).toBe(true);
  });

  it("says where the day's conditions are wrong", () => {
    expectRefused(() => whatChanged(kept, on({}, "2025-04-11")), "conflict", "today.date");
    expectRefused(
      () => whatChanged(kept, on({ pressure: qty(0, "bar") })),
      "out-of-range",
      "today.conditions.pressure",
    );
    expectRefused(() => whatChanged(kept, { ...on({}), longestAge: 0 }), "out-of-range", "today.longestAge");
    expectRefused(() => whatChanged(kept, undefined as never), "missing", "today");
    expectRefused(() => whatChanged(undefined as never, on({})), "missing", "record");
    expectRefused(
      () => whatChanged({ ...kept, version: 3 } as never, on({})),
      "unknown-choice",
      "record.version",
    );
  });
});
