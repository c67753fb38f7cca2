import fc from "fast-check";
import { isSprayMathError } from "../../src/errors.ts";
import { planApplication } from "../../src/plan/index.ts";
import { parsePlanInput } from "../../src/schema/index.ts";
import { JOBS, NEARLY_RIGHT } from "../helpers/plan-inputs.ts";

/** Right jobs and nearly right ones, as a program may send them: an object each. */
export function jobs(count: number): unknown[] {
  const objects = NEARLY_RIGHT.filter((job) => typeof job === "object" && job !== null);
  return fc.sample(fc.oneof(JOBS, objects), count);
}

/** What a server should answer. */
export function verdict(job: unknown): { status: number; body?: unknown } {
  try {
    return { status: 200, body: JSON.parse(JSON.stringify(planApplication(parsePlanInput(job)))) };
  } catch (error) {
    if (isSprayMathError(error)) return { status: 400 };
    throw error;
  }
}
