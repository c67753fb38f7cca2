import { describe, expect, it } from "vitest";
import { activeIngredientRate, productRate } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

const half = { value: 50, unit: "%", basis: "w/w" } as const;

describe("productRate and activeIngredientRate", () => {
  it("go both ways for a liquid, in US and metric measure", () => {
    const [ai, contains] = [qty(1.5, "lb/ac"), qty(4, "lb/gal")];
    const product = productRate({ activeIngredient: ai, contains, form: "liquid" });
    expect(product).toEqual(qty(48, "fl_oz/ac"));
    expect(activeIngredientRate({ product, contains })).toEqual(ai);
    const metric = productRate({
      activeIngredient: qty(0.72, "kg/ha"),
      contains: qty(360, "g/L"),
      form: "liquid",
    });
    expect(metric.unit).toBe("mL/ha");
    expect(metric.value).toBeCloseTo(2000, 9);
    expect(activeIngredientRate({ product: qty(2, "L/ha"), contains: qty(360, "g/L") }).value).toBeCloseTo(
      0.72,
      12,
    );
  });

  it("go both ways for a dry product", () => {
    const product = productRate({ activeIngredient: qty(1, "lb/ac"), contains: half, form: "dry" });
    expect(product).toEqual(qty(32, "oz/ac"));
    expect(activeIngredientRate({ product, contains: half })).toEqual(qty(1, "lb/ac"));
    expect(activeIngredientRate({ product: qty(800, "g/ha"), contains: qty(750, "g/kg") }).value).toBeCloseTo(
      0.6,
      12,
    );
  });

  it("go both ways for a liquid whose content is given by weight, with its density", () => {
    const density = qty(10, "lb/gal");
    const product = productRate({
      activeIngredient: qty(5, "lb/ac"),
      contains: half,
      density,
      form: "liquid",
    });
    expect(product).toEqual(qty(128, "fl_oz/ac"));
    expect(activeIngredientRate({ product, contains: half, density })).toEqual(qty(5, "lb/ac"));
  });

  it("read per cent by weight in volume as kilograms in 100 liters", () => {
    const contains = { value: 48, unit: "%", basis: "w/v" } as const;
    expect(activeIngredientRate({ product: qty(1, "L/ha"), contains }).value).toBeCloseTo(0.48, 12);
  });

  it("work per volume of carrier and per row length too", () => {
    const contains = qty(4, "lb/gal");
    const perCarrier = productRate({ activeIngredient: qty(1, "lb/100gal"), contains, form: "liquid" });
    expect(perCarrier).toEqual(qty(32, "fl_oz/100gal"));
    expect(activeIngredientRate({ product: perCarrier, contains })).toEqual(qty(1, "lb/100gal"));
    const perRow = productRate({
      activeIngredient: qty(1, "g/m"),
      contains: qty(500, "g/L"),
      form: "liquid",
    });
    expect(perRow).toEqual(qty(2, "mL/m"));
  });

  it("answer in imperial fluid ounces where pounds are given per imperial gallon", () => {
    const rate = productRate({
      activeIngredient: qty(1, "lb/ac"),
      contains: qty(4, "lb/imp_gal"),
      form: "liquid",
    });
    expect(rate).toEqual(qty(40, "imp_fl_oz/ac"));
  });

  it.each([
    [{ contains: { value: 101, unit: "%", basis: "w/w" }, form: "dry" }, "out-of-range", "contains"],
    [{ contains: qty(1001, "g/kg"), form: "dry" }, "out-of-range", "contains"],
    [{ contains: { value: 50, unit: "%", basis: "v/v" } }, "wrong-dimension", "contains.basis"],
    [{ contains: { value: 50, unit: "%" } }, "missing", "contains.basis"],
    [{ contains: qty(4, "lb/gal"), form: "dry" }, "wrong-dimension", "contains"],
    [{ contains: qty(4, "gal/ac") }, "wrong-dimension", "contains"],
    [{ contains: half }, "missing", "density"],
    [{ contains: half, density: qty(0, "lb/gal") }, "out-of-range", "density"],
    [{ activeIngredient: qty(0, "lb/ac") }, "out-of-range", "activeIngredient"],
    [{ activeIngredient: qty(1, "lb") }, "wrong-dimension", "activeIngredient"],
    [
      { activeIngredient: qty(1e308, "lb/ac"), contains: qty(1e-300, "lb/gal") },
      "not-finite",
      "activeIngredient",
    ],
  ] as const)("refuse %o", (change, code, path) => {
    const valid = { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal"), form: "liquid" };
    const error = errorOf(() => productRate({ ...valid, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });

  it("find the active ingredient in a rate per volume of mix and per length of row", () => {
    const liquid = (product: object) =>
      activeIngredientRate({ product, contains: qty(4, "lb/gal") } as never);
    // 4 lb in a gallon of product are half a pound in a pint.
    expect(liquid(qty(2, "pt/100gal"))).toEqual(qty(1, "lb/100gal"));
    expect(liquid(qty(2, "pt/1000ft"))).toEqual(qty(1, "lb/1000ft"));
    const dry = (product: object) => activeIngredientRate({ product, contains: half } as never);
    expect(dry(qty(10, "lb/100gal"))).toEqual(qty(5, "lb/100gal"));
    expect(dry(qty(32, "oz/1000ft"))).toEqual(qty(1, "lb/1000ft"));
  });

  it("answer in the system of the rate, where the content is in imperial measure and the rate is not", () => {
    const contains = qty(5, "lb/imp_gal");
    const rate = productRate({ activeIngredient: qty(1, "kg/ha"), contains, form: "liquid" });
    expect(rate.unit).toBe("mL/ha");
  });

  it("refuse a product given in neither volume nor weight", () => {
    const error = errorOf(() => activeIngredientRate({ product: qty(1, "ft") as never, contains: half }));
    expect([error.code, error.path]).toEqual(["wrong-dimension", "product"]);
  });
});
