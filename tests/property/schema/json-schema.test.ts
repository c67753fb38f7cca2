import Ajv2020 from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../../src/errors.ts";
import { parsePlanInput, planInputSchema, toJsonSchema } from "../../../src/schema/index.ts";
import { NEARLY_RIGHT } from "../../helpers/plan-inputs.ts";
import { runs } from "../../helpers/runs.ts";

const accepts = new Ajv2020({ validateFormats: false }).compile(toJsonSchema(planInputSchema()) as object);

function faultsOf(value: unknown): SprayMathError["issues"] {
  try {
    parsePlanInput(value);
    return [];
  } catch (error) {
    if (error instanceof SprayMathError) return error.issues;
    throw error;
  }
}

function at(value: unknown, path: string): unknown {
  const steps = path.match(/[^.[\]]+/g) ?? [];
  return steps.reduce<unknown>(
    (inner, step) => (inner as Record<string, unknown> | undefined)?.[step],
    value,
  );
}

/** The rules that JSON Schema cannot tell, as the documentation of `toJsonSchema` lists them. */
function beyondJsonSchema(value: unknown, { path, message }: SprayMathError["issues"][number]): boolean {
  // Text must read as a quantity of the right dimension and range, or as a day that exists.
  if (typeof at(value, path) === "string") return true;
  // A rate must go with its product's form.
  if (/^products\[\d+\]\.(rate|label\.(min|max))\b/.test(path)) return true;
  // The marks of a tool must lie within it.
  if (/^tools\[\d+\](\.(graduation|least))?/.test(path)) return true;
  // A number must not be so large or small that it cannot be converted.
  return /too (large|small) to compute with/.test(message);
}

describe("the JSON Schema and zod", () => {
  it("agree on right and wrong jobs, but for the rules that JSON Schema cannot tell", () => {
    const tally = { both: 0, neither: 0, beyond: 0 };
    fc.assert(
      fc.property(fc.oneof({ weight: 9, arbitrary: NEARLY_RIGHT }, fc.jsonValue()), (given) => {
        const value: unknown = JSON.parse(JSON.stringify(given) ?? "null");
        const faults = faultsOf(value);
        const valid = accepts(value);
        if (faults.length === 0) {
          expect(valid, JSON.stringify(accepts.errors)).toBe(true);
          tally.both++;
        } else if (valid) {
          const others = faults.filter((fault) => !beyondJsonSchema(value, fault));
          expect(others).toEqual([]);
          tally.beyond++;
        } else tally.neither++;
      }),
      runs(2000),
    );
    const tried = tally.both + tally.neither + tally.beyond;
    expect(tally.both).toBeGreaterThan(tried / 10);
    expect(tally.neither).toBeGreaterThan(tried / 4);
    // The rules that cannot be told are the exception.
    expect(tally.beyond).toBeLessThan(tried / 10);
  });
});
