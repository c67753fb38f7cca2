import { describe, expect, it } from "vitest";
import { type Dimension, describeUnit, type Unit, unitsOf } from "../../../src/units/index.ts";
import { COMPOUNDS, TABLE } from "../../../src/units/table.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const EVERY = ([...Object.keys(TABLE), ...Object.keys(COMPOUNDS)] as Dimension[]).flatMap(
  (dimension) => unitsOf(dimension) as Unit[],
);

describe("describeUnit", () => {
  it("tells all that a list to pick from needs", () => {
    expect(describeUnit("fl_oz/1000ft2")).toEqual({
      unit: "fl_oz/1000ft2",
      dimension: "volumeRate",
      singular: "fluid ounce per 1,000 square feet",
      plural: "fluid ounces per 1,000 square feet",
      symbol: "fl oz/1,000 sq ft",
      systems: ["us"],
      system: "us",
    });
    expect(describeUnit("oz").symbol).toBe("oz wt");
    expect(describeUnit("mph")).toMatchObject({
      symbol: "mph",
      plural: "miles per hour",
      systems: ["us", "imperial"],
    });
    expect(describeUnit("s").systems).toEqual(["us", "imperial", "metric"]);
  });

  it("counts a mix of systems as part of none", () => {
    expect(describeUnit("L/ac")).toMatchObject({ systems: [], system: "metric" });
    expect(describeUnit("lb/ac").systems).toEqual(["us", "imperial"]);
    expect(describeUnit("imp_gal/min").systems).toEqual(["imperial"]);
  });

  it("gives every unit a name of its own, except mi/h (mph) and lb/in2 (psi)", () => {
    const names = new Map<string, Unit[]>();
    for (const unit of EVERY) {
      const { plural, singular } = describeUnit(unit);
      expect(`${singular}${plural}`).not.toContain("undefined");
      names.set(plural, [...(names.get(plural) ?? []), unit]);
    }
    expect([...names.values()].filter((units) => units.length > 1)).toEqual([
      ["psi", "lb/in2"],
      ["mph", "mi/h"],
    ]);
  });

  it("gives every unit a symbol of its own", () => {
    expect(new Set(EVERY.map((unit) => describeUnit(unit).symbol)).size).toBe(EVERY.length);
  });

  it("refuses what is no unit", () => {
    expectRefused(() => describeUnit("gallon" as never), "unknown-unit", "unit", 'Did you mean "gal"?');
    expectRefused(() => describeUnit(undefined as never), "missing", "unit");
  });
});
