import { UcumLhcUtils } from "@lhncbc/ucum-lhc";
import { unit as mathUnit } from "mathjs";
import { describe, expect, it } from "vitest";
import { convert, type Dimension, qty, toUcum, type Unit, unitsOf } from "../../../src/units/index.ts";
import { TABLE } from "../../../src/units/table.ts";

// Both compute in floats: a few units in the 16th digit.
const NOISE = 5e-15;
const ucum = UcumLhcUtils.getInstance();

function byUcum(from: Unit, to: Unit): number {
  const { toVal } = ucum.convertUnitTo(toUcum(from), 1, toUcum(to));
  if (toVal === null) throw new Error(`no conversion from ${from} to ${to}`);
  return toVal;
}

describe("every pair of simple units, against a general-purpose reader of UCUM", () => {
  it.each(Object.keys(TABLE) as Dimension[])("has the same factor, for %s", (dimension) => {
    for (const from of unitsOf(dimension) as Unit[]) {
      for (const to of unitsOf(dimension) as Unit[]) {
        const ours = convert(qty(1, from), to as never).value;
        expect(Math.abs(ours / byUcum(from, to) - 1), `${from} to ${to}`).toBeLessThan(NOISE);
      }
    }
  });
});

// The units of a general-purpose mathematics library, where it has them.
const MATHJS: Partial<Record<Unit, string>> = {
  in: "inch",
  ft: "foot",
  yd: "yard",
  mi: "mile",
  in2: "sqin",
  ft2: "sqft",
  yd2: "sqyd",
  ac: "acre",
  ha: "hectare",
  m2: "m2",
  tsp: "teaspoon",
  tbsp: "tablespoon",
  fl_oz: "floz",
  cup: "cup",
  pt: "pint",
  qt: "quart",
  gal: "gallon",
  in3: "cuin",
  ft3: "cuft",
  mL: "ml",
  L: "liter",
  m3: "m3",
  oz: "oz",
  lb: "lbm",
  mg: "mg",
  g: "g",
  kg: "kg",
  s: "s",
  min: "minute",
  h: "hour",
  psi: "psi",
  kPa: "kPa",
  bar: "bar",
};

// Where that library is not exact, with the size it has instead, in our unit.
const NOT_EXACT: Partial<Record<Unit, string>> = {
  ac: "4046.86 m², rounded from 4046.8564224",
  tsp: "5 mL, the metric teaspoon",
  tbsp: "15 mL, the metric tablespoon",
  psi: "6894.75729276459 Pa, from a rounded standard",
};

const ANCHORS: Partial<Record<Dimension, Unit>> = {
  length: "m",
  area: "m2",
  volume: "L",
  mass: "kg",
  time: "s",
  pressure: "kPa",
};

describe("simple units, against a general-purpose mathematics library", () => {
  for (const [dimension, anchor] of Object.entries(ANCHORS)) {
    for (const unit of unitsOf(dimension as Dimension) as Unit[]) {
      const [theirs, theirAnchor] = [MATHJS[unit], MATHJS[anchor] ?? anchor];
      if (theirs === undefined) continue;
      const difference = (): number =>
        Math.abs(
          convert(qty(1, unit), anchor as never).value / mathUnit(1, theirs).toNumber(theirAnchor) - 1,
        );
      const known = NOT_EXACT[unit];
      it(
        known === undefined ? `agrees on ${unit}` : `differs on ${unit}, which it takes for ${known}`,
        () => {
          if (known === undefined) expect(difference()).toBeLessThan(NOISE);
          else expect(difference()).toBeGreaterThan(1e-11);
        },
      );
    }
  }
});
