import type { Field } from "../units/check.js";
import { dimensionInWords } from "../units/dimensions.js";
import {
  ChoiceField,
  EitherField,
  FlagField,
  type Limits,
  ListField,
  NumberField,
  ObjectField,
  TextField,
  TupleField,
} from "../units/fields.js";
import { QuantityField, type Range, UnitField } from "../units/quantity-field.js";
import { unitsIn, usualUnit } from "../units/systems.js";
import { COMPOUNDS, type SimpleDimension, TABLE } from "../units/table.js";
import type { Dimension, Quantity } from "../units/types.js";
import { fieldOf, type Schema } from "./field-of.js";

/** A JSON Schema as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

// Always first among several: a validator that turns values into other types must find a null to be one before it makes it a 0.
const NULL = { const: null };
const BLANK_TEXT = { type: "string", pattern: "^\\s*$" };
// For the same reason where a number is needed. JSON writes NaN as null, which must not become a 0, nor must spaces.
const NO_NUMBER = { anyOf: [{ enum: [null, false, true] }, BLANK_TEXT] };
const DAY = "^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$";
// As in src/units/quantity-field.ts: past it, arithmetic runs out of numbers.
const LARGEST = 1e75;

/**
 * Returns the JSON Schema of what a schema of this module accepts, for programs in other languages. It holds by the rules of
 * draft-07 as well as of 2020-12, so it has no `$schema`, and any validator of either compiles it as it is.
 *
 * The package has it for every whole job and for a calibration record: `plan-input.schema.json`, `batch-input.schema.json`,
 * `spreading-input.schema.json` and `calibration-record.schema.json`, all in `swath-to-spoon/schema/`.
 *
 * It has all rules that JSON Schema can have. A value that it accepts may still be refused here: text must read as a number or
 * a quantity of the right dimension and range, and a date must exist. Fields must agree with one another, as a rate with its
 * product's form or a band with the row spacing. A number must not be too small to compute with. Of the two numbers of a
 * station the second, an offset, must not be less than 0.
 *
 * @param schema - such as `planInputSchema()`
 * @returns the JSON Schema, as plain data of its own
 *
 * @example
 * ```ts
 * import { planInputSchema, toJsonSchema } from "swath-to-spoon/schema";
 *
 * const json = toJsonSchema(planInputSchema());
 * console.log(json.required); // [ 'plot', 'calibration', 'sprayer', 'products', 'tools' ]
 * ```
 */
export function toJsonSchema(schema: Schema<unknown>): JsonSchema {
  const field = fieldOf(schema);
  const parts = new Parts(false);
  const { name, about } = partOf(field) ?? { name: undefined, about: field.about };
  const root = parts.shapeOf(field);
  return {
    ...(name !== undefined && { title: name }),
    ...(about !== "" && { description: about }),
    ...root,
    ...(parts.all.size > 0 && { $defs: Object.fromEntries(parts.all) }),
  };
}

/** The same without parts that it refers to: it may stand anywhere in another one. */
export function jsonSchemaInOne(field: Field<unknown>): JsonSchema {
  const about = partOf(field)?.about ?? field.about;
  return { ...(about !== "" && { description: about }), ...new Parts(true).shapeOf(field) };
}

/** The parts with a name that a JSON Schema describes once, as they are met. */
class Parts {
  readonly all = new Map<string, JsonSchema>();
  private readonly origins = new Map<string, unknown>();

  /** @param inOne - whether each part is described where it is used */
  constructor(private readonly inOne: boolean) {}

  /** What a field must be: a reference to a part with a name, or its shape. */
  refTo(field: Field<unknown>): JsonSchema {
    const part = partOf(field);
    if (part === undefined || this.inOne) return this.shapeOf(field);
    const { name, about } = part;
    const origin = field.part ?? about;
    if (this.origins.has(name) && this.origins.get(name) !== origin)
      throw new TypeError(`Two parts have the name ${name}.`);
    if (!this.origins.has(name)) {
      this.origins.set(name, origin);
      this.all.set(name, { title: name, description: about, ...this.shapeOf(field) });
    }
    return { $ref: `#/$defs/${name}` };
  }

