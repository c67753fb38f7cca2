import { joinPath } from "../errors.js";
import { isUnit } from "../units/resolve.js";
import type { Quantity, Volume } from "../units/types.js";
import type { PlanInput, Product } from "./input.js";
import type { Plan } from "./result.js";
import { jobTotals } from "./totals.js";

/** How far one input moves the products of a job. */
export interface InputSensitivity {
  /** The input's place, such as `calibration.used`. */
  readonly path: string;
  /** Its value. */
  readonly value: Quantity | number;
  /** What is changed: the value by one per cent, or a count by one more. */
  readonly change: "one-percent" | "one-more";
  /** By how many per cent that moves the whole mix, below 0 for less. */
  readonly mix: number;
  /** By how many per cent that moves each product in all loads, below 0 for less. */
  readonly products: readonly {
    /** The product. */
    readonly name: string;
    /** By how many per cent. */
    readonly percent: number;
  }[];
}

/** Counts, which move by whole steps. Other whole numbers, such as the sides of a row, are choices and no measurements. */
const COUNTS = new Set(["rows", "beds", "count", "plants", "nozzlesPerRow"]);
const STEP = 1e-4;

/**
 * How the doses move when an input does: which number to check again before anything is poured.
 *
 * Formula: by one per cent of an input, the first derivative of the logarithm, as a central difference; for a count, the
 * job with one more. What is refused with more or with less, such as a part of the ground that is all of it, is moved the
 * other way alone, and a count that has to stay as it is is left out. A reserve that rounds up to a convenient volume is held at what it came to, since it moves in jumps.
 * Source: first-order sensitivity, as for uncertainty in JCGM 100:2008, 5.1.3.
 *
 * @param plan - a finished plan
 * @returns every measured input and count that moves something, the strongest first; corners and stations of a boundary
 *   are left out, since one of them alone says little
 *
 * @example
 * ```ts
 * import { planApplication, planSensitivity } from "swath-to-spoon/plan";
 * import { qty } from "swath-to-spoon/units";
 *
 * const plan = planApplication({
 *   plot: { kind: "row-bands", rows: 10, rowLength: qty(50, "m"), bandWidth: qty(60, "cm") },
 *   calibration: { kind: "strip", used: qty(2, "L"), swath: qty(60, "cm"), distance: qty(100, "m") },
 *   sprayer: { tank: qty(15, "L") },
 *   products: [{ name: "Product A", form: "liquid", rate: qty(2, "L/ha") }],
 *   tools: "syringes",
 * });
 * const [first] = planSensitivity(plan);
 * console.log(first?.path, first?.change, first?.products[0]?.percent); // plot.rows one-more 10
 * ```
 */
export function planSensitivity(plan: Plan): InputSensitivity[] {
  const input = held(plan);
  const start = amountsOf(input);
  const moved = leavesOf(input).flatMap(({ path, keys, value, count }): InputSensitivity[] => {
    const at = (changed: number): number[] | undefined =>
      possible(() => amountsOf(replaced(input, keys, changed) as PlanInput));
    const number = typeof value === "number" ? value : value.value;
    const moves = count
      ? at(number + 1)?.map((after, i) => after / (start[i] as number) - 1)
      : derivative(at, number, start);
    if (moves === undefined) return [];
    const [mix, ...products] = moves.map(percent) as [number, ...number[]];
    return [
      {
        path,
        value,
        change: count ? "one-more" : "one-percent",
        mix,
        products: products.map((moves, i) => ({ name: (input.products[i] as Product).name, percent: moves })),
      },
    ];
  });
  return moved.filter((one) => strongest(one) > 0).sort((a, b) => strongest(b) - strongest(a));
}

/** The whole mix and each product in it. */
function amountsOf(input: PlanInput): number[] {
  const { carrier, amounts } = jobTotals(input);
  return [carrier.total.value, ...amounts.map(({ amount }) => amount.value)];
}

// A job next to a limit, such as bands as wide as their spacing, is refused on the other side of it.
function possible<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

function held(plan: Plan): PlanInput {
  const { reserve } = plan.input;
  if (reserve === undefined || !("roundUpTo" in reserve)) return plan.input;
  return { ...plan.input, reserve: { volume: plan.carrier.reserve as Volume } };
}

// From both sides, or from the one that is possible.
function derivative(
  at: (changed: number) => number[] | undefined,
  number: number,
  start: readonly number[],
): number[] {
  const [up, down] = [at(number * (1 + STEP)), at(number * (1 - STEP))];
  const width = Math.log((up === undefined ? 1 : 1 + STEP) / (down === undefined ? 1 : 1 - STEP));
  const [after, before] = [up ?? start, down ?? start];
  return start.map((_, i) => Math.log((after[i] as number) / (before[i] as number)) / width / 100);
}

// The difference of two floats leaves noise near the 8th digit.
function percent(share: number): number {
  return Number((100 * share).toFixed(6)) + 0;
}

function strongest({ mix, products }: InputSensitivity): number {
  return Math.max(Math.abs(mix), ...products.map((product) => Math.abs(product.percent)));
}

interface Leaf {
  readonly path: string;
  readonly keys: readonly (string | number)[];
  readonly value: Quantity | number;
  readonly count: boolean;
}

/** The measured inputs and counts of a job. */
function leavesOf(input: PlanInput): Leaf[] {
  const { plot, calibration, sprayer, reserve, products } = input;
  return leaves({ plot, calibration, sprayer, reserve, products }, "", []);
}

function leaves(node: unknown, path: string, keys: readonly (string | number)[]): Leaf[] {
  if (typeof node !== "object" || node === null) return [];
  if (isQuantity(node)) {
    const { value, unit } = node;
    return value === 0 ? [] : [{ path, keys: [...keys, "value"], value: { value, unit }, count: false }];
  }
  if (Array.isArray(node)) return node.flatMap((one, i) => leaves(one, `${path}[${i}]`, [...keys, i]));
  return Object.entries(node).flatMap(([key, value]): Leaf[] => {
    const place = joinPath(path, key);
    if (typeof value !== "number") return leaves(value, place, [...keys, key]);
    const count = COUNTS.has(key);
    if (!count && key !== "percent" && key !== "fraction") return [];
    // All of the ground cannot become more.
    return value === 0 || (key === "fraction" && value === 1)
      ? []
      : [{ path: place, keys: [...keys, key], value, count }];
  });
}

function isQuantity(node: object): node is Quantity {
  return "value" in node && "unit" in node && typeof node.value === "number" && isUnit(node.unit);
}

function replaced(node: unknown, [key, ...rest]: readonly (string | number)[], value: number): unknown {
  if (key === undefined) return value;
  if (Array.isArray(node)) return node.map((one, i) => (i === key ? replaced(one, rest, value) : one));
  const object = node as Readonly<Record<string, unknown>>;
  return { ...object, [key]: replaced(object[key], rest, value) };
}
