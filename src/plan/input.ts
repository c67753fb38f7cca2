import { TOOLS, type Tools } from "../household/tools.js";
import { CALIBRATION, type Calibration } from "../output-rate/calibration.js";
import { dayFollows, TODAY, type TodaysConditions } from "../output-rate/what-changed.js";
import { LINE_VOLUME, RESERVE, type Reserve } from "../tank-mix/carrier.js";
import { BULK_DENSITY, PRODUCT_FORM } from "../tank-mix/content.js";
import {
  LABEL_LIMITS,
  type LabelLimits,
  productFitsForm,
  SEASON_SO_FAR,
  type SeasonSoFar,
} from "../tank-mix/label-limits.js";
import { type DryRate, LABEL_RATE, type LiquidRate, type RateRange } from "../tank-mix/label-rate.js";
import {
  FILLS,
  type FillList,
  fillFits,
  fillsFit,
  LEAST_LOAD,
  TANK,
  WORKING_FILL,
} from "../tank-mix/loads.js";
import {
  FORMULATION_CODES,
  IN_SOLUBLE_BAG,
  MIXING_RULES,
  type MixingProduct,
  type MixingRules,
} from "../tank-mix/mixing-order.js";
import { marksFit, TANK_MARKS, type TankMarks } from "../tank-mix/tank-marks.js";
import type { Check, Field } from "../units/check.js";
import { dimensionOf } from "../units/dimensions.js";
import {
  about,
  choice,
  count,
  either,
  type FieldsOf,
  flag,
  hasField,
  holderOf,
  list,
  named,
  number,
  type ObjectField,
  type OtherObject,
  object,
  optional,
  type Partly,
  text,
} from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import { unitsLike } from "../units/systems.js";
import type { Density, Volume } from "../units/types.js";
import { APPLICATION, type ApplicationKind } from "./application.js";
import { CURRENCY, type Currency, PRICE, type Price } from "./money.js";
import { PLOTS, type Plot } from "./plot.js";
import { THRESHOLD_FIELDS, type Thresholds } from "./thresholds.js";

/** The sprayer that does the job. */
export interface Sprayer {
  /** What the tank holds. More than 0. */
  readonly tank: Volume;
  /** How far it is filled, not over what it holds. The tank's capacity unless given. */
  readonly workingFill?: Volume | undefined;
  /** The tank's marks: how far apart they are, or each of them. Every load then ends on a mark. */
  readonly marks?: TankMarks | undefined;
  /** What hoses and boom hold: mixed, and not sprayed. None unless given. */
  readonly lineVolume?: Volume | undefined;
  /** The smallest load that the pump can spray out. No limit unless given. */
  readonly leastLoad?: Volume | undefined;
  /** How many rows, beds or tree rows one pass sprays. The test strip is then this many bands wide. 1 unless given. */
  readonly rowsPerPass?: number | undefined;
}

/** The sprayer that does the job. */
export const SPRAYER: ObjectField<Sprayer> = /* @__PURE__ */ named(
  "Sprayer",
  /* @__PURE__ */ object<Sprayer>(
    {
      tank: TANK,
      workingFill: optional(WORKING_FILL),
      marks: optional(TANK_MARKS),
      lineVolume: optional(LINE_VOLUME),
      leastLoad: optional(LEAST_LOAD),
      rowsPerPass: optional(
        count(
          "How many rows, beds or tree rows one pass sprays. The test strip is then this many bands wide. 1 unless given.",
        ),
      ),
    },
    [fillFits, marksFit],
    "The sprayer that does the job.",
  ),
);

interface InMix {
  /** What it is called; each product of a job has its own name. */
  readonly name: string;
  /** The formulation code on the label, or what else it is, such as a water conditioner: for the order of mixing. */
  readonly formulation?: MixingProduct["code"] | undefined;
  /** Whether it comes in a bag that dissolves in water. */
  readonly inSolubleBag?: boolean | undefined;
}

/** A liquid as the mix needs it. */
export interface MixLiquid extends InMix {
  /** Whether it is measured by volume (liquid) or by weight (dry). */
  readonly form: "liquid";
  /** The rate as the label gives it. A bare rate per area is per treated area. */
  readonly rate: LiquidRate | RateRange<LiquidRate>;
}

