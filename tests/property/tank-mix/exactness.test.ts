import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  activeIngredientRate,
  carrierFor,
  checkInjector,
  concentrateSpray,
  diluteMix,
  injectedStrength,
  injectorStock,
  jarTest,
  leftoverArea,
  productAmount,
  productRate,
  rinseTank,
  stockFor,
  strengthOf,
} from "../../../src/tank-mix/index.ts";
import { type AreaUnit, qty, type Unit, unitsOf } from "../../../src/units/index.ts";
import { exactly, exactSize } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";

import { runs } from "../../helpers/runs.ts";

keepWorstErrors("tank-mix");

const value = fc.double({ min: 1e-3, max: 1e4, noNaN: true });
const of = <U extends Unit>(units: readonly U[]) =>
  fc.record({ value, unit: fc.constantFrom(...units) }) as fc.Arbitrary<{ value: number; unit: U }>;
const units = <U extends Unit>(all: readonly U[]) => fc.constantFrom(...all);
const volumes = unitsOf("volume");
const masses = unitsOf("mass");
const areas: AreaUnit[] = ["ft2", "yd2", "ac", "1000ft2", "m2", "ha"];
const lengths = unitsOf("length");
const rates = volumes.flatMap((over) => areas.map((per) => `${over}/${per}` as const));
const massRates = masses.flatMap((over) => areas.map((per) => `${over}/${per}` as const));

const treated = of(areas).map((area) => ({ ...area, of: "treated" as const }));
const ground = of(areas).map((area) => ({ ...area, of: "ground" as const }));

/** A quantity's exact size in SI. */
const si = ({ value: number, unit }: { value: number; unit: string }): Rational =>
  Rational.fromNumber(number).times(exactSize(unit));

function expectWithin(
  name: string,
  actual: { value: number; unit: string },
  exactSi: Rational,
  ulps = 8,
): void {
  expectExact(name, actual.value, exactSi.over(exactSize(actual.unit)), ulps);
}

// What can't be mixed is refused, as the unit tests show: a liter or a kilogram of product in a liter of mix. So a rate is drawn by
// its strength.
const strengths = fc.double({ min: 1e-9, max: 0.999, noNaN: true });
const rateOf = <U extends string>(
  kilograms: number,
  unit: U,
  perLiter: Rational,
): { value: number; unit: U } => ({
  value: kilograms / perLiter.times(exactSize(unit)).toNumber(),
  unit,
});

