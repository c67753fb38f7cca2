import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  activeIngredientRate,
  carrierFor,
  checkLabel,
  diluteMix,
  leftoverArea,
  productAmount,
  productInLoads,
  productRate,
  rinseTank,
  type SingleRate,
  splitLoads,
  stockFor,
} from "../../../src/tank-mix/index.ts";
import { convert, qty, type Volume, valueIn } from "../../../src/units/index.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (actual: number, wanted: number): void => {
  expect(Math.abs(actual / wanted - 1), `${actual} against ${wanted}`).toBeLessThan(1e-14 * 8);
};

describe("bases that describe the same mix", () => {
  // A job by area and row, and a product that is so many fluid ounces to the gallon in it.
  const jobs = fc.record({
    acres: number(0.01, 50),
    ground: number(1, 5),
    gallonsPerAcre: number(5, 200),
    row: number(10, 1e5),
    ounces: number(0.01, 20),
    mix: number(0.5, 500),
  });

  it("give the same amount by area, broadcast, ground, row, carrier, per cent, ratio and active ingredient", () => {
    fc.assert(
      fc.property(jobs, ({ acres, ground, gallonsPerAcre, row, ounces, mix }) => {
        const perAcre = ounces * gallonsPerAcre;
        const job = {
          form: "liquid",
          carrier: qty(mix, "gal"),
          carrierRate: qty(gallonsPerAcre, "gal/ac"),
          area: { value: acres, unit: "ac", of: "treated" },
          ground: { value: acres * ground, unit: "ac", of: "ground" },
          rowLength: qty(row, "ft"),
        } as const;
        const same: SingleRate[] = [
          qty(perAcre, "fl_oz/ac"),
          { rate: qty(perAcre / 43.56, "fl_oz/1000ft2"), per: "broadcast" },
          { rate: qty(perAcre / ground, "fl_oz/ac"), per: "ground" },
          qty((perAcre * acres) / row, "fl_oz/ft"),
          qty(ounces, "fl_oz/gal"),
          qty(ounces * 100, "fl_oz/100gal"),
          { value: (100 * ounces) / 128, unit: "%", basis: "v/v" },
          { value: (1e6 * ounces) / 128, unit: "ppm", basis: "v/v" },
          { parts: ounces, to: 128, of: "mix" },
          { parts: ounces, to: 128 - ounces, of: "water" },
          { activeIngredient: qty(perAcre / 32, "lb/ac"), contains: qty(4, "lb/gal") },
        ];
        for (const rate of same) near(productAmount({ rate, ...job }).amount.value, ounces * mix);
      }),
    );
  });

  it("pass the label's limits together, or not at all", () => {
    fc.assert(
      fc.property(jobs, fc.constantFrom(0.9, 1.2), ({ gallonsPerAcre, ounces }, factor) => {
        const limits: SingleRate[] = [
          qty(ounces * gallonsPerAcre * factor, "fl_oz/ac"),
          qty(ounces * factor, "fl_oz/gal"),
          { value: (100 * ounces * factor) / 128, unit: "%", basis: "v/v" },
        ];
        for (const max of limits) {
          const findings = checkLabel({
            rate: qty(ounces, "fl_oz/gal"),
            form: "liquid",
            carrierRate: qty(gallonsPerAcre, "gal/ac"),
            label: { max },
          });
          const over = factor < 1 ? ["rate-over-max"] : [];
          const strong = ounces / 128 > 0.1 ? ["strength-unusual"] : [];
          expect(findings.map((finding) => finding.code)).toEqual([...over, ...strong]);
        }
      }),
    );
  });

  it("do not depend on the units that the job is given in", () => {
    fc.assert(
      fc.property(jobs, ({ gallonsPerAcre, ounces, mix }) => {
        const carrier = qty(mix, "gal");
        const carrierRate = qty(gallonsPerAcre, "gal/ac");
        const rate = qty(ounces * gallonsPerAcre, "fl_oz/ac");
        const us = productAmount({ rate, form: "liquid", carrier, carrierRate }).amount as Volume;
        const metric = productAmount({
          rate: convert(rate, "mL/ha"),
          form: "liquid",
          carrier: convert(carrier, "L"),
          carrierRate: convert(carrierRate, "L/ha"),
        }).amount as Volume;
        near(valueIn(metric, "fl_oz"), us.value);
      }),
    );
  });
});

