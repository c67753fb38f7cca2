import type { Figures, Issue } from "../errors.js";
import type { MeasuredDose, NotMeasurable } from "../household/measure-out.js";
import { MEASURING_TOOL } from "../household/measuring-tool.js";
import type { MeasuredPart } from "../household/parts.js";
import type { Suggestion } from "../household/suggest.js";
import type { SpreaderFinding } from "../output-rate/spreader.js";
import type { Warning } from "../plan/warnings.js";
import type { LabelFinding } from "../tank-mix/findings.js";
import { type Check, checked, type Field } from "../units/check.js";
import {
  AsGivenField,
  about,
  count,
  list,
  type ObjectField,
  object,
  optional,
  picked,
  text,
} from "../units/fields.js";
import { locale } from "../units/locale-field.js";
import { quantity } from "../units/quantity-field.js";
import { type Sayable, sentenceOf } from "./job/alerts.js";
import { measureText } from "./job/amounts.js";
import { ENGLISH_PHRASES } from "./words/english.js";
import type { PhraseWords } from "./words/messages.js";
import { MessagesField, PHRASE_PARTS } from "./words/messages-field.js";
import { type Writer, writerFor } from "./words/writer.js";

/** Whose numbers and whose words a phrase is written in. */
export interface PhraseOptions {
  /** Whose numbers are printed, as a language tag; `en-US` unless given. */
  readonly locale?: string | undefined;
  /** The words, such as `SPANISH_WORDS`; English unless given. */
  readonly words?: PhraseWords | undefined;
}

const PHRASE_OPTIONS: ObjectField<PhraseOptions> = object<PhraseOptions>({
  locale: optional(locale("Whose numbers are printed, as a language tag; `en-US` unless given.")),
  words: optional(
    /* @__PURE__ */ new MessagesField<PhraseWords>(
      "The words, such as `SPANISH_WORDS`; English unless given.",
      PHRASE_PARTS,
    ),
  ),
});

/** The writer of single phrases. */
export function phraseWriter(options: PhraseOptions): Writer<PhraseWords> {
  return writerFor<PhraseWords>(checked(options, PHRASE_OPTIONS, "options"), ENGLISH_PHRASES);
}

const ISSUE: Field<Sayable> = picked<Sayable>("An error, one of its issues, or a warning.", [
  "key",
  "figures",
  "message",
]);

/** The figures of a sentence, which may come from another program. */
class FiguresField extends AsGivenField<Figures> {
  override read(input: unknown, check: Check): Figures | undefined {
    const given = super.read(input, check);
    if (given === undefined) return undefined;
    const figures = Object.entries(given).map(([name, figure]) => [name, copyOf(figure)] as const);
    for (const [name, figure] of figures)
      if (!isFigure(figure))
        check.fault(
          "not-a-quantity",
          "figure-expected",
          name,
          "A figure is a number, a text, a list of texts or a number with its unit.",
        );
    return Object.fromEntries(figures);
  }
}

/** A figure that nobody else holds: what was checked stays as it was. */
function copyOf(figure: Figures[string]): Figures[string] {
  if (Array.isArray(figure)) return [...figure];
  return typeof figure === "object" && figure !== null ? { ...figure } : figure;
}

function isFigure(figure: unknown): boolean {
  if (typeof figure === "number") return Number.isFinite(figure);
  if (typeof figure === "string") return true;
  if (Array.isArray(figure)) return figure.every((one) => typeof one === "string");
  if (typeof figure !== "object" || figure === null) return false;
  const { value, unit } = figure as { readonly value?: unknown; readonly unit?: unknown };
  return Number.isFinite(value) && typeof unit === "string";
}

const SENTENCE: ObjectField<Sayable> = /* @__PURE__ */ object({
  key: text("Which sentence."),
  figures: /* @__PURE__ */ new FiguresField("Its figures."),
  message: text("The same in English."),
});