const RUNS = runs(300);
describe("tank-mix, against exact rational arithmetic", () => {
  it("gives the sprayed volume", () => {
    fc.assert(
      fc.property(of(rates), treated, (rate, area) => {
        expectWithin("carrierFor, sprayed", carrierFor({ rate, area }).sprayed, si(rate).times(si(area)));
      }),
      RUNS,
    );
  });

  it("gives the total with lines and a reserve in per cent", () => {
    fc.assert(
      fc.property(
        of(rates),
        treated,
        of(volumes),
        fc.double({ min: 1e-3, max: 100, noNaN: true }),
        (rate, area, lineVolume, percent) => {
          const sprayed = si(rate).times(si(area));
          const reserve = sprayed.times(Rational.fromNumber(percent)).over(Rational.of(100));
          const carrier = carrierFor({ rate, area, lineVolume, reserve: { percent } });
          expectWithin("carrierFor, total", carrier.total, sprayed.plus(reserve).plus(si(lineVolume)));
          expectWithin("carrierFor, reserve", carrier.reserve, reserve);
        },
      ),
      RUNS,
    );
  });

  it("gives the area of a leftover", () => {
    fc.assert(
      fc.property(of(volumes), of(rates), (volume, rate) => {
        expectWithin("leftoverArea", leftoverArea({ volume, rate }), si(volume).over(si(rate)));
      }),
      RUNS,
    );
  });

  it("gives a product per treated area, by volume and by weight", () => {
    fc.assert(
      fc.property(strengths, units(rates), of(rates), of(volumes), (part, unit, carrierRate, carrier) => {
        const rate = rateOf(part, unit, Rational.of(1).over(si(carrierRate)));
        const exact = si(rate).over(si(carrierRate)).times(si(carrier));
        const { amount, strength } = productAmount({ rate, form: "liquid", carrier, carrierRate });
        expectWithin("productAmount", amount, exact);
        expectWithin("productAmount, strength", strength, si(rate).over(si(carrierRate)));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(strengths, units(massRates), of(rates), of(volumes), (kg, unit, carrierRate, carrier) => {
        const rate = rateOf(kg, unit, Rational.of(1).over(si(carrierRate)));
        const exact = si(rate).over(si(carrierRate)).times(si(carrier));
        expectWithin(
          "productAmount",
          productAmount({ rate, form: "dry", carrier, carrierRate }).amount,
          exact,
        );
      }),
      RUNS,
    );
  });

  it("gives a product per ground area and per row length", () => {
    const job = { carrier: of(volumes), carrierRate: of(rates), area: treated };
    fc.assert(
      fc.property(strengths, units(massRates), ground, fc.record(job), (kg, unit, field, given) => {
        const share = si(given.carrier).over(si(given.carrierRate).times(si(given.area)));
        const rate = rateOf(kg, unit, si(field).times(share).over(si(given.carrier)));
        const { amount } = productAmount({
          rate: { rate, per: "ground" },
          form: "dry",
          ground: field,
          ...given,
        });
        expectWithin("productAmount", amount, si(rate).times(si(field)).times(share));
      }),
      RUNS,
    );
    const rows = masses.flatMap((over) => lengths.map((per) => `${over}/${per}` as const));
    fc.assert(
      fc.property(strengths, units(rows), of(lengths), fc.record(job), (kg, unit, rowLength, given) => {
        const share = si(given.carrier).over(si(given.carrierRate).times(si(given.area)));
        const rate = rateOf(kg, unit, si(rowLength).times(share).over(si(given.carrier)));
        const { amount } = productAmount({ rate, form: "dry", rowLength, ...given });
        expectWithin("productAmount", amount, si(rate).times(si(rowLength)).times(share));
      }),
      RUNS,
    );
  });

  it("gives a product per volume of carrier, in per cent, in parts per million and by ratio", () => {
    const perCarrier = masses.flatMap((over) => volumes.map((per) => `${over}/${per}` as const));
    fc.assert(
      fc.property(strengths, units(perCarrier), of(volumes), (kg, unit, carrier) => {
        const rate = rateOf(kg, unit, Rational.of(1));
        expectWithin(
          "productAmount",
          productAmount({ rate, form: "dry", carrier }).amount,
          si(rate).times(si(carrier)),
        );
      }),
      RUNS,
    );
    const part = fc.record({
      value: fc.double({ min: 1e-3, max: 1, noNaN: true }),
      unit: fc.constantFrom("%" as const, "ppm" as const),
    });
    fc.assert(
      fc.property(part, of(volumes), (fraction, carrier) => {
        const exact = si(fraction).times(si(carrier));
        const liquid = productAmount({ rate: { ...fraction, basis: "v/v" }, form: "liquid", carrier });
        expectWithin("productAmount", liquid.amount, exact);
        // A kilogram to the litre: the exact sizes of mass and volume are in kilograms and litres.
        expectWithin(
          "productAmount",
          productAmount({ rate: { ...fraction, basis: "w/v" }, form: "dry", carrier }).amount,
          exact,
        );
      }),
      RUNS,
    );
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 9.9, noNaN: true }),
        fc.double({ min: 10, max: 1000, noNaN: true }),
        of(volumes),
        (parts, to, carrier) => {
          const [exactParts, exactTo] = [Rational.fromNumber(parts), Rational.fromNumber(to)];
          const mix = productAmount({ rate: { parts, to, of: "mix" }, form: "liquid", carrier });
          expectWithin("productAmount", mix.amount, si(carrier).times(exactParts).over(exactTo));
          const water = productAmount({ rate: { parts, to, of: "water" }, form: "liquid", carrier });
          expectWithin(
            "productAmount",
            water.amount,
            si(carrier).times(exactParts).over(exactParts.plus(exactTo)),
          );
        },
      ),
      RUNS,
    );
  });

  it("gives product for active ingredient and active ingredient for product", () => {
    // What a liquid product may weigh, and contain, in any unit.
    const densities = fc.constantFrom(
      ...masses.flatMap((over) => volumes.map((per) => `${over}/${per}` as const)),
    );
    const weighing = (min: number, max: number) =>
      fc
        .record({ kilograms: fc.double({ min, max, noNaN: true }), unit: densities })
        .map(({ kilograms, unit }) => ({ value: kilograms / exactSize(unit).toNumber(), unit }));
    const contents = weighing(1e-3, 2.4);
    fc.assert(
      fc.property(of(massRates), contents, (activeIngredient, contains) => {
        const product = productRate({ activeIngredient, contains, form: "liquid" });
        expectWithin("productRate", product, si(activeIngredient).over(si(contains)));
      }),
      RUNS,
    );
    fc.assert(
      fc.property(of(rates), contents, (product, contains) => {
        expectWithin(
          "activeIngredientRate",
          activeIngredientRate({ product, contains }),
          si(product).times(si(contains)),
        );
      }),
      RUNS,
    );
    const byWeight = fc
      .double({ min: 0.1, max: 100, noNaN: true })
      .map((percent) => ({ value: percent, unit: "%", basis: "w/w" }) as const);
    fc.assert(
      fc.property(of(massRates), byWeight, weighing(0.61, 2.4), (activeIngredient, contains, density) => {
        const dry = productRate({ activeIngredient, contains, form: "dry" });
        expectWithin("productRate", dry, si(activeIngredient).over(si(contains)));
        const liquid = productRate({ activeIngredient, contains, density, form: "liquid" });
        expectWithin("productRate", liquid, si(activeIngredient).over(si(contains).times(si(density))));
      }),
      RUNS,
    );
  });

  it("gives jars, dilutions, stock solutions and weak mixes", () => {
    fc.assert(
      fc.property(of(volumes), of(volumes), of(masses), (a, b, amount) => {
        const [jar, mix] = si(a).lessThan(si(b)) ? [a, b] : [b, a];
        fc.pre(si(jar).lessThan(si(mix)));
        expectWithin(
          "jarTest",
          jarTest({ jar, mix, amounts: [amount] }).amounts[0] as never,
          si(amount).times(si(jar)).over(si(mix)),
        );
        const whole = si(mix).plus(si(jar));
        const weakMix = strengthOf({ mix, addedWater: jar, product: amount });
        const hundred = Rational.of(100).times(exactSize("%"));
        expectWithin("strengthOf, strength", weakMix.strength, si(mix).times(hundred).over(whole));
        expectWithin("strengthOf, weak by", weakMix.weakBy, si(jar).times(hundred).over(whole));
        expectWithin(
          "strengthOf, lacking",
          weakMix.lacking as never,
          si(amount).times(si(jar)).over(si(mix)),
        );
      }),
      RUNS,
    );
    const mixes = of(masses.flatMap((over) => volumes.map((per) => `${over}/${per}` as const)));
    fc.assert(
      fc.property(mixes, mixes, of(volumes), (a, b, volume) => {
        const [to, from] = si(a).lessThan(si(b)) ? [a, b] : [b, a];
        expectWithin(
          "diluteMix",
          diluteMix({ from, to, volume }).take,
          si(volume).times(si(to)).over(si(from)),
        );
      }),
      RUNS,
    );
    fc.assert(
      fc.property(of(masses), of(masses), of(volumes), (a, b, volume) => {
        const [dose, amount] = si(a).lessThan(si(b)) ? [a, b] : [b, a];
        expectWithin(
          "stockFor",
          stockFor({ amount, volume, dose }),
          si(volume).times(si(dose)).over(si(amount)),
        );
      }),
      RUNS,
    );
  });

  it("gives what rinsing leaves, within 8 ulp for each rinse", () => {
    fc.assert(
      fc.property(of(volumes), of(volumes), fc.integer({ min: 1, max: 5 }), (residual, water, rinses) => {
        const part = si(residual).over(si(residual).plus(si(water)));
        let left = Rational.of(1);
        for (let i = 0; i < rinses; i++) left = left.times(part);
        expectWithin(
          "rinseTank, up to five times",
          rinseTank({ residual, water, rinses }).strength,
          left,
          8 * rinses,
        );
      }),
      RUNS,
    );
  });

  it("keeps the amounts that were printed exact where the inputs are round", () => {
    expect(
      productAmount({ rate: qty(2, "lb/100gal"), form: "dry", carrier: qty(300, "gal") }).amount.value,
    ).toBe(96);
    expect(exactly(96, "oz", "lb").toNumber()).toBe(6);
  });

  it("gives concentrate sprays", () => {
    const perVolume = volumes.flatMap((over) =>
      (["gal", "100gal", "L", "100L"] as const).map((per) => `${over}/${per}` as const),
    );
    fc.assert(
      fc.property(
        strengths,
        units(perVolume),
        of(rates),
        units(rates),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (part, unit, dilute, other, times) => {
          // The product fits into the concentrate too.
          const rate = rateOf(part / 60, unit, Rational.of(1)) as never;
          const product = { rate, form: "liquid" } as const;
          const factor = Rational.fromNumber(times);
          const found = concentrateSpray({ dilute, factor: times, product });
          expectWithin("concentrateSpray, rate", found.concentrate, si(dilute).over(factor));
          expectWithin("concentrateSpray, per area", found.perArea as never, si(rate).times(si(dilute)));
          expectWithin("concentrateSpray, strength", found.strength as never, si(rate).times(factor));
          const value = si(dilute).over(factor).over(exactSize(other)).toNumber();
          const concentrate = { value: value * 0.999, unit: other };
          const ours = concentrateSpray({ dilute, concentrate }).factor;
          expectExact("concentrateSpray, factor", ours, si(dilute).over(si(concentrate)), 8);
        },
      ),
      RUNS,
    );
  });

  it("gives the stock for an injector, what comes out of it, and its range", () => {
    const settings = fc.record({
      parts: fc.double({ min: 0.5, max: 5, noNaN: true }),
      to: fc.double({ min: 20, max: 1000, noNaN: true }),
      of: fc.constantFrom("mix", "water"),
    });
    const percents = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(
        strengths,
        of(volumes),
        settings,
        percents,
        fc.boolean(),
        (part, size, ratio, off, isRun) => {
          const [p, to] = [Rational.fromNumber(ratio.parts), Rational.fromNumber(ratio.to)];
          const water = ratio.of === "mix" ? to.minus(p) : to;
          const whole = water.plus(p);
          const rate = { value: (part * ratio.parts) / (ratio.to + ratio.parts), unit: "L/L" } as const;
          const given = { rate, form: "liquid", ratio, errorPercent: off } as const;
          const ours = injectorStock(
            (isRun ? { ...given, finished: size } : { ...given, stock: size }) as never,
          );
          const finished = isRun ? si(size) : si(size).times(whole).over(p);
          const stock = finished.times(p).over(whole);
          expectWithin("injectorStock, stock", ours.stock, stock);
          expectWithin("injectorStock, finished", ours.finished, finished);
          expectWithin("injectorStock, product", ours.product, si(rate).times(finished));
          const strength = si(rate).times(whole).over(p);
          expectWithin("injectorStock, strength", ours.strength, strength);
          for (const [end, sign] of [
            [ours.range?.low, -1],
            [ours.range?.high, 1],
          ] as const) {
            const drawn = Rational.of(1).plus(
              Rational.of(sign).times(Rational.fromNumber(off)).over(Rational.of(100)),
            );
            const right = strength.times(p).times(drawn).over(p.times(drawn).plus(water));
            expectWithin("injectorStock, range", end as never, right);
          }
          const back = injectedStrength({ stock: { value: part, unit: "L/L" }, ratio } as never) as {
            finished: { value: number; unit: string };
          };
          expectWithin("injectedStrength", back.finished, Rational.fromNumber(part).times(p).over(whole));
        },
      ),
      RUNS,
    );
  });

  it("gives the ratio of an injector, and how far its strength is off to 8 ulp of a hundred per cent", () => {
    fc.assert(
      fc.property(
        of(volumes),
        units(volumes),
        fc.double({ min: 1.5, max: 2000, noNaN: true }),
        (drawn, unit, times) => {
          const caught = { value: (si(drawn).toNumber() * times) / exactSize(unit).toNumber(), unit };
          const right = si(caught).over(si(drawn));
          const ratio = { parts: 1, to: 100, of: "mix" } as const;
          const ours = checkInjector({ ratio, drawn, caught });
          expectExact("checkInjector, ratio", ours.ratio.to, right, 8);
          const off = (100 * (100 - right.toNumber())) / right.toNumber();
          expect(Math.abs(ours.strengthOff.value - off)).toBeLessThanOrEqual(1e-13 * (100 + Math.abs(off)));
          const ofWater = checkInjector({ ratio: { ...ratio, of: "water" }, drawn, caught });
          expect(ofWater.ratio.to).toBeCloseTo(ours.ratio.to - 1, 9);
        },
      ),
      RUNS,
    );
  });
});
