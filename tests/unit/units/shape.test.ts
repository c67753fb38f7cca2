import { describe, expect, it } from "vitest";
import { checkNumber, checkShape, remade } from "../../../src/units/shape.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("checkShape", () => {
  it("lets a quantity pass", () => {
    expect(() => checkShape({ value: -0.5, unit: "gal/ac" }, "rate")).not.toThrow();
  });

  it.each([undefined, null])("says that %s is missing", (nothing) => {
    expectRefused(() => checkShape(nothing, "rate"), "missing", "rate", "a number with its unit");
  });

  it.each([5, "5 gal", [5, "gal"], true, () => 5])("refuses %s, which is no quantity", (other) => {
    expectRefused(() => checkShape(other, "rate"), "not-a-quantity", "rate", "{ value: 5");
  });

  it("names the field that is wrong", () => {
    expectRefused(() => checkShape({ unit: "ft" }, "swath"), "missing", "swath.value");
    expectRefused(
      () => checkShape({ value: "5", unit: "ft" }, "swath"),
      "not-a-quantity",
      "swath.value",
      '"5"',
    );
    expectRefused(() => checkShape({ value: Number.NaN, unit: "ft" }, "swath"), "not-finite", "swath.value");
    expectRefused(() => checkShape({ value: 5 }, "swath"), "missing", "swath.unit");
    expectRefused(
      () => checkShape({ value: 5, unit: "foots" }, "swath"),
      "unknown-unit",
      "swath.unit",
      "Did you mean ft?",
    );
  });
});

describe("checkNumber", () => {
  it.each([
    [undefined, "missing"],
    [null, "missing"],
    ["5", "not-a-quantity"],
    [5n, "not-a-quantity"],
    [new Date(0), "not-a-quantity"],
    [Number.NaN, "not-finite"],
    [Number.POSITIVE_INFINITY, "not-finite"],
    [Number.NEGATIVE_INFINITY, "not-finite"],
  ] as const)("refuses %s as %s", (value, code) => {
    expectRefused(() => checkNumber(value, "x"), code, "x");
  });
});

describe("remade", () => {
  it("keeps what an area is an area of and what a fraction is a part of, and nothing else", () => {
    expect(remade({ value: 1, unit: "ac", of: "treated" }, 43560, "ft2")).toEqual({
      value: 43560,
      unit: "ft2",
      of: "treated",
    });
    expect(remade({ value: 1, unit: "%", basis: "w/v" }, 0.01, "1")).toEqual({
      value: 0.01,
      unit: "1",
      basis: "w/v",
    });
    expect(remade({ value: 1, unit: "ft", note: "x" } as never, 12, "in")).toEqual({ value: 12, unit: "in" });
  });
});
