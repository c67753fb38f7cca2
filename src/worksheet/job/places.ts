import type { PlanInput } from "../../plan/input.js";
import { type EndUnit, type LoadEnd, layOfPasses } from "../../plan/load-ends.js";
import { equalRows, type Plot, plotsOf, rowLengthsOf } from "../../plan/plot.js";
import type { AnyPlan, SpreadingPlan } from "../../plan/result.js";
import { passesOver } from "../../swath/passes.js";
import { convert, inUnit } from "../../units/convert.js";
import { ceilDecided, floorDecided, moreThan } from "../../units/decide.js";
import { dimensionOf } from "../../units/dimensions.js";
import { atMost } from "../../units/three-figures.js";
import type { Count, CountUnit, Length, TreatedArea } from "../../units/types.js";
import type { TextKey } from "../words/messages.js";
import type { Writer } from "../words/writer.js";

// What a person can see in a row that is sprayed in part, as spoken.
const PARTS: readonly (readonly [number, string])[] = [
  [0, ""],
  [1 / 4, "1/4"],
  [1 / 3, "1/3"],
  [1 / 2, "1/2"],
  [2 / 3, "2/3"],
  [3 / 4, "3/4"],
  [1, ""],
];

/** Whole rows and a part that one can see. */
function seen(rows: number): { readonly whole: number; readonly part: string; readonly off: number } {
  const whole = floorDecided(rows);
  const off = (part: number): number => Math.abs(rows - whole - part);
  const [part, text] = PARTS.reduce((best, one) => (off(one[0]) < off(best[0]) ? one : best));
  return { whole: whole + Math.floor(part), part: text, off: off(part) };
}

// A part that is further off leaves a load with nothing, or with too much: two of "1/2" and a third load.
const SEEN_OFF = 0.02;

type Rows = "row" | "bed" | "pass";

const COUNTED: Readonly<Record<Rows, TextKey>> = { row: "rows", bed: "beds", pass: "passes" };
const NUMBERED: Readonly<Record<Rows, TextKey>> = { row: "rowNumber", bed: "bedNumber", pass: "passNumber" };

function isRows(unit: EndUnit): unit is Rows {
  return unit in COUNTED;
}

function isCount(unit: EndUnit): boolean {
  return !isRows(unit) && unit !== "part" && dimensionOf(unit) === "count";
}

/** Past these nobody looks at a part of a row, or of a plant. */
export const MOST_PARTED = 20;

/** So many rows: `9 2/3 rows`. */
function rowsText(rows: number, unit: Rows, { messages: { text }, fill, count }: Writer): string {
  const { whole, part } = seen(rows > MOST_PARTED ? Math.round(Number(rows.toPrecision(3))) : rows);
  return fill(text[COUNTED[unit]], {
    n: partedText(whole, part, count),
    count: part === "" ? whole : whole + 1,
  });
}

/** `9 2/3` */
function partedText(whole: number, part: string, count: Writer["count"]): string {
  return [...(whole > 0 ? [count(whole)] : []), ...(part === "" ? [] : [part])].join(" ");
}

/** So many plants: whole ones to three figures, and of few of them with the part of one that one can see, `3 1/3 trees`. */
export function plantsText({ value, unit }: Count, { count, exact }: Writer): string | undefined {
  const isMany = moreThan(value, MOST_PARTED);
  const { whole, part } = isMany ? { whole: floorDecided(value), part: "" } : seen(value);
  if (part === "") return whole === 0 ? undefined : exact(atMost({ value: whole, unit }));
  return exact({ value: whole + 1, unit }).replace(count(whole + 1), partedText(whole, part, count));
}

/** What a load covers besides its area: `9 2/3 rows`, `2/3 of the plot`. Nothing where one can't see that. */
export function coveredText(end: LoadEnd | undefined, writer: Writer): string | undefined {
  const { fill, messages } = writer;
  if (end?.covers === undefined) return undefined;
  const { unit, covers, along } = end;
  if (isRows(unit)) {
    if (moreThan(1, covers)) return undefined;
    return sideText(rowsText(covers, unit, writer), along, writer);
  }
  if (isRowOfPlot(end)) return amountText(unit, covers, writer);
  const { part, off } = seen(covers);
  return unit === "part" && part !== "" && off < SEEN_OFF * covers
    ? fill(messages.text.partOfPlot, { part })
    : undefined;
}

/** Whether the last load ends with a pass that counts as a part of one because it is narrower. */
export function endsNarrow({ unit, done }: LoadEnd): boolean {
  return unit === "pass" && seen(done).part !== "";
}

/** Whether a length of row is counted, in a job on plots. */
function isRowOfPlot({ unit, plot }: LoadEnd): boolean {
  return plot !== undefined && !isRows(unit) && unit !== "part";
}

