import { bandsFit } from "../swath/bands-fit.js";
import { checked } from "../units/check.js";
import {
  byGiven,
  count,
  type EitherField,
  either,
  joined,
  list,
  type ObjectField,
  object,
  optional,
  type Pick,
} from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Length } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import {
  areasOfStrips,
  lengthsFit,
  linesOfStrips,
  MOST_STRIPS,
  type StripNames,
  type Strips,
  stripsAlong,
  type TreatedRows,
} from "./strips.js";

/** Beds that are all as long. */
interface BedsAlike {
  /** How many beds. A whole number, 1 or more. */
  readonly beds: number;
  /** The length of each bed. More than 0. */
  readonly bedLength: Length;
  /** Not with `bedLength`. */
  readonly bedLengths?: never;
}

/** The fields of beds that are all as long. */
const BEDS_ALIKE: ObjectField<BedsAlike> = object<BedsAlike>({
  beds: count("How many beds. A whole number, 1 or more."),
  bedLength: quantity("The length of each bed. More than 0.", "length"),
});

/** Beds of different lengths. */
interface BedsByLength {
  /** The length of each bed, where they differ; each more than 0. */
  readonly bedLengths: readonly Length[];
  /** How many beds, as a check on the list; may be left out. */
  readonly beds?: number | undefined;
  /** Not with `bedLengths`. */
  readonly bedLength?: never;
}

/** The fields of beds of different lengths. */
const BEDS_BY_LENGTH: ObjectField<BedsByLength> = /* @__PURE__ */ object<BedsByLength>(
  {
    bedLengths: list(
      "The length of each bed, where they differ; each more than 0.",
      quantity("The length of a bed.", "length"),
      { most: MOST_STRIPS },
    ),
    beds: optional(count("How many beds, as a check on the list; may be left out.")),
  },
  [({ beds, bedLengths }, check) => lengthsFit(beds, bedLengths, "beds", check)],
);

/** The width of beds. */
interface BedWidths {
  /** The treated width of a bed. More than 0, at most the bed spacing. */
  readonly bedWidth: Length;
  /** From the middle of one bed to the middle of the next. More than 0; needed for the ground. */
  readonly bedSpacing?: Length | undefined;
}

/** Beds of which the whole top is sprayed. */
export type BedsInput = (BedsAlike | BedsByLength) & BedWidths;

/** The fields of the widths of beds. */
export const BED_WIDTHS: ObjectField<BedWidths> = /* @__PURE__ */ object<BedWidths>(
  {
    bedWidth: quantity("The treated width of a bed. More than 0, at most the bed spacing.", "length"),
    bedSpacing: optional(
      quantity(
        "From the middle of one bed to the middle of the next. More than 0; needed for the ground.",
        "length",
      ),
    ),
  },
  [({ bedWidth, bedSpacing }, check) => bandsFit(bedWidth, bedSpacing, "bedWidth", check)],
);

/** Whether beds are all as long, or their lengths are listed. */
const BY_BED_LENGTH: Pick = /* @__PURE__ */ byGiven([["bedLength"], ["bedLengths"]], 0);

/** What is sprayed along beds: so many beds of one length, or the length of each. */
/* @__NO_SIDE_EFFECTS__ */
export function alongBeds<T extends object>(
  widths: ObjectField<T>,
): EitherField<(BedsAlike | BedsByLength) & T> {
  return either<(BedsAlike | BedsByLength) & T>(
    "",
    [joined(BEDS_ALIKE, widths), joined(BEDS_BY_LENGTH, widths)],
    BY_BED_LENGTH,
  );
}

const BEDS: EitherField<BedsInput> = /* @__PURE__ */ alongBeds(BED_WIDTHS);

/**
 * Returns what is treated where beds are sprayed over their whole top, and how much ground the beds and their paths take up.
 *
 * Formulas: treated = beds × bed length × bed width; ground = beds × bed length × bed spacing; treated part = bed width / bed
 * spacing (plane geometry).
 *
 * Beds wider than their spacing are an error: beds cannot lie on one another, so one of the two numbers is wrong.
 *
 * @param input - the beds and their sizes, in any units of length
 * @returns the treated area, and with `bedSpacing` the ground and the treated part of it; in ft² or m² like the length
 * @throws SprayMathError `conflict` where beds overlap, or where the list of lengths and the count disagree; `too-few`,
 * `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { bedsArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { treated, fraction } = bedsArea({
 *   beds: 6,
 *   bedLength: qty(30, "m"),
 *   bedWidth: qty(75, "cm"),
 *   bedSpacing: qty(1.2, "m"),
 * });
 * console.log(treated); // { value: 135, unit: 'm2', of: 'treated' }
 * console.log(fraction); // 0.625
 * ```
 */
export function bedsArea(input: BedsInput): TreatedRows {
  return areasOfBeds(checked(input, BEDS));
}

/** The areas of beds. Trusts its input. */
export function areasOfBeds(input: BedsInput, at = ""): TreatedRows {
  return areasOfStrips(stripsOf(input), at);
}

/**
 * The working of {@link bedsArea}, line by line.
 *
 * @param input - as for {@link bedsArea}
 * @returns the lines; the last one's result is the treated area
 * @throws SprayMathError as {@link bedsArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { bedsArea } from "swath-to-spoon/working";
 *
 * const lines = bedsArea({ bedLengths: [qty(30, "m"), qty(24, "m")], bedWidth: qty(0.75, "m") });
 * console.log(lines.map((line) => line.formula)); // [ '(x1 + x2) * bedWidth' ]
 * ```
 */
export function bedsAreaWorking(input: BedsInput): WorkingLine[] {
  return linesOfBeds(checked(input, BEDS));
}

/** The working of {@link areasOfBeds}. Trusts its input. */
export function linesOfBeds(input: BedsInput): WorkingLine[] {
  return linesOfStrips("area.beds", stripsOf(input), NAMES);
}

const NAMES: StripNames = {
  count: "beds",
  length: "bedLength",
  width: "bedWidth",
  spacing: "bedSpacing",
};

function stripsOf({ beds, bedLength, bedLengths, bedWidth, bedSpacing }: BedsInput): Strips {
  return stripsAlong(beds, bedLength, bedLengths, { width: bedWidth, spacing: bedSpacing });
}
