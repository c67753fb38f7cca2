import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { type ListField, list, type ObjectField, object } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Mass, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { LOAD, type Load, MOST_LOADS } from "./loads.js";
import { rescaled, type Scaled, scaled, shareOf, unscaled } from "./scaled.js";

/** The input of {@link productInLoads}. */
export interface ProductInLoadsInput<A extends Volume | Mass = Volume | Mass> {
  /** The product in the whole mix. More than 0. */
  readonly amount: A;
  /** The loads that the mix is split into, at least one. */
  readonly loads: readonly Load[];
}

/** The loads of one mix. */
export const LOAD_LIST: ListField<Load> = list("The loads that the mix is split into, at least one.", LOAD, {
  most: MOST_LOADS,
});

const PRODUCT_IN_LOADS: ObjectField<ProductInLoadsInput> = object<ProductInLoadsInput>({
  amount: quantity("The product in the whole mix. More than 0.", ["volume", "mass"]),
  loads: LOAD_LIST,
});

/** A product's amount in each load. */
export interface ProductInLoads<A extends Volume | Mass = Volume | Mass> {
  /** One entry a load, in the order of the loads. They add up to `total` exactly, as the decimals they print as. */
  readonly amounts: readonly A[];
  /** The product in the whole mix, rounded down to 11 significant digits; for loads on marks, what they add up to. */
  readonly total: A;
}

/**
 * Shares a product out over the loads, so that each gets the same strength.
 *
 * Formula: amount in a load = amount × carrier of the load / carrier of all loads. What has gone in by the end of each load is
 * rounded to the 11th significant digit of the total, one digit coarser than the carriers. Their last digit then never moves a
 * dose. The total is rounded down, so that it is never more than the amount given (the noise past the 14th digit aside).
 * Where every load has a mark, each amount is rounded down by itself, to 11 digits: loads that are alike get the same.
 * Source: the same strength in every load, by definition of the rate.
 *
 * @param input - an amount more than 0, and at least one load with a carrier more than 0
 * @returns the amounts in the amount's own unit
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension`,
 * `out-of-range` or `too-few`
 *
 * @example
 * ```ts
 * import { productInLoads, splitLoads } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { loads } = splitLoads({ total: qty(10, "gal"), tank: qty(4, "gal"), split: "full-then-part" });
 * const { amounts } = productInLoads({ amount: qty(12, "fl_oz"), loads });
 * console.log(amounts.map((amount) => amount.value)); // [ 4.8, 4.8, 2.4 ]
 * ```
 */
export function productInLoads<A extends Volume | Mass>(input: ProductInLoadsInput<A>): ProductInLoads<A> {
  const { amount, loads } = checked<ProductInLoadsInput>(input, PRODUCT_IN_LOADS);
  return sharedBy(loads)(amount as A);
}

/** Shares products out over loads, which are summed up once. Trusts its input. */
export function sharedBy(loads: readonly Load[]): <A extends Volume | Mass>(amount: A) => ProductInLoads<A> {
  if (loads.every(({ mark }) => mark !== undefined)) {
    const carriers = carriersIn(loads);
    return (amount) => shareToMarks(amount, carriers);
  }
  const gone = carriersGone(loads);
  return (amount) => shareOut(amount, gone);
}

/** One product over loads that end on marks: each by itself. */
function shareToMarks<A extends Volume | Mass>(
  { value, unit }: A,
  carriers: readonly Volume[],
): ProductInLoads<A> {
  const whole = carriers.reduce((sum, carrier) => sum + carrier.value, 0);
  // No finer than what the sum of them can be written with.
  const finest = scaled(value, 15).exponent;
  const shares = carriers.map((carrier) => roundedDown((value * carrier.value) / whole, finest));
  const exponent = shares.reduce((least, share) => Math.min(least, share.exponent), Number.POSITIVE_INFINITY);
  const total = shares.reduce((sum, share) => sum + rescaled(share, exponent, "floor"), 0);
  const toAmount = (share: Scaled): A => ({ value: unscaled(share.units, share.exponent), unit }) as A;
  return { amounts: shares.map(toAmount), total: toAmount({ units: total, exponent }) };
}

