import { type Decimal, decimal } from "./exact.js";

/**
 * A number as decisions are made on it: an exact decimal of 12 significant digits, so that floating-point noise in the
 * 16th digit never adds a load, moves a spoon or flips a warning.
 */
export function decided(value: number): Decimal {
  return decimal(value.toPrecision(12));
}

/** The smallest whole number that is not less, noise aside. */
export function ceilDecided(value: number): number {
  const whole = decided(value).round(0, 3);
  // Rounding away from zero is upwards for what is counted here: nothing negative.
  return whole.toNumber();
}

/** The largest whole number that is not more, noise aside. */
export function floorDecided(value: number): number {
  return decided(value).round(0, 0).toNumber();
}

/** Whether `a` is more than `b`, noise aside. */
export function moreThan(a: number, b: number): boolean {
  return decided(a).gt(decided(b));
}
