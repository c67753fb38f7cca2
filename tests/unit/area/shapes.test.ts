import { describe, expect, it } from "vitest";
import {
  circleArea,
  ellipseArea,
  rectangleArea,
  ringArea,
  sectorArea,
  trapezoidArea,
  triangleArea,
} from "../../../src/area/index.ts";
import { qty } from "../../../src/units/index.ts";
import {
  circleArea as circleAreaLines,
  ellipseArea as ellipseAreaLines,
  rectangleArea as rectangleAreaLines,
  ringArea as ringAreaLines,
  sectorArea as sectorAreaLines,
  trapezoidArea as trapezoidAreaLines,
  triangleArea as triangleAreaLines,
} from "../../../src/working/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const ft = (value: number) => qty(value, "ft");
const m = (value: number) => qty(value, "m");

describe("plane shapes", () => {
  it("say that they are ground, in square feet or metres as the first length is told", () => {
    expect(rectangleArea({ length: ft(200), width: qty(10, "m") })).toMatchObject({
      unit: "ft2",
      of: "ground",
    });
    expect(rectangleArea({ length: qty(200, "cm"), width: qty(10, "ft") })).toMatchObject({ unit: "m2" });
    expect(triangleArea({ sides: [m(3), ft(10), m(4)] })).toMatchObject({ unit: "m2", of: "ground" });
    expect(circleArea({ diameter: qty(1, "yd") })).toMatchObject({ unit: "ft2", of: "ground" });
  });

  it("multiply the sides of a rectangle", () => {
    // An acre is a furlong by a chain: 220 by 22 yards (NIST Handbook 44 (2024), Appendix C).
    expect(rectangleArea({ length: qty(220, "yd"), width: qty(22, "yd") }).value).toBe(43560);
  });

  it("give the triangle of sides 3, 4 and 5 half a rectangle, whatever the order", () => {
    for (const sides of [
      [3, 4, 5],
      [5, 3, 4],
      [4, 5, 3],
    ] as const) {
      expect(triangleArea({ sides: sides.map(m) as never }).value).toBe(6);
    }
    expect(triangleArea({ base: m(3), height: m(4) }).value).toBe(6);
  });

  // W. Kahan, Miscalculating Area and Angles of a Needle-like Triangle, lecture notes, 1999: the table of areas, worked
  // out there with ten digits, so that the tenth may be one off. The sides are told in whole millionths, since 99999.99979
  // is no binary number and its own rounding would count.
  it.each([
    [10, 10, 10, 43.3012702, 1e-8],
    [100000, 99999.99979, 0.00029, 9.99999999, 1e-9],
    // Printed 50002.50003, three off in the tenth digit: half the base times the height is 0.500025 × √(100000² − 0.500025²).
    [100000, 100000, 1.00005, 0.500025 * Math.sqrt(100000 ** 2 - 0.500025 ** 2), 1e-9],
    [99999.99996, 99999.99994, 0.00003, 1.118033988, 1e-9],
    [10000, 5000.000001, 15000, 612.3724358, 1e-7],
  ])("keep the digits of the needle-like triangle %s, %s, %s", (a, b, c, area, lastDigit) => {
    const whole = (side: number) => m(Math.round(side * 1e6));
    const ours = triangleArea({ sides: [whole(a), whole(b), whole(c)] }).value / 1e12;
    expect(Math.abs(ours - area)).toBeLessThanOrEqual(1.1 * lastDigit);
  });

  it("take a trapezoid between a rectangle and a triangle", () => {
    expect(trapezoidArea({ base: m(8), top: m(8), height: m(5) }).value).toBe(40);
    expect(trapezoidArea({ base: m(30), top: m(20), height: m(10) }).value).toBe(250);
  });

  it("make an ellipse of equal axes a circle, a full sector a circle, and a ring a circle less a circle", () => {
    const circle = circleArea({ diameter: m(40) }).value;
    expect(ellipseArea({ length: m(40), width: m(40) }).value).toBeCloseTo(circle, 10);
    expect(sectorArea({ radius: m(20), angleDegrees: 360 }).value).toBeCloseTo(circle, 10);
    expect(sectorArea({ radius: m(20), angleDegrees: 90 }).value).toBeCloseTo(circle / 4, 10);
    const ring = ringArea({ outerDiameter: m(40), innerDiameter: m(30) }).value;
    expect(ring).toBeCloseTo(circle - circleArea({ diameter: m(30) }).value, 10);
  });

  it("show working that is true and ends at their own result", () => {
    const shapes = [
      [rectangleArea, rectangleAreaLines, { length: ft(80), width: qty(700, "in") }],
      [triangleArea, triangleAreaLines, { base: ft(80), height: m(7) }],
      [triangleArea, triangleAreaLines, { sides: [ft(80), m(20), qty(30, "yd")] }],
      [trapezoidArea, trapezoidAreaLines, { base: ft(80), top: m(7), height: ft(3) }],
      [circleArea, circleAreaLines, { diameter: qty(65, "in") }],
      [ellipseArea, ellipseAreaLines, { length: m(80), width: ft(7) }],
      [ringArea, ringAreaLines, { outerDiameter: m(80), innerDiameter: ft(7) }],
      [sectorArea, sectorAreaLines, { radius: qty(80, "yd"), angleDegrees: 77 }],
    ] as const;
    for (const [area, working, input] of shapes) {
      const lines = working(input as never);
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result).toEqual(area(input as never));
    }
  });
});

