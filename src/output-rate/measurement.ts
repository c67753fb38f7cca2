import type { Check } from "../units/check.js";
import {
  choice,
  type EitherField,
  type Kinds,
  kinds,
  named,
  type ObjectField,
  object,
  ofKind,
  type Partly,
} from "../units/fields.js";
import { measured } from "../units/quantity-field.js";
import type { Flow, Length, Measured, Speed, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { CATCH, type CatchInput, linesOfCatch, rateOfCatch } from "./catch.js";
import { DIRECT_READING, type DirectReading, linesOfReading, rateOfReading } from "./direct-strip.js";
import { type HandSprayInput, handSpray, linesOfHandSpray, ratesOfHandSpray } from "./hand-spray.js";
import { linesOfSolved, type OutputTerms, solvedOutput } from "./solve-output.js";
import { linesOfStrip, rateOfStrip, STRIP_RUN, type StripRun } from "./strip.js";
import { linesOfRuns, runsTogether, STRIP_RUNS, type StripRuns, type StripRunsInput } from "./strip-runs.js";
import { linesOfTreeRow, ratesOfTreeRow, TREE_ROW, type TreeRowInput } from "./tree-row.js";

/** One run over a test strip. */
export interface StripMeasurement extends StripRun {
  /** Says how it was measured. */
  readonly kind: "strip";
}

/** Several runs over a test strip. */
export interface StripRunsMeasurement extends StripRunsInput {
  /** Says how it was measured. */
  readonly kind: "strip-runs";
}

/** A catch over a strip of the length at which it reads as the rate. */
export interface DirectStripMeasurement extends DirectReading {
  /** Says how it was measured. */
  readonly kind: "direct-strip";
}

/** A timed catch, with the speed and the width. */
export interface CatchMeasurement extends CatchInput {
  /** Says how it was measured. */
  readonly kind: "catch";
}

/** A row sprayed from one side or both. */
export interface TreeRowMeasurement extends TreeRowInput {
  /** Says how it was measured. */
  readonly kind: "tree-row";
}

/** A hand-held spray; with the spacings that a rate per area needs. */
export interface HandMeasurement extends HandSprayInput {
  /** Says how it was measured. */
  readonly kind: "hand";
}

/** A flow, such as a nozzle's from its maker's table, with the speed and the width. */
export interface FlowMeasurement {
  /** Says how it was measured. */
  readonly kind: "flow";
  /** The flow of everything that sprays the width. More than 0. */
  readonly flow: Measured<Flow>;
  /** The working speed. More than 0. */
  readonly speed: Measured<Speed>;
  /** The width that the flow treats. More than 0. */
  readonly width: Measured<Length>;
}

/** A rate that is known from elsewhere. */
export interface KnownRate {
  /** Says how it was measured. */
  readonly kind: "known";
  /** The rate. More than 0. */
  readonly rate: Measured<VolumeRate>;
}

/** Every way to measure a rate; `kind` says which it is. */
export type Measurement =
  | StripMeasurement
  | StripRunsMeasurement
  | DirectStripMeasurement
  | CatchMeasurement
  | TreeRowMeasurement
  | HandMeasurement
  | FlowMeasurement
  | KnownRate;

const KIND = "Says how it was measured.";

/* @__NO_SIDE_EFFECTS__ */
function kindOf<T extends Measurement>(
  kind: T["kind"],
  name: string,
  sentence: string,
  rest: ObjectField<Omit<T, "kind">>,
): ObjectField<T> {
  return named(name, ofKind(kind, KIND, rest, sentence)) as unknown as ObjectField<T>;
}

/** What each kind of measurement is made of. */
export const MEASUREMENT_KINDS: Kinds<Measurement> = {
  strip: kindOf<StripMeasurement>("strip", "StripMeasurement", "One run over a test strip.", STRIP_RUN),
  "strip-runs": kindOf<StripRunsMeasurement>(
    "strip-runs",
    "StripRunsMeasurement",
    "Several runs over a test strip.",
    STRIP_RUNS,
  ),
  "direct-strip": kindOf<DirectStripMeasurement>(
    "direct-strip",
    "DirectStripMeasurement",
    "A catch over a strip of the length at which it reads as the rate.",
    DIRECT_READING,
  ),
  catch: kindOf<CatchMeasurement>(
    "catch",
    "CatchMeasurement",
    "A timed catch, with the speed and the width.",
    CATCH,
  ),
  "tree-row": kindOf<TreeRowMeasurement>(
    "tree-row",
    "TreeRowMeasurement",
    "A row sprayed from one side or both.",
    TREE_ROW,
  ),
  hand: named(
    "HandMeasurement",
    handSpray<HandMeasurement>(
      "A hand-held spray; with the spacings that a rate per area needs.",
      { kind: choice(KIND, ["hand"]) },
      [areaFollows],
    ),
  ),
  flow: kindOf<FlowMeasurement>(
    "flow",
    "FlowMeasurement",
    "A flow, such as a nozzle's from its maker's table, with the speed and the width.",
    object<Omit<FlowMeasurement, "kind">>({
      flow: measured("The flow of everything that sprays the width. More than 0.", "flow"),
      speed: measured("The working speed. More than 0.", "speed"),
      width: measured("The width that the flow treats. More than 0.", "length"),
    }),
  ),
  known: kindOf<KnownRate>(
    "known",
    "KnownRate",
    "A rate that is known from elsewhere.",
    object<Omit<KnownRate, "kind">>({ rate: measured("The rate. More than 0.", "volumeRate") }),
  ),
};

/** A measurement of any kind. */
export const MEASUREMENT: EitherField<Measurement> = named(
  "Measurement",
  kinds("How the output was measured; the kind says which way.", MEASUREMENT_KINDS),
);

/** Notes a hand-held spray that lacks a spacing for a rate per area. */
function areaFollows(given: Partly<HandMeasurement>, check: Check): void {
  const lacks = (name: "area" | "rowLength" | "plantSpacing" | "rowSpacing"): boolean =>
    given[name] === undefined && !check.hasFault(name);
  if (!lacks("area")) return;
  if (lacks("rowLength") && lacks("plantSpacing"))
    check.fault(
      "missing",
      "plant-spacing",
      "plantSpacing",
      "Enter the distance from plant to plant: the rate per area needs it.",
    );
  if (lacks("rowSpacing"))
    check.fault(
      "missing",
      "row-spacing",
      "rowSpacing",
      "Enter the distance from row to row: the rate per area needs it.",
    );
}

/** A measurement and the rate that it gives, worked out once for the rate, its spread, its uncertainty and its working. */
export interface MeasuredRate {
  readonly measurement: Measurement;
  readonly rate: VolumeRate;
  /** What several runs say together. */
  readonly runs?: StripRuns | undefined;
}

/** The rate that a measurement gives. Trusts its input. */
export function rateOfMeasurement(measurement: Measurement, at = ""): MeasuredRate {
  if (measurement.kind !== "strip-runs") return { measurement, rate: rateOfOne(measurement, at) };
  const runs = runsTogether(measurement, at) as StripRuns;
  return { measurement, rate: runs.rate, runs };
}

function rateOfOne(measurement: Exclude<Measurement, StripRunsMeasurement>, at: string): VolumeRate {
  switch (measurement.kind) {
    case "strip":
      return rateOfStrip(measurement, at) as VolumeRate;
    case "direct-strip":
      return rateOfReading(measurement, at);
    case "catch":
      return rateOfCatch(measurement, at) as VolumeRate;
    case "tree-row":
      return ratesOfTreeRow(measurement, at).perArea;
    case "hand":
      return ratesOfHandSpray(measurement, at).perArea as VolumeRate;
    case "flow":
      return solvedOutput(threeOf(measurement), at).rate;
    case "known":
      return { value: measurement.rate.value, unit: measurement.rate.unit };
  }
}

/** The working of {@link rateOfMeasurement}; none for a known rate. Trusts its input. */
export function linesOfMeasurement({ measurement, runs }: MeasuredRate): WorkingLine[] {
  switch (measurement.kind) {
    case "strip":
      return linesOfStrip(measurement);
    case "strip-runs":
      return linesOfRuns(measurement, runs as StripRuns);
    case "direct-strip":
      return linesOfReading(measurement);
    case "catch":
      return linesOfCatch(measurement);
    case "tree-row":
      return linesOfTreeRow(measurement);
    case "hand":
      return linesOfHandSpray(measurement);
    case "flow":
      return linesOfSolved(threeOf(measurement));
    case "known":
      return [];
  }
}

function threeOf({ flow, speed, width }: FlowMeasurement): Omit<OutputTerms, "rate"> {
  return { flow, speed, width };
}
