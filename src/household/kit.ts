import { frozen } from "../frozen.js";
import type { MassUnit, VolumeUnit } from "../units/types.js";
import { atPlaces, type Exact, exactUnit, gcd, quotient } from "./exact-sizes.js";
import { fewScoops } from "./few-scoops.js";
import { isWeight, type MeasuringTool, marksOf } from "./measuring-tool.js";
import { type Choice, choiceOf, type KitTool } from "./parts.js";
import { bestFills, orderedFills, type Target } from "./search.js";
import { type Tools, toolsIn } from "./tools.js";

/** Tools of one kind, in a measure that they share. */
export interface Kit {
  readonly tools: readonly KitTool[];
  /** The best choice of fills; nothing where none is allowed. */
  readonly choose: (target: Target) => Choice | undefined;
  /** The finest step of them in that measure. */
  readonly finest: number;
  /** How large one of a unit is in that measure. */
  readonly sizeOf: (unit: VolumeUnit | MassUnit) => UnitSize;
}

/** The size of a unit in the measure that tools share. */
interface UnitSize {
  readonly size: number;
  /** Whether it is a whole number, and so is every fill: their quotient is then rounded once. */
  readonly whole: boolean;
}

/** What tools measure: volumes, or weights. */
export type Kind = "volume" | "weight";

interface Kits {
  readonly volume: Kit | undefined;
  readonly weight: Kit | undefined;
}

const KITS = new WeakMap<readonly MeasuringTool[], Kits>();

/** Those of the tools that measure a kind, or nothing where none does: prepared once for a list. Trusts its input. */
export function kitFor(tools: Tools, kind: Kind): Kit | undefined {
  const list = toolsIn(tools);
  let kits = KITS.get(list);
  // Stryker disable next-line ConditionalExpression: kept for the time alone
  if (kits === undefined) {
    const kitOfKind = (weight: boolean): Kit | undefined => {
      const fitting = list.filter(({ capacity }) => isWeight(capacity) === weight);
      return fitting.length > 0 ? kitOf(fitting) : undefined;
    };
    kits = { volume: kitOfKind(false), weight: kitOfKind(true) };
    KITS.set(list, kits);
  }
  return kits[kind];
}

// Past this, sums of a hundred fills are not whole numbers of a float any more.
const MOST_WHOLE = BigInt(2 ** 46);

/** Tools of one kind with their sizes compared. */
export function kitOf(tools: readonly MeasuringTool[]): Kit {
  const marks = tools.map(marksOf);
  const places = Math.max(...marks.map(({ step }) => step.places));
  const steps = marks.map(({ step }) => atPlaces(step, places));
  // In whole numbers of the greatest common measure the search is exact and soon at its end. Sizes that have none worth
  // the name, such as a third of a cup as a float, stay the floats they are.
  const common = steps.reduce(gcd);
  const largest = marks.reduce((most, one, i) => {
    const full = BigInt(one.most) * (steps[i] as bigint);
    return full > most ? full : most;
  }, 0n);
  const measure = { digits: largest / common > MOST_WHOLE ? largest : common, places };
  const prepared = marks.map(({ least, most }, i) => {
    const step = { digits: steps[i] as bigint, places };
    const size = quotient(step, measure);
    const fill = { min: least * size, max: most * size, step: size };
    return { tool: tools[i] as MeasuringTool, step, least, most, fill };
  });
  const fills = prepared.map(({ fill }) => fill);
  const ordered = orderedFills(fills);
  // Tools that are filled whole make the same few sums for every dose: these are kept.
  // Stryker disable next-line ArrowFunction,ConditionalExpression: a search finds the same and takes longer
  const few = fills.every(({ min, max }) => min === max)
    ? // Stryker disable next-line BlockStatement: as above
      fewScoops(fills, ordered, (found) => {
        const choice = choiceOf(found, prepared);
        frozen(choice.parts);
        return choice;
      })
    : undefined;
  const sizes = new Map<string, UnitSize>();
  return {
    tools: prepared,
    finest: Math.min(...fills.map(({ step }) => step)),
    choose: (target) => {
      const kept = few?.(target);
      if (kept !== undefined) return kept;
      const found = bestFills(ordered, target);
      return found && choiceOf(found, prepared);
    },
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
