import { describe, expect, it } from "vitest";
import {
  densityFactor,
  outputAtPressure,
  pressureForOutput,
  solutionForWater,
  waterForSolution,
} from "../../../src/output-rate/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusesMisuse } from "../../helpers/bad-input.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const at = { output: qty(0.2, "gal/min"), pressure: qty(20, "psi") };
const range = { lowest: qty(15, "psi"), highest: qty(60, "psi") };

describe("pressure", () => {
  it("doubles the flow when it is four times as high", () => {
    // From memory: the flow through an orifice goes with the square root of the pressure. No published example in psi was found.
    expect(outputAtPressure({ ...at, newPressure: qty(80, "psi") })).toEqual({
      output: qty(0.4, "gal/min"),
      range: "not stated",
    });
    expect(pressureForOutput({ ...at, newOutput: qty(0.4, "gal/min") })).toEqual({
      pressure: qty(80, "psi"),
      range: "not stated",
    });
  });

  it("moves a rate as it moves a flow", () => {
    const rate = { output: qty(20, "gal/ac"), pressure: qty(20, "psi") };
    expect(outputAtPressure({ ...rate, newPressure: qty(45, "psi") }).output).toEqual(qty(30, "gal/ac"));
    expect(pressureForOutput({ ...rate, newOutput: qty(30, "gal/ac") }).pressure.value).toBeCloseTo(45, 12);
  });

  it("names an end of the range at fault, and what is no flow, alone", () => {
    const faults = (change: object) =>
      refusal(() => outputAtPressure({ ...at, newPressure: qty(30, "psi"), ...change } as never)).issues.map(
        ({ path }) => path,
      );
    expect(faults({ range: { ...range, lowest: true } })).toEqual(["range.lowest"]);
    expect(faults({ range: { ...range, highest: true } })).toEqual(["range.highest"]);
    for (const wrong of [
      () => pressureForOutput({ ...at, newOutput: qty(1, "ft") } as never),
      () =>
        waterForSolution({
          solution: qty(1, "ft"),
          density: qty(9, "lb/gal"),
          waterDensity: qty(1, "kg/L"),
        } as never),
      () =>
        solutionForWater({
          water: qty(1, "ft"),
          density: qty(9, "lb/gal"),
          waterDensity: qty(1, "kg/L"),
        } as never),
    ])
      expect(refusal(wrong).code).toBe("wrong-dimension");
  });

  it("says whether the stated range covers it, the ends included", () => {
    const verdict = (psi: number) => outputAtPressure({ ...at, newPressure: qty(psi, "psi"), range }).range;
    expect([14.9, 15, 30, 60, 60.1].map(verdict)).toEqual([
      "outside",
      "inside",
      "inside",
      "inside",
      "outside",
    ]);
    expect(
      outputAtPressure({ ...at, pressure: qty(10, "psi"), newPressure: qty(30, "psi"), range }).range,
    ).toBe("outside");
    expect(pressureForOutput({ ...at, newOutput: qty(0.4, "gal/min"), range }).range).toBe("outside");
    expect(pressureForOutput({ ...at, newOutput: qty(0.3, "gal/min"), range }).range).toBe("inside");
    const metric = { lowest: qty(1, "bar"), highest: qty(400, "kPa") };
    expect(outputAtPressure({ ...at, newPressure: qty(4, "bar"), range: metric }).range).toBe("inside");
  });

  refusesMisuse("outputAtPressure", outputAtPressure, { ...at, newPressure: qty(30, "psi"), range }, [
    "output",
    "pressure",
    "newPressure",
    "range.lowest",
    "range.highest",
  ]);
  refusesMisuse("pressureForOutput", pressureForOutput, { ...at, newOutput: qty(1, "L/min") }, [
    "output",
    "pressure",
    "newOutput",
  ]);

  it("refuses a range from high to low, a rate for a flow, and no pressure", () => {
    const upside = { lowest: qty(60, "psi"), highest: qty(15, "psi") };
    expectRefused(
      () => outputAtPressure({ ...at, newPressure: qty(30, "psi"), range: upside }),
      "conflict",
      "range",
    );
    expectRefused(
      () => pressureForOutput({ ...at, newOutput: qty(20, "gal/ac") } as never),
      "wrong-dimension",
      "newOutput",
    );
    expectRefused(
      () => outputAtPressure({ ...at, newPressure: qty(0, "psi") }),
      "out-of-range",
      "newPressure",
    );
    expectRefused(
      () => outputAtPressure({ ...at, output: qty(1, "ft"), newPressure: qty(9, "psi") } as never),
      "wrong-dimension",
      "output",
    );
  });
});

describe("density", () => {
  const densities = { density: qty(1.44, "kg/L"), waterDensity: qty(1, "kg/L") };

  it("asks for more water than solution where the solution is heavier", () => {
    expect(densityFactor(densities)).toBeCloseTo(1.2, 15);
    expect(waterForSolution({ solution: qty(200, "L/ha"), ...densities }).value).toBeCloseTo(240, 12);
    expect(solutionForWater({ water: qty(240, "L/ha"), ...densities }).value).toBeCloseTo(200, 12);
  });

  it("takes flows and rates, and densities in any units", () => {
    expect(waterForSolution({ solution: qty(1, "gal/min"), ...densities })).toEqual(qty(1.2, "gal/min"));
    const mixed = { density: qty(8.345404452021, "lb/gal"), waterDensity: qty(1, "kg/L") };
    expect(densityFactor(mixed)).toBeCloseTo(1, 11);
  });

  refusesMisuse("densityFactor", densityFactor, densities, ["density", "waterDensity"]);
  refusesMisuse("waterForSolution", waterForSolution, { solution: qty(1, "L/min"), ...densities }, [
    "solution",
    "density",
    "waterDensity",
  ]);
  refusesMisuse("solutionForWater", solutionForWater, { water: qty(1, "L/min"), ...densities }, [
    "water",
    "density",
    "waterDensity",
  ]);

  it("has no water of its own: which water it is must be said", () => {
    const { density } = densities;
    expectRefused(() => densityFactor({ density } as never), "missing", "waterDensity");
  });
});
