import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findCrossing } from "../../../src/area/crossing.ts";
import { type Point, slowlyCrosses, withoutRepeats } from "../../helpers/rings.ts";

/** The same rings in every run, whatever the number of random tries. */
function rings(max: number, maxLength: number, numRuns: number): Point[][] {
  const whole = fc.integer({ min: 0, max });
  return fc
    .sample(fc.array(fc.tuple(whole, whole), { minLength: 3, maxLength, size: "max" }), { numRuns, seed: 7 })
    .map(withoutRepeats)
    .filter((ring) => ring.length >= 3);
}

/** Corners in the order of their direction from the middle, so that no side crosses another. */
function star(length: number, seed: number): Point[] {
  const radii = fc.sample(fc.integer({ min: 200, max: 1000 }), { numRuns: length, seed });
  return radii.map((radius, i): Point => {
    const angle = (2 * Math.PI * i) / length;
    return [Math.round(1e3 * radius * Math.cos(angle)), Math.round(1e3 * radius * Math.sin(angle))];
  });
}

describe("findCrossing", () => {
  it.each([
    [3, 6, 400],
    [6, 8, 400],
    [30, 6, 400],
    [1000, 7, 400],
    [1000, 40, 100],
  ])("answers as a look at every pair of sides does: grid of %s, up to %s corners", (max, length, tries) => {
    const found = new Set<boolean>();
    for (const ring of rings(max, length, tries)) {
      const crosses = slowlyCrosses(ring);
      found.add(crosses);
      expect(findCrossing(ring) !== undefined, JSON.stringify(ring)).toBe(crosses);
    }
    expect(found.has(true)).toBe(true);
  });

  it("tells a place that is on both sides", () => {
    for (const ring of [...rings(6, 8, 400), ...rings(1000, 20, 400)]) {
      const found = findCrossing(ring);
      if (found === undefined) continue;
      expect(found.first).toBeLessThan(found.second);
      for (const side of [found.first, found.second]) {
        const [a, b] = [ring[side] as Point, ring[(side + 1) % ring.length] as Point];
        const far = (p: Point): number => Math.hypot(found.at[0] - p[0], found.at[1] - p[1]);
        const along = Math.hypot(b[0] - a[0], b[1] - a[1]);
        expect(far(a) + far(b) - along, JSON.stringify({ ring, found })).toBeLessThan(1e-9 * along);
      }
    }
  });

  it("finds the one corner that was pulled over another side, in rings of up to 131 corners", () => {
    for (let seed = 1; seed <= 16; seed++) {
      const ring = star(3 + seed * 8, seed);
      expect(findCrossing(ring), `seed ${seed}`).toBeUndefined();
      const pulled = ring.map(([x, y], i): Point => (i === seed ? [-x, -y] : [x, y]));
      expect(findCrossing(pulled) !== undefined, `seed ${seed}`).toBe(slowlyCrosses(pulled));
    }
  });

  it("says so where a boundary comes twice to one place, told by one object or by two", () => {
    for (const ring of rings(3, 8, 300)) {
      const key = ([x, y]: Point): string => `${x} ${y}`;
      const first = new Map<string, Point>();
      for (const corner of ring) if (!first.has(key(corner))) first.set(key(corner), corner);
      if (first.size === ring.length) continue;
      for (const told of [ring, ring.map((corner) => first.get(key(corner)) as Point)]) {
        const found = findCrossing(told);
        if (found === undefined) throw new Error(JSON.stringify(told));
        expect([told[found.first], told[found.second]]).toEqual([found.at, found.at]);
      }
    }
  });

  it("finds the one tooth of a comb that reaches into the next, on any side and whichever it is", () => {
    const teeth = 14;
    const lengths = fc.sample(fc.integer({ min: 60, max: 140 }), { numRuns: teeth, seed: 5 });
    const comb = (bent: number, by: number): Point[] => [
      ...lengths.flatMap((length, k): Point[] => [
        [10, 4 * k],
        [length, 4 * k + 1 + (k === bent ? by : 0)],
        [10, 4 * k + 2],
      ]),
      [0, 4 * teeth],
      [0, -4],
    ];
    const ways: ((p: Point) => Point)[] = [([x, y]) => [x, y], ([x, y]) => [y, -x], ([x, y]) => [-x, -y]];
    for (let bent = 0; bent + 1 < teeth; bent++) {
      // Up to the next tooth's foot, 4 higher, it lies below that tooth; past its tip it lies across it.
      const reach = lengths[bent] as number;
      const next = lengths[bent + 1] as number;
      for (const way of ways) {
        expect(findCrossing(comb(bent, 2.9).map(way)), `tooth ${bent}`).toBeUndefined();
        const found = findCrossing(comb(bent, 4.9).map(way));
        if (reach > next * 1.2) continue;
        expect(found, `tooth ${bent}`).toBeDefined();
        expect(found?.first).toBeGreaterThanOrEqual(3 * bent);
        expect(found?.second).toBeLessThanOrEqual(3 * bent + 5);
      }
    }
  });

  it("tells a place in numbers where two sides lie too close to tell apart", () => {
    const found = findCrossing([
      [0.001, 0],
      [0, -1],
      [1512678074959.1445, 1440501161133640.2],
      [0, -Number.MIN_VALUE],
    ]);
    expect(found?.at.every(Number.isFinite)).toBe(true);
  });
});
