import { AMOUNT, amountsAgree } from "../units/amounts.js";
import { type Check, checked, type Field } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import {
  count,
  type EitherField,
  either,
  hasField,
  list,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { measured } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Length, Mass, MassRate, Measured, Speed, Time, Volume, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { TIMED_DISTANCE, type TimedDistance } from "./speed.js";
import { type WorkedRate, workedPerArea } from "./worked-rate.js";

/**
 * What each nozzle put out in one time, standing still.
 *
 * @typeParam A - a volume for nozzles, a mass for the outlets of a spreader
 */
export interface Catches<A extends Volume | Mass = Volume> {
  /** What was caught under each nozzle, one after the other along the boom: 1 to 500 of them, each more than 0. */
  readonly catches: readonly Measured<A>[];
  /** How long each was caught for. More than 0. */
  readonly time: Measured<Time>;
}

// A longer list is a mistake in the input, not a boom: 500 nozzles half a meter apart are 250 m.
const MOST_NOZZLES = 500;

/** Catches of at least so many nozzles, of one of these kinds. */
/* @__NO_SIDE_EFFECTS__ */
export function catchesOf(
  amounts: readonly ("volume" | "mass")[],
  least: number,
): ObjectField<Catches<Volume | Mass>> {
  return object<Catches<Volume | Mass>>({
    catches: list(
      "What was caught under each nozzle, one after the other along the boom: 1 to 500 of them, each more than 0.",
      measured("What was caught under one nozzle. More than 0.", amounts),
      { least, most: MOST_NOZZLES },
    ),
    time: measured("How long each was caught for. More than 0.", "time"),
  });
}

/** Notes catches of which some are volumes and some weights. */
export function catchesAgree({ catches = [] }: Partly<Catches<Volume | Mass>>, check: Check): void {
  amountsAgree(catches, (at) => `catches[${at}]`, check);
}

/**
 * A timed catch, the speed, and the width that the nozzles treat.
 *
 * @typeParam A - a volume for nozzles, a mass for the outlets of a spreader
 */
export interface CatchInput<A extends Volume | Mass = Volume> extends Catches<A> {
  /** The working speed: a speed, or a distance and the time it took. */
  readonly speed: Measured<Speed> | TimedDistance;
  /**
   * The width that one nozzle treats: the nozzle spacing on a boom that covers everything, the band width where bands are
   * sprayed. With several nozzles on a row, the width that they treat together. More than 0.
   */
  readonly width: Measured<Length>;
  /** How many nozzles spray the same row or band: their catches are added. A whole number; 1 unless given. */
  readonly nozzlesPerRow?: number | undefined;
}

const MEASURED_SPEED = measured("The working speed. More than 0.", "speed");

/** The working speed, or the timed distance that it follows from. */
export const WORKING_SPEED: EitherField<Measured<Speed> | TimedDistance> = either<
  Measured<Speed> | TimedDistance
>(
  "The working speed: a speed, or a distance and the time it took.",
  [MEASURED_SPEED, TIMED_DISTANCE] as readonly Field<Measured<Speed> | TimedDistance>[],
  (input) => (hasField(input, ["distance", "time"]) ? 1 : 0),
);

/* @__NO_SIDE_EFFECTS__ */
function catchOf(amounts: readonly ("volume" | "mass")[]): ObjectField<CatchInput<Volume | Mass>> {
  return object<CatchInput<Volume | Mass>>(
    {
      ...catchesOf(amounts, 1).fields,
      speed: WORKING_SPEED,
      width: measured(
        "The width that one nozzle treats: the nozzle spacing on a boom that covers everything, the band width where bands are " +
          "sprayed. With several nozzles on a row, the width that they treat together. More than 0.",
        "length",
      ),
      nozzlesPerRow: optional(
        count(
          "How many nozzles spray the same row or band: their catches are added. A whole number; 1 unless given.",
        ),
      ),
    },
    [catchesAgree, rowsAreWhole],
  );
}

/** Notes catches that are not those of whole rows. */
export function rowsAreWhole(
  { catches, nozzlesPerRow = 1 }: Partly<CatchInput<Volume | Mass>>,
  check: Check,
): void {
  if (catches === undefined || catches.length % nozzlesPerRow === 0) return;
  check.fault(
    "conflict",
    "rows-incomplete",
    "nozzlesPerRow",
    "{catches} {catches:one=catch doesn't;other=catches don't} make whole rows of {nozzles} nozzles. Enter a catch for every nozzle of each row.",
    { catches: catches.length, nozzles: nozzlesPerRow },
  );
}

/** A timed catch of a sprayer. */
export const CATCH: ObjectField<CatchInput> = catchOf(["volume"]) as ObjectField<CatchInput>;

const ANY_CATCH = catchOf(AMOUNT);

/**
 * Returns the rate from a timed catch: what the nozzles put out, over the area they cover in that time.
 *
 * Formula: rate = Σ catch / (time × speed × rows × width), where rows = catches / nozzles per row. With gallons a minute,
 * miles an hour and inches it is the handbooks' 5,940 × flow / (speed × spacing), with liters, km/h and meters their
 * 600 × flow / (speed × spacing); the constants come out of the units.
 * Source: Sprayer Calibrations and Calculations (Montana State University Extension Service, MontGuide MT 2000-14, 2000);
 * adding the catches of a row: Ounces Equal Gallons: Sprayer Calibration (LSU AgCenter).
 *
 * @param input - the catches, their time, the speed and the width
 * @returns the rate in the units of the first catch: `gal/ac`, `imp_gal/ac` or L/ha (lb/ac or kg/ha for masses), per area
 * that the width covers: treated area where the width is a band
 * @throws SprayMathError `too-few` without a catch, `out-of-range` for more than 500 catches or an amount that is not more
 * than 0, `conflict` where the catches do not make whole rows, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`
 * or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { catchRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const catches = [qty(0.98, "L"), qty(1.02, "L")];
 * console.log(catchRate({ catches, time: qty(1, "min"), speed: qty(6, "km/h"), width: qty(0.5, "m") })); // { value: 200, unit: 'L/ha' }
 * ```
 */
export function catchRate(input: CatchInput<Volume>): VolumeRate;
export function catchRate(input: CatchInput<Mass>): MassRate;
export function catchRate(input: CatchInput<Volume> | CatchInput<Mass>): VolumeRate | MassRate;
export function catchRate(input: CatchInput<Volume> | CatchInput<Mass>): VolumeRate | MassRate {
  return rateOfCatch(checked(input, ANY_CATCH));
}

/**
 * The working of {@link catchRate}, line by line.
 *
 * @param input - as for {@link catchRate}
 * @returns the lines; the last one's result is the rate
 * @throws SprayMathError as {@link catchRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { catchRate } from "swath-to-spoon/working";
 *
 * const catches = [qty(0.98, "L"), qty(1.02, "L")];
 * const lines = catchRate({ catches, time: qty(1, "min"), speed: qty(100, "m/min"), width: qty(0.5, "m") });
 * console.log(lines.map((line) => line.formula).join(", ")); // x1 + x2, total / (time * speed * rows * width), value * size
 * ```
 */
export function catchRateWorking(input: CatchInput<Volume> | CatchInput<Mass>): WorkingLine[] {
  return linesOfCatch(checked(input, ANY_CATCH));
}

/** The rate of a timed catch. Trusts its input. */
export function rateOfCatch(input: CatchInput<Volume | Mass>, at = ""): VolumeRate | MassRate {
  return workedCatch(input, at).rate;
}

/** The working of {@link rateOfCatch}. Trusts its input. */
export function linesOfCatch(input: CatchInput<Volume | Mass>): WorkingLine[] {
  const { total, rows, length, quotient, rate } = workedCatch(input, "");
  const { catches, time, speed, width } = input;
  const [formula, pace]: [string, Record<string, GivenTerm>] = isTimed(speed)
    ? [
        "total * travelTime / (time * travelled * rows * width)",
        { travelTime: [speed.time, time.unit], travelled: [speed.distance, length] },
      ]
    : ["total / (time * speed * rows * width)", { speed: [speed, `${length}/${time.unit}`] }];
  return [
    ...formulaLines({
      id: "output-rate.catch-total",
      formula: catches.map((_, at) => `x${at + 1}`).join(" + "),
      terms: Object.fromEntries(catches.map((caught, at) => [`x${at + 1}`, [caught, total.unit] as const])),
      result: total,
      source: "Ounces Equal Gallons: Sprayer Calibration, LSU AgCenter",
    }),
    ...formulaLines(
      {
        id: "output-rate.catch",
        formula,
        terms: {
          total: [total, total.unit],
          time: [time, time.unit],
          rows,
          width: [width, length],
          ...pace,
        },
        result: quotient,
        source:
          "Sprayer Calibrations and Calculations, Montana State University Extension Service, MontGuide MT 2000-14, 2000",
      },
      rate.unit,
    ),
  ];
}

/** Whether a working speed was given as a timed distance. */
export function isTimed(speed: Speed | TimedDistance): speed is TimedDistance {
  return "distance" in speed;
}

interface WorkedCatch extends WorkedRate<VolumeRate | MassRate> {
  readonly total: Volume | Mass;
  readonly rows: number;
  readonly length: "ft" | "m";
}

function workedCatch(
  { catches, time, speed, width, nozzlesPerRow = 1 }: CatchInput<Volume | Mass>,
  at: string,
): WorkedCatch {
  const total = sumOf<Volume | Mass>(catches);
  const { length, area } = unitsLike(width.unit);
  const rows = catches.length / nozzlesPerRow;
  // Over a timed distance the two times meet as a ratio, so that the rate needs one change of unit less.
  const travelled = isTimed(speed)
    ? (time.value / inUnit(speed.time, time.unit)) * inUnit(speed.distance, length)
    : time.value * inUnit(speed, `${length}/${time.unit}`);
  const value = total.value / (travelled * (rows * inUnit(width, length)));
  return { total, rows, length, ...workedPerArea(value, total.unit, area, at) };
}
