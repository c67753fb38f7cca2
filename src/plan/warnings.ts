import type { Finding, FindingCode } from "../tank-mix/label-limits.js";
import type { Mass, Quantity, Volume } from "../units/types.js";
import type { DoseMeasure } from "./dose.js";

/** How much a warning matters: something to know, something to change, something not to spray with. */
export type Severity = "note" | "warning" | "refusal";

/** Which question a warning raises. */
export type WarningCode = FindingCode | "dose-not-measurable" | "scale-needed";

/** What a careful colleague would question. It changes no number. */
export interface Warning {
  /** A fixed name, for an app that words it in another language. */
  readonly code: WarningCode;
  /** How much it matters. */
  readonly severity: Severity;
  /** What is wrong and what to do. */
  readonly message: string;
  /** The input's or the result's place. */
  readonly path: string;
  /** The figures behind it. */
  readonly figures: Readonly<Record<string, Quantity | number>>;
}

/** What a product's label has against the job. */
export function labelWarnings(findings: readonly Finding[], name: string, at: string): Warning[] {
  return findings.map((finding) => ({
    ...finding,
    message: `${name}: ${finding.message}`,
    path: finding.path === "carrierRate" ? "calibration" : `${at}.${finding.path}`,
  }));
}

interface LoadDoses {
  readonly products: readonly {
    readonly name: string;
    readonly amount: Volume | Mass;
    readonly measured: DoseMeasure;
  }[];
}

/** What the doses give rise to; like doses are spoken of once. */
export function doseWarnings(loads: readonly LoadDoses[]): Warning[] {
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
