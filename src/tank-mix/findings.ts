import { messageOf } from "../units/message.js";
import type { Quantity } from "../units/types.js";

/** What a finding is about. */
export type LabelFindingCode =
  | "rate-over-max"
  | "rate-near-max"
  | "rate-under-min"
  | "carrier-under-least"
  | "carrier-near-least"
  | "carrier-over-most"
  | "season-over-max"
  | "season-nearly-used"
  | "season-unknown"
  | "applications-over-most"
  | "applications-last"
  | "applications-unknown"
  | "interval-too-short"
  | "interval-unknown"
  | "strength-unusual"
  | "density-unusual"
  | "bulk-density-unusual"
  | "content-unusual";

/** Something that a careful person would say about a job before it starts. */
export interface LabelFinding {
  /** Which limit, and how it stands. */
  readonly code: LabelFindingCode;
  /** Which sentence of its code: one key for each. */
  readonly key: string;
  /** `refusal`: not to be sprayed so. `warning`: to be looked at first. */
  readonly severity: "warning" | "refusal";
  /** The argument that it is about. */
  readonly path: string;
  /** What was found, what the label says, what to do. */
  readonly message: string;
  /** The figures behind it: what the job has, and the limit. */
  readonly figures: Readonly<Record<string, Quantity | number>>;
}

/** One finding: its template stands beside the place that raises it. `key` is for a code with several sentences. */
export function finding(
  code: LabelFindingCode,
  severity: LabelFinding["severity"],
  path: string,
  template: string,
  figures: LabelFinding["figures"],
  key: string = code,
): LabelFinding {
  return { code, key, severity, path, message: messageOf(template, figures), figures };
}
