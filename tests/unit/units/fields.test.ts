import { describe, expect, it } from "vitest";
import { Check, checked, type Field, isGiven } from "../../../src/units/check.ts";
import {
  about,
  byGiven,
  choice,
  count,
  either,
  flag,
  hasField,
  kinds,
  type Limits,
  list,
  number,
  object,
  optional,
  TextField,
  text,
  tuple,
} from "../../../src/units/fields.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const reads = <T>(field: Field<T>, input: unknown): T => checked(input, field, "x");

describe("a field", () => {
  it("says what it means, and may be left out where that is said", () => {
    const age = number("The age.");
    const free = optional(age);
    expect([age.about, age.optional, free.about, free.optional]).toEqual([
      "The age.",
      false,
      "The age.",
      true,
    ]);
    expect(reads(free, null)).toBeUndefined();
    expect(reads(free, undefined)).toBeUndefined();
    expectRefused(() => reads(free, "5"), "not-a-quantity", "x");
    const other = about("Its age.", free);
    expect([other.about, other.optional, free.about]).toEqual(["Its age.", true, "The age."]);
    expect(reads(other, null)).toBeUndefined();
  });
});

describe("a number", () => {
  it.each<[Limits, number[], [number, string, string][]]>([
    [{}, [0, -5, 1e308], []],
    [
      { above: 0 },
      [5e-324, 7],
      [
        [0, "more-than", "Must be more than 0."],
        [-0, "more-than", "Must be more than 0."],
      ],
    ],
    [{ min: 2 }, [2, 2.5], [[1.9, "at-least", "Must be 2 or more."]]],
    [{ max: 2 }, [2, -9], [[2.1, "at-most", "Must be 2 or less."]]],
    [
      { min: 1, max: 9, whole: true },
      [1, 9],
      [
        [0, "whole-number", "Enter a whole number, 1 or more."],
        [1.5, "whole-number", "Enter a whole number, 1 or more."],
        [2 ** 53, "whole-number", "Enter a whole number, 1 or more."],
        [10, "at-most", "Must be 9 or less."],
      ],
    ],
    [{ whole: true }, [0, 5], [[-1, "whole-number", "Enter a whole number, 0 or more."]]],
  ])("within %j", (limits, good, bad) => {
    for (const value of good) expect(reads(number("One.", limits), value)).toBe(value);
    for (const [value, key, message] of bad) {
      const error = refusal(() => reads(number("One.", limits), value));
      expect(error).toMatchObject({ code: "out-of-range", path: "x", key, message });
      expect(error.figures).toMatchObject({ given: value });
    }
  });

  it("is finite, and no text", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
      expectRefused(() => reads(number("One."), value), "not-finite", "x", "Enter a number here");
    expectRefused(() => reads(number("One."), "5"), "not-a-quantity", "x", "not text");
    expectRefused(() => reads(number("One."), {}), "not-a-quantity", "x", "Enter a number here.");
    expectRefused(() => reads(number("One."), null), "missing", "x", "Enter a number here.");
  });

  it("is a count from 1 on, unless said otherwise", () => {
    expect(count("How many.").limits).toEqual({ whole: true, min: 1 });
    expect(count("How many.", 0, 5).limits).toEqual({ whole: true, min: 0, max: 5 });
  });
});

