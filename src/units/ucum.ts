import { type SprayMathError, shown } from "../errors.js";
import { refusal } from "./message.js";
import { isUnit, resolveUnit, simpleUnits } from "./resolve.js";
import { UCUM_CODES } from "./table.js";
import type { SimpleUnit, Unit } from "./types.js";

function simpleCode(unit: SimpleUnit): string {
  return UCUM_CODES[unit as Exclude<SimpleUnit, "mph">];
}

/**
 * Returns the UCUM code of a unit, for exchange with other systems.
 *
 * Source: The Unified Code for Units of Measure (UCUM), version 2.2, unitsofmeasure.org. The acre is `4840.[syd_i]`,
 * because UCUM's own acres are made of the survey yard (`[acr_us]`) and of an old British yard (`[acr_br]`).
 *
 * @param unit - any unit
 * @returns its case-sensitive UCUM code, of exactly the same size
 * @throws SprayMathError `missing` or `unknown-unit`
 *
 * @example
 * ```ts
 * import { toUcum } from "swath-to-spoon/units";
 *
 * console.log(toUcum("fl_oz/1000ft2")); // [foz_us]/(1000.[sft_i])
 * ```
 */
export function toUcum(unit: Unit): string {
  const { over, per } = resolveUnit(unit);
  if (per === undefined) return simpleCode(over);
  const bottom = simpleCode(per);
  // UCUM reads from left to right: a/b.c is a/b × c.
  return `${simpleCode(over)}/${bottom.includes(".") ? `(${bottom})` : bottom}`;
}

/**
 * Returns the unit that a UCUM code stands for. Reads what {@link toUcum} writes, with `l` for `L` as UCUM allows; `[mi_i]/h`
 * gives `mph`.
 *
 * @param code - a case-sensitive UCUM code
 * @returns the unit
 * @throws SprayMathError `missing` or `unknown-unit` for a code that stands for none of the library's units exactly
 *
 * @example
 * ```ts
 * import { fromUcum } from "swath-to-spoon/units";
 *
 * console.log(fromUcum("[gal_us]/min")); // gal/min
 * ```
 */
export function fromUcum(code: string): Unit {
  if (code === undefined || code === null)
    throw refusal("missing", "choose-code", "code", 'Enter a UCUM code, such as "{example}".', {
      example: "[gal_us]/min",
    });
  if (typeof code !== "string" || code.length > 100) throw unknownCode(code);
  const stroke = code.indexOf("/");
  const over = simpleUnit(stroke < 0 ? code : code.slice(0, stroke));
  const per = stroke < 0 ? undefined : simpleUnit(bare(code.slice(stroke + 1)));
  const unit = stroke < 0 ? over : `${over}/${per}`;
  if (!isUnit(unit)) throw unknownCode(code);
  return unit === "mi/h" ? "mph" : unit;
}

function simpleUnit(code: string): SimpleUnit | undefined {
  const plain = code.replace(/^(\d+\.)?([mh]?)l$/, "$1$2L");
  return simpleUnits().find((unit) => simpleCode(unit) === plain);
}

// Without parentheses a factor under the stroke would belong above it, so only then is it taken as one.
function bare(code: string): string {
  if (code.startsWith("(") && code.endsWith(")")) return code.slice(1, -1);
  return code.includes(".") ? "" : code;
}

function unknownCode(code: unknown): SprayMathError {
  const given = shown(code);
  const survey = typeof code === "string" && /\[acr_(us|br)\]/.test(code);
  return refusal(
    "unknown-unit",
    survey ? "ucum-other-acre" : "ucum-unknown",
    "code",
    survey
      ? 'The acre in {given} is not made of international yards. Write the acre as "{example}".'
      : 'The UCUM code {given} isn\'t known here. Use one such as "{example}".',
    { given, example: survey ? "4840.[syd_i]" : "[gal_us]/(4840.[syd_i])" },
  );
}
