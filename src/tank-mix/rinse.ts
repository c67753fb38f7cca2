import { checkedCount, checkedObject, inUnit } from "../units/guard.js";
import { unitsLike } from "../units/systems.js";
import type { Fraction, Quantity, Volume } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";

/** What {@link rinse} is given. */
export interface RinseInput {
  /** What stays in tank, pump, hoses and boom when the sprayer runs dry. */
  readonly residual: Volume;
  /** The clean water of one rinse. */
  readonly water: Volume;
  /** How many rinses, each sprayed out before the next; a whole number, 1 or more. */
  readonly rinses: number;
}

/** What rinsing leaves behind. */
export interface Rinse {
  /** The strength of what stays in the sprayer, in per cent of the mix's. */
  readonly strength: Fraction;
  /** The clean water of all rinses: spray it on ground where the label allows the product. */
  readonly water: Volume;
}

interface Terms {
  readonly residual: number;
  readonly water: number;
  readonly unit: "gal" | "imp_gal" | "L";
}

function termsOf(input: RinseInput): Terms {
  const { residual, water, rinses } = checkedObject(input, "");
  inUnit(residual, "gal", "residual");
  checkedCount(rinses, "rinses");
  const { volume: unit } = unitsLike(residual.unit);
  return { residual: inUnit(residual, unit, "residual"), water: inUnit(water, unit, "water"), unit };
}

/**
 * What a number of rinses leaves behind. Several small rinses leave less than one large rinse with the same water. The
 * area that the rinse water treats is {@link leftoverArea}'s to say; it must not bring a place over its rate.
 *
 * Formula: strength = (residual / (residual + water)) ^ rinses. Source: the residual mixes with the water of each rinse,
 * and the same volume stays; perfect mixing is assumed, and deposits on walls and in filters are not counted.
 *
 * @param input - volumes more than 0; rinses a whole number, 1 or more
 * @returns the strength within 8 ulp of the exact value for each rinse; volumes in gal, imp_gal or L by the residual's system
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { rinse } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const three = rinse({ residual: qty(1, "L"), water: qty(9, "L"), rinses: 3 });
 * console.log(three.strength.value.toFixed(1), three.water); // 0.1 { value: 27, unit: 'L' }
 * ```
 */
export function rinse(input: RinseInput): Rinse {
  const { residual, water, unit } = termsOf(input);
  const { rinses } = input;
  return {
    strength: { value: 100 * (residual / (residual + water)) ** rinses, unit: "%" },
    water: { value: water * rinses, unit },
  };
}

/**
 * The working of {@link rinse}.
 *
 * @param input - as for {@link rinse}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link rinse} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rinse } from "swath-to-spoon/working";
 *
 * const lines = rinse({ residual: qty(1, "L"), water: qty(9, "L"), rinses: 3 });
 * console.log(lines[0]?.formula); // 100 * (residual / (residual + water)) ^ rinses
 * ```
 */
export function rinseWorking(input: RinseInput): WorkingLine[] {
  const { residual, water, unit } = termsOf(input);
  const { strength } = rinse(input);
  const quantity = (value: number): Quantity => ({ value, unit });
  return [
    ...conversionLines("tank-mix.rinse.residual", input.residual, unit),
    ...conversionLines("tank-mix.rinse.water", input.water, unit),
    {
      id: "tank-mix.rinse",
      formula: "100 * (residual / (residual + water)) ^ rinses",
      terms: { residual: quantity(residual), water: quantity(water), rinses: input.rinses },
      result: strength,
      source: "the residual mixes with the water of each rinse, and the same volume stays",
    },
  ];
}
