import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Plan, type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { convert, qty, type Unit, type UnitLike } from "../../../src/units/index.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const job = fc.record({
  rows: fc.integer({ min: 1, max: 60 }),
  length: between(10, 600),
  band: between(6, 48),
  used: between(4, 300),
  distance: between(20, 500),
  tank: between(0.5, 60),
  fill: between(0.4, 1),
  // Nothing, or what can be computed with: below 1e-75 a volume is refused as too small to compute with.
  lines: fc.oneof(fc.constant(0), between(1e-70, 30)),
  percent: between(0, 20),
  equal: fc.boolean(),
  liquid: between(0.1, 8),
  dry: between(0.5, 64),
});

type Job = typeof job extends fc.Arbitrary<infer T> ? T : never;

/** The same job, with every quantity told in the units of `unit`. */
function inputOf(
  j: Job,
  told: <U extends Unit>(value: number, unit: U) => { value: number; unit: UnitLike<U> },
): PlanInput {
  const input = {
    plot: {
      kind: "row-bands",
      rows: j.rows,
      rowLength: told(j.length, "ft"),
      bandWidth: told(j.band, "in"),
      rowSpacing: told(5, "ft"),
    },
    calibration: {
      kind: "strip",
      used: told(j.used, "fl_oz"),
      swath: told(j.band, "in"),
      distance: told(j.distance, "ft"),
    },
    sprayer: {
      tank: told(j.tank, "gal"),
      workingFill: told(j.tank * j.fill, "gal"),
      lineVolume: told(j.lines, "fl_oz"),
    },
    reserve: { percent: j.percent },
    split: j.equal ? "equal" : "full-then-part",
    products: [
      { name: "Product A", form: "liquid", rate: told(j.liquid, "pt/ac") },
      { name: "Product B", form: "dry", rate: told(j.dry, "oz/ac") },
    ],
    tools: [
      { name: "tablespoon", capacity: qty(1, "tbsp") },
      { name: "teaspoon", capacity: qty(1, "tsp") },
      { name: "scale", capacity: qty(5, "kg"), graduation: qty(0.1, "g") },
    ],
  };
  return input as unknown as PlanInput;
}

const asTold = <U extends Unit>(value: number, unit: U) => ({ value, unit }) as never;

const METRIC: Record<string, Unit> = {
  ft: "m",
  in: "cm",
  fl_oz: "mL",
  gal: "L",
  "pt/ac": "L/ha",
  "oz/ac": "g/ha",
};
const IMPERIAL: Record<string, Unit> = {
  ft: "yd",
  in: "in",
  fl_oz: "imp_fl_oz",
  gal: "imp_gal",
  "pt/ac": "imp_pt/ac",
  "oz/ac": "lb/ac",
};
const toldIn =
  (table: Record<string, Unit>) =>
  <U extends Unit>(value: number, unit: U) =>
    convert(qty(value, unit), table[unit] as never) as never;

// The number of loads is bounded by what a form would show; a job of thousands is another test. A mix that is mostly product
// is refused, as other tests show.
const plausible = (j: Job) => {
  const gallonsPerAcre = (j.used / 128 / ((j.band / 12) * j.distance)) * 43_560;
  if (j.liquid / 8 > 0.9 * gallonsPerAcre) return false;
  const gallons =
    ((j.used / 128 / j.distance) * j.rows * j.length * (1 + j.percent / 100) + j.lines / 128) /
    (j.tank * j.fill);
  return gallons < 200;
};

/** The digits of a decimal as a whole number of 10^-15ths: exact addition of what is printed. */
function exact(value: number): bigint {
  const [mantissa = "0", exponent = "0"] = value.toExponential().split("e");
  const digits = mantissa.replace(".", "").replace("-", "");
  const shift = 30 + Number(exponent) - (digits.length - 1);
  return BigInt(digits) * 10n ** BigInt(shift);
}

function expectSums(plan: Plan): void {
  const carriers = plan.loads.map(({ carrier }) => exact(carrier.value)).reduce((a, b) => a + b);
  expect(carriers).toBe(exact(plan.totals.carrier.value));
  for (const [i, { amount }] of plan.totals.products.entries()) {
    const doses = plan.loads
      .map((load) => exact(load.products[i]?.amount.value ?? 0))
      .reduce((a, b) => a + b);
    expect(doses).toBe(exact(amount.value));
  }
}

describe("planApplication", () => {
  it("makes the loads' mix and doses add up to the totals exactly as printed", () => {
    fc.assert(
      fc.property(job.filter(plausible), (j) => {
        expectSums(planApplication(inputOf(j, asTold)));
      }),
    );
  });

  it("mixes every load at the label's strength: label rate over output rate", () => {
    fc.assert(
      fc.property(job.filter(plausible), (j) => {
        const plan = planApplication(inputOf(j, asTold));
        const strengths = [(j.liquid * 16) / plan.rate.value, j.dry / plan.rate.value];
        for (const { carrier, products } of plan.loads) {
          // A hair of mix may be left over by rounding to 12 digits; the strength of a real load is what counts.
          if (carrier.value < 1e-6 * plan.totals.carrier.value) continue;
          for (const [i, { amount }] of products.entries()) {
            expect(amount.value / carrier.value / (strengths[i] ?? 0)).toBeCloseTo(1, 4);
          }
        }
      }),
    );
  });

  it("never fills a tank over its working fill, and never takes a load more than is needed", () => {
    fc.assert(
      fc.property(job.filter(plausible), (j) => {
        const plan = planApplication(inputOf(j, asTold));
        const fill = j.tank * j.fill;
        for (const { carrier } of plan.loads) expect(carrier.value).toBeLessThanOrEqual(fill * (1 + 1e-11));
        expect((plan.loads.length - 1) * fill).toBeLessThan(plan.carrier.total.value * (1 + 1e-11));
      }),
    );
  });

  it("never measures a dose over its amount, nor a total over the label", () => {
    fc.assert(
      fc.property(job.filter(plausible), (j) => {
        const plan = planApplication(inputOf(j, asTold));
        for (const { products } of plan.loads) {
          for (const { measured } of products) {
            if (measured.ok) expect(measured.error.value).toBeLessThanOrEqual(0);
          }
        }
        const acres = plan.totals.carrier.value / plan.rate.value;
        expect(plan.totals.products[0]?.amount.value).toBeLessThanOrEqual(
          j.liquid * 16 * acres * (1 + 1e-11),
        );
      }),
    );
  });

  it.each([
    ["metric", METRIC],
    ["imperial", IMPERIAL],
  ])("gives the same physical doses for the same job told in %s units", (_, table) => {
    fc.assert(
      fc.property(job.filter(plausible), (j) => {
        const ours = planApplication(inputOf(j, asTold));
        const theirs = planApplication(inputOf(j, toldIn(table)));
        expect(theirs.loads.length).toBe(ours.loads.length);
        for (const [i, { amount }] of ours.totals.products.entries()) {
          const other = convert(theirs.totals.products[i]?.amount as never, amount.unit as never) as {
            value: number;
          };
          expect(other.value / amount.value).toBeCloseTo(1, 9);
        }
      }),
    );
  });
});
