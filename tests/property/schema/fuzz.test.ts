import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../../src/errors.ts";
import { planApplication } from "../../../src/plan/index.ts";
import { parsePlanInput } from "../../../src/schema/index.ts";
import { asText, JOBS, NEARLY_RIGHT } from "../../helpers/plan-inputs.ts";
import { runs } from "../../helpers/runs.ts";

/** What `work` gives, or the library's own error; any other error is a failure. */
function outcome<T>(work: () => T): { ok: true; value: T } | { ok: false; error: SprayMathError } {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    if (!(error instanceof SprayMathError)) throw error;
    return { ok: false, error };
  }
}

/** The tally of what a run met, so that a fuzz which only ever fails to parse does not pass for one that plans. */
interface Tally {
  parsed: number;
  planned: number;
  refused: number;
}

function tryOut(value: unknown, tally: Tally): void {
  const parsed = outcome(() => parsePlanInput(value));
  if (parsed.ok) {
    tally.parsed++;
    if (outcome(() => planApplication(parsed.value)).ok) tally.planned++;
    return;
  }
  tally.refused++;
  const { error } = parsed;
  expect(error.issues.length).toBeGreaterThan(0);
  expect(error.path).toBe(error.issues[0]?.path);
  for (const { code, path, message } of error.issues) {
    expect(typeof path).toBe("string");
    expect(code).toMatch(/^[a-z-]+$/);
    expect(message).toMatch(/\S/);
    // zod's own words would say that a rule was forgotten.
    expect(message).not.toMatch(/Invalid input|not right here|undefined/);
  }
  // Only a value that is no object at all has no place in it to name.
  if (typeof value === "object" && value !== null && !Array.isArray(value)) expect(error.path).not.toBe("");
}

describe("parsePlanInput and planApplication together", () => {
  it("never throw anything but SprayMathError on nearly right jobs, and many of these plan", () => {
    const tally: Tally = { parsed: 0, planned: 0, refused: 0 };
    fc.assert(
      fc.property(NEARLY_RIGHT, (value) => tryOut(JSON.parse(JSON.stringify(value) ?? "null"), tally)),
      runs(2000),
    );
    if (process.env.TALLY) console.log(tally);
    const tried = tally.parsed + tally.refused;
    for (const count of Object.values(tally)) expect(count).toBeGreaterThan(tried / 20);
  });

  it("never throw anything but SprayMathError on any JSON value", () => {
    const tally: Tally = { parsed: 0, planned: 0, refused: 0 };
    fc.assert(
      fc.property(fc.jsonValue(), (value) => tryOut(value, tally)),
      runs(2000),
    );
    expect(tally).toMatchObject({ parsed: 0, planned: 0 });
  });
});

describe("parsePlanInput on jobs that are right", () => {
  it("gives back the very same job, told in objects", () => {
    fc.assert(
      fc.property(JOBS, (job) => {
        expect(parsePlanInput(JSON.parse(JSON.stringify(job)))).toEqual(job);
      }),
    );
  });

  it("gives the same job told in words, and the same again when its result is parsed", () => {
    fc.assert(
      fc.property(JOBS, (job) => {
        const read = parsePlanInput(asText(job));
        expect(read).toEqual(job);
        expect(parsePlanInput(read)).toEqual(read);
      }),
    );
  });
});
