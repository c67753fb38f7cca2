import { SprayMathError, shown } from "../errors.js";
import { checkedList } from "../units/guard.js";
import { checkNumber } from "../units/shape.js";
import type { Corner } from "./crossing.js";

/** A list of pairs of numbers, each checked. */
export function checkedPairs(
  pairs: readonly (readonly [number, number])[],
  path: string,
  least: number,
): Corner[] {
  return checkedList(pairs, path, least).map((pair, i) => {
    if (pair === undefined || pair === null)
      throw new SprayMathError(
        "missing",
        `${path}[${i}]`,
        "Nothing given; wanted two numbers, such as [0, 120].",
      );
    if (!Array.isArray(pair) || pair.length !== 2) {
      throw new SprayMathError(
        "not-a-quantity",
        `${path}[${i}]`,
        `Given ${Array.isArray(pair) ? `a list of ${pair.length}` : shown(pair)}; wanted two numbers, such as [0, 120].`,
      );
    }
    checkNumber(pair[0], `${path}[${i}][0]`);
    checkNumber(pair[1], `${path}[${i}][1]`);
    return pair as unknown as Corner;
  });
}

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
