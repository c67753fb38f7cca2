import { errorOf } from "../errors.js";
import { Check, checked, type TextReader } from "./check.js";
import { alone, dimensionOf } from "./dimensions.js";
import {
  about,
  choice,
  joined,
  type ObjectField,
  type Optional,
  object,
  optional,
  type TextField,
  text,
} from "./fields.js";
import { locale } from "./locale-field.js";
import { refuseDimension } from "./quantity-field.js";
import { numberIn, quantityReader } from "./read-text.js";
import type { BasedFraction, Dimension, Fraction, Quantity, UnitSystem, UnitsByDimension } from "./types.js";
import { DIMENSION } from "./units-of.js";

/** How {@link parseQuantity} is to understand what was written. */
export interface ParseOptions<D extends Dimension = Dimension> {
  /** Whose decimal and group signs the numbers have, as a language tag; `en-US` unless given. */
  readonly locale?: string | undefined;
  /** Whose gallons, pints, quarts, cups, spoons and fluid ounces are meant where the text does not say; `us` unless given. */
  readonly system?: UnitSystem | undefined;
  /** What a bare `oz` is: a fluid ounce or an ounce of weight. Refused unless given. */
  readonly ounce?: "liquid" | "dry" | undefined;
  /** What kind of thing it must be; anything else is refused. */
  readonly dimension?: D | undefined;
}

/** What {@link parseQuantity} gives where a dimension is asked for. */
export type ParsedQuantity<D extends Dimension> = [D] extends ["fraction"]
  ? Fraction | BasedFraction
  : Quantity<UnitsByDimension[D]>;

const LOCALE: Optional<string> = optional(
  locale("Whose decimal and group signs the numbers have, as a language tag; `en-US` unless given."),
);

/** How text is read, whatever it measures. */
export const TEXT_OPTIONS: ObjectField<Omit<ParseOptions, "dimension">> = object<
  Omit<ParseOptions, "dimension">
>({
  locale: LOCALE,
  system: optional(
    choice(
      "Whose gallons, pints, quarts, cups, spoons and fluid ounces are meant where the text does not say; `us` unless given.",
      ["us", "imperial", "metric"],
    ),
  ),
  ounce: optional(
    choice("What a bare `oz` is: a fluid ounce or an ounce of weight. Refused unless given.", [
      "liquid",
      "dry",
    ]),
  ),
});

const OPTIONS: ObjectField<ParseOptions> = joined(
  TEXT_OPTIONS,
  object<Pick<ParseOptions, "dimension">>({
    dimension: optional(about("What kind of thing it must be; anything else is refused.", DIMENSION)),
  }),
);

const TYPED: TextField = text("What was typed.");

const ANY: readonly Dimension[] = [];

function typedText(given: unknown): string {
  return typeof given === "string" ? given : checked(given, TYPED, "text");
}

/**
 * Reads a quantity as people write it: `2 1/2 gal`, `3' 6"`, `12 fl. oz. per acre`, `8 fl oz/100 gal`, `0.25% v/v`,
 * `1.5 oz wt per 1,000 sq ft`, `6½ qt`.
 *
 * A sum such as `3 ft 6 in` comes in its first unit. A bare `oz` is refused unless `ounce` or the unit before it (`5 lb 3
 * oz`) says which is meant. A bare gallon, pint, quart, cup, spoon or fluid ounce is a US one unless `system` says
 * otherwise. Capitals are ignored except where they distinguish two units (`ML`, `Mg`, `T`). A comma or point that the
 * locale uses to group digits is read as such only where the groups are right: `1,5` is refused in English, `1.5` in
 * German. `pounds per square inch` is a pressure unless `massRate` is asked for; `lb/sq in` is a weight per area unless
 * `pressure` is asked for.
 *
 * Sources: the units' definitions as for `convert`; the spellings: common practice, no source.
 *
 * @param text - at most 200 characters; negative amounts are read too
 * @param options - see {@link ParseOptions}
 * @returns the quantity; with its basis where `v/v`, `w/v` or `w/w` follows a fraction
 * @throws SprayMathError `missing` for blank text, `incomplete` where it is only begun, `unreadable` or
 *   `unknown-unit` naming the part, `ambiguous-unit` or `ambiguous-number` with a question to ask, `wrong-dimension`,
 *   or `unknown-choice` for an option
 *
 * @example
 * ```ts
 * import { parseQuantity } from "swath-to-spoon/units";
 *
 * console.log(parseQuantity("2 1/2 gal")); // { value: 2.5, unit: 'gal' }
 * console.log(parseQuantity("1,5 l/ha", { locale: "de" })); // { value: 1.5, unit: 'L/ha' }
 * console.log(parseQuantity("0.25% v/v")); // { value: 0.25, unit: '%', basis: 'v/v' }
 * ```
 */
export function parseQuantity(
  text: string,
  options?: Omit<ParseOptions, "dimension">,
): Quantity | BasedFraction;
export function parseQuantity<D extends Dimension>(
  text: string,
  options: ParseOptions<D> & { readonly dimension: D },
): ParsedQuantity<D>;
export function parseQuantity(text: string, options?: ParseOptions): Quantity | BasedFraction {
  const { dimension, ...how } = checked(options ?? {}, OPTIONS, "options");
  const quantity = quantityReader(how)(typedText(text), dimension === undefined ? ANY : alone(dimension));
  if (dimension === undefined || dimensionOf(quantity.unit) === dimension) return quantity;
  const check = new Check(quantity);
  refuseDimension(quantity, [dimension], check, "text");
  throw errorOf(check.issues);
}

/** How {@link parseNumber} is to understand what was written. */
export type NumberOptions = Pick<ParseOptions, "locale">;

const NUMBER_OPTIONS: ObjectField<NumberOptions> = object<NumberOptions>({ locale: LOCALE });

/**
 * Reads a bare number as people write it: `14`, `1,000`, `2 1/2`, `½`, `-0.5`.
 *
 * @param text - at most 200 characters; negative numbers are read too
 * @param options - `locale`: whose decimal and group signs the number has, as a language tag; `en-US` unless given
 * @returns the number
 * @throws SprayMathError `missing` for blank text, `incomplete` for a number that is not typed to its end, `ambiguous-number`,
 *   `unreadable`, or `unknown-choice` for the locale
 *
 * @example
 * ```ts
 * import { parseNumber } from "swath-to-spoon/units";
 *
 * console.log(parseNumber("2 1/2")); // 2.5
 * console.log(parseNumber("1.000,5", { locale: "de" })); // 1000.5
 * ```
 */
export function parseNumber(text: string, options?: NumberOptions): number {
  const how = checked(options ?? {}, NUMBER_OPTIONS, "options");
  return numberIn(typedText(text), how.locale);
}

/** Reads what a person typed into the fields of an input. Trusts the options. */
export function textReader(options: Omit<ParseOptions, "dimension"> = {}): TextReader {
  let quantity: TextReader["quantity"] | undefined;
  return {
    quantity: (...typed) => {
      quantity ??= quantityReader(options);
      return quantity(...typed);
    },
    number: (typed, unit) => numberIn(typed, options.locale, unit),
  };
}
