import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import { calibrationRecord } from "../../../src/output-rate/index.ts";
import {
  type ActualApplication,
  comparePlans,
  type PlanInput,
  type Product,
  planApplication,
  planSensitivity,
  readRecord,
  reconcile,
} from "../../../src/plan/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import { CONDITIONS, MEASUREMENTS } from "../../helpers/output-rate-samples.ts";
import { CALIBRATIONS, PLOTS } from "../../helpers/plan-inputs.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const JOB: PlanInput = {
  plot: { kind: "row-bands", name: "East rows", rows: 10, rowLength: qty(50, "m"), bandWidth: qty(60, "cm") },
  calibration: {
    kind: "strip",
    used: { ...qty(2, "L"), resolution: qty(0.01, "L") },
    swath: qty(60, "cm"),
    distance: qty(100, "m"),
  },
  sprayer: { tank: qty(15, "L"), lineVolume: qty(0.5, "L") },
  reserve: { percent: 5 },
  products: [
    {
      name: "Product A",
      form: "liquid",
      rate: qty(2, "L/ha"),
      label: { max: qty(2, "L/ha"), seasonMax: qty(5, "L/ha") },
      soFar: { rate: qty(2, "L/ha"), applications: 1 },
      registration: "000-000",
      reEntryHours: 12,
      preHarvestDays: 7,
    },
    { name: "Product B", form: "dry", rate: qty(1, "kg/100L"), reEntryHours: 24 },
  ],
  tools: "syringes",
};
const [PRODUCT_A] = JOB.products as readonly [PlanInput["products"][number]];
const plan = planApplication(JOB);

