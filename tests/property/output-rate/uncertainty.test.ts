import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Calibration,
  type Measurement,
  rateOf,
  rateUncertainty,
} from "../../../src/output-rate/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import { MEASUREMENTS } from "../../helpers/output-rate-samples.ts";

const reading = <U extends "L" | "m" | "s">(unit: U) =>
  fc
    .record({
      value: fc.double({ min: 0.5, max: 100, noNaN: true }),
      part: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
      steps: fc.boolean(),
    })
    .map(({ value, part, steps }) => ({
      ...qty(value, unit),
      [steps ? "resolution" : "uncertainty"]: qty(value * part, unit),
    }));

const calibrations: fc.Arbitrary<Calibration> = fc.oneof(
  fc.record({
    kind: fc.constant("strip" as const),
    used: reading("L"),
    swath: reading("m"),
    distance: reading("m"),
  }),
  fc.record({
    kind: fc.constant("strip-runs" as const),
    runs: fc.array(fc.record({ used: reading("L"), swath: reading("m"), distance: reading("m") }), {
      minLength: 2,
      maxLength: 5,
    }),
  }),
  fc.record({
    kind: fc.constant("catch" as const),
    catches: fc.array(reading("L"), { minLength: 1, maxLength: 8 }),
    time: reading("s"),
    speed: fc.record({ distance: reading("m"), time: reading("s") }),
    width: reading("m"),
  }),
);

describe("rateUncertainty", () => {
  it("gives shares that add up to one, and improves the largest", () => {
    fc.assert(
      fc.property(calibrations, (calibration) => {
        const { shares, improve, rate, standardUncertainty, relative } = rateUncertainty(calibration);
        expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
        const largest = Math.max(...shares.map(({ share }) => share));
        expect(shares.find(({ measurement }) => measurement === improve)?.share).toBe(largest);
        expect(standardUncertainty.value / rate.value).toBeCloseTo(relative.value / 100, 12);
      }),
    );
  });

  it("is less sure the less sure a reading is", () => {
    fc.assert(
      fc.property(reading("L"), fc.double({ min: 1.01, max: 5, noNaN: true }), (used, times) => {
        const strip = {
          kind: "strip",
          swath: { ...qty(2, "m"), uncertainty: qty(1, "cm") },
          distance: qty(50, "m"),
        } as const;
        const known = { ...qty(used.value, "L"), uncertainty: qty(used.value / 100, "L") };
        const worse = { ...known, uncertainty: qty((used.value / 100) * times, "L") };
        expect(rateUncertainty({ ...strip, used: worse }).relative.value).toBeGreaterThan(
          rateUncertainty({ ...strip, used: known }).relative.value,
        );
      }),
    );
  });
});

/** A generator of even numbers from 0 to 1 with a seed (mulberry32, from memory), so that every run is the same. */
function evenNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

type Reading = Quantity & { resolution?: Quantity; uncertainty?: Quantity };

/** The same measurement with every reading moved by chance: evenly over its resolution, or by the normal law. */
function shaken(measurement: Measurement, even: () => number): Measurement {
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  const inUnitOf = ({ unit }: Quantity, step: Quantity): number => {
    const sizes: Record<string, number> = { s: 1, min: 60, in: 1, ft: 12, cm: 1, m: 100, mL: 1, L: 1000 };
    return step.unit === unit ? step.value : (step.value * Number(sizes[step.unit])) / Number(sizes[unit]);
  };
  const move = (value: Reading): Quantity => {
    const { resolution, uncertainty } = value;
    const by = resolution
      ? inUnitOf(value, resolution) * (even() - 0.5)
      : inUnitOf(value, uncertainty as Quantity) * normal();
    return { ...value, value: value.value + by };
  };
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (value === null || typeof value !== "object") return value;
    if ("resolution" in value || "uncertainty" in value) return move(value as Reading);
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, walk(inner)]));
  };
  return walk(measurement) as Measurement;
}

function deviationOf(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

describe("rateUncertainty, against Monte Carlo", () => {
  const TRIALS = 20_000;
  // The standard deviation of a simulated standard deviation is about 1/√(2 × trials) = 0.5 %; four of them, and half a
  // per cent for what the first-order rule leaves out at these sizes.
  const TOLERANCE = 0.025;

  for (const [kind, measurement] of Object.entries(MEASUREMENTS).filter(([name]) => name !== "strip-runs")) {
    it(`agrees for ${kind}`, () => {
      const even = evenNumbers(20250412);
      const rates = Array.from({ length: TRIALS }, () => rateOf(shaken(measurement, even)).value);
      const { standardUncertainty } = rateUncertainty(measurement);
      expect(Math.abs(deviationOf(rates) / standardUncertainty.value - 1)).toBeLessThan(TOLERANCE);
    });
  }

  it("agrees for several runs over one strip, its scatter aside", () => {
    const even = evenNumbers(7);
    const { runs } = MEASUREMENTS["strip-runs"] as Measurement & { kind: "strip-runs" };
    const [first] = runs;
    const rates = Array.from({ length: TRIALS }, () => {
      // One strip for all the runs: its width and length are off by the same in each.
      const strip = shaken(
        { kind: "strip", ...(first as NonNullable<typeof first>) },
        even,
      ) as Measurement & { kind: "strip" };
      const walked = runs.map(({ used }) => ({
        used: (
          shaken(
            { kind: "direct-strip", caught: used, catchUnit: "L", rateUnit: "L/ha" },
            even,
          ) as Measurement & { kind: "direct-strip" }
        ).caught,
        swath: strip.swath,
        distance: strip.distance,
      }));
      return rateOf({ kind: "strip-runs", runs: walked }).value;
    });
    const { standardUncertainty, shares } = rateUncertainty(MEASUREMENTS["strip-runs"]);
    const scatter = shares.find(({ measurement }) => measurement === "scatter")?.share ?? 0;
    const expected = standardUncertainty.value * Math.sqrt(1 - scatter);
    expect(Math.abs(deviationOf(rates) / expected - 1)).toBeLessThan(TOLERANCE);
  });
});
