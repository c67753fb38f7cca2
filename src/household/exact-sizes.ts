import { resolveUnit, simpleEntry } from "../units/resolve.js";
import type { MassUnit, Quantity, VolumeUnit } from "../units/types.js";

/** An exact decimal: `digits` × 10^−`places`, which are less than 0 for a large number in few digits. */
export interface Exact {
  readonly digits: bigint;
  readonly places: number;
}

const TENS: bigint[] = [];

/** A power of ten. Not by `**`: builds for older engines make that a `Math.pow`, which takes no big integer. */
function tenTo(places: number): bigint {
  TENS[places] ??= BigInt(`1${"0".repeat(places)}`);
  return TENS[places];
}

/** The decimal that a number is written as. */
function exactly(text: string): Exact {
  // Stryker disable next-line StringLiteral: there is a mantissa always, and an exponent of no digits is 0 too
  const [mantissa = "", exponent = "0"] = text.split("e");
  // Stryker disable next-line StringLiteral: there is a whole part always
  const [whole = "", part = ""] = mantissa.split(".");
  const digits = BigInt(whole + part);
  return { digits, places: part.length - Number(exponent) };
}

const UNITS = new Map<string, Exact>();

/** The exact size of one of a unit, in liters or kilograms. */
export function exactUnit(unit: VolumeUnit | MassUnit): Exact {
  const before = UNITS.get(unit);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (before !== undefined) return before;
  // Only the psi, which is neither a volume nor a weight, has a factor that is not decimal text.
  const size = exactly(simpleEntry(resolveUnit(unit, "unit").over)?.entry.factor as string);
  UNITS.set(unit, size);
  return size;
}

/** The exact size of a quantity, in liters or kilograms, taking its value as it is written. */
export function exactSize({ value, unit }: Quantity<VolumeUnit | MassUnit>): Exact {
  return product(exactly(String(value)), exactUnit(unit));
}

/** The exact product. */
function product(a: Exact, b: Exact): Exact {
  return { digits: a.digits * b.digits, places: a.places + b.places };
}

/** The digits of an exact decimal when it is written with so many places, no fewer than it has. */
export function atPlaces({ digits, places }: Exact, more: number): bigint {
  // Stryker disable next-line ConditionalExpression: a product with 1 takes longer
  return places === more ? digits : digits * tenTo(more - places);
}

/** The float nearest to the quotient of two exact decimals. */
export function quotient(a: Exact, b: Exact): number {
  const places = Math.max(a.places, b.places);
  // Stryker disable next-line ArrayDeclaration: the long way below says the same and takes longer
  const [over, per] = [Number(atPlaces(a, places)), Number(atPlaces(b, places))];
  // Whole numbers that floats hold exactly: their quotient is rounded once, as by the long way.
  // Stryker disable next-line ConditionalExpression,EqualityOperator: the long way says the same and takes longer
  if (over <= Number.MAX_SAFE_INTEGER && per <= Number.MAX_SAFE_INTEGER) return over / per;
  // 40 digits more than the divisor has: far more than the 17 that a float can hold.
  // Stryker disable next-line ArithmeticOperator: more digits do no harm
  const more = Math.max(0, String(b.digits).length - String(a.digits).length + 40);
  return Number(`${(a.digits * tenTo(more)) / b.digits}e${b.places - a.places - more}`);
}

/** The float nearest to a number taken a whole number of times. */
export function timesExactly(value: number, times: number): number {
  // A decimal of few places is the same float as its millionths over a million, and so is its multiple.
  // Stryker disable next-line ArithmeticOperator: text says the same and takes longer
  const millionths = Math.round(value * 1e6);
  // Stryker disable next-line ConditionalExpression,EqualityOperator: text says the same and takes longer
  if (millionths / 1e6 === value && millionths * times < 1e15) return (millionths * times) / 1e6;
  const { digits, places } = exactly(String(value));
  return Number(`${digits * BigInt(times)}e${-places}`);
}

/** The greatest common divisor. */
export function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? a : gcd(b, a % b);
}
