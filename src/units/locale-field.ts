import { TextField } from "./fields.js";
import { isLocale, isTag, unknownLocale } from "./numerals.js";

/** The language tag that numbers are read or written by. */
/* @__NO_SIDE_EFFECTS__ */
export function locale(about: string): TextField {
  return tag(about, isLocale);
}

/** The language of a table of words. The engine need not know it: the words are there. */
/* @__NO_SIDE_EFFECTS__ */
export function language(about: string): TextField {
  return tag(about, (text) => isTag(text));
}

/* @__NO_SIDE_EFFECTS__ */
function tag(about: string, isRight: (text: string) => boolean): TextField {
  return new TextField(about, {
    name: "locale",
    example: "en-US",
    check: (text, check) => {
      if (isRight(text)) return true;
      const { key, template, figures } = unknownLocale(text);
      check.fault("unknown-choice", key, "", template, figures);
      return false;
    },
  });
}
