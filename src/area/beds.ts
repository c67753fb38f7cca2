import { checkedObject } from "../units/guard.js";
import type { Length } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { givenStrips, type Lanes, lanesArea, lanesWorking, type TreatedRows } from "./lanes.js";

/** Beds of which the whole top is sprayed. */
export type BedsInput = (
  | {
      /** How many beds. A whole number, 1 or more. */
      readonly beds: number;
      /** The length of each bed. More than 0. */
      readonly bedLength: Length;
      /** Not with `bedLength`. */
      readonly bedLengths?: never;
    }
  | {
      /** The length of each bed, where they differ; each more than 0. */
      readonly bedLengths: readonly Length[];
      /** How many beds, as a check on the list; may be left out. */
      readonly beds?: number;
      /** Not with `bedLengths`. */
      readonly bedLength?: never;
    }
) & {
  /** The treated width of a bed. More than 0, at most the bed spacing. */
  readonly bedWidth: Length;
  /** The distance from the middle of one bed to the middle of the next, path included. More than 0; needed for the ground. */
  readonly bedSpacing?: Length;
};

/**
 * Beds sprayed over their whole top: what is treated, and how much ground the beds and their paths take up.
 *
 * Formulas: treated = beds × bed length × bed width; ground = beds × bed length × bed spacing; treated part = bed width / bed
 * spacing (plane geometry).
 *
 * Beds wider than their spacing are an error: beds cannot lie on one another, so one of the two numbers is wrong.
 *
 * @param input - the beds and their sizes, in any units of length
 * @returns the treated area, and with `bedSpacing` the ground and the treated part of it; in ft² or m² as the length is told
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
  return lanesArea(lanesOf(input));
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
  return lanesWorking("area.beds", lanesOf(input));
}

const NAMES: Lanes["names"] = {
  count: "beds",
  length: "bedLength",
  lengths: "bedLengths",
  width: "bedWidth",
  spacing: "bedSpacing",
};

function lanesOf(input: BedsInput): Lanes {
  const { beds, bedLength, bedLengths, bedWidth, bedSpacing } = checkedObject(input, "");
  return {
    strips: givenStrips(beds, bedLength, bedLengths, NAMES),
    width: bedWidth,
    ...(bedSpacing !== undefined && { spacing: bedSpacing }),
    names: NAMES,
  };
}
