import { describe, expect, it } from "vitest";
import {
  type ActualSpreading,
  compareSpreadingPlans,
  planSpreading,
  readRecord,
  readSpreadingPlan,
  reconcileSpreading,
  type SpreadingInput,
  seasonSoFar,
  spreadingSensitivity,
} from "../../../src/plan/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { issueText } from "../../../src/worksheet/index.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const LAWN = {
  plot: { kind: "rectangle", name: "East lawn", length: qty(180, "ft"), width: qty(100, "ft") },
  spreader: { hopper: qty(20, "lb") },
  product: {
    name: "Product A",
    rate: qty(5, "lb/1000ft2"),
    label: { max: qty(5, "lb/1000ft2"), seasonMax: qty(20, "lb/1000ft2") },
    soFar: { rate: qty(4, "lb/1000ft2"), applications: 1 },
    registration: "000-000",
    activeIngredient: "active A",
    reEntryHours: 12,
    preHarvestDays: 7,
  },
} as const satisfies SpreadingInput;
const ROWS = { kind: "row-bands", rowSpacing: qty(5, "ft"), bandWidth: qty(1, "ft") } as const;
const BANDS = {
  plot: [
    { ...ROWS, name: "North", rows: 4, rowLength: qty(100, "ft") },
    { ...ROWS, rows: 2, rowLength: qty(50, "ft") },
  ],
  spreader: { hopper: qty(1, "lb") },
  product: { name: "Product A", rate: qty(8, "oz/1000ft") },
} as const satisfies SpreadingInput;
const TREES = {
  size: { kind: "count", count: qty(45, "tree") },
  name: "Pear trees",
  spreader: { hopper: qty(5, "kg") },
  product: { name: "Product A", rate: qty(20, "g/tree"), label: { max: qty(20, "g/tree") } },
} as const satisfies SpreadingInput;

const DONE = { finished: "2026-05-02T09:30" } as const;
const rounded = ({ value, unit }: Quantity) => [Number(value.toPrecision(12)), unit];
const outcome = (input: SpreadingInput, actual: Omit<ActualSpreading, "finished">) =>
  reconcileSpreading(planSpreading(input), { ...DONE, ...actual });

