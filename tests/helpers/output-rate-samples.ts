import type * as rates from "../../src/output-rate/index.ts";
import { qty } from "../../src/units/index.ts";

/** An input of every kind of measurement, each reading with its resolution or uncertainty. */
export const MEASUREMENTS: Record<rates.Measurement["kind"], rates.Measurement> = {
  strip: {
    kind: "strip",
    used: { ...qty(34, "fl_oz"), resolution: qty(1, "fl_oz") },
    swath: { ...qty(30, "in"), uncertainty: qty(0.5, "in") },
    distance: { ...qty(120, "ft"), uncertainty: qty(6, "in") },
  },
  "strip-runs": {
    kind: "strip-runs",
    runs: [2, 2.1, 2.04, 2.2].map((litres) => ({
      used: { ...qty(litres, "L"), resolution: qty(20, "mL") },
      swath: { ...qty(2, "m"), uncertainty: qty(3, "cm") },
      distance: { ...qty(50, "m"), uncertainty: qty(20, "cm") },
    })),
  },
  "direct-strip": {
    kind: "direct-strip",
    caught: { ...qty(450, "mL"), resolution: qty(10, "mL") },
    catchUnit: "fl_oz",
    rateUnit: "gal/ac",
  },
  catch: {
    kind: "catch",
    catches: [30, 31, 29, 30.5].map((ounces) => ({ ...qty(ounces, "fl_oz"), resolution: qty(0.5, "fl_oz") })),
    time: { ...qty(1, "min"), uncertainty: qty(0.5, "s") },
    speed: {
      distance: { ...qty(200, "ft"), uncertainty: qty(1, "ft") },
      time: { ...qty(45, "s"), uncertainty: qty(0.5, "s") },
    },
    width: { ...qty(20, "in"), resolution: qty(0.5, "in") },
    nozzlesPerRow: 2,
  },
  "tree-row": {
    kind: "tree-row",
    used: { ...qty(10, "L"), resolution: qty(0.5, "L") },
    sides: 1,
    rowLength: { ...qty(100, "m"), uncertainty: qty(0.5, "m") },
    rowSpacing: { ...qty(4, "m"), resolution: qty(0.1, "m") },
    plantSpacing: qty(2, "m"),
  },
  hand: {
    kind: "hand",
    used: { ...qty(4, "L"), resolution: qty(0.1, "L") },
    plants: 20,
    plantSpacing: { ...qty(2, "m"), resolution: qty(10, "cm") },
    rowSpacing: { ...qty(4, "m"), resolution: qty(10, "cm") },
  },
  flow: {
    kind: "flow",
    flow: { ...qty(0.4, "gal/min"), uncertainty: qty(0.01, "gal/min") },
    speed: { ...qty(3, "mph"), uncertainty: qty(0.1, "mph") },
    width: { ...qty(20, "in"), resolution: qty(1, "in") },
  },
  known: { kind: "known", rate: { ...qty(200, "L/ha"), uncertainty: qty(5, "L/ha") } },
};

/** A kept calibration with every condition recorded. */
export const CONDITIONS: rates.CalibrationConditions = {
  operator: "Sam",
  nozzle: "flat fan 02",
  nozzleCount: 4,
  nozzleSpacing: qty(50, "cm"),
  pressure: qty(2, "bar"),
  speed: qty(4, "km/h"),
  gear: "second, 1500 rpm",
  ground: "bare",
  liquid: "clean water",
  density: qty(1, "kg/L"),
};
