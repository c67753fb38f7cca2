import { SprayMathError } from "../errors.js";
import { areaIn, checkedCount, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import type { GivenTerm } from "../units/lines.js";
import type { Length, Measured, Quantity, TreatedArea, Unit, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { toldIn } from "./result.js";
import { toldLines } from "./told-lines.js";
import type { RowRates } from "./tree-row.js";

/** What was used on a plot, on a length of row, or on a number of plants: exactly one of the three. */
export interface HandInput {
  /** What was used until the foliage was wet, or over the time the plot took. More than 0. */
  readonly used: Measured<Volume>;
  /** The treated area that it was used on. More than 0. */
  readonly area?: Measured<TreatedArea>;
  /** The length of row that it was used on, on all the sides that are to be sprayed. More than 0. */
  readonly rowLength?: Measured<Length>;
  /** The number of plants that it was used on: a whole number, 1 or more. */
  readonly plants?: number;
  /** The distance from plant to plant in the row, to tell plants as length of row or the reverse. More than 0. */
  readonly plantSpacing?: Measured<Length>;
  /** The distance from row to row, where a rate per area of ground is wanted. More than 0. */
  readonly rowSpacing?: Measured<Length>;
}

/**
 * The rate of a hand-held sprayer used until the foliage is wet: per area, per length of row and per plant, as far as
 * the measures given allow.
 *
 * Formula: per area = used / area; per length = used / row length; per plant = used / plants; plants stand for a row of
 * plants × plant spacing, and a row for an area of its length × row spacing.
 * Source: definition of a rate; measured plots in 1/128 Method of Calibration: hand sprayers and high-pressure hand guns
 * (training slides) and Spray Gun (Pesticide Environmental Stewardship).
 *
 * @param input - what was used, what it was used on, and the spacings where they are known
 * @returns the rates that follow, in the units of `used`; at least one
 * @throws SprayMathError `missing` where none of `area`, `rowLength` and `plants` is given, `conflict` where more than one
 * is, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `wrong-area` or `out-of-range`
 *
 * @example
 * ```ts
 * import { handRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rates = handRate({ used: qty(4, "L"), plants: 20, plantSpacing: qty(2, "m"), rowSpacing: qty(4, "m") });
 * console.log(rates.perPlant); // { value: 200, unit: 'mL' }
 * console.log(rates.perArea); // { value: 250, unit: 'L/ha' }
 * ```
 */
export function handRate(input: HandInput): Partial<RowRates> {
  const rates: Record<string, Quantity> = {};
  for (const [name, { direct, told }] of Object.entries(checkedHand(input).rates))
    rates[name] = toldIn(direct, told);
  return rates as Partial<RowRates>;
}

// What each rate is worked out from, by what the spray was used on.
const FORMULAS = {
  area: { perArea: "used / area" },
  rowLength: {
    perPlant: "used * plantSpacing / rowLength",
    perLength: "used / rowLength",
    perArea: "used / (rowLength * rowSpacing)",
  },
  plants: {
    perPlant: "used / plants",
    perLength: "used / (plants * plantSpacing)",
    perArea: "used / (plants * plantSpacing * rowSpacing)",
  },
} as const;

/**
 * The working of {@link handRate}, line by line.
 *
 * @param input - as for {@link handRate}
 * @returns the lines: per plant, per length and per area, each where it is known
 * @throws SprayMathError as {@link handRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { handRate } from "swath-to-spoon/working";
 *
 * const lines = handRate({ used: qty(4, "L"), plants: 20 });
 * console.log(lines[0]?.formula); // used / plants
 * ```
 */
export function handRateWorking(input: HandInput): WorkingLine[] {
  handRate(input);
  const { on, length, area, rates } = checkedHand(input);
  const known: Record<string, GivenTerm | undefined> = {
    used: [input.used, input.used.unit],
    area: input.area && [input.area, area],
    rowLength: input.rowLength && [input.rowLength, length],
    plants: input.plants,
    plantSpacing: input.plantSpacing && [input.plantSpacing, length],
    rowSpacing: input.rowSpacing && [input.rowSpacing, length],
  };
  return Object.entries(rates).flatMap(([name, { direct, told }]) => {
    const formula = (FORMULAS[on] as Record<string, string>)[name] as string;
    const symbols = formula.match(/\w+/g) as string[];
    return toldLines(
      {
        id: `output-rate.hand-${name === "perArea" ? "area" : name === "perLength" ? "length" : "plant"}`,
        formula,
        terms: Object.fromEntries(symbols.map((symbol) => [symbol, known[symbol] as GivenTerm])),
        result: direct,
        source: "definition of a rate per area",
      },
      told,
    );
  });
}

interface CheckedHand {
  readonly on: keyof typeof FORMULAS;
  readonly length: "ft" | "m";
  readonly area: "ft2" | "m2";
  /** The rates that follow, as the divisions give them, with the units that they are told in. */
  readonly rates: Partial<Record<keyof RowRates, { readonly direct: Quantity; readonly told: Unit }>>;
}

function checkedHand(input: HandInput): CheckedHand {
  const on = usedOn(input);
  const { used: given, plantSpacing, rowSpacing } = input;
  const units = unitsWith(given, "used");
  const used = inUnit(given, units.volume, "used") && given.value;
  const first = on === "plants" ? plantSpacing : input[on];
  const { length, area } =
    first === undefined ? units : unitsWith(first, on === "plants" ? "plantSpacing" : on);
  if (on === "area") {
    const square = areaIn(input.area as TreatedArea, "treated", area, "area");
    const direct = { value: used / square, unit: `${given.unit}/${area}` as const };
    return { on, length, area, rates: { perArea: { direct, told: units.volumeRate } } };
  }
  const apart = optional(plantSpacing, length, "plantSpacing");
  const between = optional(rowSpacing, length, "rowSpacing");
  const plants = on === "plants" ? checkedCount(input.plants as number, "plants") : undefined;
  const long =
    plants === undefined ? inUnit(input.rowLength as Length, length, "rowLength") : apart && plants * apart;
  const perPlant = plants === undefined ? apart && long && (used * apart) / long : used / plants;
  const rates: Record<string, { direct: Quantity; told: Unit }> = {};
  if (perPlant !== undefined)
    rates.perPlant = { direct: { value: perPlant, unit: given.unit }, told: units.smallVolume };
  if (long !== undefined) {
    const direct = { value: used / long, unit: `${given.unit}/${length}` as const };
    rates.perLength = { direct, told: `${units.smallVolume}/${units.length}` };
  }
  if (long !== undefined && between !== undefined) {
    const direct = { value: used / (long * between), unit: `${given.unit}/${area}` as const };
    rates.perArea = { direct, told: units.volumeRate };
  }
  return { on, length, area, rates };
}

function optional(length: Length | undefined, unit: "ft" | "m", path: string): number | undefined {
  return length === undefined ? undefined : inUnit(length, unit, path);
}

function usedOn(input: HandInput): keyof typeof FORMULAS {
  const { area, rowLength, plants } = checkedObject(input, "");
  const given = Object.entries({ area, rowLength, plants }).filter(([, value]) => value !== undefined);
  const [first, second] = given.map(([name]) => name);
  if (first === undefined) {
    throw new SprayMathError(
      "missing",
      "",
      "Nothing given that the spray was used on; wanted one of area, rowLength or plants.",
    );
  }
  if (second !== undefined) {
    throw new SprayMathError(
      "conflict",
      second,
      `Given both ${first} and ${second}; wanted one of them. Leave out the one that was not measured.`,
    );
  }
  return first as keyof typeof FORMULAS;
}
