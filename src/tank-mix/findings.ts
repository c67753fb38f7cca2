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

/** What each finding says: how much it matters, the field that it is about, and the sentence. */
const SENTENCES: Readonly<
  Record<LabelFindingCode, readonly [LabelFinding["severity"], path: string, template: string]>
> = {
  "rate-over-max": [
    "refusal",
    "rate",
    "The rate of {rate} is over the label maximum of {max}. Use no more than the label allows.",
  ],
  "rate-near-max": [
    "warning",
    "rate",
    "The rate of {rate} is at or near the label maximum of {max}. A slow step or a worn nozzle would put you over.",
  ],
  "rate-under-min": [
    "warning",
    "rate",
    "The rate of {rate} is below the label minimum of {min}. It may not work: check the label.",
  ],
  "carrier-under-least": [
    "refusal",
    "carrierRate",
    "The sprayer puts out {carrierRate}, below the label minimum of {least}. Slow down or use larger nozzles, then recalibrate.",
  ],
  "carrier-near-least": [
    "warning",
    "carrierRate",
    "The sprayer puts out {carrierRate}, at or near the label minimum of {least}. Walking faster would put you below it.",
  ],
  "carrier-over-most": [
    "refusal",
    "carrierRate",
    "The sprayer puts out {carrierRate}, over the label maximum of {most}. Speed up or use smaller nozzles, then recalibrate.",
  ],
  "season-over-max": [
    "refusal",
    "rate",
    "With {used} already used, {rate} more goes over the label maximum of {max} in a season. Use less, or another product.",
  ],
  "season-nearly-used": [
    "warning",
    "rate",
    "After this application {left} of the season's {max} is left, not enough for another at this rate.",
  ],
  "season-unknown": [
    "warning",
    "soFar.rate",
    "The label allows {max} in a season, and you haven't entered what this plot has already had. Check your spray record.",
  ],
  "applications-over-most": [
    "refusal",
    "soFar.applications",
    "The label limits applications to {most} a season, and this plot has had {made}. Don't use this product again this season.",
  ],
  "applications-last": [
    "warning",
    "soFar.applications",
    "This is the last of the {most} applications that the label allows in a season.",
  ],
  "applications-unknown": [
    "warning",
    "soFar.applications",
    "The label limits applications to {most} a season, and you haven't entered how many this plot has had. Check your spray record.",
  ],
  "interval-too-short": [
    "refusal",
    "soFar.daysSinceLast",
    "Days since the last application: {since}. The label requires {least} or more, so wait.",
  ],
  "strength-unusual": [
    "warning",
    "rate",
    "The mix is {strength} product, and labels rarely ask for more than {limit}. Check the label rate, its unit and the output rate.",
  ],
  "density-unusual": [
    "warning",
    "rate.density",
    "A liquid product that weighs {given} is unusual. Most weigh {low} to {high}: check the number and its unit.",
  ],
  "bulk-density-unusual": [
    "warning",
    "bulkDensity",
    "A dry product that weighs {given} is unusual. Most weigh {low} to {high}: check the number and its unit.",
  ],
  "content-unusual": [
    "warning",
    "rate.contains",
    "A product that contains {given} is unusual. Check the number and its unit.",
  ],
  "interval-unknown": [
    "warning",
    "soFar.daysSinceLast",
    "The label requires {least} or more days between applications, and you haven't entered when the last one was. Check your spray record.",
  ],
};

/** One finding; `other` is a second sentence of its code. */
export function finding(
  code: LabelFindingCode,
  figures: LabelFinding["figures"],
  other?: { readonly key: string; readonly template: string },
): LabelFinding {
  const [severity, path, usual] = SENTENCES[code];
  const { key, template } = other ?? { key: code, template: usual };
  return { code, key, severity, path, message: messageOf(template, figures), figures };
}
