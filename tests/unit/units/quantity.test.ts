import { describe, expect, it } from "vitest";
import {
  compareQuantities,
  type GroundArea,
  qty,
  quantityRatio,
  scaleQuantity,
  sumQuantities,
  type TreatedArea,
} from "../../../src/units/index.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const treated = (value: number): TreatedArea => ({ value, unit: "ac", of: "treated" });
const ground = (value: number): GroundArea => ({ value, unit: "ac", of: "ground" });
const byVolume = { value: 1, unit: "%", basis: "v/v" } as const;
const byWeight = { value: 1, unit: "%", basis: "w/w" } as const;

describe("qty", () => {
  it("makes plain data, with 0 for -0", () => {
    expect(qty(200, "ft")).toEqual({ value: 200, unit: "ft" });
    expect(Object.is(qty(-0, "ft").value, 0)).toBe(true);
  });

  it("refuses what is no number and what is no unit", () => {
    expectRefused(() => qty("5" as never, "ft"), "not-a-quantity", "value");
    expectRefused(() => qty(Number.NaN, "ft"), "not-finite", "value");
    expectRefused(() => qty(5, "foot" as never), "unknown-unit", "unit", 'Did you mean "ft"?');
    expectRefused(() => qty(5, undefined as never), "missing", "unit");
    const both = refusal(() => qty("5" as never, "foot" as never));
    expect(both.issues.map(({ path }) => path)).toEqual(["value", "unit"]);
  });
});

describe("sum", () => {
  it("adds up in the unit of the first", () => {
    expect(sumQuantities([qty(3, "ft"), qty(6, "in")])).toEqual({ value: 3.5, unit: "ft" });
    expect(sumQuantities([qty(3, "ft")])).toEqual({ value: 3, unit: "ft" });
  });

  it("does not lose small amounts among large ones", () => {
    expect(sumQuantities([qty(1e16, "mL"), ...Array.from({ length: 10 }, () => qty(1, "mL"))]).value).toBe(
      1e16 + 10,
    );
    expect(sumQuantities(Array.from({ length: 10 }, () => qty(0.1, "gal"))).value).toBe(1);
  });

  it("keeps what all of them are parts of", () => {
    expect(sumQuantities([treated(1), treated(2)])).toEqual(treated(3));
    expect(sumQuantities([byVolume, byVolume])).toEqual({ ...byVolume, value: 2 });
  });

  it("does not add ground area to treated area, nor a bare area to either", () => {
    expectRefused(
      () => sumQuantities([treated(1), ground(1)] as never),
      "wrong-area",
      "quantities[1]",
      "can't add ground area to treated area",
    );
    expectRefused(
      () => sumQuantities([treated(1), qty(1, "ac")] as never),
      "wrong-area",
      "quantities[1]",
      "plain area",
    );
  });

  it("does not add per cent by weight to per cent by volume", () => {
    expectRefused(() => sumQuantities([byVolume, byWeight]), "conflict", "quantities[1]", "w/w");
    const bare = qty(1, "%") as typeof byVolume;
    expectRefused(
      () => sumQuantities([byVolume, bare]),
      "conflict",
      "quantities[1]",
      "% without a basis with % v/v",
    );
    expectRefused(
      () => sumQuantities([bare, byVolume]),
      "conflict",
      "quantities[1]",
      "% v/v with % without a basis",
    );
  });

  it("names the one that is wrong", () => {
    expectRefused(() => sumQuantities([]), "too-few", "quantities");
    expectRefused(() => sumQuantities(undefined as never), "missing", "quantities");
    expectRefused(() => sumQuantities(qty(1, "ft") as never), "not-a-quantity", "quantities");
    expectRefused(() => sumQuantities([null] as never), "missing", "quantities[0]");
    expectRefused(
      () => sumQuantities([qty(1, "gal"), qty(1, "oz")] as never),
      "wrong-dimension",
      "quantities[1]",
      "oz (weight) and fl oz (volume) are different",
    );
    expectRefused(
      () => sumQuantities([qty(1, "gal"), { value: "1", unit: "gal" }] as never),
      "not-a-quantity",
      "quantities[1].value",
    );
    expectRefused(() => sumQuantities([qty(1e308, "gal"), qty(1e308, "gal")]), "not-finite", "");
  });
});

