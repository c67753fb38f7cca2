import { joinPath } from "../errors.js";
import type { Check } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { type ChoiceField, choice, type Partly } from "../units/fields.js";
import { basedOr, called, QuantityField } from "../units/quantity-field.js";
import type { BasedFraction, Density, MassFraction, Quantity } from "../units/types.js";

/** Whether a product is measured by volume (liquid) or by weight (dry). */
export type ProductForm = "liquid" | "dry";

/** Whether a product is measured by volume or by weight. */
export const PRODUCT_FORM: ChoiceField<ProductForm> = choice(
  "Whether it is measured by volume (liquid) or by weight (dry).",
  ["liquid", "dry"],
);

/** How much active ingredient a product contains: `lb/gal`, `g/L`, `g/kg`, or percent by weight (`w/w`) or in volume (`w/v`). */
export type ActiveContent = Density | MassFraction | BasedFraction;

/** What the product contains. */
export const CONTENT: QuantityField<ActiveContent> = called(
  basedOr(
    "What the product contains: lb/gal, g/L, g/kg, or percent w/w or w/v. More than 0.",
    ["density", "massFraction"],
    ["w/w", "w/v"],
  ),
  "content",
  {
    us: { value: 4, unit: "lb/gal" },
    imperial: { value: 4, unit: "lb/imp_gal" },
    metric: { value: 480, unit: "g/L" },
  },
);

/** What a product contains, and what it weighs. */
export interface ProductContent {
  /** What the product contains. */
  readonly contains: ActiveContent;
  /** What the product weighs. */
  readonly density?: Density | undefined;
}

/** Whether a content is a weight in a volume, and not in a weight. */
export function isInVolume(contains: ActiveContent): boolean {
  const dimension = dimensionOf(contains.unit);
  return dimension === "density" || (contains as BasedFraction).basis === "w/v";
}

/** Notes a content that does not fit the product's form; `at` is the place of what holds it. */
export function contentFitsForm(
  { contains, density }: Partly<ProductContent>,
  form: ProductForm | undefined,
  at: string,
  check: Check,
): void {
  if (contains === undefined) return;
  if (form === "dry" && isInVolume(contains))
    check.fault(
      "wrong-dimension",
      "content-of-dry",
      joinPath(at, "contains"),
      "What a dry product contains is by weight. Enter it in g/kg or % w/w.",
      { given: contains },
    );
  else if (form === "liquid" && !isInVolume(contains) && density === undefined)
    check.fault(
      "missing",
      "density-missing",
      joinPath(at, "density"),
      "A content by weight ({given}) needs the liquid's density too. Enter it, such as {example}.",
      {
        given: contains,
        example: check.system === "metric" ? { value: 1.1, unit: "kg/L" } : { value: 9, unit: "lb/gal" },
      },
    );
}

/** Notes more active ingredient than product. */
export function contentInProduct({ contains, density }: Partly<ProductContent>, check: Check): void {
  if (contains === undefined) return;
  const most = density === undefined ? LIQUID_DENSITIES.most : inUnit(density, "kg/L");
  if (isInVolume(contains) ? moreThan(contentInVolume(contains), most) : moreThan(partOf(contains), 1))
    check.fault(
      "out-of-range",
      "content-over-product",
      "contains",
      "A product can't contain {given}: that's more than it weighs. Check the number and its unit.",
      { given: contains },
    );
}

function partOf(contains: ActiveContent): number {
  return inUnit(contains, dimensionOf(contains.unit) === "fraction" ? "1" : "kg/kg");
}

/** Weight in volume as what it is by definition: 1% is 1 kg in 100 L. */
export function asDensity(fraction: Quantity): Quantity<"kg/L"> {
  return { value: inUnit(fraction, "1"), unit: "kg/L" };
}

/** A content that is a weight in a volume, in kg/L. */
export function contentInVolume(contains: ActiveContent): number {
  return dimensionOf(contains.unit) === "fraction"
    ? asDensity(contains).value
    : inUnit(contains as Density, "kg/L");
}

/** What products weigh, in kg/L: nothing is outside `least` and `most`, and little outside `low` and `high`. */
export interface UsualWeights {
  readonly least: number;
  readonly low: number;
  readonly high: number;
  readonly most: number;
}

/** What liquid products weigh: from light oils to thick flowables. Common practice, no source. */
export const LIQUID_DENSITIES: UsualWeights = { least: 0.6, low: 0.75, high: 1.6, most: 2.5 };

/**
 * What dry products weigh by volume. Usual, with a little to spare: powders fill 2 to 6 level tablespoons to the ounce, 0.32 to
 * 0.96 kg/L (New England Vegetable Management Guide, dilution tables). Granular fertilizers weigh 13 to 23 ounces to the pint,
 * 0.78 to 1.38 kg/L (LSU AgCenter, "Tons to Teaspoons"). Possible: common practice, no source.
 */
export const BULK_DENSITIES: UsualWeights = { least: 0.1, low: 0.25, high: 1.5, most: 2.5 };

/** What a product weighs: refused where none weighs as little or as much. */
export class ProductDensityField extends QuantityField<Density> {
  constructor(
    about: string,
    readonly weights: UsualWeights,
  ) {
    super(about, { dimensions: ["density"], range: "positive" });
  }

  override read(input: unknown, check: Check): Density | undefined {
    const given = super.read(input, check);
    if (given === undefined) return undefined;
    const { least, most } = this.weights;
    const value = inUnit(given, "kg/L");
    if (!moreThan(least, value) && !moreThan(value, most)) return given;
    return check.fault(
      "out-of-range",
      "density-impossible",
      "",
      "No product weighs {given}. It is between {least} and {most}: check the unit.",
      { given, least: weightLike(given, least), most: weightLike(given, most) },
    );
  }
}

/** What a liquid product weighs. */
export const PRODUCT_DENSITY: QuantityField<Density> = /* @__PURE__ */ new ProductDensityField(
  "What the product weighs: needed for a liquid whose content is given by weight.",
  LIQUID_DENSITIES,
);

/** What a dry product weighs by volume. */
export const BULK_DENSITY: QuantityField<Density> = /* @__PURE__ */ new ProductDensityField(
  "For a dry product: what this very product weighs by volume, so that it can be spooned.",
  BULK_DENSITIES,
);

/** A weight by volume for reading, in the unit of another. */
export function weightLike({ unit }: Density, kilograms: number): Density {
  return { value: Number(inUnit({ value: kilograms, unit: "kg/L" }, unit).toPrecision(3)), unit };
}
