import type { Figures } from "../errors.js";
import type { SpreaderFinding } from "../output-rate/spreader.js";
import type { LabelFindingCode } from "../tank-mix/findings.js";
import { messageOf } from "../units/message.js";
import type { Fraction } from "../units/types.js";

/** How much a warning matters: something to know, something to change, something not to spray with. */
export type Severity = "note" | "warning" | "refusal";

/** Which question a warning raises. */
export type WarningCode =
  | LabelFindingCode
  | SpreaderFinding["code"]
  | "nutrient-implausible"
  | "fills-many"
  | "rate-uneven"
  | "all-ground-treated"
  | "swath-is-spacing"
  | "swath-is-not-band"
  | "boom-over-pass"
  | "nozzles-over-rows"
  | "bands-without-gap"
  | "rate-implausible"
  | "speed-implausible"
  | "strip-too-short"
  | "runs-disagree"
  | "nozzles-uneven"
  | "lines-uncharged"
  | "calibration-stale"
  | "calibration-old"
  | "calibration-age-unknown"
  | "each-implausible"
  | "loads-many"
  | "reserve-large"
  | "lines-large"
  | "mix-over-tank"
  | "last-load-small"
  | "water-without-product"
  | "ounces-confusable"
  | "dose-not-measurable"
  | "whole-bags"
  | "long-count"
  | "scale-needed";

/** What a careful colleague would question. It changes no number. */
export interface Warning {
  /** Which question it is. */
  readonly code: WarningCode;
  /** Which sentence of its code, such as `runs-disagree-first`: one key for each. */
  readonly key: string;
  /** How much it matters. */
  readonly severity: Severity;
  /** What is wrong, and what to do, in plain English. */
  readonly message: string;
  /** The input's or the result's place. */
  readonly path: string;
  /** The figures of the message. */
  readonly figures: Figures;
}

/** A warning: its template stands beside the place that raises it. `key` is for a code with several sentences. */
export function warning(
  code: WarningCode,
  severity: Severity,
  path: string,
  template: string,
  figures: Figures = {},
  key: string = code,
): Warning {
  return { code, key, severity, message: messageOf(template, figures), path, figures };
}

/** A share as people say it: `12%`, and `125%` where two digits would say 130. */
export function asPercent(percent: number): Fraction {
  return { value: percent < 100 ? forSaying(percent) : Number(percent.toPrecision(3)), unit: "%" };
}

/** A number as people say it: how many times too much, what percentage. */
export function forSaying(value: number): number {
  // In three digits where two would say that it is right: 1.02 times too strong.
  return Number(value.toPrecision(value > 1 && value < 1.1 ? 3 : 2));
}
