import { joinPath, type QuantityFigure } from "../errors.js";
import type { Check, Field } from "../units/check.js";
import { dimensionOf } from "../units/dimensions.js";
import {
  about,
  askedByAgreement,
  byGiven,
  type ChoiceField,
  choice,
  type EitherField,
  either,
  hasField,
  named,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
  type Pick,
} from "../units/fields.js";
import {
  basedOr,
  called,
  type Examples,
  type QuantityField,
  quantity,
  type Range,
} from "../units/quantity-field.js";
import { resolveUnit } from "../units/resolve.js";
import type {
  BasedFraction,
  Concentration,
  Density,
  Dimension,
  MassPerCount,
  MassPerLength,
  MassRate,
  Quantity,
  Unit,
  VolumeConcentrationUnit,
  VolumePerCount,
  VolumePerLength,
  VolumeRate,
} from "../units/types.js";
import {
  type ActiveContent,
  CONTENT,
  contentFitsForm,
  contentInProduct,
  PRODUCT_DENSITY,
  type ProductForm,
} from "./content.js";

/**
 * Which area a rate is per: `treated` the area that spray lands on; `ground` the field with the ground between bands ("per crop
 * acre"). `broadcast` is the treated area too, for a broadcast rate that a band gets on its own area.
 */
export type RateArea = "treated" | "broadcast" | "ground";

/** A rate per area that says which area. A bare rate per area is per treated area. */
export interface AreaRate<R extends VolumeRate | MassRate = VolumeRate | MassRate> {
  /** The rate as the label prints it. More than 0. */
  readonly rate: R;
  /** Which area it is per: treated, broadcast (the band gets it on its own area) or ground. */
  readonly per: RateArea;
}

/**
 * A ratio by volume. `1:100` means two things, so `of` is never left out: `mix`, one part product in 100 parts of mix;
 * `water`, one part product to 100 parts of water, which make 101 parts of mix.
 */
export interface PartsRate {
  /** Parts of product. More than 0. */
  readonly parts: number;
  /** Parts of what it goes into. More than 0. */
  readonly to: number;
  /** What it goes into: 1 in 100 parts of mix, or 1 to 100 parts of water. */
  readonly of: "mix" | "water";
}

/** A rate by weight: all that active ingredient can be given in. */
export type WeightRate =
  | MassRate
  | AreaRate<MassRate>
  | Density
  | BasedFraction
  | MassPerLength
  | MassPerCount;

/** A rate given as active ingredient, with what the product contains. */
export interface ActiveIngredientRate {
  /** The rate of active ingredient, by weight. More than 0. */
  readonly activeIngredient: WeightRate;
  /** What the product contains: lb/gal, g/L, g/kg, or percent w/w or w/v. More than 0. */
  readonly contains: ActiveContent;
  /** What the product weighs: needed for a liquid whose content is given by weight. */
  readonly density?: Density | undefined;
}

/** A rate as a label gives it, one figure. */
export type SingleRate =
  | VolumeRate
  | MassRate
  | AreaRate
  | Concentration
  | BasedFraction
  | PartsRate
  | VolumePerLength
  | MassPerLength
  | VolumePerCount
  | MassPerCount
  | ActiveIngredientRate;

/** A rate that a liquid can have: by volume, by volume in the mix, or active ingredient. */
export type LiquidRate =
  | VolumeRate
  | AreaRate<VolumeRate>
  | Quantity<VolumeConcentrationUnit>
  | BasedFraction
  | PartsRate
  | VolumePerLength
  | VolumePerCount
  | ActiveIngredientRate;

/** A rate that a dry product can have: by weight, or active ingredient. */
export type DryRate =
  | MassRate
  | AreaRate<MassRate>
  | Density
  | BasedFraction
  | MassPerLength
  | MassPerCount
  | ActiveIngredientRate;

/** A range of rates as a label gives it, and the one chosen. */
export interface RateRange<R extends SingleRate = SingleRate> {
  /** The label's lowest rate. */
  readonly low: R;
  /** The label's highest rate. */
  readonly high: R;
  /** The rate that is used. */
  readonly chosen: R;
}

