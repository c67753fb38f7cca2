import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { checkedChoice, checkedList, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { formulaLines, type GivenTerm } from "../units/lines.js";
import { sum } from "../units/quantity.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, Length, LengthUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { checkLengthUnit } from "./boundary.js";
import { checkedPairs } from "./corners.js";
import { madeGround } from "./made.js";

/**
 * How the offsets are joined to an area.
 *
 * - `trapezoidal`: straight lines from offset to offset; the first and the last count half
 * - `simpson`: curves through three offsets at a time (Simpson's one-third rule); needs an odd number of them
 * - `mid-strip`: each offset is the mean width of its own strip, measured in the middle of it; none counts half. This is the
 *   "add the widths and multiply" of lawn guides.
 */
export type OffsetRule = "trapezoidal" | "simpson" | "mid-strip";

/** Ground area from offsets, with the rule it was found by. */
export interface OffsetsArea extends GroundArea {
  /** The rule that joined the offsets. */
  readonly rule: OffsetRule;
}

/** An irregular plot, measured square to a base line at equal distances. */
export interface OffsetsInput {
  /** The distance from the base line to the boundary (or from boundary to boundary) at each station, in order. 0 or more, not all 0. */
  readonly offsets: readonly Length[];
  /** The distance from one station to the next. More than 0. */
  readonly spacing: Length;
  /** The rule: handbooks differ, and an area without its rule cannot be checked. */
  readonly rule: OffsetRule;
}

const SOURCES: Readonly<Record<OffsetRule, string>> = {
  trapezoidal: "trapezoidal rule",
  simpson: "Simpson's one-third rule",
  "mid-strip": "mid-ordinate rule",
};

/**
 * The ground area of an irregular plot from offsets at equal spacing.
 *
 * Formulas, with offsets o₁ … oₙ: `trapezoidal` spacing × (o₁/2 + o₂ + … + oₙ₋₁ + oₙ/2); `simpson` spacing / 3 × (o₁ + 4 o₂
 * + 2 o₃ + … + 4 oₙ₋₁ + oₙ); `mid-strip` spacing × (o₁ + … + oₙ). All three are standard in surveying (the last as the
 * mid-ordinate rule); turf guides use `mid-strip` and claim 5 % (Calibration Guidelines for Home Lawns, University of
 * Missouri, 2010).
 *
 * @param input - offsets, spacing and rule; at least 2 offsets for `trapezoidal`, 3 for `simpson`, 1 for `mid-strip`
 * @returns ground area with its rule, in ft² or m² as `spacing` is told
 * @throws SprayMathError `conflict` for `simpson` with an even number of offsets, `too-few`, `unknown-choice`, `missing`,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { offsetsArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const offsets = [32, 50, 45, 17].map((width) => qty(width, "ft"));
 * const lawn = offsetsArea({ offsets, spacing: qty(10, "ft"), rule: "mid-strip" });
 * console.log(lawn); // { value: 1440, unit: 'ft2', of: 'ground', rule: 'mid-strip' }
 * ```
 */
export function offsetsArea(input: OffsetsInput): OffsetsArea {
  const { offsets, spacing, rule, weights, divisor, unit, area } = checkedOffsets(input);
  const weighted = sum(offsets.map((offset, i) => ({ value: (weights[i] as number) * offset, unit }))).value;
  return { ...madeGround((spacing * weighted) / divisor, area), rule };
}

/**
 * The working of {@link offsetsArea}, line by line.
 *
 * @param input - as for {@link offsetsArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link offsetsArea} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { offsetsArea } from "swath-to-spoon/working";
 *
 * const offsets = [0, 8, 6].map((width) => qty(width, "m"));
 * const lines = offsetsArea({ offsets, spacing: qty(5, "m"), rule: "simpson" });
 * console.log(lines.map((line) => line.formula)); // [ 'spacing * (x1 + 4 * x2 + x3) / 3' ]
 * ```
 */
export function offsetsAreaWorking(input: OffsetsInput): WorkingLine[] {
  const { value, unit: area, of, rule } = offsetsArea(input);
  const { unit, weights, divisor } = checkedOffsets(input);
  const terms: Record<string, GivenTerm> = { spacing: [input.spacing, unit] };
  for (const [i, offset] of input.offsets.entries()) terms[`x${i + 1}`] = [offset, unit];
  const weighted = weights
    .map((weight, i) => (weight === 1 ? `x${i + 1}` : `${weight} * x${i + 1}`))
    .join(" + ");
  return formulaLines({
    id: "area.offsets",
    formula: `spacing * (${weighted})${divisor === 1 ? "" : ` / ${divisor}`}`,
    terms,
    result: { value, unit: area, of } as GroundArea,
    source: SOURCES[rule],
  });
}

interface CheckedOffsets {
  readonly offsets: readonly number[];
  readonly spacing: number;
  readonly rule: OffsetRule;
  readonly weights: readonly number[];
  readonly divisor: number;
  readonly unit: "ft" | "m";
  readonly area: "ft2" | "m2";
}

function checkedOffsets(input: OffsetsInput): CheckedOffsets {
  const { offsets: given, spacing, rule } = checkedObject(input, "");
  const { length: unit, area } = unitsWith(spacing, "spacing");
  const apart = inUnit(spacing, unit, "spacing");
  checkedChoice(rule, ["trapezoidal", "simpson", "mid-strip"], "rule");
  checkedList(given, "offsets", { trapezoidal: 2, simpson: 3, "mid-strip": 1 }[rule]);
  if (rule === "simpson" && given.length % 2 === 0) {
    throw new SprayMathError(
      "conflict",
      "offsets",
      `Given ${given.length} offsets; Simpson's rule wants an odd number of them. Leave it for the trapezoidal rule, or measure one more.`,
    );
  }
  const offsets = given.map((offset, i) => inUnit(offset, unit, `offsets[${i}]`, "nonnegative"));
  if (offsets.every((offset) => offset === 0))
    throw new SprayMathError(
      "out-of-range",
      "offsets",
      "Given offsets of 0 only; wanted some ground to measure.",
    );
  const { weights, divisor } = weightsOf(rule, offsets.length);
  return { offsets, spacing: apart, rule, weights, divisor, unit, area };
}

function weightsOf(rule: OffsetRule, n: number): { weights: number[]; divisor: number } {
  const inner = { trapezoidal: () => 2, simpson: (i: number) => (i % 2 === 1 ? 4 : 2), "mid-strip": () => 1 }[
    rule
  ];
  const weights = Array.from({ length: n }, (_, i) => (i === 0 || i === n - 1 ? 1 : inner(i)));
  return { weights, divisor: { trapezoidal: 2, simpson: 3, "mid-strip": 1 }[rule] };
}

/** An irregular plot, measured square to a base line wherever the boundary bends. */
export interface UnequalOffsetsInput {
  /**
   * The stations in order: how far along the base line, and how far from there to the boundary (0 or more, not all 0). At
   * least 2, each farther along than the one before it.
   */
  readonly stations: readonly (readonly [along: number, offset: number])[];
  /** The one unit of all these numbers. */
  readonly unit: LengthUnit;
}

/**
 * The ground area of an irregular plot from offsets at unequal spacing, by the trapezoidal rule: straight lines from
 * offset to offset. (Simpson's rule needs equal spacing.)
 *
 * Formula: Σ (aᵢ₊₁ − aᵢ) × (oᵢ + oᵢ₊₁) / 2, with distances along the base line a and offsets o (trapezoidal rule).
 *
 * @param input - the stations and their unit
 * @returns ground area with its rule, in ft² or m² as `unit` is
 * @throws SprayMathError `conflict` where a station is not farther along than the one before it, `too-few`, `missing`,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { unequalOffsetsArea } from "swath-to-spoon/area";
 *
 * const strip = unequalOffsetsArea({ stations: [[0, 12], [20, 18], [50, 10]], unit: "m" });
 * console.log(strip); // { value: 720, unit: 'm2', of: 'ground', rule: 'trapezoidal' }
 * ```
 */
export function unequalOffsetsArea(input: UnequalOffsetsInput): OffsetsArea {
  const { stations, unit } = checkedStations(input);
  const { length, area } = unitsLike(unit);
  const twice = sum(
    stations.slice(1).map(([along, offset], i) => {
      const [before, offsetBefore] = stations[i] as readonly [number, number];
      return { value: (along - before) * (offset + offsetBefore), unit: area };
    }),
  ).value;
  const inLength = convertValue(twice / 2, unit, length);
  return { ...madeGround(convertValue(inLength, unit, length), area), rule: "trapezoidal" };
}

/**
 * The working of {@link unequalOffsetsArea}, line by line.
 *
 * @param input - as for {@link unequalOffsetsArea}
 * @returns the lines; the last one's result is the area
 * @throws SprayMathError as {@link unequalOffsetsArea} does
 *
 * @example
 * ```ts
 * import { unequalOffsetsArea } from "swath-to-spoon/working";
 *
 * const lines = unequalOffsetsArea({ stations: [[0, 12], [20, 18]], unit: "m" });
 * console.log(lines.map((line) => line.formula)); // [ '((a2 - a1) * (x1 + x2)) / 2' ]
 * ```
 */
export function unequalOffsetsAreaWorking(input: UnequalOffsetsInput): WorkingLine[] {
  const { value, unit: area, of } = unequalOffsetsArea(input);
  const { stations, unit } = checkedStations(input);
  const { length } = unitsLike(unit);
  const told = (one: number): GivenTerm => [{ value: convertValue(one, unit, length), unit: length }, length];
  const strips = stations.slice(1).map((_, i) => `(a${i + 2} - a${i + 1}) * (x${i + 1} + x${i + 2})`);
  return formulaLines({
    id: "area.unequalOffsets",
    formula: `(${strips.join(" + ")}) / 2`,
    terms: Object.fromEntries(
      stations.flatMap(([along, offset], i) => [
        [`a${i + 1}`, told(along)],
        [`x${i + 1}`, told(offset)],
      ]),
    ),
    result: { value, unit: area, of } as GroundArea,
    source: SOURCES.trapezoidal,
  });
}

function checkedStations(input: UnequalOffsetsInput): {
  stations: readonly (readonly [number, number])[];
  unit: LengthUnit;
} {
  const { stations: given, unit } = checkedObject(input, "");
  checkLengthUnit(unit);
  const stations = checkedPairs(given, "stations", 2);
  for (const [i, [along, offset]] of stations.entries()) {
    if (offset < 0)
      throw new SprayMathError(
        "out-of-range",
        `stations[${i}][1]`,
        `Given an offset of ${offset} ${unit}; wanted 0 or more.`,
      );
    const before = stations[i - 1]?.[0];
    if (before !== undefined && along <= before) {
      throw new SprayMathError(
        "conflict",
        `stations[${i}][0]`,
        `Given ${along} ${unit} along the base line after ${before} ${unit}; wanted each station farther along than the one before it.`,
      );
    }
  }
  if (stations.every(([, offset]) => offset === 0))
    throw new SprayMathError(
      "out-of-range",
      "stations",
      "Given offsets of 0 only; wanted some ground to measure.",
    );
  return { stations, unit };
}
