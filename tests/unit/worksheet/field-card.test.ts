import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { fieldCard, renderMarkdown, renderText, worksheet } from "../../../src/worksheet/index.ts";
import { DOUBTFUL, TWO_PRODUCTS } from "../../helpers/jobs.ts";

const plan = planApplication(TWO_PRODUCTS);
const card = fieldCard(plan);

describe("a field card", () => {
  it("goes load by load: half the water, the products, water to the mark, spraying", () => {
    expect(card.loads.map(({ title }) => title)).toEqual(["Load 1 of 2", "Load 2 of 2"]);
    const [first] = card.loads;
    expect(first?.steps).toEqual([
      "Add about 1.7 gal of clean water and start agitating (backpack: close and shake).",
      "Product B: 1.088 oz wt. Measure 30.8 g on the 200 g scale (0.23% under).",
      "Product A: 2.17 fl oz. Measure 4 tablespoons + 1 teaspoon (0.52% under).",
      "Top up with water to 3.5 gal (total water 3.483 gal).",
      "Spray. This load covers 3,953 sq ft (about 10 rows).",
    ]);
  });

  it("pours in the plan's order of mixing, and says so", () => {
    expect(plan.mixingOrder).toEqual(["Product B", "Product A"]);
    for (const { steps } of card.loads) {
      expect(steps.findIndex((step) => step.startsWith("Product B"))).toBeLessThan(
        steps.findIndex((step) => step.startsWith("Product A")),
      );
    }
    expect(card.order.at(-1)).toContain("Product B, Product A");
  });

  it("keeps to the order of the job where the order of mixing is not known", () => {
    const products = TWO_PRODUCTS.products.map(({ formulation: _, ...product }) => product);
    const plain = fieldCard(planApplication({ ...TWO_PRODUCTS, products }));
    expect(plain.loads[0]?.steps[1]).toMatch(/^Product A/);
    expect(plain.order).toHaveLength(1);
  });

  it("says that the label's own order takes precedence", () => {
    expect(card.order[0]).toBe(
      "Half the water first, then the products, then top up to the mark, unless the label says otherwise.",
    );
  });

  it("asks for half of the water, however much of the load is product", () => {
    const thick = planApplication({
      plot: { kind: "treated-area", treated: { ...qty(0.1, "ha"), of: "treated" } },
      calibration: { kind: "known", rate: qty(100, "L/ha") },
      sprayer: { tank: qty(10, "L") },
      products: [{ name: "Product A", form: "liquid", rate: qty(80, "L/ha") }],
      tools: "cylinders",
    });
    const [load] = fieldCard(thick).loads;
    expect(load?.steps[0]).toContain("about 1 L");
    expect(load?.steps.at(-2)).toContain("total water 2 L");
  });

  it("has refusals and warnings on top, the gravest first, and leaves notes to the worksheet", () => {
    const doubtful = planApplication(DOUBTFUL);
    const severities = fieldCard(doubtful).warnings.map(({ severity }) => severity);
    expect(severities).toContain("refusal");
    expect(severities).toContain("warning");
    expect(severities).not.toContain("note");
    expect(severities.lastIndexOf("refusal")).toBeLessThan(severities.indexOf("warning"));
    expect(worksheet(doubtful).warnings.map(({ severity }) => severity)).toContain("note");
  });

  it("gives no mixing steps for what is not to be sprayed", () => {
    const refused = fieldCard(planApplication(DOUBTFUL));
    expect(refused.loads).toEqual([]);
    expect(refused.order).toEqual(["Do not mix. See the warning at the top."]);
    const text = renderText(refused);
    expect(text.indexOf("Do not spray")).toBeLessThan(text.indexOf("Do not mix"));
    expect(text).not.toContain("[ ]");
  });

  it("does not give a dose that cannot be measured as if it could", () => {
    const [first, other] = DOUBTFUL.products as [
      (typeof DOUBTFUL.products)[number],
      (typeof DOUBTFUL.products)[number],
    ];
    const { label: _, ...unlimited } = first;
    const allowed = planApplication({ ...DOUBTFUL, products: [unlimited, other] });
    const [, second] = fieldCard(allowed).loads[0]?.steps.slice(1, 3) ?? [];
    expect(second).toMatch(/^Product B: .* mL\. Can't be measured with these tools\./);
    expect(second).not.toMatch(/Measure /);
  });

  it("has a box for every step, and every caution", () => {
    const steps = card.loads.flatMap((load) => load.steps).length;
    expect(renderText(card).match(/^\[ \] /gm)).toHaveLength(steps);
    expect(renderMarkdown(card).match(/^- \[ \] /gm)).toHaveLength(steps);
    expect(card.cautions).toEqual(plan.cautions.map(({ message }) => message));
  });

  it("is printed in another system of units, with the tools as they are", () => {
    const [load] = fieldCard(plan, { units: "metric" }).loads;
    expect(load?.steps[2]).toBe("Product A: 64.4 mL. Measure 4 tablespoons + 1 teaspoon (0.52% under).");
    expect(load?.steps[3]).toContain("to 13.25 L");
  });
});
