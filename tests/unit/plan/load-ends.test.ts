import { describe, expect, it } from "vitest";
import { type LoadEnd, loadEnds, type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { QUIET, STRIP, TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const rowsOf = (rows: number) =>
  ({ kind: "row-bands", rows, rowLength: qty(160, "ft"), bandWidth: qty(30, "in") }) as const;
const ends = (change: Partial<PlanInput>) => loadEnds(planApplication({ ...TWO_PRODUCTS, ...change }));
const rounded = ({ covers, done, least, most, ...end }: LoadEnd) =>
  [covers, done, least, most].map((one) => one && Number(one.toFixed(3))).concat(end as never);

describe("what a load covers", () => {
  const plan = planApplication(TWO_PRODUCTS);

  it("is what it sprays on the job, without the hose's part and the extra mix", () => {
    // 3.5 gal less 10 fl oz at 38.5688 gal/ac are 3,864.71 sq ft; the plot is 5,600 sq ft.
    expect(plan.loads.map(({ area }) => Number(area.value.toFixed(2)))).toEqual([3864.71, 1735.29]);
    // 0.247917 gal are extra: 5% of the plot.
    expect(plan.leftover.area?.value).toBeCloseTo(280, 9);
  });

  it("leaves the error of a dose on the land that its load's mix is enough for", () => {
    const [first] = plan.loads;
    const dose = first?.products[0]?.measured;
    // -0.0112624 fl oz on 3.5 gal, which are enough for 0.090747 ac.
    expect(dose?.ok && dose.rateError?.value).toBeCloseTo(-0.124107, 5);
  });

  it("is nothing of a load that is all extra, or all in the hose", () => {
    const spare = planApplication({ ...QUIET, reserve: { percent: 100 } });
    // 2.479 gal for the plot and as much again: 4 gal and 0.959 gal.
    expect(spare.loads.map(({ area }) => Number(area.value.toFixed(6)))).toEqual([5400, 0]);
    const long = planApplication({
      ...QUIET,
      sprayer: { tank: qty(1, "gal"), lineVolume: qty(1.5, "gal") },
    });
    expect(long.loads.map(({ area }) => Number(area.value.toFixed(1)))).toEqual([0, 1089, 2178, 2133]);
  });

  it("is whole rows where loads are split by them, whatever else is in the tank", () => {
    const { loads } = planApplication({ ...TWO_PRODUCTS, split: "whole-rows" });
    expect(loads.map(({ pieces }) => pieces)).toEqual([7, 7]);
    for (const { area } of loads) expect(area.value).toBeCloseTo(2800, 9);
  });
});

describe("where loads end", () => {
  it("is counted in rows, with how far off the first may end", () => {
    // 3,864.71 sq ft in rows of 400; 5% more output and 5% less.
    expect(ends({}).map(rounded)).toEqual([
      [9.662, 9.662, 9.202, 10.17, { load: 1, plot: 0, unit: "row" }],
      [4.338, 14, undefined, undefined, { load: 2, plot: 0, unit: "row" }],
    ]);
  });

  it("goes by the limit that the calibration's runs have", () => {
    const run = { used: qty(34, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") };
    const calibration = { kind: "strip-runs", runs: [run, run], limit: qty(10, "%") } as const;
    const [first] = ends({ calibration });
    expect(first?.least).toBeCloseTo(9.6618 / 1.1, 3);
    expect(first?.most).toBeCloseTo(9.6618 / 0.9, 3);
    // A limit that no place follows from.
    const [wide] = ends({ calibration: { ...calibration, limit: qty(100, "%") } });
    expect(wide?.least).toBeCloseTo(9.6618 / 1.5, 3);
    expect(wide?.most).toBeUndefined();
  });

  it("is counted in passes where rows are sprayed several at a time", () => {
    const calibration = {
      ...TWO_PRODUCTS.calibration,
      swath: qty(60, "in"),
      used: qty(68, "fl_oz"),
    } as const;
    const sprayer = { ...TWO_PRODUCTS.sprayer, rowsPerPass: 2 };
    const [first] = ends({ calibration: calibration as never, sprayer });
    expect(first?.unit).toBe("pass");
    expect(first?.done).toBeCloseTo(9.6618 / 2, 3);
    // Rows that differ don't make passes that are alike.
    const plot = {
      kind: "row-bands",
      rowLengths: [qty(1000, "ft"), qty(900, "ft")],
      bandWidth: qty(30, "in"),
    } as const;
    expect(ends({ plot, calibration: calibration as never, sprayer })[0]?.unit).toBe("part");
  });

  it("is counted in passes along the length of a rectangle", () => {
    const job = { calibration: STRIP, sprayer: { tank: qty(1, "gal") }, reserve: undefined };
    const wide = { kind: "rectangle", length: qty(60, "ft"), width: qty(100, "ft") } as const;
    // A gallon at 20 gal/ac is 2,178 sq ft; a pass of 4 ft along 100 ft is 400, one along 60 ft 240.
    const turned = { ...wide, length: wide.width, width: wide.length };
    expect(ends({ ...job, plot: turned })[0]).toMatchObject({ unit: "pass", along: qty(100, "ft") });
    expect(ends({ ...job, plot: turned })[0]?.done).toBeCloseTo(5.445, 9);
    expect(ends({ ...job, plot: wide })[0]).toMatchObject({ unit: "pass", along: qty(60, "ft") });
    expect(ends({ ...job, plot: wide })[0]?.done).toBeCloseTo(9.075, 9);
    expect(ends({ ...job, plot: { ...wide, fraction: 0.5 } })[0]?.unit).toBe("part");
    expect(ends({ ...job, plot: { ...wide, fraction: 1 } })).toEqual(ends({ ...job, plot: wide }));
    const known = { kind: "known", rate: qty(20, "gal/ac") } as const;
    const [part] = ends({ ...job, plot: wide, calibration: known });
    expect(part).toMatchObject({ unit: "part" });
    expect(part?.done).toBeCloseTo(2178 / 6000, 9);
  });

  it("is the length of row where a test row of trees was the calibration", () => {
    const calibration = {
      kind: "tree-row",
      used: qty(10, "L"),
      sides: 1,
      rowLength: qty(100, "m"),
      rowSpacing: qty(4, "m"),
    } as const;
    const sprayer = { tank: qty(100, "L") };
    // 20 L per 100 m of row on both sides: 100 L are 500 m. 0.4 ha in rows 4 m apart are 1,000 m of row.
    const ground = { value: 0.4, unit: "ha", of: "ground" } as const;
    const trees = ends({ plot: { kind: "ground-area", ground }, calibration, sprayer, reserve: undefined });
    expect(trees.map(rounded)).toEqual([
      [500, 500, 476.19, 526.316, { load: 1, plot: 0, unit: "m" }],
      [500, 1000, undefined, undefined, { load: 2, plot: 0, unit: "m" }],
    ]);
    // Rows that the plot has are counted.
    const rows = {
      kind: "tree-rows",
      rows: 10,
      rowLength: qty(100, "m"),
      stripWidth: qty(2, "m"),
      sides: 2,
    } as const;
    const counted = ends({
      plot: { ...rows, rowSpacing: qty(4, "m") },
      calibration,
      sprayer,
      reserve: undefined,
    });
    expect(counted.map(({ done, unit }) => [Number(done.toFixed(9)), unit])).toEqual([
      [5, "row"],
      [10, "row"],
    ]);
  });

  it("is counted in beds, and in rows of their own lengths", () => {
    const beds = { kind: "beds", beds: 14, bedLength: qty(160, "ft"), bedWidth: qty(30, "in") } as const;
    expect(ends({ plot: beds })[0]).toMatchObject({ unit: "bed" });
    const lengths = [1000, 500, 740].map((feet) => qty(feet, "ft"));
    const uneven = { kind: "row-bands", rowLengths: lengths, bandWidth: qty(30, "in") } as const;
    // 3,864.71 sq ft are 1,545.88 ft of band: two rows and 45.88 ft of 740.
    expect(ends({ plot: uneven }).map(({ done }) => Number(done.toFixed(3)))).toEqual([2.062, 3]);
    const own = { kind: "beds", bedLengths: lengths, bedWidth: qty(30, "in") } as const;
    expect(ends({ plot: own })[0]).toMatchObject({ unit: "bed" });
  });

  it("is in one of several plots, and counts from that plot's own start", () => {
    const [first, second] = ends({ plot: [rowsOf(4), rowsOf(10)] });
    expect(first).toMatchObject({ load: 1, plot: 1, unit: "row" });
    // Row 5.66 of the second plot, which it reaches from the first: no count of its own.
    expect(first?.done).toBeCloseTo(5.6618, 3);
    expect(first).not.toHaveProperty("covers");
    expect(second?.covers).toBeCloseTo(4.338, 3);
    // 3,800 sq ft and then row 1: 5% more output ends in the plot before, and has no limit that is counted here.
    expect(ends({ plot: [{ ...rowsOf(10), rowLength: qty(152, "ft") }, rowsOf(5)] })[0]).not.toHaveProperty(
      "least",
    );
  });

  it("has no upper limit for the last load, and no lower one that extra mix makes up for", () => {
    const only = { ...QUIET, plot: rowsOf(5), calibration: TWO_PRODUCTS.calibration };
    // 1.7708 gal for 5 rows: 5% more output would end after 4.76.
    const [bare] = loadEnds(planApplication(only));
    expect(bare?.least).toBeCloseTo(5 / 1.05, 9);
    expect(bare).not.toHaveProperty("most");
    expect(loadEnds(planApplication({ ...only, reserve: { percent: 5 } }))[0]).not.toHaveProperty("least");
  });

  it("is counted in plants or along the row, and nowhere for a volume", () => {
    const job = {
      sprayer: { tank: qty(4, "gal") },
      products: QUIET.products.map((product) => ({ ...product, rate: qty(8, "fl_oz/100gal") })) as never,
      tools: QUIET.tools,
    };
    const pots = { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") } as const;
    expect(loadEnds(planApplication({ ...job, size: pots })).map(rounded)).toEqual([
      [128, 128, 121.905, 134.737, { load: 1, unit: "pot" }],
      [128, 256, undefined, undefined, { load: 2, unit: "pot" }],
      [44, 300, undefined, undefined, { load: 3, unit: "pot" }],
    ]);
    const row = { kind: "row-length", length: qty(900, "ft"), rate: qty(5, "gal/1000ft") } as const;
    expect(loadEnds(planApplication({ ...job, size: row })).map(rounded)[0]).toEqual([
      800,
      800,
      761.905,
      842.105,
      { load: 1, unit: "ft" },
    ]);
    expect(loadEnds(planApplication({ ...job, size: { kind: "volume", volume: qty(9, "gal") } }))).toEqual(
      [],
    );
  });

  it("is asked of a plan", () => {
    expectRefused(() => loadEnds({} as never), "not-a-quantity", "plan", "finished plan");
  });
});
