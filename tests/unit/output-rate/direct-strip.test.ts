import { describe, expect, it } from "vitest";
import { directStripArea, directStripDistance, directStripRate } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const ounces = { catchUnit: "fl_oz", rateUnit: "gal/ac" } as const;
const metric = { catchUnit: "mL", rateUnit: "L/ha" } as const;

describe("direct-reading strips", () => {
  it("cover 1/128 acre for ounces and gallons, 10 m² for millilitres and litres", () => {
    expect(directStripArea(ounces)).toEqual(qty(43560 / 128, "ft2"));
    expect(directStripArea(metric)).toEqual(qty(10, "m2"));
    // 160 imperial fluid ounces to the gallon (Weights and Measures Act 1985).
    expect(directStripArea({ catchUnit: "imp_fl_oz", rateUnit: "imp_gal/ac" })).toEqual(
      qty(43560 / 160, "ft2"),
    );
    expect(directStripArea({ catchUnit: "fl_oz", rateUnit: "gal/1000ft2" })).toEqual(qty(1000 / 128, "ft2"));
  });

  it("take the distance in the units of the width", () => {
    expect(directStripDistance({ ...ounces, width: qty(30, "in") })).toEqual(qty(136.125, "ft"));
    expect(directStripDistance({ ...metric, width: qty(50, "cm") })).toEqual(qty(20, "m"));
    expect(directStripDistance({ ...ounces, width: qty(1, "m") }).unit).toBe("m");
  });

  it("read a catch in the strip's own unit, whatever the jug is marked in", () => {
    expect(directStripRate({ ...ounces, caught: qty(15, "fl_oz") })).toEqual(qty(15, "gal/ac"));
    expect(directStripRate({ ...ounces, caught: qty(0.5, "qt") })).toEqual(qty(16, "gal/ac"));
    expect(directStripRate({ ...ounces, caught: qty(473.176473, "mL") }).value).toBeCloseTo(16, 12);
  });

  refusesMisuse("directStripDistance", directStripDistance, { ...ounces, width: qty(30, "in") }, [
    "width",
    "catchUnit",
    "rateUnit",
  ]);
  refusesMisuse("directStripRate", directStripRate, { ...ounces, caught: qty(15, "fl_oz") }, [
    "caught",
    "catchUnit",
    "rateUnit",
  ]);
  refusesMisuse("directStripArea", directStripArea, ounces, ["catchUnit", "rateUnit"]);

  it("refuse a weight to be read as a volume, and a rate that is none", () => {
    expectRefused(
      () => directStripArea({ ...ounces, catchUnit: "oz" } as never),
      "wrong-dimension",
      "catchUnit",
    );
    expectRefused(
      () => directStripArea({ ...ounces, rateUnit: "gal/min" } as never),
      "wrong-dimension",
      "rateUnit",
    );
  });
});