describe("a choice", () => {
  const form = choice("Its form.", ["liquid", "dry"]);

  it("is one of its names, or says which was probably meant", () => {
    expect(reads(form, "dry")).toBe("dry");
    const near = refusal(() => reads(form, "liquit"));
    expect(near.message).toBe(
      'There is no choice "liquit". Did you mean liquid? Choose one of: liquid, dry.',
    );
    expect(near.figures).toEqual({ given: '"liquit"', choices: ["liquid", "dry"], meant: "liquid" });
    const far = refusal(() => reads(form, "zzzzzz"));
    expect(far.message).toBe('There is no choice "zzzzzz". Choose one of: liquid, dry.');
    expect(far.figures).toEqual({ given: '"zzzzzz"', choices: ["liquid", "dry"] });
    // A code of two letters with one of them changed is another code, not a slip.
    const code = choice("Its formulation.", ["WG", "DC"]);
    expect(refusal(() => reads(code, "DF")).message).toBe('There is no choice "DF". Choose one of: WG, DC.');
    expect(refusal(() => reads(code, "wg")).message).toContain("Did you mean WG?");
    expectRefused(() => reads(form, 5), "unknown-choice", "x", "There is no choice 5.");
    expectRefused(() => reads(form, ["dry"]), "unknown-choice", "x", "Choose one of: liquid, dry.");
    expectRefused(() => reads(form, undefined), "missing", "x", "Choose one of: liquid, dry.");
  });

  it("may be of small numbers, and then gives no -0", () => {
    expect(Object.is(reads(choice("How many.", [0, 1]), -0), 0)).toBe(true);
    expectRefused(() => reads(choice("How many.", [1, 2]), "1"), "unknown-choice", "x");
    expectRefused(() => reads(choice("How many.", [1, 2]), Number.NaN), "unknown-choice", "x");
  });
});

describe("a text", () => {
  it("is not blank", () => {
    expect(reads(text("A name."), " A ")).toBe(" A ");
    for (const blank of ["", " \t\u00a0", undefined, null])
      expectRefused(() => reads(text("A name."), blank), "missing", "x", "Enter some text here.");
    expectRefused(() => reads(text("A name."), 5), "not-a-quantity", "x", "Enter some text, not 5.");
    expectRefused(() => reads(text("A name."), new String("A")), "not-a-quantity", "x", "an object");
  });

  it("may have a form of its own", () => {
    const day = new TextField("A day.", {
      name: "date",
      example: "2026-05-01",
      check: (given, check) => {
        if (given.length === 10) return true;
        check.fault("unreadable", "made-up-date", "", "Enter a date.");
        return false;
      },
    });
    expect(reads(day, "2026-05-01")).toBe("2026-05-01");
    expectRefused(() => reads(day, "May"), "unreadable", "x", "Enter a date.");
    const given = new Date(0);
    expectRefused(
      () => reads(day, given),
      "not-a-quantity",
      "x",
      "Enter text such as 2026-05-01, not an object.",
    );
    expectRefused(() => reads(day, " "), "missing", "x", "Enter text such as 2026-05-01.");
  });
});

describe("a yes or no", () => {
  it("is a boolean", () => {
    expect(reads(flag("Whether it is."), false)).toBe(false);
    expectRefused(() => reads(flag("Whether it is."), "true"), "not-a-quantity", "x", 'not "true"');
    expectRefused(() => reads(flag("Whether it is."), null), "missing", "x");
  });
});

interface Range {
  readonly low: number;
  readonly high: number;
}

const RANGE = object<Range>({ low: number("The least."), high: number("The most.") }, [
  ({ low, high }, check) => {
    if (low === undefined || high === undefined || low <= high) return;
    check.fault("conflict", "made-up-range", "low", "{low} is more than {high}.", { low, high });
  },
]);

