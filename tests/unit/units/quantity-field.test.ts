import { describe, expect, it } from "vitest";
import { Check, checked, type Field } from "../../../src/units/check.ts";
import {
  anyQuantity,
  anyUnit,
  basedOr,
  groundArea,
  measured,
  quantity,
  refuseDimension,
  refuseUnitDimension,
  treatedArea,
  unitOf,
} from "../../../src/units/quantity-field.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const reads = <T>(field: Field<T>, input: unknown): T => checked(input, field, "x");
const placesOf = (work: () => unknown): string[][] =>
  refusal(work).issues.map(({ code, path }) => [code, path]);

const LENGTH = quantity("A length.", "length");
const AMOUNT = quantity("An amount.", ["volume", "mass"]);

describe("a quantity", () => {
  it("is a copy of number and unit", () => {
    const input = { value: 20, unit: "in" };
    expect(reads(LENGTH, input)).toEqual(input);
    expect(reads(LENGTH, input)).not.toBe(input);
    expect(reads(AMOUNT, { value: 1, unit: "lb" })).toEqual({ value: 1, unit: "lb" });
  });

  it("is asked for by what it measures, with an example", () => {
    expectRefused(() => reads(LENGTH, null), "missing", "x", "Enter a length, such as 5 ft.");
    expectRefused(() => reads(LENGTH, {}), "missing", "x", "Enter a length, such as 5 ft.");
    expectRefused(
      () => reads(AMOUNT, undefined),
      "missing",
      "x",
      "Enter a volume or a weight, such as 5 gal.",
    );
    for (const other of [5, [], true, Symbol("x")])
      expectRefused(
        () => reads(LENGTH, other),
        "not-a-quantity",
        "x",
        "Enter a length with its unit, such as 5 ft.",
      );
    // Text that looks right is still text where nothing reads it.
    expectRefused(
      () => reads(LENGTH, "5 ft"),
      "not-a-quantity",
      "x",
      "This is text. Enter a length as an object with value and unit.",
    );
  });

  it("has a unit", () => {
    expectRefused(
      () => reads(LENGTH, { value: 5 }),
      "missing",
      "x.unit",
      "The unit is missing. Enter a length, such as 5 ft.",
    );
    for (const unit of [null, "", "  "])
      expectRefused(
        () => reads(LENGTH, { value: 5, unit }),
        "missing",
        "x.unit",
        "The unit is missing. Enter a length, such as 5 ft.",
      );
    expectRefused(
      () => reads(LENGTH, { value: null, unit: "" }),
      "missing",
      "x",
      "Enter a length, such as 5 ft.",
    );
    expectRefused(() => reads(anyUnit("The unit."), ""), "missing", "x", 'Choose a unit, such as "ft".');
    const near = refusal(() => reads(LENGTH, { value: 5, unit: "foot" }));
    expect(near).toMatchObject({ code: "unknown-unit", key: "unit-misspelled", path: "x.unit" });
    expect(near.message).toBe('The unit "foot" isn\'t known here. Did you mean "ft"?');
    expect(near.figures).toEqual({ given: '"foot"', example: "ft", meant: "ft" });
    const far = refusal(() => reads(LENGTH, { value: 5, unit: Symbol("x") }));
    expect(far.message).toBe('Choose a unit, such as "ft".');
  });

  it("has a number", () => {
    expectRefused(() => reads(LENGTH, { unit: "ft" }), "missing", "x.value", "Enter a number here.");
    expectRefused(() => reads(LENGTH, { value: null, unit: "ft" }), "missing", "x.value");
    expectRefused(() => reads(LENGTH, { value: "5", unit: "ft" }), "not-a-quantity", "x.value", "not text");
    expectRefused(
      () => reads(LENGTH, { value: {}, unit: "ft" }),
      "not-a-quantity",
      "x.value",
      "Enter a number here.",
    );
    expectRefused(
      () => reads(LENGTH, { value: Number.NaN, unit: "ft" }),
      "not-finite",
      "x.value",
      "Enter a number here",
    );
  });

  it("has both faults where both are wrong", () => {
    expect(placesOf(() => reads(LENGTH, { value: "5", unit: "foot" }))).toEqual([
      ["unknown-unit", "x.unit"],
      ["not-a-quantity", "x.value"],
    ]);
    expect(placesOf(() => reads(LENGTH, { value: -1, unit: "ft", units: "ft", of: "treated" }))).toEqual([
      ["out-of-range", "x"],
      ["unknown-field", "x.units"],
      ["unknown-field", "x.of"],
    ]);
  });

  it("measures what is asked for", () => {
    const other = refusal(() => reads(LENGTH, { value: 30, unit: "gal" }));
    expect(other.message).toBe("30 gal is a volume. Enter a length, such as 5 ft.");
    expect(other.figures).toEqual({
      given: { value: 30, unit: "gal" },
      is: "volume",
      expected: "length",
      example: { value: 5, unit: "ft" },
    });
    expect(refusal(() => reads(LENGTH, { value: 30, unit: "L" })).figures.example).toEqual({
      value: 5,
      unit: "m",
    });
  });

  it.each([
    [quantity("Any.", "volume"), "oz"],
    [quantity("Any.", "mass"), "fl_oz"],
    [quantity("Any.", "mass"), "imp_fl_oz"],
    [quantity("Any.", ["time", "massRate"]), "fl_oz/ac"],
    [quantity("Any.", "volumeConcentration"), "oz/gal"],
    [quantity("Any.", "massPerLength"), "fl_oz/ft"],
    [quantity("Any.", "flow"), "oz/min"],
  ])("says that ounces differ where they were mixed up", (field, unit) => {
    const words = "oz (weight) and fl oz (volume) are different.";
    expectRefused(() => reads(field as Field<unknown>, { value: 5, unit }), "wrong-dimension", "x", words);
  });

  it.each([
    [quantity("Any.", "length"), "oz"],
    [quantity("Any.", "volume"), "lb"],
    [quantity("Any.", "volume"), "oz/oz"],
  ])("does not say so where no ounces were", (field, unit) => {
    const { message } = refusal(() => reads(field as Field<unknown>, { value: 5, unit }));
    expect(message).not.toContain("different");
  });

  it("is in range", () => {
    const at = (range: "positive" | "nonnegative" | "any", value: number) => () =>
      reads(quantity("A length.", "length", range), { value, unit: "ft" });
    for (const [range, value] of [
      ["positive", 1e-75],
      ["positive", 1e75],
      ["nonnegative", 0],
      ["any", -5],
      ["any", 1e-300],
      ["any", -1e75],
    ] as const)
      expect(at(range, value)()).toEqual({ value, unit: "ft" });
    expect(Object.is(at("nonnegative", -0)().value, 0)).toBe(true);
    for (const value of [0, -0, -1])
      expectRefused(at("positive", value), "out-of-range", "x", "Must be more than 0.");
    expectRefused(at("nonnegative", -1), "out-of-range", "x", "Must be 0 or more.");
    for (const range of ["positive", "nonnegative"] as const)
      expectRefused(at(range, 1e-76), "out-of-range", "x", "too small to compute with");
    for (const range of ["positive", "nonnegative", "any"] as const)
      expectRefused(at(range, 1e76), "not-finite", "x", "too large to compute with");
    expectRefused(at("any", -1e76), "not-finite", "x", "too large");
    expect(refusal(at("positive", -1)).figures).toEqual({ given: { value: -1, unit: "ft" }, limit: 0 });
  });
});

