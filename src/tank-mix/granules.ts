import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { ceilDecided, moreThan } from "../units/decide.js";
import {
  byGiven,
  choice,
  count,
  type EitherField,
  either,
  type ObjectField,
  object,
  optional,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { quantity, treatedArea } from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import { finite, positiveIn, resultIn } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  AreaUnit,
  CountUnit,
  Length,
  LengthUnit,
  Mass,
  MassPerCount,
  MassPerLength,
  MassRate,
  MassUnit,
  Quantity,
  TreatedArea,
} from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

/** Granules or dry fertilizer at a rate per area. */
export interface GranulesOnArea {
  /** The rate of product per area. More than 0. */
  readonly rate: MassRate;
  /** The treated area: a plot, all beds together, or one bed. More than 0. */
  readonly area: TreatedArea;
}

/** Granules or dry fertilizer at a rate per length of row. */
export interface GranulesOnRow {
  /** The rate of product per length of row. More than 0. */
  readonly rate: MassPerLength;
  /** The length of all rows together. More than 0. */
  readonly rowLength: Length;
}

/** Granules or dry fertilizer at a rate per plant, tree, pot or spot. */
export interface GranulesOnPlants {
  /** The rate of product per plant, tree, pot or spot. More than 0. */
  readonly rate: MassPerCount;
  /** How many there are: a whole number, 1 or more. */
  readonly plants: number;
}

/** A rate of granules or dry fertilizer, and what it is spread on. */
export type GranulesInput = GranulesOnArea | GranulesOnRow | GranulesOnPlants;

const GRANULES: EitherField<GranulesInput> = /* @__PURE__ */ either<GranulesInput>(
  "A rate of granules or dry fertilizer, and what it is spread on.",
  [
    object<GranulesOnArea>({
      rate: quantity("The rate of product per area. More than 0.", "massRate"),
      area: treatedArea("The treated area: a plot, all beds together, or one bed. More than 0."),
    }),
    object<GranulesOnRow>({
      rate: quantity("The rate of product per length of row. More than 0.", "massPerLength"),
      rowLength: quantity("The length of all rows together. More than 0.", "length"),
    }),
    object<GranulesOnPlants>({
      rate: quantity("The rate of product per plant, tree, pot or spot. More than 0.", "massPerCount"),
      plants: count("How many there are: a whole number, 1 or more."),
    }),
  ],
  byGiven([["area"], ["rowLength"], ["plants"]]),
);

/** What the granules come to: the amount with its formula. */
interface WorkedGranules {
  readonly formula: string;
  readonly size: GivenTerm;
  readonly amount: Mass;
}

function workedGranules(input: GranulesInput): WorkedGranules {
  const { over, per } = resolveUnit(input.rate.unit);
  const { value } = input.rate;
  const amount = (size: number): Mass => positiveIn(value * size, over as MassUnit);
  if ("area" in input) {
    const unit = per as AreaUnit;
    return { formula: "rate * area", size: [input.area, unit], amount: amount(inUnit(input.area, unit)) };
  }
  if ("rowLength" in input) {
    const unit = per as LengthUnit;
    return {
      formula: "rate * rowLength",
      size: [input.rowLength, unit],
      amount: amount(inUnit(input.rowLength, unit)),
    };
  }
  const plants = { value: input.plants, unit: "plant" } as const;
  const unit = per as CountUnit;
  return { formula: "rate * plants", size: [plants, unit], amount: amount(inUnit(plants, unit)) };
}

/**
 * Returns how much product to weigh out: what a rate of granules or dry fertilizer comes to on an area, on all rows, or on so many
 * plants. For the amount per bed give the area of one bed.
 *
 * Formula: amount = rate × area, rate × row length, or rate × plants. Source: by definition of the rate.
 *
 * @param input - the rate, and what it is spread on
 * @returns the amount in the unit over the stroke of the rate; within 8 ulp of the exact value
 * @throws SprayMathError `missing` where none of area, row length and plants is given, `conflict` where more than one is,
 * `wrong-dimension` where the rate is not per what is given, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`,
 * `wrong-area` or `out-of-range`
 *
 * @example
 * ```ts
 * import { granulesFor } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const bed = { value: 150, unit: "ft2", of: "treated" } as const;
 * console.log(granulesFor({ rate: qty(1.5, "lb/100ft2"), area: bed })); // { value: 2.25, unit: 'lb' }
 * console.log(granulesFor({ rate: qty(8, "oz/1000ft"), rowLength: qty(250, "ft") })); // { value: 2, unit: 'oz' }
 * console.log(granulesFor({ rate: qty(20, "g/tree"), plants: 45 })); // { value: 900, unit: 'g' }
 * ```
 */
