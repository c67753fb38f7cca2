import { describe, expect, it } from "vitest";
import { type BatchInput, doseAdvice, type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { DOUBTFUL, QUIET, TWO_PRODUCTS } from "../../helpers/jobs.ts";

const A = { name: "Product A", form: "liquid" } as const;
const SPOT: BatchInput = {
  size: { kind: "volume", volume: qty(3, "gal") },
  sprayer: { tank: qty(4, "gal"), marks: qty(0.5, "gal") },
  products: [{ ...A, rate: qty(1, "tsp/gal") }],
  tools: [{ name: "scoop", capacity: qty(3.5, "tsp") }],
};
const messages = (job: BatchInput | PlanInput): string[] =>
  doseAdvice(planApplication(job as PlanInput)).flatMap(({ suggestions }) =>
    suggestions.map(({ message }) => message),
  );

describe("doseAdvice", () => {
  it("names a load on a mark whose dose can be measured", () => {
    expect(doseAdvice(planApplication(SPOT))).toMatchObject([
      {
        load: 1,
        product: "Product A",
        suggestions: [
          { kind: "batch", load: qty(3.5, "gal"), scoops: 1, message: "Mix 3.5 gal instead of 3 gal." },
          { kind: "tool" },
        ],
      },
    ]);
    const { marks: _, ...unmarked } = SPOT.sprayer;
    expect(messages({ ...SPOT, sprayer: unmarked })[0]).toBe("Mix 3.5 gal instead of 3 gal.");
    // Not more than the tank is filled to, and then what the marks below would do.
    const low = { ...SPOT.sprayer, workingFill: qty(3, "gal") };
    const tools = [{ name: "scoop", capacity: qty(2.5, "tsp") }];
    expect(messages({ ...SPOT, sprayer: low, tools })[0]).toBe("Mix 2.5 gal instead of 3 gal.");
    const none = messages({ ...SPOT, sprayer: { ...SPOT.sprayer, marks: [qty(3, "gal")] } });
    expect(none.filter((one) => one.startsWith("Mix"))).toEqual([]);
  });

  it("says nothing of doses that can be measured", () => {
    expect(doseAdvice(planApplication(QUIET))).toEqual([]);
    expect(doseAdvice(planApplication(TWO_PRODUCTS))).toEqual([]);
  });

  it("names each dose once, the products of a job one by one", () => {
    const pots: BatchInput = {
      ...SPOT,
      size: { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") },
      split: "equal",
      products: [
        { ...A, rate: qty(1, "mL/100gal") },
        { name: "Product B", form: "liquid", rate: qty(2, "mL/100gal") },
      ],
    };
    expect(doseAdvice(planApplication(pots)).map(({ load, product }) => [load, product])).toEqual([
      [1, "Product A"],
      [1, "Product B"],
    ]);
    const [dose] = doseAdvice(planApplication(DOUBTFUL));
    expect(dose?.product).toBe("Product B");
  });

  it("has a powder weighed that the spoons are too coarse for, and no syringe for it", () => {
    // 0.25 oz/gal x 0.25 gal: 0.0625 oz, 1.77 g, which fills 0.75 teaspoon at 4 lb/gal; the spoon holds 1.
    const powder: BatchInput = {
      size: { kind: "volume", volume: qty(0.25, "gal") },
      sprayer: { tank: qty(1, "gal") },
      products: [
        { name: "Product B", form: "dry", rate: qty(0.25, "oz/gal"), bulkDensity: qty(4, "lb/gal") },
      ],
      tools: [{ name: "teaspoon", capacity: qty(1, "tsp") }],
    };
    const said = messages(powder);
    expect(said).toContain("Use this tool as well: 0.01 g scale.");
    expect(said.join()).not.toContain("syringe");
  });

  it("names a larger tool for a long count, and a stock where the label permits one", () => {
    const many = { ...SPOT, tools: [{ name: "spoon", capacity: qty(0.3, "tsp") }] };
    expect(messages(many)).toEqual(["Use this tool as well: tablespoon."]);
    const stock = {
      ...SPOT,
      tools: "us-spoons" as const,
      products: [{ ...A, rate: qty(0.17, "mL/gal"), labelPermitsDilution: true }],
    };
    const [advice] = doseAdvice(planApplication(stock));
    const found = advice?.suggestions.find(({ kind }) => kind === "stock");
    // How much of the stock is the dose: without it, a person would take the dose of the product.
    expect(found?.message).toMatch(
      /^Dilute it first: put .* of product in a measure, .* Your dose is .* of that\.$/,
    );
  });
});
