import { AMOUNT, amountsAgree } from "../units/amounts.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { type ObjectField, object, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { basedOr, called, type QuantityField, quantity } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { BasedFraction, Concentration, Mass, Quantity, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** The input of {@link diluteMix}. Both strengths are given in the same way. */
export interface DilutionInput {
  /** The strength that there is. More than 0. */
  readonly from: Concentration | BasedFraction;
  /** The strength to bring it down to, no stronger. More than 0. */
  readonly to: Concentration | BasedFraction;
  /** How much to make of it. More than 0. */
  readonly volume: Volume;
}

/* @__NO_SIDE_EFFECTS__ */
function strength(sentence: string): QuantityField<Concentration | BasedFraction> {
  const examples = {
    us: { value: 2, unit: "fl_oz/gal" },
    imperial: { value: 2, unit: "imp_fl_oz/imp_gal" },
    metric: { value: 5, unit: "mL/L" },
  } as const;
  return called(basedOr(sentence, ["volumeConcentration", "density"], ["v/v", "w/v"]), "strength", examples);
}

const DILUTION: ObjectField<DilutionInput> = object<DilutionInput>(
  {
    from: strength("The strength that there is. More than 0."),
    to: strength("The strength to bring it down to, no stronger. More than 0."),
    volume: quantity("How much to make of it. More than 0.", "volume"),
  },
  [strengthsFit],
);

function areAlike(a: Quantity, b: Quantity): boolean {
  return dimensionOf(a.unit) === dimensionOf(b.unit);
}

function basisOf(strength: Concentration | BasedFraction): string | undefined {
  return "basis" in strength ? strength.basis : undefined;
}

/** Notes strengths that are given in two ways, and a weaker one that is the stronger. */
export function strengthsFit({ from, to }: Partly<DilutionInput>, check: Check): void {
  if (from === undefined || to === undefined) return;
  const sameBasis = basisOf(from) === basisOf(to);
  if (!sameBasis || !areAlike(from, to))
    check.fault(
      sameBasis ? "wrong-dimension" : "conflict",
      "strengths-differ",
      sameBasis ? "to" : "to.basis",
      "One strength is in {from.unit}, the other in {to.unit}. Enter both in the same way.",
      { from: basisOf(from) ?? from.unit, to: basisOf(to) ?? to.unit },
    );
  else if (moreThan(inUnit(to, from.unit), from.value))
    check.fault(
      "conflict",
      "stronger-than-source",
      "to",
      "{to} is stronger than {from}, and water only weakens a mix. Enter a lower strength.",
      { from, to },
    );
}

/** How a dilution is made up. */
export interface Dilution {
  /** How much to take of what there is. */
  readonly take: Volume;
  /** The water that makes it up to the volume. */
  readonly water: Volume;
}

/** What a dilution takes. Trusts its input. */
export function dilutionOf({ from, to, volume: whole }: DilutionInput): Dilution {
  const { volume: unit } = unitsLike(whole.unit);
  const volume = inUnit(whole, unit);
  const take = Math.min(volume, (volume * inUnit(to, from.unit)) / from.value);
  return { take: { value: take, unit }, water: { value: volume - take, unit } };
}

/**
 * Returns how to bring a solution down to a lower strength.
 *
 * Formula: take = volume × to / from (C₁V₁ = C₂V₂); water = volume − take, volumes taken to add up. Source: the
 * dissolved amount stays the same, by definition of strength.
 *
 * @param input - more than 0 each; `to` no stronger than `from`, given in the same way and by volume
 * @returns volumes in gal, `imp_gal` or L, by the volume's system; `take` within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or
 * `conflict`
 *
 * @example
 * ```ts
 * import { diluteMix } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(diluteMix({ from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") }).take); // { value: 1, unit: 'L' }
 * ```
 */
export function diluteMix(input: DilutionInput): Dilution {
  return dilutionOf(checked(input, DILUTION));
}

const SOURCE = "C1 * V1 = C2 * V2: the dissolved amount stays the same";

