import { positive } from "../units/result.js";
import type { MassUnit, Quantity, VolumeUnit } from "../units/types.js";
import { exactUnit, quotient } from "./exact-sizes.js";
import type { Kit } from "./kit.js";
import { type MeasuredPart, sumOf } from "./parts.js";
import type { Effort } from "./search.js";

/**
 * Which way a measured amount may differ from the amount: `never-over` (a label's maximum), `never-under` (a
 * minimum), or `nearest` (either way).
 */
export type MeasuringRule = "never-over" | "never-under" | "nearest";

/** The fills that come nearest, and what they come to. */
export interface NearestFills {
  readonly parts: readonly MeasuredPart[];
  /** Their sum in the unit of the amount. */
  readonly value: number;
  readonly scoops: number;
}

/** How an amount is to be measured. */
export interface Way {
  readonly rule: MeasuringRule;
  readonly maxScoops: number;
  readonly limitPercent: number;
  readonly closeEnoughPercent: number;
  readonly effort: Effort;
}

/** More scoops than this are miscounted: common practice, no source. A cup is 16 tablespoons. */
export const MOST_SCOOPS = 16;

/** The usual limit of an error, in percent: common practice, no source. */
export const LIMIT_PERCENT = 5;

/** An error up to this is close enough to take fewer scoops, in percent: common practice, no source. */
export const CLOSE_ENOUGH_PERCENT = 2;

// A dose of several loads is rounded to the 11th digit of all of them together: of one in a hundred loads, that is so much.
// No tool shows it, and two teaspoons to the gallon stay two teaspoons.
const SAME = 1e-8;

// Of an amount that is huge beside the tools, that would be more than they hold.
const PART_OF_STEP = 1e-3;

// As in every decision.
const NOISE = 1e-12;

/** The best measure of an amount with tools that all measure its kind; nothing where no choice of fills is allowed. */
export function nearestFills(
  amount: Quantity<VolumeUnit | MassUnit>,
  { choose, sizeOf, finest }: Kit,
  { rule, maxScoops, limitPercent, closeEnoughPercent, effort }: Way,
  at = "amount",
): NearestFills | undefined {
  const { size, whole } = sizeOf(amount.unit);
  const target = positive(amount.value * size, at);
  const margin = Math.max(target * NOISE, Math.min(target * SAME, finest * PART_OF_STEP));
  const wanted = {
    amount: target,
    margin,
    closeEnough: (target * Math.min(closeEnoughPercent, limitPercent)) / 100,
    mayBeOver: rule !== "never-over",
    mayBeUnder: rule !== "never-under",
    maxScoops,
    effort,
  };
  const choice = choose(wanted);
  if (choice === undefined) return undefined;
  const { taken, parts, total, scoops } = choice;
  const value =
    Math.abs(total - target) < margin
      ? amount.value
      : whole
        ? total / size
        : quotient(sumOf(taken), exactUnit(amount.unit));
  return { parts, value, scoops };
}

/** A measure's signed error in percent of the amount. */
export function percentOff(measured: number, amount: number): number {
  return ((measured - amount) / amount) * 100;
}
