import { type Calibration, measurementOf } from "../output-rate/calibration.js";
import type { CatchMeasurement, Measurement } from "../output-rate/measurement.js";
import { rateUsed, readRate, type SingleRate } from "../tank-mix/label-rate.js";
import { orderOf, ratioOf, scaled } from "../units/quantity.js";
import type { Length } from "../units/types.js";
import type { PlanInput } from "./input.js";
import { type Plot, type PlotName, plotInEnglish, plotNames, plotPath, plotsOf } from "./plot.js";
import type { JobArea, PlotAreas } from "./plot-areas.js";
import { forSaying, type Warning, warning } from "./warnings.js";

/**
 * Widths that don't belong together. Ground area used like treated area is the worst slip of the trade, since it orders product
 * for the ground between the rows. A strip of another width than the bands makes every drop too strong or too weak.
 */
export function areaWarnings(
  input: PlanInput,
  { plots }: JobArea,
  measurement: Measurement,
  bandSwath: Length,
): Warning[] {
  const { plot, calibration, sprayer } = input;
  const { rowsPerPass = 1 } = sprayer;
  // One nozzle over a whole plot, pass beside pass, is the commonest backpack job: a narrow strip alone says nothing of bands.
  const width = hasRows(input, measurement) ? widthOf(measurement) : undefined;
  const names = plotNames(plot);
  return plotsOf(plot).flatMap((one, i): Warning[] => {
    const path = plotPath(plot, i);
    const found = [
      ...allGroundWarnings(one, plots[i] as PlotAreas, width, bandSwath, path),
      ...bandWarnings(one, measurement, rowsPerPass, path, widthPathOf(calibration)),
    ];
    return names.length === 1 ? found : found.map((each) => onPlot(each, names[i] as PlotName));
  });
}

/** A warning with the plot that it is about, for one of several. */
function onPlot(found: Warning, plot: PlotName): Warning {
  const { message, figures } = found;
  return { ...found, message: `On ${plotInEnglish(plot)}: ${message}`, figures: { ...figures, plot } };
}

/** Whether anything that was given speaks of rows or bands: another plot, the sprayer, the nozzles, a label's rate. */
function hasRows({ plot, sprayer, products }: PlanInput, measurement: Measurement): boolean {
  return (
    plotsOf(plot).some((one) => rowsOf(one) !== undefined) ||
    sprayer.rowsPerPass !== undefined ||
    (measurement.kind === "catch" && measurement.nozzlesPerRow !== undefined) ||
    products.some(({ rate }) => isOfRows(rateUsed(rate, "")[0]))
  );
}

/** Whether a rate says that it is per broadcast acre or per ground: only for bands does that make a difference. */
function isOfRows(rate: SingleRate): boolean {
  const read = readRate(rate);
  return read.kind === "area" && read.per !== "treated";
}

function allGroundWarnings(
  plot: Plot,
  { treated, ground }: PlotAreas,
  width: Length | undefined,
  bandSwath: Length,
  path: string,
): Warning[] {
  // A width that looks like a band's.
  if (width === undefined || orderOf(width, bandSwath) !== -1) return [];
  if (rowsOf(plot) !== undefined || ground === undefined || orderOf(treated, ground) !== 0) return [];
  // Entered in so many words that all of it is sprayed.
  if ("fraction" in plot && plot.fraction === 1) return [];
  return [
    warning(
      "all-ground-treated",
      "warning",
      path,
      "All {ground} counts as treated, but your strip was only {width} wide, like a band. " +
        "Choose bands, beds or spots, or whole block if you spray it all.",
      { treated, ground, width },
    ),
  ];
}

/**
 * The width of the strip is that of the band, times the rows that one pass sprays: any other is questioned, with what it does
 * to the dose. So are bands that leave no gap.
 */
