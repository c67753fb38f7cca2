import { errorOf } from "../errors.js";
import type { Product } from "../plan/input.js";
import type { Price } from "../plan/money.js";
import type { ActiveContent, ProductForm } from "../tank-mix/content.js";
import type { LabelLimits, SeasonSoFar } from "../tank-mix/label-limits.js";
import {
  type ActiveIngredientRate,
  type AreaRate,
  isRange,
  type LabelRate,
  type PartsRate,
  type RateArea,
  type RateRange,
  rateFitsForm,
  ratioFits,
  type SeasonRate,
  type SingleRate,
  type WeightRate,
} from "../tank-mix/label-rate.js";
import { FORMULATIONS, type FormulationCode, type MixingProduct } from "../tank-mix/mixing-order.js";
import { Check } from "../units/check.js";
import type { MassRate } from "../units/types.js";
import {
  about,
  choice,
  count,
  fields,
  flag,
  maybe,
  name,
  named,
  number,
  type Schema,
  words,
} from "./fields.js";
import { madeOnce, type ReadingOptions } from "./options.js";
import { byField, hasField, isQuantity } from "./picks.js";
import { type Quantities, quantities } from "./quantity.js";

const RATE_AREAS: Readonly<Record<RateArea, unknown>> = { treated: 1, broadcast: 1, ground: 1 };
const PER = "Which area it is per: treated, broadcast (the band gets it on its own area) or ground.";

// What tells the other ways apart from a plain quantity.
const ACTIVE = ["activeIngredient", "contains"];
const PARTS = ["parts", "to"];
const PER_AREA = ["rate", "per"];
const RANGE = ["low", "high", "chosen"];

/** The ways to tell one figure of a label, and the rates that a season is counted in. */
interface Rates {
  readonly single: Schema<SingleRate>;
  readonly season: Schema<SeasonRate>;
}

const rates: (options?: ReadingOptions) => Rates = /* @__PURE__ */ madeOnce((options) => {
  const q = quantities(options);
  const perArea = fields<AreaRate>({
    rate: about(q.of("volumeRate", "massRate"), "The rate as the label prints it. More than 0."),
    per: about(name(RATE_AREAS), PER),
  });
  const parts = fields<PartsRate>(
    {
      parts: about(number({ above: 0 }), "Parts of product. More than 0."),
      to: about(number({ above: 0 }), "Parts of what it goes into. More than 0."),
      of: about(
        name<PartsRate["of"]>({ mix: 1, water: 1 }),
        "What it goes into: 1 in 100 parts of mix, or 1 to 100 parts of water.",
      ),
    },
    (ratio) => agreed((check) => ratioFits(ratio, check)),
  );
  const active = activeSchema(q);
  const plain = q.basedOrElse(
    "PlainRate",
    [...ACTIVE, ...PARTS, ...PER_AREA, ...RANGE],
    ["volumeRate", "massRate", "volumeConcentration", "density", "volumePerLength", "massPerLength"],
  );
  const plainSeason = q.orElse("PlainSeasonRate", [...ACTIVE, ...PER_AREA], ["volumeRate", "massRate"]);
  const oneOf = (input: unknown, ...ways: readonly (readonly string[])[]): number => {
    const found = ways.findIndex((names) => hasField(input, names));
    return found < 0 || isQuantity(input) ? ways.length : found;
  };
  return {
    single: named(
      "SingleRate",
      choice<SingleRate>()([active, parts, perArea, plain], (input) => oneOf(input, ACTIVE, PARTS, PER_AREA)),
      "A rate as a label gives it: per area (a bare one is per treated area), per volume of carrier, per row length, per cent or ppm with a basis, a ratio, or active ingredient.",
    ),
    season: named(
      "SeasonRate",
      choice<SeasonRate>()([active, perArea, plainSeason], (input) => oneOf(input, ACTIVE, PER_AREA)),
      "An amount per area.",
    ),
  };
});

function agreed(agree: (check: Check) => void): void {
  const check = new Check();
  agree(check);
  if (check.issues.length > 0) throw errorOf(check.issues);
}

function activeSchema(q: Quantities): Schema<ActiveIngredientRate> {
  const perArea = fields<AreaRate<MassRate>>({
    rate: about(q.of("massRate"), "The rate. More than 0."),
    per: about(name(RATE_AREAS), PER),
  });
  const weight = choice<WeightRate>()(
    [perArea, q.basedOrElse("PlainWeightRate", PER_AREA, ["massRate", "density", "massPerLength"])],
    byField(...PER_AREA),
  );
  return named(
    "ActiveIngredientRate",
    fields<ActiveIngredientRate>({
      activeIngredient: about(weight, "The rate of active ingredient, by weight. More than 0."),
      contains: about(
        q.basedOrElse("Content", [], ["density", "massFraction"]) as Schema<ActiveContent>,
        "What the product contains: lb/gal, g/L, g/kg, or per cent w/w or w/v. More than 0.",
      ),
      density: maybe(
        q.of("density"),
        "What the product weighs: needed for a liquid whose content is told by weight.",
      ),
    }),
    "A rate told as active ingredient, with what the product contains.",
  );
}

/**
 * The schema of a rate as a label gives it.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { labelRateSchema } from "swath-to-spoon/schema";
 *
 * console.log(labelRateSchema().parse("0.25% v/v")); // { value: 0.25, unit: '%', basis: 'v/v' }
 * ```
 */
