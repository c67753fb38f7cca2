import { compareDecided, decided, floorDecided, moreThan } from "../units/decide.js";
import type { AnyTopic } from "./topics/topic.js";

/** More off than this, as a part of the right answer, a figure is wrong, however it came about. */
export const MOST_ROUNDED = 0.05;

// 19.8 / 20 - 1 is -0.010000000000000009.
/** Whether what is off, as a part of the right answer, is within a limit, noise aside. */
export function isWithin(off: number, limit: number): boolean {
  return !moreThan(Math.abs(off), limit);
}

/** A number beside the right one, in the same unit. */
interface Compared {
  readonly value: number;
  readonly right: number;
}

// 0.225 / 0.01 is 22.499999999999996.
const nearestWhole = (value: number): number => decided(value).round(0, 1).toNumber();

/** Whether a number is the right one with one to three figures; `round` leaves the noise of a division out. */
export function isRounding({ value, right }: Compared, round: (value: number) => number): boolean {
  return [1, 2, 3].some((figures) => {
    const step = 10 ** (Math.floor(Math.log10(right)) + 1 - figures);
    return compareDecided(round(right / step) * step, value) === 0;
  });
}

/** Whether a number is the right one rounded as a sheet allows: within 5%, and an amount of product down. */
export function isRightRounding(one: Compared, { isDose = false }: AnyTopic): boolean {
  return (
    isWithin(one.value / one.right - 1, MOST_ROUNDED) && isRounding(one, isDose ? floorDecided : nearestWhole)
  );
}
