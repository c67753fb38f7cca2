import { Check, checked, type Field } from "../units/check.js";
import { choice, type ObjectField, object, optional } from "../units/fields.js";
import { locale } from "../units/locale-field.js";
import { type ParseOptions, textReader } from "../units/parse.js";

/** How text is read: as for `parseQuantity`. A bare `oz` or `gal`, and a comma, depend on it. */
export type ReadingOptions = Omit<ParseOptions, "dimension">;

const OPTIONS: ObjectField<ReadingOptions> = /* @__PURE__ */ object<ReadingOptions>({
  locale: optional(
    locale("Whose decimal and group signs numbers have, as a language tag. `en-US` unless given."),
  ),
  system: optional(
    choice("Whose gallons, pints, cups, spoons and fluid ounces are meant. `us` unless given.", [
      "us",
      "imperial",
      "metric",
    ]),
  ),
  ounce: optional(
    choice("What a bare `oz` is: a fluid ounce or an ounce of weight. Refused unless given.", [
      "liquid",
      "dry",
    ]),
  ),
});

/** The options, checked. */
export function checkedOptions(options: ReadingOptions = {}): ReadingOptions {
  return checked(options, OPTIONS, "options");
}

/** Reads an input by its field list, with text where a quantity or a number is expected. Trusts the options. */
export function readBy<T>(field: Field<T>, value: unknown, options: ReadingOptions): T {
  return checked(value, field, "", new Check(value, textReader(options), options.system));
}
