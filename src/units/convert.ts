import { errorOf } from "../errors.js";
import { Check, checked } from "./check.js";
import { countUnits, dimensionOf } from "./dimensions.js";
import { type Decimal, decimal, exactRatio } from "./exact.js";
import { type ObjectField, object } from "./fields.js";
import { type Marked, remade } from "./marks.js";
import { refusal } from "./message.js";
import { anyQuantity, anyUnit, refuseUnitDimension } from "./quantity-field.js";
import { type ResolvedUnit, resolveUnit } from "./resolve.js";
import type {
  AreaUnit,
  BasedFraction,
  FractionUnit,
  GroundArea,
  Quantity,
  TreatedArea,
  Unit,
  UnitLike,
} from "./types.js";

/** Multiply by `by`, or divide by it where that is the exact whole number. */
export interface Factor {
  readonly by: number;
  readonly divide: boolean;
}

// Asked for once a pair. Emptied when it holds as many pairs as there are valid units, so no input can grow it further;
// a program uses a few dozen pairs.
let factors = new Map<string, Map<string, Factor>>();
let pairs = 0;

const ONE: Factor = { by: 1, divide: false };

function factorBetween(from: unknown, to: unknown, fromPath: string, toPath: string): Factor {
  const source = resolveUnit(from, fromPath);
  const target = resolveUnit(to, toPath);
  if (source.dimension !== target.dimension) {
    const check = new Check(undefined, undefined, source.system);
    refuseUnitDimension(to as Unit, source.dimension, check, toPath);
    throw errorOf(check.issues);
  }
  const factor = from === to ? ONE : newFactor(source, target);
  remember(from as string, to as string, factor);
  return factor;
}

function newFactor(source: ResolvedUnit, target: ResolvedUnit): Factor {
  const multiplier = exactFactor(source, target);
  const whole = asWhole(multiplier);
  if (whole !== undefined) return { by: whole, divide: false };
  const divisor = asWhole(exactFactor(target, source));
  if (divisor !== undefined) return { by: divisor, divide: true };
  return { by: multiplier.toNumber(), divide: false };
}

function exactFactor(source: ResolvedUnit, target: ResolvedUnit): Decimal {
  const over = exactRatio(source.over, target.over);
  if (source.per === undefined || target.per === undefined) return over;
  return over.times(exactRatio(target.per, source.per));
}

// A ratio of two units of the table is a whole number or differs from one long before its 30th digit, so 30 digits
// distinguish the two and see through a quotient that was cut off (1/3 × 9).
function asWhole(value: Decimal): number | undefined {
  const near = value.prec(30);
  return near.eq(near.round()) && near.lte(decimal(Number.MAX_SAFE_INTEGER)) && near.gte(1)
    ? near.toNumber()
    : undefined;
}

function remember(from: string, to: string, factor: Factor): void {
  if (pairs >= countUnits()) {
    factors = new Map();
    pairs = 0;
  }
  let targets = factors.get(from);
  if (targets === undefined) {
    targets = new Map();
    factors.set(from, targets);
  }
  targets.set(to, factor);
  pairs++;
}

/** The factor from one unit to another, as it is used: multiply by `by`, or divide. */
export function factorOf(from: Unit, to: Unit): Factor {
  return knownFactor(from, to) ?? factorBetween(from, to, "from", "to");
}

/** The factor between two units that were asked for before; so both are known, and of one dimension. */
export function knownFactor(from: Unit, to: Unit): Factor | undefined {
  return factors.get(from)?.get(to);
}

/** `value` by a factor. */
export function timesFactor(value: number, { by, divide }: Factor): number {
  // Adding 0 turns -0 into 0.
  return (divide ? value / by : value * by) + 0;
}

/** The number of unit pairs whose factor is held at the moment. */
export function cachedPairs(): number {
  return pairs;
}

/** `value` in another unit, as a bare number. The paths name the arguments in an error, where one is possible. */
export function convertValue(
  value: number,
  from: Unit,
  to: Unit,
  fromPath: string = "from",
  toPath: string = "to",
): number {
  return timesFactor(value, knownFactor(from, to) ?? factorBetween(from, to, fromPath, toPath));
}

/** How many of a unit a quantity is, where both are known to be of one dimension. */
export function inUnit({ value, unit }: Quantity, to: Unit): number {
  return unit === to ? value : convertValue(value, unit, to);
}

