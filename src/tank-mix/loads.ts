import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, decided, floorDecided, moreThan } from "../units/decide.js";
import {
  choice,
  count,
  type EitherField,
  either,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { type QuantityField, quantity } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, Volume } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import { rescaled, scaled, shareOf, unscaled } from "./scaled.js";

/** Past so many loads a unit or a tank is wrong, not the plot large. */
export const MOST_LOADS = 1000;

/** Whole rows, or plots of one size, to a load, so that none ends in the middle of a tank. */
export interface WholePieces {
  /** How many rows or plots there are. A whole number, 1 or more. */
  readonly pieces: number;
  /** What is mixed besides the pieces' own: line volume and reserve. It goes in with the first load and stays in the machine; room is kept for it in every load. None unless given. */
  readonly extra?: Volume | undefined;
}

/** How a job's mix is split: full tanks and the rest, equal loads, or whole rows or plots to a load. */
export type LoadSplit = "full-then-part" | "equal" | WholePieces;

const SPLIT: EitherField<LoadSplit> = either<LoadSplit>(
  "How the mix is split: full tanks and the rest, equal loads, or whole rows or plots to a load.",
  [
    choice("Full tanks and the rest, or equal loads.", ["full-then-part", "equal"]),
    object<WholePieces>({
      pieces: count("How many rows or plots there are. A whole number, 1 or more."),
      extra: optional(
        quantity(
          "What is mixed besides the pieces' own: line volume and reserve. It goes in with the first load and stays in the machine; room is kept for it in every load. None unless given.",
          "volume",
          "nonnegative",
        ),
      ),
    }),
  ],
  (input) => (typeof input === "object" && !Array.isArray(input) ? 1 : 0),
);

/** What the tank holds. */
export const TANK: QuantityField<Volume> = quantity("What the tank holds. More than 0.", "volume");

/** How far the tank is filled. */
export const WORKING_FILL: QuantityField<Volume> = quantity(
  "How far it is filled, not over what it holds. The tank's capacity unless given.",
  "volume",
);

/** The smallest load that the pump draws to the end. */
export const LEAST_LOAD: QuantityField<Volume> = quantity(
  "The smallest load that the pump draws to the end. Any unless given.",
  "volume",
  "nonnegative",
);

/** What {@link splitLoads} is given. */
export interface LoadsInput {
  /** What is mixed in all. More than 0. */
  readonly total: Volume;
  /** What the tank holds. More than 0. */
  readonly tank: Volume;
  /** How far it is filled, not over what it holds. The tank's capacity unless given. */
  readonly workingFill?: Volume | undefined;
  /** How the mix is split: full tanks and the rest, equal loads, or whole rows or plots to a load. */
  readonly split: LoadSplit;
  /** The smallest load that the pump draws to the end. Any unless given. */
  readonly leastLoad?: Volume | undefined;
}

const LOADS: ObjectField<LoadsInput> = object<LoadsInput>(
  {
    total: quantity("What is mixed in all. More than 0.", "volume"),
    tank: TANK,
    workingFill: optional(WORKING_FILL),
    split: SPLIT,
    leastLoad: optional(LEAST_LOAD),
  },
  [fillFits, extraFits],
);

/** Notes a fill that is more than the tank holds, and a least load that is more than a fill. */
export function fillFits(
  { tank, workingFill, leastLoad }: Partly<Pick<LoadsInput, "tank" | "workingFill" | "leastLoad">>,
  check: Check,
): void {
  if (tank !== undefined && workingFill !== undefined && isOver(workingFill, tank))
    check.fault(
      "conflict",
      "fill-over-tank",
      "workingFill",
      "You can't fill a {tank} tank to {fill}. Enter what the tank holds or less.",
      { tank, fill: workingFill },
    );
  const fill = workingFill ?? tank;
  if (fill !== undefined && leastLoad !== undefined && isOver(leastLoad, fill))
    check.fault(
      "conflict",
      "least-over-fill",
      "leastLoad",
      "The smallest load can't be more than a full one of {fill}.",
      { given: leastLoad, fill },
    );
}

