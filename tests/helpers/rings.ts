/** A corner on a plane. */
export type Point = readonly [number, number];

/**
 * Whether a boundary crosses or touches itself: every pair of sides, in whole numbers that are exact; the slow way, written
 * apart from the library.
 */
export function slowlyCrosses(corners: readonly Point[]): boolean {
  const n = corners.length;
  const at = (i: number) => corners[i % n] as Point;
  const turn = (a: Point, b: Point, c: Point) =>
    Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
  const between = (a: Point, b: Point, c: Point) =>
    (c[0] - a[0]) * (c[0] - b[0]) <= 0 && (c[1] - a[1]) * (c[1] - b[1]) <= 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const [a, b, c, d] = [at(i), at(i + 1), at(j), at(j + 1)];
      if (j === i + 1 || (i === 0 && j === n - 1)) {
        // Neighbours share a corner; the far ends must not lie back on each other.
        const [far, corner, end] = j === i + 1 ? [a, b, d] : [c, a, b];
        const forward =
          (corner[0] - far[0]) * (end[0] - corner[0]) + (corner[1] - far[1]) * (end[1] - corner[1]);
        if (turn(far, corner, end) === 0 && forward < 0) return true;
        continue;
      }
      const [t1, t2, t3, t4] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
      if (t1 * t2 < 0 && t3 * t4 < 0) return true;
      if (t1 === 0 && between(a, b, c)) return true;
      if (t2 === 0 && between(a, b, d)) return true;
      if (t3 === 0 && between(c, d, a)) return true;
      if (t4 === 0 && between(c, d, b)) return true;
    }
  }
  return false;
}

/** The corners without those that repeat the one before them. */
export function withoutRepeats(corners: readonly Point[]): Point[] {
  const same = (a: Point, b: Point) => a[0] === b[0] && a[1] === b[1];
  const kept = corners.filter((corner, i) => i === 0 || !same(corner, corners[i - 1] as Point));
  while (kept.length > 1 && same(kept[0] as Point, kept.at(-1) as Point)) kept.pop();
  return kept;
}