describe("planSensitivity", () => {
  const found = planSensitivity(plan);
  const at = (path: string) => found.find((one) => one.path === path);

  it("moves the mix one for one with what the sprayer puts out, and against width and distance", () => {
    // total = sprayed × 1.05 + 0.5 L, so a per cent of the output moves a little less than a per cent of the total.
    const { sprayed, total } = plan.carrier;
    const share = (sprayed.value * 1.05) / total.value;
    expect(at("calibration.used")?.mix).toBeCloseTo(share, 5);
    expect(at("calibration.distance")?.mix).toBeCloseTo(-share, 5);
    expect(at("sprayer.lineVolume")?.mix).toBeCloseTo(1 - share, 5);
  });

  it("leaves a rate per area nearly alone when the output moves, and a rate per carrier not", () => {
    const [perArea, perCarrier] = at("calibration.used")?.products ?? [];
    const lines = 0.5 / plan.carrier.total.value;
    expect(perArea?.percent).toBeCloseTo(-lines, 5);
    expect(perCarrier?.percent).toBeCloseTo(1 - lines, 5);
  });

  it("takes label rates one for one and counts by one more", () => {
    expect(at("products[0].rate")?.products).toEqual([
      { name: "Product A", percent: 1 },
      { name: "Product B", percent: 0 },
    ]);
    const rows = at("plot.rows");
    expect(rows?.change).toBe("one-more");
    expect(rows?.mix).toBeCloseTo(
      (100 * (plan.carrier.sprayed.value / 10) * 1.05) / plan.carrier.total.value,
      5,
    );
  });

  it("names no field that moves nothing, and sorts the strongest first", () => {
    const paths = found.map(({ path }) => path);
    expect(paths).not.toContain("calibration.used.resolution");
    expect(paths).not.toContain("sprayer.tank");
    expect(paths[0]).toBe("plot.rows");
  });

  it("leaves out what cannot move: lines that hold nothing, and a fraction that is all", () => {
    const plot = (fraction: number) =>
      ({ kind: "rectangle", length: qty(100, "m"), width: qty(50, "m"), fraction }) as const;
    const paths = (fraction: number) =>
      planSensitivity(
        planApplication({
          ...JOB,
          plot: plot(fraction),
          sprayer: { tank: qty(15, "L"), lineVolume: qty(0, "L") },
        }),
      ).map(({ path }) => path);
    expect(paths(0.5)).toContain("plot.fraction");
    expect(paths(0.5)).not.toContain("sprayer.lineVolume");
    expect(paths(1)).not.toContain("plot.fraction");
  });

  it("has an answer for every kind of plot and calibration", () => {
    // Of all the ground, which a rate per area of ground is for.
    const plot = { kind: "rectangle", length: qty(50, "m"), width: qty(20, "m") } as const;
    const paths = [
      ...PLOTS.map((one) => ({ ...JOB, plot: one })),
      ...CALIBRATIONS.map((calibration) => ({ ...JOB, plot, calibration })),
    ].map((job) => planSensitivity(planApplication(job)).map(({ path }) => path));
    for (const found of paths) expect(found).toContain("products[0].rate");
    const counts = paths.flat().filter((path) => /(rows|beds|count|plants|nozzlesPerRow)$/.test(path));
    expect(new Set(counts)).toEqual(
      new Set([
        "plot.rows",
        "plot.beds",
        "plot.spots[0].count",
        "plot.spots[1].count",
        "plot.spots[2].count",
        "calibration.plants",
      ]),
    );
  });

  it("goes one way alone at a limit: bands as wide as their rows, all of the ground, a range's highest rate", () => {
    const rate = { low: qty(1, "L/ha"), high: qty(2, "L/ha"), chosen: qty(2, "L/ha") };
    const plot = {
      kind: "row-bands",
      rows: 10,
      rowLength: qty(50, "m"),
      bandWidth: qty(1, "m"),
      rowSpacing: qty(1, "m"),
    } as const;
    const found = planSensitivity(
      planApplication({
        ...JOB,
        plot,
        reserve: { percent: 100 },
        products: [{ ...PRODUCT_A, rate } as Product],
      }),
    );
    const mix = (path: string) => found.find((one) => one.path === path)?.mix ?? 0;
    expect(mix("plot.bandWidth")).toBeCloseTo(mix("plot.rowLength"), 4);
    // As much reserve as is sprayed: a per cent of 100 is half a per cent of the whole, less what the lines hold.
    expect(mix("reserve.percent")).toBeCloseTo(mix("plot.rowLength") / 2, 2);
    expect(found.find(({ path }) => path === "products[0].rate.chosen")?.products[0]?.percent).toBeCloseTo(
      1,
      4,
    );
  });

  it("looks at measurements and counts alone, the strongest first", () => {
    const runs = MEASUREMENTS["strip-runs"];
    const record = calibrationRecord({
      date: "2026-04-01",
      measurement: { ...runs, limit: qty(20, "%") } as never,
      conditions: CONDITIONS,
    });
    const product = {
      ...PRODUCT_A,
      form: "dry",
      rate: { rate: qty(2, "kg/ha"), per: "treated" },
      label: { max: qty(3, "kg/ha") },
      soFar: { rate: qty(1, "kg/ha") },
      price: { amount: 3, per: qty(1, "kg") },
      bulkDensity: qty(1, "kg/L"),
    } as const;
    const found = planSensitivity(
      planApplication({ ...JOB, calibration: { kind: "record", record }, products: [product] }),
    );
    const run = (i: number) =>
      ["used", "swath", "distance"].map((name) => `calibration.record.measurement.runs[${i}].${name}`);
    expect(found.map(({ path }) => path).sort()).toEqual(
      [
        "plot.rows",
        "plot.rowLength",
        "plot.bandWidth",
        "sprayer.lineVolume",
        "reserve.percent",
        "products[0].rate.rate",
        ...[0, 1, 2, 3].flatMap(run),
      ].sort(),
    );
    const strengths = found.map(({ mix, products }) =>
      Math.max(Math.abs(mix), ...products.map(({ percent }) => Math.abs(percent))),
    );
    expect(strengths).toEqual([...strengths].sort((a, b) => b - a));
    expect(new Set(found.map(({ change }) => change))).toEqual(new Set(["one-percent", "one-more"]));
  });

  it("holds a reserve that rounds up", () => {
    const rounded = planApplication({ ...JOB, reserve: { roundUpTo: qty(5, "L") } });
    const moves = planSensitivity(rounded).find(({ path }) => path === "calibration.used")?.mix ?? 0;
    expect(moves).toBeCloseTo(rounded.carrier.sprayed.value / rounded.carrier.total.value, 5);
  });
});

