import { describe, expect, it } from "vitest";
import { stripRate, stripRateWorking } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { expectLinesTrue } from "../../helpers/working.ts";
import { faultOf } from "./fault.ts";

describe("stripRate", () => {
  it("divides what was used by the area it was used on", () => {
    // 1/10 acre takes 4 gallons: 40 gallons an acre. Refill Method for Boom Sprayer Calibration, Mesa County Pest Control.
    expect(stripRate({ used: qty(4, "gal"), swath: qty(20, "ft"), distance: qty(217.8, "ft") })).toEqual(
      qty(40, "gal/ac"),
    );
  });

  it("gives a mass per area for a mass used", () => {
    // One acre is 43,560 square feet by definition (NIST Handbook 44 (2024), Appendix C).
    expect(stripRate({ used: qty(16, "oz"), swath: qty(10, "ft"), distance: qty(4356, "ft") })).toEqual(
      qty(1, "lb/ac"),
    );
  });

  it("answers in the system that the amount was measured in", () => {
    const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
    expect(stripRate({ ...strip, used: qty(2, "L") })).toEqual(qty(200, "L/ha"));
    expect(stripRate({ ...strip, used: qty(2, "imp_gal") }).unit).toBe("imp_gal/ac");
    expect(stripRate({ ...strip, used: qty(2, "kg") })).toEqual(qty(200, "kg/ha"));
  });

  it("shows working that is true and ends at its own result", () => {
    for (const run of [
      { used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") },
      { used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") },
    ]) {
      const lines = stripRateWorking(run);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(stripRate(run));
    }
  });

  const good = { used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") };

  it.each([
    ["nothing used", { ...good, used: qty(0, "fl_oz") }, "out-of-range used"],
    ["a swath of zero", { ...good, swath: qty(0, "ft") }, "out-of-range swath"],
    ["a negative distance", { ...good, distance: qty(-1, "ft") }, "out-of-range distance"],
    ["a missing swath", { used: good.used, distance: good.distance }, "missing swath"],
    ["a bare number", { ...good, used: 34 }, "not-a-quantity used"],
    ["a number as text", { ...good, used: { value: "34", unit: "fl_oz" } }, "not-a-quantity used.value"],
    ["NaN", { ...good, distance: { value: Number.NaN, unit: "ft" } }, "not-finite distance.value"],
    ["a time for an amount", { ...good, used: qty(3, "s") }, "wrong-dimension used"],
    ["a volume for a length", { ...good, swath: qty(3, "gal") }, "wrong-dimension swath"],
    ["an unknown unit", { ...good, swath: { value: 3, unit: "feet" } }, "unknown-unit swath.unit"],
    ["nothing at all", undefined, "missing "],
    ["a list", [good], "not-a-quantity "],
    ["amounts beyond the range of numbers", { ...good, used: qty(1e308, "gal") }, "not-finite "],
    ["lengths below the range of numbers", { ...good, swath: qty(1e-320, "ft") }, "not-finite "],
  ])("refuses %s", (_, input, fault) => {
    expect(faultOf(() => stripRate(input as never))).toBe(fault);
  });
});
