import { joinPath } from "../errors.js";
import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import {
  about,
  count,
  named,
  number,
  type ObjectField,
  object,
  optional,
  type Partly,
} from "../units/fields.js";
import { refusal } from "../units/message.js";
import { quantity } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { Fraction, Quantity, Unit, VolumeRate, VolumeUnit } from "../units/types.js";
import { PRODUCT_FORM, type ProductForm } from "./content.js";
import { finding, type LabelFinding } from "./findings.js";
import {
  isOfMix,
  isRange,
  LABEL_RATE,
  type LabelRate,
  ownUnitOr,
  type QuantityReading,
  type RateRange,
  rateFitsForm,
  rateUsed,
  readRate,
  SEASON_RATE,
  SEASON_USED,
  type SeasonRate,
  SINGLE_RATE,
  type SingleRate,
} from "./label-rate.js";
import { JOB_SIZES, type JobSizes, sizesGiven, smallUnit, strengthOfRate } from "./product.js";
import { unusualFindingsOf } from "./unusual.js";

/** The limits that a label sets. */
export interface LabelLimits {
  /** The lowest rate. */
  readonly min?: SingleRate | undefined;
  /** The highest rate of one application. */
  readonly max?: SingleRate | undefined;
  /** The least carrier per treated area. More than 0. */
  readonly leastCarrier?: VolumeRate | undefined;
  /** The most carrier per treated area. More than 0. */
  readonly mostCarrier?: VolumeRate | undefined;
  /** The most per area in a season (or a year: as the label counts). */
  readonly seasonMax?: SeasonRate | undefined;
  /** The most applications in a season. A whole number, 1 or more. */
  readonly mostApplications?: number | undefined;
  /** The fewest days from one application to the next. 0 or more. */
  readonly daysBetween?: number | undefined;
}

/** The limits that a label sets. */
export const LABEL_LIMITS: ObjectField<LabelLimits> = named(
  "LabelLimits",
  object<LabelLimits>(
    {
      min: optional(about("The lowest rate.", SINGLE_RATE)),
      max: optional(about("The highest rate of one application.", SINGLE_RATE)),
      leastCarrier: optional(quantity("The least carrier per treated area. More than 0.", "volumeRate")),
      mostCarrier: optional(quantity("The most carrier per treated area. More than 0.", "volumeRate")),
      seasonMax: optional(
        about("The most per area in a season (or a year: as the label counts).", SEASON_RATE),
      ),
      mostApplications: optional(count("The most applications in a season. A whole number, 1 or more.")),
      daysBetween: optional(
        number("The fewest days from one application to the next. 0 or more.", { unit: "days", min: 0 }),
      ),
    },
    [
      ({ leastCarrier, mostCarrier }, check) => {
        if (leastCarrier === undefined || mostCarrier === undefined) return;
        if (moreThan(inUnit(leastCarrier, mostCarrier.unit), mostCarrier.value))
          check.fault(
            "conflict",
            "carrier-limits-upside-down",
            "leastCarrier",
            "The minimum spray volume is more than the maximum. Are they switched?",
            { given: leastCarrier, limit: mostCarrier },
          );
      },
    ],
    "What the label allows, for the job to be checked against. Nothing is checked unless given.",
  ),
);

/** What the plot has had already this season. */
export interface SeasonSoFar {
  /** The product used per area, all applications together. 0 or more. */
  readonly rate?: SeasonRate | undefined;
  /** The number of applications. A whole number, 0 or more. */
  readonly applications?: number | undefined;
  /** The days since the last application; left out where there was none. 0 or more. */
  readonly daysSinceLast?: number | undefined;
}

/** What the plot has had already this season. */
export const SEASON_SO_FAR: ObjectField<SeasonSoFar> = named(
  "SeasonSoFar",
  object<SeasonSoFar>(
    {
      rate: optional(about("The product used per area, all applications together. 0 or more.", SEASON_USED)),
      applications: optional(count("The number of applications. A whole number, 0 or more.", 0)),
      daysSinceLast: optional(
        number("The days since the last application; left out where there was none. 0 or more.", {
          unit: "days",
          min: 0,
        }),
      ),
    },
    [
      ({ rate, applications }, check) => {
        if (applications === 0 && rate !== undefined && !isNothing(rate))
          check.fault(
            "conflict",
            "used-without-application",
            "rate",
            "You entered product used, but 0 applications. Enter the number of applications, or remove the amount used.",
            { applications },
          );
      },
    ],
    "What the plot has had of it already this season.",
  ),
);

