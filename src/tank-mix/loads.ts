import type { Figures } from "../errors.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, compareDecided, decided, floorDecided, moreThan } from "../units/decide.js";
import {
  choice,
  count,
  type EitherField,
  either,
  hasField,
  type ListField,
  list,
  type NumberField,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { sumOf } from "../units/quantity.js";
import { type QuantityField, quantity } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, Volume, VolumeUnit } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import {
  type Counted,
  fullMark,
  fullMarkLines,
  linesOfFills,
  type MarkedLoad,
  type MarkedSplit,
  markedLines,
  markedLoads,
  type PieceCount,
  piecesIn,
  sumOfMarks,
} from "./marked-loads.js";
import { rescaled, scaled, shareOf, unscaled } from "./scaled.js";
import { marksFit, TANK_MARKS, type TankMarks, usableMarks } from "./tank-marks.js";

/** Past so many loads a unit or a tank is wrong, not the plot large. */
export const MOST_LOADS = 1000;

/** Whole rows, or plots of one size, to a load, so that none ends in the middle of a tank. */
export interface WholePieces {
  /** How many rows or plots there are. A whole number, 1 or more. */
  readonly pieces: number;
  /** What fills hose and boom. It goes in with the first load; room is kept for it in every load. None unless given. */
  readonly lines?: Volume | undefined;
  /** The extra mix. It goes in with the last load, so that the others end where their rows do; room is kept for it in every load. None unless given. */
  readonly reserve?: Volume | undefined;
  /** The most of them that go into one load. As many as fit unless given. A whole number, 1 or more. */
  readonly perLoad?: number | undefined;
}

/** The fill of each load, as a person chose them. */
export interface FillList {
  /** What each load is filled to, in the order of mixing. Together they are what the job takes, or more. */
  readonly fills: readonly Volume[];
}

/** The fills of a job's loads. */
export const FILLS: ListField<Volume> = /* @__PURE__ */ list(
  "What each load is filled to, in the order of mixing. Together they are what the job takes, or more.",
  quantity("What a load is filled to. More than 0.", "volume"),
  { most: MOST_LOADS },
);

/** How a job's mix is split: full tanks and the rest, equal loads, whole rows or plots to a load, or fills as chosen. */
export type LoadSplit = "full-then-part" | "equal" | WholePieces | FillList;

/** How many rows or plots a mix is split by. */
export const PIECES: NumberField = count("How many rows or plots there are. A whole number, 1 or more.");

/** The most of them that go into one load. */
export const PER_LOAD: NumberField = count(
  "The most of them that go into one load. As many as fit unless given. A whole number, 1 or more.",
);

/** Whether loads are split by a list of fills. */
export function isFillList(split: unknown): split is FillList {
  return typeof split === "object" && split !== null && "fills" in split;
}

/** Which way to split is meant, of three: by name, by rows or plots, by a list of fills. */
export function splitGiven(input: unknown): number {
  if (hasField(input, ["fills"])) return 2;
  return typeof input === "object" && !Array.isArray(input) ? 1 : 0;
}

const SPLIT: EitherField<LoadSplit> = either<LoadSplit>(
  "How the mix is split: full tanks and the rest, equal loads, whole rows or plots to a load, or fills as chosen.",
  [
    choice("Full tanks and the rest, or equal loads.", ["full-then-part", "equal"]),
    object<WholePieces>({
      pieces: PIECES,
      lines: optional(
        quantity(
          "What fills hose and boom. It goes in with the first load; room is kept for it in every load. None unless given.",
          "volume",
          "nonnegative",
        ),
      ),
      reserve: optional(
        quantity(
          "The extra mix. It goes in with the last load, so that the others end where their rows do; room is kept for it in every load. None unless given.",
          "volume",
          "nonnegative",
        ),
      ),
      perLoad: optional(PER_LOAD),
    }),
    object<FillList>({ fills: FILLS }),
  ],
  splitGiven,
);

/** What the tank holds. */
export const TANK: QuantityField<Volume> = quantity("What the tank holds. More than 0.", "volume");

/** How far the tank is filled. */
export const WORKING_FILL: QuantityField<Volume> = quantity(
  "How far it is filled, not over what it holds. The tank's capacity unless given.",
  "volume",
);

/** The smallest load that the pump can spray out. */
export const LEAST_LOAD: QuantityField<Volume> = quantity(
  "The smallest load that the pump can spray out. No limit unless given.",
  "volume",
  "nonnegative",
);

