import { describe, expect, it } from "vitest";
import { countUnits, dimensionInWords } from "../../../src/units/dimensions.ts";
import {
  type Dimension,
  dimensionOf,
  isUnit,
  qty,
  sameDimension,
  type Unit,
  unitsOf,
} from "../../../src/units/index.ts";
import { simpleUnits } from "../../../src/units/resolve.ts";
import { COMPOUNDS, TABLE } from "../../../src/units/table.ts";
import { expectRefused } from "../../helpers/refusal.ts";

const DIMENSIONS = [...Object.keys(TABLE), ...Object.keys(COMPOUNDS)] as Dimension[];

describe("unitsOf", () => {
  it("lists units that are known, each under one dimension only", () => {
    const all = DIMENSIONS.flatMap((dimension) => unitsOf(dimension) as Unit[]);
    expect(new Set(all).size).toBe(all.length);
    expect(all.every(isUnit)).toBe(true);
    expect(all.length).toBe(countUnits());
    for (const dimension of DIMENSIONS) {
      for (const unit of unitsOf(dimension)) expect(dimensionOf(unit)).toBe(dimension);
    }
  });

  it("lists every simple unit", () => {
    const all = new Set<string>(DIMENSIONS.flatMap((dimension) => unitsOf(dimension) as string[]));
    expect(simpleUnits().filter((unit) => !all.has(unit))).toEqual([]);
  });

  it("gives a list of its own each time", () => {
    unitsOf("mass").length = 0;
    expect(unitsOf("mass")).toEqual(["oz", "lb", "mg", "g", "kg"]);
    expect(unitsOf("speed")[0]).toBe("mph");
  });

  it.each(["weight", "", "__proto__", 5])("refuses %j as a dimension", (name) => {
    expectRefused(() => unitsOf(name as never), "unknown-choice", "dimension", "Choose one of: length");
    expectRefused(() => unitsOf(undefined as never), "missing", "dimension", "Choose one of: length");
  });

  it("has words for every dimension", () => {
    for (const dimension of DIMENSIONS) expect(dimensionInWords(dimension)).toMatch(/^an? /);
  });
});

describe("sameDimension", () => {
  it("tells weight from volume, and density from a concentration by volume", () => {
    expect(sameDimension(qty(5, "oz"), qty(5, "fl_oz"))).toBe(false);
    expect(sameDimension(qty(5, "lb/gal"), qty(5, "pt/100gal"))).toBe(false);
    expect(sameDimension(qty(5, "mph"), qty(5, "ft/min"))).toBe(true);
  });

  it("refuses what is no quantity", () => {
    expectRefused(() => sameDimension(null as never, qty(1, "ft")), "missing", "a");
    expectRefused(() => sameDimension(qty(1, "ft"), 5 as never), "not-a-quantity", "b");
  });

  it("refuses what is no unit", () => {
    expectRefused(() => dimensionOf("x" as never), "unknown-unit", "unit");
  });
});
