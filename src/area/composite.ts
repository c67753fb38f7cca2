import { joinPath } from "../errors.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { list, type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { sumOf } from "../units/quantity.js";
import { groundArea } from "../units/quantity-field.js";
import { groundOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Area, GroundArea } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** A plot made up of shapes, with shapes taken out of it. */
export interface CompositeInput {
  /** The shapes that are added up; they must not overlap. */
  readonly add: readonly GroundArea[];
  /** The shapes that are cut out. */
  readonly subtract?: readonly GroundArea[] | undefined;
}

/** More shapes than any plot has. */
export const MOST_SHAPES = 1000;

const COMPOSITE: ObjectField<CompositeInput> = /* @__PURE__ */ object<CompositeInput>({
  add: list("The shapes that are added up; they must not overlap.", groundArea("A shape."), {
    most: MOST_SHAPES,
  }),
  subtract: optional(
    list("The shapes that are cut out.", groundArea("A shape."), { least: 0, most: MOST_SHAPES }),
  ),
});

/**
 * Returns the ground area of a plot made up of several shapes, with others cut out of it: a field with a pond.
 *
 * Formula: sum of the shapes added − sum of the shapes taken out. The rounding error is within 8 ulp of the sum of all
 * areas given, whatever their units; where they all have one unit, within 8 ulp of the result.
 *
 * @param input - the shapes to add and to take out, up to 1000 of each, in any units of area
 * @returns ground area, in ft² or m² like the first shape
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
  return groundOfComposite(checked(input, COMPOSITE));
}

/** The ground of shapes added up and cut out. Trusts its input. */
export function groundOfComposite({ add, subtract = [] }: CompositeInput, at = ""): GroundArea {
  const [{ unit }] = add as readonly [GroundArea];
  const areas = (shapes: readonly GroundArea[], sign: 1 | -1): Area[] =>
    shapes.map((one) => ({ value: sign * inUnit(one, unit), unit }));
  const added = sumOf(areas(add, 1));
  const taken = sumOf([{ value: 0, unit }, ...areas(subtract, 1)]);
  if (!moreThan(added.value, taken.value))
    throw refusal(
      "conflict",
      "no-ground-left",
      joinPath(at, "subtract"),
      "You can't cut {taken} out of {added}. Some ground must be left.",
      { taken, added },
    );
  const { area } = unitsLike(unit);
  return groundOf(inUnit(sumOf([...areas(add, 1), ...areas(subtract, -1)]), area), area, at);
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
  return linesOfComposite(checked(input, COMPOSITE));
}

/** The working of {@link groundOfComposite}. Trusts its input. */
export function linesOfComposite({ add, subtract = [] }: CompositeInput): WorkingLine[] {
  const result = groundOfComposite({ add, subtract });
  const terms: Record<string, GivenTerm> = {};
  for (const [i, one] of add.entries()) terms[`x${i + 1}`] = [one, result.unit];
  for (const [i, one] of subtract.entries()) terms[`y${i + 1}`] = [one, result.unit];
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
