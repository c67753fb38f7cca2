import { BATCH_INPUT } from "../plan/batch-input.js";
import { PLAN_INPUT } from "../plan/input.js";
import { SPREADING_INPUT } from "../plan/spreading-input.js";
import { checked, type Field } from "../units/check.js";
import {
  about,
  ChoiceField,
  choice,
  EitherField,
  FlagField,
  type Limits,
  ListField,
  NumberField,
  ObjectField,
  object,
  optional,
  TextField,
  TupleField,
} from "../units/fields.js";
import { table, written } from "../units/made.js";
import { QuantityField, UnitField } from "../units/quantity-field.js";
import type { Dimension, Unit, UnitSystem } from "../units/types.js";
import { fieldOf, type Schema } from "./field-of.js";
import { labelOf } from "./form-labels.js";
import { offeredUnits } from "./offered-units.js";

/** A field of a form: one thing that a person enters or chooses. */
export interface FormField {
  /** Where its value belongs, such as `sprayer.tank`; `[]` stands for any place in a list, as in `products[].rate`. */
  readonly path: string;
  /** What a form calls it, such as "Row length". Empty for a schema of one quantity. */
  readonly label: string;
  /** What it means, in a sentence or two. */
  readonly about: string;
  /** What is entered. */
  readonly kind: "quantity" | "number" | "text" | "date" | "choice" | "flag" | "unit";
  /** Whether it may be left out, by itself or with the part that it belongs to. */
  readonly optional: boolean;
  /** Where it belongs to one of several shapes: at which paths which shape is chosen, the outermost first. */
  readonly when: readonly FormChoice[];
  /** The units to offer for a quantity, or the units to choose from; the most usual in the trade first. */
  readonly units?: readonly Unit[];
  /** What a number, or the number of a quantity, may be. */
  readonly limits?: Limits;
  /** What to choose from; the most usual first where one is. */
  readonly choices?: readonly (string | number)[];
  /** What holds where nothing is entered, where one value does. */
  readonly usual?: string | number | boolean;
}

/** A shape that is chosen at a place. */
export interface FormChoice {
  /** The place, such as `plot` or `products[].rate`. */
  readonly path: string;
  /**
   * The name of the shape: its `kind` such as `circle`, else the fields that it alone needs such as `length and width`; `list`,
   * `one` (where a list may stand), `name` or `quantity`.
   */
  readonly is: string;
}

/** A whole job's form by name: what `planApplication` takes for an area, for another size, and what `planSpreading` takes. */
export type FormName = "plan" | "batch" | "spreading";

const FORM_NAME: ChoiceField<FormName> = /* @__PURE__ */ choice("Which job the form is for.", [
  "plan",
  "batch",
  "spreading",
]);

/** How {@link formFields} lists fields. */
export interface FormOptions {
  /** Whose units and tools are offered first; `us` unless given. */
  readonly system?: UnitSystem;
  /** Other labels by the end of a field's path, such as `SPANISH_FORM_LABELS`; English where it has none. */
  readonly labels?: Readonly<Record<string, string>>;
}

const OPTIONS: ObjectField<FormOptions> = /* @__PURE__ */ object<FormOptions>({
  system: optional(
    choice("Whose units and tools are offered first; `us` unless given.", ["us", "imperial", "metric"]),
  ),
  labels: optional(
    about(
      "Other labels by the end of a field's path, such as `SPANISH_FORM_LABELS`; English where it has none.",
      table(written()),
    ),
  ),
});

/**
 * Returns the fields that a form needs for an input, in order. Of each: its label and meaning, whether it may be left out, its limits, its
 * choices, and the units to offer.
 *
 * The order of units: common practice, no source.
 *
 * @param schema - such as `planInputSchema()`; or the name of a whole job's, which spares a page the schemas: `plan` for an area,
 * `batch` for a volume, a count or a length of row, `spreading` for granules
 * @param options - see {@link FormOptions}
 * @returns the fields, as plain data
 * @throws SprayMathError `unknown-choice` for an option, or what is no schema of this library; `not-a-quantity` for a label that is no
 * text
 *
 * @example
 * ```ts
 * import { formFields, sprayerSchema } from "swath-to-spoon/schema";
 *
 * const [tank] = formFields(sprayerSchema());
 * console.log(tank?.path, tank?.label, tank?.units?.[0]); // tank Tank size gal
 * ```
 */
export function formFields(schema: Schema<unknown> | FormName, options: FormOptions = {}): FormField[] {
  const { system = "us", labels = {} } = checked(options, OPTIONS, "options");
  const field = typeof schema === "string" ? formOf(checked(schema, FORM_NAME, "schema")) : fieldOf(schema);
  return within(field, { path: "", optional: false, when: [], system, labels });
}

