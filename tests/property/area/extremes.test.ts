import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { geodesicArea } from "../../../src/area/geodesic.ts";
import * as area from "../../../src/area/index.ts";
import { SprayMathError } from "../../../src/errors.ts";
import * as swath from "../../../src/swath/index.ts";
import type { AreaUnit, LengthUnit } from "../../../src/units/index.ts";
import { runs } from "../../helpers/runs.ts";

// What plain JavaScript may hand over: the ends of the number range, and everything in between.
const value = fc.oneof(
  fc.constantFrom(5e-324, 1e-310, 1e-160, 1e-80, 1, 1e80, 1e160, 1e300, 1.7e308),
  fc.double({ min: 5e-324, max: 1.79e308, noNaN: true }),
  fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
);
const length = fc.record({ value, unit: fc.constantFrom<LengthUnit>("in", "ft", "mi", "mm", "m", "km") });
const unmarked = fc.record({ value, unit: fc.constantFrom<AreaUnit>("in2", "ac", "cm2", "km2") });
const count = fc.constantFrom(1, 2, 3, 1000, Number.MAX_SAFE_INTEGER);
const coordinate = fc.oneof(
  value,
  value.map((x) => -x),
  fc.integer({ min: -200, max: 200 }),
);
const pairs = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 6 });

function allNumbers(result: unknown): number[] {
  if (typeof result === "number") return [result];
  if (typeof result !== "object" || result === null) return [];
  return Object.values(result).flatMap(allNumbers);
}

function answersOrRefuses(work: () => unknown): void {
  let result: unknown;
  try {
    result = work();
  } catch (error) {
    if (error instanceof SprayMathError) return;
    throw error;
  }
  for (const number of allNumbers(result)) {
    expect(Number.isFinite(number) && number >= 0 && !Object.is(number, -0), JSON.stringify(result)).toBe(
      true,
    );
  }
}

describe("sizes at the ends of the number range", () => {
  it("are answered with finite amounts, or refused as errors of the library", () => {
    fc.assert(
      fc.property(length, length, length, length, count, unmarked, unmarked, (a, b, c, d, n, g, h) => {
        const ground = { ...g, of: "ground" } as const;
        const rate = { value: a.value, unit: "gal/ac" } as const;
        const part = { value: d.value, unit: "1" } as const;
        const catches = [a, b, c].map(({ value: amount }) => ({ value: amount, unit: "mL" }) as const);
        for (const work of [
          () => area.rectangleArea({ length: a, width: b }),
          () => area.triangleArea({ base: a, height: b }),
          () => area.triangleArea({ sides: [a, b, c] }),
          () => area.trapezoidArea({ base: a, top: b, height: c }),
          () => area.circleArea({ diameter: a }),
          () => area.ellipseArea({ length: a, width: b }),
          () => area.ringArea({ outerDiameter: a, innerDiameter: b }),
          () => area.sectorArea({ radius: a, angleDegrees: 1e-300 }),
          () => area.compositeArea({ add: [ground], subtract: [{ ...h, of: "ground" }] }),
          () => area.compositeArea({ add: [ground, ground, { ...h, of: "ground" }] }),
          () => area.offsetsArea({ offsets: [a, b, c], spacing: d, rule: "simpson" }),
          () => area.treatPart({ ground, fraction: 1e-300 }),
          () => area.treatedFraction({ ground, treated: { ...h, of: "treated" } }),
          () => area.rowBandsArea({ rows: n, rowLength: a, bandWidth: b, rowSpacing: c }),
          () => area.rowBandsArea({ rowLengths: [a, b], bandWidth: c, rowSpacing: d }),
          () => area.treeRowsArea({ rows: n, rowLength: a, stripWidth: b, sides: 2, rowSpacing: c }),
          () =>
            area.spotsArea({
              spots: [
                { count: n, diameter: a },
                { count: n, each: h },
              ],
              ground,
            }),
          () => area.rowLengthOn({ ground, rowSpacing: a }),
          () => area.plantCount({ ground, rowSpacing: a, plantSpacing: b }),
          () => area.cropRate({ treatedRate: rate, bandWidth: b, rowSpacing: c }),
          () => area.treatedRate({ cropRate: rate, bandWidth: b, rowSpacing: c }),
          () => swath.boomWidth({ nozzles: n, nozzleSpacing: a }),
          () => swath.bandsWidth({ bands: n, bandWidth: a, rowSpacing: b }),
          () => swath.widthPerNozzle({ width: a, nozzles: n }),
          () => swath.treeRowWidth({ rowSpacing: a, sides: 1 }),
          () => swath.effectiveWidth({ width: a, overlap: b }),
          () => swath.effectiveWidth({ width: a, overlap: part }),
          () =>
            swath.passesOver({
              length: a,
              width: b,
              swath: c,
              overlap: d,
              speed: { value: d.value, unit: "mph" },
            }),
          () => swath.passesOver({ length: a, width: b, swath: c, overlap: part }),
          () => swath.boomHeight({ nozzleSpacing: a, angleDegrees: 1e-300, overlap: part }),
          () => swath.boomHeight({ nozzleSpacing: a, angleDegrees: 179, overlap: part }),
          () => swath.boomCoverage({ height: a, angleDegrees: 80, nozzleSpacing: b }),
          () => swath.patternUniformity({ catches, spacing: a, travel: "one-way", swath: a }),
          () => swath.patternUniformity({ catches, spacing: a, travel: "back-and-forth", swath: b }),
          () => swath.widestSwath({ catches, spacing: a, travel: "one-way", limit: part }),
        ]) {
          answersOrRefuses(work);
        }
      }),
      runs(1500),
    );
  });

  it("are so for corners, stations and places too", () => {
    fc.assert(
      fc.property(pairs, (corners) => {
        answersOrRefuses(() => area.boundaryArea({ corners, unit: "mi" }));
        answersOrRefuses(() => area.unequalOffsetsArea({ stations: corners, unit: "mi" }));
        answersOrRefuses(() => geodesicArea({ type: "Polygon", coordinates: [corners] }));
      }),
      runs(3000),
    );
    const place = fc.tuple(fc.integer({ min: -36, max: 36 }), fc.integer({ min: -9, max: 9 }));
    fc.assert(
      fc.property(
        fc.array(fc.array(place, { minLength: 3, maxLength: 6 }), { minLength: 1, maxLength: 3 }),
        (rings) => {
          const coordinates = rings.map((ring) => ring.map(([x, y]) => [x * 10, y * 10]));
          answersOrRefuses(() => geodesicArea({ type: "Polygon", coordinates }));
          answersOrRefuses(() =>
            geodesicArea({ type: "MultiPolygon", coordinates: [coordinates, coordinates] }),
          );
        },
      ),
      runs(3000),
    );
  });
});
