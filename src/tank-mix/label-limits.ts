import { SprayMathError } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { describeUnit } from "../units/describe.js";
import { areaIn, checkedCount, checkedNumber, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type {
  GroundArea,
  Length,
  MassRate,
  MassUnit,
  Quantity,
  TreatedArea,
  Unit,
  VolumeRate,
  VolumeUnit,
} from "../units/types.js";
import {
  type ActiveIngredientRate,
  type AreaRate,
  checkedFormName,
  checkedRange,
  type Form,
  isOfMix,
  isRange,
  type LabelRate,
  ownAreaUnit,
  readRate,
  type SingleRate,
} from "./label-rate.js";
import { type ProductInput, strengthFor } from "./product.js";

/** What a finding is about. */
export type FindingCode =
  | "rate-over-max"
  | "rate-near-max"
  | "rate-under-min"
  | "carrier-under-least"
  | "carrier-near-least"
  | "carrier-over-most"
  | "season-over-max"
  | "season-nearly-used"
  | "season-unknown"
  | "applications-over-most"
  | "applications-last"
  | "applications-unknown"
  | "interval-too-short"
  | "interval-unknown";

/** Something that a careful person would say about a job before it starts. */
export interface Finding {
  /** Which limit, and how it stands. */
  readonly code: FindingCode;
  /** `refusal`: not to be sprayed so. `warning`: to be looked at first. */
  readonly severity: "warning" | "refusal";
  /** The argument that it is about. */
  readonly path: string;
  /** What was found, what the label says, what to do. */
  readonly message: string;
  /** The figures behind it: what the job has, and the limit. */
  readonly figures: Readonly<Record<string, Quantity | number>>;
}

/** A rate per area, as seasons are counted in. */
export type SeasonRate = VolumeRate | MassRate | AreaRate | ActiveIngredientRate;

/** The limits that a label sets. */
export interface LabelLimits {
  /** The lowest rate. */
  readonly min?: SingleRate;
  /** The highest rate of one application. */
  readonly max?: SingleRate;
  /** The least carrier per treated area. */
  readonly leastCarrier?: VolumeRate;
  /** The most carrier per treated area. */
  readonly mostCarrier?: VolumeRate;
  /** The most per area in a season (or a year: as the label counts). */
  readonly seasonMax?: SeasonRate;
  /** The most applications in a season. */
  readonly mostApplications?: number;
  /** The fewest days from one application to the next. */
  readonly daysBetween?: number;
}

/** What the plot has had already this season. */
export interface SeasonSoFar {
  /** The product used per area, all applications together. */
  readonly rate?: SeasonRate;
  /** The number of applications; a whole number, 0 or more. */
  readonly applications?: number;
  /** The days since the last application; left out where there was none. */
  readonly daysSinceLast?: number;
}

/** What {@link checkLabel} is given. */
export interface LabelInput {
  /** The rate that is to be used. */
  readonly rate: LabelRate;
  /** Whether the product is measured by volume or by weight. */
  readonly form: Form;
  /** What the sprayer puts out per treated area. */
  readonly carrierRate: VolumeRate;
  /** The label's limits. */
  readonly label: LabelLimits;
  /** What the plot has had already. */
  readonly soFar?: SeasonSoFar;
  /** The treated area of the plot: needed for rates per ground area or row length. */
  readonly area?: TreatedArea;
  /** The ground area of the plot: needed for rates per ground area. */
  readonly ground?: GroundArea;
  /** The length of all treated rows: needed for rates per row length. */
  readonly rowLength?: Length;
  /** How near a limit earns a warning, in per cent of the limit; 5 unless given (common practice, no source). */
  readonly near?: number;
}

/**
 * What a careful person would say about a rate and a carrier before the job starts: over the label's highest rate, its
 * most per season, its most applications, under its least carrier or its shortest interval is a refusal; near a limit,
 * under the lowest rate, or a limit that nothing was told about is a warning. Nothing is changed.
 *
 * Rates told in different ways are compared by the strength that each gives the same mix. A range given as the rate
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
export function checkLabel(input: LabelInput): Finding[] {
  const job = jobOf(input);
  const findings = [
    ...rateFindings(job),
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
  readonly soFar: SeasonSoFar | undefined;
  readonly carrierRate: VolumeRate;
  /** Product per treated area, in `unit`: the rate's own where it is told per area. */
  readonly rate: number;
  readonly unit: Unit;
  readonly range: { readonly low: SingleRate; readonly high: SingleRate } | undefined;
  /** As near to a limit as this share of it. */
  readonly near: number;
  /** Any rate as product per treated area, in `unit`. */
  perArea(rate: SingleRate, path: string): number;
  /** Whether both the rate in use and another are told as a strength of the mix. */
  ofMix(rate: SingleRate, path: string): boolean;
}

