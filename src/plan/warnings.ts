import type { FindingCode } from "../tank-mix/label-limits.js";
import { describeUnit } from "../units/describe.js";
import type { Quantity } from "../units/types.js";

/** How much a warning matters: something to know, something to change, something not to spray with. */
export type Severity = "note" | "warning" | "refusal";

/** Which question a warning raises. */
export type WarningCode =
  | FindingCode
  | "all-ground-treated"
  | "swath-is-spacing"
  | "swath-is-not-band"
  | "bands-without-gap"
  | "rate-implausible"
  | "speed-implausible"
  | "strip-too-short"
  | "runs-disagree"
  | "lines-uncharged"
  | "calibration-stale"
  | "calibration-old"
  | "calibration-age-unknown"
  | "reserve-large"
  | "lines-large"
  | "strength-unusual"
  | "mix-over-tank"
  | "last-load-small"
  | "water-without-product"
  | "ounces-confusable"
  | "dose-not-measurable"
  | "scale-needed";

/** What a careful colleague would question. It changes no number. */
export interface Warning {
  /** A fixed name, for an app that words it in another language. */
  readonly code: WarningCode;
  /** How much it matters. */
  readonly severity: Severity;
  /** What is wrong, and what to do. */
  readonly message: string;
  /** The input's or the result's place. */
  readonly path: string;
  /** The figures behind it. */
  readonly figures: Readonly<Record<string, Quantity | number>>;
}

/** How many times too much or too little, as people say it: `2.5 times`. */
export function inTimes(times: number): string {
  return `${Number(times.toPrecision(2))} times`;
}

/** A quantity in the message of a warning: rounded for reading, with the unit as the trade spells it. */
export function told({ value, unit }: Quantity): string {
  const { symbol } = describeUnit(unit);
  return `${Number(value.toPrecision(4))}${symbol === "%" ? "" : " "}${symbol}`;
}