/** A rate as a label gives it: per area, per volume of carrier, percent, ratio, per row length, per plant, active ingredient, or a range. */
export type LabelRate = SingleRate | RateRange;

/** A rate per area, as seasons are counted in. */
export type SeasonRate = VolumeRate | MassRate | AreaRate | ActiveIngredientRate;

const RATE_AREA: ChoiceField<RateArea> = choice(
  "Which area it is per: treated, broadcast (the band gets it on its own area) or ground.",
  ["treated", "broadcast", "ground"],
);

/** Rates of product as examples. */
export const RATE_EXAMPLES = {
  us: { value: 1.5, unit: "pt/ac" },
  imperial: { value: 1.5, unit: "imp_pt/ac" },
  metric: { value: 2, unit: "L/ha" },
} as const;

/** The same of a dry product. */
const DRY_EXAMPLES = {
  us: { value: 4, unit: "oz/ac" },
  imperial: { value: 4, unit: "oz/ac" },
  metric: { value: 1, unit: "kg/ha" },
} as const;

/** The examples that fit a dry product, where a rate is of one. */
function ofDry(check: Check): typeof DRY_EXAMPLES | undefined {
  return isDry(check) ? DRY_EXAMPLES : undefined;
}

function isDry({ input, path }: Check): boolean {
  let form: unknown;
  let holder = input as Readonly<Record<string | number, unknown>> | undefined | null;
  for (const step of path) {
    form = holder?.form ?? form;
    holder = holder?.[step] as typeof holder;
  }
  return form === "dry";
}

/** The same, and in a job that goes by the plant a rate for each. */
function ofJob(check: Check): Examples | undefined {
  const job = check.input as { readonly size?: { readonly kind?: unknown } | null } | null | undefined;
  if (job?.size?.kind !== "count") return ofDry(check);
  const each: Quantity = { value: 5, unit: isDry(check) ? "g/plant" : "mL/plant" };
  return { us: each, imperial: each, metric: each };
}

/** What messages call a rate of active ingredient. */
export const ACTIVE_NAME = "activeRate";

/** Rates of active ingredient as examples. */
export const ACTIVE_EXAMPLES = {
  us: { value: 1, unit: "lb/ac" },
  imperial: { value: 1, unit: "lb/ac" },
  metric: { value: 1, unit: "kg/ha" },
} as const;

const PER_TREATED = "A bare rate per area is per treated area. More than 0.";

/* @__NO_SIDE_EFFECTS__ */
function perArea(range: Range = "positive"): QuantityField<VolumeRate | MassRate> {
  return called(
    quantity(PER_TREATED, ["volumeRate", "massRate"], range),
    "ratePerArea",
    RATE_EXAMPLES,
    ofDry,
  );
}

/* @__NO_SIDE_EFFECTS__ */
function weightPerArea(range: Range = "positive"): QuantityField<MassRate> {
  return called(quantity(PER_TREATED, "massRate", range), ACTIVE_NAME, ACTIVE_EXAMPLES);
}

/* @__NO_SIDE_EFFECTS__ */
function areaRate<R extends VolumeRate | MassRate>(rate: QuantityField<R>): ObjectField<AreaRate<R>> {
  return object<AreaRate>({
    rate: about("The rate as the label prints it. More than 0.", rate as Field<VolumeRate | MassRate>),
    per: RATE_AREA,
  }) as ObjectField<object> as ObjectField<AreaRate<R>>;
}

const PARTS_RATE: ObjectField<PartsRate> = object<PartsRate>(
  {
    parts: number("Parts of product. More than 0.", { above: 0 }),
    to: number("Parts of what it goes into. More than 0.", { above: 0 }),
    of: choice("What it goes into: 1 in 100 parts of mix, or 1 to 100 parts of water.", ["mix", "water"]),
  },
  [ratioFits],
);