describe("what became of a job of granules", () => {
  it("on a plot: what was used, its rate, and how far that is from the plan", () => {
    // 99 lb on 18,000 ft²: 5.5 lb per 1,000 ft², a tenth more than 5.
    const done = outcome(LAWN, { filled: qty(100, "lb"), left: qty(16, "oz") });
    expect(done.used).toEqual(qty(99, "lb"));
    expect(done.left).toEqual(qty(1, "lb"));
    expect(done.rate).toEqual(qty(5.5, "lb/1000ft2"));
    expect(done.fromPlanPercent).toBe(10);
    expect(done.plots).toEqual([
      {
        name: "East lawn",
        treated: { value: 18_000, unit: "ft2", of: "treated" },
        used: qty(99, "lb"),
        rate: qty(5.5, "lb/1000ft2"),
        fromPlanPercent: 10,
      },
    ]);
    expect(done).not.toHaveProperty("nutrients");
    expect(done.findings.map(({ code, severity, path }) => `${severity} ${code} ${path}`)).toEqual([
      "refusal rate-over-max product.rate",
    ]);
    // 4 before and 5.5 now.
    expect(done.season).toEqual({
      name: "Product A",
      soFar: { rate: qty(9.5, "lb/1000ft2"), applications: 2 },
    });
  });

  it("takes the planned amount as filled unless more or less went in", () => {
    const done = outcome(LAWN, { left: qty(9, "lb") });
    expect(done.used).toEqual(qty(81, "lb"));
    expect(done.fromPlanPercent).toBe(-10);
    expect(done.findings).toEqual([]);
  });

  it("on several plots: by what each got, or shared as the plan shares it", () => {
    // 3.2 and 0.8 oz are planned; 8 oz per 1,000 ft.
    const shared = outcome(BANDS, { left: qty(0.4, "oz") });
    expect(shared.plots?.map(({ used }) => rounded(used))).toEqual([
      [2.88, "oz"],
      [0.72, "oz"],
    ]);
    expect(shared.plots?.map(({ rate }) => rounded(rate))).toEqual([
      [7.2, "oz/1000ft"],
      [7.2, "oz/1000ft"],
    ]);
    const each = outcome(BANDS, { filled: qty(4.5, "oz"), used: [qty(3.2, "oz"), qty(1, "oz")] });
    expect(each.plots?.map(({ rate, fromPlanPercent }) => [...rounded(rate), fromPlanPercent])).toEqual([
      [8, "oz/1000ft", 0],
      [10, "oz/1000ft", 25],
    ]);
    expect(rounded(each.left)).toEqual([0.3, "oz"]);
    // 4.2 oz on 500 ft of row.
    expect(rounded(each.rate)).toEqual([8.4, "oz/1000ft"]);
    // The record's rate is per treated area, on the plot that had most: 1 oz on 100 ft² is 435.6 oz/ac.
    expect(rounded(each.record.products[0]?.rate as Quantity)).toEqual([435.6, "oz/ac"]);
    expect(each.record.plots).toEqual(["North"]);
    expect(each.record).not.toHaveProperty("rowLength");
  });

  it("holds each plot against the label, but not one that got nothing", () => {
    const product = { ...BANDS.product, label: { min: qty(7, "oz/1000ft"), max: qty(9, "oz/1000ft") } };
    const found = (used: readonly number[]) =>
      outcome({ ...BANDS, product }, { used: used.map((one) => qty(one, "oz")) }).findings.map(
        ({ key, figures }) => `${key} ${figures.plot}`,
      );
    // 0.95 oz on 100 ft are 9.5 oz per 1,000 ft.
    expect(found([3, 0.95])).toEqual(["rate-over-max 2"]);
    expect(found([3.2, 0])).toEqual([]);
    expect(found([2.4, 0.8])).toEqual(["rate-under-min North"]);
  });

  it("brings nutrients as it brings product", () => {
    const rate = { nutrient: "N", amount: qty(1, "lb/1000ft2"), contains: { N: 20, K2O: 10 } } as const;
    // 5 lb of product per 1,000 ft²; 72 lb instead of 90 lb are four fifths.
    const done = outcome({ ...LAWN, product: { name: "Product A", rate } }, { left: qty(18, "lb") });
    expect(rounded(done.nutrients?.N as Quantity)).toEqual([0.8, "lb/1000ft2"]);
    expect(rounded(done.nutrients?.K2O as Quantity)).toEqual([0.4, "lb/1000ft2"]);
  });

  it("on rows and plants: a rate for each, and none per area", () => {
    const trees = outcome(TREES, { filled: qty(1, "kg"), left: qty(10, "g") });
    // 990 g for 45 trees: 22 g each.
    expect(trees.used).toEqual(qty(990, "g"));
    expect(trees.rate).toEqual(qty(22, "g/tree"));
    expect(trees).not.toHaveProperty("plots");
    expect(trees.findings.map(({ code }) => code)).toEqual(["rate-over-max"]);
    expect(trees.season).toEqual({ name: "Product A", soFar: {} });
    expect(trees.record.products).toEqual([
      { name: "Product A", applied: qty(990, "g"), each: qty(22, "g/tree") },
    ]);
    expect(trees.record.count).toEqual(qty(45, "tree"));
    expect(trees.record.plots).toEqual(["Pear trees"]);
    expect(trees.record).not.toHaveProperty("treated");
    expect(trees.record.missing).toContain("treated");
    const row: SpreadingInput = {
      ...BANDS,
      plot: undefined,
      size: { kind: "row-length", length: qty(250, "ft") },
    } as never;
    const { record } = outcome(row, { used: [qty(1.5, "oz")] });
    expect(record.products[0]?.each).toEqual(qty(6, "oz/1000ft"));
    expect(record.rowLength).toEqual(qty(250, "ft"));
  });

  it("keeps a record that reads back, and that a season is made from", () => {
    const { record } = outcome(LAWN, {
      left: qty(0, "lb"),
      started: "2026-05-02T08:00",
      applicator: "A. Grower",
      certification: "0000",
      location: "east of the barn",
      crop: "turf",
    });
    expect(record).toEqual({
      version: 1,
      date: "2026-05-02",
      finished: "2026-05-02T09:30",
      started: "2026-05-02T08:00",
      applicator: "A. Grower",
      certification: "0000",
      location: "east of the barn",
      crop: "turf",
      plots: ["East lawn"],
      products: [
        {
          name: "Product A",
          registration: "000-000",
          activeIngredient: "active A",
          reEntryHours: 12,
          applied: qty(90, "lb"),
          rate: qty(5, "lb/1000ft2"),
        },
      ],
      treated: { value: 18_000, unit: "ft2", of: "treated" },
      reEntry: "2026-05-02T21:30",
      clockChange: "not-counted",
      firstHarvest: "2026-05-09",
      missing: [],
    });
    const kept = readRecord(JSON.parse(JSON.stringify(record)));
    expect(seasonSoFar({ product: "product a", records: [kept, kept], today: "2026-05-12" })).toEqual({
      rate: qty(10, "lb/1000ft2"),
      applications: 2,
      daysSinceLast: 10,
    });
    const unnamed = { ...LAWN, name: "Lawn", plot: { ...LAWN.plot, name: undefined } };
    expect(outcome(unnamed, { left: qty(0, "lb") }).record.plots).toEqual(["Lawn"]);
  });

  it("refuses more left or used than there was, and says it in Spanish too", () => {
    expectRefused(() => outcome(LAWN, { left: qty(90, "lb") }), "conflict", "actual.left", "90 lb left");
    const over = () => outcome(LAWN, { used: [qty(91, "lb")] });
    expectRefused(over, "conflict", "actual.used", "If more went in");
    expect(issueText(refusal(over).issues[0] as never, { words: SPANISH_WORDS })).toBe(
      "No se puede usar 91 libras de lo que entró en la tolva (90 libras). Si entró más, anote cuánto.",
    );
    expectRefused(() => outcome(LAWN, {}), "missing", "actual.left");
    expectRefused(
      () => outcome(LAWN, { left: qty(1, "lb"), used: [qty(80, "lb")] }),
      "conflict",
      "actual.left",
      "not both",
    );
    expectRefused(() => outcome(BANDS, { used: [qty(1, "oz")] }), "conflict", "actual.used", "2 plots");
    expectRefused(
      () => outcome(TREES, { used: [qty(1, "g"), qty(1, "g")] }),
      "conflict",
      "actual.used",
      "not 2",
    );
    expectRefused(() => outcome(LAWN, { left: qty(1, "gal") as never }), "wrong-dimension", "actual.left");
    expectRefused(
      () => outcome(LAWN, { filled: qty(0, "lb"), left: qty(0, "lb") }),
      "out-of-range",
      "actual.filled",
    );
    expectRefused(
      () => outcome(LAWN, { left: qty(1, "lb"), started: "2026-05-03T09:30" }),
      "conflict",
      "actual.started",
    );
  });
});

