import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bedsArea,
  boundaryArea,
  circleArea,
  compositeArea,
  cropRate,
  ellipseArea,
  offsetsArea,
  plantCount,
  plantedGround,
  rectangleArea,
  ringArea,
  rowBandsArea,
  rowLengthOn,
  sectorArea,
  spotsArea,
  trapezoidArea,
  treatedFraction,
  treatedRate,
  treatPart,
  treeRowsArea,
  triangleArea,
  unequalOffsetsArea,
} from "../../../src/area/index.ts";
import { type Area, type AreaUnit, type Length, type LengthUnit, qty } from "../../../src/units/index.ts";
import { exactly } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational, ulpError } from "../../helpers/rational.ts";

keepWorstErrors("area");

const CONTRACT = 8;
const lengthUnit = fc.constantFrom<LengthUnit>("in", "ft", "yd", "mi", "mm", "cm", "m", "km");
const areaUnit = fc.constantFrom<AreaUnit>("in2", "ft2", "yd2", "ac", "1000ft2", "cm2", "m2", "ha", "km2");
const size = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const length: fc.Arbitrary<Length> = fc.record({ value: size, unit: lengthUnit });
const ground = fc.record({ value: size, unit: areaUnit, of: fc.constant("ground" as const) });
const count = fc.integer({ min: 1, max: 5000 });

const exact = ({ value, unit }: Length | Area, to: string): Rational => exactly(value, unit, to);
const lengthOf = (unit: string): string => (unit === "ft2" || unit === "ft" ? "ft" : "m");
const total = (values: readonly Rational[]): Rational => values.reduce((a, b) => a.plus(b));

