import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { dimensionOf } from "../units/dimensions.js";
import { type ObjectField, object, optional } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { called, quantity } from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import { positiveIn } from "../units/result.js";
import { systemOf, unitsLike } from "../units/systems.js";
import type {
  BasedFraction,
  Concentration,
  Density,
  MassPerLength,
  MassRate,
  MassUnit,
  Quantity,
  Unit,
  VolumePerLength,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import {
  type ActiveContent,
  asDensity,
  CONTENT,
  contentFitsForm,
  contentInProduct,
  isInVolume,
  PRODUCT_DENSITY,
  PRODUCT_FORM,
  type ProductContent,
  type ProductForm,
} from "./content.js";
import { ACTIVE_EXAMPLES, ACTIVE_NAME, formIn, RATE_EXAMPLES } from "./label-rate.js";

/** The input of {@link productRate}. */
export interface ProductRateInput {
  /** Active ingredient per area, per volume of carrier, or per row length. More than 0. */
  readonly activeIngredient: MassRate | Density | MassPerLength;
  /** What the product contains: lb/gal, g/L, g/kg, or percent w/w or w/v. More than 0. */
  readonly contains: ActiveContent;
  /** Whether it is measured by volume (liquid) or by weight (dry). */
  readonly form: ProductForm;
  /** What the product weighs: needed for a liquid whose content is given by weight. */
  readonly density?: Density | undefined;
}

const PRODUCT_RATE: ObjectField<ProductRateInput> = object<ProductRateInput>(
  {
    activeIngredient: called(
      quantity("Active ingredient per area, per volume of carrier, or per row length. More than 0.", [
        "massRate",
        "density",
        "massPerLength",
      ]),
      ACTIVE_NAME,
      ACTIVE_EXAMPLES,
    ),
    contains: CONTENT,
    form: PRODUCT_FORM,
    density: optional(PRODUCT_DENSITY),
  },
  [contentInProduct, (given, check) => contentFitsForm(given, given.form, "", check)],
);

/** A product's rate: by volume for a liquid, by weight for a dry product. */
export type ProductRate = VolumeRate | MassRate | Concentration | VolumePerLength | MassPerLength;

/** The input of {@link activeIngredientRate}. */
export interface ActiveIngredientInput {
  /** The product's rate: by volume for a liquid, by weight for a dry product. More than 0. */
  readonly product: ProductRate;
  /** What the product contains: lb/gal, g/L, g/kg, or percent w/w or w/v. More than 0. */
  readonly contains: ActiveContent;
  /** What the product weighs: needed for a liquid whose content is given by weight. */
  readonly density?: Density | undefined;
}

const ACTIVE_INGREDIENT: ObjectField<ActiveIngredientInput> = object<ActiveIngredientInput>(
  {
    product: called(
      quantity("The product's rate: by volume for a liquid, by weight for a dry product. More than 0.", [
        "volumeRate",
        "massRate",
        "volumeConcentration",
        "density",
        "volumePerLength",
        "massPerLength",
      ]),
      "productRate",
      RATE_EXAMPLES,
    ),
    contains: CONTENT,
    density: optional(PRODUCT_DENSITY),
  },
  [
    contentInProduct,
    (given, check) => {
      if (given.product !== undefined) contentFitsForm(given, formIn(given.product.unit), "", check);
    },
  ],
);

/** A term of a formula: the quantity as given, and the unit that makes the formula true as plain numbers. */
export type Term = readonly [given: Quantity, unit: Unit];

/** A rate times or over a content, as number and lines read it. */
interface ContentTerms {
  readonly rate: Term;
  readonly content: Term;
  /** What a liquid weighs, where its content is by weight. */
  readonly density?: Term | undefined;
}

// Imperial where pounds are given per imperial gallon, or the tank is filled by it: feet and pounds alone do not say.
function productUnit(
  { activeIngredient, contains, density, form }: ProductRateInput,
  carrier: Unit | undefined,
): VolumeUnit | MassUnit {
  const { unit } = activeIngredient;
  const { smallMass, smallVolume } = unitsLike(unit);
  if (form === "dry") return smallMass;
  const volumes = [resolveUnit(contains.unit).per, density && resolveUnit(density.unit).per, carrier];
  const imperial = volumes.some((volume) => volume !== undefined && systemOf(volume) === "imperial");
  return systemOf(unit) === "us" && imperial ? "imp_fl_oz" : smallVolume;
}

function contentTerms(
  { contains, density }: ProductContent,
  form: ProductForm,
  perUnit: Unit,
): Pick<ContentTerms, "content" | "density"> {
  if (isInVolume(contains))
    return { content: [dimensionOf(contains.unit) === "fraction" ? asDensity(contains) : contains, perUnit] };
  const content: Term = [contains, dimensionOf(contains.unit) === "fraction" ? "1" : "kg/kg"];
  return form === "dry" ? { content } : { content, density: [density as Density, perUnit] };
}

/** The weight of active ingredient in one unit of product. */
function contentIn({ content, density }: ContentTerms): number {
  return inUnit(...content) * (density === undefined ? 1 : inUnit(...density));
}

/** A product's rate with the terms that it comes from. */
export interface ProductRateTerms extends ContentTerms {
  readonly input: ProductRateInput;
  readonly result: ProductRate;
}

/**
 * The rate of product that brings a rate of active ingredient into a carrier; `at` is the place of that rate. Trusts its
 * input.
 */
export function productRateOf(
  input: ProductRateInput,
  carrier?: VolumeUnit,
  at = "activeIngredient",
): ProductRateTerms {
  const { activeIngredient, form } = input;
  const { over, per } = resolveUnit(activeIngredient.unit);
  const unit = productUnit(input, carrier);
  const resultUnit = `${unit}/${per}` as Unit;
  const terms: ContentTerms = {
    // A weight of a dry product and of what it contains differ in their unit only; a liquid's content bridges the two.
    rate: [activeIngredient, form === "dry" ? resultUnit : activeIngredient.unit],
    ...contentTerms(input, form, `${over}/${unit}` as Unit),
  };
  const value = inUnit(...terms.rate) / contentIn(terms);
  return { ...terms, input, result: positiveIn(value, resultUnit, at) as ProductRate };
}

/**
 * Returns the product's rate that brings a rate of active ingredient.
 *
 * Formula: product = active ingredient / content, where the content of a product given by weight is (weight in weight) ×
 * (what the product weighs). Source: by definition of content.
 *
 * @param input - rate, content and density more than 0; content by weight no more than the whole
 * @returns the product's rate, in `fl_oz`, `imp_fl_oz`, mL, oz or g by the rate's system, per the rate's own area, volume or
 * length; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-choice`, `unknown-field`,
 * `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { productRate } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const rate = productRate({ activeIngredient: qty(1.5, "lb/ac"), contains: qty(4, "lb/gal"), form: "liquid" });
 * console.log(rate); // { value: 48, unit: 'fl_oz/ac' }
 * ```
 */
export function productRate(input: ProductRateInput): ProductRate {
  return productRateOf(checked(input, PRODUCT_RATE)).result;
}

/**
 * The working of {@link productRate}.
 *
 * @param input - as for {@link productRate}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link productRate} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { productRate } from "swath-to-spoon/working";
 *
 * const lines = productRate({ activeIngredient: qty(1, "lb/ac"), contains: qty(4, "lb/gal"), form: "liquid" });
 * console.log(lines.at(-1)?.formula); // activeIngredient / content
 * ```
 */
export function productRateWorking(input: ProductRateInput): WorkingLine[] {
  return productRateLines(productRateOf(checked(input, PRODUCT_RATE)));
}

/** The lines of {@link productRateOf}. */
export function productRateLines({ input, result, rate, content, density }: ProductRateTerms): WorkingLine[] {
  return [
    ...fractionLines("tank-mix.productRate.content", input.contains),
    ...formulaLines({
      id: "tank-mix.productRate",
      formula:
        density === undefined ? "activeIngredient / content" : "activeIngredient / (content * density)",
      terms: { activeIngredient: rate, content, ...(density && { density }) },
      result,
      source: SOURCE,
    }),
  ];
}

const SOURCE = "by definition of what a product contains";

/** The line that shows weight in volume as a part, before it becomes a density. */
export function fractionLines(about: string, content: Quantity): WorkingLine[] {
  return (content as BasedFraction).basis === "w/v" ? conversionLines(about, content, "1") : [];
}

function activeIngredientOf(input: ActiveIngredientInput): ContentTerms & { readonly result: Quantity } {
  const { product } = input;
  const { over, per } = resolveUnit(product.unit);
  const weight = unitsLike(product.unit).mass;
  const resultUnit = `${weight}/${per}` as Unit;
  const form = formIn(product.unit);
  const terms: ContentTerms = {
    rate: [product, form === "liquid" ? product.unit : resultUnit],
    ...contentTerms(input, form, `${weight}/${over}` as Unit),
  };
  return { ...terms, result: positiveIn(inUnit(...terms.rate) * contentIn(terms), resultUnit, "product") };
}

/**
 * Returns the rate of active ingredient that a rate of product brings.
 *
 * Formula: active ingredient = product × content, where the content of a product given by weight is (weight in weight) ×
 * (what the product weighs). Source: by definition of content.
 *
 * @param input - rate, content and density more than 0; content by weight no more than the whole
 * @returns the rate of active ingredient in lb or kg by the product rate's system, per its own area, volume or length;
 * within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-choice`, `unknown-field`,
 * `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { activeIngredientRate } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(activeIngredientRate({ product: qty(3, "pt/ac"), contains: qty(4, "lb/gal") })); // { value: 1.5, unit: 'lb/ac' }
 * ```
 */
export function activeIngredientRate(input: ActiveIngredientInput): MassRate | Density | MassPerLength {
  return activeIngredientOf(checked(input, ACTIVE_INGREDIENT)).result as MassRate;
}

/**
 * The working of {@link activeIngredientRate}.
 *
 * @param input - as for {@link activeIngredientRate}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link activeIngredientRate} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { activeIngredientRate } from "swath-to-spoon/working";
 *
 * const lines = activeIngredientRate({ product: qty(3, "pt/ac"), contains: qty(4, "lb/gal") });
 * console.log(lines.at(-1)?.formula); // product * content
 * ```
 */
export function activeIngredientRateWorking(input: ActiveIngredientInput): WorkingLine[] {
  const given = checked(input, ACTIVE_INGREDIENT);
  const { rate, content, density, result } = activeIngredientOf(given);
  return [
    ...fractionLines("tank-mix.activeIngredient.content", given.contains),
    ...formulaLines({
      id: "tank-mix.activeIngredient",
      formula: density === undefined ? "product * content" : "product * content * density",
      terms: { product: rate, content, ...(density && { density }) },
      result,
      source: SOURCE,
    }),
  ];
}
