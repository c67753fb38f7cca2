import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bandsWidth,
  boomCoverage,
  boomHeight,
  boomWidth,
  passesOver,
  patternUniformity,
  treeRowWidth,
  widestSwath,
  widthPerNozzle,
} from "../../../src/swath/index.ts";
import { type Length, type LengthUnit, qty } from "../../../src/units/index.ts";
import { exactly } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";

keepWorstErrors("swath");

const lengthUnit = fc.constantFrom<LengthUnit>("in", "ft", "yd", "mi", "mm", "cm", "m", "km");
const size = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const length: fc.Arbitrary<Length> = fc.record({ value: size, unit: lengthUnit });
const count = fc.integer({ min: 1, max: 500 });

const exact = ({ value, unit }: Length, to: string): Rational => exactly(value, unit, to);

describe("widths, against exact rational arithmetic", () => {
  it("are within the contract", () => {
    fc.assert(
      fc.property(count, length, fc.constantFrom(1 as const, 2 as const), (n, l, sides) => {
        const boom = boomWidth({ nozzles: n, nozzleSpacing: l });
        const whole = exact(l, boom.unit);
        expectExact("boomWidth", boom.value, whole.times(Rational.of(n)));
        expectExact(
          "bandsWidth, treated",
          bandsWidth({ bands: n, bandWidth: l }).treated.value,
          whole.times(Rational.of(n)),
        );
        expectExact(
          "widthPerNozzle",
          widthPerNozzle({ width: l, nozzles: n }).value,
          whole.over(Rational.of(n)),
        );
        expectExact(
          "treeRowWidth",
          treeRowWidth({ rowSpacing: l, sides }).value,
          whole.times(Rational.of(sides)).over(Rational.of(2)),
        );
      }),
    );
  });
});

describe("passes", () => {
  const side = fc.integer({ min: 1, max: 400 });
  const tenths = (value: number) => qty(value / 10, "m");

  it("cover the plot, and one fewer would not", () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 60 }), fc.nat(59), (l, w, s, o) => {
        fc.pre(o < s);
        const found = passesOver({
          length: tenths(l),
          width: tenths(w),
          swath: tenths(s),
          overlap: tenths(o),
        });
        for (const [way, across] of [
          [found.along, w],
          [found.across, l],
        ] as const) {
          // Whole tenths of a metre, so this arithmetic is exact.
          const covered = (n: number) => n * (s - o) + o;
          expect(covered(way.passes)).toBeGreaterThanOrEqual(across);
          if (way.passes > 1) expect(covered(way.passes - 1)).toBeLessThan(across);
          const spare = covered(way.passes) - across;
          expect(way.lastOverlap.value).toBeCloseTo(way.passes === 1 ? 0 : (o + spare) / 10, 9);
          expect(way.pastEdge.value).toBeCloseTo(way.passes === 1 ? spare / 10 : 0, 9);
        }
        expect(found.along.distance.value).toBeCloseTo((found.along.passes * l) / 10, 9);
        expect(found.across.distance.value).toBeCloseTo((found.across.passes * w) / 10, 9);
      }),
    );
  });

  it("are never fewer for more overlap", () => {
    fc.assert(
      fc.property(length, length, length, size, size, (l, w, swath, a, b) => {
        const parts = [a, b].map((x) => x / 1.0001e6).sort((x, y) => x - y);
        const counted = parts.map((part) => {
          try {
            return passesOver({ length: l, width: w, swath, overlap: qty(part, "1") }).along.passes;
          } catch {
            return Number.POSITIVE_INFINITY;
          }
        });
        expect(counted[1]).toBeGreaterThanOrEqual(counted[0] as number);
        const none = passesOver({ length: l, width: w, swath }).along.passes;
        expect(counted[0]).toBeGreaterThanOrEqual(none);
      }),
    );
  });

  it("are as many in feet as in metres, and trade places with the sides", () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 60 }), (l, w, s) => {
        const metric = passesOver({ length: tenths(l), width: tenths(w), swath: tenths(s) });
        const feet = (value: number) => qty(exactly(value / 10, "m", "ft").toNumber(), "ft");
        const us = passesOver({ length: feet(l), width: feet(w), swath: feet(s) });
        expect([us.along.passes, us.across.passes]).toEqual([metric.along.passes, metric.across.passes]);
        const turned = passesOver({ length: tenths(w), width: tenths(l), swath: tenths(s) });
        expect(turned).toEqual({ along: metric.across, across: metric.along });
      }),
    );
  });
});

