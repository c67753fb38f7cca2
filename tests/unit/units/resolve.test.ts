import { describe, expect, it } from "vitest";
import { isUnit } from "../../../src/units/index.ts";
import { multiple, multipleOf } from "../../../src/units/multiples.ts";
import { nearest } from "../../../src/units/nearest.ts";
import { compoundDimension, resolveUnit, simpleEntry, simpleUnits } from "../../../src/units/resolve.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

describe("resolveUnit", () => {
  it("takes a compound apart", () => {
    expect(resolveUnit("fl_oz/1000ft2", "unit")).toEqual({
      dimension: "volumeRate",
      over: "fl_oz",
      per: "1000ft2",
      system: "us",
    });
    expect(resolveUnit("mph", "unit")).toEqual({ dimension: "speed", over: "mi", per: "h", system: "us" });
    expect(resolveUnit("gal", "unit")).toEqual({ dimension: "volume", over: "gal", system: "us" });
  });

  it.each(["", " ", null, undefined])("asks for one where %j is none", (unit) => {
    expectRefused(() => resolveUnit(unit, "u"), "missing", "u", 'Choose a unit, such as "gal/ac".');
  });

  it.each([
    "/",
    "gal/",
    "/ac",
    "gal/ac/min",
    "gal per ac",
    "GAL",
    "gal /ac",
    "mph/h",
    "gal/%",
    "ac/gal",
    "toString",
    "__proto__",
  ])("does not know %j", (unit) => {
    expectRefused(() => resolveUnit(unit, "u"), (unit ?? null) === null ? "missing" : "unknown-unit", "u");
    expect(isUnit(unit)).toBe(false);
  });

  it.each([
    ["gallons", "gal"],
    ["fl oz", "fl_oz"],
    ["foot", "ft"],
    ["acres", "ac"],
    ["litres", "L"],
    ["sqft", "ft2"],
    ["gal/acre", "gal/ac"],
    ["gallons per acre", "gal/ac"],
    ["oz/1000sqft", "oz/1000ft2"],
    ["lb/100sqft", "lb/100ft2"],
    ["lb/1,000 sq ft", "lb/1000ft2"],
    ["mL/plants", "mL/plant"],
  ])("suggests the nearest spelling for %j: %j", (given, meant) => {
    expect(refusal(() => resolveUnit(given, "u")).message).toContain(`Did you mean "${meant}"?`);
  });

  it.each([
    "qqqqqq",
    "lb/200ft2",
    "lb/10ft2",
    "gal/100ac",
    "mL/100plant",
    "oz/Ksqft",
    "lb/K sq ft",
    "lb/Cgal",
  ])("suggests nothing far-fetched, and no other amount, for %j", (given) => {
    expect(refusal(() => resolveUnit(given, "u")).message).not.toContain("Did you mean");
  });

  it.each([undefined, null, 5, {}, ["ft"]])("refuses %j as a unit", (unit) => {
    expectRefused(() => resolveUnit(unit, "u"), (unit ?? null) === null ? "missing" : "unknown-unit", "u");
    expect(isUnit(unit)).toBe(false);
  });

  it("is quick with text of any length", () => {
    const message = refusal(() => resolveUnit("x".repeat(1_000_000), "u")).message;
    expect(message.length).toBeLessThan(300);
  });
});

describe("the parts of a unit", () => {
  it("are found in the table", () => {
    expect(simpleEntry("gal")?.dimension).toBe("volume");
    expect(simpleEntry("mph")).toBeUndefined();
    expect(simpleUnits()).toContain("mph");
    expect(compoundDimension("volume", "area")).toBe("volumeRate");
    expect(compoundDimension("area", "volume")).toBeUndefined();
  });

  it("may be a round number of another", () => {
    expect(multipleOf("1000ft2")).toEqual({ count: 1000, of: "ft2" });
    expect(multipleOf("100gal")).toEqual({ count: 100, of: "gal" });
    expect(multipleOf("1")).toBeUndefined();
    expect(multipleOf("ft2")).toBeUndefined();
    expect(multiple(100, "L")).toBe("100L");
    expect(multiple(1, "ac")).toBe("ac");
    expect(multiple(100, "imp_gal")).toBeUndefined();
    expect(multiple(2, "ac")).toBeUndefined();
  });
});

describe("nearest", () => {
  it("looks past capitals and punctuation", () => {
    expect(nearest("Fl. Oz.", ["ft", "fl_oz", "oz"])).toBe("fl_oz");
  });

  it("needs the fewest changes", () => {
    expect(nearest("galons", ["gal", "gallons", "grams"])).toBe("gallons");
  });

  it("counts two letters that were switched once", () => {
    expect(nearest("acer", ["ac", "acre", "ear"])).toBe("acre");
    expect(nearest("rtae", ["date", "rate"])).toBe("rate");
  });

  it("gives none where more than a third of the letters differ", () => {
    expect(nearest("plot", ["size", "split"])).toBeUndefined();
    expect(nearest("plots", ["split"])).toBeUndefined();
    expect(nearest("table", ["cable", "bale"])).toBe("cable");
    expect(nearest("tabel", ["bales"])).toBeUndefined();
    expect(nearest("prodcts", ["products"])).toBe("products");
    expect(nearest("leftover", ["operator", "weather"])).toBeUndefined();
    expect(nearest("calibratoin", ["calibration"])).toBe("calibration");
  });

  it("gives none past the number of changes that is asked for", () => {
    expect(nearest("calibartoin", ["calibration"], 1)).toBeUndefined();
    expect(nearest("calibratoin", ["calibration"], 1)).toBe("calibration");
  });

  it("gives none where nothing is near or nothing was written", () => {
    expect(nearest("zzzz", ["ft", "in"])).toBeUndefined();
    expect(nearest("", ["ft"])).toBeUndefined();
    expect(nearest("?!", ["ft", '"'])).toBeUndefined();
    expect(nearest("ft", [])).toBeUndefined();
  });
});
