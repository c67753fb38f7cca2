import { type Check, checked, type Field } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  byGiven,
  type EitherField,
  either,
  joined,
  list,
  number,
  type ObjectField,
  object,
  type Partly,
  type Pick,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { groundOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

const PLANE_GEOMETRY = "plane geometry";

/** The working of a shape whose formula names its sizes. */
function shapeLines(
  id: string,
  formula: string,
  sizes: Readonly<Record<string, Length | number>>,
  result: GroundArea,
  source: string = PLANE_GEOMETRY,
): WorkingLine[] {
  const { length } = unitsLike(result.unit);
  const terms: Record<string, GivenTerm> = {};
  for (const [name, size] of Object.entries(sizes))
    terms[name] = typeof size === "number" ? size : [size, length];
  return formulaLines({ id, formula, terms, result, source });
}

/** A rectangle, by its two sides. */
export interface RectangleInput {
  /** One side. More than 0. */
  readonly length: Length;
  /** The side that meets it. More than 0. */
  readonly width: Length;
}

/** The fields of a rectangle. */
export const RECTANGLE: ObjectField<RectangleInput> = object<RectangleInput>({
  length: quantity("One side. More than 0.", "length"),
  width: quantity("The side that meets it. More than 0.", "length"),
});

/**
 * Returns the ground area of a rectangle.
 *
 * Formula: length × width (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `length`
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
  return groundOfRectangle(checked(input, RECTANGLE));
}

/** The ground area of a rectangle. Trusts its input. */
export function groundOfRectangle({ length, width }: RectangleInput, at = ""): GroundArea {
  const unit = unitsLike(length.unit);
  return groundOf(inUnit(length, unit.length) * inUnit(width, unit.length), unit.area, at);
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
  return linesOfRectangle(checked(input, RECTANGLE));
}

/** The working of {@link groundOfRectangle}. Trusts its input. */
export function linesOfRectangle({ length, width }: RectangleInput): WorkingLine[] {
  const result = groundOfRectangle({ length, width });
  return shapeLines("area.rectangle", "length * width", { length, width }, result);
}

/** A triangle, by a side and the height on it. */
export interface TriangleByBase {
  /** Any side. More than 0. */
  readonly base: Length;
  /** From that side to the corner opposite, square to the side. More than 0. */
  readonly height: Length;
}

/** A triangle, by its three sides. */
export interface TriangleBySides {
  /** The three sides, each shorter than the other two together. */
  readonly sides: readonly [Length, Length, Length];
}

/** A triangle, by a side and the height on it, or by its three sides. */
export type TriangleInput = TriangleByBase | TriangleBySides;

/** The fields of a triangle by base and height. */
const TRIANGLE_BY_BASE: ObjectField<TriangleByBase> = object<TriangleByBase>({
  base: quantity("Any side. More than 0.", "length"),
  height: quantity("From that side to the corner opposite, square to the side. More than 0.", "length"),
});

/** The fields of a triangle by its sides. */
const TRIANGLE_BY_SIDES: ObjectField<TriangleBySides> = /* @__PURE__ */ object<TriangleBySides>(
  {
    sides: list("The three sides, each shorter than the other two together.", quantity("A side.", "length"), {
      least: 3,
      most: 3,
    }) as Field<readonly Length[]> as Field<readonly [Length, Length, Length]>,
  },
  [sidesMeet],
);

/** Which of the two ways a triangle is given. */
const BY_BASE_OR_SIDES: Pick = /* @__PURE__ */ byGiven([["base", "height"], ["sides"]], 0);

/** A triangle in an object with more fields. */
/* @__NO_SIDE_EFFECTS__ */
export function triangleWith<T extends object>(more: ObjectField<T>): EitherField<T & TriangleInput> {
  return either<T & TriangleInput>(
    "",
    [joined(more, TRIANGLE_BY_BASE), joined(more, TRIANGLE_BY_SIDES)],
    BY_BASE_OR_SIDES,
  );
}

const TRIANGLE: EitherField<TriangleInput> = /* @__PURE__ */ triangleWith(/* @__PURE__ */ object<object>({}));

/** Notes three sides that can't meet. */
function sidesMeet({ sides }: Partly<TriangleBySides>, check: Check): void {
  if (sides === undefined) return;
  const [longest, second, third] = longestFirst(sides);
  const { unit } = longest;
  if (moreThan(inUnit(second, unit) + inUnit(third, unit), longest.value)) return;
  check.fault(
    "conflict",
    "sides-apart",
    "sides",
    "Sides of {longest}, {second} and {third} don't meet. Each side must be shorter than the other two together.",
    { longest, second, third },
  );
}

function longestFirst(sides: TriangleBySides["sides"]): [Length, Length, Length] {
  const { length } = unitsLike(sides[0].unit);
  return [...sides].sort((x, y) => inUnit(y, length) - inUnit(x, length)) as [Length, Length, Length];
}

/**
 * Returns the ground area of a triangle.
 *
 * Formula: base × height / 2; from the sides a ≥ b ≥ c, √((a + (b + c)) × (c − (a − b)) × (c + (a − b)) × (a + (b − c))) / 4 (plane geometry; the second is Heron's formula, arranged so that a needle-thin
 * triangle loses no digits: W. Kahan, Miscalculating Area and Angles of a Needle-like Triangle).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `base` or the first side
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
  return groundOfTriangle(checked(input, TRIANGLE));
}

/** The ground area of a triangle. Trusts its input. */
export function groundOfTriangle(shape: TriangleInput, at = ""): GroundArea {
  if (!("sides" in shape)) {
    const unit = unitsLike(shape.base.unit);
    return groundOf((inUnit(shape.base, unit.length) * inUnit(shape.height, unit.length)) / 2, unit.area, at);
  }
  const unit = unitsLike(shape.sides[0].unit);
  const [a, b, c] = longestFirst(shape.sides).map((side) => inUnit(side, unit.length)) as [
    number,
    number,
    number,
  ];
  return groundOf(
    Math.sqrt((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))) / 4,
    unit.area,
    at,
  );
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
  return linesOfTriangle(checked(input, TRIANGLE));
}

