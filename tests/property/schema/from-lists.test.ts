import { readdirSync } from "node:fs";
import Ajv from "ajv";
import Ajv2020 from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toJsonSchema } from "../../../src/schema/json-schema.ts";
import { schemaOf } from "../../../src/schema/zod.ts";
import { Field } from "../../../src/units/check.ts";
import { beyondJsonSchema, faultsIn, nearlyRightBy, withoutAgreements } from "../../helpers/from-lists.ts";
import { THING } from "../../helpers/lists.ts";
import { runs } from "../../helpers/runs.ts";

/** Every list of what is sprayed, and the one that has a field of every kind. */
const LISTS = new Map<Field<unknown>, string>([[THING, "a thing"]]);
for (const folder of ["area", "swath", "output-rate", "tank-mix", "household", "plan"])
  for (const file of readdirSync(`src/${folder}`, { recursive: true, encoding: "utf8" })) {
    // A saved plan is what the library itself made, and is checked as that.
    if (!file.endsWith(".ts") || file === "read-plan.ts") continue;
    const exported: Record<string, unknown> = await import(`../../../src/${folder}/${file}`);
    for (const [name, list] of Object.entries(exported))
      if (list instanceof Field && !list.optional && !LISTS.has(list)) LISTS.set(list, `${file} ${name}`);
  }

describe.each([...LISTS].map(([list, name]) => [name, list] as const))(
  "the JSON Schema of %s",
  (name, list) => {
    const json = toJsonSchema(schemaOf(list)) as object;
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
          if (faults.length > 0 && faults.every(({ key }) => beyondJsonSchema(key))) return;
          for (const [draft, accepts] of validators)
            expect(accepts(value), `${draft} ${JSON.stringify([value, faults, accepts.errors])}`).toBe(
              faults.length === 0,
            );
          tally[faults.length === 0 ? "right" : "wrong"]++;
        }),
        runs(list === THING ? 3000 : 1000),
      );
      expect(tally.right, name).toBeGreaterThan(0);
      expect(tally.wrong, name).toBeGreaterThan((tally.right + tally.wrong) / 10);
    });
  },
);
