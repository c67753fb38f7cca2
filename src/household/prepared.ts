import type { MassUnit, VolumeUnit } from "../units/types.js";
import { atPlaces, type Exact, exactUnit, quotient } from "./exact-sizes.js";
import { type Fill, type OrderedFills, orderedFills } from "./search.js";
import { type MeasuringTool, marksOf } from "./tools.js";

/** A tool with what one fill of it can be: `step`, in liters or kilograms, a whole number of times from `least` to `most`. */
export interface PreparedTool {
  readonly tool: MeasuringTool;
  readonly step: Exact;
  readonly least: number;
  readonly most: number;
  /** The same in the measure that all the tools share. */
  readonly fill: Fill;
}

/** Tools of one kind, in a measure that they share. */
export interface PreparedTools {
  readonly tools: readonly PreparedTool[];
  readonly ordered: OrderedFills;
  /** How large one of a unit is in that measure. */
  readonly sizeOf: (unit: VolumeUnit | MassUnit) => UnitSize;
}

/** The size of a unit in the measure that tools share. */
interface UnitSize {
  readonly size: number;
  /** Whether it is a whole number, and so is every fill: their quotient is then rounded once. */
  readonly whole: boolean;
}

// Past this, sums of a hundred fills are not whole numbers of a float any more.
const MOST_WHOLE = 2n ** 46n;

const KEPT = new WeakMap<readonly MeasuringTool[], PreparedTools>();

/** The tools with their sizes compared: once for a list, which nobody changes any more. */
export function preparedTools(tools: readonly MeasuringTool[]): PreparedTools {
  const before = KEPT.get(tools);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (before !== undefined) return before;
  const prepared = prepare(tools);
  KEPT.set(tools, prepared);
  return prepared;
}

function prepare(tools: readonly MeasuringTool[]): PreparedTools {
  const marks = tools.map(marksOf);
  const places = Math.max(...marks.map(({ step }) => step.places));
  const steps = marks.map(({ step }) => atPlaces(step, places));
  // In whole numbers of the greatest common measure the search is exact and soon at its end. Sizes that have none worth
  // the name, such as a third of a cup as a float, are told in floats as they are.
  const common = steps.reduce(gcd);
  const largest = marks.reduce((most, one, i) => {
    const full = BigInt(one.most) * (steps[i] as bigint);
    return full > most ? full : most;
  }, 0n);
  const measure = { digits: largest / common > MOST_WHOLE ? largest : common, places };
  const prepared = marks.map(({ step, least, most }, i) => {
    const size = quotient(step, measure);
    const fill = { min: least * size, max: most * size, step: size };
    return { tool: tools[i] as MeasuringTool, step, least, most, fill };
  });
  const ordered = orderedFills(prepared.map(({ fill }) => fill));
  const sizes = new Map<string, UnitSize>();
  return {
    tools: prepared,
    ordered,
    sizeOf(unit) {
      const before = sizes.get(unit);
      // Stryker disable next-line ConditionalExpression: kept for the time alone
      if (before !== undefined) return before;
      const of = {
        size: quotient(exactUnit(unit), measure),
        whole: ordered.whole && goesInto(measure, unit),
      };
      sizes.set(unit, of);
      return of;
    },
  };
}

/** Whether a unit is a whole number of a measure, and one that a float holds. */
function goesInto(measure: Exact, unit: VolumeUnit | MassUnit): boolean {
  const size = exactUnit(unit);
  const places = Math.max(size.places, measure.places);
  const [whole, one] = [atPlaces(size, places), atPlaces(measure, places)];
  return whole % one === 0n && whole / one <= BigInt(Number.MAX_SAFE_INTEGER);
}

function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? a : gcd(b, a % b);
}
