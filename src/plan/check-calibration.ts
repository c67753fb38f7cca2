import { within } from "../errors.js";
import { type Calibration, measurementOf } from "../output-rate/calibration.js";
import type { Measurement } from "../output-rate/measurement.js";
import { speedOfPass } from "../output-rate/speed.js";
import type { StripRun } from "../output-rate/strip.js";
import { runsTogether } from "../output-rate/strip-runs.js";
import { whatChanged } from "../output-rate/what-changed.js";
import { moreThan } from "../units/decide.js";
import { compare, ratio } from "../units/quantity.js";
import type { Quantity, Speed, VolumeRate } from "../units/types.js";
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
    ...runsWarnings(measurement),
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
        `The sprayer puts out ${told(rate)}, ${low ? "less" : "more"} than such sprayers do (${told(limit)}). ` +
        "Look at the units of the strip and the refill, and calibrate again.",
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
        `The speed is ${told(speed)}, ${slow ? "slower" : "faster"} than can be held evenly (${told(limit)}). ` +
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
    if (used.resolution === undefined) return [];
    const percent = 100 * ratio(used.resolution, used);
    if (!moreThan(percent, readingPercent)) return [];
    return [
      {
        code: "strip-too-short",
        severity: "warning",
        message:
          `One mark of the measure is ${Number(percent.toPrecision(3))} % of the ${told(used)} used on the strip. ` +
          "Spray a longer strip, or refill with a finer measure.",
        path: measurement.kind === "strip" ? "calibration.used" : `calibration.runs[${i}].used`,
        figures: { used, resolution: used.resolution, percent },
      },
    ];
  });
}

function runsWarnings(measurement: Measurement): Warning[] {
  if (measurement.kind !== "strip-runs") return [];
  const { agree, lowest, highest, standsOut, limit, runs } = runsTogether(measurement);
  if (agree) return [];
  // What fills an empty boom counts as used on the first run, and on that one only.
  const emptyBoom = standsOut === 0 && compare((runs[0] as (typeof runs)[number]).rate, highest) === 0;
  return [
    {
      code: "runs-disagree",
      severity: "warning",
      message:
        `The runs differ from one another by more than ${told(limit)}: from ${told(lowest)} to ${told(highest)}. ` +
        (standsOut === null ? "Walk them again." : `Run ${standsOut + 1} stands out: walk it again.`) +
        (emptyBoom
          ? " It is the first and took the most, as where hoses and boom were empty: fill them before the start."
          : ""),
      path: standsOut === null ? "calibration.runs" : `calibration.runs[${standsOut}]`,
      figures: { lowest, highest, limit },
    },
  ];
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
        `Hoses and boom hold ${told(lineVolume)}, which is ${Number(percent.toPrecision(3))} % of the ${told(used)} used on the strip. ` +
        "Had they been empty at the start, the rate would be told too high and the mix made too weak: fill them first, walk a second run, and give both.",
      path: "calibration.used",
      figures: { used, lines: lineVolume, percent },
    },
  ];
}

function staleWarnings({ calibration, today }: PlanInput, { calibrationDays }: Thresholds): Warning[] {
  if (calibration.kind !== "record" || today === undefined) return [];
  const changed = within("calibration", () =>
    whatChanged(calibration.record, { ...today, longestAge: calibrationDays }),
  );
  const { changes, rate, expected, age } = changed;
  const others = changes.filter(({ what }) => what !== "date");
  const warnings: Warning[] = [];
  if (others.length > 0) {
    const moved =
      compare(rate, expected) === 0 ? "" : ` The rate to expect is ${told(expected)} and not ${told(rate)}.`;
    warnings.push({
      code: "calibration-stale",
      severity: "warning",
      message: `Since the calibration these changed: ${others.map(({ what }) => WORDS[what]).join(", ")}.${moved} Calibrate again.`,
      path: "calibration",
      figures: { rate, expected } satisfies Record<string, Quantity>,
    });
  }
  if (others.length < changes.length) {
    warnings.push({
      code: "calibration-old",
      severity: "warning",
      message: `The calibration is ${age} days old, and nozzles wear: calibrate again.`,
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
