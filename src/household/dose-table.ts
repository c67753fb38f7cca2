import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { decided } from "../units/decide.js";
import { DIMENSIONS, dimensionOf } from "../units/dimensions.js";
import { either, list, type ObjectField, object, type Partly } from "../units/fields.js";
import { refusal } from "../units/message.js";
import { quantity, refuseDimension, treatedArea } from "../units/quantity-field.js";
import { resolvedUnit, resolveUnit } from "../units/resolve.js";
import { positiveIn } from "../units/result.js";
import { unitsLike, usualUnit } from "../units/systems.js";
import type {
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
import { doseOf, type Measurable, type NotMeasurable } from "./measure-out.js";
import { CLOSE_ENOUGH, ERROR_LIMIT, kindIsMeasured, RULE } from "./request.js";
import { newEffort } from "./search.js";
import { TOOLS, type Tools } from "./tools.js";

/** A rate as a label gives it: per treated area, or per volume of carrier. */
export type TableRate = VolumeRate | MassRate | Concentration;

/** The input of {@link doseTable}. */
export interface DoseTableInput {
  /** The rates, such as `evenSteps` gives: one row for each. Each more than 0. */
  readonly rates: readonly TableRate[];
  /** Treated areas for rates per area, volumes of carrier for rates per volume: one column for each. Each more than 0. */
  readonly sizes: readonly (TreatedArea | Volume)[];
  /** The tools that doses are measured with: the name of a set, or a list. */
  readonly tools: Tools;
  /** `never-over` where the amount is a label's maximum, `never-under` where it is a minimum, or `nearest`. */
  readonly rule: MeasuringRule;
  /** The largest error that will do, in percent of the amount, 0.1 to 50. 5 unless given. */
  readonly limitPercent?: number | undefined;
  /** The error up to which the fewest measures win, in percent of the amount, 0 to 50. 2 unless given. */
  readonly closeEnoughPercent?: number | undefined;
}

const TABLE: ObjectField<DoseTableInput> = /* @__PURE__ */ object<DoseTableInput>(
  {
    rates: list(
      "The rates, such as `evenSteps` gives: one row for each. Each more than 0.",
      // Stryker disable next-line StringLiteral: no schema has a table
      quantity("A rate as a label gives it: per treated area, or per volume of carrier.", [
        "volumeRate",
        "massRate",
        "volumeConcentration",
        "density",
      ]),
    ),
    sizes: list(
      "Treated areas for rates per area, volumes of carrier for rates per volume: one column for each. Each more than 0.",
      either<TreatedArea | Volume>(
        // Stryker disable next-line StringLiteral: no schema has a table
        "A treated area, or a volume of carrier.",
        // Stryker disable next-line StringLiteral: no schema has a table
        [treatedArea("A treated area."), quantity("A volume of carrier.", "volume")],
        (size) => (isArea((size as Quantity).unit) ? 0 : 1),
      ),
    ),
    tools: TOOLS,
    rule: RULE,
    limitPercent: ERROR_LIMIT,
    closeEnoughPercent: CLOSE_ENOUGH,
  },
  [canBePrinted, sizesFitRates, toolsFitRates],
);

// More than anybody prints.
const MOST_CELLS = 10_000;

function canBePrinted({ rates = [], sizes = [] }: Partly<DoseTableInput>, check: Check): void {
  const cells = rates.length * sizes.length;
  if (cells <= MOST_CELLS) return;
  check.fault(
    "out-of-range",
    "table-too-large",
    rates.length > sizes.length ? "rates" : "sizes",
    "A table of {given} doses is too large. Leave out rows or columns: up to {limit} doses.",
    { given: cells, limit: MOST_CELLS },
  );
}

function isArea(unit: unknown): boolean {
  return resolvedUnit(unit)?.dimension === "area";
}

function sizesFitRates({ rates = [], sizes = [] }: Partly<DoseTableInput>, check: Check): void {
  for (const [j, size] of sizes.entries()) {
    const rate = rates.find(({ unit }) => isArea(resolveUnit(unit).per) !== isArea(size.unit));
    if (rate === undefined) continue;
    const dimension = isArea(size.unit) ? "volume" : "area";
    check.fault(
      "wrong-dimension",
      "size-dimension",
      `sizes[${j}]`,
      "{given} is {is.dimension}. A rate of {rate} needs {expected.expected}, such as {example}.",
      {
        given: size,
        is: dimensionOf(size.unit),
        rate,
        expected: dimension,
        example: { value: 5, unit: usualUnit(dimension, unitsLike(rate.unit)) },
      },
    );
  }
}

function toolsFitRates({ rates = [], tools }: Partly<DoseTableInput>, check: Check): void {
  const units = new Set(rates.map(productUnit));
  for (const unit of units) if (tools !== undefined) kindIsMeasured({ value: 1, unit }, tools, check);
}

/** The unit over a rate's stroke. */
function productUnit({ unit }: TableRate): VolumeUnit | MassUnit {
  return resolveUnit(unit, "unit").over as VolumeUnit | MassUnit;
}

/** What one rate comes to for one size. */
export interface DoseTableCell {
  /** The treated area or the volume of carrier. */
  readonly size: TreatedArea | Volume;
  /** The exact amount of product, in the unit over the rate's stroke. */
  readonly amount: Quantity<VolumeUnit | MassUnit>;
  /** The amount as it is measured, or why it can't be. */
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
 * Makes a table as handbooks print them: fluid ounces per 100 gallons as spoons per gallon, or pints per acre as spoons per
 * 1,000 square feet. Printed tables round to "easy" fractions and go over the rate without saying
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
  const { rates, sizes, ...how } = checked(input, TABLE);
  const effort = newEffort(15);
  return rates.map((rate) => ({
    rate,
    cells: sizes.map((size, j) => {
      const at = `sizes[${j}]`;
      const per = resolveUnit(rate.unit, "unit").per as Unit;
      const amount = positiveIn(rate.value * inUnit(size, per), productUnit(rate), at);
      return { size, amount, dose: doseOf({ amount, ...how }, at, effort) };
    }),
  }));
}

/** The input of {@link evenSteps}. */
export interface EvenStepsInput<U extends Unit = Unit> {
  /** The first quantity. */
  readonly first: Quantity<U>;
  /** The last: it is among them only where a step ends on it. */
  readonly last: Quantity<UnitLike<U>>;
  /** How far apart they are. More than 0. */
  readonly step: Quantity<UnitLike<U>>;
}

const STEPS: ObjectField<EvenStepsInput> = /* @__PURE__ */ object<EvenStepsInput>(
  {
    first: quantity("The first quantity.", DIMENSIONS, "any"),
    last: quantity("The last: it is among them only where a step ends on it.", DIMENSIONS, "any"),
    step: quantity("How far apart they are. More than 0.", DIMENSIONS),
  },
  [sameDimensions],
);

function sameDimensions(given: Partly<EvenStepsInput>, check: Check): void {
  const { first } = given;
  if (first === undefined) return;
  const expected = dimensionOf(first.unit);
  for (const field of ["last", "step"] as const) {
    const other = given[field];
    if (other !== undefined && dimensionOf(other.unit) !== expected)
      refuseDimension(other, [expected], check, field);
  }
}

/**
 * Returns the quantities from one to another in even steps, in exact decimals: for the rows or columns of {@link doseTable}.
 *
 * @param input - `first`, `last` and `step`, in units of one dimension; the step goes into at most 1,000 rows
 * @returns the quantities, in the unit of the first
 * @throws SprayMathError `out-of-range` (last before first, no step, too many), `wrong-dimension`, `missing`,
 *   `not-a-quantity`, `not-finite`, `unknown-unit` or `unknown-field`
 *
 * @example
 * ```ts
 * import { evenSteps } from "swath-to-spoon/household";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rates = evenSteps({ first: qty(0.1, "pt/ac"), last: qty(0.4, "pt/ac"), step: qty(0.1, "pt/ac") });
 * console.log(rates.map((rate) => rate.value)); // [ 0.1, 0.2, 0.3, 0.4 ]
 * ```
 */
export function evenSteps<U extends Unit>(input: EvenStepsInput<U>): Quantity<U>[] {
  const { first, last, step } = checked(input, STEPS);
  const unit = first.unit as U;
  const from = decided(first.value);
  const to = decided(inUnit(last, unit));
  const by = decided(inUnit(step, unit));
  if (to.lt(from)) {
    throw refusal(
      "out-of-range",
      "last-before-first",
      "last",
      "The last, {last}, is before the first, {first}.",
      {
        last,
        first,
      },
    );
  }
  const count = to.minus(from).div(by).round(0, 0).toNumber() + 1;
  if (count > MOST_STEPS) {
    throw refusal(
      "out-of-range",
      "too-many-steps",
      "step",
      "Steps of {step} make more than {limit} steps. Enter a larger step.",
      { step, limit: MOST_STEPS },
    );
  }
  return Array.from({ length: count }, (_, i) => ({ value: by.times(i).plus(from).toNumber(), unit }));
}

const MOST_STEPS = 1000;
