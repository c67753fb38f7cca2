import { linesOfAmount, type ProductInput, productAmountOf } from "../../tank-mix/product.js";
import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { basedOr, quantity } from "../../units/quantity-field.js";
import type { BasedFraction, Quantity, Volume } from "../../units/types.js";
import { conversionLines, type WorkingLine } from "../../units/working-line.js";
import { each, type Sizes } from "./sizes.js";
import { type AnyTopic, type Routes, topic } from "./topic.js";

/** A percentage by volume. */
export function byVolume(value: number): BasedFraction {
  return { value, unit: "%", basis: "v/v" };
}

interface PercentMix {
  /** What the label calls for, by volume. More than 0. */
  readonly percent: BasedFraction;
  /** What the tank is filled to. More than 0. */
  readonly fill: Volume;
}

const inputOf = (rate: BasedFraction, carrier: Volume): ProductInput => ({ rate, form: "liquid", carrier });

/** The product that comes to a percentage of a mix, in the small unit of volume. */
export function percentOf(rate: BasedFraction, carrier: Volume, { smallVolume }: Sizes): number {
  return inUnit(productAmountOf(inputOf(rate, carrier)).amount, smallVolume);
}

/** The working of {@link percentOf}. */
export function linesOfPercent(rate: BasedFraction, carrier: Volume, { smallVolume }: Sizes): WorkingLine[] {
  const input = inputOf(rate, carrier);
  const { amount } = productAmountOf(input);
  return [...linesOfAmount(input), ...conversionLines("tank-mix.amount", amount as Quantity, smallVolume)];
}

/** Mistakes with a percentage of a mix. */
export function percentMistakes(percent: BasedFraction, { system, perVolume }: Sizes): Routes<never> {
  return {
    "percent-as-part": { times: 100 },
    "per-mille": { times: 0.1 },
    "volume-unit-left": { times: 1 / perVolume },
    ...(system === "metric"
      ? {}
      : {
          "pint-for-gallon": { times: 1 / 8 },
          "other-gallon": { times: system === "us" ? 160 / 128 : 128 / 160 },
        }),
    inverted: { times: 1 / (percent.value / 100) ** 2 },
  };
}

/** An additive in percent of the mix. */
export const PERCENT_MIX: AnyTopic = /* @__PURE__ */ topic<PercentMix>({
  difficulty: 1,
  isDose: true,
  fields: object<PercentMix>({
    percent: basedOr("What the label calls for, by volume. More than 0.", [], ["v/v"]),
    fill: quantity("What the tank is filled to. More than 0.", "volume"),
  }),
  figures: ({ volume, batches, tanks, largeTanks }) => ({
    percent: [0.25, 0.5, 0.75, 1, 1.5, 2].map(byVolume),
    fill: each(volume, [...batches, ...tanks, ...largeTanks]),
  }),
  unit: ({ smallVolume }) => smallVolume,
  answer: ({ percent, fill }, sizes) => percentOf(percent, fill, sizes),
  working: ({ percent, fill }, sizes) => linesOfPercent(percent, fill, sizes),
  mistakes: ({ percent, fill }, sizes) => ({
    ...percentMistakes(percent, sizes),
    "one-unit-only": { times: 1 / inUnit(fill, sizes.volume) },
  }),
});
