import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type LoadChoice,
  loadChoices,
  type PlanInput,
  planApplication,
  type Split,
} from "../../../src/plan/index.ts";
import { qty, type Volume } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { runs } from "../../helpers/runs.ts";

const nice = (min: number, max: number, steps: number) =>
  fc.integer({ min, max }).map((value) => value / steps);

const liquid = fc.oneof(
  fc.constantFrom(
    qty(1, "pt/ac"),
    qty(2, "pt/ac"),
    qty(1, "qt/ac"),
    qty(0.75, "L/ha"),
    qty(8, "fl_oz/100gal"),
  ),
  nice(5, 40, 10).map((value) => qty(value, "pt/ac")),
);
const products = fc
  .tuple(liquid, fc.option(nice(8, 320, 10), { nil: undefined }))
  .map(([rate, dry]): PlanInput["products"] => [
    { name: "Product A", form: "liquid", rate },
    ...(dry === undefined ? [] : [{ name: "Product B", form: "dry", rate: qty(dry, "oz/ac") } as const]),
  ]);
const marks = fc.constantFrom<Volume | Volume[]>(
  qty(0.5, "gal"),
  qty(1, "qt"),
  qty(1, "L"),
  [qty(1, "gal"), qty(2, "gal"), qty(3, "gal"), qty(3.5, "gal")],
  [qty(4, "L"), qty(10, "L"), qty(15, "L"), qty(0.5, "gal")],
);

/** A small job: a few loads of a backpack sprayer, in rows of one length or not. */
const jobs: fc.Arbitrary<PlanInput> = fc.record({
  plot: fc.oneof(
    nice(2, 24, 100).map((acres) => ({
      kind: "treated-area" as const,
      treated: { ...qty(acres, "ac"), of: "treated" as const },
    })),
    fc.record({
      kind: fc.constant("row-bands" as const),
      rows: fc.integer({ min: 2, max: 14 }),
      rowLength: nice(60, 200, 1).map((feet) => qty(feet, "ft")),
      bandWidth: fc.constant(qty(30, "in")),
    }),
  ),
  calibration: nice(40, 120, 2).map((rate) => ({ kind: "known" as const, rate: qty(rate, "gal/ac") })),
  sprayer: fc.record(
    {
      tank: fc.constant(qty(4, "gal")),
      marks,
      workingFill: fc.constantFrom(qty(3.5, "gal"), qty(3, "gal")),
      lineVolume: fc.constant(qty(10, "fl_oz")),
      leastLoad: fc.constantFrom(qty(0.5, "gal"), qty(3, "L")),
    },
    { requiredKeys: ["tank", "marks"] },
  ),
  reserve: fc.oneof(
    fc.constantFrom({ percent: 0 }, { percent: 5 }, { percent: 0, upTo: 10 }, { percent: 2, upTo: 25 }),
    fc.constant({ volume: qty(1, "qt") }),
  ),
  products,
  tools: fc.constantFrom(
    "us-spoons",
    "us-cups-and-spoons",
    "us-ounce-measures",
    "metric-measures",
    "syringes",
  ),
});

/** What a way to split a job costs, in the order in which it matters, and its loads. */
interface Way {
  readonly key: readonly number[];
  readonly fills: string;
}

function wayOf(job: PlanInput, split: Split): Way {
  const { loads, carrier } = planApplication({ ...job, split });
  const doses = loads.flatMap(({ products: all }) => all.map(({ measured }) => measured));
  const measured = doses.flatMap((dose) => (dose.ok ? [dose] : []));
  const tools = new Set(measured.flatMap(({ parts }) => parts.map(({ tool }) => tool.name)));
  const key = [
    doses.length - measured.length,
    tools.size,
    measured.reduce((sum, { scoops }) => sum + scoops, 0),
    // The left-over, by all that is mixed, noise aside.
    Number(carrier.total.value.toPrecision(9)),
    loads.length,
    new Set(loads.map((load) => load.carrier.value)).size,
  ];
  return {
    key,
    fills: loads
      .map((load) => load.carrier.value)
      .sort()
      .join(),
  };
}

function compare({ key: a }: Way, { key: b }: Way): number {
  const at = a.findIndex((one, i) => one !== b[i]);
  return at < 0 ? 0 : (a[at] as number) - (b[at] as number);
}

const inGallons = ({ value, unit }: Volume): number =>
  value * { gal: 1, qt: 1 / 4, L: 1 / 3.785411784, fl_oz: 1 / 128 }[unit as "gal"];
const rounded = (value: number): number => Number(value.toPrecision(10));

