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
  /** The error that is close enough: up to it, fewer scoops count for more than a smaller error. */
  readonly closeEnough: number;
  /** At least one of them. */
  readonly mayBeOver: boolean;
  readonly mayBeUnder: boolean;
  readonly maxScoops: number;
  readonly effort: Effort;
}

/** What was found: the fills that are taken, and what they come to together. */
export interface Found {
  readonly fills: readonly FoundFill[];
  readonly total: number;
  readonly scoops: number;
}

/** A fill that is taken: its place in the list that was given, how many times, and what these come to. */
export interface FoundFill {
  readonly index: number;
  readonly count: number;
  readonly total: number;
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

/** The totals that are worth finding, from the one to the other. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

const NOTHING: Range = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };

/** The totals that are off by no more than an error, on the sides that are allowed. The amount itself, noise aside, always is. */
export function within(error: number, { amount, margin, mayBeOver, mayBeUnder }: Target): Range {
  const most = Math.max(error, margin);
  return { low: amount - (mayBeUnder ? most : margin), high: amount + (mayBeOver ? most : margin) };
}

/** The totals that are close enough. */
export function closeEnoughTo(target: Target): Range {
  return within(target.closeEnough + target.margin, target);
}

/** The totals that are closer than one that is known, by more than noise. */
export function closerThan(total: number, target: Target): Range {
  const error = Math.abs(total - target.amount);
  return error < target.margin ? NOTHING : within(error - target.margin, target);
}

/** Whether there is no multiple of a number among these totals. */
export function holdsNone({ low, high }: Range, of: number): boolean {
  // By 0, where sizes share no measure, the quotient is no number and the comparison is false.
  return low > high || Math.floor(high / of) * of < low;
}

/** The fewest of the largest fill that come to a total. */
export function leastScoops({ low }: Range, largest: number): number {
  // Stryker disable next-line MethodExpression: an earlier start decides on the time alone
  return Math.max(Math.ceil(low / largest), 1);
}

/**
 * The best choice of fills. Of those that are close enough: the fewest scoops, then the fewest different fills, then the
 * smallest error. Where none is: the smallest error, then the fewest scoops. Nothing at all is a choice (`scoops` 0) where
 * the total may be under.
 */
export function bestFills(fills: OrderedFills, target: Target): Found | undefined {
  return fewestFills(fills, target) ?? closestFills(fills, target);
}

function fewestFills(fills: OrderedFills, target: Target): Found | undefined {
  const enough = closeEnoughTo(target);
  const single = singleFill(fills.order, enough, target);
  if (single !== undefined) return single;
  let fewest = Number.POSITIVE_INFINITY;
  let closer = enough;
  return searchFills(fills, target, {
    worth: (tools) => (tools < fewest ? enough : tools === fewest ? closer : NOTHING),
    take(total, tools) {
      fewest = tools;
      closer = closerThan(total, target);
    },
    // One scoop more is no better.
    ended: () => fewest < Number.POSITIVE_INFINITY,
  });
}

/** The one fill that comes closest. With a tool that has marks, one is most often enough. */
function singleFill(order: readonly OrderedFill[], worth: Range, { amount }: Target): Found | undefined {
  let { low, high } = worth;
  let best: FoundFill | undefined;
  for (const { min, max, step, index } of order) {
    const below = min + Math.floor(Math.max(Math.min(amount, max) - min, 0) / step) * step;
    for (const total of [below, Math.min(below + step, max)]) {
      if (total < low || total > high) continue;
      best = { index, count: 1, total };
      const error = Math.abs(total - amount);
      low = Math.max(low, amount - error);
      high = Math.min(high, amount + error);
    }
  }
  return best && { fills: [best], total: best.total, scoops: 1 };
}

function closestFills(fills: OrderedFills, target: Target): Found | undefined {
  const { order } = fills;
  const { amount, margin, mayBeUnder } = target;
  const greedy = mayBeUnder ? largestFirst(order, target) : undefined;
  let worth: Range;
  if (greedy === undefined) {
    worth = { low: amount - margin, high: oneOver(order, amount, margin) + margin };
    // Nothing at all takes no scoop. Another choice that comes as close as one of several scoops may take fewer.
  } else if (greedy.scoops === 0) worth = closerThan(0, target);
  else worth = within(Math.abs(greedy.total - amount) + margin, target);
  const { divisor } = order[0] as OrderedFill;
  const found = searchFills(fills, target, {
    worth: () => worth,
    take(total) {
      worth = closerThan(total, target);
    },
    ended: () => holdsNone(worth, divisor),
  });
  return found ?? greedy;
}

/** What a search is after. */
interface Goal {
  /** The totals that are worth finding with so many different fills; ever fewer. */
  worth(tools: number): Range;
  /** Hears of a choice whose total is worth it: what is taken last is found. */
  take(total: number, tools: number): void;
  /** Whether what takes one scoop more is not worth finding. */
  ended(): boolean;
}

/**
 * Takes one scoop more at a time, and for each number of scoops goes through every choice except those that cannot be worth
 * it. There are two bounds. N more scoops come to no less than n of the smallest and no more than n of the largest that are
 * left. And where sizes are whole numbers, their total is a multiple of the greatest common divisor of all that are left.
 */
function searchFills({ order }: OrderedFills, target: Target, goal: Goal): Found | undefined {
  const { amount, maxScoops, effort } = target;
  const mostPlaces = Math.min(MOST_PLACES, effort.left);
  const all = order[0] as OrderedFill;
  const last = order.length - 1;
  const counts = zeros(order.length);
  const totals = zeros(order.length);
  let places = 0;
  let best: { readonly total: number; readonly scoops: number } | undefined;
  const bestCounts = zeros(order.length);
  const bestTotals = zeros(order.length);

  function consider(total: number, scoops: number, tools: number): void {
    const { low, high } = goal.worth(tools);
    if (total < low || total > high) return;
    best = { total, scoops };
    for (let i = 0; i <= last; i++) {
      bestCounts[i] = counts[i] as number;
      bestTotals[i] = totals[i] as number;
    }
    goal.take(total, tools);
  }

  // Takes all that is left with one tool: the total nearest below the amount, and the next one up.
  function fillUp(i: number, scoops: number, left: number, used: number, tools: number): void {
    const { min, max, step } = order[i] as OrderedFill;
    const from = left * min;
    const to = left * max;
    const steps = Math.floor(Math.max(amount - used - from, 0) / step);
    counts[i] = left;
    totals[i] = Math.min(from + steps * step, to);
    consider(used + (totals[i] as number), scoops, tools);
    totals[i] = Math.min(from + (steps + 1) * step, to);
    consider(used + (totals[i] as number), scoops, tools);
    counts[i] = 0;
    totals[i] = 0;
  }

  // `tools` are those used up to here, and the one more that what is left takes at least.
  function place(i: number, scoops: number, left: number, used: number, tools: number): void {
    const { min, max, step, smallest, largest, divisor } = order[i] as OrderedFill;
    const { low, high } = goal.worth(tools);
    // Stryker disable all: what these end early would find nothing; they decide on the time alone
    if (used + left * smallest > high || used + left * largest < low) return;
    if (holdsNone({ low: low - used, high: high - used }, divisor)) return;
    if (places >= mostPlaces) return;
    places++;
    // Stryker restore all
    if (i === last) {
      fillUp(i, scoops, left, used, tools);
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
    for (let count = most; count >= fewest; count--) {
      counts[i] = count;
      const rest = left - count;
      if (rest === 0) {
        fillUp(i, scoops, left, used, tools);
        continue;
      }
      const toolsThen = count === 0 ? tools : tools + 1;
      // Largest first: the big tool takes most of it.
      const base = count * min;
      const least = used + base + rest * next.largest;
      // Stryker disable next-line ArithmeticOperator: a looser end decides on the time alone
      const to = Math.min(count * max, high - used - rest * next.smallest) - base;
      // The lowest total worth finding rises with every find.
      for (
        let steps = Math.floor(to / step);
        // Stryker disable next-line ConditionalExpression,EqualityOperator,ArithmeticOperator: an early end, which decides on the time alone
        steps >= 0 && least + steps * step >= goal.worth(toolsThen).low;
        steps--
      ) {
        const value = base + steps * step;
        totals[i] = value;
        place(i + 1, scoops, rest, used + value, toolsThen);
        // Stryker disable next-line ConditionalExpression,EqualityOperator: none of a tool has one value alone
        if (count === 0) break;
      }
    }
    counts[i] = 0;
    totals[i] = 0;
  }

  for (let scoops = leastScoops(goal.worth(1), all.largest); scoops <= maxScoops && !goal.ended(); scoops++) {
    place(0, scoops, scoops, 0, 1);
    // Stryker disable next-line ConditionalExpression,EqualityOperator: nothing would be found; it decides on the time alone
    if (places >= mostPlaces) break;
  }
  effort.left -= places;
  return best && { fills: takenOf(order, bestCounts, bestTotals), ...best };
}

function takenOf(
  order: readonly OrderedFill[],
  counts: readonly number[],
  totals: readonly number[],
): FoundFill[] {
  const taken: FoundFill[] = [];
  for (const [i, { index }] of order.entries()) {
    const count = counts[i] as number;
    if (count > 0) taken.push({ index, count, total: totals[i] as number });
  }
  return taken;
}

/** The choice that takes the largest first: seldom the best one, but never over. It may be nothing at all. */
function largestFirst(order: readonly OrderedFill[], { amount, margin, maxScoops }: Target): Found {
  const fills: FoundFill[] = [];
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
    if (count > 0) fills.push({ index, count, total: sum });
    total += sum;
    scoops += count;
  }
  return { fills, total, scoops };
}

// A single fill that is over ends what is worth finding: the smallest of these, or where none is as large a whole one more.
function oneOver(order: readonly OrderedFill[], amount: number, margin: number): number {
  let least = Number.POSITIVE_INFINITY;
  // Stryker disable next-line BlockStatement: without these one more is a bound that is looser
  for (const { min, max, step } of order) {
    // Stryker disable next-line ConditionalExpression,EqualityOperator: so is every larger fill, which decides on the time alone
    if (max < amount) continue;
    // Stryker disable next-line ArithmeticOperator: so is every later mark
    const steps = Math.ceil((amount - margin - min) / step);
    // Stryker disable next-line MethodExpression: as above
    least = Math.min(least, Math.min(max, min + Math.max(steps, 0) * step));
  }
  // Stryker disable next-line EqualityOperator: as above
  return least === Number.POSITIVE_INFINITY ? amount + (order[0] as OrderedFill).largest : least;
}

function zeros(length: number): number[] {
  return new Array<number>(length).fill(0);
}
