import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Mass, Time, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { amountList, refuseNoWater, waterIn } from "./mix-loads.js";

/** The input of {@link jarTest}. */
export interface JarTestInput {
  /** How much finished mix the jar is to hold; leave room to shake. More than 0. */
  readonly jar: Volume;
  /** The mix in the tank. More than 0. */
  readonly mix: Volume;
  /** Each product's amount in that mix, in the order of mixing. More than 0 each. */
  readonly amounts: readonly (Volume | Mass)[];
  /** How long the jar stands before it is judged. 15 minutes unless given (Utah Pests News, winter 2012, "Using a Jar Test"). */
  readonly stand?: Time | undefined;
}

const JAR_TEST: ObjectField<JarTestInput> = object<JarTestInput>(
  {
    jar: quantity("How much finished mix the jar is to hold; leave room to shake. More than 0.", "volume"),
    mix: quantity("The mix in the tank. More than 0.", "volume"),
    amounts: amountList("Each product's amount in that mix, in the order of mixing. More than 0 each.", 1),
    stand: optional(
      quantity(
        'How long the jar stands before it is judged. 15 minutes unless given (Utah Pests News, winter 2012, "Using a Jar Test").',
        "time",
      ),
    ),
  },
  [
    ({ jar, mix }, check) => {
      if (jar === undefined || mix === undefined || !moreThan(inUnit(jar, mix.unit), mix.value)) return;
      check.fault(
        "conflict",
        "jar-over-mix",
        "jar",
        "A jar of {jar} is larger than the mix of {mix}. Use a smaller jar, or check the units.",
        { jar, mix },
      );
    },
  ],
);

/** The amounts for a jar. */
export interface JarTest {
  /** Each product's amount, in the order given. */
  readonly amounts: readonly (Volume | Mass)[];
  /** The water: the jar's mix less the liquid products. Take it from the source that fills the tank. */
  readonly water: Volume;
  /** How long the jar stands before it is judged. */
  readonly stand: Time;
}

// The unit of an amount in the jar: the small measures of the jar's system.
function unitInJar(jar: Volume, amount: Volume | Mass): Volume["unit"] | Mass["unit"] {
  const { smallVolume, smallMass } = unitsLike(jar.unit);
  return dimensionOf(amount.unit) === "volume" ? smallVolume : smallMass;
}

function jarTestOf({ jar, mix, amounts, stand = { value: 15, unit: "min" } }: JarTestInput): JarTest {
  refuseNoWater(mix, amounts, "amounts");
  const { smallVolume } = unitsLike(jar.unit);
  const held = inUnit(jar, smallVolume);
  const whole = inUnit(mix, smallVolume);
  const shares = amounts.map((amount) => {
    const unit = unitInJar(jar, amount);
    return { value: (inUnit(amount, unit) * held) / whole, unit } as Volume | Mass;
  });
  return { amounts: shares, water: waterIn({ value: held, unit: smallVolume }, shares), stand };
}

/**
 * Returns the amounts for a jar that shows whether products mix, in the tank's own proportions.
 *
 * Formula: amount in the jar = amount in the tank × jar / mix. Source: GRDC, Spray Application GrowNotes Manual, module
 * 7.5 (2025): product and water in the ratio of the field rates. Some guides give fixed spoons per jar instead, which
 * test a mix other than the one to be sprayed. A jar shows whether products mix, not whether they harm the crop.
 *
 * @param input - more than 0 each; a jar no larger than the mix
 * @returns amounts in `fl_oz`, `imp_fl_oz` or mL, and oz or g, by the jar's system; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range`,
 * `too-few`, or `conflict` where the products leave no room for water
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
  return jarTestOf(checked(input, JAR_TEST));
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
  const given = checked(input, JAR_TEST);
  const { jar, mix, amounts } = given;
  const { smallVolume } = unitsLike(jar.unit);
  const { amounts: shares } = jarTestOf(given);
  return amounts.flatMap((amount, i) =>
    formulaLines({
      id: "tank-mix.jarAmount",
      formula: "amount * jar / mix",
      terms: {
        amount: [amount, unitInJar(jar, amount)],
        jar: [jar, smallVolume],
        mix: [mix, smallVolume],
      },
      result: shares[i] as Volume | Mass,
      source: "GRDC, Spray Application GrowNotes Manual, module 7.5 (2025)",
    }),
  );
}
