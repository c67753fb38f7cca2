import { describe, expect, it } from "vitest";
import { type Calibration, calibrationRecord } from "../../../src/output-rate/index.ts";
import {
  type PlanInput,
  type Plot,
  type Product,
  planApplication,
  planMix,
} from "../../../src/plan/index.ts";
import type { LabelRate } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { planApplication as planLines } from "../../../src/working/index.ts";
import { refusal } from "../../helpers/refusal.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const JOB: PlanInput = {
  plot: { kind: "rectangle", length: qty(100, "m"), width: qty(50, "m") },
  calibration: { kind: "known", rate: qty(200, "L/ha") },
  sprayer: { tank: qty(120, "L") },
  products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
  tools: "cylinders",
};

const m = (value: number) => qty(value, "m");

// Expected areas by plane geometry, from memory.
const PLOTS: readonly (readonly [Plot, number])[] = [
  [{ kind: "rectangle", length: m(40), width: m(25) }, 1000],
  [{ kind: "rectangle", length: m(40), width: m(25), fraction: 0.25 }, 250],
  [{ kind: "triangle", base: m(40), height: m(25) }, 500],
  [{ kind: "triangle", sides: [m(30), m(40), m(50)] }, 600],
  [{ kind: "circle", diameter: m(20) } as Plot, 100 * Math.PI],
  [
    {
      kind: "boundary",
      corners: [
        [0, 0],
        [30, 0],
        [30, 20],
        [0, 20],
      ],
      unit: "m",
    },
    600,
  ],
  [{ kind: "offsets", offsets: [m(10), m(12), m(14)], spacing: m(10), rule: "trapezoidal" }, 240],
  [
    {
      kind: "composite",
      add: [{ kind: "rectangle", length: m(40), width: m(25) }],
      subtract: [{ kind: "rectangle", length: m(10), width: m(10) }],
    },
    900,
  ],
  [{ kind: "composite", add: [{ kind: "rectangle", length: m(40), width: m(25) }] }, 1000],
  [{ kind: "row-bands", rows: 10, rowLength: m(50), bandWidth: m(0.5), rowSpacing: m(1) }, 250],
  [{ kind: "row-bands", rowLengths: [m(50), m(30)], bandWidth: m(0.5) }, 40],
  [{ kind: "beds", beds: 4, bedLength: m(25), bedWidth: m(1.2) }, 120],
  [{ kind: "beds", bedLengths: [m(25), m(75)], bedWidth: m(1.2) }, 120],
  [{ kind: "tree-rows", rows: 5, rowLength: m(40), stripWidth: m(1), sides: 2 }, 400],
  [{ kind: "spots", spots: [{ count: 20, length: m(1), width: m(2) }] }, 40],
  [{ kind: "ground-area", ground: { value: 0.1, unit: "ha", of: "ground" } }, 1000],
  [{ kind: "treated-area", treated: { value: 0.1, unit: "ha", of: "treated" } }, 1000],
];

describe("planApplication takes every kind of plot", () => {
  it.each(PLOTS)("%j", (plot, area) => {
    const plan = planApplication({ ...JOB, plot });
    const treated =
      plan.area.treated.unit === "ha" ? plan.area.treated.value * 10_000 : plan.area.treated.value;
    expect(treated).toBeCloseTo(area, 9);
    // 200 L/ha is 0.02 L/m², and 2 L/ha of product a hundredth of the mix.
    expect(plan.carrier.sprayed.value).toBeCloseTo(area * 0.02, 9);
    expect(plan.totals.products[0]?.amount.value).toBeCloseTo(area * 0.2, 6);
    for (const { lines } of planLines(plan)) if (lines.length > 0) expectLinesTrue(lines);
  });
});

const run = { used: qty(2, "L"), swath: m(2), distance: m(50) };
const strip = { kind: "strip", ...run } as const;
// Each of them is 200 L/ha: by the definition of a rate.
const CALIBRATIONS: readonly Calibration[] = [
  { kind: "known", rate: qty(200, "L/ha") },
  strip,
  {
    kind: "strip-runs",
    runs: [run, { ...run, used: qty(2.02, "L") }, { ...run, used: qty(1.98, "L") }],
  },
  // 0.6 L/min at 1 m/s over 0.5 m.
  {
    kind: "catch",
    catches: [qty(0.6, "L"), qty(600, "mL")],
    time: qty(1, "min"),
    speed: qty(1, "m/s"),
    width: m(0.5),
  },
  { kind: "flow", flow: qty(0.6, "L/min"), speed: qty(1, "m/s"), width: m(0.5) },
  { kind: "hand", used: qty(2, "L"), area: { value: 100, unit: "m2", of: "treated" } },
  { kind: "record", record: calibrationRecord({ date: "2026-04-01", measurement: strip }) },
];

describe("planApplication, given the treated area itself", () => {
  it("tells what part of the ground it is, where the ground is given", () => {
    const treated = { value: 0.1, unit: "ha", of: "treated" } as const;
    const ground = { value: 4000, unit: "m2", of: "ground" } as const;
    const { area } = planApplication({ ...JOB, plot: { kind: "treated-area", treated, ground } });
    expect(area.plots).toEqual([{ treated, ground, fraction: 0.25 }]);
  });
});

