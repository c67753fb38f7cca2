import { carrierOf, linesOfCarrier } from "../../tank-mix/carrier.js";
import { linesOfLoads } from "../../tank-mix/loads.js";
import { inUnit } from "../../units/convert.js";
import { ceilDecided, floorDecided } from "../../units/decide.js";
import { object } from "../../units/fields.js";
import { groundArea, quantity, treatedArea } from "../../units/quantity-field.js";
import type { GroundArea, TreatedArea, Volume, VolumeRate } from "../../units/types.js";
import { each } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Loads {
  /** The whole field. More than 0. */
  readonly ground: GroundArea;
  /** What of it is sprayed. More than 0. */
  readonly area: TreatedArea;
  /** The output rate. More than 0. */
  readonly rate: VolumeRate;
  /** What the tank is filled to. More than 0. */
  readonly fill: Volume;
}

const fillsOf = ({ area, rate, fill }: Loads): number => {
  const { total } = carrierOf({ rate, area });
  return total.value / inUnit(fill, total.unit);
};

/** How many loads a job takes. */
export const TANK_LOADS: AnyTopic = /* @__PURE__ */ topic<Loads>({
  difficulty: 2,
  notNeeded: ["ground"],
  fields: object<Loads>({
    ground: groundArea("The whole field. More than 0.", { unmarked: true }),
    area: treatedArea("What of it is sprayed. More than 0.", { unmarked: true }),
    rate: quantity("The output rate. More than 0.", "volumeRate"),
    fill: quantity("What the tank is filled to. More than 0.", "volume"),
  }),
  figures: ({ fields, landArea, rates, rate, largeTanks, volume }) => ({
    ground: fields.map((value) => ({ value, unit: landArea, of: "ground" as const })),
    // In whole tenths of the field, so that it is as round as the field.
    area: fields.flatMap((value) =>
      [3, 4, 5, 6].map((tenths) => ({
        value: Math.round(value * tenths * 10) / 100,
        unit: landArea,
        of: "treated" as const,
      })),
    ),
    rate: each(rate, rates),
    fill: each(volume, largeTanks),
  }),
  fits: (given) => {
    const count = ceilDecided(fillsOf(given));
    const part = given.area.value / given.ground.value;
    return count >= 3 && count <= 12 && part > 0.29 && part < 0.61;
  },
  answer: (given) => ceilDecided(fillsOf(given)),
  working: ({ rate, area, fill }) => {
    const { total } = carrierOf({ rate, area });
    return [
      ...linesOfCarrier({ rate, area }),
      ...linesOfLoads({ total, tank: fill, split: "full-then-part" }),
    ];
  },
  mistakes: (given) => {
    const fills = fillsOf(given);
    return {
      "rounded-down": { instead: floorDecided(fills) },
      "loads-unrounded": { instead: fills },
      "ground-for-area": { given: { area: { ...given.ground, of: "treated" } } },
      "fraction-inverted": { instead: 1 / fills },
      "area-left-out": { instead: given.rate.value / given.fill.value },
      "total-for-count": { instead: fills * given.fill.value },
    };
  },
});
