import { relocated } from "../errors.js";
import type { LabelFinding } from "../tank-mix/findings.js";
import { checkLabel } from "../tank-mix/label-limits.js";
import { isRange } from "../tank-mix/label-rate.js";
import { strengthOf } from "../tank-mix/strength.js";
import { moreThan } from "../units/decide.js";
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
  const [kind, other] = product.form === "dry" ? ["weight (oz)", "fluid"] : ["fluid (fl_oz)", "weight"];
  return [
    ...warnings,
    {
      code: "ounces-confusable",
      severity: "note",
      message: `${name} has ounces in its name. It is planned in ounces of ${kind}, which are not ounces of ${other}: see which the label means.`,
      path: `${at}.name`,
      figures: {},
    },
  ];
}

/** A finding of a label with the product's name and place. */
export function ofProduct(finding: LabelFinding, name: string, at: string): LabelFinding {
  return {
    ...finding,
    message: `${name}: ${finding.message}`,
    path: finding.path === "carrierRate" ? "calibration" : `${at}.${finding.path}`,
  };
}

// A single rate without limits was checked when its amount was worked out.
function labelFindings(product: Product, job: Pick<Plan, "rate" | "area">): LabelFinding[] {
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
      message: `The mix, ${told(total)}, is more than the tank of ${told(tank)} holds: mix it in ${loads.length} loads, each with its own product.`,
      path: "sprayer.tank",
      figures: { total, tank, loads: loads.length },
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
      message: `The last load is only ${told(last.carrier)}, which a pump may not draw and small doses are measured badly for. Part the mix into equal loads.`,
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
        `${told(addedWater)} of water without product leaves the mix at ${told(strength)} of its strength, so the plot gets too little. ` +
        "Add product for the water as well, or leave the water out.",
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
          message: `${name} is dry and the tools hold no scale: weigh it, a spoon does not measure a weight.`,
          path: "tools",
          figures: { amount },
        });
      }
    }
  }
  return [...warnings.values()];
}
