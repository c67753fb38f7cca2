import { describe, expect, it } from "vitest";
import { type Calibration, calibrationRecord, rateOf } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { rateOf as rateOfLines } from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { MEASUREMENTS } from "../../helpers/output-rate-samples.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const run = { used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") };
const strip = { kind: "strip", ...run } as const;

describe("rateOf", () => {
  it("gives one rate for one situation, however it was measured", () => {
    // 0.02 L on each square meter, measured in ten ways.
    const rows = { rowLength: qty(50, "m"), rowSpacing: qty(2, "m") };
    const ways: Calibration[] = [
      strip,
      { kind: "strip-runs", runs: [run, run] },
      { kind: "direct-strip", caught: qty(200, "mL"), catchUnit: "mL", rateUnit: "L/ha" },
      {
        kind: "catch",
        catches: [qty(1, "L")],
        time: qty(30, "s"),
        speed: qty(1, "m/s"),
        width: qty(500 / 300, "m"),
      },
      { kind: "tree-row", used: qty(1, "L"), sides: 1, ...rows },
      { kind: "hand", used: qty(2, "L"), area: { value: 100, unit: "m2", of: "treated" } },
      { kind: "hand", used: qty(2, "L"), plants: 25, plantSpacing: qty(2, "m"), rowSpacing: qty(2, "m") },
      { kind: "flow", flow: qty(2, "L/min"), speed: qty(6, "km/h"), width: qty(1, "m") },
      { kind: "known", rate: qty(200, "L/ha") },
      { kind: "record", record: calibrationRecord({ date: "2025-04-12", measurement: strip }) },
    ];
    for (const way of ways) {
      const rate = rateOf(way);
      expect(rate.value, way.kind).toBeCloseTo(200, 10);
      expect(rate.unit).toBe("L/ha");
    }
  });

  it("leaves a known rate in its own unit, and gives the rate alone", () => {
    const rate = { ...qty(2, "gal/1000ft2"), uncertainty: qty(0.1, "gal/1000ft2") };
    expect(rateOf({ kind: "known", rate })).toEqual(qty(2, "gal/1000ft2"));
  });

  it("works a record's rate out again from what was measured", () => {
    const record = calibrationRecord({ date: "2025-04-12", measurement: strip });
    const doubled = { ...record, measurement: { ...strip, used: qty(4, "L") } };
    expect(rateOf({ kind: "record", record: doubled })).toEqual(qty(400, "L/ha"));
    expect(rateOfLines({ kind: "record", record })).toEqual(rateOfLines(strip));
  });

  for (const [kind, fields] of Object.entries({
    strip: ["kind", "used", "swath", "distance"],
    "strip-runs": ["runs", "runs.1.used"],
    "direct-strip": ["caught", "catchUnit", "rateUnit"],
    catch: ["catches.0", "time", "speed.time", "width"],
    "tree-row": ["used", "sides", "rowLength", "rowSpacing"],
    hand: ["used", "plants", "plantSpacing", "rowSpacing"],
    flow: ["flow", "speed", "width"],
    known: ["rate"],
  })) {
    refusesMisuse(`rateOf ${kind}`, rateOf, MEASUREMENTS[kind as keyof typeof MEASUREMENTS], fields);
  }
  refusesMisuse(
    "rateOf record",
    rateOf,
    { kind: "record", record: calibrationRecord({ date: "2025-04-12", measurement: strip }) },
    ["record", "record.measurement.used", "record.measurement.kind", "record.date"],
  );

  it("says where in a record, and in what is to be kept as one, it ran out of numbers", () => {
    const measurement = {
      ...strip,
      used: qty(1e200, "L"),
      swath: qty(1e-60, "m"),
      distance: qty(1e-60, "m"),
    };
    const path = (work: () => unknown) => refusal(work).path;
    const date = "2025-04-12";
    expect(path(() => calibrationRecord({ date, measurement }))).toMatch(/^measurement\b/);
    const record = { ...calibrationRecord({ date, measurement: strip }), measurement };
    expect(path(() => rateOf({ kind: "record", record }))).toMatch(/^record\.measurement\b/);
    expect(path(() => rateOf(measurement))).not.toMatch(/record|measurement/);
  });

  it("refuses a kind it does not know, and says which there are", () => {
    expectRefused(() => rateOf({ ...strip, kind: "guess" } as never), "unknown-choice", "kind", "strip-runs");
  });

  it("refuses the weight of granules, from plain JavaScript", () => {
    const used = qty(2, "kg");
    expectRefused(() => rateOf({ ...strip, used } as never), "wrong-dimension", "used");
    expectRefused(
      () =>
        rateOf({
          kind: "strip-runs",
          runs: [
            { ...run, used },
            { ...run, used },
          ],
        } as never),
      "wrong-dimension",
      "runs[0].used",
    );
    expectRefused(
      () => rateOf({ ...MEASUREMENTS.catch, catches: [used, used] } as never),
      "wrong-dimension",
      "catches[0]",
    );
  });

  it("says which spacing a hand-held spray lacks for a rate per area", () => {
    const hand = { kind: "hand", used: qty(2, "L") } as const;
    expectRefused(() => rateOf({ ...hand, plants: 20, rowSpacing: qty(2, "m") }), "missing", "plantSpacing");
    expectRefused(() => rateOf({ ...hand, plants: 20, plantSpacing: qty(2, "m") }), "missing", "rowSpacing");
    expectRefused(() => rateOf({ ...hand, rowLength: qty(20, "m") }), "missing", "rowSpacing");
    // A row length that is wrong is given all the same: nothing else is asked for.
    const { issues } = refusal(() => rateOf({ ...hand, rowLength: qty(-5, "m"), rowSpacing: qty(2, "m") }));
    expect(issues.map(({ code, path }) => [code, path])).toEqual([["out-of-range", "rowLength"]]);
  });
});