describe("boom height", () => {
  it("comes back from the overlap that it gives", () => {
    const angle = fc.double({ min: 20, max: 160, noNaN: true });
    const overlap = fc.double({ min: 0.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(length, angle, overlap, (nozzleSpacing, angleDegrees, part) => {
        const height = boomHeight({ nozzleSpacing, angleDegrees, overlap: qty(part, "1") });
        const found = boomCoverage({ height, angleDegrees, nozzleSpacing });
        expect(Math.abs(found.overlap.value / 100 / part - 1)).toBeLessThan(1e-9);
        const higher = boomHeight({ nozzleSpacing, angleDegrees, overlap: qty(part * 1.1, "1") });
        expect(higher.value).toBeGreaterThan(height.value);
      }),
    );
  });
});

describe("pattern uniformity", () => {
  const caught = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 2, maxLength: 12 });
  const travel = fc.constantFrom("one-way" as const, "back-and-forth" as const);
  const pattern = (values: readonly number[], way: "one-way" | "back-and-forth") => ({
    catches: values.map((value) => qty(value, "mL")),
    spacing: qty(0.5, "m"),
    travel: way,
  });

  // The slow way: passes laid over a long line of ground, read in steps of a tenth of a place somewhere in the middle.
  function slowly(values: readonly number[], way: string, tenths: number): number {
    const [n, middle] = [values.length * 10, 200 * tenths];
    const landed: number[] = [];
    for (let x = middle; x < middle + 2 * tenths; x++) {
      let amount = 0;
      for (let pass = 0; pass <= 400; pass++) {
        const place = Math.floor((x + 0.5 - (pass * tenths - n / 2)) / 10);
        const turned = way === "back-and-forth" && pass % 2 === 1;
        amount += values[turned ? values.length - 1 - place : place] ?? 0;
      }
      landed.push(amount);
    }
    const mean = landed.reduce((a, b) => a + b) / landed.length;
    const variance = landed.reduce((a, b) => a + (b - mean) ** 2, 0) / landed.length;
    return (Math.sqrt(variance) / mean) * 100;
  }

  it("is what comes out when the passes are laid on the ground one by one", () => {
    fc.assert(
      fc.property(caught, travel, fc.integer({ min: 10, max: 130 }), (values, way, tenths) => {
        fc.pre(values.some((value) => value > 0));
        const ours = patternUniformity({ ...pattern(values, way), swath: qty(tenths / 20, "m") });
        expect(Math.abs(ours.cv.value - slowly(values, way, tenths))).toBeLessThan(1e-6);
      }),
    );
  });

  it("is zero for an even catch at its own width, and does not change with the amount or the unit", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 40 }), size, length, travel, (n, value, spacing, way) => {
        const even = { catches: Array.from({ length: n }, () => qty(value, "mL")), spacing, travel: way };
        const swath = { value: spacing.value * n, unit: spacing.unit };
        expect(patternUniformity({ ...even, swath }).cv.value).toBe(0);
      }),
    );
    fc.assert(
      fc.property(caught, travel, fc.integer({ min: 10, max: 130 }), (values, way, tenths) => {
        fc.pre(values.some((value) => value > 0));
        const swath = qty(tenths / 20, "m");
        const cv = patternUniformity({ ...pattern(values, way), swath }).cv.value;
        const more = patternUniformity({
          ...pattern(
            values.map((value) => value * 8),
            way,
          ),
          swath,
        }).cv.value;
        expect(more).toBeCloseTo(cv, 9);
        const mirrored = patternUniformity({ ...pattern([...values].reverse(), way), swath }).cv.value;
        expect(mirrored).toBeCloseTo(cv, 9);
      }),
    );
  });

  it("keeps all the spray: the mean is what was caught over the swath", () => {
    fc.assert(
      fc.property(caught, travel, fc.integer({ min: 10, max: 400 }), (values, way, tenths) => {
        const sum = values.reduce((a, b) => a + b);
        fc.pre(sum > 0);
        const found = patternUniformity({ ...pattern(values, way), swath: qty(tenths / 20, "m") });
        expect(Math.abs(found.mean.value / ((sum * 10) / tenths) - 1)).toBeLessThan(1e-9);
        expect(found.least.value).toBeLessThanOrEqual(found.mean.value * (1 + 1e-12));
        expect(found.most.value).toBeGreaterThanOrEqual(found.mean.value * (1 - 1e-12));
      }),
    );
  });

  it("keeps the limit at the widest swath, and breaks it at every wider one tried", () => {
    fc.assert(
      fc.property(caught, travel, fc.integer({ min: 1, max: 80 }), (values, way, limit) => {
        fc.pre(values.some((value) => value > 0));
        const cvAt = (places: number) =>
          patternUniformity({ ...pattern(values, way), swath: qty(places / 2, "m") }).cv.value;
        const keeping = values.map((_, i) => i + 1).filter((places) => cvAt(places) <= limit);
        let found: number | undefined;
        try {
          found = widestSwath({ ...pattern(values, way), limit: qty(limit, "%") }).swath.value * 2;
        } catch {
          found = undefined;
        }
        expect(found).toBe(keeping.at(-1));
      }),
    );
  });
});
