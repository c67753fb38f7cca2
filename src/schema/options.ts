import { checkedChoice, checkedObject } from "../units/guard.js";
import { numeralSigns } from "../units/numerals.js";
import type { ParseOptions } from "../units/parse.js";

/** How text is read where a quantity is typed: as for `parseQuantity`, which a bare `oz` or `gal` and a comma depend on. */
export type ReadingOptions = Omit<ParseOptions, "dimension">;

// An app has a few locales; whatever it asks for, no more schemas than these are kept.
const MOST_KEPT = 16;

/** Makes what depends on the options once for each set of them, at its first use. */
export function madeOnce<T>(make: (options: ReadingOptions) => T): (options?: ReadingOptions) => T {
  const made = new Map<string, T>();
  return (options = {}) => {
    const { locale = "en-US", system = "us", ounce } = checkedObject(options, "options");
    const key = `${locale} ${system} ${ounce}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    numeralSigns(locale);
    checkedChoice(system, ["us", "imperial", "metric"], "options.system");
    if (ounce !== undefined) checkedChoice(ounce, ["liquid", "dry"], "options.ounce");
    if (made.size >= MOST_KEPT) made.clear();
    const fresh = make({ locale, system, ...(ounce !== undefined && { ounce }) });
    made.set(key, fresh);
    return fresh;
  };
}
