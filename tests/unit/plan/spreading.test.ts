import { describe, expect, it } from "vitest";
import {
  type Plot,
  planSpreading,
  type SpreadingInput,
  type SpreadingPlan,
} from "../../../src/plan/index.ts";
import { parseSpreadingInput, spreadingInputSchema } from "../../../src/schema/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { planSpreading as stepsOf } from "../../../src/working/index.ts";
import {
  renderHtml,
  renderMarkdown,
  renderText,
  spreadingCard,
  spreadingSheet,
} from "../../../src/worksheet/index.ts";
import { renderLatex } from "../../../src/worksheet/latex.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const LAWN = {
  plot: { kind: "rectangle", length: qty(180, "ft"), width: qty(100, "ft") },
  spreader: { hopper: qty(20, "lb") },
  product: { name: "Product A", rate: qty(5, "lb/1000ft2") },
} as const satisfies SpreadingInput;
const BEDS = {
  plot: { kind: "beds", beds: 2, bedWidth: qty(4, "ft"), bedLength: qty(90, "ft") },
  spreader: { hopper: qty(3, "lb"), directions: 2 },
  product: {
    name: "Product A",
    rate: {
      nutrient: "N",
      amount: qty(0.4, "lb/1000ft2"),
      contains: { N: 10, P2O5: 5, K2O: 20 },
    },
  },
} as const satisfies SpreadingInput;
const ROW = {
  size: { kind: "row-length", length: qty(250, "ft") },
  spreader: { hopper: qty(1, "lb") },
  product: { name: "Product A", rate: qty(8, "oz/1000ft") },
} as const satisfies SpreadingInput;
const TREES = {
  size: { kind: "count", count: qty(45, "tree") },
  spreader: { hopper: qty(5, "kg") },
  product: { name: "Product A", rate: qty(20, "g/tree") },
} as const satisfies SpreadingInput;

const rounded = ({ value, unit }: Quantity) => [Number(value.toPrecision(12)), unit];
const withProduct = (input: SpreadingInput, change: object): SpreadingInput => ({
  ...input,
  product: { ...input.product, ...change },
});
const found = ({ warnings }: SpreadingPlan) =>
  warnings.map(({ key, severity, path }) => `${severity} ${key} ${path}`);

// Whoever goes over it again puts out twice the rate.
const REST =
  "If some is left at the end, don't spread anything twice with it. If it runs out more than a tenth early, stop and test the spreader again.";