/** Notes a ratio of more product than mix. */
export function ratioFits({ parts, to, of }: Partly<PartsRate>, check: Check): void {
  if (of === "mix" && parts !== undefined && to !== undefined && parts > to)
    check.fault(
      "conflict",
      "ratio-upside-down",
      "",
      "A ratio of {parts}:{to} would be more product than mix. Is it upside down?",
      { parts, to },
    );
}

const ACTIVE = ["activeIngredient", "contains"];
const PLAIN = ["value", "unit"];
const PER_AREA = ["rate", "per"];
const PARTS = ["parts", "to"];

const byWeight: Pick = byGiven([PLAIN, PER_AREA], 0);

const WEIGHT_RATE: EitherField<WeightRate> = either<WeightRate>(
  "The rate of active ingredient, by weight. More than 0.",
  [
    called(
      basedOr(
        "A weight per area, per volume of carrier, per row length or per plant, or percent. More than 0.",
        ["massRate", "density", "massPerLength", "massPerCount"],
        ["w/v"],
      ),
      ACTIVE_NAME,
      ACTIVE_EXAMPLES,
    ),
    areaRate(weightPerArea()),
  ],
  (input, check) =>
    hasField(input, ["parts", "to", "activeIngredient"])
      ? check.fault(
          "wrong-dimension",
          "active-not-by-weight",
          "",
          "Enter the active ingredient as a weight, such as {example}.",
          { example: ACTIVE_EXAMPLES[check.system] },
        )
      : byWeight(input, check),
);

/* @__NO_SIDE_EFFECTS__ */
function activeRate(weight: EitherField<WeightRate>): ObjectField<ActiveIngredientRate> {
  return object<ActiveIngredientRate>(
    {
      activeIngredient: about("The rate of active ingredient, by weight. More than 0.", weight),
      contains: CONTENT,
      density: optional(PRODUCT_DENSITY),
    },
    [contentInProduct],
  );
}

const ACTIVE_RATE: ObjectField<ActiveIngredientRate> = activeRate(WEIGHT_RATE);

const PLAIN_RATE: QuantityField<Exclude<SingleRate, AreaRate | PartsRate | ActiveIngredientRate>> = called(
  basedOr(PER_TREATED, [
    "volumeRate",
    "massRate",
    "volumeConcentration",
    "density",
    "volumePerLength",
    "massPerLength",
    "volumePerCount",
    "massPerCount",
  ]),
  "labelRate",
  RATE_EXAMPLES,
  ofJob,
);

const AREA_RATE: ObjectField<AreaRate> = areaRate(perArea());

/** A rate as a label gives it, one figure. */
export const SINGLE_RATE: EitherField<SingleRate> = named(
  "SingleRate",
  either<SingleRate>(
    "A rate as a label gives it: per area, volume of carrier, row length or plant, in percent with a basis, as a ratio, or as active ingredient. A bare rate per area is per treated area.",
    [PLAIN_RATE, ACTIVE_RATE, PARTS_RATE, AREA_RATE],
    byGiven([PLAIN, ACTIVE, PARTS, PER_AREA], 0),
  ),
);

const RATE_RANGE: ObjectField<RateRange> = object<RateRange>(
  {
    low: about("The label's lowest rate.", SINGLE_RATE),
    high: about("The label's highest rate.", SINGLE_RATE),
    chosen: about("The rate that is used.", askedByAgreement(SINGLE_RATE)),
  },
  [rateChosen],
);

/** Asks which rate of a range is used, with its ends as they were entered. */
function rateChosen({ low, high, chosen }: Partly<RateRange>, check: Check): void {
  if (chosen !== undefined || check.hasFault("chosen")) return;
  if (low === undefined || high === undefined) check.readAt("chosen", SINGLE_RATE, {});
  else
    check.fault("missing", "choose-rate", "chosen", "Choose the rate to use, from {low} to {high}.", {
      low: figureOf(low),
      high: figureOf(high),
    });
}

function figureOf(rate: SingleRate): QuantityFigure | string {
  const read = readRate(rate);
  if (read.kind === "parts") return `${read.parts.parts}:${read.parts.to}`;
  const { value, unit } = read.quantity;
  return { value, unit };
}

