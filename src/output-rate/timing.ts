import { checked, type Field } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import {
  about,
  type EitherField,
  either,
  hasField,
  list,
  type ObjectField,
  object,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { measured, quantity, smallVolume } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { Flow, Measured, Time, TimeUnit, Volume, VolumeUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** What a hand gun, a wand or a nozzle put out in a time. */
export interface TimedCatch {
  /** What was caught, at the pressure of the job. More than 0. */
  readonly caught: Measured<Volume>;
  /** How long it was caught for. More than 0. */
  readonly time: Measured<Time>;
}

/** What a hand gun, a wand or a nozzle put out in a time. */
export const TIMED_CATCH: ObjectField<TimedCatch> = object<TimedCatch>({
  caught: measured("What was caught, at the pressure of the job. More than 0.", "volume"),
  time: measured("How long it was caught for. More than 0.", "time"),
});

const MEASURED_FLOW = measured("The flow. More than 0.", "flow");

/** A flow, or the timed catch that it follows from. */
export const MEASURED_OUTPUT: EitherField<Measured<Flow> | TimedCatch> = either<Measured<Flow> | TimedCatch>(
  "The flow, or what was caught in a time. More than 0.",
  [MEASURED_FLOW, TIMED_CATCH] as readonly Field<Measured<Flow> | TimedCatch>[],
  (input) => (hasField(input, ["caught", "time"]) ? 1 : 0),
);

/**
 * Returns the flow of a hand gun, a wand or a nozzle from a timed catch.
 *
 * Formula: flow = caught / time (definition of a flow).
 *
 * @param one - what was caught, and in what time, each more than 0
 * @returns the flow in gal/min, `imp_gal/min` or L/min, like what was caught
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { flowFrom } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(flowFrom({ caught: qty(1.5, "L"), time: qty(30, "s") })); // { value: 3, unit: 'L/min' }
 * ```
 */
export function flowFrom(one: TimedCatch): Flow {
  return flowOfCatch(checked(one, TIMED_CATCH));
}

/**
 * The working of {@link flowFrom}, line by line.
 *
 * @param one - as for {@link flowFrom}
 * @returns the lines; the last one's result is the flow
 * @throws SprayMathError as {@link flowFrom} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { flowFrom } from "swath-to-spoon/working";
 *
 * const lines = flowFrom({ caught: qty(1.5, "L"), time: qty(30, "s") });
 * console.log(lines[0]?.formula); // caught / time
 * ```
 */
export function flowFromWorking(one: TimedCatch): WorkingLine[] {
  return linesOfTimedCatch(checked(one, TIMED_CATCH));
}

/** The flow of a timed catch. Trusts its input. */
export function flowOfCatch(one: TimedCatch, at = ""): Flow {
  return workedFlow(one, at).rate;
}

/** The working of {@link flowOfCatch}. Trusts its input. */
export function linesOfTimedCatch({ caught, time }: TimedCatch): WorkingLine[] {
  const { quotient, rate } = workedFlow({ caught, time }, "");
  return formulaLines(
    {
      id: "output-rate.flow",
      formula: "caught / time",
      terms: { caught: [caught, caught.unit], time: [time, time.unit] },
      result: quotient,
      source: "definition of a flow",
    },
    rate.unit,
  );
}

function workedFlow({ caught, time }: TimedCatch, at: string): WorkedRate<Flow> {
  const { flow } = unitsLike(caught.unit);
  return workedRate(caught.value / time.value, perUnit(caught.unit, time.unit), flow, at);
}

/** Several timed catches of one hand gun, wand or nozzle. */
export interface TimedCatches {
  /** The catches, at least one; they need not be of one length. */
  readonly catches: readonly TimedCatch[];
}

const CATCHES: ObjectField<TimedCatches> = object<TimedCatches>({
  catches: list("The catches, at least one; they need not be of one length.", TIMED_CATCH),
});

/**
 * Returns the average flow of several timed catches: all that was caught over all the time.
 *
 * Formula: flow = Σ caught / Σ time (definition of an average flow).
 *
 * @param input - the catches
 * @returns the flow in gal/min, `imp_gal/min` or L/min, like the first catch
 * @throws SprayMathError `too-few`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or
 * `out-of-range`, with the catch in the path: `catches[1].time`
 *
 * @example
 * ```ts
 * import { averageFlow } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const catches = [1.45, 1.5, 1.55].map((liters) => ({ caught: qty(liters, "L"), time: qty(30, "s") }));
 * console.log(averageFlow({ catches })); // { value: 3, unit: 'L/min' }
 * ```
 */
export function averageFlow(input: TimedCatches): Flow {
  return flowOfCatch(allOf(checked(input, CATCHES)));
}

/**
 * The working of {@link averageFlow}, line by line.
 *
 * @param input - as for {@link averageFlow}
 * @returns the lines; the last one's result is the average flow
 * @throws SprayMathError as {@link averageFlow} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { averageFlow } from "swath-to-spoon/working";
 *
 * const catches = [1.45, 1.55].map((liters) => ({ caught: qty(liters, "L"), time: qty(30, "s") }));
 * console.log(averageFlow({ catches })[0]?.formula); // x1 + x2
 * ```
 */
export function averageFlowWorking(input: TimedCatches): WorkingLine[] {
  const given = checked(input, CATCHES);
  const all = allOf(given);
  const added = (of: "caught" | "time"): WorkingLine[] =>
    formulaLines({
      id: `output-rate.average-flow-${of}`,
      formula: given.catches.map((_, at) => `x${at + 1}`).join(" + "),
      terms: Object.fromEntries(
        given.catches.map((one, at) => [`x${at + 1}`, [one[of], all[of].unit] as const]),
      ),
      result: all[of],
      source: "definition of an average flow",
    });
  return [...added("caught"), ...added("time"), ...linesOfTimedCatch(all)];
}

/** All catches as one. */
function allOf({ catches }: TimedCatches): TimedCatch {
  return {
    caught: sumOf(catches.map(({ caught }) => caught)),
    time: sumOf(catches.map(({ time }) => time)),
  };
}

/** A hand gun or wand that is held on each plant for a time. */
export interface PlantTiming {
  /** The flow, or what was caught in a time. More than 0. */
  readonly flow: Measured<Flow> | TimedCatch;
  /** How long each plant is sprayed. More than 0. */
  readonly time: Measured<Time>;
}

/** A hand gun or wand that is held on each plant for a time. */
export const PLANT_TIMING: ObjectField<PlantTiming> = object<PlantTiming>({
  flow: MEASURED_OUTPUT,
  time: measured("How long each plant is sprayed. More than 0.", "time"),
});

/**
 * Returns the volume that each plant, pot, tree or spot gets in the time that it is sprayed.
 *
 * Formula: volume = flow × time (definition of a flow).
 *
 * @param input - the flow or a timed catch, and the time for each plant
 * @returns the volume in `fl_oz`, `imp_fl_oz` or mL, like the flow
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { volumePerPlant } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const flow = { caught: qty(600, "mL"), time: qty(30, "s") };
 * console.log(volumePerPlant({ flow, time: qty(4, "s") })); // { value: 80, unit: 'mL' }
 * ```
 */
export function volumePerPlant(input: PlantTiming): Volume {
  return volumeOfTiming(checked(input, PLANT_TIMING));
}

/**
 * The working of {@link volumePerPlant}, line by line.
 *
 * @param input - as for {@link volumePerPlant}
 * @returns the lines; the last one's result is the volume
 * @throws SprayMathError as {@link volumePerPlant} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { volumePerPlant } from "swath-to-spoon/working";
 *
 * const lines = volumePerPlant({ flow: qty(20, "mL/s"), time: qty(4, "s") });
 * console.log(lines[0]?.formula); // flow * time
 * ```
 */
export function volumePerPlantWorking(input: PlantTiming): WorkingLine[] {
  return linesOfTiming(checked(input, PLANT_TIMING));
}

/** The volume that each plant gets in a time. Trusts its input. */
export function volumeOfTiming(input: PlantTiming, at = ""): Volume {
  return workedTiming(input, at).rate;
}

/** The working of {@link volumeOfTiming}. Trusts its input. */
export function linesOfTiming({ flow, time }: PlantTiming): WorkingLine[] {
  const { quotient, rate } = workedTiming({ flow, time }, "");
  const per = timeUnitOf(flow);
  return formulaLines(
    {
      id: "output-rate.plant-volume",
      formula: isCatch(flow) ? "caught * time / catchTime" : "flow * time",
      terms: { ...termsOf(flow), time: [time, per] },
      result: quotient,
      source: "definition of a flow",
    },
    rate.unit,
  );
}

function workedTiming({ flow, time }: PlantTiming, at: string): WorkedRate<Volume> {
  const { caught, time: during } = asCatch(flow);
  const { smallVolume } = unitsLike(caught.unit);
  const value = caught.value * (inUnit(time, during.unit) / during.value);
  return workedRate(value, caught.unit, smallVolume, at);
}

/** Whether a flow was given as a timed catch. */
function isCatch(flow: Flow | TimedCatch): flow is TimedCatch {
  return "caught" in flow;
}

/** A flow as the catch of one unit of time, so that each formula is stated once. */
function asCatch(flow: Flow | TimedCatch): TimedCatch {
  if (isCatch(flow)) return flow;
  const { over, per } = resolveUnit(flow.unit);
  return {
    caught: { value: flow.value, unit: over as VolumeUnit },
    time: { value: 1, unit: per as TimeUnit },
  };
}

function timeUnitOf(flow: Flow | TimedCatch): TimeUnit {
  return asCatch(flow).time.unit;
}

/** The terms of a flow: itself, or the catch and its time. */
function termsOf(flow: Flow | TimedCatch): Record<string, GivenTerm> {
  return isCatch(flow)
    ? { caught: [flow.caught, flow.caught.unit], catchTime: [flow.time, flow.time.unit] }
    : { flow: [flow, flow.unit] };
}

/** The volume that each plant is to get. */
export interface PlantTimeInput {
  /** The flow, or what was caught in a time. More than 0. */
  readonly flow: Measured<Flow> | TimedCatch;
  /** What each plant is to get. More than 0. */
  readonly each: Volume;
}

const PLANT_TIME: ObjectField<PlantTimeInput> = object<PlantTimeInput>({
  flow: MEASURED_OUTPUT,
  each: smallVolume(quantity("What each plant is to get. More than 0.", "volume")),
});

/**
 * Returns how long to spray each plant, pot, tree or spot for the volume that it is to get.
 *
 * Formula: time = volume / flow (definition of a flow).
 *
 * @param input - the flow or a timed catch, and the volume for each plant
 * @returns the time in seconds
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { timePerPlant } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const flow = { caught: qty(1, "gal"), time: qty(20, "s") };
 * console.log(timePerPlant({ flow, each: qty(1.5, "gal") })); // { value: 30, unit: 's' }
 * ```
 */
export function timePerPlant(input: PlantTimeInput): Time {
  return timeOfPlant(checked(input, PLANT_TIME));
}

/** How long each plant is sprayed for its volume. Trusts its input. */
export function timeOfPlant({ flow, each }: PlantTimeInput, at = ""): Time {
  return workedTime(flow, each, "s", at).rate;
}

/** The working of {@link timeOfPlant}. Trusts its input. */
export function linesOfPlantTime({ flow, each }: PlantTimeInput): WorkingLine[] {
  return linesOfTime("output-rate.plant-time", flow, each, "s");
}

/**
 * The working of {@link timePerPlant}, line by line.
 *
 * @param input - as for {@link timePerPlant}
 * @returns the lines; the last one's result is the time
 * @throws SprayMathError as {@link timePerPlant} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { timePerPlant } from "swath-to-spoon/working";
 *
 * const lines = timePerPlant({ flow: qty(3, "gal/min"), each: qty(1.5, "gal") });
 * console.log(lines.map((line) => line.formula).join(", ")); // volume / flow, value * size
 * ```
 */
export function timePerPlantWorking(input: PlantTimeInput): WorkingLine[] {
  return linesOfPlantTime(checked(input, PLANT_TIME));
}

/** A volume that is sprayed at a flow. */
export interface SprayTimeInput {
  /** The flow of everything that sprays, or what was caught in a time. More than 0. */
  readonly flow: Measured<Flow> | TimedCatch;
  /** What is to be sprayed: a tank, or the mix for a plot. More than 0. */
  readonly volume: Volume;
}

const SPRAY_TIME: ObjectField<SprayTimeInput> = object<SprayTimeInput>({
  flow: about(
    "The flow of everything that sprays, or what was caught in a time. More than 0.",
    MEASURED_OUTPUT,
  ),
  volume: quantity("What is to be sprayed: a tank, or the mix for a plot. More than 0.", "volume"),
});

/**
 * Returns how many minutes a tank lasts, or the mix for a plot takes, with the gun or the nozzles open all the time. Walking between
 * plants, turning and filling come on top.
 *
 * Formula: time = volume / flow (definition of a flow).
 *
 * @param input - the flow or a timed catch, and the volume to spray
 * @returns the time in minutes
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { timeToSpray } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(timeToSpray({ flow: qty(0.5, "gal/min"), volume: qty(4, "gal") })); // { value: 8, unit: 'min' }
 * ```
 */
export function timeToSpray(input: SprayTimeInput): Time {
  return timeOfVolume(checked(input, SPRAY_TIME));
}

/** How long a volume lasts at a flow. Trusts its input. */
export function timeOfVolume({ flow, volume }: SprayTimeInput, at = ""): Time {
  return workedTime(flow, volume, "min", at).rate;
}

/**
 * The working of {@link timeToSpray}, line by line.
 *
 * @param input - as for {@link timeToSpray}
 * @returns the lines; the last one's result is the time
 * @throws SprayMathError as {@link timeToSpray} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { timeToSpray } from "swath-to-spoon/working";
 *
 * const flow = { caught: qty(1, "L"), time: qty(1, "min") };
 * console.log(timeToSpray({ flow, volume: qty(16, "L") })[0]?.formula); // volume * catchTime / caught
 * ```
 */
export function timeToSprayWorking(input: SprayTimeInput): WorkingLine[] {
  const { flow, volume } = checked(input, SPRAY_TIME);
  return linesOfTime("output-rate.spray-time", flow, volume, "min");
}

function workedTime(flow: Flow | TimedCatch, volume: Volume, unit: TimeUnit, at: string): WorkedRate<Time> {
  const { caught, time } = asCatch(flow);
  const value = inUnit(volume, caught.unit) * (time.value / caught.value);
  return workedRate(value, time.unit, unit, at);
}

function linesOfTime(id: string, flow: Flow | TimedCatch, volume: Volume, unit: TimeUnit): WorkingLine[] {
  return formulaLines(
    {
      id,
      formula: isCatch(flow) ? "volume * catchTime / caught" : "volume / flow",
      terms: { volume: [volume, asCatch(flow).caught.unit], ...termsOf(flow) },
      result: workedTime(flow, volume, unit, "").quotient,
      source: "definition of a flow",
    },
    unit,
  );
}