/** The working of {@link groundOfTriangle}. Trusts its input. */
export function linesOfTriangle(shape: TriangleInput): WorkingLine[] {
  const result = groundOfTriangle(shape);
  if (!("sides" in shape)) {
    const { base, height } = shape;
    return shapeLines("area.triangle", "base * height / 2", { base, height }, result);
  }
  const [a, b, c] = longestFirst(shape.sides);
  return shapeLines(
    "area.triangle.sides",
    "sqrt((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))) / 4",
    { a, b, c },
    result,
    "Heron's formula, as W. Kahan arranges it",
  );
}

/** A trapezoid: four sides, two of them parallel. */
export interface TrapezoidInput {
  /** One of the two parallel sides. More than 0. */
  readonly base: Length;
  /** The other parallel side. More than 0. */
  readonly top: Length;
  /** The distance between them, square to both. More than 0. */
  readonly height: Length;
}

/** The fields of a trapezoid. */
export const TRAPEZOID: ObjectField<TrapezoidInput> = object<TrapezoidInput>({
  base: quantity("One of the two parallel sides. More than 0.", "length"),
  top: quantity("The other parallel side. More than 0.", "length"),
  height: quantity("The distance between them, square to both. More than 0.", "length"),
});

/**
 * Returns the ground area of a trapezoid: four sides, two of them parallel.
 *
 * Formula: (base + top) / 2 × height (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `base`
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
  return groundOfTrapezoid(checked(input, TRAPEZOID));
}

/** The ground area of a trapezoid. Trusts its input. */
export function groundOfTrapezoid({ base, top, height }: TrapezoidInput, at = ""): GroundArea {
  const unit = unitsLike(base.unit);
  return groundOf(
    ((inUnit(base, unit.length) + inUnit(top, unit.length)) / 2) * inUnit(height, unit.length),
    unit.area,
    at,
  );
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
  return linesOfTrapezoid(checked(input, TRAPEZOID));
}

/** The working of {@link groundOfTrapezoid}. Trusts its input. */
export function linesOfTrapezoid({ base, top, height }: TrapezoidInput): WorkingLine[] {
  const result = groundOfTrapezoid({ base, top, height });
  return shapeLines("area.trapezoid", "(base + top) / 2 * height", { base, top, height }, result);
}

/** A circle. A radius is measured as half a diameter. */
export interface CircleInput {
  /** The distance across. More than 0. */
  readonly diameter: Length;
}

/** The fields of a circle. */
export const CIRCLE: ObjectField<CircleInput> = object<CircleInput>({
  diameter: quantity("The distance across. More than 0.", "length"),
});

/**
 * Returns the ground area of a circle.
 *
 * Formula: π × diameter² / 4 (plane geometry; handbooks that take π as 3.14 print 0.05% less).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `diameter`
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
  return groundOfCircle(checked(input, CIRCLE));
}

/** The ground area of a circle. Trusts its input. */
export function groundOfCircle({ diameter }: CircleInput, at = ""): GroundArea {
  const unit = unitsLike(diameter.unit);
  return groundOf((Math.PI * inUnit(diameter, unit.length) ** 2) / 4, unit.area, at);
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
  return linesOfCircle(checked(input, CIRCLE));
}

/** The working of {@link groundOfCircle}. Trusts its input. */
export function linesOfCircle({ diameter }: CircleInput): WorkingLine[] {
  const result = groundOfCircle({ diameter });
  return shapeLines("area.circle", "pi * diameter^2 / 4", { diameter }, result);
}

/** An ellipse, by its two axes. */
export interface EllipseInput {
  /** The longest distance across. More than 0. */
  readonly length: Length;
  /** The distance across, square to it. More than 0. */
  readonly width: Length;
}

/** The fields of an ellipse. */
export const ELLIPSE: ObjectField<EllipseInput> = object<EllipseInput>({
  length: quantity("The longest distance across. More than 0.", "length"),
  width: quantity("The distance across, square to it. More than 0.", "length"),
});

