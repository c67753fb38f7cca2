import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findCrossing } from "../../../src/area/crossing.ts";
import { geodesicArea } from "../../../src/area/geodesic.ts";
import { boundaryArea } from "../../../src/area/index.ts";
import { type Point, slowlyCrosses, withoutRepeats } from "../../helpers/rings.ts";
import { runs } from "../../helpers/runs.ts";

const points = (max: number, maxLength: number) =>
  fc.array(fc.tuple(fc.integer({ min: 0, max }), fc.integer({ min: 0, max })), { minLength: 3, maxLength });

/** Corners in the order of their direction from the middle: a boundary that cannot cross itself. */
const star = fc
  .array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 3, maxLength: 80 })
  .map((radii) =>
    radii.map((radius, i): Point => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    }),
  );

describe("findCrossing, against a test of every pair of sides", () => {
  it.each([
    [3, 8],
    [6, 8],
    [30, 12],
    [1000, 20],
    [1000, 7],
  ])("agrees on a grid of %s with up to %s corners, where corners and sides often meet", (max, maxLength) => {
    let crossing = 0;
    let simple = 0;
    fc.assert(
      fc.property(points(max, maxLength), (drawn) => {
        const corners = withoutRepeats(drawn);
        fc.pre(corners.length >= 3);
        const slowly = slowlyCrosses(corners);
        expect(findCrossing(corners) !== undefined, JSON.stringify(corners)).toBe(slowly);
        if (slowly) crossing++;
        else simple++;
      }),
      runs(3000),
    );
    expect(Math.min(crossing, simple), "both answers must come up").toBeGreaterThan(10);
  });

  it("agrees on long boundaries that are simple but for one corner pulled over", () => {
    const count = { crossing: 0, simple: 0 };
    const pull = fc.tuple(
      fc.nat(79),
      fc.integer({ min: -120, max: 120 }),
      fc.integer({ min: -120, max: 120 }),
    );
    fc.assert(
      fc.property(star, pull, (radial, [which, x, y]) => {
        const corners = radial.map(([a, b]): Point => [Math.round(a * 1000), Math.round(b * 1000)]);
        corners[which % corners.length] = [x * 1000, y * 1000];
        fc.pre(withoutRepeats(corners).length === corners.length);
        const slowly = slowlyCrosses(corners);
        expect(findCrossing(corners) !== undefined, JSON.stringify(corners)).toBe(slowly);
        count[slowly ? "crossing" : "simple"]++;
      }),
      runs(1000),
    );
    expect(Math.min(count.crossing, count.simple)).toBeGreaterThan(10);
  });

  it("tells a place that lies on both sides", () => {
    fc.assert(
      fc.property(points(50, 12), (drawn) => {
        const corners = withoutRepeats(drawn);
        fc.pre(corners.length >= 3);
        const found = findCrossing(corners);
        if (found === undefined) return;
        expect(found.first).toBeLessThan(found.second);
        for (const side of [found.first, found.second]) {
          const [a, b] = [corners[side] as Point, corners[(side + 1) % corners.length] as Point];
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          const way =
            Math.hypot(found.at[0] - a[0], found.at[1] - a[1]) +
            Math.hypot(found.at[0] - b[0], found.at[1] - b[1]);
          expect(way - length).toBeLessThan(1e-6);
        }
      }),
    );
  });
});

describe("a boundary", () => {
  const turned = (corners: readonly Point[], by: number): Point[] => {
    const k = by % corners.length;
    return [...corners.slice(k), ...corners.slice(0, k)];
  };

  it("has one area from whichever corner, either way round, moved, turned and mirrored", () => {
    fc.assert(
      fc.property(star, fc.nat(100), fc.integer({ min: -1000, max: 1000 }), (corners, start, shift) => {
        const area = (list: readonly Point[]) => boundaryArea({ corners: list, unit: "m" }).value;
        const wanted = area(corners);
        const near = (value: number) => expect(Math.abs(value / wanted - 1)).toBeLessThan(1e-10);
        near(area(turned(corners, start)));
        near(area([...corners].reverse()));
        near(area(corners.map(([x, y]): Point => [x + shift, y - shift])));
        near(area(corners.map(([x, y]): Point => [-y, x])));
        near(area(corners.map(([x, y]): Point => [-x, y])));
        near(area(corners.map(([x, y]): Point => [3 * x, 3 * y])) / 9);
      }),
    );
  });

  it("is refused from whichever corner and either way round, where it crosses itself", () => {
    fc.assert(
      fc.property(points(20, 10), fc.nat(100), (drawn, start) => {
        const corners = withoutRepeats(drawn);
        fc.pre(corners.length >= 3);
        const crosses = findCrossing(corners) !== undefined;
        expect(findCrossing(turned(corners, start)) !== undefined).toBe(crosses);
        expect(findCrossing([...corners].reverse()) !== undefined).toBe(crosses);
        expect(findCrossing(corners.map(([x, y]): Point => [y, -x])) !== undefined).toBe(crosses);
      }),
    );
  });

  it("has one area on the earth from whichever corner and either way round, at any longitude", () => {
    const latitude = fc.integer({ min: -89, max: 89 });
    const longitude = fc.integer({ min: -180, max: 180 });
    fc.assert(
      fc.property(star, fc.nat(100), latitude, longitude, (corners, start, phi, lambda) => {
        const on = (list: readonly Point[], at: number) =>
          geodesicArea({
            type: "Polygon",
            // A thousandth of a degree: plots of some 100 m. Of a plot of one square metre, the noise of coordinates and
            // of an algorithm for continents is a larger part.
            coordinates: [list.map(([x, y]) => [at + x / 1e3, phi + y / 1e3])],
          }).ground.value;
        const wanted = on(corners, lambda);
        const near = (value: number) => expect(Math.abs(value / wanted - 1)).toBeLessThan(1e-5);
        near(on(turned(corners, start), lambda));
        near(on([...corners].reverse(), lambda));
        near(on(corners, 0));
      }),
    );
  });
});