describe("a job of granules", () => {
  it("takes its product from the rate and the size", () => {
    // 18,000 ft² at 5 lb per 1,000 ft²: 90 lb, four hoppers of 20 lb and one of 10.
    const lawn = planSpreading(LAWN);
    expect(lawn.total).toEqual(qty(90, "lb"));
    expect(lawn.hopper).toEqual({ perDirection: qty(90, "lb"), fills: 5, lastFill: qty(10, "lb") });
    expect(lawn.plots).toEqual([{ amount: qty(90, "lb") }]);
    // 8 oz per 1,000 ft on 250 ft: 2 oz. 45 trees at 20 g: 900 g.
    expect(planSpreading(ROW).total).toEqual(qty(2, "oz"));
    expect(planSpreading(TREES).total).toEqual(qty(900, "g"));
    expect(planSpreading(TREES)).not.toHaveProperty("plots");
    for (const input of [LAWN, ROW, TREES]) expect(found(planSpreading(input))).toEqual([]);
  });

  it("takes a rate of a nutrient, and says what comes along", () => {
    const { rate, nutrients, total, hopper, plots } = planSpreading(BEDS);
    // 0.4 lb N from 10-5-20: 4 lb, with 0.2 lb of P2O5 and 0.8 lb of K2O; on 720 ft² 2.88 lb, 1.44 lb for a bed and for a direction.
    expect(rate).toEqual(qty(4, "lb/1000ft2"));
    expect(Object.entries(nutrients ?? {}).map(([name, one]) => [name, ...rounded(one)])).toEqual([
      ["N", 0.4, "lb/1000ft2"],
      ["P2O5", 0.2, "lb/1000ft2"],
      ["K2O", 0.8, "lb/1000ft2"],
    ]);
    expect(rounded(total)).toEqual([2.88, "lb"]);
    expect(hopper.fills).toBe(1);
    expect(rounded(hopper.lastFill)).toEqual([1.44, "lb"]);
    expect(plots?.map(({ pieces, each }) => [pieces, ...rounded(each as Quantity)])).toEqual([
      [2, 1.44, "lb"],
    ]);
  });

  it("shares the product out to several plots, by their area or their rows", () => {
    const rows = { kind: "row-bands", rowSpacing: qty(5, "ft"), bandWidth: qty(1, "ft") } as const;
    const plot = [
      { ...rows, rows: 4, rowLength: qty(100, "ft") },
      { ...rows, rows: 2, rowLength: qty(50, "ft") },
    ];
    // 400 and 100 ft of row at 8 oz per 1,000 ft: 3.2 and 0.8 oz.
    const byRow = planSpreading({ ...LAWN, plot, product: ROW.product });
    expect(byRow.plots?.map(({ amount }) => rounded(amount))).toEqual([
      [3.2, "oz"],
      [0.8, "oz"],
    ]);
    // 400 and 100 ft² at 5 lb per 1,000 ft²: 2 and 0.5 lb. A broadcast rate is that of the band.
    const byArea = planSpreading(
      withProduct({ ...LAWN, plot }, { rate: { rate: qty(5, "lb/1000ft2"), per: "broadcast" } }),
    );
    expect(byArea.plots?.map(({ amount }) => rounded(amount))).toEqual([
      [2, "lb"],
      [0.5, "lb"],
    ]);
    expect(rounded(byArea.total)).toEqual([2.5, "lb"]);
  });

  it("counts bags and costs", () => {
    const price = { amount: 24, per: qty(40, "lb") };
    // 90 lb are three bags of 40 lb with 30 lb left over; at 0.60 a pound 54.
    const plan = planSpreading(withProduct(LAWN, { bag: qty(40, "lb"), price }));
    expect(plan.bags).toEqual({ bags: 3, leftOver: qty(30, "lb") });
    expect(plan.cost).toEqual({ currency: { code: "", decimals: 2 }, total: 54 });
    const yen = planSpreading({ ...withProduct(LAWN, { price }), currency: { code: "JPY", decimals: 0 } });
    expect(yen.cost).toEqual({ currency: { code: "JPY", decimals: 0 }, total: 54 });
    const byVolume = { amount: 24, per: qty(1, "gal") };
    expectRefused(
      () => planSpreading(withProduct(LAWN, { price: byVolume })),
      "wrong-dimension",
      "product.price.per",
      "a weight",
    );
  });
});

describe("a job of granules refuses", () => {
  const at = "product.rate";
  it.each<[string, SpreadingInput, string, string]>([
    [
      "a rate per plant on a plot",
      withProduct(LAWN, { rate: qty(20, "g/tree") }),
      at,
      "by the number of plants",
    ],
    [
      "a rate per row where there are none",
      withProduct(LAWN, { rate: qty(8, "oz/1000ft") }),
      at,
      "isn't in rows",
    ],
    [
      "a rate per area of a count",
      withProduct(TREES, { rate: qty(50, "kg/ha") }),
      at,
      "Enter a rate per plant, or plan the plot",
    ],
    [
      "a rate per plant of a row",
      withProduct(ROW, { rate: qty(20, "g/tree") }),
      at,
      "Enter a rate per length of row",
    ],
    [
      "a limit per area of a count",
      withProduct(TREES, { label: { max: qty(50, "kg/ha") } }),
      "product.label.max",
      "number of plants",
    ],
    [
      "a test for plants",
      { ...TREES, test: { used: qty(5, "g"), area: { ...qty(1, "m2"), of: "treated" } } },
      "test",
      "Leave the test out",
    ],
    [
      "a test along a row for an area",
      { ...LAWN, test: { used: qty(5, "oz"), rowLength: qty(10, "ft") } },
      "test",
      "Test over a strip or an area",
    ],
    [
      "a test over an area for a row",
      { ...ROW, test: { used: qty(5, "oz"), swath: qty(1, "ft"), distance: qty(10, "ft") } },
      "test",
      "Test along a row",
    ],
  ])("%s", (_, input, path, words) => {
    expectRefused(() => planSpreading(input), "conflict", path, words);
  });

  it("a rate per area of ground, a part of a plant, a limit by volume and a fertilizer without the nutrient", () => {
    const ground = { rate: qty(5, "lb/1000ft2"), per: "ground" };
    expectRefused(
      () => planSpreading(withProduct(LAWN, { rate: ground })),
      "unknown-choice",
      "product.rate.per",
    );
    const half = { ...TREES, size: { kind: "count", count: qty(4.5, "tree") } } as const;
    expectRefused(() => planSpreading(half), "out-of-range", "size.count");
    const label = { seasonMax: qty(5, "pt/ac") };
    expectRefused(
      () => planSpreading(withProduct(LAWN, { label })),
      "wrong-dimension",
      "product.label.seasonMax",
    );
    const rate = { nutrient: "N", amount: qty(1, "lb/1000ft2"), contains: { K2O: 60 } };
    expectRefused(
      () => planSpreading(withProduct(LAWN, { rate })),
      "conflict",
      "product.rate.contains",
      "no N",
    );
  });
});

