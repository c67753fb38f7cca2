import { checked } from "../units/check.js";
import { convertValue, inUnit } from "../units/convert.js";
import { type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { measured, quantity, unitOf } from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import { positiveIn, resultIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  Area,
  AreaUnit,
  Length,
  Measured,
  Quantity,
  Unit,
  Volume,
  VolumeRate,
  VolumeRateUnit,
  VolumeUnit,
} from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";

/** Two units that are to read alike: so many of the one caught mean as many of the other applied. */
export interface ReadingPair {
  /** The unit that the catch is read in, such as fl oz. */
  readonly catchUnit: VolumeUnit;
  /** The unit that the rate is read in, such as gal/ac. */
  readonly rateUnit: VolumeRateUnit;
}

const PAIR = object<ReadingPair>({
  catchUnit: unitOf("The unit that the catch is read in, such as fl oz.", "volume"),
  rateUnit: unitOf("The unit that the rate is read in, such as gal/ac.", "volumeRate"),
});

/** A pair of units, and the width that one nozzle (or one row's nozzles together) treats. */
export interface DirectStripInput extends ReadingPair {
  /** The nozzle spacing, band width or row width. More than 0. */
  readonly width: Length;
}

const LAYOUT = object<DirectStripInput>({
  ...PAIR.fields,
  width: quantity("The nozzle spacing, band width or row width. More than 0.", "length"),
});

/**
 * Returns the area on which one unit caught is one unit of rate: 1/128 acre for fluid ounces and gallons per acre.
 *
 * Formula: area = 1 catch unit / 1 rate unit.
 * Source: Easy Calibration for Backpack and Canister (Handheld) Sprayers (Utah State University Extension).
 *
 * @param pair - the two units
 * @returns ft² for a rate per acre and the like, m² for one per hectare and the like
 * @throws SprayMathError `missing`, `not-a-quantity`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { directStripArea } from "swath-to-spoon/output-rate";
 *
 * console.log(directStripArea({ catchUnit: "fl_oz", rateUnit: "gal/ac" })); // { value: 340.3125, unit: 'ft2' }
 * console.log(directStripArea({ catchUnit: "mL", rateUnit: "L/ha" })); // { value: 10, unit: 'm2' }
 * ```
 */
export function directStripArea(pair: ReadingPair): Area {
  return workedPair(checked(pair, PAIR)).area;
}

/**
 * The working of {@link directStripArea}, line by line.
 *
 * @param pair - as for {@link directStripArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link directStripArea} does
 *
 * @example
 * ```ts
 * import { directStripArea } from "swath-to-spoon/working";
 *
 * const lines = directStripArea({ catchUnit: "fl_oz", rateUnit: "gal/ac" });
 * console.log(lines.map((line) => line.formula).join(", ")); // value / size, caught / rate, value * size
 * ```
 */
export function directStripAreaWorking(pair: ReadingPair): WorkingLine[] {
  const given = checked(pair, PAIR);
  return areaLines(given, workedPair(given).area.unit);
}

/**
 * Returns the distance to travel so that what one nozzle puts out, in `catchUnit`, reads as the rate in `rateUnit`. Catch for the
 * time that the distance takes at working speed; where several nozzles spray the same width, add their catches.
 *
 * Formula: distance = (1 catch unit / 1 rate unit) / width. With fluid ounces and gallons per acre it is the 1/128-acre
 * method (340.3125 ft² over the width); printed tables round or cut to whole feet, this does not.
 * Source: Calibrating Boom Sprayers (Ohio State University Extension, AEX-520).
 *
 * @param input - the pair of units, and the width
 * @returns ft or m, like the width
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { directStripDistance } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(directStripDistance({ width: qty(30, "in"), catchUnit: "fl_oz", rateUnit: "gal/ac" })); // { value: 136.125, unit: 'ft' }
 * console.log(directStripDistance({ width: qty(50, "cm"), catchUnit: "mL", rateUnit: "L/ha" })); // { value: 20, unit: 'm' }
 * ```
 */
export function directStripDistance(input: DirectStripInput): Length {
  return workedLayout(checked(input, LAYOUT)).distance;
}

/**
 * The working of {@link directStripDistance}, line by line.
 *
 * @param input - as for {@link directStripDistance}
 * @returns the lines; the last one's result is the distance
 * @throws SprayMathError as {@link directStripDistance} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { directStripDistance } from "swath-to-spoon/working";
 *
 * const lines = directStripDistance({ width: qty(30, "in"), catchUnit: "fl_oz", rateUnit: "gal/ac" });
 * console.log(lines.at(-1)?.formula); // area / width
 * ```
 */
export function directStripDistanceWorking(input: DirectStripInput): WorkingLine[] {
  const given = checked(input, LAYOUT);
  const { area, distance } = workedLayout(given);
  return [
    ...areaLines(given, area.unit),
    ...formulaLines({
      id: "output-rate.direct-strip",
      formula: "area / width",
      terms: { area: [area, area.unit], width: [given.width, distance.unit] },
      result: distance,
      source: "Calibrating Boom Sprayers, Ohio State University Extension, AEX-520",
    }),
  ];
}

/** What was caught over a strip laid out with {@link directStripDistance}. */
export interface DirectReading extends ReadingPair {
  /** What one nozzle put out over the strip (all of a row's nozzles together), in any unit of volume. More than 0. */
  readonly caught: Measured<Volume>;
}

/** A catch over such a strip. */
export const DIRECT_READING: ObjectField<DirectReading> = object<DirectReading>({
  ...PAIR.fields,
  caught: measured(
    "What one nozzle put out over the strip (all of a row's nozzles together), in any unit of volume. More than 0.",
    "volume",
  ),
});

/**
 * Returns the rate read off a catch over a strip laid out with {@link directStripDistance} for the same pair of units. A catch
 * read in another unit is changed to the strip's own first, so a jug in milliliters does no harm.
 *
 * Formula: rate = catch in catch units, taken as rate units.
 * Source: Calibrating Boom Sprayers (Ohio State University Extension, AEX-520).
 *
 * @param reading - the catch, and the pair of units that the strip was laid out for
 * @returns the rate in `rateUnit`
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { directStripRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(directStripRate({ caught: qty(15, "fl_oz"), catchUnit: "fl_oz", rateUnit: "gal/ac" })); // { value: 15, unit: 'gal/ac' }
 * ```
 */
export function directStripRate(reading: DirectReading): VolumeRate {
  return rateOfReading(checked(reading, DIRECT_READING));
}

/**
 * The working of {@link directStripRate}, line by line.
 *
 * @param reading - as for {@link directStripRate}
 * @returns the lines; the last one's result is the rate
 * @throws SprayMathError as {@link directStripRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { directStripRate } from "swath-to-spoon/working";
 *
 * const lines = directStripRate({ caught: qty(15, "fl_oz"), catchUnit: "fl_oz", rateUnit: "gal/ac" });
 * console.log(lines[0]?.formula); // caught * reading
 * ```
 */
export function directStripRateWorking(reading: DirectReading): WorkingLine[] {
  return linesOfReading(checked(reading, DIRECT_READING));
}

/** The rate that a catch reads as. Trusts its input. */
export function rateOfReading({ caught, catchUnit, rateUnit }: DirectReading, at = ""): VolumeRate {
  return positiveIn(inUnit(caught, catchUnit), rateUnit, at);
}

/** The working of {@link rateOfReading}. Trusts its input. */
export function linesOfReading(reading: DirectReading): WorkingLine[] {
  const { caught, catchUnit, rateUnit } = reading;
  const id = "output-rate.direct-strip-rate";
  return [
    ...conversionLines(`${id}.caught`, { value: caught.value, unit: caught.unit }, catchUnit),
    {
      id,
      formula: "caught * reading",
      // So many units caught, each of which reads as one of the rate: "24 fl oz × 1 gal/ac = 24 gal/ac" would be false.
      terms: { caught: inUnit(caught, catchUnit), reading: { value: 1, unit: rateUnit } },
      result: rateOfReading(reading),
      source: "Calibrating Boom Sprayers, Ohio State University Extension, AEX-520",
    },
  ];
}

interface WorkedPair {
  /** The unit of volume over the stroke of the rate. */
  readonly volume: Unit;
  /** The area in the unit under the stroke of the rate, so that 1 `fl_oz` and 1 `gal/ac` give exactly 1/128 ac. */
  readonly share: Quantity<AreaUnit>;
  /** The area in the unit that it is reported in. */
  readonly area: Area;
}

function workedPair({ catchUnit, rateUnit }: ReadingPair): WorkedPair {
  const { over, per } = resolveUnit(rateUnit);
  const share = { value: convertValue(1, catchUnit, over), unit: per as AreaUnit };
  return { volume: over, share, area: resultIn(share, unitsLike(per as AreaUnit).area) };
}

function areaLines(pair: ReadingPair, unit: AreaUnit): WorkingLine[] {
  const { volume, share } = workedPair(pair);
  return formulaLines(
    {
      id: "output-rate.direct-strip-area",
      formula: "caught / rate",
      terms: {
        caught: [{ value: 1, unit: pair.catchUnit }, volume],
        rate: [{ value: 1, unit: pair.rateUnit }, pair.rateUnit],
      },
      result: share,
      source:
        "Easy Calibration for Backpack and Canister (Handheld) Sprayers, Utah State University Extension",
    },
    unit,
  );
}

function workedLayout({ width, ...pair }: DirectStripInput): {
  readonly area: Area;
  readonly distance: Length;
} {
  const units = unitsLike(width.unit);
  const area = resultIn(workedPair(pair).share, units.area);
  return { area, distance: positiveIn(area.value / inUnit(width, units.length), units.length) };
}
