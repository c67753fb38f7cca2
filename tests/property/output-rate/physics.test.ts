import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  catchRate,
  densityFactor,
  directStripDistance,
  directStripRate,
  outputAtPressure,
  pressureForOutput,
  rateAtSpeed,
  rateOf,
  solutionForWater,
  solveOutput,
  speedFrom,
  stripRate,
  timeFor,
  waterForSolution,
} from "../../../src/output-rate/index.ts";
import { convert, qty, scaleQuantity, valueIn } from "../../../src/units/index.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A sprayer at work: what a nozzle gives in a minute, how fast it goes, how wide it sprays, how far the test goes. */
const situation = fc.record({
  flow: number(0.01, 5).map((value) => qty(value, "gal/min")),
  speed: number(0.5, 15).map((value) => qty(value, "mph")),
  width: number(5, 200).map((value) => qty(value, "in")),
  distance: number(20, 2000).map((value) => qty(value, "ft")),
});

function expectSame(a: number, b: number, digits = 1e-12): void {
  expect(Math.abs(a / b - 1)).toBeLessThan(digits);
}

describe("output-rate as physics", () => {
  it("gives one rate from a strip, a catch, a direct-reading strip and a solve of one situation", () => {
    fc.assert(
      fc.property(situation, ({ flow, speed, width, distance }) => {
        const { rate } = solveOutput({ flow, speed, width });
        const time = timeFor({ distance, speed });
        const used = qty((flow.value * time.value) / 60, "gal");
        expectSame(stripRate({ used, swath: width, distance }).value, rate.value);
        const caught = qty(flow.value / 2, "gal");
        const pass = { distance, time };
        const both = { time: qty(30, "s"), width };
        expectSame(catchRate({ catches: [caught, caught], ...both, speed }).value, rate.value);
        expectSame(catchRate({ catches: [caught, caught], ...both, speed: pass }).value, rate.value);
        const pair = { catchUnit: "fl_oz", rateUnit: "gal/ac" } as const;
        const strip = timeFor({ distance: directStripDistance({ ...pair, width }), speed });
        const read = qty((flow.value * strip.value) / 60, "gal");
        expectSame(directStripRate({ ...pair, caught: read }).value, rate.value);
      }),
    );
  });

  it("halves the rate at twice the speed, whichever way the rate is found", () => {
    fc.assert(
      fc.property(situation, ({ flow, speed, width }) => {
        const twice = scaleQuantity(speed, 2);
        const { rate } = solveOutput({ flow, speed, width });
        expectSame(solveOutput({ flow, speed: twice, width }).rate.value, rate.value / 2);
        expectSame(rateAtSpeed({ rate, speed, newSpeed: twice }).value, rate.value / 2);
        const boom = { catches: [qty(1, "pt")], time: qty(1, "min"), width };
        expectSame(catchRate({ ...boom, speed: twice }).value, catchRate({ ...boom, speed }).value / 2);
      }),
    );
  });

  it("inverts: solving for each of the four gives back what was put in", () => {
    fc.assert(
      fc.property(situation, ({ flow, speed, width }) => {
        const { rate } = solveOutput({ flow, speed, width });
        expectSame(valueIn(solveOutput({ rate, speed, width }).flow, "gal/min"), flow.value);
        expectSame(valueIn(solveOutput({ rate, flow, width }).speed, "mph"), speed.value);
        expectSame(valueIn(solveOutput({ rate, flow, speed }).width, "in"), width.value);
      }),
    );
  });

  it("inverts: time and speed, pressure and flow, water and solution", () => {
    const pressure = number(5, 500);
    fc.assert(
      fc.property(situation, pressure, pressure, ({ flow, speed, distance }, before, after) => {
        expectSame(speedFrom({ distance, time: timeFor({ distance, speed }) }).value, speed.value);
        const at = { pressure: qty(before, "psi") };
        const { output } = outputAtPressure({ output: flow, ...at, newPressure: qty(after, "psi") });
        expectSame(pressureForOutput({ output: flow, ...at, newOutput: output }).pressure.value, after);
        const densities = { density: qty(before, "lb/gal"), waterDensity: qty(after, "lb/gal") };
        const water = waterForSolution({ solution: flow, ...densities });
        expectSame(solutionForWater({ water, ...densities }).value, flow.value);
        expectSame(water.value / flow.value, densityFactor(densities));
      }),
    );
  });

  it("raises the flow with the pressure, and the pressure with the flow", () => {
    fc.assert(
      fc.property(number(1, 100), number(1.001, 10), (pressure, times) => {
        const at = { output: qty(1, "L/min"), pressure: qty(pressure, "bar") };
        const higher = outputAtPressure({ ...at, newPressure: qty(pressure * times, "bar") });
        expect(higher.output.value).toBeGreaterThan(1);
        expect(higher.output.value).toBeLessThan(times);
        expect(pressureForOutput({ ...at, newOutput: qty(times, "L/min") }).pressure.value).toBeGreaterThan(
          pressure,
        );
      }),
    );
  });

  it("does not mind the unit system", () => {
    fc.assert(
      fc.property(situation, number(0.1, 10), ({ speed, width, distance, flow }, gallons) => {
        const metric = { swath: convert(width, "m"), distance: convert(distance, "m") };
        const strip = stripRate({ used: convert(qty(gallons, "gal"), "L"), ...metric });
        expectSame(
          valueIn(strip, "gal/ac"),
          stripRate({ used: qty(gallons, "gal"), swath: width, distance }).value,
        );
        const us = solveOutput({ flow, speed, width }).rate;
        const other = solveOutput({
          flow: convert(flow, "L/min"),
          speed: convert(speed, "km/h"),
          width: convert(width, "cm"),
        }).rate;
        expectSame(valueIn(other, "gal/ac"), us.value);
        const imperial = rateOf({ kind: "flow", flow: convert(flow, "imp_gal/h"), speed, width });
        expect(imperial.unit).toBe("imp_gal/ac");
        expectSame(valueIn(imperial, "gal/ac"), us.value);
      }),
    );
  });
});
