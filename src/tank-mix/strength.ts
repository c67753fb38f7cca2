import { checkedObject, inUnit } from "../units/guard.js";
import type { Fraction, Mass, Volume } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import { checkedAmount } from "./amount.js";

/** What {@link strengthOf} is given. */
export interface DilutedMix<A extends Volume | Mass = Volume | Mass> {
  /** The mix as it should be, product and all. */
  readonly mix: Volume;
  /** Water that went in besides, without product. */
  readonly addedWater: Volume;
  /** The product in `mix`, to learn how much is lacking. */
  readonly product?: A;
}

/** How strong a mix is against what it should be. */
export interface MixStrength<A extends Volume | Mass = Volume | Mass> {
  /** What is left of the strength, in per cent; 100 where nothing was added. */
  readonly strength: Fraction;
  /** By how much the mix is weak, in per cent of what it should be. */
  readonly weakBy: Fraction;
  /** The product that would bring the mix back to strength, where the product was given. */
  readonly lacking?: A;
}

interface Terms {
  readonly mix: number;
  readonly added: number;
}

function termsOf(input: DilutedMix): Terms {
  const { mix, addedWater } = checkedObject(input, "");
  inUnit(mix, "gal", "mix");
  return { mix: mix.value, added: inUnit(addedWater, mix.unit, "addedWater", "nonnegative") };
}

/**
 * How weak a mix is after water was added without product: the plants get less than the label's rate, and what did not
 * work is easily taken for resistance.
 *
 * Formula: strength = mix / (mix + added water); weak by = added water / (mix + added water); lacking = product × added
 * water / mix. Source: the product stays the same while the volume grows, by definition of strength.
 *
 * @param input - mix more than 0, added water 0 or more
 * @returns per cent of the strength it should have, within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
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
  const { mix, added } = termsOf(input);
  const { product } = input;
  const whole = mix + added;
  const shares: MixStrength<A> = {
    strength: { value: (100 * mix) / whole, unit: "%" },
    weakBy: { value: (100 * added) / whole, unit: "%" },
  };
  if (product === undefined) return shares;
  checkedAmount(product, "product");
  return { ...shares, lacking: { value: (product.value * added) / mix, unit: product.unit } as A };
}

const SOURCE = "the product stays the same while the volume grows, by definition of strength";

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
  const { mix, added } = termsOf(input);
  const { strength, weakBy, lacking } = strengthOf(input);
  const terms = { mix: { value: mix, unit: input.mix.unit }, added: { value: added, unit: input.mix.unit } };
  const product = input.product;
  return [
    ...conversionLines("tank-mix.strengthLeft.added", input.addedWater, input.mix.unit),
    ...(product === undefined || lacking === undefined
      ? []
      : [
          {
            id: "tank-mix.lacking",
            formula: "product * added / mix",
            terms: { product, ...terms },
            result: lacking,
            source: SOURCE,
          },
        ]),
    {
      id: "tank-mix.strengthLeft",
      formula: "100 * mix / (mix + added)",
      terms,
      result: strength,
      source: SOURCE,
    },
    { id: "tank-mix.weakBy", formula: "100 * added / (mix + added)", terms, result: weakBy, source: SOURCE },
  ];
}
