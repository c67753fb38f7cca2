import { rateOfStrip } from "../../output-rate/strip.js";
import type { PlanInput } from "../../plan/input.js";
import { planApplication } from "../../plan/plan.js";
import { planWorking } from "../../plan/plan-steps.js";
import type { Plan } from "../../plan/result.js";
import { inUnit } from "../../units/convert.js";
import { ceilDecided } from "../../units/decide.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Length, Quantity, Volume, VolumeRate } from "../../units/types.js";
import { conversionLines, type WorkingLine } from "../../units/working-line.js";
import { drawnRows } from "./drawing.js";
import { labelRateMistakes } from "./routes.js";
import { leavesGround, linesOfSprayed, ROWS, type Rows, rowFigures, rowMistakes, sprayedIn } from "./rows.js";
import { each, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface WholeJob extends Rows {
  /** How long the test strip is. More than 0. */
  readonly distance: Length;
  /** What the sprayer used on it, in the same band. More than 0. */
  readonly used: Volume;
  /** What the tank is filled to. More than 0. */
  readonly fill: Volume;
  /** The label rate, per treated area. More than 0. */
  readonly rate: VolumeRate;
}

/** The job in the units of a system: what a full tank covers, the area of all loads, and that of the last one. */
function loadsOf(
  given: WholeJob,
  sizes: Sizes,
): { count: number; carrierRate: number; perTank: number; area: number; last: number } {
  const carrierRate = inUnit(rateOfStrip({ ...given, swath: given.bandWidth }), sizes.rate);
  const perTank = inUnit(given.fill, sizes.volume) / carrierRate;
  const area = sprayedIn(sizes, given);
  const count = ceilDecided(area / perTank);
  return { count, carrierRate, perTank, area, last: area - (count - 1) * perTank };
}

const SHARE = "tank-mix.amountInLoad";

/** What is left for the last load when the full ones are taken off. */
function lastLoadLine({ carrier: { total }, loads }: Plan, fill: Volume): WorkingLine {
  const { value, unit } = (loads.at(-1) as Plan["loads"][number]).carrier;
  return {
    id: "practice.lastLoad",
    formula: "total - (loads - 1) * fill",
    terms: { total, loads: loads.length, fill: { value: inUnit(fill, total.unit), unit: total.unit } },
    result: { value, unit },
    source: "common practice, no source",
  };
}

/** From the rows to the product in the last load. */
export const WHOLE_JOB: AnyTopic = /* @__PURE__ */ topic<WholeJob>({
  difficulty: 3,
  isDose: true,
  drawing: drawnRows,
  notNeeded: ["rowSpacing"],
  fields: object<WholeJob>({
    ...ROWS,
    distance: quantity("How long the test strip is. More than 0.", "length"),
    used: quantity("What the sprayer used on it, in the same band. More than 0.", "volume"),
    fill: quantity("What the tank is filled to. More than 0.", "volume"),
    rate: quantity("The label rate, per treated area. More than 0.", "volumeRate"),
  }),
  figures: (sizes) => ({
    ...rowFigures(sizes),
    distance: each(sizes.length, sizes.strips),
    used: each(sizes.smallVolume, sizes.used),
    fill: each(sizes.volume, sizes.tanks),
    rate: each(sizes.product, sizes.products),
  }),
  fits: (given, sizes) => {
    if (!leavesGround(given)) return false;
    const { count, perTank, last } = loadsOf(given, sizes);
    const rate = inUnit(rateOfStrip({ ...given, swath: given.bandWidth }), sizes.rate);
    const isUsual = rate >= (sizes.rates[0] as number) && rate <= (sizes.rates.at(-1) as number);
    // A last load that a plan would question makes a poor exercise.
    return isUsual && count >= 2 && count <= 6 && last > 0.3 * perTank;
  },
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, sizes) =>
    loadsOf(given, sizes).last * inUnit(given.rate, `${sizes.smallVolume}/${sizes.landArea}`),
  working: (given, sizes) => {
    const { rows, rowLength, bandWidth, rowSpacing, distance, used, fill, rate } = given;
    const input: PlanInput = {
      plot: { kind: "row-bands", rows, rowLength, bandWidth, rowSpacing },
      calibration: { kind: "strip", used, distance, swath: bandWidth },
      sprayer: { tank: fill },
      products: [{ name: "1", form: "liquid", rate }],
      // The problem ends before anything is measured, and any tools will do.
      tools: "syringes",
    };
    const plan = planApplication(input);
    const lines = planWorking(plan).flatMap(({ step, lines: all }) => {
      if (step === "dose") return [];
      // The spacing says nothing of the sprayed area, and a full tank is not asked for.
      if (step === "area") return linesOfSprayed(given);
      if (step === "loads") return [...all, lastLoadLine(plan, fill)];
      return all.filter(({ id }, at) => id !== SHARE || at === all.length - 1);
    });
    const share = lines.at(-1)?.result as Quantity;
    return [...lines, ...conversionLines(SHARE, share, sizes.smallVolume)];
  },
  mistakes: (given, sizes) => {
    const { count, carrierRate, perTank, area, last } = loadsOf(given, sizes);
    const rows = rowMistakes(given, sizes);
    return {
      "full-tank-dose": { times: perTank / last },
      "all-in-last-load": { times: area / last },
      "equal-loads": { times: area / count / last },
      "unscaled-last-load": { times: 1 / last },
      "mix-for-product": [{ instead: last * carrierRate }, { instead: last * carrierRate * sizes.perVolume }],
      "ground-for-treated-loads": {
        times: loadsOf({ ...given, bandWidth: given.rowSpacing, used: usedOn(given) }, sizes).last / last,
      },
      "one-row-too-few": rows["one-row-too-few"],
      ...labelRateMistakes(sizes),
    };
  },
});

/** What the strip would use at the same rate if the whole spacing were sprayed: the rate stays, the area does not. */
function usedOn({ used, bandWidth, rowSpacing }: WholeJob): WholeJob["used"] {
  return { value: (used.value * rowSpacing.value) / inUnit(bandWidth, rowSpacing.unit), unit: used.unit };
}
