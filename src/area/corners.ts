import { type NumberField, number, type TupleField, tuple } from "../units/fields.js";
import type { Corner } from "./crossing.js";

// Farther out, the products of two of them run out of the numbers that a float holds.
const FAR = 1e75;
const PLACE: NumberField = number("How far, in the one unit of all.", { min: -FAR, max: FAR });

/** A corner: two numbers. */
export const CORNER: TupleField<Corner> = tuple<Corner>(
  "How far to the right of, and how far ahead of, one fixed point.",
  "two numbers, such as [0, 120]",
  [PLACE, PLACE],
);

/** A station on a base line: two numbers. */
export const STATION: TupleField<Corner> = tuple<Corner>(
  "How far along the base line, and how far from there to the boundary.",
  "two numbers, such as [0, 120]",
  [PLACE, number("How far to the boundary.", { min: 0, max: FAR })],
);

/**
 * The corners of a ring that may or may not come back to its first corner, each with its place in the list. A corner that
 * repeats the one before it (the walker stood still) is left out.
 */
export function ringCorners(
  corners: readonly Corner[],
): { readonly corner: Corner; readonly index: number }[] {
  const same = (a: Corner, b: Corner): boolean => a[0] === b[0] && a[1] === b[1];
  const kept = corners
    .map((corner, index) => ({ corner, index }))
    .filter(({ corner, index }) => index === 0 || !same(corner, corners[index - 1] as Corner));
  while (
    kept.length > 1 &&
    same((kept.at(-1) as { corner: Corner }).corner, (kept[0] as { corner: Corner }).corner)
  )
    kept.pop();
  return kept;
}