describe("an object", () => {
  it("is held together by what its fields have to do with one another", () => {
    expect(reads(RANGE, { low: 1, high: 2 })).toEqual({ low: 1, high: 2 });
    const error = refusal(() => reads(RANGE, { low: 3, high: 2, hihg: 4 }));
    expect(error.issues.map(({ path, key }) => [path, key])).toEqual([
      ["x.hihg", "field-unknown"],
      ["x.low", "made-up-range"],
    ]);
  });

  it("may have been meant to hold a field that isn't there yet, and none that is", () => {
    const said = (given: object) =>
      refusal(() => reads(RANGE, given)).issues.find(({ path }) => path === "x.hihg")?.message;
    expect(said({ low: 3, hihg: 4 })).toBe('There is no field "hihg" here. Did you mean high?');
    expect(said({ low: 3, high: null, hihg: 4 })).toBe('There is no field "hihg" here. Did you mean high?');
    expect(said({ low: 3, high: 4, hihg: 4 })).toBe(
      'There is no field "hihg" here. The fields are: low, high.',
    );
  });

  it("looks at its relations also where a field is at fault", () => {
    const error = refusal(() => reads(RANGE, { low: "3", high: 2 }));
    expect(error.issues).toHaveLength(1);
  });

  it("says what is expected where there is none", () => {
    expectRefused(() => reads(RANGE, null), "missing", "x", "This part is missing. Enter: low, high.");
    const loose = object<{ readonly low?: number | undefined }>({ low: optional(number("The low one.")) });
    expectRefused(() => reads(loose, null), "missing", "x", "This part is missing. Enter: low.");
    expectRefused(() => reads(loose, 5), "not-a-quantity", "x", "an object, not 5: low.");
    for (const [other, words] of [
      [5, "not 5"],
      ["a", 'not "a"'],
      [[], "not a list"],
      [() => 1, "a function"],
    ] as const)
      expectRefused(() => reads(RANGE, other), "not-a-quantity", "x", words);
  });

  it("is not the text that it was saved as", () => {
    for (const saved of ['{"low":1}', ' \n{ "low": 1 }'])
      expectRefused(() => reads(RANGE, saved), "not-a-quantity", "x", "Read it with JSON.parse first.");
  });

  it("may be another of the library's objects, and is then at fault for that alone", () => {
    const other = object<Range>(RANGE.fields, RANGE.agree, "", (input, check) => {
      if (!("whole" in input)) return false;
      check.fault("conflict", "made-up-other", "", "This is a whole.");
      return true;
    });
    expect(reads(other, { low: 1, high: 2 })).toEqual({ low: 1, high: 2 });
    const error = refusal(() => reads(other, { whole: 1, low: "3" }));
    expect(error.issues.map(({ path, key }) => [path, key])).toEqual([["x", "made-up-other"]]);
  });

  it("has a sentence of its own where it is given one", () => {
    expect(RANGE.about).toBe("");
    expect(object<Range>(RANGE.fields, [], "A range.").about).toBe("A range.");
  });
});

describe("a list", () => {
  const numbers = list("Some numbers.", number("One.", { min: 0 }), { least: 2, most: 3 });

  it("has as many as it may have", () => {
    expect(reads(numbers, [1, 2])).toEqual([1, 2]);
    expectRefused(() => reads(numbers, [1]), "too-few", "x", 'Enter at least 2 under "x".');
    expectRefused(() => reads(numbers, [1, 2, 3, 4]), "out-of-range", "x", 'Enter at most 3 under "x".');
    expectRefused(
      () => reads(numbers, { length: 2 }),
      "not-a-quantity",
      "x",
      "This must be a list, not an object.",
    );
    expectRefused(() => reads(numbers, null), "missing", "x", 'Enter at least 2 under "x".');
    expectRefused(() => reads(list("Any.", number("One.")), []), "too-few", "x");
    expect(reads(list("Any.", number("One."), { least: 0 }), [])).toEqual([]);
    expectRefused(
      () => reads(list("Any.", number("One.")), null),
      "missing",
      "x",
      'Enter at least 1 under "x".',
    );
  });

  it("keeps the place of what may be left out", () => {
    expect(reads(list("Any.", optional(number("One."))), [1, null, 3])).toEqual([1, undefined, 3]);
  });

  it("looks at each", () => {
    const error = refusal(() => reads(numbers, [-1, "2", 3]));
    expect(error.issues.map(({ path }) => path)).toEqual(["x[0]", "x[1]"]);
  });
});

type Shape =
  | { readonly kind: "square"; readonly side: number }
  | { readonly kind: "circle"; readonly radius: number };

