import { treatedFraction } from "../area/treated.js";
import { relocated, SprayMathError, shown, within } from "../errors.js";
import { measurementOf, rateOf } from "../output-rate/calibration.js";
import type { Measurement } from "../output-rate/measurement.js";
import { type Carrier, carrierFor } from "../tank-mix/carrier.js";
import { type ProductAmount, productAmount } from "../tank-mix/product.js";
import { checkedList, checkedObject } from "../units/guard.js";
import { refusal } from "../units/message.js";
import { orderOf, sumOf } from "../units/quantity.js";
import type { VolumeRate } from "../units/types.js";
import type { PlanInput, Product } from "./input.js";
import { carrierInput, PRODUCT_PLACES, productInput } from "./job.js";
import { plotAreas, plotsOf } from "./plot.js";
import type { Plan } from "./result.js";

/** What a job takes in all, before it is parted into loads. */
export interface JobTotals {
  readonly area: Plan["area"];
  readonly rate: VolumeRate;
  readonly carrier: Carrier;
  /** Each product in the whole mix, unrounded. */
  readonly amounts: readonly ProductAmount[];
}

/** From the plot and the calibration to what the whole job takes. */
export function jobTotals(input: PlanInput): JobTotals {
  checkedObject(input, "");
  const area = jobArea(input);
  const rate = within("calibration", () => rateOf(input.calibration));
  refuseRateOnGround(input, area);
  checkedObject(input.sprayer, "sprayer");
  const carrier = relocated(CARRIER_PLACES, () => carrierFor(carrierInput(input, rate, area.treated)));
  const amounts = checkedProducts(input.products).map((product, i) =>
    within(`products[${i}]`, () =>
      relocated(PRODUCT_PLACES, () => productAmount(productInput(product, { rate, carrier, area }))),
    ),
  );
  return { area, rate, carrier, amounts };
}

const CARRIER_PLACES = { lineVolume: "sprayer.lineVolume", rate: "calibration", area: "plot" };
function jobArea({ plot }: PlanInput): Plan["area"] {
  const several = Array.isArray(plot);
  if (several) checkedList(plot, "plot");
  const plots = plotsOf(plot).map((one, i) => within(several ? `plot[${i}]` : "plot", () => plotAreas(one)));
  const treated = sumOf(plots.map((one) => one.treated));
  const lengths = known(plots.map(({ rowLength }) => rowLength));
  const grounds = known(plots.map(({ ground }) => ground));
  const ground = grounds && sumOf(grounds);
  return {
    treated,
    ...(ground && { ground, fraction: treatedFraction({ treated, ground }) }),
    ...(lengths && { rowLength: sumOf(lengths) }),
    plots,
  };
}

// Rows sprayed with their alleys counted in give a rate per area of ground. On strips or bands alone it would make each drop
// of the mix several times too strong.
function refuseRateOnGround({ calibration, plot }: PlanInput, { plots }: Plan["area"]): void {
  if (!isPerGround(measurementOf(calibration))) return;
  const part = plotsOf(plot).findIndex((one, i) => {
    const { treated, ground } = plots[i] as (typeof plots)[number];
    return ground === undefined ? one.kind !== "treated-area" : orderOf(treated, ground) === -1;
  });
  if (part < 0) return;
  throw new SprayMathError(
    "conflict",
    "calibration",
    "Given a rate per area of ground, alleys included, for a plot of which only a part is treated; wanted a plot of all the ground that the rows " +
      "stand on, such as a rectangle, or a calibration on the treated part alone, such as a strip.",
  );
}

function isPerGround(measurement: Measurement): boolean {
  return measurement.kind === "tree-row" || (measurement.kind === "hand" && measurement.area === undefined);
}

/** The list, where none of it is missing. */
export function known<T>(list: readonly (T | undefined)[]): T[] | undefined {
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
    if (names.has(sameName(name))) {
      throw new SprayMathError(
        "conflict",
        path,
        `Given ${shown(name)} a second time; wanted one entry a product.`,
      );
    }
    names.add(sameName(name));
    refuseContradiction(product, `products[${i}].soFar.rate`);
  }
  return products;
}

// No applications and some product used already can't both be true, and each is believed somewhere.
function refuseContradiction({ soFar }: Product, path: string): void {
  if (soFar?.applications !== 0 || soFar.rate === undefined || soFar.rate === null) return;
  const used = (soFar.rate as { readonly value?: unknown }).value;
  if (used === 0) return;
  throw refusal(
    "conflict",
    "used-without-application",
    path,
    "You entered no applications so far this season but some product used. Correct one of them.",
  );
}

// "Product A" and "product a " on one sheet are one product to whoever reads it.
function sameName(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}
