import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SprayMathError } from "../../../src/errors.ts";
import {
  type BasedFraction,
  type Dimension,
  type FormatOptions,
  formatQuantity,
  fromUcum,
  isUnit,
  parseQuantity,
  qty,
  toUcum,
  type Unit,
  unitsOf,
} from "../../../src/units/index.ts";
import { COMPOUNDS, TABLE } from "../../../src/units/table.ts";
import { runs } from "../../helpers/runs.ts";

const LOCALES = ["en-US", "de-DE", "fr-FR"];
const MORE_LOCALES = [
  "en-GB",
  "en-IN",
  "de-CH",
  "sv-SE",
  "pl-PL",
  "pt-BR",
  "es-ES",
  "ar-EG",
  "hi-IN",
  "ja-JP",
];
const DIMENSIONS = [...Object.keys(TABLE), ...Object.keys(COMPOUNDS)] as Dimension[];
const EVERY = DIMENSIONS.flatMap((dimension) =>
  (unitsOf(dimension) as Unit[]).map((unit) => ({ dimension, unit })),
);
const VALUES = [0, 1, 1.5, 0.0625, 1234.5678, 1234567.8, 1e-6];

const amount = fc.double({ min: 1e-6, max: 1e12, noNaN: true });

function rounding(value: number, digits: number): number {
  if (value === 0) return 0;
  // Half a unit of the last digit, and the last bit of the two floats that are compared.
  return (
    10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - digits) * 0.5000001 + Math.abs(value) * 2 ** -52
  );
}

function expectBack(value: number, unit: Unit, dimension: Dimension, options: FormatOptions): void {
  const text = formatQuantity(qty(value, unit), options);
  const back = parseQuantity(text, { dimension, ...(options.locale && { locale: options.locale }) });
  // 2 of 100 ft is written as 200 ft.
  const [, count = 1, plain = unit] = /^(\d+)(\D.*)$/.exec(unit) ?? [];
  const whole = value * Number(count);
  expect(back.unit, text).toBe(plain);
  expect(Math.abs(back.value - whole), text).toBeLessThanOrEqual(rounding(whole, options.digits ?? 4));
}

describe("what formatQuantity writes, parseQuantity reads", () => {
  it.each(LOCALES)("for every unit, in symbols, in %s", (locale) => {
    for (const { unit, dimension } of EVERY) {
      if (unit === "lb/in2") continue; // The next test but one.
      for (const value of VALUES) expectBack(value, unit, dimension, { locale });
    }
  });

  it.each(LOCALES)("for every unit, by name, in %s; mi/h comes back as mph", (locale) => {
    for (const { unit, dimension } of EVERY) {
      if (unit === "mi/h") continue;
      for (const value of VALUES) expectBack(value, unit, dimension, { locale, unitStyle: "name" });
    }
    expect(parseQuantity(formatQuantity(qty(2, "mi/h"), { unitStyle: "name" }))).toEqual(qty(2, "mph"));
  });

  it("for pounds per square inch, as weight per area in symbols and as pressure by name", () => {
    expect(parseQuantity(formatQuantity(qty(2, "lb/in2")))).toEqual(qty(2, "lb/in2"));
    expect(parseQuantity(formatQuantity(qty(2, "psi"), { unitStyle: "name" }))).toEqual(qty(2, "psi"));
  });

  it("for random units, amounts, digits and locales", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...EVERY),
        amount,
        fc.integer({ min: 1, max: 15 }),
        fc.constantFrom(...LOCALES, ...MORE_LOCALES),
        ({ unit, dimension }, value, digits, locale) => {
          expectBack(value, unit, dimension, { locale, digits });
          if (value < 1e9) expectBack(-value, unit, dimension, { locale, digits });
        },
      ),
      runs(500),
    );
  });

  it("to every digit, at 17 of them", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e15, noNaN: true }),
        fc.constantFrom(...LOCALES),
        (value, locale) => {
          expect(
            parseQuantity(formatQuantity(qty(value, "fl_oz/ac"), { digits: 17, locale }), { locale }).value,
          ).toBe(value);
        },
      ),
    );
  });

  it("in fractions, to half of the smallest one", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 1e5, noNaN: true }),
        fc.constantFrom(2, 3, 4, 8, 16, 32, 64),
        fc.constantFrom("tsp", "cup", "gal/ac", "ft"),
        fc.constantFrom(...LOCALES),
        (value, fraction, unit, locale) => {
          const text = formatQuantity(qty(value, unit as "tsp"), { fraction: fraction as 8, locale });
          const back = parseQuantity(text, { locale });
          expect(back.unit).toBe(unit);
          expect(Math.abs(back.value - value), text).toBeLessThanOrEqual(0.5 / fraction + 1e-9);
        },
      ),
    );
  });

  it("with the basis of a fraction", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.constantFrom("%", "ppm", "1"),
        fc.constantFrom("v/v", "w/v", "w/w"),
        fc.constantFrom(...LOCALES),
        fc.constantFrom("symbol", "name"),
        (value, unit, basis, locale, unitStyle) => {
          const given = { value, unit, basis } as BasedFraction;
          const text = formatQuantity(given, { locale, unitStyle: unitStyle as "symbol" });
          expect(parseQuantity(text, { locale })).toEqual(given);
        },
      ),
    );
  });
});

