import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { doseTable, stockDilution, toolSet, volumeOfWeight } from "../../../src/household/index.ts";
import {
  type Density,
  type Mass,
  qty,
  type TreatedArea,
  unitsOf,
  type VolumeRate,
  valueIn,
} from "../../../src/units/index.ts";
import { exactly } from "../../helpers/definitions.ts";
import { expectExact, keepWorstErrors } from "../../helpers/exactness.ts";
import { Rational } from "../../helpers/rational.ts";
import { runs } from "../../helpers/runs.ts";

keepWorstErrors("household");

const positive = fc.double({ min: -4, max: 4, noNaN: true }).map((power) => 10 ** power);

describe("amounts worked out by a formula", () => {
  test.prop([
    positive,
    fc.constantFrom(...unitsOf("mass")),
    // In kg/L: what dry products weigh. Others are refused, as the unit tests show.
    fc.double({ min: 0.11, max: 2.4, noNaN: true }),
    fc.constantFrom(...unitsOf("density")),
  ])(
    "a volume of dry product is within 8 ulp of the exact quotient",
    (mass, massUnit, weight, densityUnit) => {
      const density = valueIn(qty(weight, "kg/L"), densityUnit);
      const volume = volumeOfWeight({
        mass: { value: mass, unit: massUnit } as Mass,
        bulkDensity: { value: density, unit: densityUnit } as Density,
      });
      const exact = Rational.fromNumber(mass).over(
        exactly(density, densityUnit, `${massUnit}/${volume.unit}`),
      );
      expectExact("volumeOfWeight", volume.value, exact);
    },
  );

  test.prop([
    positive,
    fc.constantFrom(...unitsOf("volumeRate")),
    positive,
    fc.constantFrom(...unitsOf("area")),
  ])("an amount of a table is within 8 ulp of rate times area", (rate, rateUnit, area, areaUnit) => {
    const [row] = doseTable({
      rates: [{ value: rate, unit: rateUnit } as VolumeRate],
      sizes: [{ value: area, unit: areaUnit, of: "treated" } as TreatedArea],
      tools: "us-household",
      rule: "never-over",
    });
    const [, per = ""] = rateUnit.split("/");
    const exact = Rational.fromNumber(rate).times(exactly(area, areaUnit, per));
    expectExact("doseTable", row?.cells[0]?.amount.value ?? Number.NaN, exact);
  });
});

describe("stockDilution", () => {
  const tools = [...toolSet("syringes"), ...toolSet("cylinders")];
  test.prop(
    [
      fc.double({ min: -3, max: 1, noNaN: true }).map((power) => 10 ** power),
      fc.constantFrom("never-over", "never-under", "nearest"),
    ],
    runs(300),
  )("keeps to the rule and the limit, and what is taken holds what it says", (milliliters, rule) => {
    const amount = qty(milliliters, "mL");
    const stock = stockDilution({ amount, tools, rule, labelPermitsDilution: true });
    if (!stock.ok) return;
    // Worked out apart from the library: product over stock, times the parts that are taken.
    const taken = stock.take.reduce((sum, part) => sum + part.amount.value, 0);
    const dose = (stock.product.amount.value / stock.stock.value) * taken;
    // To one part in 10^8 what is taken is the amount.
    expect(Math.abs(stock.measured.value / dose - 1)).toBeLessThan(1.01e-8);
    if (rule === "never-over") expect(stock.measured.value).toBeLessThanOrEqual(milliliters);
    if (rule === "never-under") expect(stock.measured.value).toBeGreaterThanOrEqual(milliliters);
    expect(Math.abs(stock.errorPercent)).toBeLessThanOrEqual(5.0000001);
    expect(stock.taken.value).toBeLessThanOrEqual(stock.stock.value);
    expect(stock.left.value).toBeGreaterThanOrEqual(0);
    expect(stock.product.amount.value * 10).toBeLessThanOrEqual(stock.stock.value * (1 + 1e-12));
  });
});