/** An amount of product as loads have it: rounded down to 11 digits, and no finer than a power of ten. */
function roundedDown(value: number, finest: number): Scaled {
  // The noise of the chain ends before the 14th digit; rounding down past it would turn 12 into 11.9999999999.
  const fine = scaled(value, 14);
  const exponent = Math.max(fine.exponent + 3, finest);
  return { units: rescaled(fine, exponent, "floor"), exponent };
}

/** The product in one load that ends on a mark. */
export function doseOnMark<A extends Volume | Mass>(amount: A): A {
  const { units, exponent } = roundedDown(amount.value, Number.NEGATIVE_INFINITY);
  return { value: unscaled(units, exponent), unit: amount.unit } as A;
}

/** One product over loads whose carriers are summed up already. */
function shareOut<A extends Volume | Mass>(amount: A, gone: readonly number[]): ProductInLoads<A> {
  const { units, exponent } = roundedDown(amount.value, Number.NEGATIVE_INFINITY);
  const whole = gone[gone.length - 1] as number;
  const toAmount = (share: number): A => ({ value: unscaled(share, exponent), unit: amount.unit }) as A;
  let before = 0;
  const amounts = gone.map((carrier) => {
    const by = shareOf(units, carrier, whole);
    const here = toAmount(by - before);
    before = by;
    return here;
  });
  return { amounts, total: toAmount(units) };
}

// The carriers in one unit: the first load's. A mark is exact, where its carrier is rounded to decimals.
function carriersIn(loads: readonly Load[]): Volume[] {
  const { unit } = (loads[0] as Load).carrier;
  return loads.map(({ carrier, mark = carrier }) => ({ value: inUnit(mark, unit), unit }));
}

/** The mix of all loads. Trusts its input. */
export function wholeMix(loads: readonly Load[]): Volume {
  const carriers = carriersIn(loads);
  return { value: carriers.reduce((sum, { value }) => sum + value, 0), unit: (carriers[0] as Volume).unit };
}

/** The carrier gone in by the end of each load, in whole units of the sum's 12th digit. Trusts its input. */
function carriersGone(loads: readonly Load[]): number[] {
  const { exponent } = scaled(wholeMix(loads).value, 12);
  let gone = 0;
  return carriersIn(loads).map(({ value }) => {
    const { units, exponent: own } = scaled(value, 12);
    // No load is more than all of them: its own last digit is never the coarser one.
    gone += Math.round(units / 10 ** (exponent - own));
    return gone;
  });
}

/**
 * The working of {@link productInLoads}: one line a load, before the amounts are rounded to decimals.
 *
 * @param input - as for {@link productInLoads}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link productInLoads} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { productInLoads } from "swath-to-spoon/working";
 *
 * const loads = [{ carrier: qty(4, "gal") }, { carrier: qty(2, "gal") }];
 * const lines = productInLoads({ amount: qty(12, "fl_oz"), loads });
 * console.log(lines[1]?.formula, lines[1]?.result); // amount * carrier / total { value: 4, unit: 'fl_oz' }
 * ```
 */
export function productInLoadsWorking(input: ProductInLoadsInput): WorkingLine[] {
  const { amount, loads } = checked(input, PRODUCT_IN_LOADS);
  return productInLoadsLines(amount, loads);
}

/** The lines of one product over the loads. Trusts its input. */
export function productInLoadsLines(amount: Volume | Mass, loads: readonly Load[]): WorkingLine[] {
  const total = wholeMix(loads);
  return carriersIn(loads).map((carrier) => ({
    id: "tank-mix.amountInLoad",
    formula: "amount * carrier / total",
    terms: { amount, carrier, total },
    result: { value: (amount.value * carrier.value) / total.value, unit: amount.unit },
    source: "the same strength in every load, by definition of the rate",
  }));
}