export function granulesFor(input: GranulesInput): Mass {
  return granulesOf(checked(input, GRANULES));
}

/** What a rate of granules comes to. Trusts its input. */
export function granulesOf(input: GranulesInput): Mass {
  return workedGranules(input).amount;
}

/**
 * The working of {@link granulesFor}.
 *
 * @param input - as for {@link granulesFor}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link granulesFor} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { granulesFor } from "swath-to-spoon/working";
 *
 * const lines = granulesFor({ rate: qty(20, "g/tree"), plants: 45 });
 * console.log(lines.at(-1)?.formula); // rate * plants
 * ```
 */
export function granulesForWorking(input: GranulesInput): WorkingLine[] {
  return linesOfGranules(checked(input, GRANULES));
}

/** The working of {@link granulesOf}. Trusts its input. */
export function linesOfGranules(input: GranulesInput): WorkingLine[] {
  const { formula, size, amount } = workedGranules(input);
  const symbol = formula.replace("rate * ", "");
  return formulaLines({
    id: `tank-mix.granules-${symbol}`,
    formula,
    terms: { rate: [input.rate, input.rate.unit], [symbol]: size },
    result: amount,
    source: "by definition of the rate",
  });
}

/** The input of {@link granulesCover}. */
export interface GranulesCoverInput {
  /** The weight of product: a bag, a full hopper, what is left. More than 0. */
  readonly amount: Mass;
  /** The rate of product per area. More than 0. */
  readonly rate: MassRate;
}

const COVER: ObjectField<GranulesCoverInput> = /* @__PURE__ */ object<GranulesCoverInput>({
  amount: quantity("The weight of product: a bag, a full hopper, what is left. More than 0.", "mass"),
  rate: quantity("The rate of product per area. More than 0.", "massRate"),
});

function workedCover({ amount, rate }: GranulesCoverInput): {
  readonly mass: MassUnit;
  readonly share: Quantity<AreaUnit>;
  readonly area: TreatedArea;
} {
  const { over, per } = resolveUnit(rate.unit);
  const mass = over as MassUnit;
  const share = { value: inUnit(amount, mass) / rate.value, unit: per as AreaUnit };
  return { mass, share, area: { ...resultIn(share, unitsLike(amount.unit).area), of: "treated" } };
}

/**
 * Returns the area that a bag, a hopper or what is left covers at a rate.
 *
 * Formula: area = amount / rate. Source: by definition of the rate.
 *
 * @param input - the weight and the rate
 * @returns treated area in ft2 or m2, by the system of the weight; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { granulesCover } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(granulesCover({ amount: qty(50, "lb"), rate: qty(4, "lb/1000ft2") })); // { value: 12500, unit: 'ft2', of: 'treated' }
 * ```
 */
export function granulesCover(input: GranulesCoverInput): TreatedArea {
  return workedCover(checked(input, COVER)).area;
}

/**
 * The working of {@link granulesCover}.
 *
 * @param input - as for {@link granulesCover}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link granulesCover} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { granulesCover } from "swath-to-spoon/working";
 *
 * const lines = granulesCover({ amount: qty(50, "lb"), rate: qty(4, "lb/1000ft2") });
 * console.log(lines[0]?.formula); // amount / rate
 * ```
 */
export function granulesCoverWorking(input: GranulesCoverInput): WorkingLine[] {
  const given = checked(input, COVER);
  const { amount, rate } = given;
  const { mass, share, area } = workedCover(given);
  return formulaLines(
    {
      id: "tank-mix.granules-cover",
      formula: "amount / rate",
      terms: { amount: [amount, mass], rate: [rate, rate.unit] },
      result: share,
      source: "by definition of the rate",
    },
    area.unit,
  );
}

/** The input of {@link hopperLoads}. */
export interface HopperInput {
  /** All the product that is to be spread. More than 0. */
  readonly total: Mass;
  /** What the hopper holds, or what it is to be filled with. More than 0. */
  readonly hopper: Mass;
  /** In how many directions it is spread: 2 where half goes on lengthwise and half crosswise. 1 unless given. */
  readonly directions?: 1 | 2 | undefined;
}

