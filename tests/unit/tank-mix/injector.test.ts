import { describe, expect, it } from "vitest";
import { checkInjector, diluteMix, injectedStrength, injectorStock } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const ofMix = { parts: 1, to: 100, of: "mix" } as const;
const ofWater = { parts: 1, to: 100, of: "water" } as const;
const run = { rate: qty(2, "mL/L"), form: "liquid", ratio: ofMix, finished: qty(500, "L") } as const;

describe("the stock for an injector", () => {
  it("is a hundredth of what comes out at 1:100 of mix, and a hundred and first at 1:100 of water", () => {
    expect(injectorStock(run)).toEqual({
      stock: qty(5, "L"),
      product: qty(1000, "mL"),
      strength: qty(200, "mL/L"),
      finished: qty(500, "L"),
      finishedStrength: qty(2, "mL/L"),
    });
    const water = injectorStock({ ...run, ratio: ofWater });
    expect(water.stock.value).toBeCloseTo(500 / 101, 12);
    expect(water.strength.value).toBeCloseTo(202, 12);
    expect(water.product).toEqual(qty(1000, "mL"));
  });

  it("comes from the stock tank as well", () => {
    const { finished: _, ...rest } = run;
    expect(injectorStock({ ...rest, stock: qty(5, "L") })).toEqual(injectorStock(run));
    expect(injectorStock({ ...rest, ratio: ofWater, stock: qty(5, "L") }).finished).toEqual(qty(505, "L"));
    expect(injectorStock({ ...rest, stock: qty(20, "qt") }).finished).toEqual(qty(500, "gal"));
  });

  it("makes a finished ppm from what a fertilizer contains", () => {
    // 200 ppm N of a 20 % fertilizer at 1:100: 1 g of N in 5 L, 1 kg of fertilizer in 1,000 L, so 100 g in each liter of stock.
    const { product, strength } = injectorStock({
      rate: {
        activeIngredient: { value: 200, unit: "ppm", basis: "w/v" },
        contains: { value: 20, unit: "%", basis: "w/w" },
      },
      form: "dry",
      ratio: ofMix,
      finished: qty(1000, "L"),
    });
    expect(product).toEqual({ value: expect.closeTo(1000, 9), unit: "g" });
    expect(strength).toEqual({ value: expect.closeTo(100, 9), unit: "g/L" });
  });

  it("keeps a percent setting, which is parts to 100", () => {
    expect(injectorStock({ ...run, ratio: { parts: 2, to: 100, of: "mix" } }).stock).toEqual(qty(10, "L"));
    expect(injectorStock({ ...run, ratio: { parts: 1, to: 50, of: "mix" } }).stock).toEqual(qty(10, "L"));
  });

  it("goes from a stock tank, and with an error, by all parts of the setting", () => {
    const { finished: _, ...rest } = run;
    const stock = qty(2, "L");
    const of = (kind: "mix" | "water") => ({ parts: 2, to: 100, of: kind }) as const;
    // 2 parts in 100, and 2 parts to 100 of water.
    expect(injectorStock({ ...rest, ratio: of("mix"), stock }).finished).toEqual(qty(100, "L"));
    expect(injectorStock({ ...rest, ratio: of("water"), stock }).finished).toEqual(qty(102, "L"));
    // 100 mL in each liter of stock: 1.8 parts of it to 98 of water.
    const { range } = injectorStock({ ...rest, ratio: of("mix"), stock, errorPercent: 10 });
    expect(range?.low.value).toBeCloseTo((100 * 1.8) / 99.8, 12);
    expect(injectedStrength({ stock: qty(100, "mL/L"), ratio: of("mix") }).finished).toEqual(qty(2, "mL/L"));
  });

  it("says what comes out where the injector draws too little or too much into the same water", () => {
    const { range } = injectorStock({ ...run, errorPercent: 10 });
    // 0.9 parts to 99 of water, and 1.1 parts.
    expect(range?.low).toEqual({ value: expect.closeTo((200 * 0.9) / 99.9, 12), unit: "mL/L" });
    expect(range?.high).toEqual({ value: expect.closeTo((200 * 1.1) / 100.1, 12), unit: "mL/L" });
    const water = injectorStock({ ...run, ratio: ofWater, errorPercent: 10 }).range;
    expect(water?.high.value).toBeCloseTo((202 * 1.1) / 101.1, 12);
    const exact = injectorStock({ ...run, errorPercent: 0 });
    expect(exact.range?.low.value).toBeCloseTo(exact.finishedStrength.value, 12);
    expect(exact.range?.high.value).toBeCloseTo(exact.finishedStrength.value, 12);
  });

  it("refuses a stock that can't hold the product, such as 1:100 for a finished 1 %", () => {
    const part = { value: 1, unit: "%", basis: "v/v" } as const;
    const error = refusal(() => injectorStock({ ...run, rate: part }));
    expect([error.code, error.path]).toEqual(["conflict", "rate"]);
    expect(error.message).toBe(
      "The stock would have 1,000 mL of product in 1 L, more than it can hold. Check the rate, or set the injector to draw more.",
    );
    expect(injectorStock({ ...run, rate: { ...part, value: 0.5 } }).strength).toEqual(qty(500, "mL/L"));
    expectRefused(() => injectorStock({ ...run, form: "dry", rate: qty(10.1, "g/L") }), "conflict", "rate");
    expect(injectorStock({ ...run, form: "dry", rate: qty(10, "g/L") }).strength).toEqual(qty(1000, "g/L"));
  });

  it("refuses a setting upside down, and one without its meaning", () => {
    for (const of of ["mix", "water"] as const)
      expectRefused(
        () => injectorStock({ ...run, ratio: { parts: 100, to: 1, of } }),
        "conflict",
        "ratio",
        "A setting of 100:1 would be more stock than water. Is it upside down?",
      );
    expectRefused(
      () => injectorStock({ ...run, ratio: { parts: 1, to: 1, of: "mix" } }),
      "conflict",
      "ratio",
    );
    expectRefused(
      () => injectorStock({ ...run, ratio: { parts: 1, to: 100 } as never }),
      "missing",
      "ratio.of",
    );
  });

  it("refuses rates per area or row", () => {
    for (const rate of [qty(2, "L/ha"), qty(2, "mL/m")])
      expectRefused(() => injectorStock({ ...run, rate }), "wrong-dimension", "rate", "50 mL/100 L");
    expectRefused(
      () => injectorStock({ ...run, finished: qty(9, "gal"), rate: qty(1, "pt/ac") }),
      "wrong-dimension",
      "rate",
      "8 fl oz/100 gal",
    );
  });

  it("refuses the run and the stock at once, neither, a form that does not fit, and a wild error", () => {
    expectRefused(() => injectorStock({ ...run, stock: qty(5, "L") }), "conflict", "stock");
    const { finished: _, ...rest } = run;
    expectRefused(() => injectorStock(rest), "missing", "");
    expectRefused(() => injectorStock({ ...run, form: "dry" }), "wrong-dimension", "rate");
    expectRefused(() => injectorStock({ ...run, errorPercent: 51 }), "out-of-range", "errorPercent");
    expectRefused(() => injectorStock({ ...run, errorPercent: -1 }), "out-of-range", "errorPercent");
  });

  refusesMisuse("injectorStock", injectorStock, { ...run, errorPercent: 5 }, [
    "rate",
    "form",
    "ratio",
    "ratio.parts",
    "ratio.to",
    "ratio.of",
    "finished",
    "errorPercent",
  ]);
});

