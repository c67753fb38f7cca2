import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  about,
  byGiven,
  type Complete,
  type EitherField,
  either,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { quantity } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { positive, positiveIn } from "../units/result.js";
import type { Concentration, MassRate, VolumeRate, VolumeUnit } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { PRODUCT_FORM, type ProductForm } from "./content.js";
import { rateFitsForm, SINGLE_RATE, type SingleRate, sizesFor } from "./label-rate.js";
import { linesOfStrength, type RateStrength, refuseUnmixable, strengthOfRate } from "./product.js";

/** A product in a concentrate spray. */
export interface ConcentrateProduct {
  /** The label's rate: in the dilute spray, such as 8 fl oz per 100 gal, or per area. */
  readonly rate: SingleRate;
  /** Whether it is measured by volume (liquid) or by weight (dry). */
  readonly form: ProductForm;
}

/** A dilute spray, and how much less water is to carry the same product. */
export interface ConcentrateInput {
  /** The dilute rate: what wets the canopy just short of run-off. More than 0. */
  readonly dilute: VolumeRate;
  /** What the sprayer puts out. More than 0, and no more than the dilute rate. */
  readonly concentrate?: VolumeRate | undefined;
  /** How many times the strength: 3 for 3X. 1 or more. */
  readonly factor?: number | undefined;
  /** The product, for its strength in the tank and its rate per area. */
  readonly product?: ConcentrateProduct | undefined;
}

const PRODUCT: ObjectField<ConcentrateProduct> = object<ConcentrateProduct>(
  {
    rate: about(
      "The label's rate: in the dilute spray, such as 8 fl oz per 100 gal, or per area.",
      SINGLE_RATE,
    ),
    form: PRODUCT_FORM,
  },
  [({ rate, form }, check) => rateFitsForm(rate, form, "rate", check), rateOfCanopy],
  "The product, for its strength in the tank and its rate per area.",
);

/** Notes a rate that goes by something else than the canopy's spray or its area. */
function rateOfCanopy({ rate }: Partly<ConcentrateProduct>, check: Check): void {
  if (rate === undefined || sizesFor(rate).every((size) => size === "carrierRate")) return;
  check.fault(
    "wrong-dimension",
    "rate-not-of-canopy",
    "rate",
    "Enter the rate in the dilute spray, such as {example}, or per area sprayed.",
    {
      example:
        check.system === "metric" ? { value: 50, unit: "mL/100L" } : { value: 8, unit: "fl_oz/100gal" },
    },
  );
}

type ByRate = Omit<ConcentrateInput, "factor" | "concentrate"> &
  Complete<Pick<ConcentrateInput, "concentrate">>;
type ByFactor = Omit<ConcentrateInput, "factor" | "concentrate"> & Complete<Pick<ConcentrateInput, "factor">>;

const COMMON = {
  dilute: quantity("The dilute rate: what wets the canopy just short of run-off. More than 0.", "volumeRate"),
  product: optional(PRODUCT),
};

const CONCENTRATE: EitherField<ConcentrateInput> = either<ConcentrateInput>(
  "A dilute spray, and how much less water is to carry the same product.",
  [
    object<ByRate>(
      {
        ...COMMON,
        concentrate: quantity(
          "What the sprayer puts out. More than 0, and no more than the dilute rate.",
          "volumeRate",
        ),
      },
      [lessWater],
    ) as ObjectField<ConcentrateInput>,
    object<ByFactor>({
      ...COMMON,
      factor: number("How many times the strength: 3 for 3X. 1 or more.", { min: 1 }),
    }) as ObjectField<ConcentrateInput>,
  ],
  byGiven([["concentrate"], ["factor"]]),
);

/** Notes a concentrate spray with more water than the dilute one: the two are swapped, and the strength would be less. */
function lessWater({ dilute, concentrate }: Partly<ConcentrateInput>, check: Check): void {
  if (dilute === undefined || concentrate === undefined) return;
  if (moreThan(inUnit(concentrate, dilute.unit), dilute.value))
    check.fault(
      "conflict",
      "concentrate-over-dilute",
      "concentrate",
      "{concentrate} is more than the dilute {dilute}. Are the two swapped?",
      { concentrate, dilute },
    );
}

/** A concentrate spray. */
export interface ConcentrateSpray {
  /** How many times as strong the mix is: 3 for 3X. */
  readonly factor: number;
  /** What the sprayer puts out per area. */
  readonly concentrate: VolumeRate;
  /** The product per area: the same in dilute and in concentrate spray. */
  readonly perArea?: VolumeRate | MassRate | undefined;
  /** The product in one unit of the dilute spray. */
  readonly diluteStrength?: Concentration | undefined;
  /** The product in one unit of what goes into the tank. */
  readonly strength?: Concentration | undefined;
}

