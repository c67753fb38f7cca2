import { treatedFraction } from "../area/treated.js";
import { relocated, SprayMathError, shown, within } from "../errors.js";
import { stripRate } from "../output-rate/strip.js";
import { type Carrier, type CarrierInput, carrierFor } from "../tank-mix/carrier.js";
import { type Load, type LoadsInput, splitLoads } from "../tank-mix/loads.js";
import { type ProductInput, productAmount } from "../tank-mix/product.js";
import { productInLoads } from "../tank-mix/product-in-loads.js";
import { convert } from "../units/convert.js";
import { checkedChoice, checkedList, checkedObject, inUnit } from "../units/guard.js";
import { sum } from "../units/quantity.js";
import { resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { Concentration, GroundArea, Mass, TreatedArea, Volume, VolumeRate } from "../units/types.js";
import { CAUTIONS, type Caution } from "./cautions.js";
import { type DoseMeasure, doseMeasure } from "./dose.js";
import type { Calibration, PlanInput, Product } from "./input.js";
import { type PlotAreas, plotAreas, plotsOf } from "./plot.js";
import { loadWarnings, type Warning } from "./warnings.js";

/** A product's share of one load. */
export interface LoadProduct {
  /** The product. */
  readonly name: string;
  /** How much of it goes into this load. */
  readonly amount: Volume | Mass;
  /** The same as a person can measure it, never over. */
  readonly measured: DoseMeasure;
}

/** One tank load. */
export interface PlannedLoad {
  /** The load's place in the order of mixing, from 1. */
  readonly number: number;
  /** The finished mix: fill the tank to this mark. */
  readonly carrier: Volume;
  /** What this load could treat at the output rate. */
  readonly area: TreatedArea;
  /** Each product's share. */
  readonly products: readonly LoadProduct[];
}

/** A product in the whole job. */
export interface ProductTotal {
  /** The product. */
  readonly name: string;
  /** How much of it all loads take together, to the last printed digit. */
  readonly amount: Volume | Mass;
  /** How much is in one unit of the mix: the same in every load. */
  readonly strength: Concentration;
}

/** A whole job worked out. Plain data. */
export interface Plan {
  /** What is treated, on what ground, and which part of the ground that is. */
  readonly area: {
    /** All plots together. */
    readonly treated: TreatedArea;
    /** The ground of all plots together, where every plot tells it. */
    readonly ground?: GroundArea;
    /** Treated / ground. */
    readonly fraction?: number;
    /** Each plot's own areas, in the order given. */
    readonly plots: readonly PlotAreas[];
  };
  /** What the sprayer puts out per treated area. */
  readonly rate: VolumeRate;
  /** The finished mix: sprayed, to spare, in the lines, in all. */
  readonly carrier: Carrier;
  /** The tank loads, in the order of mixing. */
  readonly loads: readonly PlannedLoad[];
  /** What the loads come to. */
  readonly totals: {
    /** All loads' mix. */
    readonly carrier: Volume;
    /** Each product in all loads. */
    readonly products: readonly ProductTotal[];
  };
  /** What is left when the plot is done: reserve and lines. */
  readonly leftover: {
    /** How much mix. */
    readonly carrier: Volume;
    /** What the reserve could still treat at the output rate; nothing where there is none. */
    readonly area?: TreatedArea;
  };
  /** What a careful colleague would question. A warning changes no number. */
  readonly warnings: readonly Warning[];
  /** The usual cautions. */
  readonly cautions: readonly Caution[];
  /** What was given, with what was left out filled in. */
  readonly input: PlanInput;
}

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
  const rate = within("calibration", () => calibratedRate(input.calibration));
  checkedObject(input.sprayer, "sprayer");
  const carrier = relocated(CARRIER_PLACES, () => carrierFor(carrierInput(input, rate, area.treated)));
  const { loads, total } = relocated(LOADS_PLACES, () => splitLoads(loadsInput(input, carrier)));
  const shares = checkedProducts(input.products).map((product, i) =>
    within(`products[${i}]`, () => productShares(product, { rate, carrier, area }, loads)),
  );
  const planned = plannedLoads(loads, rate, shares, input.tools);
  return {
    area,
    rate,
    carrier,
    loads: planned,
    totals: { carrier: total, products: shares.map(({ total }) => total) },
    leftover: leftover(carrier, rate),
    warnings: loadWarnings(planned),
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
const DEFAULT_SPLIT = "full-then-part";

/** What a job asks of `carrierFor`. */
export function carrierInput(
  { sprayer: { lineVolume }, reserve }: PlanInput,
  rate: VolumeRate,
  area: TreatedArea,
): CarrierInput {
  return {
    rate,
    area,
    ...(lineVolume !== undefined && { lineVolume }),
    ...(reserve !== undefined && { reserve }),
  };
}

/** What a job asks of `splitLoads`. */
export function loadsInput(
  { sprayer: { tank, workingFill, leastLoad }, split = DEFAULT_SPLIT }: PlanInput,
  { total }: Carrier,
): LoadsInput {
  checkedChoice(split, ["full-then-part", "equal"], "split");
  return {
    total,
    tank,
    split,
    ...(workingFill !== undefined && { workingFill }),
    ...(leastLoad !== undefined && { leastLoad }),
  };
}

/** What a job asks of `productAmount`. */
export function productInput(
  { rate, form }: Product,
  job: Pick<Plan, "rate" | "carrier" | "area">,
): ProductInput {
  const { treated, ground } = job.area;
  return {
    rate,
    form,
    carrier: job.carrier.total,
    carrierRate: job.rate,
    area: treated,
    ...(ground && { ground }),
  };
}

function jobArea({ plot }: PlanInput): Plan["area"] {
  const several = Array.isArray(plot);
  if (several) checkedList(plot, "plot");
  const plots = plotsOf(plot).map((one, i) => within(several ? `plot[${i}]` : "plot", () => plotAreas(one)));
  const treated = sum(plots.map((one) => one.treated));
  const grounds = plots.flatMap(({ ground }) => (ground === undefined ? [] : [ground]));
  if (grounds.length < plots.length) return { treated, plots };
  const ground = sum(grounds);
  return { treated, ground, fraction: treatedFraction({ treated, ground }), plots };
}

function calibratedRate(calibration: Calibration): VolumeRate {
  checkedObject(calibration, "");
  checkedChoice(calibration.kind, ["strip"], "kind");
  // A strip may also be run with granules; a tank is filled by volume.
  inUnit(calibration.used, "gal", "used");
  return stripRate(calibration);
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

interface Shares {
  readonly total: ProductTotal;
  readonly amounts: readonly (Volume | Mass)[];
}

function productShares(
  product: Product,
  job: Pick<Plan, "rate" | "carrier" | "area">,
  loads: readonly Load[],
): Shares {
  const { amount, strength } = productAmount(productInput(product, job));
  const { amounts, total } = productInLoads({ amount, loads });
  return { total: { name: product.name, amount: total, strength }, amounts };
}

function plannedLoads(
  loads: readonly Load[],
  rate: VolumeRate,
  shares: readonly Shares[],
  tools: PlanInput["tools"],
): PlannedLoad[] {
  // Full loads are alike: each different dose is searched for once.
  const measures = new Map<string, DoseMeasure>();
  return loads.map(({ carrier }, i) => {
    const area = areaFor(carrier, rate);
    const products = shares.map(({ total: { name }, amounts }) => {
      const amount = amounts[i] as Volume | Mass;
      const key = `${amount.value} ${amount.unit} ${area.value}`;
      const measured = measures.get(key) ?? doseMeasure(amount, tools, area);
      measures.set(key, measured);
      return { name, amount, measured };
    });
    return { number: i + 1, carrier, area, products };
  });
}

/** What a volume of mix treats at the output rate. */
function areaFor(carrier: Volume, rate: VolumeRate): TreatedArea {
  const { over, per } = resolveUnit(rate.unit, "rate.unit");
  const area: TreatedArea = {
    value: convert(carrier, over as Volume["unit"]).value / rate.value,
    unit: per as TreatedArea["unit"],
    of: "treated",
  };
  return convert(area, unitsLike(rate.unit).area);
}

function leftover(carrier: Carrier, rate: VolumeRate): Plan["leftover"] {
  const left = sum([carrier.reserve, carrier.lines]);
  return { carrier: left, ...(carrier.reserve.value > 0 && { area: areaFor(carrier.reserve, rate) }) };
}
