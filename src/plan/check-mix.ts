import { relocated } from "../errors.js";
import { checkLabel, type Finding } from "../tank-mix/label-limits.js";
import { isRange } from "../tank-mix/label-rate.js";
import { strengthOf } from "../tank-mix/strength.js";
import { convertValue } from "../units/convert.js";
import { moreThan } from "../units/decide.js";
import { dimensionOf } from "../units/dimensions.js";
import { compare, ratio } from "../units/quantity.js";
import type { Volume } from "../units/types.js";
import type { PlanInput, Product } from "./input.js";
import { labelInput, PRODUCT_PLACES } from "./job.js";
import type { Plan, PlannedLoad } from "./result.js";
import type { Thresholds } from "./thresholds.js";
import { told, type Warning } from "./warnings.js";

/** What a product's label has against the job, and what its name may lead to. */
export function productWarnings(product: Product, at: string, job: Pick<Plan, "rate" | "area">): Warning[] {
  const { name } = product;
  const warnings: Warning[] = labelFindings(product, job).map((finding) => ofProduct(finding, name, at));
  if (!/\b(oz|ounces?)\b/i.test(name)) return warnings;
  const [planned, other] =
    product.form === "dry" ? ["ounces by weight", "fluid ounces"] : ["fluid ounces", "ounces by weight"];
  return [
    ...warnings,
    {
      code: "ounces-confusable",
      severity: "note",
      message: `${name} has ounces in its name and is planned in ${planned}, not ${other}. Check which one the label means.`,
      path: `${at}.name`,
      figures: {},
    },
  ];
}

/** A finding of a label with the product's name and place. */
export function ofProduct(finding: Finding, name: string, at: string): Finding {
  return {
    ...finding,
    message: `${name}: ${finding.message}`,
    path: finding.path === "carrierRate" ? "calibration" : `${at}.${finding.path}`,
  };
}

// A single rate without limits was checked when its amount was worked out.
function labelFindings(product: Product, job: Pick<Plan, "rate" | "area">): Finding[] {
  const { rate, label, soFar } = product;
  if (label === undefined && soFar === undefined && !isRange(rate)) return [];
  return relocated(PRODUCT_PLACES, () => checkLabel(labelInput(product, job)));
}

/** What the loads give rise to. */
export function loadWarnings(
  input: PlanInput,
  carrier: Plan["carrier"],
  loads: readonly PlannedLoad[],
  thresholds: Thresholds,
): Warning[] {
  return [
    ...tankWarnings(input, carrier.total, loads),
    ...spareWarnings(input, carrier),
    ...lastLoadWarnings(loads, thresholds),
    ...waterWarnings(input, carrier.total),
    ...doseWarnings(loads),
  ];
}

function tankWarnings(
  { sprayer: { tank } }: PlanInput,
  total: Volume,
  loads: readonly PlannedLoad[],
): Warning[] {
  if (compare(total, tank) !== 1) return [];
  return [
    {
      code: "mix-over-tank",
      severity: "note",
      message: `You need ${told(total)} of mix and the tank holds ${told(tank)}: mix ${loads.length} loads and measure product for each.`,
      path: "sprayer.tank",
      figures: { total, tank, loads: loads.length },
    },
  ];
}

// Past these a number or its unit is wrong, rather than the job unusual: common practice, no source.
const LARGE_RESERVE_PERCENT = 50;
const LARGE_LINES_PERCENT = 25;

