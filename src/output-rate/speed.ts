import { within } from "../errors.js";
import { checkedList, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { sum } from "../units/quantity.js";
import type { Length, Measured, Speed, Time } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { toldIn } from "./result.js";
import { toldLines } from "./told-lines.js";

/** A timed distance. */
export interface TimedDistance {
  /** The distance between the stakes. More than 0. */
  readonly distance: Measured<Length>;
  /** The time taken, at working speed from the first stake on. More than 0. */
  readonly time: Measured<Time>;
}

/**
 * The speed over a timed distance.
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
  const { speed } = checkedPass(pass);
  return toldIn(speed, speed.unit);
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
  const result = speedFrom(pass);
  const { length } = checkedPass(pass);
  return toldLines({
    id: "output-rate.speed",
    formula: "distance / time",
    terms: { distance: [pass.distance, length], time: [pass.time, "h"] },
    result,
    source: "definition of a speed",
  });
}

// Miles or kilometres and hours, because common distances and times divide into them without a rounded factor.
function checkedPass(pass: TimedDistance): { length: "mi" | "km"; speed: Speed } {
  const { distance, time } = checkedObject(pass, "");
  const { speed: unit } = unitsWith(distance, "distance");
  const length = unit === "mph" ? "mi" : "km";
  return { length, speed: { value: inUnit(distance, length, "distance") / inUnit(time, "h", "time"), unit } };
}

/** A distance to be covered at a known speed. */
export interface DistanceAtSpeed {
  /** The distance. More than 0. */
  readonly distance: Length;
  /** The speed. More than 0. */
  readonly speed: Speed;
}

/**
 * The time that a distance takes at a speed: what the watch should show between the stakes.
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
  const { hours } = checkedDistance(input);
  return toldIn(hours, "s");
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
  const { length, speed, hours } = checkedDistance(input);
  toldIn(hours, "s");
  return toldLines(
    {
      id: "output-rate.time-for",
      formula: "distance / speed",
      terms: { distance: [input.distance, length], speed: [input.speed, speed] },
      result: hours,
      source: "definition of a speed",
    },
    "s",
  );
}

function checkedDistance(input: DistanceAtSpeed): {
  length: "mi" | "km";
  speed: "mi/h" | "km/h";
  hours: Time;
} {
  const { distance, speed } = checkedObject(input, "");
  const length = unitsWith(speed, "speed").length === "ft" ? "mi" : "km";
  const far = inUnit(distance, length, "distance");
  const fast = inUnit(speed, `${length}/h`, "speed");
  return { length, speed: `${length}/h`, hours: { value: far / fast, unit: "h" } };
}

/** Several timed passes at the same throttle and gear, or by the same person. */
export interface TimedPasses {
  /** The passes, at least one; they need not be of one length. */
  readonly passes: readonly TimedDistance[];
}

/**
 * The average speed of several passes: all the distance over all the time. For passes over one course that is the
 * course over the mean time.
 *
 * Formula: speed = Σ distance / Σ time (definition of an average speed; the mean of the speeds themselves would be too
 * high).
 *
 * @param input - the passes
 * @returns mph or km/h, as the first distance is told
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
  return speedFrom(total(input));
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
  const whole = total(input);
  const added = (of: "distance" | "time"): WorkingLine[] => {
    const symbols = input.passes.map((_, at) => `x${at + 1}`);
    return toldLines({
      id: `output-rate.average-speed-${of}`,
      formula: symbols.join(" + "),
      terms: Object.fromEntries(
        input.passes.map((pass, at) => [symbols[at] as string, [pass[of], whole[of].unit] as const]),
      ),
      result: whole[of],
      source: "definition of an average speed",
    });
  };
  return [...added("distance"), ...added("time"), ...speedFromWorking(whole)];
}

function total(input: TimedPasses): TimedDistance {
  const { passes } = checkedObject(input, "");
  checkedList(passes, "passes").forEach((pass, at) => {
    within(`passes[${at}]`, () => speedFrom(pass));
  });
  return { distance: sum(passes.map((pass) => pass.distance)), time: sum(passes.map((pass) => pass.time)) };
}
