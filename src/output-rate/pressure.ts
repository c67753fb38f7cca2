import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { checkedObject, inUnit, unitsWith } from "../units/guard.js";
import type { Flow, Pressure, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { flowOrRate } from "./amount.js";
import { toldIn } from "./result.js";
import { toldLines } from "./told-lines.js";

/** The pressures that a nozzle is made for, both ends included. */
export interface PressureRange {
  /** The lowest. More than 0. */
  readonly lowest: Pressure;
  /** The highest; not below the lowest. */
  readonly highest: Pressure;
}

/** Whether all the pressures of a computation lie in the range that was stated: outside it the square-root law is a guess. */
export type RangeVerdict = "inside" | "outside" | "not stated";

/**
 * A flow or rate known at one pressure, and another pressure.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface OutputAtPressureInput<Q extends Flow | VolumeRate> {
  /** The flow or rate at `pressure`. More than 0. */
  readonly output: Q;
  /** The pressure at the nozzle that goes with `output`. More than 0. */
  readonly pressure: Pressure;
  /** The pressure that is asked about. More than 0. */
  readonly newPressure: Pressure;
  /** The pressures that the nozzle is made for, from its maker's table. */
  readonly range?: PressureRange;
}

/**
 * A flow or rate at another pressure.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface OutputAtPressure<Q extends Flow | VolumeRate> {
  /** The flow or rate, in the unit it was given in. */
  readonly output: Q;
  /** Whether both pressures lie in the range that was stated. */
  readonly range: RangeVerdict;
}

/**
 * The flow, or the rate, at another pressure.
 *
 * Formula: new output = output × √(new pressure / pressure). Four times the pressure doubles the flow.
 * Source: the law of flow through an orifice (Torricelli), from memory.
 *
 * @param input - the output, its pressure, the new pressure, and the nozzle's range where it is known
 * @returns the output in the unit given, and whether the range covers it
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range`, or
 * `conflict` for a range whose ends are the wrong way round
 *
 * @example
 * ```ts
 * import { outputAtPressure } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const range = { lowest: qty(15, "psi"), highest: qty(60, "psi") };
 * const input = { output: qty(0.2, "gal/min"), pressure: qty(20, "psi"), newPressure: qty(80, "psi"), range };
 * console.log(outputAtPressure(input)); // { output: { value: 0.4, unit: 'gal/min' }, range: 'outside' }
 * ```
 */
export function outputAtPressure(input: OutputAtPressureInput<Flow>): OutputAtPressure<Flow>;
export function outputAtPressure(input: OutputAtPressureInput<VolumeRate>): OutputAtPressure<VolumeRate>;
export function outputAtPressure(
  input: OutputAtPressureInput<Flow> | OutputAtPressureInput<VolumeRate>,
): OutputAtPressure<Flow> | OutputAtPressure<VolumeRate> {
  const { output, pressure, newPressure, range } = checkedObject(input, "");
  const before = flowOrRate(output, "output");
  const factor = pressureFactor(pressure, newPressure);
  const verdict = rangeVerdict([pressure, newPressure], range);
  return {
    output: toldIn({ value: before * factor, unit: output.unit }, output.unit),
    range: verdict,
  } as OutputAtPressure<Flow> | OutputAtPressure<VolumeRate>;
}

/** By what factor the output changes from one pressure to another. */
function pressureFactor(pressure: Pressure, newPressure: Pressure): number {
  unitsWith(pressure, "pressure");
  const before = inUnit(pressure, pressure.unit, "pressure");
  return Math.sqrt(inUnit(newPressure, pressure.unit, "newPressure") / before);
}

/**
 * The working of {@link outputAtPressure}, line by line.
 *
 * @param input - as for {@link outputAtPressure}
 * @returns the lines; the last one's result is the new output
 * @throws SprayMathError as {@link outputAtPressure} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { outputAtPressure } from "swath-to-spoon/working";
 *
 * const input = { output: qty(0.2, "gal/min"), pressure: qty(20, "psi"), newPressure: qty(40, "psi") };
 * console.log(outputAtPressure(input)[0]?.formula); // output * sqrt(newPressure / pressure)
 * ```
 */
export function outputAtPressureWorking(
  input: OutputAtPressureInput<Flow> | OutputAtPressureInput<VolumeRate>,
): WorkingLine[] {
  const result = outputAtPressure(input as OutputAtPressureInput<Flow>).output;
  const { output, pressure, newPressure } = input;
  return toldLines({
    id: "output-rate.output-at-pressure",
    formula: "output * sqrt(newPressure / pressure)",
    terms: {
      output: [output, output.unit],
      newPressure: [newPressure, pressure.unit],
      pressure: [pressure, pressure.unit],
    },
    result,
    source: SOURCE,
  });
}