/**
 * Returns the ground area of an ellipse: an oval bed or lawn.
 *
 * Formula: π × length × width / 4 (plane geometry; lawn guides that print 0.8 × length × width are 1.9% high).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `length`
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
  return groundOfEllipse(checked(input, ELLIPSE));
}

/** The ground area of an ellipse. Trusts its input. */
export function groundOfEllipse({ length, width }: EllipseInput, at = ""): GroundArea {
  const unit = unitsLike(length.unit);
  return groundOf((Math.PI * inUnit(length, unit.length) * inUnit(width, unit.length)) / 4, unit.area, at);
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
  return linesOfEllipse(checked(input, ELLIPSE));
}

/** The working of {@link groundOfEllipse}. Trusts its input. */
export function linesOfEllipse({ length, width }: EllipseInput): WorkingLine[] {
  const result = groundOfEllipse({ length, width });
  return shapeLines("area.ellipse", "pi * length * width / 4", { length, width }, result);
}

/** A ring between two circles with one middle. */
export interface RingInput {
  /** The distance across the whole. More than 0. */
  readonly outerDiameter: Length;
  /** The distance across the hole. More than 0, less than the outer one. */
  readonly innerDiameter: Length;
}

/** The fields of a ring. */
export const RING: ObjectField<RingInput> = /* @__PURE__ */ object<RingInput>(
  {
    outerDiameter: quantity("The distance across the whole. More than 0.", "length"),
    innerDiameter: quantity("The distance across the hole. More than 0, less than the outer one.", "length"),
  },
  [holeFits],
);

/** Notes a hole that is as wide as the ring. */
function holeFits({ outerDiameter, innerDiameter }: Partly<RingInput>, check: Check): void {
  if (outerDiameter === undefined || innerDiameter === undefined) return;
  if (moreThan(inUnit(outerDiameter, innerDiameter.unit), innerDiameter.value)) return;
  check.fault(
    "conflict",
    "hole-too-wide",
    "innerDiameter",
    "Must be less than the outer diameter of {outer}.",
    {
      given: innerDiameter,
      outer: outerDiameter,
    },
  );
}

/**
 * Returns the ground area of a ring: a circle with a circle cut out of its middle, such as a border round a pond.
 *
 * Formula: π × (outer − inner) × (outer + inner) / 4, with the two diameters (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `outerDiameter`
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
  return groundOfRing(checked(input, RING));
}

/** The ground area of a ring. Trusts its input. */
export function groundOfRing({ outerDiameter, innerDiameter }: RingInput, at = ""): GroundArea {
  const unit = unitsLike(outerDiameter.unit);
  const [outer, inner] = [inUnit(outerDiameter, unit.length), inUnit(innerDiameter, unit.length)];
  return groundOf((Math.PI * (outer - inner) * (outer + inner)) / 4, unit.area, at);
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
  return linesOfRing(checked(input, RING));
}

/** The working of {@link groundOfRing}. Trusts its input. */
export function linesOfRing({ outerDiameter, innerDiameter }: RingInput): WorkingLine[] {
  const result = groundOfRing({ outerDiameter, innerDiameter });
  return shapeLines(
    "area.ring",
    "pi * (outerDiameter - innerDiameter) * (outerDiameter + innerDiameter) / 4",
    { outerDiameter, innerDiameter },
    result,
  );
}

/** A sector: a slice of a circle. */
export interface SectorInput {
  /** From the middle to the edge. More than 0. */
  readonly radius: Length;
  /** The angle at the middle, in degrees. More than 0, at most 360. */
  readonly angleDegrees: number;
}

/** The fields of a sector. */
export const SECTOR: ObjectField<SectorInput> = object<SectorInput>({
  radius: quantity("From the middle to the edge. More than 0.", "length"),
  angleDegrees: number("The angle at the middle, in degrees. More than 0, at most 360.", {
    unit: "degrees",
    above: 0,
    max: 360,
  }),
});

/**
 * Returns the ground area of a sector: the slice of a circle that a sprinkler or a pivot covers.
 *
 * Formula: angle / 360 × π × radius² (plane geometry).
 *
 * @param input - the sizes, in any units of length, each more than 0
 * @returns ground area, in ft² or m² like `radius`
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
  return groundOfSector(checked(input, SECTOR));
}

/** The ground area of a sector. Trusts its input. */
export function groundOfSector({ radius, angleDegrees }: SectorInput, at = ""): GroundArea {
  const unit = unitsLike(radius.unit);
  return groundOf((angleDegrees / 360) * Math.PI * inUnit(radius, unit.length) ** 2, unit.area, at);
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
  return linesOfSector(checked(input, SECTOR));
}

/** The working of {@link groundOfSector}. Trusts its input. */
export function linesOfSector({ radius, angleDegrees }: SectorInput): WorkingLine[] {
  const result = groundOfSector({ radius, angleDegrees });
  return shapeLines("area.sector", "angleDegrees / 360 * pi * radius^2", { angleDegrees, radius }, result);
}
