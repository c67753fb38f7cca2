import { SprayMathError, within } from "../errors.js";
import { checkedCount, checkedList, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import type { GivenTerm } from "../units/lines.js";
import { unitsLike } from "../units/systems.js";
import type {
  Length,
  LengthUnit,
  Mass,
  MassRate,
  MassRateUnit,
  Measured,
  Quantity,
  Speed,
  Time,
  TimeUnit,
  Unit,
  Volume,
  VolumeRate,
  VolumeRateUnit,
} from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { amountKind } from "./amount.js";
import { toldIn, totalOf } from "./result.js";
import { speedFrom, type TimedDistance } from "./speed.js";
import { toldLines } from "./told-lines.js";

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
   * sprayed. With `nozzlesPerRow`, the width that those nozzles treat together. More than 0.
   */
  readonly width: Measured<Length>;
  /** How many nozzles spray the same row or band: their catches are added. A whole number; 1 unless given. */
  readonly nozzlesPerRow?: number;
}

/**
 * The rate from a timed catch: what the nozzles put out, over the area they cover in that time.
 *
 * Formula: rate = Σ catch / (time × speed × rows × width), where rows = catches / nozzles per row. With gallons a minute,
 * miles an hour and inches it is the handbooks' 5,940 × flow / (speed × spacing), with litres, km/h and metres their
 * 600 × flow / (speed × spacing); the constants come out of the units.
 * Source: Sprayer Calibrations and Calculations (Montana State University Extension Service, MontGuide MT 2000-14, 2000);
 * adding the catches of a row: Ounces Equal Gallons: Sprayer Calibration (LSU AgCenter).
 *
 * @param input - the catches, their time, the speed and the width
 * @returns the rate in the units of the first catch: gal/ac, imp_gal/ac or L/ha (lb/ac or kg/ha for masses), per area
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
  const { rate, told } = checkedCatch(input);
  return toldIn(rate, told) as VolumeRate | MassRate;
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
  const { total, length, rate, told } = checkedCatch(input);
  toldIn(rate, told);
  const { time, speed, width, nozzlesPerRow = 1 } = input;
  const rows = input.catches.length / nozzlesPerRow;
  const shared = {
    total: [total, total.unit],
    time: [time, time.unit],
    rows,
    width: [width, length],
  } as const;
  const [formula, pace]: [string, Record<string, GivenTerm>] = isTimed(speed)
    ? [
        "total * travelTime / (time * travelled * rows * width)",
        { travelTime: [speed.time, time.unit], travelled: [speed.distance, length] },
      ]
    : ["total / (time * speed * rows * width)", { speed: [speed, `${length}/${time.unit}`] }];
  return [
    ...totalLines(input.catches, total),
    ...toldLines(
      {
        id: "output-rate.catch",
        formula,
        terms: { ...shared, ...pace },
        result: rate,
        source:
          "Sprayer Calibrations and Calculations, Montana State University Extension Service, MontGuide MT 2000-14, 2000",
      },
      told,
    ),
  ];
}

function totalLines(catches: readonly Quantity[], total: Quantity): WorkingLine[] {
  const symbols = catches.map((_, at) => `x${at + 1}`);
  return toldLines({
    id: "output-rate.catch-total",
    formula: symbols.join(" + "),
    terms: Object.fromEntries(
      catches.map((caught, at) => [symbols[at] as string, [caught, total.unit] as const]),
    ),
    result: total,
    source: "Ounces Equal Gallons: Sprayer Calibration, LSU AgCenter",
  });
}

// A longer list is a mistake in the input, not a boom: 500 nozzles half a metre apart are 250 m.
const MOST_NOZZLES = 500;

/** Checks each catch and the time, and gives each catch in the unit of the first. */
export function checkedCatches(
  { catches, time }: Catches<Volume> | Catches<Mass>,
  fewest: number,
): { kind: "volume" | "mass"; unit: Unit; values: number[]; time: number } {
  const list = checkedList<Volume | Mass>(catches, "catches", fewest);
  if (list.length > MOST_NOZZLES) {
    throw new SprayMathError(
      "out-of-range",
      "catches",
      `Given ${list.length} catches; wanted ${MOST_NOZZLES} or fewer, one for each nozzle of one boom.`,
    );
  }
  const kind = amountKind(list[0] as Volume, "catches[0]");
  const { unit } = list[0] as Quantity;
  const values = list.map((caught, at) => inUnit<Unit>(caught as Quantity, unit, `catches[${at}]`));
  unitsWith(time, "time");
  return { kind, unit, values, time: inUnit(time, time.unit, "time") };
}

/** Whether a working speed was given as a timed distance. */
export function isTimed(speed: Speed | TimedDistance): speed is TimedDistance {
  return !("value" in checkedObject(speed, "speed"));
}

interface CheckedCatch {
  readonly total: Quantity;
  readonly length: "ft" | "m";
  /** The rate as the division gives it, such as in `fl_oz/ft2`. */
  readonly rate: Quantity;
  /** The rate's unit as it is told. */
  readonly told: VolumeRateUnit | MassRateUnit;
}

function checkedCatch(input: CatchInput<Volume> | CatchInput<Mass>): CheckedCatch {
  const { speed, width, nozzlesPerRow = 1 } = checkedObject(input, "");
  const { kind, unit, values, time } = checkedCatches(input, 1);
  const units = unitsLike(unit);
  const { length, area } = unitsWith(width, "width");
  const total = totalOf(values);
  const wide = rowsOf(values.length, nozzlesPerRow) * inUnit(width, length, "width");
  const travelled = isTimed(speed)
    ? timedTravel(speed, time, input.time.unit, length)
    : time * inUnit(speed, `${length}/${input.time.unit}`, "speed");
  return {
    total: { value: total, unit },
    length,
    rate: { value: total / (travelled * wide), unit: `${unit}/${area}` as Unit },
    told: kind === "volume" ? units.volumeRate : units.massRate,
  };
}

// How far the sprayer travels while the catch lasts.
function timedTravel(pass: TimedDistance, time: number, unit: TimeUnit, length: LengthUnit): number {
  within("speed", () => speedFrom(pass));
  // The two times meet as a ratio, so that the rate needs one change of unit less.
  const share = time / inUnit(pass.time, unit, "speed.time");
  return share * inUnit(pass.distance, length, "speed.distance");
}

function rowsOf(catches: number, nozzlesPerRow: number): number {
  const rows = catches / checkedCount(nozzlesPerRow, "nozzlesPerRow");
  if (!Number.isInteger(rows)) {
    throw new SprayMathError(
      "conflict",
      "nozzlesPerRow",
      `Given ${catches} catches for rows of ${nozzlesPerRow} nozzles; wanted a catch from every nozzle of each row.`,
    );
  }
  return rows;
}