const HOPPER: ObjectField<HopperInput> = /* @__PURE__ */ object<HopperInput>({
  total: quantity("All the product that is to be spread. More than 0.", "mass"),
  hopper: quantity("What the hopper holds, or what it is to be filled with. More than 0.", "mass"),
  directions: optional(
    choice(
      "In how many directions it is spread: 2 where half goes on lengthwise and half crosswise. 1 unless given.",
      [1, 2],
    ),
  ),
});

/** How product is shared out to the hopper. */
export interface HopperLoads {
  /** The product for one direction: all of it, or half where there are two. */
  readonly perDirection: Mass;
  /** How often the hopper is filled for one direction, the last fill included. */
  readonly fills: number;
  /** The last fill of a direction; a full hopper where it comes out even. */
  readonly lastFill: Mass;
}

/**
 * Returns how often to fill the hopper, and with how much the last time. Where half goes on lengthwise and half crosswise, each direction
 * gets its own half.
 *
 * Formula: per direction = total / directions; fills = ⌈per direction / hopper⌉; last fill = per direction − (fills − 1) × hopper. The
 * count is made on 12 significant digits. Source: counting; half in each of two directions: Rotary Spreader Calibration Procedures
 * (UMass Extension).
 *
 * @param input - the product, the hopper, and the directions where they are two
 * @returns the amounts in the unit of `total`, the last fill within 8 ulp of the total
 * @throws SprayMathError `out-of-range` for too many fills to count, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`,
 * `unknown-field`, `unknown-choice` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { hopperLoads } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const { perDirection, fills, lastFill } = hopperLoads({ total: qty(90, "lb"), hopper: qty(20, "lb"), directions: 2 });
 * console.log(perDirection, fills, lastFill); // { value: 45, unit: 'lb' } 3 { value: 5, unit: 'lb' }
 * ```
 */
export function hopperLoads(input: HopperInput): HopperLoads {
  return loadsOfHopper(checked(input, HOPPER));
}

/** How product is shared out to the hopper. Trusts its input. */
export function loadsOfHopper({ total, hopper, directions = 1 }: HopperInput): HopperLoads {
  const perDirection = positiveIn(total.value / directions, total.unit, "total");
  const full = inUnit(hopper, total.unit);
  const fills = countedIn(perDirection, hopper, full, "hopper");
  const last = perDirection.value - (fills - 1) * full;
  return {
    perDirection,
    fills,
    // Noise in a last fill that comes out even would show more than the hopper holds.
    lastFill: { value: moreThan(full, last) ? last : full, unit: total.unit },
  };
}

function countedIn(whole: Mass, part: Mass, size: number, at: string): number {
  const needed = whole.value / size;
  // Stryker disable next-line EqualityOperator: no amount is that many parts to the last of them
  if (!(needed <= Number.MAX_SAFE_INTEGER))
    throw refusal(
      "out-of-range",
      "parts-uncountable",
      at,
      "{part} goes too many times into {whole} to count. Check the units.",
      { part, whole: { value: whole.value, unit: whole.unit } },
    );
  return ceilDecided(needed);
}

/**
 * The working of {@link hopperLoads}.
 *
 * @param input - as for {@link hopperLoads}
 * @returns the lines: the product for one direction, the fills, and last the last fill
 * @throws SprayMathError what {@link hopperLoads} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { hopperLoads } from "swath-to-spoon/working";
 *
 * const lines = hopperLoads({ total: qty(45, "lb"), hopper: qty(20, "lb") });
 * console.log(lines.map((line) => line.result)); // [ 3, { value: 5, unit: 'lb' } ]
 * ```
 */
export function hopperLoadsWorking(input: HopperInput): WorkingLine[] {
  return linesOfHopper(checked(input, HOPPER));
}

