import { convertValue } from "../../units/convert.js";
import type { Quantity, Unit } from "../../units/types.js";
import type { Sizes } from "./sizes.js";
import type { Route, Routes } from "./topic.js";

/** A quantity whose number was read as so many of another unit. */
export function readAs<U extends Unit>({ value }: Quantity, unit: U): Quantity<U> {
  return { value, unit };
}

/** The factor that rounding a step too early brings in: to so many decimals, or to whole numbers. Nobody goes on with a step of 0. */
export function roundedEarly(step: number, decimals = 0): Route<never> {
  const scale = 10 ** decimals;
  const rounded = Math.round(step * scale) / scale;
  return rounded === 0 ? {} : { times: rounded / step };
}

/**
 * A rate turned upside down: in acres per gallon, in square feet per gallon, and in square feet per fluid ounce. The fourth is
 * the last of these times the factors of the right fraction.
 */
export function upsideDown(rate: number, { perLand, perVolume }: Sizes): readonly Route<never>[] {
  const small = perLand / (rate * perVolume);
  return [1 / rate, perLand / rate, small, (small * perLand) / perVolume].map((instead) => ({ instead }));
}

/** Mistakes with the area of the plot, where the answer grows with it. */
export function landMistakes({ system, perLand, landArea, otherLand }: Sizes): Routes<never> {
  return {
    "land-unit-left": { times: perLand },
    // Square yards to the acre; the square meters of a tenth of a hectare.
    "wrong-land-factor": { times: system === "metric" ? 10 : perLand / 4840 },
    "other-land-unit": { times: convertValue(1, landArea, otherLand) },
    "land-factor-inverted": { times: perLand * perLand },
    // Square feet divided by the square meters of a hectare, or square meters by the square feet of an acre.
    "land-unit-from-other": {
      times: perLand / convertValue(1, otherLand, system === "metric" ? "ft2" : "m2"),
    },
  };
}

/** Mistakes with the rate of a liquid per unit of land, where the answer is in the small unit of volume. */
export function labelRateMistakes({
  system,
  perLabel,
  perLand,
  landArea,
  otherLand,
  lawn,
  area,
}: Sizes): Routes<never> {
  const perLawn = perLand / convertValue(1, lawn, area);
  return {
    "label-unit-left": { times: 1 / perLabel },
    ...(system === "metric"
      ? { "liter-of-100": { times: 0.1 } }
      : {
          "pint-of-8": { times: 8 / perLabel },
          "pint-of-other-system": { times: (system === "us" ? 20 : 16) / perLabel },
          "pint-of-32": { times: 32 / perLabel },
        }),
    "per-lawn-for-land": { times: perLawn },
    "rate-per-other-land": { times: 1 / convertValue(1, otherLand, landArea) },
  };
}

/** Mistakes with what a liquid weighs, where the answer is a volume of product. */
export function weightMistakes(density: number, { weighed, water, system }: Sizes): Routes<never> {
  // Ounces in a pound, grams in a kilogram.
  const many = system === "metric" ? 1000 : 16;
  return {
    "weighed-as-volume": { times: weighed / density },
    "weighed-as-water": { times: water / density },
    "weight-for-volume": [{ times: density / weighed }, { times: density / weighed / many }],
  };
}
