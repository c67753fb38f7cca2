import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bagsFor,
  convertNutrient,
  fertilizerFor,
  granulesCover,
  granulesFor,
  hopperLoads,
  type Nutrient,
  nutrientsFrom,
} from "../../../src/tank-mix/index.ts";
import { convert, type Quantity, type Unit, unitsOf } from "../../../src/units/index.ts";
import { exactSize } from "../../helpers/definitions.ts";
import { expectExact, expectExactBeside, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

keepWorstErrors("tank-mix-granules");

const value = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const of = <U extends Unit>(units: readonly U[]) =>
  fc.record({ value, unit: fc.constantFrom(...units) }) as fc.Arbitrary<Quantity<U>>;
const mass = of(unitsOf("mass"));
const massRate = of(unitsOf("massRate"));
const area = of(unitsOf("area")).map((one) => ({ ...one, of: "treated" as const }));
const count = fc.integer({ min: 1, max: 100_000 });

const exact = ({ value: number, unit }: Quantity): Rational =>
  Rational.fromNumber(number).times(exactSize(unit));
const expectRight = (name: string, ours: Quantity, right: Rational): void =>
  expectExact(name, ours.value, right.over(exactSize(ours.unit)));

const RUNS = runs(300);

describe("granules, against exact rational arithmetic", () => {
  it("come to a rate times what it is per, within 8 ulp", () => {
    fc.assert(
      fc.property(massRate, area, (rate, on) => {
        expectRight("granulesFor an area", granulesFor({ rate, area: on }), exact(rate).times(exact(on)));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(of(unitsOf("massPerLength")), of(unitsOf("length")), (rate, rowLength) => {
        const right = exact(rate).times(exact(rowLength));
        expectRight("granulesFor rows", granulesFor({ rate, rowLength }), right);
      }),
      RUNS,
    );
    fc.assert(
      fc.property(of(unitsOf("massPerCount")), count, (rate, plants) => {
        const right = exact(rate).times(Rational.of(plants));
        expectRight("granulesFor plants", granulesFor({ rate, plants }), right);
      }),
      RUNS,
    );
  });

  it("cover an area within 8 ulp", () => {
    fc.assert(
      fc.property(mass, massRate, (amount, rate) => {
        expectRight("granulesCover", granulesCover({ amount, rate }), exact(amount).over(exact(rate)));
      }),
      RUNS,
    );
  });
});

describe("hoppers and bags", () => {
  // As many as a person fills: a total of up to a thousand of them, in any unit.
  const parts = fc.record({
    part: mass,
    times: fc.double({ min: 1e-3, max: 1000, noNaN: true }),
    unit: fc.constantFrom(...unitsOf("mass")),
  });
  const totalOf = (part: Quantity<"lb">, times: number, unit: "lb"): Quantity<"lb"> =>
    convert({ ...part, value: part.value * times }, unit);

  // Noise aside it comes out even: the count is decided on 12 digits, and nothing is left.
  const isEven = (times: Rational): boolean =>
    Math.abs(times.toNumber() - Math.round(times.toNumber())) < 1e-9 * times.toNumber();

  it("are enough, and one fewer is not", () => {
    fc.assert(
      fc.property(parts, ({ part, times, unit }) => {
        const total = totalOf(part as Quantity<"lb">, times, unit as "lb");
        const { bags, leftOver } = bagsFor({ total, bag: part });
        const held = exact(part).times(Rational.of(bags));
        const spare = held.minus(exact(total)).over(exact(part)).toNumber();
        expect(spare).toBeGreaterThan(-1e-9);
        expect(spare).toBeLessThan(1);
        expect(leftOver.value).toBeGreaterThanOrEqual(0);
        if (isEven(exact(total).over(exact(part)))) return;
        const right = held.minus(exact(total)).over(exactSize(unit));
        expectExactBeside("bagsFor, left over", leftOver.value, right, held.over(exactSize(unit)));
      }),
      RUNS,
    );
  });

  it("add up to the total, each no more than the hopper", () => {
    fc.assert(
      fc.property(
        parts,
        fc.constantFrom(1, 2) as fc.Arbitrary<1 | 2>,
        ({ part, times, unit }, directions) => {
          const total = totalOf(part as Quantity<"lb">, times, unit as "lb");
          const { perDirection, fills, lastFill } = hopperLoads({ total, hopper: part, directions });
          const half = exact(total).over(Rational.of(directions));
          expectRight("hopperLoads, per direction", perDirection, half);
          expect(lastFill.value).toBeGreaterThan(0);
          expect(exact(lastFill).over(exact(part)).toNumber()).toBeLessThanOrEqual(1 + 1e-12);
          if (isEven(half.over(exact(part)))) return;
          const right = half.minus(exact(part).times(Rational.of(fills - 1))).over(exactSize(unit));
          const beside = exact(part).times(Rational.of(fills)).over(exactSize(unit));
          expectExactBeside("hopperLoads, last fill", lastFill.value, right, beside);
        },
      ),
      RUNS,
    );
  });
});

describe("nutrients, against exact rational arithmetic", () => {
  // Abridged standard atomic weights 2021 (IUPAC).
  const O = Rational.fromDecimal("15.999");
  const weights: [element: Nutrient, oxide: Nutrient, atoms: number, oxygen: number, weight: string][] = [
    ["P", "P2O5", 2, 5, "30.974"],
    ["K", "K2O", 2, 1, "39.098"],
    ["S", "SO3", 1, 3, "32.06"],
    ["Mg", "MgO", 1, 1, "24.305"],
    ["Ca", "CaO", 1, 1, "40.078"],
  ];
  const amount = fc.oneof(mass, massRate, of(unitsOf("massPerLength")), of(unitsOf("massPerCount")));
  const percent = fc.double({ min: 0.1, max: 100, noNaN: true });
  const part = (number: number): Rational => Rational.fromNumber(number).over(Rational.of(100));
  const pairs = weights.map(([element, oxide, atoms, oxygen, weight]) => {
    const of = Rational.fromDecimal(weight).times(Rational.of(atoms));
    return { element, oxide, inOxide: of.over(of.plus(O.times(Rational.of(oxygen)))) };
  });

  it("give fertilizer and what it brings within 8 ulp", () => {
    fc.assert(
      fc.property(amount, percent, (needed, content) => {
        const contains = { N: content / 2, K2O: content / 2 };
        const { product, brings } = fertilizerFor({ nutrient: "N", amount: needed, contains });
        const right = exact(needed).over(part(content / 2));
        expectRight("fertilizerFor", product, right);
        expectRight("fertilizerFor, what it brings", brings.N as Quantity, exact(needed));
        const brought = nutrientsFrom({ product: needed, contains }).K2O as Quantity;
        expectRight("nutrientsFrom", brought, exact(needed).times(part(content / 2)));
      }),
      RUNS,
    );
  });

  it("are converted between element and oxide within 8 ulp", () => {
    fc.assert(
      fc.property(
        amount,
        percent,
        fc.constantFrom(...pairs),
        (given, content, { element, oxide, inOxide }) => {
          const toElement = convertNutrient({ amount: given, from: oxide, to: element });
          expectRight("convertNutrient", toElement, exact(given).times(inOxide));
          const toOxide = convertNutrient({ amount: given, from: element, to: oxide });
          expectRight("convertNutrient", toOxide, exact(given).over(inOxide));
          const { product } = fertilizerFor({
            nutrient: element,
            amount: given,
            contains: { [oxide]: content },
          });
          expectRight(
            "fertilizerFor, by its oxide",
            product,
            exact(given).over(part(content).times(inOxide)),
          );
        },
      ),
      RUNS,
    );
  });
});
