import { within } from "../errors.js";
import { type Calibration, measurementOf } from "../output-rate/calibration.js";
import type { Measurement } from "../output-rate/measurement.js";
import { speedOfPass } from "../output-rate/speed.js";
import type { StripRun } from "../output-rate/strip.js";
import { runsTogether } from "../output-rate/strip-runs.js";
import { whatChanged } from "../output-rate/what-changed.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { compare, orderOf, ratio } from "../units/quantity.js";
import { systemOf } from "../units/systems.js";
import type { Quantity, Speed, UnitSystem, Volume, VolumeRate } from "../units/types.js";
import type { PlanInput } from "./input.js";
import type { Thresholds } from "./thresholds.js";
import { told, type Warning } from "./warnings.js";

/** What a careful colleague would ask about a calibration. */
export function calibrationWarnings(input: PlanInput, rate: VolumeRate, thresholds: Thresholds): Warning[] {
  const { calibration } = input;
  const measurement = measurementOf(calibration);
  return [
    ...rateWarnings(rate, thresholds),
    ...speedWarnings(calibration, measurement, thresholds),
    ...readingWarnings(measurement, thresholds),
    ...runsWarnings(measurement, input.sprayer.lineVolume),
    ...linesWarnings(input, measurement, thresholds),
    ...staleWarnings(input, thresholds),
  ];
}

function rateWarnings(rate: VolumeRate, { leastRate, mostRate }: Thresholds): Warning[] {
  const low = compare(rate, leastRate) === -1;
  if (!low && compare(rate, mostRate) !== 1) return [];
  const limit = low ? leastRate : mostRate;
  return [
    {
      code: "rate-implausible",
      severity: "warning",
      message:
        `The output rate is ${told(rate)}, ${low ? "less" : "more"} than usual for such sprayers (${low ? "from" : "up to"} ${told(limit)}). ` +
        "Check the units for the strip and the refill, then calibrate again.",
      path: "calibration",
      figures: { rate, limit },
    },
  ];
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
  const slow = compare(speed, slowest) === -1;
  if (!slow && compare(speed, fastest) !== 1) return [];
  const limit = slow ? slowest : fastest;
  return [
    {
      code: "speed-implausible",
      severity: "warning",
      message:
        `The speed is ${told(speed)}, ${slow ? "slower" : "faster"} than a steady walk (${told(limit)}). ` +
        "Time the distance again.",
      path: "calibration",
      figures: { speed, limit },
    },
  ];
}

function readingWarnings(measurement: Measurement, { readingPercent }: Thresholds): Warning[] {
  const runs: readonly StripRun[] =
    measurement.kind === "strip" ? [measurement] : measurement.kind === "strip-runs" ? measurement.runs : [];
  return runs.flatMap(({ used }, i): Warning[] => {
    const { resolution = USUAL_JUG[systemOf(used.unit)] } = used;
    const percent = 100 * ratio(resolution, used);
    if (!moreThan(percent, readingPercent)) return [];
    const assumed = used.resolution === undefined;
    return [
      {
        code: "strip-too-short",
        severity: assumed ? "note" : "warning",
        message:
          `${assumed ? "If your jug is marked every" : "Your jug is marked every"} ${told(resolution)}, one mark is ` +
          `${Number(percent.toPrecision(2))}% of the ${told(used)} used. Use a longer strip or a finer jug.`,
        path: measurement.kind === "strip" ? "calibration.used" : `calibration.runs[${i}].used`,
        figures: { used, resolution, percent },
      },
    ];
  });
}

// The marks of a measuring jug from the kitchen or the farm shop, where nobody says how it is marked: common practice, no source.
const USUAL_JUG: Readonly<Record<UnitSystem, Volume>> = {
  us: { value: 1, unit: "fl_oz" },
  imperial: { value: 1, unit: "imp_fl_oz" },
  metric: { value: 25, unit: "mL" },
};