/** Mix that isn't meant for the plot: a reserve out of proportion, lines that hold as much as a tank. */
function spareWarnings(
  { sprayer: { tank } }: PlanInput,
  { sprayed, reserve, lines }: Plan["carrier"],
): Warning[] {
  const warnings: Warning[] = [];
  const [spare, held] = [100 * ratio(reserve, sprayed), 100 * ratio(lines, tank)];
  if (moreThan(spare, LARGE_RESERVE_PERCENT)) {
    warnings.push({
      code: "reserve-large",
      severity: "warning",
      message:
        `The reserve is ${told(reserve)} for a plot that takes ${told(sprayed)}: that much product would be left over. ` +
        "Check the reserve and its unit.",
      path: "reserve",
      figures: { reserve, sprayed, percent: spare },
    });
  }
  if (moreThan(held, LARGE_LINES_PERCENT)) {
    warnings.push({
      code: "lines-large",
      severity: "warning",
      message:
        `The hose and boom hold ${told(lines)}, which is ${Number(held.toPrecision(2))}% of the ${told(tank)} tank. ` +
        "Check that number and its unit.",
      path: "sprayer.lineVolume",
      figures: { lines, tank, percent: held },
    });
  }
  return warnings;
}

// Labels for hand and small boom sprayers ask for a few per cent at most: common practice, no source.
const STRONG_PERCENT = 10;

/** A product so strong in the mix as labels for such sprayers hardly ask for. */
export function strengthWarnings(
  { name, strength }: Plan["totals"]["products"][number],
  at: string,
): Warning[] {
  const isLiquid = dimensionOf(strength.unit) === "volumeConcentration";
  const percent = 100 * convertValue(strength.value, strength.unit, isLiquid ? "L/L" : "kg/L");
  if (!moreThan(percent, STRONG_PERCENT)) return [];
  const share = `${Number(percent.toPrecision(2))}%`;
  return [
    {
      code: "strength-unusual",
      severity: "warning",
      message:
        `${name} is ${share} of the mix${isLiquid ? "" : " by weight in volume"}, and labels rarely ask for more than ${STRONG_PERCENT}%. ` +
        "Check the label rate, its unit and the output rate.",
      path: `${at}.rate`,
      figures: { strength, percent, limit: STRONG_PERCENT },
    },
  ];
}

function lastLoadWarnings(loads: readonly PlannedLoad[], { lastLoadPercent }: Thresholds): Warning[] {
  const [first, last] = [loads[0], loads[loads.length - 1]];
  if (first === undefined || last === undefined || first === last) return [];
  const percent = 100 * ratio(last.carrier, first.carrier);
  if (!moreThan(lastLoadPercent, percent)) return [];
  return [
    {
      code: "last-load-small",
      severity: "warning",
      message: `The last load is only ${told(last.carrier)}. The pump may not pick it all up, and small doses are hard to measure. Split the mix into equal loads.`,
      path: `loads[${loads.length - 1}]`,
      figures: { last: last.carrier, full: first.carrier, percent },
    },
  ];
}

function waterWarnings({ addedWater }: PlanInput, mix: Volume): Warning[] {
  if (addedWater === undefined) return [];
  const { strength, weakBy } = strengthOf({ mix, addedWater });
  if (weakBy.value === 0) return [];
  return [
    {
      code: "water-without-product",
      severity: "warning",
      message:
        `Adding ${told(addedWater)} of water without product weakens the mix to ${told(strength)} strength, so the plot is under-dosed. ` +
        "Add product for that water too, or leave the water out.",
      path: "addedWater",
      figures: { strength, weakBy },
    },
  ];
}

/** What the doses give rise to; like doses are spoken of once. */
function doseWarnings(loads: readonly PlannedLoad[]): Warning[] {
  const warnings = new Map<string, Warning>();
  for (const [i, load] of loads.entries()) {
    for (const [k, { name, amount, measured }] of load.products.entries()) {
      if (!measured.ok) {
        warnings.set(`${k} ${amount.value}`, {
          code: "dose-not-measurable",
          severity: "warning",
          message: `${name}: ${measured.issue.message}`,
          path: `loads[${i}].products[${k}]`,
          figures: { amount },
        });
      }
      if (measured.scaleAssumed) {
        warnings.set(`${k} scale`, {
          code: "scale-needed",
          severity: "note",
          message: `${name} is a dry product and no scale is listed. Weigh it; a spoon can't measure weight.`,
          path: "tools",
          figures: { amount },
        });
      }
    }
  }
  return [...warnings.values()];
}