describe("a job of granules warns of", () => {
  const strip = { swath: qty(4, "ft"), distance: qty(25, "ft") };
  const tested = (input: SpreadingInput, ounces: number) =>
    planSpreading({ ...input, test: { used: qty(ounces, "oz"), ...strip } });

  it("a spreader that is off", () => {
    // 100 ft² at 5 lb per 1,000 ft²: 8 oz. 9 oz is 12.5 % more.
    expect(found(tested(LAWN, 8))).toEqual([]);
    const heavy = tested(LAWN, 9);
    expect(found(heavy)).toEqual(["warning spreader-heavy test.used"]);
    expect(rounded(heavy.check?.deviation as Quantity)).toEqual([12.5, "%"]);
    expect(found(tested(LAWN, 7))).toEqual(["warning spreader-light test.used"]);
    // 8 lb is pounds for ounces; 128 oz is as much, but nobody took that for pounds.
    const pounds = planSpreading({ ...LAWN, test: { used: qty(8, "lb"), ...strip } });
    expect(found(pounds)).toEqual(["warning spreader-ounces-as-pounds test.used"]);
    expect(found(tested(LAWN, 128))).toEqual(["warning spreader-far-over test.used"]);
    expect(found(tested(withProduct(LAWN, { label: { max: qty(5.4, "lb/1000ft2") } }), 9))).toEqual([
      "refusal spreader-over-max test.used",
    ]);
  });

  it("a spreader that was set for the nutrient", () => {
    // Half of 0.4 lb N in one pass on 100 ft²: 0.32 oz; half of 4 lb of product is 3.2 oz.
    const slip = tested(BEDS, 0.32);
    expect(found(slip)).toEqual(["warning spreader-set-for-nutrient test.used"]);
    expect(slip.warnings[0]?.message).toBe(
      "Product A: The spreader put out 0.2 lb/1,000 sq ft, about the rate of N. Open the gate until the same test gives 3.2 oz wt of product.",
    );
    // In one direction all of the 4 lb of product: 0.64 oz is the nutrient's 0.4 lb.
    const lengthwise = { ...BEDS, spreader: { hopper: qty(3, "lb") } };
    expect(found(tested(lengthwise, 0.64))).toEqual(["warning spreader-set-for-nutrient test.used"]);
    expect(found(tested(BEDS, 1))).toEqual(["warning spreader-far-under test.used"]);
    expect(found(tested(BEDS, 5))).toEqual(["warning spreader-heavy test.used"]);
    expect(found(tested(BEDS, 3.2))).toEqual([]);
  });

  it("rates that only a wrong unit comes to", () => {
    const big = { ...LAWN, spreader: { hopper: qty(1000, "lb") } };
    expect(found(planSpreading(withProduct(big, { rate: qty(100, "lb/1000ft2") })))).toEqual([]);
    expect(found(planSpreading(withProduct(big, { rate: qty(101, "lb/1000ft2") })))).toEqual([
      "warning rate-high-spreading product.rate",
    ]);
    expect(found(planSpreading(withProduct(TREES, { rate: qty(16, "kg/tree") })))).toContain(
      "warning rate-high-spreading product.rate",
    );
    // 20 lb of a 20 % fertilizer per 1,000 ft² is 4 lb of nitrogen; 20 lb of nitrogen is 871 lb/ac.
    const rate = { nutrient: "N", amount: qty(20, "lb/1000ft2"), contains: { N: 20 } };
    expect(found(planSpreading(withProduct(big, { rate })))).toEqual([
      "warning nutrient-implausible product.rate.amount",
    ]);
  });

  it("a hopper that needs very many fills", () => {
    // 90 lb are 50 fills of 1.8 lb; in two directions of 45 lb with 1.75 lb 26 each.
    expect(found(planSpreading({ ...LAWN, spreader: { hopper: qty(1.8, "lb") } }))).toEqual([]);
    expect(found(planSpreading({ ...LAWN, spreader: { hopper: qty(1.75, "lb"), directions: 2 } }))).toEqual([
      "warning fills-many spreader.hopper",
    ]);
  });

  it("what the label has against it, on the plot where it is worst", () => {
    const label = (limits: object, soFar?: object) =>
      found(planSpreading(withProduct(LAWN, { label: limits, soFar })));
    expect(label({ max: qty(4, "lb/1000ft2") })).toEqual(["refusal rate-over-max product.rate"]);
    expect(label({ max: { rate: qty(5, "lb/1000ft2"), per: "treated" } })).toEqual([
      "warning rate-near-max-spreading product.rate",
    ]);
    expect(label({ min: qty(6, "lb/1000ft2") })).toEqual(["warning rate-under-min product.rate"]);
    expect(label({ seasonMax: qty(8, "lb/1000ft2") }, { rate: qty(4, "lb/1000ft2") })).toEqual([
      "refusal season-over-max product.rate",
    ]);
    // A limit per something else than the rate isn't the spreader's to be held against.
    const rows = { kind: "row-bands", rowSpacing: qty(5, "ft"), bandWidth: qty(1, "ft"), rows: 4 } as const;
    const plot = [60, 100].map((length) => ({ ...rows, rowLength: qty(length, "ft") }));
    const test = { used: qty(2, "oz"), rowLength: qty(250, "ft") };
    // 8 oz per 1,000 ft in a band of 1 ft: 0.5 lb per 1,000 ft².
    const max = qty(0.4, "lb/1000ft2");
    const plan = planSpreading({ ...LAWN, plot, test, product: { ...ROW.product, label: { max } } });
    expect(found(plan)).toEqual(["refusal rate-over-max product.rate"]);
    expect(plan.check?.within).toBe(true);
    expect(found(planSpreading(withProduct(TREES, { label: { max: qty(19, "g/tree") } })))).toEqual([
      "refusal rate-over-max product.rate",
    ]);
    expect(found(planSpreading(withProduct(ROW, { label: { max: qty(7, "oz/1000ft") } })))).toEqual([
      "refusal rate-over-max product.rate",
    ]);
  });
});