function bandWarnings(
  plot: Plot,
  measurement: Measurement,
  rowsPerPass: number,
  path: string,
  widthPath: string,
): Warning[] {
  const rows = rowsOf(plot);
  if (rows === undefined) return [];
  const { bands, spacing } = rows;
  const band = bands[0] as Length;
  const width = measuredWidth(measurement);
  // Whole trees fill their rows, and are measured without a width.
  const isCanopy = plot.kind === "tree-rows" && width === undefined;
  const leavesNone = spacing !== undefined && isSame(band, spacing) && !isCanopy;
  const gap = leavesNone ? [gapWarning(band, spacing, path)] : [];
  if (width === undefined) return gap;
  const passes = bands.map((one) => scaled(one, rowsPerPass));
  const pass = passes[0] as Length;
  const isPart = orderOf(width, pass) === -1;
  const boom = measurement.kind === "catch" ? boomWidth(measurement) : width;
  if (measurement.kind === "catch" && orderOf(boom, pass) === 1 && !isSame(boom, pass)) {
    if (bands.some((one) => isSame(one, width)))
      return [...gap, nozzlesWarning(measurement, boom, pass, path)];
    // A boom that reaches over what it treats: the strength is right.
    if (isPart) return [...gap, boomWarning(measurement, boom, pass, path)];
  }
  if (passes.some((one) => fits(measurement, width, one))) return gap;
  const isStrip = measurement.kind !== "catch" && measurement.kind !== "flow";
  // Nozzles that each cover a part of the pass cover it together.
  const covered = isPart ? boom : width;
  return [...gap, swathWarning({ width: covered, isStrip }, pass, band, spacing, path, widthPath)];
}

function gapWarning(band: Length, spacing: Length, path: string): Warning {
  return warning(
    "bands-without-gap",
    "warning",
    path,
    "Bands {band} wide and {spacing} apart leave no gap, so all of the ground is treated. " +
      "Check the band's width, or choose whole block if you spray it all.",
    { band, spacing },
  );
}

// What a strip of another width than one pass is like, and what it does to the mix.
const OTHER_WIDTH = {
  // The band and the spacing say the same of the rows: it is the strip's width that doesn't.
  spacing: {
    strong: {
      key: "swath-is-spacing-strong",
      template:
        "The strip's {width} matches the row or bed spacing, but one pass treats {pass}. If only {pass} was sprayed, enter that, or the mix is {times} times too strong.",
    },
    weak: {
      key: "swath-is-spacing-weak",
      template:
        "The strip's {width} matches the row or bed spacing, but one pass treats {pass}. If only {pass} was sprayed, enter that, or the mix is {times} times too weak.",
    },
  },
  // As wide as several rows it matches nothing that a person knows.
  spacings: {
    strong: {
      key: "swath-is-spacings-strong",
      template:
        "The strip is {width} wide, but one pass treats {pass}. If only {pass} was sprayed, enter that, or the mix is {times} times too strong.",
    },
    weak: {
      key: "swath-is-spacings-weak",
      template:
        "The strip is {width} wide, but one pass treats {pass}. If only {pass} was sprayed, enter that, or the mix is {times} times too weak.",
    },
  },
  other: {
    strong: {
      key: "swath-is-not-band-strong",
      template:
        "Your test strip was {width} wide, but one pass treats {pass}: the mix may be {times} times too strong. Check both widths, and the rows or beds per pass.",
    },
    weak: {
      key: "swath-is-not-band-weak",
      template:
        "Your test strip was {width} wide, but one pass treats {pass}: the mix may be {times} times too weak. Check both widths, and the rows or beds per pass.",
    },
  },
  // Water that was caught, or a flow: no strip has been sprayed.
  nozzle: {
    strong: {
      key: "nozzle-width-strong",
      template:
        "The calibration is for {width}, but one pass treats {pass}: the mix may be {times} times too strong. Check both widths, and the rows or beds per pass.",
    },
    weak: {
      key: "nozzle-width-weak",
      template:
        "The calibration is for {width}, but one pass treats {pass}: the mix may be {times} times too weak. Check both widths, and the rows or beds per pass.",
    },
  },
} as const;

/** The width of all nozzles that water was caught from. */
function boomWidth({ catches, width, nozzlesPerRow = 1 }: CatchMeasurement): Length {
  return scaled(width, Math.max(1, catches.length / nozzlesPerRow));
}