/**
 * The working of {@link diluteMix}.
 *
 * @param input - as for {@link diluteMix}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link diluteMix} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { diluteMix } from "swath-to-spoon/working";
 *
 * const lines = diluteMix({ from: qty(50, "mL/L"), to: qty(5, "mL/L"), volume: qty(10, "L") });
 * console.log(lines[0]?.formula, lines[0]?.result); // volume * to / from { value: 1, unit: 'L' }
 * ```
 */
export function diluteMixWorking(input: DilutionInput): WorkingLine[] {
  return linesOfDilution(checked(input, DILUTION));
}

/** The working of {@link dilutionOf}. Trusts its input. */
export function linesOfDilution(given: DilutionInput): WorkingLine[] {
  const { from, to, volume } = given;
  const { take, water } = dilutionOf(given);
  return [
    ...formulaLines({
      id: "tank-mix.take",
      formula: "volume * to / from",
      terms: { volume: [volume, take.unit], to: [to, from.unit], from: [from, from.unit] },
      result: take,
      source: SOURCE,
    }),
    {
      id: "tank-mix.dilutionWater",
      formula: "volume - take",
      terms: { volume: { value: inUnit(volume, take.unit), unit: take.unit }, take },
      result: water,
      source: SOURCE,
    },
  ];
}

/** The input of {@link stockFor}. */
export interface StockInput {
  /** The product that the stock solution is made with. More than 0. */
  readonly amount: Volume | Mass;
  /** What it is made up to with water. More than 0. */
  readonly volume: Volume;
  /** The product that is to go into the tank, not over what the stock holds. More than 0. */
  readonly dose: Volume | Mass;
}

const STOCK: ObjectField<StockInput> = object<StockInput>(
  {
    amount: quantity("The product that the stock solution is made with. More than 0.", AMOUNT),
    volume: quantity("What it is made up to with water. More than 0.", "volume"),
    dose: quantity("The product that is to go into the tank, not over what the stock holds. More than 0.", [
      "volume",
      "mass",
    ]),
  },
  [doseFits, stockFits],
);

function doseFits({ amount, dose }: Partly<StockInput>, check: Check): void {
  amountsAgree([amount, dose], () => "dose", check);
  if (amount === undefined || dose === undefined || !areAlike(amount, dose)) return;
  if (moreThan(inUnit(dose, amount.unit), amount.value))
    check.fault(
      "conflict",
      "dose-over-stock",
      "dose",
      "A stock made with {amount} can't give a dose of {dose}. Enter a smaller dose or make more stock.",
      { amount, dose },
    );
}

function stockFits({ amount, volume }: Partly<StockInput>, check: Check): void {
  if (amount === undefined || volume === undefined || !areAlike(amount, volume)) return;
  if (moreThan(inUnit(amount, volume.unit), volume.value))
    check.fault(
      "conflict",
      "stock-overfull",
      "volume",
      "{volume} is less than the {amount} of product in it. Enter the total after adding water.",
      { amount, volume },
    );
}

function stockOf({ amount, volume: whole, dose }: StockInput): Volume {
  const { smallVolume: unit } = unitsLike(whole.unit);
  const volume = inUnit(whole, unit);
  return { value: Math.min(volume, (volume * inUnit(dose, amount.unit)) / amount.value), unit };
}

/**
 * Returns how much of a stock solution carries a dose too small to measure by itself. Only where the label permits diluting
 * first, and used up the same day: what a stock solution does in storage is not known.
 *
 * Formula: stock = volume × dose / amount. Source: C₁V₁ = C₂V₂, the dissolved amount stays the same.
 *
 * @param input - more than 0 each; the dose no more than the amount, the amount no more than what it is made up to
 * @returns the stock solution to measure, in `fl_oz`, `imp_fl_oz` or mL by the volume's system; within 8 ulp of the exact value
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
  return stockOf(checked(input, STOCK));
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
  const given = checked(input, STOCK);
  const { amount, volume, dose } = given;
  const result = stockOf(given);
  return formulaLines({
    id: "tank-mix.stock",
    formula: "volume * dose / amount",
    terms: { volume: [volume, result.unit], dose: [dose, amount.unit], amount: [amount, amount.unit] },
    result,
    source: SOURCE,
  });
}
