import type { MeasuredPart, MeasuringTool } from "swath-to-spoon/household";
import type { AnyPlan } from "swath-to-spoon/plan";
import { type Quantity, quantityRatio, unitsOf, type Volume, valueIn } from "swath-to-spoon/units";
import { svg } from "./dom.ts";
import { locale, say, W } from "./words.ts";

/** A tank, filled to the level of its load. */
export function tankDrawing({ carrier }: AnyPlan["loads"][number], { tank, marks }: Sprayer): SVGElement {
  const full = Math.min(1, quantityRatio(carrier, tank));
  const percent = new Intl.NumberFormat(locale, { style: "percent" }).format(full);
  const [top, height] = [12, 90];
  const level = top + height * (1 - full);
  return svg(
    "svg",
    { viewBox: "0 0 84 106", class: "tank", role: "img", "aria-label": say(W.tankAt, { percent }) },
    svg("rect", { class: "inside", x: 8, y: top, width: 68, height }),
    svg("rect", {
      class: "mix",
      x: 8,
      y: level,
      width: 68,
      height: top + height - level,
      "data-full": full.toFixed(3),
    }),
    ...marksOf(tank, marks).map((part) =>
      svg("line", { class: "mark", x1: 8, x2: 18, y1: top + height * part, y2: top + height * part }),
    ),
    svg("path", { class: "outline", d: `M30 ${top}v-8h24v8h22v${height}h-68v-${height}z` }),
    svg("line", { class: "level", x1: 4, x2: 80, y1: level, y2: level }),
  );
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

type Sprayer = AnyPlan["input"]["sprayer"];

/** Draws one part of a dose: as many tools as it takes, up to six. */
export function partDrawing({ tool, count, each }: MeasuredPart): SVGElement[] {
  const drawn = Math.min(count, 6);
  return Array.from({ length: drawn }, () => toolDrawing(tool, each));
}

function toolDrawing(tool: MeasuringTool, each: Quantity | undefined): SVGElement {
  const full = each === undefined ? 1 : Math.min(1, quantityRatio(each, tool.capacity));
  if (isWeight(tool.capacity)) return scales();
  if (tool.name.includes("syringe")) return syringe(full);
  if (tool.graduation !== undefined) return cylinder(full);
  return tool.name.includes("spoon") ? spoon(tool.capacity as Volume) : cup();
}

function isWeight({ unit }: Quantity): boolean {
  return (unitsOf("mass") as string[]).includes(unit);
}

// The words beside a drawing say the same, so a screen reader skips it.
function icon(width: number, height: number, ...children: SVGElement[]): SVGElement {
  const box = { viewBox: `0 0 ${width} ${height}`, width, height, class: "tool", "aria-hidden": "true" };
  return svg("svg", box, ...children);
}

// Spoons are drawn to scale: volume goes with the cube of the size.
function spoon(capacity: Volume): SVGElement {
  const size = Math.max(0.35, Math.min(1.15, Math.cbrt(valueIn(capacity, "mL") / 15)));
  const [rx, ry] = [15 * size, 11 * size];
  return icon(
    Math.ceil(2 * rx + 20 * size + 4),
    32,
    svg("line", { class: "handle", x1: 2 * rx, x2: 2 * rx + 20 * size + 2, y1: 16, y2: 16 }),
    svg("ellipse", { class: "filled", cx: rx + 2, cy: 16, rx, ry }),
  );
}

function cup(): SVGElement {
  return icon(
    52,
    44,
    svg("path", { class: "handle", d: "M36 14h7a5 5 0 0 1 5 5v4a7 7 0 0 1-7 7h-7" }),
    svg("path", { class: "filled", d: "M4 8h34l-3 32h-28z" }),
  );
}

function syringe(full: number): SVGElement {
  const [x, length] = [22, 84];
  return icon(
    150,
    34,
    svg("line", { class: "handle", x1: 4, x2: x, y1: 17, y2: 17 }),
    svg("rect", { class: "mix", x, y: 8, width: length * full, height: 18 }),
    svg("rect", { class: "outline", x, y: 8, width: length, height: 18 }),
    ...Array.from({ length: 9 }, (_, i) => {
      const at = x + (length * (i + 1)) / 10;
      return svg("line", { class: "mark", x1: at, x2: at, y1: 8, y2: i === 4 ? 18 : 13 });
    }),
    // The plunger is where the liquid ends.
    svg("line", { class: "level", x1: x + length * full, x2: x + length * full, y1: 6, y2: 28 }),
    svg("path", { class: "handle", d: `M${x + length * full} 17H146M146 8v18` }),
  );
}

function cylinder(full: number): SVGElement {
  return icon(
    36,
    84,
    svg("rect", { class: "mix", x: 9, y: 6 + 68 * (1 - full), width: 18, height: 68 * full }),
    svg("path", { class: "outline", d: "M6 6h3v68h18v-68h3M3 78h30v-4h-30z" }),
    ...Array.from({ length: 9 }, (_, i) => {
      const at = 6 + (68 * (i + 1)) / 10;
      return svg("line", { class: "mark", x1: 9, x2: i === 4 ? 18 : 14, y1: at, y2: at });
    }),
  );
}

function scales(): SVGElement {
  return icon(
    64,
    44,
    svg("line", { class: "handle", x1: 6, x2: 58, y1: 10, y2: 10 }),
    svg("path", { class: "handle", d: "M32 10v8" }),
    svg("path", { class: "outline", d: "M12 18h40l6 22h-52z" }),
    svg("rect", { class: "mix", x: 20, y: 24, width: 24, height: 10 }),
  );
}