describe("ways there and back", () => {
  it("come from active ingredient to product and back", () => {
    fc.assert(
      fc.property(number(0.01, 20), number(0.5, 10), (rate, content) => {
        const [activeIngredient, contains] = [qty(rate, "lb/ac"), qty(content, "lb/gal")];
        const product = productRate({ activeIngredient, contains, form: "liquid" });
        near(activeIngredientRate({ product, contains }).value, rate);
        const grams = { value: content * 10, unit: "%", basis: "w/w" } as const;
        const dry = productRate({ activeIngredient, contains: grams, form: "dry" });
        near(activeIngredientRate({ product: dry, contains: grams }).value, rate);
      }),
    );
  });

  it("come from an area to its mix and back", () => {
    fc.assert(
      fc.property(number(0.01, 500), number(1, 200), (hectares, litres) => {
        const rate = qty(litres, "L/ha");
        const { total } = carrierFor({ rate, area: { value: hectares, unit: "ha", of: "treated" } });
        near(valueIn(leftoverArea({ volume: total, rate }), "ha"), hectares);
      }),
    );
  });

  it("carry a dose in stock solution as they carry it in the tank", () => {
    fc.assert(
      fc.property(number(1, 100), number(0.001, 1), number(200, 5000), (amount, part, made) => {
        const volume = qty(made, "mL");
        const dose = qty(amount * part, "mL");
        const stock = stockFor({ amount: qty(amount, "mL"), volume, dose });
        near((stock.value * amount) / made, dose.value);
      }),
    );
  });

  it("dilute to nothing but the ratio of the strengths", () => {
    fc.assert(
      fc.property(number(1, 100), number(0.001, 1), number(0.1, 1000), (from, part, litres) => {
        const volume = qty(litres, "L");
        const { take, water } = diluteMix({ from: qty(from, "mL/L"), to: qty(from * part, "mL/L"), volume });
        near(take.value, litres * part);
        expect(take.value + water.value).toBeCloseTo(litres, 9);
      }),
    );
  });
});

describe("what a careful person relies on", () => {
  it("the whole job never takes more product than the label's rate on the area that the mix treats", () => {
    fc.assert(
      fc.property(
        number(0.01, 50),
        number(5, 100),
        number(0.1, 8),
        // More than 1000 loads are refused.
        number(6, 30),
        (acres, gallons, pints, tank) => {
          const carrierRate = qty(gallons, "gal/ac");
          const { total } = carrierFor({
            rate: carrierRate,
            area: { value: acres, unit: "ac", of: "treated" },
          });
          const { loads } = splitLoads({ total, tank: qty(tank, "gal"), split: "full-then-part" });
          const rate = qty(pints, "pt/ac");
          const { amount } = productAmount({ rate, form: "liquid", carrier: total, carrierRate });
          const shared = productInLoads({ amount, loads });
          expect(shared.total.value).toBeLessThanOrEqual(pints * 16 * acres * (1 + 1e-13));
        },
      ),
    );
  });

  it("a total rounded up is the next multiple, and never less than the job takes", () => {
    fc.assert(
      fc.property(
        number(0.01, 50),
        number(5, 100),
        fc.oneof(fc.constant(0), number(1e-70, 3)),
        fc.constantFrom(0.25, 0.5, 1, 2, 5),
        (acres, gallons, lines, step) => {
          const carrier = carrierFor({
            rate: qty(gallons, "gal/ac"),
            area: { value: acres, unit: "ac", of: "treated" },
            lineVolume: qty(lines, "gal"),
            reserve: { roundUpTo: qty(step, "gal") },
          });
          const needed = gallons * acres + lines;
          expect(Number.isInteger(carrier.total.value / step)).toBe(true);
          expect(carrier.total.value).toBeGreaterThanOrEqual(needed * (1 - 1e-11));
          expect(carrier.total.value).toBeLessThan((needed + step) * (1 + 1e-11));
          expect(carrier.reserve.value).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  it("more rinses never leave more, and the same water in more rinses leaves less", () => {
    fc.assert(
      fc.property(
        number(0.1, 10),
        number(0.1, 50),
        fc.integer({ min: 1, max: 6 }),
        (residual, water, rinses) => {
          const left = (each: number, times: number): number =>
            rinseTank({ residual: qty(residual, "L"), water: qty(each, "L"), rinses: times }).strength.value;
          expect(left(water, rinses + 1)).toBeLessThan(left(water, rinses));
          expect(left(water / (rinses + 1), rinses + 1)).toBeLessThan(left(water / rinses, rinses));
        },
      ),
    );
  });
});
