import { inUnit } from "../units/convert.js";
import { type Decimal, decimal } from "../units/exact.js";
import { unitsLike } from "../units/systems.js";
import type { Quantity, TreatedArea } from "../units/types.js";
import type { PlanInput } from "./input.js";
import { DEFAULT_DECIMALS, type MixCost, type PlanCost, type Price } from "./money.js";
import type { LoadAmount, MixOf, Plan } from "./result.js";

// big.js: round half up.
const HALF_UP = 1;

/** The cost of a finished plan; nothing where no price is given. Trusts its input. */
export function planCost(
  input: PlanInput,
  { area, loads, totals }: Pick<Plan, "area" | "loads" | "totals">,
): PlanCost | undefined {
  const costs = costsOf(input, { loads, totals });
  if (costs === undefined) return undefined;
  const { total, places } = costs;
  const plots = area.plots.map(({ treated }) => inUnit(treated, "m2"));
  return {
    ...costs.cost,
    plots: shared(total, plots, places).map((share) => share.toNumber()),
    perArea: perArea(total, area.treated, places),
  };
}

/** The cost of a mix; nothing where no price is given. Trusts its input. */
export function mixCost(input: Priced, mix: PricedMix): MixCost | undefined {
  return costsOf(input, mix)?.cost;
}

type Priced = Pick<PlanInput, "products" | "currency">;
type PricedMix = Pick<MixOf<LoadAmount, object>, "loads" | "totals">;

function costsOf(
  input: Priced,
  { loads, totals }: PricedMix,
): { readonly cost: MixCost; readonly total: Decimal; readonly places: number } | undefined {
  if (input.products.every(({ price }) => price === undefined)) return undefined;
  const { code = "", decimals: places = DEFAULT_DECIMALS } = input.currency ?? {};
  const priced = input.products.flatMap(({ name, price }, i) => {
    if (price === undefined) return [];
    const { amount } = totals.products[i] as (typeof totals.products)[number];
    const total = costOf(amount, price).round(places, HALF_UP);
    const weights = loads.map((load) => (load.products[i] as LoadAmount).amount.value);
    return [{ name, total, shares: shared(total, weights, places) }];
  });
  const total = sumOf(priced.map((product) => product.total));
  const cost = {
    currency: { code, decimals: places },
    loads: loads.map((_, at) => ({
      products: priced.map(({ name, shares }) => ({ name, cost: (shares[at] as Decimal).toNumber() })),
      total: sumOf(priced.map(({ shares }) => shares[at] as Decimal)).toNumber(),
    })),
    products: priced.map(({ name, total }) => ({ name, cost: total.toNumber() })),
    total: total.toNumber(),
    notPriced: input.products.filter(({ price }) => price === undefined).map(({ name }) => name),
  };
  return { cost, total, places };
}

/** What an amount costs alone, in a currency's decimals. Trusts its input. */
export function amountCost(amount: Quantity, price: Price, places: number): number {
  return costOf(amount, price).round(places, HALF_UP).toNumber();
}

function costOf(amount: Quantity, { amount: money, per }: Price): Decimal {
  return decimal(money)
    .times(decimal(amount.value))
    .div(decimal(inUnit(per, amount.unit)));
}

/** Splits a sum of money by weights: the parts add up to it: what has been given out by each place is rounded. */
function shared(total: Decimal, weights: readonly number[], places: number): Decimal[] {
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  let weight = 0;
  let given = decimal(0);
  return weights.map((one, i) => {
    weight += one;
    const upTo =
      i === weights.length - 1 ? total : total.times(decimal(weight / whole)).round(places, HALF_UP);
    const share = upTo.minus(given);
    given = upTo;
    return share;
  });
}

function sumOf(amounts: readonly Decimal[]): Decimal {
  return amounts.reduce((sum, amount) => sum.plus(amount), decimal(0));
}

function perArea(total: Decimal, treated: TreatedArea, places: number): PlanCost["perArea"] {
  const { landArea } = unitsLike(treated.unit);
  const size = inUnit(treated, landArea);
  return { cost: total.div(decimal(size)).round(places, HALF_UP).toNumber(), per: landArea };
}
