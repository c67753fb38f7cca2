/** What one fill of a tool can be: any value from `min` to `max` by `step`; one value alone where the tool has no marks. */
export interface Fill {
  readonly min: bigint;
  readonly max: bigint;
  /** The distance between values; where `min` is `max`, that value. */
  readonly step: bigint;
}

/** What is wanted, in the same whole numbers as the fills. */
export interface Target {
  readonly amount: bigint;
  /** Totals strictly between these two are the amount, noise aside. */
  readonly above: bigint;
  readonly below: bigint;
  /** The largest error that will do, no less than one in a thousand of the amount. */
  readonly limit: bigint;
  readonly mayBeOver: boolean;
  readonly mayBeUnder: boolean;
  readonly maxScoops: number;
}

/** What was found: for each fill the number of times and what they come to together. */
export interface Found {
  readonly counts: readonly number[];
  readonly totals: readonly bigint[];
  readonly total: bigint;
  readonly scoops: number;
}

/** Errors are told apart to the thousandth part of the amount, a tenth of a per cent. */
const PARTS = 1000n;

/** A range that holds nothing. */
const NONE: [bigint, bigint] = [1n, 0n];

/**
 * The best choice of fills: the smallest error to a tenth of a per cent of the amount, then the fewest scoops, then the
 * smallest error; but never one past the limit where there is one within it. Nothing at all is a choice (`scoops` 0)
 * where the total may be under.
 *
 * Takes one scoop more at a time, and for each number of scoops goes through every choice except those that cannot
 * beat the best one known, by two bounds: n more scoops come to no less than n of the smallest and no more than n of
 * the largest that are left; and their total is a multiple of the greatest common divisor of all that are left.
 */
