import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, type Dimension, isUnit, qty, type Unit, unitsOf } from "../../../src/units/index.ts";
import { exactly, exactSize } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { ulpError } from "../../helpers/rational.ts";

keepWorstErrors("units-convert");

const SIMPLE: Dimension[] = ["length", "area", "volume", "mass", "time", "pressure", "fraction"];
const COMPOUND: Dimension[] = [
  "speed",
  "flow",
  "massFlow",
  "volumeRate",
  "massRate",
  "density",
  "volumeConcentration",
  "massFraction",
  "volumePerLength",
  "massPerLength",
];

const amount = fc.double({ min: 1e-6, max: 1e9, noNaN: true });

function isWhole(from: Unit, to: Unit): boolean {
  const factor = exactSize(from).over(exactSize(to));
  return factor.d === 1n || factor.n === 1n;
}

function expectWithinContract(value: number, from: Unit, to: Unit): void {
  const [name, promised] = isWhole(from, to)
    ? (["convert, whole factor", 1] as const)
    : (["convert", 2] as const);
  expectExact(name, convert(qty(value, from), to as never).value, exactly(value, from, to), promised);
}

describe("convert, against exact rational arithmetic", () => {
  it.each(SIMPLE)("is within its ulp contract for every pair of units of %s", (dimension) => {
    for (const from of unitsOf(dimension)) {
      for (const to of unitsOf(dimension)) {
        for (const value of [1, 3, 0.1, 7.25, 1e6 / 7, 1.9999999999999998])
          expectWithinContract(value, from, to);
      }
    }
  });

  it.each(COMPOUND)("is within its ulp contract for random pairs and values of %s", (dimension) => {
    const unit = fc.constantFrom(...(unitsOf(dimension) as Unit[]));
    fc.assert(fc.property(amount, unit, unit, expectWithinContract));
  });

  it("comes back to the same value where the factor is a whole number", () => {
    fc.assert(
      fc.property(
        amount,
        fc.constantFrom(...unitsOf("volume")),
        fc.constantFrom(...unitsOf("volume")),
        (value, from, to) => {
          fc.pre(isWhole(from, to));
          const back = convert(convert(qty(value, from), to), from).value;
          expect(ulpError(back, exactly(value, from, from))).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it("gives every unit that unitsOf lists a size", () => {
    for (const dimension of [...SIMPLE, ...COMPOUND]) {
      for (const unit of unitsOf(dimension))
        expect(isUnit(unit) && convert(qty(1, unit), unit as never).value).toBe(1);
    }
  });
});
