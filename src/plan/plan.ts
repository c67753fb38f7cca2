import { treatedFraction } from "../area/treated.js";
import { moved, relocated, SprayMathError, shown, within } from "../errors.js";
import { rateOf } from "../output-rate/calibration.js";
import { type Carrier, carrierFor } from "../tank-mix/carrier.js";
import { leftoverArea } from "../tank-mix/leftover.js";
import { splitLoads } from "../tank-mix/loads.js";
import { type MixedLoad, mixLoads } from "../tank-mix/mix-loads.js";
import { mixingOrder } from "../tank-mix/mixing-order.js";
import { productAmount } from "../tank-mix/product.js";
import { checkedList, checkedObject } from "../units/guard.js";
import { sum } from "../units/quantity.js";
import type { Mass, TreatedArea, Volume, VolumeRate } from "../units/types.js";
import { CAUTIONS } from "./cautions.js";
import { areaWarnings } from "./check-area.js";
import { calibrationWarnings } from "./check-calibration.js";
import { loadWarnings, productWarnings } from "./check-mix.js";
import { planCost } from "./cost.js";
import { type DoseMeasure, doseMeasure, doseRequest } from "./dose.js";
import type { PlanInput, Product } from "./input.js";
import { carrierInput, DEFAULT_SPLIT, loadsInput, PRODUCT_PLACES, productInput } from "./job.js";
import { plotAreas, plotsOf } from "./plot.js";
import type { LoadProduct, Plan, PlannedLoad } from "./result.js";
import { thresholdsOf } from "./thresholds.js";

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
 * @param input - the job; plain data
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
export function planApplication(input: PlanInput): Plan {
  checkedObject(input, "");
  const area = jobArea(input);
  const rate = within("calibration", () => rateOf(input.calibration));
  checkedObject(input.sprayer, "sprayer");
  const carrier = relocated(CARRIER_PLACES, () => carrierFor(carrierInput(input, rate, area.treated)));
  const { loads, total } = relocated(LOADS_PLACES, () => splitLoads(loadsInput(input, carrier, area)));
  const products = checkedProducts(input.products);
  const job = { rate, carrier, area };
  const amounts = each(products, (product) =>
    relocated(PRODUCT_PLACES, () => productAmount(productInput(product, job))),
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
    ...job,
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
      ...loadWarnings(input, carrier, planned, thresholds),
    ],
    cautions: CAUTIONS,
    input: { ...input, split: input.split ?? DEFAULT_SPLIT },
  };
}

const CARRIER_PLACES = { lineVolume: "sprayer.lineVolume", rate: "calibration", area: "plot" };
const LOADS_PLACES = {
  total: "plot",
  tank: "sprayer.tank",
  workingFill: "sprayer.workingFill",
  leastLoad: "sprayer.leastLoad",
};
function each<T>(products: readonly Product[], work: (product: Product) => T): T[] {
  return products.map((product, i) => within(`products[${i}]`, () => work(product)));
}

function jobArea({ plot }: PlanInput): Plan["area"] {
  const several = Array.isArray(plot);
  if (several) checkedList(plot, "plot");
  const plots = plotsOf(plot).map((one, i) => within(several ? `plot[${i}]` : "plot", () => plotAreas(one)));
  const treated = sum(plots.map((one) => one.treated));
  const lengths = known(plots.map(({ rowLength }) => rowLength));
  const grounds = known(plots.map(({ ground }) => ground));
  const ground = grounds && sum(grounds);
  return {
    treated,
    ...(ground && { ground, fraction: treatedFraction({ treated, ground }) }),
    ...(lengths && { rowLength: sum(lengths) }),
    plots,
  };
}

/** The list, where none of it is missing. */
function known<T>(list: readonly (T | undefined)[]): T[] | undefined {
  return list.includes(undefined) ? undefined : (list as T[]);
}

function checkedProducts(products: readonly Product[]): readonly Product[] {
  const names = new Set<string>();
  for (const [i, product] of checkedList(products, "products").entries()) {
    const { name } = checkedObject(product, `products[${i}]`);
    const path = `products[${i}].name`;
    if (typeof name !== "string" || name.trim() === "") {
      throw new SprayMathError("missing", path, `Given ${shown(name)}; wanted the product's name.`);
    }
    if (names.has(name)) {
      throw new SprayMathError(
        "conflict",
        path,
        `Given ${shown(name)} a second time; wanted one entry a product.`,
      );
    }
    names.add(name);
  }
  return products;
}

function plannedLoads(
  loads: readonly MixedLoad[],
  rate: VolumeRate,
  { products, tools }: PlanInput,
): PlannedLoad[] {
  // Full loads are alike: each different dose is searched for once.
  const doses = new Map<string, DoseMeasure>();
  return loads.map(({ carrier, water, pieces, amounts }, at) => {
    const area = leftoverArea({ volume: carrier, rate });
    const shares = products.map((product, i): LoadProduct => {
      const amount = amounts[i] as Volume | Mass;
      const key = `${i} ${amount.value} ${area.value}`;
      const measured = doses.get(key) ?? doseOf(product, i, amount, tools, area);
      doses.set(key, measured);
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
  const places = {
    bulkDensity: `products[${i}].bulkDensity`,
    labelPermitsDilution: `products[${i}].labelPermitsDilution`,
  };
  return relocated(places, () => doseMeasure(doseRequest(amount, product, tools, area)));
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