/** Every way to split a job, by brute force: each number of loads, with each one and each two of the marks. */
function everyWay(job: PlanInput, moreLoads: number): Way[] {
  const { sprayer, reserve } = job;
  const all = Array.isArray(sprayer.marks)
    ? (sprayer.marks as Volume[])
    : Array.from({ length: 40 }, (_, i) => {
        const { value, unit } = sprayer.marks as Volume;
        return { value: value * (i + 1), unit };
      });
  const most = inGallons(sprayer.workingFill ?? sprayer.tank);
  const least = sprayer.leastLoad === undefined ? 0 : inGallons(sprayer.leastLoad);
  const usable = all.filter(
    (mark) => rounded(inGallons(mark)) <= rounded(most) && rounded(inGallons(mark)) >= rounded(least),
  );
  const highest = Math.max(...usable.map(inGallons));
  const plain = (["full-then-part", "equal"] as const).map(
    (split) => planApplication({ ...job, split }).carrier,
  );
  const [{ sprayed, lines }] = plain as [(typeof plain)[0]];
  const {
    sprayer: { marks: _, leastLoad: __, ...unmarked },
  } = job;
  const needed = planApplication({ ...job, sprayer: unmarked, split: "equal" }).carrier.total.value;
  const upTo = reserve !== undefined && "percent" in reserve ? reserve.upTo : undefined;
  const limit =
    upTo === undefined
      ? Math.max(...plain.map(({ total }) => total.value))
      : sprayed.value * (1 + upTo / 100) + lines.value;
  const fewest = Math.ceil(rounded(needed / highest));
  const ways: Way[] = [];
  for (const [i, one] of usable.entries())
    for (const other of usable.slice(i)) {
      let best: Way | undefined;
      for (let loads = fewest; loads <= fewest + moreLoads; loads++)
        for (let ones = 1; ones <= loads; ones++) {
          // One mark alone is a way of its own.
          if ((one === other) !== (ones === loads)) continue;
          const fills = [...Array(ones).fill(one), ...Array(loads - ones).fill(other)] as Volume[];
          const total = rounded(fills.reduce((sum, fill) => sum + inGallons(fill), 0));
          if (total < rounded(needed) || total > rounded(limit)) continue;
          const way = wayOf(job, { fills });
          if (best === undefined || compare(way, best) < 0) best = way;
        }
      if (best !== undefined) ways.push(best);
    }
  if ("rows" in job.plot) {
    const counts = new Map<number, Way>();
    let rowsFewest = Number.POSITIVE_INFINITY;
    for (let rowsPerLoad = job.plot.rows ?? 0; rowsPerLoad >= 1; rowsPerLoad--) {
      try {
        const way = wayOf(job, { rowsPerLoad });
        const [total, loads] = way.key.slice(3, 5) as [number, number];
        rowsFewest = Math.min(rowsFewest, loads);
        const isWithin = upTo === undefined || total <= rounded(limit);
        if (loads <= rowsFewest + moreLoads && isWithin) counts.set(loads, way);
      } catch {
        // A row is more than a load.
        break;
      }
    }
    ways.push(...counts.values());
  }
  ways.sort(compare);
  // Whole rows and two fills may be the same loads.
  return ways.filter(({ fills }, i) => ways.findIndex((other) => other.fills === fills) === i);
}

describe("loadChoices", () => {
  it("finds what a look at every way to split the job finds", () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 0, max: 2 }), (job, moreLoads) => {
        const every = everyWay(job, moreLoads);
        const look = (): LoadChoice[] => loadChoices(job, { most: 5, moreLoads });
        if (every.length === 0) {
          expect(errorOf(look).path).toBe("reserve");
          return;
        }
        expect(look().map(({ split }) => wayOf(job, split).key)).toEqual(
          every.slice(0, 5).map(({ key }) => key),
        );
      }),
      runs(3000, 150),
    );
  });

  it("says of each way what its own plan says", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { reserve } = job;
        fc.pre(reserve !== undefined && !("upTo" in reserve));
        for (const { split, loads, carrier, leftover, cost } of loadChoices(job)) {
          const plan = planApplication({ ...job, split });
          expect({ loads, carrier, leftover }).toEqual({
            loads: plan.loads,
            carrier: plan.carrier,
            leftover: plan.leftover,
          });
          const [notMeasurable, tools, measures] = wayOf(job, split).key;
          expect([cost.notMeasurable, cost.tools.length, cost.measures]).toEqual([
            notMeasurable,
            tools,
            measures,
          ]);
        }
        const [first] = loadChoices(job, { most: 1 });
        expect(planApplication({ ...job, split: "easiest" }).loads).toEqual(first?.loads);
      }),
      runs(1000, 100),
    );
  });
});
