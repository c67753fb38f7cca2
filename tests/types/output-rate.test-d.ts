// Checked by the compiler only: each line marked as an error must be one, and everything else must compile.
import {
  type Calibration,
  calibrationRecord,
  catchRate,
  checkNozzles,
  directStripArea,
  outputAtPressure,
  pressureForOutput,
  rateOf,
  solveOutput,
  stripRate,
  stripRuns,
  waterForSolution,
} from "../../src/output-rate/index.ts";
import { type Flow, type MassRate, qty, type VolumeRate } from "../../src/units/index.ts";

const strip = { swath: qty(2, "m"), distance: qty(50, "m") };
const flow = qty(1, "L/min");
const speed = qty(6, "km/h");
const rate = qty(200, "L/ha");
const psi = qty(20, "psi");

// A volume gives a volume per area, a weight a weight per area, and never the other.
const sprayed: VolumeRate = stripRate({ ...strip, used: qty(2, "L") });
const spread: MassRate = stripRate({ ...strip, used: qty(2, "kg") });
const meanSprayed: VolumeRate = stripRuns({ runs: [{ ...strip, used: qty(2, "L") }] }).rate;
// @ts-expect-error
const wrong: VolumeRate = stripRate({ ...strip, used: qty(2, "kg") });
// @ts-expect-error
stripRate({ ...strip, used: qty(2, "m") });
// @ts-expect-error
stripRate({ used: qty(2, "L"), swath: qty(2, "m") });
// @ts-expect-error
stripRate({ ...strip, used: 2 });
// @ts-expect-error
catchRate({ catches: [qty(1, "L"), qty(1, "kg")], time: qty(1, "min"), speed, width: qty(1, "m") });

// A reading's resolution is of the reading's own kind.
stripRate({ ...strip, used: { ...qty(2, "L"), resolution: qty(10, "mL") } });
// @ts-expect-error
stripRate({ ...strip, used: { ...qty(2, "L"), resolution: qty(1, "cm") } });

// Exactly one of the four is left out.
solveOutput({ flow, speed, width: qty(1, "m") });
// @ts-expect-error
solveOutput({ flow, speed });
// @ts-expect-error
solveOutput({ rate, flow, speed, width: qty(1, "m") });

// A flow stays a flow, a rate a rate.
const raised: Flow = outputAtPressure({ output: flow, pressure: psi, newPressure: psi }).output;
const watered: VolumeRate = waterForSolution({
  solution: rate,
  density: qty(1.2, "kg/L"),
  waterDensity: qty(1, "kg/L"),
});
// @ts-expect-error
pressureForOutput({ output: flow, pressure: psi, newOutput: rate });

// A strip reads volumes as volumes per area.
// @ts-expect-error
directStripArea({ catchUnit: "oz", rateUnit: "gal/ac" });
// @ts-expect-error
directStripArea({ catchUnit: "fl_oz", rateUnit: "gal/min" });

// What a nozzle is held against is always said.
// @ts-expect-error
checkNozzles({ catches: [qty(1, "L"), qty(1, "L")], time: qty(1, "min") });

// A calibration is told apart by its kind, and is about sprays.
const calibration: Calibration = { kind: "strip", ...strip, used: qty(2, "L") };
rateOf({ kind: "record", record: calibrationRecord({ date: "2025-04-12", measurement: calibration }) });
// @ts-expect-error
rateOf({ kind: "strip", ...strip, used: qty(2, "kg") });
// @ts-expect-error
rateOf({ ...strip, used: qty(2, "L") });
// @ts-expect-error
rateOf({ kind: "hand", used: qty(2, "L"), area: qty(100, "m2") });

export { meanSprayed, raised, sprayed, spread, watered, wrong };
