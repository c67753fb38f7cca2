import { joinPath } from "../errors.js";
import { convertValue } from "../units/convert.js";
import { compareDecided } from "../units/decide.js";
import { sameDimension } from "../units/quantity.js";
import { isUnit } from "../units/resolve.js";
import type { Quantity } from "../units/types.js";
import type { Plan } from "./result.js";
import type { WarningCode } from "./warnings.js";

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
  /** By how many per cent the second is more than the first, below 0 for less; null where that cannot be told. */
  readonly percent: number | null;
}

/** What changed from one plan to another. */
export interface PlanComparison {
  /** What was put in differently. */
  readonly inputs: readonly Difference[];
  /** What came out differently: areas, rate, mix, loads, products, what is left, cost. */
  readonly results: readonly Difference[];
  /** The warnings that the second plan has and the first has not. */
  readonly newWarnings: readonly WarningCode[];
  /** The warnings that the first plan has and the second has not. */
  readonly goneWarnings: readonly WarningCode[];
}

/**
 * What changed from one plan to another, and by how much: a nozzle, a pace, a tank.
 *
 * Quantities are compared in the unit of the first plan, noise aside: the same job in other units differs in nothing.
 *
 * Formula: percent = 100 × (after / before − 1).
 *
 * @param before - a finished plan
 * @param after - another
 * @returns the differences of inputs and results, and of warnings
 *
 * @example
 * ```ts
 * import { comparePlans, planApplication } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = (used: number) =>
 *   planApplication({
 *     plot: { kind: "rectangle", length: qty(40, "m"), width: qty(25, "m") },
 *     calibration: { kind: "strip", used: qty(used, "L"), swath: qty(1, "m"), distance: qty(100, "m") },
 *     sprayer: { tank: qty(15, "L") },
 *     products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *     tools: "syringes",
 *   });
 * const { inputs, results } = comparePlans(plan(2), plan(3));
 * console.log(inputs.map(({ path, percent }) => [path, percent])); // [ [ 'calibration.used', 50 ] ]
 * console.log(results.map(({ path }) => path).join(" ")); // rate carrier.sprayed carrier.total totals.products[0].strength
 * ```
 */
export function comparePlans(before: Plan, after: Plan): PlanComparison {
  const codes = (plan: Plan): WarningCode[] => [...new Set(plan.warnings.map(({ code }) => code))];
  const [first, second] = [codes(before), codes(after)];
  return {
    inputs: differences(before.input, after.input, ""),
    results: differences(resultsOf(before), resultsOf(after), ""),
    newWarnings: second.filter((code) => !first.includes(code)),
    goneWarnings: first.filter((code) => !second.includes(code)),
  };
}

function resultsOf({ area, rate, carrier, loads, totals, leftover, cost }: Plan): object {
  const { treated, ground, fraction } = area;
  return {
    area: { treated, ground, fraction },
    rate,
    carrier,
    loads: loads.length,
    totals: { products: totals.products.map(({ amount, strength }) => ({ amount, strength })) },
    leftover,
    cost: cost && { total: cost.total, perArea: cost.perArea },
  };
}

function differences(before: unknown, after: unknown, path: string): Difference[] {
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
  if (!isQuantity(one) || !isQuantity(other) || !sameDimension(one, other)) return undefined;
  return [one.value, convertValue(other.value, other.unit, one.unit)];
}
