import { describe, expect, it } from "vitest";
import type { SprayMathError } from "../../../src/errors.ts";
import {
  type Dimension,
  describeUnit,
  dimensionOf,
  type ParseOptions,
  parseNumber,
  parseQuantity,
  qty,
  type Unit,
  unitsOf,
} from "../../../src/units/index.ts";
import { textReader } from "../../../src/units/parse.ts";
import { resolveUnit, simpleUnits } from "../../../src/units/resolve.ts";
import { knownSpellings } from "../../../src/units/spellings.ts";
import { COMPOUNDS, TABLE } from "../../../src/units/table.ts";
import { SPANISH_WORDS } from "../../../src/words/es.ts";
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
      ["3 ft, 6 in", 3.5, "ft"],
      [`3', 6"`, 3.5, "ft"],
      ["3 ft., 6 in.", 3.5, "ft"],
      ["3 ft and 6 in", 3.5, "ft"],
      ["3 pies y 6 pulgadas", 3.5, "ft"],
      ["1 gal, 2 qt and 1 pt", 1.625, "gal"],
    ]);
  });

  // 16 ounces make a pound, 128 fluid ounces a gallon: NIST Handbook 44, Appendix C. 160 imperial ones make an imperial gallon.
  describe("sums whose ounce is that of the unit beside it", () => {
    const IMPERIAL = { system: "imperial" } as const;
    const METRIC = { system: "metric" } as const;
    reads([
      ["37 lb 8 oz", 37.5, "lb"],
      ["37 lb, 8 oz", 37.5, "lb"],
      ["37 lbs. and 8 oz.", 37.5, "lb"],
      ["37 pounds 8 ounces", 37.5, "lb"],
      ["37 libras 8 onzas", 37.5, "lb"],
      ["37 libras y 8 onzas", 37.5, "lb"],
      ["37 lb 8 oz", 37.5, "lb", IMPERIAL],
      ["37 lb 8 oz", 37.5, "lb", METRIC],
      ["37 lb 8 oz", 37.5, "lb", { ounce: "liquid" }],
      ["2 lb 4 oz/ac", 2.25, "lb/ac"],
      ["2 lb 4 oz per 1,000 sq ft", 2.25, "lb/1000ft2"],
      ["2 gal 16 oz", 2.125, "gal"],
      ["2 gal 16 oz", 2.125, "gal", { ounce: "dry" }],
      ["2 gal 16 oz/ac", 2.125, "gal/ac"],
      ["1 qt 4 oz", 1.125, "qt"],
      ["1 pinta y 4 onzas", 1.25, "pt"],
      ["1 gal 2 qt 16 oz", 1.625, "gal"],
      ["2 gal 16 oz", 2.1, "imp_gal", IMPERIAL],
      // The system of the unit beside it, too.
      ["2 imp gal 16 oz", 2.1, "imp_gal"],
      ["2 imp gal 16 fl oz", 2.1, "imp_gal"],
      ["2 US gal 16 oz", 2.125, "gal", IMPERIAL],
      ["2 US gal 2 qt", 2.5, "gal", METRIC],
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
      ["2 thousands of square feet", 2, "1000ft2"],
      ["20 GPA", 20, "gal/ac"],
      ["0.4 gpm", 0.4, "gal/min"],
      ["5 mph", 5, "mph"],
      ["5 miles per hour", 5, "mph"],
      ["5 mi/h", 5, "mi/h"],
      ["8 km/h", 8, "km/h"],
      ["8 kmh", 8, "km/h"],
      ["8 kmph", 8, "km/h"],
      ["8 KPH", 8, "km/h"],
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
      expect(spelling).toMatch(/^(%|'|"|\p{L}+[23]?( \p{L}+[23]?){0,4})$/u);
    expect([...knownSpellings().keys()].filter((one) => one !== one.normalize("NFD"))).toEqual([]);
  });
});

describe("parseQuantity asks", () => {
  it.each(["5 oz", "5 oz.", "5 ounces", "5 oz/ac", "5 oz per 1,000 sq ft", "2 lb/oz"])(
    "which ounce is meant by %s",
    (text) => {
      const words = 'Which ounce? Write "fl oz" (liquid) or "oz wt" (weight).';
      expectRefused(() => parseQuantity(text), "ambiguous-unit", "text", words);
      expectRefused(() => parseQuantity(text, { dimension: "mass" }), "ambiguous-unit", "text");
    },
  );

  it.each([
    ["5 tsp", "imperial", 'Which teaspoon? Write "US tsp" or "metric tsp".'],
    ["5 tbsp", "imperial", 'Which tablespoon? Write "US tbsp", "metric tbsp" or "Australian tbsp".'],
    ["5 cups", "imperial", 'Which cup? Write "US cup" or "metric cup".'],
    ["5 gal", "metric", 'Which gallon? Write "US gal" or "imp gal".'],
    ["5 pt/ac", "metric", 'Which pint? Write "US pt" or "imp pt".'],
    ["5 qt", "metric", 'Which quart? Write "US qt" or "imp qt".'],
    ["5 fl oz", "metric", 'Which fluid ounce? Write "US fl oz" or "imp fl oz".'],
    ["5 gpa", "metric", 'Which gallon? Write "US gal" or "imp gal".'],
  ] as const)("whose measure %s is in the %s system, with answers that it reads", (text, system, words) => {
    const { code, message } = refusal(() => parseQuantity(text, { system }));
    expect([code, message]).toEqual(["ambiguous-unit", words]);
    const answers = [...message.matchAll(/"([^"]+)"/g)].map((match) => match[1]);
    expect(answers.length).toBeGreaterThan(1);
    for (const answer of answers) expect(parseQuantity(`5 ${answer}`, { system }).value).toBe(5);
  });

  it.each(["5 ML", "5 Ml", "5 MG", "5 Mg", "5 M", "5 G", "5 T", "5 t", "12 fl oz/M"])(
    "what the letter in %s is, whose capitals matter, with answers that it reads",
    (text) => {
      const { code, message } = refusal(() => parseQuantity(text));
      expect(code).toBe("ambiguous-unit");
      expect(message).toMatch(/^Is "[MGTtLlg]+" an? .* or .*\? Write .*\.$/);
      const [, ...answers] = [...message.matchAll(/"([^"]+)"/g)].map((match) => match[1]);
      expect(answers.length).toBeGreaterThan(1);
      for (const answer of answers) {
        const before = answer?.startsWith("1,000") ? "5 fl oz/" : "5 ";
        expect(parseQuantity(before + answer).value).toBe(5);
      }
    },
  );

  it.each([
    ["10 a", "us"],
    ["2 L/a", "us"],
    ["500 g/a", "imperial"],
    ["10 a", "metric"],
    ["10 A", "metric"],
  ] as const)("whether %s goes by the acre or the are, in the %s system", (text, system) => {
    const letter = text.slice(-1);
    const words = `Is "${letter}" an acre or an are (100 square meters)? Write "ac" or "are".`;
    expectRefused(() => parseQuantity(text, { system }), "ambiguous-unit", "text", words);
  });

  it.each([
    ["11/2 pt/ac", "1 1/2", "5.5"],
    ["21/2 gal", "2 1/2", "10.5"],
    ["13/4 in", "1 3/4", "3.25"],
    ["115/16 in", "11 5/16", "7.1875"],
    ["-11/2 ft", "1 1/2", "5.5"],
    ["1 gal 11/2 qt", "1 1/2", "5.5"],
  ])("whether a space was lost in %s", (text, mixed, decimal) => {
    const words = `meant as ${mixed} or as ${decimal}? Write the one you mean.`;
    expectRefused(() => parseQuantity(text), "ambiguous-number", "text", words);
  });

  it.each([
    ["1.000 sq ft", "en-US", "1", "1,000"],
    ["8 oz wt/1.000 sq ft", "en-US", "1", "1,000"],
    ["250.000 L", "en-US", "250", "250,000"],
    ["1,000 L", "de", "1", "1.000"],
    ["1,000 L", "fr", "1", "1 000"],
    ["1.000 m", "de-CH", "1", "1'000"],
  ])("how much %s is where numbers are written as in %s", (text, locale, small, large) => {
    const words = `meant as ${small} or as ${large}? Write the one you mean.`;
    expectRefused(() => parseQuantity(text, { locale }), "ambiguous-number", "text", words);
    for (const answer of [small, large]) expect(parseQuantity(`${answer} m`, { locale }).unit).toBe("m");
  });

  it.each([
    ["10 400 m2", "10 400", "10400"],
    ["1 000 ft", "1 000", "1000"],
    ["5 100 ft2", "5 100", "5100"],
    ["5 300ft2", "5 300", "5300"],
    ["1 040 500 m2", "1 040 500", "1040500"],
    ["10 400.5 m2", "10 400.5", "10400.5"],
    ["10 400,5 m2", "10 400,5", "10400.5"],
    ["10 400,5 m2", "10 400,5", "10400,5", "es"],
    ["10 400", "10 400", "10400"],
    ["8 oz wt/1 000 sq ft", "1 000", "1000"],
  ])("whether %s is one number", (text, given, meant, locale = "en-US") => {
    const words = `Is "${given}" one number? Write it without the space: ${meant}.`;
    expectRefused(() => parseQuantity(text, { locale }), "ambiguous-number", "text", words);
    expectRefused(() => parseNumber(given, { locale }), "ambiguous-number", "text", words);
    expect(parseNumber(meant, { locale })).toBeGreaterThan(999);
  });
});

describe("parseQuantity reads what looks like these", () => {
  reads([
    ["10 A", 10, "ac"],
    ["2 pt/a", 2, "pt/ac"],
    ["2 L/A", 2, "L/ac"],
    ["10 ares", 10, "are"],
    ["3 L/are", 3, "L/are"],
    ["11/16 in", 0.6875, "in"],
    ["33/64 in", 0.515625, "in"],
    ["10/2 gal", 5, "gal"],
    ["16/4 gal", 4, "gal"],
    ["1 1/2 gal", 1.5, "gal"],
    ["0.000 gal", 0, "gal"],
    ["1.0000 gal", 1, "gal"],
    ["1.00 gal", 1, "gal"],
    ["1.001 gal", 1.001, "gal"],
    ["1,000.000 gal", 1000, "gal"],
    ["2 tb/gal", 2, "tbsp/gal"],
    ["2 Tb/gal", 2, "tbsp/gal"],
    ["100 ml/hl", 100, "mL/hL"],
    ["5 hectoliters", 5, "hL"],
    ["5 ac ft", 5, "ac_ft"],
    ["5 ac-ft", 5, "ac_ft"],
    ["5 acre feet", 5, "ac_ft"],
    ["2 sq rods", 2, "rod2"],
    ["2 square rods", 2, "rod2"],
    ["2 rods", 2, "rod"],
    ["2 rd", 2, "rod"],
    ["3 chains", 3, "chain"],
    ["1 lb/100 sq ft", 1, "lb/100ft2"],
    ["1 lb per 100 ft2", 1, "lb/100ft2"],
    ["0.7 gal/1,000 cu ft", 0.7, "gal/1000ft3"],
    ["0.7 gal per 1000 ft3", 0.7, "gal/1000ft3"],
    ["10 L/100 m³", 10, "L/100m3"],
    ["10 liters per 100 cubic meters", 10, "L/100m3"],
    ["15000 m³/ha", 15000, "m3/ha"],
    ["4 oz wt/1,000 ft", 4, "oz/1000ft"],
    ["4 oz wt per 1000 ft of row", 4, "oz/1000ft"],
    ["4 fl oz/100 ft row", 4, "fl_oz/100ft"],
    ["4 fl oz/100 ft of rows", 4, "fl_oz/100ft"],
    ["5 mL/m of row", 5, "mL/m"],
    ["5 mL/m of the row", 5, "mL/m"],
    ["2 oz wt per 100 row feet", 2, "oz/100ft"],
    ["2 oz wt/1,000 row-ft", 2, "oz/1000ft"],
    ["2 lb per 100 linear feet", 2, "lb/100ft"],
    ["20 g per row meter", 20, "g/m"],
    ["20 mL/100 m of row", 20, "mL/100m"],
    ["2 L/1,000 m row", 2, "L/1000m"],
    ["8 g/100 m²", 8, "g/100m2"],
    ["8 kg per 1,000 square metres", 8, "kg/1000m2"],
    ["50 mL/plant", 50, "mL/plant"],
    ["2 fl oz per tree", 2, "fl_oz/tree"],
    ["3 g/pot", 3, "g/pot"],
    ["1 tbsp per mound", 1, "tbsp/spot"],
    ["0.4 fl oz/1,000 plants", 0.4, "fl_oz/1000plant"],
    ["5 mL per 1000 transplants", 5, "mL/1000plant"],
    ["300 plants", 300, "plant"],
    ["1 vine", 1, "plant"],
    ["30 trunks", 30, "tree"],
    ["5 mL per trunk", 5, "mL/tree"],
  ]);
});

describe("the names that Spanish sheets print, read back", () => {
  const NAMES = Object.entries(SPANISH_WORDS.units) as [Unit, { one: string; other: string }][];
  const plainLetters = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "");
  const locale = "es-US";

  it.each(NAMES)("%s: one and several, with and without accents, in capitals", (unit, { one, other }) => {
    const dimension = describeUnit(unit).dimension;
    const written = [`1 ${one}`, `2 ${other}`, `0.5 ${other}`];
    // An area without its accent, and not explained, is a plot.
    if (unit !== "are") written.push(`1 ${plainLetters(one)}`, `2 ${plainLetters(other)}`);
    for (const text of [...written, ...written.map((one) => one.toUpperCase().normalize("NFD"))]) {
      const asUnit = parseQuantity(text, { locale, dimension });
      expect(asUnit, text).toEqual({ value: Number.parseFloat(text), unit });
    }
  });

  it("and every rate, with a stroke and in words", () => {
    const names = new Map<string, { one: string; other: string }>(NAMES);
    let read = 0;
    for (const dimension of Object.keys(COMPOUNDS) as Dimension[])
      for (const unit of unitsOf(dimension)) {
        const { over, per } = resolveUnit(unit);
        const [top, bottom] = [names.get(over), names.get(per ?? "")];
        if (top === undefined || bottom === undefined || unit === "mph") continue;
        for (const per of ["/", " por ", " por cada "]) {
          const text = `2 ${top.other}${per}${bottom.one}`;
          const meant = unit === "lb/in2" && dimension !== "massRate" ? "psi" : unit;
          expect(parseQuantity(text, { locale, dimension }), text).toEqual(qty(2, meant));
          read++;
        }
      }
    expect(read).toBeGreaterThan(500);
  });

  reads([
    ["30 árboles", 30, "tree"],
    ["30 arboles", 30, "tree"],
    ["300 macetas", 300, "pot"],
    ["0.5 mL/maceta", 0.5, "mL/pot"],
    ["50 mL por árbol", 50, "mL/tree"],
    ["20 puntos", 20, "spot"],
    ["20 manchones", 20, "spot"],
    ["300 plántulas", 300, "plant"],
    ["5 mL/1,000 plantas", 5, "mL/1000plant"],
    ["2 cuartos de galón", 2, "qt"],
    ["3 cuartos de galón/acre", 3, "qt/ac"],
    ["2 cuartos de galón imperiales", 2, "imp_qt"],
    ["12 onzas de peso/acre", 12, "oz/ac"],
    ["12 onzas líquidas por 1,000 pies cuadrados", 12, "fl_oz/1000ft2"],
    ["3 millas por hora", 3, "mph"],
    ["20 pulgadas", 20, "in"],
    ["2 libras por acre", 2, "lb/ac"],
    ["2 áreas (100 m²)", 2, "are"],
  ]);

  it("and not an área by itself, which is a plot", () => {
    for (const text of ["3 areas", "3 áreas"])
      expectRefused(() => parseQuantity(text), "unknown-unit", "text");
  });
});

describe("the names that English sheets print, read back", () => {
  it.each(simpleUnits())("%s: its name for one and for several, and its symbol", (unit) => {
    if (unit === "1") return;
    const { dimension, singular, plural, symbol } = describeUnit(unit);
    const isMultiple = /^1[\d,]/.test(symbol);
    for (const name of isMultiple ? [plural] : [singular, plural, symbol])
      expect(parseQuantity(`2 ${name}`, { dimension }), name).toEqual(qty(2, unit));
    // As what a rate is for, a round number is its unit.
    if (isMultiple)
      for (const name of [singular, symbol]) {
        const rate =
          dimension === "volume" || dimension === "area" || dimension === "length" || dimension === "count";
        if (rate) expect(parseQuantity(`2 fl oz/${name}`), name).toEqual(qty(2, `fl_oz/${unit}` as Unit));
      }
  });
});

describe("parseQuantity refuses", () => {
  it.each([
    ["44,5 qt", "en-US", "44,5", "Use a point for decimals: 44.5."],
    ["1,5 l/ha", "en-US", "1,5", "Use a point for decimals: 1.5."],
    ["0,500 L", "en-US", "0,500", "Use a point for decimals: 0.500."],
    ["1,50 L", "en-US", "1,50", "Use a point for decimals: 1.50."],
    ["1,5000 L", "en-US", "1,5000", "Use a point for decimals: 1.5000."],
    ["1234,567 L", "en-US", "1234,567", "Use a point for decimals: 1234.567."],
    ["1.234,5 L", "en-US", "1.234,5", "Use a point for decimals: 1234.5."],
    ["1.2.3 L", "en-US", "1.2.3", "Check the signs between its digits."],
    [",5 L", "en-US", ",5", "Use a point for decimals: 0.5."],
    ["1.5 L", "de", "1.5", "Use a comma for decimals: 1,5."],
    ["1.50 L", "de", "1.50", "Use a comma for decimals: 1,50."],
    ["0.500 L", "de", "0.500", "Use a comma for decimals: 0,500."],
    ["1,500.5 L", "de", "1,500.5", "Use a comma for decimals: 1500,5."],
    ["1.5 L", "fr", "1.5", "Use a comma for decimals: 1,5."],
    ["1,5 L", "de-CH", "1,5", "Use a point for decimals: 1.5."],
    ["1,5 L", "ar-EG", "1,5", "Use ٫ for decimals: 1٫5."],
    ["1,234,567 L", "en-IN", "1,234,567", "Check the signs between its digits."],
  ])("%s, where numbers are written as in %s", (text, locale, number, words) => {
    const { code, message } = refusal(() => parseQuantity(text, { locale }));
    expect([code, message]).toEqual(["unreadable", `Couldn't read "${number}". ${words}`]);
    const meant = /: (.+)\.$/.exec(words)?.[1];
    if (meant !== undefined) expect(parseQuantity(`${meant} L`, { locale }).unit).toBe("L");
  });

  // With 100 and 1,000, that are also in units of rates: 50 x 100 ft is no 5,000 ft of row.
  describe("the sides of a plot, or rows times their length,", () => {
    const TEXTS = [
      ...["50 x 100 ft", "50x100 ft", "4x8 ft", "14 × 160 ft", "14 x 1000 ft", "3*100 ft", "50 by 100 ft"],
      ...["50 ft x 100 ft", "50' x 100'", "50 ft by 100 ft", "3 times 100 ft", "50 x 100", "10 x 20 x 30 ft"],
      ...["14 rows x 160 ft", "3 rows of 100 ft", "1 row × 100 ft", "14 rows", "2 x 100 sq ft"],
      ...["2 por 100 m", "50 x 100 m", "50 m por 100 m", "14 hileras de 100 m", "3 veces 100 m"],
    ];

    it.each(TEXTS)("%s, where one amount is asked for", (text) => {
      const refused = (dimension?: "length" | "area" | "volume") => {
        const { issues } = refusal(() =>
          dimension ? parseQuantity(text, { dimension }) : parseQuantity(text),
        );
        expect(issues.map(({ code }) => code)).toEqual(["unreadable"]);
        return issues[0]?.message;
      };
      const shown = text.replaceAll('"', '\\"');
      expect(refused("length")).toBe(
        `Enter one length, not "${shown}". Each side, and the number of rows, has its own field.`,
      );
      expect(refused("area")).toBe(
        `Enter one area, not "${shown}". Multiply the sides, or enter a rectangle's length and width.`,
      );
      expect(refused("volume")).toBe(`Enter one amount, not "${shown}".`);
      expect(refused()).toBe(`Enter one amount, not "${shown}".`);
    });

    it("and keeps to rates in Spanish, and to a sign between a number and its unit", () => {
      expect(parseQuantity("2 mL por 100 m")).toEqual(qty(2, "mL/100m"));
      expect(parseQuantity("4 × tablespoons")).toEqual(qty(4, "tbsp"));
    });
  });

  it.each([
    ["1 100m", "1 100", "1100"],
    ["2 100m2", "2 100", "2100"],
    ["12 100ft2", "12 100", "12100"],
  ])("%s, where a space may have slipped in", (text, given, meant) => {
    const { message } = refusal(() => parseQuantity(text));
    expect(message).toBe(`Is "${given}" one number? Write it without the space: ${meant}.`);
  });

  it.each([
    ["gal", '"gal"', "Start with a number, such as 5 gal."],
    ["abc", '"abc"', "Start with a number, such as 5 gal."],
    ["/ac", '"/ac"', "Start with a number, such as 5 gal."],
    ["5 per acre", '"5"', "Write a unit after the number, such as 5 gal."],
    ["2 100/300 gal", '"2 100"', "Write a unit after the number, such as 2100 gal."],
    ["1:100", '":100"', "Enter one amount with its unit, such as 5 gal."],
    ["5 gal xyz", '"xyz"', "Enter one amount with its unit, such as 5 gal."],
    ["5 ft of bed", '"of bed"', "Enter one amount with its unit, such as 5 ft."],
    ["5 mL/m of bed", '"of bed"', "Enter one amount"],
    ["5 ft of row", '"of row"', "Enter one amount"],
    ["5 g per row plant", '"row plant"', "Enter one amount"],
    ["5 gal/ac of row", '"of row"', "Enter one amount"],
    ["5 gallon tank", '"tank"', "Enter one amount"],
    ["5 gal/ac/h", '"/h"', "Enter one amount"],
    ["2 1,000 sq ft", '"1,000 sq ft"', "Enter one amount"],
    ["2 3/2 gal", '"3/2 gal"', "Enter one amount"],
    ["2 1/0 gal", '"1/0 gal"', "Enter one amount"],
    ["5 gal v/v", '"v/v"', "Enter one amount"],
    ["5² gal", '"²"', "Enter one amount"],
    ["~5 gal", '"~5"', "Enter one amount"],
    ["5 gal; 3 gal", '";"', "Enter one amount"],
    ["5 gal.,", '","', "Enter one amount"],
    ["\u0000", '"\\u0000"', "Enter one amount"],
    ["8/100 gal", '"8/100"', "Write what it is 8 of, such as 8 fl oz/100 gal, or use a decimal."],
    ["8/1000 sq ft", '"8/1000"', "or use a decimal"],
    ["3 ft.6 in", '".6"', "Put a space between the unit and the next number."],
    ["6 in 3 ft", '"3 ft"', "parts from large to small, such as 3 ft 6 in"],
    ["3 ft 6 gal", '"6 gal"', "Enter one amount"],
    ["3 ft 2 ft", '"2 ft"', "Enter one amount"],
    ["3 ft 8 oz", '"8 oz"', "Enter one amount"],
    ["2 tbsp 8 oz", '"8 oz"', "Enter one amount"],
    ["3 ft, 2 ft", '"2 ft"', "Enter one amount"],
    ["5% v/w", '"v/w"', "Write v/v (by volume), w/v (weight in volume) or w/w (by weight)."],
  ])("%j, naming %s", (text, part, words) => {
    const options = text.startsWith("2 100/300") ? { locale: "fr" } : {};
    expectRefused(() => parseQuantity(text, options), "unreadable", "text", `Couldn't read ${part}. `);
    expectRefused(() => parseQuantity(text, options), "unreadable", "text", words);
  });

  it.each([
    ["1-2 pt/ac", "rate"],
    ["1 - 2 pt/ac", "rate"],
    ["1–2 pt/ac", "rate"],
    ["1 to 2 pt per acre", "rate"],
    ["1 pt/ac - 2 pt/ac", "rate"],
    ["1 pt/ac or 2 pt/ac", "rate"],
    ["2-3 gal", "amount"],
    ["1 to 1 1/2 gal", "amount"],
    ["3 ft -6 in", "amount"],
  ])("%s, a range: one %s has to be chosen", (text, what) => {
    expectRefused(() => parseQuantity(text), "unreadable", "text", `is a range. Choose one ${what} from it.`);
  });

  it.each([
    ["5 galons per acre", '"galons"', 'Did you mean "gal"?'],
    ["5 gallons per acrs", '"acrs"', 'Did you mean "ac"?'],
    ["5 litrros", '"litrros"', 'Did you mean "L"?'],
    ["5 tblsp", '"tblsp"', 'Did you mean "tbsp"?'],
    ["5 dry quarts", '"dry quarts"', "isn't known here"],
    ["5 constructor", '"constructor"', 'Measure in one such as "gal".'],
    ["5 gal per psi", '"gal per psi"', "Write how much that is per ac or per 1,000 sq ft."],
    ["5 mph/h", '"mph/h"', "Write how much that is per ac or per 1,000 sq ft."],
    ["1e3 ft", '"e3 ft"', "isn't known here"],
    ["5 ℓ", '"ℓ"', 'Measure in one such as "gal".'],
  ])("%s, not knowing %s", (text, part, words) => {
    expectRefused(() => parseQuantity(text), "unknown-unit", "text", `The unit ${part} isn't known here. `);
    expectRefused(() => parseQuantity(text), "unknown-unit", "text", words);
  });

  it.each([
    ["5 gal per 3 ac", "Enter the amount for 1 ac, not for 3 ac."],
    ["5 gal per 1/2 ac", "Enter the amount for 1 ac, not for 0.5 ac."],
    ["5 fl oz/100 imp gal", "Enter the amount for 1 imp gal, not for 100 imp gal."],
  ])("%s, the amount for several", (text, words) => {
    expectRefused(() => parseQuantity(text), "unknown-unit", "text", words);
  });

  it.each(["", "   ", "\u00a0"])("%j, in which nothing is", (text) => {
    expectRefused(() => parseQuantity(text), "missing", "text", "Enter an amount, such as 5 gal.");
    const rate = { dimension: "volumeRate", system: "metric" } as const;
    expectRefused(() => parseQuantity(text, rate), "missing", "text", "Enter an amount, such as 5 L/ha.");
  });

  it("what is no text", () => {
    expectRefused(() => parseQuantity(undefined as never), "missing", "text");
    expectRefused(() => parseQuantity(null as never), "missing", "text");
    for (const other of [5, {}, ["5 gal"], true, Symbol("x")]) {
      expectRefused(() => parseQuantity(other as never), "not-a-quantity", "text", "Enter some text");
    }
  });

  it("text of any length, quickly and with a short message", () => {
    for (const piece of ["1", "1,", "1 ", "1/2 ", "gal ", "/", "½", "'", "a", "1 ft ", "(v/v)", "\u00a0x"]) {
      const error = refusal(() => parseQuantity(piece.repeat(100_000)));
      expect(error.code).toBe("unreadable");
      expect(error.message.length).toBeLessThan(200);
    }
  });

  it("an option that is not offered", () => {
    const options = (change: object) => () => parseQuantity("5 oz", { ounce: "dry", ...change } as never);
    expectRefused(() => parseQuantity("5 gal", "de" as never), "not-a-quantity", "options");
    expectRefused(options({ locale: "not a tag" }), "unknown-choice", "options.locale", "en-US");
    // Tags by their shape, of no language: the computer's own would decide whether 1,500 is 1.5.
    for (const locale of ["german", "xx", "zz-ZZ"])
      expectRefused(options({ locale }), "unknown-choice", "options.locale", "en-US");
    expectRefused(options({ locale: 5 }), "not-a-quantity", "options.locale");
    expectRefused(options({ system: "UK" }), "unknown-choice", "options.system", "us, imperial, metric");
    expectRefused(options({ ounce: "wet" }), "unknown-choice", "options.ounce");
    expectRefused(options({ dimension: "weight" }), "unknown-choice", "options.dimension");
    expectRefused(
      options({ dimensions: "mass" }),
      "unknown-field",
      "options.dimensions",
      "Did you mean dimension?",
    );
    const faults = refusal(options({ system: "UK", ounces: "dry" })).issues.map(({ path }) => path);
    expect(faults).toEqual(["options.system", "options.ounces"]);
  });

  it("no option that is null", () => {
    expect(parseQuantity("5 gal", null as never)).toEqual({ value: 5, unit: "gal" });
    expect(parseQuantity("5 gal", { system: null, dimension: null } as never)).toEqual({
      value: 5,
      unit: "gal",
    });
  });

  it("a dimension that is not the one asked for", () => {
    const asked = (text: string, dimension: Dimension) => () => parseQuantity(text, { dimension });
    expectRefused(
      asked("5 oz wt", "volume"),
      "wrong-dimension",
      "text",
      "oz (weight) and fl oz (volume) are different",
    );
    expectRefused(
      asked("5 ft", "volumeRate"),
      "wrong-dimension",
      "text",
      "Enter a volume per area, such as 5 gal/ac.",
    );
    expectRefused(asked("5 ft", "time"), "wrong-dimension", "text", "such as 5 s");
    expectRefused(asked("5 m", "volume"), "wrong-dimension", "text", "such as 5 L");
  });
});

describe("parseQuantity of what people say for per", () => {
  it.each([
    ["2 tbsp in a gallon", 2, "tbsp/gal"],
    ["2 tbsp a gallon", 2, "tbsp/gal"],
    ["2 tbsp for each gallon", 2, "tbsp/gal"],
    ["2 tbsp in 1 gallon", 2, "tbsp/gal"],
    ["1.5 pints an acre", 1.5, "pt/ac"],
    ["2 fl oz for 1000 sq ft", 2, "fl_oz/1000ft2"],
    ["2 fl oz per thousand sq ft", 2, "fl_oz/1000ft2"],
    ["2 fl oz / 1000 ft 2", 2, "fl_oz/1000ft2"],
    ["2 fl oz / 1000 ft sq", 2, "fl_oz/1000ft2"],
    ["8 fl oz per hundred gallons", 8, "fl_oz/100gal"],
    ["5 ml por litro", 5, "mL/L"],
    ["16 onzas líquidas por acre", 16, "fl_oz/ac"],
    ["2 libras/acre", 2, "lb/ac"],
    ["2 litros por hectárea", 2, "L/ha"],
  ] as const)("%s", (text, value, unit) => {
    expect(parseQuantity(text)).toEqual(qty(value, unit));
  });

  it("reads the short forms of Spanish kitchens and shops", () => {
    for (const [text, unit] of [
      ["2 cdas/galón", "tbsp/gal"],
      ["1 cdta por galón", "tsp/gal"],
      ["3 cditas", "tsp"],
      ["144 pulg.", "in"],
    ] as const)
      expect(parseQuantity(text, { locale: "es-US" }).unit, text).toBe(unit);
  });

  it("reads Spanish units, and metric ones as they are written there", () => {
    expect(parseQuantity("500 mt2")).toEqual(qty(500, "m2"));
    expect(parseQuantity("500 metros cuadrados")).toEqual(qty(500, "m2"));
    expect(parseQuantity("5 mL por metro cuadrado")).toEqual(qty(5, "mL/m2"));
    expect(parseQuantity("90 pulgadas cuadradas")).toEqual(qty(90, "in2"));
    expect(parseQuantity("40 segundos")).toEqual(qty(40, "s"));
    expect(parseQuantity("30 pulgadas")).toEqual(qty(30, "in"));
    expect(parseQuantity("50 mts")).toEqual(qty(50, "m"));
    expect(parseQuantity("2 cucharadas")).toEqual(qty(2, "tbsp"));
    expect(parseQuantity("3 gal/hac")).toEqual(qty(3, "gal/ha"));
    expect(refusal(() => parseQuantity("16 onzas/acre")).issues[0]?.key).toBe("which-ounce");
  });

  it("leaves an inch and an are what they are", () => {
    for (const text of ["3 ft 6 in", "3'-6\"", "3 ft-6 in"])
      expect(parseQuantity(text)).toEqual(qty(3.5, "ft"));
    expect(refusal(() => parseQuantity("3 ft-6 ft")).issues[0]?.key).toBe("range");
    expect(refusal(() => parseQuantity("2 kg/a")).issues[0]?.key).toBe("acre-or-are");
    expect(refusal(() => parseQuantity("5 gal a")).issues[0]?.key).toBe("text-unfinished");
  });
});

describe("a unit that isn't known", () => {
  const said = (text: string, dimension?: Dimension) =>
    refusal(() => (dimension === undefined ? parseQuantity(text) : parseQuantity(text, { dimension })))
      .issues[0]?.message;

  it("is asked about where two are spelled as much like it", () => {
    expect(said("2 tsbp/gal")).toBe(
      'The unit "tsbp" isn\'t known here. Write "tsp" or "tbsp", whichever was measured.',
    );
  });

  it("is no cup where it is a cap, and nothing that holds more or less", () => {
    for (const text of ["1 cap/gal", "2 capfuls per gallon", "3 fl oz/tank", "2 scoops/gal", "1 tapa/gal"])
      expect(said(text), text).toMatch(/^There is no one size of "\p{L}+"\. Measure what it holds/u);
  });

  it("is never guessed to be one that the place doesn't take", () => {
    expect(said("50 mtss", "length")).toMatch(/"m"/);
    expect(said("2 spoons/gal", "volumeConcentration")).not.toContain("spot");
    expect(said("160 paces", "length")).toBe(
      'The unit "paces" isn\'t known here. Measure in one such as "ft".',
    );
  });
});

describe("a number in the unit under the stroke", () => {
  reads([
    ["1.2 oz wt/K sq ft", 1.2, "oz/1000ft2"],
    ["2 fl oz/1K sq ft", 2, "fl_oz/1000ft2"],
    ["1 lb per 1k sq ft", 1, "lb/1000ft2"],
    ["0.5 mL / K sq. ft.", 0.5, "mL/1000ft2"],
    ["5 lb/Ksf", 5, "lb/1000ft2"],
    ["5 lb/1Ksqft", 5, "lb/1000ft2"],
    ["5 lb/k ft2", 5, "lb/1000ft2"],
    ["5 lb/kft²", 5, "lb/1000ft2"],
    ["2 lb/1000 sf", 2, "lb/1000ft2"],
    ["2 lb/1000sf", 2, "lb/1000ft2"],
    ["2 lb/1,000 SF", 2, "lb/1000ft2"],
    ["2 lb/1,000sqft", 2, "lb/1000ft2"],
    ["2 lb per thousand square feet", 2, "lb/1000ft2"],
    ["2 lb per one thousand square feet", 2, "lb/1000ft2"],
    ["2 lb per 1 thousand sq ft", 2, "lb/1000ft2"],
    ["2 libras por mil pies cuadrados", 2, "lb/1000ft2"],
    ["2 libras por 1 mil pies cuadrados", 2, "lb/1000ft2"],
    ["2 lb por 100 galones", 2, "lb/100gal"],
    ["2 lb por cien galones", 2, "lb/100gal"],
    ["2 lb/100 gal", 2, "lb/100gal"],
    ["5,000 sf", 5000, "ft2"],
    ["100 lf", 100, "ft"],
    ["2 oz wt/100 LF", 2, "oz/100ft"],
    ["2 oz wt/K lf", 2, "oz/1000ft"],
  ]);

  it("is asked about where it is M", () => {
    for (const text of ["2 lb/M", "2 lb/M sq ft", "2 lb/MSF", "2 lb/msf", "2 lb/Msqft", "5 msf"])
      expect(refusal(() => parseQuantity(text)).issues[0]?.key, text).toBe("meter-or-mile");
  });

  const counted = simpleUnits().flatMap((unit) => {
    const [, count, of] = /^(\d+)(\D.*)$/.exec(unit) ?? [];
    return of === undefined ? [] : [{ unit, count: Number(count), of: of as Unit }];
  });
  const namesOf = (unit: Unit) => {
    const { symbol, plural, singular } = describeUnit(unit);
    return [unit, symbol, plural, singular, symbol.replaceAll(" ", "")];
  };

  it.each(counted)("is read as it was written: $unit", ({ unit, count, of }) => {
    const words = count === 1000 ? ["thousand", "one thousand", "mil", "1 mil"] : ["hundred", "one hundred"];
    const numbers = [...words, String(count), count.toLocaleString("en-US")];
    for (const name of namesOf(of))
      for (const written of numbers.flatMap((number) =>
        /\d$/.test(number) ? [`${number} ${name}`, number + name] : [`${number} ${name}`],
      )) {
        expect(parseQuantity(`2 lb/${written}`), written).toEqual({ value: 2, unit: `lb/${unit}` });
        expect(parseQuantity(`2 lb per ${written}`), written).toEqual({ value: 2, unit: `lb/${unit}` });
      }
  });

  // Kmph is a speed as it is, and no rate is per part per million.
  const single = simpleUnits().filter((unit) => /^\D/.test(unit) && unit !== "mph" && unit !== "ppm");
  const outcome = (text: string): readonly [Unit | undefined, SprayMathError?] => {
    try {
      return [parseQuantity(text).unit];
    } catch (error) {
      return [undefined, error as SprayMathError];
    }
  };

  it.each(single)("is never left out or changed: %s", (of) => {
    const over = /ft3|m3|gal|L/.test(of) ? "fl oz" : "lb";
    const names = namesOf(of).filter((name) => /^[a-z]/i.test(name));
    // With a slip in it, too.
    const slips = names.filter((name) => name.length > 4).map((name) => name.replace(/(.)(.)$/, "$2$1"));
    const counts = ["K ", "k ", "1K ", "1k ", "K", "k", "C ", "C", "1 C ", "D ", "dozen ", "MM "];
    for (const name of [...names, ...slips])
      for (const count of counts.filter((count) => names.includes(name) || count.endsWith(" "))) {
        // kg, km, cm and the like are what they say.
        if (knownSpellings().has(`${count}${name}`.toLowerCase().replace("²", "2").replace("³", "3")))
          continue;
        for (const text of [`2 ${over}/${count}${name}`, `2 ${count}${name}`]) {
          const [read, error] = outcome(text);
          if (read !== undefined) expect(read.split("/")[1], text).toBe(`1000${of}`);
          const { given, meant } = error?.issues[0]?.figures ?? {};
          // What is said of the name alone leaves the number as it is.
          if (given !== `"${name}"`) expect(meant, text).toBeUndefined();
        }
      }
  });
});

describe("an unknown unit under the stroke", () => {
  it.each<[string, ParseOptions, string]>([
    ["2 kg/mz", {}, '"mz" isn\'t known here. Write how much that is per ac or per 1,000 sq ft.'],
    ["2 lb/mz", { dimension: "massRate" }, "Write how much that is per ac or per 1,000 sq ft."],
    ["2 kg/mz", { system: "metric" }, "Write how much that is per ha or per 100 m²."],
    [
      "2 lb/C gal",
      { dimension: "density" },
      '"C gal" isn\'t known here. Write how much that is per gal or per 100 gal.',
    ],
    ["2 fl oz/vat", { dimension: "volumeConcentration" }, "per gal or per 100 gal."],
    ["2 mL/vat", { dimension: "volumeConcentration", system: "metric" }, "per L or per 100 L."],
    ["2 fl oz/bulb", { dimension: "volumePerCount" }, "per plant or per 1,000 plants."],
    ["2 fl oz/vara", { dimension: "volumePerLength" }, "per 100 ft or per 1,000 ft."],
    ["2 gal/blink", { dimension: "flow" }, "per min or per h."],
    ["2 kg/k m2", {}, '"k m2" isn\'t known here. Write how much that is per ac'],
    // The other way around it is another amount.
    ["5 ac/gal", {}, '"ac/gal" isn\'t known here.'],
  ])("%s: the message is about that part only", (text, options, words) => {
    const { message } = refusal(() => parseQuantity(text, options));
    expect(message).toContain(words);
    expect(message.length).toBeLessThanOrEqual(160);
    expect(message).not.toMatch(/Did you mean/);
  });

  it("is 1,000 of a unit that is only known by itself", () => {
    expect(refusal(() => parseQuantity("2 fl oz/K gal")).message).toBe(
      "Enter the amount for 1 gal, not for 1,000 gal.",
    );
  });
});

describe("an example in place of text that can't be read", () => {
  it.each<[string, Dimension, string]>([
    ["9 s per plant", "time", 'Measure in one such as "s".'],
    ["9 s per plant", "volumePerCount", "Write how much that is per plant or per 1,000 plants."],
    ["2 lb per xyz", "massRate", "Write how much that is per ac or per 1,000 sq ft."],
    ["2 lb foo", "massRate", "such as 5 lb/ac."],
    ["2 lb foo", "mass", "such as 2 lb."],
    // The number of another unit would mislead.
    ["2 lb foo", "volumeRate", "such as 5 gal/ac."],
    ["3 m foo", "time", "such as 5 s."],
  ])("fits the place: %s for %s, %s", (text, dimension, words) => {
    expect(refusal(() => parseQuantity(text, { dimension })).message).toContain(words);
  });
});

describe("parseQuantity waits", () => {
  it.each<[string, string, ParseOptions?]>([
    ["160 ft 6", "160 ft 6 in"],
    ["160 ft 6", "160 ft 6 in", { dimension: "length" }],
    ["5 lb 3", "5 lb 3 oz wt"],
    ["1 gal 2", "1 gal 2 qt"],
    ["1 gal 2", "1 gal 2 imp qt", { system: "imperial" }],
    ["1 cup 2", "1 cup 2 tbsp"],
    ["2 yd 1 ft 6", "2 yd 1 ft 6 in"],
    ["1 mi 200", "1 mi 200 ft"],
    ["2 L 500", "2 L 500 mL"],
    ["3 m 20", "3 m 20 cm"],
    ["1 h 5", "1 h 5 min"],
    ["2 min 30", "2 min 30 s"],
    ["3 ft 6 1/2", "3 ft 6.5 in"],
  ])("for the unit after %j, most likely the next smaller: %s", (text, meant, options) => {
    const { code, message } = refusal(() => parseQuantity(text, options));
    expect([code, message]).toEqual(["incomplete", `Add the unit of the last number, such as ${meant}.`]);
    expect(parseQuantity(meant, options).value).toBeGreaterThan(0);
  });

  it.each(
    (["us", "imperial", "metric"] as const).flatMap((system) =>
      (Object.keys({ ...TABLE, ...COMPOUNDS }) as Dimension[]).map((dimension) => ({ system, dimension })),
    ),
  )("for the unit of a number, with an example that is read: $dimension, $system", (options) => {
    const { code, message } = refusal(() => parseQuantity("20", options));
    const example =
      /^Add the unit that was measured or that the label gives, such as (20.+)\.$/.exec(message)?.[1] ?? "";
    expect(code).toBe("incomplete");
    expect(dimensionOf(parseQuantity(example, options).unit)).toBe(options.dimension);
  });

  it.each<[string, string, ParseOptions?]>([
    ["15", "Add the unit that was measured or that the label gives, such as 15 gal."],
    ["15", "Add the unit that was measured or that the label gives, such as 15 L.", { system: "metric" }],
    ["2 1/2", "Add the unit that was measured or that the label gives, such as 2.5 gal."],
    ["1/2", "Add the unit that was measured or that the label gives, such as 0.5 gal."],
    // The message is in English: 1.5 L, typed by somebody with a comma, would be refused.
    [
      "1,5",
      "Add the unit that was measured or that the label gives, such as 5 L.",
      { locale: "de", system: "metric" },
    ],
    [
      "1,5 l/",
      "Add the unit that was measured or that the label gives, such as 5 L/ha.",
      { locale: "de", system: "metric" },
    ],
    [
      "15",
      "Add the unit that was measured or that the label gives, such as 15 L.",
      { locale: "de", system: "metric" },
    ],
    ["1/", "Finish the number."],
    ["2 1", "Finish the number."],
    ["15 L/", "Add the unit that was measured or that the label gives, such as 15 L/ac."],
    [
      "15 L/",
      "Add the unit that was measured or that the label gives, such as 15 L/ha.",
      { system: "metric" },
    ],
    [
      "15 L/",
      "Add the unit that was measured or that the label gives, such as 15 L/min.",
      { dimension: "flow" },
    ],
    ["15 L per", "Add the unit that was measured or that the label gives, such as 15 L/ac."],
    ["15 psi/", "Add the unit that was measured or that the label gives, such as 5 gal/ac."],
    ["8 fl oz/100", 'Add the unit after 100, such as "sq ft" or "gal".'],
    // No time is per anything, so the example is a time.
    [
      "9 s per",
      "Add the unit that was measured or that the label gives, such as 5 s.",
      { dimension: "time" },
    ],
    ["4 in 2", "Enter one amount with its unit, such as 4 in."],
    ["3 ft 6 i", 'Finish the unit "i".'],
    ["3 x", "Add the unit that was measured or that the label gives, such as 3 gal."],
    ["2 1/", "Finish the number."],
    ["1.", "Finish the number."],
    ["1,", "Finish the number."],
    [".", "Finish the number."],
    ["5 f", 'Finish the unit "f".'],
    ["5 fl", 'Finish the unit "fl".'],
    ["5 fl o", 'Finish the unit "fl o".'],
    ["5 gall", 'Finish the unit "gall".'],
    ["5 gal/acr", 'Finish the unit "acr".'],
    ["5 imp", 'Finish the unit "imp".'],
    ["5 gal p", "Finish what you're typing."],
    ["5% v", "Finish what you're typing."],
    ["5% v/", "Finish what you're typing."],
    ["5% by", "Finish what you're typing."],
    ["5% by vol", "Finish what you're typing."],
    ["-", "Start with a number, such as 5 gal."],
    ["+", "Start with a number, such as 5 gal."],
  ])("for the rest of %j: %s", (text, words, options) => {
    const { code, message } = refusal(() => parseQuantity(text, options));
    expect([code, message]).toEqual(["incomplete", words]);
  });

  it("for every text that is cut short, never taking it for wrong, but where it asks", () => {
    for (const whole of [
      "2 1/2 gal",
      "12 fl oz/1000 ft2",
      "0.25% v/v",
      "1.5 oz wt per acre",
      "3 ft, 6 in",
      "3 ft and 6 in",
    ])
      for (let end = 1; end < whole.length; end++) {
        const codes: string[] = [];
        try {
          parseQuantity(whole.slice(0, end));
        } catch (error) {
          codes.push((error as { code: string }).code);
        }
        expect(["incomplete", "ambiguous-unit", undefined], whole.slice(0, end)).toContain(codes[0]);
      }
  });
});

describe("parseNumber", () => {
  it.each([
    ["14", 14, "en-US"],
    ["1,000", 1000, "en-US"],
    ["1.000,5", 1000.5, "de"],
    ["2 1/2", 2.5, "en-US"],
    ["2½", 2.5, "en-US"],
    ["-0.5", -0.5, "en-US"],
    ["+5", 5, "en-US"],
    [" 5\u00a0", 5, "en-US"],
    ["10/4", 2.5, "en-US"],
    ["١٢٫٥", 12.5, "ar-EG"],
  ])("reads %j as %d", (text, value, locale) => {
    expect(parseNumber(text, { locale })).toBe(value);
  });

  it("is no -0, and English unless said otherwise", () => {
    expect(Object.is(parseNumber("-0"), 0)).toBe(true);
    expect(parseNumber("1,000.5")).toBe(1000.5);
    expect(parseNumber("5", null as never)).toBe(5);
  });

  it.each([
    ["", "missing", "Enter a number here."],
    ["-", "incomplete", "Enter only a number, in the unit of the field."],
    ["1/", "incomplete", "Finish the number."],
    ["2 1/", "incomplete", "Finish the number."],
    ["2 1", "incomplete", "Finish the number."],
    ["1.", "incomplete", "Finish the number."],
    ["abc", "unreadable", 'Couldn\'t read "abc". Enter only a number, in the unit of the field.'],
    ["5 L", "unreadable", 'Couldn\'t read "L". Enter only a number, in the unit of the field.'],
    ["5%", "unreadable", 'Couldn\'t read "%". Enter only a number, in the unit of the field.'],
    ["1-2", "unreadable", 'Couldn\'t read "-2". Enter only a number, in the unit of the field.'],
    ["1/2/3", "unreadable", 'Couldn\'t read "/3". Enter only a number, in the unit of the field.'],
    ["1:2", "unreadable", 'Couldn\'t read ":2". Enter only a number, in the unit of the field.'],
    ["44,5", "unreadable", 'Couldn\'t read "44,5". Use a point for decimals: 44.5.'],
    ["1.000", "ambiguous-number", "Is 1.000 meant as 1 or as 1,000? Write the one you mean."],
    ["11/2", "ambiguous-number", "Is 11/2 meant as 1 1/2 or as 5.5? Write the one you mean."],
    ["1".repeat(201), "unreadable", "This is too long. Enter at most 200 characters."],
  ])("refuses %j: %s", (text, code, words) => {
    const error = refusal(() => parseNumber(text));
    expect([error.code, error.path, error.message]).toEqual([code, "text", words]);
  });

  it("refuses what is no text, and options that are not offered", () => {
    expectRefused(() => parseNumber(5 as never), "not-a-quantity", "text");
    expectRefused(() => parseNumber(null as never), "missing", "text");
    expectRefused(() => parseNumber("5", { system: "us" } as never), "unknown-field", "options.system");
    expectRefused(() => parseNumber("5", { locale: "not a tag" }), "unknown-choice", "options.locale");
  });
});

describe("textReader", () => {
  it("reads by its options, and by the dimensions of the place", () => {
    const reader = textReader({ locale: "de", system: "imperial", ounce: "liquid" });
    expect(reader.number("1,5")).toBe(1.5);
    expect(reader.quantity("1,5 oz", ["volume"])).toEqual({ value: 1.5, unit: "imp_fl_oz" });
    expect(reader.quantity("40 lb/sq in", ["massRate", "pressure"])).toEqual({ value: 40, unit: "psi" });
    expect(textReader().quantity("1.5 gal", [])).toEqual({ value: 1.5, unit: "gal" });
  });

  it("reads a text whose unit was typed before as it reads one anew", () => {
    const reader = textReader();
    const dimensions = ["area"] as const;
    expect(reader.quantity("2.5 sq ft", dimensions)).toEqual({ value: 2.5, unit: "ft2" });
    for (const [text, value] of [
      ["0.625", 0.625],
      ["1.125", 1.125],
      ["59.875", 59.875],
      ["1.00001", 1.00001],
      ["1.0000", 1],
      ["12.0010", 12.001],
    ] as const)
      expect(reader.quantity(`${text} sq ft`, dimensions)).toEqual({ value, unit: "ft2" });
    expectRefused(() => reader.quantity("1.000 sq ft", dimensions), "ambiguous-number", "text");
    expectRefused(() => reader.quantity("1.125.5 sq ft", dimensions), "unreadable", "text");
  });

  it("reads any number of spellings", () => {
    const reader = textReader();
    const dimensions = ["volume"] as const;
    for (const turn of [1, 2])
      for (let spaces = 1; spaces <= 150; spaces++)
        expect(reader.quantity(`${turn}${" ".repeat(spaces)}gal`, dimensions)).toEqual({
          value: turn,
          unit: "gal",
        });
  });
});
