import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionInWords } from "../units/dimensions.js";
import { checkedChoice, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { checkShape } from "../units/shape.js";
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
import { conversionLines, type WorkingLine } from "../units/working.js";
import { type Content, checkedFormName, type Form } from "./label-rate.js";

/** What {@link productRate} is given. */
export interface ProductRateInput {
  /** Active ingredient per area, per volume of carrier, or per row length. */
  readonly activeIngredient: MassRate | Density | MassPerLength;
  /** What the product contains. */
  readonly contains: Content;
  /** Whether the product is measured by volume or by weight. */
  readonly form: Form;
  /** What the product weighs: needed for a liquid whose content is told by weight (`% w/w`, `g/kg`). */
  readonly density?: Density;
}

/** A product's rate: by volume for a liquid, by weight for a dry product. */
export type ProductRate = VolumeRate | MassRate | Concentration | VolumePerLength | MassPerLength;

/** What {@link activeIngredientRate} is given. */
export interface ActiveIngredientInput {
  /** The product's rate: by volume for a liquid, by weight for a dry product. */
  readonly product: ProductRate;
  /** What the product contains. */
  readonly contains: Content;
  /** What the product weighs: needed for a liquid whose content is told by weight (`% w/w`, `g/kg`). */
  readonly density?: Density;
}

interface Terms {
  readonly rate: number;
  readonly rateUnit: Unit;
  /** What the product contains, as weight of active ingredient to one unit of product; for a liquid by weight, `density` follows. */
  readonly content: number;
  readonly contentUnit: Unit;
  readonly density?: number;
  readonly densityUnit?: Unit;
  readonly resultUnit: Unit;
}

/** Which small measure the product comes in: the rate's system, or imperial where pounds are told per imperial gallon. */
export function productUnit(
  rateUnit: Unit,
  contains: Content,
  density: Density | undefined,
  form: Form,
): VolumeUnit | MassUnit {
  const units = unitsLike(rateUnit);
  if (form === "dry") return units.smallMass;
  const measures = [contains?.unit, density?.unit].filter((unit) => typeof unit === "string");
  const imperial = measures.some((unit) => {
    const { per } = resolveUnit(unit, "contains.unit");
    return per !== undefined && systemOf(per) === "imperial";
  });
  return systemOf(rateUnit) === "us" && imperial ? "imp_fl_oz" : units.smallVolume;
}

const WEIGHT_RATES = ["massRate", "density", "massPerLength"];

function checkedWeightRate(rate: Quantity, path: string): { over: MassUnit; per: string } {
  checkShape(rate, path);
  const { dimension, over, per = "" } = resolveUnit(rate.unit, `${path}.unit`);
  if (!WEIGHT_RATES.includes(dimension)) {
    throw new SprayMathError(
      "wrong-dimension",
      path,
      `Given ${rate.value} ${rate.unit}, ${dimensionInWords(dimension)}; wanted a weight of active ingredient per area (lb/ac), ` +
        "per volume of carrier (lb/100gal) or per row length (g/m).",
    );
  }
  inUnit(rate, rate.unit, path);
  return { over: over as MassUnit, per };
}

/** What the product contains, told in `weight` to one `unit` of product. */
function contentTerms(
  contains: Content,
  density: Density | undefined,
  form: Form,
  weight: MassUnit,
  unit: VolumeUnit | MassUnit,
): Pick<Terms, "content" | "contentUnit" | "density" | "densityUnit"> {
  checkShape(contains, "contains");
  const { dimension } = resolveUnit(contains.unit, "contains.unit");
  const basis = dimension === "fraction" ? checkedBasis(contains as BasedFraction) : undefined;
  const inVolume = dimension === "density" || basis === "w/v";
  const byWeight = dimension === "massFraction" || basis === "w/w";
  if (form === "liquid" && inVolume) {
    const contentUnit = `${weight}/${unit as VolumeUnit}` as const;
    const grams = basis === "w/v" ? toDensity(contains as BasedFraction) : (contains as Density);
    return { content: inUnit(grams, contentUnit, "contains"), contentUnit };
  }
  if (!byWeight) {
    throw new SprayMathError(
      "wrong-dimension",
      "contains",
      `Given ${contains.value} ${contains.unit}${basis === undefined ? "" : ` ${basis}`} for a ${form} product; wanted active ingredient ` +
        (form === "dry"
          ? "by weight, such as g/kg or % w/w."
          : "by weight in a volume, such as lb/gal, g/L or % w/v."),
    );
  }
  const content =
    basis === "w/w"
      ? inUnit(contains as BasedFraction, "1", "contains")
      : inUnit(contains as Quantity<"g/kg">, "kg/kg", "contains");
  if (moreThan(content, 1)) {
    throw new SprayMathError(
      "out-of-range",
      "contains",
      `Given ${contains.value} ${contains.unit}; wanted no more active ingredient than product.`,
    );
  }
  if (form === "dry") return { content, contentUnit: "1" };
  if (density === undefined) {
    throw new SprayMathError(
      "missing",
      "density",
      `Given ${contains.value} ${contains.unit} by weight for a liquid product; wanted the product's density too, such as lb/gal or kg/L.`,
    );
  }
  const densityUnit = `${weight}/${unit as VolumeUnit}` as const;
  return { content, contentUnit: "1", density: inUnit(density, densityUnit, "density"), densityUnit };
}

function checkedBasis(fraction: BasedFraction): BasedFraction["basis"] {
  return checkedChoice(fraction.basis, ["v/v", "w/v", "w/w"], "contains.basis");
}

/** Weight in volume as what it is by definition: 1 % w/v is 1 kg in 100 L. */
export function toDensity(fraction: BasedFraction): Quantity<"kg/L"> {
  return { value: convertValue(fraction.value, fraction.unit, "1"), unit: "kg/L" };
}

// A weight of a dry product and of what it contains differ in their unit only; a liquid's content bridges the two.
function rateTerms(rate: Quantity, unit: Unit, path: string): Pick<Terms, "rate" | "rateUnit"> {
  return { rate: convertValue(rate.value, rate.unit, unit, path, path), rateUnit: unit };
}

function productTerms(input: ProductRateInput, unit?: VolumeUnit | MassUnit): Terms {
  const { activeIngredient, contains, form, density } = checkedObject(input, "");
  checkedFormName(form);
  const { over, per } = checkedWeightRate(activeIngredient, "activeIngredient");
  checkShape(contains, "contains");
  const amount = unit ?? productUnit(activeIngredient.unit, contains, density, form);
  const resultUnit = `${amount}/${per}` as Unit;
  return {
    ...rateTerms(activeIngredient, form === "dry" ? resultUnit : activeIngredient.unit, "activeIngredient"),
    ...contentTerms(contains, density, form, over, amount),
    resultUnit,
  };
}

/**
 * The product's rate that brings a rate of active ingredient.
 *
 * Formula: product = active ingredient / content, where the content of a product told by weight is (weight in weight) ×
 * (what the product weighs). Source: by definition of content.
 *
 * @param input - rate, content and density more than 0; content by weight no more than the whole
 * @returns the product's rate, in fl_oz, imp_fl_oz, mL, oz or g by the rate's system, per the rate's own area, volume or
 * length; within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-choice`, `wrong-dimension` or
 * `out-of-range`
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
  return productRateIn(input);
}

/** {@link productRate} in a measure of the caller's choice. */
export function productRateIn(input: ProductRateInput, unit?: VolumeUnit | MassUnit): ProductRate {
  const { rate, content, density, resultUnit } = productTerms(input, unit);
  const value = rate / (density === undefined ? content : content * density);
  return { value: checkedFinite(value, "activeIngredient"), unit: resultUnit } as ProductRate;
}

function checkedFinite(value: number, path: string): number {
  if (Number.isFinite(value) && value > 0) return value;
  throw new SprayMathError(
    "not-finite",
    path,
    "The rate that comes out is too large or too small to compute with.",
  );
}

const SOURCE = "by definition of what a product contains";

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
  return productRateWorkingIn(input);
}

