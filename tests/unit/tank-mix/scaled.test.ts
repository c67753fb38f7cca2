import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rescaled, scaled, shareOf, unscaled } from "../../../src/tank-mix/scaled.ts";
import { Rational } from "../../helpers/rational.ts";

/** The digits that a float prints as, which is how JavaScript itself rounds it. */
function printed(value: number, digits: number): { units: number; exponent: number } {
  const [mantissa = "", power = ""] = value.toExponential(digits - 1).split("e");
  return { units: Number(mantissa.replace(".", "")), exponent: Number(power) - (digits - 1) };
}

// Numbers of every size, plain ones and those just beside a rounding or a power of ten among them.
const SIZES = [1e-300, 1e-12, 1e-9, 0.001, 0.1, 1, 9.99999999999, 10, 1000, 1e11, 1e14, 1e22, 1e23, 1e300];
const PLAIN = [1, 2.5, 1 / 3, 2 / 3, 0.9999999999995, 0.99999999999949, 1.00000000000005, 1.5, 9.5, 7];
const DRAWN = fc.sample(fc.double({ min: 1e-15, max: 1e15, noNaN: true }), { numRuns: 500, seed: 3 });
const VALUES = [...SIZES.flatMap((size) => PLAIN.map((part) => size * part)), ...DRAWN];

describe("numbers in whole units of their last digit", () => {
  it.each([11, 12, 14])("are what the float prints as with %s digits", (digits) => {
    for (const value of VALUES) expect(scaled(value, digits), String(value)).toEqual(printed(value, digits));
  });

  it("come back as the float that prints so", () => {
    for (const value of VALUES) {
      const { units, exponent } = printed(value, 12);
      expect(unscaled(units, exponent), String(value)).toBe(Number(value.toPrecision(12)));
    }
  });

  it("are given in coarser units up or down, and in finer ones as they are", () => {
    expect(rescaled({ units: 12345, exponent: 0 }, 2, "floor")).toBe(123);
    expect(rescaled({ units: 12345, exponent: 0 }, 2, "ceil")).toBe(124);
    expect(rescaled({ units: 12300, exponent: 0 }, 2, "ceil")).toBe(123);
    expect(rescaled({ units: 123, exponent: 2 }, 0, "floor")).toBe(12300);
    expect(rescaled({ units: 123, exponent: 2 }, 2, "ceil")).toBe(123);
  });

  it("are shared out to the nearest whole unit, half of one up, however large the product", () => {
    expect([shareOf(10, 1, 4), shareOf(10, 1, 3), shareOf(10, 2, 3)]).toEqual([3, 3, 7]);
    const [units, part, whole] = [999_999_999_999, 123_456_789_012, 999_999_999_998];
    const exact = Rational.fromNumber(units)
      .times(Rational.fromNumber(part))
      .over(Rational.fromNumber(whole));
    expect(
      Math.abs(exact.minus(Rational.fromNumber(shareOf(units, part, whole))).toNumber()),
    ).toBeLessThanOrEqual(0.5);
    expect(shareOf(units, whole, whole)).toBe(units);
  });
});