/** A dry product as the mix needs it. */
export interface MixDry extends InMix {
  /** Whether it is measured by volume (liquid) or by weight (dry). */
  readonly form: "dry";
  /** The rate as the label gives it. A bare rate per area is per treated area. */
  readonly rate: DryRate | RateRange<DryRate>;
}

/** A product as the mix needs it. */
export type MixProduct = MixLiquid | MixDry;

/** A product whose rate isn't held against its form yet: an agreement of the list does what the types say by their union. */
type Unheld<P> = Pick<P, keyof P>;

const MIX_PRODUCT_FIELDS: FieldsOf<Unheld<MixProduct>> = {
  name: text("What it is called; each product of a job has its own name."),
  form: PRODUCT_FORM,
  rate: LABEL_RATE as Field<unknown> as Field<MixProduct["rate"]>,
  formulation: optional(FORMULATION_CODES),
  inSolubleBag: IN_SOLUBLE_BAG,
};

interface InTank {
  /** What the label allows, for the job to be checked against. Nothing is checked unless given. */
  readonly label?: LabelLimits | undefined;
  /** What the plot has had of it already this season. */
  readonly soFar?: SeasonSoFar | undefined;
  /** Its registration number, such as the EPA's, for the record. */
  readonly registration?: string | undefined;
  /** Its active ingredient, or all of them, as the label names them: for the record. */
  readonly activeIngredient?: string | undefined;
  /** The label's restricted-entry interval in hours, 0 or more. */
  readonly reEntryHours?: number | undefined;
  /** The label's days from the last application to harvest, a whole number, 0 or more. */
  readonly preHarvestDays?: number | undefined;
  /** What it costs. The plan has no costs unless given. */
  readonly price?: Price | undefined;
  /** Whether the label permits diluting it before it goes into the tank, for doses too small to measure. */
  readonly labelPermitsDilution?: boolean | undefined;
}

/** A liquid that goes into the tank. */
export interface LiquidProduct extends MixLiquid, InTank {
  /** For a dry product: what this very product weighs by volume, so that it can be spooned. */
  readonly bulkDensity?: undefined;
}

/** A dry product that goes into the tank. */
export interface DryProduct extends MixDry, InTank {
  /** For a dry product: what this very product weighs by volume, so that it can be spooned. */
  readonly bulkDensity?: Density | undefined;
}

/** A product that goes into the tank, adjuvants included. */
export type Product = LiquidProduct | DryProduct;

/** A product as the mix needs it. */
export const MIX_PRODUCT: ObjectField<MixProduct> = /* @__PURE__ */ object<Unheld<MixProduct>>(
  MIX_PRODUCT_FIELDS,
  [productFitsForm],
) as ObjectField<object> as ObjectField<MixProduct>;

/** The active ingredient of a product, as a record has it. */
export const ACTIVE_INGREDIENT: Field<string> = /* @__PURE__ */ text(
  "Its active ingredient, or all of them, as the label names them.",
);

/** How long people stay out of what was sprayed. */
export const RE_ENTRY_HOURS: Field<number> = /* @__PURE__ */ number(
  "The label's restricted-entry interval in hours, 0 or more.",
  { unit: "hours", min: 0, max: 24_000 },
);

/** A product that goes into the tank, adjuvants included. */
export const PRODUCT: ObjectField<Product> = /* @__PURE__ */ named(
  "Product",
  /* @__PURE__ */ object<Unheld<Product>>(
    {
      ...MIX_PRODUCT_FIELDS,
      label: optional(LABEL_LIMITS),
      soFar: optional(SEASON_SO_FAR),
      bulkDensity: optional(BULK_DENSITY),
      registration: optional(text("Its registration number, such as the EPA's, for the record.")),
      activeIngredient: optional(
        about(
          "Its active ingredient, or all of them, as the label names them: for the record.",
          ACTIVE_INGREDIENT,
        ),
      ),
      reEntryHours: optional(RE_ENTRY_HOURS),
      preHarvestDays: optional(
        number("The label's days from the last application to harvest, a whole number, 0 or more.", {
          unit: "days",
          whole: true,
          min: 0,
          max: 1000,
        }),
      ),
      price: optional(about("What it costs. The plan has no costs unless given.", PRICE)),
      labelPermitsDilution: optional(
        flag(
          "Whether the label permits diluting it before it goes into the tank, for doses too small to measure.",
        ),
      ),
    },
    [productFitsForm, priceFitsForm, bulkDensityIsDry],
    "A product that goes into the tank, adjuvants included.",
  ),
) as ObjectField<object> as ObjectField<Product>;