describe("comparePlans", () => {
  it("finds no difference between a plan and the same job in other units", () => {
    const other = planApplication({
      ...JOB,
      sprayer: { tank: qty(15_000, "mL"), lineVolume: qty(500, "mL") },
    });
    expect(comparePlans(plan, other)).toEqual({ inputs: [], results: [], newWarnings: [], goneWarnings: [] });
  });

  it("says what changed, by how much, and which warnings came and went", () => {
    const small = planApplication({
      ...JOB,
      sprayer: { tank: qty(4, "L") },
      reserve: { volume: qty(1, "L") },
    });
    const { inputs, results, newWarnings, goneWarnings } = comparePlans(plan, small);
    expect(inputs).toContainEqual(
      expect.objectContaining({ path: "sprayer.tank", percent: expect.closeTo(-73.3333333333, 9) }),
    );
    expect(inputs).toContainEqual({
      path: "sprayer.lineVolume",
      before: qty(0.5, "L"),
      after: null,
      percent: null,
    });
    expect(inputs).toContainEqual({ path: "reserve.percent", before: 5, after: null, percent: null });
    expect(results).toContainEqual({ path: "loads", before: 1, after: 3, percent: 200 });
    expect(newWarnings).toContain("mix-over-tank");
    expect(comparePlans(small, plan).goneWarnings).toEqual(newWarnings);
    expect(goneWarnings).toEqual(["lines-uncharged"]);
  });
});

describe("comparePlans, where one plan has what the other has not", () => {
  it("names each field that came or went", () => {
    const { reserve, ...without } = JOB;
    const { inputs } = comparePlans(planApplication(without), plan);
    expect(inputs).toEqual([{ path: "reserve.percent", before: null, after: 5, percent: null }]);
    expect(comparePlans(plan, planApplication(without)).inputs).toEqual([
      { path: "reserve.percent", before: 5, after: null, percent: null },
    ]);
  });

  it("gives each place in a list, and no per cent of nothing or of words", () => {
    const two = (width: number, line: number, name: string): ReturnType<typeof planApplication> =>
      planApplication({
        ...JOB,
        plot: [
          { kind: "rectangle", name, length: qty(10, "m"), width: qty(5, "m") },
          { kind: "rectangle", length: qty(10, "m"), width: qty(width, "m") },
        ],
        sprayer: { tank: qty(15, "L"), lineVolume: qty(line, "L") },
        reserve: { percent: 4 + line },
      });
    const { inputs, results } = comparePlans(two(5, 0, "North"), two(10, 1, "South"));
    expect(inputs).toEqual([
      { path: "plot[0].name", before: "North", after: "South", percent: null },
      { path: "plot[1].width", before: qty(5, "m"), after: qty(10, "m"), percent: 100 },
      { path: "sprayer.lineVolume", before: qty(0, "L"), after: qty(1, "L"), percent: null },
      { path: "reserve.percent", before: 4, after: 5, percent: 25 },
    ]);
    const found = Object.fromEntries(results.map(({ path, percent }) => [path, percent]));
    expect(found).toMatchObject({ "area.treated": 50, "area.ground": 50, "carrier.sprayed": 50 });
    expect(Object.keys(found)).toEqual([
      "area.treated",
      "area.ground",
      "carrier.sprayed",
      "carrier.reserve",
      "carrier.lines",
      "carrier.total",
      "totals.products[0].amount",
      "totals.products[1].amount",
      "leftover.carrier",
      "leftover.area",
    ]);
  });

  it("compares no volume with a weight, and a part of the ground as a number", () => {
    const dry = planApplication({
      ...JOB,
      plot: { kind: "rectangle", length: qty(10, "m"), width: qty(5, "m"), fraction: 0.5 },
      products: [{ ...PRODUCT_A, form: "dry", rate: qty(2, "kg/ha"), label: {}, soFar: {} }],
    });
    const wet = planApplication({
      ...JOB,
      plot: { kind: "rectangle", length: qty(10, "m"), width: qty(5, "m"), fraction: 0.75 },
      products: [{ ...PRODUCT_A, label: {}, soFar: {} }],
    });
    const { inputs, results } = comparePlans(dry, wet);
    expect(inputs).toEqual([
      { path: "plot.fraction", before: 0.5, after: 0.75, percent: 50 },
      { path: "products[0].form", before: "dry", after: "liquid", percent: null },
      { path: "products[0].rate", before: qty(2, "kg/ha"), after: qty(2, "L/ha"), percent: null },
    ]);
    expect(results.find(({ path }) => path === "area.fraction")).toEqual({
      path: "area.fraction",
      before: 0.5,
      after: 0.75,
      percent: 50,
    });
    expect(results.find(({ path }) => path === "totals.products[0].amount")?.percent).toBeNull();
  });

  it("says how much the cost moves, in all and per area", () => {
    const priced = (amount: number) =>
      planApplication({
        ...JOB,
        products: [{ ...JOB.products[0], price: { amount, per: qty(1, "L") } }] as PlanInput["products"],
        currency: { code: "EUR" },
      });
    const { results } = comparePlans(priced(100), priced(200));
    expect(results.map(({ path, percent }) => [path, percent])).toEqual([
      ["cost.total", 100],
      ["cost.perArea.cost", 100],
    ]);
  });
});