/**
 * Compares dilute and concentrate spray: the product per area stays, the water goes down by the factor, and the product in each gallon of
 * mix goes up by it. Mixing the label's dilute strength in a concentrate sprayer gives only a part of the rate; mixing
 * the concentrate strength at the dilute volume gives a multiple of it. Only where the label allows concentrate spraying, and as far.
 *
 * Formula: factor = dilute rate / concentrate rate; product per area = dilute strength × dilute rate; strength = dilute strength ×
 * factor. Source: Tree Row Volume (A. Landers, Cornell University, NYSAES).
 *
 * @param input - the dilute rate, the concentrate rate or the factor, and the product's rate
 * @returns the factor and the rate, and with a product its strengths and its amount per area; rates in the unit of `dilute`,
 * strengths per unit of its volume, each within 8 ulp of the exact value
 * @throws SprayMathError `conflict` where the concentrate rate is over the dilute one or the mix can't hold the product,
 * `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field`, `unknown-choice`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { concentrateSpray } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const spray = concentrateSpray({
 *   dilute: qty(300, "gal/ac"),
 *   factor: 3,
 *   product: { rate: qty(8, "fl_oz/100gal"), form: "liquid" },
 * });
 * console.log(spray.concentrate); // { value: 100, unit: 'gal/ac' }
 * console.log(spray.perArea); // { value: 24, unit: 'fl_oz/ac' }
 * console.log(spray.strength); // { value: 0.24, unit: 'fl_oz/gal' }
 * ```
 */
export function concentrateSpray(input: ConcentrateInput): ConcentrateSpray {
  const { factor, concentrate, product } = concentrateOf(checked(input, CONCENTRATE));
  return {
    factor,
    concentrate,
    ...(product && {
      perArea: product.perArea,
      diluteStrength: product.rated.strength,
      strength: product.strength,
    }),
  };
}

interface WorkedConcentrate {
  readonly factor: number;
  readonly concentrate: VolumeRate;
  readonly product?:
    | {
        readonly rated: RateStrength;
        readonly perArea: VolumeRate | MassRate;
        readonly strength: Concentration;
      }
    | undefined;
}

/** A concentrate spray with what it is worked out from. Trusts its input. */
function concentrateOf({ dilute, concentrate, factor, product }: ConcentrateInput): WorkedConcentrate {
  const times = factor ?? dilute.value / inUnit(concentrate as VolumeRate, dilute.unit);
  const found = {
    // Alike but for the rounding of a change of unit.
    factor: Math.max(1, positive(times)),
    concentrate: concentrate ?? positiveIn(dilute.value / times, dilute.unit),
  };
  if (product === undefined) return found;
  const { over, per = "" } = resolveUnit(dilute.unit);
  const carrier = { value: 1, unit: over as VolumeUnit };
  const at = "product.rate";
  const rated = strengthOfRate(product.rate, { form: product.form, carrier, carrierRate: dilute }, at);
  const { value } = rated.strength;
  const strength: Concentration = { ...rated.strength, value: positive(value * found.factor, at) };
  refuseUnmixable(strength, at);
  const perArea = positiveIn(value * dilute.value, perUnit(rated.amount, per), at) as VolumeRate | MassRate;
  return { ...found, product: { rated, perArea, strength } };
}

const SOURCE = "Tree Row Volume, A. Landers, Cornell University, NYSAES";

/**
 * The working of {@link concentrateSpray}.
 *
 * @param input - as for {@link concentrateSpray}
 * @returns the lines, in order; the last one's result is the strength in the tank, or without a product the factor or the rate
 * @throws SprayMathError what {@link concentrateSpray} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { concentrateSpray } from "swath-to-spoon/working";
 *
 * const lines = concentrateSpray({ dilute: qty(300, "gal/ac"), concentrate: qty(100, "gal/ac") });
 * console.log(lines[0]?.formula, lines[0]?.result); // dilute / concentrate 3
 * ```
 */
export function concentrateSprayWorking(input: ConcentrateInput): WorkingLine[] {
  const given = checked(input, CONCENTRATE);
  const { dilute } = given;
  const { factor, concentrate, product } = concentrateOf(given);
  const lines =
    given.factor === undefined
      ? formulaLines({
          id: "tank-mix.concentrateFactor",
          formula: "dilute / concentrate",
          terms: { dilute: [dilute, dilute.unit], concentrate: [concentrate, dilute.unit] },
          result: factor,
          source: SOURCE,
        })
      : formulaLines({
          id: "tank-mix.concentrateRate",
          formula: "dilute / factor",
          terms: { dilute: [dilute, dilute.unit], factor },
          result: concentrate,
          source: SOURCE,
        });
  if (product === undefined) return lines;
  const { rated, perArea, strength } = product;
  const diluteStrength = [rated.strength, rated.strength.unit] as const;
  return [
    ...lines,
    ...linesOfStrength(rated),
    ...formulaLines({
      id: "tank-mix.concentratePerArea",
      formula: "strength * dilute",
      terms: { strength: diluteStrength, dilute: [dilute, dilute.unit] },
      result: perArea,
      source: SOURCE,
    }),
    ...formulaLines({
      id: "tank-mix.concentrateStrength",
      formula: "strength * factor",
      terms: { strength: diluteStrength, factor },
      result: strength,
      source: SOURCE,
    }),
  ];
}