/** A rate as a label gives it, or a range of rates with the one chosen. */
export const LABEL_RATE: EitherField<LabelRate> = named(
  "LabelRate",
  either<LabelRate>(
    "The rate as the label gives it. A bare rate per area is per treated area.",
    [PLAIN_RATE, ACTIVE_RATE, PARTS_RATE, AREA_RATE, RATE_RANGE],
    byGiven([PLAIN, ACTIVE, PARTS, PER_AREA, ["low", "high", "chosen"]], 0),
  ),
);

/* @__NO_SIDE_EFFECTS__ */
function seasonRate(range: Range): EitherField<SeasonRate> {
  const weight = weightPerArea(range);
  const amount = perArea(range);
  const active = either<WeightRate>(weight.about, [weight, areaRate(weight)], byWeight);
  return either<SeasonRate>(
    "An amount per area.",
    [amount, activeRate(active), areaRate(amount)],
    byGiven([PLAIN, ACTIVE, PER_AREA], 0),
  );
}

/** The most per area in a season. */
export const SEASON_RATE: EitherField<SeasonRate> = seasonRate("positive");

/** What has been used per area in a season, which may be nothing. */
export const SEASON_USED: EitherField<SeasonRate> = seasonRate("nonnegative");

/** Whether a rate is a range. */
export function isRange(rate: LabelRate): rate is RateRange {
  return "chosen" in rate;
}

/** The rate that is used, with its place: of a range the chosen one. */
export function rateUsed(rate: LabelRate, at: string): readonly [rate: SingleRate, at: string] {
  return isRange(rate) ? [rate.chosen, joinPath(at, "chosen")] : [rate, at];
}

/** A rate taken apart: what it is per, and the label's own figure and unit with its place in the rate. */
export type RateReading =
  | { readonly kind: "parts"; readonly parts: PartsRate }
  | {
      readonly kind: "area" | "carrier" | "length" | "count" | "fraction";
      readonly quantity: Quantity;
      /** Which area a rate per area is per. */
      readonly per?: RateArea | undefined;
      /** The quantity's place, from the rate. */
      readonly at: string;
      /** Where the quantity is a rate of active ingredient: the rate that it belongs to. */
      readonly active?: ActiveIngredientRate | undefined;
    };

/** A rate that has a quantity. */
export type QuantityReading = Exclude<RateReading, { readonly kind: "parts" }>;

const KINDS: Partial<Record<Dimension, QuantityReading["kind"]>> = {
  volumeConcentration: "carrier",
  density: "carrier",
  volumePerLength: "length",
  massPerLength: "length",
  volumePerCount: "count",
  massPerCount: "count",
  fraction: "fraction",
};

/** Takes a rate apart. Trusts its input. */
export function readRate(rate: SingleRate): RateReading {
  if ("parts" in rate) return { kind: "parts", parts: rate };
  if ("activeIngredient" in rate) {
    const inner = readRate(rate.activeIngredient) as QuantityReading;
    return { ...inner, at: joinPath("activeIngredient", inner.at), active: rate };
  }
  if ("rate" in rate) return { kind: "area", quantity: rate.rate, per: rate.per, at: "rate" };
  const kind = KINDS[dimensionOf(rate.unit)];
  return kind === undefined
    ? { kind: "area", quantity: rate, per: "treated", at: "" }
    : { kind, quantity: rate, at: "" };
}

/** The unit that the label gives a rate in, where that measures what `usual` does: what a person can hold against the label. */
export function ownUnitOr(rate: SingleRate, usual: Unit): Unit {
  const read = readRate(rate);
  const isOwn =
    read.kind !== "parts" &&
    read.active === undefined &&
    dimensionOf(read.quantity.unit) === dimensionOf(usual);
  return isOwn ? read.quantity.unit : usual;
}

/** Whether a rate is a strength of the mix, which pace and nozzles do not change. */
export function isOfMix(rate: SingleRate): boolean {
  const read = readRate(rate);
  return read.kind === "parts" || read.kind === "carrier" || read.kind === "fraction";
}

