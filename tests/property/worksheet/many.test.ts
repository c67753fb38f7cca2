import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { renderText, worksheet } from "../../../src/worksheet/index.ts";
import { runs } from "../../helpers/runs.ts";

const PLOTS = runs(20_000).numRuns;

describe("the worksheet of very many plots", () => {
  it("takes them all", () => {
    const treated = { ...qty(20, "ft2"), of: "treated" } as const;
    const many = planApplication({
      plot: Array.from({ length: PLOTS }, () => ({ kind: "treated-area", treated }) as const),
      calibration: { kind: "known", rate: qty(20, "gal/ac") },
      sprayer: { tank: qty(60, "gal") },
      products: [{ name: "Product A", form: "liquid", rate: qty(1, "pt/ac") }],
      tools: "us-household",
    });
    for (const units of ["us", "metric"] as const) {
      const [step] = worksheet(many, { units }).steps;
      expect(Object.keys(step?.lines.at(-1)?.terms ?? {})).toHaveLength(PLOTS);
    }
    expect(renderText(worksheet(many)).length).toBeGreaterThan(10 * PLOTS);
  });
});
