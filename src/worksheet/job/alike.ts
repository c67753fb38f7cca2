import type { AnyPlan } from "../../plan/result.js";
import type { Writer } from "../words/writer.js";

/** The places of loads in their list that read alike, in the order of the first of each: once is enough to read. */
export function alike(texts: readonly string[]): readonly (readonly number[])[] {
  const places = new Map<string, number[]>();
  texts.forEach((text, at) => {
    const known = places.get(text);
    if (known === undefined) places.set(text, [at]);
    else known.push(at);
  });
  return [...places.values()];
}

/** The heading of loads that are alike: `Load 1 of 2`, `Loads 1 to 5 and 7 of 7, each`. */
export function loadsTitle(places: readonly number[], { loads }: AnyPlan, writer: Writer): string {
  const { messages, fill, count } = writer;
  const { text } = messages;
  const [first = 0] = places;
  if (places.length === 1) return fill(text.load, { number: first + 1, count: loads.length });
  const runs = runsOf(places).flatMap(([from, to]) =>
    to > from + 1
      ? [fill(text.loadsFromTo, { from: from + 1, to: to + 1 })]
      : (from === to ? [from] : [from, to]).map((at) => count(at + 1)),
  );
  return fill(text.loadsAlike, { loads: listed(runs, writer), count: loads.length });
}

/** `1, 3 and 5 to 8`; of a list that is cut short, what fits. */
function listed(runs: readonly string[], { messages: { text }, fill }: Writer): string {
  if (runs.length > MOST_RUNS) return [...runs.slice(0, MOST_RUNS), "…"].join(", ");
  const before = runs.slice(0, -1).join(", ");
  const last = runs.at(-1) as string;
  return before === "" ? last : fill(text.loadsPair, { from: before, to: last });
}

// More than these don't fit on a line.
const MOST_RUNS = 8;

/** Places one after another, as from and to. */
function runsOf(places: readonly number[]): (readonly [from: number, to: number])[] {
  const runs: [number, number][] = [];
  for (const at of places) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === at - 1) last[1] = at;
    else runs.push([at, at]);
  }
  return runs;
}
