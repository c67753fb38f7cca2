import { describe, expect, it } from "vitest";
import { type LabelRate, type ProductInput, productAmount } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

const area = { value: 0.5, unit: "ac", of: "treated" } as const;
const ground = { value: 1.5, unit: "ac", of: "ground" } as const;
const job = {
  carrier: qty(10, "gal"),
  carrierRate: qty(20, "gal/ac"),
  area,
  ground,
  rowLength: qty(100, "ft"),
};

const amountOf = (rate: LabelRate, form: "liquid" | "dry", more: Partial<ProductInput> = {}) =>
  productAmount({ rate, form, ...job, ...more });

describe("productAmount, by how the label gives the rate", () => {
  it("takes a bare rate per area as per treated area", () => {
    expect(amountOf(qty(1.5, "pt/ac"), "liquid")).toEqual({
      amount: qty(12, "fl_oz"),
      strength: qty(1.2, "fl_oz/gal"),
    });
    expect(amountOf(qty(12, "oz/ac"), "dry").amount).toEqual(qty(6, "oz"));
  });

  it("gives a band the broadcast rate on its own area: the same mix as the treated rate", () => {
    const rate = qty(1.5, "pt/ac");
    const treated = amountOf({ rate, per: "treated" }, "liquid");
    expect(amountOf({ rate, per: "broadcast" }, "liquid")).toEqual(treated);
    expect(amountOf(rate, "liquid")).toEqual(treated);
  });

  it("puts a rate per ground area on the treated third of it: three times as strong", () => {
    expect(amountOf({ rate: qty(1.5, "pt/ac"), per: "ground" }, "liquid").amount).toEqual(qty(36, "fl_oz"));
  });

  it("takes rates per 1,000 square feet", () => {
    expect(amountOf(qty(1, "fl_oz/1000ft2"), "liquid").amount.value).toBeCloseTo(21.78, 12);
  });

  it("takes rates per volume of carrier", () => {
    expect(amountOf(qty(2, "pt/100gal"), "liquid").amount.value).toBeCloseTo(3.2, 12);
    expect(amountOf(qty(2, "lb/100gal"), "dry").amount.value).toBeCloseTo(3.2, 12);
    expect(amountOf(qty(5, "mL/L"), "liquid", { carrier: qty(10, "L") }).amount).toEqual(qty(50, "mL"));
  });

  it("takes per cent by volume for a liquid, and by weight in volume for a dry product", () => {
    expect(amountOf({ value: 1, unit: "%", basis: "v/v" }, "liquid").amount).toEqual(qty(12.8, "fl_oz"));
    const dry = amountOf({ value: 1, unit: "%", basis: "w/v" }, "dry", { carrier: qty(100, "L") });
    expect(dry.amount).toEqual(qty(1000, "g"));
  });

  it("takes more parts of product than of water, which leave room for both", () => {
    // 3 parts with 1 part of water are 3 of every 4.
    const { amount } = amountOf({ parts: 3, to: 1, of: "water" }, "liquid", { carrier: qty(4, "L") });
    expect(amount).toEqual(qty(3000, "mL"));
  });

  it("says that a ratio of as much product as mix leaves no room, and calls only more than that upside down", () => {
    const key = (parts: number) =>
      errorOf(() => amountOf({ parts, to: 1, of: "mix" }, "liquid", { carrier: qty(4, "L") })).key;
    expect([key(1), key(1.5)]).toEqual(["no-room-in-mix", "ratio-upside-down"]);
  });

  it("says of a percentage of the wrong kind which one was given and which is right", () => {
    const fault = (basis: string, form: string) =>
      errorOf(() => amountOf({ value: 1, unit: "%", basis } as never, form as never, {}));
    expect(fault("w/v", "liquid")).toMatchObject({
      key: "basis-of-liquid",
      figures: { given: "w/v", choices: ["v/v"] },
    });
    expect(fault("v/v", "dry")).toMatchObject({
      key: "basis-of-dry",
      figures: { given: "v/v", choices: ["w/v"] },
    });
  });

  it("asks after ounces only where the label may mean the other ones", () => {
    const key = (unit: string, form: string) =>
      errorOf(() => amountOf({ value: 1, unit } as never, form as never, {})).key;
    for (const unit of ["fl_oz/ac", "imp_fl_oz/ac"]) expect(key(unit, "dry")).toBe("volume-for-dry-ounces");
    expect(key("pt/ac", "dry")).toBe("volume-for-dry");
    expect(key("oz/ac", "liquid")).toBe("weight-for-liquid-ounces");
    expect(key("lb/ac", "liquid")).toBe("weight-for-liquid");
  });

  it("takes active ingredient per length of row, and refuses ratios in its place", () => {
    const contains = qty(4, "lb/gal");
    const plot = { area: { value: 1, unit: "ac", of: "treated" }, rowLength: qty(2000, "ft") } as const;
    // 1 lb on 1,000 ft is a quart of product; 2,000 ft take half a gallon, which is in the 20 gal of the acre.
    const { amount } = amountOf({ activeIngredient: qty(1, "lb/1000ft"), contains }, "liquid", {
      carrier: qty(20, "gal"),
      carrierRate: qty(20, "gal/ac"),
      ...plot,
    });
    expect(amount).toEqual(qty(64, "fl_oz"));
    for (const name of ["parts", "to", "activeIngredient"]) {
      const rate = { activeIngredient: { [name]: 1 }, contains } as never;
      expect(errorOf(() => amountOf(rate, "liquid", {})).key).toBe("active-not-by-weight");
    }
  });

  it("takes parts per million", () => {
    const rate = { value: 200, unit: "ppm", basis: "w/v" } as const;
    // 200 ppm w/v are 200 mg in a liter.
    expect(amountOf(rate, "dry", { carrier: qty(10, "L") }).amount.value).toBeCloseTo(2, 12);
  });

  it("keeps a ratio of the mix apart from a ratio to the water", () => {
    const carrier = qty(101, "L");
    expect(amountOf({ parts: 1, to: 100, of: "water" }, "liquid", { carrier }).amount).toEqual(
      qty(1000, "mL"),
    );
    expect(amountOf({ parts: 1, to: 100, of: "mix" }, "liquid", { carrier }).amount).toEqual(qty(1010, "mL"));
  });

  it("takes rates along the row", () => {
    // 100 ft of row in half an acre sprayed with 10 gal: all the mix is for all the rows.
    expect(amountOf(qty(0.5, "fl_oz/ft"), "liquid").amount).toEqual(qty(50, "fl_oz"));
    expect(amountOf(qty(0.5, "fl_oz/ft"), "liquid", { carrier: qty(5, "gal") }).amount).toEqual(
      qty(25, "fl_oz"),
    );
    expect(amountOf(qty(2, "g/m"), "dry", { rowLength: qty(50, "m") }).amount).toEqual(qty(100, "g"));
  });

  it("takes active ingredient with what the product contains", () => {
    const ai = qty(1.5, "lb/ac");
    expect(amountOf({ activeIngredient: ai, contains: qty(4, "lb/gal") }, "liquid").amount).toEqual(
      qty(24, "fl_oz"),
    );
    const half = { value: 50, unit: "%", basis: "w/w" } as const;
    expect(amountOf({ activeIngredient: ai, contains: half }, "dry").amount).toEqual(qty(24, "oz"));
    expect(amountOf({ activeIngredient: ai, contains: qty(500, "g/kg") }, "dry").amount).toEqual(
      qty(24, "oz"),
    );
    const heavy = { activeIngredient: ai, contains: half, density: qty(8, "lb/gal") };
    expect(amountOf(heavy, "liquid").amount).toEqual(qty(24, "fl_oz"));
    const third = { activeIngredient: { rate: ai, per: "ground" }, contains: qty(4, "lb/gal") } as const;
    expect(amountOf(third, "liquid").amount).toEqual(qty(72, "fl_oz"));
  });

  it("takes parts per million of active ingredient, in the carrier's system", () => {
    const rate = {
      activeIngredient: { value: 200, unit: "ppm", basis: "w/v" },
      contains: qty(40, "g/L"),
    } as const;
    expect(amountOf(rate, "liquid", { carrier: qty(10, "L") }).amount.value).toBeCloseTo(50, 10);
    expect(amountOf(rate, "liquid").amount.value).toBeCloseTo(6.4, 12);
    expect(amountOf(rate, "liquid").amount.unit).toBe("fl_oz");
  });

  it("takes the chosen rate of a range", () => {
    const [low, high] = [qty(1, "pt/ac"), qty(2, "pt/ac")];
    const chosen = qty(1.5, "pt/ac");
    expect(amountOf({ low, high, chosen }, "liquid")).toEqual(amountOf(chosen, "liquid"));
    expect(amountOf({ low, high, chosen: low }, "liquid")).toEqual(amountOf(low, "liquid"));
    expect(amountOf({ low, high, chosen: high }, "liquid")).toEqual(amountOf(high, "liquid"));
  });

  it("gives amounts in the small measures of the rate's own system", () => {
    expect(amountOf(qty(1, "L/ha"), "liquid").amount.unit).toBe("mL");
    expect(amountOf(qty(1, "kg/ha"), "dry").amount.unit).toBe("g");
    expect(amountOf(qty(1, "imp_pt/ac"), "liquid").amount.unit).toBe("imp_fl_oz");
    const imperial = { carrier: qty(10, "imp_gal"), carrierRate: qty(20, "imp_gal/ac") };
    expect(amountOf({ value: 1, unit: "%", basis: "v/v" }, "liquid", imperial).amount).toEqual(
      qty(16, "imp_fl_oz"),
    );
    const ai = { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/imp_gal") };
    expect(amountOf(ai, "liquid", imperial).amount).toEqual(qty(20, "imp_fl_oz"));
    const byWeight = { ...ai, contains: { value: 40, unit: "%", basis: "w/v" } } as const;
    expect(amountOf(byWeight, "liquid", imperial).amount.unit).toBe("imp_fl_oz");
  });
});

describe("productAmount, and what it refuses", () => {
  const percent = { value: 1, unit: "%" };
  it.each([
    ["a liquid rate for a dry product", qty(2, "pt/ac"), "dry", "wrong-dimension", "rate"],
    ["a dry rate for a liquid product", qty(2, "oz/ac"), "liquid", "wrong-dimension", "rate"],
    ["a weight per volume for a liquid", qty(2, "lb/100gal"), "liquid", "wrong-dimension", "rate"],
    ["a volume along the row for a dry product", qty(2, "mL/m"), "dry", "wrong-dimension", "rate"],
    [
      "a ground rate by weight for a liquid",
      { rate: qty(2, "lb/ac"), per: "ground" },
      "liquid",
      "wrong-dimension",
      "rate.rate",
    ],
    ["per cent that say not of what", percent, "liquid", "missing", "rate.basis"],
    ["an unknown basis", { ...percent, basis: "w/x" }, "liquid", "unknown-choice", "rate.basis"],
    [
      "weight in volume for a liquid",
      { ...percent, basis: "w/v" },
      "liquid",
      "wrong-dimension",
      "rate.basis",
    ],
    ["by volume for a dry product", { ...percent, basis: "v/v" }, "dry", "wrong-dimension", "rate.basis"],
    ["by weight of the mix", { ...percent, basis: "w/w" }, "dry", "wrong-dimension", "rate.basis"],
    ["a ratio that says not of what", { parts: 1, to: 100 }, "liquid", "missing", "rate.of"],
    ["a ratio for a dry product", { parts: 1, to: 100, of: "mix" }, "dry", "wrong-dimension", "rate"],
    ["a ratio of as much product as mix", { parts: 1, to: 1, of: "mix" }, "liquid", "conflict", "rate"],
    ["a ratio upside down", { parts: 100, to: 1, of: "mix" }, "liquid", "conflict", "rate"],
    ["a rate of nothing", qty(0, "pt/ac"), "liquid", "out-of-range", "rate"],
    ["a length", qty(5, "ft"), "liquid", "wrong-dimension", "rate"],
    [
      "a length as a rate per area",
      { rate: qty(5, "ft"), per: "ground" },
      "dry",
      "wrong-dimension",
      "rate.rate",
    ],
    ["more product than mix", qty(21, "gal/ac"), "liquid", "conflict", "rate"],
    [
      "a product in a ratio over the mix",
      { value: 101, unit: "%", basis: "v/v" },
      "liquid",
      "conflict",
      "rate",
    ],
    ["an unknown form", qty(1, "pt/ac"), "gas", "unknown-choice", "form"],
    [
      "a range upside down",
      { low: qty(2, "pt/ac"), high: qty(1, "pt/ac"), chosen: qty(1, "pt/ac") },
      "liquid",
      "conflict",
      "rate",
    ],
    [
      "a chosen rate over the label's highest",
      { low: qty(1, "pt/ac"), high: qty(2, "pt/ac"), chosen: qty(2.01, "pt/ac") },
      "liquid",
      "out-of-range",
      "rate.chosen",
    ],
    [
      "a range without the chosen rate",
      { low: qty(1, "pt/ac"), high: qty(2, "pt/ac") },
      "liquid",
      "missing",
      "rate.chosen",
    ],
    [
      "active ingredient without a content",
      { activeIngredient: qty(1, "lb/ac") },
      "dry",
      "missing",
      "rate.contains",
    ],
    [
      "active ingredient by volume",
      { activeIngredient: qty(1, "pt/ac"), contains: qty(4, "lb/gal") },
      "liquid",
      "wrong-dimension",
      "rate.activeIngredient",
    ],
    [
      "a liquid content for a dry product",
      { activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal") },
      "dry",
      "wrong-dimension",
      "rate.contains",
    ],
    [
      "a content by weight for a liquid without density",
      { activeIngredient: qty(1, "lb/ac"), contains: { ...percent, basis: "w/w" } },
      "liquid",
      "missing",
      "rate.density",
    ],
    [
      "active ingredient of active ingredient",
      { activeIngredient: { activeIngredient: qty(1, "lb/ac") }, contains: qty(4, "lb/gal") },
      "liquid",
      "wrong-dimension",
      "rate.activeIngredient",
    ],
    [
      "active ingredient given as a ratio",
      { activeIngredient: { parts: 1, to: 2, of: "mix" }, contains: qty(4, "lb/gal") },
      "liquid",
      "wrong-dimension",
      "rate.activeIngredient",
    ],
  ] as const)("refuses %s", (_, rate, form, code, path) => {
    const error = errorOf(() => amountOf(rate as never, form as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });

  it.each([
    ["carrierRate", qty(1, "pt/ac"), "liquid"],
    ["area", { rate: qty(1, "pt/ac"), per: "ground" }, "liquid"],
    ["ground", { rate: qty(1, "pt/ac"), per: "ground" }, "liquid"],
    ["area", qty(1, "mL/m"), "liquid"],
    ["rowLength", qty(1, "mL/m"), "liquid"],
  ] as const)("says that %s is missing where the rate needs it", (field, rate, form) => {
    const error = errorOf(() => amountOf(rate, form, { [field]: undefined } as never));
    expect([error.code, error.path]).toEqual(["missing", field]);
  });

  it("takes treated and ground area for what they say they are", () => {
    const rate = { rate: qty(1, "pt/ac"), per: "ground" } as const;
    expect(errorOf(() => amountOf(rate, "liquid", { area: ground as never })).code).toBe("wrong-area");
    expect(errorOf(() => amountOf(rate, "liquid", { ground: area as never })).code).toBe("wrong-area");
  });

  it("keeps the ounce of weight apart from the fluid ounce", () => {
    expect(errorOf(() => amountOf(qty(5, "oz/ac"), "liquid")).message).toContain("fl oz or oz");
  });

  it("refuses what is too large to compute with", () => {
    expect(errorOf(() => amountOf(qty(1e308, "lb/ac"), "dry")).code).toBe("not-finite");
    const dripping = { carrierRate: qty(1e-300, "gal/ac") };
    expect(errorOf(() => amountOf(qty(1e300, "lb/ac"), "dry", dripping)).code).toBe("not-finite");
    expect(errorOf(() => amountOf(qty(1, "lb/gal"), "dry", { carrier: qty(1e308, "gal") })).code).toBe(
      "not-finite",
    );
  });
});
