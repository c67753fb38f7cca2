import {
  closeEnoughTo,
  closerThan,
  type Fill,
  type Found,
  type FoundFill,
  holdsNone,
  leastScoops,
  type OrderedFills,
  type Range,
  type Target,
} from "./search.js";

/** What so many scoops come to: each total once, the smallest first, with the fewest different fills that make it. */
interface Sums<T> {
  readonly scoops: number;
  readonly totals: Float64Array;
  readonly tools: Uint8Array;
  /** How many of each fill: for each total as many numbers as there are fills. */
  readonly counts: Uint8Array;
  /** What has been made of them. */
  readonly made: T[];
}

/** Looks up what `bestFills` would find; nothing where that takes more scoops than are kept. */
export type FewScoops<T> = (target: Target) => T | undefined;

// A few milliseconds' work, done for the numbers of scoops that are asked for.
const MOST_CHOICES = 20_000;

/**
 * Keeps what few scoops come to, for fills of one size each: the same sums serve every amount. `make` makes
 * of one that is found what the caller needs, once.
 */
export function fewScoops<T>(
  fills: readonly Fill[],
  { order }: OrderedFills,
  make: (found: Found) => T,
): FewScoops<T> {
  const sizes = fills.map(({ max }) => max);
  const { smallest, largest, divisor } = order[0] as OrderedFills["order"][number];
  const kept: Sums<T>[] = [];
  const mostKept = mostScoopsKept(sizes.length);
  const sumsOf = (scoops: number): Sums<T> => {
    kept[scoops] ??= sumsFrom(sizes, scoops);
    return kept[scoops];
  };
  const madeOf = (sums: Sums<T>, at: number): T => {
    sums.made[at] ??= make(foundAt(sums, at, sizes));
    return sums.made[at];
  };

  return (target) => {
    const { amount, margin, mayBeUnder, maxScoops } = target;
    const enough = closeEnoughTo(target);
    // Stryker disable next-line ConditionalExpression: where there is none none is found
    if (!holdsNone(enough, divisor)) {
      // Stryker disable next-line ArithmeticOperator: a later end decides on the time alone
      const most = Math.min(maxScoops, Math.floor(enough.high / smallest));
      for (let scoops = leastScoops(enough, largest); scoops <= most; scoops++) {
        if (scoops > mostKept) return undefined;
        const sums = sumsOf(scoops);
        const at = fewestTools(sums, enough, target);
        if (at >= 0) return madeOf(sums, at);
      }
    }
    let best = mayBeUnder ? sumsOf(0) : undefined;
    let bestAt = 0;
    let worth: Range = mayBeUnder
      ? closerThan(0, target)
      : { low: amount - margin, high: Number.POSITIVE_INFINITY };
    // Fewer than the largest goes into the amount fall short by a whole one of it: one more is always closer.
    for (
      // Stryker disable next-line MethodExpression: an earlier start decides on the time alone
      let scoops = Math.min(Math.max(Math.floor(amount / largest), 1), maxScoops);
      // Stryker disable next-line ConditionalExpression,EqualityOperator,ArithmeticOperator: so does a later end
      scoops <= maxScoops && scoops * smallest <= worth.high && !holdsNone(worth, divisor);
      scoops++
    ) {
      if (scoops > mostKept) return undefined;
      const sums = sumsOf(scoops);
      const at = closestTo(sums, worth, target);
      if (at < 0) continue;
      best = sums;
      bestAt = at;
      worth = closerThan(sums.totals[at] as number, target);
    }
    return best && madeOf(best, bestAt);
  };
}

/** How many scoops of so many fills are few enough to keep. */
function mostScoopsKept(fills: number): number {
  let scoops = 0;
  // Choices of n + 1 scoops, from those of n.
  // Stryker disable next-line EqualityOperator: one more or less decides on the time alone
  for (let choices = 1; choices <= MOST_CHOICES && scoops <= 100; scoops++)
    choices = (choices * (fills + scoops)) / (scoops + 1);
  return scoops - 1;
}

function sumsFrom<T>(sizes: readonly number[], scoops: number): Sums<T> {
  const last = sizes.length - 1;
  const counts = new Uint8Array(sizes.length);
  const best = new Map<number, { readonly tools: number; readonly counts: Uint8Array }>();
  function take(i: number, left: number, used: number, tools: number): void {
    if (i === last || left === 0) {
      const total = used + left * (sizes[i] as number);
      const toolsThen = left === 0 ? tools : tools + 1;
      counts[i] = left;
      const before = best.get(total);
      if (before === undefined || toolsThen < before.tools)
        best.set(total, { tools: toolsThen, counts: counts.slice() });
    } else
      for (let count = 0; count <= left; count++) {
        counts[i] = count;
        take(i + 1, left - count, used + count * (sizes[i] as number), count === 0 ? tools : tools + 1);
      }
    counts[i] = 0;
  }
  take(0, scoops, 0, 0);
  const totals = Float64Array.from(best.keys()).sort();
  const sums: Sums<T> = {
    scoops,
    totals,
    tools: new Uint8Array(totals.length),
    counts: new Uint8Array(totals.length * sizes.length),
    made: [],
  };
  for (const [at, total] of totals.entries()) {
    const one = best.get(total) as { readonly tools: number; readonly counts: Uint8Array };
    sums.tools[at] = one.tools;
    sums.counts.set(one.counts, at * sizes.length);
  }
  return sums;
}

/** The place of the first total that is no less. */
function firstFrom(totals: Float64Array, least: number): number {
  let from = 0;
  let to = totals.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((totals[middle] as number) < least) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** The place of the total with the fewest different fills, then the smallest error; -1 where none is in the range. */
function fewestTools(
  { totals, tools }: Sums<unknown>,
  { low, high }: Range,
  { amount, margin }: Target,
): number {
  let best = -1;
  let bestTools = Number.POSITIVE_INFINITY;
  let bestError = 0;
  for (let at = firstFrom(totals, low); (totals[at] ?? Number.POSITIVE_INFINITY) <= high; at++) {
    const error = Math.abs((totals[at] as number) - amount);
    const fewer = bestTools - (tools[at] as number);
    if (fewer < 0 || (fewer === 0 && error >= bestError - margin)) continue;
    best = at;
    bestTools = tools[at] as number;
    bestError = error;
  }
  return best;
}

/** The place of the total with the smallest error; -1 where none is in the range. */
function closestTo({ totals }: Sums<unknown>, { low, high }: Range, { amount, margin }: Target): number {
  // Next to the amount: the last one below it, noise aside, and the first one from it up.
  const above = firstFrom(totals, amount - margin);
  const errorAt = (at: number): number => {
    const total = totals[at];
    return total === undefined || total < low || total > high
      ? Number.POSITIVE_INFINITY
      : Math.abs(total - amount);
  };
  // As far off as each other, noise aside: the same for an amount in any unit.
  const at = errorAt(above) <= errorAt(above - 1) + margin ? above : above - 1;
  return errorAt(at) < Number.POSITIVE_INFINITY ? at : -1;
}

function foundAt({ scoops, totals, counts }: Sums<unknown>, at: number, sizes: readonly number[]): Found {
  const fills: FoundFill[] = [];
  for (const [index, size] of sizes.entries()) {
    const count = counts[at * sizes.length + index] as number;
    if (count > 0) fills.push({ index, count, total: count * size });
  }
  return { fills, total: totals[at] as number, scoops };
}