describe("what comes out of an injector", () => {
  it("is the stock thinned by the setting, in the unit of the stock", () => {
    expect(injectedStrength({ stock: qty(20, "g/L"), ratio: ofMix })).toEqual({ finished: qty(0.2, "g/L") });
    const stock = { value: 2, unit: "%", basis: "w/v" } as const;
    expect(injectedStrength({ stock, ratio: ofMix }).finished).toEqual({
      value: 0.02,
      unit: "%",
      basis: "w/v",
    });
    expect(injectedStrength({ stock: qty(101, "mL/L"), ratio: ofWater }).finished).toEqual(qty(1, "mL/L"));
  });

  it("is the reverse of the stock, and agrees with a dilution", () => {
    const { strength } = injectorStock({ ...run, ratio: ofWater });
    expect(injectedStrength({ stock: strength, ratio: ofWater }).finished.value).toBeCloseTo(2, 12);
    const thinned = diluteMix({ from: strength, to: qty(2, "mL/L"), volume: qty(500, "L") });
    expect(thinned.take.value).toBeCloseTo(injectorStock({ ...run, ratio: ofWater }).stock.value, 12);
  });

  it("has the same range as the stock", () => {
    const { strength, range } = injectorStock({ ...run, errorPercent: 5 });
    expect(injectedStrength({ stock: strength, ratio: ofMix, errorPercent: 5 }).range).toEqual(range);
  });

  it("refuses a percentage without its basis, and by weight", () => {
    const ratio = ofMix;
    expectRefused(() => injectedStrength({ stock: qty(2, "%") as never, ratio }), "missing", "stock.basis");
    const stock = { value: 2, unit: "%", basis: "w/w" } as const;
    expectRefused(() => injectedStrength({ stock, ratio }), "wrong-dimension", "stock.basis");
  });

  refusesMisuse(
    "injectedStrength",
    injectedStrength,
    { stock: qty(20, "g/L"), ratio: ofMix, errorPercent: 5 },
    ["stock", "ratio", "errorPercent"],
  );
});

