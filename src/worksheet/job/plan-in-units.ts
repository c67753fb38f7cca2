import { measurementOf, rateOf, rateOfWorking } from "../../output-rate/calibration.js";
import type { BatchInput, JobInput } from "../../plan/batch-input.js";
import type { PlanInput } from "../../plan/input.js";
import { planApplication } from "../../plan/plan.js";
import { type PlanStep, stepsOfPlan } from "../../plan/plan-steps.js";
import type { AnyPlan, CoversArea, Plan } from "../../plan/result.js";
import { thresholdsOf } from "../../plan/thresholds.js";
import { convert, convertValue, inUnit } from "../../units/convert.js";
import { isUnit } from "../../units/resolve.js";
import { unitsLike } from "../../units/systems.js";
import type { LengthUnit, Quantity, Unit, UnitSystem, Volume, VolumeRate } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { counterpart } from "./counterparts.js";

/**
 * The same job, planned again from an input whose every quantity is in the system's units, so that each line of its
 * working is true by itself. The tools and the sprayer stay as they are: they are things, with their own marks.
 */
export function planInUnits<P extends AnyPlan>(plan: P, units: UnitSystem | undefined): P {
  return units === undefined ? plan : (planApplication(inputInUnits(asLoaded(plan), units)) as P);
}

/** What loads cover, and what is left over could, in the units of the plot: a plan has it in those of the mix. */
export function inPlotUnits<P extends AnyPlan>(plan: P): P {
  if (!("area" in plan)) return plan;
  const unit = unitsLike(plan.area.treated.unit).area;
  const inPlot = <C extends Partial<CoversArea>>(covers: C): C =>
    covers.area ? { ...covers, area: { ...covers.area, value: inUnit(covers.area, unit), unit } } : covers;
  return { ...plan, loads: plan.loads.map(inPlot), leftover: inPlot(plan.leftover) };
}

/** The job with the loads it has: searched again in other units, the easiest could be others than the plan's. */
function asLoaded({ input, loads }: AnyPlan): JobInput {
  if (input.split !== "easiest") return input;
  // The easiest loads always end on marks.
  return { ...input, split: { fills: loads.map(({ mark }) => mark as Volume) } };
}

function inputInUnits(job: JobInput, units: UnitSystem): JobInput {
  // Fills are marks of the tank too.
  const { tools, sprayer, split } = job;
  const kept = { tools, sprayer, ...(split !== undefined && { split }) };
  if ("size" in job)
    return { ...(inUnits(job, units) as typeof job), ...(kept as Pick<BatchInput, "split">) };
  const { calibration, ...others } = { ...job, thresholds: thresholdsOf(job.thresholds) };
  return {
    ...(inUnits(others, units) as typeof others),
    calibration: inUnits(withKnownRate(calibration, units), units) as PlanInput["calibration"],
    ...(kept as Pick<PlanInput, "split">),
  };
}

/** The working of a plan as {@link planInUnits} gave it. */
export function workingInUnits(shown: AnyPlan, plan: AnyPlan): PlanStep[] {
  const steps = stepsOfPlan(shown);
  if (shown === plan || !("area" in plan) || !isDirect(plan.input.calibration)) return steps;
  const { calibration } = plan.input;
  const lines = [
    ...rateOfWorking(calibration),
    ...conversionLines("output-rate.direct-strip-rate", rateOf(calibration), (shown as Plan).rate.unit),
  ];
  return steps.map((step) => (step.step === "rate" ? { ...step, lines } : step));
}

function isDirect(calibration: PlanInput["calibration"]): boolean {
  return measurementOf(calibration).kind === "direct-strip";
}

/**
 * A strip laid out so that one unit caught reads as one of rate is a method of those two units, and has no form in
 * others: its result has.
 */
function withKnownRate(calibration: PlanInput["calibration"], units: UnitSystem): PlanInput["calibration"] {
  if (!isDirect(calibration)) return calibration;
  const rate = inUnits(rateOf(calibration), units) as VolumeRate;
  const known = { kind: "known", rate } as const;
  return calibration.kind === "record"
    ? { ...calibration, record: { ...calibration.record, measurement: known } }
    : known;
}

/** Plain data with every quantity in it converted to the system's units. */
export function inUnits(value: unknown, units: UnitSystem): unknown {
  if (Array.isArray(value)) return value.map((one) => inUnits(one, units));
  if (typeof value !== "object" || value === null) return value;
  const data = value as Readonly<Record<string, unknown>>;
  const fields = Object.fromEntries(Object.entries(data).map(([name, one]) => [name, inUnits(one, units)]));
  return { ...fields, ...quantityInUnits(data, units), ...pairsInUnits(data, units) };
}

function quantityInUnits(data: Readonly<Record<string, unknown>>, units: UnitSystem): Partial<Quantity> {
  const { value, unit } = data;
  if (typeof value !== "number" || !isUnit(unit)) return {};
  const to = counterpart(unit, units);
  return { value: convert({ value, unit }, to as never).value, unit: to };
}

// Corners and stations are pairs of bare numbers beside one unit of length.
function pairsInUnits(data: Readonly<Record<string, unknown>>, units: UnitSystem): Record<string, unknown> {
  const { unit, value } = data;
  if (value !== undefined || !isUnit(unit)) return {};
  const to = counterpart(unit, units);
  const converted = (pairs: unknown): unknown =>
    (pairs as readonly (readonly number[])[]).map((pair) => pair.map((one) => convertValue(one, unit, to)));
  const lists = ["corners", "stations"].filter((name) => Array.isArray(data[name]));
  return {
    ...Object.fromEntries(lists.map((name) => [name, converted(data[name])])),
    unit: to as LengthUnit & Unit,
  };
}
