import { describe, expect, it } from "vitest";
import { planApplication } from "../../../src/plan/index.ts";
import { parsePlanInput } from "../../../src/schema/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";

// That the work grows with their number and no faster is counted in tests/unit/schema/hostile.test.ts.
describe("a job of very many plots", () => {
  it("is read, and planned, with a million of them", { timeout: 120_000 }, () => {
    const plot = { kind: "rectangle", length: { value: 10, unit: "cm" }, width: { value: 10, unit: "cm" } };
    const plots = Array.from({ length: 1_000_000 }, () => plot);
    const job = parsePlanInput({ ...TWO_PRODUCTS, plot: plots });
    // A million squares of 10 cm are a hectare.
    expect(planApplication(job).area.treated.value).toBeCloseTo(10_000, 5);
  });

  it("has all faults of a quarter million told", { timeout: 60_000 }, () => {
    const plots = Array.from({ length: 250_000 }, () => ({ kind: "circle", diameter: 5 }));
    const error = errorOf(() => parsePlanInput({ ...TWO_PRODUCTS, plot: plots }));
    expect(error.issues).toHaveLength(250_000);
    expect(error.issues.at(-1)?.path).toBe("plot[249999].diameter");
  });
});
