import { convert } from "../units/convert.js";
import type { Measured, Quantity } from "../units/types.js";
import { isTimed } from "./catch.js";
import { standardUncertainty } from "./measured.js";
import { type Measurement, measuredRate } from "./measurement.js";
import { totalOf } from "./result.js";
import { stripRuns } from "./strip-runs.js";

/** A reading as it enters a rate. */
export interface Reading {
  /** What was read. */
  readonly value: Measured<Quantity>;
  /** Its standard uncertainty, in its own unit. */
  readonly uncertainty: number;
  /** By how many per cent the rate moves when the reading moves by one per cent. */
  readonly weight: number;
}

/** What a measurement is made of. */
export interface Readings {
  /** The readings that say how sure they are, by name; those under one name err together. */
  readonly stated: ReadonlyMap<string, readonly Reading[]>;
  /** The names of those that do not say. */
  readonly unstated: readonly string[];
}

/** Takes a measurement apart into its readings, checking what each says of its own uncertainty. */
export function readingsOf(measurement: Measurement): Readings {
  measuredRate(measurement);
  const stated = new Map<string, Reading[]>();
  const unstated = new Set<string>();
  for (const { name, path = name, value, weight = 1 } of entriesOf(measurement)) {
    const uncertainty = standardUncertainty(value, path);
    if (uncertainty === undefined) unstated.add(name);
    else stated.set(name, [...(stated.get(name) ?? []), { value, uncertainty, weight }]);
  }
  return { stated, unstated: [...unstated] };
}

interface Entry {
  readonly name: string;
  readonly value: Measured<Quantity>;
  /** Where it stands in the measurement, if that is not its name. */
  readonly path?: string;
  readonly weight?: number;
}

function entriesOf(measurement: Measurement): Entry[] {
  switch (measurement.kind) {
    case "strip": {
      const { used, swath, distance } = measurement;
      return named({ used, swath, distance });
    }
    case "strip-runs":
      return runEntries(measurement);
    case "direct-strip":
      return named({ caught: measurement.caught });
    case "catch": {
      const { catches, time, speed, width } = measurement;
      const pace = isTimed(speed)
        ? { "speed.distance": speed.distance, "speed.time": speed.time }
        : { speed };
      const unit = (catches[0] as Quantity).unit;
      const shares = sharesOf(catches.map((caught) => (convert(caught, unit as "L") as Quantity).value));
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

// The strip is staked out once and walked several times, so its width and length err alike in every run; what was used
// is read afresh each time.
function runEntries(measurement: Measurement & { readonly kind: "strip-runs" }): Entry[] {
  const shares = sharesOf(stripRuns(measurement).runs.map(({ rate }) => rate.value));
  return measurement.runs.flatMap((run, at): Entry[] => {
    const weight = shares[at] as number;
    const place = (field: string): string => `runs[${at}].${field}`;
    return [
      { name: place("used"), value: run.used, weight },
      { name: "swath", path: place("swath"), value: run.swath, weight },
      { name: "distance", path: place("distance"), value: run.distance, weight },
    ];
  });
}

function named(values: Readonly<Record<string, Measured<Quantity> | undefined>>): Entry[] {
  return Object.entries(values).map(([name, value]) => ({ name, value: value as Measured<Quantity> }));
}

function sharesOf(values: readonly number[]): number[] {
  const total = totalOf(values);
  return values.map((value) => value / total);
}
