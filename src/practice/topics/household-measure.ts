import { inUnit } from "../../units/convert.js";
import { ceilDecided, floorDecided } from "../../units/decide.js";
import { object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Quantity, UnitSystem, Volume } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { each, numbers, steps } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

interface Spoons {
  /** The product that a load takes. More than 0. */
  readonly amount: Volume;
  /** What one level spoon holds. More than 0. */
  readonly spoon: Volume;
}

// The most of one measure that the library counts out: see the guide page about measuring.
const MOST_SPOONS = 16;

const SPOONS: Readonly<
  Record<
    UnitSystem,
    { readonly amount: readonly Quantity<"fl_oz" | "imp_fl_oz" | "mL">[]; readonly spoon: readonly Volume[] }
  >
> = {
  us: {
    amount: steps("fl_oz", 0.6, 7.9, 0.1),
    spoon: [
      { value: 1, unit: "tsp" },
      { value: 1, unit: "tbsp" },
    ],
  },
  imperial: { amount: steps("imp_fl_oz", 0.6, 7.9, 0.1), spoon: each("mL", [5, 15]) },
  metric: { amount: each("mL", numbers(17, 230, 1)), spoon: each("mL", [5, 15]) },
};

const spoonsOf = ({ amount, spoon }: Spoons): number => inUnit(amount, spoon.unit) / spoon.value;

/** Whole level spoons, never over. */
export const HOUSEHOLD_MEASURE: AnyTopic = /* @__PURE__ */ topic<Spoons>({
  difficulty: 1,
  fields: object<Spoons>({
    amount: quantity("The product that a load takes. More than 0.", "volume"),
    spoon: quantity("What one level spoon holds. More than 0.", "volume"),
  }),
  figures: ({ system }) => SPOONS[system],
  fits: (given) => {
    const spoons = spoonsOf(given);
    const part = spoons - Math.floor(spoons);
    return spoons >= 3 && floorDecided(spoons) <= MOST_SPOONS && part > 0.1 && part < 0.9;
  },
  counted: ({ spoon }) => spoon,
  answer: (given) => floorDecided(spoonsOf(given)),
  working: (given) => {
    const { amount, spoon } = given;
    const spoons = spoonsOf(given);
    return [
      ...conversionLines("practice.spoons.amount", amount, spoon.unit),
      {
        id: "practice.spoons",
        formula: "floor(amount / spoon)",
        terms: { amount: { value: inUnit(amount, spoon.unit), unit: spoon.unit }, spoon },
        result: floorDecided(spoons),
        source: "common practice, no source",
      },
    ];
  },
  mistakes: (given) => {
    const spoons = spoonsOf(given);
    const size = inUnit(given.spoon, "mL");
    const isAbout = (holds: number) => Math.abs(size - holds) <= 0.1 * holds;
    return {
      "rounded-up": { instead: ceilDecided(spoons) },
      "spoons-unrounded": { instead: spoons },
      // A spoon or a cup of another size is neither.
      ...(isAbout(15) ? { "teaspoon-for-tablespoon": { instead: floorDecided(spoons * 3) } } : {}),
      ...(isAbout(5) ? { "tablespoon-for-teaspoon": { instead: floorDecided(spoons / 3) } } : {}),
      "fraction-inverted": { instead: 1 / spoons },
    };
  },
});