/** Where a load ends: `2/3 of the way down row 10`, `the end of Back lawn`. Nothing where no place can be named. */
export function placeText(end: LoadEnd, plan: AnyPlan, writer: Writer): string | undefined {
  const { messages, fill, count } = writer;
  const { text } = messages;
  const { unit, done } = end;
  if (isRowOfPlot(end)) return rowPlaceText(end, plan, writer);
  if (!isRows(unit)) return unit === "part" ? partText(done, end, plan, writer) : undefined;
  const { whole, part } = seen(done);
  if (whole === 0 && part === "") return undefined;
  // A last pass that is narrower than the others counts as a part of one, and is still sprayed all the way down.
  if (part !== "" && unit === "pass" && isPlotDone(end, plan)) return plotEndText(end, plan, writer);
  const alone = plotAlone(end, plan, writer);
  const numbered = fill(text[NUMBERED[unit]], { number: count(part === "" ? whole : whole + 1) });
  // Of one plot the card says it with the passes.
  const row = alone ?? (plotsOfJob(plan).length > 1 ? sideText(numbered, end.along, writer) : numbered);
  const sides = hasTwoSides(end, plan) ? fill(text.bothSides, { row }) : row;
  const down = part === "1/2" ? text.halfDownRow : text.downRow;
  const place = part === "" ? fill(text.endOf, { row: sides }) : fill(down, { part, row: sides });
  return alone === undefined ? inPlot(place, end, plan, writer) : place;
}

/** How much row is done in one of several plots: `450 ft of row in East`. */
function rowPlaceText(end: LoadEnd, plan: AnyPlan, writer: Writer): string | undefined {
  if (plotsOfJob(plan).length < 2) return undefined;
  if (isPlotDone(end, plan)) return plotEndText(end, plan, writer);
  return inPlot(amountText(end.unit, end.done, writer), end, plan, writer);
}

/** How much of one of several plots is done, where nothing in it can be counted: `80% of Corner`. */
function partText(part: number, end: LoadEnd, plan: AnyPlan, writer: Writer): string | undefined {
  const plots = plotsOfJob(plan);
  const percent = 5 * Math.round(20 * part);
  if (plots.length < 2 || percent === 0) return undefined;
  if (percent === 100) return plotEndText(end, plan, writer);
  const { messages, fill } = writer;
  return fill(messages.text.partOf, {
    percent: { value: percent, unit: "%" },
    plot: plotName(end.plot ?? 0, plots, writer),
  });
}

/** The plots of a job: none of one that has no ground. */
export function plotsOfJob({ input }: AnyPlan | SpreadingPlan): readonly Plot[] {
  return "plot" in input ? plotsOf(input.plot) : [];
}

/** The plot that a load ends in: of a job on plots, which has one all the time. */
function plotOf({ plot = 0 }: LoadEnd, plan: AnyPlan): Plot | undefined {
  return plotsOfJob(plan)[plot];
}

/** Of several plots the name of one that is a single row or bed, and needs no number besides. */
function plotAlone(end: LoadEnd, plan: AnyPlan, writer: Writer): string | undefined {
  const plots = plotsOfJob(plan);
  const plot = plotOf(end, plan);
  const isOne = plot !== undefined && (equalRows(plot) ?? rowLengthsOf(plot)?.length) === 1;
  return plots.length > 1 && isOne ? plotName(end.plot ?? 0, plots, writer) : undefined;
}

/** Whether half a row is half of one side and half of the other: nobody is half-way down where one side is done. */
function hasTwoSides(end: LoadEnd, plan: AnyPlan): boolean {
  const plot = plotOf(end, plan);
  return end.unit === "row" && plot?.kind === "tree-rows" && plot.sides === 2;
}

/** Whether all of the plot that a load ends in is done by then. */
function isPlotDone({ load, plot = 0 }: LoadEnd, plan: AnyPlan): boolean {
  if (!("area" in plan)) return false;
  const { unit } = plan.area.treated;
  const sum = (areas: readonly TreatedArea[]): number =>
    areas.reduce((total, area) => total + inUnit(area, unit), 0);
  const done = sum(plan.loads.slice(0, load).map(({ area }) => area));
  return !moreThan(sum(plan.area.plots.slice(0, plot + 1).map(({ treated }) => treated)), done);
}

// Less than this part of a pass nobody sees.
const NARROW_PASS = 0.02;

/**
 * What to mind in a plot's last pass: whoever sprays all of the width there sprays ground twice, or what isn't the plot, and runs
 * out. A sprayer with one nozzle can't spray less; with all passes as wide as each other it needn't.
 */
export function lastPassText({ input }: AnyPlan, writer: Writer): string | undefined {
  if (!("plot" in input)) return undefined;
  const plots = plotsOf(input.plot);
  const narrow = plots.flatMap((plot) => narrowPass(plot, input, writer) ?? []);
  return plots.length > 1 && narrow.length > 0 ? writer.messages.text.lastPasses : narrow[0];
}

