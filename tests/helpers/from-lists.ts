import fc from "fast-check";
import { Check, type Field, type TextReader } from "../../src/units/check.ts";
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
} from "../../src/units/fields.ts";
import { refusal } from "../../src/units/message.ts";
import { type Demand, QuantityField, UnitField } from "../../src/units/quantity-field.ts";
import { unitsIn, usualUnit } from "../../src/units/systems.ts";
import type { Dimension } from "../../src/units/types.ts";

type Tree = Record<string, unknown>;

const FORMATTED = {
  date: "2026-05-01",
  "local-time": "2026-05-02T09:30",
  "time-zone": "America/Chicago",
  locale: "en-US",
} as const;

/** Values that are right by a field, text among them; what fields have to do with one another is left to chance. */
export function rightBy(field: Field<unknown>): fc.Arbitrary<unknown> {
  if (field instanceof ObjectField) return objectBy(field.fields);
  if (field instanceof EitherField) return fc.oneof(...(field.options as Field<unknown>[]).map(rightBy));
  if (field instanceof ListField)
    return fc.array(rightBy(field.item), {
      minLength: field.least,
      maxLength: Math.min(field.most, field.least + 2),
    });
  if (field instanceof TupleField) return fc.tuple(...(field.items as Field<unknown>[]).map(rightBy));
  if (field instanceof QuantityField) return quantityBy(field.demand);
  if (field instanceof UnitField && field.dimension) return fc.constantFrom(...unitsFor(field.dimension));
  if (field instanceof NumberField)
    return fc.oneof({ weight: 4, arbitrary: numberBy(field.limits) }, numberBy(field.limits).map(String));
  if (field instanceof ChoiceField) return fc.constantFrom(...field.choices);
  if (field instanceof FlagField) return fc.boolean();
  if (field instanceof TextField)
    return field.format === undefined
      ? fc.constantFrom("Plot A", " x ", "toString")
      : fc.constant(FORMATTED[field.format.name]);
  throw new TypeError(`No values for a ${field.constructor.name}`);
}

function objectBy(fields: Readonly<Record<string, Field<unknown>>>): fc.Arbitrary<unknown> {
  const entries = Object.entries(fields);
  return fc.record(
    Object.fromEntries(
      entries.map(([name, field]) => {
        const right = rightBy(field);
        return [name, field.optional ? fc.oneof({ weight: 9, arbitrary: right }, fc.constant(null)) : right];
      }),
    ),
    {
      requiredKeys: entries.filter(([, { optional }]) => !optional).map(([name]) => name),
      noNullPrototype: true,
    },
  );
}

function numberBy({ above, min, max, whole }: Limits): fc.Arbitrary<number> {
  const least = min ?? above ?? (whole ? 0 : -100);
  const most = max ?? least + 100;
  if (whole) return fc.integer({ min: least, max: Math.min(most, least + 100) });
  return fc
    .integer({ min: above === undefined ? 0 : 1, max: 8 })
    .map((part) => least + ((Math.min(most, least + 100) - least) * part) / 8);
}

function unitsFor(dimension: Dimension): string[] {
  return [
    ...new Set(
      (["us", "imperial", "metric"] as const).map((system) => usualUnit(dimension, unitsIn(system))),
    ),
  ];
}

function quantityBy({ dimensions, range, of, unmarked, bases, measured }: Demand): fc.Arbitrary<unknown> {
  return fc.constantFrom(...dimensions).chain((dimension) => {
    const value = { positive: [0.25, 8, 30], nonnegative: [0, 5], any: [-3, 0, 5], finite: [-3, 0, 1e80] }[
      range
    ];
    const plain = fc.record({
      value: fc.constantFrom(...value),
      unit: fc.constantFrom(...unitsFor(dimension)),
    });
    const basis = bases !== undefined && dimension === "fraction" ? bases[0] : undefined;
    const marked = plain.chain((quantity) =>
      fc.constantFrom<object>(
        { ...quantity, ...(of && { of }), ...(basis && { basis }) },
        ...(unmarked ? [quantity] : []),
        ...(measured ? [{ ...quantity, of, resolution: { ...quantity, value: 1 } }] : []),
        ...(measured ? [{ ...quantity, of, uncertainty: "0 x", resolution: null }] : []),
      ),
    );
    if (of !== undefined && !unmarked) return marked;
    return fc.oneof({ weight: 3, arbitrary: marked }, fc.constant("some text"));
  });
}

// Any program sees that.
const hasUnit = (text: string): boolean => /[^\d\s.,+-]/.test(text);
const unitMissing = (): Error => refusal("incomplete", "unit-missing", "", "Add a unit.");

/** A reader that takes any text with a unit for what is expected: what is left is what the field list says. */
export const ANY_TEXT: TextReader = {
  quantity: (text, [dimension = "length"]) => {
    if (!hasUnit(text)) throw unitMissing();
    return { value: 1, unit: usualUnit(dimension, unitsIn("us")) };
  },
  number: () => 1,
};

