import { kitFor } from "../household/kit.js";
import {
  doseOf,
  type Measurable,
  type MeasureOutInput,
  type NotMeasurable,
} from "../household/measure-out.js";
import { isWeight } from "../household/measuring-tool.js";
import { kindIsMeasured } from "../household/request.js";
import { newEffort } from "../household/search.js";
import { scaleFor, type Tools } from "../household/tools.js";
import { volumeFilled } from "../household/volume-of-weight.js";
import { agreed } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { unitsLike } from "../units/systems.js";
import { withoutNoise } from "../units/three-figures.js";
import type { Mass, TreatedArea, Volume } from "../units/types.js";
import type { Product } from "./input.js";
import type { DoseMeasure, LoadAmount, LoadOf, LoadProduct } from "./result.js";

/** How one dose is measured: what `measureOut` is asked, and what it took to get there. */
export interface DoseRequest {
  /** What is asked of `measureOut`. */
  readonly input: MeasureOutInput;
  /** The volume that a dry dose fills, where it is spooned. */
  readonly volume?: Volume | undefined;
  /** Whether a scale had to be assumed. */
  readonly scaleAssumed: boolean;
}

/** How a dose is measured: a weight on a scale, or spooned by its bulk density; where there is neither, on a common scale. Trusts its input. */
export function doseRequest(
  amount: Volume | Mass,
  { bulkDensity, labelPermitsDilution }: Product,
  tools: Tools,
  area: TreatedArea | undefined,
): DoseRequest {
  // A label's rate is a maximum: no dose in a plan is measured over it.
  const rule = "never-over";
  const needsScale = isWeight(amount) && kitFor(tools, "weight") === undefined;
  if (needsScale && bulkDensity !== undefined) {
    const volume = volumeFilled({ mass: amount as Mass, bulkDensity });
    return { input: { amount: volume, tools, rule, labelPermitsDilution }, volume, scaleAssumed: false };
  }
  return {
    input: {
      amount,
      tools: needsScale ? scaleFor(amount) : tools,
      rule,
      perArea: area && onLand(area),
      labelPermitsDilution,
    },
    scaleAssumed: needsScale,
  };
}

/** Per acre or hectare, as labels have rates. */
function onLand(area: TreatedArea): TreatedArea {
  const { landArea } = unitsLike(area.unit);
  return { value: inUnit(area, landArea), unit: landArea, of: "treated" };
}

/**
 * The loads of a mix with each dose as it is measured; `treats` says what area a volume of the mix is enough for, where that is
 * known. Trusts its input.
 */
export function measuredLoads<C extends object>(
  loads: readonly (LoadOf<LoadAmount> & C)[],
  { products, tools }: { readonly products: readonly Product[]; readonly tools: Tools },
  treats: (mix: Volume) => TreatedArea | undefined,
): (LoadOf<LoadProduct> & C)[] {
  const first = loads[0] as LoadOf<LoadAmount>;
  agreed(products, (check) => {
    for (const { amount } of first.products) if (!isWeight(amount)) kindIsMeasured(amount, tools, check);
  });
  // All searches of a job share one effort: it ends in time however many products and loads there are.
  const effort = newEffort();
  // Full loads are alike, their doses too but for the last digit: each different dose of a product is searched for once, so
  // that loads of one size are measured alike.
  const known = products.map(() => new Map<number, Known>());
  const doseIn = (amount: Volume | Mass, i: number, area: TreatedArea | undefined): DoseMeasure => {
    const doses = known[i] as Map<number, Known>;
    const key = withoutNoise(amount).value;
    const before = doses.get(key);
    // The area follows from the load, and the amount too: two areas for one amount differ by rounding.
    if (before !== undefined && before.area === area?.value) return before.measured;
    const request = doseRequest(amount, products[i] as Product, tools, area);
    const measured = measuredAs(request, doseOf(request.input, `products[${i}]`, effort));
    doses.set(key, { area: area?.value, measured });
    return measured;
  };
  return loads.map((load) => {
    // A dose's error falls on whatever its load is sprayed on, extra mix included.
    const area = treats(load.carrier);
    return {
      ...load,
      products: load.products.map(({ name, amount }, i) => ({
        name,
        amount,
        measured: doseIn(amount, i, area),
      })),
    };
  });
}

interface Known {
  readonly area: number | undefined;
  readonly measured: DoseMeasure;
}

function measuredAs({ volume, scaleAssumed }: DoseRequest, dose: Measurable | NotMeasurable): DoseMeasure {
  if (volume !== undefined) return { ...dose, volume };
  return scaleAssumed ? { ...dose, scaleAssumed } : dose;
}
