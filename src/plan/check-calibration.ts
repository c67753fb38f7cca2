import type { Figures } from "../errors.js";
import type { Calibration } from "../output-rate/calibration.js";
import type { MeasuredRate, Measurement } from "../output-rate/measurement.js";
import { speedOfPass } from "../output-rate/speed.js";
import type { StripRun } from "../output-rate/strip.js";
import type { StripRuns, StripRunsInput } from "../output-rate/strip-runs.js";
import { compareConditions } from "../output-rate/what-changed.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { orderOf, ratioOf, scaled, sumOf } from "../units/quantity.js";
import { systemOf } from "../units/systems.js";
import type { Quantity, Speed, UnitSystem, Volume, VolumeRate } from "../units/types.js";
import { type ApplicationKind, applicationOf, MOST } from "./application.js";
import type { PlanInput } from "./input.js";
import type { Thresholds } from "./thresholds.js";
import { asPercent, type Warning, warning } from "./warnings.js";

/** What a careful colleague would ask about a calibration. */
export function calibrationWarnings(
  input: PlanInput,
  measured: MeasuredRate,
  thresholds: Thresholds,
): Warning[] {
  const { measurement, rate, runs } = measured;
  const { lineVolume } = input.sprayer;
  const at = placeOfMeasurement(input.calibration);
  return [
    ...rateWarnings(rate, applicationOf(input, measured), thresholds),
    ...speedWarnings(input.calibration, measurement, thresholds),
    ...readingWarnings(measurement, at, thresholds),
    ...nozzleWarnings(measurement, at, thresholds),
    ...(runs === undefined ? [] : runsWarnings(measurement as StripRunsInput, runs, at, lineVolume)),
    ...linesWarnings(measurement, at, lineVolume, thresholds),
    ...staleWarnings(input, thresholds),
  ];
}

/** Where the measurement stands: in a record, or the calibration is one. */
function placeOfMeasurement({ kind }: Calibration): string {
  return kind === "record" ? "calibration.record.measurement" : "calibration";
}

function rateWarnings(
  rate: VolumeRate,
  application: ApplicationKind,
  { leastRate, mostRate = MOST[application] }: Thresholds,
): Warning[] {
  const isLow = orderOf(rate, leastRate) === -1;
  if (!isLow && orderOf(rate, mostRate) !== 1) return [];
  return [
    warning(
      "rate-implausible",
      "warning",
      "calibration",
      isLow
        ? "The output rate is {rate}, less than usual for backpacks and small booms ({limit} or more). Check the units, then calibrate again."
        : "The output rate is {rate}, more than usual for {application.application} (up to {limit}). Check the units of the calibration, and the kind of spraying.",
      isLow
        ? { rate, limit: inUnitOf(leastRate, rate) }
        : { rate, limit: inUnitOf(mostRate, rate), application },
      isLow ? "rate-low" : "rate-high",
    ),
  ];
}

/** A limit in the unit of what is held against it. */
function inUnitOf<Q extends VolumeRate | Speed>(limit: Q, { unit }: Q): Quantity {
  return { value: inUnit(limit, unit), unit };
}

function speedOf(calibration: Calibration, measurement: Measurement): Speed | undefined {
  if (measurement.kind === "flow") return measurement.speed;
  if (measurement.kind === "catch") {
    return "unit" in measurement.speed ? measurement.speed : speedOfPass(measurement.speed);
  }
  return calibration.kind === "record" ? calibration.record.conditions.speed : undefined;
}

function speedWarnings(
  calibration: Calibration,
  measurement: Measurement,
  { slowest, fastest }: Thresholds,
): Warning[] {
  const speed = speedOf(calibration, measurement);
  if (speed === undefined) return [];
  const isSlow = orderOf(speed, slowest) === -1;
  if (!isSlow && orderOf(speed, fastest) !== 1) return [];
  return [
    warning(
      "speed-implausible",
      "warning",
      "calibration",
      isSlow
        ? "The speed is {speed}, slower than a steady walk ({limit}). Time the distance again."
        : "The speed is {speed}, faster than a steady walk ({limit}). Time the distance again.",
      { speed, limit: inUnitOf(isSlow ? slowest : fastest, speed) },
      isSlow ? "speed-low" : "speed-high",
    ),
  ];
}