describe("an area", () => {
  const acre = (of?: unknown) => ({ value: 1, unit: "ac", ...(of !== undefined && { of }) });

  it("says what it is an area of, where that matters", () => {
    expect(reads(treatedArea("An area."), acre("treated"))).toEqual(acre("treated"));
    expect(reads(groundArea("An area."), acre("ground"))).toEqual(acre("ground"));
    expectRefused(
      () => reads(treatedArea("An area."), acre("ground")),
      "wrong-area",
      "x",
      "This is ground area.",
    );
    expectRefused(
      () => reads(groundArea("An area."), acre("treated")),
      "wrong-area",
      "x",
      "This is treated area.",
    );
    for (const of of [undefined, null, "grund", Symbol("x"), {}]) {
      expectRefused(
        () => reads(treatedArea("An area."), acre(of)),
        "wrong-area",
        "x",
        "Only treated area goes here.",
      );
      expectRefused(
        () => reads(groundArea("An area."), acre(of)),
        "wrong-area",
        "x",
        "Only ground area goes here.",
      );
    }
    expectRefused(() => reads(treatedArea("An area."), { value: 1, unit: "ft" }), "wrong-dimension", "x");
  });

  it("may be taken for one where the field's name says so", () => {
    for (const of of [undefined, null, "treated"])
      expect(reads(treatedArea("An area.", { unmarked: true }), acre(of))).toEqual(acre("treated"));
    expectRefused(
      () => reads(treatedArea("An area.", { unmarked: true }), acre("ground")),
      "wrong-area",
      "x",
    );
    expect(reads(groundArea("An area.", { unmarked: true }), acre())).toEqual(acre("ground"));
  });

  it("leaves its mark where nothing turns on it, if it is one", () => {
    const plain = quantity("An area.", "area");
    expect(reads(plain, acre("ground"))).toEqual(acre());
    expect(reads(plain, acre(null))).toEqual(acre());
    expectRefused(() => reads(plain, acre("grund")), "unknown-choice", "x.of", "Did you mean ground?");
  });

  it("may be a reading", () => {
    const field = treatedArea("An area.", { measured: true });
    const given = { ...acre("treated"), uncertainty: { value: 10, unit: "ft2" } };
    expect(reads(field, given)).toEqual(given);
    const error = refusal(() => reads(field, { ...given, sure: true }));
    expect(error.figures.choices).toEqual(["value", "unit", "of", "resolution", "uncertainty"]);
  });
});

