import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  byGiven,
  choice,
  type EitherField,
  either,
  type FieldsOf,
  object,
  optional,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { messageOf } from "../units/message.js";
import { measured, quantity, treatedArea } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { finite, positive, positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import { atMost } from "../units/three-figures.js";
import type {
  Fraction,
  Length,
  Mass,
  MassPerLength,
  MassRate,
  Measured,
  Quantity,
  TreatedArea,
  Unit,
} from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** What a spreader was run over, and what it put out there. */
interface Spread {
  /** What was spread: the weight caught, or what left the hopper. More than 0. */
  readonly used: Measured<Mass>;
}

/** A strip of ground. */
interface OnStrip {
  /** The effective width of one pass, or of the band. More than 0. */
  readonly swath: Measured<Length>;
  /** The distance traveled while spreading. More than 0. */
  readonly distance: Measured<Length>;
}

/** An area. */
interface OnArea {
  /** The area that it landed on: a marked plot, a tarp, a catch pan. More than 0. */
  readonly area: Measured<TreatedArea>;
}

/** A row. */
interface OnRow {
  /** The length of row. More than 0. */
  readonly rowLength: Measured<Length>;
}

/** A spreader's test over a strip. */
export interface SpreaderStrip extends Spread, OnStrip {}

/** A spreader's test over an area, or over catch pans. */
export interface SpreaderArea extends Spread, OnArea {}

/** A test of one hopper's outlet along a row. */
export interface SpreaderRow extends Spread, OnRow {}

/** A test of a spreader: over a strip, over an area or along a row. */
export type SpreaderTest = SpreaderStrip | SpreaderArea | SpreaderRow;

/* @__NO_SIDE_EFFECTS__ */
function spread(): FieldsOf<Spread> {
  return {
    used: measured("What was spread: the weight caught, or what left the hopper. More than 0.", "mass"),
  };
}

/** What a test goes over is one of three; `perArea` and `perRow` are the fields beside it. */
/* @__NO_SIDE_EFFECTS__ */
function over<T extends object, A extends object, R extends object>(
  sentence: string,
  perArea: FieldsOf<A>,
  perRow: FieldsOf<R>,
): EitherField<T> {
  const strip = {
    swath: measured("The effective width of one pass, or of the band. More than 0.", "length"),
    distance: measured("The distance traveled while spreading. More than 0.", "length"),
  };
  const area = treatedArea("The area that it landed on: a marked plot, a tarp, a catch pan. More than 0.", {
    measured: true,
    unmarked: true,
  });
  const rowLength = measured("The length of row. More than 0.", "length");
  const options = [
    { ...perArea, ...strip },
    { ...perArea, area },
    { ...perRow, rowLength },
  ].map((fields) => object<T>(fields as unknown as FieldsOf<T>));
  return either<T>(sentence, options, byGiven([["swath", "distance"], ["area"], ["rowLength"]]));
}

/** A test of a spreader. */
export const SPREADER_TEST: EitherField<SpreaderTest> = /* @__PURE__ */ over<SpreaderTest, Spread, Spread>(
  "A test of a spreader: over a strip, over an area or along a row.",
  /* @__PURE__ */ spread(),
  /* @__PURE__ */ spread(),
);

/**
 * Returns what a spreader puts out: the weight of granules or dry fertilizer per area, or per length of row.
 *
 * Formula: rate = used / (swath × distance), used / area, or used / row length.
 * Source: definition of a rate; worked examples in Dry chemical applicator calibration (University of Florida) and
 * Example: Calibrating a Fire Ant Bait Spreader (eXtension, 2007).
 *
 * @param test - the weight, and the strip, the area or the length of row that it was spread on
 * @returns lb/ac or kg/ha, by the system of the weight; along a row oz/1000ft or g/100m
 * @throws SprayMathError `missing` where none of strip, area and row is given, `conflict` where more than one is,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension`, `wrong-area` or `out-of-range`
 *
 * @example
 * ```ts
 * import { spreaderRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(spreaderRate({ used: qty(20, "lb"), swath: qty(10, "ft"), distance: qty(435.6, "ft") })); // { value: 200, unit: 'lb/ac' }
 * console.log(spreaderRate({ used: qty(2, "oz"), rowLength: qty(250, "ft") })); // { value: 8, unit: 'oz/1000ft' }
 * ```
 */
export function spreaderRate(test: SpreaderStrip | SpreaderArea): MassRate;
export function spreaderRate(test: SpreaderRow): MassPerLength;
export function spreaderRate(test: SpreaderTest): MassRate | MassPerLength;
export function spreaderRate(test: SpreaderTest): MassRate | MassPerLength {
  return rateOfSpreader(checked(test, SPREADER_TEST));
}

/**
 * The working of {@link spreaderRate}, line by line.
 *
 * @param test - as for {@link spreaderRate}
 * @returns the lines; the last one's result is the rate
 * @throws SprayMathError as {@link spreaderRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { spreaderRate } from "swath-to-spoon/working";
 *
 * const lines = spreaderRate({ used: qty(2, "oz"), rowLength: qty(250, "ft") });
 * console.log(lines[0]?.formula); // used / rowLength
 * ```
 */
export function spreaderRateWorking(test: SpreaderTest): WorkingLine[] {
  return linesOfSpreader(checked(test, SPREADER_TEST));
}

/** The rate of a spreader's test. Trusts its input. */
export function rateOfSpreader(test: SpreaderTest, at = ""): MassRate | MassPerLength {
  return workedSpreader(test, undefined, at).rate as MassRate | MassPerLength;
}

/** The working of {@link rateOfSpreader}, ending in a unit of its own or in `unit`. Trusts its input. */
export function linesOfSpreader(test: SpreaderTest, unit?: Unit): WorkingLine[] {
  const { on, sizes, quotient, rate } = workedSpreader(test, unit, "");
  return formulaLines(
    {
      id: RATE_OF[on].id,
      formula: RATE_OF[on].formula,
      terms: { used: [test.used, test.used.unit], ...sizes },
      result: quotient,
      source: "definition of a rate per area",
    },
    rate.unit,
  );
}

const RATE_OF = {
  strip: { id: "output-rate.spreader-strip", formula: "used / (swath * distance)" },
  area: { id: "output-rate.spreader-area", formula: "used / area" },
  row: { id: "output-rate.spreader-row", formula: "used / rowLength" },
} as const;

/** What a test goes over, as number and lines read it. */
interface Covered {
  readonly on: "strip" | "area" | "row";
  /** The terms of its size. */
  readonly sizes: Readonly<Record<string, readonly [Quantity, Unit]>>;
  /** The product of the terms, in `per`. */
  readonly size: number;
  readonly per: "ft" | "m" | "ft2" | "m2";
}

function coveredBy(test: OnStrip | OnArea | OnRow): Covered {
  if ("area" in test) {
    const { area: per } = unitsLike(test.area.unit);
    return { on: "area", sizes: { area: [test.area, per] }, size: inUnit(test.area, per), per };
  }
  if ("rowLength" in test) {
    const { length: per } = unitsLike(test.rowLength.unit);
    return {
      on: "row",
      sizes: { rowLength: [test.rowLength, per] },
      size: inUnit(test.rowLength, per),
      per,
    };
  }
  const { length, area } = unitsLike(test.swath.unit);
  const { swath, distance } = test;
  return {
    on: "strip",
    sizes: { swath: [swath, length], distance: [distance, length] },
    size: inUnit(swath, length) * inUnit(distance, length),
    per: area,
  };
}

function workedSpreader(
  test: SpreaderTest,
  unit: Unit | undefined,
  at: string,
): WorkedRate<Quantity> & Pick<Covered, "on" | "sizes"> {
  const { used } = test;
  const { on, sizes, size, per } = coveredBy(test);
  const { mass, massRate } = unitsLike(used.unit);
  const usual = on === "row" ? (mass === "lb" ? "oz/1000ft" : "g/100m") : massRate;
  return {
    on,
    sizes,
    ...workedRate<Unit>(used.value / size, perUnit(used.unit, per), unit ?? usual, at),
  };
}

/** How a spreader is held against a rate of product. */
interface Aim<R extends MassRate | MassPerLength> {
  /** The rate of product that the ground is to get: the label's, of product and not of what it contains. More than 0. */
  readonly target: R;
  /** In how many directions it is spread: 2 where half goes on lengthwise and half crosswise. 1 unless given. */
  readonly directions?: 1 | 2 | undefined;
}

/* @__NO_SIDE_EFFECTS__ */
function aim<R extends MassRate | MassPerLength>(dimension: "massRate" | "massPerLength"): FieldsOf<Aim<R>> {
  return {
    target: quantity(
      "The rate of product that the ground is to get: the label's, of product and not of what it contains. More than 0.",
      dimension,
    ),
    directions: optional(
      choice(
        "In how many directions it is spread: 2 where half goes on lengthwise and half crosswise. 1 unless given.",
        [1, 2],
      ),
    ),
  } as unknown as FieldsOf<Aim<R>>;
}

/** What the ground may get at most, and how far off is too far. */
interface Bounds<R extends MassRate | MassPerLength> {
  /** The label's maximum, where it has one. More than 0. */
  readonly max?: R | undefined;
  /**
   * How far the rate may be off. More than 0; 10% unless given: Band Applicators (Pesticide Environmental Stewardship). Rotary
   * Spreader Calibration Procedures (UMass Extension) allows 5%.
   */
  readonly limit?: Fraction | undefined;
}

/* @__NO_SIDE_EFFECTS__ */
function bounds<R extends MassRate | MassPerLength>(
  dimension: "massRate" | "massPerLength",
): FieldsOf<Bounds<R>> {
  return {
    max: optional(quantity("The label's maximum, where it has one. More than 0.", dimension)),
    limit: optional(
      quantity(
        "How far the rate may be off. More than 0; 10% unless given: Band Applicators (Pesticide Environmental Stewardship). Rotary " +
          "Spreader Calibration Procedures (UMass Extension) allows 5%.",
        "fraction",
      ),
    ),
  } as unknown as FieldsOf<Bounds<R>>;
}

/** A spreader's test over a strip or an area, and the rate that it is held against. */
export type SpreaderAreaCheck = (SpreaderStrip | SpreaderArea) & Aim<MassRate> & Bounds<MassRate>;

/** A spreader's test along a row, and the rate that it is held against. */
export type SpreaderRowCheck = SpreaderRow & Aim<MassPerLength> & Bounds<MassPerLength>;

/** A spreader's test, and the rate that it is held against. */
export type SpreaderCheckInput = SpreaderAreaCheck | SpreaderRowCheck;

/* @__NO_SIDE_EFFECTS__ */
function toCheck<R extends MassRate | MassPerLength>(
  dimension: "massRate" | "massPerLength",
): FieldsOf<Spread & Aim<R> & Bounds<R>> {
  return { ...spread(), ...aim<R>(dimension), ...bounds<R>(dimension) } as unknown as FieldsOf<
    Spread & Aim<R> & Bounds<R>
  >;
}

const CHECK: EitherField<SpreaderCheckInput> = /* @__PURE__ */ over<
  SpreaderCheckInput,
  Spread & Aim<MassRate> & Bounds<MassRate>,
  Spread & Aim<MassPerLength> & Bounds<MassPerLength>
>(
  "A spreader's test, and the rate that it is held against.",
  /* @__PURE__ */ toCheck<MassRate>("massRate"),
  /* @__PURE__ */ toCheck<MassPerLength>("massPerLength"),
);

/** What to do about a spreader that is off. */
export interface SpreaderFinding {
  /** Which way it is off. */
  readonly code: "spreader-heavy" | "spreader-light";
  /** Which sentence of its code: one key for each. */
  readonly key: string;
  /** `refusal`: over the label's maximum. `warning`: adjust and catch again. */
  readonly severity: "warning" | "refusal";
  /** The argument that it is about. */
  readonly path: string;
  /** What was found, and what to do. */
  readonly message: string;
  /** The figures behind it. */
  readonly figures: Readonly<Record<string, Quantity | number>>;
}

/** How a spreader compares with the rate that is aimed at. */
export interface SpreaderCheck {
  /** What it puts out in one pass over the ground, in the unit of the target. */
  readonly rate: Quantity<MassRate["unit"] | MassPerLength["unit"]>;
  /** What it is to put out in one pass: the target, or half of it where it is spread in two directions. */
  readonly perPass: Quantity<MassRate["unit"] | MassPerLength["unit"]>;
  /** What the same test is to put out: that rate on it, and never more than the label's maximum. In the unit of `used`. */
  readonly toCatch: Mass;
  /** How far the rate is from `perPass`, in percent of it; below 0 where it is lower. */
  readonly deviation: Fraction;
  /** The limit that was used. */
  readonly limit: Fraction;
  /** Whether the deviation is within the limit. */
  readonly within: boolean;
  /** What to do, where it is not within the limit or over the label's maximum. */
  readonly finding?: SpreaderFinding | undefined;
}

/**
 * Returns whether a spreader puts out the rate on the label, what percentage it is off, and what to do about it.
 *
 * A rate many times off is most often a slip, and the finding says which: pounds for ounces, or a nutrient's rate taken for the
 * product's. The spreader is judged by one pass, and the label's maximum by all passes together. `toCatch` is the weight to aim for in
 * the same test.
 *
 * Formula: deviation = 100 × (rate − per pass) / per pass, with per pass = target / directions; to catch as {@link spreaderCatch}.
 * Source: definition of a relative deviation; half the rate in each of two directions: Rotary Spreader Calibration Procedures
 * (UMass Extension).
 *
 * @param input - the test, the target, and the directions, maximum and limit where they matter
 * @returns the rate, the deviation in percent, the verdict and what to do
 * @throws SprayMathError `missing`, `conflict`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`,
 * `unknown-choice`, `wrong-dimension`, `wrong-area` or `out-of-range`
 *
 * @example
 * ```ts
 * import { checkSpreader } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const check = checkSpreader({
 *   used: qty(9, "oz"),
 *   swath: qty(2, "ft"),
 *   distance: qty(50, "ft"),
 *   target: qty(5, "lb/1000ft2"),
 * });
 * console.log(check.rate, check.within); // { value: 5.625, unit: 'lb/1000ft2' } false
 * console.log(check.finding?.message); // The spreader put out 13% too much. Close the gate until the same test gives 8 oz wt.
 * ```
 */
export function checkSpreader(input: SpreaderCheckInput): SpreaderCheck {
  return checkOfSpreader(checked(input, CHECK));
}

const DEFAULT_LIMIT: Fraction = { value: 10, unit: "%" };

/** How a spreader compares with its target. Trusts its input. */
export function checkOfSpreader(input: SpreaderCheckInput, at = ""): SpreaderCheck {
  const { target, directions = 1, limit = DEFAULT_LIMIT } = input;
  const rate = workedSpreader(input, target.unit, at).rate as SpreaderCheck["rate"];
  const perPass = positiveIn(target.value / directions, target.unit, at);
  const deviation = deviationOf(rate, perPass, at);
  const within = !moreThan(Math.abs(deviation.value), inUnit(limit, "%"));
  const { caught: toCatch } = workedCatch(aimOf(input), at, input.used.unit);
  // As a scale shows it.
  const goal = atMost(toCatch);
  const finding =
    overMax(input, rate, goal) ?? (within ? undefined : offTarget(input, { rate, perPass, goal }, deviation));
  return {
    rate,
    perPass,
    toCatch,
    deviation,
    limit: { ...limit },
    within,
    ...(finding !== undefined && { finding }),
  };
}

/** What is aimed at in another test: never more than the label's maximum, though the target is. */
function aimOf(input: SpreaderCheckInput): SpreaderCatchInput {
  const { target, max } = input;
  const isOver = max !== undefined && moreThan(inUnit(target, max.unit), max.value);
  return (isOver ? { ...input, target: max } : input) as SpreaderCatchInput;
}

function deviationOf(rate: Quantity, perPass: Quantity, at: string): Fraction {
  return { value: finite((100 * (rate.value - perPass.value)) / perPass.value, at), unit: "%" };
}

function overMax(
  { max, directions = 1 }: SpreaderCheckInput,
  rate: SpreaderCheck["rate"],
  toCatch: Mass,
): SpreaderFinding | undefined {
  if (max === undefined || !moreThan(rate.value * directions, inUnit(max, rate.unit))) return undefined;
  return found("spreader-heavy", "refusal", {
    key: "spreader-over-max",
    template:
      "The spreader put out {rate}{directions:one=;other= in both directions}, over the label maximum of {max}. Close the gate until the same test gives {toCatch}.",
    figures: { rate: { value: rate.value * directions, unit: rate.unit }, directions, max, toCatch },
  });
}

// As common practice has it, no source: so far off, a gate is seldom the cause.
const FAR = 2;

// Pounds for ounces, or the reverse, with a spreader that is as far off as spreaders are.
const OUNCES = { low: 16 / 1.15, high: 16 * 1.15 };

// A gate that is set for the whole rate, where each of two directions gets half of it.
const TWICE = { low: 2 / 1.15, high: 2 * 1.15 };

function offTarget(
  { used, directions = 1 }: SpreaderCheckInput,
  {
    rate,
    perPass,
    goal: toCatch,
  }: { readonly rate: Quantity; readonly perPass: Quantity; readonly goal: Mass },
  deviation: Fraction,
): SpreaderFinding {
  const heavy = deviation.value > 0;
  const ratio = heavy ? rate.value / perPass.value : perPass.value / rate.value;
  const times = rounded(ratio);
  const off: Fraction = { value: rounded(Math.abs(deviation.value)), unit: "%" };
  const figures = { rate, perPass, toCatch, times, off };
  // Whoever entered ounces didn't take ounces for pounds.
  const byOunces = used.unit === (heavy ? "lb" : "oz") && ratio > OUNCES.low && ratio < OUNCES.high;
  const isTwice = directions === 2 && ratio > TWICE.low && ratio < TWICE.high;
  const isFar = moreThan(ratio, FAR);
  return heavy
    ? found("spreader-heavy", "warning", tooMuch(figures, byOunces, isTwice, isFar))
    : found("spreader-light", "warning", tooLittle(figures, byOunces, isFar));
}

/** How far off a spreader is. */
interface Off {
  readonly rate: Quantity;
  readonly perPass: Quantity;
  readonly toCatch: Mass;
  readonly times: number;
  readonly off: Fraction;
}

interface Found {
  readonly key: string;
  readonly template: string;
  readonly figures: SpreaderFinding["figures"];
}

function tooMuch(
  { times, off, toCatch, ...figures }: Off,
  byOunces: boolean,
  isTwice: boolean,
  isFar: boolean,
): Found {
  if (byOunces)
    return {
      key: "spreader-ounces-as-pounds",
      template:
        "The spreader put out {times} times the target. If you weighed in ounces, enter ounces, not pounds.",
      figures: { ...figures, times },
    };
  if (isTwice)
    return {
      key: "spreader-whole-rate",
      template:
        "The spreader put out {times} times the target for one pass. In two directions each pass gets half the rate: close the gate until the same test gives {toCatch}.",
      figures: { ...figures, times, toCatch },
    };
  if (isFar)
    return {
      key: "spreader-far-over",
      template:
        "The spreader put out {times} times the target. Check the units, and that the target is product, not the nutrient or active ingredient in it.",
      figures: { ...figures, times },
    };
  return {
    key: "spreader-heavy",
    template: "The spreader put out {off} too much. Close the gate until the same test gives {toCatch}.",
    figures: { ...figures, off, toCatch },
  };
}

function tooLittle({ times, off, toCatch, ...figures }: Off, byOunces: boolean, isFar: boolean): Found {
  if (byOunces)
    return {
      key: "spreader-pounds-as-ounces",
      template:
        "The spreader put out only 1/{times} of the target. If you weighed in pounds, enter pounds, not ounces.",
      figures: { ...figures, times },
    };
  if (isFar)
    return {
      key: "spreader-far-under",
      template:
        "The spreader put out {off} too little. Check the units, and that the rate and the test are both for one pass.",
      figures: { ...figures, off },
    };
  return {
    key: "spreader-light",
    template: "The spreader put out {off} too little. Open the gate until the same test gives {toCatch}.",
    figures: { ...figures, off, toCatch },
  };
}

// What a person reads off a dial.
function rounded(value: number): number {
  return Number(value.toPrecision(2));
}

function found(
  code: SpreaderFinding["code"],
  severity: SpreaderFinding["severity"],
  { key, template, figures }: Found,
): SpreaderFinding {
  return { code, key, severity, path: "used", message: messageOf(template, figures), figures };
}

/**
 * The working of {@link checkSpreader}, line by line.
 *
 * @param input - as for {@link checkSpreader}
 * @returns the lines: the rate, what one pass and the test are to put out, and last the deviation
 * @throws SprayMathError as {@link checkSpreader} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { checkSpreader } from "swath-to-spoon/working";
 *
 * const lines = checkSpreader({ used: qty(9, "oz"), rowLength: qty(1000, "ft"), target: qty(8, "oz/1000ft") });
 * console.log(lines.at(-1)?.result); // { value: 12.5, unit: '%' }
 * ```
 */
export function checkSpreaderWorking(input: SpreaderCheckInput): WorkingLine[] {
  return linesOfCheck(checked(input, CHECK));
}

/** The working of {@link checkOfSpreader}. Trusts its input. */
export function linesOfCheck(given: SpreaderCheckInput): WorkingLine[] {
  const { target, directions = 1 } = given;
  const { rate, perPass, deviation } = checkOfSpreader(given);
  return [
    ...linesOfSpreader(given, target.unit),
    ...passLines(target, directions, perPass),
    ...linesOfCatch(aimOf(given), given.used.unit),
    ...formulaLines({
      id: "output-rate.target-check",
      formula: "100 * (rate - target) / target",
      terms: { rate: [rate, target.unit], target: [perPass, target.unit] },
      result: deviation,
      source: "definition of a fraction",
    }),
  ];
}

function passLines(target: Quantity, directions: 1 | 2, perPass: Quantity): WorkingLine[] {
  if (directions === 1) return [];
  return formulaLines({
    id: "output-rate.spreader-pass",
    formula: "target / directions",
    terms: { target: [target, target.unit], directions },
    result: perPass,
    source: "Rotary Spreader Calibration Procedures, UMass Extension",
  });
}

/** A strip or an area to catch on, and the rate that is aimed at. */
export type CatchOnArea = (OnStrip | OnArea) & Aim<MassRate>;

/** A length of row to catch on, and the rate that is aimed at. */
export type CatchOnRow = OnRow & Aim<MassPerLength>;

/** What a spreader is to be tested on, and the rate that is aimed at. */
export type SpreaderCatchInput = CatchOnArea | CatchOnRow;

const CATCH: EitherField<SpreaderCatchInput> = /* @__PURE__ */ over<
  SpreaderCatchInput,
  Aim<MassRate>,
  Aim<MassPerLength>
>(
  "What a spreader is to be tested on, and the rate that is aimed at.",
  /* @__PURE__ */ aim<MassRate>("massRate"),
  /* @__PURE__ */ aim<MassPerLength>("massPerLength"),
);

/**
 * Returns what to catch in a test when the spreader is right: the weight that the label's rate puts on the strip, the area or the row.
 *
 * Formula: catch = target × swath × distance / directions; target × area / directions; or target × row length / directions.
 * Source: definition of a rate; Calibrating Granular Pesticide Applicators (University of Missouri Extension, G1273, 2002).
 *
 * @param input - the target, what it is caught on, and the directions where they are two
 * @returns the weight in oz or g, by the system of the target
 * @throws SprayMathError `missing`, `conflict`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`,
 * `unknown-choice`, `wrong-dimension`, `wrong-area` or `out-of-range`
 *
 * @example
 * ```ts
 * import { spreaderCatch } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(spreaderCatch({ target: qty(5, "lb/1000ft2"), swath: qty(2, "ft"), distance: qty(50, "ft") })); // { value: 8, unit: 'oz' }
 * ```
 */
export function spreaderCatch(input: SpreaderCatchInput): Mass {
  return catchOfSpreader(checked(input, CATCH));
}

/** What to catch in a test. Trusts its input. */
export function catchOfSpreader(input: SpreaderCatchInput): Mass {
  return workedCatch(input).caught;
}

/** What to catch, in the unit that the formula gives and in the one that it is reported in. */
function workedCatch(
  input: SpreaderCatchInput,
  at = "",
  unit: Mass["unit"] = unitsLike(input.target.unit).smallMass,
): Covered & {
  readonly rate: Unit;
  readonly product: Quantity;
  readonly caught: Mass;
} {
  const { target, directions = 1 } = input;
  const covered = coveredBy(input);
  const over = resolveUnit(target.unit).over as Mass["unit"];
  const rate = perUnit(over, covered.per);
  const value = positive((inUnit(target, rate) * covered.size) / directions, at);
  const product: Mass = { value, unit: over };
  return { ...covered, rate, product, caught: positiveIn(inUnit(product, unit), unit, at) };
}

const CATCH_ON = {
  strip: { id: "output-rate.spreader-catch-strip", formula: "target * swath * distance" },
  area: { id: "output-rate.spreader-catch-area", formula: "target * area" },
  row: { id: "output-rate.spreader-catch-row", formula: "target * rowLength" },
} as const;

/**
 * The working of {@link spreaderCatch}, line by line.
 *
 * @param input - as for {@link spreaderCatch}
 * @returns the lines; the last one's result is the weight
 * @throws SprayMathError as {@link spreaderCatch} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { spreaderCatch } from "swath-to-spoon/working";
 *
 * const lines = spreaderCatch({ target: qty(8, "oz/1000ft"), rowLength: qty(250, "ft") });
 * console.log(lines.at(-1)?.formula, lines.at(-1)?.result); // target * rowLength { value: 2, unit: 'oz' }
 * ```
 */
export function spreaderCatchWorking(input: SpreaderCatchInput): WorkingLine[] {
  return linesOfCatch(checked(input, CATCH));
}

function linesOfCatch(given: SpreaderCatchInput, unit?: Mass["unit"]): WorkingLine[] {
  const { target, directions = 1 } = given;
  const { on, sizes, rate, product, caught } = workedCatch(given, "", unit);
  const { id, formula } = CATCH_ON[on];
  const terms: Record<string, GivenTerm> = { target: [target, rate], ...sizes };
  const twice = directions === 2;
  return formulaLines(
    {
      id,
      formula: twice ? `${formula} / directions` : formula,
      terms: { ...terms, ...(twice && { directions }) },
      result: product,
      source: "definition of a rate per area",
    },
    caught.unit,
  );
}