describe("scale", () => {
  it("multiplies, and keeps the kind of area", () => {
    expect(scaleQuantity(qty(1.5, "gal"), 3)).toEqual({ value: 4.5, unit: "gal" });
    expect(scaleQuantity(treated(2), 0.5)).toEqual(treated(1));
    expect(Object.is(scaleQuantity(qty(0, "gal"), -1).value, 0)).toBe(true);
  });

  it("refuses what is no number of times", () => {
    expectRefused(() => scaleQuantity(qty(1, "gal"), "2" as never), "not-a-quantity", "times");
    expectRefused(() => scaleQuantity(qty(1, "gal"), Number.NaN), "not-finite", "times");
    expectRefused(() => scaleQuantity(null as never, 2), "missing", "quantity");
    expectRefused(() => scaleQuantity(qty(1e308, "gal"), 10), "not-finite", "");
  });
});

describe("ratio", () => {
  it("says how many times one goes into the other, across units", () => {
    expect(quantityRatio(qty(1, "gal"), qty(1, "qt"))).toBe(4);
    expect(quantityRatio(treated(1), ground(2))).toBe(0.5);
    expect(Object.is(quantityRatio(qty(0, "gal"), qty(-1, "gal")), 0)).toBe(true);
  });

  it("refuses to divide by nothing and across dimensions", () => {
    expectRefused(() => quantityRatio(qty(1, "gal"), qty(0, "qt")), "out-of-range", "b", "divide by");
    expectRefused(() => quantityRatio(qty(1, "gal"), qty(1, "lb") as never), "wrong-dimension", "b");
    expectRefused(() => quantityRatio(byVolume, byWeight), "conflict", "b");
    expectRefused(() => quantityRatio(null as never, qty(1, "gal")), "missing", "a");
    expectRefused(() => quantityRatio(qty(1e300, "gal"), qty(1e-300, "gal")), "not-finite", "");
  });
});

describe("compare", () => {
  it("orders amounts in different units", () => {
    expect(compareQuantities(qty(3, "tsp"), qty(1, "tbsp"))).toBe(0);
    expect(compareQuantities(qty(1, "L"), qty(1, "qt"))).toBe(1);
    expect(compareQuantities(qty(1, "qt"), qty(1, "L"))).toBe(-1);
    expect(compareQuantities(qty(-1, "L"), qty(1, "L"))).toBe(-1);
    expect(compareQuantities(qty(0, "L"), qty(0, "gal"))).toBe(0);
  });

  it("takes amounts that differ by noise for the same", () => {
    expect(compareQuantities(qty(0.1 + 0.2, "gal"), qty(0.3, "gal"))).toBe(0);
    // A tablespoon in litres lies on the rounding edge of the 12th digit: rounding both sides there would split them.
    const edge = 0.01478676478125;
    expect((edge * (1 - 2 ** -52)).toPrecision(12)).not.toBe((edge * (1 + 2 ** -52)).toPrecision(12));
    expect(compareQuantities(qty(edge * (1 - 2 ** -52), "L"), qty(edge * (1 + 2 ** -52), "L"))).toBe(0);
  });

  it("refuses other dimensions and other bases", () => {
    expectRefused(
      () => compareQuantities(qty(1, "oz"), qty(1, "fl_oz") as never),
      "wrong-dimension",
      "b",
      "oz (weight) and fl oz (volume) are different",
    );
    expectRefused(() => compareQuantities(byVolume, byWeight), "conflict", "b");
    expectRefused(() => compareQuantities(undefined as never, qty(1, "ft")), "missing", "a");
    expectRefused(() => compareQuantities(qty(1, "ft"), undefined as never), "missing", "b");
  });
});