/** Notes a bulk density of a liquid: one of the two is wrong. */
function bulkDensityIsDry({ form, bulkDensity }: Partly<Unheld<Product>>, check: Check): void {
  if (form !== "liquid" || bulkDensity === undefined) return;
  check.fault(
    "conflict",
    "bulk-density-of-liquid",
    "bulkDensity",
    "A bulk density is for a dry product, and this one is a liquid. Leave it out, or change the product to dry.",
  );
}

/** Notes a price for a weight of a liquid, or for a volume of a dry product. */
export function priceFitsForm({ form, price }: Partly<Unheld<Product>>, check: Check): void {
  if (form === undefined || price === undefined) return;
  const dimension = form === "liquid" ? "volume" : "mass";
  if (dimensionOf(price.per.unit) === dimension) return;
  check.fault(
    "wrong-dimension",
    form === "liquid" ? "price-of-liquid" : "price-of-dry",
    "price.per",
    form === "liquid"
      ? "This product is a liquid. Enter what a volume of it costs, not {given}."
      : "This product is dry. Enter what a weight of it costs, not {given}.",
    { given: price.per },
  );
}

/** More than anybody mixes. */
export const MOST_PRODUCTS = 100;

/** A product's name without what makes no difference: "Product A" and "product a " on one sheet are one to whoever reads it. */
export function sameName(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}

/** Notes two products of one name. */
export function namesDiffer(
  { products = [] }: { readonly products?: readonly MixProduct[] | undefined },
  check: Check,
): void {
  const names = new Set<string>();
  products.forEach(({ name }, i) => {
    const key = sameName(name);
    if (names.has(key))
      check.fault(
        "conflict",
        "product-twice",
        `products[${i}].name`,
        "There is a product named {given} in this mix already. Enter each product once.",
        { given: name.trim() },
      );
    names.add(key);
  });
}

/** Whole rows to a load, no more than a person chose. */
export interface RowsPerLoad {
  /** The most rows that go into one load. A whole number, 1 or more. */
  readonly rowsPerLoad: number;
}

/**
 * How a job's mix is split into loads: full tanks and a part load, equal loads, or whole rows or plots to a load. Whole
 * rows or plots must be of one size, and no load ends inside one. `easiest` is the first that `loadChoices`
 * finds on the tank's marks; or give the most rows in a load, or the fill of each load.
 */
export type Split =
  | "full-then-part"
  | "equal"
  | "whole-rows"
  | "whole-plots"
  | "easiest"
  | RowsPerLoad
  | FillList;

/** The fill of each load, as one of the ways to split a job. */
export const FILL_LIST: ObjectField<FillList> = /* @__PURE__ */ object<FillList>({ fills: FILLS });

/** Notes a job that is to be split the easiest way, on a tank whose marks aren't known. */
export function easiestHasMarks(
  {
    split,
    sprayer,
  }: { readonly split?: unknown; readonly sprayer?: Pick<Sprayer, "tank" | "marks"> | undefined },
  check: Check,
): void {
  if (split !== "easiest" || sprayer === undefined) return;
  marksAreGiven(sprayer, check);
}

/** Notes a tank whose marks aren't known. */
export function marksAreGiven({ tank, marks }: Pick<Sprayer, "tank" | "marks">, check: Check): void {
  if (marks !== undefined || check.hasFault("sprayer")) return;
  const example = unitsLike(tank.unit).volume === "L" ? { value: 1, unit: "L" } : { value: 1, unit: "qt" };
  check.fault(
    "missing",
    "marks-needed",
    "sprayer.marks",
    "This needs the tank's marks. Enter how far apart they are, such as {example}.",
    { example },
  );
}

/** Notes fills of a job that its tank can't be filled to. */
export function fillsOfJobFit(
  { sprayer, split }: { readonly split?: unknown; readonly sprayer?: object | undefined },
  check: Check,
): void {
  if (sprayer !== undefined && hasField(split, ["fills"]))
    fillsFit((split as FillList).fills, "split.fills", sprayer, check);
}

