import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { dimensionInWords } from "../units/dimensions.js";
import { checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import { unitsLike } from "../units/systems.js";
import type { BasedFraction, Concentration, Mass, Quantity, Unit, Volume } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import { checkedAmount } from "./amount.js";

/** What {@link dilute} is given. Both strengths are told in the same way. */
export interface DilutionInput {
  /** The strength that there is. */
  readonly from: Concentration | BasedFraction;
  /** The strength that is wanted, not over `from`. */
  readonly to: Concentration | BasedFraction;
  /** How much is wanted of it. */
  readonly volume: Volume;
}

/** How a dilution is made up. */
export interface Dilution {
  /** How much to take of what there is. */
  readonly take: Volume;
  /** The water that makes it up to the volume. */
  readonly water: Volume;
}

interface Terms {
  readonly from: number;
  readonly to: number;
  readonly volume: number;
  readonly unit: "gal" | "imp_gal" | "L";
}

function termsOf(input: DilutionInput): Terms {
  const { from, to, volume } = checkedObject(input, "");
  checkedStrength(from, "from");
  checkedStrength(to, "to");
  if ((from as BasedFraction).basis !== (to as BasedFraction).basis) {
    throw new SprayMathError(
      "conflict",
      "to.basis",
      `Given strengths told ${told(from)} and ${told(to)}; wanted both told in the same way.`,
    );
  }
  const wanted = inUnit<Unit>(to as Quantity, from.unit, "to");
  if (moreThan(wanted, from.value)) {
    throw new SprayMathError(
      "conflict",
      "to",
      `Given ${to.value} ${to.unit} out of ${from.value} ${from.unit}; wanted no stronger than what there is: water only weakens.`,
    );
  }
  inUnit(volume, "gal", "volume");
  const { volume: unit } = unitsLike(volume.unit);
  return { from: from.value, to: wanted, volume: inUnit(volume, unit, "volume"), unit };
}

const STRENGTHS = ["volumeConcentration", "density", "fraction"];

function checkedStrength(strength: Concentration | BasedFraction, path: string): void {
  checkShape(strength, path);
  const { dimension } = resolveUnit(strength.unit, `${path}.unit`);
  if (!STRENGTHS.includes(dimension)) {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given ${strength.value} ${strength.unit}, ${dimensionInWords(dimension)}; wanted a strength, such as mL/L, g/L or % with a basis.`,
    );
  }
  if (dimension === "fraction" && (strength as BasedFraction).basis === undefined) {
    throw new SprayMathError(
      "missing",
      `${path}.basis`,
      `Given ${strength.value} ${strength.unit} that does not say what it is a part of; wanted a basis: "v/v" or "w/v".`,
    );
  }
  if ((strength as BasedFraction).basis === "w/w") {
    throw new SprayMathError(
      "wrong-dimension",
      `${path}.basis`,
      'Given a strength by weight; wanted one by volume, "v/v" or "w/v", since what is measured out is a volume.',
    );
  }
  inUnit<Unit>(strength as Quantity, strength.unit, path);
}

function told(strength: Concentration | BasedFraction): string {
  return (strength as BasedFraction).basis ?? strength.unit;
}

/**
 * How to bring a solution down to a lower strength.
 *
 * Formula: take = volume × to / from (C₁V₁ = C₂V₂); water = volume − take, volumes taken to add up. Source: the
 * dissolved amount stays the same, by definition of strength.
 *
 * @param input - more than 0 each; `to` no stronger than `from`, told in the same way and by volume
 * @returns volumes in gal, imp_gal or L, by the volume's system; `take` within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or
 * `conflict`
 *
 * @example
 * ```ts
 * import { dilute } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(dilute({ from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") }).take); // { value: 1, unit: 'L' }
 * ```
 */
export function dilute(input: DilutionInput): Dilution {
  const { from, to, volume, unit } = termsOf(input);
  const take = Math.min(volume, (volume * to) / from);
  return { take: { value: take, unit }, water: { value: volume - take, unit } };
}

const SOURCE = "C1 * V1 = C2 * V2: the dissolved amount stays the same";

/**
 * The working of {@link dilute}.
 *
 * @param input - as for {@link dilute}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link dilute} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { dilute } from "swath-to-spoon/working";
 *
 * const lines = dilute({ from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") });
 * console.log(lines[0]?.formula, lines[0]?.result); // volume * to / from { value: 1, unit: 'L' }
 * ```
 */
export function diluteWorking(input: DilutionInput): WorkingLine[] {
  const { to, volume, unit } = termsOf(input);
  const { take, water } = dilute(input);
  const whole: Quantity = { value: volume, unit };
  return [
    ...conversionLines("tank-mix.take.to", input.to, input.from.unit),
    ...conversionLines("tank-mix.take.volume", input.volume, unit),
    {
      id: "tank-mix.take",
      formula: "volume * to / from",
      terms: { volume: whole, to: { value: to, unit: input.from.unit }, from: input.from },
      result: take,
      source: SOURCE,
    },
    {
      id: "tank-mix.dilutionWater",
      formula: "volume - take",
      terms: { volume: whole, take },
      result: water,
      source: SOURCE,
    },
  ];
}

/** What {@link stockFor} is given. */
export interface StockInput {
  /** The product that the stock solution is made with. */
  readonly amount: Volume | Mass;
  /** What it is made up to with water. */
  readonly volume: Volume;
  /** The product that is wanted in the tank, not over `amount`. */
  readonly dose: Volume | Mass;
}

function stockTerms(input: StockInput): {
  readonly dose: number;
  readonly volume: number;
  readonly unit: "fl_oz" | "imp_fl_oz" | "mL";
} {
  const { amount, volume, dose } = checkedObject(input, "");
  const dimension = checkedAmount(amount, "amount");
  const wanted = inUnit<Unit>(dose as Quantity, amount.unit, "dose");
  if (moreThan(wanted, amount.value)) {
    throw new SprayMathError(
      "conflict",
      "dose",
      `Given ${dose.value} ${dose.unit} out of a stock made with ${amount.value} ${amount.unit}; wanted no more than is in it.`,
    );
  }
  inUnit(volume, "gal", "volume");
  const { smallVolume: unit } = unitsLike(volume.unit);
  const made = inUnit(volume, unit, "volume");
  if (dimension === "volume" && moreThan(inUnit(amount as Volume, unit, "amount"), made)) {
    throw new SprayMathError(
      "conflict",
      "volume",
      `Given ${amount.value} ${amount.unit} made up to ${volume.value} ${volume.unit}; wanted the larger volume to make it up to.`,
    );
  }
  return { dose: wanted, volume: made, unit };
}

/**
 * How much of a stock solution carries a dose too small to measure by itself. Only where the label permits diluting
 * first, and used up the same day: what a stock solution does in storage is not known.
 *
 * Formula: stock = volume × dose / amount. Source: C₁V₁ = C₂V₂, the dissolved amount stays the same.
 *
 * @param input - more than 0 each; the dose no more than the amount, the amount no more than what it is made up to
 * @returns the stock solution to measure, in fl_oz, imp_fl_oz or mL by the volume's system; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or
 * `conflict`
 *
 * @example
 * ```ts
 * import { stockFor } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(stockFor({ amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(0.5, "mL") })); // { value: 50, unit: 'mL' }
 * ```
 */
export function stockFor(input: StockInput): Volume {
  const { dose, volume, unit } = stockTerms(input);
  return { value: Math.min(volume, (volume * dose) / input.amount.value), unit };
}

/**
 * The working of {@link stockFor}.
 *
 * @param input - as for {@link stockFor}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link stockFor} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stockFor } from "swath-to-spoon/working";
 *
 * const lines = stockFor({ amount: qty(10, "mL"), volume: qty(1, "L"), dose: qty(0.5, "mL") });
 * console.log(lines.at(-1)?.formula); // volume * dose / amount
 * ```
 */
export function stockForWorking(input: StockInput): WorkingLine[] {
  const { dose, volume, unit } = stockTerms(input);
  const { amount } = input;
  return [
    ...conversionLines("tank-mix.stock.dose", input.dose, amount.unit),
    ...conversionLines("tank-mix.stock.volume", input.volume, unit),
    {
      id: "tank-mix.stock",
      formula: "volume * dose / amount",
      terms: { volume: { value: volume, unit }, dose: { value: dose, unit: amount.unit }, amount },
      result: stockFor(input),
      source: SOURCE,
    },
  ];
}