/** The working of {@link productRateIn}. */
export function productRateWorkingIn(input: ProductRateInput, unit?: VolumeUnit | MassUnit): WorkingLine[] {
  const terms = productTerms(input, unit);
  return [
    ...conversionLines("tank-mix.productRate.activeIngredient", input.activeIngredient, terms.rateUnit),
    ...contentLines("tank-mix.productRate", input, terms),
    {
      id: "tank-mix.productRate",
      formula:
        terms.density === undefined ? "activeIngredient / content" : "activeIngredient / (content * density)",
      terms: {
        activeIngredient: { value: terms.rate, unit: terms.rateUnit },
        ...contentQuantities(terms),
      },
      result: productRateIn(input, unit),
      source: SOURCE,
    },
  ];
}

function contentQuantities({ content, contentUnit, density, densityUnit }: Terms): WorkingLine["terms"] {
  return {
    content: { value: content, unit: contentUnit },
    ...(density !== undefined && { density: { value: density, unit: densityUnit as Unit } }),
  };
}

function contentLines(
  about: string,
  { contains, density }: { readonly contains: Content; readonly density?: Density },
  terms: Terms,
): WorkingLine[] {
  const fraction =
    (contains as BasedFraction).basis === "w/v" ? toDensity(contains as BasedFraction) : undefined;
  const first = fraction === undefined ? [] : conversionLines(`${about}.content`, contains, "1");
  const massFraction = resolveUnit(contains.unit, "contains.unit").dimension === "massFraction";
  return [
    ...first,
    ...conversionLines(`${about}.content`, fraction ?? contains, massFraction ? "kg/kg" : terms.contentUnit),
    ...(density === undefined || terms.densityUnit === undefined
      ? []
      : conversionLines(`${about}.density`, density, terms.densityUnit)),
  ];
}

