import { type Check, checked } from "../units/check.js";
import { convertValue } from "../units/convert.js";
import { list, type ObjectField, object, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { unitOf } from "../units/quantity-field.js";
import { groundOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, LengthUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { CORNER, ringCorners } from "./corners.js";
import { type Corner, findCrossing } from "./crossing.js";
import { twiceArea } from "./shoelace.js";

/** A plot with straight sides, by its corners on a plane. */
export interface BoundaryInput {
  /** The corners in the order they are walked: to the right of, and ahead of, one fixed point. */
  readonly corners: readonly (readonly [x: number, y: number])[];
  /** The one unit of all these numbers. */
  readonly unit: LengthUnit;
}

/** The fields of a boundary. */
export const BOUNDARY: ObjectField<BoundaryInput> = /* @__PURE__ */ object<BoundaryInput>(
  {
    corners: list(
      "The corners in the order they are walked: to the right of, and ahead of, one fixed point.",
      CORNER,
      { least: 3, most: 10_000 },
    ),
    unit: unitOf("The one unit of all these numbers.", "length"),
  },
  [runsRound],
);

/** Notes corners that enclose no ground, and a boundary that crosses or touches itself. */
function runsRound({ corners, unit = "" as LengthUnit }: Partly<BoundaryInput>, check: Check): void {
  if (corners === undefined) return;
  const kept = ringCorners(corners);
  if (kept.length < 3) {
    check.fault(
      "too-few",
      "corners-alike",
      "corners",
      "{count} different {count:one=corner;other=corners} can't enclose any ground. Enter at least {limit}.",
      { count: kept.length, limit: 3 },
    );
    return;
  }
  const crossing = findCrossing(kept.map(({ corner }) => corner));
  if (crossing === undefined) return;
  const { first, second, at } = crossing;
  const place = (i: number): number => (kept[i % kept.length] as { index: number }).index;
  check.fault(
    "conflict",
    "boundary-crosses",
    `corners[${place(second)}]`,
    "The side from corner {a} to corner {b} meets the side from corner {c} to corner {d} at ({x}, {y}) {unit.unit}. " +
      "Enter the corners in the order you walk them.",
    {
      a: place(first) + 1,
      b: place(first + 1) + 1,
      c: place(second) + 1,
      d: place(second + 1) + 1,
      x: at[0],
      y: at[1],
      unit,
    },
  );
}

/**
 * Returns the ground area inside a boundary of straight sides, from its corners on a plane: a tape-and-square survey, a traverse
 * after adjustment, or map coordinates such as UTM. For longitude and latitude use `swath-to-spoon/area/geodesic`.
 *
 * Formula: |Σ xᵢ × yᵢ₊₁ − xᵢ₊₁ × yᵢ| / 2, the method of coordinates or shoelace formula (Open Access Surveying Library,
 * J. A. Mahun, Traverse Computations, chapter G). Corners are pairs of numbers with one unit for all, as a field book or a
 * map grid gives them. Which corner comes first and which way round they run does not matter, and the first may stand again at the
 * end.
 *
 * A boundary that crosses or touches itself is refused, since the formula then takes parts away from one another; a pond
 * is taken out with {@link compositeArea} instead. The time taken grows with n log n.
 *
 * @param input - 3 to 10,000 corners and their unit
 * @returns ground area, in ft² or m² like `unit`
 * @throws SprayMathError `conflict` where the boundary crosses or touches itself (the path is the corner where the crossing
 * side starts, the message says where they meet), `too-few`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`,
 * `wrong-dimension`, or `out-of-range` for more than 10,000 corners or one too far out
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
  return groundOfBoundary(checked(input, BOUNDARY));
}

/** The ground inside a boundary. Trusts its input. */
export function groundOfBoundary({ corners, unit }: BoundaryInput, at = ""): GroundArea {
  const { length, area } = unitsLike(unit);
  const inLength = convertValue(Math.abs(twiceArea(ringOf(corners))) / 2, unit, length);
  return groundOf(convertValue(inLength, unit, length), area, at);
}

function ringOf(corners: BoundaryInput["corners"]): Corner[] {
  return ringCorners(corners).map(({ corner }) => corner);
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
  return linesOfBoundary(checked(input, BOUNDARY));
}

/** The working of {@link groundOfBoundary}. Trusts its input. */
export function linesOfBoundary({ corners, unit }: BoundaryInput): WorkingLine[] {
  const result = groundOfBoundary({ corners, unit });
  const { length } = unitsLike(unit);
  const ring = ringOf(corners);
  // Anticlockwise, so that the sum is the area itself and not its opposite.
  const [first, ...others] = ring as [Corner, ...Corner[]];
  const round = [first, ...(twiceArea(ring) < 0 ? others.reverse() : others)];
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
