import { joinPath } from "../errors.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  byGiven,
  count,
  type EitherField,
  either,
  list,
  type ObjectField,
  object,
  optional,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { sumOf } from "../units/quantity.js";
import { groundArea, quantity } from "../units/quantity-field.js";
import { positive, treatedOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Area, GroundArea, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import type { TreatedRows } from "./strips.js";

/** Spots of one size. */
interface Spots {
  /** How many spots of this size. A whole number, 1 or more. */
  readonly count: number;
}

/** Round spots of one size. */
interface RoundSpots extends Spots {
  /** The distance across a round spot. More than 0. */
  readonly diameter: Length;
}

/** Rectangular spots of one size. */
interface RectangularSpots extends Spots {
  /** One side of a rectangular spot. More than 0. */
  readonly length: Length;
  /** The side that meets it. More than 0. */
  readonly width: Length;
}

/** Spots of one area and any shape. */
interface SpotsOfAnyShape extends Spots {
  /** The area of one spot of any shape. More than 0. */
  readonly each: Area;
}

/** Spots of one size: by their diameter, by their sides, or by the area of one. */
export type SpotGroup = RoundSpots | RectangularSpots | SpotsOfAnyShape;

const COUNT = count("How many spots of this size. A whole number, 1 or more.");

/** Spots of one size. */
export const SPOT_GROUP: EitherField<SpotGroup> = /* @__PURE__ */ either<SpotGroup>(
  "Spots of one size: by their diameter, by their sides, or by the area of one.",
  [
    object<RoundSpots>({
      count: COUNT,
      diameter: quantity("The distance across a round spot. More than 0.", "length"),
    }),
    object<RectangularSpots>({
      count: COUNT,
      length: quantity("One side of a rectangular spot. More than 0.", "length"),
      width: quantity("The side that meets it. More than 0.", "length"),
    }),
    object<SpotsOfAnyShape>({
      count: COUNT,
      each: quantity("The area of one spot of any shape. More than 0.", "area"),
    }),
  ],
  byGiven([["diameter"], ["length", "width"], ["each"]]),
);

/** Spots treated on their own, such as patches of weed or mulch circles round trees. */
export interface SpotsInput {
  /** The spots, one entry for each size. They must not overlap. */
  readonly spots: readonly SpotGroup[];
  /** The ground they lie on; may be left out. */
  readonly ground?: GroundArea | undefined;
}

/** The fields of spots. */
export const SPOTS: ObjectField<SpotsInput> = /* @__PURE__ */ object<SpotsInput>({
  spots: list("The spots, one entry for each size. They must not overlap.", SPOT_GROUP, { most: 1000 }),
  ground: optional(groundArea("The ground they lie on; may be left out.", { unmarked: true })),
});

/**
 * Returns the area that spot treatment treats, from the count and the size of the spots.
 *
 * Formula: treated = Σ count × area of one spot, with π × diameter² / 4 for a round one and length × width for a
 * rectangular one (plane geometry).
 *
 * @param input - the spots, of up to 1000 sizes, and the ground they lie on
 * @returns the treated area, in ft² or m² like the first size; with `ground` also that ground and the treated part of it
 * @throws SprayMathError `conflict` where the spots are more than the ground or a spot has two sizes, `wrong-area`, `too-few`,
 * `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { spotsArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { treated } = spotsArea({
 *   spots: [
 *     { count: 12, length: qty(4, "ft"), width: qty(3, "ft") },
 *     { count: 5, each: qty(20, "ft2") },
 *   ],
 * });
 * console.log(treated); // { value: 244, unit: 'ft2', of: 'treated' }
 * ```
 */
export function spotsArea(input: SpotsInput): TreatedRows {
  return areasOfSpots(checked(input, SPOTS));
}

/** The areas of spots. Trusts its input. */
export function areasOfSpots({ spots, ground }: SpotsInput, at = ""): TreatedRows {
  const { length, area } = unitsLike(unitOf(spots[0] as SpotGroup));
  const all = sumOf(
    spots.map((group) => ({ value: group.count * areaOfOne(group, length, area), unit: area })),
  );
  const treated = treatedOf(all.value, area, at);
  if (ground === undefined) return { treated };
  const whole = inUnit(ground, area);
  if (moreThan(treated.value, whole))
    throw refusal(
      "conflict",
      "spots-over-ground",
      joinPath(at, "spots"),
      "The spots add up to {treated}, more than the {ground} of ground. Check their number and size.",
      { treated, ground },
    );
  return { treated, ground, fraction: positive(Math.min(treated.value / whole, 1), at) };
}

function unitOf(group: SpotGroup): Length["unit"] | Area["unit"] {
  if ("diameter" in group) return group.diameter.unit;
  return "each" in group ? group.each.unit : group.length.unit;
}

function areaOfOne(group: SpotGroup, length: "ft" | "m", area: "ft2" | "m2"): number {
  if ("diameter" in group) return (Math.PI * inUnit(group.diameter, length) ** 2) / 4;
  return "each" in group
    ? inUnit(group.each, area)
    : inUnit(group.length, length) * inUnit(group.width, length);
}

/**
 * The working of {@link spotsArea}, line by line.
 *
 * @param input - as for {@link spotsArea}
 * @returns the lines; the last one's result is the treated area
 * @throws SprayMathError as {@link spotsArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { spotsArea } from "swath-to-spoon/working";
 *
 * const lines = spotsArea({ spots: [{ count: 40, diameter: qty(1, "m") }] });
 * console.log(lines.map((line) => line.formula)); // [ 'n1 * pi * d1^2 / 4' ]
 * ```
 */
export function spotsAreaWorking(input: SpotsInput): WorkingLine[] {
  return linesOfSpots(checked(input, SPOTS));
}

/** The working of {@link areasOfSpots}. Trusts its input. */
export function linesOfSpots(input: SpotsInput): WorkingLine[] {
  const { treated } = areasOfSpots(input);
  const { length, area } = unitsLike(treated.unit);
  const terms: Record<string, GivenTerm> = {};
  const parts = input.spots.map((group, k) => {
    const i = k + 1;
    terms[`n${i}`] = group.count;
    if ("diameter" in group) {
      terms[`d${i}`] = [group.diameter, length];
      return `n${i} * pi * d${i}^2 / 4`;
    }
    if ("each" in group) {
      terms[`x${i}`] = [group.each, area];
      return `n${i} * x${i}`;
    }
    terms[`a${i}`] = [group.length, length];
    terms[`b${i}`] = [group.width, length];
    return `n${i} * a${i} * b${i}`;
  });
  return formulaLines({
    id: "area.spots",
    formula: parts.join(" + "),
    terms,
    result: treated,
    source: "plane geometry",
  });
}
