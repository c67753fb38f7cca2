import { doseOf } from "../household/measure-out.js";
import { newEffort } from "../household/search.js";
import type { Tools } from "../household/tools.js";
import type { Reserve } from "../tank-mix/carrier.js";
import { type FillList, MOST_LOADS } from "../tank-mix/loads.js";
import { markedLoads } from "../tank-mix/marked-loads.js";
import { doseOnMark } from "../tank-mix/product-in-loads.js";
import { type UsableMark, usableMarks } from "../tank-mix/tank-marks.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, compareDecided, floorDecided, moreThan } from "../units/decide.js";
import { refusal } from "../units/message.js";
import type { Mass, Volume } from "../units/types.js";
import { doseRequest } from "./dose.js";
import type { Product } from "./input.js";
import { amountsIn, type KnownMix, loadedMix, type MixPlaces } from "./mix.js";

/** A job whose loads are to be chosen on the tank's marks, which are given. */
export interface ChoiceJob {
  /** The mix that the job takes, before it goes up to a mark. */
  readonly mix: KnownMix;
  /** The products, with what measures them. */
  readonly products: readonly Product[];
  readonly tools: Tools;
  readonly reserve?: Reserve | undefined;
  /** How many rows the plot has, where all are of one length. */
  readonly rows?: number | undefined;
}

/** Ways to split a job, the easiest first. */
export type ChosenSplits = readonly [ChosenSplit, ...ChosenSplit[]];

/** How many ways are kept, and how many loads more than necessary they may take. */
export interface ChoiceLimits {
  readonly most: number;
  readonly moreLoads: number;
}

/** What finds the one that a plan takes. */
export const ONE: ChoiceLimits = { most: 1, moreLoads: 1 };

/** A way to split a job that was chosen: the fill of each load, or whole rows to a load. */
export type ChosenSplit = FillList | { readonly pieces: number; readonly perLoad: number };

/** What the loads of a job cost the person who mixes them. */
export interface LoadCost {
  /** How many doses can't be measured with the tools. */
  readonly notMeasurable: number;
  /** The different tools that the doses take, by name. */
  readonly tools: readonly string[];
  /** How many times a tool is filled, in all loads. */
  readonly measures: number;
}

/** A mark that loads may end on, and what the doses of one load cost. */
interface MarkCost extends UsableMark, LoadCost {}

/** Loads that are alike: their mark, and how many they are. */
type Alike = readonly [mark: MarkCost, loads: number];

/** One way to split the job, with what it is ranked by. */
interface Way {
  readonly alike: readonly Alike[];
  /** Where rows are counted, the most in a load. */
  readonly perLoad?: number | undefined;
  readonly notMeasurable: number;
  readonly tools: number;
  readonly measures: number;
  readonly total: number;
  readonly loads: number;
}

/**
 * The ways to split a job on the tank's marks, the easiest first. All are looked at that have no more than two different fills,
 * and where the plot has rows, whole rows spread over the loads. Of those with the same two fills the best one stands for all.
 * Trusts its input.
 */
export function easiestSplits(
  job: ChoiceJob,
  { most, moreLoads }: ChoiceLimits,
  at: MixPlaces,
): ChosenSplits {
  const { mix, rows } = job;
  const limit = limitOf(job, at);
  const marks = costsOfMarks(job);
  const needed = mix.carrier.total.value;
  const ways = [...rowWays(job, marks, limit, moreLoads), ...fillWays(marks, needed, limit.most, moreLoads)];
  if (ways.length === 0)
    throw refusal(
      "conflict",
      "reserve-too-narrow",
      "reserve",
      "The least that these marks allow is {least} of mix, and your extra mix allows {limit}. Allow more extra mix.",
      { least: inMix(mix, limit.plain), limit: inMix(mix, limit.most) },
    );
  const different = new Map<string, Way>();
  for (const way of ways.sort(easierFirst)) {
    if (different.size === most) break;
    // Whole rows may come to the very loads that two fills do: the first of the two stays.
    const key = way.alike
      .map(([{ value }, loads]) => `${loads} of ${value}`)
      .sort()
      .join();
    if (!different.has(key)) different.set(key, way);
  }
  const [first, ...others] = [...different.values()].map(
    ({ alike, perLoad }): ChosenSplit =>
      perLoad !== undefined && rows !== undefined
        ? { pieces: rows, perLoad }
        : { fills: alike.flatMap(([{ mark }, loads]) => new Array<Volume>(loads).fill(mark)) },
  );
  return [first as ChosenSplit, ...others];
}

function inMix({ carrier: { total } }: KnownMix, value: number): Volume {
  return { value, unit: total.unit };
}

/** How much mix a way to split the job may take. */
interface MixLimit {
  readonly most: number;
  /** The least that full loads and a rest, or equal loads, take. */
  readonly plain: number;
  /** Whether the person set it. */
  readonly isSet: boolean;
}

// Unless the person allows more, none takes more mix than the plainest ways to split it do.
function limitOf({ mix, reserve }: ChoiceJob, at: MixPlaces): MixLimit {
  const totals = (["full-then-part", "equal"] as const).map(
    (split) => loadedMix({ ...mix, split }, at).carrier.total.value,
  );
  const plain = Math.min(...totals);
  const { sprayed, lines } = mix.carrier;
  if (reserve === undefined || !("percent" in reserve) || reserve.upTo === undefined)
    return { most: Math.max(...totals), plain, isSet: false };
  return { most: sprayed.value * (1 + reserve.upTo / 100) + lines.value, plain, isSet: true };
}