  private maybe(schema: JsonSchema, usual?: unknown): JsonSchema {
    // Here and not beside the sentence, where a validator may put it into the job, or refuse to start as it can't.
    const described = usual === undefined ? schema : { ...schema, default: usual };
    return anyOf([NULL, described, this.text("Blank", BLANK)]);
  }

  /** The same with its sentence, where it may be left out, too: null and blank text are "not given". */
  private member(field: Field<unknown>): JsonSchema {
    const schema = field.optional ? this.maybe(this.refTo(field), field.usual) : this.refTo(field);
    return { ...(field.about !== "" && { description: field.about }), ...schema };
  }

  shapeOf(field: Field<unknown>): JsonSchema {
    if (field instanceof ObjectField) return this.objectOf(field.fields);
    if (field instanceof EitherField)
      return field.kinds.length > 0 ? this.kindsOf(field) : this.eitherOf(field);
    if (field instanceof ListField)
      return {
        type: "array",
        items: this.refTo(field.item),
        ...(field.least > 0 && { minItems: field.least }),
        ...(Number.isFinite(field.most) && { maxItems: field.most }),
      };
    if (field instanceof TupleField) return this.tupleOf(field);
    if (field instanceof QuantityField && field.demand.dimensions.length > 0) return this.quantityOf(field);
    if (field instanceof UnitField && field.dimension !== undefined) return unitOf([field.dimension]);
    if (field instanceof NumberField)
      return { not: NO_NUMBER, ...anyOf([numberOf(field.limits), this.text("NumberText", NUMBER_TEXT)]) };
    if (field instanceof ChoiceField) return choiceOf(field.choices);
    // By its values and not by type, so no validator turns a 0 or a text into one.
    if (field instanceof FlagField) return { enum: [true, false] };
    if (field instanceof TextField)
      return { type: "string", pattern: field.format?.name === "date" ? DAY : "\\S" };
    throw new TypeError(`A field of a kind that has no JSON Schema: ${field.constructor.name}`);
  }

  private objectOf(fields: Readonly<Record<string, Field<unknown>>>): JsonSchema {
    const entries = Object.entries(fields);
    return objectWith(
      Object.fromEntries(entries.map(([name, field]) => [name, this.member(field)])),
      entries.filter(([, { optional }]) => !optional).map(([name]) => name),
    );
  }

  // The two drafts say in different ways that the places of a list differ, so each place may be what any of them is.
  private tupleOf({ items, open }: TupleField<readonly unknown[]>): JsonSchema {
    if (open) throw new TypeError("A list that goes on has no JSON Schema here.");
    const places = anyOf(items.map((item) => this.refTo(item)));
    return { type: "array", items: places, minItems: items.length, maxItems: items.length };
  }

  // By `if` and not by `anyOf`, so that a validator reports the faults of the kind that is meant, and no others.
  private kindsOf({ kinds, options }: EitherField<unknown>): JsonSchema {
    return {
      type: "object",
      properties: { kind: { description: "Which kind it is.", enum: [...kinds] } },
      required: ["kind"],
      allOf: options.map((option, i) => ({
        if: { properties: { kind: { const: kinds[i] } }, required: ["kind"] },
        // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
        then: this.refTo(option),
      })),
    };
  }

  private eitherOf({ options }: EitherField<unknown>): JsonSchema {
    const list = options.find((option) => option instanceof ListField);
    const others = options.filter((option) => option !== list);
    const rest = anyOf(others.map((option) => this.refTo(option)));
    if (list === undefined) return rest;
    // Names first: a validator that makes a list of a single value must not do it with these.
    if (others.every((option) => option instanceof ChoiceField)) return anyOf([rest, this.refTo(list)]);
    // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
    return { if: { type: "array" }, then: this.refTo(list), else: rest };
  }

