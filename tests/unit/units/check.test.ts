import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { type ErrorCode, SprayMathError } from "../../../src/errors.ts";
import { Check, checked, type TextReader } from "../../../src/units/check.ts";
import { count, list, number, object, optional, text } from "../../../src/units/fields.ts";
import { quantity } from "../../../src/units/quantity-field.ts";
import type { Length, Volume } from "../../../src/units/types.ts";
import { refusal } from "../../helpers/refusal.ts";

interface Nozzle {
  readonly output: Volume;
  readonly share?: number;
}

interface Boom {
  readonly name: string;
  readonly spacing: Length;
  readonly nozzles: readonly Nozzle[];
  readonly age?: number;
  readonly spare?: Nozzle;
}

const NOZZLE = object<Nozzle>({
  output: quantity("What it puts out.", "volume"),
  share: optional(number("Its share.", { min: 0, max: 1 })),
});

const BOOM = object<Boom>({
  name: text("What it is called."),
  spacing: quantity("The distance from one nozzle to the next.", "length"),
  nozzles: list("Its nozzles.", NOZZLE, { most: 5000 }),
  age: optional(count("Its age in years.", 0)),
  spare: optional(NOZZLE),
});

const nozzle = (value: number) => ({ output: { value, unit: "fl_oz" } });
const boom = () => ({
  name: "boom",
  spacing: { value: 20, unit: "in" },
  nozzles: [nozzle(10), { ...nozzle(11), share: 0.5 }],
});

const refused = (change: object): SprayMathError => refusal(() => checked({ ...boom(), ...change }, BOOM));
const faults = (error: SprayMathError): [ErrorCode, string][] =>
  error.issues.map(({ code, path }) => [code, path]);

function frozen<T extends object>(value: T): T {
  for (const inner of Object.values(value)) if (typeof inner === "object" && inner !== null) frozen(inner);
  return Object.freeze(value);
}