/**
 * A flow or rate known at one pressure, and the one that is wanted.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface PressureForOutputInput<Q extends Flow | VolumeRate> {
  /** The flow or rate at `pressure`. More than 0. */
  readonly output: Q;
  /** The pressure at the nozzle that goes with `output`. More than 0. */
  readonly pressure: Pressure;
  /** The flow or rate that is wanted; of the same kind as `output`. More than 0. */
  readonly wanted: Q;
  /** The pressures that the nozzle is made for, from its maker's table. */
  readonly range?: PressureRange;
}

/** The pressure that gives a wanted output. */
export interface PressureForOutput {
  /** The pressure, in the unit of the one given. */
  readonly pressure: Pressure;
  /** Whether both pressures lie in the range that was stated; outside it, change the nozzle or the speed. */
  readonly range: RangeVerdict;
}

/**
 * The pressure for a wanted flow or rate.
 *
 * Formula: new pressure = pressure × (wanted / output)². Twice the flow takes four times the pressure.
 * Source: the law of flow through an orifice (Torricelli), from memory.
 *
 * @param input - the output, its pressure, the output wanted, and the nozzle's range where it is known
 * @returns the pressure in the unit given, and whether the range covers it
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range`, or
 * `conflict` for a range whose ends are the wrong way round
 *
 * @example
 * ```ts
 * import { pressureForOutput } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const input = { output: qty(200, "L/ha"), pressure: qty(2, "bar"), wanted: qty(250, "L/ha") };
 * console.log(pressureForOutput(input)); // { pressure: { value: 3.125, unit: 'bar' }, range: 'not stated' }
 * ```
 */
export function pressureForOutput(
  input: PressureForOutputInput<Flow> | PressureForOutputInput<VolumeRate>,
): PressureForOutput {
  const { output, pressure, wanted, range } = checkedObject(input, "");
  const before = flowOrRate(output, "output");
  unitsWith(pressure, "pressure");
  const pressed = inUnit(pressure, pressure.unit, "pressure");
  const ratio = inUnit(wanted as Flow, (output as Flow).unit, "wanted") / before;
  const needed = toldIn({ value: pressed * ratio * ratio, unit: pressure.unit }, pressure.unit);
  return { pressure: needed, range: rangeVerdict([pressure, needed], range) };
}

/**
 * The working of {@link pressureForOutput}, line by line.
 *
 * @param input - as for {@link pressureForOutput}
 * @returns the lines; the last one's result is the pressure
 * @throws SprayMathError as {@link pressureForOutput} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { pressureForOutput } from "swath-to-spoon/working";
 *
 * const input = { output: qty(200, "L/ha"), pressure: qty(2, "bar"), wanted: qty(250, "L/ha") };
 * console.log(pressureForOutput(input)[0]?.formula); // pressure * (wanted / output)^2
 * ```
 */
export function pressureForOutputWorking(
  input: PressureForOutputInput<Flow> | PressureForOutputInput<VolumeRate>,
): WorkingLine[] {
  const result = pressureForOutput(input).pressure;
  const { output, pressure, wanted } = input;
  return toldLines({
    id: "output-rate.pressure-for-output",
    formula: "pressure * (wanted / output)^2",
    terms: {
      pressure: [pressure, pressure.unit],
      wanted: [wanted, output.unit],
      output: [output, output.unit],
    },
    result,
    source: SOURCE,
  });
}

const SOURCE = "law of flow through an orifice (Torricelli), from memory";

function rangeVerdict(pressures: readonly Pressure[], range: PressureRange | undefined): RangeVerdict {
  if (range === undefined) return "not stated";
  const { lowest, highest } = checkedObject(range, "range");
  const low = inUnit(lowest, "kPa", "range.lowest");
  const high = inUnit(highest, "kPa", "range.highest");
  if (moreThan(low, high)) {
    throw new SprayMathError(
      "conflict",
      "range",
      `Given a range from ${lowest.value} ${lowest.unit} up to ${highest.value} ${highest.unit}; wanted the lower pressure as lowest.`,
    );
  }
  const outside = pressures.some((pressure) => {
    const value = inUnit(pressure, "kPa", "pressure");
    return moreThan(low, value) || moreThan(value, high);
  });
  return outside ? "outside" : "inside";
}
