import { SPREADER_TEST, type SpreaderTest } from "../output-rate/spreader.js";
import { countIsWhole } from "../tank-mix/batch-volume.js";
import {
  LABEL_LIMITS,
  type LabelLimits,
  productFitsForm,
  type SeasonSoFar,
} from "../tank-mix/label-limits.js";
import { ACTIVE_EXAMPLES, type AreaRate } from "../tank-mix/label-rate.js";
import { CONTAINS, type FertilizerInput, NUTRIENTS, nutrientIn } from "../tank-mix/nutrients.js";
import type { Check } from "../units/check.js";
import {
  about,
  byGiven,
  choice,
  type EitherField,
  either,
  type FieldsOf,
  kinds,
  named,
  type ObjectField,
  object,
  optional,
  type Partly,
  text,
} from "../units/fields.js";
import { called, quantity } from "../units/quantity-field.js";
import type { Count, Length, Mass, MassPerCount, MassPerLength, MassRate } from "../units/types.js";
import { isPlan, PRODUCT, priceFitsForm } from "./input.js";
import { CURRENCY, type Currency, PRICE, type Price } from "./money.js";
import { PLOTS, type Plot } from "./plot.js";

/** A rate of product by weight: per treated area, per length of row, or per plant. */
export type GranulesRate = MassRate | MassPerLength | MassPerCount;

/** A rate by weight per area that says which area: the one that the granules land on. */
export interface SpreadAreaRate extends AreaRate<MassRate> {
  /** Which area it is per: treated, or broadcast (the band gets it on its own area). */
  readonly per: "treated" | "broadcast";
}

/** A rate of product as a label of granules gives it. */
export type SpreadRate = GranulesRate | SpreadAreaRate;

/** A rate of a nutrient, with what the fertilizer contains. */
export interface NutrientRate extends FertilizerInput<GranulesRate> {
  /** How much of the nutrient: per area, per length of row, or per plant. More than 0. */
  readonly amount: GranulesRate;
}

/** What a label of granules allows. */
export interface SpreadingLabel extends Omit<LabelLimits, "min" | "max" | "leastCarrier" | "mostCarrier"> {
  /** The lowest rate of product. */
  readonly min?: SpreadRate | undefined;
  /** The highest rate of product in one application. */
  readonly max?: SpreadRate | undefined;
}

/** Granules or a dry fertilizer. */
export interface SpreadingProduct {
  /** What it is called. */
  readonly name: string;
  /** The rate of product by weight, or of a nutrient with what the fertilizer contains. More than 0. */
  readonly rate: SpreadRate | NutrientRate;
  /** What the label allows, for the job to be checked against. Nothing is checked unless given. */
  readonly label?: SpreadingLabel | undefined;
  /** What the plot has had of it already this season. */
  readonly soFar?: SeasonSoFar | undefined;
  /** What one bag holds, for how many to buy. More than 0. */
  readonly bag?: Mass | undefined;
  /** What it costs. The plan has no costs unless given. */
  readonly price?: Price | undefined;
  /** Its registration number, such as the EPA's, for the record. */
  readonly registration?: string | undefined;
  /** Its active ingredient, or all of them, as the label names them: for the record. */
  readonly activeIngredient?: string | undefined;
  /** The label's restricted-entry interval in hours, 0 or more. */
  readonly reEntryHours?: number | undefined;
  /** The label's days from the last application to harvest, a whole number, 0 or more. */
  readonly preHarvestDays?: number | undefined;
}

/** The spreader that does the job. */
export interface Spreader {
  /** What the hopper holds of the product, or what it is to be filled with. More than 0. */
  readonly hopper: Mass;
  /** In how many directions it is spread: 2 where half goes on lengthwise and half crosswise. 1 unless given. */
  readonly directions?: 1 | 2 | undefined;
}

/** A length of row to spread on. */
export interface SpreadingRow {
  /** Says what sizes the job. */
  readonly kind: "row-length";
  /** The length of all rows together. More than 0. */
  readonly length: Length;
}