function extraFits({ total, split }: Partly<LoadsInput>, check: Check): void {
  if (total === undefined || typeof split !== "object" || split.extra === undefined) return;
  if (!isOver(total, split.extra))
    check.fault(
      "conflict",
      "extra-over-total",
      "split.extra",
      "Must be less than the total mix of {total}.",
      { given: split.extra, total },
    );
}

function isOver(a: Volume, b: Volume): boolean {
  return moreThan(inUnit(a, b.unit), b.value);
}

/** One tank load. */
export interface Load {
  /** The finished mix in the tank: fill to this mark. More than 0. */
  readonly carrier: Volume;
  /** How many rows or plots it is for, where the mix is split by them. A whole number, 1 or more. */
  readonly pieces?: number | undefined;
}

/** One tank load. */
export const LOAD: ObjectField<Load> = object<Load>({
  carrier: quantity("The finished mix in the tank: fill to this mark. More than 0.", "volume"),
  pieces: optional(
    count("How many rows or plots it is for, where the mix is split by them. A whole number, 1 or more."),
  ),
});

/** The loads of a job. */
export interface Loads {
  /** One entry a load, in the order of mixing. The carriers add up to the total exactly, as the decimals they print as. */
  readonly loads: readonly Load[];
  /** How many there are. */
  readonly count: number;
  /** What is mixed in all, to 12 significant digits. */
  readonly total: Volume;
}

/** Where the caller has what can be at fault: the total, the least load, and the number of rows or plots. */
export interface LoadPlaces {
  readonly total: string;
  readonly leastLoad: string;
  readonly pieces: string;
}

const PLACES: LoadPlaces = { total: "total", leastLoad: "leastLoad", pieces: "split.pieces" };

/** How a mix is counted into whole rows or plots. */
interface PieceCount {
  readonly pieces: number;
  readonly extra: number;
  /** The mix for one of them. */
  readonly each: number;
  /** How many of them a fill is enough for. */
  readonly most: number;
  readonly perLoad: number;
}

/** The loads with the steps on the way to them. */
interface LoadSteps {
  readonly total: Quantity;
  readonly fill: Quantity;
  /** How many times the fill is needed, where the mix is split by the tank. */
  readonly fills: number;
  /** Where it is split by rows or plots. */
  readonly by?: PieceCount | undefined;
  readonly result: Loads;
}

// The digits that the chain before it leaves sure.
const NOISE = 14;

function stepsOf(input: LoadsInput, at: LoadPlaces): LoadSteps {
  const { split } = input;
  const unit = unitsLike(input.total.unit).volume;
  const total = { value: inUnit(input.total, unit), unit };
  const fill = { value: inUnit(input.workingFill ?? input.tank, unit), unit };
  const fills = total.value / fill.value;
  const by = typeof split === "object" ? pieceCount(split, total, fill, at) : undefined;
  const loads = countLoads(by === undefined ? fills : by.pieces / by.perLoad, total, fill, at);
  const { units, exponent } = scaled(total.value, 12);
  const inUnits = (value: number, round: "floor" | "ceil"): number =>
    value === 0 ? 0 : rescaled(scaled(value, NOISE), exponent, round);
  const least = input.leastLoad === undefined ? 0 : inUnits(inUnit(input.leastLoad, unit), "ceil");
  let shares: Share[];
  if (by !== undefined) shares = sharesOfPieces(units, loads, by.pieces, inUnits(by.extra, "floor"));
  else if (split === "equal") shares = cumulative(loads, (load) => shareOf(units, load, loads));
  else shares = fullThenPart(units, loads, inUnits(fill.value, "floor"), least);
  const toVolume = (share: number): Volume => ({ value: unscaled(share, exponent), unit });
  const smallest = shares.reduce((min, { carrier }) => Math.min(min, carrier), Number.POSITIVE_INFINITY);
  // One unit is what sharing out may round off.
  if (smallest + 1 < least) throw tooSmall(toVolume(smallest), split === "equal" || loads === 1, at);
  return {
    total,
    fill,
    fills,
    ...(by && { by }),
    result: {
      loads: shares.map(({ carrier, pieces }) =>
        pieces === undefined ? { carrier: toVolume(carrier) } : { carrier: toVolume(carrier), pieces },
      ),
      count: loads,
      total: toVolume(units),
    },
  };
}

