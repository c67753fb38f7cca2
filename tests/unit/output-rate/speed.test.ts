import { describe, expect, it } from "vitest";
import { averageSpeed, rateAtSpeed, speedFrom, timeFor } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const pass = { distance: qty(88, "ft"), time: qty(60, "s") };

describe("speed", () => {
  it("is one mile an hour for 88 feet a minute", () => {
    // Math for Pesticide Applicators, University of Nebraska-Lincoln Pesticide Safety Education.
    expect(speedFrom(pass)).toEqual(qty(1, "mph"));
    expect(timeFor({ distance: qty(88, "ft"), speed: qty(1, "mph") }).value).toBeCloseTo(60, 12);
  });

  it("is told as the distance is", () => {
    expect(speedFrom({ distance: qty(100, "m"), time: qty(1, "min") })).toEqual(qty(6, "km/h"));
  });

  it("of several passes is all the distance over all the time", () => {
    const passes = [pass, { distance: qty(176, "ft"), time: qty(0.5, "min") }];
    expect(averageSpeed({ passes })).toEqual(qty(2, "mph"));
    expect(averageSpeed({ passes: [pass] })).toEqual(speedFrom(pass));
  });

  it("doubled halves the rate", () => {
    const input = { rate: qty(20, "gal/ac"), speed: qty(2, "mph"), newSpeed: qty(4, "mph") };
    expect(rateAtSpeed(input)).toEqual(qty(10, "gal/ac"));
  });

  it("leaves the rate in the unit it was given in", () => {
    const input = { rate: qty(2, "gal/1000ft2"), speed: qty(3, "km/h"), newSpeed: qty(2, "km/h") };
    expect(rateAtSpeed(input)).toEqual(qty(3, "gal/1000ft2"));
  });

  refusesMisuse("speedFrom", speedFrom, pass, ["distance", "time"]);
  refusesMisuse("timeFor", timeFor, { distance: qty(88, "ft"), speed: qty(1, "mph") }, ["distance", "speed"]);
  refusesMisuse("averageSpeed", averageSpeed, { passes: [pass, pass] }, [
    "passes",
    "passes.1.time",
    "passes.0.distance",
  ]);
  refusesMisuse(
    "rateAtSpeed",
    rateAtSpeed,
    { rate: qty(2, "L/ha"), speed: qty(3, "mph"), newSpeed: qty(2, "mph") },
    ["rate", "speed", "newSpeed"],
  );

  it("refuses no time, no distance and no passes", () => {
    expectRefused(() => speedFrom({ ...pass, time: qty(0, "s") }), "out-of-range", "time");
    expectRefused(() => speedFrom({ ...pass, distance: qty(0, "ft") }), "out-of-range", "distance");
    expectRefused(() => averageSpeed({ passes: [] }), "too-few", "passes");
    expectRefused(
      () => speedFrom({ distance: qty(1e308, "mi"), time: qty(1e-300, "s") }),
      "not-finite",
      "distance",
    );
  });
});
