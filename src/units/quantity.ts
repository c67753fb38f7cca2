import { type Check, checked } from "./check.js";
import { inUnit } from "./convert.js";
import { compareDecided } from "./decide.js";
import { dimensionOf } from "./dimensions.js";
import { totalOf } from "./exact-total.js";
import { list, number, type ObjectField, object, type Partly } from "./fields.js";
import { type Marked, remade } from "./marks.js";
import { refusal } from "./message.js";
import { anyQuantity, anyUnit, refuseDimension } from "./quantity-field.js";
import { isUnit } from "./resolve.js";
import { finite } from "./result.js";
import type {
  BasedFraction,
  DimensionOf,
  GroundArea,
  Quantity,
  TreatedArea,
  Unit,
  UnitLike,
} from "./types.js";

const NUMBER_AND_UNIT: ObjectField<Quantity> = object<Quantity>({
  value: number("How many; always finite."),
  unit: anyUnit("Of what."),
});

/**
 * Makes a quantity: a number with its unit.
 *
 * @param value - any finite number; `-0` becomes `0`
 * @param unit - any unit
 * @returns plain data, `{ value, unit }`
 * @throws SprayMathError `missing`, `not-finite`, `not-a-quantity` (a number as text) or `unknown-unit`
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(qty(200, "ft")); // { value: 200, unit: 'ft' }
 * ```
 */
export function qty<U extends Unit>(value: number, unit: U): Quantity<U> {
  // This is called for every number of an input: what is right goes the short way.
  if (typeof value === "number" && Number.isFinite(value) && isUnit(unit)) return { value: value + 0, unit };
  return checked({ value, unit }, NUMBER_AND_UNIT) as Quantity<U>;
}

/** Nothing more to ask of a type where `D` is one dimension; not to be met where it is several. */
type OnlyOne<D, All = D> = D extends unknown ? ([All] extends [D] ? unknown : never) : never;

/**
 * Returns the sum of quantities of one dimension, in the unit of the first. Areas of one kind give an area of that kind, fractions of
 * one basis a fraction of that basis. Treated area and ground area do not add up, nor do percent by volume and percent by
 * weight.
 *
 * @param quantities - at least one quantity
 * @returns the sum; for amounts of one sign within 8 ulp of the exact value, however many there are
 * @throws SprayMathError `too-few` for an empty list, `wrong-area` for areas of different kinds, `conflict` for fractions
 *   of different bases, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { qty, sumQuantities } from "swath-to-spoon/units";
 *
 * console.log(sumQuantities([qty(1, "gal"), qty(64, "fl_oz")])); // { value: 1.5, unit: 'gal' }
 * ```
 */
export function sum(quantities: readonly TreatedArea[]): TreatedArea;
export function sum(quantities: readonly GroundArea[]): GroundArea;
export function sum(quantities: readonly BasedFraction[]): BasedFraction;
export function sum<U extends Unit>(
  quantities: readonly Quantity<U>[] & OnlyOne<DimensionOf<U>>,
): Quantity<U>;
export function sum(quantities: readonly Quantity[]): Quantity {
  return sumOf(checked({ quantities }, SUM).quantities);
}

const SUM: ObjectField<{ readonly quantities: readonly Quantity[] }> = object(
  { quantities: list("What is added up.", anyQuantity("A part of the sum.")) },
  [sumsUp],
);

function sumsUp(
  { quantities }: { readonly quantities?: readonly Quantity[] | undefined },
  check: Check,
): void {
  quantities?.forEach((one, i) => {
    noteUnlike(quantities[0] as Quantity, one, `quantities[${i}]`, check);
  });
}

/** The sum of quantities of one kind, in the unit of the first. Trusts its input. */
export function sumOf<Q extends Quantity>(quantities: readonly Q[]): Q {
  const first = quantities[0] as Q;
  const total = totalOf(quantities.map((quantity) => inUnit(quantity, first.unit)));
  return remade(first as Marked, total, first.unit) as Q;
}

/** Notes a quantity that can't be held against another: of another dimension, kind of area or basis. */
function noteUnlike(first: Marked, other: Marked, at: string, check: Check): void {
  const dimension = dimensionOf(first.unit);
  if (dimensionOf(other.unit) !== dimension) refuseDimension(other, [dimension], check, at);
  else if (first.of !== other.of)
    check.fault(
      "wrong-area",
      "areas-of-two-kinds",
      at,
      "You can't add {given.area} to {first.area}. Use areas of one kind.",
      { first: first.of ?? "plain", given: other.of ?? "plain" },
    );
  else noteOtherBasis(first, other, at, check);
}

function noteOtherBasis(first: Marked, other: Marked, at: string, check: Check): void {
  if (first.basis === other.basis) return;
  check.fault(
    "conflict",
    "bases-differ",
    at,
    "You can't combine {givenUnit.unit} {given.basis} with {firstUnit.unit} {first.basis}. Use one kind: all by volume (v/v), or all by weight (w/v or w/w).",
    {
      first: first.basis ?? "none",
      firstUnit: first.unit,
      given: other.basis ?? "none",
      givenUnit: other.unit,
    },
  );
}

