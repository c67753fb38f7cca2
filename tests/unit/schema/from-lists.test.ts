import Ajv from "ajv";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import * as z from "zod";
import * as mini from "zod/mini";
import { toJsonSchema } from "../../../src/schema/json-schema.ts";
import { checkedOptions, readBy } from "../../../src/schema/reading.ts";
import { schemaOf } from "../../../src/schema/zod.ts";
import { type Limits, list, named, number, object, text, tuple } from "../../../src/units/fields.ts";
import { QuantityField } from "../../../src/units/quantity-field.ts";
import type { Quantity } from "../../../src/units/types.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { FULL, THING } from "../../helpers/lists.ts";

const read = (value: unknown, options = {}) => readBy(THING, value, checkedOptions(options));
const faults = (value: unknown, options = {}): string[] =>
  errorOf(() => read(value, options)).issues.map(({ code, path }) => `${code} ${path}`);

const TYPED = {
  name: "Plot A",
  rows: "1,400",
  color: "red",
  width: "30 in",
  strength: "1 % v/v",
  shape: { kind: "circle", diameter: "5'" },
  spare: { percent: "2 1/2" },
};

describe("a field list read with text", () => {
  it("takes quantities and numbers as people type them", () => {
    expect(read(TYPED)).toEqual({
      name: "Plot A",
      rows: 1400,
      color: "red",
      width: { value: 30, unit: "in" },
      strength: { value: 1, unit: "%", basis: "v/v" },
      shape: { kind: "circle", diameter: { value: 5, unit: "ft" } },
      spare: { percent: 2.5 },
    });
    expect(read({ ...TYPED, sides: "2" }).sides).toBe(2);
    expect(read({ ...TYPED, share: "", used: " ", tools: null })).toEqual(read(TYPED));
    expect(read(FULL)).toEqual(FULL);
    expect(read(FULL)).not.toBe(FULL);
  });

  it("in the locale, the system and the ounces of the options", () => {
    const { rows, used, lines } = read(
      { ...TYPED, rows: "1.400", used: "4,5 gal", lines: "2,5 oz" },
      { locale: "de", system: "imperial", ounce: "liquid" },
    );
    expect({ rows, used, lines }).toEqual({
      rows: 1400,
      used: { value: 4.5, unit: "imp_gal" },
      lines: { value: 2.5, unit: "imp_fl_oz" },
    });
  });

  it("finds every fault at once, each at the path of its field", () => {
    expect(
      faults({
        ...TYPED,
        name: "Rose",
        rows: "some",
        share: "2",
        color: "green",
        width: "30 gal",
        lines: "5 oz",
        used: " ",
        color2: "",
        colour: "red",
        corners: [[1, "2"], ["x", 1], [0]],
        shape: [{ kind: "block", length: "5 ft" }, { kind: "oval" }],
      }),
    ).toEqual([
      "unreadable rows",
      "out-of-range share",
      "wrong-dimension width",
      "ambiguous-unit lines",
      "unreadable corners[1][0]",
      "not-a-quantity corners[2]",
      "missing shape[0].width",
      "unknown-choice shape[1].kind",
      "unknown-field color2",
      "unknown-field colour",
      "conflict color",
    ]);
  });

  it("gives examples in the system of the options, else in that of what was given", () => {
    const message = (options: object, width: unknown): string =>
      errorOf(() => read({ ...TYPED, strength: undefined, shape: [FULL.shape[0]], used: 5, width }, options))
        .message;
    expect(message({}, "5 gal")).toContain("such as 5 ft");
    expect(message({ system: "metric" }, "5 L")).toContain("such as 5 m");
    expect(message({}, { value: 5, unit: "L" })).toContain("such as 5 m");
  });

  it("reads lb/sq in as the field needs it, and says so in the field's words where it is neither", () => {
    expect(errorOf(() => read({ ...TYPED, width: "5 lb/sq in" })).issues[0]).toMatchObject({
      code: "wrong-dimension",
      key: "dimension",
      path: "width",
      figures: { given: { value: 5, unit: "lb/in2" } },
    });
  });

  it.each<[object, string]>([
    [{ locale: "!" }, "unknown-choice options.locale"],
    [{ system: "roman" }, "unknown-choice options.system"],
    [{ ounce: "troy" }, "unknown-choice options.ounce"],
    [{ dimension: "length" }, "unknown-field options.dimension"],
  ])("refuses the options %j", (options, fault) => {
    const { code, path } = errorOf(() => checkedOptions(options as never));
    expect(`${code} ${path}`).toBe(fault);
  });
});

