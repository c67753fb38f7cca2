import { type Check, checked } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { number, type ObjectField, object, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { groundArea, type QuantityField, treatedArea } from "../units/quantity-field.js";
import { positive, treatedOf } from "../units/result.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";

const GROUND: QuantityField<GroundArea> = groundArea("The ground area. More than 0.");

/**
 * Takes all of the ground as treated, as in a broadcast spray.
 *
 * @param ground - the ground area; more than 0
 * @returns the same area in the same unit, marked as treated
 * @throws SprayMathError `wrong-area` where it is not ground area, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`,
 * `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { rectangleArea, treatAll } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * const lawn = rectangleArea({ length: qty(50, "ft"), width: qty(30, "ft") });
 * console.log(treatAll(lawn)); // { value: 1500, unit: 'ft2', of: 'treated' }
 * ```
 */
export function treatAll(ground: GroundArea): TreatedArea {
  return allTreated(checked(ground, GROUND, "ground"));
}

/** All of some ground, as treated. Trusts its input. */
export function allTreated(ground: GroundArea): TreatedArea {
  return { ...ground, of: "treated" };
}

/** Ground of which only a part is treated. */
export interface TreatPartInput {
  /** The ground area. More than 0. */
  readonly ground: GroundArea;
  /** The part that is treated: more than 0, at most 1 (half is 0.5). */
  readonly fraction: number;
}

const PART: ObjectField<TreatPartInput> = object<TreatPartInput>({
  ground: GROUND,
  fraction: number("The part that is treated: more than 0, at most 1 (half is 0.5).", { above: 0, max: 1 }),
});

/**
 * Returns the treated area, where the treated part of the ground is known.
 *
 * Formula: treated = ground × fraction (definition of a fraction).
 *
 * @param input - the ground, and the part of it that is treated
 * @returns treated area, in ft² or m² like `ground`
 * @throws SprayMathError `wrong-area`, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit`, `wrong-dimension` or
 * `out-of-range`
 *
 * @example
 * ```ts
 * import { groundArea, treatPart } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(treatPart({ ground: groundArea(qty(1, "ac")), fraction: 0.5 })); // { value: 21780, unit: 'ft2', of: 'treated' }
 * ```
 */
export function treatPart(input: TreatPartInput): TreatedArea {
  return partTreated(checked(input, PART));
}

/** The treated part of some ground. Trusts its input. */
export function partTreated({ ground, fraction }: TreatPartInput, at = ""): TreatedArea {
  const { area } = unitsLike(ground.unit);
  return treatedOf(inUnit(ground, area) * fraction, area, at);
}

/**
 * The working of {@link treatPart}, line by line.
 *
 * @param input - as for {@link treatPart}
 * @returns the lines; the last one's result is the treated area
 * @throws SprayMathError as {@link treatPart} does
 *
 * @example
 * ```ts
 * import { groundArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 * import { treatPart } from "swath-to-spoon/working";
 *
 * const lines = treatPart({ ground: groundArea(qty(2000, "ft2")), fraction: 0.5 });
 * console.log(lines.map((line) => line.formula)); // [ 'ground * fraction' ]
 * ```
 */
export function treatPartWorking(input: TreatPartInput): WorkingLine[] {
  return linesOfPart(checked(input, PART));
}

/** The working of {@link partTreated}. Trusts its input. */
export function linesOfPart({ ground, fraction }: TreatPartInput): WorkingLine[] {
  const result = partTreated({ ground, fraction });
  return formulaLines({
    id: "area.treatPart",
    formula: "ground * fraction",
    terms: { ground: [ground, result.unit], fraction },
    result,
    source: "definition of a fraction",
  });
}

/** A treated area, and the ground it lies on. */
export interface TreatedFractionInput {
  /** What is treated. More than 0, at most the ground. */
  readonly treated: TreatedArea;
  /** The ground it lies on. More than 0. */
  readonly ground: GroundArea;
}

const FRACTION: ObjectField<TreatedFractionInput> = /* @__PURE__ */ object<TreatedFractionInput>(
  {
    treated: treatedArea("What is treated. More than 0, at most the ground."),
    ground: groundArea("The ground it lies on. More than 0."),
  },
  [treatedFits],
);

/** Notes more treated than there is ground. */
export function treatedFits({ treated, ground }: Partly<TreatedFractionInput>, check: Check): void {
  if (treated === undefined || ground === undefined) return;
  if (!moreThan(inUnit(treated, ground.unit), ground.value)) return;
  check.fault(
    "conflict",
    "treated-over-ground",
    "treated",
    "{treated} treated is more than the {ground} of ground. Count a plot once even if you spray it twice.",
    { treated, ground },
  );
}

/**
 * Returns the part of the ground that is treated.
 *
 * Formula: fraction = treated / ground (definition of a fraction).
 *
 * @param input - the treated area and the ground it lies on
 * @returns a plain number, more than 0 and at most 1
 * @throws SprayMathError `conflict` where more is treated than there is ground, `wrong-area`, `missing`, `not-a-quantity`,
 * `not-finite`, `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { groundArea, treatedArea, treatedFraction } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 *
 * console.log(treatedFraction({ treated: treatedArea(qty(5600, "ft2")), ground: groundArea(qty(11200, "ft2")) })); // 0.5
 * ```
 */
export function treatedFraction(input: TreatedFractionInput): number {
  return fractionTreated(checked(input, FRACTION));
}

/** The treated part of some ground. Trusts its input. */
export function fractionTreated({ treated, ground }: TreatedFractionInput, at = ""): number {
  const { area } = unitsLike(treated.unit);
  return positive(Math.min(inUnit(treated, area) / inUnit(ground, area), 1), at);
}

/**
 * The working of {@link treatedFraction}, line by line.
 *
 * @param input - as for {@link treatedFraction}
 * @returns the lines; the last one's result is the fraction
 * @throws SprayMathError as {@link treatedFraction} does
 *
 * @example
 * ```ts
 * import { groundArea, treatedArea } from "swath-to-spoon/area";
 * import { qty } from "swath-to-spoon/units";
 * import { treatedFraction } from "swath-to-spoon/working";
 *
 * const lines = treatedFraction({ treated: treatedArea(qty(1, "ha")), ground: groundArea(qty(4, "ha")) });
 * console.log(lines.at(-1)?.formula); // treated / ground
 * ```
 */
export function treatedFractionWorking(input: TreatedFractionInput): WorkingLine[] {
  const given = checked(input, FRACTION);
  const { treated, ground } = given;
  const { area } = unitsLike(treated.unit);
  return formulaLines({
    id: "area.treatedFraction",
    formula: "treated / ground",
    terms: { treated: [treated, area], ground: [ground, area] },
    result: fractionTreated(given),
    source: "definition of a fraction",
  });
}
