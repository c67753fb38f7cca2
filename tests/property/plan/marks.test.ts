import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Plan, type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { qty, type Volume, type VolumeUnit } from "../../../src/units/index.ts";
import { printed } from "../../helpers/printed.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Number(value.toPrecision(4)));

/** A job of any size in US units or metric ones, on a tank with marks. */
const jobs = fc
  .record({
    system: fc.constantFrom("us" as const, "metric" as const),
    area: between(0.02, 3),
    rate: between(10, 80),
    liquid: between(0.5, 4),
    dry: between(4, 40),
    tank: between(2, 30),
    lines: between(0, 20),
    percent: fc.integer({ min: 0, max: 15 }),
    marks: fc.constantFrom(0.1, 0.25, 0.5, 1),
    unit: fc.constantFrom("own" as const, "qt" as const, "L" as const),
    asList: fc.boolean(),
    split: fc.constantFrom(
      "full-then-part" as const,
      "equal" as const,
      "whole-rows" as const,
      "easiest" as const,
    ),
    rows: fc.integer({ min: 12, max: 60 }),
  })
  .map(({ system, area, rate, liquid, dry, tank, lines, percent, marks, unit, asList, split, rows }) => {
    const us = system === "us";
    const step = qty(marks, unit === "own" ? (us ? "gal" : "L") : unit);
    const size = us ? qty(tank, "gal") : qty(4 * tank, "L");
    const volume: VolumeUnit = us ? "gal" : "L";
    const most = Math.floor(gallonsOf(size) / gallonsOf(step));
    const list = Array.from({ length: Math.min(most, 200) }, (_, i) =>
      qty(Number((marks * (most - i)).toPrecision(12)), step.unit),
    );
    const input = {
      plot: {
        kind: "row-bands",
        rows,
        rowLength: us ? qty((area * 43_560) / rows / 2.5, "ft") : qty((area * 4000) / rows / 0.75, "m"),
        bandWidth: us ? qty(30, "in") : qty(75, "cm"),
      },
      calibration: { kind: "known", rate: us ? qty(rate, "gal/ac") : qty(10 * rate, "L/ha") },
      sprayer: {
        tank: size,
        marks: asList ? list : step,
        lineVolume: us ? qty(lines, "fl_oz") : qty(20 * lines, "mL"),
      },
      reserve: { percent },
      split,
      products: [
        { name: "Product A", form: "liquid", rate: us ? qty(liquid, "pt/ac") : qty(liquid, "L/ha") },
        { name: "Product B", form: "dry", rate: us ? qty(dry, "oz/ac") : qty(70 * dry, "g/ha") },
      ],
      tools: us ? "us-cups-and-spoons" : "metric-cups-and-spoons",
    };
    const { rate: given } = input.calibration;
    // Per unit of mix, in the plan's own small units: 16 fl oz are a pint, 1000 mL a liter.
    const strengths = [
      exact(us ? 16 : 1000)
        .times(exact(liquid))
        .over(exact(given.value)),
      us
        ? exact(dry).over(exact(given.value))
        : exact(input.products[1]?.rate.value as number).over(exact(given.value)),
    ];
    return { input: input as unknown as PlanInput, step, volume, strengths };
  });

const exact = Rational.fromNumber;
const gallonsOf = ({ value, unit }: Volume): number =>
  value * { gal: 1, qt: 0.25, L: 1 / 3.785411784 }[unit as "gal"];

/** The plan of a job; nothing where a row is more than a load, or the products leave no room for water. */
function planOf(input: PlanInput): Plan | undefined {
  try {
    return planApplication(input);
  } catch {
    return undefined;
  }
}

/** A volume in liters, exactly: a gallon is 3.785411784 L (NIST Handbook 44 (2024), Appendix C). */
function litersOf({ value, unit }: Volume): Rational {
  const sizes = { gal: "3.785411784", qt: "0.946352946", L: "1" };
  return printed(value).times(Rational.fromDecimal(sizes[unit as "gal"]));
}

/** One unit of the 11th digit of an amount, to which the dose of a load is rounded down. */
function lastDigit(amount: number): Rational {
  const exponent = Number(amount.toExponential().split("e")[1]) - 10;
  const ten = Rational.of(10n ** BigInt(Math.abs(exponent)));
  return exponent < 0 ? Rational.of(1).over(ten) : ten;
}

describe("a job on a tank with marks", () => {
  it("ends every load on a mark, each at the label's strength to the last digit, and none over", () => {
    let planned = 0;
    fc.assert(
      fc.property(jobs, ({ input, step, volume, strengths }) => {
        const plan = planOf(input);
        if (plan === undefined) return;
        planned++;
        const { loads, totals, carrier, toMark } = plan;
        for (const { mark, carrier: fill } of loads) {
          const times = printed(mark?.value as number).over(printed(step.value));
          expect([mark?.unit, times.d]).toEqual([step.unit, 1n]);
          if (step.unit === volume) expect(fill).toEqual(mark);
          else expect(gallonsOf(fill)).toBeCloseTo(gallonsOf(mark as Volume), 8);
        }
        // What it takes, and no more than what is said.
        const { sprayed, lines, reserve, total } = carrier;
        // Marks in another unit are rounded to decimals, load by load.
        expect(Math.abs(totals.carrier.value / total.value - 1)).toBeLessThan(1e-11);
        expect(sprayed.value + lines.value + reserve.value).toBeCloseTo(total.value, 9);
        expect(reserve.value - (toMark?.carrier.value ?? 0)).toBeCloseTo(
          (sprayed.value * (input.reserve as { percent: number }).percent) / 100,
          9,
        );
        for (const [k, { amount }] of totals.products.entries()) {
          const strength = strengths[k] as Rational;
          let sum = Rational.of(0);
          for (const { mark, products } of loads) {
            const { amount: dose, measured } = products[k] as (typeof products)[number];
            const label = strength.times(litersOf(mark as Volume).over(litersOf(qty(1, volume))));
            const digit = lastDigit(dose.value);
            // Rounded down to the digit, the noise past the 13th aside.
            const noise = digit.over(Rational.of(100));
            const under = label.minus(printed(dose.value));
            expect(under.plus(noise).lessThan(Rational.of(0))).toBe(false);
            expect(digit.plus(noise).lessThan(under)).toBe(false);
            sum = sum.plus(printed(dose.value));
            if (measured.ok) expect(measured.error.value).toBeLessThanOrEqual(0);
          }
          expect(sum.minus(printed(amount.value)).n).toBe(0n);
        }
      }),
      runs(10_000, 500),
    );
    expect(planned).toBeGreaterThan(100);
  });
});
