import { SprayMathError } from "../errors.js";
import type { Mass, MassUnit, Quantity, Volume, VolumeUnit } from "../units/types.js";
import { atPlaces, exactly, exactUnit, product, quotient, timesExactly } from "./exact-sizes.js";
import { bestFills, type Fill, type Found } from "./search.js";
import { type MeasuringTool, marksOf } from "./tools.js";

/**
 * Which way a measured amount may differ from the amount wanted: `never-over` (a label's maximum), `never-under` (a
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
  readonly each?: Volume | Mass;
  /** What the fills come to together, in the tool's unit. */
  readonly amount: Volume | Mass;
}

/** The parts that come nearest, and what they come to. */
export interface Measured {
  readonly parts: readonly MeasuredPart[];
  /** Their sum in the unit of the amount that was wanted. */
  readonly value: number;
  readonly scoops: number;
}

interface ScaledTool {
  readonly tool: MeasuringTool;
  readonly fill: Fill;
}

/** What is to be measured, with tools that all measure its kind. */
export interface ToMeasure {
  readonly amount: Quantity<VolumeUnit | MassUnit>;
  readonly tools: readonly MeasuringTool[];
  readonly rule: MeasuringRule;
  readonly maxScoops: number;
  readonly limitPercent: number;
}

/** More scoops than this are miscounted: common practice, no source. A cup is 16 tablespoons. */
export const MOST_SCOOPS = 16;

/** The best measure of an amount with tools that all measure its kind; nothing where no choice of fills is allowed. */
export function measure({ amount, tools, rule, maxScoops, limitPercent }: ToMeasure): Measured | undefined {
  const unit = exactUnit(amount.unit);
  const wanted = product(exactly(String(amount.value)), unit);
  // Amounts are the same where they differ by less than one part in 10^12, as in every decision.
  const noise = { digits: wanted.digits, places: wanted.places + 12 };
  const limit = exactly(String(limitPercent));
  const marks = tools.map(marksOf);
  const places = Math.max(noise.places, ...marks.map(({ step }) => step.places));
  const target = atPlaces(wanted, places);
  const margin = atPlaces(noise, places);

  const scaled = marks.map(({ step, least, most }, i) => {
    const size = atPlaces(step, places);
    return { tool: tools[i] as MeasuringTool, fill: { min: least * size, max: most * size, step: size } };
  });
  const found = bestFills(
    scaled.map(({ fill }) => fill),
    {
      amount: target,
      above: target - margin,
      below: target + margin,
      limit: (target * limit.digits) / (100n * 10n ** BigInt(limit.places)),
      mayBeOver: rule !== "never-over",
      mayBeUnder: rule !== "never-under",
      maxScoops,
    },
  );
  if (found === undefined) return undefined;
  const same = found.total > target - margin && found.total < target + margin;
  const value = same ? amount.value : quotient({ digits: found.total, places }, unit);
  if (!Number.isFinite(percentOff(value, amount.value))) {
    throw new SprayMathError(
      "not-finite",
      "amount",
      `Given ${amount.value} ${amount.unit}, out of all proportion to the tools; wanted an amount nearer to what they hold.`,
    );
  }
  return { parts: partsOf(scaled, found), value, scoops: found.scoops };
}

function partsOf(scaled: readonly ScaledTool[], found: Found): MeasuredPart[] {
  const taken = new Map<string, { one: ScaledTool; each: bigint; count: number }>();
  for (const [i, one] of scaled.entries()) {
    for (const [each, times] of fillsOf(one.fill, found.counts[i] as number, found.totals[i] as bigint)) {
      const by = one.tool.graduation ? closestReading(scaled, each) : i;
      const key = `${by} ${each}`;
      const count = (taken.get(key)?.count ?? 0) + times;
      taken.set(key, { one: scaled[by] as ScaledTool, each, count });
    }
  }
  return [...taken.values()]
    .sort((a, b) => larger(a.one.fill.max, b.one.fill.max) || larger(a.each, b.each))
    .map(({ one: { tool, fill }, each, count }) => {
      const { capacity, graduation } = tool;
      if (graduation === undefined)
        return { tool, count, amount: { ...capacity, value: timesExactly(capacity.value, BigInt(count)) } };
      const marks = each / fill.step;
      return {
        tool,
        count,
        each: reading(graduation, marks),
        amount: reading(graduation, marks * BigInt(count)),
      };
    });
}

// Of the tools with a mark at this very amount the smallest: it is read more closely than a large one.
function closestReading(scaled: readonly ScaledTool[], each: bigint): number {
  let best = -1;
  for (const [i, { tool, fill }] of scaled.entries()) {
    if (!tool.graduation || each < fill.min || each > fill.max || each % fill.step !== 0n) continue;
    if (best < 0 || fill.max < (scaled[best] as ScaledTool).fill.max) best = i;
  }
  return best;
}

function larger(a: bigint, b: bigint): number {
  return Number(a < b) - Number(a > b);
}

function reading(graduation: Volume | Mass, marks: bigint): Volume | Mass {
  return { ...graduation, value: timesExactly(graduation.value, marks) };
}

/** What a tool holds when it is full, or filled to its highest mark. */
export function fullFill(tool: MeasuringTool): Volume | Mass {
  if (tool.graduation === undefined) return tool.capacity;
  return reading(tool.graduation, marksOf(tool).most);
}

/** The fills of a tool that a stock is made from: the whole of it, or 1, 2, 5, 10, 20, 50 ... marks from the least up. */
export function smallFills(tool: MeasuringTool): MeasuredPart[] {
  const { graduation } = tool;
  if (graduation === undefined) return [{ tool, count: 1, amount: tool.capacity }];
  const { least, most } = marksOf(tool);
  const marks: bigint[] = [];
  for (let ten = 1n; ten <= most; ten *= 10n) marks.push(ten, 2n * ten, 5n * ten);
  return marks
    .filter((mark) => mark >= least && mark <= most)
    .map((mark) => {
      const amount = reading(graduation, mark);
      return { tool, count: 1, each: amount, amount };
    });
}

/** A measure's signed error in per cent of the amount. */
export function percentOff(measured: number, amount: number): number {
  return ((measured - amount) / amount) * 100;
}

/** A total of several fills as full ones first, then the rest, with none below the least that the tool reads. */
function fillsOf({ min, max }: Fill, count: number, total: bigint): [bigint, number][] {
  const groups: [bigint, number][] = [];
  let rest = total;
  for (let left = count; left > 0; left--) {
    const most = rest - BigInt(left - 1) * min;
    const each = most < max ? most : max;
    const group = groups.at(-1);
    if (group?.[0] === each) group[1]++;
    else groups.push([each, 1]);
    rest -= each;
  }
  return groups;
}
