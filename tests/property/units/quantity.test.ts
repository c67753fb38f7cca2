import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  compareQuantities,
  type Dimension,
  qty,
  quantityRatio,
  scaleQuantity,
  sumQuantities,
  type Unit,
  unitsOf,
} from "../../../src/units/index.ts";
import { exactly, exactSize } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational, ulpError } from "../../helpers/rational.ts";

keepWorstErrors("units-quantity");

const DIMENSIONS: Dimension[] = [
  "length",
  "area",
  "volume",
  "mass",
  "pressure",
  "volumeRate",
  "density",
  "volumePerLength",
];
const amount = fc.double({ min: 1e-6, max: 1e9, noNaN: true });
const signed = fc.double({ min: -1e9, max: 1e9, noNaN: true });

/** A dimension's units, drawn anew for each run: `n` of them. */
function units(n: number): fc.Arbitrary<Unit[]> {
  return fc
    .constantFrom(...DIMENSIONS)
    .chain((dimension) =>
      fc.array(fc.constantFrom(...(unitsOf(dimension) as Unit[])), { minLength: n, maxLength: n }),
    );
}

describe("sum", () => {
  it("is within 8 ulp of the exact sum of amounts, however many there are", () => {
    fc.assert(
      fc.property(fc.array(amount, { minLength: 1, maxLength: 40 }), units(40), (values, names) => {
        const list = values.map((value, i) => qty(value, names[i] as "gal"));
        const unit = names[0] as Unit;
        const exact = list.reduce((total, q) => total.plus(exactly(q.value, q.unit, unit)), Rational.of(0));
        const result = sumQuantities(list);
        expect(result.unit).toBe(unit);
        expectExact("sum", result.value, exact);
      }),
    );
  });

  it("is the same in any order, within 8 ulp", () => {
    fc.assert(
      fc.property(fc.array(amount, { minLength: 2, maxLength: 20 }), (values) => {
        const [forwards, backwards] = [values, [...values].reverse()].map(
          (list) => sumQuantities(list.map((v) => qty(v, "gal"))).value,
        );
        expect(ulpError(forwards as number, Rational.fromNumber(backwards as number))).toBeLessThanOrEqual(8);
      }),
    );
  });

  it("of an amount taken n times is the amount scaled by n", () => {
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 50 }), (value, n) => {
        const added = sumQuantities(Array.from({ length: n }, () => qty(value, "fl_oz"))).value;
        expect(
          ulpError(scaleQuantity(qty(value, "fl_oz"), n).value, Rational.fromNumber(added)),
        ).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe("scale", () => {
  it("is within 1 ulp of the exact product", () => {
    fc.assert(
      fc.property(signed, signed, (value, times) => {
        // The oracle's own floats end where the exact product is smaller.
        fc.pre(Math.abs(value * times) > 1e-200);
        const exact = Rational.fromNumber(value).times(Rational.fromNumber(times));
        expectExact("scale", Math.abs(scaleQuantity(qty(value, "gal"), times).value), exact.abs(), 1);
      }),
    );
  });
});

describe("ratio", () => {
  it("is within 8 ulp of the exact quotient", () => {
    fc.assert(
      fc.property(amount, amount, units(2), (x, y, [a, b]) => {
        const exact = Rational.fromNumber(x)
          .times(exactSize(a as Unit))
          .over(Rational.fromNumber(y).times(exactSize(b as Unit)));
        expectExact("ratio", quantityRatio(qty(x, a as Unit), qty(y, b as Unit)), exact);
      }),
    );
  });

  it("of an amount to itself is 1, and does not depend on a common scale", () => {
    fc.assert(
      fc.property(amount, amount, fc.integer({ min: 1, max: 1000 }), (x, y, n) => {
        const [a, b] = [qty(x, "gal"), qty(y, "L")];
        expect(quantityRatio(a, a)).toBe(1);
        expect(quantityRatio(scaleQuantity(a, n), scaleQuantity(b, n)) / quantityRatio(a, b)).toBeCloseTo(
          1,
          13,
        );
      }),
    );
  });
});

describe("compare", () => {
  it("orders as exact arithmetic does, where the amounts differ in 11 digits or sooner", () => {
    fc.assert(
      fc.property(amount, amount, units(2), (x, y, [a, b]) => {
        const [left, right] = [x, y].map((value, i) => exactly(value, [a, b][i] as Unit, a as Unit)) as [
          Rational,
          Rational,
        ];
        fc.pre(
          Rational.of(1, 10n ** 11n)
            .times(left)
            .lessThan(left.minus(right).abs()),
        );
        expect(compareQuantities(qty(x, a as Unit), qty(y, b as Unit))).toBe(left.lessThan(right) ? -1 : 1);
      }),
    );
  });

  it("finds an amount the same as itself in another unit, and is turned round by swapping", () => {
    fc.assert(
      fc.property(amount, amount, units(2), (x, y, [a, b]) => {
        const [first, second] = [qty(x, a as Unit), qty(y, b as Unit)];
        const same = qty(x * quantityRatio(qty(1, a as Unit), qty(1, b as Unit)), b as Unit);
        expect(compareQuantities(first, same)).toBe(0);
        expect(compareQuantities(first, second) + compareQuantities(second, first)).toBe(0);
      }),
    );
  });
});
