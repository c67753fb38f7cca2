import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { about, object, optional, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positiveIn } from "../units/result.js";
import type { Flow, Pressure, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** The pressures that a nozzle is made for, both ends included. */
export interface PressureRange {
  /** The lowest. More than 0. */
  readonly lowest: Pressure;
  /** The highest; not below the lowest. */
  readonly highest: Pressure;
}

const RANGE = object<PressureRange>(
  {
    lowest: quantity("The lowest. More than 0.", "pressure"),
    highest: quantity("The highest; not below the lowest.", "pressure"),
  },
  [rangeAscends],
);

function rangeAscends({ lowest, highest }: Partly<PressureRange>, check: Check): void {
  if (lowest === undefined || highest === undefined) return;
  if (!moreThan(inUnit(lowest, highest.unit), highest.value)) return;
  check.fault(
    "conflict",
    "range-descends",
    "",
    "The lowest pressure, {lowest}, is more than the highest, {highest}. Swap them.",
    { lowest, highest },
  );
}

/** Whether all the pressures of a computation lie in the range that was stated: outside it the square-root law is a guess. */
export type RangeVerdict = "inside" | "outside" | "not stated";

/**
 * A flow or rate known at one pressure, and another pressure.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface OutputAtPressureInput<Q extends Flow | VolumeRate> {
  /** The flow or rate at the first pressure. More than 0. */
  readonly output: Q;
  /** The pressure at the nozzle that goes with that output. More than 0. */
  readonly pressure: Pressure;
  /** The pressure that is asked about. More than 0. */
  readonly newPressure: Pressure;
  /** The pressures that the nozzle is made for, from its maker's table. */
  readonly range?: PressureRange | undefined;
}

const KNOWN_OUTPUT = object<Omit<OutputAtPressureInput<Flow | VolumeRate>, "newPressure">>({
  output: quantity("The flow or rate at the first pressure. More than 0.", ["flow", "volumeRate"]),
  pressure: quantity("The pressure at the nozzle that goes with that output. More than 0.", "pressure"),
  range: optional(about("The pressures that the nozzle is made for, from its maker's table.", RANGE)),
});

const AT_PRESSURE = object<OutputAtPressureInput<Flow | VolumeRate>>({
  ...KNOWN_OUTPUT.fields,
  newPressure: quantity("The pressure that is asked about. More than 0.", "pressure"),
});

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
 * Returns the flow, or the rate, at another pressure.
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
  const given = checked(input, AT_PRESSURE);
  return {
    output: outputAt(given),
    range: rangeVerdict([given.pressure, given.newPressure], given.range),
  } as OutputAtPressure<Flow> | OutputAtPressure<VolumeRate>;
}

function outputAt({
  output,
  pressure,
  newPressure,
}: OutputAtPressureInput<Flow | VolumeRate>): Flow | VolumeRate {
  const factor = Math.sqrt(inUnit(newPressure, pressure.unit) / pressure.value);
  return positiveIn(output.value * factor, output.unit) as Flow | VolumeRate;
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
  const given = checked(input, AT_PRESSURE);
  const { output, pressure, newPressure } = given;
  return formulaLines({
    id: "output-rate.output-at-pressure",
    formula: "output * sqrt(newPressure / pressure)",
    terms: {
      output: [output, output.unit],
      newPressure: [newPressure, pressure.unit],
      pressure: [pressure, pressure.unit],
    },
    result: outputAt(given),
    source: SOURCE,
  });
}

/**
 * A flow or rate known at one pressure, and the one that is aimed at.
 *
 * @typeParam Q - a flow, or a volume per area
 */
export interface PressureForOutputInput<Q extends Flow | VolumeRate> {
  /** The flow or rate at the first pressure. More than 0. */
  readonly output: Q;
  /** The pressure at the nozzle that goes with that output. More than 0. */
  readonly pressure: Pressure;
  /** The flow or rate that is aimed at, of the same kind. More than 0. */
  readonly newOutput: Q;
  /** The pressures that the nozzle is made for, from its maker's table. */
  readonly range?: PressureRange | undefined;
}

