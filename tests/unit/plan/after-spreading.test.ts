import { describe, expect, it } from "vitest";
import {
  type ActualSpreading,
  planSpreading,
  readRecord,
  readSpreadingPlan,
  reconcileSpreading,
  type SpreadingInput,
  seasonSoFar,
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
