import { type Check, checked } from "../units/check.js";
import { convertValue, inUnit } from "../units/convert.js";
import { choice, list, type ObjectField, object, type Partly } from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { quantity, unitOf } from "../units/quantity-field.js";
import { groundOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, Length, LengthUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { STATION } from "./corners.js";

/**
 * How the offsets are joined to an area. Handbooks differ, and an area without its rule cannot be checked.
 *
 * - `trapezoidal`: straight lines from offset to offset; the first and the last count half
 * - `simpson`: curves through three offsets at a time (Simpson's one-third rule); needs an odd number of them
 * - `mid-strip`: each offset is the mean width of its own strip, measured in the middle of it; none counts half. This is the
 *   "add the widths and multiply" of lawn guides.
 */
export type OffsetRule = "trapezoidal" | "simpson" | "mid-strip";

/** An irregular plot, measured square to a base line at equal distances. */
export interface OffsetsInput {
  /** From the base line to the boundary at each station, in order. 0 or more, not all 0. */
  readonly offsets: readonly Length[];
  /** From one station to the next. More than 0. */
  readonly spacing: Length;
  /** How the offsets are joined: by straight lines, by Simpson's curves (an odd number of offsets), or each as the width of a strip of its own. */
  readonly rule: OffsetRule;
}

const MOST_STATIONS = 10_000;

/** The fields of a plot measured by offsets at equal spacing. */
export const OFFSETS: ObjectField<OffsetsInput> = /* @__PURE__ */ object<OffsetsInput>(
  {
    offsets: list(
      "From the base line to the boundary at each station, in order. 0 or more, not all 0.",
      quantity("An offset.", "length", "nonnegative"),
      { most: MOST_STATIONS },
    ),
    spacing: quantity("From one station to the next. More than 0.", "length"),
    rule: choice(
      "How the offsets are joined: by straight lines, by Simpson's curves (an odd number of offsets), or each as the width of a strip of its own.",
      ["trapezoidal", "simpson", "mid-strip"],
    ),
  },
  [
    ruleFits,
    ({ offsets }, check) =>
      somewhereWide(
        offsets?.map(({ value }) => value),
        "offsets",
        check,
      ),
  ],
);

/** Notes offsets that the rule can't join. */
function ruleFits({ offsets, rule }: Partly<OffsetsInput>, check: Check): void {
  if (offsets === undefined || rule === undefined) return;
  const [given, limit] = [offsets.length, { trapezoidal: 2, simpson: 3, "mid-strip": 1 }[rule]];
  if (given < limit)
    check.fault("too-few", "list-short", "offsets", 'Enter at least {limit} under "{list.field}".', {
      list: "offsets",
      given,
      limit,
    });
  else if (rule === "simpson" && given % 2 === 0)
    check.fault(
      "conflict",
      "simpson-even",
      "offsets",
      "Simpson's rule needs an odd number of offsets; there are {given}. Use the trapezoidal rule, or measure one more.",
      { given },
    );
}

/** Notes a plot that is nowhere wider than 0. */
function somewhereWide(offsets: readonly number[] | undefined, at: string, check: Check): void {
  if (offsets?.every((offset) => offset === 0))
    check.fault("out-of-range", "offsets-zero", at, "All offsets are 0. Enter the widths of the plot.");
}

const SOURCES: Readonly<Record<OffsetRule, string>> = {
  trapezoidal: "trapezoidal rule",
  simpson: "Simpson's one-third rule",
  "mid-strip": "mid-ordinate rule",
};

/**
 * Returns the ground area of an irregular plot from offsets at equal spacing.
 *
 * Formulas, with offsets o₁ … oₙ: `trapezoidal` spacing × (o₁/2 + o₂ + … + oₙ₋₁ + oₙ/2); `simpson` spacing / 3 × (o₁ + 4 o₂
 * + 2 o₃ + … + 4 oₙ₋₁ + oₙ); `mid-strip` spacing × (o₁ + … + oₙ). All three are standard in surveying (the last as the
 * mid-ordinate rule); turf guides use `mid-strip` and claim 5% (Calibration Guidelines for Home Lawns, University of
 * Missouri, 2010).
 *
 * @param input - up to 10,000 offsets, spacing and rule; at least 2 offsets for `trapezoidal`, 3 for `simpson`, 1 for
 * `mid-strip`
 * @returns ground area, in ft² or m² like `spacing`
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
 * console.log(lawn); // { value: 1440, unit: 'ft2', of: 'ground' }
 * ```
 */
export function offsetsArea(input: OffsetsInput): GroundArea {
  return groundOfOffsets(checked(input, OFFSETS));
}

/** The ground beside a base line. Trusts its input. */
export function groundOfOffsets({ offsets, spacing, rule }: OffsetsInput, at = ""): GroundArea {
  const { length: unit, area } = unitsLike(spacing.unit);
  const { weights, divisor } = weightsOf(rule, offsets.length);
  const weighted = sumOf(
    offsets.map((offset, i) => ({ value: (weights[i] as number) * inUnit(offset, unit), unit })),
  );
  return groundOf((inUnit(spacing, unit) * weighted.value) / divisor, area, at);
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
  return linesOfOffsets(checked(input, OFFSETS));
}

/** The working of {@link groundOfOffsets}. Trusts its input. */
export function linesOfOffsets({ offsets, spacing, rule }: OffsetsInput): WorkingLine[] {
  const result = groundOfOffsets({ offsets, spacing, rule });
  const { length: unit } = unitsLike(spacing.unit);
  const { weights, divisor } = weightsOf(rule, offsets.length);
  const terms: Record<string, GivenTerm> = { spacing: [spacing, unit] };
  for (const [i, offset] of offsets.entries()) terms[`x${i + 1}`] = [offset, unit];
  const weighted = weights
    .map((weight, i) => (weight === 1 ? `x${i + 1}` : `${weight} * x${i + 1}`))
    .join(" + ");
  return formulaLines({
    id: "area.offsets",
    formula: `spacing * (${weighted})${divisor === 1 ? "" : ` / ${divisor}`}`,
    terms,
    result,
    source: SOURCES[rule],
  });
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
  /** How far along the base line, and how far from there to the boundary; in order. */
  readonly stations: readonly (readonly [along: number, offset: number])[];
  /** The one unit of all these numbers. */
  readonly unit: LengthUnit;
}

/** The fields of a plot measured by offsets at unequal spacing. */
export const UNEQUAL_OFFSETS: ObjectField<UnequalOffsetsInput> = /* @__PURE__ */ object<UnequalOffsetsInput>(
  {
    stations: list(
      "How far along the base line, and how far from there to the boundary; in order.",
      STATION,
      { least: 2, most: MOST_STATIONS },
    ),
    unit: unitOf("The one unit of all these numbers.", "length"),
  },
  [
    stationsGoOn,
    ({ stations }, check) =>
      somewhereWide(
        stations?.map(([, offset]) => offset),
        "stations",
        check,
      ),
  ],
);

/** Notes stations that are not farther along than the one before them. */
function stationsGoOn({ stations = [] }: Partly<UnequalOffsetsInput>, check: Check): void {
  for (const [i, [along]] of stations.entries()) {
    const before = stations[i - 1]?.[0];
    if (before !== undefined && along <= before)
      check.fault(
        "conflict",
        "station-not-farther",
        `stations[${i}][0]`,
        "Must be farther along than the station before it, at {before}.",
        { given: along, before },
      );
  }
}

/**
 * Returns the ground area of an irregular plot from offsets at unequal spacing, by the trapezoidal rule: straight lines from
 * offset to offset. (Simpson's rule needs equal spacing.)
 *
 * Formula: Σ (aᵢ₊₁ − aᵢ) × (oᵢ + oᵢ₊₁) / 2, with distances along the base line a and offsets o (trapezoidal rule).
 *
 * @param input - 2 to 10,000 stations, each farther along than the one before it, and their unit; offsets of 0 or more, not
 * all 0
 * @returns ground area, in ft² or m² like `unit`
 * @throws SprayMathError `conflict` where a station is not farther along than the one before it, `too-few`, `missing`,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { unequalOffsetsArea } from "swath-to-spoon/area";
 *
 * const strip = unequalOffsetsArea({ stations: [[0, 12], [20, 18], [50, 10]], unit: "m" });
 * console.log(strip); // { value: 720, unit: 'm2', of: 'ground' }
 * ```
 */
export function unequalOffsetsArea(input: UnequalOffsetsInput): GroundArea {
  return groundOfUnequalOffsets(checked(input, UNEQUAL_OFFSETS));
}

/** The ground beside a base line. Trusts its input. */
export function groundOfUnequalOffsets({ stations, unit }: UnequalOffsetsInput, at = ""): GroundArea {
  const { length, area } = unitsLike(unit);
  const twice = sumOf(
    stations.slice(1).map(([along, offset], i) => {
      const [before, offsetBefore] = stations[i] as readonly [number, number];
      return { value: (along - before) * (offset + offsetBefore), unit: area };
    }),
  );
  const inLength = convertValue(twice.value / 2, unit, length);
  return groundOf(convertValue(inLength, unit, length), area, at);
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
  return linesOfUnequalOffsets(checked(input, UNEQUAL_OFFSETS));
}

/** The working of {@link groundOfUnequalOffsets}. Trusts its input. */
export function linesOfUnequalOffsets({ stations, unit }: UnequalOffsetsInput): WorkingLine[] {
  const result = groundOfUnequalOffsets({ stations, unit });
  const { length } = unitsLike(unit);
  const lengthOf = (one: number): GivenTerm => [
    { value: convertValue(one, unit, length), unit: length },
    length,
  ];
  const strips = stations.slice(1).map((_, i) => `(a${i + 2} - a${i + 1}) * (x${i + 1} + x${i + 2})`);
  return formulaLines({
    id: "area.unequalOffsets",
    formula: `(${strips.join(" + ")}) / 2`,
    terms: Object.fromEntries(
      stations.flatMap(([along, offset], i) => [
        [`a${i + 1}`, lengthOf(along)],
        [`x${i + 1}`, lengthOf(offset)],
      ]),
    ),
    result,
    source: SOURCES.trapezoidal,
  });
}
