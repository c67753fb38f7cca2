import { describe, expect, it } from "vitest";
import { stripRate } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { stripRate as stripRateLines } from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

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
      const lines = stripRateLines(run);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(stripRate(run));
    }
  });

  it("takes ounces of weight for granules and never for fluid ounces", () => {
    const rate = stripRate({ used: qty(16, "oz"), swath: qty(10, "ft"), distance: qty(43.56, "ft") });
    expect(rate).toEqual(qty(100, "lb/ac"));
  });

  const good = { used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") };

  refusesMisuse("stripRate", stripRate, good, ["used", "swath", "distance"]);

  it("refuses a strip on which nothing was used, or of no width or length", () => {
    expectRefused(() => stripRate({ ...good, used: qty(0, "fl_oz") }), "out-of-range", "used", "more than 0");
    expectRefused(() => stripRate({ ...good, swath: qty(0, "ft") }), "out-of-range", "swath");
    expectRefused(() => stripRate({ ...good, distance: qty(0, "ft") }), "out-of-range", "distance");
  });

  it("refuses an amount that is neither a volume nor a weight", () => {
    expectRefused(() => stripRate({ ...good, used: qty(3, "s") } as never), "wrong-dimension", "used");
  });

  it("refuses amounts beyond the range of numbers instead of telling an infinity or a nothing", () => {
    expectRefused(() => stripRate({ ...good, used: qty(1e308, "gal") }), "not-finite", "used");
    expectRefused(() => stripRate({ ...good, swath: qty(1e-320, "ft") }), "out-of-range", "swath");
    expectRefused(
      () => stripRate({ used: qty(1e-300, "L"), swath: qty(1e200, "m"), distance: qty(1e200, "m") }),
      "out-of-range",
      "used",
    );
  });
});
