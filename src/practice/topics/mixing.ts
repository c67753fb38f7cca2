import { carrierFor, carrierForWorking } from "../../tank-mix/carrier.js";
import { diluteMix, diluteMixWorking } from "../../tank-mix/dilution.js";
import { splitLoads, splitLoadsWorking } from "../../tank-mix/loads.js";
import { productAmount, productAmountWorking } from "../../tank-mix/product.js";
import { convert } from "../../units/convert.js";
import { ceilDecided, floorDecided } from "../../units/decide.js";
import { ratio, scale } from "../../units/quantity.js";
import type { Quantity, UnitSystem } from "../../units/types.js";
import { conversionLines } from "../../units/working-line.js";
import type { Draw, DrawnProblem } from "./drawn-problem.js";
import { USUAL_SIZES } from "./usual-sizes.js";

/** Topic `tank-loads`: how many loads a job takes. */
export function drawTankLoads(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const usual = USUAL_SIZES[units];
  const field = draw.step(...usual.fields);
  // In whole hundredths, so that the field's part is as round as the field.
  const treated = Math.round(field * draw.pick([30, 40, 50, 60])) / 100;
  const ground = { value: field, unit: usual.land, of: "ground" } as const;
  const area = { value: treated, unit: usual.land, of: "treated" } as const;
  const rate = { value: draw.step(...usual.rates), unit: usual.rate };
  const fill = { value: draw.pick(usual.largeTanks), unit: usual.volume };
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
  const usual = USUAL_SIZES[units];
  const rate = { value: draw.step(...usual.products), unit: usual.product };
  const carrierRate = { value: draw.step(...usual.rates), unit: usual.rate };
  const fill = { value: draw.pick(usual.tanks), unit: usual.volume };
  const density = { value: draw.step(...usual.densities), unit: usual.density };
  const input = { rate, form: "liquid", carrier: fill, carrierRate } as const;
  const { amount } = productAmount(input);
  const answer = convert(amount as Quantity, usual.small) as Quantity;
  const perLand = convert(rate, `${usual.small}/${usual.land}` as const).value;
  return {
    kind: "product-per-tank",
    given: { rate, carrierRate, fill, density },
    answer,
    working: [...productAmountWorking(input), ...conversionLines("tank-mix.amount", amount, usual.small)],
    slips: [
      {
        mistake: "inverted-ratio",
        answer: { value: (perLand * carrierRate.value) / fill.value, unit: usual.small },
      },
      { mistake: "unscaled-product", answer: { value: perLand, unit: usual.small } },
      { mistake: "weighed-as-volume", answer: scale(answer, usual.weighed / density.value) },
    ],
  };
}

/** Topic `household-measure`: whole level spoons, never over. */
export function drawHouseholdMeasure(draw: Draw, units: UnitSystem): DrawnProblem | undefined {
  const { small, doses, spoon } = USUAL_SIZES[units];
  const amount = { value: draw.step(...doses), unit: small };
  const spoons = convert(amount, spoon.unit) as Quantity;
  const count = floorDecided(spoons.value);
  const part = spoons.value - count;
  if (count < 3 || part < 0.1 || part > 0.9) return undefined;
  return {
    kind: "household-measure",
    given: { amount, spoon: { value: spoon.value, unit: spoon.shownIn } },
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
  const usual = USUAL_SIZES[units];
  const percent = { value: draw.pick([0.25, 0.5, 0.75, 1, 1.5, 2]), unit: "%", basis: "v/v" } as const;
  const fill = { value: draw.step(...usual.batches), unit: usual.volume };
  const input = { rate: percent, form: "liquid", carrier: fill } as const;
  const { amount } = productAmount(input);
  const answer = convert(amount as Quantity, usual.small) as Quantity;
  return {
    kind: "percent-mix",
    given: { percent, fill },
    answer,
    working: [...productAmountWorking(input), ...conversionLines("tank-mix.amount", amount, usual.small)],
    slips: [
      { mistake: "percent-as-part", answer: scale(answer, 100) },
      { mistake: "per-mille", answer: scale(answer, 0.1) },
    ],
  };
}

/** Topic `dilution`: a strong solution made up to a weaker one. */
export function drawDilution(draw: Draw, units: UnitSystem): DrawnProblem {
  const usual = USUAL_SIZES[units];
  const from = { value: draw.pick([5, 8, 10, 12, 20]), unit: "%", basis: "v/v" } as const;
  const to = { value: draw.pick([0.5, 1, 2, 3, 4]), unit: "%", basis: "v/v" } as const;
  const volume = { value: draw.step(...usual.batches), unit: usual.volume };
  const input = { from, to, volume };
  const { take, water } = diluteMix(input);
  const answer = convert(take, usual.small) as Quantity;
  const parts = to.value / from.value;
  return {
    kind: "dilution",
    given: { from, to, volume },
    answer,
    working: [
      ...diluteMixWorking(input).filter(({ id }) => id !== "tank-mix.dilutionWater"),
      ...conversionLines("tank-mix.take", take, usual.small),
    ],
    slips: [
      { mistake: "inverted-ratio", answer: scale(answer, 1 / parts ** 2) },
      { mistake: "parts-of-water", answer: scale(answer, 1 / (1 + parts)) },
      { mistake: "took-the-water", answer: convert(water, usual.small) as Quantity },
    ],
  };
}
