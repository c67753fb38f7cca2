import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, moreThan } from "../units/decide.js";
import { about, type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { quantity } from "../units/quantity-field.js";
import { positive, positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { Fraction, Length, Speed, Time } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { OVERLAP, overlapFits, overlapIn } from "./overlap.js";

/** A plot to be covered in passes. */
export interface PassesInput {
  /** The one side of the plot. More than 0. */
  readonly length: Length;
  /** The side that meets it. More than 0. */
  readonly width: Length;
  /** The width of one pass. More than 0. */
  readonly swath: Length;
  /** How far each pass is meant to run over the one before it: a length, or a part of the swath. Less than the swath; left out, passes meet edge to edge. */
  readonly overlap?: Length | Fraction | undefined;
  /** The speed while spraying. More than 0; needed for the time. */
  readonly speed?: Speed | undefined;
}

const PASSES: ObjectField<PassesInput> = object<PassesInput>(
  {
    length: quantity("The one side of the plot. More than 0.", "length"),
    width: quantity("The side that meets it. More than 0.", "length"),
    swath: quantity("The width of one pass. More than 0.", "length"),
    overlap: optional(
      about(
        "How far each pass is meant to run over the one before it: a length, or a part of the swath. Less than the swath; left out, passes meet edge to edge.",
        OVERLAP,
      ),
    ),
    speed: optional(quantity("The speed while spraying. More than 0; needed for the time.", "speed")),
  },
  [({ swath, overlap }, check) => overlapFits(swath, overlap, check)],
);

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
  readonly time?: Time | undefined;
}

/** Both ways of covering a plot. */
export interface PassesOver {
  /** Passes that run along the plot's `length`. */
  readonly along: Passes;
  /** Passes that run across it, along its `width`. */
  readonly across: Passes;
}

/**
 * Returns the passes over a rectangular plot, laid along its length and laid across it: how many, how much the last one overlaps,
 * how far and how long one walks.
 *
 * Formulas: passes = ⌈(side − overlap) / (swath − overlap)⌉, at least 1, with the side that the passes are laid over; last
 * overlap = overlap + passes × (swath − overlap) + overlap − side; distance = passes × the other side; time = distance / speed
 * (plane geometry). The count is made on 12 significant digits, so that rounding noise never adds a pass.
 *
 * @param input - the plot, the swath, and the overlap and speed where they are known
 * @returns both ways, lengths in ft or m as `length` is, times in minutes; an overlap is within 8 ulp of the side
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
  return bothWays(checked(input, PASSES));
}

/** The passes along and across a plot. Trusts its input. */
function bothWays(plot: PassesInput): PassesOver {
  const { length, width, ...rest } = sizesOf(plot);
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
 * import { qty } from "swath-to-spoon/units";
 * import { passesOver } from "swath-to-spoon/working";
 *
 * const lines = passesOver({ length: qty(60, "m"), width: qty(15, "m"), swath: qty(2, "m") });
 * console.log(lines.map((line) => line.result)); // [ 8, { value: 1, unit: 'm' }, { value: 480, unit: 'm' }, 30, { value: 0, unit: 'm' }, { value: 450, unit: 'm' } ]
 * ```
 */
export function passesOverWorking(input: PassesInput): WorkingLine[] {
  const plot = checked(input, PASSES);
  const both = bothWays(plot);
  return [
    ...wayWorking(plot, both.along, plot.length, plot.width),
    ...wayWorking(plot, both.across, plot.width, plot.length),
  ];
}

const NEEDED = "ceil((side - overlap) / (swath - overlap))";
const LAST_OVERLAP = "overlap + (passes * (swath - overlap) + overlap - side)";

function wayWorking(input: PassesInput, found: Passes, run: Length, side: Length): WorkingLine[] {
  const { unit, swath, overlap } = sizesOf(input);
  const terms: Record<string, GivenTerm> = {
    side: [side, unit],
    swath: [input.swath, unit],
    overlap: [{ value: overlap, unit }, unit],
  };
  const { passes, lastOverlap, pastEdge, distance, time } = found;
  const source = "plane geometry";
  const lines = formulaLines({
    id: "swath.passes.count",
    formula: passes === 1 ? `max(1, ${NEEDED})` : NEEDED,
    terms,
    result: passes,
    source,
  });
  // Only the lines of the count carry the changes of unit; the sizes are the same in what follows.
  const lineOf = (symbols: Record<string, GivenTerm>, line: Omit<WorkingLine, "terms">): WorkingLine =>
    formulaLines({ ...line, terms: symbols }).at(-1) as WorkingLine;
  lines.push(
    passes === 1
      ? lineOf(
          { side: [side, unit], swath: [{ value: swath, unit }, unit] },
          {
            id: "swath.passes.pastEdge",
            formula: pastEdge.value > 0 ? "swath - side" : "max(0, swath - side)",
            result: pastEdge,
            source,
          },
        )
      : lineOf(
          { ...terms, passes },
          {
            id: "swath.passes.lastOverlap",
            formula: lastOverlap.value > overlap ? LAST_OVERLAP : "overlap",
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
        terms: { distance: [distance, unit], speed: [input.speed as Speed, `${unit}/min`] },
        result: time,
        source: "definition of speed",
      }),
    );
  }
  return lines;
}

/** A plot and its passes in one unit of length. */
interface Sizes {
  readonly length: number;
  readonly width: number;
  readonly swath: number;
  readonly overlap: number;
  readonly speed?: number | undefined;
  readonly unit: "ft" | "m";
}

function sizesOf({ length, width, swath: pass, overlap, speed }: PassesInput): Sizes {
  const unit = unitsLike(length.unit).length;
  const swath = inUnit(pass, unit);
  return {
    unit,
    length: inUnit(length, unit),
    width: inUnit(width, unit),
    swath,
    overlap: overlap === undefined ? 0 : overlapIn(overlap, swath, unit),
    ...(speed !== undefined && { speed: inUnit(speed, `${unit}/min`) }),
  };
}

interface Way {
  /** The side that the passes run along. */
  readonly run: number;
  /** The side that they are laid over. */
  readonly side: number;
  readonly swath: number;
  readonly overlap: number;
  readonly speed?: number | undefined;
  readonly unit: "ft" | "m";
}

function layPasses({ run, side, swath, overlap, speed, unit }: Way): Passes {
  const added = swath - overlap;
  const needed = (side - overlap) / added;
  // Stryker disable next-line EqualityOperator: no side is that many passes wide to the last of them
  if (!(needed <= Number.MAX_SAFE_INTEGER)) {
    throw refusal(
      "out-of-range",
      "passes-uncountable",
      "swath",
      "A swath of {swath} on a side of {side} makes too many passes to count. Check the units.",
      { swath: { value: swath, unit }, side: { value: side, unit } },
    );
  }
  const passes = moreThan(side, swath) ? ceilDecided(needed) : 1;
  const covered = positive(passes * added + overlap);
  // Compared as decisions are: the noise of a product is no overlap.
  const spare = moreThan(covered, side) ? covered - side : 0;
  const distance = positiveIn(passes * run, unit);
  return {
    passes,
    lastOverlap: { value: passes === 1 ? 0 : overlap + spare, unit },
    pastEdge: { value: passes === 1 ? spare : 0, unit },
    distance,
    ...(speed !== undefined && { time: positiveIn(distance.value / speed, "min") }),
  };
}