/**
 * Returns the sentence of an error or a warning in another language, with numbers and units as its readers write them. Where the
 * table of words has no sentence for the key, the English message stands. An error stands for its first fault: for a form, say
 * each of its `issues`.
 *
 * @param issue - an error, one of its `issues`, a warning of a plan, what `checkLabel` or
 *   `checkSpreader` found, or a suggestion of `suggestMeasures`
 * @param options - see {@link PhraseOptions}
 * @returns the sentence
 * @throws SprayMathError `missing` or `not-a-quantity` for what is no issue, `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { isSprayMathError, rectangleArea } from "swath-to-spoon";
 * import { SPANISH_WORDS } from "swath-to-spoon/words/es";
 * import { issueText } from "swath-to-spoon/worksheet";
 *
 * try {
 *   rectangleArea({ length: { value: 0, unit: "ft" }, width: { value: 30, unit: "ft" } });
 * } catch (error) {
 *   if (isSprayMathError(error)) console.log(issueText(error, { words: SPANISH_WORDS })); // Debe ser más de 0.
 * }
 * ```
 */
export function issueText(
  issue: Issue | Warning | LabelFinding | SpreaderFinding | Suggestion,
  options: PhraseOptions = {},
): string {
  return issueSentence(issue, phraseWriter(options));
}

function issueSentence(issue: Sayable, writer: Writer<PhraseWords>): string {
  const { key, figures, message } = checked<Sayable>(issue, ISSUE, "issue");
  return sentenceOf(checked({ key, figures, message }, SENTENCE, "issue"), writer);
}

const DOSE: Field<MeasuredDose | NotMeasurable> = picked<MeasuredDose | NotMeasurable>(
  "A dose as `measureOut` and a plan give it.",
  ["refused", "issue", "parts"],
);

const PARTS = /* @__PURE__ */ list(
  "What to take with which tool.",
  /* @__PURE__ */ object<MeasuredPart>({
    tool: about("The tool.", MEASURING_TOOL),
    count: count("How many times it is filled."),
    each: optional(
      quantity(
        "For a tool with marks: the mark it is filled to, each time. Without it the tool is filled level and whole.",
        ["volume", "mass"],
      ),
    ),
    amount: quantity("What the fills come to together, in the tool's unit.", ["volume", "mass"]),
  }),
);

/**
 * Returns a dose as people say it: `1 cup + 2 tablespoons`, `12.5 mL in the 20 mL syringe`. For a dose that can't be measured with
 * these tools it says why. For a dose of a plan that refuses its job it says not to mix.
 *
 * @param measured - what `measureOut` gave, or `measured` of a plan's load
 * @param options - see {@link PhraseOptions}
 * @returns the phrase
 * @throws SprayMathError `missing` or `not-a-quantity` for what is no dose, `unknown-choice` or `unknown-field` for an option
 *
 * @example
 * ```ts
 * import { measureOut, qty } from "swath-to-spoon";
 * import { SPANISH_WORDS } from "swath-to-spoon/words/es";
 * import { doseText } from "swath-to-spoon/worksheet";
 *
 * const dose = measureOut({ amount: qty(1.3, "fl_oz"), tools: "us-spoons", rule: "never-over" });
 * console.log(doseText(dose)); // 2 tablespoons + 1 teaspoon + 1/2 teaspoon + 1/4 teaspoon
 * console.log(doseText(dose, { words: SPANISH_WORDS })); // 2 cucharadas + 1 cucharadita + 1/2 cucharadita + 1/4 de cucharadita
 * ```
 */
export function doseText(measured: MeasuredDose | NotMeasurable, options: PhraseOptions = {}): string {
  const dose = checked(measured, DOSE, "measured");
  return dosePhrase(dose, phraseWriter(options));
}

/** A dose in words, of which `measured` is known to be an object. */
export function dosePhrase(dose: MeasuredDose | NotMeasurable, writer: Writer<PhraseWords>): string {
  // A plan marks the doses of a job that it refuses.
  if ("refused" in dose && dose.refused === true) return writer.messages.text.doNotMix;
  if ("issue" in dose) return issueSentence(dose.issue, writer);
  return checked(dose.parts, PARTS, "measured.parts")
    .map((part) => measureText(part, writer))
    .join(" + ");
}
