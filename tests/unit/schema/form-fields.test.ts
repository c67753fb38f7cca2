import { describe, expect, it } from "vitest";
import { DEFAULT_SPLIT } from "../../../src/plan/input.ts";
import { DEFAULT_DECIMALS } from "../../../src/plan/money.ts";
import type { Schema } from "../../../src/schema/field-of.ts";
import { type FormField, formFields } from "../../../src/schema/form-fields.ts";
import {
  batchInputSchema,
  calibrationRecordSchema,
  FORM_LABELS,
  measurementSchema,
  planInputSchema,
  quantitySchema,
  reserveSchema,
  spreadingInputSchema,
  todaySchema,
} from "../../../src/schema/index.ts";
import { offeredUnits } from "../../../src/schema/offered-units.ts";
import { schemaOf } from "../../../src/schema/zod.ts";
import { DIMENSIONS, dimensionOf } from "../../../src/units/dimensions.ts";
import { either, object, optional, text } from "../../../src/units/fields.ts";
import { quantity, UnitField } from "../../../src/units/quantity-field.ts";
import type { Length } from "../../../src/units/types.ts";
import { SPANISH_FORM_LABELS } from "../../../src/words/es.ts";
import { errorOf } from "../../helpers/bad-input.ts";
import { THING } from "../../helpers/lists.ts";

const FIELDS = formFields(schemaOf(THING));
const at = (path: string): FormField[] => FIELDS.filter((field) => field.path === path);

