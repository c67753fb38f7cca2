import { SprayMathError } from "../errors.js";
import { ceilDecided, decided, floorDecided, moreThan } from "../units/decide.js";
import { checkedChoice, checkedCount, checkedObject, inUnit } from "../units/guard.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import { rescaled, scaled, shareOf, unscaled } from "./scaled.js";

// Past so many loads a unit or a tank is wrong, not the plot large.
const MOST_LOADS = 10_000;

/** Whole rows, or plots of one size, to a load, so that none ends in the middle of a tank. */
export interface WholePieces {
  /** How many rows or plots there are; a whole number, 1 or more. */
  readonly pieces: number;
  /**
   * What is mixed besides the pieces' own: line volume and reserve. It goes in with the first load and stays in the
   * machine; room is kept for it in every load. None unless given.
   */
  readonly extra?: Volume;
}

/** How a job's mix is parted: full tanks and the rest, equal loads, or whole rows or plots to a load. */
export type LoadSplit = "full-then-part" | "equal" | WholePieces;

/** What {@link splitLoads} is given. */
export interface LoadsInput {
  /** What is mixed in all. */
  readonly total: Volume;
  /** What the tank holds. */
  readonly tank: Volume;
  /** How far it is filled, not over what it holds. The tank's capacity unless given. */
  readonly workingFill?: Volume;
  /** How the mix is parted. */
  readonly split: LoadSplit;
  /** The smallest load that the pump draws to the end. */
  readonly leastLoad?: Volume;
}

/** One tank load. */
export interface Load {
  /** The finished mix in the tank: fill to this mark. */
  readonly carrier: Volume;
  /** How many rows or plots it is for, where the mix is parted by them. */
  readonly pieces?: number;
}

/** The loads of a job. */
export interface Loads {
  /** One entry a load, in the order of mixing. The carriers add up to `total` exactly, as the decimals they print as. */
  readonly loads: readonly Load[];
  /** How many there are. */
  readonly count: number;
  /** What is mixed in all, to 12 significant digits. */
  readonly total: Volume;
}

interface Terms {
  readonly unit: "gal" | "imp_gal" | "L";
  readonly total: number;
  readonly fill: number;
  readonly least: number;
  readonly extra: number;
  readonly pieces?: number;
}

function termsOf(input: LoadsInput): Terms {
  const { total, tank, workingFill, split, leastLoad } = checkedObject(input, "");
  inUnit(total, "gal", "total");
  const unit = unitsLike(total.unit).volume;
  const capacity = inUnit(tank, unit, "tank");
  const fill = workingFill === undefined ? capacity : inUnit(workingFill, unit, "workingFill");
  if (moreThan(fill, capacity)) {
    throw new SprayMathError(
      "conflict",
      "workingFill",
      `Given ${told(workingFill)} in a tank of ${told(tank)}; wanted no more than the tank holds.`,
    );
  }
  const least = leastLoad === undefined ? 0 : inUnit(leastLoad, unit, "leastLoad", "nonnegative");
  if (moreThan(least, fill)) {
    throw new SprayMathError(
      "conflict",
      "leastLoad",
      `Given ${told(leastLoad)}; wanted no more than one load, ${fill} ${unit}.`,
    );
  }
  const terms = { unit, total: inUnit(total, unit, "total"), fill, least, extra: 0 };
  if (typeof split !== "object" || split === null) {
    checkedChoice(split, ["full-then-part", "equal"], "split");
    return terms;
  }
  return { ...terms, ...pieceTerms(split, unit, terms.total) };
}

function pieceTerms(
  split: WholePieces,
  unit: VolumeUnit,
  total: number,
): { readonly pieces: number; readonly extra: number } {
  checkedObject(split, "split");
  const pieces = checkedCount(split.pieces, "split.pieces");
  const extra = split.extra === undefined ? 0 : inUnit(split.extra, unit, "split.extra", "nonnegative");
  if (!moreThan(total, extra)) {
    throw new SprayMathError(
      "conflict",
      "split.extra",
      `Given ${told(split.extra)} out of ${total} ${unit}; wanted less than the whole mix.`,
    );
  }
  return { pieces, extra };
}

// What is more than something else was given.
function told(quantity: Quantity | undefined): string {
  const { value, unit } = quantity as Quantity;
  return `${value} ${unit}`;
}

/**
 * Parts a job's mix into tank loads.
 *
 * Formula: count = ceil(total / fill), decided on 12 significant digits so that a tank a hair short adds no load. With
 * whole pieces: pieces to a load = floor((fill − extra) / ((total − extra) / pieces)), and the pieces are spread over the
 * loads as evenly as they go. A part load under the least is filled up from the load before it. Source: common practice,
 * no source.
 *
 * @param input - volumes more than 0 (`leastLoad` and `extra` 0 or more); at most 10,000 loads
 * @returns the loads in gal, imp_gal or L, by the total's system, as decimals that add up exactly
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `unknown-choice`,
 * `out-of-range` (zero or negative volumes, more than 10,000 loads), or `conflict` (a fill over the tank, a piece over the
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
  const terms = termsOf(input);
  const { units, exponent } = scaled(terms.total, 12);
  const toVolume = (parts: number): Volume => ({ value: unscaled(parts, exponent), unit: terms.unit });
  const parted =
    terms.pieces === undefined
      ? partedByTank(input, terms, units, exponent)
      : partedByPieces(terms, terms.pieces, units, exponent);
  refuseShortLoads(input, terms, parted, exponent);
  const loads = parted.map(({ carrier, pieces }) => ({
    carrier: toVolume(carrier),
    ...(pieces !== undefined && { pieces }),
  }));
  return { loads, count: loads.length, total: toVolume(units) };
}

// The digits that the chain before it leaves sure.
const NOISE = 14;

/** The least load in whole units of the total's last digit. */
function leastUnits({ least }: Terms, exponent: number): number {
  return least === 0 ? 0 : rescaled(scaled(least, NOISE), exponent, "ceil");
}

