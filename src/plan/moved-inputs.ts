import { joinPath } from "../errors.js";
import { NUTRIENTS } from "../tank-mix/nutrients.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import type { Quantity } from "../units/types.js";
import { PLOT, type Plot, plotsOf } from "./plot.js";
import { areasOfPlot, type JobArea, type PlotAreas } from "./plot-areas.js";

/** A measured input or a count of a job. */
export interface JobNumber {
  /** The input's place, such as `calibration.used`. */
  readonly path: string;
  /** Its value. */
  readonly value: Quantity | number;
  /** What is changed: the value by one percent, or a count by one more. */
  readonly change: "one-percent" | "one-more";
}

/** A number of a job, and by what percentage it moves each amount, below 0 for less. */
export interface MovedInput extends JobNumber {
  readonly moves: readonly number[];
}

/** The way to a number in a tree of data. */
export type Keys = readonly (string | number)[];

/** Counts, which move by whole steps. Other whole numbers, such as the sides of a row, are choices and no measurements. */
const COUNTS = new Set(["rows", "beds", "count", "plants", "nozzlesPerRow"]);
/** Bare numbers that are measured, chosen from a scale, or printed on a bag. */
const NUMBERS: ReadonlySet<string> = /* @__PURE__ */ new Set<string>([
  "percent",
  "fraction",
  "angleDegrees",
  "parts",
  "to",
  ...NUTRIENTS,
]);
const STEP = 1e-4;
/** Of longer lists in a plot or a calibration no entry moves much, and each takes a look at all. */
const MOST_ALIKE = 50;

/**
 * How the amounts of a job move with each number in some of its parts, the strongest first.
 *
 * @param parts - the parts of the job that are looked at
 * @param start - the amounts as they are
 * @param amountsWith - the amounts with another number in one place
 */
export function movedInputs(
  parts: object,
  start: readonly number[],
  amountsWith: (keys: Keys, value: number) => readonly number[],
): MovedInput[] {
  const strongest = ({ moves }: MovedInput): number => Math.max(...moves.map(Math.abs));
  return leaves(parts, "", [])
    .flatMap(({ path, keys, value, count }): MovedInput[] => {
      const at = (changed: number): readonly number[] | undefined =>
        possible(() => amountsWith(keys, changed));
      const number = typeof value === "number" ? value : value.value;
      const moves = count
        ? at(number + 1)?.map((after, i) => after / (start[i] as number) - 1)
        : derivative(at, number, start);
      if (moves === undefined) return [];
      return [{ path, value, change: count ? "one-more" : "one-percent", moves: moves.map(percent) }];
    })
    .filter((one) => strongest(one) > 0)
    .sort((a, b) => strongest(b) - strongest(a));
}

// A job next to a limit, such as bands as wide as their spacing, is refused on the other side of it.
function possible<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

/** The areas of a job with another number in one plot. */
export function areaWithNumber(
  plot: Plot | readonly Plot[],
  area: JobArea,
  keys: Keys,
  value: number,
): JobArea {
  const [i, rest] = Array.isArray(plot) ? [keys[0] as number, keys.slice(1)] : [0, keys];
  const before = area.plots[i] as PlotAreas;
  const after = areasOfPlot(checked(withNumber(plotsOf(plot)[i], rest, value), PLOT), "plot");
  // The difference alone is added: a job of a thousand plots isn't summed up again for each number.
  const together = <Q extends Quantity>(all: Q, one: Quantity, other: Quantity): Q => {
    return { ...all, value: all.value + inUnit(other, all.unit) - inUnit(one, all.unit) };
  };
  const { treated, ground, rowLength, plots } = area;
  return {
    treated: together(treated, before.treated, after.treated),
    // What all plots have together, each of them has.
    ...(ground && { ground: together(ground, before.ground as Quantity, after.ground as Quantity) }),
    ...(rowLength && {
      rowLength: together(rowLength, before.rowLength as Quantity, after.rowLength as Quantity),
    }),
    plots,
  };
}

// From both sides, or from the one that is possible.
function derivative(
  at: (changed: number) => readonly number[] | undefined,
  number: number,
  start: readonly number[],
): number[] {
  const [up, down] = [at(number * (1 + STEP)), at(number * (1 - STEP))];
  const width = Math.log((up === undefined ? 1 : 1 + STEP) / (down === undefined ? 1 : 1 - STEP));
  const [after, before] = [up ?? start, down ?? start];
  return start.map((_, i) => Math.log((after[i] as number) / (before[i] as number)) / width / 100);
}

// The difference of two floats leaves noise near the 8th digit.
function percent(share: number): number {
  return Number((100 * share).toFixed(6)) + 0;
}

interface Leaf {
  readonly path: string;
  readonly keys: Keys;
  readonly value: Quantity | number;
  readonly count: boolean;
}

function leaves(node: unknown, path: string, keys: Keys): Leaf[] {
  if (typeof node !== "object" || node === null) return [];
  if (isQuantity(node)) {
    const { value, unit } = node;
    const count = dimensionOf(unit) === "count";
    return value === 0 ? [] : [{ path, keys: [...keys, "value"], value: { value, unit }, count }];
  }
  if (Array.isArray(node)) {
    // The plots themselves are a list too, and each of them is checked and worked out alone.
    if (node.length > MOST_ALIKE && path !== "plot") return [];
    return node.flatMap((one, i) => leaves(one, `${path}[${i}]`, [...keys, i]));
  }
  return Object.entries(node).flatMap(([key, value]): Leaf[] => {
    const place = joinPath(path, key);
    if (typeof value !== "number") return leaves(value, place, [...keys, key]);
    const count = COUNTS.has(key);
    if (!count && !NUMBERS.has(key)) return [];
    // All of the ground cannot become more.
    return value === 0 || (key === "fraction" && value === 1)
      ? []
      : [{ path: place, keys: [...keys, key], value, count }];
  });
}

// Nothing else in a checked job has a value.
function isQuantity(node: object): node is Quantity {
  return "value" in node;
}

/** A tree of data with another number in one place. */
export function withNumber(node: unknown, [key, ...rest]: Keys, value: number): unknown {
  if (key === undefined) return value;
  if (Array.isArray(node)) return node.map((one, i) => (i === key ? withNumber(one, rest, value) : one));
  const object = node as Readonly<Record<string, unknown>>;
  return { ...object, [key]: withNumber(object[key], rest, value) };
}
