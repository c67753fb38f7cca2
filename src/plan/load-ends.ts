import { measurementOf } from "../output-rate/calibration.js";
import { RUNS_LIMIT } from "../output-rate/strip-runs.js";
import { checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { unitsLike } from "../units/systems.js";
import type { AreaUnit, CountUnit, Length, LengthUnit, TreatedArea } from "../units/types.js";
import { widthOf } from "./check-area.js";
import type { PlanInput } from "./input.js";
import { equalRows, type Plot, plotsOf, rowLengthsOf } from "./plot.js";
import type { PlotAreas } from "./plot-areas.js";
import { ANY_PLAN } from "./read-plan.js";
import type { AnyPlan, BatchPlan, CoversBatch } from "./result.js";

/**
 * What the end of a load is counted in: rows, beds, passes, or parts of the plot (1 is all of it). In a job by count it is the plants,
 * pots, trees or spots. In one by row, and where the calibration is a test row of trees, it is the unit of a length of row.
 */
export type EndUnit = "row" | "bed" | "pass" | "part" | CountUnit | LengthUnit;

/** Where a load should run out, if the calibration holds. */
export interface LoadEnd {
  /** The load's number. */
  readonly load: number;
  /** The plot that it ends in, by its place in the list from 0. Of a job on plots. */
  readonly plot?: number | undefined;
  /** What the figures count. */
  readonly unit: EndUnit;
  /** Of passes over a rectangle: the side that they run along, its `length`. */
  readonly along?: Length | undefined;
  /** How many of them the load covers. Of a job on plots only where it begins and ends in one plot. */
  readonly covers?: number | undefined;
  /** How many of them are done in that plot when the load runs out. */
  readonly done: number;
  /** Of the first load: if it runs out before so many are done, more is put out than was calibrated. Calibrate again. */
  readonly least?: number | undefined;
  /** Of the first load: if it runs out after so many are done, less is put out than was calibrated. Calibrate again. */
  readonly most?: number | undefined;
}

/**
 * Returns where each load should run out on the job, to check the calibration while spraying. Rows are counted where the plot has them.
 * Passes are, where rows are sprayed several at a time, and on a rectangle: along its `length`. If the calibration is a test row of
 * trees, it is the length of row. Anywhere else it is the part of the plot.
 *
 * The first load fills hose and boom, and extra mix is what is left at the end: neither is sprayed. `least` and `most` are
 * where the first load runs out if the sprayer puts out more, or less, than was calibrated. The limit is that for the runs of a
 * calibration: 5%, common practice, no source, or the calibration's own.
 *
 * Formula: done = mix sprayed / output rate; least = done / (1 + limit), most = done / (1 − limit).
 *
 * @param plan - a finished plan
 * @returns one entry a load; none for a job by volume, whose place isn't known
 * @throws SprayMathError `not-a-quantity` for what is no plan and what `readPlan` throws for one that was changed
 *
 * @example
 * ```ts
 * import { loadEnds, planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "row-bands", rows: 10, rowLength: qty(100, "m"), bandWidth: qty(1, "m") },
 *   calibration: { kind: "strip", used: qty(3, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * const [first] = loadEnds(plan);
 * console.log(first?.done, first?.unit); // 5 row
 * console.log(first?.least?.toFixed(2), first?.most?.toFixed(2)); // 4.76 5.26
 * ```
 */
export function loadEnds(plan: AnyPlan): LoadEnd[] {
  return endsOf(checked(plan, ANY_PLAN, "plan"));
}

/** Where each load of a plan runs out. Trusts its input. */
export function endsOf(plan: AnyPlan): LoadEnd[] {
  const stretches = stretchesOf(plan);
  if (stretches.length === 0) return [];
  const whole = stretches.reduce((sum, { size }) => sum + size, 0);
  let [at, from, before] = [0, 0, 0];
  return plan.loads.map((load, i): LoadEnd => {
    const done = Math.min(before + amountOf(load, plan), whole);
    while (at < stretches.length - 1 && moreThan(done, from + sizeAt(stretches, at))) {
      from += sizeAt(stretches, at);
      at++;
    }
    const { size, unit, along, count } = stretches[at] as Stretch;
    const counted = (amount: number): number => count(Math.min(Math.max(amount - from, 0), size));
    const isWithin = !moreThan(from, before);
    const end: LoadEnd = {
      load: load.number,
      ...("area" in plan && { plot: at }),
      unit,
      ...(along && { along }),
      ...(isWithin && { covers: counted(done) - counted(before) }),
      done: counted(done),
      ...(i === 0 && rangeOf(plan, whole, { done, from, to: from + size }, counted)),
    };
    before = done;
    return end;
  });
}

/** A plot, or all of a job that has none: its size, and what it is counted in. */
interface Stretch {
  readonly size: number;
  readonly unit: EndUnit;
  readonly along?: Length | undefined;
  /** How many are done when so much of it is. */
  readonly count: (amount: number) => number;
}

function sizeAt(stretches: readonly Stretch[], at: number): number {
  return (stretches[at] as Stretch).size;
}

/** What a load covers, in the unit of the stretches. */
function amountOf(load: AnyPlan["loads"][number], plan: AnyPlan): number {
  if ("area" in plan) return inUnit(load.area as TreatedArea, plan.area.treated.unit);
  const { count, rowLength } = load as CoversBatch;
  return (count ?? (rowLength as Length)).value;
}

/** Between what the first load may end, within the plot that it ends in. */
function rangeOf(
  { input, carrier, loads }: AnyPlan,
  whole: number,
  { done, from, to }: { readonly done: number; readonly from: number; readonly to: number },
  counted: (amount: number) => number,
): Pick<LoadEnd, "least" | "most"> {
  const { unit } = carrier.sprayed;
  const filled = inUnit((loads[0] as AnyPlan["loads"][number]).carrier, unit);
  // With extra mix in it, the load is enough for more than it covers.
  const reach = (whole * Math.max(0, filled - inUnit(carrier.lines, unit))) / carrier.sprayed.value;
  const off = toleranceOf(input);
  const [least, most] = [reach / (1 + off), reach / (1 - off)];
  // The last load stops at the end of the job, whatever is left in it. Any other is sprayed until the tank is empty, which may be in
  // the next plot: there it says enough that this one isn't done.
  const isLast = !moreThan(whole, done);
  const early = isLast ? least : Math.min(least, to);
  return {
    ...((!isLast || moreThan(done, early)) && early > from && { least: counted(early) }),
    ...((!isLast || !moreThan(reach, done)) && moreThan(to, most) && { most: counted(most) }),
  };
}

/** How far the output may be off before a person is to calibrate again, as a part of it. */
function toleranceOf(input: AnyPlan["input"]): number {
  const measurement = "calibration" in input ? measurementOf(input.calibration) : undefined;
  const { limit = RUNS_LIMIT } = measurement?.kind === "strip-runs" ? measurement : {};
  // Past this a limit on runs says nothing of where a load ends.
  return Math.min(inUnit(limit, "1"), 0.5);
}

function stretchesOf(plan: AnyPlan): readonly Stretch[] {
  if (!("area" in plan)) return batchStretches(plan);
  const { input, area } = plan;
  const { unit } = area.treated;
  return plotsOf(input.plot).map((plot, i) => {
    const size = inUnit((area.plots[i] as PlotAreas).treated, unit);
    return { size, ...countedIn(plot, size, input, unit) };
  });
}

function batchStretches({ input: { size } }: BatchPlan): readonly Stretch[] {
  if (size.kind === "volume") return [];
  const { value, unit } = size.kind === "count" ? size.count : size.length;
  return [{ size: value, unit, count: (amount) => amount }];
}

function countedIn(
  plot: Plot,
  size: number,
  { sprayer: { rowsPerPass = 1 }, calibration }: PlanInput,
  unit: AreaUnit,
): Omit<Stretch, "size"> {
  const rows = equalRows(plot);
  if (rows !== undefined && rowsPerPass > 1)
    return { unit: "pass", count: (amount) => (amount / size) * (rows / rowsPerPass) };
  if (rows !== undefined) return { unit: rowOf(plot), count: (amount) => (amount / size) * rows };
  const lengths = rowLengthsOf(plot);
  if (lengths !== undefined && rowsPerPass === 1)
    return { unit: rowOf(plot), count: (amount) => rowsDone(lengths, amount / size) };
  const { length, area } = unitsLike(unit);
  const measurement = measurementOf(calibration);
  // The spacing that the output rate was worked out with: all of the ground is rows so far apart.
  if (measurement.kind === "tree-row") {
    const perLength = inUnit({ value: inUnit(measurement.rowSpacing, length), unit: area }, unit);
    return { unit: length, count: (amount) => amount / perLength };
  }
  const over = layOfPasses(plot, calibration);
  if (over === undefined) return { unit: "part", count: (amount) => amount / size };
  const { along, swath } = over;
  const pass = { value: inUnit(swath, length) * inUnit(along, length), unit: area };
  const each = inUnit(pass, unit);
  return { unit: "pass", along, count: (amount) => amount / each };
}

/** How passes lie over a rectangle that is sprayed all over: along its length. Nothing of any other plot. */
export function layOfPasses(
  plot: Plot,
  calibration: PlanInput["calibration"],
): { readonly along: Length; readonly across: Length; readonly swath: Length } | undefined {
  if (plot.kind !== "rectangle") return undefined;
  const { width, length, fraction = 1 } = plot;
  const swath = widthOf(measurementOf(calibration));
  if (fraction < 1 || swath === undefined) return undefined;
  return { along: length, across: width, swath };
}

function rowOf({ kind }: Plot): "bed" | "row" {
  return kind === "beds" ? "bed" : "row";
}

/** How many rows are done when so large a part of them all is. */
function rowsDone(lengths: readonly Length[], part: number): number {
  const { unit } = lengths[0] as Length;
  const rows = lengths.map((length) => inUnit(length, unit));
  let left = part * rows.reduce((sum, row) => sum + row, 0);
  return rows.reduce((done, row) => {
    const share = Math.min(1, Math.max(0, left / row));
    left -= row;
    return done + share;
  }, 0);
}