function readingWarnings(measurement: Measurement, at: string, { readingPercent }: Thresholds): Warning[] {
  const runs: readonly StripRun[] =
    measurement.kind === "strip" ? [measurement] : measurement.kind === "strip-runs" ? measurement.runs : [];
  return runs.flatMap(({ used }, i): Warning[] => {
    const { resolution = USUAL_JUG[systemOf(used.unit)] } = used;
    const percent = 100 * ratioOf(resolution, used);
    if (!moreThan(percent, readingPercent)) return [];
    const isAssumed = used.resolution === undefined;
    return [
      warning(
        "strip-too-short",
        isAssumed ? "note" : "warning",
        measurement.kind === "strip" ? `${at}.used` : `${at}.runs[${i}].used`,
        (isAssumed
          ? "If your jug is marked every {resolution}, one mark is {percent} of the {used} used. "
          : "Your jug is marked every {resolution}, which is {percent} of the {used} used. ") +
          "Use a longer strip or a finer jug.",
        { used, resolution, percent: asPercent(percent) },
        isAssumed ? "strip-too-short-assumed" : "strip-too-short",
      ),
    ];
  });
}

/** The nozzle that is furthest from the average. Nozzles that spray one row together often differ on purpose. */
function nozzleWarnings(measurement: Measurement, at: string, { nozzlePercent }: Thresholds): Warning[] {
  if (measurement.kind !== "catch" || (measurement.nozzlesPerRow ?? 1) > 1) return [];
  const { catches } = measurement;
  const average = scaled(sumOf(catches), 1 / catches.length);
  const off = catches.map((caught) => 100 * (ratioOf(caught, average) - 1));
  const most = off.reduce((worst, one) => (moreThan(Math.abs(one), Math.abs(worst)) ? one : worst));
  if (!moreThan(Math.abs(most), nozzlePercent)) return [];
  const nozzle = off.indexOf(most);
  const isLow = most < 0;
  return [
    warning(
      "nozzles-uneven",
      "warning",
      `${at}.catches[${nozzle}]`,
      isLow
        ? "Nozzle {nozzle} caught {caught}, {percent} less than the average. Clean it, and catch all nozzles again."
        : "Nozzle {nozzle} caught {caught}, {percent} more than the average. Replace it, and catch all nozzles again.",
      { nozzle: nozzle + 1, caught: catches[nozzle] as Volume, percent: asPercent(Math.abs(most)) },
      isLow ? "nozzle-low" : "nozzle-high",
    ),
  ];
}

// The marks of a measuring jug from the kitchen or the farm shop, where nobody says how it is marked: common practice, no source.
const USUAL_JUG: Readonly<Record<UnitSystem, Volume>> = {
  us: { value: 1, unit: "fl_oz" },
  imperial: { value: 1, unit: "imp_fl_oz" },
  metric: { value: 25, unit: "mL" },
};

const DIFFER = {
  all: {
    key: "runs-disagree",
    template: "The runs differ by more than {limit}: {lowest} to {highest}. Repeat the runs.",
  },
  one: {
    key: "runs-disagree-one",
    template:
      "The runs differ by more than {limit}: {lowest} to {highest}. Repeat run {run}, which stands out.",
  },
  first: {
    key: "runs-disagree-first",
    template:
      "The runs differ by over {limit} ({lowest} to {highest}), and the first used the most. If the hose and boom started empty, fill them and repeat that run.",
  },
  lines: {
    key: "runs-disagree-lines",
    template:
      "The runs differ by over {limit} ({lowest} to {highest}). The first used {filled} more, about what the hose and boom hold: fill them and repeat it.",
  },
} as const;

function runsWarnings(
  measurement: StripRunsInput,
  { agree, lowest, highest, standsOut, limit, runs }: StripRuns,
  at: string,
  lineVolume: Volume | undefined,
): Warning[] {
  if (agree) return [];
  const path = standsOut === null ? `${at}.runs` : `${at}.runs[${standsOut}]`;
  const figures = { lowest, highest, limit };
  const disagree = (
    { key, template }: (typeof DIFFER)[keyof typeof DIFFER],
    more: Figures = {},
  ): Warning[] => [warning("runs-disagree", "warning", path, template, { ...figures, ...more }, key)];
  // What fills an empty boom counts as used on the first run, and on that one only. Two runs are enough to suspect it.
  const isMostAtFirst =
    orderOf((runs[0] as (typeof runs)[number]).rate, highest) === 0 && (standsOut === 0 || runs.length === 2);
  if (!isMostAtFirst)
    return standsOut === null ? disagree(DIFFER.all) : disagree(DIFFER.one, { run: standsOut + 1 });
  const filled = lineFilling(measurement.runs, lineVolume);
  return filled === undefined ? disagree(DIFFER.first) : disagree(DIFFER.lines, { filled });
}

