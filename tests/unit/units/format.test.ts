import { describe, expect, it } from "vitest";
import {
  type BasedFraction,
  type FormatOptions,
  formatQuantity,
  type Quantity,
  qty,
} from "../../../src/units/index.ts";
import { cachedFormats, numberFormat } from "../../../src/units/numerals.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const based: BasedFraction = { value: 0.25, unit: "%", basis: "v/v" };

describe("formatQuantity", () => {
  it.each<[Quantity, string, FormatOptions?]>([
    [qty(12, "fl_oz/ac"), "12 fl oz/ac"],
    [qty(1.5, "oz/1000ft2"), "1.5 oz wt/1,000 sq ft"],
    [qty(8, "fl_oz/100gal"), "8 fl oz/100 gal"],
    [qty(20, "gal/ac"), "20 gallons per acre", { unitStyle: "name" }],
    [qty(1, "gal/ac"), "1 gallon per acre", { unitStyle: "name" }],
    [qty(0.5, "gal"), "0.5 gallons", { unitStyle: "name" }],
    [qty(-1, "gal"), "-1 gallon", { unitStyle: "name" }],
    [qty(1.00001, "gal"), "1 gallon", { unitStyle: "name" }],
    [qty(0, "gal"), "0 gallons", { unitStyle: "name" }],
    [qty(1.5, "oz/1000ft2"), "1.5 ounces (weight) per 1,000 square feet", { unitStyle: "name" }],
    [qty(5, "mph"), "5 mph"],
    [qty(5, "mph"), "5 miles per hour", { unitStyle: "name" }],
    [qty(2, "cup"), "2 cups"],
    [qty(1, "cup"), "1 cup"],
    [qty(2, "metric_cup/ac"), "2 metric cups/ac"],
    [qty(2, "bar"), "2 bar"],
    [qty(2, "1000ft2"), "2,000 sq ft"],
    [qty(50, "mL/plant"), "50 mL/plant"],
    [qty(300, "plant"), "300 plants"],
    [qty(1, "tree"), "1 tree"],
    [qty(2, "fl_oz/1000plant"), "2 fl oz/1,000 plants"],
    [qty(4, "oz/1000ft"), "4 oz wt/1,000 ft"],
    [qty(8, "g/100m2"), "8 g/100 m²"],
    [qty(2, "100gal/ac"), "200 gallons per acre", { unitStyle: "name" }],
    [qty(0.5, "1"), "0.5 parts of one"],
    [based, "0.25% v/v"],
    [based, "0.25 percent v/v", { unitStyle: "name" }],
    [based, "0,25\u00a0% v/v", { locale: "de-DE" }],
    [qty(1234.5678, "ft"), "1,235 ft"],
    [qty(1234.5678, "ft"), "1,234.57 ft", { digits: 6 }],
    [qty(1234.5678, "L/ha"), "1.235 L/ha", { locale: "de-DE" }],
    [qty(1.5, "oz/1000ft2"), "1,5 oz wt/1.000 sq ft", { locale: "de-DE" }],
    [qty(1e-9, "L"), "0.000000001 L"],
  ])("writes %j as %s", (quantity, text, options) => {
    expect(formatQuantity(quantity, options)).toBe(text);
  });

  it.each<[number, FormatOptions["fraction"], string]>([
    [2.5, 8, "2 1/2 tsp"],
    [0.125, 8, "1/8 tsp"],
    [3, 8, "3 tsp"],
    [2.96, 8, "3 tsp"],
    [0.96, 8, "1 tsp"],
    [1 / 3, 3, "1/3 tsp"],
    [1 / 3, 8, "3/8 tsp"],
    [5 / 3, 3, "1 2/3 tsp"],
    [0.7, 2, "1/2 tsp"],
    [0.7, 4, "3/4 tsp"],
    [0.7, 64, "45/64 tsp"],
    [-2.5, 8, "-2 1/2 tsp"],
    [-0.5, 8, "-1/2 tsp"],
    [0, 8, "0 tsp"],
    [-0, 8, "0 tsp"],
    [1234.5, 2, "1,234 1/2 tsp"],
  ])("writes %s to the nearest 1/%s as %s", (value, fraction, text) => {
    expect(formatQuantity({ value, unit: "tsp" }, { fraction: fraction as 8 })).toBe(text);
  });

  it("never hides an amount that is less than half the smallest fraction", () => {
    expect(formatQuantity(qty(0.01, "tsp"), { fraction: 8 })).toBe("0.01 tsp");
    expect(formatQuantity(qty(-0.01, "tsp"), { fraction: 8 })).toBe("-0.01 tsp");
  });

  it("writes amounts too large for fractions with digits", () => {
    expect(formatQuantity(qty(1e16, "tsp"), { fraction: 8 })).toBe("10,000,000,000,000,000 tsp");
  });

  it("names one spoon, or a part of one, in the singular", () => {
    const words = (value: number): string =>
      formatQuantity(qty(value, "tsp"), { fraction: 4, unitStyle: "name" });
    expect([0.5, 1, 1.5, 2].map(words)).toEqual([
      "1/2 teaspoon",
      "1 teaspoon",
      "1 1/2 teaspoons",
      "2 teaspoons",
    ]);
  });

  it("refuses what it cannot write", () => {
    const one = qty(1, "gal");
    expectRefused(() => formatQuantity(undefined as never), "missing", "quantity");
    expectRefused(() => formatQuantity(5 as never), "not-a-quantity", "quantity");
    expectRefused(() => formatQuantity({ value: Number.NaN, unit: "gal" }), "not-finite", "quantity.value");
    expectRefused(() => formatQuantity(one, { locale: "not a tag" }), "unknown-choice", "options.locale");
    expectRefused(() => formatQuantity(one, { digits: 0 }), "out-of-range", "options.digits");
    expectRefused(() => formatQuantity(one, { digits: 18 }), "out-of-range", "options.digits", "17");
    expectRefused(() => formatQuantity(one, { digits: 2.5 }), "out-of-range", "options.digits");
    expectRefused(
      () => formatQuantity(one, { fraction: 5 as never }),
      "unknown-choice",
      "options.fraction",
      "2, 3, 4, 8",
    );
    expectRefused(() => formatQuantity(one, { fraction: 0 as never }), "unknown-choice", "options.fraction");
    expectRefused(
      () => formatQuantity(one, { unitStyle: "long" as never }),
      "unknown-choice",
      "options.unitStyle",
    );
    expectRefused(
      () => formatQuantity(one, { digit: 2 } as never),
      "unknown-field",
      "options.digit",
      "digits",
    );
    expectRefused(() => formatQuantity({ ...one, off: "treated" } as never), "unknown-field", "quantity.off");
    expectRefused(() => formatQuantity(one, 5 as never), "not-a-quantity", "options");
    expect(formatQuantity(one, null as never)).toBe("1 gal");
  });
});

describe("the cache of number formats", () => {
  it("gives the same format again, and does not grow without end", () => {
    expect(numberFormat("en-US", 4)).toBe(numberFormat("en-US", 4));
    for (let i = 0; i < 300; i++) formatQuantity(qty(1, "gal"), { locale: `en-x-a${i}` });
    expect(cachedFormats()).toBeLessThanOrEqual(64);
    expect(formatQuantity(qty(1.5, "gal"))).toBe("1.5 gal");
  });
});
