import { checked } from "../units/check.js";
import { formulaLines } from "../units/formula-lines.js";
import { refusal } from "../units/message.js";
import { finite } from "../units/result.js";
import type { Fraction, Quantity, VolumeRate } from "../units/types.js";
import type { WorkingLine } from "../units/working-line.js";
import { CALIBRATION, type Calibration, rateOfCalibration } from "./calibration.js";
import { type Reading, readingsOf } from "./uncertainty-of-readings.js";

/** One measurement's part in the uncertainty of a rate. */
export interface UncertaintyShare {
  /**
   * The measurement: its field, such as `used` or `catches[2]`. For several runs `swath` and `distance` stand for the
   * strip that all of them share, and `scatter` for how far the runs differ among themselves.
   */
  readonly measurement: string;
  /** Its part of the squared uncertainty, from 0 to 1; the parts add up to 1. */
  readonly share: number;
}

/** A rate, and how sure it is. */
export interface RateUncertainty {
  /** The rate. */
  readonly rate: VolumeRate;
  /** Its combined standard uncertainty: about two times in three the true rate lies within it. */
  readonly standardUncertainty: VolumeRate;
  /** The same in percent of the rate. */
  readonly relative: Fraction;
  /** Each measurement's share, in the order of the measurement; empty where all are said to be exact. */
  readonly shares: readonly UncertaintyShare[];
  /** The measurement with the largest share: the one to make better first. Null where there is none. */
  readonly improve: string | null;
  /** The measurements that say nothing of their uncertainty; they were taken to be exact, so the rate is less certain than it looks. */
  readonly takenAsExact: readonly string[];
}

/**
 * Returns how far a rate may be off, from what each measurement says of its own resolution or uncertainty.
 *
 * Formula: every rate here is a product and quotient of readings, for which the first-order rule gives (u(rate) / rate)² = Σ
 * (weight × u(reading) / reading)². The weight is 1, or the reading's part in a sum. A resolution r counts as r / √12. Several
 * runs add their scatter, s / √n (JCGM 100:2008, 4.2.3); the strip they share counts once, its errors added before squaring
 * (5.2.2). Readings apart from that are taken as independent. Source: JCGM 100:2008 (GUM), 5.1.2 and 5.1.6; 4.3.7 and F.2.2.1
 * for a resolution.
 *
 * @param calibration - any calibration whose readings carry `resolution` or `uncertainty`
 * @returns the rate, its standard uncertainty, each reading's share, and which to make better
 * @throws SprayMathError `missing` where no reading says how sure it is, `conflict` where one gives both, or what
 * {@link rateOf} throws
 *
 * @example
 * ```ts
 * import { rateUncertainty } from "swath-to-spoon/output-rate";
 * import { qty } from "swath-to-spoon/units";
 *
 * const used = { ...qty(2, "L"), uncertainty: qty(0.06, "L") };
 * const swath = { ...qty(2, "m"), uncertainty: qty(0.08, "m") };
 * const sure = rateUncertainty({ kind: "strip", used, swath, distance: qty(50, "m") });
 * console.log(sure.standardUncertainty, sure.improve); // { value: 10, unit: 'L/ha' } swath
 * console.log(sure.takenAsExact); // [ 'distance' ]
 * ```
 */
export function rateUncertainty(calibration: Calibration): RateUncertainty {
  const { rate, uncertainty, parts, relative, unstated } = workedUncertainty(calibration);
  const shares =
    relative === 0
      ? []
      : parts.map(({ name, part }) => ({ measurement: name, share: (part / relative) ** 2 }));
  const largest = Math.max(...shares.map(({ share }) => share));
  return {
    rate,
    standardUncertainty: uncertainty,
    relative: { value: 100 * relative, unit: "%" },
    shares,
    improve: shares.find(({ share }) => share === largest)?.measurement ?? null,
    takenAsExact: unstated,
  };
}

/**
 * The working of {@link rateUncertainty}, line by line.
 *
 * @param calibration - as for {@link rateUncertainty}
 * @returns the lines; the last one's result is the combined standard uncertainty
 * @throws SprayMathError as {@link rateUncertainty} does
 *
 * @example
 * ```ts
 * import { qty } from "swath-to-spoon/units";
 * import { rateUncertainty } from "swath-to-spoon/working";
 *
 * const used = { ...qty(2, "L"), uncertainty: qty(0.06, "L") };
 * const lines = rateUncertainty({ kind: "strip", used, swath: qty(2, "m"), distance: qty(50, "m") });
 * console.log(lines.map((line) => line.formula).join(", ")); // w1 * u1 / x1, sqrt(p1^2), rate * relative
 * ```
 */
