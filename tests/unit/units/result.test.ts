import { describe, expect, it } from "vitest";
import { finite, groundOf, positive, positiveIn, treatedOf } from "../../../src/units/result.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const OUT_OF_REACH = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe("a result", () => {
  it("is a number", () => {
    for (const value of [0, -1, 5e-324, Number.MAX_VALUE]) expect(finite(value)).toBe(value);
    for (const value of OUT_OF_REACH) {
      expectRefused(() => finite(value), "not-finite", "", "too large or too small");
      expectRefused(() => finite(value, "rate"), "not-finite", "rate");
    }
  });

  it("is more than 0 where it must be", () => {
    for (const value of [5e-324, 1, Number.MAX_VALUE]) expect(positive(value)).toBe(value);
    for (const value of [0, -0, -1, ...OUT_OF_REACH])
      expectRefused(() => positive(value, "rate"), "not-finite", "rate", "Check the numbers and their units");
  });

  it("is a quantity, a ground area or a treated area", () => {
    expect(positiveIn(2, "gal/ac")).toEqual({ value: 2, unit: "gal/ac" });
    expect(groundOf(2, "ac")).toEqual({ value: 2, unit: "ac", of: "ground" });
    expect(treatedOf(2, "ac")).toEqual({ value: 2, unit: "ac", of: "treated" });
    expectRefused(() => positiveIn(0, "gal/ac", "rate"), "not-finite", "rate");
    expectRefused(() => groundOf(Number.NaN, "ac", "plot"), "not-finite", "plot");
    expectRefused(() => treatedOf(Number.POSITIVE_INFINITY, "ac", "plot"), "not-finite", "plot");
  });
});
