import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  compareSpreadingPlans,
  planSpreading,
  reconcileSpreading,
  type SpreadingInput,
  type SpreadingPlan,
  spreadingSensitivity,
} from "../../../src/plan/index.ts";
import { convert, type Quantity, qty, type Unit, unitsOf } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

keepWorstErrors("plan-spreading");

const value = fc.double({ min: 1e-2, max: 1e3, noNaN: true });
const of = <U extends Unit>(units: readonly U[]) =>
  fc.record({ value, unit: fc.constantFrom(...units) }) as fc.Arbitrary<Quantity<U>>;
const length = of(unitsOf("length"));
const massRate = of(unitsOf("massRate"));
const perLength = of(unitsOf("massPerLength"));
const perCount = of(unitsOf("massPerCount"));
const mass = of(unitsOf("mass"));
const whole = fc.integer({ min: 1, max: 10_000 });
const directions = fc.constantFrom(1, 2) as fc.Arbitrary<1 | 2>;

const exact = ({ value: number, unit }: Quantity): Rational =>
  Rational.fromNumber(number).times(exactSize(unit));
const expectRight = (name: string, ours: Quantity, right: Rational): void =>
  expectExact(name, ours.value, right.over(exactSize(ours.unit)));

// Never too small for the job: a count of fills beyond what a number holds is another test.
const HOPPER = qty(1e20, "kg");
const made = (of: object, rate: object, ways: 1 | 2 = 1): SpreadingPlan =>
  planSpreading({
    ...of,
    spreader: { hopper: HOPPER, directions: ways },
    product: { name: "Product A", rate },
  } as unknown as SpreadingInput);
const block = (long: Quantity, wide: Quantity) => ({
  plot: { kind: "rectangle", length: long, width: wide },
});

const RUNS = runs(300);

describe("a job of granules, against exact rational arithmetic", () => {
  it("takes the rate times the area, the row or the plants, within 8 ulp", () => {
    fc.assert(
      fc.property(length, length, massRate, directions, (long, wide, rate, ways) => {
        const { total, hopper } = made(block(long, wide), rate, ways);
        const right = exact(rate).times(exact(long)).times(exact(wide));
        expectRight("planSpreading an area", total, right);
        expectRight("planSpreading, per direction", hopper.perDirection, right.over(Rational.of(ways)));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(length, perLength, whole, perCount, (row, alongRow, many, perPlant) => {
        const onRow = made({ size: { kind: "row-length", length: row } }, alongRow);
        expectRight("planSpreading rows", onRow.total, exact(alongRow).times(exact(row)));
        const plants = made({ size: { kind: "count", count: qty(many, "tree") } }, perPlant);
        expectRight("planSpreading plants", plants.total, exact(perPlant).times(Rational.of(many)));
      }),
      RUNS,
    );
  });

  it("takes the fertilizer for a nutrient, and brings that much of it, within 8 ulp", () => {
    const percent = fc.double({ min: 1, max: 50, noNaN: true });
    fc.assert(
      fc.property(length, length, massRate, percent, percent, (long, wide, amount, n, k) => {
        const plan = made(block(long, wide), { nutrient: "N", amount, contains: { N: n, K2O: k } });
        const content = Rational.fromNumber(n).over(Rational.of(100));
        const rate = exact(amount).over(content);
        expectRight("planSpreading, rate for a nutrient", plan.rate, rate);
        expectRight("planSpreading for a nutrient", plan.total, rate.times(exact(long)).times(exact(wide)));
        expectRight("planSpreading, the nutrient", plan.nutrients?.N as Quantity, exact(amount));
      }),
      RUNS,
    );
  });

  it("shares its total out to plots, and each plot's to its beds", () => {
    fc.assert(
      fc.property(whole, length, length, massRate, (beds, long, wide, rate) => {
        const plot = { kind: "beds", beds, bedLength: long, bedWidth: wide };
        const { plots, total } = made({ plot: [plot, { ...plot, beds: 2 * beds }] }, rate);
        const bed = exact(rate).times(exact(long)).times(exact(wide));
        expectRight("planSpreading, a bed", plots?.[0]?.each as Quantity, bed);
        expectRight(
          "planSpreading, a plot",
          plots?.[1]?.amount as Quantity,
          bed.times(Rational.of(2 * beds)),
        );
        const amounts = plots?.map(({ amount }) => amount.value) as number[];
        expect(amounts.reduce((sum, one) => sum + one, 0) / total.value).toBeCloseTo(1, 12);
      }),
      RUNS,
    );
  });

  it("grows with the rate and the area, and is the same whatever the units", () => {
    const rates = fc.constantFrom(...unitsOf("massRate"));
    const lengths = fc.constantFrom(...unitsOf("length"));
    fc.assert(
      fc.property(length, length, massRate, rates, lengths, (long, wide, rate, rateUnit, unit) => {
        const once = made(block(long, wide), rate).total;
        const more = made(block({ ...long, value: 2 * long.value }, wide), {
          ...rate,
          value: 3 * rate.value,
        });
        expect(more.total.value / once.value).toBeCloseTo(6, 12);
        const to = (given: Quantity, other: Unit) => convert(given as Quantity<"m">, other as "m");
        const others = made(block(to(long, unit), to(wide, unit)), to(rate, rateUnit)).total;
        expect(convert(others, once.unit).value / once.value).toBeCloseTo(1, 12);
      }),
      RUNS,
    );
  });
});

describe("what became of a job of granules, against exact rational arithmetic", () => {
  const DONE = { finished: "2026-05-02T09:30" };

  it("has the rate that was used on the area, within 8 ulp", () => {
    const part = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(length, length, massRate, part, (long, wide, rate, times) => {
        const plan = made(block(long, wide), rate);
        const used = { ...plan.total, value: plan.total.value * times };
        const done = reconcileSpreading(plan, { ...DONE, filled: used, used: [used] });
        expectRight("reconcileSpreading", done.rate, exact(used).over(exact(long).times(exact(wide))));
        expect(done.used).toEqual(used);
        expect(done.left.value).toBe(0);
        expect(done.fromPlanPercent).toBeCloseTo(100 * (times - 1), 7);
      }),
      RUNS,
    );
  });

  it("loses nothing: what was used and what was left is what was filled, on all plots together", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(length, length), { minLength: 1, maxLength: 5 }),
        massRate,
        fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 0.9, noNaN: true })),
        (blocks, rate, rest) => {
          const plan = made({ plot: blocks.map(([long, wide]) => block(long, wide).plot) }, rate);
          const left = { ...plan.total, value: plan.total.value * rest };
          const done = reconcileSpreading(plan, { ...DONE, left });
          const { plots = [] } = done;
          const used = plots.reduce((sum, one) => sum + one.used.value, 0);
          expect((used + left.value) / plan.total.value).toBeCloseTo(1, 12);
          // Shared as the plan shares it, every plot gets one rate.
          for (const one of plots) expect(one.rate.value / done.rate.value).toBeCloseTo(1, 12);
        },
      ),
      RUNS,
    );
  });

  it("is the same whatever unit it is weighed in", () => {
    fc.assert(
      fc.property(
        length,
        length,
        massRate,
        mass,
        fc.constantFrom(...unitsOf("mass")),
        (long, wide, rate, filled, unit) => {
          const plan = made(block(long, wide), rate);
          const left = { ...filled, value: filled.value / 4 };
          const to = (given: Quantity) => convert(given as Quantity<"kg">, unit as "kg");
          const once = reconcileSpreading(plan, { ...DONE, filled, left });
          const other = reconcileSpreading(plan, { ...DONE, filled: to(filled), left: to(left) });
          expect(other.rate.value / once.rate.value).toBeCloseTo(1, 12);
        },
      ),
      RUNS,
    );
  });
});