/** The input of {@link splitLoads}. */
export interface LoadsInput {
  /** What is mixed in all. More than 0. */
  readonly total: Volume;
  /** What the tank holds. More than 0. */
  readonly tank: Volume;
  /** How far it is filled, not over what it holds. The tank's capacity unless given. */
  readonly workingFill?: Volume | undefined;
  /** The tank's marks: how far apart they are, or each of them. Every load then ends on a mark. */
  readonly marks?: TankMarks | undefined;
  /** How the mix is split: full tanks and the rest, equal loads, whole rows or plots to a load, or fills as chosen. */
  readonly split: LoadSplit;
  /** The smallest load that the pump can spray out. No limit unless given. */
  readonly leastLoad?: Volume | undefined;
}

const LOADS: ObjectField<LoadsInput> = object<LoadsInput>(
  {
    total: quantity("What is mixed in all. More than 0.", "volume"),
    tank: TANK,
    workingFill: optional(WORKING_FILL),
    marks: optional(TANK_MARKS),
    split: SPLIT,
    leastLoad: optional(LEAST_LOAD),
  },
  [
    fillFits,
    marksFit,
    extraFits,
    ({ split, ...tank }, check) => {
      if (isFillList(split)) fillsFit(split.fills, "split.fills", tank, check);
    },
  ],
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
  if (total === undefined || typeof split !== "object" || isFillList(split)) return;
  const { lines, reserve } = split;
  const given = [lines, reserve].filter((volume) => volume !== undefined);
  if (given.length > 0 && !isOver(total, sumOf(given)))
    check.fault(
      "conflict",
      "extra-over-total",
      reserve === undefined ? "split.lines" : "split.reserve",
      "The hose and the extra mix take {given}, and the total mix is only {total}. Check the volumes.",
      { given: sumOf(given), total },
    );
}

/** Notes fills that the tank can't be filled to; `at` is their place. */
export function fillsFit(
  fills: readonly Volume[],
  at: string,
  { tank, workingFill = tank, leastLoad, marks }: Partly<Omit<LoadsInput, "total" | "split">>,
  check: Check,
): void {
  if (tank === undefined || workingFill === undefined || check.issues.length > 0) return;
  const usable = marks && usableMarks({ tank, workingFill, leastLoad, marks }, tank.unit);
  for (const [i, given] of fills.entries()) {
    const fault = (key: string, template: string, figures: Figures): undefined =>
      check.fault("conflict", key, `${at}[${i}]`, template, { given, ...figures });
    const value = inUnit(given, tank.unit);
    if (isOver(given, workingFill))
      fault("fill-over-most", "A load can't be filled to {given}: {fill} is the most.", {
        fill: workingFill,
      });
    else if (leastLoad !== undefined && isOver(leastLoad, given))
      fault("fill-under-least", "A load of {given} is too small: {least} is the smallest.", {
        least: leastLoad,
      });
    else if (usable?.every((mark) => compareDecided(mark.value, value) !== 0))
      fault("fill-off-mark", "The tank has no mark at {given}. Choose a fill that has one.", {});
  }
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
  /** The mark that the tank is filled to, as the tank has it: where its marks, or the fills, are given. */
  readonly mark?: Volume | undefined;
}

