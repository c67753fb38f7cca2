import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { choice, type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { measured } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Length, Measured, Quantity, Volume, VolumePerLength, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** One spray of a row, in each of the ways that labels and growers use. */
export interface RowRates {
  /** Volume per area of ground, alleys included. */
  readonly perArea: VolumeRate;
  /** Volume per length of row. */
  readonly perLength: VolumePerLength;
  /** Volume per plant; only where the distance between plants was given. */
  readonly perPlant?: Volume | undefined;
}

/** What was measured along a row of trees, vines or canes. */
export interface TreeRowInput {
  /** What was used along the row length, on these sides. More than 0. */
  readonly used: Measured<Volume>;
  /** How many sides of the row it was sprayed on: 1 or 2. The rates are always for both sides. */
  readonly sides: 1 | 2;
  /** The length of row sprayed. More than 0. */
  readonly rowLength: Measured<Length>;
  /** The distance from row to row. More than 0. */
  readonly rowSpacing: Measured<Length>;
  /** The distance from plant to plant in the row, for a rate per plant. More than 0. */
  readonly plantSpacing?: Measured<Length> | undefined;
}

/** What was measured along a row. */
export const TREE_ROW: ObjectField<TreeRowInput> = object<TreeRowInput>({
  used: measured("What was used along the row length, on these sides. More than 0.", "volume"),
  sides: choice(
    "How many sides of the row it was sprayed on: 1 or 2. The rates are always for both sides.",
    [1, 2],
  ),
  rowLength: measured("The length of row sprayed. More than 0.", "length"),
  rowSpacing: measured("The distance from row to row. More than 0.", "length"),
  plantSpacing: optional(
    measured("The distance from plant to plant in the row, for a rate per plant. More than 0.", "length"),
  ),
});

/**
 * Returns the rate for rows that are sprayed from both sides: per area of ground, per length of row and per plant.
 *
 * Formula: per length = used × 2 / (sides × row length); per area = that / row spacing; per plant = that × plant spacing.
 * Source: definition of a rate per area, with the area of a row its length times the row spacing (common practice in
 * orchards and vineyards, no source).
 *
 * @param input - what was used, on how many sides, and the row's measures
 * @returns the rates in the units of `used`: `gal/ac`, `fl_oz/ft` and `fl_oz`; `imp_gal/ac`, `imp_fl_oz/ft` and `imp_fl_oz`; or L/ha,
 * mL/m and mL
 * @throws SprayMathError `unknown-choice` for sides other than 1 or 2, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
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
  return ratesOfTreeRow(checked(input, TREE_ROW));
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
  return linesOfTreeRow(checked(input, TREE_ROW));
}

/** The rates along a row. Trusts its input. */
export function ratesOfTreeRow(input: TreeRowInput, at = ""): RowRates {
  const { perArea, perLength, perPlant } = workedRow(input, at);
  return {
    perArea: perArea.rate,
    perLength: perLength.rate,
    ...(perPlant && { perPlant: perPlant.rate }),
  };
}

/** The working of {@link ratesOfTreeRow}. Trusts its input. */
export function linesOfTreeRow(input: TreeRowInput): WorkingLine[] {
  const { length, perArea, perLength, perPlant } = workedRow(input, "");
  const { used, sides, rowLength, rowSpacing, plantSpacing } = input;
  const row = { used: [used, used.unit], sides, rowLength: [rowLength, length] } as const;
  const linesOf = (
    id: string,
    formula: string,
    terms: Record<string, GivenTerm>,
    { quotient, rate }: WorkedRate<Quantity>,
  ): WorkingLine[] =>
    formulaLines(
      { id, formula, terms, result: quotient, source: "definition of a rate per area" },
      rate.unit,
    );
  return [
    ...linesOf("output-rate.tree-row-length", "used * 2 / (sides * rowLength)", row, perLength),
    ...(perPlant && plantSpacing
      ? linesOf(
          "output-rate.tree-row-plant",
          "used * 2 * plantSpacing / (sides * rowLength)",
          { ...row, plantSpacing: [plantSpacing, length] },
          perPlant,
        )
      : []),
    ...linesOf(
      "output-rate.tree-row",
      "used * 2 / (sides * rowLength * rowSpacing)",
      { ...row, rowSpacing: [rowSpacing, length] },
      perArea,
    ),
  ];
}

interface WorkedRow {
  readonly length: "ft" | "m";
  readonly perLength: WorkedRate<VolumePerLength>;
  readonly perArea: WorkedRate<VolumeRate>;
  readonly perPlant: WorkedRate<Volume> | undefined;
}

function workedRow(
  { used, sides, rowLength, rowSpacing, plantSpacing }: TreeRowInput,
  at: string,
): WorkedRow {
  const { volumeRate, smallVolume, length: reported } = unitsLike(used.unit);
  const { length, area } = unitsLike(rowLength.unit);
  const both = used.value * (2 / sides);
  const long = inUnit(rowLength, length);
  const land = long * inUnit(rowSpacing, length);
  return {
    length,
    perLength: workedRate(both / long, `${used.unit}/${length}`, `${smallVolume}/${reported}`, at),
    perArea: workedRate(both / land, `${used.unit}/${area}`, volumeRate, at),
    perPlant:
      plantSpacing && workedRate((both * inUnit(plantSpacing, length)) / long, used.unit, smallVolume, at),
  };
}
