import Ajv from "ajv";
import { describe, expect, it } from "vitest";
import {
  batchInputSchema,
  calibrationRecordSchema,
  type JsonSchema,
  planInputSchema,
  quantitySchema,
  spreadingInputSchema,
  toJsonSchema,
} from "../../../src/schema/index.ts";
import { FASTIFY, NOT_TURNED, STRICT } from "../../helpers/ajv.ts";

type Node = Record<string, unknown>;

/** Every schema inside a JSON Schema, with the place it stands in. */
function* parts(node: unknown, place = "#"): Generator<[string, Node]> {
  if (typeof node !== "object" || node === null) return;
  if (!Array.isArray(node)) yield [place, node as Node];
  for (const [key, inner] of Object.entries(node)) yield* parts(inner, `${place}/${key}`);
}

describe.each<[string, JsonSchema]>([
  ["a job", toJsonSchema(planInputSchema())],
  ["a job by volume, count or row", toJsonSchema(batchInputSchema())],
  ["a job of granules", toJsonSchema(spreadingInputSchema())],
  ["a calibration record", toJsonSchema(calibrationRecordSchema())],
  ["a quantity", toJsonSchema(quantitySchema("volumeRate"))],
])("the JSON Schema of %s", (_, json) => {
  it("is valid by the meta-schemas of draft-07 and 2020-12, and strict validators find nothing odd in it", () => {
    expect(json).not.toHaveProperty("$schema");
    new Ajv({ strict: true }).compile(json);
    for (const compiled of [FASTIFY, NOT_TURNED, STRICT]) expect(() => compiled(json)).not.toThrow();
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

describe.each([
  ["a job", planInputSchema()],
  ["a job by volume, count or row", batchInputSchema()],
  ["a job of granules", spreadingInputSchema()],
])("the parts of the JSON Schema of %s", (_, schema) => {
  const json = toJsonSchema(schema);

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
});

describe("the JSON Schema of a job", () => {
  const json = toJsonSchema(planInputSchema());
  const sentence = "A whole spray job, as a form collects it.";

  it("says what it is, and describes a measurement once where a job and a record may have one", () => {
    expect(json).toMatchObject({ title: "PlanInput", description: sentence });
    const parts = json.$defs as Record<string, { allOf: { then: Node }[] }>;
    const refsOf = (name: string) => parts[name]?.allOf.map(({ then }) => then.$ref);
    expect(refsOf("Measurement")).not.toContain(undefined);
    expect(refsOf("Calibration")).toEqual([...(refsOf("Measurement") ?? []), undefined]);
  });

  const right = {
    plot: { kind: "trapezoid", base: "40 ft", top: { value: 30, unit: "ft" }, height: "20 ft" },
    calibration: { kind: "known", rate: "20 gal/ac" },
    sprayer: { tank: "4 gal", workingFill: null },
    products: [{ name: "Product A", form: "liquid", rate: "1 pt/ac" }],
    currency: { code: "USD" },
    tools: "us-spoons",
  };
  const withPlot = (plot: object) => ({ ...right, plot: { ...right.plot, ...plot } });

  describe.each([
    ["Fastify's validator as it is", FASTIFY(json)],
    ["Fastify's validator with values left as they are", NOT_TURNED(json)],
    ["a strict validator of the current draft", STRICT(json)],
  ])("in %s", (_, accepts) => {
    it("accepts a right job and leaves it as it was sent", () => {
      const sent = structuredClone(right);
      expect(accepts(sent), JSON.stringify(accepts.errors)).toBe(true);
      expect(sent).toEqual(right);
    });

    it.each<[wrong: string, job: object, place: string]>([
      ["a misspelled limit", { ...right, sprayer: { tank: "4 gal", workingFil: "3 gal" } }, "/sprayer"],
      ["a side that is missing", withPlot({ base: undefined }), "/plot"],
      ["a side of another kind", withPlot({ width: "3 ft" }), "/plot"],
      ["a kind that there isn't", withPlot({ kind: "trapeze" }), "/plot"],
      ["NaN, which JSON writes as null", withPlot({ top: { value: Number.NaN, unit: "ft" } }), "/plot/top"],
      ["a number without its unit", withPlot({ top: 30 }), "/plot/top"],
      ["a number without its unit, as text", withPlot({ top: "30" }), "/plot/top"],
    ])("refuses %s at its place, and names nothing else", (_name, job, place) => {
      const sent = JSON.parse(JSON.stringify(job));
      expect(accepts(sent)).toBe(false);
      for (const { instancePath } of accepts.errors ?? [])
        expect(place.startsWith(instancePath) || instancePath.startsWith(place), instancePath).toBe(true);
      expect(Object.keys(sent)).toEqual(Object.keys(job));
    });
  });

  it("is told anew to everybody who asks", () => {
    (json.$defs as Node).Length = {};
    expect((toJsonSchema(planInputSchema()).$defs as Node).Length).not.toEqual({});
  });
});
