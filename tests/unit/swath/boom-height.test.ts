import { describe, expect, it } from "vitest";
import { boomCoverage, boomHeight } from "../../../src/swath/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  boomCoverage as boomCoverageLines,
  boomHeight as boomHeightLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const m = (value: number) => qty(value, "m");
const percent = (value: number) => qty(value, "%");

describe("boomHeight", () => {
  it("is half the fan's width for a right angle, and √3/2 of it for 60 degrees", () => {
    const half = { nozzleSpacing: m(0.5), overlap: percent(100) };
    expect(boomHeight({ ...half, angleDegrees: 90 }).value).toBeCloseTo(0.5, 12);
    expect(boomHeight({ ...half, angleDegrees: 60 }).value).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(boomHeight({ ...half, angleDegrees: 90, overlap: percent(0) }).value).toBeCloseTo(0.25, 12);
  });

  it("comes in feet or metres as the spacing is told", () => {
    expect(boomHeight({ nozzleSpacing: qty(20, "in"), angleDegrees: 80, overlap: percent(30) }).unit).toBe(
      "ft",
    );
  });
});

describe("boomCoverage", () => {
  it("is the reverse", () => {
    for (const overlap of [0, 30, 100, 250]) {
      const boom = { nozzleSpacing: m(0.5), angleDegrees: 110 };
      const height = boomHeight({ ...boom, overlap: percent(overlap) });
      const found = boomCoverage({ ...boom, height });
      expect(found.overlap.value).toBeCloseTo(overlap, 10);
      expect(found.fanWidth.value).toBeCloseTo(0.5 * (1 + overlap / 100), 12);
      expect(found.gap.value).toBe(0);
    }
  });

  it("tells the gap where fans do not meet", () => {
    const low = boomCoverage({ height: m(0.2), angleDegrees: 90, nozzleSpacing: m(0.5) });
    expect(low.overlap).toEqual(percent(0));
    expect(low.gap.value).toBeCloseTo(0.1, 12);
    expect(low.gap.unit).toBe("m");
  });

  it("tells neither for fans that just meet", () => {
    // tan 45° is 0.9999999999999999 in floats.
    const met = boomCoverage({ height: m(0.25), angleDegrees: 90, nozzleSpacing: m(0.5) });
    expect(met).toMatchObject({ overlap: percent(0), gap: m(0) });
  });
});

describe("the working of boom height", () => {
  it("is true and ends at its own result", () => {
    const up = { nozzleSpacing: qty(20, "in"), angleDegrees: 80, overlap: percent(30) };
    expectLinesTrue(boomHeightLines(up));
    expect(boomHeightLines(up).at(-1)?.result).toEqual(boomHeight(up));
    const down = { height: qty(20, "in"), angleDegrees: 80, nozzleSpacing: m(0.4) };
    expectLinesTrue(boomCoverageLines(down));
    expect(boomCoverageLines(down).at(-1)?.result).toEqual(boomCoverage(down).overlap);
    const low = { ...down, height: qty(8, "in") };
    expectLinesTrue(boomCoverageLines(low));
    expect(boomCoverageLines(low).at(-1)?.result).toEqual(boomCoverage(low).gap);
    const met = { height: m(0.25), angleDegrees: 90, nozzleSpacing: m(0.5) };
    const last = [down, low, met].map((input) => boomCoverageLines(input).at(-1)?.id);
    expect(last).toEqual(["swath.overlap", "swath.gap", "swath.overlap"]);
    expect(boomCoverage(down).overlap.unit).toBe("%");
  });
});

describe("boom heights that cannot be", () => {
  it.each([0, -80, 180, 200])("are those of a fan of %s degrees", (angleDegrees) => {
    const up = { nozzleSpacing: m(0.5), angleDegrees, overlap: percent(0) };
    expectRefused(() => boomHeight(up), "out-of-range", "angleDegrees");
    const down = { height: m(0.5), angleDegrees, nozzleSpacing: m(0.5) };
    expectRefused(() => boomCoverage(down), "out-of-range", "angleDegrees");
  });

  it("are those of a negative overlap", () => {
    const up = { nozzleSpacing: m(0.5), angleDegrees: 80, overlap: percent(-10) };
    expectRefused(() => boomHeight(up), "out-of-range", "overlap");
  });
});

refusesMisuse("boomHeight", boomHeight, { nozzleSpacing: m(0.5), angleDegrees: 80, overlap: percent(30) }, [
  "nozzleSpacing",
  "angleDegrees",
  "overlap",
]);
refusesMisuse("boomCoverage", boomCoverage, { height: m(0.5), angleDegrees: 80, nozzleSpacing: m(0.5) }, [
  "height",
  "angleDegrees",
  "nozzleSpacing",
]);
