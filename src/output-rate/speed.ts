import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { list, type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { measured, quantity } from "../units/quantity-field.js";
import { positiveIn, resultIn } from "../units/result.js";
import { type SystemUnits, unitsLike } from "../units/systems.js";
import type { Length, Measured, Speed, Time } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** A timed distance. */
export interface TimedDistance {
  /** The distance between the stakes. More than 0. */
  readonly distance: Measured<Length>;
  /** The time taken, at working speed from the first stake on. More than 0. */
  readonly time: Measured<Time>;
}

/** A timed distance. */
export const TIMED_DISTANCE: ObjectField<TimedDistance> = object<TimedDistance>({
  distance: measured("The distance between the stakes. More than 0.", "length"),
  time: measured("The time taken, at working speed from the first stake on. More than 0.", "time"),
});

/**
 * Returns the speed over a timed distance.
 *
 * Formula: speed = distance / time (definition of a speed).
 *
 * @param pass - the distance and the time, each more than 0
 * @returns mph where the distance is in feet and the like, km/h where it is metric
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { speedFrom } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(speedFrom({ distance: qty(176, "ft"), time: qty(30, "s") })); // { value: 4, unit: 'mph' }
 * ```
 */
export function speedFrom(pass: TimedDistance): Speed {
  return speedOfPass(checked(pass, TIMED_DISTANCE));
}

/**
 * The working of {@link speedFrom}, line by line.
 *
 * @param pass - as for {@link speedFrom}
 * @returns the lines; the last one's result is the speed
 * @throws SprayMathError as {@link speedFrom} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { speedFrom } from "swath-to-spoon/working";
 *
 * const lines = speedFrom({ distance: qty(176, "ft"), time: qty(30, "s") });
 * console.log(lines[2]?.formula); // distance / time
 * ```
 */
export function speedFromWorking(pass: TimedDistance): WorkingLine[] {
  return linesOfPass(checked(pass, TIMED_DISTANCE));
}

// Miles or kilometers and hours, because common distances and times divide into them without a rounded factor.
function farUnit({ speed }: SystemUnits): "mi" | "km" {
  return speed === "mph" ? "mi" : "km";
}

/** The speed over a timed distance. Trusts its input. */
export function speedOfPass({ distance, time }: TimedDistance, at = ""): Speed {
  const units = unitsLike(distance.unit);
  return positiveIn(inUnit(distance, farUnit(units)) / inUnit(time, "h"), units.speed, at);
}

/** The working of {@link speedOfPass}. Trusts its input. */
export function linesOfPass(pass: TimedDistance): WorkingLine[] {
  return formulaLines({
    id: "output-rate.speed",
    formula: "distance / time",
    terms: { distance: [pass.distance, farUnit(unitsLike(pass.distance.unit))], time: [pass.time, "h"] },
    result: speedOfPass(pass),
    source: "definition of a speed",
  });
}

/** A distance to be covered at a known speed. */
export interface DistanceAtSpeed {
  /** The distance. More than 0. */
  readonly distance: Length;
  /** The speed. More than 0. */
  readonly speed: Speed;
}

const DISTANCE = object<DistanceAtSpeed>({
  distance: quantity("The distance. More than 0.", "length"),
  speed: quantity("The speed. More than 0.", "speed"),
});

/**
 * Returns the time that a distance takes at a speed: what the watch should show between the stakes.
 *
 * Formula: time = distance / speed (definition of a speed).
 *
 * @param input - the distance and the speed, each more than 0
 * @returns the time in seconds
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { timeFor } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(timeFor({ distance: qty(800, "m"), speed: qty(10, "km/h") })); // { value: 288, unit: 's' }
 * ```
 */
export function timeFor(input: DistanceAtSpeed): Time {
  return workedTime(checked(input, DISTANCE)).time;
}

/**
 * The working of {@link timeFor}, line by line.
 *
 * @param input - as for {@link timeFor}
 * @returns the lines; the last one's result is the time
 * @throws SprayMathError as {@link timeFor} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { timeFor } from "swath-to-spoon/working";
 *
 * const lines = timeFor({ distance: qty(800, "m"), speed: qty(10, "km/h") });
 * console.log(lines.map((line) => line.formula).join(", ")); // value / size, distance / speed, value * size
 * ```
 */
export function timeForWorking(input: DistanceAtSpeed): WorkingLine[] {
  const given = checked(input, DISTANCE);
  const { length, hours } = workedTime(given);
  return formulaLines(
    {
      id: "output-rate.time-for",
      formula: "distance / speed",
      terms: { distance: [given.distance, length], speed: [given.speed, `${length}/h`] },
      result: hours,
      source: "definition of a speed",
    },
    "s",
  );
}

function workedTime({ distance, speed }: DistanceAtSpeed): {
  readonly length: "mi" | "km";
  readonly hours: Time;
  readonly time: Time;
} {
  const length = farUnit(unitsLike(speed.unit));
  const hours: Time = { value: inUnit(distance, length) / inUnit(speed, `${length}/h`), unit: "h" };
  return { length, hours, time: resultIn(hours, "s") };
}

/** Several timed passes at the same throttle and gear, or by the same person. */
export interface TimedPasses {
  /** The passes, at least one; they need not be of one length. */
  readonly passes: readonly TimedDistance[];
}

const PASSES = object<TimedPasses>({
  passes: list("The passes, at least one; they need not be of one length.", TIMED_DISTANCE),
});

/**
 * Returns the average speed of several passes: all the distance over all the time. For passes over one course that is the
 * course over the mean time.
 *
 * Formula: speed = Σ distance / Σ time (definition of an average speed; the mean of the speeds themselves would be too
 * high).
 *
 * @param input - the passes
 * @returns mph or km/h, like the first distance
 * @throws SprayMathError `too-few`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or
 * `out-of-range`, with the pass in the path: `passes[1].time`
 *
 * @example
 * ```ts
 * import { averageSpeed } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const passes = [29, 31].map((seconds) => ({ distance: qty(176, "ft"), time: qty(seconds, "s") }));
 * console.log(averageSpeed({ passes })); // { value: 4, unit: 'mph' }
 * ```
 */
export function averageSpeed(input: TimedPasses): Speed {
  return speedOfPass(wholeOf(checked(input, PASSES)));
}

/**
 * The working of {@link averageSpeed}, line by line.
 *
 * @param input - as for {@link averageSpeed}
 * @returns the lines; the last one's result is the average speed
 * @throws SprayMathError as {@link averageSpeed} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { averageSpeed } from "swath-to-spoon/working";
 *
 * const passes = [29, 31].map((seconds) => ({ distance: qty(176, "ft"), time: qty(seconds, "s") }));
 * console.log(averageSpeed({ passes })[1]?.formula); // x1 + x2
 * ```
 */
export function averageSpeedWorking(input: TimedPasses): WorkingLine[] {
  const given = checked(input, PASSES);
  const whole = wholeOf(given);
  const added = (of: "distance" | "time"): WorkingLine[] =>
    formulaLines({
      id: `output-rate.average-speed-${of}`,
      formula: given.passes.map((_, at) => `x${at + 1}`).join(" + "),
      terms: Object.fromEntries(
        given.passes.map((pass, at) => [`x${at + 1}`, [pass[of], whole[of].unit] as const]),
      ),
      result: whole[of],
      source: "definition of an average speed",
    });
  return [...added("distance"), ...added("time"), ...linesOfPass(whole)];
}

/** All passes as one. */
function wholeOf({ passes }: TimedPasses): TimedDistance {
  return {
    distance: sumOf(passes.map((pass) => pass.distance)),
    time: sumOf(passes.map((pass) => pass.time)),
  };
}