/** The input of {@link checkLabel}. */
export interface LabelInput extends Omit<JobSizes, "carrier"> {
  /** The rate that is to be used. */
  readonly rate: LabelRate;
  /** The label's limits. */
  readonly label: LabelLimits;
  /** What the plot has had of it already this season. */
  readonly soFar?: SeasonSoFar | undefined;
  /** How near a limit earns a warning, in percent of the limit; 5 unless given (common practice, no source). */
  readonly near?: number | undefined;
}

const LABEL_INPUT: ObjectField<LabelInput> = object<LabelInput>(
  {
    rate: about("The rate that is to be used.", LABEL_RATE),
    form: PRODUCT_FORM,
    ...JOB_SIZES,
    label: about("The label's limits.", LABEL_LIMITS),
    soFar: optional(SEASON_SO_FAR),
    near: optional(
      number(
        "How near a limit earns a warning, in percent of the limit; 5 unless given (common practice, no source).",
        { min: 0, max: 100 },
      ),
    ),
  },
  [
    productFitsForm,
    (given, check) => {
      // What was used is held against the season's limit only.
      const isCompared = (at: string) => at !== "soFar.rate" || given.label?.seasonMax !== undefined;
      for (const [at, rate] of ratesOf(given)) if (isCompared(at)) sizesGiven(rate, given, check);
      // A limit of the carrier is per area, as a rate per area is.
      const { leastCarrier, mostCarrier } = given.label ?? {};
      for (const limit of [leastCarrier, mostCarrier]) sizesGiven(limit, given, check);
    },
  ],
);

type ProductRates = Partly<Pick<LabelInput, "rate" | "label" | "soFar">>;

/** The rates that a product has: its own, its label's and its season's, with their places. */
export function ratesOf({ rate, label, soFar }: ProductRates): readonly (readonly [at: string, LabelRate])[] {
  const rates: [at: string, rate: LabelRate][] = [];
  const add = (at: string, one: LabelRate | undefined) => {
    if (one !== undefined) rates.push([at, one]);
  };
  add("rate", rate);
  if (label !== undefined) {
    add("label.min", label.min);
    add("label.max", label.max);
    add("label.seasonMax", label.seasonMax);
  }
  add("soFar.rate", soFar?.rate);
  return rates;
}

/** Notes every rate of a product that does not fit its form: its own, its label's and its season's. */
export function productFitsForm(
  given: ProductRates & { readonly form?: ProductForm | undefined },
  check: Check,
): void {
  for (const [at, rate] of ratesOf(given)) rateFitsForm(rate, given.form, at, check);
}

/**
 * Returns what a careful person would say about a rate and a carrier before the job starts. Refuses a rate over the label maximum,
 * more product or more applications in a season than allowed, too much or too little carrier, and too short an interval. Warns near
 * a limit, under the lowest rate, and of a limit whose other side was not given. Nothing is changed.
 *
 * Rates given in different ways are compared by the strength that each gives the same mix. A range given as the rate
 * counts as limits too. Limits are compared with noise aside, so that the limit itself is not over it. Source: the label
 * is the law where it is registered; warnings: common practice, no source.
 *
 * @param input - rates and limits more than 0; counts and days 0 or more
 * @returns the findings, refusals first; an empty list where there is nothing to say
 * @throws SprayMathError what {@link productAmount} throws, with paths such as `label.max`; `conflict` for limits upside down
 *
 * @example
 * ```ts
 * import { checkLabel } from "swath-to-spoon/tank-mix";
 * import { qty } from "swath-to-spoon/units";
 *
 * const findings = checkLabel({
 *   rate: qty(2.5, "pt/ac"),
 *   form: "liquid",
 *   carrierRate: qty(18, "gal/ac"),
 *   label: { max: qty(2, "pt/ac"), leastCarrier: qty(15, "gal/ac") },
 * });
 * console.log(findings.map((finding) => finding.code)); // [ 'rate-over-max' ]
 * ```
 */
