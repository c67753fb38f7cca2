import { SprayMathError } from "../errors.js";
import { compareDecided } from "./decide.js";
import { checkedList, inUnit } from "./guard.js";
import { resolveUnit } from "./resolve.js";
import { checkNumber, checkShape, type Marked, remade } from "./shape.js";
import type {
  BasedFraction,
  DimensionOf,
  GroundArea,
  Quantity,
  TreatedArea,
  Unit,
  UnitLike,
} from "./types.js";

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

/** Nothing more to ask of a type where `D` is one dimension; not to be met where it is several. */
type OnlyOne<D, All = D> = D extends unknown ? ([All] extends [D] ? unknown : never) : never;

/**
 * The sum of quantities of one dimension, in the unit of the first. Areas of one kind give an area of that kind,
 * fractions of one basis a fraction of that basis; treated area and ground area do not add up, nor do per cent by volume
 * and per cent by weight.
 *
 * @param quantities - at least one quantity
 * @returns the sum; for amounts of one sign within 8 ulp of the exact value, however many there are
 * @throws SprayMathError `too-few` for an empty list, `wrong-area` for areas of different kinds, `conflict` for fractions
 *   of different bases, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { qty, sum } from "swath-to-spoon/units";
 *
 * console.log(sum([qty(1, "gal"), qty(64, "fl_oz")])); // { value: 1.5, unit: 'gal' }
 * ```
 */
export function sum(quantities: readonly TreatedArea[]): TreatedArea;
export function sum(quantities: readonly GroundArea[]): GroundArea;
export function sum(quantities: readonly BasedFraction[]): BasedFraction;
export function sum<U extends Unit>(
  quantities: readonly Quantity<U>[] & OnlyOne<DimensionOf<U>>,
): Quantity<U>;
export function sum(quantities: readonly Quantity[]): Quantity {
  const list = checkedList<Marked>(quantities, "quantities");
  const first = list[0] as Marked;
  checkShape(first, "quantities[0]");
  // Neumaier's compensated summation: the error does not grow with the length of the list.
  let total = 0;
  let lost = 0;
  for (const [i, quantity] of list.entries()) {
    const value = inUnit(quantity as never, first.unit, `quantities[${i}]`, "any");
    checkSameKind(first, quantity, `quantities[${i}]`);
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return finite(first, total + lost);
}

function checkSameKind(first: Marked, other: Marked, path: string): void {
  if (first.of !== other.of) {
    const [wanted, given] = [first, other].map(({ of }) => (of === undefined ? "plain area" : `${of} area`));
    throw new SprayMathError(
      "wrong-area",
      path,
      `Given ${given} to add to ${wanted}; wanted areas of one kind only.`,
    );
  }
  checkSameBasis(first, other, path);
}

function checkSameBasis(first: Marked, other: Marked, path: string): void {
  if (first.basis !== other.basis) {
    const [wanted, given] = [first, other].map(({ unit, basis }) => `${unit} ${basis ?? "without a basis"}`);
    throw new SprayMathError(
      "conflict",
      path,
      `Given ${given} beside ${wanted}; wanted both by volume (v/v) or both by weight (w/v, w/w).`,
    );
  }
}

/**
 * A quantity taken a number of times. An area keeps what it is an area of, a fraction what it is a part of.
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
export function scale(quantity: TreatedArea, times: number): TreatedArea;
export function scale(quantity: GroundArea, times: number): GroundArea;
export function scale(quantity: BasedFraction, times: number): BasedFraction;
export function scale<U extends Unit>(quantity: Quantity<U>, times: number): Quantity<U>;
export function scale(quantity: Marked, times: number): Quantity {
  checkShape(quantity, "quantity");
  checkNumber(times, "times");
  return finite(quantity, quantity.value * times);
}

/**
 * How many times `b` goes into `a`.
 *
 * @param a - any quantity
 * @param b - a quantity of the same dimension, not zero
 * @returns the bare number a / b
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` where
 *   `b` is zero, or `conflict` for fractions of different bases
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
  const divisor = inUnit(b as never, a.unit, "b", "any");
  checkSameBasis(a, b as Marked, "b");
  if (divisor === 0)
    throw new SprayMathError(
      "out-of-range",
      "b",
      `Given ${b.value} ${b.unit}; wanted anything but 0 to divide by.`,
    );
  return finite({ value: 1, unit: "1" }, a.value / divisor).value;
}

/**
 * Whether `a` is less than (−1), the same as (0) or more than (1) `b`. Amounts that differ by less than one part in
 * 10^12 are the same, so that the noise of floating-point arithmetic never makes two equal amounts differ.
 *
 * @param a - any quantity
 * @param b - a quantity of the same dimension
 * @returns −1, 0 or 1
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, or `conflict` for
 *   fractions of different bases
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
  const right = inUnit(b as never, a.unit, "b", "any");
  checkSameBasis(a, b as Marked, "b");
  return compareDecided(a.value, right);
}

function finite(like: Marked, value: number): Quantity {
  if (!Number.isFinite(value)) {
    throw new SprayMathError("not-finite", "", `The result is too large to be told in ${like.unit}.`);
  }
  // Adding 0 turns -0 into 0.
  return remade(like, value + 0, like.unit);
}
