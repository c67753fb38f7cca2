import type { PlanStep } from "../../plan/plan-steps.js";
import { usesGround } from "../../plan/rates-fit.js";
import { isRefused } from "../../plan/refused.js";
import type { AnyPlan } from "../../plan/result.js";
import type { WorkingLine } from "../../units/working-line.js";
import { sheetLines, type WrittenLine } from "../lines/written-line.js";
import type { Messages } from "../words/messages.js";
import type { Writer } from "../words/writer.js";
import { isInBags } from "./amounts.js";
import { workingInUnits } from "./plan-in-units.js";

/** The working of one step. */
export interface WrittenStep {
  /** Which step. */
  readonly number: string;
  /** Its heading. */
  readonly title: string;
  /** Its lines. */
  readonly lines: readonly WrittenLine[];
}

/** A step of a sheet's working. */
interface SheetStep extends Omit<PlanStep, "step"> {
  readonly step: keyof Messages["steps"];
}

// The steps that come to a recipe.
const MIXING: readonly PlanStep["step"][] = ["carrier", "loads", "product", "dose"];

/**
 * The working of a plan as a sheet has it: what the job uses, and each step once. How far each dose is off is the last part, where that
 * is asked for. A refused job's has nothing that comes to a recipe.
 */
export function writtenSteps(
  shown: AnyPlan,
  made: AnyPlan,
  withErrors: boolean,
  writer: Writer,
): WrittenStep[] {
  const refused = isRefused(shown);
  const steps = workingInUnits(shown, made).filter(
    (one) => !(refused && MIXING.includes(one.step)) && !(one.step === "dose" && isNotPoured(one, shown)),
  );
  const parts: readonly SheetStep[] = [
    ...steps.map((step) => ({ ...step, lines: step.lines.filter((line) => isUsed(line, step, shown)) })),
    ...(withErrors ? steps.filter(({ step }) => step === "dose").map(errorsOf) : []),
  ];
  const lines = sheetLines(
    parts.map((part) => part.lines),
    writer,
  );
  // A mix that is what the plot takes has no working.
  return parts
    .map((part, at) => ({ ...part, lines: lines[at] as WrittenStep["lines"] }))
    .filter((part) => part.lines.length > 0)
    .map(({ step, product = "", load = 0, lines }, at) => ({
      number: writer.count(at + 1),
      title: writer.fill(writer.messages.steps[step], { product, load }),
      lines,
    }));
}

/** Whether nothing is measured with the tools for a dose: it is in bags that dissolve, or the nearest that they come is not to be used. */
function isNotPoured({ product = "", load = 0 }: PlanStep, plan: AnyPlan): boolean {
  const dose = plan.loads[load - 1]?.products.find(({ name }) => name === product);
  return isInBags(product, plan) || dose?.measured.ok === false;
}

const ERRORS = /^household\.(error|errorPercent|rateError)\b/;
const GROUND = /^area\.(\w+\.)?(ground|fraction|treatedFraction)$/;

function isUsed(line: WorkingLine, { step, lines }: PlanStep, plan: AnyPlan): boolean {
  const { id, about = id } = line;
  if (step === "dose") return !ERRORS.test(about);
  // One load has all of the product.
  if (id === "tank-mix.amountInLoad") return plan.loads.length > 1;
  if (step !== "area" || !("area" in plan) || usesGround(plan.input.products)) return true;
  if (GROUND.test(id)) return false;
  if (line.about === undefined) return true;
  // A change of unit for the ground's sake goes with it, unless another line has the same term.
  const dot = about.lastIndexOf(".");
  const symbol = about.slice(dot + 1);
  return (
    !GROUND.test(about.slice(0, dot)) ||
    lines.some((other) => !GROUND.test(other.id) && other.about === undefined && symbol in other.terms)
  );
}

/** How far a dose is off, to the two figures that say something. */
function errorsOf({ product, load, lines }: PlanStep): SheetStep {
  return {
    step: "error",
    product,
    load,
    lines: lines
      .filter(({ id, about = id }) => ERRORS.test(about))
      .map((line) => (line.about === undefined ? { ...line, result: inTwoFigures(line.result) } : line)),
  };
}

function inTwoFigures(result: WorkingLine["result"]): WorkingLine["result"] {
  const two = (value: number): number => Number(value.toPrecision(2));
  return typeof result === "number" ? two(result) : { ...result, value: two(result.value) };
}