describe("areas, against exact rational arithmetic", () => {
  it("multiplies lengths of any two units", () => {
    fc.assert(
      fc.property(length, length, (a, b) => {
        const ours = rectangleArea({ length: a, width: b });
        const unit = lengthOf(ours.unit);
        expectExact("rectangleArea", ours.value, exact(a, unit).times(exact(b, unit)));
        expectExact(
          "triangleArea",
          triangleArea({ base: a, height: b }).value,
          exact(a, unit).times(exact(b, unit)).over(Rational.of(2)),
        );
      }),
    );
  });

  it("gives trapezoids and offsets", () => {
    fc.assert(
      fc.property(length, length, length, (a, b, h) => {
        const ours = trapezoidArea({ base: a, top: b, height: h });
        const unit = lengthOf(ours.unit);
        expectExact(
          "trapezoidArea",
          ours.value,
          exact(a, unit).plus(exact(b, unit)).times(exact(h, unit)).over(Rational.of(2)),
        );
      }),
    );
    fc.assert(
      fc.property(length, fc.array(length, { minLength: 3, maxLength: 41 }), (spacing, offsets) => {
        const unit = lengthOf(spacing.unit === "ft" || /in|yd|mi/.test(spacing.unit) ? "ft" : "m");
        const o = offsets.map((offset) => exact(offset, unit));
        const s = exact(spacing, unit);
        expectExact(
          "offsetsArea",
          offsetsArea({ offsets, spacing, rule: "mid-strip" }).value,
          total(o).times(s),
        );
        const ends = (o[0] as Rational).plus(o.at(-1) as Rational).over(Rational.of(2));
        expectExact(
          "offsetsArea",
          offsetsArea({ offsets, spacing, rule: "trapezoidal" }).value,
          total(o).minus(ends).times(s),
        );
        if (o.length % 2 === 0) return;
        const weighted = o.map((x, i) =>
          x.times(Rational.of(i === 0 || i === o.length - 1 ? 1 : i % 2 === 1 ? 4 : 2)),
        );
        expectExact(
          "offsetsArea",
          offsetsArea({ offsets, spacing, rule: "simpson" }).value,
          total(weighted).times(s).over(Rational.of(3)),
        );
      }),
    );
  });

  it("gives offsets at unequal spacing", () => {
    const steps = fc.array(fc.tuple(size, size), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(steps, lengthUnit, (list, unit) => {
        let along = 0;
        const stations = list.map(([step, offset]) => {
          along += step;
          return [along, offset] as const;
        });
        const ours = unequalOffsetsArea({ stations, unit });
        const e = (x: number) => exactly(x, unit, lengthOf(ours.unit));
        const strips = stations.slice(1).map(([a, o], i) => {
          const [before, offsetBefore] = stations[i] as readonly [number, number];
          return e(a)
            .minus(e(before))
            .times(e(o).plus(e(offsetBefore)))
            .over(Rational.of(2));
        });
        expectExact("unequalOffsetsArea", ours.value, total(strips));
      }),
    );
  });

  it("gives bands, beds and tree rows, and what part of the ground they are", () => {
    fc.assert(
      fc.property(
        count,
        length,
        length,
        length,
        fc.constantFrom(1 as const, 2 as const),
        (n, l, w, s, sides) => {
          const unit = lengthOf(rectangleArea({ length: l, width: w }).unit);
          const [el, ew, es] = [exact(l, unit), exact(w, unit), exact(s, unit)];
          const whole = Rational.of(n).times(el);
          fc.pre(ew.times(Rational.of(2)).lessThan(es));
          const bands = rowBandsArea({ rows: n, rowLength: l, bandWidth: w, rowSpacing: s });
          expectExact("rowBandsArea, treated", bands.treated.value, whole.times(ew));
          expectExact("rowBandsArea, ground", (bands.ground as Area).value, whole.times(es));
          expectExact("rowBandsArea, fraction", bands.fraction as number, ew.over(es));
          expect(bedsArea({ beds: n, bedLength: l, bedWidth: w, bedSpacing: s })).toEqual(bands);
          const trees = treeRowsArea({ rows: n, rowLength: l, stripWidth: w, sides, rowSpacing: s });
          expectExact(
            "treeRowsArea, treated",
            trees.treated.value,
            whole.times(ew).times(Rational.of(sides)),
          );
        },
      ),
    );
    fc.assert(
      fc.property(fc.array(length, { minLength: 1, maxLength: 60 }), length, (rowLengths, w) => {
        const ours = rowBandsArea({ rowLengths, bandWidth: w }).treated;
        const unit = lengthOf(ours.unit);
        expectExact(
          "rowBandsArea, treated",
          ours.value,
          total(rowLengths.map((l) => exact(l, unit))).times(exact(w, unit)),
        );
      }),
    );
  });

  it("gives spots, parts, row lengths, plants and band rates", () => {
    fc.assert(
      fc.property(count, length, length, length, ground, (n, a, b, c, g) => {
        const spots = spotsArea({
          spots: [
            { count: n, length: a, width: b },
            { count: 3, each: { value: g.value, unit: g.unit } },
          ],
        });
        const unit = lengthOf(spots.treated.unit);
        const rectangles = Rational.of(n).times(exact(a, unit)).times(exact(b, unit));
        expectExact(
          "spotsArea",
          spots.treated.value,
          rectangles.plus(exact(g, `${unit}2`).times(Rational.of(3))),
        );
        const own = lengthOf(treatPart({ ground: g, fraction: 1 }).unit);
        expectExact(
          "treatPart",
          treatPart({ ground: g, fraction: 0.3 }).value,
          exact(g, `${own}2`).times(Rational.fromNumber(0.3)),
        );
        expectExact(
          "rowLengthOn",
          rowLengthOn({ ground: g, rowSpacing: a }).value,
          exact(g, `${own}2`).over(exact(a, own)),
        );
        const plants = plantCount({ ground: g, rowSpacing: a, plantSpacing: b });
        expectExact("plantCount", plants, exact(g, `${own}2`).over(exact(a, own).times(exact(b, own))));
        const planted = plantedGround({ plants: n, rowSpacing: a, plantSpacing: b });
        expectExact("plantedGround", planted.value, rectangles);
        fc.pre(exact(a, "m").lessThan(exact(c, "m")));
        const rates = { bandWidth: a, rowSpacing: c };
        const part = exact(a, "m").over(exact(c, "m"));
        const label = qty(g.value, "gal/ac");
        expectExact(
          "cropRate",
          cropRate({ ...rates, treatedRate: label }).value,
          Rational.fromNumber(g.value).times(part),
        );
        expectExact(
          "treatedRate",
          treatedRate({ ...rates, cropRate: label }).value,
          Rational.fromNumber(g.value).over(part),
        );
      }),
    );
  });

  it("adds and takes out shapes", () => {
    const list = fc.array(ground, { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(list, (add) => {
        const ours = compositeArea({ add });
        expectExact("compositeArea", ours.value, total(add.map((shape) => exact(shape, ours.unit))));
      }),
    );
    // Of one unit: within the contract of the difference itself, however little is left.
    fc.assert(
      fc.property(areaUnit, size, size, (unit, a, b) => {
        const [more, less] = a > b ? [a, b] : [b, a];
        fc.pre(more > less * (1 + 1e-9));
        const add = [{ value: more, unit, of: "ground" as const }];
        const ours = compositeArea({ add, subtract: [{ value: less, unit, of: "ground" }] });
        expectExact(
          "compositeArea",
          ours.value,
          exactly(more, unit, ours.unit).minus(exactly(less, unit, ours.unit)),
        );
      }),
    );
  });

  it("gives the area inside any star of corners, near the origin and far from it", () => {
    const spokes = fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 3, maxLength: 60 });
    const far = fc.constantFrom(0, 500000, -4500000);
    fc.assert(
      fc.property(spokes, far, far, lengthUnit, (radii, dx, dy, unit) => {
        const corners = radii.map((radius, i) => {
          const angle = (2 * Math.PI * i) / radii.length;
          return [dx + radius * Math.cos(angle), dy + radius * Math.sin(angle)] as const;
        });
        const ours = boundaryArea({ corners, unit });
        const e = (x: number) => exactly(x, unit, lengthOf(ours.unit));
        const products = corners.map(([x, y], i) => {
          const [nx, ny] = corners[(i + 1) % corners.length] as readonly [number, number];
          return e(x)
            .times(e(ny))
            .minus(e(nx).times(e(y)));
        });
        expectExact("boundaryArea", ours.value, total(products).abs().over(Rational.of(2)));
      }),
    );
  });
});

