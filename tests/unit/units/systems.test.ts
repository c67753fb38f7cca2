import { describe, expect, it } from "vitest";
import { describeUnit, dimensionOf, systemOf } from "../../../src/units/index.ts";
import { unitsLike } from "../../../src/units/systems.ts";
import { expectRefused } from "../../helpers/refusal.ts";

describe("systemOf", () => {
  it.each([
    ["gal", "us"],
    ["ft", "us"],
    ["imp_gal/ac", "imperial"],
    ["L/ac", "metric"],
    ["mph", "us"],
    ["%", "us"],
    ["au_tbsp", "metric"],
  ] as const)("puts %s in the %s system", (unit, system) => {
    expect(systemOf(unit)).toBe(system);
    expect(describeUnit(unit).system).toBe(system);
  });

  it("refuses what is no unit", () => {
    expectRefused(() => systemOf("galon" as never), "unknown-unit", "unit", 'Did you mean "gal"?');
  });
});

describe("unitsLike", () => {
  it("gives units of the dimension that each is named for, in the unit's own system", () => {
    const dimensions = { landArea: "area", smallVolume: "volume", smallMass: "mass" } as Record<
      string,
      string
    >;
    for (const unit of ["gal", "imp_gal", "L"] as const) {
      for (const [name, like] of Object.entries(unitsLike(unit))) {
        expect(dimensionOf(like)).toBe(dimensions[name] ?? name);
        expect(describeUnit(like).systems).toContain(systemOf(unit));
      }
    }
  });
});