describe("parseQuantity, on anything at all", () => {
  const pieces = fc.constantFrom(
    ..."0123456789.,'\"/ -+×%()½²′″\u00a0".split(""),
    "gal",
    "fl oz",
    "oz",
    "ft",
    "in",
    "per",
    "ac",
    "v/v",
    "100",
    "1,000",
    "sq",
    "imp",
    "gpa",
    "of",
  );
  const text = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.array(pieces, { maxLength: 12 }).map((list) => list.join("")),
  );

  it("gives a known unit and a finite number, or the library's own error with a place and a short message", () => {
    fc.assert(
      fc.property(text, fc.constantFrom(...LOCALES, "de-CH", "en-IN"), (given, locale) => {
        try {
          const { value, unit } = parseQuantity(given, { locale });
          expect(Number.isFinite(value) && isUnit(unit)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(SprayMathError);
          const { code, path, message } = error as SprayMathError;
          expect([
            "missing",
            "incomplete",
            "unreadable",
            "unknown-unit",
            "ambiguous-unit",
            "ambiguous-number",
          ]).toContain(code);
          expect(path).toBe("text");
          expect(message.length).toBeLessThan(300);
        }
      }),
      runs(3000),
    );
  });
});

describe("a group sign or a decimal sign", () => {
  it("is never taken for the other: a number is right or refused", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99999 }),
        fc.stringMatching(/^\d{1,5}$/),
        fc.constantFrom(",", "."),
        (whole, rest, sign) => {
          for (const locale of LOCALES) {
            const decimal = locale === "en-US" ? "." : ",";
            let value: number | undefined;
            try {
              value = parseQuantity(`${whole}${sign}${rest} L`, { locale }).value;
            } catch {}
            if (sign === decimal) expect(value).toBe(Number(`${whole}.${rest}`));
            else if (value !== undefined) {
              expect(value).toBe(Number(`${whole}${rest}`));
              expect(rest.length).toBe(3);
              expect(whole > 0 && whole < 1000).toBe(true);
            }
          }
        },
      ),
    );
  });
});

describe("a UCUM code", () => {
  it("is never read as a unit of another code", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.constantFrom(...EVERY).map(({ unit }) => toUcum(unit).replace(/[[\]()]/, "")),
        ),
        (code) => {
          try {
            expect(toUcum(fromUcum(code))).toBe(code);
          } catch (error) {
            expect(error).toBeInstanceOf(SprayMathError);
          }
        },
      ),
    );
  });
});

describe("a text with a unit that was read before", () => {
  const written = EVERY.flatMap(({ unit, dimension }) => {
    const text = formatQuantity(qty(7, unit)).replace(/^7 ?/, "");
    return /\d/.test(text) ? [] : [{ text, dimension }];
  });
  const short = fc.oneof(
    fc.integer({ min: 0, max: 999_999 }).map(String),
    fc
      .integer({ min: 0, max: 999_999 })
      .map((n) => `${Math.floor(n / 100)}.${String(n % 100).padStart(2, "0")}`),
  );
  const read = (text: string, dimension: Dimension): unknown => {
    try {
      return parseQuantity(text, { dimension });
    } catch (error) {
      return (error as SprayMathError).code;
    }
  };

  it("reads as it does the first time", () => {
    fc.assert(
      fc.property(fc.constantFrom(...written), short, short, ({ text, dimension }, one, other) => {
        // A space more is another text, which nothing is known of.
        const fresh = read(` ${other} ${text}`, dimension);
        read(`${one} ${text}`, dimension);
        expect(read(`${other} ${text}`, dimension)).toEqual(fresh);
      }),
      runs(20_000, 2000),
    );
  });
});
