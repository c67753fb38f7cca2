import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { checkedList, checkedNumber, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { formulaLines } from "../units/lines.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { madeGround, positiveNumber } from "./made.js";

const PLANE_GEOMETRY = "plane geometry";

/** A rectangle, by its two sides. */
export interface RectangleInput {
  /** One side. More than 0. */
  readonly length: Length;
  /** The side that meets it. More than 0. */
  readonly width: Length;
}

/**
 * The ground area of a rectangle.
 *
 * Formula: length × width (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `length` is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { rectangleArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(rectangleArea({ length: qty(80, "ft"), width: qty(60, "ft") })); // { value: 4800, unit: 'ft2', of: 'ground' }
 * ```
 */
export function rectangleArea(input: RectangleInput): GroundArea {
  const { length, width } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(length, "length");
  return madeGround(inUnit(length, unit, "length") * inUnit(width, unit, "width"), area);
}

/**
 * The working of {@link rectangleArea}, line by line.
 *
 * @param input - as for {@link rectangleArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link rectangleArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rectangleArea } from "swath-to-spoon/working";
 *
 * console.log(rectangleArea({ length: qty(80, "ft"), width: qty(60, "ft") }).map((line) => line.formula)); // [ 'length * width' ]
 * ```
 */
export function rectangleAreaWorking(input: RectangleInput): WorkingLine[] {
  const result = rectangleArea(input);
  const { length: unit } = unitsLike(input.length.unit);
  return formulaLines({
    id: "area.rectangle",
    formula: "length * width",
    terms: { length: [input.length, unit], width: [input.width, unit] },
    result,
    source: PLANE_GEOMETRY,
  });
}

/** A triangle, by a side and the height on it, or by its three sides. */
export type TriangleInput =
  | {
      /** Any side. More than 0. */
      readonly base: Length;
      /** The distance from that side to the corner opposite, measured square to the side. More than 0. */
      readonly height: Length;
    }
  | {
      /** The three sides, each more than 0 and shorter than the other two together. */
      readonly sides: readonly [Length, Length, Length];
    };

/**
 * The ground area of a triangle.
 *
 * Formula: base × height / 2; from the sides a ≥ b ≥ c, √((a + (b + c)) × (c − (a − b)) × (c + (a − b)) × (a + (b − c))) / 4 (plane geometry; the second is Heron's formula, arranged so that a needle-thin
 * triangle loses no digits: W. Kahan, Miscalculating Area and Angles of a Needle-like Triangle).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `base` or the first side is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`,
 * `out-of-range`, `too-few`, or `conflict` where the three sides cannot meet
 *
 * @example
 * ```ts
 * import { triangleArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(triangleArea({ base: qty(200, "ft"), height: qty(40, "ft") })); // { value: 4000, unit: 'ft2', of: 'ground' }
 * ```
 */
export function triangleArea(input: TriangleInput): GroundArea {
  const given = checkedTriangle(input);
  if ("base" in given) return madeGround((given.base * given.height) / 2, given.area);
  const { a, b, c } = given;
  return madeGround(Math.sqrt((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))) / 4, given.area);
}

/**
 * The working of {@link triangleArea}, line by line.
 *
 * @param input - as for {@link triangleArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link triangleArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { triangleArea } from "swath-to-spoon/working";
 *
 * console.log(triangleArea({ base: qty(200, "ft"), height: qty(40, "ft") }).map((line) => line.formula)); // [ 'base * height / 2' ]
 * ```
 */
export function triangleAreaWorking(input: TriangleInput): WorkingLine[] {
  const result = triangleArea(input);
  const given = checkedTriangle(input);
  if ("base" in input) {
    return formulaLines({
      id: "area.triangle",
      formula: "base * height / 2",
      terms: { base: [input.base, given.unit], height: [input.height, given.unit] },
      result,
      source: PLANE_GEOMETRY,
    });
  }
  const [a, b, c] = longestFirst(input.sides, given.unit);
  return formulaLines({
    id: "area.triangle.sides",
    formula: "sqrt((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))) / 4",
    terms: { a: [a, given.unit], b: [b, given.unit], c: [c, given.unit] },
    result,
    source: "Heron's formula, as W. Kahan arranges it",
  });
}

type CheckedTriangle = { readonly unit: "ft" | "m"; readonly area: "ft2" | "m2" } & (
  | { readonly base: number; readonly height: number }
  | { readonly a: number; readonly b: number; readonly c: number }
);

function checkedTriangle(input: TriangleInput): CheckedTriangle {
  checkedObject(input, "");
  if ("sides" in input) {
    if ("base" in input || "height" in input) {
      throw new SprayMathError(
        "conflict",
        "sides",
        "Given three sides as well as a base or a height; wanted the one or the other.",
      );
    }
    return checkedSides(input.sides);
  }
  const { base, height } = input;
  const { length: unit, area } = unitsWith(base, "base");
  return { unit, area, base: inUnit(base, unit, "base"), height: inUnit(height, unit, "height") };
}

