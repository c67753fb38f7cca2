import { bandsFit } from "../swath/bands-fit.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { joined, type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { positive } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Length, MassRate, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

const SOURCE = "plane geometry";

/** Bands at a row spacing. */
export interface BandSpacing {
  /** The treated width on one row. More than 0, at most the row spacing. */
  readonly bandWidth: Length;
  /** The distance from one row to the next. More than 0. */
  readonly rowSpacing: Length;
}

const SPACING: ObjectField<BandSpacing> = /* @__PURE__ */ object<BandSpacing>(
  {
    bandWidth: quantity("The treated width on one row. More than 0, at most the row spacing.", "length"),
    rowSpacing: quantity("The distance from one row to the next. More than 0.", "length"),
  },
  [({ bandWidth, rowSpacing }, check) => bandsFit(bandWidth, rowSpacing, "bandWidth", check)],
);

/**
 * A rate from a label, to be put on in bands.
 *
 * @typeParam R - a volume or a weight per area
 */
export interface CropRateInput<R extends VolumeRate | MassRate = VolumeRate | MassRate> extends BandSpacing {
  /** The rate on what is treated: the label's broadcast rate, which holds inside the band as it is. More than 0. */
  readonly treatedRate: R;
}

const CROP_RATE: ObjectField<CropRateInput> = /* @__PURE__ */ joined(
  object<Omit<CropRateInput, keyof BandSpacing>>({
    treatedRate: quantity(
      "The rate on what is treated: the label's broadcast rate, which holds inside the band as it is. More than 0.",
      ["volumeRate", "massRate"],
    ),
  }),
  SPACING,
);

/**
 * Returns what goes on an acre or hectare of the field, rows and spaces between them together, where only bands are treated at the
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
  return rateOnGround(checked(input, CROP_RATE)) as R;
}

/** A rate per area of ground. Trusts its input. */
function rateOnGround<R extends VolumeRate | MassRate>({ treatedRate, ...bands }: CropRateInput<R>): R {
  const { band, row } = bandAndRow(bands);
  return { value: positive((treatedRate.value * band) / row), unit: treatedRate.unit } as R;
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
  const given = checked(input, CROP_RATE);
  const result = rateOnGround(given);
  const { length } = unitsLike(given.bandWidth.unit);
  return formulaLines({
    id: "area.cropRate",
    formula: "treatedRate * bandWidth / rowSpacing",
    terms: {
      treatedRate: [given.treatedRate, given.treatedRate.unit],
      bandWidth: [given.bandWidth, length],
      rowSpacing: [given.rowSpacing, length],
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

const TREATED_RATE: ObjectField<TreatedRateInput> = /* @__PURE__ */ joined(
  object<Omit<TreatedRateInput, keyof BandSpacing>>({
    cropRate: quantity("The rate per area of ground, rows and spaces between them together. More than 0.", [
      "volumeRate",
      "massRate",
    ]),
  }),
  SPACING,
);

/**
 * Returns the broadcast rate that goes on inside the bands, where a rate is counted on an acre or hectare of the field. This is the
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
  return rateInBand(checked(input, TREATED_RATE)) as R;
}

/** A rate per treated area. Trusts its input. */
function rateInBand<R extends VolumeRate | MassRate>({ cropRate: given, ...bands }: TreatedRateInput<R>): R {
  const { band, row } = bandAndRow(bands);
  return { value: positive((given.value * row) / band), unit: given.unit } as R;
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
  const given = checked(input, TREATED_RATE);
  const result = rateInBand(given);
  const { length } = unitsLike(given.bandWidth.unit);
  return formulaLines({
    id: "area.treatedRate",
    formula: "cropRate * rowSpacing / bandWidth",
    terms: {
      cropRate: [given.cropRate, given.cropRate.unit],
      rowSpacing: [given.rowSpacing, length],
      bandWidth: [given.bandWidth, length],
    },
    result,
    source: SOURCE,
  });
}

function bandAndRow({ bandWidth, rowSpacing }: BandSpacing): { band: number; row: number } {
  const { length } = unitsLike(bandWidth.unit);
  const row = inUnit(rowSpacing, length);
  // Never more than the row, not even by the rounding of two units of length.
  return { band: Math.min(inUnit(bandWidth, length), row), row };
}
