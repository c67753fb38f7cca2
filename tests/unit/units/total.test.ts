import { describe, expect, it } from "vitest";
import { totalOf } from "../../../src/units/exact-total.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("totalOf", () => {
  it("loses nothing on the way, whatever comes first", () => {
    expect(totalOf(Array.from({ length: 10 }, () => 0.1))).toBe(1);
    expect(totalOf([1e16, 1, -1e16])).toBe(1);
    expect(totalOf([1, 1e16, -1e16])).toBe(1);
    expect(totalOf([])).toBe(0);
  });

  it("is no -0, and never out of the reach of numbers", () => {
    expect(Object.is(totalOf([-0]), 0)).toBe(true);
    expectRefused(() => totalOf([1e308, 1e308]), "not-finite", "");
  });
});