function checkedSides(sides: readonly Length[]): CheckedTriangle {
  checkedList(sides, "sides", 3);
  if (sides.length > 3)
    throw new SprayMathError("conflict", "sides", `Given ${sides.length} sides; a triangle has 3.`);
  const { length: unit, area } = unitsWith(sides[0] as Length, "sides[0]");
  const [a, b, c] = sides.map((side, i) => inUnit(side, unit, `sides[${i}]`)).sort((x, y) => y - x) as [
    number,
    number,
    number,
  ];
  if (!moreThan(positiveNumber(b + c), a)) {
    throw new SprayMathError(
      "conflict",
      "sides",
      `Given a side of ${a} ${unit} with others of ${b} and ${c} ${unit}; each side of a triangle is shorter than the other two ` +
        "together. Measure again.",
    );
  }
  return { unit, area, a, b, c };
}

function longestFirst(sides: readonly [Length, Length, Length], unit: "ft" | "m"): [Length, Length, Length] {
  const size = (side: Length): number => inUnit(side, unit, "sides");
  return [...sides].sort((x, y) => size(y) - size(x)) as [Length, Length, Length];
}

/** A trapezoid: four sides, two of them parallel. */
export interface TrapezoidInput {
  /** One of the parallel sides. More than 0. */
  readonly base: Length;
  /** The other parallel side. More than 0. */
  readonly top: Length;
  /** The distance between the two, measured square to them. More than 0. */
  readonly height: Length;
}

/**
 * The ground area of a trapezoid: four sides, two of them parallel.
 *
 * Formula: (base + top) / 2 × height (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `base` is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { trapezoidArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(trapezoidArea({ base: qty(30, "m"), top: qty(20, "m"), height: qty(10, "m") })); // { value: 250, unit: 'm2', of: 'ground' }
 * ```
 */
export function trapezoidArea(input: TrapezoidInput): GroundArea {
  const { base, top, height } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(base, "base");
  const parallel = inUnit(base, unit, "base") + inUnit(top, unit, "top");
  return madeGround((parallel / 2) * inUnit(height, unit, "height"), area);
}

/**
 * The working of {@link trapezoidArea}, line by line.
 *
 * @param input - as for {@link trapezoidArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link trapezoidArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { trapezoidArea } from "swath-to-spoon/working";
 *
 * console.log(trapezoidArea({ base: qty(30, "m"), top: qty(20, "m"), height: qty(10, "m") }).map((line) => line.formula)); // [ '(base + top) / 2 * height' ]
 * ```
 */
export function trapezoidAreaWorking(input: TrapezoidInput): WorkingLine[] {
  const result = trapezoidArea(input);
  const { length: unit } = unitsLike(input.base.unit);
  return formulaLines({
    id: "area.trapezoid",
    formula: "(base + top) / 2 * height",
    terms: { base: [input.base, unit], top: [input.top, unit], height: [input.height, unit] },
    result,
    source: PLANE_GEOMETRY,
  });
}

/** A circle. A radius is measured as half a diameter. */
export interface CircleInput {
  /** The distance across, through the middle. More than 0. */
  readonly diameter: Length;
}

/**
 * The ground area of a circle.
 *
 * Formula: π × diameter² / 4 (plane geometry; handbooks that take π as 3.14 print 0.05 % less).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `diameter` is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { circleArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(circleArea({ diameter: qty(20, "ft") })); // { value: 314.1592653589793, unit: 'ft2', of: 'ground' }
 * ```
 */
export function circleArea(input: CircleInput): GroundArea {
  const { diameter } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(diameter, "diameter");
  return madeGround((Math.PI * inUnit(diameter, unit, "diameter") ** 2) / 4, area);
}

/**
 * The working of {@link circleArea}, line by line.
 *
 * @param input - as for {@link circleArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link circleArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { circleArea } from "swath-to-spoon/working";
 *
 * console.log(circleArea({ diameter: qty(20, "ft") }).map((line) => line.formula)); // [ 'pi * diameter^2 / 4' ]
 * ```
 */
export function circleAreaWorking(input: CircleInput): WorkingLine[] {
  const result = circleArea(input);
  const { length: unit } = unitsLike(input.diameter.unit);
  return formulaLines({
    id: "area.circle",
    formula: "pi * diameter^2 / 4",
    terms: { diameter: [input.diameter, unit] },
    result,
    source: PLANE_GEOMETRY,
  });
}

/** An ellipse, by its two axes. */
export interface EllipseInput {
  /** The whole distance along the longer axis. More than 0. */
  readonly length: Length;
  /** The whole distance along the shorter axis, in the middle. More than 0. */
  readonly width: Length;
}

/**
 * The ground area of an ellipse: an oval bed or lawn.
 *
 * Formula: π × length × width / 4 (plane geometry; lawn guides that print 0.8 × length × width are 1.9 % high).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `length` is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { ellipseArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(ellipseArea({ length: qty(60, "ft"), width: qty(40, "ft") })); // { value: 1884.9555921538758, unit: 'ft2', of: 'ground' }
 * ```
 */
export function ellipseArea(input: EllipseInput): GroundArea {
  const { length, width } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(length, "length");
  return madeGround((Math.PI * inUnit(length, unit, "length") * inUnit(width, unit, "width")) / 4, area);
}

