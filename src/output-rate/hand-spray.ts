import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import {
  type Agreement,
  byGiven,
  type Complete,
  count,
  type EitherField,
  either,
  type FieldsOf,
  object,
  optional,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { measured, treatedArea } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Length, Measured, Quantity, TreatedArea, Volume } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import type { RowRates } from "./tree-row.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** What was used on a plot, on a length of row, or on a number of plants: exactly one of the three. */
export interface HandSprayInput {
  /** What was used until the foliage was wet, or over the time the plot took. More than 0. */
  readonly used: Measured<Volume>;
  /** The treated area that it was used on. More than 0. */
  readonly area?: Measured<TreatedArea> | undefined;
  /** The length of row that it was used on, on all the sides that are to be sprayed. More than 0. */
  readonly rowLength?: Measured<Length> | undefined;
  /** The number of plants that it was used on: a whole number, 1 or more. */
  readonly plants?: number | undefined;
  /** The distance from plant to plant in the row: makes plants a length of row, and the reverse. More than 0. */
  readonly plantSpacing?: Measured<Length> | undefined;
  /** The distance from row to row, for a rate per area of ground. More than 0. */
  readonly rowSpacing?: Measured<Length> | undefined;
}

/** What it was used on, and the spacings beside it. */
type On = "area" | "rowLength" | "plants";
type OnOne<K extends On> = Omit<HandSprayInput, On> & Complete<Pick<HandSprayInput, K>>;

const COMMON = object<Omit<HandSprayInput, On>>({
  used: measured(
    "What was used until the foliage was wet, or over the time the plot took. More than 0.",
    "volume",
  ),
  plantSpacing: optional(
    measured(
      "The distance from plant to plant in the row: makes plants a length of row, and the reverse. More than 0.",
      "length",
    ),
  ),
  rowSpacing: optional(
    measured("The distance from row to row, for a rate per area of ground. More than 0.", "length"),
  ),
});

const ON_AREA = object<OnOne<"area">>({
  ...COMMON.fields,
  area: treatedArea("The treated area that it was used on. More than 0.", { measured: true, unmarked: true }),
});

const ON_ROW = object<OnOne<"rowLength">>({
  ...COMMON.fields,
  rowLength: measured(
    "The length of row that it was used on, on all the sides that are to be sprayed. More than 0.",
    "length",
  ),
});

const ON_PLANTS = object<OnOne<"plants">>({
  ...COMMON.fields,
  plants: count("The number of plants that it was used on: a whole number, 1 or more."),
});

/** A hand-held spray: what it was used on is one of three. `more` are fields beside its own. */
/* @__NO_SIDE_EFFECTS__ */
export function handSpray<T extends HandSprayInput>(
  sentence: string,
  more: FieldsOf<Omit<T, keyof HandSprayInput>>,
  agree: readonly Agreement<T>[] = [],
): EitherField<T> {
  const options = [ON_AREA, ON_ROW, ON_PLANTS].map(({ fields }) =>
    object<T>({ ...more, ...fields } as unknown as FieldsOf<T>, agree),
  );
  return either<T>(sentence, options, byGiven([["area"], ["rowLength"], ["plants"]]));
}

const HAND_SPRAY = handSpray<HandSprayInput>("A hand-held spray.", {});

/**
 * Returns the rate of a hand-held sprayer used until the foliage is wet: per area, per length of row and per plant, as far as
 * the measures given allow.
 *
 * Formula: per area = used / area; per length = used / row length; per plant = used / plants. Plants stand for a row of plants
 * × plant spacing, and a row for an area of its length × row spacing. Source: definition of a rate; measured plots in 1/128
 * Method of Calibration: hand sprayers and high-pressure hand guns (training slides) and Spray Gun (Pesticide Environmental
 * Stewardship).
 *
 * @param input - what was used, what it was used on, and the spacings where they are known
 * @returns the rates that follow, in the units of `used`; at least one
 * @throws SprayMathError `missing` where none of `area`, `rowLength` and `plants` is given, `conflict` where more than one
 * is, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, `wrong-area` or `out-of-range`
 *
 * @example
 * ```ts
 * import { handSprayRates } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rates = handSprayRates({ used: qty(4, "L"), plants: 20, plantSpacing: qty(2, "m"), rowSpacing: qty(4, "m") });
 * console.log(rates.perPlant); // { value: 200, unit: 'mL' }
 * console.log(rates.perArea); // { value: 250, unit: 'L/ha' }
 * ```
 */
