import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { checkedCount, checkedList, inUnit, unitsWith } from "../units/guard.js";
import { formulaLines, type GivenTerm } from "../units/lines.js";
import { sum } from "../units/quantity.js";
import type { GroundArea, Length, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { madeGround, madeTreated, positiveNumber } from "./made.js";

/** What is treated in rows or beds, and the ground that they take up. */
export interface TreatedRows {
  /** What the spray lands on. */
  readonly treated: TreatedArea;
  /** The ground that the rows take up, half a spacing on each side of the outer ones; only where the spacing is given. */
  readonly ground?: GroundArea;
  /** The treated part of the ground, more than 0 and at most 1; only where the spacing is given. */
  readonly fraction?: number;
}

/** Parallel strips of one width at one spacing, whatever they are called: bands, beds, tree rows. */
export interface Lanes {
  /** The strips, all of one length or each with its own. */
  readonly strips:
    | { readonly count: number; readonly length: Length }
    | { readonly lengths: readonly Length[] };
  /** The treated width of one side. */
  readonly width: Length;
  /** How many sides of each strip are treated, where that is counted. */
  readonly sides?: 1 | 2;
  /** The distance from the middle of one strip to the middle of the next. */
  readonly spacing?: Length;
  /** What the caller calls these, for the paths of errors. */
  readonly names: {
    readonly count: string;
    readonly length: string;
    readonly lengths: string;
    readonly width: string;
    readonly spacing: string;
  };
}

interface CheckedLanes {
  readonly unit: "ft" | "m";
  readonly area: "ft2" | "m2";
  /** The length of all strips together. */
  readonly length: number;
  readonly width: number;
  readonly spacing?: number;
}

/** Which strips a caller gave: `rows` and `rowLength`, or `rowLengths`; with the count of the list checked against `rows`. */
export function givenStrips(
  count: number | undefined,
  length: Length | undefined,
  lengths: readonly Length[] | undefined,
  names: Lanes["names"],
): Lanes["strips"] {
  if (lengths === undefined) {
    // Nothing given for one of the two is found by the guards that follow.
    return { count: count as number, length: length as Length };
  }
  if (length !== undefined) {
    throw new SprayMathError(
      "conflict",
      names.lengths,
      `Given both ${names.length} and ${names.lengths}; wanted one length for all, or a list with each, not both.`,
    );
  }
  checkedList(lengths, names.lengths);
  if (count !== undefined && checkedCount(count, names.count) !== lengths.length) {
    throw new SprayMathError(
      "conflict",
      names.count,
      `Given ${count} with ${lengths.length} lengths; wanted one length for each.`,
    );
  }
  return { lengths };
}

/** The areas of parallel strips: treated = length of all × width × sides, ground = length of all × spacing. */
export function lanesArea(lanes: Lanes): TreatedRows {
  const { area, length, width, spacing } = checkedLanes(lanes);
  const treated = madeTreated(length * width, area);
  if (spacing === undefined) return { treated };
  return { treated, ground: madeGround(length * spacing, area), fraction: positiveNumber(width / spacing) };
}

function checkedLanes({ strips, width, sides = 1, spacing, names }: Lanes): CheckedLanes {
  const first = "lengths" in strips ? strips.lengths[0] : strips.length;
  const { length: unit, area } = unitsWith(
    first as Length,
    "lengths" in strips ? `${names.lengths}[0]` : names.length,
  );
  const length =
    "lengths" in strips
      ? sum(strips.lengths.map((one, i) => ({ value: inUnit(one, unit, `${names.lengths}[${i}]`), unit })))
          .value
      : checkedCount(strips.count, names.count) * inUnit(strips.length, unit, names.length);
  const treated = positiveNumber(sides * inUnit(width, unit, names.width));
  if (spacing === undefined) return { unit, area, length, width: treated };
  const apart = inUnit(spacing, unit, names.spacing);
  if (moreThan(treated, apart)) {
    throw new SprayMathError(
      "conflict",
      names.width,
      `Given ${sides === 2 ? "two sides of " : ""}${width.value} ${width.unit} at a spacing of ${spacing.value} ${spacing.unit}: they overlap, ` +
        "and what lies in two of them gets a double dose. Check the two widths; where all of the ground is sprayed, it is a broadcast spray.",
    );
  }
  // Treated never exceeds ground, not even by the rounding of two units of length.
  return { unit, area, length, width: Math.min(treated, apart), spacing: apart };
}

/** The working of parallel strips: the ground and the treated part first, the treated area last. */
export function lanesWorking(id: string, lanes: Lanes): WorkingLine[] {
  const { strips, width, sides, spacing, names } = lanes;
  const { treated, ground, fraction } = lanesArea(lanes);
  const { unit } = checkedLanes(lanes);
  const lengthTerms: Record<string, GivenTerm> =
    "lengths" in strips
      ? Object.fromEntries(strips.lengths.map((one, i) => [`x${i + 1}`, [one, unit] as const]))
      : { [names.count]: strips.count, [names.length]: [strips.length, unit] };
  const lengthFormula =
    "lengths" in strips ? `(${Object.keys(lengthTerms).join(" + ")})` : Object.keys(lengthTerms).join(" * ");
  const sideTerms: Record<string, GivenTerm> = sides === undefined ? {} : { sides };
  const widthTerms: Record<string, GivenTerm> = { ...sideTerms, [names.width]: [width, unit] };
  const widthFormula = Object.keys(widthTerms).join(" * ");
  const source = "plane geometry";
  const lines: WorkingLine[] = [];
  if (spacing !== undefined && ground !== undefined && fraction !== undefined) {
    const apart: Record<string, GivenTerm> = { [names.spacing]: [spacing, unit] };
    lines.push(
      ...formulaLines({
        id: `${id}.ground`,
        formula: `${lengthFormula} * ${names.spacing}`,
        terms: { ...lengthTerms, ...apart },
        result: ground,
        source,
      }),
      ...formulaLines({
        id: `${id}.fraction`,
        formula: `${widthFormula} / ${names.spacing}`,
        terms: { ...widthTerms, ...apart },
        result: fraction,
        source,
      }),
    );
  }
  return [
    ...lines,
    ...formulaLines({
      id: `${id}.treated`,
      formula: `${lengthFormula} * ${widthFormula}`,
      terms: { ...lengthTerms, ...widthTerms },
      result: treated,
      source,
    }),
  ];
}
