import { SprayMathError } from "../errors.js";
import { decided } from "../units/decide.js";
import { areaIn, checkedList, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
import type {
  AreaUnit,
  Concentration,
  MassRate,
  MassUnit,
  Quantity,
  TreatedArea,
  Unit,
  UnitLike,
  Volume,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import type { MeasuringRule } from "./measure.js";
import { type Measurable, measureOut, type NotMeasurable } from "./measure-out.js";
import type { MeasuringTool, ToolSetName } from "./tools.js";

/** A rate as a label gives it: per treated area, or per volume of carrier. */
export type TableRate = VolumeRate | MassRate | Concentration;

/** What {@link doseTable} is asked. */
export interface DoseTableInput {
  /** One row for each: a list, or what {@link steps} gives. Each more than 0. */
  readonly rates: readonly TableRate[];
  /** One column for each: treated areas for rates per area, volumes of carrier for rates per volume. */
  readonly sizes: readonly (TreatedArea | Volume)[];
  /** As for {@link measureOut}. */
  readonly tools: ToolSetName | readonly MeasuringTool[];
  /** As for {@link measureOut}. */
  readonly rule: MeasuringRule;
  /** As for {@link measureOut}. */
  readonly limitPercent?: number;
}

/** What one rate comes to for one size. */
export interface DoseTableCell {
  /** The treated area or the volume of carrier. */
  readonly size: TreatedArea | Volume;
  /** The exact amount of product, in the unit over the rate's stroke. */
  readonly amount: Quantity<VolumeUnit | MassUnit>;
  /** The amount as it is measured, or why it cannot be. */
  readonly dose: Measurable | NotMeasurable;
}

/** The doses of one rate. */
export interface DoseTableRow {
  /** The rate. */
  readonly rate: TableRate;
  /** One for each size, in their order. */
  readonly cells: readonly DoseTableCell[];
}

/**
 * A table as handbooks print them, for any rates and sizes: fluid ounces per 100 gallons as spoons per gallon, or pints
 * per acre as spoons per 1,000 square feet. Printed tables round to "easy" fractions and go over the rate without saying
 * so; this one measures each amount with {@link measureOut} and its rule.
 *
 * Formula: amount = rate × size.
 *
 * @param input - see {@link DoseTableInput}
 * @returns a row for each rate, with a cell for each size
 * @throws SprayMathError `wrong-dimension` (a volume where the rate is per area, and the like), `wrong-area`, `too-few`,
 *   or what {@link measureOut} throws
 *
 * @example
 * ```ts
 * import { doseTable } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rates = [qty(16, "fl_oz/100gal"), qty(32, "fl_oz/100gal")];
 * const table = doseTable({ rates, sizes: [qty(5, "gal")], tools: "us-spoons", rule: "never-over" });
 * const dose = table[0]?.cells[0]?.dose;
 * if (dose?.ok) console.log(dose.parts.map((part) => `${part.count} × ${part.tool.name}`).join(" + ")); // 1 × tablespoon + 1 × teaspoon + 1 × 1/2 teaspoon + 1 × 1/4 teaspoon
 * ```
 */
export function doseTable(input: DoseTableInput): DoseTableRow[] {
  const { rates, sizes, tools, rule, limitPercent } = checkedObject(input, "");
  checkedList(rates, "rates");
  checkedList(sizes, "sizes");
  return rates.map((rate, i) => ({
    rate,
    cells: sizes.map((size, j) => {
      const amount = amountFor(rate, `rates[${i}]`, size, `sizes[${j}]`);
      return {
        size,
        amount,
        // Stryker disable next-line ConditionalExpression: an undefined limit is the usual one
        dose: measureOut({ amount, tools, rule, ...(limitPercent !== undefined && { limitPercent }) }),
      };
    }),
  }));
}

function amountFor(
  rate: TableRate,
  ratePath: string,
  size: TreatedArea | Volume,
  sizePath: string,
): Quantity<VolumeUnit | MassUnit> {
  checkShape(rate, ratePath);
  const { dimension, over, per } = resolveUnit(rate.unit, `${ratePath}.unit`);
  const byArea = dimension === "volumeRate" || dimension === "massRate";
  if (!byArea && dimension !== "volumeConcentration" && dimension !== "density") {
    throw new SprayMathError(
      "wrong-dimension",
      ratePath,
      `Given ${rate.value} ${rate.unit}; wanted product per area, such as pt/ac, or per volume of carrier, such as fl_oz/100gal.`,
    );
  }
  inUnit(rate as Quantity, rate.unit as Unit, ratePath);
  const many = byArea
    ? areaIn(size as TreatedArea, "treated", per as AreaUnit, sizePath)
    : inUnit(size as Volume, per as VolumeUnit, sizePath);
  const value = rate.value * many;
  if (!Number.isFinite(value) || value === 0)
    throw new SprayMathError(
      "not-finite",
      sizePath,
      `Given ${size.value} ${size.unit}, out of reach of a float.`,
    );
  return { value, unit: over as VolumeUnit | MassUnit };
}

/**
 * The quantities from one to another in equal steps, in exact decimals: for the rows or columns of {@link doseTable}.
 *
 * @param range - `first`, `last` and `step`, in units of one dimension; the step is more than 0 and goes into at most
 *   1,000 rows; `last` is among them only where a step ends on it
 * @returns the quantities, in the unit of the first
 * @throws SprayMathError `out-of-range` (last before first, no step, too many), `wrong-dimension` or `not-a-quantity`
 *
 * @example
 * ```ts
 * import { steps } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rates = steps({ first: qty(0.1, "pt/ac"), last: qty(0.4, "pt/ac"), step: qty(0.1, "pt/ac") });
 * console.log(rates.map((rate) => rate.value)); // [ 0.1, 0.2, 0.3, 0.4 ]
 * ```
 */
export function steps<U extends Unit>(range: {
  readonly first: Quantity<U>;
  readonly last: Quantity<UnitLike<U>>;
  readonly step: Quantity<UnitLike<U>>;
}): Quantity<U>[] {
  const { first, last, step } = checkedObject(range, "range");
  checkShape(first, "first");
  const { unit } = first;
  // Stryker disable StringLiteral: "any" is neither of the two ranges that are looked at; the first is a shape already
  const from = decided(inUnit(first as Quantity, unit as Unit, "first", "any"));
  const to = decided(inUnit(last as Quantity, unit as Unit, "last", "any"));
  // Stryker restore StringLiteral
  const by = decided(inUnit(step as Quantity, unit as Unit, "step"));
  if (to.lt(from)) {
    throw new SprayMathError(
      "out-of-range",
      "last",
      `Given ${last.value} ${last.unit}, which is before the first, ${first.value} ${unit}; wanted it after.`,
    );
  }
  const count = to.minus(from).div(by).round(0, 0).toNumber() + 1;
  if (count > 1000) {
    throw new SprayMathError(
      "out-of-range",
      "step",
      `Given ${step.value} ${step.unit}, which makes more than 1,000 steps; wanted a larger one.`,
    );
  }
  return Array.from({ length: count }, (_, i) => ({ value: by.times(i).plus(from).toNumber(), unit }));
}
