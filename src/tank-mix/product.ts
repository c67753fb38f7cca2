import { joinPath } from "../errors.js";
import { type Check, checked } from "../units/check.js";
import { convertValue, inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import {
  type Complete,
  type FieldsOf,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { formulaLines, type GivenTerm } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { groundArea, quantity, treatedArea } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { positive } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type {
  Concentration,
  GroundArea,
  Length,
  Mass,
  MassRate,
  MassUnit,
  Quantity,
  TreatedArea,
  Unit,
  Volume,
  VolumePerCount,
  VolumePerLength,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import { conversionLines, type WorkingLine } from "../units/working-line.js";
import {
  fractionLines,
  type ProductRateTerms,
  productRateLines,
  productRateOf,
} from "./active-ingredient.js";
import { asDensity, PRODUCT_FORM, type ProductForm } from "./content.js";
import {
  type ActiveIngredientRate,
  isRange,
  LABEL_RATE,
  type LabelRate,
  type QuantityReading,
  type RateReading,
  rateFitsForm,
  rateUsed,
  readRate,
  type SingleRate,
  sizesFor,
} from "./label-rate.js";

/** What a mix and the plot say of a rate: which of them are needed goes by how the label gives the rate. */
export interface JobSizes {
  /** Whether it is measured by volume (liquid) or by weight (dry). */
  readonly form: ProductForm;
  /** How much finished mix the product is for: the job's total, reserve and lines included. More than 0. */
  readonly carrier: Volume;
  /** What the sprayer puts out per treated area: needed for rates per area or per row length. */
  readonly carrierRate?: VolumeRate | undefined;
  /** The mix that one length of row gets: needed for rates per row length where nothing is known of an area. */
  readonly carrierPerLength?: VolumePerLength | undefined;
  /** The mix that one plant, tree or pot gets: needed for rates per plant. */
  readonly carrierPerCount?: VolumePerCount | undefined;
  /** The treated area of the whole plot: needed for rates per ground area or per row length. */
  readonly area?: TreatedArea | undefined;
  /** The ground area of the whole plot: needed for rates per ground area. */
  readonly ground?: GroundArea | undefined;
  /** The length of all treated rows together: needed for rates per row length. */
  readonly rowLength?: Length | undefined;
}

/** The input of {@link productAmount}. Which of the optional fields are needed goes by how the label gives the rate. */
export interface ProductInput extends JobSizes {
  /** The rate as the label gives it. A bare rate per area is per treated area. */
  readonly rate: LabelRate;
}

/** The sizes of the job that a rate may need. */
export const JOB_SIZES: FieldsOf<Omit<JobSizes, "form" | "carrier">> = {
  carrierRate: optional(
    quantity(
      "What the sprayer puts out per treated area: needed for rates per area or per row length.",
      "volumeRate",
    ),
  ),
  carrierPerLength: optional(
    quantity(
      "The mix that one length of row gets: needed for rates per row length where nothing is known of an area.",
      "volumePerLength",
    ),
  ),
  carrierPerCount: optional(
    quantity("The mix that one plant, tree or pot gets: needed for rates per plant.", "volumePerCount"),
  ),
  area: optional(
    treatedArea("The treated area of the whole plot: needed for rates per ground area or per row length."),
  ),
  ground: optional(groundArea("The ground area of the whole plot: needed for rates per ground area.")),
  rowLength: optional(
    quantity("The length of all treated rows together: needed for rates per row length.", "length"),
  ),
};

const PRODUCT: ObjectField<ProductInput> = object<ProductInput>(
  {
    rate: LABEL_RATE,
    form: PRODUCT_FORM,
    carrier: quantity(
      "How much finished mix the product is for: the job's total, reserve and lines included. More than 0.",
      "volume",
    ),
    ...JOB_SIZES,
  },
  [
    ({ rate, form }, check) => rateFitsForm(rate, form, "rate", check),
    ({ rate, ...sizes }, check) => sizesGiven(rate, sizes, check),
  ],
);

const SIZE_NEEDED = {
  carrierRate: {
    key: "size-carrierRate",
    template: "A rate per area or per row length needs the sprayer's output. Enter it, such as {example}.",
  },
  area: {
    key: "size-area",
    template:
      "A rate per ground area or per row length needs the plot's treated area. Enter it, such as {example}.",
  },
  ground: {
    key: "size-ground",
    template: "A rate per ground area needs the plot's ground area. Enter it, such as {example}.",
  },
  rowLength: {
    key: "size-rowLength",
    template: "A rate per row length needs the length of all rows. Enter it, such as {example}.",
  },
  carrierPerLength: {
    key: "size-carrierPerLength",
    template: "A rate per row length needs the mix that a length of row gets. Enter it, such as {example}.",
  },
  carrierPerCount: {
    key: "size-carrierPerCount",
    template: "A rate per plant needs the mix that one plant gets. Enter it, such as {example}.",
  },
} as const;

/** Notes the sizes of the job that a rate needs and that are not given. */
export function sizesGiven(rate: LabelRate | undefined, sizes: Partly<JobSizes>, check: Check): void {
  if (rate === undefined) return;
  const metric = check.system === "metric";
  const examples = {
    carrierRate: metric ? { value: 200, unit: "L/ha" } : { value: 20, unit: "gal/ac" },
    area: metric ? { value: 0.5, unit: "ha" } : { value: 1, unit: "ac" },
    ground: metric ? { value: 0.5, unit: "ha" } : { value: 1, unit: "ac" },
    rowLength: metric ? { value: 300, unit: "m" } : { value: 1000, unit: "ft" },
    carrierPerLength: metric ? { value: 50, unit: "mL/m" } : { value: 5, unit: "gal/1000ft" },
    carrierPerCount: metric ? { value: 100, unit: "mL/plant" } : { value: 4, unit: "fl_oz/plant" },
  };
  for (const single of isRange(rate) ? [rate.low, rate.high, rate.chosen] : [rate])
    for (const name of sizesFor(single, sizes)) {
      // Given, and at fault already.
      const faulty = check.issues.some(({ path }) => path.split(".").includes(name));
      if (sizes[name] !== undefined || faulty) continue;
      const { key, template } = SIZE_NEEDED[name];
      check.fault("missing", key, name, template, { example: examples[name] });
    }
}

/** How much of a product goes into a mix. */
export interface ProductAmount {
  /** The product in the whole mix, unrounded. */
  readonly amount: Volume | Mass;
  /** The product in one unit of the mix: what must be the same in every load. */
  readonly strength: Concentration;
}

/** A rate as the strength that it gives the mix: the number, and the terms that it and the lines are made of. */
export interface RateStrength {
  /** Product in one unit of the carrier as given. */
  readonly strength: Concentration;
  /** The unit of the product. */
  readonly amount: VolumeUnit | MassUnit;
  readonly kind: "area" | "length" | "count" | "ground" | "rowLength" | "carrier" | "fraction" | "parts";
  readonly terms: Readonly<Record<string, GivenTerm>>;
  /** Where the label gives the active ingredient's rate: that rate, and the product's. */
  readonly active?: { readonly read: QuantityReading; readonly product: ProductRateTerms } | undefined;
}

type StrengthTerms = Omit<RateStrength, "strength">;

function strengthTerms(rate: SingleRate, sizes: JobSizes, at: string): StrengthTerms {
  const read = readRate(rate);
  const { carrier } = sizes;
  if (read.kind === "parts" || (read.kind === "fraction" && read.active === undefined))
    return partTerms(read, sizes);
  const product = read.active && productRateOf(activeInput(read, read.active, sizes), carrier.unit, at);
  const given = product?.result ?? read.quantity;
  const amount = smallUnit(given.unit, sizes.form);
  const rateIn = (per: string): GivenTerm => [given, perUnit(amount, per)];
  const active = product && { read, product };
  if (read.kind === "carrier" || read.kind === "fraction")
    return { kind: "carrier", amount, terms: { rate: rateIn(carrier.unit) }, active };
  const each = carrierLike(read, sizes);
  if (each !== undefined) {
    const { per = "" } = resolveUnit(each.unit);
    const terms = { rate: rateIn(per), carrierRate: [each, perUnit(carrier.unit, per)] as const };
    return { kind: read.kind, amount, terms, active };
  }
  const { carrierRate, area } = sizes as Complete<JobSizes>;
  const kind = read.kind === "length" ? "rowLength" : "ground";
  const measure = sizes[kind] as Quantity;
  const terms = {
    rate: rateIn(measure.unit),
    [kind]: [measure, measure.unit] as const,
    carrierRate: [carrierRate, perUnit(carrier.unit, area.unit)] as const,
    area: [area, area.unit] as const,
  };
  return { kind, amount, terms, active };
}

/** The mix that goes on the same as the rate is per: an area, a length of row, a plant. Nothing where the two differ. */
function carrierLike({ kind, per }: QuantityReading, sizes: JobSizes): Quantity | undefined {
  if (kind === "count") return sizes.carrierPerCount;
  if (kind === "length") return sizes.carrierPerLength;
  return per === "ground" ? undefined : sizes.carrierRate;
}

/** The unit that a product's amount is reported in. */
export function smallUnit(like: Unit, form: ProductForm): VolumeUnit | MassUnit {
  const { smallVolume, smallMass } = unitsLike(like);
  return form === "liquid" ? smallVolume : smallMass;
}

// A part of the mix, in the carrier's own system.
function partTerms(read: RateReading, { form, carrier: { unit } }: JobSizes): StrengthTerms {
  const amount = smallUnit(unit, form);
  const per = perUnit(amount, unit);
  const value = form === "liquid" ? convertValue(1, unit, amount) : convertValue(1, "kg/L", per);
  const size: GivenTerm = [{ value, unit: per }, per];
  if (read.kind !== "parts") return { kind: "fraction", amount, terms: { part: [read.quantity, "1"], size } };
  const { parts, to, of } = read.parts;
  return { kind: "parts", amount, terms: { parts, whole: of === "mix" ? to : parts + to, size } };
}

function activeInput(
  { kind, quantity }: QuantityReading,
  { contains, density }: ActiveIngredientRate,
  { form, carrier }: JobSizes,
): ProductRateTerms["input"] {
  const inCarrier = unitsLike(carrier.unit).density;
  const activeIngredient =
    kind === "fraction" ? { value: inUnit(asDensity(quantity), inCarrier), unit: inCarrier } : quantity;
  return {
    activeIngredient: activeIngredient as MassRate,
    contains,
    form,
    density,
  };
}

function numberFrom({ kind, terms }: StrengthTerms): number {
  const of = (name: string): number => {
    const term = terms[name] as GivenTerm;
    return typeof term === "number" ? term : inUnit(...term);
  };
  switch (kind) {
    case "carrier":
      return of("rate");
    case "area":
    case "length":
    case "count":
      return of("rate") / of("carrierRate");
    case "ground":
    case "rowLength":
      return (of("rate") * of(kind)) / (of("carrierRate") * of("area"));
    case "fraction":
      return of("part") * of("size");
    case "parts":
      return (of("parts") * of("size")) / of("whole");
  }
}

/** A rate as the strength that it gives the mix; `at` is the rate's place. Trusts its input. */
export function strengthOfRate(rate: SingleRate, sizes: JobSizes, at: string): RateStrength {
  const found = strengthTerms(rate, sizes, at);
  const { kind, amount, terms, active } = found;
  const unit = perUnit(amount, sizes.carrier.unit);
  const strength = { value: positive(numberFrom(found), at), unit } as Concentration;
  return { kind, amount, terms, active, strength };
}

/** How much of a product a mix takes, with the terms that it comes from. */
function amountFrom(input: ProductInput, at: string): { rated: RateStrength; amount: Volume | Mass } {
  const { rate, carrier } = input;
  const [single, place] = rateUsed(rate, at);
  const rated = strengthOfRate(single, input, place);
  if (isRange(rate)) refuseOutside(rate, rated, input, at);
  refuseUnmixable(rated.strength, place);
  const value = positive(rated.strength.value * carrier.value, place);
  return { rated, amount: { value, unit: rated.amount } as Volume | Mass };
}

/** How much of a product a mix takes; `at` is the rate's place. Trusts its input. */
export function productAmountOf(input: ProductInput, at = "rate"): ProductAmount {
  const { rated, amount } = amountFrom(input, at);
  return { amount, strength: rated.strength };
}

/**
 * Returns how much of a product a mix takes, from the rate as the label gives it.
 *
 * Formulas: amount = strength × carrier, where "carrier" is the finished mix and the strength is the product in one unit of it:
 *
 * - per treated or broadcast area: rate / carrier rate
 * - per ground area: rate × ground / (carrier rate × treated area)
 * - per row length: rate × row length / (carrier rate × treated area)
 * - per row length or per plant, where the mix is known for that: rate / carrier rate
 * - per volume of carrier: the rate itself
 * - percent or ppm: the part itself, by volume for a liquid (`v/v`), weight in volume for a dry product (`w/v`, 1% is 1 kg in 100 L)
 * - ratio: parts / to (of mix) or parts / (parts + to) (of water)
 * - active ingredient: by {@link productRate} first
 *
 * Source: each by definition of its rate.
 *
 * @param input - every quantity more than 0; of a range, the chosen rate is used
 * @returns the amount in `fl_oz`, `imp_fl_oz` or mL for a liquid, oz or g for a dry product, and the strength per unit of the
 *   carrier given. The amount is in the rate's own system (the carrier's for percent and ratios). Both are within 8 ulp of the
 *   exact value
 * @throws SprayMathError `missing` (a field that the rate needs, a basis), `wrong-dimension` (weight for volume),
 * `wrong-area`, `conflict` (no room for water, or more of a dry product than can be mixed in, a range upside down, a rate given in two ways), `out-of-range` (zero or
 * negative; chosen over the label's highest), `not-a-quantity`, `not-finite`, `unknown-unit`, `unknown-field` or
 * `unknown-choice`
 *
 * @example
 * ```ts
 * import { productAmount } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const product = productAmount({
 *   rate: qty(1.5, "pt/ac"),
 *   form: "liquid",
 *   carrier: qty(10, "gal"),
 *   carrierRate: qty(20, "gal/ac"),
 * });
 * console.log(product.amount); // { value: 12, unit: 'fl_oz' }
 * console.log(product.strength); // { value: 1.2, unit: 'fl_oz/gal' }
 * ```
 */
export function productAmount(input: ProductInput): ProductAmount {
  return productAmountOf(checked(input, PRODUCT));
}

// In kg/L: more neither dissolves nor stays stirred up: common practice, no source.
const MOST_DRY = 1;

/** Whether a strength is of a liquid, and not of a dry product. */
export function isOfLiquid({ unit }: Concentration): boolean {
  return dimensionOf(unit) === "volumeConcentration";
}

/** A strength as liters or kilograms of product in a liter of mix. */
export function partOfMix(strength: Concentration): number {
  return inUnit(strength, isOfLiquid(strength) ? "L/L" : "kg/L");
}

/** Whether a mix can hold so much product, with room for some water. */
export function isMixable(strength: Concentration): boolean {
  const part = partOfMix(strength);
  return isOfLiquid(strength) ? moreThan(1, part) : !moreThan(part, MOST_DRY);
}

/** A strength as the product in one unit of the mix, for a sentence. */
export function productInOne({ value, unit }: Concentration): {
  readonly product: Quantity;
  readonly mix: Quantity;
} {
  const { over, per = "" } = resolveUnit(unit);
  return { product: { value, unit: over }, mix: { value: 1, unit: per as Unit } };
}

/** Refuses a mix that can't hold so much product; `at` is the rate's place. */
export function refuseUnmixable(strength: Concentration, at: string): void {
  if (isMixable(strength)) return;
  const figures = productInOne(strength);
  throw isOfLiquid(strength)
    ? refusal("conflict", "no-room-in-mix", at, NO_ROOM, figures)
    : refusal("conflict", "too-much-to-mix", at, TOO_MUCH, figures);
}

const NO_ROOM =
  "That's {product} of product in {mix} of mix, which leaves no room for water. Check the rate's unit and the output rate.";
const TOO_MUCH =
  "That's {product} of product in {mix} of mix, more than can be mixed in. Check the rate's unit and the output rate.";

/** Refuses a range whose low end is over its high end, or a chosen rate over the high end. */
function refuseOutside(
  range: { readonly low: SingleRate; readonly high: SingleRate },
  chosen: RateStrength,
  sizes: JobSizes,
  at: string,
): void {
  const strengthIn = (rate: SingleRate, end: string): number =>
    inUnit(strengthOfRate(rate, sizes, joinPath(at, end)).strength, chosen.strength.unit);
  const high = strengthIn(range.high, "high");
  if (moreThan(strengthIn(range.low, "low"), high))
    throw refusal(
      "conflict",
      "range-upside-down",
      at,
      "The lowest rate is more than the highest. Are they switched?",
    );
  if (moreThan(chosen.strength.value, high))
    throw refusal(
      "out-of-range",
      "chosen-over-high",
      joinPath(at, "chosen"),
      "The rate used is over the label's highest. Choose one that the label allows.",
    );
}

const BY_DEFINITION = "by definition of the rate";

const FORMULAS: Readonly<Record<Exclude<RateStrength["kind"], "carrier">, readonly [string, string]>> = {
  area: ["tank-mix.strength", "rate / carrierRate"],
  length: ["tank-mix.strengthOfLength", "rate / carrierRate"],
  count: ["tank-mix.strengthOfCount", "rate / carrierRate"],
  ground: ["tank-mix.strengthByGround", "rate * ground / (carrierRate * area)"],
  rowLength: ["tank-mix.strengthByRow", "rate * rowLength / (carrierRate * area)"],
  fraction: ["tank-mix.strengthOfPart", "part * size"],
  parts: ["tank-mix.strengthOfRatio", "parts * size / whole"],
};

/**
 * The working of {@link productAmount}.
 *
 * @param input - as for {@link productAmount}
 * @returns the lines, in order, ending with the result
 * @throws SprayMathError what {@link productAmount} throws
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { productAmount } from "swath-to-spoon/working";
 *
 * const job = { carrier: qty(10, "gal"), carrierRate: qty(20, "gal/ac") };
 * const lines = productAmount({ rate: qty(24, "fl_oz/ac"), form: "liquid", ...job });
 * console.log(lines.map((line) => line.formula)); // [ 'rate / carrierRate', 'strength * carrier' ]
 * ```
 */
export function productAmountWorking(input: ProductInput): WorkingLine[] {
  return linesOfAmount(checked(input, PRODUCT));
}

/** The working of {@link productAmountOf}. Trusts its input. */
export function linesOfAmount(job: ProductInput): WorkingLine[] {
  const { rated, amount } = amountFrom(job, "rate");
  if (job.form === "liquid" && (rated.kind === "fraction" || rated.kind === "parts"))
    return partLines(rated, rated.kind, job.carrier, amount);
  return [
    ...linesOfStrength(rated),
    {
      id: "tank-mix.amount",
      formula: "strength * carrier",
      terms: { strength: rated.strength, carrier: job.carrier },
      result: amount,
      source: BY_DEFINITION,
    },
  ];
}

const OF_MIX: Readonly<Record<"fraction" | "parts", readonly [string, string]>> = {
  fraction: ["tank-mix.amountOfPart", "part * carrier"],
  parts: ["tank-mix.amountOfRatio", "carrier * parts / whole"],
};

// A part by volume is taken of the mix itself, as people do: 2% of 384 fl oz.
function partLines(
  { terms: { size: _, ...part }, amount: unit }: RateStrength,
  kind: "fraction" | "parts",
  carrier: Volume,
  result: Volume | Mass,
): WorkingLine[] {
  const [id, formula] = OF_MIX[kind];
  const terms = { ...part, carrier: [carrier, unit] } as const;
  return formulaLines({ id, formula, terms, result, source: BY_DEFINITION });
}

function activeLines({ active }: RateStrength): WorkingLine[] {
  if (active === undefined) return [];
  const { kind, quantity: given } = active.read;
  const lines = productRateLines(active.product);
  if (kind !== "fraction") return lines;
  const about = "tank-mix.productRate.activeIngredient";
  const { unit } = active.product.input.activeIngredient;
  return [...fractionLines(about, given), ...conversionLines(about, asDensity(given), unit), ...lines];
}

/** The working of {@link strengthOfRate}. */
export function linesOfStrength(rated: RateStrength): WorkingLine[] {
  return [...activeLines(rated), ...strengthLines(rated)];
}

function strengthLines({ kind, terms, strength: result }: RateStrength): WorkingLine[] {
  if (kind === "carrier") {
    const [given] = terms.rate as Exclude<GivenTerm, number>;
    return conversionLines("tank-mix.amount.strength", given, result.unit);
  }
  const [id, formula] = FORMULAS[kind];
  return formulaLines({ id, formula, terms, result, source: BY_DEFINITION });
}
