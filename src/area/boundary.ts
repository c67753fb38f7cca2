import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { checkedObject } from "../units/guard.js";
import { formulaLines } from "../units/lines.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, LengthUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { checkedPairs, ringCorners } from "./corners.js";
import { type Corner, findCrossing } from "./crossing.js";
import { madeGround } from "./made.js";
import { twiceArea } from "./shoelace.js";

/** A plot with straight sides, by its corners on a plane. */
export interface BoundaryInput {
  /**
   * The corners in the order they are walked, either way round: how far each is to the right of, and ahead of, one fixed
   * point. At least 3; the first may stand again at the end.
   */
  readonly corners: readonly (readonly [x: number, y: number])[];
  /** The one unit of all these numbers. */
  readonly unit: LengthUnit;
}

/**
 * The ground area inside a boundary of straight sides, from its corners on a plane: a tape-and-square survey, a traverse
 * after adjustment, or map coordinates such as UTM. For longitude and latitude use `swath-to-spoon/area/geodesic`.
 *
 * Formula: |Σ xᵢ × yᵢ₊₁ − xᵢ₊₁ × yᵢ| / 2, the method of coordinates or shoelace formula (Open Access Surveying Library,
 * J. A. Mahun, Traverse Computations, chapter G). Corners are pairs of numbers with one unit for all, as a field book or a
 * map grid gives them. Which corner comes first and which way round they run does not matter.
 *
 * A boundary that crosses or touches itself is refused, since the formula then takes parts away from one another; a pond
 * is taken out with {@link compositeArea} instead. The time taken grows with n log n.
 *
 * @param input - the corners and their unit
 * @returns ground area, in ft² or m² as `unit` is
 * @throws SprayMathError `conflict` where the boundary crosses or touches itself (the path is the corner where the crossing
 * side starts, the message says where they meet), `too-few`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit` or
 * `wrong-dimension`
 *
 * @example
 * ```ts
 * import { boundaryArea } from "swath-to-spoon/area";
 *
 * const corners = [[0, 0], [200, 0], [200, 120], [80, 150], [0, 90]] as const;
 * console.log(boundaryArea({ corners, unit: "ft" })); // { value: 25800, unit: 'ft2', of: 'ground' }
 * ```
 */
export function boundaryArea(input: BoundaryInput): GroundArea {
  const { twice, unit } = checkedBoundary(input);
  const { length, area } = unitsLike(unit);
  const inLength = convertValue(Math.abs(twice) / 2, unit, length);
  return madeGround(convertValue(inLength, unit, length), area);
}

/**
 * The working of {@link boundaryArea}, line by line: the triangles between the first corner and each side, which add up to
 * the same area and are easier to follow by hand.
 *
 * @param input - as for {@link boundaryArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link boundaryArea} does
 *
 * @example
 * ```ts
 * import { boundaryArea } from "swath-to-spoon/working";
 *
 * const lines = boundaryArea({ corners: [[0, 0], [200, 0], [0, 120]], unit: "ft" });
 * console.log(lines.map((line) => line.formula)); // [ '((x2 - x1) * (y3 - y1) - (x3 - x1) * (y2 - y1)) / 2' ]
 * ```
 */
export function boundaryAreaWorking(input: BoundaryInput): WorkingLine[] {
  const result = boundaryArea(input);
  const { corners, twice, unit } = checkedBoundary(input);
  const { length } = unitsLike(unit);
  // Anticlockwise, so that the sum is the area itself and not its opposite.
  const [first, ...others] = corners as [Corner, ...Corner[]];
  const round = [first, ...(twice < 0 ? others.reverse() : others)];
  const triangles = round.slice(2).map((_, k) => {
    const [i, j] = [k + 2, k + 3];
    return `(x${i} - x1) * (y${j} - y1) - (x${j} - x1) * (y${i} - y1)`;
  });
  const inLength = (value: number): number => convertValue(value, unit, length);
  return formulaLines({
    id: "area.boundary",
    formula: `(${triangles.join(" + ")}) / 2`,
    terms: Object.fromEntries(
      round.flatMap(([x, y], k) => [
        [`x${k + 1}`, [{ value: inLength(x), unit: length }, length]],
        [`y${k + 1}`, [{ value: inLength(y), unit: length }, length]],
      ]),
    ),
    result,
    source: "method of coordinates (shoelace formula)",
  });
}

interface CheckedBoundary {
  readonly corners: readonly Corner[];
  readonly twice: number;
  readonly unit: LengthUnit;
}

function checkedBoundary(input: BoundaryInput): CheckedBoundary {
  const { corners: given, unit } = checkedObject(input, "");
  checkLengthUnit(unit);
  const kept = ringCorners(checkedPairs(given, "corners", 3));
  if (kept.length < 3) {
    throw new SprayMathError(
      "too-few",
      "corners",
      `Given ${kept.length} different corners; wanted at least 3, to enclose any ground.`,
    );
  }
  const corners = kept.map(({ corner }) => corner);
  const twice = twiceArea(corners);
  if (!Number.isFinite(twice))
    throw new SprayMathError(
      "not-finite",
      "corners",
      `The corners lie too far apart to compute with in ${unit}.`,
    );
  const crossing = findCrossing(corners);
  if (crossing !== undefined) {
    const place = (i: number): number => (kept[i % kept.length] as { index: number }).index;
    const side = (i: number): string => `the side from corner ${place(i) + 1} to corner ${place(i + 1) + 1}`;
    const [x, y] = crossing.at.map((value) => Number(value.toPrecision(6)));
    throw new SprayMathError(
      "conflict",
      `corners[${place(crossing.second)}]`,
      `Given a boundary that crosses or touches itself at (${x}, ${y}) ${unit}: ${side(crossing.first)} meets ` +
        `${side(crossing.second)}. List the corners in the order in which you walk round the plot.`,
    );
  }
  return { corners, twice, unit };
}

/** Refuses what is not a unit of length. */
export function checkLengthUnit(unit: LengthUnit): void {
  if (unit === undefined || unit === null)
    throw new SprayMathError("missing", "unit", 'Nothing given; wanted a unit of length, such as "ft".');
  if (resolveUnit(unit, "unit").dimension !== "length")
    throw new SprayMathError(
      "wrong-dimension",
      "unit",
      `Given "${unit}"; wanted a unit of length, such as ft.`,
    );
}
