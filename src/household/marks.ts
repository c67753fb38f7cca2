import { inUnit } from "../units/convert.js";
import { ceilDecided, floorDecided } from "../units/decide.js";
import type { Mass, Volume } from "../units/types.js";
import { type Exact, exactSize, timesExactly } from "./exact-sizes.js";
import type { MeasuringTool } from "./tools.js";

/** A tool with marks: every size in it is of one dimension. */
export type MarkedTool = Required<Omit<MeasuringTool, "name">>;

/** What one fill of a tool can be: `step`, in liters or kilograms, a whole number of times from `least` to `most`. */
export interface Marks {
  readonly step: Exact;
  readonly least: number;
  readonly most: number;
}

/** How many marks there are up to a tool's capacity or its least reading, noise and all. */
export function exactMarks({ graduation, ...tool }: MarkedTool, upTo: "capacity" | "least"): number {
  return inUnit(tool[upTo], graduation.unit) / graduation.value;
}

/** The marks of a tool, counted noise aside: a tenth of 0.3 mL is there three times. A tool without marks has one. */
export function marksOf(tool: Omit<MeasuringTool, "name">): Marks {
  const { capacity, graduation, least } = tool;
  if (graduation === undefined) return { step: exactSize(capacity), least: 1, most: 1 };
  return {
    step: exactSize(graduation),
    least: least === undefined ? 1 : ceilDecided(exactMarks(tool as MarkedTool, "least")),
    most: floorDecided(exactMarks(tool as MarkedTool, "capacity")),
  };
}

/** So many marks, or so many fills of a tool without marks, as an amount. */
export function amountOf({ value, unit }: Volume | Mass, marks: number): Volume | Mass {
  return { value: timesExactly(value, marks), unit } as Volume | Mass;
}