/** What the order of mixing goes by besides the formulations: the label's own order, for one. */
export const MIXING: Field<MixingRules> = /* @__PURE__ */ about(
  "What the order of mixing goes by besides the formulations: the label's own order, for one.",
  MIXING_RULES,
);

/** How a mix is split where nothing is said. */
export const DEFAULT_SPLIT = "full-then-part";

/** Notes a finished plan where a job is meant. A plan holds the job that it was made from. */
export const isPlan: OtherObject = /* @__PURE__ */ holderOf("input", {
  key: "plan-for-job",
  template: "This is a finished plan. Pass its input: plan.input.",
});

/** A whole spray job, as a form collects it. */
export interface PlanInput {
  /** The plot, or all plots that one mix is for. */
  readonly plot: Plot | readonly Plot[];
  /** How the sprayer was calibrated: a measurement, a known rate, or a record of one. */
  readonly calibration: Calibration;
  /** What kind of spraying it is, for how much mix is usual. Taken from the plot and the calibration unless given. */
  readonly application?: ApplicationKind | undefined;
  /** The sprayer that does the job. */
  readonly sprayer: Sprayer;
  /** Extra mix, beyond what the job needs. None unless given. */
  readonly reserve?: Reserve | undefined;
  /** How the mix is split: full tanks and a part load unless given. */
  readonly split?: Split | undefined;
  /** The products, at least one. */
  readonly products: readonly Product[];
  /** What the order of mixing goes by besides the formulations: the label's own order, for one. */
  readonly mixing?: MixingRules | undefined;
  /** The tools that doses are measured with: the name of a set, or a list. */
  readonly tools: Tools;
  /** The day of spraying and its conditions: what a calibration record is compared with. Not compared unless given. */
  readonly today?: TodaysConditions | undefined;
  /** Water to be added without product. It raises a warning and changes no number. None unless given. */
  readonly addedWater?: Volume | undefined;
  /** The currency of the prices; two decimals and no name unless given. */
  readonly currency?: Currency | undefined;
  /** The thresholds of warnings that are to be other than usual. */
  readonly thresholds?: Partial<Thresholds> | undefined;
}

/** A whole spray job. */
export const PLAN_INPUT: ObjectField<PlanInput> = /* @__PURE__ */ named(
  "PlanInput",
  /* @__PURE__ */ object<PlanInput>(
    {
      plot: PLOTS,
      calibration: CALIBRATION,
      application: optional(APPLICATION),
      sprayer: SPRAYER,
      reserve: optional(about("Extra mix, beyond what the job needs. None unless given.", RESERVE)),
      split: optional(
        either<Split>(
          "How the mix is split: full tanks and a part load unless given.",
          [
            choice("How the mix is split: full tanks and a part load unless given.", [
              "full-then-part",
              "equal",
              "whole-rows",
              "whole-plots",
              "easiest",
            ]),
            object<RowsPerLoad>({
              rowsPerLoad: count("The most rows that go into one load. A whole number, 1 or more."),
            }),
            FILL_LIST,
          ],
          (input) => (hasField(input, ["fills"]) ? 2 : typeof input === "object" ? 1 : 0),
        ),
        DEFAULT_SPLIT,
      ),
      products: list("The products, at least one.", PRODUCT, { most: MOST_PRODUCTS }),
      mixing: optional(MIXING),
      tools: TOOLS,
      today: optional(
        about(
          "The day of spraying and its conditions: what a calibration record is compared with. Not compared unless given.",
          TODAY,
        ),
      ),
      addedWater: optional(
        quantity(
          "Water to be added without product. It raises a warning and changes no number. None unless given.",
          "volume",
          "nonnegative",
        ),
      ),
      currency: optional(
        about("The currency of the prices; two decimals and no name unless given.", CURRENCY),
      ),
      thresholds: optional(
        about("The thresholds of warnings that are to be other than usual.", THRESHOLD_FIELDS),
      ),
    },
    [
      namesDiffer,
      easiestHasMarks,
      fillsOfJobFit,
      ({ calibration, today }, check) => {
        if (calibration?.kind === "record") dayFollows(calibration.record, today, check);
      },
    ],
    "A whole spray job, as a form collects it.",
    isPlan,
  ),
);
