import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { formulaLines } from "../../units/formula-lines.js";
import { quantity } from "../../units/quantity-field.js";
import type { Quantity, Unit, VolumeRate } from "../../units/types.js";
import type { WorkingLine } from "../../units/working-line.js";
import { labelRateMistakes, landMistakes, roundedEarly } from "./routes.js";
import { leavesGround, linesOfSprayed, ROWS, type Rows, rowFigures, rowMistakes, sprayedIn } from "./rows.js";
import { each, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Band extends Rows {
  /** The label rate, per treated area. More than 0. */
  readonly rate: VolumeRate;
}

/** Product for an area, in `unit`. */
export function productFor(rate: Quantity, area: number, unit: Unit, { landArea }: Sizes): number {
  return inUnit(rate, `${unit}/${landArea}` as Unit) * area;
}

/** The working of {@link productFor}. */
export function linesOfProduct(
  rate: Quantity,
  area: Quantity,
  unit: Unit,
  { landArea }: Sizes,
): WorkingLine[] {
  const per = `${unit}/${landArea}` as Unit;
  return formulaLines({
    id: "practice.product",
    formula: "rate * area",
    terms: { rate: [rate, per], area: [area, landArea] },
    result: { value: inUnit(rate, per) * inUnit(area, landArea), unit },
    source: "definition of a rate per area",
  });
}

/** The product that bands along rows take. */
export const BAND: AnyTopic = /* @__PURE__ */ topic<Band>({
  difficulty: 3,
  isDose: true,
  fields: object<Band>({
    ...ROWS,
    rate: quantity("The label rate, per treated area. More than 0.", "volumeRate"),
  }),
  figures: (sizes) => ({ ...rowFigures(sizes), rate: each(sizes.product, sizes.products) }),
  fits: leavesGround,
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, sizes) => productFor(given.rate, sprayedIn(sizes, given), sizes.smallVolume, sizes),
  working: (given, sizes) => [
    ...linesOfSprayed(given),
    ...linesOfProduct(
      given.rate,
      { value: sprayedIn(sizes, given), unit: sizes.landArea },
      sizes.smallVolume,
      sizes,
    ),
  ],
  mistakes: (given, sizes) => {
    const area = sprayedIn(sizes, given);
    return {
      ...rowMistakes(given, sizes),
      "unscaled-product": { times: 1 / area },
      ...labelRateMistakes(sizes),
      ...landMistakes(sizes),
      "divided-by-area": { times: 1 / area ** 2 },
      "rounded-early": roundedEarly(area, 1),
    };
  },
});
