import type { PlannedLoad } from "./plan.js";

/** How much a warning matters: something to know, something to change, something not to spray with. */
export type Severity = "note" | "warning" | "refusal";

/** What a careful colleague would question. It changes no number. */
export interface Warning {
  /** A fixed name, for an app that words it in another language. */
  readonly code: "dose-not-measurable" | "scale-needed";
  /** How much it matters. */
  readonly severity: Severity;
  /** What is wrong and what to do, in one sentence or two. */
  readonly message: string;
  /** The input's or the result's place. */
  readonly path: string;
}

/** The warnings that finished loads give rise to, each product's first load speaking for those like it. */
export function loadWarnings(loads: readonly PlannedLoad[]): Warning[] {
  const said = new Set<string>();
  const warnings: Warning[] = [];
  const say = (key: string, warning: Warning): void => {
    if (said.has(key)) return;
    said.add(key);
    warnings.push(warning);
  };
  for (const [i, load] of loads.entries()) {
    for (const [k, { name, amount, measured }] of load.products.entries()) {
      const path = `loads[${i}].products[${k}]`;
      if (!measured.ok) {
        say(`${k} ${amount.value}`, {
          code: "dose-not-measurable",
          severity: "warning",
          message: `${name}: ${measured.issue.message}`,
          path,
        });
      }
      if (measured.scaleAssumed) {
        say(`${k} scale`, {
          code: "scale-needed",
          severity: "note",
          message: `${name} is dry and the tools hold no scale: weigh it, a spoon does not measure a weight.`,
          path: "tools",
        });
      }
    }
  }
  return warnings;
}