/** As many nozzles as rows were counted, each with a row of its own, and one pass sprays fewer rows than that. */
function nozzlesWarning({ catches }: CatchMeasurement, boom: Length, pass: Length, path: string): Warning {
  return warning(
    "nozzles-over-rows",
    "warning",
    path,
    "Your {nozzles} nozzles count as {boom} wide, but a pass treats {pass}: the mix may be {times} times too strong. Enter nozzles per row, or rows per pass.",
    { nozzles: catches.length, boom, pass, times: forSaying(ratioOf(boom, pass)) },
  );
}

function boomWarning({ catches }: CatchMeasurement, boom: Length, pass: Length, path: string): Warning {
  return warning(
    "boom-over-pass",
    "warning",
    path,
    "Your {nozzles} nozzles spray {boom}, but one pass treats {pass}. The rest lands beside it, and the mix runs out early: shut nozzles, or enter what you spray.",
    { nozzles: catches.length, boom, pass },
  );
}

function swathWarning(
  { width, isStrip }: { readonly width: Length; readonly isStrip: boolean },
  pass: Length,
  band: Length,
  spacing: Length | undefined,
  path: string,
  widthPath: string,
): Warning {
  const wider = ratioOf(width, pass);
  const isStrong = wider > 1;
  const isSpacings = spacing !== undefined && isMultiple(width, spacing);
  const ofStrip = isSpacings ? (isSame(width, spacing) ? "spacing" : "spacings") : "other";
  const kind = isStrip ? ofStrip : "nozzle";
  const { key, template } = OTHER_WIDTH[kind][isStrong ? "strong" : "weak"];
  return warning(
    isSpacings ? "swath-is-spacing" : "swath-is-not-band",
    "warning",
    isSpacings ? widthPath : path,
    template,
    {
      width,
      pass,
      band,
      times: forSaying(isStrong ? wider : 1 / wider),
      ...(spacing !== undefined && { spacing }),
    },
    key,
  );
}

/** What is treated along a row, bed or tree row, the likeliest width first, and how far it is to the next. */
function rowsOf(
  plot: Plot,
): { readonly bands: readonly Length[]; readonly spacing: Length | undefined } | undefined {
  switch (plot.kind) {
    case "row-bands":
      return { bands: [plot.bandWidth], spacing: plot.rowSpacing };
    case "beds":
      return { bands: [plot.bedWidth], spacing: plot.bedSpacing };
    case "tree-rows":
      // Both sides at once, or one after the other.
      return { bands: [scaled(plot.stripWidth, plot.sides), plot.stripWidth], spacing: plot.rowSpacing };
    default:
      return undefined;
  }
}

// Within so much two widths are one: a tape in inches beside one in centimeters (30 in, 76 cm).
const SAME_WIDTH = 0.01;

function isSame(a: Length, b: Length): boolean {
  return Math.abs(ratioOf(a, b) - 1) <= SAME_WIDTH;
}

function isMultiple(width: Length, part: Length): boolean {
  const times = Math.round(ratioOf(width, part));
  return times >= 1 && isSame(width, scaled(part, times));
}

/** Whether a calibration's width is that of one pass. */
function fits(measurement: Measurement, width: Length, pass: Length): boolean {
  // The width of one nozzle, or of those on one row: several of them may cover the pass.
  return measurement.kind === "catch" ? isMultiple(pass, width) : isSame(width, pass);
}

/** The width that a calibration goes by. */
function measuredWidth(measurement: Measurement): Length | undefined {
  if (measurement.kind === "catch" || measurement.kind === "flow") return measurement.width;
  return widthOf(measurement);
}

/** Where the width that a calibration goes by stands in the input. */
function widthPathOf(calibration: Calibration): string {
  const at = calibration.kind === "record" ? "calibration.record.measurement" : "calibration";
  const { kind } = measurementOf(calibration);
  const names: Partial<Record<Measurement["kind"], string>> = {
    strip: "swath",
    "strip-runs": "runs[0].swath",
  };
  return `${at}.${names[kind] ?? "width"}`;
}

/** The width sprayed in one pass of a calibration, where there is one. */
export function widthOf(measurement: Measurement): Length | undefined {
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
