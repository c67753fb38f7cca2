import { linesOfAmount, type ProductInput, productAmountOf } from "../../tank-mix/product.js";
import { inUnit } from "../../units/convert.js";
import { number, object } from "../../units/fields.js";
import { quantity } from "../../units/quantity-field.js";
import type { Quantity, UnitSystem, Volume, VolumeConcentrationUnit } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import { each, numbers } from "./sizes.js";
import { type AnyTopic, topic } from "./topic.js";

type Strength = Quantity<VolumeConcentrationUnit>;

// Labels give these per 100 gallons or liters; no unit of this library is 100 imperial gallons.
const RATES: Readonly<Record<UnitSystem, readonly Strength[]>> = {
  us: each("fl_oz/100gal", numbers(2, 16, 1)),
  imperial: each("imp_fl_oz/imp_gal", numbers(0.02, 0.16, 0.01)),
  metric: each("mL/100L", numbers(20, 200, 10)),
};

interface Injector {
  /** What the label calls for in the finished solution. More than 0. */
  readonly rate: Strength;
  /** How many parts of finished solution one part of stock makes. 2 or more. */
  readonly ratio: number;
  /** How much stock is made. More than 0. */
  readonly stock: Volume;
}

const solutionOf = ({ ratio, stock }: Injector): Volume => ({ value: ratio * stock.value, unit: stock.unit });

const inputOf = (given: Injector): ProductInput => ({
  rate: given.rate,
  form: "liquid",
  carrier: solutionOf(given),
});

/** The product in the stock tank of a ratio injector. */
export const INJECTOR: AnyTopic = /* @__PURE__ */ topic<Injector>({
  difficulty: 3,
  isDose: true,
  fields: object<Injector>({
    rate: quantity("What the label calls for in the finished solution. More than 0.", "volumeConcentration"),
    ratio: number("How many parts of finished solution one part of stock makes. 2 or more.", { min: 2 }),
    stock: quantity("How much stock is made. More than 0.", "volume"),
  }),
  figures: ({ volume, system }) => ({
    rate: RATES[system],
    ratio: [50, 64, 100, 128, 200],
    stock: each(volume, system === "metric" ? numbers(5, 30, 5) : numbers(1, 6, 0.5)),
  }),
  fits: ({ rate, ratio }) => inUnit(rate, "L/L") * ratio < 0.2,
  unit: ({ smallVolume }) => smallVolume,
  answer: (given, { smallVolume }) => inUnit(productAmountOf(inputOf(given)).amount, smallVolume),
  working: (given, { smallVolume }) => [
    {
      id: "practice.solution",
      formula: "ratio * stock",
      terms: { ratio: given.ratio, stock: given.stock },
      result: solutionOf(given),
      source: "dilution, C1 V1 = C2 V2",
    },
    ...linesOfAmount(inputOf(given)),
    ...conversionLines("tank-mix.amount", productAmountOf(inputOf(given)).amount as Quantity, smallVolume),
  ],
  mistakes: ({ ratio, stock }, { system, volume, perVolume }) => {
    const gallons = inUnit(stock, volume);
    return {
      "ratio-ignored": { times: 1 / ratio },
      "one-unit-of-stock": { times: 1 / gallons },
      "ratio-inverted": { times: 1 / ratio ** 2 },
      "volume-unit-left": { times: 1 / perVolume },
      "mix-for-product": [{ instead: ratio * gallons }, { instead: ratio * gallons * perVolume }],
      ...(system !== "imperial" && {
        "per-hundred-left-out": { times: 100 },
        "rate-per-unit-of-stock": { times: 100 / ratio },
      }),
    };
  },
});
