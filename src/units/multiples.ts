import { isUnit } from "./resolve.js";
import type { SimpleUnit, Unit } from "./types.js";

/** A unit that is a round number of another, taken apart: `1000ft2` is 1000 of `ft2`. */
export function multipleOf(unit: Unit): { readonly count: number; readonly of: SimpleUnit } | undefined {
  const match = /^(\d+)(\D.*)$/.exec(unit);
  return match === null ? undefined : { count: Number(match[1]), of: match[2] as SimpleUnit };
}

/** The unit that is `count` of another, where the table has one. */
export function multiple(count: number, of: Unit): SimpleUnit | undefined {
  if (count === 1) return of as SimpleUnit;
  const unit = `${count}${of}`;
  return isUnit(unit) ? (unit as SimpleUnit) : undefined;
}