describe("the working and the card of a job of granules", () => {
  const full: SpreadingInput = {
    ...withProduct(BEDS, { bag: qty(5, "lb"), reEntryHours: 12 }),
    test: { used: qty(3.1, "oz"), swath: qty(4, "ft"), distance: qty(25, "ft") },
  };

  it("shows each step that there is, and each line true", () => {
    expect(stepsOf(planSpreading(full)).map(({ step }) => step)).toEqual([
      "area",
      "fertilizer",
      "amount",
      "hopper",
      "bags",
      "test",
    ]);
    expect(stepsOf(planSpreading(TREES)).map(({ step }) => step)).toEqual(["amount", "hopper"]);
    for (const input of [LAWN, full, ROW, TREES])
      for (const { lines } of stepsOf(planSpreading(input))) expectLinesTrue([...lines]);
  });

  it("is read in a metric rate that people use, and in three figures", () => {
    // 4 lb/1,000 sq ft are 1.95297 kg on 100 m²: 0.45359237 kg and 9.290304 m².
    const { facts } = spreadingCard(planSpreading(full), { units: "metric" });
    expect(facts.find(({ name }) => name === "Rate in each direction")?.value).toBe("0.976 kg/100 m²");
    expect(facts.find(({ name }) => name === "Product A rate")?.value).toBe("1.95 kg/100 m²");
  });

  it("prints what to fill in and what goes where", () => {
    const card = spreadingCard(planSpreading(full));
    expect(card.facts.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      "Treated area: 720 sq ft",
      "Product A rate: 4 lb/1,000 sq ft",
      "Rate in each direction: 2 lb/1,000 sq ft",
      "Spreader put out in the test: 1.94 lb/1,000 sq ft",
      "N supplied: 0.4 lb/1,000 sq ft",
      "P2O5 supplied: 0.2 lb/1,000 sq ft",
      "K2O supplied: 0.8 lb/1,000 sq ft",
      "Total Product A: 2.88 lb",
      "Bags to buy: 1 (2.12 lb left over)",
      "Keep people out for: 12 h",
    ]);
    expect(card.loads).toEqual([
      {
        title: "Lengthwise over all of it: 1.44 lb",
        steps: ["plot 1: weigh out 11.5 oz wt for each of the 2 beds and spread it (1.44 lb total).", REST],
      },
      {
        title: "Crosswise over all of it: 1.44 lb",
        steps: ["plot 1: weigh out 11.5 oz wt for each of the 2 beds and spread it (1.44 lb total).", REST],
      },
    ]);
    expect(card.order).toEqual([]);
    expect(card.cautions).toHaveLength(6);
    expect(spreadingCard(planSpreading(LAWN)).loads).toEqual([
      {
        title: "Fill and spread",
        steps: [
          "Fill the hopper with 20 lb and spread it. Do this 4 times.",
          "For the last fill, weigh out 10 lb and spread it.",
          REST,
        ],
      },
    ]);
    expect(spreadingCard(planSpreading(ROW)).facts[0]).toEqual({ name: "Length of row", value: "250 ft" });
    expect(spreadingCard(planSpreading(TREES)).facts[0]).toEqual({ name: "How many", value: "45 trees" });
    const named = spreadingCard(planSpreading({ ...full, name: "East beds" }));
    expect(named.facts[0]).toEqual({ name: "Where", value: "East beds" });
    expect(named.loads[0]?.steps[0]).toMatch(/^East beds: weigh out 11\.5 oz wt for each/);
    const once = spreadingCard(planSpreading({ ...LAWN, spreader: { hopper: qty(50, "lb") } }));
    expect(once.loads[0]?.steps[0]).toBe("Fill the hopper with 50 lb and spread it.");
    const two = { ...LAWN, plot: [{ ...LAWN.plot, name: "North" }, LAWN.plot] };
    // Plot by plot, so that what is off on one isn't put out on another.
    expect(spreadingCard(planSpreading(two)).loads[0]?.steps).toEqual([
      "The hopper holds 20 lb: fill it as often as it takes.",
      "North: weigh out 90 lb and spread it.",
      "plot 2: weigh out 90 lb and spread it.",
      REST,
    ]);
    const rows = { kind: "row-bands", rows: 4, rowLength: qty(100, "ft"), bandWidth: qty(2, "ft") } as const;
    // 5 lb per 1,000 ft² on 800 ft².
    expect(spreadingCard(planSpreading({ ...LAWN, plot: rows })).loads[0]?.steps).toEqual([
      "plot 1: weigh out 1 lb for each of the 4 rows and spread it (4 lb total).",
      REST,
    ]);
  });

  it("weighs out for each bed or row of its own length, and of many for a length", () => {
    const beds = (feet: readonly number[], more: object = {}) =>
      ({
        kind: "beds",
        bedWidth: qty(4, "ft"),
        bedLengths: feet.map((one) => qty(one, "ft")),
        ...more,
      }) as const;
    const job = (plot: Plot | readonly Plot[]) =>
      planSpreading({ ...LAWN, spreader: { hopper: qty(3, "lb") }, plot });
    // 5 lb per 1,000 sq ft on 4 ft x 40, 60 and 25 ft: 0.8, 1.2 and 0.5 lb, which is 8 oz.
    const three = job(beds([40, 60, 25]));
    expect(three.plots?.[0]?.rows?.map(rounded)).toEqual([
      [0.8, "lb"],
      [1.2, "lb"],
      [0.5, "lb"],
    ]);
    expect(spreadingCard(three).loads[0]?.steps).toEqual([
      "Weigh out 12.8 oz wt for bed 1 (40 ft) and spread it.",
      "Weigh out 1.2 lb for bed 2 (60 ft) and spread it.",
      "Weigh out 8 oz wt for bed 3 (25 ft) and spread it.",
      REST,
    ]);
    // 200 ft x 4 ft take 4 lb, of a hopper of 3.
    const rows = {
      kind: "row-bands",
      bandWidth: qty(2, "ft"),
      rowLengths: [qty(50, "ft"), qty(100, "ft")],
    } as const;
    const two = job([beds([200, 20], { name: "East" }), rows]);
    expect(spreadingCard(two).loads[0]?.steps.slice(0, -1)).toEqual([
      "The hopper holds 3 lb: fill it as often as it takes.",
      "Weigh out 4 lb for bed 1 in East (200 ft) and spread it.",
      "Weigh out 6.4 oz wt for bed 2 in East (20 ft) and spread it.",
      "Weigh out 8 oz wt for row 1 in plot 2 (50 ft) and spread it.",
      "Weigh out 1 lb for row 2 in plot 2 (100 ft) and spread it.",
    ]);
    // Half of it each way; and metric, where 40 ft were entered: 12.1 m, rounded down.
    const both = planSpreading({ ...three.input, spreader: { hopper: qty(3, "lb"), directions: 2 } });
    expect(spreadingCard(both).loads[1]?.steps[0]).toBe(
      "Weigh out 6.4 oz wt for bed 1 (40 ft) and spread it.",
    );
    expect(spreadingCard(three, { units: "metric" }).loads[0]?.steps[0]).toBe(
      "Weigh out 362 g for bed 1 (12.1 m) and spread it.",
    );
    // Thirteen of 20 to 32 ft, 338 ft, 6.76 lb: 2 lb for 100 ft, whatever the length of one.
    const many = beds(Array.from({ length: 13 }, (_, i) => 20 + i));
    expect(spreadingCard(job(many)).loads[0]?.steps).toEqual([
      "plot 1: weigh out 2 lb for every 100 ft of the 13 beds and spread it (6.76 lb total).",
      REST,
    ]);
    const twelve = beds(Array.from({ length: 12 }, (_, i) => 20 + i));
    expect(spreadingCard(job(twelve)).loads[0]?.steps).toHaveLength(13);
  });

  it("says what each plant gets, and how many of them a full hopper does", () => {
    const trees = (hopper: number) =>
      spreadingCard(
        planSpreading({
          size: { kind: "count", count: qty(48, "tree") },
          spreader: { hopper: qty(hopper, "lb") },
          product: { name: "Product A", rate: qty(0.75, "lb/tree") },
        }),
      ).loads[0]?.steps;
    expect(trees(10)).toEqual([
      "Give each one 12 oz wt.",
      "A full hopper is enough for about 13 trees.",
      "Fill the hopper with 10 lb and spread it. Do this 3 times.",
      "For the last fill, weigh out 6 lb and spread it.",
      REST,
    ]);
    // All of them, and not one of them.
    expect(trees(40)?.slice(0, 2)).toEqual([
      "Give each one 12 oz wt.",
      "Weigh out 36 lb, fill the hopper and spread it.",
    ]);
    expect(trees(0.5)?.[1]).toMatch(/^Fill the hopper/);
    // Half of it each way: a hopper does twice as many.
    const both = planSpreading({
      size: { kind: "count", count: qty(48, "tree") },
      spreader: { hopper: qty(10, "lb"), directions: 2 },
      product: { name: "Product A", rate: qty(0.75, "lb/tree") },
    });
    expect(spreadingCard(both).loads[0]?.steps.slice(0, 2)).toEqual([
      "Give each one 6 oz wt.",
      "A full hopper is enough for about 26 trees.",
    ]);
    // Twenty beds of 1.44 lb: each of them fits.
    const beds = { kind: "beds", beds: 20, bedWidth: qty(4, "ft"), bedLength: qty(72, "ft") } as const;
    const spreader = { hopper: qty(10, "lb") };
    expect(spreadingCard(planSpreading({ ...LAWN, plot: beds, spreader })).loads[0]?.steps[0]).toMatch(
      /^plot 1: weigh out 1\.44 lb for each of the 20 beds/,
    );
  });

  it("counts a last fill that is a whole hopper with the others, and no rest of nothing", () => {
    // 90 lb are three hoppers of 30 lb and two bags of 45 lb.
    const even = planSpreading({
      ...withProduct(LAWN, { bag: qty(45, "lb") }),
      spreader: { hopper: qty(30, "lb") },
    });
    const { facts, loads } = spreadingCard(even);
    expect(loads[0]?.steps).toEqual(["Fill the hopper with 30 lb and spread it. Do this 3 times.", REST]);
    expect(facts.at(-1)).toEqual({ name: "Bags to buy", value: "2" });
    const one = spreadingCard(planSpreading({ ...LAWN, spreader: { hopper: qty(90, "lb") } }));
    expect(one.loads[0]?.steps).toEqual(["Fill the hopper with 90 lb and spread it.", REST]);
  });

  it("prints amounts in the hopper's unit, and less than a pound or a kilogram in ounces or grams", () => {
    // Twelve bands of 1 ft by 150 ft at 20 lb/ac: 0.8264 lb, 13.22 oz; 1.102 oz each.
    const bands = planSpreading({
      plot: { kind: "row-bands", name: "Corn", rows: 12, rowLength: qty(150, "ft"), bandWidth: qty(1, "ft") },
      spreader: { hopper: qty(3, "lb") },
      product: { name: "Granules", rate: qty(20, "lb/ac") },
    });
    const ounces = spreadingCard(bands);
    expect(ounces.loads[0]?.steps).toEqual([
      "Corn: weigh out 1.1 oz wt for each of the 12 rows and spread it (13.2 oz wt total).",
      REST,
    ]);
    // 4,356 ft² = 484 yd² at 2 oz: 968 oz = 60.5 lb, four hoppers of 14 lb and one of 4.5; two bags of 56 lb leave 51.5.
    const imperial = planSpreading({
      plot: { kind: "rectangle", length: qty(22, "yd"), width: qty(22, "yd") },
      spreader: { hopper: qty(14, "lb") },
      product: { name: "Product A", rate: qty(2, "oz/yd2"), bag: qty(56, "lb") },
    });
    expect(imperial.total).toEqual(qty(968, "oz"));
    const { facts, loads } = spreadingCard(imperial);
    expect(facts.slice(-2).map(({ value }) => value)).toEqual(["60.5 lb", "2 (51.5 lb left over)"]);
    expect(loads[0]?.steps.at(-2)).toContain("4.5 lb");
    // 320 m² at 3 g: 960 g, less than a kilogram; a bag of 2,400 g leaves 1,440.
    const small = planSpreading({
      plot: { kind: "rectangle", length: qty(32, "m"), width: qty(10, "m") },
      spreader: { hopper: qty(1, "kg") },
      product: { name: "Product A", rate: qty(3, "g/m2"), bag: qty(2400, "g") },
    });
    const card = spreadingCard(small);
    expect(card.facts.slice(-2).map(({ value }) => value)).toEqual(["960 g", "1 (1.44 kg left over)"]);
    expect(card.loads[0]?.steps).toEqual(["Weigh out 960 g, fill the hopper and spread it.", REST]);
  });

  it("gives no fills for what is refused, and says so", () => {
    const card = spreadingCard(planSpreading(withProduct(LAWN, { label: { max: qty(4, "lb/1000ft2") } })));
    expect(card.loads).toEqual([]);
    expect(card.order).toEqual(["Do not fill the hopper. Fix what the warnings say, and print it again."]);
    expect(card.warnings[0]?.name).toBe("Do not spread");
    const near = spreadingCard(planSpreading(withProduct(LAWN, { label: { max: qty(5, "lb/1000ft2") } })));
    expect(near.warnings[0]?.name).toBe("Warning");
  });

  it("comes in other units and in Spanish", () => {
    // 90 lb are 40.823 kg; printed amounts are rounded down.
    const metric = spreadingCard(planSpreading(LAWN), { units: "metric" });
    expect(metric.facts.find(({ name }) => name === "Total Product A")?.value).toMatch(/^40\.8\d* kg$/);
    const text = renderText(spreadingCard(planSpreading(full), { words: SPANISH_WORDS }));
    expect(text).toContain("A lo largo de todo: 1.44");
    expect(text).not.toContain("undefined");
  });

  it("takes a plan that was saved, and none that was changed", () => {
    const saved = JSON.parse(JSON.stringify(planSpreading(full)));
    expect(spreadingCard(saved)).toEqual(spreadingCard(planSpreading(full)));
    expectRefused(() => spreadingCard({ ...saved, total: qty(3, "lb") }), "conflict", "plan.total");
    expectRefused(() => stepsOf({} as SpreadingPlan), "not-a-quantity", "plan", "finished plan");
    for (const read of [planSpreading as (job: unknown) => unknown, parseSpreadingInput]) {
      expectRefused(() => read(saved), "conflict", "", "Pass its input");
      expect(refusal(() => read(saved)).issues).toHaveLength(1);
    }
  });
});

