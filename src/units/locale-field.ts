import { TextField } from "./fields.js";
import { isLocale, unknownLocale } from "./numerals.js";

/** The language tag that numbers are read or written by. */
/* @__NO_SIDE_EFFECTS__ */
export function locale(about: string): TextField {
  return new TextField(about, {
    name: "locale",
    check: (text, check) => {
      if (isLocale(text)) return true;
      const { key, template, figures } = unknownLocale(text);
      check.fault("unknown-choice", key, "", template, figures);
      return false;
    },
  });
}
