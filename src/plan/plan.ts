import { moved, relocated, within } from "../errors.js";
import type { Carrier } from "../tank-mix/carrier.js";
import { leftoverArea } from "../tank-mix/leftover.js";
import { splitLoads } from "../tank-mix/loads.js";
import { type MixedLoad, mixLoads } from "../tank-mix/mix-loads.js";
import { mixingOrder } from "../tank-mix/mixing-order.js";
import { checkedObject } from "../units/guard.js";
import { sum } from "../units/quantity.js";
import type { Mass, TreatedArea, Volume, VolumeRate } from "../units/types.js";
import { CAUTIONS } from "./cautions.js";
import { areaWarnings } from "./check-area.js";
import { calibrationWarnings } from "./check-calibration.js";
import { loadWarnings, productWarnings, strengthWarnings } from "./check-mix.js";
import { copied } from "./copy.js";
import { planCost } from "./cost.js";
import { type DoseMeasure, doseMeasure, doseRequest } from "./dose.js";
import type { PlanInput, Product } from "./input.js";
import { DEFAULT_SPLIT, loadsInput } from "./job.js";
import type { LoadProduct, Plan, PlannedLoad } from "./result.js";
import { thresholdsOf } from "./thresholds.js";
import { jobTotals, known } from "./totals.js";

/**
 * Works out a whole spray job: from the plot and the calibration to what is poured into each load, and measured with what.
 *
 * Formulas: rate = used / (swath × distance); sprayed = rate × treated area; total = sprayed + reserve + lines; loads =
 * ceil(total / fill); product = label rate / output rate × mix. The steps are those of `area`, `output-rate`, `tank-mix`
 * and `household`, where each formula has its source; the result is rounded nowhere on the way.
 *
 * The strength is the same in every load, reserve included, and the loads' amounts add up to the totals exactly, as the
 * decimals they print as. No dose is measured over its amount.
 *
 * @param given - the job; plain data
 * @returns the plan; plain data, the same for the same input
 * @throws SprayMathError with the `path` of what is at fault in the input, such as `products[1].rate`
 *
 * @example
 * ```ts
 * import { planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "rectangle", length: qty(121, "ft"), width: qty(90, "ft") },
 *   calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(4, "ft"), distance: qty(272.25, "ft") },
 *   sprayer: { tank: qty(4, "gal") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "pt/ac") }],
 *   tools: "us-spoons",
 * });
 * console.log(plan.rate); // { value: 20, unit: 'gal/ac' }
 * console.log(plan.loads.map((load) => load.carrier.value)); // [ 4, 1 ]
 * console.log(plan.loads.map((load) => load.products[0]?.amount.value)); // [ 6.4, 1.6 ]
 * ```
 */
export function planApplication(given: PlanInput): Plan {
  // What the caller changes later doesn't change the plan. The list of tools stays the caller's while doses are measured, since
  // its sizes are compared once for as long as it says the same.
  const { tools, ...others } = checkedObject(given, "");
  const input: PlanInput = { ...copied(others), tools };
  const job = jobTotals(input);
  const { area, rate, carrier, amounts } = job;
  const { products } = input;
  // Rows and plots are counted from the input: what is wrong with their number is wrong with `split`.
  const { loads, total } = moved(
    (path) => path.replace(/^split\b.*$/, "split"),
    () => relocated(LOADS_PLACES, () => splitLoads(loadsInput(input, carrier, area))),
  );
  const mixed = relocated({ amounts: "products" }, () =>
    mixLoads({ loads, amounts: amounts.map(({ amount }) => amount) }),
  );
  const thresholds = thresholdsOf(input.thresholds);
  const planned = plannedLoads(mixed.loads, rate, input);
  const order = orderOf(products);
  const totals = {
    carrier: total,
    products: products.map(({ name }, i) => ({
      name,
      amount: mixed.totals[i] as Volume | Mass,
      strength: (amounts[i] as (typeof amounts)[number]).strength,
    })),
  };
  const cost = planCost(input, { area, loads: planned, totals });
  return {
    area,
    rate,
    carrier,
    loads: planned,
    ...(order && { mixingOrder: order }),
    totals,
    leftover: leftover(carrier, rate),
    ...(cost && { cost }),
    warnings: [
      ...areaWarnings(input, area, thresholds),
      ...calibrationWarnings(input, rate, thresholds),
      ...products.flatMap((product, i) =>
        within(`products[${i}]`, () => productWarnings(product, `products[${i}]`, job)),
      ),
      ...totals.products.flatMap((product, i) => strengthWarnings(product, `products[${i}]`)),
      ...loadWarnings(input, carrier, planned, thresholds),
    ],
    cautions: CAUTIONS,
    input: { ...input, tools: copied(tools), split: input.split ?? DEFAULT_SPLIT },
  };
}

const LOADS_PLACES = {
  total: "plot",
  tank: "sprayer.tank",
  workingFill: "sprayer.workingFill",
  leastLoad: "sprayer.leastLoad",
};

function plannedLoads(
  loads: readonly MixedLoad[],
  rate: VolumeRate,
  { products, tools }: PlanInput,
): PlannedLoad[] {
  // Full loads are alike: each different dose of a product is searched for once.
  const doses = products.map(
    () => new Map<number, { readonly area: number; readonly measured: DoseMeasure }>(),
  );
  return loads.map(({ carrier, water, pieces, amounts }, at) => {
    const area = leftoverArea({ volume: carrier, rate });
    const shares = products.map((product, i): LoadProduct => {
      const amount = amounts[i] as Volume | Mass;
      const kept = doses[i] as (typeof doses)[number];
      const before = kept.get(amount.value);
      const same = before?.area === area.value;
      const measured = same ? before.measured : doseOf(product, i, amount, tools, area);
      kept.set(amount.value, { area: area.value, measured });
      return { name: product.name, amount, measured };
    });
    return {
      number: at + 1,
      carrier,
      water,
      ...(pieces !== undefined && { pieces }),
      area,
      products: shares,
    };
  });
}

function doseOf(
  product: Product,
  i: number,
  amount: Volume | Mass,
  tools: PlanInput["tools"],
  area: TreatedArea,
): DoseMeasure {
  return moved(
    (path) => (/^(bulkDensity|labelPermitsDilution)\b/.test(path) ? `products[${i}].${path}` : path),
    () => doseMeasure(doseRequest(amount, product, tools, area)),
  );
}

function orderOf(products: readonly Product[]): string[] | undefined {
  const codes = known(products.map(({ formulation }) => formulation));
  if (codes === undefined) return undefined;
  const mixing = products.map(({ inSolubleBag = false }, i) => ({
    code: codes[i] as (typeof codes)[number],
    inSolubleBag,
  }));
  const turns = moved(
    (path) => path.replace(/\.code$/, ".formulation"),
    () => mixingOrder({ products: mixing }),
  );
  return turns.map(({ product }) => (products[product] as Product).name);
}

function leftover(carrier: Carrier, rate: VolumeRate): Plan["leftover"] {
  const left = sum([carrier.reserve, carrier.lines]);
  if (carrier.reserve.value === 0) return { carrier: left };
  return { carrier: left, area: leftoverArea({ volume: carrier.reserve, rate }) };
}