describe("a fraction", () => {
  const field = basedOr("A strength.", ["volumeConcentration"]);

  it("says what it is a part of", () => {
    for (const basis of ["v/v", "w/v", "w/w"])
      expect(reads(field, { value: 2, unit: "%", basis })).toEqual({ value: 2, unit: "%", basis });
    expect(reads(field, { value: 2, unit: "mL/L" })).toEqual({ value: 2, unit: "mL/L" });
    for (const basis of [undefined, null])
      expectRefused(
        () => reads(field, { value: 2, unit: "%", basis }),
        "missing",
        "x.basis",
        "2% of what? Write v/v or w/v or w/w after it: v/v is by volume, w/v weight in volume, w/w by weight.",
      );
    expectRefused(
      () => reads(field, { value: 2, unit: "%", basis: "vv" }),
      "unknown-choice",
      "x.basis",
      "Did you mean v/v?",
    );
  });

  it("may be of some bases only, and has none where it is a part of nothing in particular", () => {
    const byWeight = basedOr("A strength.", [], ["w/w"]);
    expectRefused(
      () => reads(byWeight, { value: 2, unit: "%", basis: "v/v" }),
      "wrong-dimension",
      "x.basis",
      "as w/w, not v/v",
    );
    expectRefused(
      () => reads(byWeight, { value: 2, unit: "%", basis: "by weight" }),
      "unknown-choice",
      "x.basis",
      "w/w",
    );
    expectRefused(() => reads(field, { value: 2, unit: "mL/L", basis: "v/v" }), "unknown-field", "x.basis");
    const plain = quantity("A part.", "fraction");
    expectRefused(() => reads(plain, { value: 2, unit: "%", basis: "v/v" }), "unknown-field", "x.basis");
  });
});

