import { describe, expect, it } from "vitest";
import { groundArea, plantCount, plantedGround, treatedArea } from "../../../src/area/index.ts";
import { diluteRate, handSprayRates, ratePerPlant, treeRowVolume } from "../../../src/output-rate/index.ts";
import { convert, qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

// Tree Row Volume (A. Landers, Cornell University, NYSAES): 193,600 ft³ an acre.
const canopy = { height: qty(8, "ft"), width: qty(10, "ft"), rowSpacing: qty(18, "ft") };

describe("tree-row volume", () => {
  it("is height by width by the length of row on an acre or a hectare", () => {
    expect(treeRowVolume(canopy).unit).toBe("ft3/ac");
    expect(treeRowVolume(canopy).value).toBeCloseTo(193_600, 8);
    const metric = { height: qty(300, "cm"), width: qty(2, "m"), rowSpacing: qty(5, "m") };
    expect(treeRowVolume(metric)).toEqual(qty(12_000, "m3/ha"));
  });

  it("allows canopies that close the alley, and none that are wider", () => {
    expect(treeRowVolume({ ...canopy, width: qty(216, "in") }).value).toBeCloseTo(8 * 43_560, 8);
    expectRefused(
      () => treeRowVolume({ ...canopy, width: canopy.rowSpacing, rowSpacing: canopy.width }),
      "conflict",
      "width",
      "Trees 18 ft wide don't fit rows 10 ft apart. Are the two swapped?",
    );
  });

  it("notes a canopy wider than its row beside other faults, and nothing where one of the two is at fault", () => {
    const paths = (input: object): string[] =>
      refusal(() => treeRowVolume(input as never)).issues.map(({ path }) => path);
    expect(paths({ height: qty(0, "ft"), width: qty(3, "m"), rowSpacing: qty(2, "m") })).toEqual([
      "height",
      "width",
    ]);
    expect(paths({ ...canopy, width: undefined })).toEqual(["width"]);
    expect(paths({ ...canopy, rowSpacing: undefined, depth: 3 })).toEqual(["rowSpacing", "depth"]);
  });

  refusesMisuse("treeRowVolume", treeRowVolume, canopy, ["height", "width", "rowSpacing"]);
});

describe("the dilute rate", () => {
  it("is the canopy's volume by the spray for so much of it", () => {
    const spray = qty(1, "gal/1000ft3");
    expect(diluteRate({ canopy, spray }).value).toBeCloseTo(193.6, 10);
    expect(diluteRate({ canopy: qty(193_600, "ft3/ac"), spray })).toEqual(qty(193.6, "gal/ac"));
    expect(diluteRate({ canopy: qty(20_000, "m3/ha"), spray: qty(12.5, "L/100m3") })).toEqual(
      qty(2500, "L/ha"),
    );
  });

  it("comes in the system of the spray", () => {
    const { value, unit } = diluteRate({ canopy, spray: qty(0.7, "imp_gal/1000ft3") });
    expect([unit, value]).toEqual(["imp_gal/ac", expect.closeTo(135.52, 10)]);
    // 80 / 18 ft of canopy over all the ground are 1.35466… m: 13,546.6… m³/ha.
    const liters = diluteRate({ canopy, spray: qty(100, "mL/m3") });
    expect([liters.unit, liters.value]).toEqual(["L/ha", expect.closeTo((800 / 18) * 30.48, 9)]);
    expect(convert(diluteRate({ canopy, spray: qty(13.368055, "L/100m3") }), "gal/ac").value).toBeCloseTo(
      193.6,
      3,
    );
  });

  it("refuses as a canopy what is a spray rate, or what no canopy is", () => {
    const spray = qty(10, "L/100m3");
    for (const given of [qty(200, "gal/ac"), qty(5000, "L/ha"), qty(9.9, "m3/ha"), qty(1_000_001, "m3/ha")])
      expectRefused(() => diluteRate({ canopy: given, spray }), "out-of-range", "canopy", "tree-row volume");
    expect(diluteRate({ canopy: qty(10, "m3/ha"), spray }).value).toBeCloseTo(1, 12);
    expect(diluteRate({ canopy: qty(1_000_000, "m3/ha"), spray }).value).toBeCloseTo(100_000, 6);
    expect(refusal(() => diluteRate({ canopy: qty(200, "gal/ac"), spray })).message).toBe(
      "200 gal/ac can't be a tree-row volume. Enter height × width × row length per area, such as 200,000 cu ft/ac.",
    );
  });

  it("refuses a spray per area or a bare volume for a spray per volume of canopy", () => {
    const error = refusal(() => diluteRate({ canopy, spray: qty(100, "gal/ac") as never }));
    expect([error.code, error.path]).toEqual(["wrong-dimension", "spray"]);
    expect(error.message).toContain("0.7 gal/1,000 cu ft");
    expectRefused(
      () => diluteRate({ canopy: qty(5, "ft3") as never, spray: qty(1, "L/m3") }),
      "wrong-dimension",
      "canopy",
    );
    expectRefused(
      () => diluteRate({ canopy: { height: qty(1, "m") } as never, spray: qty(1, "L/m3") }),
      "missing",
      "canopy.width",
    );
  });

  refusesMisuse("diluteRate", diluteRate, { canopy, spray: qty(1, "gal/1000ft3") }, [
    "canopy",
    "canopy.height",
    "spray",
  ]);
});

describe("a rate for each plant", () => {
  it("is the rate on the ground that each one stands on, in the rate's own unit", () => {
    const trees = { rowSpacing: qty(18, "ft"), plantSpacing: qty(12, "ft") };
    expect(ratePerPlant({ rate: qty(43_560 / 216, "gal/ac"), ...trees }).value).toBeCloseTo(1, 12);
    expect(
      ratePerPlant({ rate: qty(2, "pt/ac"), rowSpacing: qty(66, "ft"), plantSpacing: qty(33, "ft") }),
    ).toEqual(qty(0.1, "pt"));
    expect(
      ratePerPlant({ rate: qty(50, "kg/ha"), rowSpacing: qty(5, "m"), plantSpacing: qty(400, "cm") }),
    ).toEqual(qty(0.1, "kg"));
  });

  it("comes from plants on a piece of ground as well", () => {
    const ground = groundArea(qty(2, "ac"));
    expect(ratePerPlant({ rate: qty(100, "gal/ac"), plants: 400, ground })).toEqual(qty(0.5, "gal"));
    expect(ratePerPlant({ rate: qty(100, "L/ha"), plants: 1000, ground: groundArea(qty(1, "ha")) })).toEqual(
      qty(0.1, "L"),
    );
  });

  it("is what handSprayRates is the reverse of", () => {
    const trees = { rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") };
    const { perArea } = handSprayRates({ used: qty(30, "L"), plants: 20, ...trees });
    expect(ratePerPlant({ rate: perArea as never, ...trees })).toEqual(qty(1.5, "L"));
  });

  it("refuses both ways at once, half of one, and treated area", () => {
    const rate = qty(100, "gal/ac");
    const spaced = { rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") };
    expectRefused(() => ratePerPlant({ rate, ...spaced, plants: 5 }), "conflict", "plants");
    expectRefused(() => ratePerPlant({ rate }), "missing", "");
    expectRefused(() => ratePerPlant({ rate, rowSpacing: qty(5, "m") }), "missing", "plantSpacing");
    const ground = treatedArea(qty(1, "ac")) as never;
    expectRefused(() => ratePerPlant({ rate, plants: 5, ground }), "wrong-area", "ground");
    expectRefused(() => ratePerPlant({ rate: qty(5, "gal") as never, ...spaced }), "wrong-dimension", "rate");
  });

  refusesMisuse(
    "ratePerPlant",
    ratePerPlant,
    { rate: qty(100, "gal/ac"), rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") },
    ["rate", "rowSpacing", "plantSpacing"],
  );
});

describe("the ground that trees stand on", () => {
  it("is their number by their spacings, and gives the number back", () => {
    const spacing = { rowSpacing: qty(5, "m"), plantSpacing: qty(400, "cm") };
    const ground = plantedGround({ plants: 300, ...spacing });
    expect(ground).toEqual({ value: 6000, unit: "m2", of: "ground" });
    expect(plantCount({ ground, ...spacing })).toBe(300);
  });

  refusesMisuse(
    "plantedGround",
    plantedGround,
    { plants: 3, rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") },
    ["plants", "rowSpacing", "plantSpacing"],
  );
});
