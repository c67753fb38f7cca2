import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../../src/errors.ts";
import { PLAN_INPUT } from "../../../src/plan/input.ts";
import { parsePlanInput, planInputSchema, toJsonSchema } from "../../../src/schema/index.ts";
import { FASTIFY, NOT_TURNED, STRICT } from "../../helpers/ajv.ts";
import { beyondJsonSchema, faultsIn, withoutAgreements } from "../../helpers/from-lists.ts";
import { NEARLY_RIGHT } from "../../helpers/plan-inputs.ts";
import { runs } from "../../helpers/runs.ts";

const json = toJsonSchema(planInputSchema()) as object;
/** As they are, and as Fastify has them: its validator then changes what it is given. */
const asSent = [STRICT(json), NOT_TURNED(json)] as const;
const asTurned = FASTIFY(json);

function faultsOf(value: unknown): SprayMathError["issues"] {
  try {
    parsePlanInput(value);
    return [];
  } catch (error) {
    if (error instanceof SprayMathError) return error.issues;
    throw error;
  }
}

/** The list of a job's fields without what JSON Schema has no word for: what texts say, and what fields have to do with one another. */
const bare = withoutAgreements(PLAN_INPUT);

/** The faults of a job that JSON Schema has a word for. */
const plainFaults = (value: unknown) => faultsIn(value, bare).filter(({ key }) => !beyondJsonSchema(key));

describe("the JSON Schema and the library", () => {
  it("agree on right and wrong jobs, but for the rules that JSON Schema cannot tell", () => {
    const tally = { both: 0, neither: 0, beyond: 0 };
    fc.assert(
      fc.property(fc.oneof({ weight: 9, arbitrary: NEARLY_RIGHT }, fc.jsonValue()), (given) => {
        const text = JSON.stringify(given) ?? "null";
        const value: unknown = JSON.parse(text);
        const faults = faultsOf(value);
        const [valid, ...others] = asSent.map((accepts) => {
          const sent: unknown = JSON.parse(text);
          const verdict = accepts(sent);
          // Nothing is taken out, put in or turned into something else.
          expect(JSON.stringify(sent)).toBe(text);
          if (faults.length === 0) expect(verdict, JSON.stringify(accepts.errors)).toBe(true);
          return verdict;
        });
        expect(others).toEqual(others.map(() => valid));
        if (faults.length === 0) tally.both++;
        else if (valid) {
          expect(plainFaults(value)).toEqual([]);
          tally.beyond++;
        } else {
          // What is refused has such a fault, or the library would have to say so too.
          expect(faultsIn(value, bare).length, text).toBeGreaterThan(0);
          tally.neither++;
        }
      }),
      runs(100_000, 1000),
    );
    const tried = tally.both + tally.neither + tally.beyond;
    expect(tally.both).toBeGreaterThan(tried / 10);
    expect(tally.neither).toBeGreaterThan(tried / 4);
    // The rules that cannot be told are the exception.
    expect(tally.beyond).toBeLessThan(tried / 10);
  });

  it("agree where a validator turns values into other types first, but for values that it made right", () => {
    const tally = { right: 0, wrong: 0, turned: 0 };
    fc.assert(
      fc.property(NEARLY_RIGHT, (given) => {
        const text = JSON.stringify(given) ?? "null";
        const value: unknown = JSON.parse(text);
        const faults = faultsOf(value);
        const turned: unknown = JSON.parse(text);
        const valid = asTurned(turned);
        if (!valid) {
          expect(faults.length, JSON.stringify(asTurned.errors)).toBeGreaterThan(0);
          tally.wrong++;
          return;
        }
        const changes = changesOf(value, turned);
        // No null and no yes or no becomes a number; what else is turned reads the same. (A list of one is taken for the one.)
        for (const [was, is] of changes.filter(([one]) => !Array.isArray(one))) {
          expect(typeof is === "number" && typeof was !== "string", JSON.stringify([was, is])).toBe(false);
          expect(String(is)).toBe(typeof is === "number" ? String(Number(was)) : String(was));
        }
        if (faults.length === 0) {
          // Whoever reads it reads the same job.
          expect(parsePlanInput(turned)).toEqual(parsePlanInput(value));
          tally.right++;
        } else if (changes.length > 0) tally.turned++;
        // A list of a list of one passes for the one and is left as it is, whatever the schema says of lists: only the library sees it.
        else expect(plainFaults(value).filter(({ path }) => !holdsListOfList(value, path))).toEqual([]);
      }),
      runs(100_000, 300),
    );
    expect(tally.right).toBeGreaterThan(0);
    expect(tally.wrong).toBeGreaterThan(tally.right);
    expect(tally.turned).toBeLessThan((tally.right + tally.wrong + tally.turned) / 10);
  });
});

/** Whether the value at a path such as `products[0].label.daysBetween` is a list of one list. */
function holdsListOfList(tree: unknown, path: string): boolean {
  const keys = path.match(/[^.[\]]+/g) ?? [];
  const value = keys.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], tree);
  return Array.isArray(value) && value.length === 1 && Array.isArray(value[0]);
}

/** The values that differ between two trees of one shape, each before and after. */
function changesOf(before: unknown, after: unknown): (readonly [unknown, unknown])[] {
  const isTree = (one: unknown): one is object => typeof one === "object" && one !== null;
  if (!isTree(before) || !isTree(after) || Array.isArray(before) !== Array.isArray(after))
    return before === after ? [] : [[before, after]];
  expect(Object.keys(after)).toEqual(Object.keys(before));
  return Object.keys(before).flatMap((key) =>
    changesOf((before as Record<string, unknown>)[key], (after as Record<string, unknown>)[key]),
  );
}