interface Part {
  readonly carrier: number;
  readonly pieces?: number;
}

function partedByTank(input: LoadsInput, terms: Terms, units: number, exponent: number): Part[] {
  const count = checkedLoads(terms.total / terms.fill, terms);
  if (input.split === "equal") return cumulative(units, count, (load) => shareOf(units, load, count));
  // Where the count was decided past noise, a full load is a hair over the fill rather than a load too many.
  const fill = count === 1 ? units : rescaled(scaled(terms.fill, NOISE), exponent, "floor");
  const full = Math.max(fill, Math.ceil(units / count));
  const rest = units - full * (count - 1);
  const lent = count > 1 ? Math.max(0, leastUnits(terms, exponent) - rest) : 0;
  return Array.from({ length: count }, (_, load) => {
    if (load === count - 1) return { carrier: rest + lent };
    return { carrier: load === count - 2 ? full - lent : full };
  });
}

function partedByPieces(terms: Terms, pieces: number, units: number, exponent: number): Part[] {
  const { total, fill, extra, unit } = terms;
  const each = (total - extra) / pieces;
  const room = fill - extra;
  const perLoad = room > 0 ? floorDecided(Math.min(room / each, pieces)) : 0;
  if (perLoad < 1) {
    throw new SprayMathError(
      "conflict",
      "split.pieces",
      `Given ${pieces} rows or plots of ${each} ${unit} each; wanted one of them at least to fit into a load of ${fill} ` +
        `${unit}${extra > 0 ? ` beside ${extra} ${unit} for lines and reserve` : ""}. Part the mix into equal loads instead.`,
    );
  }
  const count = checkedLoads(pieces / perLoad, terms);
  const base = Math.floor(pieces / count);
  const before = (load: number): number => load * base + Math.min(load, pieces % count);
  const held = extra === 0 ? 0 : rescaled(scaled(extra, NOISE), exponent, "floor");
  return cumulative(units, count, (load) => held + shareOf(units - held, before(load), pieces)).map(
    ({ carrier }, load) => ({ carrier, pieces: before(load + 1) - before(load) }),
  );
}

// Rounding what has gone in by the end of each load, and not each load, keeps the sum exact.
function cumulative(units: number, count: number, upTo: (load: number) => number): Part[] {
  let gone = 0;
  return Array.from({ length: count }, (_, load) => {
    const next = load === count - 1 ? units : upTo(load + 1);
    const carrier = next - gone;
    gone = next;
    return { carrier };
  });
}

function checkedLoads(fills: number, { total, fill, unit }: Terms): number {
  const count = fills < MOST_LOADS + 1 ? ceilDecided(fills) : Math.ceil(fills);
  if (count > MOST_LOADS) {
    throw new SprayMathError(
      "out-of-range",
      "total",
      `Given ${total} ${unit} in loads of ${fill} ${unit}, which makes ${count} loads; wanted ${MOST_LOADS} or fewer. ` +
        "Check the units of the rate, the area and the tank.",
    );
  }
  return count;
}

function refuseShortLoads(input: LoadsInput, terms: Terms, parts: readonly Part[], exponent: number): void {
  const units = parts.reduce((least, { carrier }) => Math.min(least, carrier), Number.POSITIVE_INFINITY);
  // One unit is what sharing out may round off.
  if (units + 1 >= leastUnits(terms, exponent)) return;
  const smallest = unscaled(units, exponent);
  throw new SprayMathError(
    "conflict",
    "leastLoad",
    `Given ${told(input.leastLoad)}, and the smallest load is ${smallest} ${terms.unit}; wanted loads that the pump can draw. ` +
      (input.split === "equal" || parts.length === 1
        ? "Mix more (a larger reserve), or use a smaller sprayer."
        : "Part the mix into equal loads, or mix more (a larger reserve)."),
  );
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
  const terms = termsOf(input);
  const { count } = splitLoads(input);
  const { unit, pieces } = terms;
  const total: Quantity = { value: terms.total, unit };
  const fill: Quantity = { value: terms.fill, unit };
  const extra: Quantity = { value: terms.extra, unit };
  const source = "common practice, no source";
  const [totalOf, fillOf] = pieces === undefined ? ["fills", "fills"] : ["piece", "most"];
  const before = [
    ...conversionLines(`tank-mix.${totalOf}.total`, input.total, unit),
    ...conversionLines(`tank-mix.${fillOf}.fill`, input.workingFill ?? input.tank, unit),
  ];
  if (pieces === undefined) {
    const fills = terms.total / terms.fill;
    return [
      ...before,
      { id: "tank-mix.fills", formula: "total / fill", terms: { total, fill }, result: fills, source },
      {
        id: "tank-mix.loads",
        formula: "ceil(fills)",
        terms: { fills: decided(fills).toNumber() },
        result: count,
        source,
      },
    ];
  }
  const each = (terms.total - terms.extra) / pieces;
  const piece: Quantity = { value: each, unit };
  const most = (terms.fill - terms.extra) / each;
  const perLoad = floorDecided(Math.min(most, pieces));
  const given = (input.split as WholePieces).extra;
  return [
    ...before,
    ...(given === undefined ? [] : conversionLines("tank-mix.piece.extra", given, unit)),
    {
      id: "tank-mix.piece",
      formula: "(total - extra) / pieces",
      terms: { total, extra, pieces },
      result: piece,
      source,
    },
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
      result: count,
      source,
    },
  ];
}