describe("a list of a fixed length", () => {
  const place = tuple("A place.", "place", [number("x"), number("y", { min: 0 })]);
  const first = tuple("A place.", "place", [number("x"), number("y")], { open: true });

  it("is a copy of the places that it has, each read by its own field", () => {
    const input = [1, 2];
    const found = reads(place, input);
    expect(found).toEqual([1, 2]);
    expect(found).not.toBe(input);
    expect(Object.is(reads(place, [-0, 1])[0], 0)).toBe(true);
    expect(reads(first, [1, 2, "z"])).toEqual([1, 2]);
    expect(refusal(() => reads(place, ["1", -1])).issues.map(({ code, path }) => [code, path])).toEqual([
      ["not-a-quantity", "x[0]"],
      ["out-of-range", "x[1]"],
    ]);
  });

  it("says what to enter where there is something else", () => {
    expectRefused(() => reads(place, undefined), "missing", "x", "Enter a place as [longitude, latitude].");
    expectRefused(() => reads(place, [1]), "not-a-quantity", "x", "[longitude, latitude], not a list of 1.");
    expectRefused(
      () => reads(place, [1, 2, 3]),
      "not-a-quantity",
      "x",
      "[longitude, latitude], not a list of 3.",
    );
    expectRefused(() => reads(first, [1]), "not-a-quantity", "x", "[longitude, latitude], not a list of 1.");
    expectRefused(
      () => reads(place, { x: 1 }),
      "not-a-quantity",
      "x",
      "[longitude, latitude], not an object.",
    );
    expectRefused(() => reads(place, [1, undefined]), "missing", "x[1]");
  });
});

describe("one of several shapes", () => {
  const shape = kinds<Shape>("A shape.", {
    square: object({ kind: choice("Its kind.", ["square"]), side: number("Its side.") }),
    circle: object({ kind: choice("Its kind.", ["circle"]), radius: number("Its radius.") }),
  });

  it("goes by its kind, and reports the faults of that kind alone", () => {
    expect(reads(shape, { kind: "circle", radius: 2 })).toEqual({ kind: "circle", radius: 2 });
    expect(shape.kinds).toEqual(["square", "circle"]);
    const error = refusal(() => reads(shape, { kind: "circle", side: 2 }));
    expect(error.issues.map(({ code, path }) => [code, path])).toEqual([
      ["missing", "x.radius"],
      ["unknown-field", "x.side"],
    ]);
    expectRefused(() => reads(shape, { kind: "square", side: "2" }), "not-a-quantity", "x.side");
  });

  it("names the kinds where there is none, or another", () => {
    expectRefused(() => reads(shape, { side: 2 }), "missing", "x.kind", "Choose one of: square, circle.");
    expectRefused(() => reads(shape, { kind: "circel" }), "unknown-choice", "x.kind", "Did you mean circle?");
    for (const other of [5, [], "circle"])
      expectRefused(() => reads(shape, other), "not-a-quantity", "x", "an object");
    expectRefused(() => reads(shape, null), "missing", "x", "Choose one of: square, circle.");
  });

  const extra = either<{ readonly percent: number } | { readonly volume: number }>(
    "Extra.",
    [object({ percent: number("Per cent.") }) as never, object({ volume: number("A volume.") }) as never],
    byGiven([["percent"], ["volume", "unit"]]),
  );

  it("may go by which fields are given, of which only one group may be", () => {
    expect(reads(extra, { percent: 5 })).toEqual({ percent: 5 });
    expect(reads(extra, { volume: 5, percent: null })).toEqual({ volume: 5 });
    expectRefused(() => reads(extra, {}), "missing", "x", "Enter one of: percent, volume + unit.");
    expectRefused(() => reads(extra, 5), "not-a-quantity", "x", "Enter one of: percent, volume + unit.");
    expectRefused(
      () => reads(extra, { percent: 5, volume: 1 }),
      "conflict",
      "x.volume",
      "percent or volume + unit, not both",
    );
  });

  it("may have one that is meant where none is given", () => {
    const pick = byGiven([["percent"], ["volume"]], 1);
    expect(pick({}, new Check())).toBe(1);
    expect(pick(null, new Check())).toBe(1);
    expect(pick({ percent: 1 }, new Check())).toBe(0);
  });
});

describe("whether something is given", () => {
  it("holds for anything but nothing", () => {
    expect(hasField({ a: 0, b: null }, ["b", "a"])).toBe(true);
    expect(hasField({ b: null }, ["b", "a"])).toBe(false);
    for (const other of [null, undefined, 5, "a"]) expect(hasField(other, ["length"])).toBe(false);
    expect(isGiven("a", { a: false })).toBe(true);
    expect(isGiven("a", { a: undefined })).toBe(false);
    expect(isGiven("toString", {})).toBe(false);
  });
});
