import { frozen } from "../frozen.js";
import { LONGEST_AGE } from "../output-rate/what-changed.js";
import { type Limits, number, type ObjectField, object, optional } from "../units/fields.js";
import { quantity } from "../units/quantity-field.js";
import type { Length, Speed, VolumeRate } from "../units/types.js";

/** From which point on a plan questions something. Each can be changed. */
export interface Thresholds {
  /** The least that such sprayers put out. */
  readonly leastRate: VolumeRate;
  /** The most that is put out. By the kind of spraying unless given. */
  readonly mostRate?: VolumeRate | undefined;
  /** The slowest that a person walks, or a small machine drives, evenly. */
  readonly slowest: Speed;
  /** The fastest. */
  readonly fastest: Speed;
  /** How coarse the strip's reading may be, in percent of what was used. */
  readonly readingPercent: number;
  /** How far the catch of a nozzle may be from the average of all, in percent. */
  readonly nozzlePercent: number;
  /** How many days a calibration is trusted for. */
  readonly calibrationDays: number;
  /** How small the last load may be, in percent of a full one. */
  readonly lastLoadPercent: number;
  /** A swath narrower than this looks like a band, and not like one pass over all of the ground. */
  readonly bandSwath: Length;
}

/** A threshold with its reason. */
export interface Threshold<V> {
  /** The value that is used unless changed. */
  readonly value: V;
  /** Why there. */
  readonly reason: string;
  /** Where it comes from. */
  readonly source: string;
}

/** The source of a rule of the trade. */
export const PRACTICE = "common practice, no source";

/** The thresholds by name. */
export type ThresholdTable = {
  readonly [K in Exclude<keyof Thresholds, "mostRate">]: Threshold<Thresholds[K]>;
};

/** The thresholds as they are unless changed. A plan goes by these alone, and carries no reasons. */
export const USUAL: Omit<Thresholds, "mostRate"> = /* @__PURE__ */ frozen<Omit<Thresholds, "mostRate">>({
  leastRate: { value: 5, unit: "gal/ac" },
  slowest: { value: 1, unit: "mph" },
  fastest: { value: 5, unit: "mph" },
  readingPercent: 5,
  nozzlePercent: 10,
  calibrationDays: LONGEST_AGE,
  lastLoadPercent: 15,
  bandSwath: { value: 3, unit: "ft" },
});

/** The thresholds, with reason and source. The most that is put out depends on the kind of spraying: {@link MOST_RATES}. */
export const THRESHOLDS: ThresholdTable = /* @__PURE__ */ (() =>
  frozen({
    leastRate: {
      value: USUAL.leastRate,
      reason: "Less than a backpack or small boom sprayer covers a plot evenly with; often a slip in a unit.",
      source: PRACTICE,
    },
    slowest: {
      value: USUAL.slowest,
      reason: "Slower than a pace that can be held evenly.",
      source: PRACTICE,
    },
    fastest: {
      value: USUAL.fastest,
      reason: "Faster than a person with a sprayer walks, or a small boom rides without bouncing.",
      source: PRACTICE,
    },
    readingPercent: {
      value: USUAL.readingPercent,
      reason:
        "One mark of the measure is then as much as nozzles may differ; a longer strip makes it smaller.",
      source: PRACTICE,
    },
    nozzlePercent: {
      value: USUAL.nozzlePercent,
      reason: "Further off, a nozzle is worn or blocked.",
      source: "Special Bulletin 16, University of Georgia CAES, 2002",
    },
    calibrationDays: {
      value: USUAL.calibrationDays,
      reason: "Nozzles wear and seals leak within a season.",
      source: PRACTICE,
    },
    lastLoadPercent: {
      value: USUAL.lastLoadPercent,
      reason: "A pump draws air near the bottom, and small doses are measured badly.",
      source: PRACTICE,
    },
    bandSwath: {
      value: USUAL.bandSwath,
      reason: "Passes over all of the ground are laid wider than this; bands along rows are narrower.",
      source: PRACTICE,
    },
  }))();

const SHARE: Limits = { unit: "percent", above: 0 };

/** The thresholds that can be changed. */
export const THRESHOLD_FIELDS: ObjectField<Partial<Thresholds>> = /* @__PURE__ */ object<Partial<Thresholds>>(
  {
    leastRate: optional(quantity("The least that such sprayers put out.", "volumeRate")),
    mostRate: optional(
      quantity("The most that is put out. By the kind of spraying unless given.", "volumeRate"),
    ),
    slowest: optional(
      quantity("The slowest that a person walks, or a small machine drives, evenly.", "speed"),
    ),
    fastest: optional(quantity("The fastest.", "speed")),
    readingPercent: optional(
      number("How coarse the strip's reading may be, in percent of what was used.", SHARE),
    ),
    nozzlePercent: optional(
      number("How far the catch of a nozzle may be from the average of all, in percent.", SHARE),
    ),
    calibrationDays: optional(
      number("How many days a calibration is trusted for.", { unit: "days", above: 0 }),
    ),
    lastLoadPercent: optional(number("How small the last load may be, in percent of a full one.", SHARE)),
    bandSwath: optional(
      quantity(
        "A swath narrower than this looks like a band, and not like one pass over all of the ground.",
        "length",
      ),
    ),
  },
);

/** The thresholds in force: the usual ones, with those that the caller changes. Trusts its input. */
export function thresholdsOf(changed: Partial<Thresholds> = {}): Thresholds {
  return { ...USUAL, ...changed };
}
