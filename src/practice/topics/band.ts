import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { VolumeRate } from "../../units/types.js";
import { drawnRows } from "./drawing.js";
import { linesOfProduct, productOn } from "./product.js";
import { labelRateMistakes, landMistakes, roundedEarly } from "./routes.js";
import {
  leavesGround,
  linesOfSprayed,
  ROWS,
  type Rows,
  rowFigures,
  rowMistakes,
  sprayedArea,
  sprayedIn,
} from "./rows.js";
import { each, type Sizes } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Band extends Rows {
  /** The label rate, per treated area. More than 0. */
  readonly rate: VolumeRate;
}

const productOf = (given: Band, sizes: Sizes): Parameters<typeof productOn>[0] => ({
  rate: given.rate,
  area: sprayedArea(given),
  per: sizes.landArea,
  unit: sizes.smallVolume,
});

/** The product that bands along rows take. */
export const BAND: AnyTopic = /* @__PURE__ */ topic<Band>({
  difficulty: 3,
  isDose: true,
  drawing: drawnRows,
  notNeeded: ["rowSpacing"],
  fields: object<Band>({
    ...ROWS,
    rate: quantity("The label rate, per treated area. More than 0.", "volumeRate"),
  }),
  figures: (sizes) => ({ ...rowFigures(sizes), rate: each(sizes.product, sizes.products) }),
  fits: leavesGround,
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, sizes) => productOn(productOf(given, sizes)),
  working: (given, sizes) => [...linesOfSprayed(given), ...linesOfProduct(productOf(given, sizes))],
  mistakes: (given, sizes) => {
    const area = sprayedIn(sizes, given);
    return {
      ...rowMistakes(given, sizes),
      "unscaled-product": { times: 1 / area },
      ...labelRateMistakes(sizes),
      ...landMistakes(sizes),
      "area-for-product": { instead: area },
      "divided-by-area": { times: 1 / area ** 2 },
      "rounded-early": roundedEarly(area, 1),
    };
  },
});