  private quantityOf({ demand }: QuantityField<Quantity>): JsonSchema {
    const { dimensions, range, of, unmarked, bases, measured } = demand;
    const shape = (
      some: readonly Dimension[],
      marks: object = {},
      needed: readonly string[] = [],
    ): JsonSchema => ({
      ...objectWith(
        { value: amountIn(range), unit: unitOf(some), ...marks, ...(measured && this.readings(some)) },
        ["value", "unit", ...needed],
      ),
      not: { properties: { value: NO_NUMBER }, required: ["value"] },
      ...(measured && ONE_READING),
    });
    const marks = {
      of:
        of === undefined
          ? { enum: ["treated", "ground", null] }
          : unmarked
            ? { enum: [of, null] }
            : { const: of },
    };
    const isBased = (one: Dimension): boolean => bases !== undefined && one === "fraction";
    const plain = dimensions.filter((one) => one !== "area" && !isBased(one));
    return anyOf([
      // A reading is in the dimension of its quantity.
      ...(measured ? plain.map((one) => shape([one])) : plain.length > 0 ? [shape(plain)] : []),
      ...(dimensions.includes("area")
        ? [shape(["area"], marks, of !== undefined && !unmarked ? ["of"] : [])]
        : []),
      ...(dimensions.some(isBased)
        ? [shape(["fraction"], { basis: { enum: [...(bases ?? [])] } }, ["basis"])]
        : []),
      // What an area is an area of, no text says.
      ...(of !== undefined && !unmarked ? [] : [this.text("QuantityText", QUANTITY_TEXT)]),
    ]);
  }

  private readings(dimensions: readonly Dimension[]): object {
    const reading = (range: Range): JsonSchema =>
      this.maybe(this.refTo(new QuantityField("", { dimensions, range })));
    return { resolution: reading("positive"), uncertainty: reading("nonnegative") };
  }

  private text(name: string, schema: JsonSchema): JsonSchema {
    if (this.inOne) return schema;
    this.all.set(name, { title: name, ...schema });
    return { $ref: `#/$defs/${name}` };
  }
}

/** An object with these fields. Others are refused, and nulls are "not given", as the library has it. */
function objectWith(properties: Readonly<Record<string, unknown>>, required: readonly string[]): JsonSchema {
  return {
    type: "object",
    properties,
    ...(required.length > 0 && { required }),
    // Not `false`: a validator that is set to remove what this says would make a misspelled limit disappear.
    additionalProperties: NULL,
  };
}

/** One of several schemas, each once, and without an alternative inside of another. */
function anyOf(schemas: readonly JsonSchema[]): JsonSchema {
  const all = schemas.flatMap((schema) =>
    Object.keys(schema).join() === "anyOf" ? (schema.anyOf as JsonSchema[]) : [schema],
  );
  const unlike = [...new Map(all.map((schema) => [JSON.stringify(schema), schema])).values()];
  return unlike.length === 1 ? (unlike[0] as JsonSchema) : { anyOf: unlike };
}

const GIVEN = { not: { anyOf: [NULL, BLANK_TEXT] } };
const ONE_READING = {
  if: { properties: { resolution: GIVEN }, required: ["resolution"] },
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
  then: { properties: { uncertainty: { not: GIVEN } } },
};

const SOME_TEXT = { type: "string", minLength: 1, maxLength: 200, pattern: "\\S" };
const NUMBER_TEXT = {
  description: "A number as a person writes it, such as “1,000” or “2 1/2”.",
  ...SOME_TEXT,
};
const QUANTITY_TEXT = {
  description:
    "An amount with its unit as a person writes it, such as “2 1/2 gal”. A sum such as “3 ft 6 in” counts in its first unit.",
  ...SOME_TEXT,
  // Something beside a number: its unit.
  pattern: "[^\\d\\s.,+-]",
};
const BLANK = {
  description: "What a form has where nothing was entered.",
  ...BLANK_TEXT,
};

