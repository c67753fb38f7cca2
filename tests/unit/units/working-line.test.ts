import { describe, expect, it } from "vitest";
import { formulaLines } from "../../../src/units/formula-lines.ts";
import { convert, qty } from "../../../src/units/index.ts";
import { conversionLines } from "../../../src/units/working-line.ts";
import { UNITS_WORDS } from "../../../src/worksheet/words/units.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const PAIRS = [
  [qty(3, "gal"), "fl_oz"],
  [qty(100, "fl_oz"), "gal"],
  [qty(2.5, "imp_gal"), "L"],
  [qty(40, "psi"), "kPa"],
  [qty(7, "metric_tbsp"), "fl_oz"],
  [qty(12, "oz/1000ft2"), "lb/ac"],
] as const;

describe("conversionLines", () => {
  it.each(PAIRS)("shows how %j becomes %s, and gives what convert gives", (from, to) => {
    const lines = conversionLines("some.formula.used", from, to);
    expectLinesTrue(lines);
    expect(lines[0]).toMatchObject({ id: "units.convert", about: "some.formula.used" });
    expect(lines[0]?.result).toEqual(convert(from, to as never));
  });

  it("shows nothing where nothing changes", () => {
    expect(conversionLines("x.y.z", qty(3, "gal"), "gal")).toEqual([]);
  });

  it("names the source that defines the units", () => {
    const source = (from: Parameters<typeof conversionLines>[1], to: never): string | undefined =>
      conversionLines("x", from, to)[0]?.source;
    expect(source(qty(1, "imp_gal"), "L" as never)).toContain("Weights and Measures Act 1985");
    expect(source(qty(1, "psi"), "kPa" as never)).toContain("SP 811");
    expect(source(qty(1, "au_tbsp"), "mL" as never)).toContain("common practice");
    expect(source(qty(1, "gal/ac"), "fl_oz/ft2" as never)).toContain("Handbook 44");
  });

  it("has words for the line and for each of its terms", () => {
    const words = UNITS_WORDS["units.convert"];
    for (const [from, to] of PAIRS) {
      const terms = Object.keys(conversionLines("x", from, to)[0]?.terms ?? {});
      expect(terms.every((term) => words?.terms[term])).toBe(true);
    }
  });
});

describe("formulaLines", () => {
  it("puts the changes of unit before the formula that needs them", () => {
    const lines = formulaLines({
      id: "test.area",
      formula: "length * width * rows",
      terms: { length: [qty(10, "yd"), "ft"], width: [qty(2, "ft"), "ft"], rows: 3 },
      result: qty(180, "ft2"),
      source: "from memory",
    });
    expect(lines.map(({ id, about }) => about ?? id)).toEqual(["test.area.length", "test.area"]);
    expect(lines.at(-1)?.terms).toEqual({ length: qty(30, "ft"), width: qty(2, "ft"), rows: 3 });
    expectLinesTrue(lines);
  });
});
