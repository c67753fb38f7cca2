import { compareDecided } from "../units/decide.js";
import { positive } from "../units/result.js";
import type { Mass, MassUnit, Quantity, Volume, VolumeUnit } from "../units/types.js";
import { type Exact, exactUnit, quotient } from "./exact-sizes.js";
import type { Kit, KitTool } from "./kit.js";
import { amountOf, type MeasuringTool } from "./measuring-tool.js";
import { bestFills, type Effort } from "./search.js";

/**
 * Which way a measured amount may differ from the amount: `never-over` (a label's maximum), `never-under` (a
 * minimum), or `nearest` (either way).
 */
export type MeasuringRule = "never-over" | "never-under" | "nearest";

/** What is taken with one tool, the same each time. */
export interface MeasuredPart {
  /** The tool. */
  readonly tool: MeasuringTool;
  /** How many times it is filled. */
  readonly count: number;
  /** For a tool with marks: the mark it is filled to, each time. Without it the tool is filled level and whole. */
  readonly each?: Volume | Mass | undefined;
  /** What the fills come to together, in the tool's unit. */
  readonly amount: Volume | Mass;
}

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

/** The best measure of an amount with tools that all measure its kind; nothing where no choice of fills is allowed. */
export function nearestFills(
  amount: Quantity<VolumeUnit | MassUnit>,
  { tools, ordered, few, sizeOf }: Kit,
  { rule, maxScoops, limitPercent, closeEnoughPercent, effort }: Way,
  at: string,
): NearestFills | undefined {
  const { size, whole } = sizeOf(amount.unit);
  const target = positive(amount.value * size, at);
  // Amounts are the same where they differ by less than one part in 10^12, as in every decision.
  const margin = target * 1e-12;
  const wanted = {
    amount: target,
    margin,
    closeEnough: (target * Math.min(closeEnoughPercent, limitPercent)) / 100,
    mayBeOver: rule !== "never-over",
    mayBeUnder: rule !== "never-under",
    maxScoops,
    effort,
  };
  const found = few?.(wanted) ?? bestFills(ordered, wanted);
  if (found === undefined) return undefined;
  const { counts, totals, total, scoops } = found;
  const taken: Taken[] = [];
  for (let i = 0; i < tools.length; i++) {
    if (counts[i] === 0) continue;
    const from = tools[i] as KitTool;
    const marks = from.tool.graduation ? Math.round((totals[i] as number) / from.fill.step) : 0;
    taken.push({ from, count: counts[i] as number, marks });
  }
  const value =
    Math.abs(total - target) < margin
      ? amount.value
      : whole
        ? total / size
        : quotient(sumOf(taken), exactUnit(amount.unit));
  return { parts: partsOf(taken, tools), value, scoops };
}

/** A tool that is used, how many times, and the marks of all these fills together; 0 where it has none. */
interface Taken {
  readonly from: KitTool;
  readonly count: number;
  readonly marks: number;
}

/** What the fills come to, in liters or kilograms. */
function sumOf(taken: readonly Taken[]): Exact {
  let digits = 0n;
  let places = 0;
  for (const { from, count, marks } of taken) {
    digits += from.step.digits * BigInt(marks || count);
    // The same for all tools of a kit.
    places = from.step.places;
  }
  return { digits, places };
}

function partsOf(taken: readonly Taken[], tools: readonly KitTool[]): MeasuredPart[] {
  const fills: Taken[] = [];
  for (const one of taken) {
    if (one.marks === 0) {
      fills.push(one);
      continue;
    }
    const marked = fillsOf(one);
    // A tool that is taken for several fills anyway is not changed for one of them: that would be one tool more.
    if (marked.length === 1) fills.push(readClosest(marked[0] as Taken, tools));
    else fills.push(...marked);
  }
  fills.sort((a, b) => b.from.fill.max - a.from.fill.max || b.marks - a.marks);
  return fills.map(({ from: { tool }, count, marks }) => {
    const { capacity, graduation } = tool;
    if (graduation === undefined) return { tool, count, amount: amountOf(capacity, count) };
    return { tool, count, each: amountOf(graduation, marks), amount: amountOf(graduation, marks * count) };
  });
}

/** Marks of several fills as full ones first, then the rest, with none below the least that the tool reads. */
function fillsOf({ from, count, marks }: Taken): Taken[] {
  const fills: { from: KitTool; count: number; marks: number }[] = [];
  let rest = marks;
  for (let left = count; left > 0; left--) {
    const each = Math.min(from.most, rest - (left - 1) * from.least);
    const last = fills.at(-1);
    if (last?.marks === each) last.count++;
    else fills.push({ from, count: 1, marks: each });
    rest -= each;
  }
  return fills;
}

// Of the tools with a mark at this very amount the smallest: it is read more closely than a large one.
function readClosest(fill: Taken, tools: readonly KitTool[]): Taken {
  const amount = fill.marks * fill.from.fill.step;
  let best = fill;
  for (const from of tools) {
    if (!from.tool.graduation || from.fill.max >= best.from.fill.max) continue;
    const marks = Math.round(amount / from.fill.step);
    if (marks < from.least || marks > from.most) continue;
    if (compareDecided(amount, marks * from.fill.step) === 0) best = { from, count: fill.count, marks };
  }
  return best;
}

/** A measure's signed error in percent of the amount. */
export function percentOff(measured: number, amount: number): number {
  return ((measured - amount) / amount) * 100;
}
