import { shown } from "../../errors.js";
import { type Check, Field } from "../../units/check.js";
import { language } from "../../units/locale-field.js";
import { made, type TableField, table, written } from "../../units/made.js";
import { NAMES } from "../../units/names.js";
import { ENGLISH_PHRASES, ENGLISH_WORDS } from "./english.js";
import type { LineWords } from "./line-table.js";
import type { Messages, PhraseWords, ToolNames } from "./messages.js";

const LINES: Field<Messages["lines"]> = /* @__PURE__ */ (() =>
  table(made<LineWords>({ found: written(), terms: table(written()) })) as Field<unknown> as Field<
    Messages["lines"]
  >)();

// Which of a language's plural forms there are depends on the language.
const TOOL_NAMES: Field<ToolNames> = /* @__PURE__ */ (() =>
  table(written(), ["one", "other"]) as Field<unknown> as Field<ToolNames>)();

/** One text, or one for each plural form. */
class UnitNamesField extends Field<string | ToolNames> {
  read(input: unknown, check: Check): string | ToolNames | undefined {
    return typeof input === "string" ? input : TOOL_NAMES.read(input, check);
  }

  missing(check: Check): undefined {
    return TOOL_NAMES.missing(check);
  }
}

/** The parts of a table of words that single phrases are written with. */
export const PHRASE_PARTS: Readonly<Record<string, Field<unknown>>> = /* @__PURE__ */ (() => ({
  issues: table(written()),
  names: made(Object.fromEntries(Object.entries(NAMES).map(([list, names]) => [list, texts(names)]))),
  tools: table(TOOL_NAMES),
  units: table(new UnitNamesField("")),
  text: texts(ENGLISH_PHRASES.text),
}))();

/** The parts of every table of words, and the texts that a sheet can't do without. */
export const COMMON_PARTS: Readonly<Record<string, Field<unknown>>> = /* @__PURE__ */ (() => ({
  ...PHRASE_PARTS,
  lines: LINES,
  functions: table(written()),
  sources: table(written()),
}))();

/** Texts by name: all those that the English table has. */
export function texts(english: Readonly<Record<string, string>>): TableField<string> {
  return table(written(), Object.keys(english));
}

const LANGUAGE: Field<string> = language("");

/** A table of words. Parts that it has beside these are for another sheet. */
export class MessagesField<T extends PhraseWords = Messages> extends Field<T> {
  /** @param parts - the parts that it must have */
  constructor(
    about: string,
    readonly parts: Readonly<Record<string, Field<unknown>>>,
  ) {
    super(about);
  }

  read(input: unknown, check: Check): T | undefined {
    if (typeof input !== "object" || input === null || Array.isArray(input))
      return check.fault(
        "not-a-quantity",
        "words-expected",
        "",
        "Pass a table of words, such as the Spanish one, not {given}.",
        { given: shown(input) },
      );
    const before = check.issues.length;
    const parts = Object.entries(this.parts).map(([name, part]) => [name, check.readAt(name, part, input)]);
    const language = check.readAt("language", LANGUAGE, input);
    return check.issues.length === before ? ({ ...Object.fromEntries(parts), language } as T) : undefined;
  }

  missing(check: Check): undefined {
    return check.fault("missing", "words-missing", "", "This part of the table of words is missing.");
  }
}

const PARTS: Readonly<Record<string, Field<unknown>>> = /* @__PURE__ */ (() => ({
  ...COMMON_PARTS,
  steps: texts(ENGLISH_WORDS.steps),
  cautions: table(written()),
}))();

/** The table of words of a worksheet. */
export const MESSAGES: MessagesField = /* @__PURE__ */ new MessagesField(
  "Every word of the sheet; English unless given.",
  PARTS,
);
