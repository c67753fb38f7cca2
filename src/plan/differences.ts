import { joinPath } from "../errors.js";
import { inUnit } from "../units/convert.js";
import { compareDecided } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { isUnit } from "../units/resolve.js";
import type { Quantity } from "../units/types.js";
import type { JobArea } from "./plot-areas.js";
import type { AnyPlan, SpreadingPlan } from "./result.js";

/** A value of a job or a plan. */
export type ComparedValue = Quantity | number | string | boolean | null;

/** One thing that differs between two plans. */
export interface Difference {
  /** Its place in the input or in the plan. */
  readonly path: string;
  /** In the first plan; null where it has none. */
  readonly before: ComparedValue;
  /** In the second plan; null where it has none. */
  readonly after: ComparedValue;
  /** By what percentage the second is more than the first, below 0 for less; null where it can't be computed. */
  readonly percent: number | null;
}

/** What a plan comes to, for comparing. */
export function resultsOf(plan: AnyPlan): object {
  const { rate, carrier, loads, totals, leftover, cost } = plan;
  return {
    ...sizeOf(plan),
    rate,
    carrier,
    loads: loads.length,
    totals: { products: totals.products.map(({ amount, strength }) => ({ amount, strength })) },
    leftover,
    cost: cost && { total: cost.total, ...("perArea" in cost && { perArea: cost.perArea }) },
  };
}

function sizeOf(plan: AnyPlan): object {
  if (!("area" in plan))
    return { carrierPerCount: plan.carrierPerCount, carrierPerLength: plan.carrierPerLength };
  return { area: areasOf(plan.area) };
}

function areasOf({ treated, ground, fraction }: JobArea): object {
  return { treated, ground, fraction };
}

/** What a plan of granules comes to, for comparing. */
export function resultsOfSpreading(plan: SpreadingPlan): object {
  const { area, rate, nutrients, total, plots, hopper, bags, check, cost } = plan;
  return {
    area: area && areasOf(area),
    rate,
    nutrients,
    total,
    plots,
    hopper,
    bags,
    check: check && { rate: check.rate, perPass: check.perPass, deviation: check.deviation },
    cost: cost && { total: cost.total },
  };
}

/** Where two trees of data differ. */
export function differences(before: unknown, after: unknown, path: string): Difference[] {
  if (isBranch(before) || isBranch(after)) {
    const [a, b] = [branch(before), branch(after)];
    const list = Array.isArray(before) || Array.isArray(after);
    const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])];
    return keys.flatMap((key) => differences(a[key], b[key], list ? `${path}[${key}]` : joinPath(path, key)));
  }
  const [one, other] = [leaf(before), leaf(after)];
  if (same(one, other)) return [];
  return [{ path, before: one, after: other, percent: percentMore(one, other) }];
}

function isBranch(node: unknown): boolean {
  return typeof node === "object" && node !== null && !isQuantity(node);
}

function branch(node: unknown): Readonly<Record<string, unknown>> {
  return isBranch(node) ? (node as Readonly<Record<string, unknown>>) : {};
}

function isQuantity(node: unknown): node is Quantity {
  return typeof node === "object" && node !== null && "unit" in node && "value" in node && isUnit(node.unit);
}

function leaf(node: unknown): ComparedValue {
  return node === undefined || isBranch(node) ? null : (node as ComparedValue);
}

function same(one: ComparedValue, other: ComparedValue): boolean {
  const [a, b] = numbers(one, other) ?? [];
  if (a !== undefined && b !== undefined) return compareDecided(a, b) === 0;
  return one === other;
}

function percentMore(one: ComparedValue, other: ComparedValue): number | null {
  const [a, b] = numbers(one, other) ?? [];
  return a === undefined || b === undefined || a === 0 ? null : Number((100 * (b / a - 1)).toPrecision(12));
}

/** Two values as numbers of one unit, where they can be. */
function numbers(one: ComparedValue, other: ComparedValue): readonly [number, number] | undefined {
  if (typeof one === "number" && typeof other === "number") return [one, other];
  if (!isQuantity(one) || !isQuantity(other) || dimensionOf(one.unit) !== dimensionOf(other.unit))
    return undefined;
  return [one.value, inUnit(other, one.unit)];
}
