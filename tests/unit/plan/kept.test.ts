import { describe, expect, it } from "vitest";
import {
  CAUTIONS,
  MOST_RATES,
  type PlanInput,
  planApplication,
  THRESHOLDS,
} from "../../../src/plan/index.ts";
import { FORMULATIONS, MIXING_STEPS } from "../../../src/tank-mix/index.ts";
import { TWO_PRODUCTS } from "../../helpers/jobs.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("what was planned", () => {
  it("stays as planned, whatever the caller does with the input afterwards", () => {
    const tools = [{ name: "cup", capacity: { value: 8, unit: "fl_oz" } }];
    const input = JSON.parse(JSON.stringify({ ...TWO_PRODUCTS, tools }));
    const plan = planApplication(input as PlanInput);
    const before = JSON.stringify(plan);
    input.plot.rows = 99;
    input.calibration.used.value = 1;
    input.sprayer.tank.value = 1;
    input.products[0].rate.value = 1;
    input.products[0].reEntryHours = 0;
    input.tools[0].capacity.value = 1;
    input.reserve.percent = 99;
    expect(JSON.stringify(plan)).toBe(before);
  });

  it("is not changed by a plan, and an input that holds itself is refused", () => {
    const input = JSON.parse(JSON.stringify(TWO_PRODUCTS));
    const before = JSON.stringify(input);
    planApplication(input as PlanInput);
    expect(JSON.stringify(input)).toBe(before);
    input.plot.self = input;
    expectRefused(() => planApplication(input as PlanInput), "unknown-field", "plot.self");
  });

  it("goes by tables that nobody can change, at any depth", () => {
    const isFrozen = (value: unknown): boolean =>
      typeof value !== "object" ||
      value === null ||
      (Object.isFrozen(value) && Object.values(value).every(isFrozen));
    for (const table of [CAUTIONS, THRESHOLDS, MOST_RATES, FORMULATIONS, MIXING_STEPS])
      expect(isFrozen(table)).toBe(true);
    expect(() => {
      (MOST_RATES.broadcast.value as { value: number }).value = 1e9;
    }).toThrow(TypeError);
  });
});