const FOR_OUTPUT = object<PressureForOutputInput<Flow | VolumeRate>>(
  {
    ...KNOWN_OUTPUT.fields,
    newOutput: quantity("The flow or rate that is aimed at, of the same kind. More than 0.", [
      "flow",
      "volumeRate",
    ]),
  },
  [outputsAgree],
);

function outputsAgree(
  { output, newOutput }: Partly<PressureForOutputInput<Flow | VolumeRate>>,
  check: Check,
): void {
  if (output === undefined || newOutput === undefined) return;
  if (dimensionOf(output.unit) === dimensionOf(newOutput.unit)) return;
  check.fault(
    "wrong-dimension",
    "outputs-differ",
    "newOutput",
    "{given} and {first} are a flow and a rate per area. Enter two flows, or two rates.",
    { given: newOutput, first: output },
  );
}

/** The pressure that gives another output. */
export interface PressureForOutput {
  /** The pressure, in the unit of the one given. */
  readonly pressure: Pressure;
  /** Whether both pressures lie in the range that was stated; outside it, change the nozzle or the speed. */
  readonly range: RangeVerdict;
}

/**
 * Returns the pressure for another flow or rate.
 *
 * Formula: new pressure = pressure × (new output / output)². Twice the flow takes four times the pressure.
 * Source: the law of flow through an orifice (Torricelli), from memory.
 *
 * @param input - the output, its pressure, the new output, and the nozzle's range where it is known
 * @returns the pressure in the unit given, and whether the range covers it
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `out-of-range`, or
 * `conflict` for a range whose ends are the wrong way round
 *
 * @example
 * ```ts
 * import { pressureForOutput } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const input = { output: qty(200, "L/ha"), pressure: qty(2, "bar"), newOutput: qty(250, "L/ha") };
 * console.log(pressureForOutput(input)); // { pressure: { value: 3.125, unit: 'bar' }, range: 'not stated' }
 * ```
 */
export function pressureForOutput(
  input: PressureForOutputInput<Flow> | PressureForOutputInput<VolumeRate>,
): PressureForOutput {
  const given = checked(input, FOR_OUTPUT);
  const pressure = neededPressure(given);
  return { pressure, range: rangeVerdict([given.pressure, pressure], given.range) };
}

function neededPressure({
  output,
  pressure,
  newOutput,
}: PressureForOutputInput<Flow | VolumeRate>): Pressure {
  const ratio = inUnit(newOutput, output.unit) / output.value;
  return positiveIn(pressure.value * ratio * ratio, pressure.unit);
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
 * const input = { output: qty(200, "L/ha"), pressure: qty(2, "bar"), newOutput: qty(250, "L/ha") };
 * console.log(pressureForOutput(input)[0]?.formula); // pressure * (newOutput / output)^2
 * ```
 */
export function pressureForOutputWorking(
  input: PressureForOutputInput<Flow> | PressureForOutputInput<VolumeRate>,
): WorkingLine[] {
  const given = checked(input, FOR_OUTPUT);
  const { output, pressure, newOutput } = given;
  return formulaLines({
    id: "output-rate.pressure-for-output",
    formula: "pressure * (newOutput / output)^2",
    terms: {
      pressure: [pressure, pressure.unit],
      newOutput: [newOutput, output.unit],
      output: [output, output.unit],
    },
    result: neededPressure(given),
    source: SOURCE,
  });
}

const SOURCE = "law of flow through an orifice (Torricelli), from memory";

function rangeVerdict(pressures: readonly Pressure[], range: PressureRange | undefined): RangeVerdict {
  if (range === undefined) return "not stated";
  const low = inUnit(range.lowest, "kPa");
  const high = inUnit(range.highest, "kPa");
  const outside = pressures.some((pressure) => {
    const value = inUnit(pressure, "kPa");
    return moreThan(low, value) || moreThan(value, high);
  });
  return outside ? "outside" : "inside";
}