describe("an injector checked by volume", () => {
  it("has the ratio of what came out to what was drawn", () => {
    const check = checkInjector({ ratio: ofMix, drawn: qty(160, "mL"), caught: qty(20, "L") });
    expect(check.ratio).toEqual({ parts: 1, to: 125, of: "mix" });
    expect(check.strengthOff).toEqual({ value: expect.closeTo(-20, 10), unit: "%" });
  });

  it("counts the water alone where the setting is of water", () => {
    const check = checkInjector({ ratio: ofWater, drawn: qty(1, "fl_oz"), caught: qty(101, "fl_oz") });
    expect(check).toEqual({
      ratio: { parts: 1, to: 100, of: "water" },
      strengthOff: { value: 0, unit: "%" },
    });
    const other = checkInjector({
      ratio: { ...ofWater, parts: 2 },
      drawn: qty(2, "L"),
      caught: qty(102, "L"),
    });
    expect(other.ratio.to).toBe(50);
    expect(other.strengthOff.value).toBeCloseTo(0, 12);
  });

  it("asks for a missing reading, and for nothing else", () => {
    for (const name of ["drawn", "caught"] as const) {
      const { [name]: _, ...less } = { ratio: ofMix, drawn: qty(160, "mL"), caught: qty(20, "L") };
      expect(refusal(() => checkInjector(less as never)).issues.map(({ path }) => path)).toEqual([name]);
    }
  });

  it("refuses what came out of no more than was drawn", () => {
    const swapped = { ratio: ofMix, drawn: qty(20, "L"), caught: qty(160, "mL") };
    expectRefused(() => checkInjector(swapped), "conflict", "caught", "Are the two swapped?");
    expectRefused(() => checkInjector({ ...swapped, caught: qty(20, "L") }), "conflict", "caught");
  });

  refusesMisuse(
    "checkInjector",
    checkInjector,
    { ratio: ofMix, drawn: qty(160, "mL"), caught: qty(20, "L") },
    ["ratio", "drawn", "caught"],
  );
});
