import { type ErrorCode, type Figures, SprayMathError } from "../errors.js";
import { describeUnit } from "./describe.js";
import { isUnit } from "./resolve.js";

/** A figure as people read it: so many digits at most, the unit as the trade spells it. */
export function textOf(figure: Figures[string] | undefined, digits = 6): string {
  if (typeof figure === "number") return String(Number(figure.toPrecision(digits)));
  if (figure === undefined || typeof figure === "string") return figure ?? "";
  if (!("unit" in figure)) return figure.join(", ");
  const { value, unit } = figure;
  const symbol = isUnit(unit) ? describeUnit(unit).symbol : unit;
  return `${textOf(value, digits)}${symbol === "%" ? "" : " "}${symbol}`.trim();
}

// There are as many templates as sentences: each is taken apart once.
const taken = new Map<string, readonly string[]>();

/** A template's texts and the names of its places, in turns. */
function partsOf(template: string): readonly string[] {
  let parts = taken.get(template);
  if (parts === undefined) {
    parts = template.split(/\{(\w+)\}/);
    taken.set(template, parts);
  }
  return parts;
}

/** Fills the places of a template: `{limit}` with the figure of that name. */
export function messageOf(template: string, figures: Figures, digits = 6): string {
  const parts = partsOf(template);
  let message = parts[0] as string;
  for (let i = 1; i < parts.length; i += 2) {
    const name = parts[i] as string;
    message += (Object.hasOwn(figures, name) ? textOf(figures[name], digits) : `{${name}}`) + parts[i + 1];
  }
  return message;
}

/** The error for one fault: its template stands beside the place that raises it. */
export function refusal(
  code: ErrorCode,
  key: string,
  path: string,
  template: string,
  figures: Figures = {},
): SprayMathError {
  return new SprayMathError(code, path, messageOf(template, figures), { key, figures });
}
