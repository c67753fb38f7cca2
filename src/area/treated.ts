import { SprayMathError } from "../errors.js";
import { moreThan } from "../units/decide.js";
import { areaIn, checkedNumber, checkedObject, unitsWith } from "../units/guard.js";
import { formulaLines } from "../units/lines.js";
import { unitsLike } from "../units/systems.js";
import type { GroundArea, TreatedArea } from "../units/types.js";
import type { WorkingLine } from "../units/working.js";
import { madeTreated, positiveNumber } from "./made.js";

/**
 * A broadcast spray: all of the ground is treated.
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
  areaIn(ground, "ground", "m2", "ground");
  return { value: ground.value, unit: ground.unit, of: "treated" };
}

/** Ground of which only a part is treated. */
export interface TreatPartInput {
  /** The ground area. More than 0. */
  readonly ground: GroundArea;
  /** The part that is treated: more than 0, at most 1 (half is 0.5). */
  readonly fraction: number;
}

/**
 * The treated area, where the treated part of the ground is known.
 *
 * Formula: treated = ground × fraction (definition of a fraction).
 *
 * @param input - the ground, and the part of it that is treated
 * @returns treated area, in ft² or m² as `ground` is told
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
  const { ground, fraction } = checkedObject(input, "");
  const { area } = unitsWith(ground, "ground");
  const whole = areaIn(ground, "ground", area, "ground");
  return madeTreated(whole * checkedNumber(fraction, "fraction", { above: 0, max: 1 }), area);
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
  const result = treatPart(input);
  return formulaLines({
    id: "area.treatPart",
    formula: "ground * fraction",
    terms: { ground: [input.ground, result.unit], fraction: input.fraction },
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

/**
 * The part of the ground that is treated.
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
  const { treated, ground } = checkedObject(input, "");
  const { area } = unitsWith(treated, "treated");
  const part = areaIn(treated, "treated", area, "treated");
  const whole = areaIn(ground, "ground", area, "ground");
  if (moreThan(part, whole)) {
    throw new SprayMathError(
      "conflict",
      "treated",
      `Given ${treated.value} ${treated.unit} treated on ${ground.value} ${ground.unit} of ground; wanted no more than the ground. ` +
        "A plot sprayed twice is two jobs on the same area.",
    );
  }
  return positiveNumber(Math.min(part / whole, 1));
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
  const result = treatedFraction(input);
  const { area } = unitsLike(input.treated.unit);
  return formulaLines({
    id: "area.treatedFraction",
    formula: "treated / ground",
    terms: { treated: [input.treated, area], ground: [input.ground, area] },
    result,
    source: "definition of a fraction",
  });
}