/**
 * Returns a quantity taken a number of times. An area keeps what it is an area of, a fraction what it is a part of.
 *
 * @param quantity - any quantity
 * @param times - any finite number
 * @returns the product, in the same unit
 * @throws SprayMathError `not-a-quantity` or `not-finite`
 *
 * @example
 * ```ts
 * import { qty, scaleQuantity } from "swath-to-spoon/units";
 *
 * console.log(scaleQuantity(qty(1.5, "gal"), 3)); // { value: 4.5, unit: 'gal' }
 * ```
 */
export function scale(quantity: TreatedArea, times: number): TreatedArea;
export function scale(quantity: GroundArea, times: number): GroundArea;
export function scale(quantity: BasedFraction, times: number): BasedFraction;
export function scale<U extends Unit>(quantity: Quantity<U>, times: number): Quantity<U>;
export function scale(quantity: Marked, times: number): Quantity {
  const given = checked({ quantity, times }, SCALED);
  return scaled(given.quantity, given.times);
}

const SCALED: ObjectField<{ readonly quantity: Quantity; readonly times: number }> = object({
  quantity: anyQuantity("What is taken a number of times."),
  times: number("How many times. Any finite number."),
});

/** A quantity taken a number of times. Trusts its input. */
export function scaled<Q extends Quantity>(quantity: Q, times: number): Q {
  return remade(quantity as Marked, finite(quantity.value * times) + 0, quantity.unit) as Q;
}

interface Pair {
  readonly a: Quantity;
  readonly b: Quantity;
}

const ANY_PAIR: ObjectField<Pair> = object<Pair>({
  a: anyQuantity("The one."),
  b: anyQuantity("The other."),
});

const PAIR: ObjectField<Pair> = object<Pair>(ANY_PAIR.fields, [pairIsAlike]);

function pairIsAlike({ a, b }: Partly<Pair>, check: Check): void {
  if (a === undefined || b === undefined) return;
  const dimension = dimensionOf(a.unit);
  if (dimensionOf(b.unit) !== dimension) refuseDimension(b, [dimension], check, "b");
  else noteOtherBasis(a, b, "b", check);
}

/**
 * Returns whether two quantities measure the same kind of thing, so that one can be converted to the other's unit.
 *
 * @param a - any quantity
 * @param b - any quantity
 * @returns true where their dimensions are the same
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit` or `unknown-field`
 *
 * @example
 * ```ts
 * import { qty, sameDimension } from "swath-to-spoon/units";
 *
 * console.log(sameDimension(qty(5, "oz"), qty(5, "fl_oz"))); // false
 * ```
 */
export function sameDimension(a: Quantity, b: Quantity): boolean {
  const given = checked({ a, b }, ANY_PAIR);
  return dimensionOf(given.a.unit) === dimensionOf(given.b.unit);
}

/**
 * Returns how many times `b` goes into `a`.
 *
 * @param a - any quantity
 * @param b - a quantity of the same dimension, not zero
 * @returns the bare number a / b
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range` where
 *   `b` is zero, or `conflict` for fractions of different bases
 *
 * @example
 * ```ts
 * import { qty, quantityRatio } from "swath-to-spoon/units";
 *
 * console.log(quantityRatio(qty(1, "gal"), qty(1, "qt"))); // 4
 * ```
 */
export function ratio<U extends Unit>(a: Quantity<U>, b: Quantity<UnitLike<U>>): number {
  const given = checked({ a, b }, PAIR);
  if (given.b.value === 0)
    throw refusal("out-of-range", "divided-by-zero", "b", "You can't divide by 0. Enter another amount.");
  return ratioOf(given.a, given.b);
}

/** How many times `b` goes into `a`: of one dimension, `b` not 0. Trusts its input. */
export function ratioOf(a: Quantity, b: Quantity): number {
  return finite(a.value / inUnit(b, a.unit)) + 0;
}

/**
 * Returns whether `a` is less than (−1), the same as (0) or more than (1) `b`. Amounts that differ by less than one part in
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
 * import { compareQuantities, qty } from "swath-to-spoon/units";
 *
 * console.log(compareQuantities(qty(3, "tsp"), qty(1, "tbsp"))); // 0
 * ```
 */
export function compare<U extends Unit>(a: Quantity<U>, b: Quantity<UnitLike<U>>): -1 | 0 | 1 {
  const given = checked({ a, b }, PAIR);
  return orderOf(given.a, given.b);
}

/** Whether `a` is less than (-1), the same as (0) or more than (1) `b`, noise aside. Trusts its input. */
export function orderOf(a: Quantity, b: Quantity): -1 | 0 | 1 {
  return compareDecided(a.value, inUnit(b, a.unit));
}
