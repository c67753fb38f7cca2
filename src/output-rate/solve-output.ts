import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { object, optional, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type {
  Flow,
  Length,
  Quantity,
  Speed,
  TimeUnit,
  Unit,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** The four amounts that belong together: any three give the fourth. */
export interface OutputTerms {
  /** The volume per area. More than 0. */
  readonly rate: VolumeRate;
  /** The flow of everything that sprays the width: one nozzle for a nozzle spacing, the whole boom for a swath. More than 0. */
  readonly flow: Flow;
  /** The working speed. More than 0. */
  readonly speed: Speed;
  /** The width that the flow treats: nozzle spacing, band width, row width or swath. More than 0. */
  readonly width: Length;
}

/** Three of the four amounts; the one to be found is left out. */
export type SolveInput =
  | (Omit<OutputTerms, "rate"> & {
      /** Left out: to be found. */
      readonly rate?: undefined;
    })
  | (Omit<OutputTerms, "flow"> & {
      /** Left out: to be found. */
      readonly flow?: undefined;
    })
  | (Omit<OutputTerms, "speed"> & {
      /** Left out: to be found. */
      readonly speed?: undefined;
    })
  | (Omit<OutputTerms, "width"> & {
      /** Left out: to be found. */
      readonly width?: undefined;
    });

const NAMES = ["rate", "flow", "speed", "width"] as const;

const THREE_OF_FOUR = object<Partly<OutputTerms>>(
  {
    rate: optional(quantity("The volume per area. More than 0.", "volumeRate")),
    flow: optional(
      quantity(
        "The flow of everything that sprays the width: one nozzle for a nozzle spacing, the whole boom for a swath. More than 0.",
        "flow",
      ),
    ),
    speed: optional(quantity("The working speed. More than 0.", "speed")),
    width: optional(
      quantity(
        "The width that the flow treats: nozzle spacing, band width, row width or swath. More than 0.",
        "length",
      ),
    ),
  },
  [oneIsLeftOut],
);

/** Notes amounts of which not three are given. */
function oneIsLeftOut(given: Partly<OutputTerms>, check: Check): void {
  const missing = NAMES.filter((name) => given[name] === undefined);
  if (missing.length === 0)
    check.fault(
      "conflict",
      "nothing-to-find",
      "",
      "Leave out one of these: {choices.field}. It is worked out from the other three.",
      { choices: NAMES },
    );
  else if (missing.length > 1 && !missing.some((name) => check.hasFault(name)))
    check.fault(
      "missing",
      "three-needed",
      "",
      "Missing: {missing.field}. Leave out only the one to be worked out.",
      { missing, choices: NAMES },
    );
}

/** All four amounts, and which of them was worked out. */
export interface SolvedOutput extends OutputTerms {
  /** The name of the amount that was worked out. */
  readonly found: keyof OutputTerms;
}

/**
 * Finds the missing one of rate, flow, speed and width.
 *
 * Formula: rate = flow / (speed × width), solved for the one that is left out. With gal/min, mph and inches the rate is
 * the handbooks' 5,940 × flow / (speed × width), with L/min, km/h and meters their 600 × flow / (speed × width); the
 * constants come out of the units.
 * Source: Sprayer Calibrations and Calculations (Montana State University Extension Service, MontGuide MT 2000-14, 2000).
 *
 * @param input - exactly three of the four, each more than 0
 * @returns the three as given, and the fourth in the units of the first one given, in the order rate, flow, speed, width
 * @throws SprayMathError `missing` where more than one is left out, `conflict` where none is, `not-a-quantity`,
 * `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { solveOutput } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { found, flow } = solveOutput({ rate: qty(20, "gal/ac"), speed: qty(3, "mph"), width: qty(19.8, "in") });
 * console.log(found, flow); // flow { value: 0.2, unit: 'gal/min' }
 * ```
 */
export function solveOutput(input: SolveInput): SolvedOutput {
  return solvedOutput(checked(input, THREE_OF_FOUR));
}

const FORMULAS: Record<keyof OutputTerms, string> = {
  rate: "flow / (speed * width)",
  flow: "rate * speed * width",
  speed: "flow / (rate * width)",
  width: "flow / (rate * speed)",
};

/**
 * The working of {@link solveOutput}, line by line.
 *
 * @param input - as for {@link solveOutput}
 * @returns the lines; the last one's result is the amount found
 * @throws SprayMathError as {@link solveOutput} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { solveOutput } from "swath-to-spoon/working";
 *
 * const lines = solveOutput({ rate: qty(20, "gal/ac"), speed: qty(3, "mph"), width: qty(19.8, "in") });
 * console.log(lines.at(-1)?.formula); // rate * speed * width
 * ```
 */
export function solveOutputWorking(input: SolveInput): WorkingLine[] {
  return linesOfSolved(checked(input, THREE_OF_FOUR));
}

/** Three of the four amounts and the one that is left out. Trusts its input. */
export function solvedOutput(given: Partly<OutputTerms>, at = ""): SolvedOutput {
  const { found, rate } = workedOutput(given, at);
  return { ...given, [found]: rate, found } as SolvedOutput;
}

/** The working of {@link solvedOutput}. Trusts its input. */
export function linesOfSolved(given: Partly<OutputTerms>): WorkingLine[] {
  const { found, units, quotient, rate } = workedOutput(given, "");
  const terms = NAMES.flatMap((name) => {
    const term = given[name];
    return term === undefined ? [] : [[name, [term, units[name]]] as const];
  });
  return formulaLines(
    {
      id: `output-rate.solve-${found}`,
      formula: FORMULAS[found],
      terms: Object.fromEntries(terms),
      result: quotient,
      source:
        "Sprayer Calibrations and Calculations, Montana State University Extension Service, MontGuide MT 2000-14, 2000",
    },
    rate.unit,
  );
}

interface WorkedOutput extends WorkedRate<Quantity> {
  readonly found: keyof OutputTerms;
  /** The units in which the formula is true as plain numbers. */
  readonly units: Readonly<Record<keyof OutputTerms, Unit>>;
}

function workedOutput(given: Partly<OutputTerms>, at: string): WorkedOutput {
  const { rate, flow, speed, width } = given as OutputTerms;
  const found = NAMES.find((name) => given[name] === undefined) as keyof OutputTerms;
  // The formula is worked in the units of the flow, or of the rate where the flow is to be found.
  const { over, per } = resolveUnit((flow ?? rate).unit);
  const time = (flow === undefined ? "min" : per) as TimeUnit;
  const { length, area } = unitsLike((width ?? speed).unit);
  const volume = over as VolumeUnit;
  const units = {
    rate: `${volume}/${area}`,
    flow: `${volume}/${time}`,
    speed: `${length}/${time}`,
    width: length,
  } as const;
  const number = (name: keyof OutputTerms): number => inUnit(given[name] as Quantity, units[name]);
  const value = {
    rate: () => number("flow") / (number("speed") * number("width")),
    flow: () => number("rate") * number("speed") * number("width"),
    speed: () => number("flow") / (number("rate") * number("width")),
    width: () => number("flow") / (number("rate") * number("speed")),
  }[found]();
  const system = unitsLike((rate ?? flow).unit);
  const reported = {
    rate: system.volumeRate,
    flow: system.flow,
    speed: system.speed,
    width: system.length,
  }[found];
  return { found, units, ...workedRate<Unit>(value, units[found], reported, at) };
}
