import { gcd } from "./exact-sizes.js";

/**
 * What one fill of a tool can be: any value from `min` to `max` by `step`; one value alone where the tool has no marks.
 * In any measure of size that all the fills and the amount share.
 */
export interface Fill {
  readonly min: number;
  readonly max: number;
  /** The distance between values; where `min` is `max`, that value. */
  readonly step: number;
}

/** What to measure, in the same measure as the fills. */
export interface Target {
  readonly amount: number;
  /** Totals and errors that are closer than this are the same: noise. */
  readonly margin: number;
  /** The largest error that will do, no less than one in a thousand of the amount. */
  readonly limit: number;
  readonly mayBeOver: boolean;
  readonly mayBeUnder: boolean;
  readonly maxScoops: number;
  readonly effort: Effort;
}

/** What was found: for each fill the number of times and what they come to together. */
export interface Found {
  readonly counts: readonly number[];
  readonly totals: readonly number[];
  readonly total: number;
  readonly scoops: number;
}

interface OrderedFill extends Fill {
  /** Its place in the list that was given. */
  readonly index: number;
  /** The smallest and the largest single fill, and the common measure, of this one and of all after it. */
  readonly smallest: number;
  readonly largest: number;
  readonly divisor: number;
}

/** Fills in the order in which they are tried, with the bounds that end a try. */
export interface OrderedFills {
  readonly order: readonly OrderedFill[];
  /** Whether all sizes are whole numbers. */
  readonly whole: boolean;
}

/** Errors are compared in thousandths of the amount, tenths of a percent. */
const PARTS = 1000;

// Searches shorter than this are not worth remembering where they have been.
const SHORT = 100;

/** How long searches may take together, in places looked at; each takes away what it looked at. */
export interface Effort {
  left: number;
}

// A longer search ends with the best choice known by then. All tools of the sets together take a twentieth of it at most;
// only dozens of tools whose sizes have next to nothing in common take more, and these make choices that are close.
const MOST_PLACES = 300_000;

/** Enough for a function that searches a few times, and at an end within a second. */
export function newEffort(searches: number = 3): Effort {
  return { left: searches * MOST_PLACES };
}

/** Puts fills in order. The same order serves every amount. */
export function orderedFills(fills: readonly Fill[]): OrderedFills {
  const whole = fills.every(({ min, step }) => Number.isSafeInteger(min) && Number.isSafeInteger(step));
  // Tools without marks first and each kind from the largest down: the bounds then bind soonest. The last tool's fill is
  // worked out and not tried, and one with marks has the most values to try.
  // Stryker disable ConditionalExpression,EqualityOperator: the order decides on the time alone
  const sorted = fills
    .map((fill, index) => ({ ...fill, index, marked: fill.min !== fill.max }))
    .sort((a, b) => Number(a.marked) - Number(b.marked) || b.max - a.max);
  // Stryker restore ConditionalExpression,EqualityOperator
  // Stryker disable next-line ArrayDeclaration: every place is filled below
  const order: OrderedFill[] = [];
  for (let i = sorted.length - 1; i >= 0; i--) {
    const { min, max, step, index } = sorted[i] as (typeof sorted)[number];
    const after = order[i + 1];
    order[i] = {
      min,
      max,
      step,
      index,
      smallest: Math.min(min, after?.smallest ?? min),
      largest: Math.max(max, after?.largest ?? max),
      divisor: whole ? Number(gcd(BigInt(step), BigInt(after?.divisor ?? step))) : 0,
    };
  }
  return { order, whole };
}

/**
 * The best choice of fills: the smallest error to a tenth of a percent of the amount, then the fewest scoops, then the smallest
 * error. Never one past the limit where there is one within it. Nothing at all is a choice (`scoops` 0) where the total may be
 * under.
 *
 * Takes one scoop more at a time, and for each number of scoops goes through every choice except those that cannot beat the
 * best one known. There are two bounds. N more scoops come to no less than n of the smallest and no more than n of the largest
 * that are left. And where sizes are whole numbers, their total is a multiple of the greatest common divisor of all that are
 * left.
 */
