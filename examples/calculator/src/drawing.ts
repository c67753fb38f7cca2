import type { Plan, Plot } from "swath-to-spoon/plan";
import { type Passes, passesOver } from "swath-to-spoon/swath";
import { formatQuantity, type Length, type UnitSystem, valueIn } from "swath-to-spoon/units";
import { el, svg } from "./dom.ts";

type Rows = Extract<Plot, { readonly kind: "row-bands" }> & {
  readonly rows: number;
  readonly rowLength: Length;
};
type Block = Extract<Plot, { readonly kind: "rectangle" }>;

/** How the drawing writes its sizes. */
export interface Scale {
  readonly system: UnitSystem;
  readonly locale: string;
}

// The most room the plot takes, in the drawing's own units (pixels on a phone).
const ROOM = { width: 280, height: 420 };
const EDGE = { left: 14, top: 30, bottom: 42 };
const WIDTH = ROOM.width + 2 * EDGE.left;

// More stripes than this blur on a phone.
const MOST_STRIPES = 80;

/** Draws the plot to scale with its bands and passes. Returns nothing if only the area is known. */
export function plotDrawing({ input }: Plan, scale: Scale): HTMLElement | undefined {
  const plot = input.plot as Plot;
  if (input.calibration.kind !== "strip") return undefined;
  const { swath } = input.calibration;
  if (plot.kind === "row-bands") return rowsDrawing(plot as Rows, swath, scale);
  if (plot.kind === "rectangle") return blockDrawing(plot, swath, scale);
  return undefined;
}

/** A plot as drawn: its size, its scale, and whether the long side is shortened. */
interface Frame {
  readonly perMeter: number;
  readonly width: number;
  readonly height: number;
  readonly cut: boolean;
}

// Widths and lengths have one scale. A long, narrow plot is shortened so its bands can still be seen.
function frameFor(width: number, length: number): Frame {
  const shownLength = Math.min(length, 3 * width);
  const perMeter = Math.min(ROOM.width / width, ROOM.height / shownLength);
  return {
    perMeter,
    width: width * perMeter,
    height: Math.max(8, shownLength * perMeter),
    cut: shownLength < length,
  };
}

function rowsDrawing(plot: Rows, swath: Length, scale: Scale): HTMLElement {
  const { rows, rowLength, bandWidth, rowSpacing = bandWidth } = plot;
  const drawn = Math.min(rows, MOST_STRIPES);
  const [spacing, band] = [rowSpacing, bandWidth].map((one) => valueIn(one, "m")) as [number, number];
  const frame = frameFor(drawn * spacing, valueIn(rowLength, "m"));
  const { along } = passesOver({ length: rowLength, width: bandWidth, swath });
  const passes = rows * along.passes;
  const stripes = Array.from({ length: drawn }, (_, i): SVGElement[] => {
    const middle = (i + 0.5) * spacing * frame.perMeter;
    const width = band * frame.perMeter;
    return [
      svg("rect", { class: "band", x: middle - width / 2, y: 0, width, height: frame.height }),
      svg("line", { class: "row", x1: middle, x2: middle, y1: 0, y2: frame.height }),
      ...Array.from({ length: along.passes }, (_, pass) => {
        const x = middle - width / 2 + (width * (pass + 0.5)) / along.passes;
        return arrow(x, frame.height, (i * along.passes + pass) % 2 === 0, width / along.passes);
      }),
    ];
  }).flat();
  const sizes = [
    `${rows} rows, each ${text(rowLength, scale)} long`,
    `a band ${text(bandWidth, scale)} wide on each row`,
    `rows ${text(rowSpacing, scale)} apart`,
    `${passes} passes, ${text(longer(rowLength, passes), scale)} to walk`,
  ];
  const across = `${text(longer(rowSpacing, drawn), scale)} across`;
  const remark = drawn < rows ? `Shows the first ${drawn} rows.` : undefined;
  return figure(frame, stripes, across, sizes, scale, remark);
}

