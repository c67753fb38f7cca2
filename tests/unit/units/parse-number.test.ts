import { describe, expect, it } from "vitest";
import { parseNumber } from "../../../src/units/index.ts";
import { errorOf } from "../../helpers/bad-input.ts";

describe("parseNumber", () => {
  it.each<[string, string | undefined, number]>([
    ["14", undefined, 14],
    [" 14 ", undefined, 14],
    ["1,000", undefined, 1000],
    ["1.5", undefined, 1.5],
    [".5", undefined, 0.5],
    ["2 1/2", undefined, 2.5],
    ["2½", undefined, 2.5],
    ["-3", undefined, -3],
    ["−3", undefined, -3],
    ["+3", undefined, 3],
    ["-0", undefined, 0],
    ["1,5", "de", 1.5],
    ["1.000", "de", 1000],
    ["1 000,5", "fr", 1000.5],
    ["١٢", "ar-EG", 12],
    ["9".repeat(200), undefined, Number("9".repeat(200))],
  ])("reads %j in the locale %s", (text, locale, value) => {
    expect(Object.is(parseNumber(text, locale === undefined ? {} : { locale }), value)).toBe(true);
  });

  it.each<[unknown, string]>([
    ["", "missing"],
    ["  ", "missing"],
    [undefined, "missing"],
    [null, "missing"],
    [5, "unreadable"],
    [{}, "unreadable"],
    ["x", "unreadable"],
    ["5 ft", "unreadable"],
    ["5 6", "unreadable"],
    ["-", "unreadable"],
    ["1,5", "unreadable"],
    ["1e3", "unreadable"],
    ["9".repeat(201), "unreadable"],
  ])("refuses %j", (text, code) => {
    expect(errorOf(() => parseNumber(text as string))).toMatchObject({ code, path: "text" });
  });

  it("refuses a locale that is none", () => {
    expect(errorOf(() => parseNumber("5", { locale: "!" }))).toMatchObject({
      code: "unknown-choice",
      path: "options.locale",
    });
  });

  it("says what does not belong to the number", () => {
    expect(errorOf(() => parseNumber("5 ft")).message).toBe('Enter a number alone, without "ft".');
  });
});