describe("planApplication tells the length of all rows", () => {
  it.each<[Plot, number]>([
    [{ kind: "row-bands", rows: 10, rowLength: m(50), bandWidth: m(0.5) }, 500],
    [{ kind: "row-bands", rowLengths: [m(50), m(30)], bandWidth: m(0.5) }, 80],
    [{ kind: "beds", beds: 4, bedLength: m(25), bedWidth: m(1.2) }, 100],
    [{ kind: "beds", bedLengths: [m(25), m(20)], bedWidth: m(1.2) }, 45],
    [{ kind: "tree-rows", rows: 5, rowLength: m(40), stripWidth: m(1), sides: 2 }, 200],
    [{ kind: "tree-rows", rowLengths: [m(40), m(30)], stripWidth: m(1), sides: 2 }, 70],
  ])("%j", (plot, length) => {
    expect(planApplication({ ...JOB, plot }).area.rowLength).toEqual(m(length));
  });
});

describe("planApplication takes every way to calibrate", () => {
  it.each(CALIBRATIONS)("$kind", (calibration) => {
    const plan = planApplication({ ...JOB, calibration });
    expect(plan.rate.unit).toBe("L/ha");
    expect(plan.rate.value).toBeCloseTo(200, 9);
    const rateStep = planLines(plan)[1];
    expect(rateStep?.step).toBe("rate");
    if (calibration.kind !== "known") expectLinesTrue(rateStep?.lines ?? []);
  });
});

// Plot: half a hectare in 20 rows of 250 m, bands 0.5 m of 1 m spacing: 2,500 m² treated on 5,000 m² of ground; 50 L of mix.
const ROWS: Plot = { kind: "row-bands", rows: 20, rowLength: m(250), bandWidth: m(0.5), rowSpacing: m(1) };
const LIQUIDS: readonly (readonly [LabelRate, number])[] = [
  [qty(2, "L/ha"), 500],
  [{ rate: qty(2, "L/ha"), per: "broadcast" }, 500],
  [{ rate: qty(2, "L/ha"), per: "ground" }, 1000],
  [qty(1, "L/100L"), 500],
  [{ value: 1, unit: "%", basis: "v/v" }, 500],
  [{ value: 10_000, unit: "ppm", basis: "v/v" }, 500],
  [{ parts: 1, to: 100, of: "mix" }, 500],
  [{ parts: 1, to: 99, of: "water" }, 500],
  [qty(0.1, "mL/m"), 500],
  [{ activeIngredient: qty(0.8, "kg/ha"), contains: qty(400, "g/L") }, 500],
  [{ low: qty(1, "L/ha"), high: qty(3, "L/ha"), chosen: qty(2, "L/ha") }, 500],
];
const DRY: readonly (readonly [LabelRate, number])[] = [
  [qty(2, "kg/ha"), 500],
  [qty(1, "kg/100L"), 500],
  [{ value: 1, unit: "%", basis: "w/v" }, 500],
  [{ activeIngredient: qty(1, "kg/ha"), contains: qty(500, "g/kg") }, 500],
];

describe("planApplication takes every way a label tells a rate", () => {
  it.each([
    ...LIQUIDS.map((one) => ["liquid", ...one] as const),
    ...DRY.map((one) => ["dry", ...one] as const),
  ])("%s %j", (form, rate, amount) => {
    const products = [{ name: "Product A", form, rate } as Product];
    const plan = planApplication({ ...JOB, plot: ROWS, products });
    expect(plan.totals.products[0]?.amount.unit).toBe(form === "liquid" ? "mL" : "g");
    expect(plan.totals.products[0]?.amount.value).toBeCloseTo(amount, 6);
    for (const { lines } of planLines(plan)) if (lines.length > 0) expectLinesTrue(lines);
  });
});