function jobOf(input: LabelInput): Job {
  const { rate, form, carrierRate, label, soFar, near = 5 } = checkedObject(input, "");
  checkedFormName(form);
  inUnit(carrierRate, "gal/ac", "carrierRate");
  checkedObject(label, "label");
  if (soFar !== undefined) checkedObject(soFar, "soFar");
  const range = isRange(rate) ? checkedRange(rate, "rate") : undefined;
  const [single, path] = range === undefined ? [rate as SingleRate, "rate"] : [range.chosen, "rate.chosen"];
  const { over, per } = resolveUnit(carrierRate.unit, "carrierRate.unit");
  // One unit of the carrier stands in for the mix: strengths, not amounts, are compared.
  const carrier = { value: 1, unit: over as VolumeUnit };
  const mix: ProductInput = { ...input, rate: single, carrier };
  const { smallVolume, smallMass } = unitsLike(carrierRate.unit);
  const amount: VolumeUnit | MassUnit = form === "liquid" ? smallVolume : smallMass;
  const direct = `${amount}/${per}` as Unit;
  const unit = ownAreaUnit(single, form, path) ?? direct;
  const perArea = (of: SingleRate, at: string): number => {
    const strength = strengthFor(of, at, mix);
    const value = convertValue(strength.value, strength.amount, amount, at, at) * carrierRate.value;
    return convertValue(value, direct, unit, at, at);
  };
  if (input.area !== undefined) areaIn(input.area, "treated", "ac", "area");
  return {
    label,
    soFar,
    carrierRate,
    rate: perArea(single, path),
    unit,
    range,
    near: checkedNumber(near, "near", { min: 0, max: 100 }) / 100,
    perArea,
    ofMix: (other, at) => isOfMix(single, form, path) && isOfMix(other, form, at),
  };
}

function upsideDown(path: string, what: string): SprayMathError {
  return new SprayMathError(
    "conflict",
    path,
    `Given a lower ${what} over the upper one. Are they the wrong way round?`,
  );
}

function rateFindings(job: Job): Finding[] {
  const { label, range, rate, near } = job;
  const highs = limits(job, [label.max, "label.max"], [range?.high, "rate.high"]);
  const lows = limits(job, [label.min, "label.min"], [range?.low, "rate.low"]);
  const max = highs.length === 0 ? undefined : Math.min(...highs);
  const min = lows.length === 0 ? undefined : Math.max(...lows);
  if (max !== undefined && min !== undefined && moreThan(min, max)) {
    throw upsideDown(range === undefined ? "label" : "rate", "limit of the rate");
  }
  const figure = (value: number): Quantity => ({ value, unit: job.unit });
  if (max !== undefined && moreThan(rate, max)) {
    const message = `The rate is ${told(rate, job.unit)}, over the label's highest of ${told(max, job.unit)}: use no more than the label allows.`;
    return [finding("rate-over-max", "refusal", "rate", message, { rate: figure(rate), max: figure(max) })];
  }
  if (min !== undefined && moreThan(min, rate)) {
    const message = `The rate is ${told(rate, job.unit)}, under the label's lowest of ${told(min, job.unit)}: it may not work.`;
    return [finding("rate-under-min", "warning", "rate", message, { rate: figure(rate), min: figure(min) })];
  }
  if (max !== undefined && moreThan(rate, max * (1 - near))) {
    const message = `The rate is ${told(rate, job.unit)}, next to the label's highest of ${told(max, job.unit)}: ${risk(job)} goes over it.`;
    return [finding("rate-near-max", "warning", "rate", message, { rate: figure(rate), max: figure(max) })];
  }
  return [];
}

/** What could push a rate over a limit next to it. A strength of the mix is the same at any pace. */
function risk({ label, range, ofMix }: Job): string {
  const [limit, path] = label.max === undefined ? [range?.high, "rate.high"] : [label.max, "label.max"];
  return ofMix(limit as SingleRate, path) ? "a measure filled too high" : "a slow step or a worn nozzle";
}

function limits(job: Job, ...given: readonly (readonly [SingleRate | undefined, string])[]): number[] {
  return given.flatMap(([limit, path]) => (limit === undefined ? [] : [job.perArea(limit, path)]));
}

function carrierFindings({ label, carrierRate, near }: Job): Finding[] {
  const { value, unit } = carrierRate;
  const least =
    label.leastCarrier === undefined ? undefined : inUnit(label.leastCarrier, unit, "label.leastCarrier");
  const most =
    label.mostCarrier === undefined ? undefined : inUnit(label.mostCarrier, unit, "label.mostCarrier");
  if (least !== undefined && most !== undefined && moreThan(least, most))
    throw upsideDown("label.leastCarrier", "carrier");
  const figure = (limit: number): Quantity => ({ value: limit, unit });
  if (least !== undefined && moreThan(least, value)) {
    const message = `The sprayer puts out ${told(value, unit)}, under the label's least of ${told(least, unit)}: slow down, or fit larger nozzles, and calibrate again.`;
    return [
      finding("carrier-under-least", "refusal", "carrierRate", message, {
        carrierRate,
        least: figure(least),
      }),
    ];
  }
  if (most !== undefined && moreThan(value, most)) {
    const message = `The sprayer puts out ${told(value, unit)}, over the label's most of ${told(most, unit)}: speed up, or fit smaller nozzles, and calibrate again.`;
    return [
      finding("carrier-over-most", "refusal", "carrierRate", message, { carrierRate, most: figure(most) }),
    ];
  }
  if (least !== undefined && moreThan(least * (1 + near), value)) {
    const message = `The sprayer puts out ${told(value, unit)}, next to the label's least of ${told(least, unit)}: a quicker step goes under it.`;
    return [
      finding("carrier-near-least", "warning", "carrierRate", message, { carrierRate, least: figure(least) }),
    ];
  }
  return [];
}

