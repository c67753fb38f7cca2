import { SprayMathError } from "../errors.js";
import { ceilDecided, moreThan } from "../units/decide.js";
import { checkedObject, inUnit, unitsWith } from "../units/guard.js";
import { formulaLines, type GivenTerm } from "../units/lines.js";
import type { Fraction, Length, Speed, Time } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { positive } from "./made.js";
import { overlapIn } from "./overlap.js";

/** A plot to be covered in passes. */
export interface PassesInput {
  /** The one side of the plot. More than 0. */
  readonly length: Length;
  /** The side that meets it. More than 0. */
  readonly width: Length;
  /** The width of one pass. More than 0. */
  readonly swath: Length;
  /** How far each pass is meant to run over the one before it: a length, or a part of the swath. Less than the swath; left out, passes meet edge to edge. */
  readonly overlap?: Length | Fraction;
  /** The speed while spraying. More than 0; needed for the time. */
  readonly speed?: Speed;
}

/** How a plot is covered, one way of laying the passes. */
export interface Passes {
  /** How many passes. */
  readonly passes: number;
  /** How far the last pass runs over the one before it, so that it stays on the plot; 0 where one pass is enough. */
  readonly lastOverlap: Length;
  /** How far a single pass reaches past the edge of a plot that is narrower than it; 0 otherwise. */
  readonly pastEdge: Length;
  /** The way walked or driven while spraying, turns not counted. */
  readonly distance: Length;
  /** The time spent spraying, turns and refills not counted; only where a speed is given. */
  readonly time?: Time;
}

/** Both ways of covering a plot. */
export interface PassesOver {
  /** Passes that run along the plot's `length`. */
  readonly along: Passes;
  /** Passes that run across it, along its `width`. */
  readonly across: Passes;
}

/**
 * The passes over a rectangular plot, laid along its length and laid across it: how many, how much the last one overlaps,
 * how far and how long one walks.
 *
 * Formulas: passes = ⌈(side − overlap) / (swath − overlap)⌉, at least 1, with the side that the passes are laid over; last
 * overlap = overlap + passes × (swath − overlap) + overlap − side; distance = passes × the other side; time = distance / speed
 * (plane geometry). The count is made on 12 significant digits, so that rounding noise never adds a pass.
 *
 * @param input - the plot, the swath, and the overlap and speed where they are known
 * @returns both ways, lengths in ft or m as `length` is told, times in minutes; an overlap is within 8 ulp of the side
 * @throws SprayMathError `out-of-range` for an overlap as wide as the swath or too many passes to count, `missing`,
 * `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { passesOver } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { along, across } = passesOver({
 *   length: qty(200, "ft"),
 *   width: qty(50, "ft"),
 *   swath: qty(4, "ft"),
 *   speed: qty(200, "ft/min"),
 * });
 * console.log(along.passes, along.lastOverlap.value, along.distance.value, along.time?.value); // 13 2 2600 13
 * console.log(across.passes, across.lastOverlap.value, across.distance.value, across.time?.value); // 50 0 2500 12.5
 * ```
 */
export function passesOver(input: PassesInput): PassesOver {
  const { length, width, ...rest } = checkedPlot(input);
  return {
    along: layPasses({ run: length, side: width, ...rest }),
    across: layPasses({ run: width, side: length, ...rest }),
  };
}

/**
 * The working of {@link passesOver}, line by line: the passes along the length, then those across it.
 *
 * @param input - as for {@link passesOver}
 * @returns the lines; for each way the count, the last overlap, the distance and the time
 * @throws SprayMathError as {@link passesOver} does
 *
 * @example
 * ```ts
 * import { passesOverWorking } from "swath-to-spoon/swath";
 * import { qty } from "swath-to-spoon/units";
 *
 * const lines = passesOverWorking({ length: qty(60, "m"), width: qty(15, "m"), swath: qty(2, "m") });
 * console.log(lines.map((line) => line.result)); // [ 8, { value: 1, unit: 'm' }, { value: 480, unit: 'm' }, 30, { value: 0, unit: 'm' }, { value: 450, unit: 'm' } ]
 * ```
 */
export function passesOverWorking(input: PassesInput): WorkingLine[] {
  const both = passesOver(input);
  return [
    ...wayWorking(input, both.along, input.length, input.width),
    ...wayWorking(input, both.across, input.width, input.length),
  ];
}