describe("shapes that cannot be", () => {
  it.each([
    ["sides that do not meet", [1, 2, 4]],
    ["sides that lie flat", [1, 2, 3]],
    ["sides flat but for noise", [0.1, 0.2, 0.1 + 0.2]],
  ])("refuses a triangle with %s", (_, sides) => {
    expectRefused(() => triangleArea({ sides: sides.map(m) as never }), "conflict", "sides", "shorter than");
  });

  it("refuses a triangle with sides and a height, with too few sides, and with four", () => {
    const sides = [m(3), m(4), m(5)] as const;
    expectRefused(() => triangleArea({ sides, height: m(3) } as never), "conflict", "sides");
    expectRefused(() => triangleArea({ sides: [m(3), m(4)] } as never), "too-few", "sides");
    expectRefused(() => triangleArea({ sides: [...sides, m(6)] } as never), "out-of-range", "sides");
    expectRefused(() => triangleArea({ sides: [m(3), m(4), m(0)] }), "out-of-range", "sides[2]");
    expectRefused(() => triangleArea({ base: m(3) } as never), "missing", "height");
  });

  it("refuses a ring whose inner circle is not the smaller", () => {
    const ring = { outerDiameter: m(2), innerDiameter: qty(200, "cm") };
    expectRefused(() => ringArea(ring), "conflict", "innerDiameter", "less than the outer diameter of 2 m");
  });

  it.each([0, -1, 361])("refuses a sector of %s degrees", (angleDegrees) => {
    expectRefused(() => sectorArea({ radius: m(2), angleDegrees }), "out-of-range", "angleDegrees");
  });

  it("refuses sizes of zero and below, mixed dimensions, and sizes beyond the range of numbers", () => {
    expectRefused(() => rectangleArea({ length: ft(0), width: ft(1) }), "out-of-range", "length");
    expectRefused(() => rectangleArea({ length: ft(1), width: ft(-1) }), "out-of-range", "width");
    expectRefused(
      () => rectangleArea({ length: ft(1), width: qty(1, "ft2") } as never),
      "wrong-dimension",
      "width",
    );
    expectRefused(
      () => rectangleArea({ length: qty(1, "gal"), width: ft(1) } as never),
      "wrong-dimension",
      "length",
    );
    expectRefused(() => rectangleArea({ length: ft(1e200), width: ft(1e200) }), "not-finite", "length");
    expectRefused(() => rectangleArea({ length: ft(1e-200), width: ft(1e-200) }), "out-of-range", "length");
    // Each is right by itself; the fourth power in the formula is not.
    const far = qty(1e75, "mi");
    expectRefused(() => triangleArea({ sides: [far, far, far] }), "not-finite", "");
  });
});

refusesMisuse("rectangleArea", rectangleArea, { length: ft(2), width: ft(2) }, ["length", "width"]);
refusesMisuse("triangleArea", triangleArea, { base: ft(2), height: ft(2) }, ["base", "height"]);
refusesMisuse("triangleArea by sides", triangleArea, { sides: [ft(2), ft(2), ft(2)] }, [
  "sides.0",
  "sides.2",
]);
refusesMisuse("trapezoidArea", trapezoidArea, { base: ft(2), top: ft(2), height: ft(2) }, [
  "base",
  "top",
  "height",
]);
refusesMisuse("circleArea", circleArea, { diameter: ft(2) }, ["diameter"]);
refusesMisuse("ellipseArea", ellipseArea, { length: ft(2), width: ft(2) }, ["length", "width"]);
refusesMisuse("ringArea", ringArea, { outerDiameter: ft(2), innerDiameter: ft(1) }, [
  "outerDiameter",
  "innerDiameter",
]);
refusesMisuse("sectorArea", sectorArea, { radius: ft(2), angleDegrees: 90 }, ["radius", "angleDegrees"]);