describe("areas of one shape", () => {
  const stretched = ({ value, unit }: Length, k: number): Length => ({ value: value * k, unit });
  const near = (a: number, b: number) => expect(Math.abs(a / b - 1)).toBeLessThan(1e-14);

  it("grow with the square of the scale", () => {
    const scale = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        length,
        length,
        length,
        scale,
        fc.double({ min: 1, max: 360, noNaN: true }),
        (a, b, c, k, angle) => {
          const square = k * k;
          const [la, lb, lc] = [stretched(a, k), stretched(b, k), stretched(c, k)];
          near(
            rectangleArea({ length: la, width: lb }).value,
            square * rectangleArea({ length: a, width: b }).value,
          );
          near(
            triangleArea({ base: la, height: lb }).value,
            square * triangleArea({ base: a, height: b }).value,
          );
          near(
            trapezoidArea({ base: la, top: lb, height: lc }).value,
            square * trapezoidArea({ base: a, top: b, height: c }).value,
          );
          near(circleArea({ diameter: la }).value, square * circleArea({ diameter: a }).value);
          near(
            ellipseArea({ length: la, width: lb }).value,
            square * ellipseArea({ length: a, width: b }).value,
          );
          near(
            sectorArea({ radius: la, angleDegrees: angle }).value,
            square * sectorArea({ radius: a, angleDegrees: angle }).value,
          );
        },
      ),
    );
    const side = fc.double({ min: 1, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(side, side, side, scale, (a, b, c, k) => {
        const of = (f: number) =>
          triangleArea({ sides: [qty(a * f, "m"), qty(b * f, "m"), qty(c * f, "m")] }).value;
        fc.pre(2 * Math.max(a, b, c) < (a + b + c) * 0.99);
        expect(Math.abs(of(k) / (k * k * of(1)) - 1)).toBeLessThan(1e-12);
      }),
    );
    fc.assert(
      fc.property(size, fc.double({ min: 0.1, max: 0.9, noNaN: true }), scale, (outer, part, k) => {
        const of = (f: number) =>
          ringArea({ outerDiameter: qty(outer * f, "m"), innerDiameter: qty(outer * part * f, "m") }).value;
        expect(Math.abs(of(k) / (k * k * of(1)) - 1)).toBeLessThan(1e-13);
      }),
    );
  });

  it("are the same told in feet and in metres", () => {
    const inFeet = ({ value, unit }: Length): Length => ({
      value: exactly(value, unit, "ft").toNumber(),
      unit: "ft",
    });
    const inMetres = ({ value, unit }: Length): Length => ({
      value: exactly(value, unit, "m").toNumber(),
      unit: "m",
    });
    fc.assert(
      fc.property(length, length, count, (a, b, rows) => {
        for (const area of [
          (f: (l: Length) => Length) => rectangleArea({ length: f(a), width: f(b) }),
          (f: (l: Length) => Length) => triangleArea({ base: f(a), height: f(b) }),
          (f: (l: Length) => Length) => rowBandsArea({ rows, rowLength: f(a), bandWidth: f(b) }).treated,
        ]) {
          const [us, metric] = [area(inFeet), area(inMetres)];
          expect([us.unit, metric.unit]).toEqual(["ft2", "m2"]);
          // Half an ulp in each of the two lengths that were rounded to be told, besides the contract.
          const wanted = exactly(us.value, "ft2", "m2");
          expect(ulpError(metric.value, wanted)).toBeLessThanOrEqual(2 * CONTRACT + 2);
        }
      }),
    );
  });

  it("are never treated by more than there is ground", () => {
    fc.assert(
      fc.property(count, length, length, length, (rows, rowLength, bandWidth, rowSpacing) => {
        fc.pre(exact(bandWidth, "m").lessThan(exact(rowSpacing, "m")));
        const found = rowBandsArea({ rows, rowLength, bandWidth, rowSpacing });
        expect(found.treated.value).toBeLessThanOrEqual((found.ground as Area).value);
        expect(found.fraction).toBeGreaterThan(0);
        expect(found.fraction).toBeLessThanOrEqual(1);
        const again = treatedFraction({ treated: found.treated, ground: found.ground as never });
        expect(again).toBeLessThanOrEqual(1);
        expect(Math.abs(again / (found.fraction as number) - 1)).toBeLessThan(1e-14);
        // The same width in another unit: the widest band there is.
        const solid = { value: exact(rowSpacing, "in").toNumber(), unit: "in" } as const;
        const full = rowBandsArea({ rows, rowLength, bandWidth: solid, rowSpacing });
        expect(full.treated.value).toBeLessThanOrEqual((full.ground as Area).value);
      }),
    );
  });
});
