import { html, svg, type TemplateResult } from "lit-html";
import type { Plot } from "swath-to-spoon/plan";
import { type Passes, passesOver } from "swath-to-spoon/swath";
import {
  convert,
  formatQuantity,
  type Length,
  systemOf,
  type UnitSystem,
  valueIn,
} from "swath-to-spoon/units";
import type { Shown } from "./html.ts";
import type { JobPlan } from "./input.ts";
import { shown, times } from "./units.ts";
import { locale, say, W } from "./words.ts";

type Rows = Extract<Plot, { readonly kind: "row-bands" }> & {
  readonly rows: number;
  readonly rowLength: Length;
};

/** A stripe along the plot: where it starts across it, and its width, in meters. */
interface Stripe {
  readonly from: number;
  readonly width: number;
}

/** What is drawn of a plot. */
interface Drawn {
  readonly length: Length;
  /** Across what is drawn. */
  readonly across: Length;
  /** What is sprayed: a band of each row, or each pass. */
  readonly stripes: readonly Stripe[];
  readonly isBands: boolean;
  readonly passes: readonly Stripe[];
  /** The sizes in words. */
  readonly sizes: readonly string[];
  /** How many stripes are shown, where that isn't all. */
  readonly first?: number | undefined;
}

// The most room the plot takes, in the drawing's own units (pixels on a phone).
const ROOM = { width: 280, height: 420 };
const EDGE = { left: 14, top: 30, bottom: 42 };
const WIDTH = ROOM.width + 2 * EDGE.left;

// More stripes than this blur on a phone.
const MOST_STRIPES = 80;

/** Draws the plot to scale with its bands and passes. Nothing where only the area is known, or not how far apart the rows are. */
export function plotDrawing({ input }: JobPlan, system: UnitSystem): Shown {
  if (!("plot" in input && "calibration" in input)) return "";
  const plot = input.plot as Plot;
  const calibration = input.calibration as { swath?: Length; runs?: { swath: Length }[] };
  const width = calibration.swath ?? calibration.runs?.[0]?.swath;
  if (width === undefined) return "";
  const unit = system === "metric" ? "m" : "ft";
  /** A length in the units of the page, whatever it was typed in. */
  const home = (length: Length): Length =>
    (systemOf(length.unit) === "metric") === (system === "metric") ? length : convert(length, unit);
  const swath = home(width);
  if (plot.kind === "row-bands") {
    const { rows, rowLength, bandWidth, rowSpacing } = plot as Rows;
    if (rowSpacing === undefined) return "";
    const { rowsPerPass = 1 } = input.sprayer;
    const drawn = rowsDrawn(rows, home(rowLength), home(bandWidth), home(rowSpacing), swath, rowsPerPass);
    return figure(drawn, unit);
  }
  if (plot.kind !== "rectangle") return "";
  return figure(blockDrawn(home(plot.length), home(plot.width), swath), unit);
}

function rowsDrawn(
  rows: number,
  rowLength: Length,
  bandWidth: Length,
  rowSpacing: Length,
  swath: Length,
  rowsPerPass: number,
): Drawn {
  const drawn = Math.min(rows, MOST_STRIPES);
  const { along } = passesOver({ length: rowLength, width: bandWidth, swath });
  const [spacing, band] = [valueIn(rowSpacing, "m"), valueIn(bandWidth, "m")];
  const bands = range(drawn).map((row) => ({ from: (row + 0.5) * spacing - band / 2, width: band }));
  const width = band / along.passes;
  const passes = Math.ceil(rows / rowsPerPass) * along.passes;
  return {
    length: rowLength,
    across: times(rowSpacing, drawn),
    stripes: bands,
    isBands: true,
    passes: bands.flatMap(({ from }) => range(along.passes).map((i) => ({ from: from + i * width, width }))),
    sizes: [
      say(W.rowsSize, { n: rows, length: shown(rowLength) }),
      say(W.bandSize, { width: shown(bandWidth) }),
      say(W.apart, { width: shown(rowSpacing) }),
      say(W.passes, { n: passes, distance: shown(times(rowLength, passes)) }),
    ],
    first: drawn < rows ? drawn : undefined,
  };
}

function blockDrawn(length: Length, width: Length, swath: Length): Drawn {
  const { along } = passesOver({ length, width, swath });
  const drawn = Math.min(along.passes, MOST_STRIPES);
  const isWhole = drawn === along.passes;
  const across = isWhole ? width : times(swath, drawn);
  const [each, all] = [valueIn(swath, "m"), valueIn(across, "m")];
  // The last pass moves in to end at the plot's edge.
  const stripes = range(drawn).map((i) => ({
    from: Math.max(0, Math.min(i * each, all - each)),
    width: Math.min(each, all),
  }));
  return {
    length,
    across,
    stripes,
    isBands: false,
    passes: stripes,
    sizes: [
      say(W.blockSize, { length: shown(length), width: shown(width) }),
      say(W.passWidth, { n: along.passes, width: shown(swath) }),
      ...lastPass(along),
      say(W.passes, { n: along.passes, distance: shown(along.distance) }),
    ],
    first: isWhole ? undefined : drawn,
  };
}