describe("a plan of granules that was saved", () => {
  const plan = planSpreading(LAWN);
  const saved = () => JSON.parse(JSON.stringify(plan));

  it("reads as it was", () => {
    expect(readSpreadingPlan(saved())).toEqual(plan);
    expect(reconcileSpreading(saved(), { ...DONE, left: qty(0, "lb") })).toEqual(
      reconcileSpreading(plan, { ...DONE, left: qty(0, "lb") }),
    );
  });

  it.each([
    ["the total", { total: qty(80, "lb") }, "total"],
    ["the rate", { rate: qty(4, "lb/1000ft2") }, "rate"],
    ["a plot's amount", { plots: [{ amount: qty(1, "lb") }] }, "plots[0].amount"],
    ["the fills", { hopper: { ...plan.hopper, fills: 1 } }, "hopper.fills"],
  ])("is refused where somebody changed %s", (_, change, path) => {
    expectRefused(() => readSpreadingPlan({ ...saved(), ...change }), "conflict", path, "Plan the job again");
  });

  it("is refused where it is none, or of another version", () => {
    expectRefused(() => readSpreadingPlan({}), "not-a-quantity", "", "finished plan");
    expectRefused(() => readSpreadingPlan({ ...saved(), version: 2 }), "unknown-choice", "version");
    expectRefused(
      () => reconcileSpreading({} as never, { ...DONE, left: qty(0, "lb") }),
      "not-a-quantity",
      "plan",
    );
  });
});