/**
 * Gives the same quantity in another unit. An area keeps what it is an area of, a fraction what it is a part of.
 *
 * Formula: value × (size of the unit / size of the new unit), with sizes exact by definition (NIST SP 811, NIST
 * Handbook 44 Appendix C, Weights and Measures Act 1985). Within 2 ulp of the exact result, 1 where the factor or
 * its inverse is a whole number.
 *
 * @param quantity - any quantity; zero and negative values convert too
 * @param to - a unit of the same dimension
 * @returns the quantity in `to`
 * @throws SprayMathError `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { convert, qty } from "swath-to-spoon/units";
 *
 * console.log(convert(qty(1, "ft"), "in")); // { value: 12, unit: 'in' }
 * console.log(convert(qty(128, "fl_oz/ac"), "gal/ac")); // { value: 1, unit: 'gal/ac' }
 * ```
 */
export function convert<T extends AreaUnit>(quantity: TreatedArea, to: T): TreatedArea & Quantity<T>;
export function convert<T extends AreaUnit>(quantity: GroundArea, to: T): GroundArea & Quantity<T>;
export function convert<T extends FractionUnit>(quantity: BasedFraction, to: T): BasedFraction & Quantity<T>;
export function convert<U extends Unit, T extends UnitLike<U>>(quantity: Quantity<U>, to: T): Quantity<T>;
export function convert(quantity: Marked, to: Unit): Quantity {
  const known = knownNumberIn(quantity, to);
  if (known !== undefined) return { value: known, unit: to };
  const given = checked({ quantity, to }, CONVERSION);
  return remade(given.quantity as Marked, numberIn(given.quantity, given.to), given.to);
}

interface Conversion {
  readonly quantity: Quantity;
  readonly to: Unit;
}

const CONVERSION: ObjectField<Conversion> = object<Conversion>(
  { quantity: anyQuantity("What is converted."), to: anyUnit("The unit to convert it to.") },
  [({ quantity, to }, check) => measuresAlike(quantity, to, "to", check)],
);

function measuresAlike(
  quantity: Quantity | undefined,
  unit: Unit | undefined,
  at: string,
  check: Check,
): void {
  if (quantity === undefined || unit === undefined) return;
  const dimension = dimensionOf(quantity.unit);
  if (dimensionOf(unit) !== dimension) refuseUnitDimension(unit, dimension, check, at);
}

/**
 * Returns the number of `unit` in a quantity.
 *
 * @param quantity - any quantity
 * @param unit - a unit of the same dimension
 * @returns the bare number; as exact as {@link convert}
 * @throws SprayMathError `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { qty, valueIn } from "swath-to-spoon/units";
 *
 * console.log(valueIn(qty(2, "gal"), "fl_oz")); // 256
 * ```
 */
export function valueIn<U extends Unit>(quantity: Quantity<U>, unit: UnitLike<U>): number {
  const known = knownNumberIn(quantity, unit as Unit);
  if (known !== undefined) return known;
  const given = checked({ quantity, unit }, MEASURING);
  return numberIn(given.quantity, given.unit);
}

const MEASURING: ObjectField<{ readonly quantity: Quantity; readonly unit: Unit }> = object(
  { quantity: anyQuantity("What is measured."), unit: anyUnit("The unit to measure it in.") },
  [({ quantity, unit }, check) => measuresAlike(quantity, unit, "unit", check)],
);

/**
 * The number of a unit in a quantity that is right and was asked for before, without another look at it. Values are tested
 * after the multiplication, which catches a bad one and an overflow alike.
 */
function knownNumberIn(quantity: Marked, unit: Unit): number | undefined {
  try {
    // Each is read once: a getter may give something else the second time.
    const { value: given, unit: from } = quantity;
    const factor = knownFactor(from, unit);
    if (factor === undefined || typeof given !== "number") return undefined;
    for (const name in quantity) if (name !== "value" && name !== "unit") return undefined;
    const value = timesFactor(given, factor);
    return Number.isFinite(value) ? value : undefined;
  } catch {
    // It fails when it is looked at, as a proxy that was revoked does: the longer look says so.
    return undefined;
  }
}

function numberIn({ value, unit }: Quantity, to: Unit): number {
  const number = convertValue(value, unit, to);
  if (Number.isFinite(number)) return number;
  throw refusal(
    "not-finite",
    "too-large-in-unit",
    "quantity.value",
    "{given} is too large to write in {unit.unit}. Choose a larger unit.",
    { given: { value, unit }, unit: to },
  );
}
