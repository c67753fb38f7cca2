import type { Carrier } from "../tank-mix/carrier.js";
import type { Load } from "../tank-mix/loads.js";
import { inUnit } from "../units/convert.js";
import type { Volume } from "../units/types.js";
import type { CoversBatch } from "./result.js";

/** Whether all of a load is extra mix. */
export function isSpare({ area, count, rowLength }: CoversBatch): boolean {
  return (count ?? rowLength ?? area)?.value === 0;
}

/**
 * How much of each load is sprayed on the job. The first load fills hose and boom, and they stay full until the job is done;
 * extra mix is what is left at the end. In a mix of whole rows or plots each load has its own, whatever else the tank
 * holds. Trusts its input.
 */
export function sprayedFrom(loads: readonly Load[], { sprayed, lines }: Carrier): Volume[] {
  const { unit } = sprayed;
  const pieces = loads.reduce((sum, load) => sum + (load.pieces ?? 0), 0);
  let held = inUnit(lines, unit);
  let left = sprayed.value;
  return loads.map((load) => {
    if (load.pieces !== undefined) return { value: (sprayed.value * load.pieces) / pieces, unit };
    const carrier = inUnit(load.carrier, unit);
    const intoLines = Math.min(held, carrier);
    const value = Math.min(carrier - intoLines, left);
    held -= intoLines;
    left -= value;
    return { value, unit };
  });
}