function formOf(name: FormName): Field<unknown> {
  return { plan: PLAN_INPUT, batch: BATCH_INPUT, spreading: SPREADING_INPUT }[name];
}

/** Where a field stands. */
interface Place {
  readonly path: string;
  readonly optional: boolean;
  readonly when: readonly FormChoice[];
  readonly system: UnitSystem;
  readonly labels: Readonly<Record<string, string>>;
}

function within(field: Field<unknown>, place: Place): FormField[] {
  const here = { ...place, optional: place.optional || field.optional };
  if (field instanceof ObjectField) return ofObject(field.fields, here);
  if (field instanceof ListField) return within(field.item, { ...here, path: `${here.path}[]` });
  if (field instanceof TupleField)
    return field.items.flatMap((item, i) => within(item, { ...here, path: `${here.path}[${i}]` }));
  if (field instanceof EitherField) return ofEither(field, here);
  const { path, optional, when, system, labels } = here;
  const usual = field.usual as FormField["usual"];
  const entry = {
    path,
    label: labelOf(path, labels),
    about: field.about,
    optional,
    when,
    ...entryOf(field, system),
  };
  return [usual === undefined ? entry : { ...entry, usual }];
}

function ofObject(fields: Readonly<Record<string, Field<unknown>>>, here: Place): FormField[] {
  const { path } = here;
  return Object.entries(fields).flatMap(([name, field]) =>
    isConstant(field) ? [] : within(field, { ...here, path: path === "" ? name : `${path}.${name}` }),
  );
}

/** Whether there is nothing to choose, as with the kind of a shape. */
function isConstant(field: Field<unknown>): boolean {
  return field instanceof ChoiceField && field.choices.length === 1;
}

function ofEither({ options, kinds, about, usual }: EitherField<unknown>, here: Place): FormField[] {
  const { path, optional: isOptional, when, labels } = here;
  const fields = options.flatMap((option, i) => {
    const is = kinds[i] ?? shapeName(option, options);
    // What holds where nothing is entered is one of the names.
    const field = usual !== undefined && option instanceof ChoiceField ? optional(option, usual) : option;
    return within(field, { ...here, when: [...when, { path, is }] });
  });
  if (kinds.length === 0) return fields;
  const kindPath = path === "" ? "kind" : `${path}.kind`;
  const label = labelOf(kindPath, labels);
  const kind = { path: kindPath, label, about, kind: "choice", optional: isOptional, when } as const;
  return [{ ...kind, choices: [...kinds] }, ...fields];
}

function shapeName(option: Field<unknown>, all: readonly Field<unknown>[]): string {
  if (option instanceof ListField) return "list";
  if (option instanceof ChoiceField) return "name";
  if (option instanceof QuantityField) return "quantity";
  if (all.some((other) => other instanceof ListField)) return "one";
  const others = all.filter((other) => other !== option).flatMap(needed);
  const own = needed(option).filter((name) => !others.includes(name));
  return own.length > 0 ? own.join(" and ") : "other";
}

/** The fields that an object needs. */
function needed(option: Field<unknown>): string[] {
  if (!(option instanceof ObjectField)) return [];
  const entries = Object.entries<Field<unknown>>(option.fields);
  return entries.filter(([, field]) => !field.optional && !isConstant(field)).map(([name]) => name);
}

function choicesOf(
  { choices, first }: ChoiceField<string | number>,
  system: UnitSystem,
): (string | number)[] {
  return first === undefined ? [...choices] : [...new Set([first[system], ...choices])];
}

function entryOf(
  field: Field<unknown>,
  system: UnitSystem,
): Pick<FormField, "kind" | "units" | "limits" | "choices"> {
  if (field instanceof QuantityField) {
    const { dimensions, range } = field.demand;
    return {
      kind: "quantity",
      units: dimensions.flatMap((dimension: Dimension): readonly Unit[] => offeredUnits(dimension, system)),
      limits: range === "positive" ? { above: 0 } : range === "nonnegative" ? { min: 0 } : {},
    };
  }
  if (field instanceof NumberField) return { kind: "number", limits: { ...field.limits } };
  if (field instanceof ChoiceField) return { kind: "choice", choices: choicesOf(field, system) };
  if (field instanceof FlagField) return { kind: "flag" };
  if (field instanceof UnitField && field.dimension !== undefined)
    return { kind: "unit", units: offeredUnits(field.dimension, system) };
  if (field instanceof TextField) return { kind: field.format?.name === "date" ? "date" : "text" };
  throw new TypeError(`A field of a kind that no form has: ${field.constructor.name}`);
}
