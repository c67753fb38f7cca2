import { describe, expect, it } from "vitest";
import {
  type BatchInput,
  comparePlans,
  type PlanInput,
  planApplication,
  planMix,
  planSensitivity,
  readPlan,
  readRecord,
  reconcile,
  seasonSoFar,
} from "../../../src/plan/index.ts";
import { qty, type Volume, valueIn } from "../../../src/units/index.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
import { planApplication as stepsOf } from "../../../src/working/index.ts";
import { ENGLISH_WORDS, fieldCard, renderText, worksheet } from "../../../src/worksheet/index.ts";
import { expectPrintedTrue, numberReader } from "../../helpers/printed-lines.ts";
import { expectRefused } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const read = numberReader("en-US");
const A = { name: "Product A", form: "liquid" } as const;
const BASE = { sprayer: { tank: qty(4, "gal") }, tools: "us-cups-and-spoons" } as const;

const POTS: BatchInput = {
  ...BASE,
  size: { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") },
  products: [{ ...A, rate: qty(8, "fl_oz/100gal") }],
};
const SPOT: BatchInput = {
  ...BASE,
  size: { kind: "volume", volume: qty(3, "gal") },
  products: [{ ...A, rate: { value: 2, unit: "%", basis: "v/v" } }],
};
const ROW: BatchInput = {
  ...BASE,
  size: { kind: "row-length", length: qty(900, "ft"), rate: qty(5, "gal/1000ft") },
  products: [{ ...A, rate: qty(2, "fl_oz/1000ft") }],
};
const TREES: BatchInput = {
  sprayer: { tank: qty(100, "L") },
  tools: "metric-spoons",
  size: {
    kind: "count",
    count: qty(60, "tree"),
    each: { flow: { caught: qty(2, "L"), time: qty(20, "s") }, time: qty(25, "s") },
  },
  products: [{ ...A, rate: qty(3, "mL/tree") }],
};

const totals = (input: BatchInput) =>
  planApplication(input).totals.products.map(({ amount }) => [
    Number(amount.value.toPrecision(12)),
    amount.unit,
  ]);

describe("a dose by the spoon", () => {
  // 6 tsp are 1 fl oz (NIST Handbook 44 (2024), Appendix C), so most of these are endless decimals of a fluid ounce.
  it("is measured in the spoons that the label's rate comes to, exactly", () => {
    for (const tsp of [0.5, 1, 1.5, 2, 2.5, 4, 5, 8])
      for (const gallons of [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4]) {
        const eighths = Math.round(tsp * gallons * 8);
        const size = { kind: "volume", volume: qty(gallons, "gal") } as const;
        const products = [{ ...A, rate: qty(tsp, "tsp/gal") }] as const;
        const [load] = planApplication({ ...BASE, size, tools: "us-spoons", products }).loads;
        const measured = load?.products[0]?.measured;
        const parts = measured?.ok ? measured.parts : [];
        // Doses of several spoons may be under by up to 2% for fewer of them, which is no noise.
        if (parts.length === 0 || measured?.ok !== true)
          throw new Error(`${tsp} tsp/gal in ${gallons} gal isn't measured`);
        const inEighths = parts.reduce(
          (sum, { tool, count }) => sum + count * 8 * valueIn(tool.capacity as Volume, "tsp"),
          0,
        );
        expect(Math.abs(inEighths / eighths - 1), `${tsp} x ${gallons}`).toBeLessThan(
          measured.errorPercent === 0 ? 1e-9 : 0.02,
        );
        if (eighths % 8 === 0) expect(measured.errorPercent, `${tsp} x ${gallons}`).toBe(0);
      }
  });

  it("is that in each of many loads as well", () => {
    const size = { kind: "volume", volume: qty(116, "gal") } as const;
    const { loads } = planApplication({ ...BASE, size, products: [{ ...A, rate: qty(2, "tsp/gal") }] });
    expect(loads.length).toBe(29);
    for (const { products } of loads)
      expect(products[0]?.measured).toMatchObject({ ok: true, scoops: 4, errorPercent: 0 });
  });
});

describe("a job by volume, count or row", () => {
  it("takes its mix from the size and its product from the label's rate", () => {
    // 300 × 4 fl oz = 9.375 gal; 8 fl oz in 100 gal: 0.75 fl oz.
    expect(planApplication(POTS).carrier.total).toEqual(qty(9.375, "gal"));
    expect(totals(POTS)).toEqual([[0.75, "fl_oz"]]);
    // 2 % of 3 gal is 0.06 gal, 7.68 fl oz.
    expect(totals(SPOT)).toEqual([[7.68, "fl_oz"]]);
    // 900 ft at 5 gal per 1000 ft; 2 fl oz per 1000 ft of row: 1.8 fl oz.
    expect(planApplication(ROW).carrier.total).toEqual(qty(4.5, "gal"));
    expect(totals(ROW)).toEqual([[1.8, "fl_oz"]]);
    // 2 L in 20 s is 0.1 L/s, 2.5 L in 25 s; 60 trees: 150 L, 180 mL.
    expect(planApplication(TREES).carrier.total).toEqual(qty(150, "L"));
    expect(totals(TREES)).toEqual([[180, "mL"]]);
  });

  it("orders the products where their formulations are known, and adds up what they cost", () => {
    const two = [
      {
        ...A,
        rate: qty(8, "fl_oz/100gal"),
        formulation: "EC",
        price: { amount: 64, per: qty(1, "gal") },
      },
      {
        name: "Product B",
        form: "dry",
        rate: qty(1, "lb/100gal"),
        formulation: "WP",
        price: { amount: 16, per: qty(1, "lb") },
      },
    ] as const;
    const plan = planApplication({ ...POTS, products: two });
    // A wettable powder goes in before an emulsifiable concentrate.
    expect(plan.mixingOrder).toEqual(["Product B", "Product A"]);
    // 0.75 fl oz at 0.50 each and 1.5 oz at 1.00 each.
    expect(plan.cost?.total).toBe(1.88);
    expect(planApplication(POTS)).not.toHaveProperty("mixingOrder");
    expect(planApplication(POTS)).not.toHaveProperty("cost");
  });

  it("says what each load is enough for, and what the reserve is", () => {
    const { loads, leftover } = planApplication({ ...POTS, reserve: { percent: 4 } });
    // 4 gal are 512 fl oz, 128 pots. The rest of 9.75 gal is 1.75 gal, 56 pots, of which 12 are extra.
    expect(loads.map(({ count }) => count)).toEqual([qty(128, "pot"), qty(128, "pot"), qty(44, "pot")]);
    expect(leftover).toEqual({ carrier: qty(0.375, "gal"), count: qty(12, "pot") });
    expect(planApplication(ROW).loads[0]?.rowLength?.value).toBeCloseTo(800, 10);
    expect(planApplication(SPOT).loads[0]).not.toHaveProperty("count");
    const area = { value: 2000, unit: "ft2", of: "treated" } as const;
    expect(planApplication({ ...SPOT, area }).loads[0]?.area).toEqual(area);
  });

  it("gives whole plants to a load", () => {
    const plan = planApplication({ ...POTS, split: "whole-plants", sprayer: { tank: qty(3.1, "gal") } });
    // 3.1 gal are 396.8 fl oz, 99 pots: 4 loads of 75.
    expect(plan.loads.map(({ pieces }) => pieces)).toEqual([75, 75, 75, 75]);
    expectRefused(
      () => planApplication({ ...SPOT, split: "whole-plants" }),
      "conflict",
      "split",
      "job by count",
    );
  });

  it("is the same as a job on an area, where one is given", () => {
    // 3 gal on a twentieth of an acre are 60 gal/ac.
    const area = { value: 0.05, unit: "ac", of: "treated" } as const;
    const products = [{ ...A, rate: qty(2, "pt/ac") }];
    const batch = planApplication({ ...SPOT, area, products });
    const plan = planApplication({
      ...BASE,
      plot: { kind: "treated-area", treated: area },
      calibration: { kind: "known", rate: qty(60, "gal/ac") },
      products,
    });
    expect(batch.rate).toEqual(plan.rate);
    expect(batch.totals).toEqual(plan.totals);
    expect(batch.loads.map(({ products }) => products)).toEqual(plan.loads.map(({ products }) => products));
  });

  const fits = (input: BatchInput, change: object) => () =>
    planApplication({ ...input, products: [{ ...input.products[0], ...change }] } as BatchInput);
  it("refuses a rate that doesn't fit the size, with what would", () => {
    const at = "products[0].rate";
    expectRefused(
      fits(SPOT, { rate: qty(2, "pt/ac") }),
      "conflict",
      at,
      "2 pt/ac is a volume per area, and this job is a volume of mix. Enter a rate per volume",
    );
    expectRefused(fits(SPOT, { rate: qty(2, "mL/plant") }), "conflict", at, "volume of mix");
    expectRefused(fits(POTS, { rate: qty(2, "pt/ac") }), "conflict", at, "rate per plant or per volume");
    expectRefused(fits(POTS, { rate: qty(2, "fl_oz/1000ft") }), "conflict", at, "number of plants");
    expectRefused(fits(ROW, { rate: qty(2, "mL/plant") }), "conflict", at, "length of row");
    expectRefused(fits(POTS, { rate: { rate: qty(2, "pt/ac"), per: "ground" } }), "conflict", at, "no plot");
    expectRefused(
      fits(POTS, { rate: { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal") } }),
      "conflict",
      at,
    );
    expectRefused(
      fits(POTS, {
        rate: { low: qty(1, "fl_oz/100gal"), high: qty(2, "pt/ac"), chosen: qty(2, "fl_oz/100gal") },
      }),
      "conflict",
      `${at}.high`,
    );
    expectRefused(fits(POTS, { label: { max: qty(2, "pt/ac") } }), "conflict", "products[0].label.max");
    expectRefused(
      fits(POTS, { label: { leastCarrier: qty(20, "gal/ac") } }),
      "conflict",
      "products[0].label.leastCarrier",
      "no area",
    );
    expectRefused(
      fits(POTS, { label: { seasonMax: qty(2, "pt/ac") }, soFar: { rate: qty(1, "pt/ac") } }),
      "conflict",
      "products[0].label.seasonMax",
    );
    // What was used counts against a season's limit only, and there is none.
    expect(fits(SPOT, { soFar: { rate: qty(1, "pt/ac") } })().warnings).toEqual([]);
    const both = { ...SPOT, plot: { kind: "treated-area" } } as never;
    expectRefused(() => planApplication(both), "conflict", "size", "not both");
  });

  it("refuses a rate per plant where the job is an area", () => {
    const area: PlanInput = {
      ...BASE,
      plot: { kind: "rectangle", length: qty(40, "ft"), width: qty(90, "ft") },
      calibration: { kind: "known", rate: qty(20, "gal/ac") },
      products: [{ ...A, rate: qty(2, "mL/plant") }],
    };
    expectRefused(() => planApplication(area), "conflict", "products[0].rate", "by the number of plants");
    const mix = { area: { value: 1, unit: "ac", of: "treated" }, rate: qty(20, "gal/ac"), ...BASE } as const;
    const { tools: _, ...known } = mix;
    expectRefused(
      () => planMix({ ...known, products: area.products }),
      "conflict",
      "products[0].rate",
      "by the number of plants",
    );
  });
});

describe("the checks of a job by volume, count or row", () => {
  const warned = (input: BatchInput) =>
    planApplication(input).warnings.map(({ key, severity, path, message }) => ({
      key,
      severity,
      path,
      message,
    }));
  const withLabel = (input: BatchInput, label: object, more: object = {}): BatchInput =>
    ({ ...input, ...more, products: [{ ...input.products[0], label }] }) as BatchInput;

  it("hold the label's limits against what the job is counted in", () => {
    const over = warned(withLabel(TREES, { max: qty(2, "mL/tree") }));
    expect(over[0]).toEqual({
      key: "rate-over-max",
      severity: "refusal",
      path: "products[0].rate",
      message:
        "Product A: The rate of 3 mL/tree is over the label maximum of 2 mL/tree. Use no more than the label allows.",
    });
    const near = warned(withLabel(SPOT, { max: { value: 2, unit: "%", basis: "v/v" } }));
    expect(near.map(({ key }) => key)).toEqual(["rate-near-max-by-measure"]);
    expect(warned(withLabel(ROW, { min: qty(3, "fl_oz/1000ft") }))[0]?.key).toBe("rate-under-min");
    expect(warned(withLabel(POTS, { mostApplications: 2 }))[0]?.key).toBe("applications-unknown");
  });

  it("hold the carrier's limits against the area that is given, in words that fit", () => {
    const area = { value: 5000, unit: "ft2", of: "treated" } as const;
    // 3 gal on 5000 ft² are 26.136 gal/ac.
    const found = (label: object) => warned(withLabel(SPOT, label, { area }));
    expect(found({ leastCarrier: qty(30, "gal/ac") })).toMatchObject([
      { key: "carrier-under-least-batch", severity: "refusal", path: "size" },
    ]);
    expect(found({ leastCarrier: qty(25, "gal/ac") })).toMatchObject([
      { key: "carrier-near-least-batch", severity: "warning" },
    ]);
    expect(found({ mostCarrier: qty(20, "gal/ac") })).toMatchObject([
      { key: "carrier-over-most-batch", severity: "refusal" },
    ]);
  });

  it("question what each gets, and a job of very many loads", () => {
    const each = { kind: "count", count: qty(3, "tree"), each: qty(40, "gal") } as const;
    expect(warned({ ...SPOT, size: each, sprayer: { tank: qty(100, "gal") } })[0]).toMatchObject({
      key: "each-implausible",
      path: "size.each",
    });
    // Gallons typed for fluid ounces: 300 pots of 4 gal.
    const slip = warned({ ...POTS, size: { kind: "count", count: qty(300, "pot"), each: qty(4, "gal") } });
    expect(slip.map(({ key }) => key)).toContain("loads-many");
  });
});

describe("what comes after a plan by volume, count or row", () => {
  it("is read from a file, compared, and tried for what moves it", () => {
    for (const input of [POTS, SPOT, ROW, TREES]) {
      const plan = planApplication(input);
      const saved = JSON.parse(JSON.stringify(plan));
      expect(readPlan(saved)).toEqual(plan);
      saved.totals.products[0].amount.value *= 1.01;
      expectRefused(() => readPlan(saved), "conflict", "totals.products[0].amount");
    }
    const more = planApplication({
      ...POTS,
      size: { ...POTS.size, count: qty(330, "pot") } as BatchInput["size"],
    });
    const { inputs, results } = comparePlans(planApplication(POTS), more);
    expect(inputs).toEqual([
      { path: "size.count", before: qty(300, "pot"), after: qty(330, "pot"), percent: 10 },
    ]);
    expect(results.find(({ path }) => path === "carrier.total")?.percent).toBe(10);
    const moved = planSensitivity(planApplication({ ...POTS, reserve: { roundUpTo: qty(1, "gal") } }));
    expect(moved.map(({ path, change }) => `${path} ${change}`).sort()).toEqual([
      "products[0].rate one-percent",
      "size.count one-more",
      "size.each one-percent",
    ]);
    const count = planSensitivity(planApplication(POTS)).find(({ path }) => path === "size.count");
    // One pot more of 300.
    expect(count).toMatchObject({ change: "one-more", mix: 0.333333 });
  });

  it("records the amount per plant, per length and per volume, and a rate per area only where one is given", () => {
    const details = { finished: "2026-05-02T09:30" };
    // Of 9.375 gal 0.375 are left: 9 gal for 300 pots are 3.84 fl oz each, 4 % less.
    const pots = reconcile(planApplication(POTS), { ...details, left: qty(0.375, "gal") });
    expect(pots.carrierPerCount?.unit).toBe("fl_oz/pot");
    expect(pots.carrierPerCount?.value).toBeCloseTo(3.84, 12);
    expect(pots.fromPlanPercent).toBe(-4);
    expect(pots.record).toMatchObject({ count: qty(300, "pot"), mix: qty(9, "gal") });
    expect(pots.record).not.toHaveProperty("treated");
    expect(pots.record.missing).toContain("treated");
    const [product] = pots.record.products;
    expect(product).not.toHaveProperty("rate");
    // 0.72 fl oz in 300 pots.
    expect(product?.each?.unit).toBe("fl_oz/pot");
    expect(product?.each?.value).toBeCloseTo(0.0024, 12);
    expect(readRecord(JSON.parse(JSON.stringify(pots.record)))).toEqual(pots.record);

    const spot = reconcile(planApplication(SPOT), {
      ...details,
      left: qty(1, "gal"),
      addedWater: qty(1, "gal"),
    });
    // A gallon of water in three of mix: 75 %.
    expect(spot.strengthPercent).toBeCloseTo(75, 10);
    expect(spot.record.products[0]?.each).toEqual({ value: expect.closeTo(1.92, 10), unit: "fl_oz/gal" });

    const area = { value: 0.05, unit: "ac", of: "treated" } as const;
    const onArea = reconcile(planApplication({ ...SPOT, area, name: "Fence line" }), {
      ...details,
      left: qty(0, "gal"),
    });
    expect(onArea.record).toMatchObject({ treated: area, plots: ["Fence line"] });
    // 7.68 fl oz on a twentieth of an acre.
    expect(onArea.record.products[0]?.rate).toEqual({ value: expect.closeTo(153.6, 9), unit: "fl_oz/ac" });

    const row = reconcile(planApplication(ROW), { ...details, used: [qty(4.5, "gal")] });
    expect(row.record.products[0]?.each).toEqual({ value: expect.closeTo(2, 12), unit: "fl_oz/1000ft" });
    expect(row.record.rowLength).toEqual(qty(900, "ft"));
    expectRefused(
      () => reconcile(planApplication(ROW), { ...details, used: [qty(1, "gal"), qty(2, "gal")] }),
      "conflict",
      "actual.used",
    );
  });

  it("holds what was applied against the label", () => {
    const label = { max: qty(3, "mL/tree") };
    const plan = planApplication({
      ...TREES,
      products: [{ ...A, rate: qty(3, "mL/tree"), label }],
      reserve: { percent: 10 },
    });
    const all = reconcile(plan, { finished: "2026-05-02T09:30", left: qty(0, "L") });
    expect(all.findings.map(({ key }) => key)).toEqual(["rate-over-max"]);
    const none = reconcile(plan, { finished: "2026-05-02T09:30", used: [qty(0, "L")] });
    expect(none.findings).toEqual([]);
    // A range that the label gives limits what was applied too: a tenth more than 3 is over its high end.
    const range = { low: qty(2, "mL/tree"), high: qty(3.2, "mL/tree"), chosen: qty(3, "mL/tree") };
    const ranged = planApplication({ ...TREES, products: [{ ...A, rate: range }], reserve: { percent: 10 } });
    const more = reconcile(ranged, { finished: "2026-05-02T09:30", left: qty(0, "L") });
    expect(more.findings.map(({ code }) => code)).toEqual(["rate-over-max"]);
    const right = reconcile(ranged, { finished: "2026-05-02T09:30", left: qty(15, "L") });
    expect(right.findings).toEqual([]);
  });

  it("counts applications in a season, and leaves out a rate that isn't known", () => {
    const done = reconcile(planApplication(POTS), { finished: "2026-05-02T09:30", left: qty(0, "gal") });
    expect(seasonSoFar({ product: "Product A", records: [done.record], today: "2026-05-12" })).toEqual({
      applications: 1,
      daysSinceLast: 10,
    });
    expect(done.season).toEqual([{ name: "Product A", soFar: {} }]);
  });
});

describe("the sheets of a job by volume, count or row", () => {
  it.each([POTS, SPOT, ROW, TREES].map((input) => [input.size.kind, input] as const))(
    "%s: each printed line is true, in every system and in Spanish",
    (_, input) => {
      const plan = planApplication({ ...input, reserve: { percent: 5 } });
      expectLinesTrue(stepsOf(plan).flatMap(({ lines }) => lines));
      for (const units of [undefined, "us", "metric", "imperial"] as const) {
        const sheet = worksheet(plan, units && { units });
        for (const line of sheet.steps.flatMap(({ lines }) => lines))
          expectPrintedTrue(line, { read, digits: 6, functions: ENGLISH_WORDS.functions });
      }
      const spanish = renderText(fieldCard(plan, { locale: "es-US", words: SPANISH_WORDS }));
      expect(spanish).not.toMatch(/\b(Each|How many|load|enough|pots?|trees?)\b/);
    },
  );

  it("say of few trees what part of one a load is enough for", () => {
    // 14 x 96 fl oz are 10.5 gal in loads of 4, 4 and 2.5 gal: 5 1/3, 5 1/3 and 3 1/3 trees.
    const size = { kind: "count", count: qty(14, "tree"), each: qty(96, "fl_oz") } as const;
    const plan = planApplication({
      ...BASE,
      size,
      products: [{ ...A, rate: qty(2, "tsp/gal") }],
      split: "full-then-part",
    });
    expect(fieldCard(plan).loads.at(-1)?.steps.at(-1)).toMatch(/It is enough for 3 1\/3 trees\.$/);
    expect(fieldCard(plan).loads[0]?.steps).toContain(
      "Check where each load runs out: load 1 after about 5 1/3 trees, load 2 after about 10 2/3 trees.",
    );
    const spanish = fieldCard(plan, { words: SPANISH_WORDS });
    expect(spanish.loads.at(-1)?.steps.at(-1)).toContain("3 1/3 árboles");
    // 1,234 of many pots are no more than three figures: 1,230.
    const pots = planApplication({
      ...POTS,
      size: { kind: "count", count: qty(2468, "pot"), each: qty(4, "fl_oz") },
      sprayer: { tank: qty(38.5625, "gal") },
    });
    expect(fieldCard(pots).loads[0]?.steps.join(" ")).toMatch(/about 1,230 pots for each load/);
    // Of whole trees there is no part.
    const whole = planApplication({ ...plan.input, split: "whole-plants" } as BatchInput);
    expect(fieldCard(whole).loads.at(-1)?.steps.at(-1)).toMatch(/It is enough for 4 trees\.$/);
  });

  it("print how many, what each gets, and what a load is enough for", () => {
    const card = fieldCard(planApplication(POTS));
    expect(card.facts.slice(0, 2)).toEqual([
      { name: "How many", value: "300 pots" },
      { name: "Each gets", value: "4 fl oz/pot" },
    ]);
    // 4 gal are 512 fl oz, 128 pots. 5% off either way: 121.9 and 134.7 pots.
    expect(card.loads.map(({ title }) => title)).toEqual(["Loads 1 and 2 of 3, each", "Load 3 of 3"]);
    expect(card.loads[0]?.steps.slice(-3)).toEqual([
      "Spray or drench until the tank is empty: about 128 pots for each load. Mark where you stop, and start the next load there.",
      "Check where each load runs out: load 1 after about 128 pots, load 2 after about 256 pots.",
      "If load 1 runs out before 121 pots or after 135 pots, stop and calibrate again.",
    ]);
    expect(card.loads[1]?.steps.at(-1)).toBe(
      "Apply this load by spraying or drenching. It is enough for 44 pots.",
    );
    expect(fieldCard(planApplication(SPOT)).loads[0]?.steps.at(-1)).toBe(
      "Apply this load by spraying or drenching.",
    );
    // 2 L in 20 s for 25 s are 2.5 L a tree, 40 trees to a tank.
    const trees = fieldCard(planApplication(TREES));
    expect(trees.facts[1]).toEqual({ name: "Each gets", value: "25 s of spraying (2.5 L/tree)" });
    // 100 L are 66.67 trees at 1.5 L: nobody takes note of two thirds of a tree.
    const each = fieldCard(
      planApplication({
        ...TREES,
        size: { kind: "count", count: qty(150, "tree"), each: qty(1.5, "L") },
        sprayer: { ...TREES.sprayer, marks: qty(10, "L") },
        reserve: { percent: 30 },
      }),
    );
    expect(each.loads[0]?.steps.at(-3)).toBe(
      "Check where each load runs out: load 1 after about 66 trees, load 2 after about 133 trees.",
    );
    expect(worksheet(planApplication(ROW)).summary.map(({ name }) => name)).toEqual([
      "Length of row",
      "Mix per length of row",
      "Product A rate",
      "Total spray mix",
    ]);
  });
});
