import type { Calibration } from "../output-rate/calibration.js";
import { measurementOf } from "../output-rate/calibration.js";
import type { Measurement } from "../output-rate/measurement.js";
import { compare } from "../units/quantity.js";
import type { Length } from "../units/types.js";
import type { PlanInput } from "./input.js";
import { plotsOf } from "./plot.js";
import type { Plan } from "./result.js";
import type { Thresholds } from "./thresholds.js";
import { told, type Warning } from "./warnings.js";

/**
 * Ground area used like treated area: a calibration in bands or rows, and a plot whose ground is all taken as treated. The
 * worst slip of the trade, since it orders product for the ground between the rows.
 */
export function areaWarnings(
  input: PlanInput,
  { plots }: Plan["area"],
  { bandSwath }: Thresholds,
): Warning[] {
  const width = bandWidthOf(input.calibration, bandSwath);
  if (width === undefined) return [];
  const several = Array.isArray(input.plot);
  return plotsOf(input.plot).flatMap((plot, i): Warning[] => {
    const { treated, ground } = plots[i] as (typeof plots)[number];
    if (ground === undefined || compare(treated, ground) !== 0) return [];
    // Told in so many words that all of it is sprayed.
    if ("fraction" in plot && plot.fraction === 1) return [];
    return [
      {
        code: "all-ground-treated",
        severity: "warning",
        message:
          `All ${told(ground)} of ground is taken as treated, and the calibration sprayed a width of ${told(width)} as in a band. ` +
          "Where only bands, beds or spots are sprayed, tell the plot so; where passes are laid side by side, give the plot a sprayed fraction of 1 to say so.",
        path: several ? `plot[${i}]` : "plot",
        figures: { treated, ground, width },
      },
    ];
  });
}

/** The width of the calibration, where it looks like a band's. */
function bandWidthOf(calibration: Calibration, bandSwath: Length): Length | undefined {
  const width = widthOf(measurementOf(calibration));
  return width !== undefined && compare(width, bandSwath) === -1 ? width : undefined;
}

function widthOf(measurement: Measurement): Length | undefined {
  switch (measurement.kind) {
    case "strip":
      return measurement.swath;
    case "strip-runs":
      return measurement.runs[0]?.swath;
    // The width of one nozzle on a boom, which is no pass; several nozzles to a row make a band.
    case "catch":
      return (measurement.nozzlesPerRow ?? 1) > 1 ? measurement.width : undefined;
    default:
      return undefined;
  }
}
