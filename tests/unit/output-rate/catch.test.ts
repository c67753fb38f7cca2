import { describe, expect, it } from "vitest";
import { catchRate } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const ounces = (...list: number[]) => list.map((value) => qty(value, "fl_oz"));
const walk = { distance: qty(88, "ft"), time: qty(20, "s") };
const good = { catches: ounces(25.6, 25.6), time: qty(1, "min"), speed: walk, width: qty(20, "in") };

describe("catchRate", () => {
  it("gives the handbooks' 5,940 × flow / (speed × spacing)", () => {
    // 0.2 gal/min at 3 mph and 20 in: 5,940 × 0.2 / 60 = 19.8 (MontGuide MT 2000-14, 2000).
    expect(catchRate(good).value).toBeCloseTo(19.8, 12);
    expect(catchRate({ ...good, speed: qty(3, "mph") }).value).toBeCloseTo(19.8, 12);
  });

  it("adds the catches of a row's nozzles and does not average them", () => {
    // Two nozzles to a 40 in row that together catch 14 fl oz over 1/128 acre give 14 gal/ac (Ounces Equal Gallons, LSU AgCenter).
    const rate = catchRate({
      catches: ounces(6, 8),
      time: qty(17, "s"),
      speed: { distance: qty(102.09375, "ft"), time: qty(17, "s") },
      width: qty(40, "in"),
      nozzlesPerRow: 2,
    });
    expect(rate.value).toBeCloseTo(14, 12);
  });

  it("takes catches in several units, and any catch time", () => {
    const half = { ...good, catches: [qty(12.8, "fl_oz"), qty(0.1, "gal")], time: qty(30, "s") };
    expect(catchRate(half).value).toBeCloseTo(19.8, 12);
  });

  it("answers in the system of the first catch, by weight for granules", () => {
    const metric = {
      catches: [qty(1, "L")],
      time: qty(1, "min"),
      speed: qty(6, "km/h"),
      width: qty(50, "cm"),
    };
    expect(catchRate(metric)).toEqual(qty(200, "L/ha"));
    expect(catchRate({ ...metric, catches: [qty(1, "kg")] })).toEqual(qty(200, "kg/ha"));
    expect(catchRate({ ...metric, catches: [qty(1, "imp_pt")] }).unit).toBe("imp_gal/ac");
  });

  refusesMisuse("catchRate", catchRate, good, [
    "catches",
    "catches.1",
    "time",
    "speed.distance",
    "speed.time",
    "width",
  ]);
  refusesMisuse("catchRate at a speed", catchRate, { ...good, speed: qty(3, "mph"), nozzlesPerRow: 1 }, [
    "speed",
    "nozzlesPerRow",
  ]);

  it("refuses an empty boom, a catch of nothing, no time and no speed", () => {
    expectRefused(() => catchRate({ ...good, catches: [] }), "too-few", "catches");
    expectRefused(() => catchRate({ ...good, catches: ounces(20, 0) }), "out-of-range", "catches[1]");
    expectRefused(() => catchRate({ ...good, time: qty(0, "s") }), "out-of-range", "time");
    expectRefused(() => catchRate({ ...good, speed: qty(0, "mph") }), "out-of-range", "speed");
    expectRefused(
      () => catchRate({ ...good, speed: { ...walk, time: qty(0, "s") } }),
      "out-of-range",
      "speed.time",
    );
  });

  it("refuses half a row", () => {
    expectRefused(
      () => catchRate({ ...good, catches: ounces(1, 2, 3), nozzlesPerRow: 2 }),
      "conflict",
      "nozzlesPerRow",
    );
  });

  it("refuses a boom of more than 500 nozzles, and takes one of 500", () => {
    const boom = (nozzles: number) => ({ ...good, catches: Array(nozzles).fill(qty(25.6, "fl_oz")) });
    expect(catchRate(boom(500)).value).toBeCloseTo(19.8, 12);
    expectRefused(() => catchRate(boom(501)), "out-of-range", "catches", "at most 500");
  });

  it("refuses granules among the sprays", () => {
    const catches = [qty(20, "fl_oz"), qty(20, "oz")];
    expectRefused(
      () => catchRate({ ...good, catches } as never),
      "wrong-dimension",
      "catches[1]",
      "oz (weight) and fl oz (volume) are different",
    );
  });
});
