import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { checkedList, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import type { Mass, Quantity, Volume } from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working.js";
import type { Load } from "./loads.js";
import { carriersGone, shareOut } from "./product-in-loads.js";

/** What {@link mixLoads} is given. */
export interface MixLoadsInput {
  /** The loads that the mix is parted into. */
  readonly loads: readonly Load[];
  /** Each product's amount in the whole mix, adjuvants included, in the order wanted back. */
  readonly amounts: readonly (Volume | Mass)[];
}

/** One load as it is mixed. */
export interface MixedLoad extends Load {
  /** Each product's amount in this load. */
  readonly amounts: readonly (Volume | Mass)[];
  /** The water it takes: the mix less the liquid products. */
  readonly water: Volume;
}

/** The loads of a job as they are mixed. */
export interface MixedLoads {
  /** One entry a load, in the order of mixing. */
  readonly loads: readonly MixedLoad[];
  /** Each product's amount in all loads together: exactly the sum of the loads'. */
  readonly totals: readonly (Volume | Mass)[];
}

/**
 * Shares several products out over the loads, and says how much water each load takes.
 *
 * Formula: water = mix − liquid products. The carrier is the finished mix, filled to the mark, so what liquid products
 * take up is always counted; what a dry product takes up once wetted is not, and filling to the mark makes up for it.
 * Source: common practice, no source.
 *
 * @param input - at least one load; amounts more than 0
 * @returns the amounts as {@link productInLoads} shares them out; water in the carrier's unit, unrounded
 * @throws SprayMathError what {@link productInLoads} throws, or `conflict` where the products are more than the load
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
  const { loads, amounts } = checkedObject(input, "");
  const gone = carriersGone(loads);
  const shared = checkedList(amounts, "amounts", 0).map((amount, i) =>
    shareOut(amount, `amounts[${i}]`, gone),
  );
  return {
    loads: loads.map((load, i) => {
      const here = shared.map((product) => product.amounts[i] as Volume | Mass);
      return { ...load, amounts: here, water: waterOf(load, here, i) };
    }),
    totals: shared.map((product) => product.total),
  };
}

function liquidsIn(amounts: readonly (Volume | Mass)[]): Volume[] {
  return amounts.filter(
    (amount): amount is Volume => resolveUnit(amount.unit, "amounts").dimension === "volume",
  );
}

function waterOf(load: Load, amounts: readonly (Volume | Mass)[], i: number): Volume {
  const { value, unit } = load.carrier;
  const products = liquidsIn(amounts).reduce((sum, amount) => sum + inUnit(amount, unit, "amounts"), 0);
  if (moreThan(products, value)) {
    throw new SprayMathError(
      "conflict",
      "amounts",
      `Given ${products} ${unit} of liquid products in load ${i + 1} of ${value} ${unit}; wanted no more product than mix. ` +
        "Check the units of the rates, or put out more carrier per area.",
    );
  }
  return { value: Math.max(0, value - products), unit };
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
  const { carrier, amounts, water } = load;
  const liquids = liquidsIn(amounts);
  const names = liquids.map((_, i) => `x${i + 1}`);
  const inMix = liquids.map(
    (amount): Quantity => ({ value: inUnit(amount, carrier.unit, "amounts"), unit: carrier.unit }),
  );
  return [
    ...liquids.flatMap((amount, i) => conversionLines(`tank-mix.water.x${i + 1}`, amount, carrier.unit)),
    {
      id: "tank-mix.water",
      formula: ["mix", ...names].join(" - "),
      terms: { mix: carrier, ...Object.fromEntries(inMix.map((amount, i) => [`x${i + 1}`, amount])) },
      result: water,
      source: "common practice, no source",
    },
  ];
}