describe("the front door", () => {
  it("reads a job as a form has it", () => {
    const form = {
      plot: { kind: "rectangle", length: "180 ft", width: "100 ft" },
      spreader: { hopper: "20 lb", directions: "2" },
      product: { name: "Product A", rate: "5 lb/1000 sq ft" },
    };
    expect(parseSpreadingInput(form)).toEqual({
      ...LAWN,
      spreader: { hopper: qty(20, "lb"), directions: 2 },
    });
    const named = { ...form, product: { name: "Product A", rate: "5 lb/Ksf" } };
    expect(parseSpreadingInput(named)).toEqual(parseSpreadingInput(form));
    const unknown = { ...form, product: { name: "Product A", rate: "5 lb/mz" } };
    const words = "Write how much that is per ac or per 1,000 sq ft.";
    expectRefused(() => parseSpreadingInput(unknown), "unknown-unit", "product.rate", words);
    expect(spreadingInputSchema().safeParse(form).success).toBe(true);
    expectRefused(() => parseSpreadingInput({ ...form, size: TREES.size }), "conflict", "size", "not both");
  });
});

describe("the worksheet of a job of granules", () => {
  const full: SpreadingInput = {
    ...withProduct(BEDS, { bag: qty(5, "lb") }),
    test: { used: qty(3.1, "oz"), swath: qty(4, "ft"), distance: qty(25, "ft") },
  };

  it("has the job, the fills, what goes where, and the working", () => {
    const sheet = spreadingSheet(planSpreading(full));
    expect(sheet.title).toBe("Spreader job worksheet");
    expect(sheet.summary[0]).toEqual({ name: "Treated area", value: "720 sq ft" });
    expect(sheet.totals).toEqual([
      {
        name: "Lengthwise over all of it: 1.44 lb",
        value: `plot 1: weigh out 11.5 oz wt for each of the 2 beds and spread it (1.44 lb total). ${REST}`,
      },
      {
        name: "Crosswise over all of it: 1.44 lb",
        value: `plot 1: weigh out 11.5 oz wt for each of the 2 beds and spread it (1.44 lb total). ${REST}`,
      },
    ]);
    expect(sheet.steps.map(({ number, title }) => `${number} ${title}`)).toEqual([
      "1 Treated area",
      "2 Fertilizer for the nutrient",
      "3 Product for the job",
      "4 Hopper fills",
      "5 Bags to buy",
      "6 Spreader test",
    ]);
    // 3.1 oz on 100 ft²; 1,000 ÷ 16 = 62.5. A unit that begins with a number has no "in 1" before it.
    expect(sheet.steps[5]?.lines[1]?.numbers).toBe("0.031 oz wt/sq ft × 62.5");
    // 4 lb per 1,000 ft² on 720 ft².
    expect(sheet.steps[2]?.lines.at(-1)?.result).toBe("2.88 lb");
    expect(sheet.cautions).toHaveLength(6);
  });

  it("lays out in every form, in other units and in Spanish", () => {
    const plan = planSpreading(full);
    for (const render of [renderText, renderMarkdown, renderHtml, renderLatex]) {
      const text = render(spreadingSheet(plan, { words: SPANISH_WORDS }));
      expect(text).toContain("Fertilizante para el nutriente");
      expect(text).not.toMatch(/undefined|NaN/);
    }
    // 2.88 lb are 1.306 kg.
    expect(spreadingSheet(plan, { units: "metric" }).steps[2]?.lines.at(-1)?.result).toMatch(
      /^1\.306\d* kg$/,
    );
  });

  it("has no fill and no amount of what is refused, and says not to spread it", () => {
    const sheet = spreadingSheet(planSpreading(withProduct(LAWN, { label: { max: qty(4, "lb/1000ft2") } })));
    expect(sheet.warnings[0]?.name).toBe("Do not spread");
    expect(sheet.refused).toBe("Do not fill the hopper. Fix what the warnings say, and print it again.");
    expect(sheet.totals).toEqual([]);
    expect(sheet.summary.map(({ name }) => name)).toEqual(["Treated area", "Product A rate"]);
    expect(sheet.steps.map(({ title }) => title)).toEqual(["Treated area"]);
    expectRefused(() => spreadingSheet({} as SpreadingPlan), "not-a-quantity", "plan", "finished plan");
    expectRefused(() => spreadingSheet(planSpreading(LAWN), { digits: 0 }), "out-of-range", "options.digits");
  });
});