export function rateUncertaintyWorking(calibration: Calibration): WorkingLine[] {
  const { rate, uncertainty, parts, relative } = workedUncertainty(calibration);
  const symbols = parts.map((_, at) => `p${at + 1}`);
  return [
    ...parts.flatMap(partLines),
    {
      id: "output-rate.uncertainty-relative",
      formula: `sqrt(${symbols.map((symbol) => `${symbol}^2`).join(" + ")})`,
      terms: Object.fromEntries(parts.map(({ part }, at) => [symbols[at] as string, part])),
      result: relative,
      source: "JCGM 100:2008, 5.1.6",
    },
    {
      id: "output-rate.uncertainty",
      formula: "rate * relative",
      terms: { rate, relative },
      result: uncertainty,
      source: "JCGM 100:2008, 5.1.6",
    },
  ];
}

/** What one measurement adds to the relative uncertainty of the rate. */
interface Part {
  readonly name: string;
  readonly part: number;
  /** The readings that it comes from; none for the scatter of runs. */
  readonly readings?: readonly Reading[] | undefined;
  readonly scatter?:
    | { readonly spread: VolumeRate; readonly mean: VolumeRate; readonly n: number }
    | undefined;
}

interface WorkedUncertainty {
  readonly rate: VolumeRate;
  readonly uncertainty: VolumeRate;
  readonly parts: readonly Part[];
  /** The combined standard uncertainty as a part of the rate. */
  readonly relative: number;
  readonly unstated: readonly string[];
}

function workedUncertainty(calibration: Calibration): WorkedUncertainty {
  const rated = rateOfCalibration(checked(calibration, CALIBRATION));
  const { rate, runs } = rated;
  const { stated, unstated } = readingsOf(rated);
  const parts: Part[] = [...stated].map(([name, readings]) => ({
    name,
    readings,
    part: readings.reduce(
      (sum, { weight, uncertainty, value }) => sum + (weight * uncertainty) / value.value,
      0,
    ),
  }));
  if (runs !== undefined) {
    const { standardDeviation: spread, rate: mean } = runs;
    const n = runs.runs.length;
    const part = spread.value / (mean.value * Math.sqrt(n));
    parts.push({ name: "scatter", part, scatter: { spread, mean, n } });
  }
  if (parts.length === 0)
    throw refusal(
      "missing",
      "certainty-missing",
      "",
      "Nothing says how certain the readings are. Enter a resolution or an uncertainty for one of these: {choices.field}.",
      { choices: unstated },
    );
  const relative = finite(Math.sqrt(parts.reduce((sum, { part }) => sum + part ** 2, 0)));
  return {
    rate,
    uncertainty: { value: finite(rate.value * relative), unit: rate.unit },
    parts,
    relative,
    unstated,
  };
}

function partLines({ name, part, readings = [], scatter }: Part): WorkingLine[] {
  if (scatter !== undefined) {
    return [
      {
        id: "output-rate.uncertainty-scatter",
        formula: "spread / (mean * sqrt(n))",
        terms: { ...scatter },
        result: part,
        source: "JCGM 100:2008, 4.2.3",
      },
    ];
  }
  const plain = ({ value, unit }: Quantity): Quantity => ({ value, unit });
  return [
    ...readings.flatMap(({ value: { resolution, unit }, uncertainty }): WorkingLine[] =>
      resolution === undefined
        ? []
        : formulaLines({
            id: "output-rate.resolution",
            formula: "resolution / sqrt(12)",
            terms: { resolution: [resolution, unit] },
            result: { value: uncertainty, unit },
            source: "JCGM 100:2008, 4.3.7 and F.2.2.1",
          }),
    ),
    {
      id: `output-rate.uncertainty-${name.replace(/^.*\./, "").replace(/\[\d+\]$/, "")}`,
      formula: readings.map((_, at) => `w${at + 1} * u${at + 1} / x${at + 1}`).join(" + "),
      terms: Object.fromEntries(
        readings.flatMap(({ value, uncertainty, weight }, at) => [
          [`w${at + 1}`, weight],
          [`u${at + 1}`, { value: uncertainty, unit: value.unit }],
          [`x${at + 1}`, plain(value)],
        ]),
      ),
      result: part,
      source: "JCGM 100:2008, 5.1.6",
    },
  ];
}