describe("the zod type of a field list", () => {
  it.each([
    ["zod", z.object({ note: z.string(), thing: schemaOf(THING) })],
    ["zod/mini", mini.object({ note: mini.string(), thing: schemaOf(THING) })],
  ])("stands in an object of %s, with every fault at its place", (_, whole) => {
    expect(whole.parse({ note: "x", thing: TYPED })).toEqual({ note: "x", thing: read(TYPED) });
    const { error } = whole.safeParse({ note: 5, thing: { ...TYPED, width: "4 gal", shape: [{}] } });
    expect(error?.issues.map(({ path }) => path)).toEqual([
      ["note"],
      ["thing", "width"],
      ["thing", "shape", 0, "kind"],
    ]);
    expect(error?.issues[1]).toEqual({
      code: "custom",
      path: ["thing", "width"],
      message: "4 gal is a volume. Enter a length, such as 5 ft.",
      params: {
        code: "wrong-dimension",
        key: "dimension",
        figures: {
          given: { value: 4, unit: "gal" },
          is: "volume",
          expected: "length",
          example: { value: 5, unit: "ft" },
        },
      },
    });
    const { error: missing } = whole.safeParse({ note: "x" });
    expect(missing?.issues.map(({ path }) => path)).toEqual([["thing"]]);
  });

  it("may be left out, be a list's item and be compiled, as any other", async () => {
    const most = mini.object({ one: mini.optional(schemaOf(THING)), many: mini.array(schemaOf(THING)) });
    for (const whole of [most, mini.compile(most, { strict: true })]) {
      expect(whole.parse({ many: [TYPED] })).toEqual({ many: [read(TYPED)] });
      expect(whole.safeParse({ many: [TYPED, 5] }).error?.issues[0]?.path).toEqual(["many", 1]);
    }
    expect(await schemaOf(THING).safeParseAsync(FULL)).toEqual({ success: true, data: FULL });
    expect(await schemaOf(THING)["~standard"].validate(FULL)).toEqual({ value: FULL });
  });

  it("is the same each time for the same options, whose sets don't pile up", () => {
    const german = schemaOf(THING, { locale: "de" });
    expect(schemaOf(THING, { locale: "de" })).toBe(german);
    expect(schemaOf(THING, { locale: "de", system: "metric" })).not.toBe(german);
    expect(schemaOf(THING)).toBe(schemaOf(THING, {}));
    for (let i = 0; i < 20; i++) schemaOf(THING, { locale: `de-u-ca-a${String.fromCharCode(97 + i)}bcd` });
    expect(schemaOf(THING, { locale: "de" })).not.toBe(german);
    expect(schemaOf(THING, { locale: "de" }).parse({ ...TYPED, rows: "1.400" }).rows).toBe(1400);
  });

  it("reports what can't be read at all as any other fault", () => {
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    expect(schemaOf(THING).safeParse(proxy).error?.issues).toMatchObject([
      { code: "custom", path: [], params: { code: "unreadable" } },
    ]);
  });

  it("has its JSON Schema in that of an app", () => {
    const whole = z.object({ note: z.string(), one: schemaOf(THING), other: z.optional(schemaOf(THING)) });
    const json = z.toJSONSchema(whole, { io: "input" });
    const accepts = new Ajv2020({ strict: true }).compile(json);
    expect(accepts({ note: "x", one: FULL, other: FULL })).toBe(true);
    expect(accepts({ note: "x", one: FULL, other: { ...FULL, shape: { kind: "oval" } } })).toBe(false);
  });
});

/** Set as a Fastify server has it, which changes what it checks. */
const AS_SERVER = {
  coerceTypes: "array",
  useDefaults: true,
  removeAdditional: true,
  allErrors: false,
} as const;

