import { describe, expect, it } from "vitest";
import { handSprayRates, treeRowRate } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const row = { used: qty(10, "L"), sides: 2, rowLength: qty(100, "m"), rowSpacing: qty(4, "m") } as const;

describe("treeRowRate", () => {
  it("tells a row sprayed from both sides per area, per length and per plant", () => {
    expect(treeRowRate({ ...row, plantSpacing: qty(2, "m") })).toEqual({
      perArea: qty(250, "L/ha"),
      perLength: qty(100, "mL/m"),
      perPlant: qty(200, "mL"),
    });
  });

  it("doubles what one side took", () => {
    expect(treeRowRate({ ...row, sides: 1 }).perArea).toEqual(qty(500, "L/ha"));
  });

  it("leaves out the plants where their spacing is not known", () => {
    expect(Object.keys(treeRowRate(row))).toEqual(["perArea", "perLength"]);
  });

  it("answers US and imperial measurements in their own units", () => {
    const feet = {
      sides: 2,
      rowLength: qty(100, "ft"),
      rowSpacing: qty(12, "ft"),
      plantSpacing: qty(6, "ft"),
    } as const;
    const us = treeRowRate({ ...feet, used: qty(2, "gal") });
    expect(us.perArea.value).toBeCloseTo((2 * 43_560) / 1200, 10);
    expect([us.perArea.unit, us.perLength.unit, us.perPlant?.unit]).toEqual(["gal/ac", "fl_oz/ft", "fl_oz"]);
    const imperial = treeRowRate({ ...feet, used: qty(2, "imp_gal") });
    expect([imperial.perArea.unit, imperial.perLength.unit]).toEqual(["imp_gal/ac", "imp_fl_oz/ft"]);
  });

  refusesMisuse("treeRowRate", treeRowRate, { ...row, plantSpacing: qty(2, "m") }, [
    "used",
    "sides",
    "rowLength",
    "rowSpacing",
    "plantSpacing",
  ]);

  it("refuses a row of three sides, or of none", () => {
    expectRefused(() => treeRowRate({ ...row, sides: 3 } as never), "unknown-choice", "sides", "1, 2");
    expectRefused(() => treeRowRate({ ...row, sides: 0 } as never), "unknown-choice", "sides");
    expectRefused(() => treeRowRate({ ...row, used: qty(1, "kg") } as never), "wrong-dimension", "used");
  });
});

describe("handSprayRates", () => {
  const plot = { used: qty(40, "fl_oz"), area: { value: 340.3125, unit: "ft2", of: "treated" } } as const;
  const plants = { used: qty(4, "L"), plants: 20, plantSpacing: qty(2, "m"), rowSpacing: qty(4, "m") };
  const { plants: _, ...spacings } = plants;
  const hedge = { ...spacings, rowLength: qty(40, "m") };

  it("tells a plot per area alone", () => {
    expect(handSprayRates(plot)).toEqual({ perArea: qty(40, "gal/ac") });
  });

  it("tells a number of plants and the row they stand in alike", () => {
    const expected = { perPlant: qty(200, "mL"), perLength: qty(100, "mL/m"), perArea: qty(250, "L/ha") };
    expect(handSprayRates(plants)).toEqual(expected);
    expect(handSprayRates(hedge)).toEqual(expected);
  });

  it("tells only what the measures allow", () => {
    expect(Object.keys(handSprayRates({ used: qty(4, "L"), plants: 20 }))).toEqual(["perPlant"]);
    expect(Object.keys(handSprayRates({ used: qty(4, "L"), plants: 20, rowSpacing: qty(4, "m") }))).toEqual([
      "perPlant",
    ]);
    expect(Object.keys(handSprayRates({ used: qty(4, "L"), rowLength: qty(9, "m") }))).toEqual(["perLength"]);
    expect(
      Object.keys(handSprayRates({ used: qty(4, "L"), rowLength: qty(9, "m"), plantSpacing: qty(1, "m") })),
    ).toEqual(["perPlant", "perLength"]);
  });

  refusesMisuse("handSprayRates on plants", handSprayRates, plants, [
    "used",
    "plants",
    "plantSpacing",
    "rowSpacing",
  ]);
  refusesMisuse("handSprayRates on a row", handSprayRates, hedge, [
    "used",
    "rowLength",
    "plantSpacing",
    "rowSpacing",
  ]);
  refusesMisuse("handSprayRates on a plot", handSprayRates, plot, ["used", "area"]);

  it("refuses to guess what the spray was used on, and two of them", () => {
    expectRefused(() => handSprayRates({ used: qty(4, "L") }), "missing", "", "area, row length, plants");
    expectRefused(
      () => handSprayRates({ ...plants, rowLength: qty(9, "m") }),
      "conflict",
      "plants",
      "row length",
    );
  });

  it("refuses ground area for treated area, and half a plant", () => {
    const ground = { ...plot, area: { ...plot.area, of: "ground" } };
    expectRefused(() => handSprayRates(ground as never), "wrong-area", "area");
    expectRefused(() => handSprayRates({ ...plants, plants: 1.5 }), "out-of-range", "plants");
  });
});
