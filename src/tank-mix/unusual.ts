import { inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import type { Concentration, Density } from "../units/types.js";
import {
  BULK_DENSITIES,
  contentInVolume,
  isInVolume,
  LIQUID_DENSITIES,
  type UsualWeights,
  weightLike,
} from "./content.js";
import { finding, type LabelFinding } from "./findings.js";
import { isRange, type LabelRate } from "./label-rate.js";

/**
 * How strong labels usually ask for. The strongest mixes in published tables are 8 gallons of a liquid in 100 gallons
 * (University of Missouri Extension, G7510) and 33 1/3 lb of a powder in 100 gallons, 0.04 kg/L (New England Vegetable
 * Management Guide, dilution tables); how far above them a rate is questioned is common practice, no source.
 */
const STRONGEST = { liquid: 0.1, dry: 0.2 };

// In liquids that are nearly all active ingredient: from memory.
const MOST_CONTENT = 1.3;

/** A product as its unlikely figures are looked for: the rate, the strength that it comes to, and what the product weighs. */
export interface UnusualInput {
  readonly rate: LabelRate;
  readonly strength: Concentration;
  readonly bulkDensity?: Density;
}

/**
 * What is possible, and so far from usual that it is most likely a slip: the strength, what the product weighs and contains.
 * Paths are from the product. Trusts its input.
 */
export function unusualFindingsOf({ rate, strength, bulkDensity }: UnusualInput): LabelFinding[] {
  const single = isRange(rate) ? rate.chosen : rate;
  const at = isRange(rate) ? "rate.chosen" : "rate";
  const { density, contains } =
    "activeIngredient" in single ? single : { density: undefined, contains: undefined };
  const findings = [
    strengthFinding(strength),
    density && weightFinding("density-unusual", density, LIQUID_DENSITIES),
    contains && isInVolume(contains) && moreThan(contentInVolume(contains), MOST_CONTENT)
      ? finding("content-unusual", { given: contains })
      : undefined,
    bulkDensity && weightFinding("bulk-density-unusual", bulkDensity, BULK_DENSITIES),
  ];
  return findings.flatMap((one) => (one ? [{ ...one, path: one.path.replace(/^rate/, at) }] : []));
}

function strengthFinding(strength: Concentration): LabelFinding | undefined {
  const isLiquid = dimensionOf(strength.unit) === "volumeConcentration";
  const part = inUnit(strength, isLiquid ? "L/L" : "kg/L");
  if (!moreThan(part, isLiquid ? STRONGEST.liquid : STRONGEST.dry)) return undefined;
  const share = isLiquid ? { value: 100 * part, unit: "%" as const } : strength;
  const figures = { share: { ...share, value: Number(share.value.toPrecision(3)) }, strength };
  return finding("strength-unusual", figures, isLiquid ? undefined : DRY);
}

const DRY = {
  key: "strength-unusual-dry",
  template:
    "At this rate the mix takes {share} of product, far more than labels usually ask for. Check the rate and its unit.",
};

function weightFinding(
  code: "density-unusual" | "bulk-density-unusual",
  given: Density,
  { low, high }: UsualWeights,
): LabelFinding | undefined {
  const value = inUnit(given, "kg/L");
  if (!moreThan(low, value) && !moreThan(value, high)) return undefined;
  return finding(code, { given, low: weightLike(given, low), high: weightLike(given, high) });
}