describe("checked", () => {
  it("gives a copy, all the way down, and leaves the input as it was", () => {
    const input = frozen(boom());
    const before = JSON.stringify(input);
    const copy = checked(input, BOOM);
    expect(copy).toEqual(input);
    expect(JSON.stringify(input)).toBe(before);
    expect(copy).not.toBe(input);
    expect(copy.spacing).not.toBe(input.spacing);
    expect(copy.nozzles).not.toBe(input.nozzles);
    expect(copy.nozzles[0]?.output).not.toBe(input.nozzles[0]?.output);
  });

  it("is not moved by what becomes of the input", () => {
    const input = boom();
    const copy = checked(input, BOOM);
    input.spacing.value = 30;
    input.nozzles.length = 0;
    expect(copy).toEqual(boom());
  });

  it("leaves out what is null or undefined where it may be left out", () => {
    const input = { ...boom(), age: null, spare: undefined, nozzles: [{ ...nozzle(10), share: null }] };
    const copy = checked(input, BOOM);
    expect(Object.keys(copy)).toEqual(["name", "spacing", "nozzles"]);
    expect(Object.keys(copy.nozzles[0] as Nozzle)).toEqual(["output"]);
  });

  it("makes 0 of -0", () => {
    const copy = checked({ ...boom(), age: -0, nozzles: [{ ...nozzle(1), share: -0 }] }, BOOM);
    expect(Object.is(copy.age, 0)).toBe(true);
    expect(Object.is(copy.nozzles[0]?.share, 0)).toBe(true);
    const reading = quantity("A reading.", "length", "any");
    expect(Object.is(checked({ value: -0, unit: "ft" }, reading).value, 0)).toBe(true);
  });

  it("finds every fault at once, each at its place, in the order of the fields", () => {
    const error = refused({
      name: " ",
      spacing: { value: -1, unit: "in" },
      nozzles: [nozzle(0), { output: null, share: 2 }],
      age: 1.5,
      colour: "red",
    });
    expect(faults(error)).toEqual([
      ["missing", "name"],
      ["out-of-range", "spacing"],
      ["out-of-range", "nozzles[0].output"],
      ["missing", "nozzles[1].output"],
      ["out-of-range", "nozzles[1].share"],
      ["out-of-range", "age"],
      ["unknown-field", "colour"],
    ]);
    expect(error).toMatchObject({ code: "missing", path: "name", key: "enter-text" });
    expect(error.message).toBe("Enter some text here. (7 errors.)");
  });

  it("puts the place of the whole input before each path", () => {
    const error = refusal(() => checked({ ...boom(), age: -1 }, BOOM, "sprayer.boom"));
    expect(faults(error)).toEqual([["out-of-range", "sprayer.boom.age"]]);
    expect(refusal(() => checked(null, BOOM, "sprayer")).path).toBe("sprayer");
    expect(refusal(() => checked(undefined, BOOM)).path).toBe("");
  });

  it("refuses unknown fields at every depth, with the nearest name", () => {
    const error = refused({
      agee: 1,
      nozzles: [{ ...nozzle(10), shar: 1 }],
      spare: { ...nozzle(10), zzzz: 1 },
      spacing: { value: 20, unit: "in", units: "cm" },
    });
    expect(error.issues.map(({ path, figures }) => [path, figures.meant])).toEqual([
      // A unit is there already.
      ["spacing.units", undefined],
      ["nozzles[0].shar", "share"],
      ["spare.zzzz", undefined],
      ["agee", "age"],
    ]);
    const keys = ["field-misspelled", "field-unknown"];
    for (const { code, key, figures } of error.issues)
      expect([code, key]).toEqual(["unknown-field", keys[figures.meant === undefined ? 1 : 0]]);
    expect(error.issues[0]?.message).toBe('There is no field "units" here. The fields are: value, unit.');
    expect(error.issues[1]?.message).toBe('There is no field "shar" here. Did you mean share?');
    expect(error.issues[2]?.message).toBe('There is no field "zzzz" here. The fields are: output, share.');
  });

  it("takes an unknown field that holds nothing for one that is not there", () => {
    expect(checked({ ...boom(), colour: undefined, size: null }, BOOM)).toEqual(boom());
  });

  it("reads what a prototype has of the known fields, and minds nothing else there", () => {
    const inherited = Object.assign(Object.create({ ...boom(), colour: "red" }), { age: 3 });
    expect(checked(inherited, BOOM)).toEqual({ ...boom(), age: 3 });
    class Made {
      get output(): Volume {
        return { value: 10, unit: "fl_oz" };
      }
      describe(): string {
        return "made";
      }
    }
    expect(checked(new Made(), NOZZLE)).toEqual(nozzle(10));
    const bare = Object.assign(Object.create(null), boom(), {
      spacing: Object.create({ value: 20, unit: "in" }),
    });
    expect(checked(bare, BOOM)).toEqual(boom());
  });

  it("refuses __proto__, constructor and the like as fields of the input's own", () => {
    const input = Object.assign(
      JSON.parse('{ "__proto__": { "age": 3 }, "constructor": 1, "toString": 2 }'),
      nozzle(1),
    );
    expect(faults(refusal(() => checked(input, NOZZLE)))).toEqual([
      ["unknown-field", "__proto__"],
      ["unknown-field", "constructor"],
      ["unknown-field", "toString"],
    ]);
    expect(({} as { age?: number }).age).toBeUndefined();
  });

  it("reads what comes from another realm", () => {
    const foreign = runInNewContext(`(${JSON.stringify(boom())})`);
    expect(foreign instanceof Object).toBe(false);
    const copy = checked(foreign, BOOM);
    expect(copy).toEqual(boom());
    expect(copy instanceof Object).toBe(true);
    expect(Object.getPrototypeOf(copy.nozzles)).toBe(Array.prototype);
  });

  it("refuses a hole in a list as what is missing there", () => {
    const nozzles = [nozzle(1), nozzle(2), nozzle(3)];
    delete nozzles[1];
    expect(faults(refused({ nozzles }))).toEqual([["missing", "nozzles[1]"]]);
  });

  it.each([Symbol("x"), 5n, () => 1, Number.NaN, new Date(0), new Map(), true, "5", [], [[]]])(
    "refuses %s at every place, with its path",
    (junk) => {
      for (const name of ["spacing", "nozzles", "age", "spare"] as const) {
        const error = refused({ [name]: junk });
        expect(error.path.startsWith(name), error.path).toBe(true);
      }
      for (const part of ["value", "unit"] as const) {
        const error = refused({ spacing: { ...boom().spacing, [part]: junk } });
        expect(faults(error).map(([, path]) => path)).toEqual([`spacing.${part}`]);
      }
      expect(refusal(() => checked(junk, BOOM))).toBeInstanceOf(SprayMathError);
    },
  );

  it("never shows what it can't show, nor more than the beginning of it", () => {
    const long = "x".repeat(1e6);
    const bare = Object.create(null);
    const changes = [
      { name: 5n },
      { spacing: { value: bare, unit: long } },
      { age: bare },
      { [long]: 1 },
      { age: long },
    ];
    for (const change of changes) {
      const error = refused(change);
      expect(JSON.stringify(error).length, JSON.stringify(error)).toBeLessThan(1500);
    }
  });

  it("says where an input fails when it is looked at, with the faults found before", () => {
    const thrown = {
      get(): never {
        throw new TypeError("no");
      },
    };
    const getter = Object.defineProperty({ ...nozzle(1) }, "share", { ...thrown, enumerable: true });
    const error = refused({ name: "", nozzles: [getter] });
    expect(faults(error)).toEqual([
      ["missing", "name"],
      ["unreadable", "nozzles[0].share"],
    ]);
    const { proxy, revoke } = Proxy.revocable(nozzle(1), {});
    revoke();
    expect(faults(refused({ spare: proxy }))).toEqual([["unreadable", "spare"]]);
    expect(faults(refused({ spacing: proxy }))).toEqual([["unreadable", "spacing"]]);
    expect(faults(refused({ nozzles: proxy }))).toEqual([["unreadable", "nozzles"]]);
    expect(faults(refusal(() => checked(proxy, BOOM, "boom")))).toEqual([["unreadable", "boom"]]);
    const closed = new Proxy(nozzle(1), {
      ownKeys: () => {
        throw new Error("no");
      },
    });
    expect(faults(refused({ spare: closed }))).toEqual([["unreadable", "spare"]]);
  });

  it("reads a proxy that can be read", () => {
    expect(checked(new Proxy(boom(), {}), BOOM)).toEqual(boom());
  });

  it("stops at a thousand faults, however many there are", () => {
    const few = Array.from({ length: 999 }, () => nozzle(-1));
    expect(refused({ nozzles: few }).issues).toHaveLength(999);
    const many = Array.from({ length: 2000 }, () => nozzle(-1));
    const error = refused({ nozzles: many, age: -1 });
    expect(error.issues).toHaveLength(1000);
    expect(error.issues.at(-1)?.path).toBe("nozzles[999].output");
    expect(error.message).toContain("(1000 errors.)");
    const unknown = Object.fromEntries(Array.from({ length: 2000 }, (_, i) => [`x${i}`, i]));
    expect(refused(unknown).issues).toHaveLength(1000);
    const everything = new Array(1e9);
    expect(refusal(() => checked(everything, list("Any.", NOZZLE))).issues).toHaveLength(1000);
  });
});

