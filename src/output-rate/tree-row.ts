import { checkedCount, checkedNumber, checkedObject, inUnit, unitsWith } from "../units/guard.js";
import type { Length, Measured, Volume, VolumePerLength, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { toldIn } from "./result.js";
import { toldLines } from "./told-lines.js";

/** One spray of a row, told in each of the ways that labels and growers use. */
export interface RowRates {
  /** Volume per area of ground, alleys included. */
  readonly perArea: VolumeRate;
  /** Volume per length of row. */
  readonly perLength: VolumePerLength;
  /** Volume per plant; only where the distance between plants was given. */
  readonly perPlant?: Volume;
}

/** What was measured along a row of trees, vines or canes. */
export interface TreeRowInput {
  /** What was used along the row length, on the sides told by `sides`. More than 0. */
  readonly used: Measured<Volume>;
  /** How many sides of the row `used` was sprayed on: 1 or 2. The rates are always for both sides. */
  readonly sides: 1 | 2;
  /** The length of row sprayed. More than 0. */
  readonly rowLength: Measured<Length>;
  /** The distance from row to row. More than 0. */
  readonly rowSpacing: Measured<Length>;
  /** The distance from plant to plant in the row, where a rate per plant is wanted. More than 0. */
  readonly plantSpacing?: Measured<Length>;
}

/**
 * The rate for rows that are sprayed from both sides: per area of ground, per length of row and per plant.
 *
 * Formula: per length = used × 2 / (sides × row length); per area = that / row spacing; per plant = that × plant spacing.
 * Source: definition of a rate per area, with the area of a row its length times the row spacing (common practice in
 * orchards and vineyards, no source).
 *
 * @param input - what was used, on how many sides, and the row's measures
 * @returns the rates in the units of `used`: gal/ac, fl_oz/ft and fl_oz; imp_gal/ac, imp_fl_oz/ft and imp_fl_oz; or L/ha,
 * mL/m and mL
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension`, or `out-of-range`
 * for sides other than 1 or 2 and for amounts that are not more than 0
 *
 * @example
 * ```ts
 * import { treeRowRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rates = treeRowRate({ used: qty(10, "L"), sides: 1, rowLength: qty(100, "m"), rowSpacing: qty(4, "m") });
 * console.log(rates.perArea); // { value: 500, unit: 'L/ha' }
 * console.log(rates.perLength); // { value: 200, unit: 'mL/m' }
 * ```
 */
export function treeRowRate(input: TreeRowInput): RowRates {
  const { perArea, perLength, perPlant, told } = checkedRow(input);
  return {
    perArea: toldIn(perArea, told.volumeRate),
    perLength: toldIn(perLength, told.perLength),
    ...(perPlant && { perPlant: toldIn(perPlant, told.smallVolume) }),
  };
}

/**
 * The working of {@link treeRowRate}, line by line.
 *
 * @param input - as for {@link treeRowRate}
 * @returns the lines; the last one's result is the rate per area
 * @throws SprayMathError as {@link treeRowRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { treeRowRate } from "swath-to-spoon/working";
 *
 * const lines = treeRowRate({ used: qty(10, "L"), sides: 1, rowLength: qty(100, "m"), rowSpacing: qty(4, "m") });
 * console.log(lines[0]?.formula); // used * 2 / (sides * rowLength)
 * ```
 */
export function treeRowRateWorking(input: TreeRowInput): WorkingLine[] {
  treeRowRate(input);
  const { perArea, perLength, perPlant, told } = checkedRow(input);
  const { used, sides, rowLength, rowSpacing, plantSpacing } = input;
  const row = { used: [used, used.unit], sides: sides, rowLength: [rowLength, told.length] } as const;
  const source = "definition of a rate per area";
  return [
    ...toldLines(
      {
        id: "output-rate.tree-row-length",
        formula: "used * 2 / (sides * rowLength)",
        terms: row,
        result: perLength,
        source,
      },
      told.perLength,
    ),
    ...(perPlant && plantSpacing
      ? toldLines(
          {
            id: "output-rate.tree-row-plant",
            formula: "used * 2 * plantSpacing / (sides * rowLength)",
            terms: { ...row, plantSpacing: [plantSpacing, told.length] },
            result: perPlant,
            source,
          },
          told.smallVolume,
        )
      : []),
    ...toldLines(
      {
        id: "output-rate.tree-row",
        formula: "used * 2 / (sides * rowLength * rowSpacing)",
        terms: { ...row, rowSpacing: [rowSpacing, told.length] },
        result: perArea,
        source,
      },
      told.volumeRate,
    ),
  ];
}

function checkedRow(input: TreeRowInput) {
  const { used, sides, rowLength, rowSpacing, plantSpacing } = checkedObject(input, "");
  const units = unitsWith(used, "used");
  const { length, area } = unitsWith(rowLength, "rowLength");
  inUnit(used, units.volume, "used");
  checkedNumber(checkedCount(sides, "sides"), "sides", { max: 2 });
  const both = used.value * (2 / sides);
  const long = inUnit(rowLength, length, "rowLength");
  const apart = inUnit(rowSpacing, length, "rowSpacing");
  const perLength: VolumePerLength = { value: both / long, unit: `${used.unit}/${length}` };
  const perArea: VolumeRate = { value: both / (long * apart), unit: `${used.unit}/${area}` };
  const perPlant: Volume | undefined =
    plantSpacing !== undefined
      ? {
          value: (both * inUnit(plantSpacing, length, "plantSpacing")) / long,
          unit: used.unit,
        }
      : undefined;
  const told = { ...units, length, perLength: `${units.smallVolume}/${units.length}` as const };
  return { perArea, perLength, perPlant, told };
}
