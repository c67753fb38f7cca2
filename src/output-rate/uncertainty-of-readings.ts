import { inUnit } from "../units/convert.js";
import { sumOf } from "../units/quantity.js";
import type { Measured, Quantity } from "../units/types.js";
import { isTimed } from "./catch.js";
import type { MeasuredRate } from "./measurement.js";
import type { StripRuns } from "./strip-runs.js";

/** A reading as it enters a rate. */
export interface Reading {
  /** What was read. */
  readonly value: Measured<Quantity>;
  /** Its standard uncertainty, in its own unit. */
  readonly uncertainty: number;
  /** By what percentage the rate moves when the reading moves by one percent. */
  readonly weight: number;
}

/** What a measurement is made of. */
export interface Readings {
  /** The readings that say how sure they are, by name; those under one name err together. */
  readonly stated: ReadonlyMap<string, readonly Reading[]>;
  /** The names of those that do not say. */
  readonly unstated: readonly string[];
}

/** Takes a measurement apart into its readings. Trusts its input. */
export function readingsOf(rated: MeasuredRate): Readings {
  const stated = new Map<string, Reading[]>();
  const unstated = new Set<string>();
  for (const { name, value, weight = 1 } of entriesOf(rated)) {
    const uncertainty = standardUncertainty(value);
    if (uncertainty === undefined) unstated.add(name);
    else stated.set(name, [...(stated.get(name) ?? []), { value, uncertainty, weight }]);
  }
  return { stated, unstated: [...unstated] };
}

/**
 * The standard uncertainty of a reading, in the reading's own unit; nothing where it does not say. A reading to the
 * nearest step r lies anywhere within r/2 of the truth, so its standard uncertainty is r/√12 (JCGM 100:2008, 4.3.7 and
 * F.2.2.1).
 */
function standardUncertainty({ unit, resolution, uncertainty }: Measured<Quantity>): number | undefined {
  if (uncertainty !== undefined) return inUnit(uncertainty, unit);
  return resolution && inUnit(resolution, unit) / Math.sqrt(12);
}

interface Entry {
  readonly name: string;
  readonly value: Measured<Quantity>;
  readonly weight?: number | undefined;
}

function entriesOf({ measurement, runs }: MeasuredRate): Entry[] {
  switch (measurement.kind) {
    case "strip": {
      const { used, swath, distance } = measurement;
      return named({ used, swath, distance });
    }
    case "strip-runs": {
      // The strip is staked out once and walked several times, so its width and length err alike in every run; what was
      // used is read afresh each time.
      const shares = sharesOf((runs as StripRuns).runs.map(({ rate }) => rate));
      return measurement.runs.flatMap(({ used, swath, distance }, at) => {
        const weight = shares[at] as number;
        return named({ [`runs[${at}].used`]: used, swath, distance }).map((entry) => ({ ...entry, weight }));
      });
    }
    case "direct-strip":
      return named({ caught: measurement.caught });
    case "catch": {
      const { catches, time, speed, width } = measurement;
      const pace = isTimed(speed)
        ? { "speed.distance": speed.distance, "speed.time": speed.time }
        : { speed };
      const shares = sharesOf(catches);
      return [
        ...catches.map((value, at) => ({ name: `catches[${at}]`, value, weight: shares[at] as number })),
        ...named({ time, ...pace, width }),
      ];
    }
    case "tree-row": {
      const { used, rowLength, rowSpacing } = measurement;
      return named({ used, rowLength, rowSpacing });
    }
    case "hand": {
      const { used, area, rowLength, plantSpacing, rowSpacing } = measurement;
      if (area !== undefined) return named({ used, area });
      return named(
        rowLength === undefined ? { used, plantSpacing, rowSpacing } : { used, rowLength, rowSpacing },
      );
    }
    case "flow": {
      const { flow, speed, width } = measurement;
      return named({ flow, speed, width });
    }
    case "known":
      return named({ rate: measurement.rate });
  }
}

function named(values: Readonly<Record<string, Measured<Quantity> | undefined>>): Entry[] {
  return Object.entries(values).map(([name, value]) => ({ name, value: value as Measured<Quantity> }));
}

function sharesOf(values: readonly Quantity[]): number[] {
  const total = sumOf(values);
  return values.map((value) => inUnit(value, total.unit) / total.value);
}
