import { describe, expect, it } from "vitest";
import { calibrationRecord, rateUncertainty } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { MEASUREMENTS } from "../../helpers/output-rate-samples.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const strip = { kind: "strip", used: qty(2, "L"), swath: qty(2, "m"), distance: qty(50, "m") } as const;
const used = { ...qty(2, "L"), uncertainty: qty(60, "mL") };
const swath = { ...qty(2, "m"), uncertainty: qty(8, "cm") };

describe("rateUncertainty", () => {
  it("asks after every reading of a row of trees, and of a hand-held spray by plants", () => {
    const sure = <Q extends { readonly value: number; readonly unit: string }>(quantity: Q) => ({
      ...quantity,
      uncertainty: { value: quantity.value / 100, unit: quantity.unit },
    });
    const names = (measurement: object) =>
      rateUncertainty(measurement as never)
        .shares.map(({ measurement: name }) => name)
        .sort();
    const trees = { rowLength: sure(qty(100, "m")), rowSpacing: sure(qty(4, "m")) };
    expect(names({ kind: "tree-row", used: sure(qty(10, "L")), sides: 1, ...trees })).toEqual([
      "rowLength",
      "rowSpacing",
      "used",
    ]);
    const plants = { plants: 20, plantSpacing: sure(qty(1, "m")), rowSpacing: sure(qty(2, "m")) };
    expect(names({ kind: "hand", used: sure(qty(4, "L")), ...plants })).toEqual([
      "plantSpacing",
      "rowSpacing",
      "used",
    ]);
  });

  it("adds the relative uncertainties of a product in squares", () => {
    // 3 % and 4 % make 5 % (JCGM 100:2008, 5.1.6).
    const sure = rateUncertainty({ ...strip, used, swath });
    expect(sure.relative.value).toBeCloseTo(5, 12);
    expect(sure.rate).toEqual(qty(200, "L/ha"));
    expect(sure.standardUncertainty.value).toBeCloseTo(10, 12);
    expect(sure.shares.map(({ measurement, share }) => [measurement, Number(share.toFixed(12))])).toEqual([
      ["used", 0.36],
      ["swath", 0.64],
    ]);
  });

  it("names the measurement to make better, and those it had to take as exact", () => {
    const sure = rateUncertainty({ ...strip, used, swath });
    expect([sure.improve, sure.takenAsExact]).toEqual(["swath", ["distance"]]);
  });

  it("takes a resolution for an even spread over one step: 0.29 of it", () => {
    // JCGM 100:2008, F.2.2.1: u = 0.29 of the resolution.
    const sure = rateUncertainty({ ...strip, used: { ...strip.used, resolution: qty(20, "mL") } });
    expect(sure.relative.value).toBeCloseTo(0.29, 2);
    expect(sure.relative.value).toBeCloseTo(1 / Math.sqrt(12), 12);
  });

  it("counts each nozzle's catch by its part of the total", () => {
    const catches = [1, 3].map((litres) => ({ ...qty(litres, "L"), uncertainty: qty(40, "mL") }));
    const boom = { kind: "catch", time: qty(1, "min"), speed: qty(6, "km/h"), width: qty(1, "m") } as const;
    const sure = rateUncertainty({ ...boom, catches });
    // Two uncertainties of 40 mL on a total of 4 L.
    expect(sure.relative.value).toBeCloseTo(Math.SQRT2, 12);
    expect(sure.shares.map(({ share }) => Number(share.toFixed(12)))).toEqual([0.5, 0.5]);
    expect(sure.takenAsExact).toEqual(["time", "speed", "width"]);
  });

  it("adds the scatter of several runs, and the strip that they share once", () => {
    const runs = [1.9, 2.1].map((litres) => ({ used: qty(litres, "L"), swath, distance: qty(50, "m") }));
    const sure = rateUncertainty({ kind: "strip-runs", runs });
    // The runs' standard deviation is 0.1 × √2 L, over √2 runs: 0.1 L on 2 L. The swath is off by its full 4 %.
    expect(sure.relative.value).toBeCloseTo(Math.hypot(5, 4), 10);
    expect(sure.shares.map(({ measurement }) => measurement)).toEqual(["swath", "scatter"]);
  });

  it("counts a hand-held spray's row by its length and spacing", () => {
    const part = (value: number) => ({ ...qty(value, "m"), uncertainty: qty(value / 100, "m") });
    const hand = {
      kind: "hand",
      used: qty(2, "L"),
      rowLength: part(20),
      rowSpacing: part(2),
      plantSpacing: part(1),
    } as const;
    expect(rateUncertainty(hand).relative.value).toBeCloseTo(Math.SQRT2, 12);
  });

  it("looks into a record", () => {
    const record = calibrationRecord({ date: "2025-04-12", measurement: { ...strip, used } });
    expect(rateUncertainty({ kind: "record", record }).relative.value).toBeCloseTo(3, 12);
  });

  it("takes a reading that is said to be exact for exact", () => {
    const sure = rateUncertainty({ ...strip, used: { ...strip.used, uncertainty: qty(0, "L") } });
    expect(sure).toMatchObject({ relative: qty(0, "%"), shares: [], improve: null });
  });

  it("has an answer for every kind of measurement", () => {
    for (const measurement of Object.values(MEASUREMENTS)) {
      const sure = rateUncertainty(measurement);
      expect(sure.standardUncertainty.value, measurement.kind).toBeGreaterThan(0);
      expect(sure.takenAsExact).toEqual([]);
    }
  });

  it("claims no certainty where nothing was said of it", () => {
    expectRefused(() => rateUncertainty(strip), "missing", "", "amount used, spray width, distance");
  });

  it("refuses a resolution and an uncertainty on one reading, and bad ones", () => {
    const both = { ...used, resolution: qty(1, "mL") };
    expectRefused(() => rateUncertainty({ ...strip, used: both }), "conflict", "used");
    const bad = (extra: object) => () =>
      rateUncertainty({ ...strip, used: { ...strip.used, ...extra } } as never);
    expectRefused(bad({ resolution: qty(0, "L") }), "out-of-range", "used.resolution");
    expectRefused(bad({ uncertainty: qty(-1, "L") }), "out-of-range", "used.uncertainty");
    expectRefused(bad({ resolution: qty(1, "m") }), "wrong-dimension", "used.resolution");
    expectRefused(bad({ resolution: 1 }), "not-a-quantity", "used.resolution");
    const { kind: _, ...run } = strip;
    const runs = [run, { ...run, swath: { ...run.swath, resolution: 1 } }];
    expectRefused(
      () => rateUncertainty({ kind: "strip-runs", runs } as never),
      "not-a-quantity",
      "runs[1].swath.resolution",
    );
  });
});
