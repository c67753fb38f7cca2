import { measurementOf } from "../output-rate/calibration.js";
import type { Measurement } from "../output-rate/measurement.js";
import { orderOf, ratio, scale } from "../units/quantity.js";
import type { Length } from "../units/types.js";
import type { PlanInput } from "./input.js";
import { type Plot, type PlotAreas, plotsOf } from "./plot.js";
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
  const width = widthOf(measurementOf(input.calibration));
  if (width === undefined) return [];
  const several = Array.isArray(input.plot);
  return plotsOf(input.plot).flatMap((plot, i): Warning[] => {
    const path = several ? `plot[${i}]` : "plot";
    return [
      ...allGroundWarnings(plot, plots[i] as (typeof plots)[number], width, bandSwath, path),
      ...spacingWarnings(plot, width, path),
    ];
  });
}

function allGroundWarnings(
  plot: Plot,
  { treated, ground }: PlotAreas,
  width: Length,
  bandSwath: Length,
  path: string,
): Warning[] {
  // A width that looks like a band's.
  if (orderOf(width, bandSwath) !== -1) return [];
  if (ground === undefined || orderOf(treated, ground) !== 0) return [];
  // Told in so many words that all of it is sprayed.
  if ("fraction" in plot && plot.fraction === 1) return [];
  return [
    {
      code: "all-ground-treated",
      severity: "warning",
      message:
        `All ${told(ground)} of ground is taken as treated, and the calibration sprayed a width of ${told(width)} as in a band. ` +
        "Where only bands, beds or spots are sprayed, tell the plot so; where passes are laid side by side, give the plot a sprayed fraction of 1 to say so.",
      path,
      figures: { treated, ground, width },
    },
  ];
}

// The same slip the other way round: the strip's width taken from row to row, while only the band was wetted. The mix is
// then too strong by their ratio.
function spacingWarnings(plot: Plot, width: Length, path: string): Warning[] {
  const rows = rowsOf(plot);
  if (rows === undefined) return [];
  const { band, spacing } = rows;
  if (!goesInto(spacing, width) || goesInto(band, width)) return [];
  return [
    {
      code: "swath-is-spacing",
      severity: "warning",
      message:
        `The calibration's width of ${told(width)} is the distance from row to row (${told(spacing)}), and what is treated is ${told(band)} wide. ` +
        "Where only that was wetted on the strip, tell its width as the swath: the mix is too strong otherwise.",
      path,
      figures: { width, spacing, band },
    },
  ];
}

/** What is treated along a row, bed or tree row, and how far it is to the next. */
function rowsOf(plot: Plot): { readonly band: Length; readonly spacing: Length } | undefined {
  switch (plot.kind) {
    case "row-bands":
      return plot.rowSpacing && { band: plot.bandWidth, spacing: plot.rowSpacing };
    case "beds":
      return plot.bedSpacing && { band: plot.bedWidth, spacing: plot.bedSpacing };
    case "tree-rows":
      return plot.rowSpacing && { band: scale(plot.stripWidth, plot.sides), spacing: plot.rowSpacing };
    default:
      return undefined;
  }
}

/** Whether a width is a whole number of another, once or more. */
function goesInto(part: Length, width: Length): boolean {
  const times = Math.round(ratio(width, part));
  return times >= 1 && orderOf(width, scale(part, times)) === 0;
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
