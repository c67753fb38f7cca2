import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Load,
  type LoadsInput,
  mixLoads,
  productInLoads,
  splitLoads,
} from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { printed } from "../../helpers/printed.ts";
import { Rational } from "../../helpers/rational.ts";

const sumOf = (values: readonly number[]): Rational =>
  values.reduce((sum, value) => sum.plus(printed(value)), Rational.of(0));

const carriersOf = (loads: readonly Load[]): number[] => loads.map((load) => load.carrier.value);

/** A job of any size, in any unit, whose tank is a sensible part of it. */
const jobs: fc.Arbitrary<LoadsInput> = fc
  .record({
    total: fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
    times: fc.double({ min: 0.2, max: 60, noNaN: true }),
    unit: fc.constantFrom("gal", "imp_gal", "L"),
    split: fc.oneof(
      fc.constantFrom("full-then-part" as const, "equal" as const),
      fc.record({ pieces: fc.integer({ min: 80, max: 500 }) }),
    ),
  })
  .map(
    ({ total, times, unit, split }) =>
      ({ total: qty(total, unit), tank: qty(total / times, unit), split }) as LoadsInput,
  );

/** The unit of a number's 12th or 11th significant digit. */
const digit = (value: number, place: number): Rational => {
  const exponent = Number(value.toExponential().split("e")[1]) - (place - 1);
  const ten = Rational.of(10n ** BigInt(Math.abs(exponent)));
  return exponent < 0 ? Rational.of(1).over(ten) : ten;
};

describe("loads", () => {
  it("have carriers that add up to the total exactly, as they print", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { loads, total, count } = splitLoads(job);
        expect(loads).toHaveLength(count);
        expect(sumOf(carriersOf(loads)).minus(printed(total.value)).n).toBe(0n);
        expect(total.value).toBe(Number(job.total.value.toPrecision(12)));
        for (const carrier of carriersOf(loads)) expect(carrier).toBeGreaterThan(0);
      }),
    );
  });

  it("never pass the fill, but for the 12th digit of the total where the count was decided past noise", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { loads, total } = splitLoads(job);
        const most = printed(job.tank.value).plus(digit(total.value, 12).times(Rational.of(2)));
        for (const carrier of carriersOf(loads)) expect(most.lessThan(printed(carrier))).toBe(false);
      }),
    );
  });

  it("are as few as they can be, by the tank", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        fc.pre(typeof job.split === "string");
        const { count } = splitLoads(job);
        const fills = printed(job.total.value).over(printed(job.tank.value)).toNumber();
        expect(Math.abs(count - fills - 0.5)).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    );
  });

  it("do not grow by one for a tank one ulp short of an even number of fills", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        (count, tank) => {
          const short = tank * (1 - Number.EPSILON);
          fc.pre(short < tank);
          for (const split of ["full-then-part", "equal"] as const) {
            const job = { total: qty(tank * count, "gal"), split };
            expect(splitLoads({ ...job, tank: qty(tank, "gal") }).count).toBe(count);
            expect(splitLoads({ ...job, tank: qty(short, "gal") }).count).toBe(count);
          }
        },
      ),
    );
  });

  it("hold every row or plot, and none in two loads", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        fc.pre(typeof job.split !== "string");
        const { loads } = splitLoads(job);
        const pieces = loads.map((load) => load.pieces ?? 0);
        expect(pieces.reduce((a, b) => a + b, 0)).toBe((job.split as { pieces: number }).pieces);
        expect(Math.max(...pieces) - Math.min(...pieces)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("are none smaller than the least load, where a job can be parted so", () => {
    fc.assert(
      fc.property(jobs, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (job, part) => {
        fc.pre(job.split === "full-then-part" && job.total.value > job.tank.value);
        const leastLoad = qty(job.tank.value * part, job.tank.unit);
        const { loads, total } = splitLoads({ ...job, leastLoad });
        const least = printed(leastLoad.value).minus(digit(total.value, 12).times(Rational.of(2)));
        for (const carrier of carriersOf(loads)) expect(printed(carrier).lessThan(least)).toBe(false);
        expect(sumOf(carriersOf(loads)).minus(printed(total.value)).n).toBe(0n);
      }),
    );
  });
});

describe("products in loads", () => {
  const amounts = fc.double({ min: 1e-6, max: 1e9, noNaN: true });

  it("add up to their total exactly, as they print", () => {
    fc.assert(
      fc.property(jobs, amounts, (job, amount) => {
        const shared = productInLoads({ amount: qty(amount, "oz"), loads: splitLoads(job).loads });
        expect(sumOf(shared.amounts.map((one) => one.value)).minus(printed(shared.total.value)).n).toBe(0n);
        for (const one of shared.amounts) expect(one.value).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("never total more than what the label gives, noise past the 14th digit aside, nor miss it by an 11th digit", () => {
    fc.assert(
      fc.property(jobs, amounts, (job, amount) => {
        const { total } = productInLoads({ amount: qty(amount, "oz"), loads: splitLoads(job).loads });
        const exact = Rational.fromNumber(amount);
        const noise = digit(amount, 14);
        expect(exact.plus(noise).lessThan(printed(total.value))).toBe(false);
        expect(printed(total.value).lessThan(exact.minus(digit(amount, 11)).minus(noise))).toBe(false);
      }),
    );
  });

  it("give every load the strength of the whole, to the 11th digit of the total", () => {
    fc.assert(
      fc.property(jobs, amounts, (job, amount) => {
        const { loads, total } = splitLoads(job);
        const shared = productInLoads({ amount: qty(amount, "oz"), loads });
        shared.amounts.forEach((one, i) => {
          const carrier = printed(carriersOf(loads)[i] as number);
          const fair = printed(shared.total.value).times(carrier).over(printed(total.value));
          const off = printed(one.value).minus(fair).abs();
          expect(digit(shared.total.value, 11).lessThan(off)).toBe(false);
        });
      }),
    );
  });

  it("are whole numbers in equal loads wherever the total divides evenly", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 500 }),
        fc.double({ min: 0.1, max: 1e5, noNaN: true }),
        (count, each, total) => {
          const { loads } = splitLoads({
            total: qty(total, "gal"),
            tank: qty(total / count, "gal"),
            split: "equal",
          });
          const { amounts: shared } = productInLoads({ amount: qty(each * loads.length, "fl_oz"), loads });
          expect(shared.map((one) => one.value)).toEqual(Array(loads.length).fill(each));
        },
      ),
    );
  });

  it("leave room for water that makes up the mix", () => {
    fc.assert(
      fc.property(jobs, fc.double({ min: 1e-6, max: 0.5, noNaN: true }), (job, part) => {
        const { loads } = splitLoads(job);
        const mixed = mixLoads({
          loads,
          amounts: [qty(job.total.value * part, job.total.unit as "gal"), qty(3, "oz")],
        });
        for (const { carrier, amounts: here, water } of mixed.loads) {
          expect(water.value + (here[0]?.value ?? 0)).toBeCloseTo(
            carrier.value,
            9 - Math.ceil(Math.log10(job.total.value)),
          );
        }
      }),
    );
  });
});
