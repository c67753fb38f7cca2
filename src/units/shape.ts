import { SprayMathError, shown } from "../errors.js";
import { isUnit, resolveUnit } from "./resolve.js";
import type { AreaKind, FractionBasis, Quantity, Unit } from "./types.js";

/** Refuses what is not `{ value: finite number, unit: known unit }`; `example` is a unit of what is wanted. */
export function checkShape(
  quantity: unknown,
  path: string,
  example: Unit = "ft",
): asserts quantity is Quantity {
  if (quantity === undefined || quantity === null) {
    throw new SprayMathError(
      "missing",
      path,
      `Nothing given; wanted a number with its unit, such as { value: 5, unit: "${example}" }.`,
    );
  }
  if (typeof quantity !== "object" || Array.isArray(quantity)) {
    throw new SprayMathError(
      "not-a-quantity",
      path,
      `Given ${shown(quantity)}; wanted a number with its unit, such as { value: 5, unit: "${example}" }.`,
    );
  }
  const { value, unit } = quantity as Partial<Quantity>;
  // A path is put together only where there is a fault to report.
  if (!Number.isFinite(value)) checkNumber(value, `${path}.value`);
  if (!isUnit(unit)) resolveUnit(unit, `${path}.unit`);
}

/** Refuses what is not a finite number: text such as `"5"`, `NaN`, an infinity, nothing at all. */
export function checkNumber(value: unknown, path: string): asserts value is number {
  if (value === undefined || value === null) {
    throw new SprayMathError("missing", path, "Nothing given; wanted a number.");
  }
  if (typeof value !== "number") {
    throw new SprayMathError(
      "not-a-quantity",
      path,
      `Given ${shown(value)}; wanted a number, not ${typeof value === "string" ? "text" : "something else"}.`,
    );
  }
  if (!Number.isFinite(value)) {
    throw new SprayMathError("not-finite", path, `Given ${value}; wanted a finite number.`);
  }
}

/** What a quantity may say besides its number and unit: what an area is an area of, what a fraction is a part of. */
export interface Marks {
  readonly of?: AreaKind | undefined;
  readonly basis?: FractionBasis | undefined;
}

/** A quantity with its marks. */
export type Marked = Quantity & {
  readonly of?: AreaKind | undefined;
  readonly basis?: FractionBasis | undefined;
};

/** A quantity with the marks of another: plain data. */
export function remade({ of, basis }: Marks | Marked, value: number, unit: Unit): Quantity {
  if (of) return { value, unit, of } as Quantity;
  return basis ? ({ value, unit, basis } as Quantity) : { value, unit };
}
