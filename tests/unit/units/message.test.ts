import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../../src/errors.ts";
import { messageOf, type Phrasing, phrased, refusal } from "../../../src/units/message.ts";
import { NAMES } from "../../../src/units/names.ts";

const said = (template: string, x: never | object | number | string) => messageOf(template, { x } as never);

describe("a figure in a message", () => {
  it("is a number of three digits, or as it was typed", () => {
    expect(said("{x}", 4.95)).toBe("4.95");
    expect(said("{x}", 1 / 3)).toBe("0.333");
    expect(said("{x}", 43560)).toBe("43,560");
    expect(said("{x}", -0)).toBe("0");
    expect(messageOf("{x} of {y}", { x: 2, y: 2.00004 })).toBe("2 of 2.00004");
  });

  it("is a quantity with its unit as people write it", () => {
    expect(said("{x}", { value: 5, unit: "fl_oz/1000ft2" })).toBe("5 fl oz/1,000 sq ft");
    expect(said("{x}", { value: 2, unit: "oz" })).toBe("2 oz wt");
    expect(said("{x}", { value: 1.5, unit: "%" })).toBe("1.5%");
    expect(said("{x}", { value: 0.25, unit: "1" })).toBe("0.25");
    expect(said("{x}", { value: 3, unit: "loads" })).toBe("3 loads");
  });

  it("is text as it is, and a list with commas", () => {
    expect(said("{x}", "Product A")).toBe("Product A");
    expect(said("{x}", ["strip", "catch"])).toBe("strip, catch");
    expect(said("{x}", [])).toBe("");
    expect(messageOf("{x}", { x: undefined } as never)).toBe("");
  });
});

describe("a part of a figure", () => {
  it("is its number, its unit or what a person types", () => {
    const tank = { value: 4, unit: "gal" };
    expect(said("{x.value} and {x.unit}", tank)).toBe("4 and gal");
    expect(said("{x.typed}", tank)).toBe("4 gal");
    expect(said("{x.unit}", { value: 3, unit: "loads" })).toBe("loads");
  });

  it("of a number is that number, which has no unit", () => {
    expect(said("{x.value}{x.unit}", 4)).toBe("4");
    expect(said("{x.typed}", 4)).toBe("4");
  });

  it("of a text is the text, or the unit that it names", () => {
    expect(said("{x.value}", "Product A")).toBe("Product A");
    expect(said("{x.unit}", "fl_oz/ac")).toBe("fl oz/ac");
    expect(said("{x.unit}", "v/v")).toBe("v/v");
  });

  it("is its name in a list of names, or itself where it has none there", () => {
    expect(said("{x.dimension}", "volumeRate")).toBe("a volume per area");
    expect(said("{x.condition}", ["operator", "gear"])).toBe("the operator, the gear");
    expect(said("{x.expected}", ["volume", "mass"])).toBe("a volume or a weight");
    expect(said("{x.dimension} {x.no} {x.constructor}", "toString")).toBe("toString toString toString");
  });

  it("is the word for so many", () => {
    const template = "{x:one=load;other=loads}";
    expect([0, 1, 2].map((x) => said(template, x))).toEqual(["loads", "load", "loads"]);
    expect(said(template, { value: 1, unit: "gal" })).toBe("load");
    expect(said("{x:other=loads}", 1)).toBe("loads");
    expect(said("{x:one=load}", 2)).toBe("");
  });
});

describe("a message", () => {
  it("has each figure at its place, once and never twice over", () => {
    const figures = { given: { value: 5, unit: "gal" }, limit: "{given}" };
    expect(messageOf("{given} of {limit}, {given}.", figures)).toBe("5 gal of {given}, 5 gal.");
  });

  it("keeps a place that has no figure, whatever objects inherit", () => {
    expect(messageOf("{limit} {constructor} {}", {})).toBe("{limit} {constructor} {}");
  });

  it("can be filled as another language does", () => {
    const upside: Phrasing = {
      number: (value) => `<${value}>`,
      quantity: ({ value, unit }) => `${unit} ${value}`,
      typed: ({ value, unit }) => `${value}${unit}`,
      unit: ({ unit }) => unit.toUpperCase(),
      plural: (count) => (count < 5 ? "few" : "many"),
      name: (list, key) => (list === "dimension" ? `[${key}]` : undefined),
      oneOf: (names) => names.join("|"),
    };
    const figures = { tank: { value: 4, unit: "gal" }, loads: 7, is: "area" };
    const template = "{tank} {tank.unit} {tank.typed} {loads} {loads:few=a;many=b} {is.dimension}";
    expect(phrased(template, figures, upside)).toBe("gal 4 GAL 4gal <7> b [area]");
  });

  it("counts cups in their name", () => {
    const said = (value: number, unit: string): string => messageOf("{given}", { given: { value, unit } });
    expect(said(300, "cup")).toBe("300 cups");
    expect(said(1, "cup")).toBe("1 cup");
    expect(said(3, "metric_cup")).toBe("3 metric cups");
    expect(said(2, "gal/ac")).toBe("2 gal/ac");
    expect(said(2, "1000plant")).toBe("2 thousands of plants");
    expect(said(50, "100ft")).toBe("50 × 100 ft");
  });

  it("makes an error with its figures as data", () => {
    const figures = { limit: { value: 4, unit: "gal" } };
    const error = refusal("out-of-range", "at-most", "sprayer.tank", "Must be {limit} or less.", figures);
    expect(error).toBeInstanceOf(SprayMathError);
    const data = { code: "out-of-range", key: "at-most", path: "sprayer.tank", figures };
    expect(error.issues).toEqual([{ ...data, message: "Must be 4 gal or less." }]);
    expect(refusal("missing", "enter-plot", "", "Enter a plot.").figures).toEqual({});
  });

  it("finds every dimension among what fields expect", () => {
    for (const [name, text] of Object.entries(NAMES.dimension))
      expect(NAMES.expected[name as keyof typeof NAMES.dimension]).toBe(text);
  });
});
