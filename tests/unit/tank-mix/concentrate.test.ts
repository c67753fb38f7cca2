import { describe, expect, it } from "vitest";
import { concentrateSpray } from "../../../src/tank-mix/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const dilute = qty(300, "gal/ac");
const product = { rate: qty(8, "fl_oz/100gal"), form: "liquid" } as const;

describe("concentrate spray", () => {
  it("keeps the product per area, with less water and a stronger mix", () => {
    expect(concentrateSpray({ dilute, factor: 3, product })).toEqual({
      factor: 3,
      concentrate: qty(100, "gal/ac"),
      perArea: qty(24, "fl_oz/ac"),
      diluteStrength: qty(0.08, "fl_oz/gal"),
      strength: qty(0.24, "fl_oz/gal"),
    });
  });

  it("finds the factor from what the sprayer puts out, in any unit", () => {
    const found = concentrateSpray({ dilute: qty(2000, "L/ha"), concentrate: qty(50, "mL/m2") });
    expect(found).toEqual({ factor: 4, concentrate: qty(50, "mL/m2") });
    expect(concentrateSpray({ dilute, concentrate: dilute }).factor).toBe(1);
    expect(concentrateSpray({ dilute, factor: 1 }).concentrate).toEqual(dilute);
    // 1 ac is 0.40468564224 ha: alike but for the rounding of the change of unit.
    const alike = { value: 300 / 0.40468564224, unit: "gal/ha" } as const;
    expect(concentrateSpray({ dilute, concentrate: alike }).factor).toBeGreaterThanOrEqual(1);
  });

  it("takes the product's rate in every way that labels give one for a canopy", () => {
    const strengthOf = (rate: object, form: "liquid" | "dry" = "liquid") => {
      const found = concentrateSpray({
        dilute: qty(1000, "L/ha"),
        factor: 5,
        product: { rate, form } as never,
      });
      expect(found.strength?.value).toBeCloseTo(5 * (found.diluteStrength?.value ?? 0), 12);
      return [found.perArea, found.strength];
    };
    expect(strengthOf(qty(50, "mL/100L"))).toEqual([qty(500, "mL/ha"), qty(2.5, "mL/L")]);
    expect(strengthOf({ value: 1, unit: "%", basis: "v/v" })).toEqual([
      qty(10_000, "mL/ha"),
      qty(50, "mL/L"),
    ]);
    expect(strengthOf({ parts: 1, to: 1000, of: "mix" })).toEqual([qty(1000, "mL/ha"), qty(5, "mL/L")]);
    expect(strengthOf(qty(2, "kg/ha"), "dry")).toEqual([qty(2000, "g/ha"), qty(10, "g/L")]);
    expect(strengthOf({ activeIngredient: qty(0.5, "kg/ha"), contains: qty(250, "g/L") })).toEqual([
      qty(2000, "mL/ha"),
      qty(10, "mL/L"),
    ]);
  });

  it("asks whether the two are swapped where the concentrate has more water", () => {
    expectRefused(
      () => concentrateSpray({ dilute: qty(100, "gal/ac"), concentrate: dilute }),
      "conflict",
      "concentrate",
      "300 gal/ac is more than the dilute 100 gal/ac. Are the two swapped?",
    );
    expectRefused(() => concentrateSpray({ dilute, factor: 0.5 }), "out-of-range", "factor");
  });

  it("refuses a mix that can't hold the product", () => {
    const strong = { rate: { value: 10, unit: "%", basis: "v/v" }, form: "liquid" } as const;
    expectRefused(
      () => concentrateSpray({ dilute, factor: 10, product: strong }),
      "conflict",
      "product.rate",
    );
    expect(concentrateSpray({ dilute, factor: 9.9, product: strong }).strength?.value).toBeCloseTo(
      126.72,
      10,
    );
  });

  it("refuses rates per row or per area of ground, which no canopy has", () => {
    for (const rate of [qty(5, "mL/m"), { rate: qty(2, "L/ha"), per: "ground" } as const]) {
      const error = refusal(() => concentrateSpray({ dilute, factor: 2, product: { rate, form: "liquid" } }));
      expect([error.code, error.path]).toEqual(["wrong-dimension", "product.rate"]);
      expect(error.message).toContain("in the dilute spray, such as 8 fl oz/100 gal");
    }
    const metric = {
      dilute: qty(1000, "L/ha"),
      factor: 2,
      product: { rate: qty(5, "mL/m"), form: "liquid" },
    } as const;
    expect(refusal(() => concentrateSpray(metric)).message).toContain("50 mL/100 L");
  });

  it("refuses both the rate and the factor, neither, and a form that does not fit", () => {
    expectRefused(() => concentrateSpray({ dilute, factor: 3, concentrate: dilute }), "conflict", "factor");
    expectRefused(() => concentrateSpray({ dilute }), "missing", "");
    expectRefused(
      () => concentrateSpray({ dilute, factor: 3, product: { rate: product.rate, form: "dry" } }),
      "wrong-dimension",
      "product.rate",
    );
    const paths = refusal(() =>
      concentrateSpray({
        dilute: qty(0, "gal/ac"),
        factor: 0,
        product: { form: "liquid" } as never,
        time: 3,
      } as never),
    ).issues.map(({ path }) => path);
    expect(paths).toEqual(["dilute", "product.rate", "factor", "time"]);
  });

  refusesMisuse("concentrateSpray", concentrateSpray, { dilute, concentrate: qty(100, "gal/ac"), product }, [
    "dilute",
    "concentrate",
    "product",
    "product.rate",
    "product.form",
  ]);
});