export function bestFills({ order, whole }: OrderedFills, target: Target): Found | undefined {
  const { amount, margin, limit, mayBeOver, mayBeUnder, maxScoops, effort } = target;
  const mostPlaces = Math.min(MOST_PLACES, effort.left);
  const all = order[0] as OrderedFill;
  const last = order.length - 1;
  const counts = zeros(order.length);
  const totals = zeros(order.length);

  // The totals that are still worth finding.
  const known = mayBeUnder ? largestFirst(order, target) : undefined;
  const worst = known ? errorWorthFinding(known, target) : Number.POSITIVE_INFINITY;
  const highest = Math.min(mayBeOver ? oneOver(order, amount, margin) : amount, amount + worst) + margin;
  const lowest = mayBeUnder ? amount - worst : amount - margin;
  let low = lowest;
  let high = highest;
  let places = 0;
  let best: Omit<Found, "counts" | "totals"> | undefined;
  let bestError = 0;
  const bestCounts = zeros(order.length);
  const bestTotals = zeros(order.length);

  // The amount itself, noise aside, is always allowed.
  function allowError(most: number): void {
    low = Math.max(lowest, amount - Math.max(most, margin));
    high = Math.min(highest, amount + Math.max(most, margin));
    // Stryker disable next-line ConditionalExpression: nothing would be found; it decides on the time alone
    if (noMultiple(low, high, all.divisor)) findNoMore();
  }
  // A range that holds nothing ends the search.
  function findNoMore(): void {
    low = Number.POSITIVE_INFINITY;
    high = Number.NEGATIVE_INFINITY;
  }
  function consider(total: number, scoops: number): void {
    if (total < low || total > high) return;
    const error = Math.abs(total - amount);
    bestError = error < margin ? 0 : error;
    best = { total, scoops };
    for (let i = 0; i <= last; i++) {
      const { index } = order[i] as OrderedFill;
      bestCounts[index] = counts[i] as number;
      bestTotals[index] = totals[i] as number;
    }
    if (bestError > 0) allowError(bestError - margin);
    else findNoMore();
  }

  // Takes all that is left with one tool: the total nearest below the amount, and the next one up.
  function fillUp(i: number, scoops: number, left: number, used: number): void {
    const { min, max, step } = order[i] as OrderedFill;
    const from = left * min;
    const to = left * max;
    const steps = Math.floor(Math.max(amount - used - from, 0) / step);
    counts[i] = left;
    totals[i] = Math.min(from + steps * step, to);
    consider(used + (totals[i] as number), scoops);
    totals[i] = Math.min(from + (steps + 1) * step, to);
    consider(used + (totals[i] as number), scoops);
    counts[i] = 0;
    totals[i] = 0;
  }

  function place(i: number, scoops: number, left: number, used: number): void {
    const { min, max, step, smallest, largest, divisor } = order[i] as OrderedFill;
    // Stryker disable all: what these three end early would find nothing; they decide on the time alone
    if (used + left * smallest > high || used + left * largest < low) return;
    if (noMultiple(low - used, high - used, divisor)) return;
    if (++places > mostPlaces) {
      findNoMore();
      return;
    }
    if (wasHere(i, left, used)) return;
    // Stryker restore all
    if (i === last) {
      fillUp(i, scoops, left, used);
      return;
    }
    const next = order[i + 1] as OrderedFill;
    const needed = low - used;
    // Stryker disable next-line ArithmeticOperator: for the bounds below alone
    const room = high - used;
    let most = left;
    let fewest = 0;
    // Stryker disable all: tighter or looser, these bounds decide on the time alone
    if (min === max) {
      // How many of these the rest of the scoops can still make up for.
      if (min > next.smallest)
        most = Math.min(left, Math.floor((room - left * next.smallest) / (min - next.smallest)));
      if (min > next.largest)
        fewest = Math.max(0, Math.ceil((needed - left * next.largest) / (min - next.largest)));
    }
    // Stryker restore all
    // Stryker disable next-line ConditionalExpression,EqualityOperator: an early end, which decides on the time alone
    for (let count = most; count >= fewest && low <= high; count--) {
      counts[i] = count;
      const rest = left - count;
      if (rest === 0) {
        fillUp(i, scoops, left, used);
        continue;
      }
      // Largest first: the big tool takes most of it.
      const base = count * min;
      const least = used + base + rest * next.largest;
      // Stryker disable next-line ArithmeticOperator: a looser end decides on the time alone
      const to = Math.min(count * max, high - used - rest * next.smallest) - base;
      // The lowest total worth finding rises with every find.
      // Stryker disable next-line ConditionalExpression,EqualityOperator: an early end, which decides on the time alone
      for (let steps = Math.floor(to / step); steps >= 0 && least + steps * step >= low; steps--) {
        const value = base + steps * step;
        totals[i] = value;
        place(i + 1, scoops, rest, used + value);
        // Stryker disable next-line ConditionalExpression,EqualityOperator: none of a tool has one value alone
        if (count === 0) break;
      }
    }
    counts[i] = 0;
    totals[i] = 0;
  }

  // The range of totals worth finding only ever shrinks, so what was not found from here before will not be found now.
  // Kept where totals coincide: whole sizes that go few times into the amount.
  const coincide = whole && highest < 1_000_000 * all.divisor;
  let seen: Set<number> | undefined;
  function wasHere(i: number, left: number, used: number): boolean {
    // Stryker disable next-line EqualityOperator: when remembering begins decides on the time alone
    if (!coincide || places < SHORT) return false;
    const key = (i * (maxScoops + 1) + left) * 2_000_000 + used / all.divisor;
    seen ??= new Set();
    if (seen.has(key)) return true;
    seen.add(key);
    return false;
  }

  // Fewer scoops than the largest tool goes into the amount fall short by a whole one of it: one more is always better.
  // Stryker disable next-line MethodExpression: an earlier start decides on the time alone
  const first = Math.min(Math.max(Math.floor(amount / all.largest), 1), maxScoops);
  for (let scoops = first; scoops <= maxScoops; scoops++) {
    place(0, scoops, scoops, 0);
    // Stryker disable next-line ConditionalExpression: what follows ends the search early
    if (best === undefined) continue;
    // Only an error of fewer thousandths is worth another scoop, or one that is no longer past the limit.
    const parts = partsOff(bestError, amount);
    if (parts === 0) break;
    const fewerParts = ((parts - 0.5) * amount) / PARTS - margin;
    allowError(bestError > limit + margin ? Math.max(limit + margin, fewerParts) : fewerParts);
    // Stryker disable next-line ConditionalExpression: nothing would be found; it decides on the time alone
    if (low > high || places > mostPlaces) break;
  }
  effort.left -= places;
  return best ? { counts: bestCounts, totals: bestTotals, ...best } : known;
}

