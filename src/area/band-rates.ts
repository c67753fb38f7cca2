import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { dimensionInWords } from "../units/dimensions.js";
import { checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { formulaLines } from "../units/lines.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import { unitsLike } from "../units/systems.js";
import type { Length, MassRate, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { positiveNumber } from "./made.js";

const SOURCE = "plane geometry";

/** Bands at a row spacing. */
export interface BandSpacing {
  /** The treated width on one row. More than 0, at most the row spacing. */
  readonly bandWidth: Length;
  /** The distance from one row to the next. More than 0. */
  readonly rowSpacing: Length;
}

/**
 * A rate as the label tells it, to be put on in bands.
 *
 * @typeParam R - a volume or a weight per area
 */
export interface CropRateInput<R extends VolumeRate | MassRate = VolumeRate | MassRate> extends BandSpacing {
  /** The rate on what is treated: the label's broadcast rate, which holds inside the band as it is. More than 0. */
  readonly treatedRate: R;
}

/**
 * What goes on an acre or hectare of the field, rows and spaces between them together, where only bands are treated at the
 * label's broadcast rate.
 *
 * Formula: rate per area of ground = rate per treated area × band width / row spacing (plane geometry). Inside the band the
 * rate stays the label's (Calculating Output and Rate for Banded Applications to Tobacco, Ontario Crop Protection Hub).
 *
 * @param input - the broadcast rate, the band width and the row spacing
 * @returns the rate per area of ground, in the unit of the rate given. Multiply it by ground area only, never by treated area.
 * @throws SprayMathError `conflict` for bands wider than their spacing, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { cropRate } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rate = cropRate({ treatedRate: qty(2, "qt/ac"), bandWidth: qty(15, "in"), rowSpacing: qty(30, "in") });
 * console.log(rate); // { value: 1, unit: 'qt/ac' }
 * ```
 */
export function cropRate<R extends VolumeRate | MassRate>(input: CropRateInput<R>): R {
  const { treatedRate } = checkedObject(input, "");
  checkRate(treatedRate, "treatedRate");
  const { band, row } = checkedBands(input);
  return { value: positiveNumber((treatedRate.value * band) / row), unit: treatedRate.unit } as R;
}

/**
 * The working of {@link cropRate}, line by line.
 *
 * @param input - as for {@link cropRate}
 * @returns the lines; the last one's result is the rate per area of ground
 * @throws SprayMathError as {@link cropRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { cropRate } from "swath-to-spoon/working";
 *
 * const lines = cropRate({ treatedRate: qty(20, "gal/ac"), bandWidth: qty(1, "ft"), rowSpacing: qty(3, "ft") });
 * console.log(lines.map((line) => line.formula)); // [ 'treatedRate * bandWidth / rowSpacing' ]
 * ```
 */
export function cropRateWorking(input: CropRateInput): WorkingLine[] {
  const result = cropRate(input);
  const { length } = unitsLike(input.bandWidth.unit);
  return formulaLines({
    id: "area.cropRate",
    formula: "treatedRate * bandWidth / rowSpacing",
    terms: {
      treatedRate: [input.treatedRate, input.treatedRate.unit],
      bandWidth: [input.bandWidth, length],
      rowSpacing: [input.rowSpacing, length],
    },
    result,
    source: SOURCE,
  });
}

/**
 * A rate counted on the whole field, put on in bands.
 *
 * @typeParam R - a volume or a weight per area
 */
export interface TreatedRateInput<R extends VolumeRate | MassRate = VolumeRate | MassRate>
  extends BandSpacing {
  /** The rate per area of ground, rows and spaces between them together. More than 0. */
  readonly cropRate: R;
}

/**
 * The broadcast rate that goes on inside the bands, where a rate is counted on an acre or hectare of the field. This is the
 * rate to compare with the label.
 *
 * Formula: rate per treated area = rate per area of ground × row spacing / band width (plane geometry).
 *
 * @param input - the rate per area of ground, the band width and the row spacing
 * @returns the rate per treated area, in the unit of the rate given
 * @throws SprayMathError `conflict` for bands wider than their spacing, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { treatedRate } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rate = treatedRate({ cropRate: qty(7, "gal/ac"), bandWidth: qty(14, "in"), rowSpacing: qty(40, "in") });
 * console.log(rate); // { value: 20, unit: 'gal/ac' }
 * ```
 */
export function treatedRate<R extends VolumeRate | MassRate>(input: TreatedRateInput<R>): R {
  const given = checkedObject(input, "").cropRate;
  checkRate(given, "cropRate");
  const { band, row } = checkedBands(input);
  return { value: positiveNumber((given.value * row) / band), unit: given.unit } as R;
}

/**
 * The working of {@link treatedRate}, line by line.
 *
 * @param input - as for {@link treatedRate}
 * @returns the lines; the last one's result is the rate per treated area
 * @throws SprayMathError as {@link treatedRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { treatedRate } from "swath-to-spoon/working";
 *
 * const lines = treatedRate({ cropRate: qty(7, "gal/ac"), bandWidth: qty(1, "ft"), rowSpacing: qty(3, "ft") });
 * console.log(lines.map((line) => line.formula)); // [ 'cropRate * rowSpacing / bandWidth' ]
 * ```
 */
export function treatedRateWorking(input: TreatedRateInput): WorkingLine[] {
  const result = treatedRate(input);
  const { length } = unitsLike(input.bandWidth.unit);
  return formulaLines({
    id: "area.treatedRate",
    formula: "cropRate * rowSpacing / bandWidth",
    terms: {
      cropRate: [input.cropRate, input.cropRate.unit],
      rowSpacing: [input.rowSpacing, length],
      bandWidth: [input.bandWidth, length],
    },
    result,
    source: SOURCE,
  });
}

function checkedBands({ bandWidth, rowSpacing }: BandSpacing): { band: number; row: number } {
  const { length } = unitsWith(bandWidth, "bandWidth");
  const [band, row] = [inUnit(bandWidth, length, "bandWidth"), inUnit(rowSpacing, length, "rowSpacing")];
  if (moreThan(band, row)) {
    throw new SprayMathError(
      "conflict",
      "bandWidth",
      `Given bands of ${bandWidth.value} ${bandWidth.unit} on rows ${rowSpacing.value} ${rowSpacing.unit} apart: they overlap. ` +
        "Check the two widths; where all of the ground is sprayed, the broadcast rate holds as it is.",
    );
  }
  return { band: Math.min(band, row), row };
}

function checkRate(rate: VolumeRate | MassRate, path: string): void {
  checkShape(rate, path);
  const { dimension } = resolveUnit(rate.unit, `${path}.unit`);
  if (dimension !== "volumeRate" && dimension !== "massRate") {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given ${rate.value} ${rate.unit}, ${dimensionInWords(dimension)}; wanted a rate per area, such as gal/ac or lb/ac.`,
    );
  }
  inUnit(rate as VolumeRate, rate.unit as VolumeRate["unit"], path);
}