/** A load in whole units of the total's last digit. */
interface Share {
  readonly carrier: number;
  readonly pieces?: number | undefined;
}

function fullThenPart(units: number, loads: number, fill: number, least: number): Share[] {
  // Where the count was decided past noise, a full load is a hair over the fill rather than a load too many.
  const full = Math.max(fill, Math.ceil(units / loads));
  const rest = units - full * (loads - 1);
  const lent = loads > 1 ? Math.max(0, least - rest) : 0;
  return Array.from({ length: loads }, (_, load) => {
    if (load === loads - 1) return { carrier: rest + lent };
    return { carrier: load === loads - 2 ? full - lent : full };
  });
}

function pieceCount(
  { pieces, extra: held }: WholePieces,
  total: Quantity,
  fill: Quantity,
  at: LoadPlaces,
): PieceCount {
  const { unit } = total;
  const extra = held === undefined ? 0 : inUnit(held, unit);
  const each = (total.value - extra) / pieces;
  const most = (fill.value - extra) / each;
  const perLoad = floorDecided(Math.min(most, pieces));
  if (perLoad >= 1) return { pieces, extra, each, most, perLoad };
  throw refusal(
    "conflict",
    extra > 0 ? "piece-and-extra-over-fill" : "piece-over-fill",
    at.pieces,
    extra > 0
      ? "One row or plot takes {each}, plus {extra} for hose and extra mix: more than one {fill} load. Split the mix into equal loads."
      : "One row or plot takes {each}, more than a load of {fill}. Split the mix into equal loads.",
    { pieces, each: { value: each, unit }, extra: { value: extra, unit }, fill },
  );
}

function sharesOfPieces(units: number, loads: number, pieces: number, held: number): Share[] {
  const base = Math.floor(pieces / loads);
  const before = (load: number): number => load * base + Math.min(load, pieces % loads);
  return cumulative(loads, (load) => held + shareOf(units - held, before(load), pieces)).map(
    ({ carrier }, load) => ({ carrier, pieces: before(load + 1) - before(load) }),
  );
}

// Rounding what has gone in by the end of each load, and not each load, keeps the sum exact.
function cumulative(loads: number, upTo: (load: number) => number): Share[] {
  let gone = 0;
  return Array.from({ length: loads }, (_, load) => {
    const next = upTo(load + 1);
    const carrier = next - gone;
    gone = next;
    return { carrier };
  });
}

function countLoads(fills: number, total: Quantity, fill: Quantity, at: LoadPlaces): number {
  const loads = ceilDecided(fills);
  if (loads <= MOST_LOADS) return loads;
  throw refusal(
    "out-of-range",
    "loads-too-many",
    at.total,
    "A mix of {total} in loads of {fill} makes {loads} loads, more than {limit}. Check the units of the rate, the area and the tank.",
    { total, fill, loads, limit: MOST_LOADS },
  );
}

function tooSmall(smallest: Volume, isAlone: boolean, at: LoadPlaces): Error {
  return refusal(
    "conflict",
    isAlone ? "load-too-small" : "part-load-too-small",
    at.leastLoad,
    isAlone
      ? "The smallest load would be {smallest}, too little for the pump to pick up. Mix more, or use a smaller sprayer."
      : "The smallest load would be {smallest}, too little for the pump to pick up. Split the mix into equal loads, or mix more.",
    { smallest },
  );
}

