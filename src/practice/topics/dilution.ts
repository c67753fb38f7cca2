import { dilutionOf, linesOfDilution, strengthsFit } from "../../tank-mix/dilution.js";
import { inUnit } from "../../units/convert.js";
import { object } from "../../units/fields.js";
import { basedOr, quantity } from "../../units/quantity-field.js";
import type { BasedFraction, Volume } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { byVolume } from "./percent-mix.js";
import { each } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Dilution {
  /** The strength that there is, by volume. More than 0. */
  readonly from: BasedFraction;
  /** The strength to bring it down to, by volume. More than 0. */
  readonly to: BasedFraction;
  /** How much to make of it. More than 0. */
  readonly volume: Volume;
}

/** A strong solution made up to a weaker one. */
export const DILUTION: AnyTopic = /* @__PURE__ */ topic<Dilution>({
  difficulty: 2,
  isDose: true,
  fields: object<Dilution>(
    {
      from: basedOr("The strength that there is, by volume. More than 0.", [], ["v/v"]),
      to: basedOr("The strength to bring it down to, by volume. More than 0.", [], ["v/v"]),
      volume: quantity("How much to make of it. More than 0.", "volume"),
    },
    [strengthsFit],
  ),
  figures: ({ volume, batches }) => ({
    from: [5, 8, 10, 12, 20].map(byVolume),
    to: [0.5, 1, 2, 3, 4].map(byVolume),
    volume: each(volume, batches),
  }),
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, { smallVolume }) => inUnit(dilutionOf(given).take, smallVolume),
  working: (given, { smallVolume }) => [
    ...linesOfDilution(given).filter(({ id }) => id !== "tank-mix.dilutionWater"),
    ...conversionLines("tank-mix.take", dilutionOf(given).take, smallVolume),
  ],
  mistakes: ({ from, to, volume }, { smallVolume, perVolume }) => {
    const parts = inUnit(to, "1") / inUnit(from, "1");
    return {
      "took-the-water": { instead: inUnit(volume, smallVolume) * (1 - parts) },
      "strength-ignored": { times: inUnit(from, "1") },
      "parts-of-water": { times: 1 / (1 + parts) },
      "strengths-subtracted": { times: (1 - parts) / parts },
      "volume-unit-left": { times: 1 / perVolume },
      "final-percent-only": { times: 100 * inUnit(from, "1") },
      "strengths-swapped": { times: 1 / parts ** 2 },
    };
  },
});
