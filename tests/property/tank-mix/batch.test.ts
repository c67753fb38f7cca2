import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BatchSize, batchVolume } from "../../../src/tank-mix/index.ts";
import { convert, type Quantity, type Unit, unitsOf } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

keepWorstErrors("tank-mix-batch");

const value = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const of = <U extends Unit>(units: readonly U[]) =>
  fc.record({ value, unit: fc.constantFrom(...units) }) as fc.Arbitrary<Quantity<U>>;
const volume = of(unitsOf("volume"));
const length = of(unitsOf("length"));
const time = of(unitsOf("time"));
const whole = fc.integer({ min: 1, max: 100_000 });
const count = fc.record({ value: whole, unit: fc.constantFrom(...unitsOf("count")) });

const exact = ({ value: number, unit }: Quantity): Rational =>
  Rational.fromNumber(number).times(exactSize(unit));
const expectRight = (name: string, ours: Quantity | undefined, right: Rational): void => {
  const { value: number, unit } = ours as Quantity;
  expectExact(name, number, right.over(exactSize(unit)));
};

const RUNS = runs(300);

describe("the mix for a job by volume, count or row, against exact rational arithmetic", () => {
  it("is the volume that is given, within 8 ulp", () => {
    fc.assert(
      fc.property(volume, (given) => {
        const sized = batchVolume({ kind: "volume", volume: given });
        expectRight("batchVolume", sized.volume, exact(given));
        expect(sized).not.toHaveProperty("carrierPerCount");
      }),
      RUNS,
    );
  });

  it("is the count times what each gets: a volume, a time at a flow, or what several took", () => {
    fc.assert(
      fc.property(count, volume, volume, time, time, whole, (many, each, caught, over, spell, plants) => {
        const sizes = [
          [each, exact(each)],
          [
            { flow: { caught, time: over }, time: spell },
            exact(caught).times(exact(spell)).over(exact(over)),
          ],
          [{ used: each, plants }, exact(each).over(Rational.of(plants))],
        ] as const;
        for (const [one, right] of sizes) {
          const sized = batchVolume({ kind: "count", count: many, each: one } as BatchSize);
          expectRight("batchVolume by count", sized.volume, right.times(exact(many)));
          expectRight("batchVolume, what each gets", sized.carrierPerCount, right);
        }
      }),
      RUNS,
    );
    fc.assert(
      fc.property(count, of(unitsOf("volumePerCount")), (many, each) => {
        const sized = batchVolume({ kind: "count", count: many, each });
        expectRight("batchVolume by count", sized.volume, exact(each).times(exact(many)));
        expect(sized.carrierPerCount).toEqual(each);
      }),
      RUNS,
    );
  });

  it("is the length times what a length gets", () => {
    fc.assert(
      fc.property(length, of(unitsOf("volumePerLength")), volume, length, (row, rate, used, on) => {
        const given = batchVolume({ kind: "row-length", length: row, rate });
        expectRight("batchVolume by row", given.volume, exact(rate).times(exact(row)));
        const measured = batchVolume({ kind: "row-length", length: row, rate: { used, length: on } });
        const right = exact(used).over(exact(on));
        expectRight("batchVolume by row", measured.volume, right.times(exact(row)));
        expectRight("batchVolume, per length", measured.carrierPerLength, right);
      }),
      RUNS,
    );
  });

  it("grows with the size, and is the same whatever the units", () => {
    fc.assert(
      fc.property(whole, volume, fc.constantFrom(...unitsOf("volume")), (many, each, unit) => {
        const size = (n: number, one: Quantity) =>
          batchVolume({ kind: "count", count: { value: n, unit: "pot" }, each: one } as BatchSize).volume;
        const once = size(many, each);
        expect(size(2 * many, each).value / once.value).toBeCloseTo(2, 12);
        const other = size(many, convert(each as Quantity<"L">, unit as "L"));
        expect(convert(other, once.unit).value / once.value).toBeCloseTo(1, 12);
      }),
      RUNS,
    );
  });
});