/** A number of plants, pots or trees to spread on. */
export interface SpreadingCount {
  /** Says what sizes the job. */
  readonly kind: "count";
  /** How many there are, such as 45 trees. A whole number, 1 or more. */
  readonly count: Count;
}

/** What sizes a job of granules that isn't a plot. */
export type SpreadingSize = SpreadingRow | SpreadingCount;

interface SpreadingJob {
  /** What the place is called, for the sheet. */
  readonly name?: string | undefined;
  /** The spreader that does the job. */
  readonly spreader: Spreader;
  /** A test of the spreader with this product, to be checked against the rate. */
  readonly test?: SpreaderTest | undefined;
  /** The granules, or the dry fertilizer. */
  readonly product: SpreadingProduct;
  /** The currency of the price; two decimals and no name unless given. */
  readonly currency?: Currency | undefined;
}

/** Granules or dry fertilizer on a plot. */
export interface SpreadingOnPlot extends SpreadingJob {
  /** The plot, or all plots that are spread. */
  readonly plot: Plot | readonly Plot[];
}

/** Granules or dry fertilizer on rows or plants. */
export interface SpreadingBySize extends SpreadingJob {
  /** What sizes the job: a length of row, or a number of plants, pots or trees. */
  readonly size: SpreadingSize;
}

/** A whole job of granules or dry fertilizer, as a form collects it. */
export type SpreadingInput = SpreadingOnPlot | SpreadingBySize;

const RATE_EXAMPLES = {
  us: { value: 5, unit: "lb/1000ft2" },
  imperial: { value: 100, unit: "lb/ac" },
  metric: { value: 100, unit: "kg/ha" },
} as const;

const PLAIN = called(
  quantity("The rate of product: per treated area, per length of row, or per plant. More than 0.", [
    "massRate",
    "massPerLength",
    "massPerCount",
  ]),
  "labelRate",
  RATE_EXAMPLES,
);

const ON_AREA: ObjectField<SpreadAreaRate> = /* @__PURE__ */ object<SpreadAreaRate>({
  rate: quantity("The rate as the label prints it. More than 0.", "massRate"),
  per: choice("Which area it is per: treated, or broadcast (the band gets it on its own area).", [
    "treated",
    "broadcast",
  ]),
});

const OF_NUTRIENT: ObjectField<NutrientRate> = /* @__PURE__ */ object<NutrientRate>(
  {
    nutrient: choice("The nutrient that is needed, as the recommendation gives it.", NUTRIENTS),
    amount: called(
      quantity("How much of the nutrient: per area, per length of row, or per plant. More than 0.", [
        "massRate",
        "massPerLength",
        "massPerCount",
      ]),
      "amount",
      ACTIVE_EXAMPLES,
    ),
    contains: about("What the fertilizer contains, in percent by weight.", CONTAINS),
  },
  [nutrientIn],
);

const SPREAD_RATE: EitherField<SpreadRate> = /* @__PURE__ */ either<SpreadRate>(
  "A rate of product by weight: per treated area, per length of row, or per plant.",
  [PLAIN, ON_AREA],
  byGiven(
    [
      ["value", "unit"],
      ["rate", "per"],
    ],
    0,
  ),
);

const PRODUCT_RATE: EitherField<SpreadingProduct["rate"]> = /* @__PURE__ */ either<SpreadingProduct["rate"]>(
  "The rate of product by weight, or of a nutrient with what the fertilizer contains. More than 0.",
  [PLAIN, ON_AREA, OF_NUTRIENT],
  byGiven(
    [
      ["value", "unit"],
      ["rate", "per"],
      ["nutrient", "amount", "contains"],
    ],
    0,
  ),
);

/* @__NO_SIDE_EFFECTS__ */
function spreadingLabel(): ObjectField<SpreadingLabel> {
  const { leastCarrier: _, mostCarrier: __, ...limits } = LABEL_LIMITS.fields;
  return object<SpreadingLabel>({
    ...limits,
    min: optional(about("The lowest rate of product.", SPREAD_RATE)),
    max: optional(about("The highest rate of product in one application.", SPREAD_RATE)),
  });
}