function runsWarnings(measurement: Measurement, lineVolume: Volume | undefined): Warning[] {
  if (measurement.kind !== "strip-runs") return [];
  const { agree, lowest, highest, standsOut, limit, runs } = runsTogether(measurement);
  if (agree) return [];
  // What fills an empty boom counts as used on the first run, and on that one only. Two runs are enough to suspect it.
  const mostAtFirst =
    orderOf((runs[0] as (typeof runs)[number]).rate, highest) === 0 && (standsOut === 0 || runs.length === 2);
  const filled = mostAtFirst ? lineFilling(measurement.runs, lineVolume) : undefined;
  const again = standsOut === null ? "Repeat the runs." : `Repeat run ${standsOut + 1}, which stands out.`;
  const cause =
    filled === undefined
      ? "The first run used the most, which happens when the hose and boom start empty. Fill them first and run it again."
      : `The first run used ${told(filled)} more, about what the hose and boom hold: they were empty. Fill them first and run it again.`;
  return [
    {
      code: "runs-disagree",
      severity: "warning",
      message: `The runs differ by more than ${told(limit)}: ${told(lowest)} to ${told(highest)}. ${mostAtFirst ? cause : again}`,
      path: standsOut === null ? "calibration.runs" : `calibration.runs[${standsOut}]`,
      figures: {
        lowest,
        highest,
        limit,
        ...(filled && { filled }),
      },
    },
  ];
}

// How near to what the lines hold the first run's surplus is, to be taken for it.
const NEAR_LINES = 0.3;

/** What the first run took more than the others, over the same strip, where it is about what hoses and boom hold. */
function lineFilling(runs: readonly StripRun[], lineVolume: Volume | undefined): Volume | undefined {
  if (lineVolume === undefined || lineVolume.value === 0) return undefined;
  const [first, ...others] = runs as readonly [StripRun, ...StripRun[]];
  const sameStrip = others.every(
    ({ swath, distance }) => orderOf(swath, first.swath) === 0 && orderOf(distance, first.distance) === 0,
  );
  if (!sameStrip) return undefined;
  const { unit } = first.used;
  const usual =
    others.reduce((sum, { used }) => sum + convertValue(used.value, used.unit, unit), 0) / others.length;
  const more: Volume = { value: first.used.value - usual, unit };
  return Math.abs(ratio(more, lineVolume) - 1) <= NEAR_LINES ? more : undefined;
}

/**
 * A single strip cannot tell whether hoses and boom were full at its start. What they hold then counts as sprayed, the rate
 * comes out too high and the mix too weak.
 */
function linesWarnings(
  { sprayer: { lineVolume } }: PlanInput,
  measurement: Measurement,
  { readingPercent }: Thresholds,
): Warning[] {
  if (measurement.kind !== "strip" || lineVolume === undefined) return [];
  const { used } = measurement;
  const percent = 100 * ratio(lineVolume, used);
  if (!moreThan(percent, readingPercent)) return [];
  return [
    {
      code: "lines-uncharged",
      severity: "note",
      message:
        `The hose and boom hold ${told(lineVolume)}, ${Number(percent.toPrecision(2))}% of the ${told(used)} used. ` +
        "If they were empty when you started, the mix will be too weak: fill them first, run the strip again and enter both.",
      path: "calibration.used",
      figures: { used, lines: lineVolume, percent },
    },
  ];
}

function staleWarnings({ calibration, today }: PlanInput, { calibrationDays }: Thresholds): Warning[] {
  if (calibration.kind !== "record") return [];
  if (today === undefined) {
    const { date } = calibration.record;
    return [
      {
        code: "calibration-age-unknown",
        severity: "note",
        message: `This calibration is from ${date} and today's date is missing. Enter it, so its age and conditions can be checked.`,
        path: "today",
        figures: { limit: calibrationDays },
      },
    ];
  }
  const changed = within("calibration", () =>
    whatChanged(calibration.record, { ...today, longestAge: calibrationDays }),
  );
  const { changes, rate, expected, age } = changed;
  const others = changes.filter(({ what }) => what !== "date");
  const warnings: Warning[] = [];
  if (others.length > 0) {
    const moved = compare(rate, expected) === 0 ? "" : ` Expect ${told(expected)} instead of ${told(rate)}.`;
    warnings.push({
      code: "calibration-stale",
      severity: "warning",
      message: `Changed since calibration: ${others.map(({ what }) => WORDS[what]).join(", ")}.${moved} Calibrate again.`,
      path: "calibration",
      figures: { rate, expected } satisfies Record<string, Quantity>,
    });
  }
  if (others.length < changes.length) {
    warnings.push({
      code: "calibration-old",
      severity: "warning",
      message: `The calibration is ${age} days old, and nozzles wear. Calibrate again.`,
      path: "calibration",
      figures: { age, limit: calibrationDays },
    });
  }
  return warnings;
}

const WORDS = {
  operator: "the operator",
  nozzle: "the nozzle",
  nozzleCount: "the number of nozzles",
  nozzleSpacing: "the nozzle spacing",
  pressure: "the pressure",
  speed: "the speed",
  gear: "the gear",
  ground: "the ground",
  liquid: "the liquid",
  density: "the density",
  date: "the date",
} as const;