/** The working of {@link loadsOfHopper}. Trusts its input. */
export function linesOfHopper(given: HopperInput): WorkingLine[] {
  const { total, hopper, directions = 1 } = given;
  const { perDirection, fills, lastFill } = loadsOfHopper(given);
  const { unit } = total;
  const full: GivenTerm = [hopper, unit];
  const held = { value: inUnit(hopper, unit), unit };
  return [
    ...(directions === 1
      ? []
      : formulaLines({
          id: "tank-mix.hopper-direction",
          formula: "total / directions",
          terms: { total: [total, unit], directions },
          result: perDirection,
          source: "Rotary Spreader Calibration Procedures, UMass Extension",
        })),
    ...formulaLines({
      id: "tank-mix.hopper-fills",
      formula: "ceil(perDirection / hopper)",
      terms: { perDirection: [perDirection, unit], hopper: full },
      result: fills,
      source: "counting",
    }),
    ...formulaLines({
      id: "tank-mix.hopper-last",
      formula: lastFillFormula(perDirection, fills, held),
      terms: { perDirection: [perDirection, unit], fills, hopper: [held, unit] },
      result: lastFill,
      source: "counting",
    }),
  ];
}

function lastFillFormula(perDirection: Mass, fills: number, hopper: Mass): string {
  if (fills === 1) return "perDirection";
  const last = "perDirection - (fills - 1) * hopper";
  // Noise would show more than the hopper holds.
  return perDirection.value - (fills - 1) * hopper.value > hopper.value ? `min(hopper, ${last})` : last;
}

/** The input of {@link bagsFor}. */
export interface BagsInput {
  /** All the product that is needed. More than 0. */
  readonly total: Mass;
  /** What one bag holds. More than 0. */
  readonly bag: Mass;
}

const BAGS: ObjectField<BagsInput> = /* @__PURE__ */ object<BagsInput>({
  total: quantity("All the product that is needed. More than 0.", "mass"),
  bag: quantity("What one bag holds. More than 0.", "mass"),
});

/** Bags to buy. */
export interface Bags {
  /** How many whole bags. */
  readonly bags: number;
  /** What is left over in the last one; 0 where it comes out even. */
  readonly leftOver: Mass;
}

/**
 * Returns how many whole bags to buy, and what is left over.
 *
 * Formula: bags = ⌈total / bag⌉; left over = bags × bag − total. The count is made on 12 significant digits. Source: counting.
 *
 * @param input - the product that is needed, and what a bag holds
 * @returns the bags, and what is left over in the unit of `total`, within 8 ulp of the total
 * @throws SprayMathError `out-of-range` for too many bags to count, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`,
 * `unknown-field` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { bagsFor } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(bagsFor({ total: qty(107, "lb"), bag: qty(40, "lb") })); // { bags: 3, leftOver: { value: 13, unit: 'lb' } }
 * ```
 */
export function bagsFor(input: BagsInput): Bags {
  return bagsOf(checked(input, BAGS));
}

/** Bags to buy. Trusts its input. */
export function bagsOf({ total, bag }: BagsInput): Bags {
  const size = inUnit(bag, total.unit);
  const bags = countedIn(total, bag, size, "bag");
  const bought = finite(bags * size, "bag");
  return {
    bags,
    leftOver: { value: moreThan(bought, total.value) ? bought - total.value : 0, unit: total.unit },
  };
}

/**
 * The working of {@link bagsFor}.
 *
 * @param input - as for {@link bagsFor}
 * @returns the lines: the bags, and last what is left over
 * @throws SprayMathError what {@link bagsFor} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { bagsFor } from "swath-to-spoon/working";
 *
 * const lines = bagsFor({ total: qty(107, "lb"), bag: qty(40, "lb") });
 * console.log(lines.map((line) => line.formula)); // [ 'ceil(total / bag)', 'bags * bag - total' ]
 * ```
 */
export function bagsForWorking(input: BagsInput): WorkingLine[] {
  return linesOfBags(checked(input, BAGS));
}

/** The working of {@link bagsOf}. Trusts its input. */
export function linesOfBags(given: BagsInput): WorkingLine[] {
  const { total, bag } = given;
  const { bags, leftOver } = bagsOf(given);
  const { unit } = total;
  return [
    ...formulaLines({
      id: "tank-mix.bags",
      formula: "ceil(total / bag)",
      terms: { total: [total, unit], bag: [bag, unit] },
      result: bags,
      source: "counting",
    }),
    ...formulaLines({
      id: "tank-mix.bags-left",
      // Noise would show less than nothing.
      formula: leftOver.value > 0 ? "bags * bag - total" : "max(0, bags * bag - total)",
      terms: { bags, bag: [{ value: inUnit(bag, unit), unit }, unit], total: [total, unit] },
      result: leftOver,
      source: "counting",
    }),
  ];
}