describe("a reading", () => {
  const field = measured("What was used.", ["volume", "mass"]);
  const used = { value: 34, unit: "fl_oz" };
  const step = { value: 1, unit: "fl_oz" };

  it("may say how finely it was read, or how sure it is", () => {
    expect(reads(field, used)).toEqual(used);
    expect(reads(field, { ...used, resolution: step })).toEqual({ ...used, resolution: step });
    expect(reads(field, { ...used, uncertainty: { value: 0, unit: "mL" }, resolution: null })).toEqual({
      ...used,
      uncertainty: { value: 0, unit: "mL" },
    });
    expect(Object.keys(reads(field, { ...used, uncertainty: undefined }))).toEqual(["value", "unit"]);
  });

  it("says it in one way, in a unit of its own kind", () => {
    const both = { ...used, resolution: step, uncertainty: step };
    expectRefused(() => reads(field, both), "conflict", "x", "not both");
    expectRefused(
      () => reads(field, { ...used, resolution: { value: 0, unit: "fl_oz" } }),
      "out-of-range",
      "x.resolution",
    );
    expectRefused(
      () => reads(field, { ...used, uncertainty: { value: -1, unit: "mL" } }),
      "out-of-range",
      "x.uncertainty",
    );
    expectRefused(
      () => reads(field, { ...used, resolution: { value: 1, unit: "oz" } }),
      "wrong-dimension",
      "x.resolution",
    );
    expect(
      placesOf(() => reads(field, { ...used, resolution: 1, uncertainty: { value: 1, unit: "gallon" } })),
    ).toEqual([
      ["not-a-quantity", "x.resolution"],
      ["unknown-unit", "x.uncertainty.unit"],
    ]);
  });

  it("is refused where no reading is asked for", () => {
    expectRefused(() => reads(AMOUNT, { ...used, resolution: step }), "unknown-field", "x.resolution");
  });
});

describe("any quantity", () => {
  const field = anyQuantity("Anything.");

  it("keeps its marks, and may have any size", () => {
    for (const given of [
      { value: 1e300, unit: "ft" },
      { value: 1, unit: "ac", of: "treated" },
      { value: 1, unit: "%", basis: "w/v" },
      { value: 1, unit: "%" },
    ])
      expect(reads(field, given)).toEqual(given);
    expect(reads(field, { value: 1, unit: "ft", resolution: { value: 1, unit: "in" } })).toEqual({
      value: 1,
      unit: "ft",
    });
  });

  it("has no marks that are none", () => {
    expectRefused(() => reads(field, { value: 1, unit: "ac", of: "grund" }), "unknown-choice", "x.of");
    expectRefused(() => reads(field, { value: 1, unit: "ft", of: "ground" }), "unknown-field", "x.of");
    expectRefused(() => reads(field, { value: 1, unit: "%", basis: "v" }), "unknown-choice", "x.basis");
    expectRefused(() => reads(field, { value: 1, unit: "ft", basis: "v/v" }), "unknown-field", "x.basis");
    expectRefused(() => reads(field, null), "missing", "x", "Enter an amount, such as 5 ft.");
  });
});

describe("the name of a unit", () => {
  it("is one of its dimension", () => {
    const field = unitOf("A unit.", "volume");
    expect(reads(field, "fl_oz")).toBe("fl_oz");
    expectRefused(
      () => reads(field, "ft"),
      "wrong-dimension",
      "x",
      '"ft" is a unit for a length. Choose one for a volume, such as "gal".',
    );
    expectRefused(
      () => reads(field, "oz"),
      "wrong-dimension",
      "x",
      "oz (weight) and fl oz (volume) are different.",
    );
    expectRefused(() => reads(field, "gallon"), "unknown-unit", "x", 'Did you mean "gal"?');
    expectRefused(() => reads(field, 5), "unknown-unit", "x", 'Choose a unit, such as "gal".');
    expectRefused(() => reads(field, null), "missing", "x", 'Choose a unit, such as "gal".');
  });

  it("may be any", () => {
    expect(reads(anyUnit("A unit."), "gal/ac")).toBe("gal/ac");
    expectRefused(() => reads(anyUnit("A unit."), "gallon"), "unknown-unit", "x");
    expectRefused(() => reads(anyUnit("A unit."), undefined), "missing", "x", 'such as "ft"');
  });
});

describe("a fault of dimension that others find", () => {
  it("is noted at its place", () => {
    const check = new Check(undefined, undefined, "metric");
    refuseDimension({ value: 5, unit: "gal" }, ["length"], check, "b");
    refuseUnitDimension("gal", "length", check, "to");
    refuseUnitDimension("gal", "area", check);
    expect(check.issues.map(({ path }) => path)).toEqual(["b", "to", ""]);
    expect(check.issues[0]?.message).toBe("5 gal is a volume. Enter a length, such as 5 m.");
  });
});
