import { type Check, checked, type Field } from "../units/check.js";
import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { either, hasField, type ObjectField, object, type Partly } from "../units/fields.js";
import { formulaLines } from "../units/formula-lines.js";
import { called, measured, quantity } from "../units/quantity-field.js";
import { perUnit, resolveUnit } from "../units/resolve.js";
import { unitsLike } from "../units/systems.js";
import type { Length, Measured, Quantity, VolumeConcentrationUnit, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { type WorkedRate, workedRate } from "./worked-rate.js";

/** The canopy of trees, vines or bushes in rows, taken as a hedge. */
export interface CanopyInput {
  /** From the lowest leaves to the top. More than 0. */
  readonly height: Measured<Length>;
  /** Across the row, from leaf tip to leaf tip: the mean of top and bottom where trees are narrower above. More than 0. */
  readonly width: Measured<Length>;
  /** From one row to the next. Not less than the width. */
  readonly rowSpacing: Measured<Length>;
}

/** The canopy of trees, vines or bushes in rows. */
export const CANOPY: ObjectField<CanopyInput> = object<CanopyInput>(
  {
    height: measured("From the lowest leaves to the top. More than 0.", "length"),
    width: measured(
      "Across the row, from leaf tip to leaf tip: the mean of top and bottom where trees are narrower above. More than 0.",
      "length",
    ),
    rowSpacing: measured("From one row to the next. Not less than the width.", "length"),
  },
  [canopyFits],
);

/** Notes trees that are wider than their rows are apart. */
function canopyFits({ width, rowSpacing }: Partly<CanopyInput>, check: Check): void {
  if (width === undefined || rowSpacing === undefined) return;
  if (moreThan(inUnit(width, rowSpacing.unit), rowSpacing.value))
    check.fault(
      "conflict",
      "canopy-over-row",
      "width",
      "Trees {width} wide don't fit rows {rowSpacing} apart. Are the two swapped?",
      { width, rowSpacing },
    );
}

/**
 * Returns the tree-row volume: the canopy on an acre or a hectare, with each row taken as a hedge.
 *
 * Formula: volume = height × width × row length per area, where an acre has 43,560 / row spacing feet of row and a hectare
 * 10,000 / row spacing meters; so volume per area = height × width / row spacing.
 * Source: Tree Row Volume (A. Landers, Cornell University, NYSAES). Where trees are narrower above, their widest width gives up
 * to twice the canopy (S. A. Bound in Production Practices and Quality Assessment of Food Crops, vol. 1): enter the mean width.
 *
 * @param canopy - height, width and row spacing, each more than 0
 * @returns the volume in ft3/ac or m3/ha, like the height
 * @throws SprayMathError `conflict` where the trees are wider than the rows are apart, `missing`, `not-a-quantity`, `not-finite`,
 * `unknown-unit`, `wrong-dimension` or `out-of-range`
 *
 * @example
 * ```ts
 * import { treeRowVolume } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const canopy = { height: qty(3, "m"), width: qty(1.5, "m"), rowSpacing: qty(4.5, "m") };
 * console.log(treeRowVolume(canopy)); // { value: 10000, unit: 'm3/ha' }
 * ```
 */
export function treeRowVolume(canopy: CanopyInput): VolumeRate {
  return volumeOfCanopy(checked(canopy, CANOPY));
}

/**
 * The working of {@link treeRowVolume}, line by line.
 *
 * @param canopy - as for {@link treeRowVolume}
 * @returns the lines; the last one's result is the volume per area
 * @throws SprayMathError as {@link treeRowVolume} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { treeRowVolume } from "swath-to-spoon/working";
 *
 * const canopy = { height: qty(3, "m"), width: qty(1.5, "m"), rowSpacing: qty(4.5, "m") };
 * console.log(treeRowVolume(canopy)[0]?.formula); // height * width / rowSpacing
 * ```
 */
export function treeRowVolumeWorking(canopy: CanopyInput): WorkingLine[] {
  return linesOfCanopy(checked(canopy, CANOPY));
}

/** The tree-row volume of a canopy. Trusts its input. */
export function volumeOfCanopy(canopy: CanopyInput, at = ""): VolumeRate {
  return workedCanopy(canopy, at).rate;
}

/** The working of {@link volumeOfCanopy}. Trusts its input. */
export function linesOfCanopy(canopy: CanopyInput): WorkingLine[] {
  const { length, quotient, rate } = workedCanopy(canopy, "");
  const { height, width, rowSpacing } = canopy;
  return formulaLines(
    {
      id: "output-rate.tree-row-volume",
      formula: "height * width / rowSpacing",
      terms: { height: [height, length], width: [width, length], rowSpacing: [rowSpacing, length] },
      result: quotient,
      source: "Tree Row Volume, A. Landers, Cornell University, NYSAES",
    },
    rate.unit,
  );
}

interface WorkedCanopy extends WorkedRate<VolumeRate> {
  readonly length: "ft" | "m";
}

function workedCanopy({ height, width, rowSpacing }: CanopyInput, at: string): WorkedCanopy {
  const { length } = unitsLike(height.unit);
  const value = (inUnit(height, length) * inUnit(width, length)) / inUnit(rowSpacing, length);
  const worked =
    length === "ft" ? workedRate(value, "ft3/ft2", "ft3/ac", at) : workedRate(value, "m3/m2", "m3/ha", at);
  return { length, ...worked };
}

/** The canopy, and how much spray wets so much of it. */
export interface DiluteRateInput {
  /** The canopy: its height, width and row spacing, or its tree-row volume, such as 200,000 ft³ per acre. */
  readonly canopy: CanopyInput | VolumeRate;
  /** The spray that wets so much canopy, such as 0.7 gal per 1,000 ft³ or 10 L per 100 m³. More than 0. */
  readonly spray: Quantity<VolumeConcentrationUnit>;
}

const TREE_ROW_VOLUME = called(quantity("The tree-row volume. More than 0.", "volumeRate"), "treeRowVolume", {
  us: { value: 200_000, unit: "ft3/ac" },
  imperial: { value: 200_000, unit: "ft3/ac" },
  metric: { value: 15_000, unit: "m3/ha" },
});

const DILUTE_RATE: ObjectField<DiluteRateInput> = object<DiluteRateInput>(
  {
    canopy: either<CanopyInput | VolumeRate>(
      "The canopy: its height, width and row spacing, or its tree-row volume, such as 200,000 ft³ per acre.",
      [TREE_ROW_VOLUME, CANOPY] as readonly Field<CanopyInput | VolumeRate>[],
      (input) => (hasField(input, ["height", "width", "rowSpacing"]) ? 1 : 0),
    ),
    spray: called(
      quantity(
        "The spray that wets so much canopy, such as 0.7 gal per 1,000 ft³ or 10 L per 100 m³. More than 0.",
        "volumeConcentration",
      ),
      "sprayPerCanopy",
      {
        us: { value: 0.7, unit: "gal/1000ft3" },
        imperial: { value: 0.7, unit: "imp_gal/1000ft3" },
        metric: { value: 10, unit: "L/100m3" },
      },
    ),
  },
  [canopyIsPossible],
);

// The depth of all canopy spread over the ground, in meters: no leaves lie thinner than a millimeter, no crop stands higher.
const THINNEST = 0.001;
const DEEPEST = 100;

/** Notes a tree-row volume that no canopy has: a spray rate, or a number without its thousands. */
function canopyIsPossible({ canopy }: Partly<DiluteRateInput>, check: Check): void {
  if (canopy === undefined || "height" in canopy) return;
  const depth = inUnit(canopy, "m3/m2");
  if (!moreThan(THINNEST, depth) && !moreThan(depth, DEEPEST)) return;
  const example = TREE_ROW_VOLUME.expected(check).example;
  check.fault(
    "out-of-range",
    "canopy-impossible",
    "canopy",
    "{given} can't be a tree-row volume. Enter height × width × row length per area, such as {example}.",
    { given: canopy, example },
  );
}

/**
 * Returns the dilute rate of trees in rows: the spray that wets the canopy just short of run-off, from its volume.
 *
 * Formula: rate = tree-row volume × spray per volume of canopy. The caller chooses the spray: 0.7 gal per 1,000 ft³ for well pruned
 * trees to 1.0 for thick canopies (Tree Row Volume, A. Landers, Cornell University, NYSAES), 10 L per 100 m³ at low density to 15
 * at high density (Boucher, 1999, in Production Practices and Quality Assessment of Food Crops, vol. 1). Test it: spray until
 * leaves just drip, and see what it took.
 *
 * @param input - the canopy, and the spray for so much of it
 * @returns the volume per area of ground, in `gal/ac`, `imp_gal/ac` or `L/ha`, like the spray
 * @throws SprayMathError `out-of-range` for a volume that no canopy has, `conflict` where the trees are wider than the rows are
 * apart, `missing`, `not-a-quantity`, `not-finite`, `unknown-unit` or `wrong-dimension`
 *
 * @example
 * ```ts
 * import { diluteRate } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const canopy = { height: qty(10, "ft"), width: qty(6, "ft"), rowSpacing: qty(15, "ft") };
 * console.log(diluteRate({ canopy, spray: qty(1, "gal/1000ft3") })); // { value: 174.24, unit: 'gal/ac' }
 * console.log(diluteRate({ canopy: qty(10000, "m3/ha"), spray: qty(10, "L/100m3") })); // { value: 1000, unit: 'L/ha' }
 * ```
 */
export function diluteRate(input: DiluteRateInput): VolumeRate {
  return rateOfCanopy(checked(input, DILUTE_RATE));
}

/** The dilute rate of a canopy. Trusts its input. */
export function rateOfCanopy(input: DiluteRateInput, at = ""): VolumeRate {
  return workedDilute(input, at).rate;
}

/**
 * The working of {@link diluteRate}, line by line.
 *
 * @param input - as for {@link diluteRate}
 * @returns the lines; the last one's result is the dilute rate
 * @throws SprayMathError as {@link diluteRate} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { diluteRate } from "swath-to-spoon/working";
 *
 * const lines = diluteRate({ canopy: qty(10000, "m3/ha"), spray: qty(10, "L/100m3") });
 * console.log(lines.at(-1)?.formula); // canopy * spray
 * ```
 */
export function diluteRateWorking(input: DiluteRateInput): WorkingLine[] {
  return linesOfDilute(checked(input, DILUTE_RATE));
}

/** The working of {@link rateOfCanopy}. Trusts its input. */
export function linesOfDilute(input: DiluteRateInput): WorkingLine[] {
  const { canopy, unit, quotient, rate } = workedDilute(input, "");
  const { spray } = input;
  return [
    ...("height" in input.canopy ? linesOfCanopy(input.canopy) : []),
    ...formulaLines(
      {
        id: "output-rate.dilute-rate",
        formula: "canopy * spray",
        terms: { canopy: [canopy, unit], spray: [spray, spray.unit] },
        result: quotient,
        source: "Tree Row Volume, A. Landers, Cornell University, NYSAES",
      },
      rate.unit,
    ),
  ];
}

interface WorkedDilute extends WorkedRate<VolumeRate> {
  readonly canopy: VolumeRate;
  /** The unit of canopy in which it meets the spray. */
  readonly unit: VolumeRate["unit"];
}

function workedDilute({ canopy: given, spray }: DiluteRateInput, at: string): WorkedDilute {
  const canopy = "height" in given ? volumeOfCanopy(given, at) : given;
  const { volumeRate, landArea } = unitsLike(spray.unit);
  const { over, per = "" } = resolveUnit(spray.unit);
  const unit = perUnit(per, landArea) as VolumeRate["unit"];
  const value = inUnit(canopy, unit) * spray.value;
  return { canopy, unit, ...workedRate(value, perUnit(over, landArea), volumeRate, at) };
}