/** The sizes of a job that a rate may need beside the mix. */
export type RateSize =
  | "carrierRate"
  | "carrierPerLength"
  | "carrierPerCount"
  | "area"
  | "ground"
  | "rowLength";

/** What a rate needs of a job beside the mix, where that has these sizes. Trusts its input. */
export function sizesFor(
  rate: SingleRate,
  { carrierPerLength }: { readonly carrierPerLength?: unknown } = {},
): readonly RateSize[] {
  const read = readRate(rate);
  switch (read.kind) {
    case "area":
      return read.per === "ground" ? ["carrierRate", "area", "ground"] : ["carrierRate"];
    case "length":
      return carrierPerLength === undefined ? ["carrierRate", "area", "rowLength"] : ["carrierPerLength"];
    case "count":
      return ["carrierPerCount"];
    default:
      return [];
  }
}

const BY_VOLUME: readonly Dimension[] = [
  "volumeRate",
  "volumeConcentration",
  "volumePerLength",
  "volumePerCount",
];

/** The form that a rate in this unit is for. */
export function formIn(unit: Unit): ProductForm {
  return BY_VOLUME.includes(dimensionOf(unit)) ? "liquid" : "dry";
}

/**
 * Notes a rate, or the rates of a range, that do not fit the product's form: a liquid goes by volume, a dry product by
 * weight. `at` is the rate's place.
 */
export function rateFitsForm(
  rate: LabelRate | undefined,
  form: ProductForm | undefined,
  at: string,
  check: Check,
): void {
  if (rate === undefined || form === undefined) return;
  if (isRange(rate)) {
    for (const end of ["low", "high", "chosen"] as const)
      rateFitsForm(rate[end], form, joinPath(at, end), check);
    return;
  }
  const read = readRate(rate);
  if (read.kind === "parts") {
    if (form === "dry")
      check.fault(
        "wrong-dimension",
        "ratio-for-dry",
        at,
        "A ratio is by volume, but this product is dry. Enter a weight, such as {example}.",
        { example: { value: 1, unit: check.system === "metric" ? "g/L" : "oz/gal" } },
      );
  } else if (read.active !== undefined) contentFitsForm(read.active, form, at, check);
  else quantityFitsForm(read, form, joinPath(at, read.at), check);
}

function quantityFitsForm({ kind, quantity }: QuantityReading, form: ProductForm, at: string, check: Check) {
  if (kind === "fraction") {
    const { basis } = quantity as BasedFraction;
    const expected = form === "liquid" ? "v/v" : "w/v";
    if (basis !== expected)
      check.fault(
        "wrong-dimension",
        form === "liquid" ? "basis-of-liquid" : "basis-of-dry",
        joinPath(at, "basis"),
        form === "liquid"
          ? "This product is a liquid, so its percentage is by volume (v/v), not {given}. Check what the label's percentage is of."
          : "A weight in a volume of mix is a percentage w/v, not {given}. Check what the label's percentage is of.",
        { given: basis, choices: [expected] },
      );
    return;
  }
  if (formIn(quantity.unit) === form) return;
  const { over } = resolveUnit(quantity.unit);
  const ounces = ["oz", "fl_oz", "imp_fl_oz"].includes(over);
  const { key, template } = UNFIT[form][ounces ? "ounces" : "other"];
  check.fault("wrong-dimension", key, at, template, { given: quantity });
}

const UNFIT = {
  liquid: {
    ounces: {
      key: "weight-for-liquid-ounces",
      template:
        "{given} is a weight, but this product is a liquid. Check whether the label says fl oz or oz.",
    },
    other: {
      key: "weight-for-liquid",
      template:
        "{given} is a weight, but this product is a liquid. Check the label's unit, or change the product to dry.",
    },
  },
  dry: {
    ounces: {
      key: "volume-for-dry-ounces",
      template: "{given} is a volume, but this product is dry. Check whether the label says fl oz or oz.",
    },
    other: {
      key: "volume-for-dry",
      template:
        "{given} is a volume, but this product is dry. Enter the rate by weight, or, if the label measures it by volume, change it to liquid.",
    },
  },
} as const;
