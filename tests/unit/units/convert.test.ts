import { describe, expect, it } from "vitest";
import { cachedPairs, convertValue, factorOf } from "../../../src/units/convert.ts";
import { countUnits } from "../../../src/units/dimensions.ts";
import {
  type Area,
  convert,
  type Dimension,
  qty,
  type Unit,
  unitsOf,
  valueIn,
} from "../../../src/units/index.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("convert", () => {
  it("keeps what an area is an area of", () => {
    expect(convert({ value: 1, unit: "ac", of: "treated" }, "ft2")).toEqual({
      value: 43560,
      unit: "ft2",
      of: "treated",
    });
    expect(convert({ value: 1, unit: "ac", of: "ground" }, "ft2")).toEqual({
      value: 43560,
      unit: "ft2",
      of: "ground",
    });
    const bare: Area = qty(1, "ac");
    expect(convert(bare, "ft2")).toEqual({ value: 43560, unit: "ft2" });
  });

  it("keeps what a fraction is a part of", () => {
    expect(convert({ value: 1, unit: "%", basis: "v/v" }, "ppm")).toEqual({
      value: 10000,
      unit: "ppm",
      basis: "v/v",
    });
  });

  it("gives plain data that survives JSON", () => {
    const result = convert(qty(1.5, "pt/ac"), "mL/m2");
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });

  it("shows no float noise where the factor is a whole number", () => {
    expect(convert(qty(1, "ft"), "in").value).toBe(12);
    expect(convert(qty(0.1, "gal"), "fl_oz").value).toBe(12.8);
    expect(convert(qty(7, "tsp"), "tbsp").value).toBe(7 / 3);
  });

  it("takes zero, and negative amounts, and turns -0 into 0", () => {
    expect(convert(qty(0, "ft"), "m").value).toBe(0);
    expect(convert(qty(-1, "ft"), "in").value).toBe(-12);
    expect(Object.is(convert({ value: -0, unit: "ft" }, "in").value, 0)).toBe(true);
    expect(Object.is(convert({ value: -0, unit: "ft" }, "in").value, 0)).toBe(true);
  });

  it("refuses a unit of another dimension", () => {
    expectRefused(() => convert(qty(1, "oz"), "fl_oz" as never), "wrong-dimension", "to", "a weight");
    expectRefused(
      () => convert(qty(1, "gal/ac"), "gal" as never),
      "wrong-dimension",
      "to",
      "a volume per area",
    );
  });

  it("names its own arguments in an error", () => {
    expectRefused(() => convert(undefined as never, "ft"), "missing", "quantity");
    expectRefused(() => convert("5 ft" as never, "ft"), "not-a-quantity", "quantity");
    expectRefused(
      () => convert({ value: 5, unit: "fot" } as never, "ft"),
      "unknown-unit",
      "quantity.unit",
      'Did you mean "ft"?',
    );
    expectRefused(() => convert({ value: null, unit: "ft" } as never, "ft"), "missing", "quantity.value");
    expectRefused(() => convert(qty(5, "ft"), "inch" as never), "unknown-unit", "to", 'Did you mean "in"?');
    expectRefused(() => convert(qty(5, "ft"), undefined as never), "missing", "to");
    const marked = { value: 1, unit: "ac", off: "treated" } as never;
    expectRefused(() => convert(marked, "ft2"), "unknown-field", "quantity.off", "Did you mean of?");
    expectRefused(() => valueIn(marked, "ft2" as never), "unknown-field", "quantity.off");
    const { proxy, revoke } = Proxy.revocable(qty(1, "ft"), {});
    revoke();
    expectRefused(() => convert(proxy, "in"), "unreadable", "quantity");
    for (let i = 0; i < 2; i++) expect(valueIn(qty(3, "chain"), "rod")).toBe(12);
    expect(valueIn({ value: 1, unit: "ac", of: "ground" } as never, "ft2" as never)).toBe(43560);
    expectRefused(() => valueIn(qty(5, "ft"), "gal" as never), "wrong-dimension", "unit");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, "5", null, undefined, [5], {}])(
    "refuses %j as a value, cached pair or not",
    (value) => {
      for (const to of ["ft", "in", "in"] as const) {
        expect(() => convert({ value, unit: "ft" } as never, to as never)).toThrowError(
          expect.objectContaining({ name: "SprayMathError", path: "quantity.value" }),
        );
      }
    },
  );

  it("refuses a result too large for a number", () => {
    expectRefused(() => convert(qty(1e308, "km"), "mm"), "not-finite", "quantity.value", "too large");
  });
});

describe("the cache of factors", () => {
  it("holds no more pairs than there are units, whatever is asked for", () => {
    const dimensions: Dimension[] = ["volumeRate", "massRate", "volumeConcentration"];
    let asked = 0;
    for (const dimension of dimensions) {
      const units = unitsOf(dimension) as Unit[];
      for (const from of units.slice(0, 40)) {
        for (const to of units.slice(0, 40)) {
          valueIn(qty(1, from), to as never);
          asked++;
          expect(cachedPairs()).toBeLessThanOrEqual(countUnits());
        }
      }
    }
    expect(asked).toBeGreaterThan(2 * countUnits());
  });

  it("does not grow with units that are not known", () => {
    const before = cachedPairs();
    for (let i = 0; i < 100; i++) expect(() => valueIn(qty(1, "ft"), `ft${i}` as never)).toThrow();
    expect(cachedPairs()).toBe(before);
  });

  it("gives the same factor before and after it was emptied", () => {
    expect(factorOf("gal", "fl_oz")).toEqual({ by: 128, divide: false });
    expect(factorOf("fl_oz", "gal")).toEqual({ by: 128, divide: true });
    expect(factorOf("ft", "ft")).toEqual({ by: 1, divide: false });
  });

  it("names the arguments as it is told", () => {
    expectRefused(() => convertValue(1, "ft", "gal", "a", "b"), "wrong-dimension", "b");
    expectRefused(() => convertValue(1, "fot" as never, "gal", "a", "b"), "unknown-unit", "a");
  });
});
