import type { Quantity, UnitSystem } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";

/** What a practice problem is about. */
export type PracticeTopic =
  | "area"
  | "strip-calibration"
  | "catch-calibration"
  | "tank-loads"
  | "product-per-tank"
  | "household-measure"
  | "band"
  | "percent-mix"
  | "dilution"
  | "whole-job";

/** The wording that a problem has: a topic may have several. */
export type ProblemKind =
  | "area-rectangle"
  | "area-triangle"
  | "area-trapezoid"
  | Exclude<PracticeTopic, "area">;

/** The mistake that a wrong answer shows. */
export type MistakeCode =
  | "sides-added"
  | "not-halved"
  | "long-side-only"
  | "wrong-land-unit"
  | "inverted-ratio"
  | "small-unit-as-large"
  | "width-in-small-unit"
  | "width-left-out"
  | "seconds-as-minute"
  | "rounded-down"
  | "rounded-up"
  | "ground-area"
  | "ground-for-treated"
  | "one-row-too-few"
  | "unscaled-product"
  | "weighed-as-volume"
  | "large-spoon"
  | "percent-as-part"
  | "per-mille"
  | "parts-of-water"
  | "took-the-water"
  | "full-tank-dose";

/** A wrong answer and the mistake behind it. */
export interface Slip {
  readonly mistake: MistakeCode;
  readonly answer: Quantity | number;
}

/** A problem in numbers. */
export interface DrawnProblem {
  readonly kind: ProblemKind;
  /** What the problem gives, by the places of its wording. */
  readonly given: Readonly<Record<string, Quantity | number>>;
  readonly answer: Quantity | number;
  readonly working: readonly WorkingLine[];
  readonly slips: readonly Slip[];
}

/** Draws numbers: the same from the same seed. */
export interface Draw {
  /** One of a list. */
  readonly pick: <T>(list: readonly [T, ...T[]]) => T;
  /** A multiple of `step` from `min` to `max`. */
  readonly step: (min: number, max: number, step: number) => number;
}

/** Makes a problem of one topic. Its numbers may turn out unfit (two mistakes with one answer); then another is drawn. */
export type DrawProblem = (draw: Draw, units: UnitSystem) => DrawnProblem | undefined;
