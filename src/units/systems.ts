import { type ResolvedUnit, resolvedUnit, resolveUnit } from "./resolve.js";
import type { Dimension, Unit, UnitSystem } from "./types.js";

/** The units that results come back in, for one system of measure. */
export interface SystemUnits {
  readonly length: "ft" | "m";
  readonly area: "ft2" | "m2";
  readonly landArea: "ac" | "ha";
  readonly volume: "gal" | "imp_gal" | "L";
  readonly smallVolume: "fl_oz" | "imp_fl_oz" | "mL";
  readonly mass: "lb" | "kg";
  readonly smallMass: "oz" | "g";
  readonly speed: "mph" | "km/h";
  readonly flow: "gal/min" | "imp_gal/min" | "L/min";
  readonly massFlow: "lb/min" | "kg/min";
  readonly pressure: "psi" | "bar";
  readonly volumeRate: "gal/ac" | "imp_gal/ac" | "L/ha";
  readonly massRate: "lb/ac" | "kg/ha";
  readonly density: "lb/gal" | "lb/imp_gal" | "kg/L";
}

const FOOT_POUND = {
  length: "ft",
  area: "ft2",
  landArea: "ac",
  mass: "lb",
  smallMass: "oz",
  speed: "mph",
  massFlow: "lb/min",
  pressure: "psi",
  massRate: "lb/ac",
} as const;

const SYSTEM_UNITS: Record<UnitSystem, SystemUnits> = /* @__PURE__ */ (() => ({
  us: {
    ...FOOT_POUND,
    volume: "gal",
    smallVolume: "fl_oz",
    flow: "gal/min",
    volumeRate: "gal/ac",
    density: "lb/gal",
  },
  imperial: {
    ...FOOT_POUND,
    volume: "imp_gal",
    smallVolume: "imp_fl_oz",
    flow: "imp_gal/min",
    volumeRate: "imp_gal/ac",
    density: "lb/imp_gal",
  },
  metric: {
    length: "m",
    area: "m2",
    landArea: "ha",
    volume: "L",
    smallVolume: "mL",
    mass: "kg",
    smallMass: "g",
    speed: "km/h",
    flow: "L/min",
    massFlow: "kg/min",
    pressure: "bar",
    volumeRate: "L/ha",
    massRate: "kg/ha",
    density: "kg/L",
  },
}))();

/**
 * Returns the system of measure that a unit belongs to. A compound goes with the part before its slash. A unit that US and imperial
 * measure share, such as the foot, counts as US, and so do the units that every system uses (time, percent).
 *
 * @param unit - any unit
 * @returns the system
 * @throws SprayMathError `missing` or `unknown-unit`
 *
 * @example
 * ```ts
 * import { systemOf } from "swath-to-spoon/units";
 *
 * console.log(systemOf("imp_gal/ac")); // imperial
 * ```
 */
export function systemOf(unit: Unit): UnitSystem {
  return resolveUnit(unit).system;
}

/** The units that results come back in, for a function whose first quantity is in `unit`. */
export function unitsLike(unit: Unit): SystemUnits {
  return unitsIn(systemOf(unit));
}

/** The units that results come back in, in a system of measure. */
export function unitsIn(system: UnitSystem): SystemUnits {
  return SYSTEM_UNITS[system];
}

// An example in a message is not worth a longer look.
const MOST_LOOKED_AT = 500;

/** The system of the first unit in an input, those aside that every system uses; US where there is none. */
export function firstSystem(input: unknown): UnitSystem {
  const found: unknown[] = [input];
  try {
    for (let i = 0; i < found.length && i < MOST_LOOKED_AT; i++) {
      const value = found[i];
      if (typeof value !== "object" || value === null) continue;
      const known = resolvedUnit((value as { readonly unit?: unknown | undefined }).unit);
      if (known !== undefined && !isEverywhere(known)) return known.system;
      found.push(...Object.values(value).slice(0, MOST_LOOKED_AT));
    }
  } catch {
    // What fails when it is looked at is noted by whoever needs it.
  }
  return "us";
}

function isEverywhere({ dimension }: ResolvedUnit): boolean {
  return dimension === "time" || dimension === "fraction" || dimension === "count";
}

// For what no system has a unit of its own.
const COMMON_UNITS: Partial<Record<Dimension, Unit>> = {
  time: "s",
  fraction: "%",
  count: "plant",
  volumeConcentration: "mL/L",
  massFraction: "g/kg",
  volumePerCount: "mL/plant",
  massPerCount: "g/plant",
};

/** The unit of a dimension that an example is given in. */
export function usualUnit(dimension: Dimension, units: SystemUnits): Unit {
  const common = COMMON_UNITS[dimension] ?? (units as Partial<Record<Dimension, Unit>>)[dimension];
  return (common ??
    `${dimension === "massPerLength" ? units.smallMass : units.smallVolume}/100${units.length}`) as Unit;
}