function activeTerms(input: ActiveIngredientInput): Terms {
  const { product, contains, density } = checkedObject(input, "");
  checkShape(product, "product");
  const { dimension, over, per = "" } = resolveUnit(product.unit, "product.unit");
  const liquid = ["volumeRate", "volumeConcentration", "volumePerLength"].includes(dimension);
  if (!liquid && !WEIGHT_RATES.includes(dimension)) {
    throw new SprayMathError(
      "wrong-dimension",
      "product",
      `Given ${product.value} ${product.unit}, ${dimensionInWords(dimension)}; wanted an amount of product per area, per volume of ` +
        "carrier or per row length.",
    );
  }
  inUnit(product as Quantity, product.unit as Unit, "product");
  const weight = unitsLike(product.unit).mass;
  const resultUnit = `${weight}/${per}` as Unit;
  return {
    ...rateTerms(product, liquid ? product.unit : resultUnit, "product"),
    ...contentTerms(contains, density, liquid ? "liquid" : "dry", weight, over as VolumeUnit | MassUnit),
    resultUnit,
  };
}

/**
 * The rate of active ingredient that a rate of product brings.
 *
 * Formula: active ingredient = product × content, where the content of a product told by weight is (weight in weight) ×
 * (what the product weighs). Source: by definition of content.
 *
 * @param input - rate, content and density more than 0; content by weight no more than the whole
 * @returns the rate of active ingredient in lb or kg by the product rate's system, per its own area, volume or length;
 * within 8 ulp of the exact value
 * @throws SprayMathError `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-choice`, `wrong-dimension` or
 * `out-of-range`
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
  const { rate, content, density, resultUnit } = activeTerms(input);
  const value = rate * (density === undefined ? content : content * density);
  return { value: checkedFinite(value, "product"), unit: resultUnit } as MassRate;
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
  const terms = activeTerms(input);
  return [
    ...conversionLines("tank-mix.activeIngredient.product", input.product, terms.rateUnit),
    ...contentLines("tank-mix.activeIngredient", input, terms),
    {
      id: "tank-mix.activeIngredient",
      formula: terms.density === undefined ? "product * content" : "product * content * density",
      terms: { product: { value: terms.rate, unit: terms.rateUnit }, ...contentQuantities(terms) },
      result: activeIngredientRate(input),
      source: SOURCE,
    },
  ];
}