function blockDrawing({ length, width }: Block, swath: Length, scale: Scale): HTMLElement {
  const { along } = passesOver({ length, width, swath });
  const each = valueIn(swath, "m");
  const drawn = Math.min(along.passes, MOST_STRIPES);
  const whole = drawn === along.passes;
  const across = whole ? valueIn(width, "m") : drawn * each;
  const frame = frameFor(across, valueIn(length, "m"));
  const stripes = Array.from({ length: drawn }, (_, i): SVGElement[] => {
    // The last pass moves in to end at the plot's edge.
    const from = whole ? Math.max(0, Math.min(i * each, across - each)) : i * each;
    const stripe = Math.min(each, across) * frame.perMeter;
    const x = from * frame.perMeter;
    return [
      svg("rect", {
        class: `pass ${i % 2 === 0 ? "odd" : "even"}`,
        x,
        y: 0,
        width: stripe,
        height: frame.height,
      }),
      arrow(x + stripe / 2, frame.height, i % 2 === 0, stripe),
    ];
  }).flat();
  const sizes = [
    `${text(length, scale)} long, ${text(width, scale)} wide`,
    `${along.passes} passes, each ${text(swath, scale)} wide, along the length`,
    ...lastPass(along, scale),
    `${text(along.distance, scale)} to walk`,
  ];
  const acrossText = `${text(whole ? width : longer(swath, drawn), scale)} across`;
  const remark = whole ? undefined : `Shows the first ${drawn} passes.`;
  return figure(frame, stripes, acrossText, sizes, scale, remark);
}

function lastPass({ lastOverlap, pastEdge }: Passes, scale: Scale): string[] {
  if (pastEdge.value > 0) return [`the pass sprays ${text(pastEdge, scale)} past the edge`];
  return lastOverlap.value > 0
    ? [`the last pass overlaps by ${text(lastOverlap, scale)}: shut off over the part already sprayed`]
    : [];
}

function longer({ value, unit }: Length, times: number): Length {
  return { value: value * times, unit };
}

function text(size: Length, { locale }: Scale): string {
  return formatQuantity(size, { locale, digits: 4 });
}

// The direction of a pass: up and back in turn. It is drawn below the zigzag in the middle.
function arrow(x: number, height: number, away: boolean, width: number): SVGElement {
  const middle = height * 0.75;
  const half = Math.min(18, height * 0.2);
  const [start, end] = away ? [middle + half, middle - half] : [middle - half, middle + half];
  const head = Math.max(1.5, Math.min(5, width / 2));
  const back = end + (away ? head * 2 : -head * 2);
  return svg(
    "g",
    { class: "way" },
    svg("line", { x1: x, x2: x, y1: start, y2: back }),
    svg("path", { d: `M${x} ${end}L${x - head} ${back}H${x + head}Z` }),
  );
}

function figure(
  frame: Frame,
  stripes: readonly SVGElement[],
  across: string,
  sizes: readonly string[],
  scale: Scale,
  remark: string | undefined,
): HTMLElement {
  const { width, height, cut } = frame;
  const left = (WIDTH - width) / 2;
  const label = `Plot drawn to scale: ${sizes.join(", ")}.`;
  const drawing = svg(
    "svg",
    {
      viewBox: `0 0 ${WIDTH} ${EDGE.top + height + EDGE.bottom}`,
      class: "plot",
      role: "img",
      "aria-label": label,
    },
    svg(
      "g",
      { transform: `translate(${left} ${EDGE.top})` },
      svg("rect", { class: "ground", x: 0, y: 0, width, height }),
      ...stripes,
      ...(cut ? [cutMark(width, height / 2)] : []),
      svg("text", { x: 0, y: -10 }, across),
      scaleBar(frame, scale),
    ),
  );
  const caption = el(
    "figcaption",
    {},
    el("ul", {}, ...sizes.map((size) => el("li", {}, size))),
    ...[cut ? "Drawing shortened at the zigzag; otherwise to scale." : undefined, remark].map((one) =>
      one === undefined ? undefined : el("p", { class: "hint" }, one),
    ),
  );
  return el("figure", {}, drawing, caption);
}

function cutMark(width: number, y: number): SVGElement {
  const teeth = Math.max(2, Math.round(width / 12));
  const step = width / teeth;
  const points = Array.from({ length: teeth + 1 }, (_, i) => [i * step, y + (i % 2 === 0 ? -4 : 4)]);
  const there = points.map(([x, at]) => `${x} ${at}`).join("L");
  const back = points.map(([x, at = 0]) => `${x} ${at + 8}`).reverse();
  return svg("path", { class: "cut", d: `M${there}L${back.join("L")}Z` });
}

function scaleBar({ perMeter, height }: Frame, { system, locale }: Scale): SVGElement {
  const unit = system === "metric" ? "m" : "ft";
  const perUnit = perMeter * valueIn({ value: 1, unit }, "m");
  const units = niceNumber(70 / perUnit);
  const length = units * perUnit;
  const y = height + 14;
  return svg(
    "g",
    { class: "scale" },
    svg("path", { d: `M0 ${y - 4}v8M0 ${y}h${length}M${length} ${y - 4}v8` }),
    svg("text", { x: 0, y: y + 20 }, formatQuantity({ value: units, unit }, { locale })),
  );
}

/** The largest of 1, 2, 5, 10, 20, 50 … up to a limit. */
function niceNumber(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2].find((step) => step * power <= most) ?? 1) * power;
}
