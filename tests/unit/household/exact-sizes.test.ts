import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  atPlaces,
  exactSize,
  exactUnit,
  quotient,
  timesExactly,
} from "../../../src/household/exact-sizes.ts";
import { exactSize as definition } from "../../helpers/definitions.ts";
import { Rational, ulpError } from "../../helpers/rational.ts";

const of = ({ digits, places }: { digits: bigint; places: number }): Rational =>
  places < 0 ? Rational.of(digits * 10n ** BigInt(-places)) : Rational.of(digits, 10n ** BigInt(places));

/** The decimal that a float prints as. */
function printed(value: number): Rational {
  const [mantissa = "", exponent = "0"] = String(value).split("e");
  const ten = Rational.of(10n ** BigInt(Math.abs(Number(exponent))));
  const size = Rational.fromDecimal(mantissa);
  return Number(exponent) < 0 ? size.over(ten) : size.times(ten);
}

const DRAWN = fc.sample(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), { numRuns: 150, seed: 21 });
const VALUES = [0.1, 0.125, 1, 3, 16, 1 / 3, 2.5, 1e-7, 1.5e-9, 1e21, 2.5e22, 3e-12, 123456.789, ...DRAWN];
const UNITS = [
  "tsp",
  "tbsp",
  "cup",
  "gal",
  "mL",
  "L",
  "imp_fl_oz",
  "au_tbsp",
  "oz",
  "lb",
  "g",
  "kg",
] as const;

describe("exact sizes", () => {
  it("are those of the units' definitions, in liters or kilograms", () => {
    for (const unit of UNITS) {
      for (const again of [exactUnit(unit), exactUnit(unit)])
        expect(of(again).minus(definition(unit)).abs().toNumber(), unit).toBe(0);
    }
  });

  it("take a number as it is written", () => {
    for (const value of VALUES) {
      const size = of(exactSize({ value, unit: "tsp" }));
      expect(
        size
          .minus(printed(value).times(definition("tsp")))
          .abs()
          .toNumber(),
        String(value),
      ).toBe(0);
    }
  });

  it("are written with as many places as another has", () => {
    expect(atPlaces({ digits: 125n, places: 3 }, 5)).toBe(12500n);
    expect(atPlaces({ digits: 125n, places: 3 }, 3)).toBe(125n);
  });

  it("are divided to the nearest float, however many digits they have", () => {
    for (const value of VALUES) {
      for (const by of [0.1, 3, 1e-9, 7e15, 123456.789]) {
        const [a, b] = [exactSize({ value, unit: "L" }), exactSize({ value: by, unit: "tsp" })];
        const ulp = ulpError(quotient(a, b), of(a).over(of(b)));
        expect(ulp, `${value} / ${by}`).toBeLessThanOrEqual(0.5);
      }
    }
    // Nine quadrillion is the last whole number of which a float holds every one before it.
    for (const digits of [9007199254740991n, 9007199254740993n, 90071992547409931n]) {
      for (const other of [1n, 3n, 9007199254740993n]) {
        const ulp = ulpError(
          quotient({ digits, places: 0 }, { digits: other, places: 0 }),
          Rational.of(digits, other),
        );
        expect(ulp, `${digits} / ${other}`).toBeLessThanOrEqual(0.5);
      }
    }
  });

  it("are multiplied to the nearest float of the decimal", () => {
    for (const value of VALUES) {
      for (const times of [1, 3, 7, 16, 100]) {
        const ulp = ulpError(timesExactly(value, times), printed(value).times(Rational.of(times)));
        expect(ulp, `${times} × ${value}`).toBeLessThanOrEqual(0.5);
      }
    }
    expect(timesExactly(0.1, 3)).toBe(0.3);
    expect(timesExactly(1.1, 3)).toBe(3.3);
    expect(timesExactly(0.0000001, 3)).toBe(3e-7);
  });
});