export const labelRateSchema: (options?: ReadingOptions) => Schema<LabelRate> = /* @__PURE__ */ madeOnce(
  (options) => {
    const { single } = rates(options);
    const range = fields<RateRange>({
      low: about(single, "The label's lowest rate."),
      high: about(single, "The label's highest rate."),
      chosen: about(single, "The rate that is used, told in the same way."),
    });
    return named(
      "LabelRate",
      choice<LabelRate>()([range, single], byField(...RANGE)),
      "A rate as a label gives it, or a range of rates with the one chosen.",
    );
  },
);

function labelSchema(options: ReadingOptions): Schema<LabelLimits> {
  const { of } = quantities(options);
  const { single, season } = rates(options);
  return named(
    "LabelLimits",
    fields<LabelLimits>({
      min: maybe(single, "The lowest rate."),
      max: maybe(single, "The highest rate of one application."),
      leastCarrier: maybe(of("volumeRate"), "The least carrier per treated area. More than 0."),
      mostCarrier: maybe(of("volumeRate"), "The most carrier per treated area. More than 0."),
      seasonMax: maybe(season, "The most per area in a season."),
      mostApplications: maybe(count(), "The most applications in a season. A whole number, 1 or more."),
      daysBetween: maybe(number({ min: 0 }), "The fewest days from one application to the next."),
    }),
    "The limits that a label sets, as far as they are told.",
  );
}

function soFarSchema(options: ReadingOptions): Schema<SeasonSoFar> {
  const { season } = rates(options);
  return named(
    "SeasonSoFar",
    fields<SeasonSoFar>({
      rate: maybe(season, "The product used per area, all applications together."),
      applications: maybe(count(0), "The number of applications. A whole number, 0 or more."),
      daysSinceLast: maybe(number({ min: 0 }), "The days since the last application."),
    }),
    "What the plot has had already this season.",
  );
}

const FORMULATION_NAMES: Readonly<Record<MixingProduct["code"], unknown>> = {
  ...(FORMULATIONS as Readonly<Record<FormulationCode, unknown>>),
  adjuvant: 1,
  fertilizer: 1,
};

/** Where a product tells a rate, which goes with its form: a liquid by volume, a dry product by weight. */
const FORMED: readonly (readonly [
  path: string,
  rate: (product: Partial<Product>) => SingleRate | undefined,
])[] = [
  ["rate", ({ rate }) => (rate && !isRange(rate) ? rate : undefined)],
  ["rate.low", ({ rate }) => (rate && isRange(rate) ? rate.low : undefined)],
  ["rate.high", ({ rate }) => (rate && isRange(rate) ? rate.high : undefined)],
  ["rate.chosen", ({ rate }) => (rate && isRange(rate) ? rate.chosen : undefined)],
  ["label.min", ({ label }) => label?.min],
  ["label.max", ({ label }) => label?.max],
];

/**
 * The schema of a product that goes into the tank.
 *
 * @param options - whose numbers and measures text is in; see {@link ReadingOptions}
 * @returns the schema; the same one each time for the same options
 * @throws SprayMathError `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { productSchema } from "swath-to-spoon/schema";
 *
 * const product = productSchema().parse({ name: "Product A", form: "liquid", rate: "1 1/2 pt/ac" });
 * console.log(product.rate); // { value: 1.5, unit: 'pt/ac' }
 * ```
 */
export const productSchema: (options?: ReadingOptions) => Schema<Product> = /* @__PURE__ */ madeOnce(
  (options) => {
    const { of } = quantities(options);
    const price = fields<Price>({
      amount: about(number({ min: 0 }), "The money, 0 or more, in the currency of the job."),
      per: about(of("volume", "mass"), "For how much of the product: one gallon, a 5 lb bag. More than 0."),
    });
    const formed = FORMED.map(([path, find]) => (product: Partial<Product>): void => {
      agreed((check) => rateFitsForm(find(product), product.form, path, check));
    });
    return named(
      "Product",
      fields<Pick<Product, keyof Product>>(
        {
          name: about(words(), "What it is called; each product of a job has its own name."),
          form: about(
            name<ProductForm>({ liquid: 1, dry: 1 }),
            "Whether it is measured by volume (liquid) or by weight (dry).",
          ),
          rate: about(
            labelRateSchema(options) as Schema<unknown> as Schema<Product["rate"]>,
            "The rate as the label gives it.",
          ),
          label: maybe(
            labelSchema(options),
            "What the label allows, for the job to be checked against. Nothing is checked unless given.",
          ),
          soFar: maybe(soFarSchema(options), "What the plot has had of it already this season."),
          formulation: maybe(
            name<MixingProduct["code"]>(FORMULATION_NAMES),
            "The formulation code on the label, adjuvant or fertilizer, for the order of mixing.",
          ),
          inSolubleBag: maybe(flag(), "Whether it comes in a bag that dissolves in water."),
          bulkDensity: maybe(
            of("density"),
            "For a dry product: what this very product weighs by volume, so that it can be spooned.",
          ),
          registration: maybe(words(), "Its registration number, such as the EPA's, for the record."),
          reEntryHours: maybe(
            number({ min: 0, max: 24_000 }),
            "The label's restricted-entry interval in hours, 0 or more.",
          ),
          preHarvestDays: maybe(
            count(0, 1000),
            "The label's days from the last application to harvest. A whole number, 0 or more.",
          ),
          price: maybe(price, "What it costs. The plan has no costs unless given."),
          labelPermitsDilution: maybe(
            flag(),
            "Whether the label permits diluting it before it goes into the tank.",
          ),
        },
        ...(formed as readonly ((given: object) => void)[]),
      ),
      "A product that goes into the tank, adjuvants included.",
    ) as Schema<unknown> as Schema<Product>;
  },
);
