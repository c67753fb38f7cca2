import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { scaled, shareOf, unscaled } from "../../../src/tank-mix/scaled.ts";
import { runs } from "../../helpers/runs.ts";

// Positive floats of every size, and those that lie on or beside a half of the last digit that is kept.
const anyValue = fc.oneof(
  fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
  fc.double({ min: Number.MIN_VALUE, max: Number.MAX_VALUE, noNaN: true }),
  fc
    .tuple(
      fc.integer({ min: 1, max: 10 ** 12 }),
      fc.integer({ min: -14, max: 4 }),
      fc.integer({ min: -1, max: 1 }),
    )
    .map(([units, exponent, noise]) => Number(`${units}5e${exponent}`) * (1 + noise * 2 ** -52)),
);

describe("numbers as whole units of a power of ten", () => {
  test.prop([anyValue, fc.constantFrom(12, 14)], runs(5000))("are what the digits say", (value, digits) => {
    const [mantissa = "", power = ""] = value.toExponential(digits - 1).split("e");
    expect(scaled(value, digits)).toEqual({
      units: Number(mantissa.replace(".", "")),
      exponent: Number(power) - digits + 1,
    });
  });

  test.prop([fc.integer({ min: 0, max: 10 ** 14 }), fc.integer({ min: -330, max: 20 })], runs(5000))(
    "come back as the float that the decimal is read as",
    (units, exponent) => {
      expect(unscaled(units, exponent)).toBe(Number(`${units}e${exponent}`));
    },
  );

  test.prop(
    [
      fc.integer({ min: 0, max: 10 ** 11 }),
      fc.integer({ min: 1, max: 10 ** 12 }),
      fc.integer({ min: 0, max: 10 ** 12 }),
    ],
    runs(2000),
  )("are shared out to the nearest whole one, halves up", (units, whole, some) => {
    const part = some % (whole + 1);
    const share = BigInt(shareOf(units, part, whole));
    const twice = 2n * BigInt(units) * BigInt(part);
    // share − 1/2 <= units × part / whole < share + 1/2
    expect((2n * share - 1n) * BigInt(whole) <= twice && twice < (2n * share + 1n) * BigInt(whole)).toBe(
      true,
    );
  });
});
