import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ENGLISH, worksheet } from "../../../src/worksheet/index.ts";
import { expectPrintedTrue, numberReader } from "../../helpers/printed-lines.ts";
import { randomPlan } from "../../helpers/random-jobs.ts";
import { runs } from "../../helpers/runs.ts";

describe("the printed working", () => {
  it("is true, read back from the printed text, for random plans in any system of units", () => {
    const read = numberReader("en-US");
    const anySystem = fc.constantFrom("us", "metric", "imperial");
    let lines = 0;
    fc.assert(
      fc.property(randomPlan, anySystem, (plan, units) => {
        for (const step of worksheet(plan, { units }).steps) {
          for (const line of step.lines) {
            expectPrintedTrue(line, { read, digits: 6, functions: ENGLISH.functions });
            lines++;
          }
        }
      }),
      runs(1000),
    );
    expect(lines).toBeGreaterThan(20 * runs(1000).numRuns);
  });
});
