import { checkedObject, inUnit, unitsWith } from "../units/guard.js";
import type {
  Length,
  Mass,
  MassRate,
  MassRateUnit,
  Measured,
  Quantity,
  Unit,
  Volume,
  VolumeRate,
  VolumeRateUnit,
} from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { amountKind } from "./amount.js";
import { toldIn } from "./result.js";
import { toldLines } from "./told-lines.js";

/**
 * What was measured in one run over a test strip.
 *
 * @typeParam A - a volume for a sprayer, a mass for a spreader
 */
export interface StripRun<A extends Volume | Mass = Volume> {
  /** What went out over the strip: the refill that brings the tank back to its mark. More than 0. */
  readonly used: Measured<A>;
  /** The width treated in the pass. More than 0. */
  readonly swath: Measured<Length>;
  /** The distance travelled while spraying. More than 0. */
  readonly distance: Measured<Length>;
}

/**
 * The rate from a test strip (the refill method): what was used, over the area it was used on.
 *
 * Formula: rate = used / (swath × distance).
 * Source: the definition of a rate per area; worked examples in Hand Sprayer Calibration (Colorado Environmental
 * Pesticide Education Program, Fact Sheet 204, 2006).
 *
 * @param run - what was used, the width of the pass and the distance, each more than 0
 * @returns the rate in the units of `used`: gal/ac, imp_gal/ac or L/ha for a volume, lb/ac or kg/ha for a mass
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, or
 * `out-of-range` where nothing was used or a length is not more than 0
 *
 * @example
 * ```ts
 * import { stripRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(stripRate({ used: qty(4, "gal"), swath: qty(20, "ft"), distance: qty(217.8, "ft") })); // { value: 40, unit: 'gal/ac' }
 * ```
 */
export function stripRate(run: StripRun<Volume>): VolumeRate;
export function stripRate(run: StripRun<Mass>): MassRate;
export function stripRate(run: StripRun<Volume> | StripRun<Mass>): VolumeRate | MassRate;
export function stripRate(run: StripRun<Volume> | StripRun<Mass>): VolumeRate | MassRate {
  const { rate, told } = checkedRun(run);
  return toldIn(rate, told) as VolumeRate | MassRate;
}

/**
 * The working of {@link stripRate}, line by line.
 *
 * @param run - as for {@link stripRate}
 * @returns the lines; the last one's result is the rate
 * @throws SprayMathError as {@link stripRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { stripRate } from "swath-to-spoon/working";
 *
 * const lines = stripRate({ used: qty(4, "gal"), swath: qty(20, "ft"), distance: qty(217.8, "ft") });
 * console.log(lines.map((line) => line.formula).join(", ")); // used / (swath * distance), value * size
 * ```
 */
export function stripRateWorking(run: StripRun<Volume> | StripRun<Mass>): WorkingLine[] {
  stripRate(run);
  const { length, rate, told } = checkedRun(run);
  return toldLines(
    {
      id: "output-rate.strip",
      formula: "used / (swath * distance)",
      terms: {
        used: [run.used, run.used.unit],
        swath: [run.swath, length],
        distance: [run.distance, length],
      },
      result: rate,
      source: "definition of a rate per area",
    },
    told,
  );
}

interface CheckedRun {
  readonly length: "ft" | "m";
  /** The rate as the division gives it, such as in `fl_oz/ft2`. */
  readonly rate: VolumeRate | MassRate;
  /** The rate's unit as it is told. */
  readonly told: VolumeRateUnit | MassRateUnit;
}

function checkedRun(run: StripRun<Volume> | StripRun<Mass>): CheckedRun {
  checkedObject(run, "");
  const amount = amountKind(run.used, "used");
  const used = inUnit(run.used as Quantity, run.used.unit as Unit, "used");
  const { length, area } = unitsWith(run.swath, "swath");
  const swath = inUnit(run.swath, length, "swath");
  const distance = inUnit(run.distance, length, "distance");
  const units = unitsWith(run.used, "used");
  return {
    length,
    rate: { value: used / (swath * distance), unit: `${run.used.unit}/${area}` } as VolumeRate | MassRate,
    told: amount === "volume" ? units.volumeRate : units.massRate,
  };
}
