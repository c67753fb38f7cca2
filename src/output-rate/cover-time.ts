import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { number, type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { measured, treatedArea } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Length, Measured, Quantity, Speed, Time, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { isTimed, WORKING_SPEED } from "./catch.js";
import type { TimedDistance } from "./speed.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** A plot that is sprayed pass by pass. */
export interface CoverTimeInput {
  /** The treated area. More than 0. */
  readonly area: TreatedArea;
  /** The width that one pass treats. More than 0. */
  readonly width: Measured<Length>;
  /** The working speed: a speed, or a distance and the time it took. */
  readonly speed: Measured<Speed> | TimedDistance;
  /** How much of the time is spent spraying, in percent: turns, filling and rests take the other part. 100 unless given. */
  readonly efficiencyPercent?: number | undefined;
}

const COVER_TIME: ObjectField<CoverTimeInput> = object<CoverTimeInput>({
  area: treatedArea("The treated area. More than 0."),
  width: measured("The width that one pass treats. More than 0.", "length"),
  speed: WORKING_SPEED,
  efficiencyPercent: optional(
    number(
      "How much of the time is spent spraying, in percent: turns, filling and rests take the other part. 100 unless given.",
      { above: 0, max: 100 },
    ),
    100,
  ),
});

/**
 * Returns how many minutes a plot takes, pass by pass. Without an efficiency that is the time on the move with the nozzles open;
 * with one it counts turns, filling and rests.
 *
 * Formula: time = area / (width × speed × efficiency), the handbooks' acres per hour = width × speed × efficiency / 8.25 with
 * feet, miles an hour and a part of one; the constant comes out of the units.
 * Source: Estimating the Field Capacity of Farm Machines (Iowa State University Extension, Ag Decision Maker A3-24).
 *
 * @param input - the treated area, the width and the speed, each more than 0; the efficiency more than 0 and up to 100
 * @returns the time in minutes
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `wrong-area` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { treatedArea } from "swath-to-spoon/area";
 * import { timeToCover } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const area = treatedArea(qty(0.2, "ha"));
 * console.log(timeToCover({ area, width: qty(1, "m"), speed: qty(50, "m/min") })); // { value: 40, unit: 'min' }
 * ```
 */
export function timeToCover(input: CoverTimeInput): Time {
  return workedCover(checked(input, COVER_TIME), "").rate;
}

/**
 * The working of {@link timeToCover}, line by line.
 *
 * @param input - as for {@link timeToCover}
 * @returns the lines; the last one's result is the time
 * @throws SprayMathError as {@link timeToCover} does
 *
 * @example
 * ```ts
 * import { treatedArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 * import { timeToCover } from "swath-to-spoon/working";
 *
 * const area = treatedArea(qty(2000, "m2"));
 * const lines = timeToCover({ area, width: qty(1, "m"), speed: qty(50, "m/min") });
 * console.log(lines[0]?.formula); // area / (width * speed)
 * ```
 */
export function timeToCoverWorking(input: CoverTimeInput): WorkingLine[] {
  const { area, width, speed, efficiencyPercent } = checked(input, COVER_TIME);
  const { length, square, quotient, rate } = workedCover({ area, width, speed, efficiencyPercent }, "");
  const timed = isTimed(speed);
  const per = timed ? speed.time.unit : "min";
  const [top, bottom] = timed ? [" * travelTime", "travelled"] : ["", "speed"];
  return formulaLines(
    {
      id: "output-rate.cover-time",
      formula:
        efficiencyPercent === undefined
          ? `area${top} / (width * ${bottom})`
          : `100 * area${top} / (width * ${bottom} * efficiency)`,
      terms: {
        area: [area, square],
        width: [width, length],
        ...(timed
          ? { travelTime: [speed.time, per], travelled: [speed.distance, length] }
          : { speed: [speed, `${length}/${per}`] }),
        ...(efficiencyPercent !== undefined && { efficiency: efficiencyPercent }),
      },
      result: quotient,
      source:
        "Estimating the Field Capacity of Farm Machines, Iowa State University Extension, Ag Decision Maker A3-24",
    },
    rate.unit,
  );
}

interface WorkedCover extends WorkedRate<Time> {
  readonly length: "ft" | "m";
  readonly square: "ft2" | "m2";
}

function workedCover(
  { area, width, speed, efficiencyPercent = 100 }: CoverTimeInput,
  at: string,
): WorkedCover {
  const { length, area: square } = unitsLike(area.unit);
  const per = isTimed(speed) ? speed.time.unit : "min";
  // In a minute, or over the timed distance in its own time.
  const [travelled, during]: [Quantity, number] = isTimed(speed)
    ? [speed.distance, speed.time.value]
    : [{ value: inUnit(speed, `${length}/min`), unit: length }, 1];
  const value =
    (inUnit(area, square) * during * 100) /
    (inUnit(width, length) * inUnit(travelled, length) * efficiencyPercent);
  return { length, square, ...workedRate<"min">(value, per, "min", at) };
}