describe("spreadingSensitivity", () => {
  const moved = (input: SpreadingInput) => spreadingSensitivity(planSpreading(input));
  const pathsOf = (input: SpreadingInput) => moved(input).map(({ path }) => path);

  it("moves the product one for one with the sides and the rate, and with nothing else", () => {
    const { product } = LAWN;
    const input = {
      ...LAWN,
      product: { ...product, bag: qty(50, "lb"), price: { amount: 20, per: qty(50, "lb") } },
    };
    expect(moved(input)).toEqual([
      { path: "plot.length", value: qty(180, "ft"), change: "one-percent", total: 1 },
      { path: "plot.width", value: qty(100, "ft"), change: "one-percent", total: 1 },
      { path: "product.rate", value: qty(5, "lb/1000ft2"), change: "one-percent", total: 1 },
    ]);
  });

  it("counts by one more, and takes each plot for its share", () => {
    // Of 500 ft of row the first plot has 400 in 4 rows, the second 100 in 2.
    const of = new Map(moved(BANDS).map(({ path, ...one }) => [path, one]));
    expect(of.get("plot[0].rows")).toEqual({ value: 4, change: "one-more", total: 20 });
    expect(of.get("plot[1].rows")).toEqual({ value: 2, change: "one-more", total: 10 });
    expect(of.get("plot[0].rowLength")?.total).toBe(0.8);
    expect(of.get("plot[1].rowLength")?.total).toBe(0.2);
    // A rate per length of row asks for no width.
    expect([...of.keys()].sort()).toEqual(
      ["plot[0].rowLength", "plot[0].rows", "plot[1].rowLength", "plot[1].rows", "product.rate"].sort(),
    );
    // 1 / 45 of the trees is 2.222222%.
    expect(moved(TREES)).toEqual([
      { path: "size.count", value: qty(45, "tree"), change: "one-more", total: 2.222222 },
      { path: "product.rate", value: qty(20, "g/tree"), change: "one-percent", total: 1 },
    ]);
  });

  it("moves one entry of a list, and leaves the others as they are", () => {
    // 20 spots of 1 m × 2 m and 5 of 4 m²: 40 m² and 20 m².
    const plot = {
      kind: "spots",
      spots: [
        { count: 20, length: qty(1, "m"), width: qty(2, "m") },
        { count: 5, each: qty(4, "m2") },
      ],
    } as const;
    const product = { name: "Product A", rate: qty(100, "kg/ha") };
    const found = moved({ plot, spreader: { hopper: qty(1, "kg") }, product });
    expect(Object.fromEntries(found.map(({ path, total }) => [path, total]))).toEqual({
      "product.rate": 1,
      "plot.spots[0].count": 3.333333,
      "plot.spots[0].length": 0.666667,
      "plot.spots[0].width": 0.666667,
      "plot.spots[1].count": 6.666667,
      "plot.spots[1].each": 0.333333,
    });
  });

  it("takes the nutrient's content against the product, and what comes along for nothing", () => {
    const rate = {
      nutrient: "N",
      amount: qty(1, "lb/1000ft2"),
      contains: { N: 16, P2O5: 4, K2O: 8 },
    } as const;
    const found = moved({ ...LAWN, product: { name: "Fertilizer A", rate } });
    expect(found.map(({ path, total }) => [path, total])).toEqual([
      ["plot.length", 1],
      ["plot.width", 1],
      ["product.rate.amount", 1],
      ["product.rate.contains.N", -1],
    ]);
  });

  it("shows what a reading of the test moves: what the spreader puts out, and no amount", () => {
    const test = { used: qty(10, "oz"), swath: qty(5, "ft"), distance: qty(25, "ft") };
    const input = { ...LAWN, test };
    const found = moved(input);
    const of = (path: string) => found.find((one) => one.path === path);
    expect(of("test.used")).toMatchObject({ total: 0, output: 1 });
    expect(of("test.swath")).toMatchObject({ total: 0, output: -1 });
    expect(of("test.distance")).toMatchObject({ total: 0, output: -1 });
    expect(of("product.rate")).toMatchObject({ total: 1, output: 0 });
    expect(moved(LAWN)[0]).not.toHaveProperty("output");
  });

  it("goes by the chosen rate where the label says which area it is per, and one way alone at a limit", () => {
    const bands = {
      kind: "row-bands",
      rows: 4,
      rowLength: qty(50, "m"),
      bandWidth: qty(1, "m"),
      rowSpacing: qty(1, "m"),
    } as const;
    const rate = { rate: qty(100, "kg/ha"), per: "treated" } as const;
    const found = moved({
      plot: bands,
      spreader: { hopper: qty(5, "kg") },
      product: { name: "Product A", rate },
    });
    expect(found.map(({ path, total }) => [path, total])).toEqual([
      ["plot.rows", 25],
      ["plot.rowLength", 1],
      ["plot.bandWidth", 1],
      ["product.rate.rate", 1],
    ]);
  });

  it("leaves out the row that can't have a label's rate per plant, and refuses what is no plan", () => {
    expect(
      pathsOf({
        ...TREES,
        size: { kind: "row-length", length: qty(300, "m") },
        product: { name: "Product A", rate: qty(75, "g/100m") },
      }),
    ).toEqual(["size.length", "product.rate"]);
    expectRefused(() => spreadingSensitivity({} as never), "not-a-quantity", "plan");
    expectRefused(
      () => spreadingSensitivity({ ...planSpreading(LAWN), total: qty(91, "lb") }),
      "conflict",
      "plan.total",
    );
  });
});

