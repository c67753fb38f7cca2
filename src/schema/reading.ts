import { Check, checked, type Field } from "../units/check.js";
import { type ParseOptions, TEXT_OPTIONS, textReader } from "../units/parse.js";

/** How text is read: as for `parseQuantity`. A bare `oz` or `gal`, and a comma, depend on it. */
export type ReadingOptions = Omit<ParseOptions, "dimension">;

/** The options, checked. */
export function checkedOptions(options: ReadingOptions = {}): ReadingOptions {
  return checked(options, TEXT_OPTIONS, "options");
}

/** Reads an input by its field list, with text where a quantity or a number is expected. Trusts the options. */
export function readBy<T>(field: Field<T>, value: unknown, options: ReadingOptions): T {
  return checked(value, field, "", new Check(value, textReader(options), options.system));
}