export function checkLabel(input: LabelInput): LabelFinding[] {
  const given = checked(input, LABEL_INPUT);
  const [single, at] = rateUsed(given.rate, "rate");
  const { strength } = strengthOfRate(single, sizesOfUnit(given), at);
  return [...labelFindingsOf(given), ...unusualFindingsOf({ ...given, strength })];
}

/** The mix that goes on one area, plant or length of row, and where none is known, a volume of it: rates are compared by what comes along. */
function carrierOn(input: LabelInput): Quantity {
  const { carrierRate, carrierPerCount, carrierPerLength } = input;
  const unit = mixUnit(input.rate);
  return carrierRate ?? carrierPerCount ?? carrierPerLength ?? { value: 1, unit: perUnit(unit, unit) };
}

/** A unit of mix that goes with a rate of which only the strength counts. */
function mixUnit(rate: LabelRate): VolumeUnit {
  const read = readRate(rateUsed(rate, "")[0]);
  return unitsLike(read.kind === "parts" ? "L" : read.quantity.unit).volume;
}

// One unit of the carrier stands in for the mix: strengths, not amounts, are compared.
function sizesOfUnit(input: LabelInput): JobSizes {
  const { form, carrierRate, carrierPerLength, carrierPerCount, area, ground, rowLength } = input;
  const { over } = resolveUnit(carrierOn(input).unit);
  const carrier = { value: 1, unit: over as VolumeUnit };
  return { form, carrier, carrierRate, carrierPerLength, carrierPerCount, area, ground, rowLength };
}

/**
 * What the label's limits have against a job, with paths from the product; `at` is its place in an error. Trusts its input.
 */
export function labelFindingsOf(input: LabelInput, at = ""): LabelFinding[] {
  const job = jobOf(input, at);
  const findings = [
    ...rateFindings(job, at),
    ...carrierFindings(job),
    ...seasonFindings(job),
    ...applicationFindings(job),
    ...intervalFindings(job),
  ];
  const refusals = findings.filter((finding) => finding.severity === "refusal");
  return [...refusals, ...findings.filter((finding) => finding.severity === "warning")];
}

interface Job {
  readonly label: LabelLimits;
  readonly soFar: SeasonSoFar;
  readonly carrierRate: VolumeRate | undefined;
  /** The rate in use. */
  readonly single: SingleRate;
  /** Product on one area, length of row or plant, or in a volume of mix alone, in `unit`: the rate's own where it is given so. */
  readonly rate: number;
  readonly unit: Unit;
  readonly range: RateRange | undefined;
  /** As near to a limit as this share of it. */
  readonly near: number;
  /** Any rate in `unit`. */
  inJobUnit(rate: SingleRate, at: string): number;
}

function jobOf(input: LabelInput, at: string): Job {
  const { rate, form, carrierRate, label, soFar = {}, near = 5 } = input;
  const range = isRange(rate) ? rate : undefined;
  const [single, place] = rateUsed(rate, "rate");
  const on = carrierOn(input);
  const { per = "" } = resolveUnit(on.unit);
  const sizes = sizesOfUnit(input);
  const unit = ownUnitOr(single, perUnit(smallUnit(on.unit, form), per));
  const inJobUnit = (of: SingleRate, field: string): number => {
    const { strength, amount } = strengthOfRate(of, sizes, joinPath(at, field));
    return inUnit({ value: strength.value * on.value, unit: perUnit(amount, per) }, unit);
  };
  return {
    label,
    soFar,
    carrierRate,
    single,
    rate: inJobUnit(single, place),
    unit,
    range,
    near: near / 100,
    inJobUnit,
  };
}

