import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { joined, type ListField, list, type ObjectField, object } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { quantity } from "../units/quantity-field.js";
import type { Mass, Volume, VolumeUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { LOAD, type Load } from "./loads.js";
import { LOAD_LIST, sharedBy, wholeMix } from "./product-in-loads.js";

/** The input of {@link mixLoads}. */
export interface MixLoadsInput {
  /** The loads that the mix is split into, at least one. */
  readonly loads: readonly Load[];
  /** Each product's amount in the whole mix, adjuvants included. More than 0 each. */
  readonly amounts: readonly (Volume | Mass)[];
}

// Nobody mixes as many.
const MOST_PRODUCTS = 100;

/** A list of products' amounts. */
/* @__NO_SIDE_EFFECTS__ */
export function amountList(sentence: string, least: number): ListField<Volume | Mass> {
  return list(sentence, quantity("The product's amount. More than 0.", ["volume", "mass"]), {
    least,
    most: MOST_PRODUCTS,
  });
}

const MIX: ObjectField<MixLoadsInput> = object<MixLoadsInput>({
  loads: LOAD_LIST,
  amounts: amountList("Each product's amount in the whole mix, adjuvants included. More than 0 each.", 0),
});

/** One load as it is mixed. */
export interface MixedLoad extends Load {
  /** Each product's amount in this load. */
  readonly amounts: readonly (Volume | Mass)[];
  /** The water it takes: the mix less the liquid products. 0 or more. */
  readonly water: Volume;
}

const MIXED_LOAD: ObjectField<MixedLoad> = joined(
  LOAD,
  object<Omit<MixedLoad, keyof Load>>({
    amounts: amountList("Each product's amount in this load.", 0),
    water: quantity(
      "The water it takes: the mix less the liquid products. 0 or more.",
      "volume",
      "nonnegative",
    ),
  }),
);

/** The loads of a job as they are mixed. */
export interface MixedLoads {
  /** One entry a load, in the order of mixing. */
  readonly loads: readonly MixedLoad[];
  /** Each product's amount in all loads together: exactly the sum of the loads'. */
  readonly totals: readonly (Volume | Mass)[];
}

/** The loads as they are mixed; `at` is the place of the amounts. Trusts its input. */
export function mixOf({ loads, amounts }: MixLoadsInput, at = "amounts"): MixedLoads {
  refuseNoWater(wholeMix(loads), amounts, at);
  const shared = amounts.map(sharedBy(loads));
  return {
    loads: loads.map((load, i) => {
      const here = shared.map((product) => product.amounts[i] as Volume | Mass);
      const { carrier, pieces, mark } = load;
      const mixed = { carrier, amounts: here, water: waterIn(carrier, here) };
      return pieces === undefined && mark === undefined ? mixed : { ...load, ...mixed };
    }),
    totals: shared.map((product) => product.total),
  };
}

/**
 * Shares several products out over the loads, and says how much water each load takes.
 *
 * Formula: water = mix − liquid products. The carrier is the finished mix, filled to the mark, so what liquid products take up
 * is always counted. What a dry product takes up once wetted is not, and filling to the mark makes up for it. Source: common
 * practice, no source.
 *
 * @param input - at least one load; amounts more than 0
 * @returns the amounts as {@link productInLoads} shares them out; water in the carrier's unit, unrounded
 * @throws SprayMathError what {@link productInLoads} throws, or `conflict` where the products leave no room for water
 *
 * @example
 * ```ts
 * import { mixLoads } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const loads = [{ carrier: qty(2, "gal") }, { carrier: qty(1, "gal") }];
 * const mixed = mixLoads({ loads, amounts: [qty(48, "fl_oz"), qty(3, "oz")] });
 * console.log(mixed.loads[0]?.water); // { value: 1.75, unit: 'gal' }
 * console.log(mixed.loads[1]?.amounts.map((amount) => amount.value)); // [ 16, 1 ]
 * ```
 */
export function mixLoads(input: MixLoadsInput): MixedLoads {
  return mixOf(checked(input, MIX));
}

function liquidsIn(amounts: readonly (Volume | Mass)[]): Volume[] {
  return amounts.filter((amount): amount is Volume => dimensionOf(amount.unit) === "volume");
}

function liquidIn(amounts: readonly (Volume | Mass)[], unit: VolumeUnit): number {
  return liquidsIn(amounts).reduce((sum, amount) => sum + inUnit(amount, unit), 0);
}

/** The water in a mix with these products. Trusts its input, which {@link refuseNoWater} saw. */
export function waterIn({ value, unit }: Volume, amounts: readonly (Volume | Mass)[]): Volume {
  // Amounts that all but fill the mix may be over it by the rounding of their last digit.
  return { value: Math.max(0, value - liquidIn(amounts, unit)), unit };
}

/** Refuses liquid products that fill the whole mix; `at` is their place. */
export function refuseNoWater(mix: Volume, amounts: readonly (Volume | Mass)[], at: string): void {
  const products = { value: liquidIn(amounts, mix.unit), unit: mix.unit };
  if (!moreThan(mix.value, products.value))
    throw refusal(
      "conflict",
      "no-room-for-water",
      at,
      "The liquid products add up to {products}, which leaves no room for water in {mix} of mix. Check the units of the rates.",
      { products, mix },
    );
}

/**
 * The working of {@link mixLoads} for one load: its water.
 *
 * @param load - as for {@link mixLoads}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link mixLoads} throws
 *
 * @example
 * ```ts
 * import { mixLoads } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 * import { loadWater } from "swath-to-spoon/working";
 *
 * const { loads } = mixLoads({ loads: [{ carrier: qty(4, "gal") }], amounts: [qty(1, "gal")] });
 * const lines = loads.flatMap(loadWater);
 * console.log(lines[0]?.formula, lines[0]?.result); // mix - x1 { value: 3, unit: 'gal' }
 * ```
 */
export function waterWorking(load: MixedLoad): WorkingLine[] {
  const { carrier, amounts, water } = checked(load, MIXED_LOAD);
  const liquids = liquidsIn(amounts).map(
    (amount, i) => [`x${i + 1}`, [amount, carrier.unit] as const] as const,
  );
  return formulaLines({
    id: "tank-mix.water",
    formula: ["mix", ...liquids.map(([name]) => name)].join(" - "),
    terms: { mix: [carrier, carrier.unit], ...Object.fromEntries(liquids) },
    result: water,
    source: "common practice, no source",
  });
}
