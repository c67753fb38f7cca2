import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { areaIn, checkedList, checkedObject, unitsWith } from "../units/guard.js";
import { formulaLines, type GivenTerm } from "../units/lines.js";
import { scale, sum } from "../units/quantity.js";
import type { GroundArea } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { madeGround } from "./made.js";

/** A plot made up of shapes, with shapes taken out of it. */
export interface CompositeInput {
  /** The shapes that make up the plot; at least one. They must not overlap. */
  readonly add: readonly GroundArea[];
  /** What is taken out of it, such as a pond or a yard; may be left out. */
  readonly subtract?: readonly GroundArea[];
}

/**
 * The ground area of a plot made up of several shapes, with others cut out of it: a field with a pond.
 *
 * Formula: sum of the shapes added − sum of the shapes taken out. The rounding error is within 8 ulp of the sum of all
 * areas given, whatever their units; where they all have one unit, within 8 ulp of the result.
 *
 * @param input - the shapes to add and to take out, in any units of area
 * @returns ground area, in ft² or m² as the first shape is told
 * @throws SprayMathError `conflict` where no ground is left, `wrong-area` where a shape is not ground area, `too-few`,
 * `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { circleArea, compositeArea, rectangleArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const field = rectangleArea({ length: qty(100, "m"), width: qty(50, "m") });
 * const pond = circleArea({ diameter: qty(10, "m") });
 * console.log(compositeArea({ add: [field], subtract: [pond] }).value.toFixed(2)); // 4921.46
 * ```
 */
export function compositeArea(input: CompositeInput): GroundArea {
  const { add, subtract, area } = checkedComposite(input);
  const [added, taken] = [sum(add), subtract.length === 0 ? undefined : sum([scale(add[0], 0), ...subtract])];
  if (taken !== undefined && !moreThan(added.value, taken.value)) {
    throw new SprayMathError(
      "conflict",
      "subtract",
      `Given ${taken.value} ${taken.unit} to take out of ${added.value} ${added.unit}; wanted some ground to be left.`,
    );
  }
  const rest = sum([...add, ...subtract.map((one) => scale(one, -1))] as [GroundArea, ...GroundArea[]]);
  return madeGround(convertValue(rest.value, rest.unit, area, "add", "add"), area);
}

/**
 * The working of {@link compositeArea}, line by line.
 *
 * @param input - as for {@link compositeArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link compositeArea} does
 *
 * @example
 * ```ts
 * import { groundArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 * import { compositeArea } from "swath-to-spoon/working";
 *
 * const lines = compositeArea({
 *   add: [groundArea(qty(4000, "m2")), groundArea(qty(900, "m2"))],
 *   subtract: [groundArea(qty(150, "m2"))],
 * });
 * console.log(lines.map((line) => line.formula)); // [ 'x1 + x2 - y1' ]
 * ```
 */
export function compositeAreaWorking(input: CompositeInput): WorkingLine[] {
  const result = compositeArea(input);
  const { add, subtract, area } = checkedComposite(input);
  const terms: Record<string, GivenTerm> = {};
  for (const [i, one] of add.entries()) terms[`x${i + 1}`] = [one, area];
  for (const [i, one] of subtract.entries()) terms[`y${i + 1}`] = [one, area];
  const added = add.map((_, i) => `x${i + 1}`).join(" + ");
  const taken = subtract.map((_, i) => ` - y${i + 1}`).join("");
  return formulaLines({
    id: "area.composite",
    formula: added + taken,
    terms,
    result,
    source: "plane geometry",
  });
}

function checkedComposite(input: CompositeInput): {
  add: readonly [GroundArea, ...GroundArea[]];
  subtract: readonly GroundArea[];
  area: "ft2" | "m2";
} {
  const { add, subtract = [] } = checkedObject(input, "");
  checkedList(add, "add");
  checkedList(subtract, "subtract", 0);
  const { area } = unitsWith(add[0] as GroundArea, "add[0]");
  for (const [i, one] of add.entries()) areaIn(one, "ground", area, `add[${i}]`);
  for (const [i, one] of subtract.entries()) areaIn(one, "ground", area, `subtract[${i}]`);
  return { add: add as readonly [GroundArea, ...GroundArea[]], subtract, area };
}
