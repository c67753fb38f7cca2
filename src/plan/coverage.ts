import type { Carrier } from "../tank-mix/carrier.js";
import type { Load } from "../tank-mix/loads.js";
import { inUnit } from "../units/convert.js";
import type { Volume } from "../units/types.js";
import type { CoversBatch } from "./result.js";

/** Whether all of a load is extra mix. */
export function isSpare({ area, count, rowLength }: CoversBatch): boolean {
  return (count ?? rowLength ?? area)?.value === 0;
}

// Of this part of the job a load is what it is for: the sums of loads have fewer digits.
const NOISE = 1e-9;

/**
 * How much of each load is sprayed on the job. The first load fills hose and boom, and they stay full until the job is done;
 * extra mix is what is left at the end. A load of whole rows that is filled up to a mark goes on into the next row: every load but the
 * last is sprayed until the tank is empty. Trusts its input.
 */
export function sprayedFrom(loads: readonly Load[], { sprayed, lines }: Carrier): Volume[] {
  const { unit } = sprayed;
  const pieces = loads.reduce((sum, load) => sum + (load.pieces ?? 0), 0);
  let held = inUnit(lines, unit);
  let left = sprayed.value;
  return loads.map((load) => {
    const carrier = inUnit(load.carrier, unit);
    const intoLines = Math.min(held, carrier);
    const out = Math.min(carrier - intoLines, left);
    const own = load.pieces === undefined ? out : (sprayed.value * load.pieces) / pieces;
    const value = Math.abs(out - own) < NOISE * sprayed.value ? own : out;
    held -= intoLines;
    left -= out;
    return { value, unit };
  });
}
