import { describe, expect, it } from "vitest";
import {
  type Dimension,
  describeUnit,
  dimensionOf,
  type ParseOptions,
  parseQuantity,
} from "../../../src/units/index.ts";
import { simpleUnits } from "../../../src/units/resolve.ts";
import { knownSpellings } from "../../../src/units/spellings.ts";
import { COMPOUNDS, TABLE } from "../../../src/units/table.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

type Case = readonly [text: string, value: number, unit: string, options?: ParseOptions];

function reads(cases: readonly Case[]): void {
  for (const [text, value, unit, options] of cases) {
    it(`reads ${text} as ${value} ${unit}`, () => {
      expect(parseQuantity(text, options)).toEqual({ value, unit });
    });
  }
}

describe("parseQuantity reads", () => {
  describe("numbers and fractions", () => {
    reads([
      ["2.5 gal", 2.5, "gal"],
      [".5 gal", 0.5, "gal"],
      ["2.5gal", 2.5, "gal"],
      ["+2.5 gal", 2.5, "gal"],
      ["2 1/2 gal", 2.5, "gal"],
      ["2-1/2 gal", 2.5, "gal"],
      ["2\u20111/2 gal", 2.5, "gal"],
      ["1/2 tsp", 0.5, "tsp"],
      ["3/2 tsp", 1.5, "tsp"],
      ["1/128 ac", 1 / 128, "ac"],
      ["6 ½ qt", 6.5, "qt"],
      ["6½ qt", 6.5, "qt"],
      ["½ tsp", 0.5, "tsp"],
      ["2⅔ cups", 8 / 3, "cup"],
      ["1⁄4 tsp", 0.25, "tsp"],
      ["-½ tsp", -0.5, "tsp"],
      ["−2 ft", -2, "ft"],
      ["0 gal", 0, "gal"],
      ["1,000 ft", 1000, "ft"],
      ["1,234,567.5 ft", 1234567.5, "ft"],
      ["1000 ft", 1000, "ft"],
      ["1,000 1/2 ft", 1000.5, "ft"],
      ["  5\u00a0gal ", 5, "gal"],
      ["5\u202fgal", 5, "gal"],
    ]);
  });

  describe("sums, in the first unit", () => {
    reads([
      ["3 ft 6 in", 3.5, "ft"],
      ["3ft 6in", 3.5, "ft"],
      ["3ft2in", 3 + 2 / 12, "ft"],
      [`3' 6"`, 3.5, "ft"],
      [`3'6"`, 3.5, "ft"],
      ["3′ 6″", 3.5, "ft"],
      ["3’ 6”", 3.5, "ft"],
      ["3' 6''", 3.5, "ft"],
      [`3' 6 1/2"`, 3 + 6.5 / 12, "ft"],
      [`30"`, 30, "in"],
      ["-3 ft 6 in", -3.5, "ft"],
      ["1 gal 2 qt 1 pt", 1.625, "gal"],
      ["3 gal 2 qt/ac", 3.5, "gal/ac"],
      ["1 h 30 min", 1.5, "h"],
    ]);
  });

  describe("compounds as the trade writes them", () => {
    reads([
      ["12 fl oz/ac", 12, "fl_oz/ac"],
      ["12 fl. oz. per acre", 12, "fl_oz/ac"],
      ["12 FL OZ/AC", 12, "fl_oz/ac"],
      ["12 fluid ounces / A", 12, "fl_oz/ac"],
      ["2 pt/a.", 2, "pt/ac"],
      ["12 fl_oz/ac", 12, "fl_oz/ac"],
      ["2 gallons per acre", 2, "gal/ac"],
      ["8 fl oz/100 gal", 8, "fl_oz/100gal"],
      ["8 fl oz/100gal", 8, "fl_oz/100gal"],
      ["8 fl oz per 100 gallons", 8, "fl_oz/100gal"],
      ["50 mL/100 L", 50, "mL/100L"],
      ["1.5 oz wt per 1,000 sq ft", 1.5, "oz/1000ft2"],
      ["1.5 oz. wt./1000 sq. ft.", 1.5, "oz/1000ft2"],
      ["1.5 ounces (weight) per 1,000 square feet", 1.5, "oz/1000ft2"],
      ["3 × 1,000 sq ft", 3, "1000ft2"],
      ["3 x 100 gal/ac", 3, "100gal/ac"],
      ["2 thousands of square feet", 2, "1000ft2"],
      ["20 GPA", 20, "gal/ac"],
      ["0.4 gpm", 0.4, "gal/min"],
      ["5 mph", 5, "mph"],
      ["5 miles per hour", 5, "mph"],
      ["5 mi/h", 5, "mi/h"],
      ["8 km/h", 8, "km/h"],
      ["40 psi", 40, "psi"],
      ["40 p.s.i.", 40, "psi"],
      ["40 pounds per square inch", 40, "psi"],
      ["40 lb/sq in", 40, "lb/in2"],
      ["40 lb/sq in", 40, "psi", { dimension: "pressure" }],
      ["40 lb per sq in", 40, "lb/in2", { dimension: "massRate" }],
    ]);
  });

  describe("the spellings of many places", () => {
    reads([
      ["2 litres", 2, "L"],
      ["2 metres", 2, "m"],
      ["5 sq metres", 5, "m2"],
      ["100 sq ft", 100, "ft2"],
      ["100 square feet", 100, "ft2"],
      ["100 ft²", 100, "ft2"],
      ["100 ft^2", 100, "ft2"],
      ["100 sqft", 100, "ft2"],
      ["1000 sq ft", 1000, "ft2"],
      ["5 cc", 5, "mL"],
      ["3 kilogrammes", 3, "kg"],
      ["3 lbs", 3, "lb"],
      ["3 LB", 3, "lb"],
      ["10 secs", 10, "s"],
      ["5 l", 5, "L"],
      ["5 ml", 5, "mL"],
      ["5 KG", 5, "kg"],
    ]);
  });

  describe("the measures of other systems", () => {
    reads([
      ["5 imp gal", 5, "imp_gal"],
      ["1 imperial gallon", 1, "imp_gal"],
      ["5 UK gallons", 5, "imp_gal"],
      ["5 US gal", 5, "gal"],
      ["5 U.S. gallons", 5, "gal"],
      ["5 US gal", 5, "gal", { system: "imperial" }],
      ["5 imp gal", 5, "imp_gal", { system: "metric" }],
      ["2 metric tbsp", 2, "metric_tbsp"],
      ["2 Australian tablespoons", 2, "au_tbsp"],
      ["2 metric cups", 2, "metric_cup"],
      ["5 gal", 5, "imp_gal", { system: "imperial" }],
      ["5 pints", 5, "imp_pt", { system: "imperial" }],
      ["5 qt", 5, "imp_qt", { system: "imperial" }],
      ["5 fl oz/ac", 5, "imp_fl_oz/ac", { system: "imperial" }],
      ["20 gpa", 20, "imp_gal/ac", { system: "imperial" }],
      ["5 tsp", 5, "metric_tsp", { system: "metric" }],
      ["5 tablespoons", 5, "metric_tbsp", { system: "metric" }],
      ["5 cups", 5, "metric_cup", { system: "metric" }],
    ]);
  });

  describe("a bare ounce, once it is said which is meant", () => {
    reads([
      ["5 oz", 5, "fl_oz", { ounce: "liquid" }],
      ["5 oz/ac", 5, "fl_oz/ac", { ounce: "liquid" }],
      ["5 oz", 5, "imp_fl_oz", { ounce: "liquid", system: "imperial" }],
      ["5 ounces", 5, "oz", { ounce: "dry" }],
      ["1.5 oz per 1,000 sq ft", 1.5, "oz/1000ft2", { ounce: "dry" }],
      ["5 fl oz", 5, "fl_oz", { ounce: "dry" }],
      ["5 oz wt", 5, "oz", { ounce: "liquid" }],
    ]);
  });

  describe("numbers as a locale writes them", () => {
    reads([
      ["1,5 l/ha", 1.5, "L/ha", { locale: "de" }],
      ["1.500 L", 1500, "L", { locale: "de" }],
      ["1.500 L", 1.5, "L", { locale: "en" }],
      ["1,500 L", 1500, "L", { locale: "en" }],
      ["1.234.567,5 L", 1234567.5, "L", { locale: "de" }],
      ["8 fl oz/1.000 sq ft", 8, "fl_oz/1000ft2", { locale: "de" }],
      ["1 234,5 L", 1234.5, "L", { locale: "fr" }],
      ["1\u202f234,5 L", 1234.5, "L", { locale: "fr" }],
      ["2 1/2 gal", 2.5, "gal", { locale: "fr" }],
      ["1’234.5 L", 1234.5, "L", { locale: "de-CH" }],
      [`3' 6"`, 3.5, "ft", { locale: "de-CH" }],
      ["12,34,567 L", 1234567, "L", { locale: "en-IN" }],
      ["١٢٫٥ L", 12.5, "L", { locale: "ar-EG" }],
    ]);
  });

  it.each([
    ["0.25% v/v", { value: 0.25, unit: "%", basis: "v/v" }],
    ["0.25 % (W/V)", { value: 0.25, unit: "%", basis: "w/v" }],
    ["1 percent w/w", { value: 1, unit: "%", basis: "w/w" }],
    ["1 per cent by volume", { value: 1, unit: "%", basis: "v/v" }],
    ["1 % by weight", { value: 1, unit: "%", basis: "w/w" }],
    ["50 ppm w/v", { value: 50, unit: "ppm", basis: "w/v" }],
    ["50 parts per million", { value: 50, unit: "ppm" }],
    ["0.25%", { value: 0.25, unit: "%" }],
  ])("reads %s with its basis", (text, quantity) => {
    expect(parseQuantity(text)).toEqual(quantity);
  });

  it("reads every unit as the table spells it: code, symbol, singular, plural", () => {
    for (const unit of simpleUnits()) {
      const { singular, plural, symbol } = describeUnit(unit);
      const names = [unit, singular, plural, symbol].filter((name) => name !== "" && !/^\d/.test(name));
      expect(names.length).toBeGreaterThan(0);
      for (const name of names) {
        const options = name === "oz" ? { ounce: "dry" as const } : {};
        expect(parseQuantity(`2 ${name}`, options), name).toEqual({ value: 2, unit });
      }
    }
  });

  it("lists its spellings in the form in which it looks them up", () => {
    for (const spelling of knownSpellings().keys())
      expect(spelling).toMatch(/^(%|'|"|\p{L}+[23]?( \p{L}+[23]?){0,3})$/u);
  });
});

describe("parseQuantity refuses", () => {
  it.each(["5 oz", "5 oz.", "5 ounces", "5 oz/ac", "5 oz per 1,000 sq ft", "5 lb 4 oz", "2 lb/oz"])(
    "%s, for a bare ounce may be liquid or dry",
    (text) => {
      expectRefused(() => parseQuantity(text), "ambiguous-unit", "text", "write fl oz or oz wt");
      expectRefused(() => parseQuantity(text, { dimension: "mass" }), "ambiguous-unit", "text");
    },
  );

  it.each([
    ["5 tsp", "imperial", "no imperial teaspoon"],
    ["5 tbsp", "imperial", "no imperial tablespoon"],
    ["5 cups", "imperial", "no imperial cup"],
    ["5 gal", "metric", "write US gal or imp gal"],
    ["5 pt/ac", "metric", "write US pt or imp pt"],
    ["5 qt", "metric", "write US qt or imp qt"],
    ["5 fl oz", "metric", "write US fl oz or imp fl oz"],
    ["5 gpa", "metric", "write US gal or imp gal"],
    ["5 a", "metric", "an are"],
  ] as const)("%s in the %s system", (text, system, words) => {
    expectRefused(() => parseQuantity(text, { system }), "ambiguous-unit", "text", words);
  });

  it.each(["5 ML", "5 Ml", "5 MG", "5 Mg", "5 M", "5 G", "5 T", "5 t", "12 fl oz/M"])(
    "%s, whose capitals matter",
    (text) => {
      expectRefused(() => parseQuantity(text), "ambiguous-unit", "text", "It may be");
    },
  );

  it.each([
    ["1,5 l/ha", "1,5", "en-US"],
    ["0,500 L", "0,500", "en-US"],
    ["1,50 L", "1,50", "en-US"],
    ["1,5000 L", "1,5000", "en-US"],
    ["1234,567 L", "1234,567", "en-US"],
    ["1.234,5 L", "1.234,5", "en-US"],
    ["1.2.3 L", "1.2.3", "en-US"],
    [",5 L", ",5", "en-US"],
    ["1.5 L", "1.5", "de"],
    ["1.50 L", "1.50", "de"],
    ["0.500 L", "0.500", "de"],
    ["1,500.5 L", "1,500.5", "de"],
    ["1.5 L", "1.5", "fr"],
    ["1,5 L", "1,5", "de-CH"],
    ["1,234,567 L", "1,234,567", "en-IN"],
  ])("%s, where %s is no number in %s", (text, number, locale) => {
    const error = refusal(() => parseQuantity(text, { locale }));
    expect(error.code).toBe("unreadable");
    expect(error.message).toContain(`Stumbled on "${number}"`);
    expect(error.message).toContain(`as ${locale} writes numbers`);
  });

  it.each([
    ["5", '"5"', "a unit after the number"],
    ["2 1/2", '"2 1/2"', "a unit after the number"],
    ["5 per acre", '"5"', "a unit after the number"],
    ["gal", '"gal"', "a number first"],
    ["/ac", '"/ac"', "a number first"],
    ["-", '"-"', "a number first"],
    ["5 gal/", '"/"', "a unit after it"],
    ["5 gal per", '"per"', "a unit after it"],
    ["1:100", '":100"', "one quantity"],
    ["5 gal xyz", '"xyz"', "nothing more"],
    ["5 gallon tank", '"tank"', "nothing more"],
    ["5 ac ft", '"ft"', "nothing more"],
    ["5 gal/ac/h", '"/h"', "nothing more"],
    ["2-3 gal", '"-3 gal"', "a unit before it"],
    ["2–3 gal", '"–3"', "one quantity"],
    ["1 000 ft", '"000 ft"', "a unit before it"],
    ["2 1,000 sq ft", '"1,000 sq ft"', "a unit before it"],
    ["2 3/2 gal", '"3/2 gal"', "a unit before it"],
    ["2 1/0 gal", '"1/0 gal"', "a unit before it"],
    ["2 100/300 gal", '"2 100"', "a unit after the number"],
    ["8/100 gal", '"8/100"', "a unit before the stroke"],
    ["3 ft.6 in", '".6"', "a space"],
    ["6 in 3 ft", '"3 ft"', "a smaller unit than in"],
    ["3 ft 6 gal", '"6 gal"', "a smaller unit than ft"],
    ["3 ft -6 in", '"-6 in"', "nothing more"],
    ["5 gal v/v", '"v/v"', "nothing more"],
    ["5% v/w", '"v/w"', "v/v, w/v or w/w"],
    ["5² gal", '"²"', "one quantity"],
    ["~5 gal", '"~5"', "one quantity"],
    ["5 gal; 3 gal", '";"', "one quantity"],
    ["\u0000", '"\\u0000"', "one quantity"],
  ])("%j, naming %s", (text, part, words) => {
    const locale = text.startsWith("2 100/300") ? { locale: "fr" } : {};
    expectRefused(() => parseQuantity(text, locale), "unreadable", "text", `Stumbled on ${part}`);
    expectRefused(() => parseQuantity(text, locale), "unreadable", "text", words);
  });

  it.each(
    (["us", "imperial", "metric"] as const).flatMap((system) =>
      (Object.keys({ ...TABLE, ...COMPOUNDS }) as Dimension[]).map((dimension) => ({ system, dimension })),
    ),
  )("a number alone, with an example that is read: $dimension, $system", (options) => {
    const { message } = refusal(() => parseQuantity("20", options));
    const example = /such as "(5 [^"]+)"/.exec(message)?.[1] ?? "";
    expect(dimensionOf(parseQuantity(example, options).unit)).toBe(options.dimension);
  });

  it("a number alone, with a unit of what is wanted as the example", () => {
    const wants = (options: ParseOptions, example: string): void =>
      expectRefused(() => parseQuantity("20", options), "unreadable", "text", `such as "5 ${example}"`);
    wants({}, "gal");
    wants({ system: "metric" }, "L");
    wants({ dimension: "volumeRate" }, "gal/ac");
    wants({ dimension: "volumeRate", system: "imperial" }, "imp_gal/ac");
    wants({ dimension: "length", system: "metric" }, "m");
    wants({ dimension: "time" }, "s");
    wants({ dimension: "fraction" }, "%");
  });

  it.each([
    ["5 galons per acre", '"galons"', '"gallons"'],
    ["5 gallons per acrs", '"acrs"', '"acre"'],
    ["5 tblsp", '"tblsp"', '"tbsp"'],
    ["5 dry quarts", '"dry quarts"', "not known"],
    ["5 constructor", '"constructor"', "not known"],
    ["5 gal per psi", '"per psi"', "makes no unit"],
    ["5 mph/h", '"/h"', "makes no unit"],
    ["5 gal per 3 ac", '"3 ac"', "divide the amount"],
    ["5 fl oz/100 imp gal", '"100 imp gal"', "100 gal (US)"],
    ["10 x 20 ft", '"20 ft"', "divide the amount"],
    ["1e3 ft", '"e3 ft"', "not known"],
    ["5 ℓ", '"ℓ"', "wanted a unit such as"],
  ])("%s, not knowing %s", (text, part, words) => {
    expectRefused(() => parseQuantity(text), "unknown-unit", "text", `Given ${part}`);
    expectRefused(() => parseQuantity(text), "unknown-unit", "text", words);
  });

  it.each(["", "   ", "\u00a0"])("%j, which has nothing in it", (text) => {
    expectRefused(() => parseQuantity(text), "unreadable", "text", "Given no text");
  });

  it("what is no text", () => {
    expectRefused(() => parseQuantity(undefined as never), "missing", "text");
    expectRefused(() => parseQuantity(null as never), "missing", "text");
    for (const other of [5, {}, ["5 gal"], true, Symbol("x")]) {
      expectRefused(() => parseQuantity(other as never), "unreadable", "text");
    }
  });

  it("text of any length, quickly and with a short message", () => {
    for (const piece of ["1", "1,", "1 ", "1/2 ", "gal ", "/", "½", "'", "a", "1 ft ", "(v/v)", "\u00a0"]) {
      const error = refusal(() => parseQuantity(piece.repeat(100_000)));
      expect(error.code).toBe("unreadable");
      expect(error.message.length).toBeLessThan(200);
    }
  });

  it("an option that is not offered", () => {
    expectRefused(() => parseQuantity("5 gal", null as never), "missing", "options");
    expectRefused(() => parseQuantity("5 gal", "de" as never), "not-a-quantity", "options");
    expectRefused(() => parseQuantity("5 gal", { locale: "not a tag" }), "unknown-choice", "options.locale");
    expectRefused(() => parseQuantity("5 gal", { locale: 5 as never }), "unknown-choice", "options.locale");
    expectRefused(
      () => parseQuantity("5 gal", { system: "UK" as never }),
      "unknown-choice",
      "options.system",
    );
    expectRefused(() => parseQuantity("5 oz", { ounce: "wet" as never }), "unknown-choice", "options.ounce");
    expectRefused(
      () => parseQuantity("5 oz", { dimension: "weight" as never }),
      "unknown-choice",
      "options.dimension",
    );
  });

  it("a dimension that is not the one asked for", () => {
    expectRefused(
      () => parseQuantity("5 oz wt", { dimension: "volume" }),
      "wrong-dimension",
      "text",
      "is not a fluid ounce",
    );
    expectRefused(
      () => parseQuantity("5 ft", { dimension: "volumeRate" }),
      "wrong-dimension",
      "text",
      "such as gal/ac",
    );
    expectRefused(() => parseQuantity("5 ft", { dimension: "time" }), "wrong-dimension", "text", "such as s");
  });
});
