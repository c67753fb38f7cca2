import { type Sentence, SprayMathError, shown } from "../errors.js";
import { checkEngine } from "./engine.js";
import { nearest } from "./nearest.js";
import { COMPOUNDS, type SimpleDimension, TABLE, type UnitEntry } from "./table.js";
import type { Dimension, SimpleUnit, Unit, UnitSystem } from "./types.js";

/** A unit taken apart: what it measures, the simple unit over the stroke, and the one under it. */
export interface ResolvedUnit {
  readonly dimension: Dimension;
  readonly over: SimpleUnit;
  readonly per?: SimpleUnit | undefined;
  /** The system of measure of what stands over the stroke. */
  readonly system: UnitSystem;
}

// Holds valid units only, so its size is bounded by their number whatever text comes in.
const resolved = new Map<string, ResolvedUnit>();

/** The table's entry for a simple unit, with its dimension. `mph` has none: it is `mi/h`. */
export function simpleEntry(unit: string): { dimension: SimpleDimension; entry: UnitEntry } | undefined {
  for (const dimension of Object.keys(TABLE) as SimpleDimension[]) {
    const units = TABLE[dimension];
    const entry = Object.hasOwn(units, unit) ? units[unit] : undefined;
    if (entry !== undefined) return { dimension, entry };
  }
  return undefined;
}

/** The dimension that a compound of two simple dimensions makes, if it makes one. */
export function compoundDimension(over: SimpleDimension, per: SimpleDimension): Dimension | undefined {
  return (Object.keys(COMPOUNDS) as (keyof typeof COMPOUNDS)[]).find(
    (dimension) => COMPOUNDS[dimension].over === over && COMPOUNDS[dimension].per === per,
  );
}

function read(unit: string): ResolvedUnit | undefined {
  // A unit may be the first thing that is asked for.
  checkEngine();
  if (unit === "mph") return { dimension: "speed", over: "mi", per: "h", system: "us" };
  const stroke = unit.indexOf("/");
  if (stroke < 0) {
    const simple = simpleEntry(unit);
    return simple && { dimension: simple.dimension, over: unit as SimpleUnit, system: homeOf(simple.entry) };
  }
  const [over, per] = [unit.slice(0, stroke), unit.slice(stroke + 1)];
  const [top, bottom] = [simpleEntry(over), simpleEntry(per)];
  const dimension = top && bottom && compoundDimension(top.dimension, bottom.dimension);
  return (
    dimension && { dimension, over: over as SimpleUnit, per: per as SimpleUnit, system: homeOf(top.entry) }
  );
}

function homeOf({ systems: [home] }: UnitEntry): UnitSystem {
  return home;
}

/** Whether no unit is given: a form's is blank until one is chosen. */
export function isBlank(unit: unknown): boolean {
  return unit === undefined || unit === null || (typeof unit === "string" && unit.trim() === "");
}

/** Takes a unit apart; refuses what isn't one. */
export function resolveUnit(unit: unknown, path = "unit"): ResolvedUnit {
  const known = resolvedUnit(unit);
  if (known !== undefined) return known;
  const isMissing = isBlank(unit);
  const { key, template, figures } = unknownUnit(isMissing ? undefined : unit, "gal/ac");
  // Texts alone: what fills templates with units stands on this file.
  const message = template.replace(/\{(\w+)\}/g, (_, name: string) => String(figures[name]));
  throw new SprayMathError(isMissing ? "missing" : "unknown-unit", path, message, { key, figures });
}

/** The fault of what is not a unit, with the one that it was probably meant to be. */
export function unknownUnit(unit: unknown, example: string): Sentence {
  const given = shown(unit);
  if (typeof unit !== "string")
    return {
      key: "choose-unit",
      template: 'Choose a unit, such as "{example}".',
      figures: { given, example },
    };
  return unknownUnitOr(given, nearestUnit(unit), example);
}

/** The same for a unit as it is shown, and the one that it was probably meant to be. */
export function unknownUnitOr(given: string, meant: string | undefined, example: string): Sentence {
  return meant === undefined
    ? {
        key: "unit-unknown",
        template: 'The unit {given} isn\'t known here. Measure in one such as "{example}".',
        figures: { given, example },
      }
    : {
        key: "unit-misspelled",
        template: 'The unit {given} isn\'t known here. Did you mean "{meant}"?',
        figures: { given, example, meant },
      };
}

/** A unit taken apart, or nothing where it isn't one. */
export function resolvedUnit(unit: unknown): ResolvedUnit | undefined {
  if (typeof unit !== "string") return undefined;
  const known = resolved.get(unit);
  if (known !== undefined) return known;
  const fresh = read(unit);
  if (fresh !== undefined) resolved.set(unit, fresh);
  return fresh;
}

// Bounded like the units themselves.
const compounds = new Map<string, Map<string, Unit>>();

/** The unit of one simple unit per another, always the same string: it is found in a table faster than one put together anew. */
export function perUnit(over: string, per: string): Unit {
  let those = compounds.get(over);
  if (those === undefined) {
    those = new Map();
    compounds.set(over, those);
  }
  let unit = those.get(per);
  if (unit === undefined) {
    unit = `${over}/${per}` as Unit;
    those.set(per, unit);
  }
  return unit;
}

/**
 * Returns whether a text is a unit of this library, spelled as it spells it.
 *
 * @param unit - anything, such as text from a file
 * @returns true where it is one
 *
 * @example
 * ```ts
 * import { isUnit } from "swath-to-spoon/units";
 *
 * console.log(isUnit("gal/ac"), isUnit("gallons per acre")); // true false
 * ```
 */
export function isUnit(unit: unknown): unit is Unit {
  return resolvedUnit(unit) !== undefined;
}

/** Every simple unit, `mph` included. */
export function simpleUnits(): SimpleUnit[] {
  return [...Object.values(TABLE).flatMap((units) => Object.keys(units)), "mph"] as SimpleUnit[];
}

// "gallons" is nearest to a name of `gal`, though far from `gal` itself. Another number, or what
// stands before a name, is another amount and not another spelling.
function nearestSimple(text: string): string | undefined {
  const names = new Map<string, string>();
  const typed = countAndName(text);
  for (const unit of simpleUnits()) {
    const { singular, plural, symbol } = simpleEntry(unit)?.entry ?? { singular: "", plural: "", symbol: "" };
    for (const text of [symbol, plural, singular, unit]) {
      const { start, name } = countAndName(text);
      if (start === typed.start) names.set(name, unit);
    }
  }
  const name = nearest(typed.name, [...names.keys()]);
  return name === undefined ? undefined : names.get(name);
}

/** `1,000 sq ft` starts with `1000s`, and its name is `sq ft`. */
function countAndName(text: string): { readonly start: string; readonly name: string } {
  const [, count = "", name = ""] = /^([\d,]*) *(.*)/.exec(text.toLowerCase()) ?? [];
  return { start: count.replaceAll(",", "") + name[0], name };
}

/** The unit that a text was probably meant to be. */
export function nearestUnit(text: string): Unit | undefined {
  const guess = text
    .slice(0, 40)
    .split(/\/| per /)
    .map(nearestSimple)
    .join("/");
  return isUnit(guess) ? guess : undefined;
}