describe("compareSpreadingPlans", () => {
  it("finds no difference between a plan and the same job in other units", () => {
    const other = planSpreading({
      ...LAWN,
      plot: { ...LAWN.plot, length: qty(60, "yd") },
      spreader: { hopper: qty(320, "oz") },
    });
    expect(compareSpreadingPlans(planSpreading(LAWN), other)).toEqual({
      inputs: [],
      results: [],
      newWarnings: [],
      goneWarnings: [],
    });
  });

  it("says what changed, by how much, and which warnings came and went", () => {
    // 18,000 ft² at 6 in place of 5 lb per 1,000 ft²: 108 lb in place of 90.
    const more = { ...LAWN, product: { ...LAWN.product, rate: qty(6, "lb/1000ft2") } };
    const [once, twice] = [planSpreading(LAWN), planSpreading(more)];
    const { inputs, results, newWarnings, goneWarnings } = compareSpreadingPlans(once, twice);
    expect(inputs).toEqual([
      { path: "product.rate", before: qty(5, "lb/1000ft2"), after: qty(6, "lb/1000ft2"), percent: 20 },
    ]);
    const found = new Map(results.map(({ path, ...one }) => [path, one]));
    expect([...found.keys()]).toEqual([
      "rate",
      "total",
      "plots[0].amount",
      "hopper.perDirection",
      "hopper.fills",
      "hopper.lastFill",
    ]);
    expect(found.get("total")).toEqual({ before: qty(90, "lb"), after: qty(108, "lb"), percent: 20 });
    expect(found.get("hopper.fills")).toEqual({ before: 5, after: 6, percent: 20 });
    expect([newWarnings, goneWarnings]).toEqual([["rate-over-max"], ["rate-near-max"]]);
    expect(compareSpreadingPlans(twice, once).goneWarnings).toEqual(["rate-over-max"]);
  });

  it("has the area, nutrients, bags, test and cost", () => {
    const job = (percent: number, width: number) =>
      planSpreading({
        ...LAWN,
        plot: { ...LAWN.plot, width: qty(width, "ft"), fraction: width / 200 },
        test: { used: qty(10, "oz"), swath: qty(5, "ft"), distance: qty(width / 4, "ft") },
        product: {
          name: "Fertilizer A",
          rate: { nutrient: "N", amount: qty(1, "lb/1000ft2"), contains: { N: percent, K2O: 8 } },
          bag: qty(20, "lb"),
          price: { amount: 20, per: qty(40, "lb") },
        },
      });
    const { results } = compareSpreadingPlans(job(16, 100), job(20, 120));
    const percents = Object.fromEntries(results.map(({ path, percent }) => [path, percent]));
    // The ground grows by 1.2, and the part that is treated from 0.5 to 0.6.
    expect(percents).toMatchObject({
      "area.treated": 44,
      "area.ground": 20,
      "area.fraction": 20,
      rate: -20,
      "nutrients.K2O": -20,
      // 1.44 × 0.8.
      total: 15.2,
      "check.perPass": -20,
    });
    // 56.25 lb and 64.8 lb: 3 bags of 20 lb and 4; 28.13 and 32.40.
    expect(percents["bags.bags"]).toBeCloseTo(100 / 3, 6);
    expect(percents["cost.total"]).toBeCloseTo(100 * (32.4 / 28.13 - 1), 6);
    // 10 oz on 125 and on 150 ft².
    expect(percents["check.rate"]).toBeCloseTo(-100 / 6, 6);
    expect(percents).not.toHaveProperty(["nutrients.N"]);
  });

  it("refuses what is no plan of granules", () => {
    const plan = planSpreading(LAWN);
    expectRefused(() => compareSpreadingPlans({} as never, plan), "not-a-quantity", "before");
    expectRefused(
      () => compareSpreadingPlans(plan, { ...plan, hopper: { ...plan.hopper, fills: 4 } }),
      "conflict",
      "after.hopper.fills",
    );
  });
});