export function handSprayRates(input: HandSprayInput): Partial<RowRates> {
  return ratesOfHandSpray(checked(input, HAND_SPRAY));
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
 * The working of {@link handSprayRates}, line by line.
 *
 * @param input - as for {@link handSprayRates}
 * @returns the lines: per plant, per length and per area, each where it is known
 * @throws SprayMathError as {@link handSprayRates} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { handSprayRates } from "swath-to-spoon/working";
 *
 * const lines = handSprayRates({ used: qty(4, "L"), plants: 20 });
 * console.log(lines[0]?.formula); // used / plants
 * ```
 */
export function handSprayRatesWorking(input: HandSprayInput): WorkingLine[] {
  return linesOfHandSpray(checked(input, HAND_SPRAY));
}

/** The rates of a hand-held spray. Trusts its input. */
export function ratesOfHandSpray(input: HandSprayInput, at = ""): Partial<RowRates> {
  const { rates } = workedHand(input, at);
  return Object.fromEntries(Object.entries(rates).map(([name, { rate }]) => [name, rate]));
}

/** The working of {@link ratesOfHandSpray}. Trusts its input. */
export function linesOfHandSpray(input: HandSprayInput): WorkingLine[] {
  const { on, length, square, rates } = workedHand(input, "");
  const { used, area, rowLength, plants, plantSpacing, rowSpacing } = input;
  const known: Record<string, GivenTerm | undefined> = {
    used: [used, used.unit],
    area: area && [area, square],
    rowLength: rowLength && [rowLength, length],
    plants,
    plantSpacing: plantSpacing && [plantSpacing, length],
    rowSpacing: rowSpacing && [rowSpacing, length],
  };
  return Object.entries(rates).flatMap(([name, { quotient, rate }]) => {
    const formula = (FORMULAS[on] as Record<string, string>)[name] as string;
    const symbols = formula.match(/\w+/g) as string[];
    return formulaLines(
      {
        id: `output-rate.hand-${name.slice("per".length).toLowerCase()}`,
        formula,
        terms: Object.fromEntries(symbols.map((symbol) => [symbol, known[symbol] as GivenTerm])),
        result: quotient,
        source: "definition of a rate per area",
      },
      rate.unit,
    );
  });
}

interface WorkedHand {
  readonly on: On;
  readonly length: "ft" | "m";
  readonly square: "ft2" | "m2";
  /** The rates that follow: per plant, per length and per area. */
  readonly rates: Partial<Record<keyof RowRates, WorkedRate<Quantity>>>;
}

function workedHand(input: HandSprayInput, at: string): WorkedHand {
  const { used, area, rowLength, plants, plantSpacing, rowSpacing } = input;
  const { value: volume, unit } = used;
  const { volumeRate, smallVolume, length: reported } = unitsLike(unit);
  const { length, area: square } = unitsLike((area ?? rowLength ?? plantSpacing ?? used).unit);
  if (area !== undefined) {
    const perArea = workedRate(volume / inUnit(area, square), `${unit}/${square}`, volumeRate, at);
    return { on: "area", length, square, rates: { perArea } };
  }
  const apart = plantSpacing && inUnit(plantSpacing, length);
  const long = rowLength ? inUnit(rowLength, length) : apart && (plants as number) * apart;
  const plant = plants === undefined ? apart && (volume * apart) / (long as number) : volume / plants;
  const land = long && rowSpacing && long * inUnit(rowSpacing, length);
  return {
    on: rowLength ? "rowLength" : "plants",
    length,
    square,
    rates: {
      ...(plant !== undefined && { perPlant: workedRate(plant, unit, smallVolume, at) }),
      ...(long !== undefined && {
        perLength: workedRate(volume / long, `${unit}/${length}`, `${smallVolume}/${reported}`, at),
      }),
      ...(land !== undefined && { perArea: workedRate(volume / land, `${unit}/${square}`, volumeRate, at) }),
    },
  };
}
