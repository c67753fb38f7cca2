import { convertValue, inUnit } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import type { Concentration, Density, Quantity } from "../units/types.js";
import { BULK_DENSITIES, contentInVolume, isInVolume, LIQUID_DENSITIES, weightLike } from "./content.js";
import { finding, type LabelFinding } from "./findings.js";
import { type LabelRate, rateUsed } from "./label-rate.js";
import { isOfLiquid, partOfMix } from "./product.js";

/**
 * The strongest that labels usually ask for, in liters or kilograms to the liter of mix. Published tables end at 10% of a
 * liquid (Missouri Department of Transportation, Engineering Policy Guide 821.15). They end at 33 1/3 lb of a powder in 100
 * gallons, 0.04 kg/L (New England Vegetable Management Guide, dilution tables). That more is questioned is common practice, no
 * source.
 */
const STRONGEST = 0.1;

// In kg/L, for liquids that are nearly all active ingredient: common practice, no source.
const MOST_CONTENT = 1.3;

/** A product as its unlikely figures are looked for: the rate, the strength that it comes to, and what the product weighs. */
export interface UnusualInput {
  readonly rate: LabelRate;
  readonly strength: Concentration;
  readonly bulkDensity?: Density | undefined;
}

/**
 * What is possible, and so far from usual that it is most likely a slip: the strength, what the product weighs and contains.
 * Paths are from the product. Trusts its input.
 */
export function unusualFindingsOf({ rate, strength, bulkDensity }: UnusualInput): LabelFinding[] {
  const [single, at] = rateUsed(rate, "rate");
  const { density, contains } =
    "activeIngredient" in single ? single : { density: undefined, contains: undefined };
  const findings = [
    strengthFinding(strength),
    density && weightFinding("liquid", density),
    contains && isInVolume(contains) && moreThan(contentInVolume(contains), MOST_CONTENT)
      ? finding(
          "content-unusual",
          "warning",
          "rate.contains",
          "A product that contains {given} is unusual. Check the number and its unit.",
          { given: contains },
        )
      : undefined,
    bulkDensity && weightFinding("dry", bulkDensity),
  ];
  return findings.flatMap((one) => (one ? [{ ...one, path: one.path.replace(/^rate/, at) }] : []));
}

function strengthFinding(strength: Concentration): LabelFinding | undefined {
  const isLiquid = isOfLiquid(strength);
  const part = partOfMix(strength);
  if (!moreThan(part, STRONGEST)) return undefined;
  // Of a liquid people speak in percent; of a dry product as weight in the tank.
  const share = (amount: number): Quantity => {
    const value = isLiquid ? 100 * amount : convertValue(amount, "kg/L", strength.unit);
    return { value: Number(value.toPrecision(3)), unit: isLiquid ? "%" : strength.unit };
  };
  const figures = { strength: share(part), limit: share(STRONGEST) };
  return finding(
    "strength-unusual",
    "warning",
    "rate",
    isLiquid
      ? "The mix is {strength} product, and labels rarely ask for more than {limit}. Check the label rate, its unit and the output rate."
      : "The mix takes {strength} of product, and labels rarely ask for more than {limit}. Check the label rate, its unit and the output rate.",
    figures,
    isLiquid ? "strength-unusual" : "strength-unusual-dry",
  );
}

function weightFinding(form: "liquid" | "dry", given: Density): LabelFinding | undefined {
  const isLiquid = form === "liquid";
  const { low, high } = isLiquid ? LIQUID_DENSITIES : BULK_DENSITIES;
  const value = inUnit(given, "kg/L");
  if (!moreThan(low, value) && !moreThan(value, high)) return undefined;
  return finding(
    isLiquid ? "density-unusual" : "bulk-density-unusual",
    "warning",
    isLiquid ? "rate.density" : "bulkDensity",
    isLiquid
      ? "A liquid product that weighs {given} is unusual. Most weigh {low} to {high}: check the number and its unit."
      : "A dry product that weighs {given} is unusual. Most weigh {low} to {high}: check the number and its unit.",
    { given, low: weightLike(given, low), high: weightLike(given, high) },
  );
}
