import { decided } from "../../units/decide.js";
import type { Quantity } from "../../units/types.js";

/** Amounts as they are printed, and their total as a reader adds it up. */
export interface PrintedShares {
  /** Each amount, rounded down. */
  readonly amounts: readonly Quantity[];
  /** The sum of the printed amounts, not the rounded sum. */
  readonly total: Quantity;
  /** How many decimals they are printed with. */
  readonly decimals: number;
}

/**
 * Rounds a product's amounts for print so that the printed ones add up to the printed total: all get the decimals that
 * give the smallest of them `digits` significant digits, and all are rounded down, so that nothing printed is over.
 */
export function printedShares(amounts: readonly Quantity[], digits: number): PrintedShares {
  // No spread: a job may have more loads than a call has room for arguments.
  const smallest = amounts.reduce((least, { value }) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const decimals = Math.min(12, Math.max(0, digits - 1 - Math.floor(Math.log10(smallest))));
  const unit = amounts[0]?.unit ?? "fl_oz";
  const rounded = amounts.map(({ value }) => decided(value).round(decimals, 0));
  const sum = rounded.reduce((total, one) => total.plus(one));
  return {
    amounts: rounded.map((one) => ({ value: one.toNumber(), unit })),
    total: { value: sum.toNumber(), unit },
    decimals,
  };
}
