import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import {
  byGiven,
  type Complete,
  count,
  type EitherField,
  either,
  type ObjectField,
  object,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { groundArea, quantity } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { positiveIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  Area,
  AreaUnit,
  GroundArea,
  Length,
  Mass,
  MassRate,
  MassUnit,
  Volume,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** A rate per area of ground, and how the plants stand: by their spacings, or by their number on a piece of ground. */
export interface RatePerPlantInput<R extends VolumeRate | MassRate = VolumeRate | MassRate> {
  /** The rate per area of ground, alleys included: a volume of spray or an amount of product. More than 0. */
  readonly rate: R;
  /** The distance from row to row. More than 0. */
  readonly rowSpacing?: Length | undefined;
  /** The distance from plant to plant in the row. More than 0. */
  readonly plantSpacing?: Length | undefined;
  /** The number of plants on the ground: a whole number, 1 or more. */
  readonly plants?: number | undefined;
  /** The ground that they stand on, such as one acre for plants per acre. More than 0. */
  readonly ground?: GroundArea | undefined;
}

type Spaced = Complete<Pick<RatePerPlantInput, "rate" | "rowSpacing" | "plantSpacing">>;
type Counted = Complete<Pick<RatePerPlantInput, "rate" | "plants" | "ground">>;

const RATE = quantity(
  "The rate per area of ground, alleys included: a volume of spray or an amount of product. More than 0.",
  ["volumeRate", "massRate"],
);

const PER_PLANT: EitherField<RatePerPlantInput> = either<RatePerPlantInput>(
  "A rate per area of ground, and how the plants stand: by their spacings, or by their number on a piece of ground.",
  [
    object<Spaced>({
      rate: RATE,
      rowSpacing: quantity("The distance from row to row. More than 0.", "length"),
      plantSpacing: quantity("The distance from plant to plant in the row. More than 0.", "length"),
    }) as ObjectField<RatePerPlantInput>,
    object<Counted>({
      rate: RATE,
      plants: count("The number of plants on the ground: a whole number, 1 or more."),
      ground: groundArea("The ground that they stand on, such as one acre for plants per acre. More than 0."),
    }) as ObjectField<RatePerPlantInput>,
  ],
  byGiven([
    ["rowSpacing", "plantSpacing"],
    ["plants", "ground"],
  ]),
);

/**
 * Returns what each tree, vine or plant gets of a rate per area: gallons per tree, or product per tree. The reverse is
 * {@link handSprayRates} with the number of plants.
 *
 * Formula: per plant = rate × row spacing × plant spacing, the ground that each plant stands on; or rate × ground / plants.
 * Source: Rates for Application on a Per-tree Basis (Fruit Production for the Home Gardener, Penn State Extension).
 *
 * @param input - the rate, and the two spacings or the plants on a piece of ground
 * @returns the amount for each plant, in the unit that the rate is in: gallons for gal/ac, milliliters for mL/ha
 * @throws SprayMathError `missing` where neither spacings nor plants are given, `conflict` where both are, `wrong-area`,
 * `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { ratePerPlant } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(ratePerPlant({ rate: qty(500, "L/ha"), rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") })); // { value: 1, unit: 'L' }
 * ```
 */
export function ratePerPlant(input: RatePerPlantInput<VolumeRate>): Volume;
export function ratePerPlant(input: RatePerPlantInput<MassRate>): Mass;
export function ratePerPlant(input: RatePerPlantInput): Volume | Mass;
export function ratePerPlant(input: RatePerPlantInput): Volume | Mass {
  return amountPerPlant(checked(input, PER_PLANT) as Spaced | Counted);
}

/** What each plant gets of a rate per area. Trusts its input. */
export function amountPerPlant(input: Spaced | Counted, at = ""): Volume | Mass {
  const { over, per = "" } = resolveUnit(input.rate.unit);
  const each = inUnit(groundOfOne(input), per as AreaUnit);
  return positiveIn(input.rate.value * each, over as VolumeUnit | MassUnit, at) as Volume | Mass;
}

/** The ground that one plant stands on. */
function groundOfOne(input: Spaced | Counted): Area {
  if ("plants" in input) return { value: input.ground.value / input.plants, unit: input.ground.unit };
  const { length, area } = unitsLike(input.rowSpacing.unit);
  return { value: inUnit(input.rowSpacing, length) * inUnit(input.plantSpacing, length), unit: area };
}

/**
 * The working of {@link ratePerPlant}, line by line.
 *
 * @param input - as for {@link ratePerPlant}
 * @returns the lines; the last one's result is the amount for each plant
 * @throws SprayMathError as {@link ratePerPlant} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { ratePerPlant } from "swath-to-spoon/working";
 *
 * const trees = { rowSpacing: qty(5, "m"), plantSpacing: qty(4, "m") };
 * console.log(ratePerPlant({ rate: qty(500, "L/ha"), ...trees }).at(-1)?.formula); // rate * rowSpacing * plantSpacing
 * ```
 */
export function ratePerPlantWorking(input: RatePerPlantInput): WorkingLine[] {
  const given = checked(input, PER_PLANT) as Spaced | Counted;
  const { rate } = given;
  const { over } = resolveUnit(rate.unit);
  const { unit: area } = groundOfOne(given);
  const [formula, terms]: [string, Record<string, GivenTerm>] =
    "plants" in given
      ? ["rate * ground / plants", { ground: [given.ground, area], plants: given.plants }]
      : [
          "rate * rowSpacing * plantSpacing",
          {
            rowSpacing: [given.rowSpacing, unitsLike(area).length],
            plantSpacing: [given.plantSpacing, unitsLike(area).length],
          },
        ];
  return formulaLines({
    id: "output-rate.per-plant",
    formula,
    terms: { rate: [rate, perUnit(over, area)], ...terms },
    result: amountPerPlant(given),
    source: "Rates for Application on a Per-tree Basis, Penn State Extension",
  });
}