describe("planApplication parts a mix", () => {
  it("by whole rows, so that none ends in the middle of a tank", () => {
    // Each row takes 2.5 L; a 12 L tank holds 4 whole rows, so 20 rows make 5 loads of 10 L.
    const plan = planApplication({
      ...JOB,
      plot: ROWS,
      sprayer: { tank: qty(12, "L") },
      split: "whole-rows",
    });
    expect(plan.loads.map(({ pieces }) => pieces)).toEqual([4, 4, 4, 4, 4]);
    for (const { carrier } of plan.loads) expect(carrier.value).toBeCloseTo(10, 9);
  });

  it("by whole beds and whole rows of trees, where each kind is all of one length", () => {
    const beds: Plot = { kind: "beds", beds: 6, bedLength: m(100), bedWidth: m(1) };
    const trees: Plot = { kind: "tree-rows", rows: 6, rowLength: m(50), stripWidth: m(1), sides: 2 };
    // 100 m² at 200 L/ha are 2 L; a 5 L tank holds 2 of them.
    for (const plot of [beds, trees]) {
      const plan = planApplication({ ...JOB, plot, sprayer: { tank: qty(5, "L") }, split: "whole-rows" });
      expect(plan.loads.map(({ pieces }) => pieces)).toEqual([2, 2, 2]);
    }
    for (const plot of [
      { kind: "beds", bedLengths: [m(100), m(100)], bedWidth: m(1) },
      { kind: "rectangle", length: m(100), width: m(6) },
    ] as const) {
      expect(() => planApplication({ ...JOB, plot, split: "whole-rows" })).toThrow(
        expect.objectContaining({ code: "conflict", path: "split" }),
      );
    }
  });

  it("so that the last load is not too small to be drawn", () => {
    // 100 L in a tank of 70 L leave 30 L; the pump draws no less than 40 L.
    const sprayer = { tank: qty(70, "L"), leastLoad: qty(40, "L") };
    expect(planApplication({ ...JOB, sprayer }).loads.map(({ carrier }) => carrier.value)).toEqual([60, 40]);
  });

  it("by whole plots of one size", () => {
    const plot: Plot = { kind: "rectangle", length: m(20), width: m(25) };
    const plan = planApplication({
      ...JOB,
      plot: [plot, plot, plot],
      sprayer: { tank: qty(25, "L") },
      split: "whole-plots",
    });
    expect(plan.loads.map(({ pieces }) => pieces)).toEqual([2, 1]);
  });

  it("by neither where rows or plots differ", () => {
    const uneven: Plot = { kind: "row-bands", rowLengths: [m(50), m(30)], bandWidth: m(0.5) };
    for (const [plot, split] of [
      [uneven, "whole-rows"],
      [[JOB.plot, ROWS] as Plot[], "whole-plots"],
    ] as const) {
      expect(() => planApplication({ ...JOB, plot, split })).toThrow(
        expect.objectContaining({ code: "conflict", path: "split" }),
      );
    }
  });
});

describe("planApplication puts products in the order of mixing", () => {
  const products = [
    { name: "Product A", form: "liquid", rate: qty(1, "L/ha"), formulation: "EC" },
    { name: "Product B", form: "dry", rate: qty(1, "kg/ha"), formulation: "WG" },
  ] as const;

  it("where every formulation is known", () => {
    expect(planApplication({ ...JOB, products }).mixingOrder).toEqual(["Product B", "Product A"]);
    expect(planApplication(JOB).mixingOrder).toBeUndefined();
    const three = ["EC", "SL", "water-conditioner"].map((formulation, i) => ({
      name: `Product ${"ABC"[i]}`,
      form: "liquid",
      rate: qty(1, "L/ha"),
      formulation,
    })) as PlanInput["products"];
    const order = (mixing?: PlanInput["mixing"]) =>
      planApplication({ ...JOB, products: three, mixing })
        .mixingOrder?.map((name) => name.at(-1))
        .join("");
    expect(order()).toBe("CBA");
    expect(order({ emulsionsFirst: true })).toBe("CAB");
    expect(order({ steps: ["emulsion"] })).toBe("ACB");
    const area = { value: 1, unit: "ha", of: "treated" } as const;
    const mix = { area, rate: qty(200, "L/ha"), sprayer: { tank: qty(15, "L") }, products: three };
    expect(planMix({ ...mix, mixing: { steps: ["emulsion"] } }).mixingOrder?.[0]).toBe("Product A");
    expect(refusal(() => planMix({ ...mix, mixing: { steps: ["emulsion", "emulsion"] } })).path).toBe(
      "mixing.steps[1]",
    );
  });

  it("and says which code it does not know", () => {
    const wrong = [products[0], { ...products[1], formulation: "QQ" as "WG" }];
    expect(() => planApplication({ ...JOB, products: wrong })).toThrow(
      expect.objectContaining({ code: "unknown-choice", path: "products[1].formulation" }),
    );
  });
});

describe("planApplication measures a dry product", () => {
  it("but not a liquid with a bulk density", () => {
    const product = {
      name: "Product A",
      form: "liquid",
      rate: qty(2, "L/ha"),
      bulkDensity: qty(0.6, "kg/L"),
    };
    expect(refusal(() => planApplication({ ...JOB, products: [product] } as never))).toMatchObject({
      key: "bulk-density-of-liquid",
      path: "products[0].bulkDensity",
      message:
        "A bulk density is for a dry product, and this one is a liquid. Leave it out, or change the product to dry.",
    });
  });

  it("with spoons by its own bulk density where there is no scale", () => {
    const dry = {
      name: "Product B",
      form: "dry",
      rate: qty(0.3, "kg/ha"),
      bulkDensity: qty(0.5, "kg/L"),
    } as const;
    const plot: Plot = { kind: "rectangle", length: m(40), width: m(25) };
    const plan = planApplication({ ...JOB, plot, products: [dry], tools: "metric-spoons" });
    // 30 g at 0.5 kg/L fill 60 mL: four tablespoons of 15 mL.
    const measured = plan.loads[0]?.products[0]?.measured;
    expect(measured?.volume).toEqual({ value: 60, unit: "mL" });
    expect(measured).toMatchObject({ ok: true, scoops: 4 });
    for (const { lines } of planLines(plan)) if (lines.length > 0) expectLinesTrue(lines);
  });
});