function lastPass({ lastOverlap, pastEdge }: Passes): string[] {
  if (pastEdge.value > 0) return [say(W.pastEdge, { width: shown(pastEdge) })];
  return lastOverlap.value > 0 ? [say(W.overlap, { width: shown(lastOverlap) })] : [];
}

function range(n: number): number[] {
  return Array.from({ length: n }, (_, i) => i);
}

function figure(drawn: Drawn, unit: "m" | "ft"): TemplateResult {
  const { stripes, isBands, passes, sizes, first } = drawn;
  const [meters, length] = [valueIn(drawn.across, "m"), valueIn(drawn.length, "m")];
  // Widths and lengths have one scale. A long, narrow plot is shortened so its bands can still be seen.
  const shownLength = Math.min(length, 3 * meters);
  const scale = Math.min(ROOM.width / meters, ROOM.height / shownLength);
  const [width, height] = [meters * scale, Math.max(8, shownLength * scale)];
  const isCut = shownLength < length;
  const stripe = ({ from, width }: Stripe, i: number): TemplateResult<2> => svg`
    <rect class=${isBands ? "band" : `pass ${i % 2 === 0 ? "odd" : "even"}`} x=${from * scale} y="0"
      width=${width * scale} height=${height} />
    ${isBands ? svg`<path class="row" d="M${(from + width / 2) * scale} 0v${height}" />` : ""}`;
  const remarks = [...(isCut ? [say(W.shortened)] : []), ...(first ? [say(W.firstShown, { n: first })] : [])];
  return html`<h3>${say(W.drawn)}</h3>
    <figure>
      <svg viewBox="0 0 ${WIDTH} ${EDGE.top + height + EDGE.bottom}" class="plot" role="img"
        aria-label="${say(W.drawn)}: ${sizes.join(", ")}.">
        <g transform="translate(${(WIDTH - width) / 2} ${EDGE.top})">
          <rect class="ground" x="0" y="0" width=${width} height=${height} />
          ${stripes.map(stripe)}
          ${passes.map((pass, i) => arrow((pass.from + pass.width / 2) * scale, height, i, pass.width * scale))}
          ${isCut ? cutMark(width, height / 2) : ""}
          <text x="0" y="-10">${say(W.across, { width: shown(drawn.across) })}</text>
          ${scaleBar(scale, height + 14, unit)}
        </g>
      </svg>
      <figcaption>
        <ul>${sizes.map((size) => html`<li>${size}</li>`)}</ul>
        ${remarks.map((remark) => html`<p class="hint">${remark}</p>`)}
      </figcaption>
    </figure>`;
}

// The direction of a pass: up and back in turn. It is drawn below the zigzag in the middle.
function arrow(x: number, height: number, pass: number, width: number): TemplateResult<2> {
  const middle = height * 0.75;
  const half = Math.min(18, height * 0.2);
  const head = Math.max(1.5, Math.min(5, width / 2));
  const up = pass % 2 === 0 ? 1 : -1;
  const [end, back] = [middle - up * half, middle - up * (half - 2 * head)];
  return svg`<g class="way">
    <line x1=${x} x2=${x} y1=${middle + up * half} y2=${back} />
    <path d="M${x} ${end}L${x - head} ${back}H${x + head}Z" />
  </g>`;
}

function cutMark(width: number, y: number): TemplateResult<2> {
  const teeth = Math.max(2, Math.round(width / 12));
  const points = range(teeth + 1).map((i) => [(i * width) / teeth, y + (i % 2 === 0 ? -4 : 4)] as const);
  const there = points.map(([x, at]) => `${x} ${at}`).join("L");
  const back = points.map(([x, at]) => `${x} ${at + 8}`).reverse();
  return svg`<path class="cut" d="M${there}L${back.join("L")}Z" />`;
}

function scaleBar(perMeter: number, y: number, unit: "m" | "ft"): TemplateResult<2> {
  const perUnit = perMeter * valueIn({ value: 1, unit }, "m");
  const units = niceNumber(70 / perUnit);
  const length = units * perUnit;
  return svg`<g class="scale">
    <path d="M0 ${y - 4}v8M0 ${y}h${length}M${length} ${y - 4}v8" />
    <text x="0" y=${y + 20}>${formatQuantity({ value: units, unit }, { locale })}</text>
  </g>`;
}

/** The largest of 1, 2, 5, 10, 20, 50 … up to a limit. */
function niceNumber(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2].find((step) => step * power <= most) ?? 1) * power;
}