function narrowPass(
  plot: Plot,
  { calibration, sprayer: { rowsPerPass = 1 } }: PlanInput,
  writer: Writer,
): string | undefined {
  const { messages, fill, three } = writer;
  const { text } = messages;
  const rows = equalRows(plot) ?? rowLengthsOf(plot)?.length;
  if (rows !== undefined) {
    const rest = rows % rowsPerPass;
    if (rest === 0 || rows < rowsPerPass) return undefined;
    return fill(text.lastPassRows, { rows: rowsText(rest, plot.kind === "beds" ? "bed" : "row", writer) });
  }
  const lay = layOfPasses(plot, calibration);
  if (lay === undefined) return undefined;
  const { along: length, across: width, swath } = lay;
  const { passes, lastOverlap } = passesOver({ length, width, swath }).along;
  const rest = { value: swath.value - inUnit(lastOverlap, swath.unit), unit: swath.unit };
  if (lastOverlap.value === 0 || !moreThan(rest.value, NARROW_PASS * swath.value)) return undefined;
  const even = { value: inUnit(width, swath.unit) / passes, unit: swath.unit };
  return fill(text.lastPass, { width: three(inInches(rest)), even: three(inInches(even)) });
}

/** A width of less than a foot in inches. */
function inInches(width: Length): Length {
  return width.unit === "ft" && moreThan(1, width.value) ? convert(width, "in") : width;
}

function plotEndText({ plot = 0 }: LoadEnd, plan: AnyPlan, writer: Writer): string {
  const { messages, fill } = writer;
  const { text } = messages;
  const plots = plotsOfJob(plan);
  return plots.length < 2 ? text.plotEnd : fill(text.endOf, { row: plotName(plot, plots, writer) });
}

/** What a plot is called: by its number where it has no name. */
export function plotName(
  at: number,
  plots: readonly { readonly name?: string | undefined }[],
  { messages, fill }: Writer,
): string {
  return plots[at]?.name ?? fill(messages.text.plotNumber, { number: at + 1 });
}

/** How much is done when a load ends: `9 2/3 rows`, `128 pots`; of several plots, in which one, and what can't be counted in percent. */
export function doneText(end: LoadEnd, plan: AnyPlan, writer: Writer): string | undefined {
  const { unit, done, along } = end;
  if (unit === "part") return partText(done, end, plan, writer);
  const amount = isCount(unit)
    ? plantsText({ value: done, unit: unit as CountUnit }, writer)
    : amountText(unit, done, writer);
  return inPlot(amount && sideText(amount, along, writer), end, plan, writer);
}

/** Passes with the side that they run along. */
function sideText(passes: string, along: Length | undefined, { messages, fill, three }: Writer): string {
  return along === undefined ? passes : fill(messages.text.passesAlong, { passes, side: three(along) });
}

/** What is done of the plot that a load ends in, with the plot where there are several. */
function inPlot(
  place: string | undefined,
  { plot = 0 }: LoadEnd,
  plan: AnyPlan,
  writer: Writer,
): string | undefined {
  const plots = plotsOfJob(plan);
  if (place === undefined || plots.length < 2) return place;
  const { messages, fill } = writer;
  return fill(messages.text.placeInPlot, { place, plot: plotName(plot, plots, writer) });
}

// From here on a card counts half rows.
const FEW_ROWS = 4;

/** When to stop and calibrate again, of the first load: up to half a row, a plant, or 5% of a plot, beyond what the output may be off. */
export function stopText(end: LoadEnd, plan: AnyPlan, writer: Writer): string | undefined {
  const { messages, fill } = writer;
  const { text } = messages;
  const { load, unit, least = 0, most = 0 } = end;
  const isPart = unit === "part";
  const amount = (value: number, whole: (value: number) => number): string | undefined =>
    isPart
      ? partText(whole(20 * value) / 20, end, plan, writer)
      : amountText(unit, outward(value, unit, whole), writer);
  const before = amount(least, floorDecided);
  const after = amount(most, ceilDecided);
  if (before === undefined) return undefined;
  const last = isPart ? (after ?? before) : (inPlot(after ?? before, end, plan, writer) as string);
  if (after === undefined) return fill(text.stopBefore, { load, least: last });
  return fill(text.stopOutside, { load, least: before, most: last });
}

function outward(amount: number, unit: EndUnit, whole: (value: number) => number): number {
  if (!isRows(unit) || amount > MOST_PARTED) return whole(amount);
  // Of few rows half a row is so much that nobody would ever stop.
  const steps = amount < FEW_ROWS ? 4 : 2;
  return whole(steps * amount) / steps;
}

function amountText(unit: EndUnit, amount: number, writer: Writer): string | undefined {
  if (unit === "part" || amount === 0) return undefined;
  if (isRows(unit)) return rowsText(amount, unit, writer);
  const { messages, fill, three } = writer;
  const size = three({ value: amount, unit });
  return isCount(unit) ? size : fill(messages.text.lengthOfRow, { length: size });
}
