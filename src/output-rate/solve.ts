import { SprayMathError } from "../errors.js";
import { checkedObject, inUnit } from "../units/guard.js";
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
import type { WorkingLine } from "../units/working.js";
import { toldIn } from "./result.js";
import { toldLines } from "./told-lines.js";

/** The four amounts that belong together: any three give the fourth. */
export interface OutputTerms {
  /** The volume per area. More than 0. */
  readonly rate: VolumeRate;
  /** The flow of everything that sprays `width`: one nozzle for a nozzle spacing, the whole boom for a swath. More than 0. */
  readonly flow: Flow;
  /** The working speed. More than 0. */
  readonly speed: Speed;
  /** The width that `flow` treats: nozzle spacing, band width, row width or swath. More than 0. */
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

/** All four amounts, and which of them was worked out. */
export interface SolvedOutput extends OutputTerms {
  /** The name of the amount that was worked out. */
  readonly found: keyof OutputTerms;
}

/**
 * Finds the missing one of rate, flow, speed and width.
 *
 * Formula: rate = flow / (speed × width), solved for the one that is left out. With gal/min, mph and inches the rate is
 * the handbooks' 5,940 × flow / (speed × width), with L/min, km/h and metres their 600 × flow / (speed × width); the
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
  const { found, result, told } = checkedOutput(input);
  const { rate, flow, speed, width } = input;
  return { rate, flow, speed, width, [found]: toldIn(result, told), found } as SolvedOutput;
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
  solveOutput(input);
  const { found, units, result, told } = checkedOutput(input);
  const given = NAMES.filter((name) => name !== found);
  return toldLines(
    {
      id: `output-rate.solve-${found}`,
      formula: FORMULAS[found],
      terms: Object.fromEntries(given.map((name) => [name, [input[name] as Quantity, units[name]] as const])),
      result,
      source:
        "Sprayer Calibrations and Calculations, Montana State University Extension Service, MontGuide MT 2000-14, 2000",
    },
    told,
  );
}

const NAMES = ["rate", "flow", "speed", "width"] as const;

type Given = { readonly [Name in keyof OutputTerms]?: OutputTerms[Name] | undefined };

interface CheckedOutput {
  readonly found: keyof OutputTerms;
  /** The units in which the formula is true as plain numbers. */
  readonly units: Record<keyof OutputTerms, Unit>;
  readonly result: Quantity;
  readonly told: Unit;
}

function checkedOutput(input: SolveInput): CheckedOutput {
  const found = missingOne(checkedObject(input, ""));
  for (const name of NAMES) if (name !== found) inUnit<Unit>(input[name] as Quantity, ANY_UNIT[name], name);
  const { rate, flow, speed, width } = input as Given as OutputTerms;
  // The formula is worked in the units of the flow, or of the rate where the flow is to be found.
  const { over, per } = resolveUnit((flow ?? rate).unit, "unit");
  const time = (flow === undefined ? "min" : per) as TimeUnit;
  const { length, area } = unitsLike((width ?? speed).unit);
  const volume = over as VolumeUnit;
  const units = {
    rate: `${volume}/${area}`,
    flow: `${volume}/${time}`,
    speed: `${length}/${time}`,
    width: length,
  } as const;
  const number = (name: keyof OutputTerms): number =>
    inUnit<Unit>(input[name] as Quantity, units[name], name);
  const value = {
    rate: () => number("flow") / (number("speed") * number("width")),
    flow: () => number("rate") * number("speed") * number("width"),
    speed: () => number("flow") / (number("rate") * number("width")),
    width: () => number("flow") / (number("rate") * number("speed")),
  }[found]();
  const system = unitsLike((rate ?? flow).unit);
  const told = { rate: system.volumeRate, flow: system.flow, speed: system.speed, width: system.length }[
    found
  ];
  return { found, units, result: { value, unit: units[found] }, told };
}

// A unit of each amount's dimension, to check what was given before any unit of it is relied on.
const ANY_UNIT = { rate: "L/ha", flow: "L/min", speed: "km/h", width: "m" } as const;

function missingOne(input: SolveInput): keyof OutputTerms {
  const missing = NAMES.filter((name) => input[name] === undefined);
  const [found, another] = missing;
  if (found === undefined) {
    throw new SprayMathError(
      "conflict",
      "",
      "Given all of rate, flow, speed and width; wanted three of them. Leave out the one to be worked out.",
    );
  }
  if (another !== undefined) {
    throw new SprayMathError(
      "missing",
      "",
      `Given no ${missing.join(" and no ")}; wanted three of rate, flow, speed and width. Leave out only the one to be worked out.`,
    );
  }
  return found;
}
