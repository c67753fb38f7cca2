import type { Figures } from "../../errors.js";
import type { Plan } from "../../plan/result.js";
import type { Severity, Warning } from "../../plan/warnings.js";
import type { Quantity } from "../../units/types.js";
import { filled, ownText, type Writer } from "../words/writer.js";

/** A warning as it is written. */
export interface WrittenAlert {
  /** How much it matters. */
  readonly severity: Severity;
  /** The same in words. */
  readonly name: string;
  /** What is wrong, and what to do. */
  readonly message: string;
}

/** The plan's warnings in words, those that matter most first. */
export function writtenAlerts(plan: Plan, writer: Writer, severities: readonly Severity[]): WrittenAlert[] {
  const { text } = writer.messages;
  const names = {
    note: text.severityNote,
    warning: text.severityWarning,
    refusal: text.severityRefusal,
  } as const;
  return severities.flatMap((severity) =>
    plan.warnings
      .filter((warning) => warning.severity === severity)
      .map((warning) => ({ severity, name: names[severity], message: message(warning, writer) })),
  );
}

function message(warning: Warning, { messages, short }: Writer): string {
  const text = ownText(messages.warnings, warning.code);
  if (text === undefined) return warning.message;
  const figures = Object.entries(warning.figures).map(([name, figure]): [string, string] => {
    if (typeof figure === "string") return [name, figure];
    return [name, isList(figure) ? figure.join(", ") : short(figure as Quantity | number)];
  });
  return filled(text, Object.fromEntries(figures));
}

function isList(figure: Figures[string]): figure is readonly string[] {
  return Array.isArray(figure);
}
