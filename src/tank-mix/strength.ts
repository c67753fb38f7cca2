import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import type { Fraction, Mass, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** The input of {@link strengthOf}. */
export interface DilutedMix<A extends Volume | Mass = Volume | Mass> {
  /** The mix as it should be, product and all. More than 0. */
  readonly mix: Volume;
  /** Water that went in besides, without product. 0 or more. */
  readonly addedWater: Volume;
  /** The product in the mix, to learn how much is lacking. More than 0. */
  readonly product?: A | undefined;
}

const DILUTED: ObjectField<DilutedMix> = object<DilutedMix>({
  mix: quantity("The mix as it should be, product and all. More than 0.", "volume"),
  addedWater: quantity("Water that went in besides, without product. 0 or more.", "volume", "nonnegative"),
  product: optional(
    quantity("The product in the mix, to learn how much is lacking. More than 0.", ["volume", "mass"]),
  ),
});

/** How strong a mix is against what it should be. */
export interface MixStrength<A extends Volume | Mass = Volume | Mass> {
  /** What is left of the strength, in percent; 100 where nothing was added. */
  readonly strength: Fraction;
  /** By how much the mix is weak, in percent of what it should be. */
  readonly weakBy: Fraction;
  /** The product that would bring the mix back to strength, where the product was given. */
  readonly lacking?: A | undefined;
}

/** How weak a mix is after water was added. Trusts its input. */
export function mixStrengthOf({ mix: { value: mix, unit }, addedWater, product }: DilutedMix): MixStrength {
  const added = inUnit(addedWater, unit);
  const whole = mix + added;
  return {
    strength: { value: (100 * mix) / whole, unit: "%" },
    weakBy: { value: (100 * added) / whole, unit: "%" },
    ...(product && { lacking: { ...product, value: (product.value * added) / mix } }),
  };
}

/**
 * Returns how weak a mix is after water was added without product: the plants get less than the label's rate, and what did not
 * work is easily taken for resistance.
 *
 * Formula: strength = mix / (mix + added water); weak by = added water / (mix + added water); lacking = product × added
 * water / mix. Source: the product stays the same while the volume grows, by definition of strength.
 *
 * @param input - mix more than 0, added water 0 or more
 * @returns percent of the strength it should have, within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { strengthOf } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const weak = strengthOf({ mix: qty(3, "gal"), addedWater: qty(1, "gal"), product: qty(6, "fl_oz") });
 * console.log(weak.weakBy); // { value: 25, unit: '%' }
 * console.log(weak.lacking); // { value: 2, unit: 'fl_oz' }
 * ```
 */
export function strengthOf<A extends Volume | Mass>(input: DilutedMix<A>): MixStrength<A> {
  return mixStrengthOf(checked<DilutedMix>(input, DILUTED)) as MixStrength<A>;
}

/**
 * The working of {@link strengthOf}: what is left of the strength, and by how much the mix is weak.
 *
 * @param input - as for {@link strengthOf}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link strengthOf} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { strengthOf } from "swath-to-spoon/working";
 *
 * const lines = strengthOf({ mix: qty(3, "gal"), addedWater: qty(1, "gal") });
 * console.log(lines.at(-1)?.formula); // 100 * added / (mix + added)
 * ```
 */
export function strengthOfWorking(input: DilutedMix): WorkingLine[] {
  const given = checked(input, DILUTED);
  const { mix, addedWater, product } = given;
  const { strength, weakBy, lacking } = mixStrengthOf(given);
  const source = "the product stays the same while the volume grows, by definition of strength";
  const added = { value: inUnit(addedWater, mix.unit), unit: mix.unit };
  return [
    ...formulaLines({
      id: "tank-mix.strengthLeft",
      formula: "100 * mix / (mix + added)",
      terms: { mix: [mix, mix.unit], added: [addedWater, mix.unit] },
      result: strength,
      source,
    }),
    ...(lacking === undefined
      ? []
      : [
          {
            id: "tank-mix.lacking",
            formula: "product * added / mix",
            terms: { product: product as Volume | Mass, added, mix },
            result: lacking,
            source,
          },
        ]),
    {
      id: "tank-mix.weakBy",
      formula: "100 * added / (mix + added)",
      terms: { mix, added },
      result: weakBy,
      source,
    },
  ];
}