/**
 * The working of {@link ellipseArea}, line by line.
 *
 * @param input - as for {@link ellipseArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link ellipseArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { ellipseArea } from "swath-to-spoon/working";
 *
 * console.log(ellipseArea({ length: qty(60, "ft"), width: qty(40, "ft") }).map((line) => line.formula)); // [ 'pi * length * width / 4' ]
 * ```
 */
export function ellipseAreaWorking(input: EllipseInput): WorkingLine[] {
  const result = ellipseArea(input);
  const { length: unit } = unitsLike(input.length.unit);
  return formulaLines({
    id: "area.ellipse",
    formula: "pi * length * width / 4",
    terms: { length: [input.length, unit], width: [input.width, unit] },
    result,
    source: PLANE_GEOMETRY,
  });
}

/** A ring between two circles with one middle. */
export interface RingInput {
  /** The distance across the outer circle. More than `innerDiameter`. */
  readonly outerDiameter: Length;
  /** The distance across the inner circle. More than 0. */
  readonly innerDiameter: Length;
}

/**
 * The ground area of a ring: a circle with a circle cut out of its middle, such as a border round a pond.
 *
 * Formula: π × (outer − inner) × (outer + inner) / 4, with the two diameters (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `outerDiameter` is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`,
 * `out-of-range`, or `conflict` where the inner circle is not the smaller
 *
 * @example
 * ```ts
 * import { ringArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(ringArea({ outerDiameter: qty(20, "m"), innerDiameter: qty(16, "m") })); // { value: 113.09733552923255, unit: 'm2', of: 'ground' }
 * ```
 */
export function ringArea(input: RingInput): GroundArea {
  const { outerDiameter, innerDiameter } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(outerDiameter, "outerDiameter");
  const outer = inUnit(outerDiameter, unit, "outerDiameter");
  const inner = inUnit(innerDiameter, unit, "innerDiameter");
  if (!moreThan(outer, inner)) {
    throw new SprayMathError(
      "conflict",
      "innerDiameter",
      `Given ${innerDiameter.value} ${innerDiameter.unit} across inside and ${outerDiameter.value} ${outerDiameter.unit} outside; wanted less inside.`,
    );
  }
  return madeGround((Math.PI * (outer - inner) * (outer + inner)) / 4, area);
}

/**
 * The working of {@link ringArea}, line by line.
 *
 * @param input - as for {@link ringArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link ringArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { ringArea } from "swath-to-spoon/working";
 *
 * console.log(ringArea({ outerDiameter: qty(20, "m"), innerDiameter: qty(16, "m") }).map((line) => line.formula)); // [ 'pi * (outerDiameter - innerDiameter) * (outerDiameter + innerDiameter) / 4' ]
 * ```
 */
export function ringAreaWorking(input: RingInput): WorkingLine[] {
  const result = ringArea(input);
  const { length: unit } = unitsLike(input.outerDiameter.unit);
  return formulaLines({
    id: "area.ring",
    formula: "pi * (outerDiameter - innerDiameter) * (outerDiameter + innerDiameter) / 4",
    terms: { outerDiameter: [input.outerDiameter, unit], innerDiameter: [input.innerDiameter, unit] },
    result,
    source: PLANE_GEOMETRY,
  });
}

/** A sector: a slice of a circle. */
export interface SectorInput {
  /** The distance from the middle to the edge. More than 0. */
  readonly radius: Length;
  /** The angle of the slice at the middle, in degrees. More than 0, at most 360. */
  readonly angleDegrees: number;
}

/**
 * The ground area of a sector: the slice of a circle that a sprinkler or a pivot covers.
 *
 * Formula: angle / 360 × π × radius² (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² as `radius` is told
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { sectorArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(sectorArea({ radius: qty(100, "m"), angleDegrees: 90 })); // { value: 7853.981633974483, unit: 'm2', of: 'ground' }
 * ```
 */
export function sectorArea(input: SectorInput): GroundArea {
  const { radius, angleDegrees } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(radius, "radius");
  const r = inUnit(radius, unit, "radius");
  checkedNumber(angleDegrees, "angleDegrees", { above: 0, max: 360 });
  return madeGround((angleDegrees / 360) * Math.PI * r ** 2, area);
}

/**
 * The working of {@link sectorArea}, line by line.
 *
 * @param input - as for {@link sectorArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link sectorArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { sectorArea } from "swath-to-spoon/working";
 *
 * console.log(sectorArea({ radius: qty(100, "m"), angleDegrees: 90 }).map((line) => line.formula)); // [ 'angleDegrees / 360 * pi * radius^2' ]
 * ```
 */
export function sectorAreaWorking(input: SectorInput): WorkingLine[] {
  const result = sectorArea(input);
  const { length: unit } = unitsLike(input.radius.unit);
  return formulaLines({
    id: "area.sector",
    formula: "angleDegrees / 360 * pi * radius^2",
    terms: { angleDegrees: input.angleDegrees, radius: [input.radius, unit] },
    result,
    source: PLANE_GEOMETRY,
  });
}
