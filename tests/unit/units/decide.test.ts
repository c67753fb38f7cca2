import { describe, expect, it } from "vitest";
import { ceilDecided, compareDecided, decided, floorDecided, moreThan } from "../../../src/units/decide.ts";

describe("decisions on 12 significant digits", () => {
  it("never add a load for noise in the 16th digit", () => {
    expect(ceilDecided((0.1 + 0.2) / 0.1)).toBe(3);
    expect(Math.ceil((0.1 + 0.2) / 0.1)).toBe(4);
    expect(ceilDecided(3.00000000001)).toBe(4);
    expect(ceilDecided(0)).toBe(0);
    expect(ceilDecided(1e-9)).toBe(1);
  });

  it("never drop one either", () => {
    expect(floorDecided(0.3 / 0.1)).toBe(3);
    expect(Math.floor(0.3 / 0.1)).toBe(2);
    expect(floorDecided(2.9999999999)).toBe(2);
  });

  it("do not flip a comparison with a limit", () => {
    expect(moreThan(0.1 + 0.2, 0.3)).toBe(false);
    expect(moreThan(0.3000000001, 0.3)).toBe(true);
    expect(moreThan(0.3, 0.3000000001)).toBe(false);
    expect(moreThan(1, 0)).toBe(true);
    expect(moreThan(0, 0)).toBe(false);
    // On the rounding edge of the 12th digit.
    expect(moreThan(0.01478676478125 * (1 + 2 ** -52), 0.01478676478125 * (1 - 2 ** -52))).toBe(false);
  });

  it("order numbers of any sign and size", () => {
    expect(compareDecided(-1, 1)).toBe(-1);
    expect(compareDecided(1e300, -1e300)).toBe(1);
    expect(compareDecided(1.7e308, -1.7e308)).toBe(1);
    expect(compareDecided(-5, -5 * (1 + 1e-14))).toBe(0);
  });

  it("keep 12 digits of a number, exactly", () => {
    expect(decided(0.1 + 0.2).toString()).toBe("0.3");
    expect(decided(123456789012.4).toString()).toBe("123456789012");
  });
});
