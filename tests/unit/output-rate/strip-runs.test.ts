import { describe, expect, it } from "vitest";
import { stripRuns } from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
const litres = (list: readonly number[]) => list.map((value) => ({ ...strip, used: qty(value, "L") }));

describe("stripRuns", () => {
  it("gives mean, range and coefficient of variation of the runs' rates", () => {
    // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, sum of squared deviations 32 (worked by hand).
    const runs = stripRuns({ runs: litres([2, 4, 4, 4, 5, 5, 7, 9]) });
    expect(runs.rate).toEqual(qty(500, "L/ha"));
    expect([runs.lowest.value, runs.highest.value, runs.range.value]).toEqual([200, 900, 700]);
    expect(runs.standardDeviation.value).toBeCloseTo(100 * Math.sqrt(32 / 7), 10);
    expect(runs.coefficientOfVariation.value).toBeCloseTo(20 * Math.sqrt(32 / 7), 10);
  });

  it("holds each run against the mean of the others", () => {
    const { runs } = stripRuns({ runs: litres([2, 2.2]) });
    expect(runs.map(({ deviation }) => deviation.value)).toEqual([
      expect.closeTo((100 * -0.2) / 2.2, 10),
      expect.closeTo(10, 10),
    ]);
  });

  it("names the run that stands out, wherever it is", () => {
    for (const place of [0, 1, 2]) {
      const amounts = [2, 2.04, 1.98];
      amounts[place] = 2.5;
      const { agree, standsOut } = stripRuns({ runs: litres(amounts) });
      expect([agree, standsOut]).toEqual([false, place]);
    }
  });

  it("names none where all agree, and none of two, since either may be the wrong one", () => {
    expect(stripRuns({ runs: litres([2, 2.05, 1.98]) })).toMatchObject({ agree: true, standsOut: null });
    expect(stripRuns({ runs: litres([2, 2.5]) })).toMatchObject({ agree: false, standsOut: null });
  });

  it("lets a run at the limit pass, and takes another limit", () => {
    const runs = litres([2, 2, 2.1]);
    expect(stripRuns({ runs }).agree).toBe(true);
    expect(stripRuns({ runs, limit: qty(4.9, "%") })).toMatchObject({
      agree: false,
      standsOut: 2,
      limit: qty(4.9, "%"),
    });
    expect(stripRuns({ runs, limit: qty(0.1, "1") }).agree).toBe(true);
  });

  it("finds no variation among equal runs", () => {
    const runs = stripRuns({ runs: litres([2, 2, 2]) });
    expect(runs.coefficientOfVariation.value).toBe(0);
    expect(runs.range.value).toBe(0);
  });

  it("tells runs measured in other units in the units of the first", () => {
    const mixed = [
      { used: qty(4, "gal"), swath: qty(20, "ft"), distance: qty(217.8, "ft") },
      { used: qty(1, "L"), swath: qty(2, "m"), distance: qty(50, "m") },
    ];
    expect(stripRuns({ runs: mixed }).runs.map(({ rate }) => rate.unit)).toEqual(["gal/ac", "gal/ac"]);
  });

  it("puts granules together by weight", () => {
    const runs = [2, 3].map((kilos) => ({ ...strip, used: qty(kilos, "kg") }));
    expect(stripRuns({ runs }).rate).toEqual(qty(250, "kg/ha"));
  });

  refusesMisuse("stripRuns", stripRuns, { runs: litres([2, 3]), limit: qty(5, "%") }, [
    "runs",
    "runs.1.used",
    "runs.0.swath",
    "limit",
  ]);

  it("refuses a single run, and sprays mixed with granules", () => {
    expectRefused(() => stripRuns({ runs: litres([2]) }), "too-few", "runs");
    expectRefused(() => stripRuns({ runs: litres(Array<number>(501).fill(2)) }), "out-of-range", "runs");
    expectRefused(() => stripRuns({ runs: litres(Array<number>(200_000).fill(2)) }), "out-of-range", "runs");
    expect(stripRuns({ runs: litres(Array<number>(500).fill(2)) }).agree).toBe(true);
    const mixed = [...litres([2]), { ...strip, used: qty(2, "kg") }];
    expectRefused(
      () => stripRuns({ runs: mixed } as never),
      "wrong-dimension",
      "runs[1].used",
      "is a weight",
    );
  });
});
