import type { LineWords } from "./types.js";

const GROUND = "ground area";
const TREATED = "treated area";
const ROW_SPACING = "row spacing";

// A symbol with a number behind it (x1, x2 …) is named by the symbol alone.
function lanes(
  id: string,
  count: readonly [string, string],
  length: readonly [string, string],
  width: readonly [string, string],
  spacing: readonly [string, string],
  sides: Readonly<Record<string, string>> = {},
): Record<string, LineWords> {
  const lengths = Object.fromEntries([count, length, ["x", length[1]]]);
  const widths = { ...Object.fromEntries([width]), ...sides };
  return {
    [`${id}.ground`]: { found: GROUND, terms: { ...lengths, ...Object.fromEntries([spacing]) } },
    [`${id}.fraction`]: {
      found: "treated part of the ground",
      terms: { ...widths, ...Object.fromEntries([spacing]) },
    },
    [`${id}.treated`]: { found: TREATED, terms: { ...lengths, ...widths } },
  };
}

/** The wording of every line that the area module works out. */
export const AREA_WORDS: Record<string, LineWords> = {
  "area.rectangle": { found: GROUND, terms: { length: "length", width: "width" } },
  "area.triangle": { found: GROUND, terms: { base: "base", height: "height on the base" } },
  "area.triangle.sides": {
    found: GROUND,
    terms: { a: "longest side", b: "middle side", c: "shortest side" },
  },
  "area.trapezoid": {
    found: GROUND,
    terms: { base: "one parallel side", top: "other parallel side", height: "distance between the two" },
  },
  "area.circle": { found: GROUND, terms: { diameter: "diameter" } },
  "area.ellipse": { found: GROUND, terms: { length: "whole length", width: "width in the middle" } },
  "area.ring": {
    found: GROUND,
    terms: { outerDiameter: "outer diameter", innerDiameter: "inner diameter" },
  },
  "area.sector": { found: GROUND, terms: { angleDegrees: "angle in degrees", radius: "radius" } },
  "area.composite": { found: GROUND, terms: { x: "shape added", y: "shape taken out" } },
  "area.boundary": {
    found: GROUND,
    terms: { x: "distance to the right of the corner", y: "distance ahead of the corner" },
  },
  "area.offsets": {
    found: GROUND,
    terms: { spacing: "distance between stations", x: "offset at the station" },
  },
  "area.unequalOffsets": {
    found: GROUND,
    terms: { a: "distance along the base line", x: "offset at the station" },
  },
  "area.treatPart": { found: TREATED, terms: { ground: GROUND, fraction: "treated part of the ground" } },
  "area.treatedFraction": {
    found: "treated part of the ground",
    terms: { treated: TREATED, ground: GROUND },
  },
  ...lanes(
    "area.rowBands",
    ["rows", "number of rows"],
    ["rowLength", "row length"],
    ["bandWidth", "band width"],
    ["rowSpacing", ROW_SPACING],
  ),
  ...lanes(
    "area.beds",
    ["beds", "number of beds"],
    ["bedLength", "bed length"],
    ["bedWidth", "bed width"],
    ["bedSpacing", "bed spacing"],
  ),
  ...lanes(
    "area.treeRows",
    ["rows", "number of rows"],
    ["rowLength", "row length"],
    ["stripWidth", "strip width on one side"],
    ["rowSpacing", ROW_SPACING],
    { sides: "sides treated of each row" },
  ),
  "area.spots": {
    found: TREATED,
    terms: {
      n: "number of spots of one size",
      d: "diameter of a spot",
      x: "area of a spot",
      a: "length of a spot",
      b: "width of a spot",
    },
  },
  "area.rowLength": {
    found: "length of all rows",
    terms: { ground: GROUND, rowSpacing: ROW_SPACING },
  },
  "area.plantCount": {
    found: "number of plants",
    terms: { ground: GROUND, rowSpacing: ROW_SPACING, plantSpacing: "plant spacing in the row" },
  },
  "area.cropRate": {
    found: "rate per area of ground",
    terms: { treatedRate: "rate per treated area", bandWidth: "band width", rowSpacing: ROW_SPACING },
  },
  "area.treatedRate": {
    found: "rate per treated area",
    terms: { cropRate: "rate per area of ground", bandWidth: "band width", rowSpacing: ROW_SPACING },
  },
};