describe("examples in messages", () => {
  const example = (input: unknown, check?: Check) =>
    refusal(() => checked(input, BOOM, "", check)).issues.find(({ path }) => path === "spacing")?.figures
      .example;

  it("follow the first unit that is anywhere in the input", () => {
    const { spacing: _, ...rest } = boom();
    expect(example(rest)).toEqual({ value: 5, unit: "ft" });
    expect(example({ ...rest, nozzles: [{ output: { value: 1, unit: "mL" } }] })).toEqual({
      value: 5,
      unit: "m",
    });
    expect(example({ ...rest, spare: { output: { value: 1, unit: "mL" } }, nozzles: [] })).toEqual({
      value: 5,
      unit: "m",
    });
  });

  it("don't follow a unit that every system has, nor what can't be read", () => {
    const { spacing: _, ...rest } = boom();
    const metric = { ...nozzle(1), output: { value: 1, unit: "L" } };
    expect(
      example({
        ...rest,
        spare: { output: { value: 1, unit: "s" }, share: { unit: "%" } },
        nozzles: [metric],
      }),
    ).toEqual({ value: 5, unit: "m" });
    expect(example({ nozzles: [] })).toEqual({ value: 5, unit: "ft" });
    const failing = {
      get nozzles(): never {
        throw new Error("no");
      },
    };
    expect(example(failing)).toEqual({ value: 5, unit: "ft" });
  });

  it("follow the system that is asked for, whatever the input has", () => {
    const { spacing: _, ...rest } = boom();
    expect(example(rest, new Check(rest, undefined, "metric"))).toEqual({ value: 5, unit: "m" });
  });
});

describe("text for a quantity or a number", () => {
  const texts: TextReader = {
    quantity: (typed, dimensions) => {
      if (typed === "broken") throw new TypeError("broken");
      if (typed === "?")
        throw new SprayMathError("unreadable", "text", "Couldn't read it.", {
          key: "made-up",
          figures: { typed },
        });
      return { value: Number.parseFloat(typed), unit: dimensions[0] === "length" ? "in" : "fl_oz" };
    },
    number: (typed) => {
      if (typed === "?")
        throw new SprayMathError("unreadable", "text", "Couldn't read it.", { key: "made-up" });
      return Number(typed);
    },
  };
  const read = (change: object) => {
    const input = { ...boom(), ...change };
    return checked(input, BOOM, "", new Check(input, texts));
  };

  it("is read where there is a reader, and refused where there is none", () => {
    expect(read({ spacing: "20", age: "3", nozzles: [{ output: "10" }] })).toEqual({
      ...boom(),
      age: 3,
      nozzles: [nozzle(10)],
    });
    expect(faults(refused({ spacing: "20", age: "3" }))).toEqual([
      ["not-a-quantity", "spacing"],
      ["not-a-quantity", "age"],
    ]);
  });

  it("is refused at its place by what the reader throws, and checked like any other value", () => {
    const error = refusal(() => read({ spacing: "?", age: "?", nozzles: [{ output: "-1" }] }));
    expect(faults(error)).toEqual([
      ["unreadable", "spacing"],
      ["out-of-range", "nozzles[0].output"],
      ["unreadable", "age"],
    ]);
    expect(error.issues[0]).toMatchObject({ key: "made-up", figures: { typed: "?" } });
    expect(faults(refusal(() => read({ spacing: "broken" })))).toEqual([["unreadable", "spacing"]]);
  });
});
