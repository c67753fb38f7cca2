import { SprayMathError } from "../errors.js";
import { checkedChoice, checkedObject, inUnit } from "../units/guard.js";
import { resolveUnit } from "../units/resolve.js";
import type { Flow, Length, MassRate, Measured, Speed, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { type CatchInput, catchRate, catchRateWorking } from "./catch.js";
import { type DirectReading, directStripRate, directStripRateWorking } from "./direct-strip.js";
import { type HandInput, handRate, handRateWorking } from "./hand.js";
import { solveOutput, solveOutputWorking } from "./solve.js";
import { type StripRun, stripRate, stripRateWorking } from "./strip.js";
import { type StripRunsInput, stripRuns, stripRunsWorking } from "./strip-runs.js";
import { type TreeRowInput, treeRowRate, treeRowRateWorking } from "./tree-row.js";

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
export interface HandMeasurement extends HandInput {
  /** Says how it was measured. */
  readonly kind: "hand";
}

/** A flow, such as a nozzle's from its maker's table, with the speed and the width. */
export interface FlowMeasurement {
  /** Says how it was measured. */
  readonly kind: "flow";
  /** The flow of everything that sprays `width`. More than 0. */
  readonly flow: Measured<Flow>;
  /** The working speed. More than 0. */
  readonly speed: Measured<Speed>;
  /** The width that `flow` treats. More than 0. */
  readonly width: Measured<Length>;
}

/** A rate that is known from elsewhere. */
export interface KnownRate {
  /** Says how it was measured. */
  readonly kind: "known";
  /** The rate. More than 0. */
  readonly rate: Measured<VolumeRate>;
}

/** Every way to measure a rate; `kind` tells them apart. */
export type Measurement =
  | StripMeasurement
  | StripRunsMeasurement
  | DirectStripMeasurement
  | CatchMeasurement
  | TreeRowMeasurement
  | HandMeasurement
  | FlowMeasurement
  | KnownRate;

/** The kinds of measurement. */
export const MEASUREMENT_KINDS: readonly Measurement["kind"][] = [
  "strip",
  "strip-runs",
  "direct-strip",
  "catch",
  "tree-row",
  "hand",
  "flow",
  "known",
];

/** The rate that a measurement gives. */
export function measuredRate(measurement: Measurement): VolumeRate {
  checkedChoice(checkedObject(measurement, "").kind, MEASUREMENT_KINDS, "kind");
  switch (measurement.kind) {
    case "strip":
      return sprayed(stripRate(measurement), "used");
    case "strip-runs":
      return sprayed(stripRuns(measurement).rate, "runs[0].used");
    case "direct-strip":
      return directStripRate(measurement);
    case "catch":
      return sprayed(catchRate(measurement), "catches[0]");
    case "tree-row":
      return treeRowRate(measurement).perArea;
    case "hand":
      return handRate(measurement).perArea ?? refuseWithoutSpacing(measurement);
    case "flow":
      return solveOutput(checkedFlow(measurement)).rate;
    case "known":
      inUnit(measurement.rate, "L/ha", "rate");
      return { value: measurement.rate.value, unit: measurement.rate.unit };
  }
}

/** The working of {@link measuredRate}; none for a known rate. */
export function measuredRateWorking(measurement: Measurement): WorkingLine[] {
  measuredRate(measurement);
  switch (measurement.kind) {
    case "strip":
      return stripRateWorking(measurement);
    case "strip-runs":
      return stripRunsWorking(measurement);
    case "direct-strip":
      return directStripRateWorking(measurement);
    case "catch":
      return catchRateWorking(measurement);
    case "tree-row":
      return treeRowRateWorking(measurement);
    case "hand":
      return handRateWorking(measurement);
    case "flow":
      return solveOutputWorking(checkedFlow(measurement));
    case "known":
      return [];
  }
}

// The types allow volumes only; plain JavaScript may hand over the granules of a spreader.
function sprayed(rate: VolumeRate | MassRate, path: string): VolumeRate {
  if (resolveUnit(rate.unit, path).dimension === "volumeRate") return rate as VolumeRate;
  throw new SprayMathError(
    "wrong-dimension",
    path,
    "Given a weight; wanted a volume, such as fl_oz or mL: this is about spray, not granules.",
  );
}

function refuseWithoutSpacing({ plants, plantSpacing }: HandMeasurement): never {
  const path = plants !== undefined && plantSpacing === undefined ? "plantSpacing" : "rowSpacing";
  throw new SprayMathError(
    "missing",
    path,
    `Nothing given; wanted the ${path === "rowSpacing" ? "distance from row to row" : "distance from plant to plant"}, which a rate per area needs.`,
  );
}

function checkedFlow({ flow, speed, width }: FlowMeasurement): {
  flow: Flow;
  speed: Speed;
  width: Length;
} {
  inUnit(flow, "L/min", "flow");
  inUnit(speed, "km/h", "speed");
  inUnit(width, "m", "width");
  return { flow, speed, width };
}
