import {
  CANOPY,
  type CanopyInput,
  linesOfDilute,
  rateOfCanopy,
  volumeOfCanopy,
} from "../../output-rate/tree-row-volume.js";
import { convertValue, inUnit } from "../../units/convert.js";
import { joined, object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import { perUnit } from "../../units/resolve.js";
import type { Quantity, VolumeConcentrationUnit, VolumeRate } from "../../units/types.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface SprayPerCanopy {
  /** The spray that wets so much canopy. More than 0. */
  readonly spray: Quantity<VolumeConcentrationUnit>;
}

type Orchard = CanopyInput & SprayPerCanopy;

const diluteOf = ({ spray, ...canopy }: Orchard) => ({ canopy, spray });

/** The spray that wets the canopy of an orchard, per unit of land. */
export const TREE_ROW_VOLUME: AnyTopic = /* @__PURE__ */ topic<Orchard>({
  difficulty: 3,
  fields: joined(
    CANOPY,
    object<SprayPerCanopy>({
      spray: quantity("The spray that wets so much canopy. More than 0.", "volumeConcentration"),
    }),
  ),
  figures: ({ system, length, volume, canopy }) => ({
    height: each(length, system === "metric" ? numbers(2, 5, 0.5) : numbers(7, 16, 0.5)),
    width: each(length, system === "metric" ? numbers(1, 3, 0.25) : numbers(4, 10, 0.5)),
    // In feet, lengths that come to round parts of an acre: see the lengths of rows.
    rowSpacing: each(
      length,
      system === "metric" ? [3, 3.5, 4, 4.5, 5, 6] : [11, 12, 12.1, 13.2, 15, 16.5, 18, 19.8, 22, 24.2],
    ),
    // From open trees to thick ones: see `diluteRate`.
    spray: each(
      perUnit(volume, canopy) as VolumeConcentrationUnit,
      system === "metric"
        ? numbers(10, 15, 1)
        : system === "us"
          ? [0.7, 0.75, 0.8, 0.9, 1]
          : [0.6, 0.65, 0.7, 0.75, 0.8],
    ),
  }),
  // A tractor goes through, and trees have grown toward each other.
  fits: ({ width, rowSpacing }) =>
    width.value >= rowSpacing.value / 4 && width.value <= rowSpacing.value / 1.5,
  unit: ({ rate }) => rate,
  answer: (given, { rate }) => inUnit(rateOfCanopy(diluteOf(given)), rate),
  working: (given) => linesOfDilute(diluteOf(given)),
  mistakes: (given, { system, perLand, length, landArea, otherLand, canopy }) => {
    const { height, width, rowSpacing } = given;
    const perCanopy = convertValue(1, canopy, `${length}3`);
    const volume = inUnit(volumeOfCanopy(given), perUnit(`${length}3`, landArea) as VolumeRate["unit"]);
    return {
      "canopy-size-left-out": { times: perCanopy },
      "alleys-as-canopy": { given: { width: rowSpacing } },
      "canopy-for-spray": [{ instead: volume }, { instead: volume / perCanopy }],
      "canopy-height-left-out": { times: 1 / inUnit(height, length) },
      "rows-counted-twice": { times: 2 },
      "spacing-multiplied": { times: inUnit(rowSpacing, length) ** 2 },
      "land-unit-left": { times: 1 / perLand },
      "wrong-land-factor": { times: system === "metric" ? 0.1 : 4840 / perLand },
      "other-land-unit": { times: 1 / convertValue(1, landArea, otherLand) },
      "canopy-width-left-out": { times: 1 / inUnit(width, length) },
    };
  },
});