/** The same field without what its parts have to do with one another, and with any text that has a unit taken for a right quantity. */
export function withoutAgreements<T>(field: Field<T>): Field<T> {
  // What an agreement asks for, the field itself asks for where there is none.
  const { missing: _, ...own } = field as Field<T> & { missing?: unknown };
  const same = (change: object): Field<T> =>
    Object.assign(Object.create(Object.getPrototypeOf(field)), own, change);
  if (field instanceof ObjectField) {
    const fields = Object.fromEntries(
      Object.entries(field.fields as Tree).map(([name, one]) => [
        name,
        withoutAgreements(one as Field<unknown>),
      ]),
    );
    return same({ fields, all: Object.values(fields), agree: [] });
  }
  if (field instanceof EitherField) return same({ options: field.options.map(withoutAgreements) });
  if (field instanceof ListField) {
    // Of its own class, which may compare the items.
    const { about, item, least, most, optional, part } = field;
    return Object.assign(new ListField(about, withoutAgreements(item), least, most), {
      optional,
      part,
    }) as never;
  }
  if (field instanceof QuantityField) {
    const [dimension] = field.demand.dimensions as readonly [Dimension];
    const [basis] = dimension === "fraction" ? (field.demand.bases ?? []) : [];
    const unit = usualUnit(dimension, unitsIn("us"));
    const fromText = (text: string, check: Check) =>
      hasUnit(text) ? { value: 1, unit, ...(basis && { basis }) } : check.caught(unitMissing());
    return same({ fromText });
  }
  // Each place as the first one: which place a number stands in, no JSON Schema of two drafts says.
  if (field instanceof TupleField)
    return same({ items: field.items.map(() => withoutAgreements(field.items[0] as Field<unknown>)) });
  return Object.hasOwn(field, "missing") ? same({}) : field;
}

/** What JSON Schema has no word for, and no change of a field list: a day, a time or a zone that is none, a number next to nothing, a density no product has. */
export const beyondJsonSchema = (key: string): boolean =>
  /^(enter-date|date.*|time.*|zone-unknown|too-small|density-impossible)$/.test(key);

/** How many faults a field finds in a value, whatever its texts say. */
export function faultsIn(
  value: unknown,
  field: Field<unknown>,
): readonly { code: string; path: string; key: string }[] {
  const check = new Check(value, ANY_TEXT);
  field.readOrMissing(value, check);
  return check.issues;
}

const JUNK: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    ...[
      null,
      true,
      false,
      "",
      " ",
      "x",
      "constructor",
      "__proto__",
      "5",
      "1",
      "2",
      "1 ",
      0,
      -0,
      -1,
      0.5,
      1,
      2,
      1.5,
    ],
    ...[
      1e308,
      -1e308,
      1e76,
      2 ** 53,
      1e21,
      [],
      {},
      [[]],
      [null],
      { kind: "constructor" },
      { kind: "circle" },
    ],
    ...[
      { value: 5, unit: "ft" },
      { value: 0, unit: "gal" },
      { value: -1, unit: "L/ha" },
      { value: 1e76, unit: "ft" },
      { value: "5", unit: "ft" },
      { value: 5, unit: "oz" },
      { value: 5, unit: "nothing" },
      { value: 5, unit: "%", basis: "w/v" },
      { value: 1, unit: "ac", of: "ground" },
      { value: 1, unit: "ac", of: "treated" },
      { value: 1, unit: "ac", of: null },
    ],
    "2026-13-45",
    JSON.parse('{"__proto__": {"kind": "rectangle"}}'),
  ),
  fc.jsonValue({ maxDepth: 2 }),
);

const NAMES = [
  "__proto__",
  "constructor",
  "toString",
  "lable",
  "kind",
  "value",
  "rate",
  "of",
  "basis",
  "name",
];

function pathsOf(tree: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof tree !== "object" || tree === null) return [path];
  return [path, ...Object.entries(tree).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

/** The same tree with one place changed: replaced, left out, or given one more field. */
export function changed(tree: unknown): fc.Arbitrary<unknown> {
  return fc
    .tuple(
      fc.constantFrom(...pathsOf(tree)),
      fc.constantFrom("replace", "drop", "add"),
      JUNK,
      fc.constantFrom(...NAMES),
    )
    .map(([path, how, junk, name]) => changedAt(tree, path, how, junk, name));
}

function changedAt(
  tree: unknown,
  path: readonly string[],
  how: string,
  junk: unknown,
  name: string,
): unknown {
  const [first, ...rest] = path;
  const isTree = typeof tree === "object" && tree !== null;
  if (first === undefined || !isTree) return how === "add" && isTree ? withField(tree, name, junk) : junk;
  if (how === "drop" && rest.length === 0) {
    if (Array.isArray(tree)) return Array.from(tree).filter((_, i) => String(i) !== first);
    return Object.fromEntries(Object.entries(tree).filter(([key]) => key !== first));
  }
  return withField(tree, first, changedAt((tree as Tree)[first], rest, how, junk, name));
}

// An own field whatever its name: `__proto__` too, as JSON.parse makes it.
function withField(tree: object, name: string, value: unknown): unknown {
  const copy = Array.isArray(tree) ? [...tree] : { ...tree };
  return Object.defineProperty(copy, name, { value, enumerable: true, configurable: true, writable: true });
}

/** Values that are right by a field in all but a few places, as JSON has them. */
export function nearlyRightBy(field: Field<unknown>): fc.Arbitrary<unknown> {
  return fc.tuple(rightBy(field), fc.integer({ min: 0, max: 3 })).chain(([right, changes]) => {
    let result: fc.Arbitrary<unknown> = fc.constant(right);
    for (let i = 0; i < changes; i++) result = result.chain(changed);
    return result.map((value) => JSON.parse(JSON.stringify(value) ?? "null"));
  });
}
