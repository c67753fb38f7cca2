import { describe, expect, it } from "vitest";
import { type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const JOB: PlanInput = {
  plot: [
    { kind: "rectangle", length: qty(100, "m"), width: qty(50, "m") },
    { kind: "rectangle", length: qty(100, "m"), width: qty(25, "m") },
    { kind: "rectangle", length: qty(100, "m"), width: qty(25, "m") },
  ],
  calibration: { kind: "known", rate: qty(200, "L/ha") },
  sprayer: { tank: qty(70, "L") },
  products: [
    { name: "Product A", form: "liquid", rate: qty(2, "L/ha"), price: { amount: 10, per: qty(1, "L") } },
    { name: "Product B", form: "dry", rate: qty(1, "kg/ha"), price: { amount: 33.33, per: qty(5, "kg") } },
    { name: "Product C", form: "dry", rate: qty(1, "kg/ha") },
  ],
  tools: "cylinders",
  currency: { code: "EUR" },
};

const cents = (amounts: readonly number[]) => amounts.reduce((sum, one) => sum + Math.round(one * 100), 0);

describe("the cost of a plan", () => {
  const { cost } = planApplication(JOB);

  it("is price times amount", () => {
    // 2 L at 10.00 and 1 kg at 33.33 for 5 kg, which is 6.666.
    expect(cost?.products).toEqual([
      { name: "Product A", cost: 20 },
      { name: "Product B", cost: 6.67 },
    ]);
    expect(cost?.total).toBe(26.67);
    expect(cost?.perArea).toEqual({ cost: 26.67, per: "ha" });
    expect(cost?.currency).toEqual({ code: "EUR", decimals: 2 });
    const { currency: _, ...unnamed } = JOB;
    expect(planApplication(unnamed).cost?.currency).toEqual({ code: "", decimals: 2 });
  });

  it("adds up by load, by product and by plot", () => {
    expect(cost?.loads).toHaveLength(3);
    expect(cents(cost?.loads.map(({ total }) => total) ?? [])).toBe(2667);
    for (const { products, total } of cost?.loads ?? [])
      expect(cents(products.map((one) => one.cost))).toBe(Math.round(total * 100));
    for (const [i, { cost: whole }] of (cost?.products ?? []).entries()) {
      expect(cents(cost?.loads.map(({ products }) => products[i]?.cost ?? 0) ?? [])).toBe(
        Math.round(whole * 100),
      );
    }
    expect(cost?.plots).toEqual([13.34, 6.66, 6.67]);
  });

  it("is refused for a dry product by volume", () => {
    const [, dry] = JOB.products;
    const products = [{ ...dry, price: { amount: 5, per: qty(1, "L") } }] as PlanInput["products"];
    expectRefused(() => planApplication({ ...JOB, products }), "wrong-dimension", "products[0].price.per");
    expect(refusal(() => planApplication({ ...JOB, products }))).toMatchObject({
      key: "price-of-dry",
      message: "This product is dry. Enter what a weight of it costs, not 1 L.",
    });
  });

  it("names the products it leaves out, and is left out where no price is given", () => {
    expect(cost?.notPriced).toEqual(["Product C"]);
    const products = JOB.products.map(({ price, ...product }) => product);
    expect(planApplication({ ...JOB, products }).cost).toBeUndefined();
  });

  it("takes currencies with other decimals, and a price of nothing", () => {
    const plan = planApplication({ ...JOB, currency: { code: "JPY", decimals: 0 } });
    expect(plan.cost?.products[1]?.cost).toBe(7);
    const free = [{ ...JOB.products[0], price: { amount: 0, per: qty(1, "L") } }] as PlanInput["products"];
    expect(planApplication({ ...JOB, products: free }).cost?.total).toBe(0);
  });

  it("refuses a price that cannot be", () => {
    const priced = (price: object) => () =>
      planApplication({ ...JOB, products: [{ ...JOB.products[0], price } as PlanInput["products"][number]] });
    expectRefused(priced({ amount: -1, per: qty(1, "L") }), "out-of-range", "products[0].price.amount");
    expectRefused(
      priced({ amount: 1, per: qty(1, "kg") }),
      "wrong-dimension",
      "products[0].price.per",
      "This product is a liquid.",
    );
    expectRefused(priced({ amount: 1, per: qty(1, "m") }), "wrong-dimension", "products[0].price.per");
    expect(refusal(priced({ amount: 1, per: qty(1, "kg") })).key).toBe("price-of-liquid");
    expectRefused(priced({ amount: 1, per: qty(0, "L") }), "out-of-range", "products[0].price.per");
    expectRefused(priced({ amount: 1 }), "missing", "products[0].price.per");
    expectRefused(
      () => planApplication({ ...JOB, currency: { code: "EUR", decimals: 9 } }),
      "out-of-range",
      "currency.decimals",
    );
  });
});