/** The choice that takes the largest first: seldom the best one, but never over. It may be nothing at all. */
function largestFirst(order: readonly OrderedFill[], { amount, margin, maxScoops }: Target): Found {
  const counts = zeros(order.length);
  const totals = zeros(order.length);
  let total = 0;
  let scoops = 0;
  for (const { min, max, step, index } of order) {
    const room = amount - total + margin;
    let count = Math.min(maxScoops - scoops, Math.floor(room / max));
    let sum = count * max;
    if (scoops + count < maxScoops && room - sum >= min) {
      sum += min + Math.floor((room - sum - min) / step) * step;
      count++;
    }
    counts[index] = count;
    totals[index] = sum;
    total += sum;
    scoops += count;
  }
  return { counts, totals, total, scoops };
}

/** What is worse than a known choice need not be looked for: another class of error, or past the limit where this one isn't. */
function errorWorthFinding({ total, scoops }: Found, { amount, margin, limit }: Target): number {
  // As far over as nothing is under is no better, by more than the margin that is added to the range.
  if (scoops === 0) return amount - 2 * margin;
  const error = Math.max(amount - total, 0);
  const sameParts = ((partsOff(error, amount) + 0.5) * amount) / PARTS;
  return error > limit ? sameParts : Math.min(limit + margin, sameParts);
}

// A single fill that is over ends what is worth finding: the smallest of these, or where none is as large a whole one more.
function oneOver(order: readonly OrderedFill[], amount: number, margin: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { min, max, step } of order) {
    if (max < amount) continue;
    const steps = Math.ceil((amount - margin - min) / step);
    least = Math.min(least, Math.min(max, min + Math.max(steps, 0) * step));
  }
  return least === Number.POSITIVE_INFINITY ? amount + (order[0] as OrderedFill).largest : least;
}

// How many thousandths off. Halves go up, also where noise has made a little less of one.
function partsOff(error: number, amount: number): number {
  return Math.floor((PARTS * error) / amount + 0.5 + 1e-9);
}

function zeros(length: number): number[] {
  return new Array<number>(length).fill(0);
}

function noMultiple(low: number, high: number, of: number): boolean {
  return of > 0 && Math.floor(high / of) * of < low;
}
