import { inUnit } from "../units/convert.js";
import { decided, moreThan } from "../units/decide.js";
import { formulaLines } from "../units/formula-lines.js";
import type { Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import { scaled, unscaled } from "./scaled.js";
import { markFor, type TankMarks, type UsableMark } from "./tank-marks.js";

/** How a mix is counted into whole rows or plots. */
export interface PieceCount {
  readonly pieces: number;
  /** What fills hose and boom, in the first load. */
  readonly lines: number;
  /** The extra mix, in the last load. */
  readonly reserve: number;
  /** The mix for one of them. */
  readonly each: number;
  /** How many of them a fill is enough for. */
  readonly most: number;
  readonly perLoad: number;
}

/** How many rows or plots go into a load, where they are spread over the loads as evenly as they go. */
export function piecesIn(load: number, loads: number, pieces: number): number {
  return Math.floor(pieces / loads) + (load < pieces % loads ? 1 : 0);
}

/** A load that ends on a mark. */
export interface MarkedLoad {
  /** What it has to hold: the mark is the lowest that holds so much. */
  readonly need: number;
  readonly mark: UsableMark;
  readonly pieces?: number | undefined;
}

/** How loads are counted: whole rows or plots, equal loads, or full ones and a rest. */
export type Counted = "equal" | "full-then-part" | PieceCount;

/** A mix to be split into loads that end on marks. */
export interface MarkedSplit {
  readonly way: Counted;
  readonly total: number;
  /** How many loads there are. */
  readonly count: number;
  /** The smallest load, 0 where any will do. */
  readonly least: number;
  /** The marks that a load may end on, the lowest first. */
  readonly marks: readonly UsableMark[];
}

/** The loads of a mix as they end on marks, none of which holds less than its share. */
export function markedLoads({ way, total, count, least, marks }: MarkedSplit): MarkedLoad[] {
  const holding = (share: number, pieces?: number): MarkedLoad => {
    const need = Math.max(share, least);
    return { need, mark: markFor(need, marks), ...(pieces !== undefined && { pieces }) };
  };
  if (way === "equal") return new Array<MarkedLoad>(count).fill(holding(total / count));
  if (way !== "full-then-part")
    return Array.from({ length: count }, (_, load) => {
      const pieces = piecesIn(load, count, way.pieces);
      const { lines, reserve } = besides(way, load, count);
      return holding(pieces * way.each + lines + reserve, pieces);
    });
  const full = fullMark(marks);
  const rest = restOf(total, full, count);
  const last = holding(rest);
  if (count === 1) return [last];
  const filled = holding(full.value);
  // A rest under the smallest load takes from the load before it what it lacks.
  const before = rest < least ? holding(full.value + rest - last.mark.value) : filled;
  return [...new Array<MarkedLoad>(count - 2).fill(filled), before, last];
}

/** The mark of a full load. */
export function fullMark(marks: readonly UsableMark[]): UsableMark {
  return marks[marks.length - 1] as UsableMark;
}

function restOf(total: number, full: UsableMark, count: number): number {
  return total - full.value * (count - 1);
}

/** What a load holds besides the mix for its rows or plots. */
function besides(
  { lines, reserve }: PieceCount,
  load: number,
  count: number,
): Pick<PieceCount, "lines" | "reserve"> {
  return { lines: load === 0 ? lines : 0, reserve: load === count - 1 ? reserve : 0 };
}

// A mark in another unit is rounded to these digits of the total: hundreds of loads alike are then off by next to nothing.
const DIGITS = 14;

/** Loads on marks in whole units of a power of ten, so that they add up exactly. */
export interface MarkedSum {
  readonly carriers: readonly Volume[];
  readonly total: Volume;
}

/** What loads on marks come to. */
export function sumOfMarks(marks: readonly UsableMark[], unit: VolumeUnit): MarkedSum {
  const { exponent } = scaled(
    marks.reduce((sum, { value }) => sum + value, 0),
    DIGITS,
  );
  const inVolume = (units: number): Volume => ({ value: unscaled(units, exponent), unit });
  const shares = marks.map(({ value }) => {
    const own = scaled(value, DIGITS);
    // No load is more than all of them: its own last digit is never the coarser one.
    return Math.round(own.units / 10 ** (exponent - own.exponent));
  });
  return { carriers: shares.map(inVolume), total: inVolume(shares.reduce((sum, share) => sum + share, 0)) };
}

const SOURCE = "common practice, no source";

function isStep(marks: TankMarks): marks is Volume {
  return !Array.isArray(marks);
}

/** The mark of a full load, where marks are a step apart: the last one up to the fill. */
export function fullMarkLines(filled: Volume, marks: TankMarks): WorkingLine[] {
  if (!isStep(marks)) return [];
  const times = inUnit(filled, marks.unit) / marks.value;
  const whole = decided(times).toNumber();
  return [
    ...formulaLines({
      id: "tank-mix.fullMarkSteps",
      formula: "fill / step",
      terms: { fill: [filled, marks.unit], step: [marks, marks.unit] },
      result: times,
      source: SOURCE,
    }),
    {
      id: "tank-mix.fullMark",
      formula: "floor(times) * step",
      terms: { times: whole, step: marks },
      result: { value: Math.floor(whole) * marks.value, unit: marks.unit },
      source: SOURCE,
    },
  ];
}

/** The working of {@link markedLoads}: what each load has to hold, and the mark that it ends on. */
export function markedLines(split: MarkedSplit, marks: TankMarks, unit: VolumeUnit): WorkingLine[] {
  const loads = markedLoads(split);
  const full = fullMark(split.marks).value;
  const needs = isStep(marks) ? [...new Set(loads.map(({ need }) => need))] : [];
  return [
    ...shareLines(split, loads, unit),
    ...needs.filter((need) => need !== full).flatMap((value) => markLines({ value, unit }, marks as Volume)),
  ];
}

/** What each of the loads has to hold. */
function shareLines(
  { way, total, count, least, marks }: MarkedSplit,
  loads: readonly MarkedLoad[],
  unit: VolumeUnit,
): WorkingLine[] {
  const volume = (value: number): Volume => ({ value, unit });
  const line = (id: string, formula: string, terms: WorkingLine["terms"], value: number): WorkingLine => ({
    id,
    formula,
    terms,
    result: volume(value),
    source: SOURCE,
  });
  if (typeof way === "object") {
    const written = loads.map(({ pieces = 0 }, load) => {
      const { lines, reserve } = besides(way, load, count);
      return line(
        "tank-mix.loadOfPieces",
        `pieces * piece${lines > 0 ? " + lines" : ""}${reserve > 0 ? " + reserve" : ""}`,
        {
          pieces,
          piece: volume(way.each),
          ...(lines > 0 && { lines: volume(lines) }),
          ...(reserve > 0 && { reserve: volume(reserve) }),
        },
        pieces * way.each + lines + reserve,
      );
    });
    // Loads that hold the same have one line.
    return [...new Map(written.map((one) => [JSON.stringify(one), one])).values()];
  }
  if (count === 1) return [];
  if (way === "equal")
    return [
      line("tank-mix.equalLoad", "total / loads", { total: volume(total), loads: count }, total / count),
    ];
  const full = fullMark(marks);
  const rest = restOf(total, full, count);
  const terms = { total: volume(total), full: volume(full.value), loads: count };
  const lines = [line("tank-mix.rest", "total - full * (loads - 1)", terms, rest)];
  if (rest >= least) return lines;
  const { mark } = loads[count - 1] as MarkedLoad;
  const lent = { full: terms.full, rest: volume(rest), last: volume(mark.value) };
  return [...lines, line("tank-mix.lent", "full + rest - last", lent, full.value + rest - mark.value)];
}

/** The mark that holds a load. */
function markLines(load: Volume, step: Volume): WorkingLine[] {
  const times = inUnit(load, step.unit) / step.value;
  const whole = decided(times).toNumber();
  return [
    ...formulaLines({
      id: "tank-mix.markSteps",
      formula: "load / step",
      terms: { load: [load, step.unit], step: [step, step.unit] },
      result: times,
      source: SOURCE,
    }),
    {
      id: "tank-mix.mark",
      formula: "ceil(times) * step",
      terms: { times: whole, step },
      result: { value: Math.ceil(whole) * step.value, unit: step.unit },
      source: SOURCE,
    },
  ];
}

/** What fills come to, and what the mix goes up by to reach that, before the loads are rounded to decimals. */
export function linesOfFills(fills: readonly Volume[], total: Volume): WorkingLine[] {
  const { unit } = total;
  const counts = new Map<number, { readonly fill: Volume; count: number }>();
  for (const fill of fills) {
    const value = inUnit(fill, unit);
    const known = counts.get(value);
    if (known === undefined) counts.set(value, { fill, count: 1 });
    else known.count++;
  }
  const alike = [...counts.values()];
  const sum = {
    value: alike.reduce((whole, { fill, count }) => whole + count * inUnit(fill, unit), 0),
    unit,
  };
  const lines: WorkingLine[] = [
    ...alike.flatMap(({ fill }, i) => conversionLines(`tank-mix.markedTotal.x${i + 1}`, fill, unit)),
    {
      id: "tank-mix.markedTotal",
      formula: alike.map((_, i) => `n${i + 1} * x${i + 1}`).join(" + "),
      terms: Object.fromEntries(
        alike.flatMap(({ fill, count }, i) => [
          [`n${i + 1}`, count],
          [`x${i + 1}`, { value: inUnit(fill, unit), unit }],
        ]),
      ),
      result: sum,
      source: SOURCE,
    },
  ];
  if (!moreThan(sum.value, total.value)) return lines;
  return [
    ...lines,
    {
      id: "tank-mix.toMark",
      formula: "marked - total",
      terms: { marked: sum, total },
      result: { value: sum.value - total.value, unit },
      source: SOURCE,
    },
  ];
}
