import { inUnit } from "../../units/convert.js";
import type { Length } from "../../units/types.js";
import type { DrawingPoint } from "../../worksheet/render/sheets.js";
import type { Rows } from "./rows.js";
import type { Drawing } from "./topic.js";

// How far the middle of a label stands off what it measures, as a part of the larger side: a label at the side is longer than high.
const OFF = { across: 0.32, down: 0.22 };

function shape(
  width: Length,
  height: Length,
  corners: (width: number, height: number) => readonly DrawingPoint[],
): Drawing {
  const [wide, high] = [width.value, inUnit(height, width.unit)];
  const larger = Math.max(wide, high);
  return {
    width: wide,
    height: high,
    areas: [{ of: "ground", corners: corners(wide, high) }],
    labels: [
      { at: { x: wide / 2, y: high + OFF.down * larger }, length: width },
      { at: { x: -OFF.across * larger, y: high / 2 }, length: height },
    ],
  };
}

const rectangle = (left: number, top: number, wide: number, high: number): readonly DrawingPoint[] => [
  { x: left, y: top },
  { x: left + wide, y: top },
  { x: left + wide, y: top + high },
  { x: left, y: top + high },
];

/** A plot with four right angles, or a strip. */
export function drawnRectangle(length: Length, width: Length): Drawing {
  return shape(length, width, (wide, high) => rectangle(0, 0, wide, high));
}

/** A triangle on its base. Where its tip stands over the base is not given: two fifths from the left. */
export function drawnTriangle(base: Length, height: Length): Drawing {
  return shape(base, height, (wide, high) => [
    { x: 0, y: high },
    { x: wide, y: high },
    { x: 0.4 * wide, y: 0 },
  ]);
}

/** A trapezoid on its base, with its top over the middle. */
export function drawnTrapezoid(base: Length, top: Length, height: Length): Drawing {
  const drawn = shape(base, height, (wide, high) => {
    const above = inUnit(top, base.unit);
    const left = (wide - above) / 2;
    return [
      { x: 0, y: high },
      { x: wide, y: high },
      { x: left + above, y: 0 },
      { x: left, y: 0 },
    ];
  });
  const off = OFF.down * Math.max(drawn.width, drawn.height);
  return { ...drawn, labels: [...drawn.labels, { at: { x: drawn.width / 2, y: -off }, length: top }] };
}

// More rows than this are lines too close to see one by one.
const MOST_ROWS = 60;

/** Bands along rows, on their ground; nothing where there are too many rows to see. */
export function drawnRows({ rows, rowLength, bandWidth, rowSpacing }: Rows): Drawing | undefined {
  if (rows > MOST_ROWS) return undefined;
  const { unit } = rowLength;
  const [spacing, band] = [inUnit(rowSpacing, unit), inUnit(bandWidth, unit)];
  const ground = drawnRectangle(rowLength, { value: rows * spacing, unit });
  const bands = Array.from({ length: rows }, (_, i) => ({
    of: "treated" as const,
    corners: rectangle(0, (i + 0.5) * spacing - band / 2, ground.width, band),
  }));
  return { ...ground, areas: [...ground.areas, ...bands], labels: ground.labels.slice(0, 1) };
}
