import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { count, joined, type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { groundArea, quantity } from "../units/quantity-field.js";
import { groundOf, positive, positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** Ground planted in rows. */
export interface RowLengthInput {
  /** The ground: one acre or one hectare for the length per acre or hectare. More than 0. */
  readonly ground: GroundArea;
  /** The distance from one row to the next. More than 0. */
  readonly rowSpacing: Length;
}

const ROWS: ObjectField<RowLengthInput> = object<RowLengthInput>({
  ground: groundArea("The ground: one acre or one hectare for the length per acre or hectare. More than 0."),
  rowSpacing: quantity("The distance from one row to the next. More than 0.", "length"),
});

/**
 * Returns the length of all rows on a piece of ground: the row length per acre or hectare, where the ground is one acre or hectare.
 *
 * Formula: length = ground / row spacing (plane geometry; at 30 inches an acre has 17,424 feet of row: Planting
 * considerations and stand assessments, Penn State Extension).
 *
 * @param input - the ground and the row spacing
 * @returns the length of all rows together, in ft or m like `ground`
 * @throws SprayMathError `wrong-area`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { groundArea, rowLengthOn } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(rowLengthOn({ ground: groundArea(qty(1, "ac")), rowSpacing: qty(30, "in") })); // { value: 17424, unit: 'ft' }
 * ```
 */
export function rowLengthOn(input: RowLengthInput): Length {
  return lengthOfRows(checked(input, ROWS));
}

/** The length of row on a plot. Trusts its input. */
function lengthOfRows({ ground, rowSpacing }: RowLengthInput): Length {
  const { length, area } = unitsLike(ground.unit);
  return positiveIn(inUnit(ground, area) / inUnit(rowSpacing, length), length);
}

/**
 * The working of {@link rowLengthOn}, line by line.
 *
 * @param input - as for {@link rowLengthOn}
 * @returns the lines; the last one's result is the length
 * @throws SprayMathError as {@link rowLengthOn} does
 *
 * @example
 * ```ts
 * import { groundArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 * import { rowLengthOn } from "swath-to-spoon/working";
 *
 * const lines = rowLengthOn({ ground: groundArea(qty(1, "ha")), rowSpacing: qty(75, "cm") });
 * console.log(lines.at(-1)?.formula); // ground / rowSpacing
 * ```
 */
export function rowLengthOnWorking(input: RowLengthInput): WorkingLine[] {
  const given = checked(input, ROWS);
  const result = lengthOfRows(given);
  const { length, area } = unitsLike(given.ground.unit);
  return formulaLines({
    id: "area.rowLength",
    formula: "ground / rowSpacing",
    terms: { ground: [given.ground, area], rowSpacing: [given.rowSpacing, length] },
    result,
    source: "plane geometry",
  });
}

/** Ground planted in rows, with the plants at one distance in the row. */
export interface PlantCountInput extends RowLengthInput {
  /** The distance from one plant to the next in the row. More than 0. */
  readonly plantSpacing: Length;
}

const PLANTS: ObjectField<PlantCountInput> = /* @__PURE__ */ joined(
  ROWS,
  object<Omit<PlantCountInput, keyof RowLengthInput>>({
    plantSpacing: quantity("The distance from one plant to the next in the row. More than 0.", "length"),
  }),
);

/**
 * Returns the number of plants on a piece of ground: plants per acre or hectare, where the ground is one acre or hectare.
 *
 * Formula: plants = ground / (row spacing × plant spacing) (The Farm and Garden Rule-Book, L. H. Bailey, which has 7,260 to
 * the acre at 2 by 3 feet). The ground is taken as planted to its margin.
 *
 * @param input - the ground and the two spacings
 * @returns the number of plants, not rounded
 * @throws SprayMathError `wrong-area`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { groundArea, plantCount } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const acre = groundArea(qty(1, "ac"));
 * console.log(plantCount({ ground: acre, rowSpacing: qty(3, "ft"), plantSpacing: qty(2, "ft") })); // 7260
 * ```
 */
export function plantCount(input: PlantCountInput): number {
  return plantsOn(checked(input, PLANTS));
}

/** The plants on a plot. Trusts its input. */
function plantsOn({ ground, rowSpacing, plantSpacing }: PlantCountInput): number {
  const { length, area } = unitsLike(ground.unit);
  return positive(inUnit(ground, area) / (inUnit(rowSpacing, length) * inUnit(plantSpacing, length)));
}

/**
 * The working of {@link plantCount}, line by line.
 *
 * @param input - as for {@link plantCount}
 * @returns the lines; the last one's result is the number of plants
 * @throws SprayMathError as {@link plantCount} does
 *
 * @example
 * ```ts
 * import { groundArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 * import { plantCount } from "swath-to-spoon/working";
 *
 * const ground = groundArea(qty(1, "ha"));
 * const lines = plantCount({ ground, rowSpacing: qty(75, "cm"), plantSpacing: qty(20, "cm") });
 * console.log(lines.at(-1)?.formula); // ground / (rowSpacing * plantSpacing)
 * ```
 */
export function plantCountWorking(input: PlantCountInput): WorkingLine[] {
  const given = checked(input, PLANTS);
  const result = plantsOn(given);
  const { length, area } = unitsLike(given.ground.unit);
  return formulaLines({
    id: "area.plantCount",
    formula: "ground / (rowSpacing * plantSpacing)",
    terms: {
      ground: [given.ground, area],
      rowSpacing: [given.rowSpacing, length],
      plantSpacing: [given.plantSpacing, length],
    },
    result,
    source: "The Farm and Garden Rule-Book, L. H. Bailey",
  });
}

/** Plants in rows, at one distance in the row. */
export interface PlantedGroundInput {
  /** The number of plants. A whole number, 1 or more. */
  readonly plants: number;
  /** The distance from one row to the next. More than 0. */
  readonly rowSpacing: Length;
  /** The distance from one plant to the next in the row. More than 0. */
  readonly plantSpacing: Length;
}

const PLANTED: ObjectField<PlantedGroundInput> = /* @__PURE__ */ object<PlantedGroundInput>({
  plants: count("The number of plants. A whole number, 1 or more."),
  rowSpacing: quantity("The distance from one row to the next. More than 0.", "length"),
  plantSpacing: quantity("The distance from one plant to the next in the row. More than 0.", "length"),
});

/**
 * Returns the ground that a number of trees, vines or plants stands on: the reverse of {@link plantCount}. For an orchard whose trees
 * are easier to count than its ground is to measure.
 *
 * Formula: ground = plants × row spacing × plant spacing (How to calculate the tree-hectares or tree-acres in an orchard, Cider
 * orcharding news page, 2010). Headlands are not counted.
 *
 * @param input - the plants and the two spacings
 * @returns the ground, in ft² or m² like the row spacing
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { plantedGround } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const trees = { plants: 300, rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") };
 * console.log(plantedGround(trees)); // { value: 6000, unit: 'm2', of: 'ground' }
 * ```
 */
export function plantedGround(input: PlantedGroundInput): GroundArea {
  return groundOfPlants(checked(input, PLANTED));
}

/** The ground that plants stand on. Trusts its input. */
export function groundOfPlants(
  { plants, rowSpacing, plantSpacing }: PlantedGroundInput,
  at = "",
): GroundArea {
  const { length, area } = unitsLike(rowSpacing.unit);
  return groundOf(plants * inUnit(rowSpacing, length) * inUnit(plantSpacing, length), area, at);
}

/**
 * The working of {@link plantedGround}, line by line.
 *
 * @param input - as for {@link plantedGround}
 * @returns the lines; the last one's result is the ground
 * @throws SprayMathError as {@link plantedGround} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { plantedGround } from "swath-to-spoon/working";
 *
 * const trees = { plants: 300, rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") };
 * console.log(plantedGround(trees).at(-1)?.formula); // plants * rowSpacing * plantSpacing
 * ```
 */
export function plantedGroundWorking(input: PlantedGroundInput): WorkingLine[] {
  const given = checked(input, PLANTED);
  const { length } = unitsLike(given.rowSpacing.unit);
  return formulaLines({
    id: "area.plantedGround",
    formula: "plants * rowSpacing * plantSpacing",
    terms: {
      plants: given.plants,
      rowSpacing: [given.rowSpacing, length],
      plantSpacing: [given.plantSpacing, length],
    },
    result: groundOfPlants(given),
    source: "plane geometry",
  });
}