/** What the doses of a load cost at each mark of the tank. */
function costsOfMarks({ mix, products, tools }: ChoiceJob): MarkCost[] {
  const { total } = mix.carrier;
  const { tank, workingFill, leastLoad, marks = [] } = mix.sprayer;
  const strengths = amountsIn(mix);
  const effort = newEffort();
  return usableMarks({ tank, workingFill, leastLoad, marks }, total.unit).map((mark) => {
    const doses = strengths.map(({ strength, amount: { unit } }, k) => {
      const amount = { value: strength.value * mark.value, unit } as Volume | Mass;
      // As the dose of such a load is rounded.
      const { input } = doseRequest(doseOnMark(amount), products[k] as Product, tools, undefined);
      return doseOf(input, `products[${k}]`, effort);
    });
    return { ...mark, ...costOf(doses) };
  });
}

/** What doses cost together. */
export function costOf(doses: readonly ReturnType<typeof doseOf>[]): LoadCost {
  const measured = doses.flatMap((dose) => (dose.ok ? [dose] : []));
  return {
    notMeasurable: doses.length - measured.length,
    tools: [...new Set(measured.flatMap(({ parts }) => parts.map(({ tool }) => tool.name)))],
    measures: measured.reduce((sum, { scoops }) => sum + scoops, 0),
  };
}

/** Loads of a few different fills, so many of each, and what they cost together. */
function wayOf(alike: readonly Alike[], perLoad?: number): Way {
  const way = { alike, perLoad, notMeasurable: 0, tools: 0, measures: 0, total: 0, loads: 0 };
  for (const [i, [mark, loads]] of alike.entries()) {
    way.notMeasurable += loads * mark.notMeasurable;
    way.measures += loads * mark.measures;
    way.total += loads * mark.value;
    way.loads += loads;
    const before = alike.slice(0, i);
    for (const tool of mark.tools) if (!before.some(([other]) => other.tools.includes(tool))) way.tools++;
  }
  return way;
}

/** The best way with each fill, and with each two. */
function fillWays(marks: readonly MarkCost[], needed: number, limit: number, moreLoads: number): Way[] {
  const highest = (marks[marks.length - 1] as MarkCost).value;
  const fewest = ceilDecided(needed / highest);
  const most = Math.min(fewest + moreLoads, MOST_LOADS);
  const ways: Way[] = [];
  // The fuller tanks first: they are taken where nothing else counts.
  for (let i = marks.length - 1; i >= 0; i--)
    for (let j = i; j >= 0; j--) {
      const [high, low] = [marks[i] as MarkCost, marks[j] as MarkCost];
      let best: Way | undefined;
      for (let loads = fewest; loads <= most; loads++)
        for (const ofHigh of countsOfHigh(high.value, low.value, loads, needed, limit)) {
          const way = wayOf(
            i === j
              ? [[high, loads]]
              : [
                  [high, ofHigh],
                  [low, loads - ofHigh],
                ],
          );
          if (best === undefined || easierFirst(way, best) < 0) best = way;
        }
      if (best !== undefined) ways.push(best);
    }
  return ways;
}

/**
 * How many of so many loads may be the high ones: the fewest and the most that make a total within the limits. What lies between
 * is never easier than both: what it costs goes evenly from the one to the other.
 */
function countsOfHigh(high: number, low: number, loads: number, needed: number, limit: number): number[] {
  if (high === low) return moreThan(needed, loads * low) || moreThan(loads * low, limit) ? [] : [loads];
  const part = (total: number): number => Math.max(0, total - loads * low) / (high - low);
  const fewest = Math.max(1, ceilDecided(part(needed)));
  const most = Math.min(loads - 1, moreThan(loads * low, limit) ? 0 : floorDecided(part(limit)));
  return fewest > most ? [] : fewest === most ? [fewest] : [fewest, most];
}

/** Whole rows spread over the loads, so many to a load. */
function rowWays(
  { mix, rows }: ChoiceJob,
  marks: readonly MarkCost[],
  limit: MixLimit,
  moreLoads: number,
): Way[] {
  if (rows === undefined) return [];
  const { total, reserve, lines } = mix.carrier;
  const extra = reserve.value + lines.value;
  const each = (total.value - extra) / rows;
  const room = Math.max(0, (marks[marks.length - 1] as MarkCost).value - extra);
  const most = floorDecided(Math.min(rows, room / each));
  if (most < 1) return [];
  const { leastLoad } = mix.sprayer;
  const least = leastLoad === undefined ? 0 : inUnit(leastLoad, total.unit);
  const loadsFor = (perLoad: number): number => Math.ceil(rows / perLoad);
  const ways: Way[] = [];
  for (let perLoad = most; perLoad >= 1; perLoad--) {
    const count = loadsFor(perLoad);
    if (count > Math.min(loadsFor(most) + moreLoads, MOST_LOADS)) break;
    // One row fewer to a load makes as many loads: these are the same.
    if (perLoad > 1 && loadsFor(perLoad - 1) === count) continue;
    const pieces = { pieces: rows, perLoad, lines: lines.value, reserve: reserve.value, each, most };
    const alike = new Map<number, Alike>();
    for (const { mark } of markedLoads({ way: pieces, total: total.value, count, least, marks }))
      alike.set(mark.value, [mark as MarkCost, (alike.get(mark.value)?.[1] ?? 0) + 1]);
    const way = wayOf([...alike.values()], perLoad);
    if (!limit.isSet || !moreThan(way.total, limit.most)) ways.push(way);
  }
  return ways;
}

/** What matters to a person, in order. No dose of any way is over the label. */
function easierFirst(a: Way, b: Way): number {
  return (
    a.notMeasurable - b.notMeasurable ||
    a.tools - b.tools ||
    a.measures - b.measures ||
    compareDecided(a.total, b.total) ||
    a.loads - b.loads ||
    a.alike.length - b.alike.length
  );
}