/** What is said of granules as of any product. */
type OfAnyProduct = Pick<
  SpreadingProduct,
  "soFar" | "registration" | "activeIngredient" | "reEntryHours" | "preHarvestDays"
>;

/* @__NO_SIDE_EFFECTS__ */
function asOfAnyProduct(): FieldsOf<OfAnyProduct> {
  const { soFar, registration, activeIngredient, reEntryHours, preHarvestDays } = PRODUCT.fields;
  return { soFar, registration, activeIngredient, reEntryHours, preHarvestDays };
}

/* @__NO_SIDE_EFFECTS__ */
function spreadingProduct(): ObjectField<SpreadingProduct> {
  return object<SpreadingProduct>(
    {
      name: text("What it is called."),
      rate: PRODUCT_RATE,
      label: optional(
        about(
          "What the label allows, for the job to be checked against. Nothing is checked unless given.",
          spreadingLabel(),
        ),
      ),
      ...asOfAnyProduct(),
      bag: optional(quantity("What one bag holds, for how many to buy. More than 0.", "mass")),
      price: optional(about("What it costs. The plan has no costs unless given.", PRICE)),
    },
    [productIsDry],
  );
}

/** Notes a limit or a price by volume: granules go by weight. */
function productIsDry({ label, soFar, price }: Partly<SpreadingProduct>, check: Check): void {
  productFitsForm({ form: "dry", label, soFar }, check);
  priceFitsForm({ form: "dry", price }, check);
}

const SPREADER: ObjectField<Spreader> = /* @__PURE__ */ object<Spreader>({
  hopper: quantity(
    "What the hopper holds of the product, or what it is to be filled with. More than 0.",
    "mass",
  ),
  directions: optional(
    choice(
      "In how many directions it is spread: 2 where half goes on lengthwise and half crosswise. 1 unless given.",
      [1, 2],
    ),
    1,
  ),
});

const SIZE: EitherField<SpreadingSize> = /* @__PURE__ */ kinds<SpreadingSize>(
  "What sizes the job: a length of row, or a number of plants, pots or trees.",
  {
    "row-length": /* @__PURE__ */ object<SpreadingRow>({
      kind: choice("Says what sizes the job.", ["row-length"]),
      length: quantity("The length of all rows together. More than 0.", "length"),
    }),
    count: /* @__PURE__ */ object<SpreadingCount>(
      {
        kind: choice("Says what sizes the job.", ["count"]),
        count: quantity("How many there are, such as 45 trees. A whole number, 1 or more.", "count"),
      },
      [countIsWhole],
    ),
  },
);

/* @__NO_SIDE_EFFECTS__ */
function jobFields(): FieldsOf<SpreadingJob> {
  return {
    name: optional(text("What the place is called, for the sheet.")),
    spreader: about("The spreader that does the job.", SPREADER),
    test: optional(
      about("A test of the spreader with this product, to be checked against the rate.", SPREADER_TEST),
    ),
    product: about("The granules, or the dry fertilizer.", spreadingProduct()),
    currency: optional(about("The currency of the price; two decimals and no name unless given.", CURRENCY)),
  };
}

/* @__NO_SIDE_EFFECTS__ */
function spreadingInput(): EitherField<SpreadingInput> {
  const fields = jobFields();
  return either<SpreadingInput>(
    "A whole job of granules or dry fertilizer, as a form collects it.",
    [
      object<SpreadingOnPlot>(
        { plot: about("The plot, or all plots that are spread.", PLOTS), ...fields },
        [],
        "",
        isPlan,
      ),
      object<SpreadingBySize>({
        size: about("What sizes the job: a length of row, or a number of plants, pots or trees.", SIZE),
        ...fields,
      }),
    ],
    byGiven([["plot"], ["size"]], 0),
  );
}

/** A job of granules or dry fertilizer. */
export const SPREADING_INPUT: EitherField<SpreadingInput> = /* @__PURE__ */ named(
  "SpreadingInput",
  /* @__PURE__ */ spreadingInput(),
);
