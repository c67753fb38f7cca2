import { SprayMathError } from "../errors.js";
import { frozen } from "../frozen.js";
import { checkedNumber, checkedObject, inUnit } from "../units/guard.js";
import type { Length, Quantity, Speed, VolumeRate } from "../units/types.js";

/** From which point on a plan questions something. Each can be changed. */
export interface Thresholds {
  /** The least that such sprayers put out. */
  readonly leastRate: VolumeRate;
  /** The most that such sprayers put out. */
  readonly mostRate: VolumeRate;
  /** The slowest that a person walks, or a small machine drives, evenly. */
  readonly slowest: Speed;
  /** The fastest. */
  readonly fastest: Speed;
  /** How coarse the strip's reading may be, in per cent of what was used. */
  readonly readingPercent: number;
  /** How many days a calibration is trusted for. */
  readonly calibrationDays: number;
  /** How small the last load may be, in per cent of a full one. */
  readonly lastLoadPercent: number;
  /** A swath narrower than this looks like a band, and not like one pass over all of the ground. */
  readonly bandSwath: Length;
}

/** A threshold with its reason. */
export interface Threshold<V> {
  /** The value that is used unless told otherwise. */
  readonly value: V;
  /** Why there. */
  readonly reason: string;
  /** Where it comes from. */
  readonly source: string;
}

const PRACTICE = "common practice, no source";

/** The thresholds, with reason and source. */
export const THRESHOLDS: { readonly [K in keyof Thresholds]: Threshold<Thresholds[K]> } =
  /* @__PURE__ */ frozen<{
    readonly [K in keyof Thresholds]: Threshold<Thresholds[K]>;
  }>({
    leastRate: {
      value: { value: 5, unit: "gal/ac" },
      reason: "Less than a backpack or small boom sprayer covers a plot evenly with; often a slip in a unit.",
      source: PRACTICE,
    },
    mostRate: {
      value: { value: 200, unit: "gal/ac" },
      reason:
        "More than stays on leaves and ground; often a strip measured in yards or a refill read in the wrong unit.",
      source: PRACTICE,
    },
    slowest: {
      value: { value: 1, unit: "mph" },
      reason: "Slower than a pace that can be held evenly.",
      source: PRACTICE,
    },
    fastest: {
      value: { value: 5, unit: "mph" },
      reason: "Faster than a person with a sprayer walks, or a small boom rides without bouncing.",
      source: PRACTICE,
    },
    readingPercent: {
      value: 5,
      reason:
        "One mark of the measure is then as much as nozzles may differ; a longer strip makes it smaller.",
      source: PRACTICE,
    },
    calibrationDays: {
      value: 90,
      reason: "Nozzles wear and seals leak within a season.",
      source: PRACTICE,
    },
    lastLoadPercent: {
      value: 15,
      reason: "A pump draws air near the bottom, and small doses are measured badly.",
      source: PRACTICE,
    },
    bandSwath: {
      value: { value: 3, unit: "ft" },
      reason: "Passes over all of the ground are laid wider than this; bands along rows are narrower.",
      source: PRACTICE,
    },
  });

const USUAL = /* @__PURE__ */ Object.fromEntries(
  Object.entries(THRESHOLDS).map(([name, { value }]) => [name, value]),
) as unknown as Thresholds;

/** The thresholds in force: the usual ones, with those that the caller changes. */
export function thresholdsOf(changed?: Partial<Thresholds>): Thresholds {
  if (changed === undefined) return USUAL;
  checkedObject(changed, "thresholds");
  const names = Object.keys(THRESHOLDS) as (keyof Thresholds)[];
  for (const name of Object.keys(changed)) {
    if (!Object.hasOwn(THRESHOLDS, name)) {
      throw new SprayMathError(
        "unknown-choice",
        `thresholds.${name}`,
        `Given a threshold that is not known here; wanted one of: ${names.join(", ")}.`,
      );
    }
  }
  return Object.fromEntries(
    names.map((name) => [name, thresholdOf(name, changed[name])]),
  ) as unknown as Thresholds;
}

function thresholdOf(name: keyof Thresholds, changed: Quantity | number | undefined): Quantity | number {
  const { value } = THRESHOLDS[name];
  if (changed === undefined) return value;
  if (typeof value === "number") return checkedNumber(changed as number, `thresholds.${name}`, { above: 0 });
  inUnit(changed as Length, value.unit as Length["unit"], `thresholds.${name}`);
  return changed as Quantity;
}