/** One tank load. */
export const LOAD: ObjectField<Load> = object<Load>({
  carrier: quantity("The finished mix in the tank: fill to this mark. More than 0.", "volume"),
  pieces: optional(
    count("How many rows or plots it is for, where the mix is split by them. A whole number, 1 or more."),
  ),
  mark: optional(
    quantity(
      "The mark that the tank is filled to, as the tank has it: where its marks, or the fills, are given.",
      "volume",
    ),
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
  /** What the total went up by, for loads that end on marks. Left out where it didn't. */
  readonly toMark?: Volume | undefined;
}

/** Where the caller has what can be at fault: the total, the least load, the number of rows or plots, and the fills. */
export interface LoadPlaces {
  readonly total: string;
  readonly leastLoad: string;
  readonly pieces: string;
  readonly fills: string;
}

const PLACES: LoadPlaces = {
  total: "total",
  leastLoad: "leastLoad",
  pieces: "split.pieces",
  fills: "split.fills",
};

/** The loads with the steps on the way to them. */
interface LoadSteps {
  readonly total: Quantity<VolumeUnit>;
  readonly fill: Quantity<VolumeUnit>;
  /** How many times the fill is needed, where the mix is split by the tank. */
  readonly fills: number;
  /** Where it is split by rows or plots. */
  readonly by?: PieceCount | undefined;
  /** Where loads end on marks. */
  readonly marked?: MarkedSplit | undefined;
  readonly result: Loads;
}

// The digits that the chain before it leaves sure.
const NOISE = 14;

function stepsOf(input: LoadsInput, at: LoadPlaces): LoadSteps {
  const { split } = input;
  const unit = unitsLike(input.total.unit).volume;
  const total = { value: inUnit(input.total, unit), unit };
  const marks = input.marks && usableMarks({ ...input, marks: input.marks }, unit);
  const fill = {
    value: marks === undefined ? inUnit(input.workingFill ?? input.tank, unit) : fullMark(marks).value,
    unit,
  };
  const fills = total.value / fill.value;
  if (isFillList(split)) {
    const chosen = split.fills.map((mark): MarkedLoad => {
      const value = inUnit(mark, unit);
      return { need: value, mark: { mark, value } };
    });
    const result = loadsOnMarks(chosen, total);
    if (moreThan(total.value, result.total.value)) throw tooLittle(result.total, total, at);
    return { total, fill, fills, result };
  }
  const by = typeof split === "object" ? pieceCount(split, total, fill, at) : undefined;
  const count = countLoads(by === undefined ? fills : by.pieces / by.perLoad, total, fill, at);
  if (marks !== undefined) {
    const least = input.leastLoad === undefined ? 0 : inUnit(input.leastLoad, unit);
    const marked = {
      way: by ?? (split as Exclude<Counted, PieceCount>),
      total: total.value,
      count,
      least,
      marks,
    };
    const result = loadsOnMarks(markedLoads(marked), total);
    return { total, fill, fills, by, marked, result };
  }
  return { total, fill, fills, by, result: plainLoads(input, { total, fill, by, count }, at) };
}

/** The loads of a mix, none of which is moved to a mark. */
function plainLoads(
  { split, leastLoad }: LoadsInput,
  { total, fill, by, count }: Pick<LoadSteps, "total" | "fill" | "by"> & { readonly count: number },
  at: LoadPlaces,
): Loads {
  const { unit } = total;
  const { units, exponent } = scaled(total.value, 12);
  const inUnits = (value: number, round: "floor" | "ceil"): number =>
    value === 0 ? 0 : rescaled(scaled(value, NOISE), exponent, round);
  const least = leastLoad === undefined ? 0 : inUnits(inUnit(leastLoad, unit), "ceil");
  let shares: Share[];
  if (by !== undefined) {
    const [lines, reserve] = [inUnits(by.lines, "floor"), inUnits(by.reserve, "floor")];
    shares = sharesOfPieces(units, count, { pieces: by.pieces, lines, reserve });
  } else if (split === "equal") shares = cumulative(count, (load) => shareOf(units, load, count));
  else shares = fullThenPart(units, count, inUnits(fill.value, "floor"), least);
  const toVolume = (share: number): Volume => ({ value: unscaled(share, exponent), unit });
  const smallest = shares.reduce((min, { carrier }) => Math.min(min, carrier), Number.POSITIVE_INFINITY);
  // One unit is what sharing out may round off.
  if (smallest + 1 < least) throw tooSmall(toVolume(smallest), split === "equal" || count === 1, at);
  return {
    loads: shares.map(({ carrier, pieces }) =>
      pieces === undefined ? { carrier: toVolume(carrier) } : { carrier: toVolume(carrier), pieces },
    ),
    count,
    total: toVolume(units),
  };
}

/** Loads that end on marks, and what the mix went up by for it. */
function loadsOnMarks(marked: readonly MarkedLoad[], total: Quantity<VolumeUnit>): Loads {
  const sum = sumOfMarks(
    marked.map(({ mark }) => mark),
    total.unit,
  );
  const whole = marked.reduce((volume, { mark }) => volume + mark.value, 0);
  return {
    loads: marked.map(({ pieces, mark: { mark } }, i) => ({
      carrier: sum.carriers[i] as Volume,
      ...(pieces !== undefined && { pieces }),
      mark,
    })),
    count: marked.length,
    total: sum.total,
    ...(moreThan(whole, total.value) && { toMark: { value: whole - total.value, unit: total.unit } }),
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
  if (loads === 1) return [{ carrier: rest }];
  const lent = Math.max(0, least - rest);
  const shares: Share[] = [];
  for (let load = 0; load < loads - 2; load++) shares.push({ carrier: full });
  shares.push({ carrier: full - lent }, { carrier: rest + lent });
  return shares;
}

function pieceCount(
  { pieces, perLoad: chosen = pieces, ...besides }: WholePieces,
  total: Quantity,
  fill: Quantity,
  at: LoadPlaces,
): PieceCount {
  const { unit } = total;
  const inTotals = (volume: Volume | undefined): number => (volume === undefined ? 0 : inUnit(volume, unit));
  const [lines, reserve] = [inTotals(besides.lines), inTotals(besides.reserve)];
  const extra = lines + reserve;
  const each = (total.value - extra) / pieces;
  const most = (fill.value - extra) / each;
  const perLoad = floorDecided(Math.min(most, pieces, chosen));
  if (perLoad >= 1) return { pieces, lines, reserve, each, most, perLoad };
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

function sharesOfPieces(
  units: number,
  loads: number,
  { pieces, lines, reserve }: Pick<PieceCount, "pieces" | "lines" | "reserve">,
): Share[] {
  const before = (load: number): number => load * Math.floor(pieces / loads) + Math.min(load, pieces % loads);
  const sprayed = units - lines - reserve;
  const upTo = (load: number): number =>
    load === loads ? units : lines + shareOf(sprayed, before(load), pieces);
  return cumulative(loads, upTo).map(({ carrier }, load) => ({
    carrier,
    pieces: piecesIn(load, loads, pieces),
  }));
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

function tooLittle(sum: Volume, total: Volume, at: LoadPlaces): Error {
  return refusal(
    "conflict",
    "fills-too-little",
    at.fills,
    "These loads come to {sum}, and the job takes {total}. Add a load, or fill them higher.",
    { sum, total },
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
 * whole pieces: pieces to a load = floor((fill − extra) / ((total − extra) / pieces)), where extra = lines + reserve, and the pieces are spread over the
 * loads as evenly as they go. A part load under the least is filled up from the load before it. Source: common practice,
 * no source.
 *
 * @param input - volumes more than 0 (`leastLoad`, `lines` and `reserve` 0 or more); at most 1000 loads
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
  const steps = stepsOf(given, PLACES);
  const { total, marked, result } = steps;
  const { marks, split } = given;
  const fills = result.loads.flatMap(({ mark }) => mark ?? []);
  const toMarks = fills.length === 0 ? [] : linesOfFills(fills, total);
  if (isFillList(split))
    return [...conversionLines("tank-mix.toMark.total", given.total, total.unit), ...toMarks];
  return [
    ...(marks === undefined ? [] : fullMarkLines(given.workingFill ?? given.tank, marks)),
    ...countLines(given, steps),
    ...(marks === undefined || marked === undefined ? [] : markedLines(marked, marks, total.unit)),
    ...toMarks,
  ];
}

/** How many loads there are. */
function countLines(given: LoadsInput, { total, fill, fills, by, marked, result }: LoadSteps): WorkingLine[] {
  const { unit } = total;
  const source = "common practice, no source";
  // Where there are marks, the highest is another amount than the fill, and has another name.
  const [fullest, filled] =
    marked === undefined
      ? (["fill", given.workingFill ?? given.tank] as const)
      : (["full", fullMark(marked.marks).mark] as const);
  if (by === undefined)
    return [
      ...formulaLines({
        id: "tank-mix.fills",
        formula: `total / ${fullest}`,
        terms: { total: [given.total, unit], [fullest]: [filled, unit] },
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
  const lines = { value: by.lines, unit };
  const reserve = { value: by.reserve, unit };
  const piece = { value: each, unit };
  const split = given.split as WholePieces;
  const { perLoad: chosen } = split;
  return [
    ...conversionLines(`tank-mix.most.${fullest}`, filled, unit),
    ...formulaLines({
      id: "tank-mix.piece",
      formula: "(total - lines - reserve) / pieces",
      terms: {
        total: [given.total, unit],
        lines: [split.lines ?? lines, unit],
        reserve: [split.reserve ?? reserve, unit],
        pieces,
      },
      result: piece,
      source,
    }),
    {
      id: "tank-mix.most",
      formula: `(${fullest} - lines - reserve) / piece`,
      terms: { [fullest]: fill, lines, reserve, piece },
      result: most,
      source,
    },
    {
      id: "tank-mix.perLoad",
      formula: chosen === undefined ? "floor(min(most, pieces))" : "floor(min(most, pieces, chosen))",
      terms: { most: decided(most).toNumber(), pieces, ...(chosen !== undefined && { chosen }) },
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