describe("how the product of a job of granules moves", () => {
  const percent = fc.double({ min: 1, max: 50, noNaN: true });

  it("is one for one with sides and rate, against the content, and by the share of one bed more", () => {
    fc.assert(
      fc.property(whole, length, length, massRate, percent, (beds, long, wide, amount, n) => {
        const plot = { kind: "beds", beds, bedLength: long, bedWidth: wide };
        const plan = made({ plot }, { nutrient: "N", amount, contains: { N: n } });
        const moved = new Map(spreadingSensitivity(plan).map(({ path, total }) => [path, total]));
        expect(moved.get("plot.bedLength")).toBe(1);
        expect(moved.get("plot.bedWidth")).toBe(1);
        expect(moved.get("product.rate.amount")).toBe(1);
        expect(moved.get("product.rate.contains.N")).toBe(-1);
        // Rounded to six decimals, a half either way.
        const ofOneBed = (moved.get("plot.beds") as number) - 100 / beds;
        expect(Math.abs(ofOneBed)).toBeLessThan(5.001e-7);
        expect(moved.size).toBe(5);
      }),
      RUNS,
    );
  });

  it("is the same whatever the units, and what a comparison of two plans shows", () => {
    const rates = fc.constantFrom(...unitsOf("massRate"));
    const lengths = fc.constantFrom(...unitsOf("length"));
    const times = fc.double({ min: 0.1, max: 10, noNaN: true });
    fc.assert(
      fc.property(length, length, massRate, rates, lengths, times, (long, wide, rate, rateUnit, unit, by) => {
        const to = (given: Quantity, other: Unit) => convert(given as Quantity<"m">, other as "m");
        const plan = made(block(long, wide), rate);
        const other = made(block(to(long, unit), to(wide, unit)), to(rate, rateUnit));
        const moves = (of: SpreadingPlan) => spreadingSensitivity(of).map(({ path, total }) => [path, total]);
        expect(moves(other)).toEqual(moves(plan));
        expect(compareSpreadingPlans(plan, other)).toMatchObject({ inputs: [], results: [] });
        const more = made(block(long, wide), { ...rate, value: rate.value * by });
        const { results } = compareSpreadingPlans(plan, more);
        const total = results.find(({ path }) => path === "total")?.percent ?? 0;
        expect(total).toBeCloseTo(100 * (by - 1), 7);
      }),
      RUNS,
    );
  });
});
