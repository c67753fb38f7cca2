import { type Decimal, decimal } from "./exact.js";

/**
 * A number as decisions are made on it: an exact decimal of 12 significant digits. So floating-point noise in the 16th digit
 * never adds a load, moves a spoon or flips a warning.
 */
export function decided(value: number): Decimal {
  return decimal(value.toPrecision(12));
}

// Whole, or so far from a whole number that noise cannot reach it: the exact decimal would say the same and takes
// microseconds.
function isPlain(value: number): boolean {
  const whole = Math.round(value);
  return value === whole || Math.abs(value - whole) > 1e-9 * Math.abs(value);
}

/** The smallest whole number that is not less, noise aside. For counts: `value` is 0 or more. */
export function ceilDecided(value: number): number {
  if (isPlain(value)) return Math.ceil(value);
  // big.js rounds away from zero here, which is upwards for what is counted: nothing negative.
  return decided(value).round(0, 3).toNumber();
}

/** The largest whole number that is not more, noise aside. For counts: `value` is 0 or more. */
export function floorDecided(value: number): number {
  if (isPlain(value)) return Math.floor(value);
  return decided(value).round(0, 0).toNumber();
}

/**
 * Whether `a` is less than (-1), the same as (0) or more than (1) `b`, noise aside: the same where they differ by less
 * than one part in 10^12. Rounding each of them to 12 digits first would not do: it splits two equal amounts wherever
 * they lie on a rounding edge, as a tablespoon in liters does (0.01478676478125).
 */
export function compareDecided(a: number, b: number): -1 | 0 | 1 {
  if (a === b || Math.abs(a - b) < 1e-12 * Math.max(Math.abs(a), Math.abs(b))) return 0;
  return a < b ? -1 : 1;
}

/** Whether `a` is more than `b`, noise aside. */
export function moreThan(a: number, b: number): boolean {
  return compareDecided(a, b) === 1;
}