function wayWorking(input: PassesInput, found: Passes, run: Length, side: Length): WorkingLine[] {
  const { length: unit, swath, overlap, perMinute } = checkedUnits(input);
  const terms: Record<string, GivenTerm> = {
    side: [side, unit],
    swath: [input.swath, unit],
    overlap: [{ value: overlap, unit }, unit],
  };
  const { passes, lastOverlap, pastEdge, distance, time } = found;
  const source = "plane geometry";
  const lines = formulaLines({
    id: "swath.passes.count",
    formula: "max(1, ceil((side - overlap) / (swath - overlap)))",
    terms,
    result: passes,
    source,
  });
  // Only the lines of the count carry the changes of unit; the sizes are the same in what follows.
  const told = (symbols: Record<string, GivenTerm>, line: Omit<WorkingLine, "terms">): WorkingLine =>
    formulaLines({ ...line, terms: symbols }).at(-1) as WorkingLine;
  lines.push(
    passes === 1
      ? told(
          { side: [side, unit], swath: [{ value: swath, unit }, unit] },
          { id: "swath.passes.pastEdge", formula: "max(0, swath - side)", result: pastEdge, source },
        )
      : told(
          { ...terms, passes },
          {
            id: "swath.passes.lastOverlap",
            formula: "overlap + max(0, passes * (swath - overlap) + overlap - side)",
            result: lastOverlap,
            source,
          },
        ),
    ...formulaLines({
      id: "swath.passes.distance",
      formula: "passes * run",
      terms: { passes, run: [run, unit] },
      result: distance,
      source,
    }),
  );
  if (time !== undefined) {
    lines.push(
      ...formulaLines({
        id: "swath.passes.time",
        formula: "distance / speed",
        terms: { distance: [distance, unit], speed: [input.speed as Speed, perMinute] },
        result: time,
        source: "definition of speed",
      }),
    );
  }
  return lines;
}

interface CheckedPlot {
  readonly length: number;
  readonly width: number;
  readonly swath: number;
  readonly overlap: number;
  readonly speed?: number;
  readonly unit: "ft" | "m";
}

function checkedUnits(input: PassesInput): {
  length: "ft" | "m";
  perMinute: "ft/min" | "m/min";
  swath: number;
  overlap: number;
} {
  const { length: side, swath: given, overlap: shared } = checkedObject(input, "");
  const { length } = unitsWith(side, "length");
  const swath = inUnit(given, length, "swath");
  const overlap = shared === undefined ? 0 : overlapIn(shared, swath, length, "overlap");
  return { length, perMinute: `${length}/min`, swath, overlap };
}

function checkedPlot(input: PassesInput): CheckedPlot {
  const { length: unit, perMinute, swath, overlap } = checkedUnits(input);
  const { length, width, speed } = input;
  return {
    unit,
    length: inUnit(length, unit, "length"),
    width: inUnit(width, unit, "width"),
    swath,
    overlap,
    ...(speed !== undefined && { speed: inUnit(speed, perMinute, "speed") }),
  };
}

interface Way {
  /** The side that the passes run along. */
  readonly run: number;
  /** The side that they are laid over. */
  readonly side: number;
  readonly swath: number;
  readonly overlap: number;
  readonly speed?: number;
  readonly unit: "ft" | "m";
}

function layPasses({ run, side, swath, overlap, speed, unit }: Way): Passes {
  const added = swath - overlap;
  const needed = (side - overlap) / added;
  // Stryker disable next-line EqualityOperator: no side is that many passes wide to the last of them
  if (!(needed <= Number.MAX_SAFE_INTEGER)) {
    throw new SprayMathError(
      "out-of-range",
      "swath",
      `Given a swath of ${swath} ${unit} on a side of ${side} ${unit}; that is too many passes to count.`,
    );
  }
  const passes = moreThan(side, swath) ? ceilDecided(needed) : 1;
  const covered = positive(passes * added + overlap, unit).value;
  // Compared as decisions are, so that the noise of a product is not told as an overlap.
  const spare = moreThan(covered, side) ? covered - side : 0;
  const distance = positive(passes * run, unit);
  return {
    passes,
    lastOverlap: { value: passes === 1 ? 0 : overlap + spare, unit },
    pastEdge: { value: passes === 1 ? spare : 0, unit },
    distance,
    ...(speed !== undefined && { time: positive(distance.value / speed, "min") }),
  };
}
