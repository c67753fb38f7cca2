import { SprayMathError, within } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { areaIn, checkedCount, checkedList, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { formulaLines, type GivenTerm } from "../units/lines.js";
import { sum } from "../units/quantity.js";
import type { Area, GroundArea, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import type { TreatedRows } from "./lanes.js";
import { madeTreated, positiveNumber } from "./made.js";

/** Spots of one size: round by their diameter, square by their sides, or any shape by the area of one. */
export type SpotGroup = {
  /** How many spots of this size. A whole number, 1 or more. */
  readonly count: number;
} & (
  | {
      /** The distance across a round spot. More than 0. */
      readonly diameter: Length;
    }
  | {
      /** One side of a rectangular spot. More than 0. */
      readonly length: Length;
      /** The side that meets it. More than 0. */
      readonly width: Length;
    }
  | {
      /** The area of one spot of any shape. More than 0. */
      readonly each: Area;
    }
);

/** Spots treated on their own, such as patches of weed or mulch circles round trees. */
export interface SpotsInput {
  /** The spots, one entry for each size. They must not overlap. */
  readonly spots: readonly SpotGroup[];
  /** The ground they lie on; may be left out. */
  readonly ground?: GroundArea;
}

/**
 * Spot treatment: what is treated, from the count and the size of the spots.
 *
 * Formula: treated = Σ count × area of one spot, with π × diameter² / 4 for a round one and length × width for a
 * rectangular one (plane geometry).
 *
 * @param input - the spots, and the ground they lie on
 * @returns the treated area, in ft² or m² as the first size is told; with `ground` also that ground and the treated part of it
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
  const { groups, ground, area } = checkedSpots(input);
  const treated = madeTreated(
    sum(groups.map(({ count, each }) => ({ value: count * each, unit: area }))).value,
    area,
  );
  if (ground === undefined) return { treated };
  const whole = areaIn(ground, "ground", area, "ground");
  if (moreThan(treated.value, whole)) {
    throw new SprayMathError(
      "conflict",
      "spots",
      `Given spots of ${treated.value} ${area} together on ${ground.value} ${ground.unit} of ground; wanted no more than the ground.`,
    );
  }
  return { treated, ground, fraction: positiveNumber(Math.min(treated.value / whole, 1)) };
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
  const { treated } = spotsArea(input);
  const { groups } = checkedSpots(input);
  const terms: Record<string, GivenTerm> = {};
  const parts = groups.map((group, i) => {
    Object.assign(terms, group.terms(i + 1));
    return group.formula(i + 1);
  });
  return formulaLines({
    id: "area.spots",
    formula: parts.join(" + "),
    terms,
    result: treated,
    source: "plane geometry",
  });
}

interface CheckedGroup {
  readonly count: number;
  readonly each: number;
  readonly formula: (i: number) => string;
  readonly terms: (i: number) => Record<string, GivenTerm>;
}

function checkedSpots(input: SpotsInput): {
  groups: CheckedGroup[];
  ground: GroundArea | undefined;
  area: "ft2" | "m2";
} {
  const { spots, ground } = checkedObject(input, "");
  checkedList(spots, "spots");
  const { length, area } = within("spots[0]", () =>
    unitsWith(...sizeOf(checkedObject(spots[0] as SpotGroup, ""))),
  );
  const groups = spots.map((group, i) => within(`spots[${i}]`, () => checkedGroup(group, length, area)));
  return { groups, ground, area };
}

function sizeOf(group: SpotGroup): [size: Length | Area, path: string] {
  if ("diameter" in group) return [group.diameter, "diameter"];
  if ("each" in group) return [group.each, "each"];
  return [group.length, "length"];
}

function checkedGroup(group: SpotGroup, unit: "ft" | "m", area: "ft2" | "m2"): CheckedGroup {
  const { count } = checkedObject(group, "");
  checkedCount(count, "count");
  if (
    ["diameter" in group, "each" in group, "length" in group || "width" in group].filter(Boolean).length > 1
  ) {
    throw new SprayMathError(
      "conflict",
      "",
      "Given more than one size for a spot; wanted a diameter, or length and width, or the area of each.",
    );
  }
  if ("diameter" in group) {
    const { diameter } = group;
    return {
      count,
      each: (Math.PI * inUnit(diameter, unit, "diameter") ** 2) / 4,
      formula: (i) => `n${i} * pi * d${i}^2 / 4`,
      terms: (i) => ({ [`n${i}`]: count, [`d${i}`]: [diameter, unit] }),
    };
  }
  if ("each" in group) {
    const { each } = group;
    return {
      count,
      each: inUnit(each, area, "each"),
      formula: (i) => `n${i} * x${i}`,
      terms: (i) => ({ [`n${i}`]: count, [`x${i}`]: [each, area] }),
    };
  }
  const { length, width } = group;
  return {
    count,
    each: inUnit(length, unit, "length") * inUnit(width, unit, "width"),
    formula: (i) => `n${i} * a${i} * b${i}`,
    terms: (i) => ({ [`n${i}`]: count, [`a${i}`]: [length, unit], [`b${i}`]: [width, unit] }),
  };
}
