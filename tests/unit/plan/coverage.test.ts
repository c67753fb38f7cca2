import { describe, expect, it } from "vitest";
import { isSpare, sprayedFrom } from "../../../src/plan/coverage.ts";
import { qty } from "../../../src/units/index.ts";

describe("what loads cover", () => {
  it("is nothing, and not less, for a load that others leave nothing for", () => {
    // Three loads of whole rows that take 1 gal each and are filled to 2 gal: the first two do all of it.
    const loads = [1, 2, 3].map((number) => ({ number, carrier: qty(2, "gal"), pieces: 3 }));
    for (const sprayed of [3, 2.9999999999999996, 4]) {
      const none = qty(0, "gal");
      const carrier = { sprayed: qty(sprayed, "gal"), lines: none, reserve: none, total: qty(6, "gal") };
      const values = sprayedFrom(loads, carrier).map(({ value }) => value);
      expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(sprayed, 12);
      expect(values[2]).toBe(0);
      expect(isSpare({ count: qty(values[2] as number, "pot") })).toBe(true);
    }
  });
});
