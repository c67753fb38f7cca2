import { finite } from "./result.js";

/**
 * The sum of floats by Neumaier's compensated summation: its error does not grow with the length of the list. For amounts
 * that must add up as printed, add decimals (exact.ts).
 */
export function totalOf(values: readonly number[]): number {
  let total = 0;
  let lost = 0;
  for (const value of values) {
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  // Adding 0 turns -0 into 0.
  return finite(total + lost) + 0;
}
