import { SprayMathError } from "../errors.js";
import { checkedList, checkedObject, inUnit } from "../units/guard.js";
import { checkShape } from "../units/shape.js";
import type { Mass, Quantity, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { checkedAmount } from "./amount.js";
import type { Load } from "./loads.js";
import { rescaled, scaled, shareOf, unscaled } from "./scaled.js";

/** What {@link productInLoads} is given. */
export interface ProductInLoadsInput<A extends Volume | Mass = Volume | Mass> {
  /** The product in the whole mix. */
  readonly amount: A;
  /** The loads that the mix is parted into. */
  readonly loads: readonly Load[];
}

/** A product's amount in each load. */
export interface ProductInLoads<A extends Volume | Mass = Volume | Mass> {
  /** One entry a load, in the order of the loads. They add up to `total` exactly, as the decimals they print as. */
  readonly amounts: readonly A[];
  /** The product in the whole mix, rounded down to 11 significant digits. */
  readonly total: A;
}

/**
 * Shares a product out over the loads, so that each gets the same strength.
 *
 * Formula: amount in a load = amount × carrier of the load / carrier of all loads. What has gone in by the end of each
 * load is rounded to the 11th significant digit of the total, one digit coarser than the carriers, so that their last
 * digit never moves a dose; the total is rounded down, so that it is never more than the amount given (the noise past
 * the 14th digit aside). Source: the same strength in every load, by definition of the rate.
 *
 * @param input - an amount more than 0, and at least one load with a carrier more than 0
 * @returns the amounts in the amount's own unit
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` or
 * `too-few`
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
  const { amount, loads } = checkedObject(input, "");
  return shareOut(amount, "amount", carriersGone(loads));
}

/** One product over loads whose carriers are summed up already. */
export function shareOut<A extends Volume | Mass>(
  amount: A,
  path: string,
  gone: readonly number[],
): ProductInLoads<A> {
  const total = totalUnits(amount, path);
  const whole = gone[gone.length - 1] as number;
  const toAmount = (units: number): A => ({ value: unscaled(units, total.exponent), unit: amount.unit }) as A;
  let before = 0;
  const amounts = gone.map((carrier) => {
    const by = shareOf(total.units, carrier, whole);
    const here = toAmount(by - before);
    before = by;
    return here;
  });
  return { amounts, total: toAmount(total.units) };
}

function totalUnits(
  amount: Volume | Mass,
  path: string,
): { readonly units: number; readonly exponent: number } {
  checkedAmount(amount, path);
  // The noise of the chain ends before the 14th digit; rounding down past it would turn 12 into 11.9999999999.
  const fine = scaled(amount.value, 14);
  const exponent = fine.exponent + 3;
  return { units: rescaled(fine, exponent, "floor"), exponent };
}

/** The carrier gone in by the end of each load, in whole units of the sum's 12th digit. */
export function carriersGone(loads: readonly Load[]): number[] {
  checkedList(loads, "loads");
  const carriers = loads.map((load, i) => {
    const { carrier } = checkedObject(load, `loads[${i}]`);
    checkShape(carrier, `loads[${i}].carrier`);
    return inUnit(carrier, (loads[0] as Load).carrier.unit, `loads[${i}].carrier`);
  });
  const sum = carriers.reduce((a, b) => a + b, 0);
  if (!Number.isFinite(sum)) {
    throw new SprayMathError(
      "not-finite",
      "loads",
      "Given loads that are too large together to compute with.",
    );
  }
  const { exponent } = scaled(sum, 12);
  let gone = 0;
  return carriers.map((carrier) => {
    const { units, exponent: own } = scaled(carrier, 12);
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
  const { amount, loads } = checkedObject(input, "");
  const { amounts } = productInLoads(input);
  const { unit } = (loads[0] as Load).carrier;
  const carriers = loads.map((load) => inUnit(load.carrier, unit, "carrier"));
  const total: Quantity = { value: carriers.reduce((a, b) => a + b, 0), unit };
  return amounts.map((_, i) => {
    const carrier = carriers[i] as number;
    return {
      id: "tank-mix.amountInLoad",
      formula: "amount * carrier / total",
      terms: { amount, carrier: { value: carrier, unit }, total },
      result: { value: (amount.value * carrier) / total.value, unit: amount.unit },
      source: "the same strength in every load, by definition of the rate",
    };
  });
}