export function bestFills(fills: readonly Fill[], target: Target): Found | undefined {
  const { amount, above, below, limit, mayBeOver, mayBeUnder, maxScoops } = target;
  // Tools without marks first and each kind from the largest down: the bounds then bind soonest. The last tool's fill is
  // worked out and not tried, and one with marks has the most values to try.
  const order = fills
    .map((fill, index) => ({ ...fill, index, marked: fill.min !== fill.max }))
    .sort((a, b) => Number(a.marked) - Number(b.marked) || Number(a.max < b.max) - Number(a.max > b.max));
  const smallest: bigint[] = [];
  const largest: bigint[] = [];
  const divisor: bigint[] = [];
  for (let i = order.length - 1; i >= 0; i--) {
    const { min, max, step } = order[i] as Fill;
    smallest[i] = lesser(min, smallest[i + 1] ?? min);
    largest[i] = greater(max, largest[i + 1] ?? max);
    divisor[i] = gcd(step, divisor[i + 1] ?? step);
  }
  const last = order.length - 1;
  const counts = order.map(() => 0);
  const totals = order.map(() => 0n);

  // The totals that are still worth finding, both ends allowed.
  const highest = mayBeOver ? amount + (largest[0] as bigint) : below - 1n;
  const lowest = mayBeUnder ? 0n : above + 1n;
  let low = lowest;
  let high = highest;
  let best: Found | undefined;
  let bestError = 0n;

  function errorOf(total: bigint): bigint {
    if (total > above && total < below) return 0n;
    return total < amount ? amount - total : total - amount;
  }
  function allowError(most: bigint): void {
    low = greater(lowest, lesser(amount - most, above + 1n));
    high = lesser(highest, greater(amount + most, below - 1n));
  }
  function consider(total: bigint, scoops: number): void {
    if (total < low || total > high) return;
    bestError = errorOf(total);
    best = { counts: inOrder(counts), totals: inOrder(totals), total, scoops };
    if (bestError === 0n) [low, high] = NONE;
    else allowError(bestError - 1n);
  }
  function inOrder<T>(values: readonly T[]): T[] {
    const back: T[] = [];
    for (const [i, { index }] of order.entries()) back[index] = values[i] as T;
    return back;
  }

  function place(i: number, scoops: number, left: number, used: bigint): void {
    const n = BigInt(left);
    if (used + n * (smallest[i] as bigint) > high || used + n * (largest[i] as bigint) < low) return;
    if (noMultiple(low - used, high - used, divisor[i] as bigint)) return;
    if (wasHere(i, left, used)) return;
    const { min, max, step } = order[i] as Fill;
    if (i === last) {
      counts[i] = left;
      const [from, to] = [n * min, n * max];
      const down = from + floorTo(greater(amount - used - from, 0n), step);
      for (const value of [lesser(down, to), lesser(down + step, to)]) {
        totals[i] = value;
        consider(used + value, scoops);
      }
      counts[i] = 0;
      totals[i] = 0n;
      return;
    }
    const [fewest, most] = countsWorthTrying(i, left, low - used, high - used);
    for (let count = most; count >= fewest && low <= high; count--) {
      const c = BigInt(count);
      const rest = BigInt(left - count);
      counts[i] = count;
      // Largest first: the big tool takes most of it.
      const from = greater(c * min, low - used - rest * (largest[i + 1] as bigint));
      const to = lesser(c * max, high - used - rest * (smallest[i + 1] as bigint));
      for (
        let value = c * min + floorTo(to - c * min, step);
        value >= from && value >= c * min;
        value -= step
      ) {
        totals[i] = value;
        place(i + 1, scoops, left - count, used + value);
        if (count === 0) break;
      }
    }
    counts[i] = 0;
    totals[i] = 0n;
  }

  // The range of totals worth finding only ever shrinks, so what was not found from here before will not be found now.
  // Kept where totals coincide: sizes with a common measure that goes few times into the amount.
  const measureOfAll = divisor[0] as bigint;
  const coincide = highest / measureOfAll < 1_000_000n;
  const seen = new Map<number, Set<number>>();
  function wasHere(i: number, left: number, used: bigint): boolean {
    if (!coincide) return false;
    const where = i * (maxScoops + 1) + left;
    const total = Number(used / measureOfAll);
    const before = seen.get(where);
    if (before === undefined) seen.set(where, new Set([total]));
    else if (before.has(total)) return true;
    else before.add(total);
    return false;
  }

  // For a tool without marks, how many of `left` scoops it may have for the rest to bring the total between from and to.
  function countsWorthTrying(i: number, left: number, from: bigint, to: bigint): [number, number] {
    const { min: size, max } = order[i] as Fill;
    if (size !== max) return [0, left];
    const n = BigInt(left);
    const [small, large] = [smallest[i + 1] as bigint, largest[i + 1] as bigint];
    const most = size > small ? floorTo(to - n * small, size - small) / (size - small) : n;
    const fewest = size > large ? -floorTo(n * large - from, size - large) / (size - large) : 0n;
    return [Number(greater(fewest, 0n)), Number(lesser(most, n))];
  }

  if (mayBeUnder) consider(0n, 0);
  // Fewer scoops than the largest tool goes into the amount fall short by a whole one of it: one more is always better.
  const whole = amount / (largest[0] as bigint);
  const first = whole < 1n ? 1 : whole > BigInt(maxScoops) ? maxScoops : Number(whole);
  for (let scoops = first; scoops <= maxScoops; scoops++) {
    place(0, scoops, scoops, 0n);
    if (best === undefined) continue;
    // Only an error that is told as smaller is worth another scoop, or one that is no longer past the limit.
    const told = toldError(bestError, amount);
    if (told === 0n) break;
    const toldSmaller = (amount * (2n * told - 1n) - 1n) / (2n * PARTS);
    allowError(bestError > limit ? greater(limit, toldSmaller) : toldSmaller);
    if (noMultiple(low, high, divisor[0] as bigint)) break;
  }
  return best;
}

function toldError(error: bigint, amount: bigint): bigint {
  return (2n * PARTS * error + amount) / (2n * amount);
}

function noMultiple(low: bigint, high: bigint, of: bigint): boolean {
  return floorTo(high, of) < low;
}

/** The largest multiple of `step` that is not above `value`. */
function floorTo(value: bigint, step: bigint): bigint {
  const over = value % step;
  return over < 0n ? value - over - step : value - over;
}

function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? a : gcd(b, a % b);
}

function lesser(a: bigint, b: bigint): bigint {
  return a < b ? a : b;
}

function greater(a: bigint, b: bigint): bigint {
  return a > b ? a : b;
}
