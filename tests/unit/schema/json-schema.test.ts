import Ajv from "ajv";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import {
  calibrationRecordSchema,
  type JsonSchema,
  planInputSchema,
  quantitySchema,
  toJsonSchema,
} from "../../../src/schema/index.ts";

type Node = Record<string, unknown>;

/** Every schema inside a JSON Schema, with the place it stands in. */
function* parts(node: unknown, place = "#"): Generator<[string, Node]> {
  if (typeof node !== "object" || node === null) return;
  if (!Array.isArray(node)) yield [place, node as Node];
  for (const [key, inner] of Object.entries(node)) yield* parts(inner, `${place}/${key}`);
}

describe.each<[string, JsonSchema]>([
  ["a job", toJsonSchema(planInputSchema())],
  ["a calibration record", toJsonSchema(calibrationRecordSchema())],
  ["a quantity", toJsonSchema(quantitySchema("volumeRate"))],
])("the JSON Schema of %s", (_, json) => {
  it("is valid by the meta-schemas of draft-07 and 2020-12, and strict validators find nothing odd in it", () => {
    expect(json).not.toHaveProperty("$schema");
    for (const ajv of [new Ajv({ strict: true }), new Ajv2020({ strict: true })]) {
      expect(ajv.validateSchema(json as object), JSON.stringify(ajv.errors)).toBe(true);
      expect(() => ajv.compile(json as object)).not.toThrow();
    }
  });

  it("is plain data, new each time, and refers to its own parts only", () => {
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    const names = Object.keys((json.$defs as object) ?? {});
    for (const [place, { $ref }] of parts(json)) {
      if ($ref !== undefined) expect(names, place).toContain(String($ref).replace("#/$defs/", ""));
    }
    for (const name of names) expect(name).toMatch(/^[A-Z][A-Za-z]+$/);
  });
});

describe("the JSON Schema of a job", () => {
  const json = toJsonSchema(planInputSchema());

  it("describes every field but the kinds that tell things apart, and titles every part", () => {
    const silent: string[] = [];
    for (const [place, { properties }] of parts(json)) {
      if (properties === undefined || /\/properties$/.test(place)) continue;
      for (const [name, field] of Object.entries(properties as Record<string, Node>)) {
        const told =
          (field as unknown) === false || field.description !== undefined || field.const !== undefined;
        if (!told && !/^(value|unit|of|basis|resolution|uncertainty)$/.test(name))
          silent.push(`${place}/${name}`);
      }
    }
    expect(silent).toEqual([]);
    for (const [name, part] of Object.entries(json.$defs as Record<string, Node>)) {
      expect(part.title).toBe(name);
      expect(part.description, name).toMatch(/\.$/);
    }
  });

  it("is told anew to everybody who asks", () => {
    (json.$defs as Node).Length = {};
    expect((toJsonSchema(planInputSchema()).$defs as Node).Length).not.toEqual({});
  });
});
