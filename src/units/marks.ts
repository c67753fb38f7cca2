import type { AreaKind, FractionBasis, Quantity, Unit } from "./types.js";

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
