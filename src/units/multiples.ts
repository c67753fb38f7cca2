import { isUnit } from "./resolve.js";
import type { Quantity, SimpleUnit, Unit } from "./types.js";

/** A unit that is a round number of another, taken apart: `1000ft2` is 1000 of `ft2`. */
export function multipleOf(unit: Unit): { readonly count: number; readonly of: SimpleUnit } | undefined {
  const match = /^(\d+)(\D.*)$/.exec(unit);
  return match === null ? undefined : { count: Number(match[1]), of: match[2] as SimpleUnit };
}

/** The unit that is `count` of another, where the table has one. */
export function multiple(count: number, of: Unit): SimpleUnit | undefined {
  if (count === 1) return of as SimpleUnit;
  const unit = `${count}${of}`;
  return isUnit(unit) ? (unit as SimpleUnit) : undefined;
}

/**
 * The same amount without a round number in its unit: 2 of `100gal` is 200 gal. "2 × 100 ft" reads as a size of two sides,
 * "2 100 ft" as 2,100 ft.
 */
export function multipliedOut<Q extends Quantity>(quantity: Q): Q {
  const top = multipleOf(quantity.unit);
  return top === undefined ? quantity : { ...quantity, value: quantity.value * top.count, unit: top.of };
}
