import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { count, type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Fraction, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** The input of {@link rinseTank}. */
export interface RinseInput {
  /** What stays in tank, pump, hoses and boom when the sprayer runs dry. More than 0. */
  readonly residual: Volume;
  /** The clean water of one rinse. More than 0. */
  readonly water: Volume;
  /** How many rinses, each sprayed out before the next. A whole number, 1 or more. */
  readonly rinses: number;
}

const RINSE: ObjectField<RinseInput> = object<RinseInput>({
  residual: quantity(
    "What stays in tank, pump, hoses and boom when the sprayer runs dry. More than 0.",
    "volume",
  ),
  water: quantity("The clean water of one rinse. More than 0.", "volume"),
  rinses: count("How many rinses, each sprayed out before the next. A whole number, 1 or more."),
});

/** What rinsing leaves behind. */
export interface Rinse {
  /** The strength of what stays in the sprayer, in percent of the mix's. */
  readonly strength: Fraction;
  /** The clean water of all rinses: spray it on ground where the label allows the product. */
  readonly water: Volume;
}

/**
 * Returns what a number of rinses leaves behind. Several small rinses leave less than one large rinse with the same water. The
 * area that the rinse water treats is given by {@link leftoverArea}; it must not bring a place over its rate.
 *
 * Formula: strength = (residual / (residual + water)) ^ rinses. Source: the residual mixes with the water of each rinse,
 * and the same volume stays; perfect mixing is assumed, and deposits on walls and in filters are not counted.
 *
 * @param input - volumes more than 0; rinses a whole number, 1 or more
 * @returns the strength within 8 ulp of the exact value for each rinse; volumes in gal, `imp_gal` or L by the residual's system
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { rinseTank } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const three = rinseTank({ residual: qty(1, "L"), water: qty(9, "L"), rinses: 3 });
 * console.log(three.strength.value.toFixed(1), three.water); // 0.1 { value: 27, unit: 'L' }
 * ```
 */
export function rinseTank(input: RinseInput): Rinse {
  return rinseOf(checked(input, RINSE));
}

function rinseOf({ residual: left, water: clean, rinses }: RinseInput): Rinse {
  const { volume: unit } = unitsLike(left.unit);
  const residual = inUnit(left, unit);
  const water = inUnit(clean, unit);
  return {
    strength: { value: 100 * (residual / (residual + water)) ** rinses, unit: "%" },
    water: { value: water * rinses, unit },
  };
}

/**
 * The working of {@link rinseTank}.
 *
 * @param input - as for {@link rinseTank}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link rinseTank} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rinseTank } from "swath-to-spoon/working";
 *
 * const lines = rinseTank({ residual: qty(1, "L"), water: qty(9, "L"), rinses: 3 });
 * console.log(lines[0]?.formula); // 100 * (residual / (residual + water)) ^ rinses
 * ```
 */
export function rinseTankWorking(input: RinseInput): WorkingLine[] {
  const given = checked(input, RINSE);
  const { residual, water, rinses } = given;
  const { volume } = unitsLike(residual.unit);
  return formulaLines({
    id: "tank-mix.rinse",
    formula: "100 * (residual / (residual + water)) ^ rinses",
    terms: { residual: [residual, volume], water: [water, volume], rinses },
    result: rinseOf(given).strength,
    source: "the residual mixes with the water of each rinse, and the same volume stays",
  });
}