/** The loads of a job's mix; `at` says where the caller has what can be at fault. Trusts its input. */
export function loadsOf(input: LoadsInput, at: LoadPlaces = PLACES): Loads {
  return stepsOf(input, at).result;
}

/**
 * Splits a job's mix into tank loads.
 *
 * Formula: count = ceil(total / fill), decided on 12 significant digits so that a tank a hair short adds no load. With
 * whole pieces: pieces to a load = floor((fill − extra) / ((total − extra) / pieces)), and the pieces are spread over the
 * loads as evenly as they go. A part load under the least is filled up from the load before it. Source: common practice,
 * no source.
 *
 * @param input - volumes more than 0 (`leastLoad` and `extra` 0 or more); at most 1000 loads
 * @returns the loads in gal, `imp_gal` or L, by the total's system, as decimals that add up exactly
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice`,
 * `wrong-dimension`, `out-of-range` (zero or negative volumes, more than 1000 loads), or `conflict` (a fill over the tank, a piece over the
 * fill, a load that the pump could not draw)
 *
 * @example
 * ```ts
 * import { splitLoads } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { loads } = splitLoads({ total: qty(10, "gal"), tank: qty(4, "gal"), split: "full-then-part" });
 * console.log(loads.map((load) => load.carrier.value)); // [ 4, 4, 2 ]
 * ```
 */
export function splitLoads(input: LoadsInput): Loads {
  return loadsOf(checked(input, LOADS));
}

/**
 * The working of {@link splitLoads}: how many loads there are.
 *
 * @param input - as for {@link splitLoads}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link splitLoads} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { splitLoads } from "swath-to-spoon/working";
 *
 * const lines = splitLoads({ total: qty(10, "gal"), tank: qty(4, "gal"), split: "equal" });
 * console.log(lines.map((line) => line.formula)); // [ 'total / fill', 'ceil(fills)' ]
 * ```
 */
export function splitLoadsWorking(input: LoadsInput): WorkingLine[] {
  return linesOfLoads(checked(input, LOADS));
}

/** The working of {@link loadsOf}. Trusts its input. */
export function linesOfLoads(given: LoadsInput): WorkingLine[] {
  const { total, fill, fills, by, result } = stepsOf(given, PLACES);
  const { unit } = total;
  const source = "common practice, no source";
  const filled = given.workingFill ?? given.tank;
  if (by === undefined)
    return [
      ...formulaLines({
        id: "tank-mix.fills",
        formula: "total / fill",
        terms: { total: [given.total, unit], fill: [filled, unit] },
        result: fills,
        source,
      }),
      {
        id: "tank-mix.loads",
        formula: "ceil(fills)",
        terms: { fills: decided(fills).toNumber() },
        result: result.count,
        source,
      },
    ];
  const { pieces, each, most, perLoad } = by;
  const extra = { value: by.extra, unit };
  const piece = { value: each, unit };
  const held = (given.split as WholePieces).extra ?? extra;
  return [
    ...conversionLines("tank-mix.most.fill", filled, unit),
    ...formulaLines({
      id: "tank-mix.piece",
      formula: "(total - extra) / pieces",
      terms: { total: [given.total, unit], extra: [held, unit], pieces },
      result: piece,
      source,
    }),
    {
      id: "tank-mix.most",
      formula: "(fill - extra) / piece",
      terms: { fill, extra, piece },
      result: most,
      source,
    },
    {
      id: "tank-mix.perLoad",
      formula: "floor(min(most, pieces))",
      terms: { most: decided(most).toNumber(), pieces },
      result: perLoad,
      source,
    },
    {
      id: "tank-mix.loadsOfPieces",
      formula: "ceil(pieces / perLoad)",
      terms: { pieces, perLoad },
      result: result.count,
      source,
    },
  ];
}
