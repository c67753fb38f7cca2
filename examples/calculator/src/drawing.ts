import type { AnyPlan, Plot } from "swath-to-spoon/plan";
import { type Passes, passesOver } from "swath-to-spoon/swath";
import {
  convert,
  dimensionOf,
  formatQuantity,
  type Length,
  systemOf,
  type UnitSystem,
  valueIn,
} from "swath-to-spoon/units";
import { el, svg } from "./dom.ts";
import { shown } from "./units.ts";
import { locale, say, W } from "./words.ts";

type Rows = Extract<Plot, { readonly kind: "row-bands" }> & {
  readonly rows: number;
  readonly rowLength: Length;
};
type Block = Extract<Plot, { readonly kind: "rectangle" }>;

// The most room the plot takes, in the drawing's own units (pixels on a phone).
const ROOM = { width: 280, height: 420 };
const EDGE = { left: 14, top: 30, bottom: 42 };
const WIDTH = ROOM.width + 2 * EDGE.left;

// More stripes than this blur on a phone.
const MOST_STRIPES = 80;

/** Draws the plot to scale with its bands and passes. Returns nothing if only the area is known. */
export function plotDrawing(plan: AnyPlan, system: UnitSystem): HTMLElement | undefined {
  if (!("area" in plan && "plot" in plan.input)) return undefined;
  const { plot, calibration } = inSystem(plan.input, system) as {
    plot: Plot;
    calibration: { swath?: Length; runs?: { swath: Length }[] };
  };
  const swath = calibration.swath ?? calibration.runs?.[0]?.swath;
  if (swath === undefined) return undefined;
  if (plot.kind === "row-bands") return rowsDrawing(plot as Rows, swath, system);
  if (plot.kind === "rectangle") return blockDrawing(plot, swath, system);
  return undefined;
}

/** An input with its lengths in the units of a system, whatever they were typed in. */
function inSystem(input: unknown, system: UnitSystem): unknown {
  if (Array.isArray(input)) return input.map((one) => inSystem(one, system));
  if (typeof input !== "object" || input === null) return input;
  const { unit } = input as Length;
  if (typeof unit === "string") {
    const isAtHome =
      dimensionOf(unit) !== "length" || (systemOf(unit) === "metric") === (system === "metric");
    return isAtHome ? input : convert(input as Length, system === "metric" ? "m" : "ft");
  }
  return Object.fromEntries(Object.entries(input).map(([name, one]) => [name, inSystem(one, system)]));
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

function rowsDrawing(plot: Rows, swath: Length, system: UnitSystem): HTMLElement {
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
    say(W.rowsSize, { n: rows, length: shown(rowLength) }),
    say(W.bandSize, { width: shown(bandWidth) }),
    say(W.apart, { width: shown(rowSpacing) }),
    say(W.passes, { n: passes, distance: shown(longer(rowLength, passes)) }),
  ];
  const across = say(W.across, { width: shown(longer(rowSpacing, drawn)) });
  const remark = drawn < rows ? say(W.firstShown, { n: drawn }) : undefined;
  return figure(frame, stripes, across, sizes, system, remark);
}

function blockDrawing({ length, width }: Block, swath: Length, system: UnitSystem): HTMLElement {
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
    say(W.blockSize, { length: shown(length), width: shown(width) }),
    say(W.passWidth, { n: along.passes, width: shown(swath) }),
    ...lastPass(along),
    say(W.passes, { n: along.passes, distance: shown(along.distance) }),
  ];
  const acrossText = say(W.across, { width: shown(whole ? width : longer(swath, drawn)) });
  const remark = whole ? undefined : say(W.firstShown, { n: drawn });
  return figure(frame, stripes, acrossText, sizes, system, remark);
}

function lastPass({ lastOverlap, pastEdge }: Passes): string[] {
  if (pastEdge.value > 0) return [say(W.pastEdge, { width: shown(pastEdge) })];
  return lastOverlap.value > 0 ? [say(W.overlap, { width: shown(lastOverlap) })] : [];
}

function longer({ value, unit }: Length, times: number): Length {
  return { value: value * times, unit };
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
  system: UnitSystem,
  remark: string | undefined,
): HTMLElement {
  const { width, height, cut } = frame;
  const left = (WIDTH - width) / 2;
  const label = `${say(W.drawn)}: ${sizes.join(", ")}.`;
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
      scaleBar(frame, system),
    ),
  );
  const caption = el(
    "figcaption",
    {},
    el("ul", {}, ...sizes.map((size) => el("li", {}, size))),
    ...[cut ? say(W.shortened) : undefined, remark].map((one) =>
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

function scaleBar({ perMeter, height }: Frame, system: UnitSystem): SVGElement {
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
