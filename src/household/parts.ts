import { compareDecided } from "../units/decide.js";
import type { Mass, Volume } from "../units/types.js";
import type { Exact } from "./exact-sizes.js";
import { amountOf, type Marks, type MeasuringTool } from "./measuring-tool.js";
import type { Fill, Found } from "./search.js";

/** A tool with what one fill of it can be. */
export interface KitTool extends Marks {
  readonly tool: MeasuringTool;
  /** The same in the measure that all the tools share. */
  readonly fill: Fill;
}

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

/** A choice of fills, and what a person takes with which tool. */
export interface Choice {
  readonly taken: readonly Taken[];
  readonly parts: readonly MeasuredPart[];
  /** What they come to, in the measure that all the tools share. */
  readonly total: number;
  readonly scoops: number;
}

/** What was found, tool by tool. */
export function choiceOf({ fills, total, scoops }: Found, tools: readonly KitTool[]): Choice {
  const taken = fills.map((fill): Taken => {
    const from = tools[fill.index] as KitTool;
    const marks = from.tool.graduation ? Math.round(fill.total / from.fill.step) : 0;
    return { from, count: fill.count, marks };
  });
  return { taken, parts: partsOf(taken, tools), total, scoops };
}

/** A tool that is used, how many times, and the marks of all these fills together; 0 where it has none. */
export interface Taken {
  readonly from: KitTool;
  readonly count: number;
  readonly marks: number;
}

/** What the fills come to, in liters or kilograms. */
export function sumOf(taken: readonly Taken[]): Exact {
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
    if (one.marks === 0) fills.push(one);
    // A tool that is taken for several fills is not changed for one of them: that would be one tool more.
    else if (one.count > 1) fills.push(...fillsOf(one));
    else fills.push(readClosest(one, tools));
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
