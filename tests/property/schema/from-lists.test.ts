import Ajv from "ajv";
import Ajv2020 from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toJsonSchema } from "../../../src/schema/new-json-schema.ts";
import type { Field } from "../../../src/units/check.ts";
import { faultsIn, nearlyRightBy, withoutAgreements } from "../../helpers/from-lists.ts";
import { THING } from "../../helpers/lists.ts";
import { runs } from "../../helpers/runs.ts";

const LISTS: readonly (readonly [string, Field<unknown>])[] = [["a thing", THING]];

/** What JSON Schema has no word for, and no change of a field list: a day that is none, a number next to nothing. */
const beyond = (key: string): boolean => /^(enter-date|date.*|too-small)$/.test(key);

describe.each(LISTS)("the JSON Schema of %s", (_, list) => {
  const json = toJsonSchema(list) as object;
  const validators = [
    ["draft-07", new Ajv({ strict: true }).compile(json)],
    ["2020-12", new Ajv2020({ strict: true }).compile(json)],
  ] as const;

  it("accepts what the list accepts, and nothing else", () => {
    const bare = withoutAgreements(list);
    const tally = { right: 0, wrong: 0 };
    fc.assert(
      fc.property(nearlyRightBy(list), (value) => {
        const faults = faultsIn(value, bare);
        if (faults.length > 0 && faults.every(({ key }) => beyond(key))) return;
        for (const [draft, accepts] of validators)
          expect(accepts(value), `${draft} ${JSON.stringify([value, faults, accepts.errors])}`).toBe(
            faults.length === 0,
          );
        tally[faults.length === 0 ? "right" : "wrong"]++;
      }),
      runs(3000),
    );
    expect(tally.right).toBeGreaterThan((tally.right + tally.wrong) / 10);
    expect(tally.wrong).toBeGreaterThan((tally.right + tally.wrong) / 3);
  });
});