function seasonFindings(job: Job): Finding[] {
  const { label, soFar, unit, rate } = job;
  if (label.seasonMax === undefined) return [];
  const max = job.perArea(perAreaOnly(label.seasonMax, "label.seasonMax"), "label.seasonMax");
  const figure = (value: number): Quantity => ({ value, unit });
  const none = soFar?.applications === 0;
  const unknown = soFar?.rate === undefined && !none;
  const used =
    soFar?.rate === undefined ? 0 : job.perArea(perAreaOnly(soFar.rate, "soFar.rate"), "soFar.rate");
  const figures = { rate: figure(rate), used: figure(used), max: figure(max) };
  if (moreThan(used + rate, max)) {
    const message = `With ${told(used, unit)} used already, ${told(rate, unit)} more goes over the label's most of ${told(max, unit)} in a season.`;
    return [finding("season-over-max", "refusal", "rate", message, figures)];
  }
  if (unknown) {
    const message = `The label allows ${told(max, unit)} in a season, and nothing was told about what the plot has had: look it up in the spray record.`;
    return [finding("season-unknown", "warning", "soFar.rate", message, figures)];
  }
  if (moreThan(used + 2 * rate, max)) {
    const message = `After this application ${told(Math.max(0, max - used - rate), unit)} of the season's ${told(max, unit)} is left: not enough for another at this rate.`;
    return [finding("season-nearly-used", "warning", "rate", message, figures)];
  }
  return [];
}

function perAreaOnly(rate: SeasonRate, path: string): SeasonRate {
  const active = typeof rate === "object" && rate !== null && "activeIngredient" in rate;
  const read = active ? readRate(rate.activeIngredient, "dry", `${path}.activeIngredient`) : undefined;
  const quantity = active ? undefined : ((rate as AreaRate)?.rate ?? (rate as Quantity));
  const dimension =
    quantity?.unit === undefined ? undefined : resolveUnit(quantity.unit, `${path}.unit`).dimension;
  if (read?.kind !== "area" && dimension !== "volumeRate" && dimension !== "massRate") {
    throw new SprayMathError(
      rate === undefined || rate === null ? "missing" : "wrong-dimension",
      path,
      "Given something other than an amount per area; wanted the season's amount per area, such as pt/ac.",
    );
  }
  return rate;
}

function applicationFindings({ label, soFar }: Job): Finding[] {
  if (label.mostApplications === undefined) return [];
  const most = checkedCount(label.mostApplications, "label.mostApplications");
  if (soFar?.applications === undefined) {
    const message = `The label allows ${most} applications in a season, and nothing was told about how many there were: look it up in the spray record.`;
    return [finding("applications-unknown", "warning", "soFar.applications", message, { most })];
  }
  const made = checkedCount(soFar.applications, "soFar.applications", 0);
  const figures = { made, most };
  if (made >= most) {
    const message = `The plot has had ${made} applications, and the label allows ${most} in a season: no more this season.`;
    return [finding("applications-over-most", "refusal", "soFar.applications", message, figures)];
  }
  if (most > 1 && made === most - 1) {
    const message = `This is the last of the ${most} applications that the label allows in a season.`;
    return [finding("applications-last", "warning", "soFar.applications", message, figures)];
  }
  return [];
}

function intervalFindings({ label, soFar }: Job): Finding[] {
  if (label.daysBetween === undefined) return [];
  const least = checkedNumber(label.daysBetween, "label.daysBetween", { min: 0 });
  if (soFar?.daysSinceLast === undefined) {
    if (soFar?.applications === 0) return [];
    const message = `The label wants ${least} days between applications, and nothing was told about the last one: look it up in the spray record.`;
    return [finding("interval-unknown", "warning", "soFar.daysSinceLast", message, { least })];
  }
  const since = checkedNumber(soFar.daysSinceLast, "soFar.daysSinceLast", { min: 0 });
  if (!moreThan(least, since)) return [];
  const message = `The last application was ${since} days ago, and the label wants ${least} days between applications: wait.`;
  return [finding("interval-too-short", "refusal", "soFar.daysSinceLast", message, { since, least })];
}

function finding(
  code: FindingCode,
  severity: Finding["severity"],
  path: string,
  message: string,
  figures: Finding["figures"],
): Finding {
  return { code, severity, path, message, figures };
}

function told(value: number, unit: Unit): string {
  return `${Number(value.toPrecision(6))} ${describeUnit(unit).symbol}`;
}