describe("formFields", () => {
  it("lists each thing that is entered, with what a form needs to know about it", () => {
    expect(at("rows")).toEqual([
      {
        path: "rows",
        label: "Number of rows",
        about: "How many rows. A whole number, 1 or more.",
        kind: "number",
        optional: false,
        when: [],
        limits: { whole: true, min: 1 },
      },
    ]);
    expect(at("color")).toMatchObject([{ kind: "choice", choices: ["red", "green"], optional: false }]);
    expect(at("wet")).toMatchObject([{ kind: "flag", optional: true }]);
    expect(at("name")).toMatchObject([{ kind: "text" }]);
    expect(at("day")).toMatchObject([{ kind: "date" }]);
    expect(at("unit")).toMatchObject([{ kind: "unit", units: ["ft", "in", "yd", "mi"] }]);
    expect(at("corners[][1]")).toMatchObject([{ kind: "number", about: "How far along.", optional: true }]);
    expect(at("names[]")).toMatchObject([{ kind: "text", about: "A name.", optional: true }]);
    expect(at("lines")).toMatchObject([{ kind: "quantity", limits: { min: 0 }, optional: true }]);
    expect(at("offset")).toMatchObject([{ limits: {} }]);
  });

  it("has the unit of each number that its sentence names one for, and of no other", () => {
    const schemas = [
      planInputSchema(),
      batchInputSchema(),
      spreadingInputSchema(),
      calibrationRecordSchema(),
    ];
    const numbers = [...schemas, todaySchema()].flatMap((schema) => formFields(schema as Schema<unknown>));
    const units = numbers.filter(({ kind }) => kind === "number");
    expect(units.length).toBeGreaterThan(50);
    for (const { path, about, limits } of units)
      expect(limits?.unit, path).toBe(/\b(hours|days|percent|degrees)\b/i.exec(about)?.[0].toLowerCase());
  });

  it("says of each field in which shape it stands, and lists the kinds to choose from", () => {
    expect(at("shape[].kind")).toEqual([
      {
        path: "shape[].kind",
        label: "Kind",
        about: "A shape on the ground.",
        kind: "choice",
        optional: false,
        when: [{ path: "shape", is: "list" }],
        choices: ["circle", "block", "triangle"],
      },
    ]);
    expect(at("shape.diameter").map(({ when }) => when)).toEqual([
      [
        { path: "shape", is: "one" },
        { path: "shape", is: "circle" },
      ],
    ]);
    expect(at("shape.height").map(({ when }) => when.at(-1))).toEqual([
      { path: "shape", is: "base and height" },
    ]);
    expect(at("shape.sides[]").map(({ when }) => when.at(-1))).toEqual([{ path: "shape", is: "sides" }]);
    expect(at("tools").map(({ when }) => when)).toEqual([[{ path: "tools", is: "name" }]]);
    expect(at("tools[].capacity").map(({ when }) => when)).toEqual([[{ path: "tools", is: "list" }]]);
    expect(at("spare.percent").map(({ when }) => when)).toEqual([[{ path: "spare", is: "percent" }]]);
  });

  it("names a quantity that may stand in another shape's place, and what has nothing of its own", () => {
    type Rate = { readonly a: Length | { readonly b: string } | { readonly c?: string } };
    const rate = object<Rate>({
      a: either<Rate["a"]>(
        "One of them.",
        [
          quantity("A length.", "length"),
          object<{ readonly b: string }>({ b: text("B.") }),
          object<{ readonly c?: string }>({ c: optional(text("C.")) }),
        ],
        () => 0,
      ),
    });
    expect(formFields(schemaOf(rate)).map(({ path, when }) => `${path} ${when[0]?.is}`)).toEqual([
      "a quantity",
      "a.b b",
      "a.c other",
    ]);
  });

  it("has the kind of a whole input at its top", () => {
    expect(formFields(schemaOf(THING.fields.shape)).map(({ path }) => path)).toContain("kind");
  });

  it("offers the units of the system, the usual one first", () => {
    const units = (system: "us" | "imperial" | "metric") =>
      formFields(schemaOf(THING), { system }).find(({ path }) => path === "used")?.units?.[0];
    expect([units("us"), units("imperial"), units("metric")]).toEqual(["gal", "imp_gal", "L"]);
  });

  it("says what holds where nothing is entered", () => {
    const usual = formFields(planInputSchema()).filter((field) => field.usual !== undefined);
    expect(usual.map(({ path, usual: value }) => [path, value])).toEqual([
      ["split", DEFAULT_SPLIT],
      ["currency.decimals", DEFAULT_DECIMALS],
    ]);
  });

  it("lists what sizes a job by volume, count or row, and a job of granules", () => {
    const batch = formFields(batchInputSchema());
    const spreading = formFields(spreadingInputSchema(), { system: "metric" });
    const one = (fields: readonly FormField[], path: string) => fields.filter((field) => field.path === path);
    expect(one(batch, "size.kind")).toMatchObject([
      { choices: ["volume", "count", "row-length"], optional: false },
    ]);
    expect(one(batch, "size.count")).toMatchObject([
      { units: ["plant", "tree", "pot", "spot"], when: [{ path: "size", is: "count" }] },
    ]);
    expect(one(batch, "size.rate").map(({ when }) => when[0])).toEqual([{ path: "size", is: "row-length" }]);
    // A job of granules is for plots or for a size: a form asks which.
    expect(one(spreading, "size.kind")).toMatchObject([
      { choices: ["row-length", "count"], when: [{ path: "", is: "size" }] },
    ]);
    expect(one(spreading, "plot.kind").map(({ when }) => when[0])).toEqual([{ path: "", is: "plot" }]);
    const [hopper] = one(spreading, "spreader.hopper");
    expect(hopper).toMatchObject({ kind: "quantity", optional: false, limits: { above: 0 } });
    expect(hopper?.units?.slice(0, 2)).toEqual(["g", "kg"]);
    expect(one(spreading, "spreader.directions")[0]).toMatchObject({
      choices: [1, 2],
      usual: 1,
      optional: true,
    });
  });

  it("calls every field something, in English and in Spanish, and has no label for a field that isn't there", () => {
    const forms: readonly Parameters<typeof formFields>[0][] = [
      "plan",
      "batch",
      "spreading",
      calibrationRecordSchema(),
      measurementSchema(),
      reserveSchema(),
    ];
    const used = new Set<string>();
    for (const [language, labels] of Object.entries({ en: FORM_LABELS, es: SPANISH_FORM_LABELS })) {
      // Each table says its own names, so what a form takes from it shows which it took.
      const names = Object.fromEntries(Object.keys(labels).map((name) => [name, `${language} ${name}`]));
      for (const { path, label } of forms.flatMap((form) => formFields(form, { labels: names }))) {
        expect(label, path).toMatch(new RegExp(`^${language} `));
        used.add(label);
      }
      for (const [name, label] of Object.entries(labels)) {
        expect(used, `no field ends in ${name}`).toContain(`${language} ${name}`);
        expect(label, name).toMatch(/^\p{Lu}.*[^.:]$/u);
      }
    }
    expect(Object.keys(SPANISH_FORM_LABELS)).toEqual(Object.keys(FORM_LABELS));
  });

  it("takes the label of the longest end of a path, then a shorter one, then the English one", () => {
    const label = (path: string, labels: Record<string, string> = {}) =>
      formFields("plan", { labels }).find((field) => field.path === path)?.label;
    expect(label("calibration.rate")).toBe("Output rate");
    expect(label("products[].rate")).toBe("Label rate");
    expect(label("products[].label.max.rate")).toBe("Rate");
    expect(label("calibration.catches[]")).toBe("Caught from one nozzle");
    expect(label("products[].rate", { "products.rate": "Dose" })).toBe("Dose");
    expect(label("products[].rate", { rate: "Dose" })).toBe("Dose");
    expect(label("products[].rate", { "calibration.rate": "Dose" })).toBe("Label rate");
    expect(formFields(quantitySchema("volume")).map((field) => field.label)).toEqual([""]);
  });

  it("lists a whole job's by its name, the same as by its schema", () => {
    const metric = { system: "metric" } as const;
    expect(formFields("plan", metric)).toEqual(formFields(planInputSchema(), metric));
    expect(formFields("batch")).toEqual(formFields(batchInputSchema()));
    expect(formFields("spreading")).toEqual(formFields(spreadingInputSchema()));
    expect(() => formFields("mix" as "plan")).toThrow(
      expect.objectContaining({ code: "unknown-choice", path: "schema" }),
    );
  });

  it("has no field for what no form asks", () => {
    expect(() => formFields(schemaOf(new UnitField("Any unit.", undefined as never)))).toThrow("UnitField");
  });

  it("refuses options that it doesn't know", () => {
    expect(errorOf(() => formFields(schemaOf(THING), { system: "roman" as never })).path).toBe(
      "options.system",
    );
    expect(errorOf(() => formFields(schemaOf(THING), { labels: { rows: 1 } } as never))).toMatchObject({
      code: "not-a-quantity",
      path: "options.labels.rows",
    });
    expect(errorOf(() => formFields(schemaOf(THING), { units: 1 } as never)).code).toBe("unknown-field");
  });
});

describe("the units that a form offers", () => {
  it.each(DIMENSIONS)("measure a %s, each once", (dimension) => {
    for (const system of ["us", "imperial", "metric"] as const) {
      const units = offeredUnits(dimension, system);
      expect(units.length).toBeGreaterThan(0);
      expect(new Set(units).size).toBe(units.length);
      for (const unit of units) expect(dimensionOf(unit), unit).toBe(dimension);
    }
  });
});
