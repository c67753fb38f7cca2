import { SprayMathError } from "../errors.js";
import { compareDecided } from "../units/decide.js";
import type { Mass, MassUnit, Quantity, Volume, VolumeUnit } from "../units/types.js";
import { atPlaces, type Exact, exactUnit, quotient, timesExactly } from "./exact-sizes.js";
import { type PreparedTool, preparedTools } from "./prepared.js";
import { bestFills } from "./search.js";
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
export function measure(wanted: ToMeasure): Measured | undefined {
  const { amount, rule, maxScoops, limitPercent } = wanted;
  const { tools, ordered, sizeOf } = preparedTools(wanted.tools);
  const { size, whole } = sizeOf(amount.unit);
  const target = amount.value * size;
  // Amounts are the same where they differ by less than one part in 10^12, as in every decision.
  const margin = target * 1e-12;
  const found = bestFills(ordered, {
    amount: target,
    margin,
    limit: (target * limitPercent) / 100,
    mayBeOver: rule !== "never-over",
    mayBeUnder: rule !== "never-under",
    maxScoops,
  });
  if (found === undefined) return undefined;
  const marks = tools.map(({ tool, fill }, i) =>
    tool.graduation ? Math.round((found.totals[i] as number) / fill.step) : (found.counts[i] as number),
  );
  const same = Math.abs(found.total - target) < margin;
  const value = same
    ? amount.value
    : whole
      ? found.total / size
      : quotient(sumOf(tools, marks), exactUnit(amount.unit));
  if (!Number.isFinite(percentOff(value, amount.value))) {
    throw new SprayMathError(
      "not-finite",
      "amount",
      `Given ${amount.value} ${amount.unit}, out of all proportion to the tools; wanted an amount nearer to what they hold.`,
    );
  }
  return { parts: partsOf(tools, found.counts, marks), value, scoops: found.scoops };
}

/** So many marks of each tool together, in liters or kilograms. */
function sumOf(tools: readonly PreparedTool[], marks: readonly number[]): Exact {
  const places = Math.max(...tools.map(({ step }) => step.places));
  let digits = 0n;
  for (const [i, { step }] of tools.entries()) {
    if (marks[i] !== 0) digits += atPlaces(step, places) * BigInt(marks[i] as number);
  }
  return { digits, places };
}

interface TakenFill {
  readonly from: PreparedTool;
  readonly marks: number;
  readonly count: number;
}

function partsOf(
  tools: readonly PreparedTool[],
  counts: readonly number[],
  marks: readonly number[],
): MeasuredPart[] {
  const taken: TakenFill[] = [];
  for (let i = 0; i < tools.length; i++) {
    if (counts[i] === 0) continue;
    const one = tools[i] as PreparedTool;
    for (const [fill, times] of fillsOf(one, counts[i] as number, marks[i] as number)) {
      const read = one.tool.graduation ? closestReading(tools, fill * one.fill.step) : { by: i, marks: fill };
      const from = tools[read.by] as PreparedTool;
      taken.push({ from, marks: read.marks, count: times });
    }
  }
  return taken
    .sort((a, b) => b.from.fill.max - a.from.fill.max || b.marks - a.marks)
    .map(({ from: { tool }, marks: each, count }) => {
      const { capacity, graduation } = tool;
      if (graduation === undefined) return { tool, count, amount: reading(capacity, count) };
      return { tool, count, each: reading(graduation, each), amount: reading(graduation, each * count) };
    });
}

// Of the tools with a mark at this very amount the smallest: it is read more closely than a large one.
function closestReading(
  tools: readonly PreparedTool[],
  amount: number,
): { readonly by: number; readonly marks: number } {
  let best = { by: -1, marks: 0, max: Number.POSITIVE_INFINITY };
  for (const [by, { tool, fill, least, most }] of tools.entries()) {
    const marks = Math.round(amount / fill.step);
    if (!tool.graduation || marks < least || marks > most) continue;
    if (compareDecided(amount, marks * fill.step) === 0 && fill.max < best.max)
      best = { by, marks, max: fill.max };
  }
  return best;
}

function reading({ value, unit }: Volume | Mass, marks: number): Volume | Mass {
  return { value: timesExactly(value, marks), unit } as Volume | Mass;
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
  const marks: number[] = [];
  for (let ten = 1; ten <= most; ten *= 10) marks.push(ten, 2 * ten, 5 * ten);
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

/** Marks of several fills as full ones first, then the rest, with none below the least that the tool reads. */
function fillsOf({ least, most }: PreparedTool, count: number, marks: number): [number, number][] {
  const groups: [number, number][] = [];
  let rest = marks;
  for (let left = count; left > 0; left--) {
    const each = Math.min(most, rest - (left - 1) * least);
    const group = groups.at(-1);
    if (group?.[0] === each) group[1]++;
    else groups.push([each, 1]);
    rest -= each;
  }
  return groups;
}
