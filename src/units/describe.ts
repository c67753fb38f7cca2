import { dimensionOf } from "./dimensions.js";
import { resolveUnit, simpleEntry } from "./resolve.js";
import { systemOf } from "./systems.js";
import type { Dimension, Unit, UnitSystem } from "./types.js";

/** What a unit is called and where it is used: enough for a list to pick from. */
export interface UnitDescription<U extends Unit = Unit> {
  /** The unit as the library spells it. */
  readonly unit: U;
  /** What it measures. */
  readonly dimension: Dimension;
  /** Its name for one: `gallon per acre`. */
  readonly singular: string;
  /** Its name for several: `gallons per acre`. */
  readonly plural: string;
  /** Its short form in the trade: `fl oz/1,000 sq ft`. */
  readonly symbol: string;
  /** The systems of measure that use it; for a compound those that use both parts, so none for a mix such as `L/ac`. */
  readonly systems: readonly UnitSystem[];
  /** The system that results go by where this is the first unit given; see {@link systemOf}. */
  readonly system: UnitSystem;
}

/**
 * Describes a unit. The names of a compound are put together from those of its parts.
 *
 * @param unit - any unit
 * @returns its dimension, names, symbol and systems of measure
 * @throws SprayMathError `missing` or `unknown-unit`
 *
 * @example
 * ```ts
 * import { describeUnit } from "swath-to-spoon/units";
 *
 * console.log(describeUnit("gal/ac").plural); // gallons per acre
 * console.log(describeUnit("fl_oz/1000ft2").symbol); // fl oz/1,000 sq ft
 * ```
 */
export function describeUnit<U extends Unit>(unit: U): UnitDescription<U> {
  const description = descriptionOf(unit);
  return { ...(description as UnitDescription<U>), systems: [...description.systems] };
}

/** The description itself, which the library shares and nobody changes. */
export function descriptionOf(unit: Unit): UnitDescription {
  let description = DESCRIBED.get(unit);
  if (description === undefined) {
    description = described(unit);
    DESCRIBED.set(unit, description);
  }
  return description;
}

// Holds valid units only, so its size is bounded by their number whatever text comes in.
const DESCRIBED = new Map<Unit, UnitDescription>();

function described(unit: Unit): UnitDescription {
  const { over, per } = resolveUnit(unit);
  const common = { unit, dimension: dimensionOf(unit), system: systemOf(unit) };
  const top = namesOf(over);
  if (per === undefined) return { ...common, ...top };
  const bottom = namesOf(per);
  return {
    ...common,
    singular: `${top.singular} per ${bottom.singular}`,
    plural: `${top.plural} per ${bottom.singular}`,
    symbol: unit === "mph" ? "mph" : `${top.symbol}/${bottom.symbol}`,
    systems: top.systems.filter((system) => bottom.systems.includes(system)),
  };
}

function namesOf(unit: string): Pick<UnitDescription, "singular" | "plural" | "symbol" | "systems"> {
  const found = simpleEntry(unit);
  if (found === undefined) throw new Error(`${unit} is not in the table`);
  const { singular, plural, symbol, systems } = found.entry;
  return { singular, plural, symbol, systems };
}
