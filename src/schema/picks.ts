import { SprayMathError } from "../errors.js";
import { checkedObject } from "../units/guard.js";

// How a choice tells which of its options an input is meant for. Each gives the option's place, or throws.

/** By which of some groups of fields is given: one of them, and not two. `otherwise` is meant where none is. */
export function byGiven(
  groups: readonly (readonly string[])[],
  otherwise?: number,
): (input: unknown) => number {
  return (input) => {
    const given = checkedObject(input as Record<string, unknown>, "");
    const found = groups.flatMap((group, i) =>
      group.some((field) => given[field] !== undefined) ? [i] : [],
    );
    const [first = otherwise, second] = found;
    const offered = groups.map((group) => group.join(" and ")).join("; ");
    if (first === undefined)
      throw new SprayMathError("missing", "", `Nothing given of what it takes; wanted one of: ${offered}.`);
    if (second !== undefined) {
      const told = (i: number): string => (groups[i] as readonly string[]).join(" and ");
      throw new SprayMathError(
        "conflict",
        "",
        `Given both ${told(first)} and ${told(second)}; wanted one of: ${offered}.`,
      );
    }
    return first;
  };
}

/** The first option for a list, the second for all else. */
export function byList(input: unknown): number {
  return Array.isArray(input) ? 0 : 1;
}

/** The first option for an object with one of these fields that is no quantity, the second for all else. */
export function byField(...names: readonly string[]): (input: unknown) => number {
  return (input) => (hasField(input, names) && !isQuantity(input) ? 0 : 1);
}

/** Whether an input is meant for a quantity, right or wrong. */
export function isQuantity(input: unknown): boolean {
  return hasField(input, ["value", "unit"]);
}

/** Whether an input is an object with one of these fields. */
export function hasField(input: unknown, names: readonly string[]): boolean {
  if (typeof input !== "object" || input === null) return false;
  return names.some((name) => (input as Record<string, unknown>)[name] !== undefined);
}
