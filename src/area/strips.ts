import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
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
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { sumOf } from "../units/quantity.js";
import { quantity } from "../units/quantity-field.js";
import { groundOf, positive, positiveIn, treatedOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, Length, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** What is treated in rows, beds or spots, and the ground that they take up. */
export interface TreatedRows {
  /** What the spray lands on. */
  readonly treated: TreatedArea;
  /** The ground that the rows take up, half a spacing on each side of the outer ones; only where it is known. */
  readonly ground?: GroundArea | undefined;
  /** The treated part of the ground, more than 0 and at most 1; only where the ground is known. */
  readonly fraction?: number | undefined;
  /** The length of all rows or beds together, in ft or m; only where there are rows or beds. */
  readonly rowLength?: Length | undefined;
}

/** Rows that are all as long. */
export interface RowsAlike {
  /** How many rows. A whole number, 1 or more. */
  readonly rows: number;
  /** The length of each row. More than 0. */
  readonly rowLength: Length;
  /** Not with `rowLength`. */
  readonly rowLengths?: never;
}

/** The fields of rows that are all as long. */
const ROWS_ALIKE: ObjectField<RowsAlike> = object<RowsAlike>({
  rows: count("How many rows. A whole number, 1 or more."),
  rowLength: quantity("The length of each row. More than 0.", "length"),
});

/** Rows of different lengths. */
export interface RowsByLength {
  /** The length of each row, where they differ; each more than 0. */
  readonly rowLengths: readonly Length[];
  /** How many rows, as a check on the list; may be left out. */
  readonly rows?: number | undefined;
  /** Not with `rowLengths`. */
  readonly rowLength?: never;
}

/** More strips than any plot has; the working of so many is printed in a moment. */
export const MOST_STRIPS = 10_000;

/** The fields of rows of different lengths. */
const ROWS_BY_LENGTH: ObjectField<RowsByLength> = /* @__PURE__ */ object<RowsByLength>(
  {
    rowLengths: list(
      "The length of each row, where they differ; each more than 0.",
      quantity("The length of a row.", "length"),
      { most: MOST_STRIPS },
    ),
    rows: optional(count("How many rows, as a check on the list; may be left out.")),
  },
  [({ rows, rowLengths }, check) => lengthsFit(rows, rowLengths, "rows", check)],
);

/** Whether rows are all as long, or their lengths are listed. */
const BY_ROW_LENGTH: Pick = /* @__PURE__ */ byGiven([["rowLength"], ["rowLengths"]], 0);

/** What is sprayed along rows: so many rows of one length, or the length of each. */
/* @__NO_SIDE_EFFECTS__ */
export function alongRows<T extends object>(
  widths: ObjectField<T>,
): EitherField<(RowsAlike | RowsByLength) & T> {
  return either<(RowsAlike | RowsByLength) & T>(
    "",
    [joined(ROWS_ALIKE, widths), joined(ROWS_BY_LENGTH, widths)],
    BY_ROW_LENGTH,
  );
}

/** Notes a count that is not that of the lengths in the list. */
export function lengthsFit(
  count: number | undefined,
  lengths: readonly Length[] | undefined,
  at: string,
  check: Check,
): void {
  if (count === undefined || lengths === undefined || count === lengths.length) return;
  check.fault(
    "conflict",
    "lengths-counted",
    at,
    "The number is {given}, but you entered {lengths} {lengths:one=length;other=lengths}. Enter one length for each.",
    { given: count, lengths: lengths.length },
  );
}

/** Parallel strips of one width at one spacing, whatever they are called: bands, beds, tree rows. */
export interface Strips {
  /** How many there are of the one length; nothing where the list has the length of each. */
  readonly count: number | undefined;
  readonly lengths: readonly Length[];
  /** The treated width of one side. */
  readonly width: Length;
  /** How many sides of each strip are treated, where that is counted. */
  readonly sides?: 1 | 2 | undefined;
  /** The distance from the middle of one strip to the middle of the next. */
  readonly spacing: Length | undefined;
}

/** How the fields of strips are called. */
export interface StripNames {
  readonly count: string;
  readonly length: string;
  readonly width: string;
  readonly spacing: string;
}

/** Strips along rows that are all as long, or of which each has its length. */
export function stripsAlong(
  count: number | undefined,
  length: Length | undefined,
  lengths: readonly Length[] | undefined,
  { width, sides, spacing }: Omit<Strips, "count" | "lengths">,
): Strips {
  return length === undefined
    ? { count: undefined, lengths: lengths as readonly Length[], width, sides, spacing }
    : { count, lengths: [length], width, sides, spacing };
}

/** The areas of parallel strips: treated = length of all × width × sides, ground = length of all × spacing. */
export function areasOfStrips(
  { count = 1, lengths, width, sides = 1, spacing }: Strips,
  at: string,
): TreatedRows {
  const { length: unit, area } = unitsLike((lengths[0] as Length).unit);
  const rowLength = positiveIn(count * inUnit(sumOf(lengths), unit), unit, at);
  const wide = sides * inUnit(width, unit);
  if (spacing === undefined) return { treated: treatedOf(rowLength.value * wide, area, at), rowLength };
  const apart = inUnit(spacing, unit);
  // Treated never exceeds ground, not even by the rounding of two units of length.
  const treated = Math.min(wide, apart);
  return {
    treated: treatedOf(rowLength.value * treated, area, at),
    ground: groundOf(rowLength.value * apart, area, at),
    fraction: positive(treated / apart, at),
    rowLength,
  };
}

/** The working of parallel strips: the ground and the treated part first, the treated area last. */
export function linesOfStrips(id: string, strips: Strips, names: StripNames): WorkingLine[] {
  const { count, lengths, width, sides, spacing } = strips;
  const { treated, ground, fraction } = areasOfStrips(strips, "");
  const { length: unit } = unitsLike(treated.unit);
  const run: Record<string, GivenTerm> =
    count === undefined
      ? Object.fromEntries(lengths.map((one, i) => [`x${i + 1}`, [one, unit] as const]))
      : { [names.count]: count, [names.length]: [lengths[0] as Length, unit] };
  const runFormula = count === undefined ? `(${Object.keys(run).join(" + ")})` : Object.keys(run).join(" * ");
  const wide: Record<string, GivenTerm> = { ...(sides && { sides }), [names.width]: [width, unit] };
  const wideFormula = Object.keys(wide).join(" * ");
  const apart: Record<string, GivenTerm> = spacing === undefined ? {} : { [names.spacing]: [spacing, unit] };
  const line = (
    part: string,
    formula: string,
    terms: Record<string, GivenTerm>,
    result: WorkingLine["result"] | undefined,
  ): WorkingLine[] =>
    result === undefined
      ? []
      : formulaLines({ id: `${id}.${part}`, formula, terms, result, source: "plane geometry" });
  return [
    ...line("ground", `${runFormula} * ${names.spacing}`, { ...run, ...apart }, ground),
    ...line("fraction", `${wideFormula} / ${names.spacing}`, { ...wide, ...apart }, fraction),
    ...line("treated", `${runFormula} * ${wideFormula}`, { ...run, ...wide }, treated),
  ];
}
