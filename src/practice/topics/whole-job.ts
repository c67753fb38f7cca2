import type { PlanInput } from "../../plan/input.js";
import { planApplication } from "../../plan/plan.js";
import { planWorking } from "../../plan/plan-steps.js";
import type { Plan } from "../../plan/result.js";
import { convert } from "../../units/convert.js";
import type { GroundArea, Quantity, UnitSystem } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { drawStrip } from "./calibration.js";
import type { Draw, DrawnProblem } from "./drawn-problem.js";
import { drawRows } from "./fields.js";
import { USUAL_SIZES } from "./usual-sizes.js";

/** Topic `whole-job`: from the rows to the product in the last load. */
export function drawWholeJob(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const usual = USUAL_SIZES[units];
  const rows = drawRows(draw, usual);
  if (rows === undefined) return undefined;
  const strip = drawStrip(draw, usual, rows.bandWidth);
  const fill = { value: draw.pick(usual.tanks), unit: usual.volume };
  const rate = { value: draw.step(...usual.products), unit: usual.product };
  const input: PlanInput = {
    plot: { kind: "row-bands", ...rows },
    calibration: { kind: "strip", ...strip },
    sprayer: { tank: fill },
    products: [{ name: "1", form: "liquid", rate }],
    // The problem ends before anything is measured, and any tools will do.
    tools: "syringes",
  };
  const plan = planApplication(input);
  if (plan.loads.length < 2 || plan.loads.length > 6) return undefined;
  // A last load that a plan would warn of makes a poor exercise.
  if (plan.warnings.some(({ code }) => code === "last-load-small")) return undefined;
  const ground = { ...(plan.area.ground as GroundArea), of: "treated" } as const;
  const onGround = planApplication({ ...input, plot: { kind: "treated-area", treated: ground } });
  const dose = (one: Plan, at: number): Quantity =>
    convert(one.loads.at(at)?.products[0]?.amount as Quantity, usual.small);
  const lines = planWorking(plan).flatMap((step) => (step.step === "dose" ? [] : step.lines));
  // The working's own last result: the plan's amounts are rounded so as to add up.
  const share = lines.at(-1)?.result as Quantity;
  return {
    kind: "whole-job",
    given: { ...rows, distance: strip.distance, used: strip.used, fill, rate },
    answer: convert(share, usual.small),
    working: [...lines, ...conversionLines("tank-mix.amountInLoad", share, usual.small)],
    slips: [
      { mistake: "full-tank-dose", answer: dose(plan, 0) },
      { mistake: "ground-for-treated", answer: dose(onGround, -1) },
      { mistake: "unscaled-product", answer: convert(rate, `${usual.small}/${usual.land}`) },
    ].map(({ mistake, answer: { value } }) => ({
      mistake,
      answer: { value, unit: usual.small },
    })) as DrawnProblem["slips"],
  };
}
