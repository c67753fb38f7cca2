import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { checkedList, checkedObject, inUnit } from "../units/guard.js";
import { unitsLike } from "../units/systems.js";
import type { Mass, MassUnit, Quantity, Time, Unit, Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import { checkedAmount } from "./amount.js";

/** What {@link jarTest} is given. */
export interface JarTestInput {
  /** How much finished mix the jar is to hold; leave room to shake. */
  readonly jar: Volume;
  /** The mix in the tank. */
  readonly mix: Volume;
  /** Each product's amount in that mix, in the order of mixing. */
  readonly amounts: readonly (Volume | Mass)[];
  /** How long the jar stands before it is judged. 15 minutes unless given (Utah Pests News, winter 2012, "Using a Jar Test"). */
  readonly stand?: Time;
}

/** What goes into the jar. */
export interface JarTest {
  /** Each product's amount, in the order given. */
  readonly amounts: readonly (Volume | Mass)[];
  /** The water: the jar's mix less the liquid products. Take it from the source that fills the tank. */
  readonly water: Volume;
  /** How long the jar stands before it is judged. */
  readonly stand: Time;
}

interface Terms {
  readonly jar: number;
  readonly jarUnit: VolumeUnit;
  readonly mix: number;
}

function termsOf(input: JarTestInput): Terms {
  const { jar, mix } = checkedObject(input, "");
  inUnit(jar, "gal", "jar");
  const { smallVolume: jarUnit } = unitsLike(jar.unit);
  const held = inUnit(jar, jarUnit, "jar");
  const whole = inUnit(mix, jarUnit, "mix");
  if (moreThan(held, whole)) {
    throw new SprayMathError(
      "conflict",
      "jar",
      `Given a jar of ${jar.value} ${jar.unit} for a mix of ${mix.value} ${mix.unit}; wanted a jar smaller than the mix.`,
    );
  }
  return { jar: held, jarUnit, mix: whole };
}

function amountTerms(
  amount: Volume | Mass,
  jarUnit: VolumeUnit,
  path: string,
): { value: number; unit: VolumeUnit | MassUnit } {
  const dimension = checkedAmount(amount, path);
  const unit = dimension === "volume" ? jarUnit : unitsLike(jarUnit).smallMass;
  return { value: inUnit<Unit>(amount as Quantity, unit, path), unit };
}

/**
 * What goes into a jar to try out whether products mix, in the tank's own proportions.
 *
 * Formula: amount in the jar = amount in the tank × jar / mix. Source: GRDC, Spray Application GrowNotes Manual, module
 * 7.5 (2025): product and water in the ratio of the field rates. Some guides give fixed spoons per jar instead, which
 * test a mix other than the one to be sprayed. A jar shows whether products mix, not whether they harm the crop.
 *
 * @param input - more than 0 each; a jar no larger than the mix
 * @returns amounts in fl_oz, imp_fl_oz or mL, and oz or g, by the jar's system; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range`,
 * `too-few`, or `conflict` where the products are more than the jar
 *
 * @example
 * ```ts
 * import { jarTest } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const jar = jarTest({ jar: qty(0.7, "L"), mix: qty(70, "L"), amounts: [qty(2, "L")] });
 * console.log(jar.amounts); // [ { value: 20, unit: 'mL' } ]
 * console.log(jar.water); // { value: 680, unit: 'mL' }
 * ```
 */
export function jarTest(input: JarTestInput): JarTest {
  const { jar, jarUnit, mix } = termsOf(input);
  const amounts = checkedList(input.amounts, "amounts").map((amount, i) => {
    const { value, unit } = amountTerms(amount, jarUnit, `amounts[${i}]`);
    return { value: (value * jar) / mix, unit } as Volume | Mass;
  });
  const liquids = amounts.reduce((sum, { value, unit }) => (unit === jarUnit ? sum + value : sum), 0);
  if (moreThan(liquids, jar)) {
    throw new SprayMathError(
      "conflict",
      "amounts",
      "Given more liquid product than mix; wanted the products' amounts in the whole mix. Check their units.",
    );
  }
  const { stand = { value: 15, unit: "min" } } = input;
  inUnit(stand, "min", "stand");
  return { amounts, water: { value: Math.max(0, jar - liquids), unit: jarUnit }, stand };
}

/**
 * The working of {@link jarTest}: one line a product.
 *
 * @param input - as for {@link jarTest}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link jarTest} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { jarTest } from "swath-to-spoon/working";
 *
 * const lines = jarTest({ jar: qty(700, "mL"), mix: qty(70, "L"), amounts: [qty(800, "mL")] });
 * console.log(lines.at(-1)?.formula, lines.at(-1)?.result); // amount * jar / mix { value: 8, unit: 'mL' }
 * ```
 */
export function jarTestWorking(input: JarTestInput): WorkingLine[] {
  const { jar, jarUnit, mix } = termsOf(input);
  const { amounts } = jarTest(input);
  return [
    ...conversionLines("tank-mix.jarAmount.jar", input.jar, jarUnit),
    ...conversionLines("tank-mix.jarAmount.mix", input.mix, jarUnit),
    ...input.amounts.flatMap((amount, i) => {
      const { value, unit } = amountTerms(amount, jarUnit, `amounts[${i}]`);
      return [
        ...conversionLines("tank-mix.jarAmount.amount", amount, unit),
        {
          id: "tank-mix.jarAmount",
          formula: "amount * jar / mix",
          terms: {
            amount: { value, unit },
            jar: { value: jar, unit: jarUnit },
            mix: { value: mix, unit: jarUnit },
          },
          result: amounts[i] as Volume | Mass,
          source: "GRDC, Spray Application GrowNotes Manual, module 7.5 (2025)",
        },
      ];
    }),
  ];
}