// How near to what the lines hold the first run's surplus is, to be taken for it.
const NEAR_LINES = 0.3;

/** What the first run took more than the others, over the same strip, where it is about what hoses and boom hold. */
function lineFilling(runs: readonly StripRun[], lineVolume: Volume | undefined): Volume | undefined {
  if (lineVolume === undefined || lineVolume.value === 0) return undefined;
  const [first, ...others] = runs as readonly [StripRun, ...StripRun[]];
  const isSameStrip = others.every(
    ({ swath, distance }) => orderOf(swath, first.swath) === 0 && orderOf(distance, first.distance) === 0,
  );
  if (!isSameStrip) return undefined;
  const { unit } = first.used;
  const usual = others.reduce((sum, { used }) => sum + inUnit(used, unit), 0) / others.length;
  const more: Volume = { value: first.used.value - usual, unit };
  return Math.abs(ratioOf(more, lineVolume) - 1) <= NEAR_LINES ? more : undefined;
}

/**
 * A single strip cannot show whether hoses and boom were full at its start. What they hold then counts as sprayed, the rate
 * comes out too high and the mix too weak.
 */
function linesWarnings(
  measurement: Measurement,
  at: string,
  lineVolume: Volume | undefined,
  { readingPercent }: Thresholds,
): Warning[] {
  if (measurement.kind !== "strip" || !lineVolume) return [];
  const { used } = measurement;
  const percent = 100 * ratioOf(lineVolume, used);
  if (!moreThan(percent, readingPercent)) return [];
  return [
    warning(
      "lines-uncharged",
      "note",
      `${at}.used`,
      "The hose and boom hold {lines}, {percent} of the {used} used. " +
        "If they started empty, the mix will be too weak: fill them and repeat the strip.",
      { used, lines: lineVolume, percent: asPercent(percent) },
    ),
  ];
}

const STALE = {
  changed: {
    key: "calibration-stale",
    template: "Changed since calibration: {changed.condition}. Calibrate again.",
  },
  rate: {
    key: "calibration-stale-rate",
    template:
      "Changed since calibration: {changed.condition}. Calibrate again: expect {expected} instead of {rate}.",
  },
  // What another nozzle or another person does to the rate can't be worked out, and may be more than all the rest.
  part: {
    key: "calibration-stale-part",
    template:
      "Changed since calibration: {changed.condition}. Calibrate again: counting only {counted.condition}, expect {expected} instead of {rate}.",
  },
} as const;

function staleWarnings({ calibration, today }: PlanInput, { calibrationDays }: Thresholds): Warning[] {
  if (calibration.kind !== "record") return [];
  const { record } = calibration;
  if (today === undefined)
    return [
      warning(
        "calibration-age-unknown",
        "note",
        "today",
        "This calibration is from {date} and today's date is missing. Enter it, so its age and conditions can be checked.",
        { date: record.date },
      ),
    ];
  const longestAge = today.longestAge ?? calibrationDays;
  const { changes, rate, expected, age } = compareConditions(record, { ...today, longestAge }, "calibration");
  const others = changes.filter(({ what }) => what !== "date");
  const warnings: Warning[] = [];
  if (others.length > 0) {
    const counted = others.filter(({ shift }) => shift !== null).map(({ what }) => what);
    const stale =
      orderOf(rate, expected) === 0
        ? STALE.changed
        : counted.length === others.length
          ? STALE.rate
          : STALE.part;
    const { key, template } = stale;
    const figures = { rate, expected, changed: others.map(({ what }) => what) };
    warnings.push(
      warning(
        "calibration-stale",
        "warning",
        "calibration",
        template,
        stale === STALE.part ? { ...figures, counted } : figures,
        key,
      ),
    );
  }
  if (others.length < changes.length)
    warnings.push(
      warning(
        "calibration-old",
        "warning",
        "calibration",
        "The calibration is {age} days old, and nozzles wear. Calibrate again.",
        { age, limit: longestAge },
      ),
    );
  return warnings;
}
