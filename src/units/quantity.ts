import { SprayMathError } from "../errors.js";
import { convert, valueIn } from "./convert.js";
import { checkedList } from "./guard.js";
import { resolveUnit } from "./resolve.js";
import { checkNumber, checkShape } from "./shape.js";
import type { Quantity, Unit, UnitLike } from "./types.js";

/**
 * Makes a quantity: a number with its unit.
 *
 * @param value - any finite number; `-0` becomes `0`
 * @param unit - any unit
 * @returns plain data, `{ value, unit }`
 * @throws SprayMathError `not-finite`, `not-a-quantity` (a number as text) or `unknown-unit`
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(qty(200, "ft")); // { value: 200, unit: 'ft' }
 * ```
 */
export function qty<U extends Unit>(value: number, unit: U): Quantity<U> {
  checkNumber(value, "value");
  resolveUnit(unit, "unit");
  return { value: value + 0, unit };
}

/**
 * The sum of quantities of one dimension, in the unit of the first.
 *
 * @param quantities - at least one quantity
 * @returns the sum; for amounts of one sign within 8 ulp of the exact value, however many there are
 * @throws SprayMathError `too-few` for an empty list, or what {@link convert} throws
 *
 * @example
 * ```ts
 * import { qty, sum } from "swath-to-spoon/units";
 *
 * console.log(sum([qty(1, "gal"), qty(64, "fl_oz")])); // { value: 1.5, unit: 'gal' }
 * ```
 */
export function sum<U extends Unit>(
  quantities: readonly [Quantity<U>, ...Quantity<UnitLike<U>>[]] | readonly Quantity<U>[],
): Quantity<U> {
  const list = checkedList<Quantity>(quantities as readonly Quantity[], "quantities");
  const first = list[0] as Quantity<U>;
  checkShape(first, "quantities[0]");
  // Neumaier's compensated summation: the error does not grow with the length of the list.
  let total = 0;
  let lost = 0;
  for (const quantity of list) {
    const value = valueIn(quantity, first.unit as never);
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return finite(total + lost, first.unit);
}

/**
 * A quantity taken a number of times.
 *
 * @param quantity - any quantity
 * @param times - any finite number
 * @returns the product, in the same unit
 * @throws SprayMathError `not-a-quantity` or `not-finite`
 *
 * @example
 * ```ts
 * import { qty, scale } from "swath-to-spoon/units";
 *
 * console.log(scale(qty(1.5, "gal"), 3)); // { value: 4.5, unit: 'gal' }
 * ```
 */
export function scale<U extends Unit>(quantity: Quantity<U>, times: number): Quantity<U> {
  checkShape(quantity, "quantity");
  checkNumber(times, "times");
  return finite(quantity.value * times, quantity.unit);
}

/**
 * How many times `b` goes into `a`.
 *
 * @param a - any quantity
 * @param b - a quantity of the same dimension, not zero
 * @returns the bare number a / b
 * @throws SprayMathError `wrong-dimension`, `not-a-quantity`, `not-finite`, or `out-of-range` where `b` is zero
 *
 * @example
 * ```ts
 * import { qty, ratio } from "swath-to-spoon/units";
 *
 * console.log(ratio(qty(1, "gal"), qty(1, "qt"))); // 4
 * ```
 */
export function ratio<U extends Unit>(a: Quantity<U>, b: Quantity<UnitLike<U>>): number {
  checkShape(a, "a");
  checkShape(b, "b");
  const divisor = valueIn(b as Quantity, a.unit as never);
  if (divisor === 0)
    throw new SprayMathError(
      "out-of-range",
      "b",
      `Given ${b.value} ${b.unit}; wanted anything but 0 to divide by.`,
    );
  return finite(a.value / divisor, a.unit).value;
}

/**
 * Whether `a` is less than (−1), the same as (0) or more than (1) `b`. Both are rounded to 12 significant digits first,
 * so that the noise of floating-point arithmetic never makes two equal amounts differ.
 *
 * @param a - any quantity
 * @param b - a quantity of the same dimension
 * @returns −1, 0 or 1
 * @throws SprayMathError `wrong-dimension`, `not-a-quantity` or `not-finite`
 *
 * @example
 * ```ts
 * import { compare, qty } from "swath-to-spoon/units";
 *
 * console.log(compare(qty(3, "tsp"), qty(1, "tbsp"))); // 0
 * ```
 */
export function compare<U extends Unit>(a: Quantity<U>, b: Quantity<UnitLike<U>>): -1 | 0 | 1 {
  checkShape(a, "a");
  checkShape(b, "b");
  const left = Number(a.value.toPrecision(12));
  const right = Number((convert(b as Quantity, a.unit as never) as Quantity).value.toPrecision(12));
  if (left === right) return 0;
  return left < right ? -1 : 1;
}

function finite<U extends Unit>(value: number, unit: U): Quantity<U> {
  if (!Number.isFinite(value))
    throw new SprayMathError("not-finite", "", `The result is too large to be told in ${unit}.`);
  return { value, unit };
}
