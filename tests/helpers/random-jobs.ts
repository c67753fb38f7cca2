import fc from "fast-check";
import { SprayMathError } from "../../src/errors.ts";
import { type Plan, type PlanInput, planApplication } from "../../src/plan/index.ts";
import { type Quantity, qty, type Unit } from "../../src/units/index.ts";

const between = <U extends Unit>(min: number, max: number, unit: U): fc.Arbitrary<Quantity<U>> =>
  fc.double({ min, max, noNaN: true }).map((value) => qty(Number(value.toPrecision(4)), unit));

const bands = fc.record({
  kind: fc.constant("row-bands" as const),
  rows: fc.integer({ min: 2, max: 40 }),
  rowLength: between(50, 400, "ft"),
  bandWidth: between(12, 36, "in"),
  rowSpacing: between(4, 10, "ft"),
});
const plot = fc.oneof(
  bands,
  fc.record({
    kind: fc.constant("rectangle" as const),
    length: between(20, 120, "m"),
    width: between(30, 200, "ft"),
  }),
  fc.record({
    kind: fc.constant("tree-rows" as const),
    rows: fc.integer({ min: 2, max: 20 }),
    rowLength: between(30, 200, "yd"),
    stripWidth: between(30, 90, "cm"),
    sides: fc.constant(2 as const),
    rowSpacing: between(3, 6, "m"),
  }),
  fc.tuple(fc.integer({ min: 20, max: 90 }), fc.integer({ min: 20, max: 90 })).map(([a, b]) => ({
    kind: "boundary" as const,
    corners: [
      [0, 0],
      [a, -3],
      [a + 2, b],
      [1, b - 4],
    ] as [number, number][],
    unit: "yd" as const,
  })),
  fc.record({
    kind: fc.constant("spots" as const),
    spots: fc.tuple(
      fc.record({ count: fc.integer({ min: 5, max: 400 }), diameter: between(1, 4, "ft") }),
      fc.record({ count: fc.integer({ min: 5, max: 40 }), each: between(1, 4, "m2") }),
    ),
  }),
  between(0.05, 1, "ac").map((area) => ({
    kind: "treated-area" as const,
    treated: { ...area, of: "treated" as const },
  })),
);

const run = fc.record({
  used: between(30, 90, "fl_oz"),
  swath: between(40, 100, "cm"),
  distance: between(100, 300, "ft"),
});
const calibration = fc.oneof(
  run.map((one) => ({ kind: "strip" as const, ...one })),
  fc.tuple(run, run).map(([a, b]) => ({ kind: "strip-runs" as const, runs: [a, { ...b, used: a.used }] })),
  fc.record({
    kind: fc.constant("catch" as const),
    catches: fc.array(between(300, 500, "mL"), { minLength: 1, maxLength: 4 }),
    time: fc.constant(qty(30, "s")),
    speed: between(2, 4, "mph"),
    width: between(15, 40, "in"),
  }),
  between(300, 1500, "mL").map((caught) => ({
    kind: "direct-strip" as const,
    caught,
    catchUnit: "fl_oz" as const,
    rateUnit: "gal/ac" as const,
  })),
  fc.record({
    kind: fc.constant("flow" as const),
    flow: between(0.5, 1.5, "L/min"),
    speed: between(2, 5, "km/h"),
    width: between(15, 30, "in"),
  }),
  between(10, 60, "imp_gal/ac").map((rate) => ({ kind: "known" as const, rate })),
);

const liquid = fc.oneof(
  between(0.5, 4, "pt/ac"),
  between(0.2, 2, "fl_oz/1000ft2"),
  between(100, 900, "mL/100L"),
  fc.constant({ value: 0.25, unit: "%", basis: "v/v" } as const),
  between(0.5, 3, "L/ha").map((rate) => ({ rate, per: "treated" as const })),
  fc.record({ activeIngredient: between(0.2, 1, "lb/ac"), contains: fc.constant(qty(360, "g/L")) }),
);
const dry = fc.oneof(between(4, 32, "oz/ac"), between(200, 900, "g/ha"), between(0.2, 2, "lb/100gal"));

const input = fc.record({
  plot,
  calibration,
  sprayer: fc.record({ tank: between(2, 60, "gal"), lineVolume: between(1, 20, "fl_oz") }),
  reserve: fc.oneof(
    fc.record({ percent: fc.integer({ min: 0, max: 15 }) }),
    between(0.1, 1, "L").map((volume) => ({ volume })),
    between(0.25, 1, "gal").map((roundUpTo) => ({ roundUpTo })),
  ),
  split: fc.constantFrom("equal" as const, "full-then-part" as const),
  products: fc.tuple(liquid, dry).map(([a, b]) => [
    { name: "Product A", form: "liquid" as const, rate: a },
    { name: "Product B", form: "dry" as const, rate: b, bulkDensity: qty(0.6, "kg/L") },
  ]),
  tools: fc.constantFrom("us-spoons" as const, "syringes" as const, "metric-cups-and-spoons" as const),
});

/** Plans of small random jobs, told in all sorts of units, with no more than eight loads. */
export const randomPlan: fc.Arbitrary<Plan> = input
  .map((one) => {
    try {
      return planApplication(one as unknown as PlanInput);
    } catch (error) {
      // A mix of nearly nothing but product, and the like.
      if (error instanceof SprayMathError) return undefined;
      throw error;
    }
  })
  .filter((plan): plan is Plan => plan !== undefined && plan.loads.length <= 8);