describe("reconcile", () => {
  const DONE = { finished: "2026-05-02T22:30" };

  it("gives the plan's own rates where the job went as planned", () => {
    const { left, plots, strengthPercent } = reconcile(plan, { ...DONE, left: plan.leftover.carrier });
    expect(left.value).toBeCloseTo(plan.leftover.carrier.value, 12);
    expect(strengthPercent).toBe(100);
    expect(plots).toHaveLength(1);
    expect(plots[0]).toMatchObject({ name: "East rows", fromPlanPercent: expect.closeTo(0, 8) });
    expect(plots[0]?.products[0]?.rate).toEqual({ value: expect.closeTo(2, 9), unit: "L/ha" });
    expect(plots[0]?.products[1]?.rate.unit).toBe("g/ha");
  });

  it("tells how far each plot and product is from plan and label", () => {
    const used = [{ value: plan.carrier.sprayed.value * 1.1, unit: "L" }] as const;
    const { plots, findings, left } = reconcile(plan, { ...DONE, mixed: qty(15, "L"), used });
    expect(plots[0]?.fromPlanPercent).toBeCloseTo(10, 8);
    expect(plots[0]?.products[0]?.fromPlanPercent).toBeCloseTo(10, 8);
    expect(left.value).toBeCloseTo(15 - plan.carrier.sprayed.value * 1.1, 12);
    expect(findings.map(({ code, severity, path }) => ({ code, severity, path }))).toContainEqual({
      code: "rate-over-max",
      severity: "refusal",
      path: "products[0].rate",
    });
    expect(findings[0]?.message).toMatch(/^Product A: The rate of /);
  });

  it("holds what was applied against the range that a label gives, as against its limits", () => {
    const { label: _, ...product } = PRODUCT_A;
    const rate = { low: qty(1, "L/ha"), high: qty(2.1, "L/ha"), chosen: qty(2, "L/ha") };
    const made = planApplication({ ...JOB, products: [{ ...product, rate } as Product] });
    const codes = (factor: number) => {
      const used = [{ value: made.carrier.sprayed.value * factor, unit: "L" }] as const;
      return reconcile(made, { ...DONE, mixed: qty(15, "L"), used }).findings.map(({ code }) => code);
    };
    expect([codes(1.1), codes(1.04), codes(0.9), codes(0.4)]).toEqual([
      ["rate-over-max"],
      ["rate-near-max"],
      [],
      ["rate-under-min"],
    ]);
  });

  it("tells a rate as the label does where that is per area, and per land area of the plan else", () => {
    const done = (rate: PlanInput["products"][number]["rate"]) => {
      const made = planApplication({
        ...JOB,
        products: [{ name: "Product A", form: "liquid", rate } as Product],
      });
      return reconcile(made, { ...DONE, left: made.leftover.carrier }).plots[0]?.products[0]?.rate;
    };
    expect(done(qty(2, "pt/ac"))).toEqual({ value: expect.closeTo(2, 9), unit: "pt/ac" });
    expect(done({ low: qty(1, "pt/ac"), high: qty(3, "pt/ac"), chosen: qty(2, "pt/ac") })?.unit).toBe(
      "pt/ac",
    );
    expect(done({ rate: qty(2, "fl_oz/ac"), per: "treated" })?.unit).toBe("fl_oz/ac");
    expect(done({ value: 1, unit: "%", basis: "v/v" })?.unit).toBe("mL/ha");
    expect(done({ parts: 1, to: 100, of: "water" })?.unit).toBe("mL/ha");
    expect(done(qty(1, "mL/m"))?.unit).toBe("mL/ha");
  });

  it("goes by the plot that had most, whichever comes first", () => {
    const rectangle = { kind: "rectangle", length: qty(100, "m"), width: qty(10, "m") } as const;
    const two = planApplication({ ...JOB, plot: [rectangle, rectangle] });
    const half = two.carrier.sprayed.value / 2;
    for (const factors of [
      [0.9, 1.1],
      [1.1, 0.9],
    ]) {
      const used = factors.map((factor) => qty(half * factor, "L"));
      const { findings, season } = reconcile(two, { ...DONE, used });
      expect(findings.map(({ code }) => code)).toContain("rate-over-max");
      expect((season[0]?.soFar.rate as Quantity | undefined)?.value).toBeCloseTo(2 + 2 * 1.1, 9);
    }
  });

  it("counts water that was added without product as a weak mix", () => {
    const { mixed, addedWater } = { mixed: qty(10, "L"), addedWater: qty(2.5, "L") };
    const done = reconcile(plan, { ...DONE, mixed, addedWater, left: qty(0, "L") });
    expect(done.strengthPercent).toBeCloseTo(80, 12);
    expect(done.used.value).toBeCloseTo(12.5, 12);
    // 10 L at the plan's strength, whatever water came on top.
    const strength = plan.totals.products[0]?.strength.value ?? 0;
    expect(done.plots[0]?.products[0]?.applied.value).toBeCloseTo(10 * strength, 9);
  });

  it("shares what was used by treated area where plots are not told apart", () => {
    const rectangle = (width: number) =>
      ({ kind: "rectangle", length: qty(100, "m"), width: qty(width, "m") }) as const;
    const two = planApplication({
      ...JOB,
      plot: [rectangle(10), rectangle(30)],
      sprayer: { tank: qty(200, "L") },
    });
    const { plots } = reconcile(two, { ...DONE, left: qty(0, "L") });
    expect((plots[1]?.used.value ?? 0) / (plots[0]?.used.value ?? 1)).toBeCloseTo(3, 12);
    expect(plots[0]?.rate.value).toBeCloseTo(plots[1]?.rate.value ?? 0, 10);
  });

  it("adds the season up by the plot that had most", () => {
    const { season } = reconcile(plan, { ...DONE, left: plan.leftover.carrier });
    expect(season[0]).toEqual({
      name: "Product A",
      soFar: { rate: { value: expect.closeTo(4, 9), unit: "L/ha" }, applications: 2 },
    });
    expect(season[1]).toEqual({ name: "Product B", soFar: {} });
    // The next plan takes it as it is.
    const { soFar } = season[0] as (typeof season)[number];
    const next = planApplication({ ...JOB, products: [{ ...PRODUCT_A, soFar } as Product] });
    expect(next.input.products[0]?.soFar).toEqual(soFar);
    const first = planApplication({
      ...JOB,
      products: [{ ...JOB.products[0], soFar: { applications: 0 } }] as PlanInput["products"],
    });
    expect(reconcile(first, { ...DONE, left: first.leftover.carrier }).season[0]?.soFar).toMatchObject({
      rate: { value: expect.closeTo(2, 9) },
      applications: 1,
    });
  });

  it("holds what was applied against the label as the plan told it, by ground and row length too", () => {
    const seasonal = planApplication({
      ...JOB,
      plot: {
        kind: "row-bands",
        rows: 10,
        rowLength: qty(50, "m"),
        bandWidth: qty(60, "cm"),
        rowSpacing: qty(1.2, "m"),
      },
      products: [
        {
          ...PRODUCT_A,
          // 4 L/ha of treated ground where half of it is, and 1 L/ha of it in 60 cm is 0.06 mL/m.
          label: {
            max: { rate: qty(1.01, "L/ha"), per: "ground" },
            min: qty(0.119, "mL/m"),
            seasonMax: qty(4.1, "L/ha"),
          },
        },
      ],
    });
    const used = (factor: number) => [qty(seasonal.carrier.sprayed.value * factor, "L")];
    const codes = (factor: number) =>
      reconcile(seasonal, { ...DONE, used: used(factor) }).findings.map(({ code }) => code);
    expect(codes(1)).toEqual(["rate-near-max", "season-nearly-used"]);
    expect(codes(1.02)).toEqual(["rate-over-max", "season-nearly-used"]);
    expect(codes(0.98)).toEqual(["rate-under-min", "season-nearly-used"]);
    expect(codes(1.06)).toEqual(["rate-over-max", "season-over-max"]);
    expect(codes(0)).toEqual([]);
    // A record that says nothing of the season before.
    const { soFar: _, ...unknown } = seasonal.input.products[0] as PlanInput["products"][number];
    const plain = planApplication({ ...seasonal.input, products: [unknown] });
    expect(reconcile(plain, { ...DONE, used: used(1) }).findings.map(({ code }) => code)).toEqual([
      "rate-near-max",
      "season-unknown",
    ]);
  });

  it("takes nothing used on a plot, nothing left, no water, and a start at the end for what they are", () => {
    const two = planApplication({ ...JOB, plot: [JOB.plot, JOB.plot] as never });
    const { plots, record, left, strengthPercent } = reconcile(two, {
      ...DONE,
      started: DONE.finished,
      addedWater: qty(0, "L"),
      used: [qty(0, "L"), two.carrier.total],
    });
    expect(plots.map(({ used, fromPlanPercent }) => [used.value === 0, fromPlanPercent === -100])).toEqual([
      [true, true],
      [false, false],
    ]);
    expect([left, strengthPercent, record.started]).toEqual([qty(0, "L"), 100, DONE.finished]);
  });

  it("adds up a season of which rate or number is not told", () => {
    const season = (soFar: NonNullable<PlanInput["products"][number]["soFar"]>) => {
      const { label: _, ...product } = PRODUCT_A;
      const made = planApplication({ ...JOB, products: [{ ...product, soFar }] });
      return reconcile(made, { ...DONE, left: made.leftover.carrier }).season[0]?.soFar;
    };
    const rate = { value: expect.closeTo(4, 9), unit: "L/ha" };
    expect(season({ rate: qty(2000, "mL/ha") })).toEqual({ rate });
    expect(season({ rate: qty(0, "L/ha"), applications: 3 })).toEqual({
      rate: { value: expect.closeTo(2, 9), unit: "L/ha" },
      applications: 4,
    });
    for (const per of ["treated", "broadcast"] as const)
      expect(season({ rate: { rate: qty(2, "L/ha"), per } })).toEqual({ rate });
    const grams = { activeIngredient: qty(400, "g/ha"), contains: qty(200, "g/L") };
    expect(season({ rate: grams, applications: 1 })).toEqual({ applications: 2 });
    expect(season({ rate: { rate: qty(2, "L/ha"), per: "ground" }, applications: 1 })).toEqual({
      applications: 2,
    });
    expect(season({ applications: 1 })).toEqual({ applications: 2 });
    expect(season({})).toEqual({});
    for (const junk of [5, "2 L/ha", [2]])
      expect(refusal(() => season({ rate: junk as never })).path).toBe("products[0].soFar.rate");
  });

  it("keeps the record that 7 CFR 110.3(a) and 40 CFR 170.311(b) ask for, and says what is missing in it", () => {
    const { record } = reconcile(plan, {
      ...DONE,
      started: "2026-05-02T21:00",
      left: plan.leftover.carrier,
      applicator: "Robin Vale",
      crop: "peppers",
    });
    expect(record).toMatchObject({
      version: 1,
      date: "2026-05-02",
      applicator: "Robin Vale",
      crop: "peppers",
    });
    expect(record.products[0]).toMatchObject({
      name: "Product A",
      registration: "000-000",
      applied: { unit: "mL" },
    });
    expect(record.treated).toEqual(plan.area.treated);
    expect(record.missing).toEqual([
      "products[1].preHarvestDays",
      "products[1].registration",
      "products[0].activeIngredient",
      "products[1].activeIngredient",
      "location",
      "certification",
    ]);
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
    expect(record).not.toHaveProperty("left");
  });

  it("has the plots' names, start and end, and each product's active ingredient and interval where given", () => {
    const product = (name: string, more: object = {}) =>
      ({ name, form: "liquid", rate: qty(2, "L/ha"), ...more }) as PlanInput["products"][number];
    const recordFor = (change: object, details: object = {}) => {
      const made = planApplication({ ...JOB, ...change });
      return reconcile(made, { ...DONE, left: made.leftover.carrier, ...details }).record;
    };
    const full = { activeIngredient: "azoxystrobin", registration: "000-000", reEntryHours: 0 };
    const bed = { kind: "rectangle", length: qty(20, "m"), width: qty(10, "m") };
    const record = recordFor(
      {
        plot: [{ ...bed, name: "North beds" }, bed, { ...bed, name: "South beds" }],
        products: [product("Product A", full), product("Product B")],
      },
      { started: "2026-05-02T21:00" },
    );
    expect(record).toMatchObject({
      plots: ["North beds", "South beds"],
      started: "2026-05-02T21:00",
      finished: DONE.finished,
    });
    expect(record.products[0]).toMatchObject(full);
    expect(Object.keys(record.products[1] as object)).toEqual(["name", "applied", "rate"]);
    expect(record.missing).toEqual([
      "products[1].reEntryHours",
      "products[1].registration",
      "products[1].activeIngredient",
      "location",
      "crop",
      "applicator",
      "certification",
    ]);
    expect(readRecord(JSON.parse(JSON.stringify(record)))).toEqual(record);
    const bare = recordFor({ plot: bed, products: [product("Product A")] });
    expect(bare).not.toHaveProperty("plots");
    expect(bare.missing).toEqual([
      "products[0].reEntryHours",
      "products[0].registration",
      "products[0].activeIngredient",
      "started",
      "location",
      "crop",
      "applicator",
      "certification",
    ]);
  });

  it.each([
    [{ plots: [] }, "too-few", "plots"],
    [{ plots: "North beds" }, "not-a-quantity", "plots"],
    [{ plots: ["North beds", ""] }, "missing", "plots[1]"],
    [{ products: [{ activeIngredient: 5 }] }, "not-a-quantity", "products[0].activeIngredient"],
    [{ products: [{ reEntryHours: -1 }] }, "out-of-range", "products[0].reEntryHours"],
    [{ started: "2026-05-03T09:30" }, "conflict", "started"],
    [{ plot: "North beds" }, "unknown-field", "plot"],
  ] as const)("refuses a saved record with %o", (change, code, path) => {
    const product = { name: "Product A", applied: qty(900, "mL"), rate: qty(1.8, "L/ha") };
    const saved = {
      version: 1,
      date: "2026-05-02",
      finished: "2026-05-02T09:30",
      clockChange: "not-counted",
      products: [product],
      treated: { value: 5000, unit: "m2", of: "treated" },
      missing: [],
    };
    expect(readRecord(saved).products).toEqual([product]);
    const products =
      "products" in change ? change.products.map((more) => ({ ...product, ...more })) : [product];
    const error = refusal(() => readRecord({ ...saved, ...change, products }));
    expect([error.code, error.path]).toEqual([code, path]);
  });

  it("waits for the longest interval of the products", () => {
    const { record } = reconcile(plan, { ...DONE, left: plan.leftover.carrier });
    expect(record.reEntry).toBe("2026-05-03T22:30");
    expect(record.firstHarvest).toBe("2026-05-09");
    const none = planApplication({
      ...JOB,
      products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
    });
    expect(reconcile(none, { ...DONE, left: none.leftover.carrier }).record).not.toHaveProperty("reEntry");
  });

  it("counts real hours across a change of the clock where the offset or the time zone is given, and says so", () => {
    const waiting = (hours: number, details: object) =>
      reconcile(planApplication({ ...JOB, products: [{ ...PRODUCT_A, reEntryHours: hours }] }), {
        ...DONE,
        left: plan.leftover.carrier,
        ...details,
      }).record;
    // Clocks in Chicago went forward at 2 a.m. on 2026-03-08 and go back on 2026-11-01 (US Energy Policy Act of 2005).
    const spring = { finished: "2026-03-07T22:00", timeZone: "America/Chicago" };
    expect(waiting(12, spring)).toMatchObject({ reEntry: "2026-03-08T11:00", clockChange: "counted" });
    const autumn = { finished: "2026-10-31T22:00", timeZone: "America/Chicago" };
    expect(waiting(12, autumn).reEntry).toBe("2026-11-01T09:00");
    const offset = { finished: "2026-03-07T22:00-06:00", started: "2026-03-08T03:00Z" };
    expect(waiting(12, offset)).toMatchObject({ reEntry: "2026-03-08T10:00-06:00", clockChange: "counted" });
    expect(waiting(12, { finished: "2026-03-07T22:00+05:30" }).reEntry).toBe("2026-03-08T10:00+05:30");
    expect(waiting(12, { finished: "2026-03-07T22:00" })).toMatchObject({
      reEntry: "2026-03-08T10:00",
      clockChange: "not-counted",
    });
    // Never early: a wait that isn't a whole number of minutes ends with the next one.
    expect(waiting(12.999, { finished: "2026-05-02T22:00" }).reEntry).toBe("2026-05-03T11:00");
    const late = { finished: "9999-12-31T22:00" };
    expectRefused(() => waiting(12, late), "out-of-range", "actual.finished");
    expectRefused(() => waiting(12, { timeZone: "Nowhere/Land" }), "unknown-choice", "actual.timeZone");
    expectRefused(() => waiting(12, { timeZone: 5 }), "not-a-quantity", "actual.timeZone");
  });

  it("names the products that don't give a wait where others do, and takes nothing that isn't its own", () => {
    const products = [
      { ...PRODUCT_A, preHarvestDays: undefined },
      { name: "Product B", form: "dry", rate: qty(1, "kg/100L") },
    ] as unknown as PlanInput["products"];
    const details = { ...DONE, left: plan.leftover.carrier };
    const { record } = reconcile(planApplication({ ...JOB, products }), details);
    expect(record.missing.slice(0, 1)).toEqual(["products[1].reEntryHours"]);
    expect(record).toMatchObject({ version: 1, date: "2026-05-02", reEntry: "2026-05-03T10:30" });
    for (const own of [{ version: 9 }, { date: "1999-01-01" }, { reEntry: "never" }])
      expectRefused(
        () => reconcile(plan, { ...details, ...own } as ActualApplication),
        "unknown-field",
        `actual.${Object.keys(own)[0]}`,
      );
  });

  it.each<[string, ActualApplication, ErrorCode, string]>([
    ["no end", { left: qty(1, "L") } as ActualApplication, "missing", "actual.finished"],
    ["an end that is no time", { finished: "2 May", left: qty(1, "L") }, "unreadable", "actual.finished"],
    [
      "an end that is no text",
      { finished: 2026 as never, left: qty(1, "L") },
      "not-a-quantity",
      "actual.finished",
    ],
    [
      "a day that does not exist",
      { finished: "2026-02-30T10:00", left: qty(1, "L") },
      "unreadable",
      "actual.finished",
    ],
    [
      "a start after the end",
      { ...DONE, started: "2026-05-02T22:31", left: qty(1, "L") },
      "conflict",
      "actual.started",
    ],
    ["neither left nor used", DONE, "missing", "actual.left"],
    ["both left and used", { ...DONE, left: qty(1, "L"), used: [qty(1, "L")] }, "conflict", "actual.left"],
    ["all of it left", { ...DONE, mixed: qty(5, "L"), left: qty(5, "L") }, "conflict", "actual.left"],
    ["more used than mixed", { ...DONE, mixed: qty(5, "L"), used: [qty(6, "L")] }, "conflict", "actual.used"],
    ["a plot too few", { ...DONE, used: [] }, "too-few", "actual.used"],
    ["a plot too many", { ...DONE, used: [qty(1, "L"), qty(1, "L")] }, "conflict", "actual.used"],
    ["a weight used", { ...DONE, used: [qty(1, "kg")] as never }, "wrong-dimension", "actual.used[0]"],
    [
      "a name that is a number",
      { ...DONE, left: qty(1, "L"), applicator: 7 as never },
      "not-a-quantity",
      "actual.applicator",
    ],
  ])("refuses %s", (_, actual, code, path) => {
    expectRefused(() => reconcile(plan, actual), code, path);
  });
});