describe("the JSON Schema of a field list", () => {
  const json = toJsonSchema(schemaOf(THING)) as Record<string, unknown>;
  const ajv = new Ajv({ strict: true, allErrors: true }).compile(json);

  it("compiles as it is in validators of two drafts, and in one that is set to change what it checks", () => {
    for (const Validator of [Ajv, Ajv2020])
      for (const options of [{}, { strict: true }, AS_SERVER])
        expect(() => new Validator({ ...options, logger: complaint }).compile(json)).not.toThrow();
  });

  it("leaves right input as it is even there, and doesn't hide an unknown field", () => {
    const accepts = new Ajv(AS_SERVER).compile(json);
    const given = structuredClone({ ...FULL, tools: "spoons" });
    expect(accepts(given)).toBe(true);
    expect(given).toEqual({ ...FULL, tools: "spoons" });
    expect(accepts({ ...FULL, shap: 1 })).toBe(false);
    expect(accepts({ ...FULL, spare: null, share: null, tools: null })).toBe(true);
  });

  it("reports the faults of the kind that is meant, and no others", () => {
    ajv({ ...FULL, shape: [{ kind: "block", length: { value: 1, unit: "ft" } }] });
    const places = new Set(ajv.errors?.map(({ instancePath, keyword }) => `${instancePath} ${keyword}`));
    expect([...places]).toEqual(["/shape/0 required", "/shape/0 if", "/shape if"]);
  });

  it("has each part with a name once, with its own sentence, and each field's sentence beside it", () => {
    const parts = json.$defs as Record<string, Record<string, unknown>>;
    for (const [name, part] of Object.entries(parts)) {
      expect(name).toMatch(/^[A-Z][A-Za-z]+$/);
      expect(part.title).toBe(name);
      expect(part.description).toMatch(/\.$/);
    }
    expect(Object.keys(parts)).toContain("MeasuredVolumeOrMass");
    const { width, lines } = json.properties as Record<string, unknown>;
    expect(width).toEqual({ description: "How wide. More than 0.", $ref: "#/$defs/Length" });
    expect(lines).toEqual({
      description: "What the lines hold. 0 or more.",
      anyOf: [{ const: null }, { $ref: "#/$defs/VolumeOrZero" }, { $ref: "#/$defs/Blank" }],
    });
    expect(json).toMatchObject({ title: "Thing", description: "A thing with a field of every kind." });
  });

  it("has limits of numbers, and none where there are none", () => {
    const of = (limits: Limits): unknown =>
      (toJsonSchema(schemaOf(number("A number.", limits))).anyOf as unknown[])[0];
    expect(of({})).toEqual({ type: "number" });
    expect(of({ above: 0, max: 1 })).toEqual({ type: "number", exclusiveMinimum: 0, maximum: 1 });
    expect(of({ whole: true })).toEqual({ type: "integer", minimum: 0, maximum: 2 ** 53 - 1 });
    const bare = number("");
    expect(toJsonSchema(schemaOf(bare))).not.toHaveProperty("description");
    expect(mini.toJSONSchema(schemaOf(bare), { io: "input" })).not.toHaveProperty("description");
  });

  it("refuses two parts of one name", () => {
    const part = (sentence: string) =>
      named("Part", object<{ readonly name: string }>({ name: text(sentence) }));
    const both = object<{ readonly a: object; readonly b: object }>({ a: part("One."), b: part("Other.") });
    expect(() => toJsonSchema(schemaOf(both))).toThrow("Two parts have the name Part.");
  });

  it("is plain data, new each time, of a field or of its zod type", () => {
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(toJsonSchema(schemaOf(THING))).toEqual(json);
    expect(toJsonSchema(schemaOf(THING))).not.toBe(json);
    expect(errorOf(() => toJsonSchema(mini.string() as never))).toMatchObject({ path: "schema" });
    expect(errorOf(() => toJsonSchema(undefined as never))).toMatchObject({ path: "schema" });
  });

  it("has none for what no input of the library is", () => {
    const any = new QuantityField<Quantity>("Any amount.", { dimensions: [], range: "any" });
    expect(() => toJsonSchema(schemaOf(any))).toThrow("QuantityField");
    const name = text("A name.");
    expect(() => toJsonSchema(schemaOf(tuple("", "pair", [name, name], { open: true })))).toThrow("goes on");
  });

  it("lets each place of a list be what any of them is, where its places differ", () => {
    const pair = tuple("", "pair", [number("Any."), number("Not under 0.", { min: 0 }), number("Any.")]);
    expect(toJsonSchema(schemaOf(pair))).toMatchObject({
      items: {
        anyOf: [
          { anyOf: [{ type: "number" }, { $ref: "#/$defs/NumberText" }] },
          { anyOf: [{ type: "number", minimum: 0 }, { $ref: "#/$defs/NumberText" }] },
        ],
      },
      minItems: 3,
      maxItems: 3,
    });
  });

  it("has no limit on a list that has none", () => {
    expect(toJsonSchema(schemaOf(list("Names.", text("A name."), { least: 0 })))).toEqual({
      description: "Names.",
      type: "array",
      items: { type: "string", pattern: "\\S" },
    });
  });
});

const complaint = {
  log: (message: unknown) => expect.fail(String(message)),
  warn: (message: unknown) => expect.fail(String(message)),
  error: (message: unknown) => expect.fail(String(message)),
};
