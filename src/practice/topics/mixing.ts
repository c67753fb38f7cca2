import { carrierFor, carrierForWorking } from "../../tank-mix/carrier.js";
import { dilute, diluteWorking } from "../../tank-mix/dilution.js";
import { splitLoads, splitLoadsWorking } from "../../tank-mix/loads.js";
import { productAmount, productAmountWorking } from "../../tank-mix/product.js";
import { convert } from "../../units/convert.js";
import { ceilDecided, floorDecided } from "../../units/decide.js";
import { ratio, scale } from "../../units/quantity.js";
import type { Quantity, UnitSystem } from "../../units/types.js";
import { conversionLines } from "../../units/working.js";
import type { Draw, DrawnProblem } from "./drawn-problem.js";
import { KITS } from "./usual-sizes.js";

/** Topic `tank-loads`: how many loads a job takes. */
export function drawTankLoads(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const kit = KITS[units];
  const field = draw.step(...kit.fields);
  // In whole hundredths, so that the field's part is as round as the field.
  const treated = Math.round(field * draw.pick([30, 40, 50, 60])) / 100;
  const ground = { value: field, unit: kit.land, of: "ground" } as const;
  const area = { value: treated, unit: kit.land, of: "treated" } as const;
  const rate = { value: draw.step(...kit.rates), unit: kit.rate };
  const fill = { value: draw.pick(kit.largeTanks), unit: kit.volume };
  const { total } = carrierFor({ rate, area });
  const { count } = splitLoads({ total, tank: fill, split: "full-then-part" });
  if (count < 3 || count > 12) return undefined;
  const fills = ratio(total, fill);
  return {
    kind: "tank-loads",
    given: { ground, area, rate, fill },
    answer: count,
    working: [
      ...carrierForWorking({ rate, area }),
      ...splitLoadsWorking({ total, tank: fill, split: "full-then-part" }),
    ],
    slips: [
      { mistake: "rounded-down", answer: floorDecided(fills) },
      { mistake: "inverted-ratio", answer: ceilDecided(1 / fills) },
      { mistake: "ground-area", answer: ceilDecided((fills * ground.value) / area.value) },
    ],
  };
}

/** Topic `product-per-tank`: the product in a full tank. */
export function drawProductPerTank(draw: Draw, units: UnitSystem): DrawnProblem {
  const kit = KITS[units];
  const rate = { value: draw.step(...kit.products), unit: kit.product };
  const carrierRate = { value: draw.step(...kit.rates), unit: kit.rate };
  const fill = { value: draw.pick(kit.tanks), unit: kit.volume };
  const density = { value: draw.step(...kit.densities), unit: kit.density };
  const input = { rate, form: "liquid", carrier: fill, carrierRate } as const;
  const { amount } = productAmount(input);
  const answer = convert(amount as Quantity, kit.small) as Quantity;
  const perLand = convert(rate, `${kit.small}/${kit.land}` as const).value;
  return {
    kind: "product-per-tank",
    given: { rate, carrierRate, fill, density },
    answer,
    working: [...productAmountWorking(input), ...conversionLines("tank-mix.amount", amount, kit.small)],
    slips: [
      {
        mistake: "inverted-ratio",
        answer: { value: (perLand * carrierRate.value) / fill.value, unit: kit.small },
      },
      { mistake: "unscaled-product", answer: { value: perLand, unit: kit.small } },
      { mistake: "weighed-as-volume", answer: scale(answer, kit.weighed / density.value) },
    ],
  };
}

/** Topic `household-measure`: whole level spoons, never over. */
export function drawHouseholdMeasure(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const { small, doses, spoon } = KITS[units];
  const amount = { value: draw.step(...doses), unit: small };
  const spoons = convert(amount, spoon.unit) as Quantity;
  const count = floorDecided(spoons.value);
  const part = spoons.value - count;
  if (count < 3 || part < 0.1 || part > 0.9) return undefined;
  return {
    kind: "household-measure",
    given: { amount, spoon: { value: spoon.value, unit: spoon.told } },
    answer: count,
    working: [
      ...conversionLines("practice.spoons.amount", amount, spoon.unit),
      {
        id: "practice.spoons",
        formula: "floor(amount)",
        terms: { amount: spoons },
        result: count,
        source: "common practice, no source",
      },
    ],
    slips: [
      { mistake: "rounded-up", answer: count + 1 },
      { mistake: "large-spoon", answer: floorDecided(spoons.value / 3) },
    ],
  };
}

/** Topic `percent-mix`: an additive in per cent of the mix. */
export function drawPercentMix(draw: Draw, units: UnitSystem): DrawnProblem {
  const kit = KITS[units];
  const percent = { value: draw.pick([0.25, 0.5, 0.75, 1, 1.5, 2]), unit: "%", basis: "v/v" } as const;
  const fill = { value: draw.step(...kit.batches), unit: kit.volume };
  const input = { rate: percent, form: "liquid", carrier: fill } as const;
  const { amount } = productAmount(input);
  const answer = convert(amount as Quantity, kit.small) as Quantity;
  return {
    kind: "percent-mix",
    given: { percent, fill },
    answer,
    working: [...productAmountWorking(input), ...conversionLines("tank-mix.amount", amount, kit.small)],
    slips: [
      { mistake: "percent-as-part", answer: scale(answer, 100) },
      { mistake: "per-mille", answer: scale(answer, 0.1) },
    ],
  };
}

/** Topic `dilution`: a strong solution made up to a weaker one. */
export function drawDilution(draw: Draw, units: UnitSystem): DrawnProblem {
  const kit = KITS[units];
  const from = { value: draw.pick([5, 8, 10, 12, 20]), unit: "%", basis: "v/v" } as const;
  const to = { value: draw.pick([0.5, 1, 2, 3, 4]), unit: "%", basis: "v/v" } as const;
  const volume = { value: draw.step(...kit.batches), unit: kit.volume };
  const input = { from, to, volume };
  const { take, water } = dilute(input);
  const answer = convert(take, kit.small) as Quantity;
  const parts = to.value / from.value;
  return {
    kind: "dilution",
    given: { from, to, volume },
    answer,
    working: [
      ...diluteWorking(input).filter(({ id }) => id !== "tank-mix.dilutionWater"),
      ...conversionLines("tank-mix.take", take, kit.small),
    ],
    slips: [
      { mistake: "inverted-ratio", answer: scale(answer, 1 / parts ** 2) },
      { mistake: "parts-of-water", answer: scale(answer, 1 / (1 + parts)) },
      { mistake: "took-the-water", answer: convert(water, kit.small) as Quantity },
    ],
  };
}