function numberOf({ above, min, max, whole }: Limits): JsonSchema {
  const least = min ?? (whole ? 0 : undefined);
  return {
    type: whole ? "integer" : "number",
    ...(above !== undefined && { exclusiveMinimum: above }),
    ...(least !== undefined && { minimum: least }),
    ...((max !== undefined || whole) && { maximum: max ?? Number.MAX_SAFE_INTEGER }),
  };
}

function amountIn(range: Range): JsonSchema {
  if (range === "finite") return { type: "number" };
  if (range === "any") return { type: "number", minimum: -LARGEST, maximum: LARGEST };
  return {
    type: "number",
    ...(range === "positive" ? { exclusiveMinimum: 0 } : { minimum: 0 }),
    maximum: LARGEST,
  };
}

/** The names; a number also as a form's field has it, as text. */
function choiceOf(choices: readonly (string | number)[]): JsonSchema {
  const texts = choices.filter((one) => typeof one === "number").map(String);
  const all = [...choices, ...texts];
  return all.length === 1 ? { const: all[0] } : { enum: all };
}

function unitOf(dimensions: readonly Dimension[]): JsonSchema {
  const [only, ...others] = dimensions;
  if (others.length === 0 && Object.hasOwn(TABLE, only as Dimension))
    return { enum: simpleUnits(only as SimpleDimension) };
  // A pattern says to a program what fits, and to a person nothing.
  const examples = dimensions.flatMap((one) => [
    usualUnit(one, unitsIn("us")),
    usualUnit(one, unitsIn("metric")),
  ]);
  return {
    type: "string",
    pattern: `^(${dimensions.map(unitPattern).join("|")})$`,
    examples: [...new Set(examples)],
  };
}

function unitPattern(dimension: Dimension): string {
  if (Object.hasOwn(TABLE, dimension)) return simpleUnits(dimension as SimpleDimension).join("|");
  const { over, per } = COMPOUNDS[dimension as keyof typeof COMPOUNDS];
  const compound = `(${simpleUnits(over).join("|")})/(${simpleUnits(per).join("|")})`;
  return dimension === "speed" ? `mph|${compound}` : compound;
}

function simpleUnits(dimension: SimpleDimension): string[] {
  return Object.keys(TABLE[dimension]);
}

/** The name that a field is a part by, and what it means by itself. A quantity has the name of what it measures. */
function partOf(field: Field<unknown>): Field<unknown>["part"] {
  if (field.part !== undefined || !(field instanceof QuantityField)) return field.part;
  const { dimensions, range, of, unmarked, bases, measured } = field.demand;
  const name = [
    measured ? "Measured" : "",
    of === undefined ? "" : `${unmarked ? "" : "Marked"}${capital(of)}`,
    bases === undefined
      ? ""
      : `Based${bases.length < 3 ? bases.join("").replace(/\W/g, "").toUpperCase() : ""}`,
    dimensions.map(capital).join("Or"),
    { positive: "", nonnegative: "OrZero", any: "OrLess", finite: "OfAnySize" }[range],
  ].join("");
  const about = [
    `${capital(dimensions.map(dimensionInWords).join(" or "))}.`,
    { positive: "More than 0.", nonnegative: "0 or more.", any: "", finite: "" }[range],
    of === undefined ? "" : of === "treated" ? "What is really sprayed." : "The ground, sprayed or not.",
    bases === undefined ? "" : "A fraction has the basis that says what it is a part of.",
    measured
      ? "It may have the smallest step of the instrument (resolution) or the standard uncertainty."
      : "",
  ];
  return { name, about: about.filter((sentence) => sentence !== "").join(" ") };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
