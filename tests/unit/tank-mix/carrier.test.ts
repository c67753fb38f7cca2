import { describe, expect, it } from "vitest";
import { carrierFor } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

const rate = qty(20, "gal/ac");
const area = { value: 0.5, unit: "ac", of: "treated" } as const;

describe("carrierFor", () => {
  it("gives what lands on the plot, and nothing else where nothing else is given", () => {
    expect(carrierFor({ rate, area })).toEqual({
      sprayed: qty(10, "gal"),
      reserve: qty(0, "gal"),
      lines: qty(0, "gal"),
      total: qty(10, "gal"),
    });
  });

  it("adds what stays in the lines, whatever unit it is given in", () => {
    const carrier = carrierFor({ rate, area, lineVolume: qty(64, "fl_oz") });
    expect(carrier.lines).toEqual(qty(0.5, "gal"));
    expect(carrier.total).toEqual(qty(10.5, "gal"));
  });

  it("takes a reserve in per cent of the sprayed volume, not of the lines", () => {
    const carrier = carrierFor({ rate, area, lineVolume: qty(1, "gal"), reserve: { percent: 10 } });
    expect(carrier.reserve).toEqual(qty(1, "gal"));
    expect(carrier.total).toEqual(qty(12, "gal"));
  });

  it("takes a reserve as a volume", () => {
    expect(carrierFor({ rate, area, reserve: { volume: qty(2, "qt") } }).total).toEqual(qty(10.5, "gal"));
  });

  it("rounds the total up to the next multiple of a convenient volume", () => {
    const carrier = carrierFor({
      rate,
      area,
      lineVolume: qty(0.3, "gal"),
      reserve: { roundUpTo: qty(0.25, "gal") },
    });
    expect(carrier.total).toEqual(qty(10.5, "gal"));
    expect(carrier.reserve.value).toBeCloseTo(0.2, 12);
  });

  it("adds nothing where the total is a multiple already, nor for noise in the 16th digit", () => {
    expect(carrierFor({ rate, area, reserve: { roundUpTo: qty(2.5, "gal") } }).total).toEqual(qty(10, "gal"));
    const noisy = { ...area, value: 0.5000000000000001 };
    const carrier = carrierFor({ rate, area: noisy, reserve: { roundUpTo: qty(2.5, "gal") } });
    expect(carrier.total).toEqual(qty(10, "gal"));
    expect(carrier.reserve).toEqual(qty(0, "gal"));
  });

  it("answers in the system of the rate", () => {
    const hectare = { value: 1, unit: "ha", of: "treated" } as const;
    expect(carrierFor({ rate: qty(200, "L/ha"), area: hectare }).total).toEqual(qty(200, "L"));
    expect(carrierFor({ rate: qty(20, "imp_gal/ac"), area }).total).toEqual(qty(10, "imp_gal"));
    expect(carrierFor({ rate: qty(59, "fl_oz/1000ft2"), area: { ...area, unit: "1000ft2" } }).total).toEqual(
      qty(29.5 / 128, "gal"),
    );
  });

  it("refuses ground area, which has ground in it that no spray lands on", () => {
    const error = errorOf(() => carrierFor({ rate, area: { ...area, of: "ground" } as never }));
    expect([error.code, error.path]).toEqual(["wrong-area", "area"]);
  });

  it("takes nothing for lines and for a reserve of a volume", () => {
    const nothing = { lineVolume: qty(0, "gal"), reserve: { volume: qty(0, "gal") } };
    expect(carrierFor({ rate, area, ...nothing })).toEqual(carrierFor({ rate, area }));
  });

  it.each([
    [{ reserve: { volume: qty(-1, "gal") } }, "out-of-range", "reserve.volume"],
    [{ reserve: { percent: -1 } }, "out-of-range", "reserve.percent"],
    [{ reserve: { percent: 101 } }, "out-of-range", "reserve.percent"],
    [{ reserve: { volume: qty(-1, "gal") } }, "out-of-range", "reserve.volume"],
    [{ reserve: { roundUpTo: qty(0, "gal") } }, "out-of-range", "reserve.roundUpTo"],
    [{ reserve: { percent: 5, volume: qty(1, "gal") } }, "conflict", "reserve.volume"],
    [{ reserve: {} }, "missing", "reserve"],
    [{ lineVolume: qty(-1, "gal") }, "out-of-range", "lineVolume"],
    [{ lineVolume: qty(1, "oz") }, "wrong-dimension", "lineVolume"],
    [{ rate: qty(0, "gal/ac") }, "out-of-range", "rate"],
    [{ rate: qty(20, "gal") }, "wrong-dimension", "rate"],
    [{ area: { ...area, value: 0 } }, "out-of-range", "area"],
    [{ rate: qty(1e308, "gal/ac") }, "not-finite", "rate"],
    [{ area: { ...area, value: 1e300 } }, "not-finite", "area"],
    [{ rate: qty(1e-300, "gal/ac") }, "out-of-range", "rate"],
    [{ lineVolume: qty(1e-76, "gal") }, "out-of-range", "lineVolume"],
    [{ reserve: { roundUpTo: qty(1e-320, "L") } }, "out-of-range", "reserve.roundUpTo"],
    [{ resreve: { percent: 5 } }, "unknown-field", "resreve"],
    [{ reserve: { percent: 5, extra: 1 } }, "unknown-field", "reserve.extra"],
  ] as const)("refuses %o", (change, code, path) => {
    const error = errorOf(() => carrierFor({ rate, area, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});
