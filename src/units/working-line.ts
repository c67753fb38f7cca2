import { factorOf } from "./convert.js";
import type { Quantity, Unit } from "./types.js";

/**
 * One line of working: a formula, what was put in, what came out. Plain data without wording; `worksheet` finds the
 * words for `id` and for each term in its message table, and writes the line out.
 */
export interface WorkingLine {
  /** Which formula, as folder and name: `output-rate.strip`. */
  readonly id: string;
  /** The formula in symbols, with `+ - * / ^ ( )` and `sqrt`, `ceil`, `floor`, `min`, `max`: `used / (swath * distance)`. */
  readonly formula: string;
  /** The value of each symbol, in the units that make the formula true as plain numbers. */
  readonly terms: Readonly<Record<string, Quantity | number>>;
  /** What the formula gives, unrounded. */
  readonly result: Quantity | number;
  /** Where the formula comes from. */
  readonly source: string;
  /** For a change of unit: the term it was made for, such as `output-rate.strip.used`. */
  readonly about?: string | undefined;
  /** The measuring tools that terms belong to, by the number of their symbols: `{ 1: "tablespoon" }` for `n1` and `x1`. */
  readonly tools?: Readonly<Record<string, string>> | undefined;
}

/** The line that shows a term's change of unit; none where it is in that unit already, or in one of the same size. */
export function conversionLines(about: string, from: Quantity, to: Unit): WorkingLine[] {
  if (from.unit === to) return [];
  const { by, divide } = factorOf(from.unit, to);
  // Plants that are trees say nothing.
  if (by === 1) return [];
  return [
    {
      id: "units.convert",
      about,
      formula: divide ? "value / size" : "value * size",
      terms: { value: from, size: by },
      result: { value: divide ? from.value / by : from.value * by, unit: to },
      source: sourceOf(`${from.unit} ${to}`),
    },
  ];
}

function sourceOf(units: string): string {
  if (/%|ppm/.test(units)) return "by definition of percent and parts per million";
  if (/imp_/.test(units))
    return "Weights and Measures Act 1985 (UK), Schedule 1; NIST SP 811 (2008), Appendix B";
  if (/metric_|au_/.test(units)) return "metric kitchen measure: common practice, no source";
  if (/psi|mg|kg|\bg\b|kPa|bar/.test(units)) return "NIST SP 811 (2008), Appendix B";
  return "NIST Handbook 44 (2024), Appendix C";
}
