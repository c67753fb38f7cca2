import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { parsePlanInput } from "../../../src/schema/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { runs } from "../../helpers/runs.ts";

const SQUARES = runs(100_000).numRuns;

// That the work grows with their number and no faster is counted in tests/unit/schema/hostile.test.ts.
describe("a job of very many plots", () => {
  it("is read, and planned", { timeout: 120_000 }, () => {
    const plot = { kind: "rectangle", length: { value: 10, unit: "cm" }, width: { value: 10, unit: "cm" } };
    const plots = Array.from({ length: SQUARES }, () => plot);
    const job = parsePlanInput({ ...TWO_PRODUCTS, plot: plots });
    // A hundred squares of 10 cm are a square meter.
    expect(planApplication(job).area.treated.value).toBeCloseTo(SQUARES / 100, 5);
  });

  it("is refused with its first thousand faults, however many there are", () => {
    const plots = Array.from({ length: SQUARES }, () => ({ kind: "circle", diameter: 5 }));
    const error = errorOf(() => parsePlanInput({ ...TWO_PRODUCTS, plot: plots }));
    expect(error.issues).toHaveLength(1000);
    expect(error.issues.at(-1)?.path).toBe("plot[999].diameter");
  });
});
