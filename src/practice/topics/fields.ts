import { rowBandsArea, rowBandsAreaWorking } from "../../area/row-bands.js";
import {
  rectangleArea,
  rectangleAreaWorking,
  trapezoidArea,
  trapezoidAreaWorking,
  triangleArea,
  triangleAreaWorking,
} from "../../area/shapes.js";
import { convert } from "../../units/convert.js";
import { formulaLines } from "../../units/formula-lines.js";
import { scale } from "../../units/quantity.js";
import type { Length, Quantity, TreatedArea, UnitSystem, VolumeRate } from "../../units/types.js";
import { conversionLines, type WorkingLine } from "../../units/working-line.js";
import type { Draw, DrawnProblem, MistakeCode, ProblemKind } from "./drawn-problem.js";
import { USUAL_SIZES, type UsualSizes } from "./usual-sizes.js";

const SHAPES = ["area-rectangle", "area-triangle", "area-trapezoid"] as const;

/** Topic `area`: a plot's area in the system's unit of land. */
export function drawArea(draw: Draw, units: UnitSystem): DrawnProblem {
  const usual = USUAL_SIZES[units];
  const side = (): Length => ({ value: draw.step(...usual.sides), unit: usual.length });
  const [a, b, c] = [side(), side(), side()];
  const kind = draw.pick(SHAPES);
  if (kind === "area-rectangle") {
    const given = { length: longer(a, b), width: shorter(a, b) };
    return areaProblem(usual, kind, given, rectangleArea(given), rectangleAreaWorking(given), {
      "sides-added": a.value + b.value,
    });
  }
  if (kind === "area-triangle") {
    const given = { base: a, height: b };
    return areaProblem(usual, kind, given, triangleArea(given), triangleAreaWorking(given), {
      "not-halved": a.value * b.value,
    });
  }
  const given = { base: longer(a, b), top: shorter(a, b), height: c };
  return areaProblem(usual, kind, given, trapezoidArea(given), trapezoidAreaWorking(given), {
    "not-halved": (a.value + b.value) * c.value,
    "long-side-only": given.base.value * c.value,
  });
}

function longer(a: Length, b: Length): Length {
  return a.value < b.value ? b : a;
}

function shorter(a: Length, b: Length): Length {
  return a.value < b.value ? a : b;
}

function areaProblem(
  { area, land, wrongLand }: UsualSizes,
  kind: ProblemKind,
  given: Readonly<Record<string, Quantity>>,
  found: Quantity,
  working: readonly WorkingLine[],
  wrong: Partial<Record<MistakeCode, number>>,
): DrawnProblem {
  const id = working.at(-1)?.id ?? "";
  const slips = Object.entries(wrong).map(([mistake, value]) => ({
    mistake: mistake as MistakeCode,
    answer: convert({ value, unit: area }, land),
  }));
  const { value } = convert({ value: found.value, unit: area }, land);
  return {
    kind,
    given,
    answer: { value, unit: land },
    working: [...working, ...conversionLines(id, { value: found.value, unit: area }, land)],
    slips: [...slips, { mistake: "wrong-land-unit", answer: { value: found.value / wrongLand, unit: land } }],
  };
}

/** Rows with bands, as the topics `band` and `whole-job` give them. */
export interface DrawnRows {
  readonly rows: number;
  readonly rowLength: Length;
  readonly bandWidth: Length;
  readonly rowSpacing: Length;
}

/** Draws rows with bands; none where the bands would leave little ground between them. */
export function drawRows(draw: Draw, usual: UsualSizes): DrawnRows | undefined {
  const rows = draw.step(8, 30, 2);
  const rowLength = { value: draw.step(...usual.rows), unit: usual.length };
  const bandWidth = { value: draw.step(...usual.bands), unit: usual.width };
  const rowSpacing = { value: draw.pick(usual.spacings), unit: usual.length };
  const fits = convert(bandWidth, usual.length).value <= 0.7 * rowSpacing.value;
  return fits ? { rows, rowLength, bandWidth, rowSpacing } : undefined;
}

/** Topic `band`: the product that bands along rows take. */
export function drawBand(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const usual = USUAL_SIZES[units];
  const given = drawRows(draw, usual);
  if (given === undefined) return undefined;
  const rate = { value: draw.step(...usual.products), unit: usual.product };
  const { treated, ground } = rowBandsArea(given);
  const lines = productLines(rate, treated, usual);
  const answer = lines.at(-1)?.result as Quantity;
  const perSmall = convert({ value: 1, unit: usual.length }, usual.width).value;
  return {
    kind: "band",
    given: { ...given, rate },
    answer,
    working: [...rowBandsAreaWorking(given), ...lines],
    slips: [
      { mistake: "ground-for-treated", answer: scale(answer, (ground as Quantity).value / treated.value) },
      { mistake: "one-row-too-few", answer: scale(answer, (given.rows - 1) / given.rows) },
      { mistake: "width-in-small-unit", answer: scale(answer, perSmall) },
    ],
  };
}

function productLines(rate: VolumeRate, area: TreatedArea, { small, land }: UsualSizes): WorkingLine[] {
  const unit = `${small}/${land}` as const;
  const result = convert(rate, unit).value * convert(area, land).value;
  return formulaLines({
    id: "practice.product",
    formula: "rate * area",
    terms: { rate: [rate, unit], area: [area, land] },
    result: { value: result, unit: small },
    source: "definition of a rate per area",
  });
}
