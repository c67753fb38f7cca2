import { describe, expect, it } from "vitest";
import {
  areaIn,
  checkedChoice,
  checkedCount,
  checkedList,
  checkedNumber,
  checkedObject,
  inUnit,
  unitsWith,
  wrongDimension,
} from "../../../src/units/guard.ts";
import { qty } from "../../../src/units/index.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("inUnit", () => {
  it("gives the bare number in the unit that is asked for", () => {
    expect(inUnit(qty(2, "gal"), "fl_oz", "used")).toBe(256);
  });

  it("refuses a quantity of another dimension under the argument's own name", () => {
    expectRefused(
      () => inUnit(qty(5, "ft") as never, "gal", "used"),
      "wrong-dimension",
      "used",
      "a length; wanted a volume",
    );
  });

  it.each([
    ["oz", "gal"],
    ["oz/ac", "fl_oz/ac"],
    ["fl_oz", "lb"],
    ["imp_fl_oz", "oz"],
  ] as const)("says that an ounce is not an ounce when %s is given for %s", (given, wanted) => {
    expectRefused(
      () => inUnit(qty(5, given) as never, wanted, "dose"),
      "wrong-dimension",
      "dose",
      "is not a fluid ounce",
    );
  });

  it("does not speak of ounces where none are mixed up", () => {
    expect(wrongDimension(qty(5, "lb"), "gal", "dose").message).not.toContain("ounce");
  });

  it("refuses zero and less unless the range allows it", () => {
    for (const value of [0, -0, -1])
      expectRefused(() => inUnit(qty(value, "ft"), "ft", "w"), "out-of-range", "w", "more than 0");
    expect(inUnit(qty(0, "ft"), "ft", "w", "nonnegative")).toBe(0);
    expectRefused(() => inUnit(qty(-1, "ft"), "ft", "w", "nonnegative"), "out-of-range", "w", "0 or more");
    expect(inUnit(qty(-1, "ft"), "in", "w", "any")).toBe(-12);
  });

  it("turns -0 into 0", () => {
    expect(Object.is(inUnit({ value: -0, unit: "ft" }, "ft", "w", "nonnegative"), 0)).toBe(true);
  });

  it("refuses what is too large or too small to compute with", () => {
    expectRefused(() => inUnit(qty(1e308, "mi"), "in", "w"), "not-finite", "w", "too large");
    expectRefused(() => inUnit(qty(5e-324, "mm"), "mi", "w"), "out-of-range", "w", "too small");
  });

  it("refuses misuse from plain JavaScript", () => {
    expectRefused(() => inUnit(undefined as never, "ft", "w"), "missing", "w");
    expectRefused(() => inUnit(5 as never, "ft", "w"), "not-a-quantity", "w");
    expectRefused(() => inUnit({ value: "5", unit: "ft" } as never, "ft", "w"), "not-a-quantity", "w.value");
    expectRefused(
      () => inUnit({ value: 5, unit: "feet" } as never, "ft", "w"),
      "unknown-unit",
      "w.unit",
      "Did you mean ft?",
    );
  });
});

describe("areaIn", () => {
  it("gives the number for an area of the kind wanted", () => {
    expect(areaIn({ value: 1, unit: "ac", of: "treated" }, "treated", "ft2", "area")).toBe(43560);
  });

  it("never takes ground area or a bare area for treated area", () => {
    const ground = { value: 1, unit: "ac", of: "ground" } as never;
    expectRefused(
      () => areaIn(ground, "treated", "ft2", "area"),
      "wrong-area",
      "area",
      "Given ground area; wanted treated",
    );
    expectRefused(
      () => areaIn(qty(1, "ac") as never, "treated", "ft2", "area"),
      "wrong-area",
      "area",
      "does not say",
    );
  });
});

describe("unitsWith", () => {
  it("gives the units that go with a quantity, and checks it", () => {
    expect(unitsWith(qty(1, "m"), "swath").volume).toBe("L");
    expectRefused(() => unitsWith(null as never, "swath"), "missing", "swath");
  });
});

describe("checkedNumber", () => {
  it("keeps to its limits, ends included unless it says above", () => {
    expect(checkedNumber(0, "x", { min: 0, max: 1 })).toBe(0);
    expect(checkedNumber(1, "x", { min: 0, max: 1 })).toBe(1);
    expectRefused(() => checkedNumber(-0.1, "x", { min: 0 }), "out-of-range", "x", "0 or more");
    expectRefused(() => checkedNumber(1.1, "x", { max: 1 }), "out-of-range", "x", "1 or less");
    expectRefused(() => checkedNumber(0, "x", { above: 0 }), "out-of-range", "x", "more than 0");
    expectRefused(() => checkedNumber("1" as never, "x"), "not-a-quantity", "x");
    expect(Object.is(checkedNumber(-0, "x"), 0)).toBe(true);
  });
});

describe("checkedCount", () => {
  it.each([0, -1, 1.5, 2 ** 53])("refuses %s as a count", (value) => {
    expectRefused(() => checkedCount(value, "rows"), "out-of-range", "rows", "a whole number, 1 or more");
  });

  it("refuses what is no finite number", () => {
    expectRefused(() => checkedCount(Number.NaN, "rows"), "not-finite", "rows");
    expectRefused(() => checkedCount("3" as never, "rows"), "not-a-quantity", "rows");
    expectRefused(() => checkedCount(undefined as never, "rows"), "missing", "rows");
  });

  it("counts from where it is told", () => {
    expect(checkedCount(0, "rows", 0)).toBe(0);
    expect(checkedCount(3, "rows")).toBe(3);
  });
});

describe("checkedList, checkedChoice and checkedObject", () => {
  it("refuse what is missing", () => {
    expectRefused(() => checkedList(undefined as never, "runs"), "missing", "runs");
    expectRefused(() => checkedChoice(undefined as never, ["a", "b"], "kind"), "missing", "kind", "a, b");
    expectRefused(() => checkedObject(null as never, "input"), "missing", "input");
  });

  it("refuse what is something else", () => {
    expectRefused(() => checkedList("abc" as never, "runs"), "not-a-quantity", "runs");
    expectRefused(() => checkedList([], "runs"), "too-few", "runs", "at least 1");
    expectRefused(() => checkedList([1], "runs", 2), "too-few", "runs", "Given 1");
    expectRefused(() => checkedChoice("c" as never, ["a", "b"], "kind"), "unknown-choice", "kind", '"c"');
    expectRefused(() => checkedObject([] as never, "input"), "not-a-quantity", "input");
    expectRefused(() => checkedObject("x" as never, "input"), "not-a-quantity", "input");
  });

  it("give back what is right", () => {
    const [list, object] = [[1], { a: 1 }];
    expect(checkedList(list, "x")).toBe(list);
    expect(checkedObject(object, "x")).toBe(object);
    expect(checkedChoice("a", ["a", "b"], "x")).toBe("a");
  });
});