function rateFindings(job: Job, at: string): LabelFinding[] {
  const { label, range, near } = job;
  const max = limitOf(job, Math.min, [label.max, "label.max"], [range?.high, "rate.high"]);
  const min = limitOf(job, Math.max, [label.min, "label.min"], [range?.low, "rate.low"]);
  if (max !== undefined && min !== undefined && moreThan(min.value, max.value))
    throw refusal(
      "conflict",
      "limits-upside-down",
      joinPath(at, range === undefined ? "label.min" : "rate"),
      "The label minimum is more than the label maximum. Are they switched?",
      { min: min.given, max: max.given },
    );
  if (max !== undefined && moreThan(job.rate, max.value))
    return [
      finding(
        "rate-over-max",
        "refusal",
        "rate",
        "The rate of {rate} is over the label maximum of {max}. Use no more than the label allows.",
        { rate: max.rate, max: max.given },
      ),
    ];
  if (min !== undefined && moreThan(min.value, job.rate))
    return [
      finding(
        "rate-under-min",
        "warning",
        "rate",
        "The rate of {rate} is below the label minimum of {min}. It may not work: check the label.",
        { rate: min.rate, min: min.given },
      ),
    ];
  if (max === undefined || !moreThan(job.rate, max.value * (1 - near))) return [];
  // What could push a rate over a limit next to it: a strength of the mix is the same at any pace.
  const measured = isOfMix(job.single) && isOfMix((label.max ?? range?.high) as SingleRate);
  return [
    finding(
      "rate-near-max",
      "warning",
      "rate",
      measured
        ? "The rate of {rate} is at or near the label maximum of {max}. A measure filled too high would put you over."
        : "The rate of {rate} is at or near the label maximum of {max}. A slow step or a worn nozzle would put you over.",
      { rate: max.rate, max: max.given },
      measured ? "rate-near-max-by-measure" : "rate-near-max",
    ),
  ];
}

/** A limit per treated area: the number to compare with, and as the label gives it. */
interface Limit {
  readonly value: number;
  readonly given: Quantity;
}

/** A limit of the rate in use. */
interface RateLimit extends Limit {
  /** The rate in use, as it stands beside the limit. */
  readonly rate: Quantity;
}

/** The strictest of the limits that are given: the lowest of the upper ones, or the highest of the lower ones. */
function limitOf(
  job: Job,
  strictest: (...limits: number[]) => number,
  ...given: readonly (readonly [SingleRate | undefined, string])[]
): RateLimit | undefined {
  const limits = given.flatMap(([limit, place]) =>
    limit === undefined ? [] : [rateLimit(limit, place, job)],
  );
  const value = strictest(...limits.map((limit) => limit.value));
  return limits.find((limit) => limit.value === value);
}

// Whatever is said about a limit is said in the unit that it is given in: of two percentages in percent, and so of ratios.
function rateLimit(limit: SingleRate, place: string, job: Job): RateLimit {
  const found = asLimit(limit, place, job);
  const [given, used] = [percentOf(limit), percentOf(job.single)];
  if (given === undefined || used === undefined)
    return { ...found, rate: amountIn(found.given.unit, job.rate, job.unit) };
  return { ...found, given, rate: { ...used, value: inUnit(used, given.unit), unit: given.unit } };
}

/** A rate that is a percentage of the mix, parts per million, or a ratio, which has no unit of its own either. */
function percentOf(rate: SingleRate): Fraction | undefined {
  const read = readRate(rate);
  if (read.kind === "parts") {
    const { parts, to, of } = read.parts;
    return { value: (100 * parts) / (of === "mix" ? to : parts + to), unit: "%" };
  }
  return read.kind === "fraction" && read.active === undefined ? (read.quantity as Fraction) : undefined;
}

function amountIn(to: Unit, value: number, unit: Unit): Quantity {
  return { value: inUnit({ value, unit }, to), unit: to };
}

// A person holds a limit against the label: in the label's own unit, where it limits what the job is compared by.
function asLimit(limit: SingleRate, place: string, { inJobUnit, unit }: Job): Limit {
  const value = inJobUnit(limit, place);
  const own = readRate(limit);
  const isPlain = own.kind !== "parts" && own.active === undefined && own.per !== "ground";
  return {
    value,
    given: isPlain && ownUnitOr(limit, unit) === own.quantity.unit ? own.quantity : { value, unit },
  };
}

