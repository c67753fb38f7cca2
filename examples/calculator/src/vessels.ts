import { html, svg, type TemplateResult } from "lit-html";
import type { MeasuredPart, MeasuringTool } from "swath-to-spoon/household";
import type { AnyPlan } from "swath-to-spoon/plan";
import { type Quantity, quantityRatio, unitsOf, type Volume, valueIn } from "swath-to-spoon/units";
import { locale, say, W } from "./words.ts";

type Sprayer = AnyPlan["input"]["sprayer"];

/** A tank, filled to the level of its load. */
export function tankDrawing({ carrier }: AnyPlan["loads"][number], { tank, marks }: Sprayer): TemplateResult {
  const full = Math.min(1, quantityRatio(carrier, tank));
  const percent = new Intl.NumberFormat(locale, { style: "percent" }).format(full);
  const [top, height] = [12, 90];
  const level = top + height * (1 - full);
  const lines = marksOf(tank, marks).map((part) => top + height * part);
  return html`<svg viewBox="0 0 84 106" class="tank" role="img" aria-label=${say(W.tankAt, { percent })}>
    <rect class="inside" x="8" y=${top} width="68" height=${height} />
    <rect class="mix" x="8" y=${level} width="68" height=${height * full} />
    ${lines.map((y) => svg`<line class="mark" x1="8" x2="18" y1=${y} y2=${y} />`)}
    <path class="outline" d="M30 ${top}v-8h24v8h22v${height}h-68v-${height}z" />
    <line class="level" x1="4" x2="80" y1=${level} y2=${level} />
  </svg>`;
}

// More than these blur.
const MOST_MARKS = 24;

/** The heights of a tank's marks, as parts of the whole. Quarters where they aren't known. */
function marksOf(tank: Volume, marks: Sprayer["marks"]): number[] {
  if (marks === undefined || "length" in marks) return [0.25, 0.5, 0.75];
  const step = quantityRatio(marks, tank);
  const all = Math.min(MOST_MARKS, Math.ceil(1 / step) - 1);
  return Array.from({ length: all }, (_, i) => 1 - (i + 1) * step);
}

/** Draws one part of a dose: as many tools as it takes, up to six. */
export function partDrawing({ tool, count, each }: MeasuredPart): TemplateResult[] {
  return Array.from({ length: Math.min(count, 6) }, () => toolDrawing(tool, each));
}

function toolDrawing(
  { name, capacity, graduation }: MeasuringTool,
  each: Quantity | undefined,
): TemplateResult {
  const full = each === undefined ? 1 : Math.min(1, quantityRatio(each, capacity));
  if ((unitsOf("mass") as string[]).includes(capacity.unit)) return icon(64, 44, SCALES);
  if (name.includes("syringe")) return icon(150, 34, syringe(full));
  if (graduation !== undefined) return icon(36, 84, cylinder(full));
  return name.includes("spoon") ? spoon(capacity as Volume) : icon(52, 44, CUP);
}

// The words beside a drawing say the same, so a screen reader skips it.
function icon(width: number, height: number, drawn: TemplateResult<2>): TemplateResult {
  return html`<svg viewBox="0 0 ${width} ${height}" width=${width} height=${height} class="tool" aria-hidden="true">
    ${drawn}
  </svg>`;
}

// Spoons are drawn to scale: volume goes with the cube of the size.
function spoon(capacity: Volume): TemplateResult {
  const size = Math.max(0.35, Math.min(1.15, Math.cbrt(valueIn(capacity, "mL") / 15)));
  const [rx, ry, handle] = [15 * size, 11 * size, 20 * size + 2];
  return icon(
    Math.ceil(2 * rx + handle + 2),
    32,
    svg`<line class="handle" x1=${2 * rx} x2=${2 * rx + handle} y1="16" y2="16" />
      <ellipse class="filled" cx=${rx + 2} cy="16" rx=${rx} ry=${ry} />`,
  );
}

const CUP = svg`<path class="handle" d="M36 14h7a5 5 0 0 1 5 5v4a7 7 0 0 1-7 7h-7" />
  <path class="filled" d="M4 8h34l-3 32h-28z" />`;

const SCALES = svg`<line class="handle" x1="6" x2="58" y1="10" y2="10" />
  <path class="handle" d="M32 10v8" />
  <path class="outline" d="M12 18h40l6 22h-52z" />
  <rect class="mix" x="20" y="24" width="24" height="10" />`;

/** Nine marks for ten parts; the middle one is longer. */
function tenths(mark: (part: number, length: number) => TemplateResult<2>): TemplateResult<2>[] {
  return Array.from({ length: 9 }, (_, i) => mark((i + 1) / 10, i === 4 ? 10 : 5));
}

function syringe(full: number): TemplateResult<2> {
  const [start, length] = [22, 84];
  const end = start + length * full;
  // The plunger is where the liquid ends.
  return svg`<line class="handle" x1="4" x2=${start} y1="17" y2="17" />
    <rect class="mix" x=${start} y="8" width=${length * full} height="18" />
    <rect class="outline" x=${start} y="8" width=${length} height="18" />
    ${tenths((part, long) => svg`<path class="mark" d="M${start + length * part} 8v${long}" />`)}
    <line class="level" x1=${end} x2=${end} y1="6" y2="28" />
    <path class="handle" d="M${end} 17H146M146 8v18" />`;
}

function cylinder(full: number): TemplateResult<2> {
  const [top, height] = [6, 68];
  return svg`<rect class="mix" x="9" y=${top + height * (1 - full)} width="18" height=${height * full} />
    <path class="outline" d="M6 6h3v68h18v-68h3M3 78h30v-4h-30z" />
    ${tenths((part, long) => svg`<path class="mark" d="M9 ${top + height * part}h${long}" />`)}`;
}
