import { SprayMathError, shown } from "../errors.js";
import { convertValue, knownFactor, timesFactor } from "./convert.js";
import { dimensionInWords } from "./dimensions.js";
import { resolveUnit } from "./resolve.js";
import { checkNumber, checkShape } from "./shape.js";
import { type SystemUnits, unitsLike } from "./systems.js";
import type { AreaKind, AreaUnit, Quantity, Unit, UnitLike } from "./types.js";

/** What values an argument may take. `any` is any finite number. */
export type Range = "positive" | "nonnegative" | "any";

/**
 * The guard that every formula puts before its arguments: the number of `unit` in a quantity that must be of the same
 * dimension and in range.
 */
export function inUnit<T extends Unit>(
  quantity: Quantity<UnitLike<T>>,
  unit: T,
  path: string,
  range: Range = "positive",
): number {
  // Units that were asked for together before are known and of one dimension, and what comes out in range went in so.
  const factor = knownFactor(quantity?.unit as Unit, unit);
  if (factor !== undefined && typeof quantity.value === "number" && !Array.isArray(quantity)) {
    const result = timesFactor(quantity.value, factor);
    if (result > 0 && result < Number.POSITIVE_INFINITY) return result;
  }
  return firstInUnit(quantity, unit, path, range);
}

function firstInUnit<T extends Unit>(
  quantity: Quantity<UnitLike<T>>,
  unit: T,
  path: string,
  range: Range,
): number {
  checkShape(quantity, path, unit);
  const { value, unit: given } = quantity as Quantity;
  const wanted = resolveUnit(unit, "unit").dimension;
  if (resolveUnit(given, `${path}.unit`).dimension !== wanted) {
    throw wrongDimension(quantity as Quantity, unit, path);
  }
  checkRange(value, range, path, given);
  const result = convertValue(value, given, unit, `${path}.unit`, path);
  if (!Number.isFinite(result))
    throw new SprayMathError("not-finite", path, `Given ${value} ${given}, too large to compute with.`);
  // A value so small that it turns to 0 on the way would be divided by.
  if (range === "positive" && result === 0)
    throw new SprayMathError("out-of-range", path, `Given ${value} ${given}, too small to compute with.`);
  return result;
}

/** The error for a quantity of one dimension where another is wanted: the dimension of `example`. */
export function wrongDimension(quantity: Quantity, example: Unit, path: string): SprayMathError {
  const { value, unit } = quantity;
  const given = dimensionInWords(resolveUnit(unit, path).dimension);
  const wanted = dimensionInWords(resolveUnit(example, path).dimension);
  return new SprayMathError(
    "wrong-dimension",
    path,
    `Given ${value} ${unit}, ${given}; wanted ${wanted}, such as ${example}.` +
      (isOunceMixUp(unit, example) ? " An ounce of weight (oz) is not a fluid ounce (fl_oz)." : ""),
  );
}

/** The units that results come back in beside a quantity, once it is known to be a quantity at all. */
export function unitsWith(quantity: Quantity, path: string): SystemUnits {
  checkShape(quantity, path);
  return unitsLike(quantity.unit);
}

function isOunceMixUp(given: string, wanted: string): boolean {
  const weight = /^oz\b/.test(given) && /^(tsp|tbsp|fl_oz|cup|pt|qt|gal|mL|L|imp_)/.test(wanted);
  return weight || (/^(imp_)?fl_oz/.test(given) && /^(oz|lb|g|kg)\b/.test(wanted));
}

function checkRange(value: number, range: Range, path: string, unit: string): void {
  if (range === "positive" && value <= 0) {
    throw new SprayMathError("out-of-range", path, `Given ${value} ${unit}; wanted more than 0.`);
  }
  if (range === "nonnegative" && value < 0) {
    throw new SprayMathError("out-of-range", path, `Given ${value} ${unit}; wanted 0 or more.`);
  }
}

/** A plain number in a range, both ends allowed unless it says `above`. */
export function checkedNumber(
  value: number,
  path: string,
  limits: {
    readonly above?: number | undefined;
    readonly min?: number | undefined;
    readonly max?: number | undefined;
  } = {},
): number {
  checkNumber(value, path);
  const { above, min, max } = limits;
  if (above !== undefined && value <= above)
    throw new SprayMathError("out-of-range", path, `Given ${value}; wanted more than ${above}.`);
  if (min !== undefined && value < min)
    throw new SprayMathError("out-of-range", path, `Given ${value}; wanted ${min} or more.`);
  if (max !== undefined && value > max)
    throw new SprayMathError("out-of-range", path, `Given ${value}; wanted ${max} or less.`);
  return value + 0;
}

/** A count: a whole number from `min` on. */
export function checkedCount(value: number, path: string, min = 1): number {
  checkNumber(value, path);
  if (!Number.isSafeInteger(value) || value < min) {
    throw new SprayMathError("out-of-range", path, `Given ${value}; wanted a whole number, ${min} or more.`);
  }
  return value + 0;
}

/** A list with at least `min` members. */
export function checkedList<T>(list: readonly T[], path: string, min = 1): readonly T[] {
  if (list === undefined || list === null)
    throw new SprayMathError("missing", path, "Nothing given; wanted a list.");
  if (!Array.isArray(list))
    throw new SprayMathError("not-a-quantity", path, `Given ${shown(list)}; wanted a list.`);
  if (list.length < min)
    throw new SprayMathError("too-few", path, `Given ${list.length} of them; wanted at least ${min}.`);
  return list;
}

/** One of the names offered. */
export function checkedChoice<T extends string>(value: T, choices: readonly T[], path: string): T {
  if (value === undefined || value === null) {
    throw new SprayMathError("missing", path, `Nothing given; wanted one of: ${choices.join(", ")}.`);
  }
  if (!choices.includes(value)) {
    throw new SprayMathError(
      "unknown-choice",
      path,
      `Given ${shown(value)}; wanted one of: ${choices.join(", ")}.`,
    );
  }
  return value;
}

/** An object with fields, before they are looked into. */
export function checkedObject<T extends object>(value: T, path: string): T {
  if (value === undefined || value === null)
    throw new SprayMathError("missing", path, "Nothing given; wanted an object with its fields.");
  if (typeof value !== "object" || Array.isArray(value)) {
    throw new SprayMathError(
      "not-a-quantity",
      path,
      `Given ${shown(value)}; wanted an object with its fields.`,
    );
  }
  return value;
}

/** The number of `unit` in an area that must be of the kind wanted: treated and ground area are never taken for one another. */
export function areaIn<K extends AreaKind>(
  area: Quantity<AreaUnit> & { readonly of: K },
  kind: K,
  unit: AreaUnit,
  path: string,
  range: Range = "positive",
): number {
  const value = inUnit(area, unit, path, range);
  if (area.of !== kind) {
    throw new SprayMathError(
      "wrong-area",
      path,
      `Given ${area.of === undefined ? "an area that does not say what it is an area of" : `${area.of} area`}; wanted ${kind} area. ` +
        "Product and carrier go by the area that is really treated; the ground between bands is not.",
    );
  }
  return value;
}