function carrierFindings({ label, carrierRate, near }: Job): LabelFinding[] {
  const { leastCarrier: least, mostCarrier: most } = label;
  // Where no output is known there are no limits of it: the list of fields saw to that.
  if (carrierRate === undefined) return [];
  const against = ({ unit }: VolumeRate): Quantity => amountIn(unit, carrierRate.value, carrierRate.unit);
  if (least !== undefined) {
    const figures = { carrierRate: against(least), least };
    if (moreThan(least.value, figures.carrierRate.value))
      return [
        finding(
          "carrier-under-least",
          "refusal",
          "carrierRate",
          "The sprayer puts out {carrierRate}, below the label minimum of {least}. Slow down or use larger nozzles, then recalibrate.",
          figures,
        ),
      ];
    if (moreThan(least.value * (1 + near), figures.carrierRate.value))
      return [
        finding(
          "carrier-near-least",
          "warning",
          "carrierRate",
          "The sprayer puts out {carrierRate}, at or near the label minimum of {least}. Walking faster would put you below it.",
          figures,
        ),
      ];
  }
  if (most === undefined || !moreThan(against(most).value, most.value)) return [];
  return [
    finding(
      "carrier-over-most",
      "refusal",
      "carrierRate",
      "The sprayer puts out {carrierRate}, over the label maximum of {most}. Speed up or use smaller nozzles, then recalibrate.",
      { carrierRate: against(most), most },
    ),
  ];
}

function seasonFindings(job: Job): LabelFinding[] {
  const { label, soFar, unit, rate, inJobUnit } = job;
  if (label.seasonMax === undefined) return [];
  const { value: max, given } = asLimit(label.seasonMax, "label.seasonMax", job);
  const used = soFar.rate === undefined || isNothing(soFar.rate) ? 0 : inJobUnit(soFar.rate, "soFar.rate");
  // What is added up is shown in one unit: that of the label's maximum.
  const figure = (value: number): Quantity => amountIn(given.unit, value, unit);
  const figures = { rate: figure(rate), used: figure(used), max: given };
  if (moreThan(used + rate, max))
    return [
      finding(
        "season-over-max",
        "refusal",
        "rate",
        used === 0
          ? "{rate} alone goes over the label maximum of {max} in a season. Use less, or another product."
          : "With {used} already used, {rate} more goes over the label maximum of {max} in a season. Use less, or another product.",
        figures,
        used === 0 ? "season-over-max-alone" : "season-over-max",
      ),
    ];
  if (soFar.rate === undefined && soFar.applications !== 0)
    return [
      finding(
        "season-unknown",
        "warning",
        "soFar.rate",
        "The label allows {max} in a season, and you haven't entered what this plot has already had. Check your spray record.",
        figures,
      ),
    ];
  if (!moreThan(used + 2 * rate, max)) return [];
  // What rounding leaves of a maximum that is used up is nothing.
  const left = moreThan(max, used + rate) ? max - used - rate : 0;
  return [
    finding(
      "season-nearly-used",
      "warning",
      "rate",
      "After this application {left} of the season's {max} is left, not enough for another at this rate.",
      { ...figures, left: figure(left) },
    ),
  ];
}

function isNothing(rate: SeasonRate): boolean {
  return (readRate(rate) as QuantityReading).quantity.value === 0;
}

function applicationFindings({ label: { mostApplications: most }, soFar }: Job): LabelFinding[] {
  if (most === undefined) return [];
  const { applications: made } = soFar;
  if (made === undefined)
    return [
      finding(
        "applications-unknown",
        "warning",
        "soFar.applications",
        "The label limits applications to {most} a season, and you haven't entered how many this plot has had. Check your spray record.",
        { most },
      ),
    ];
  if (made >= most)
    return [
      finding(
        "applications-over-most",
        "refusal",
        "soFar.applications",
        "The label limits applications to {most} a season, and this plot has had {made}. Don't use this product again this season.",
        { made, most },
      ),
    ];
  return most > 1 && made === most - 1
    ? [
        finding(
          "applications-last",
          "warning",
          "soFar.applications",
          "This is the last application of the season: the label allows {most}.",
          { made, most },
        ),
      ]
    : [];
}

function intervalFindings({ label: { daysBetween: least }, soFar }: Job): LabelFinding[] {
  if (least === undefined) return [];
  const { daysSinceLast: since, applications } = soFar;
  if (since === undefined)
    return applications === 0
      ? []
      : [
          finding(
            "interval-unknown",
            "warning",
            "soFar.daysSinceLast",
            "The label requires {least} or more days between applications, and you haven't entered when the last one was. Check your spray record.",
            { least },
          ),
        ];
  return moreThan(least, since)
    ? [
        finding(
          "interval-too-short",
          "refusal",
          "soFar.daysSinceLast",
          "Days since the last application: {since}. The label requires {least} or more, so wait.",
          { since, least },
        ),
      ]
    : [];
}
