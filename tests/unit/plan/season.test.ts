import { describe, expect, it } from "vitest";
import { type ApplicationRecord, seasonSoFar } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const record = (date: string, products: ApplicationRecord["products"]): ApplicationRecord => ({
  version: 1,
  date,
  finished: `${date}T09:30`,
  products,
  treated: { value: 5000, unit: "m2", of: "treated" },
  clockChange: "not-counted",
  missing: [],
});
const liquid = (name: string, rate: number) => ({
  name,
  applied: qty(rate * 500, "mL"),
  rate: qty(rate, "L/ha"),
});

const RECORDS = [
  record("2026-05-20", [liquid("Product A", 1.5), liquid("Product B", 3)]),
  record("2026-05-02", [liquid("product  a ", 2)]),
  record("2026-05-25", [liquid("Product A", 0)]),
];

describe("a season from its records", () => {
  it("adds up one product's rates, counts its applications, and the days since the last", () => {
    const season = (product: string, today?: string) => seasonSoFar({ product, records: RECORDS, today });
    // 1.5 + 2 L/ha; nothing of it went out on May 25, and from May 20 to June 1 are 12 days.
    expect(season("Product A", "2026-06-01")).toEqual({
      rate: { value: 3.5, unit: "L/ha" },
      applications: 2,
      daysSinceLast: 12,
    });
    expect(season("PRODUCT B")).toEqual({ rate: { value: 3, unit: "L/ha" }, applications: 1 });
    expect(season("Product C", "2026-06-01")).toEqual({ applications: 0 });
    expect(seasonSoFar({ product: "Product A", records: [] })).toEqual({ applications: 0 });
    const first = { product: "Product A", records: RECORDS.slice(0, 1), today: "2026-05-20" };
    expect(seasonSoFar(first).daysSinceLast).toBe(0);
  });

  it("refuses a name that is almost the product's: what it had would not be counted", () => {
    const season = (product: string, ...recorded: string[]) =>
      seasonSoFar({ product, records: recorded.map((name) => record("2026-05-02", [liquid(name, 2)])) });
    for (const [product, recorded] of [
      ["Prodcut A", "Product A"],
      ["ProductA", "Product A"],
      [" Product-A", "product a"],
      ["Grenfield", "Greenfield"],
    ] as const)
      expectRefused(() => season(product, recorded), "unknown-choice", "product", recorded);
    const error = refusal(() => season("Product A", "Product B", "Product A", "Prodcut A "));
    expect([error.path, error.message]).toEqual([
      "records[2].products[0].name",
      "Are Prodcut A and Product A the same product? Write both names the same way.",
    ]);
    expect(error.figures).toEqual({ given: "Prodcut A", meant: "Product A" });
  });

  it("takes names that differ by a number, a short word or more than a slip for other products", () => {
    for (const [product, recorded] of [
      ["Product A", "Product B"],
      ["Product A", "Product"],
      ["Greenfield 50", "Greenfield 80"],
      ["Greenfield50", "Greenfield80"],
      ["Greenfield", "Grenfeld"],
      ["Acre", "Acme"],
      ["+", "-"],
    ] as const)
      expect(
        seasonSoFar({ product, records: [record("2026-05-02", [liquid(recorded, 2)])] }),
        `${product}, ${recorded}`,
      ).toEqual({ applications: 0 });
  });

  it("refuses records that don't add up, and one from after the day", () => {
    const dry = record("2026-05-10", [{ name: "Product A", applied: qty(1, "kg"), rate: qty(2, "kg/ha") }]);
    const season = (records: readonly ApplicationRecord[], today?: string) => () =>
      seasonSoFar({ product: "Product A", records, today });
    expectRefused(season([...RECORDS, dry]), "conflict", "records[3].products[0].rate");
    expectRefused(season(RECORDS, "2026-05-24"), "conflict", "records[2].date");
    expectRefused(season([{ ...dry, date: "May" }]), "unreadable", "records[0].date");
    expectRefused(season([dry], "2026-5-30"), "unreadable", "today");
    expectRefused(season({} as never), "not-a-quantity", "records");
    expectRefused(() => seasonSoFar({ records: [] } as never), "missing", "product");
  });
});
