import type { Figures } from "../../errors.js";
import { isRefused } from "../../plan/refused.js";
import type { AnyPlan } from "../../plan/result.js";
import type { Severity, Warning } from "../../plan/warnings.js";
import { asRead, messageOf } from "../../units/message.js";
import type { PhraseWords } from "../words/messages.js";
import { ownText, type Writer } from "../words/writer.js";

/** A warning as it is written. */
export interface WrittenAlert {
  /** How much it matters. */
  readonly severity: Severity;
  /** The same in words. */
  readonly name: string;
  /** What is wrong, and what to do. */
  readonly message: string;
}

// What a sheet shows anyway: in how many loads the mix is made.
const SHOWN: readonly Warning["code"][] = ["mix-over-tank"];
// What is about doses, of which a sheet of a refused job has none.
const ON_DOSES: readonly Warning["code"][] = [
  "dose-not-measurable",
  "long-count",
  "scale-needed",
  "last-load-small",
];

/** The plan's warnings in words, those that matter most first; without what the sheet shows anyway. */
export function writtenAlerts(
  plan: Pick<AnyPlan, "warnings">,
  writer: Writer,
  severities: readonly Severity[],
): WrittenAlert[] {
  const { text } = writer.messages;
  const names = {
    note: text.severityNote,
    warning: text.severityWarning,
    refusal: text.severityRefusal,
  } as const;
  const left = isRefused(plan) ? [...SHOWN, ...ON_DOSES] : SHOWN;
  const shown = plan.warnings.filter(
    (warning) => !left.includes(warning.code) && !isAgain(warning, plan.warnings),
  );
  return severities.flatMap((severity) =>
    shown
      .filter((warning) => warning.severity === severity)
      .map((warning) => ({ severity, name: names[severity], message: sentenceOf(warning, writer) })),
  );
}

/** Whether the same was said of a product's dose in an earlier load. */
function isAgain(warning: Warning, warnings: readonly Warning[]): boolean {
  if (!ON_DOSES.includes(warning.code)) return false;
  const { code, figures } = warning;
  return warnings.find((one) => one.code === code && one.figures.product === figures.product) !== warning;
}

// What has to be at hand before a person goes to the tank.
const TO_FETCH: readonly Warning["code"][] = ["scale-needed"];

/** The warnings of a card, which has no notes but of what to fetch. */
export function cardAlerts(plan: Pick<AnyPlan, "warnings">, writer: Writer): WrittenAlert[] {
  const warnings = plan.warnings.filter(
    ({ severity, code }) => severity !== "note" || TO_FETCH.includes(code),
  );
  return writtenAlerts({ ...plan, warnings }, writer, ["refusal", "warning", "note"]);
}

/** What an error and a warning have in common: a sentence by its key. */
export interface Sayable {
  /** Which sentence. */
  readonly key: string;
  /** Its figures. */
  readonly figures: Figures;
  /** The same in English. */
  readonly message: string;
}

/** The warnings of a plan of granules, in words: what is refused isn't spread. */
export function spreadingAlerts(
  plan: Pick<AnyPlan, "warnings">,
  writer: Writer,
  severities: readonly Severity[],
): WrittenAlert[] {
  const { doNotSpread } = writer.messages.text;
  return writtenAlerts(plan, writer, severities).map((alert) =>
    alert.severity === "refusal" ? { ...alert, name: doNotSpread } : alert,
  );
}

// As many digits as figures are ever read with.
const AS_THEY_ARE = 12;

/** An error or a warning in the table's words; in English where its key has none. */
export function sentenceOf(
  { key, figures, message }: Sayable,
  { messages, fill, entered }: Pick<Writer<PhraseWords>, "messages" | "fill" | "entered">,
): string {
  const { issues, text } = messages;
  const template = ownText(issues, key);
  const read = asRead(figures, entered);
  if (template === undefined) return readAs(read, message, figures);
  const { plot } = figures;
  // A plot without a name goes by its number, and each language has its own word for that.
  const named = typeof plot === "number" ? { ...read, plot: fill(text.plotNumber, { number: plot }) } : read;
  const issue = fill(template, named, AS_THEY_ARE);
  if (figures.product === undefined)
    return plot === undefined ? issue : fill(text.ofPlot, { ...named, issue });
  if (/\{product[.}]/.test(template)) return issue;
  return fill(plot === undefined ? text.ofProduct : text.ofProductOnPlot, { ...named, issue });
}

/** A sentence that has its figures already, with each quantity as it is read on a sheet: 0.61 m of 0.6096 m, which is 2 ft. */
function readAs(read: Figures, message: string, figures: Figures): string {
  const written = (figure: Figures[string]): string => messageOf("{figure}", { figure });
  const quantities = Object.keys(figures).filter((name) => typeof figures[name] === "object");
  return quantities.reduce((text, name) => {
    const [long, short] = [figures, read].map((one) => written(one[name] as Figures[string]));
    return text.replace(long as string, () => short as string);
  }, message);
}
