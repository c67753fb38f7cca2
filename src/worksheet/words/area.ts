import type { LineTable } from "./line-table.js";

/** The lines that the area module works out: each one's id, and the symbols of its terms. */
export interface AreaLines {
  "area.rectangle": "length" | "width";
  "area.triangle": "base" | "height";
  "area.triangle.sides": "a" | "b" | "c";
  "area.trapezoid": "base" | "top" | "height";
  "area.circle": "diameter";
  "area.ellipse": "length" | "width";
  "area.ring": "outerDiameter" | "innerDiameter";
  "area.sector": "angleDegrees" | "radius";
  "area.composite": "x" | "y";
  "area.boundary": "x" | "y";
  "area.offsets": "spacing" | "x";
  "area.unequalOffsets": "a" | "x";
  "area.treatPart": "ground" | "fraction";
  "area.treatedFraction": "treated" | "ground";
  "area.rowBands.ground": "rows" | "rowLength" | "x" | "rowSpacing";
  "area.rowBands.fraction": "bandWidth" | "rowSpacing";
  "area.rowBands.treated": "rows" | "rowLength" | "x" | "bandWidth";
  "area.beds.ground": "beds" | "bedLength" | "x" | "bedSpacing";
  "area.beds.fraction": "bedWidth" | "bedSpacing";
  "area.beds.treated": "beds" | "bedLength" | "x" | "bedWidth";
  "area.treeRows.ground": "rows" | "rowLength" | "x" | "rowSpacing";
  "area.treeRows.fraction": "stripWidth" | "sides" | "rowSpacing";
  "area.treeRows.treated": "rows" | "rowLength" | "x" | "stripWidth" | "sides";
  "area.spots": "n" | "d" | "x" | "a" | "b";
  "area.rowLength": "ground" | "rowSpacing";
  "area.plantedGround": "plants" | "rowSpacing" | "plantSpacing";
  "area.plantCount": "ground" | "rowSpacing" | "plantSpacing";
  "area.cropRate": "treatedRate" | "bandWidth" | "rowSpacing";
  "area.treatedRate": "cropRate" | "bandWidth" | "rowSpacing";
}

const GROUND = "ground area";
const TREATED = "treated area";
const ROW_SPACING = "row spacing";

const rows = { rows: "number of rows", rowLength: "row length", x: "length of row {n}" };
const beds = { beds: "number of beds", bedLength: "bed length", x: "length of bed {n}" };
const PART = "treated part of the ground";
const strips = { stripWidth: "strip width on one side", sides: "sides treated of each row" };

/** The wording of every line that the area module works out. */
export const AREA_WORDS: LineTable<AreaLines> = /* @__PURE__ */ (() => ({
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
  "area.composite": { found: GROUND, terms: { x: "shape {n}", y: "shape {n} cut out" } },
  "area.boundary": {
    found: GROUND,
    terms: { x: "corner {n} across", y: "corner {n} ahead" },
  },
  "area.offsets": {
    found: GROUND,
    terms: { spacing: "distance between stations", x: "offset at station {n}" },
  },
  "area.unequalOffsets": {
    found: GROUND,
    terms: { a: "station {n} along the base line", x: "offset at station {n}" },
  },
  "area.treatPart": { found: TREATED, terms: { ground: GROUND, fraction: PART } },
  "area.treatedFraction": {
    found: PART,
    terms: { treated: TREATED, ground: GROUND },
  },
  "area.rowBands.ground": { found: GROUND, terms: { ...rows, rowSpacing: ROW_SPACING } },
  "area.rowBands.fraction": { found: PART, terms: { bandWidth: "band width", rowSpacing: ROW_SPACING } },
  "area.rowBands.treated": { found: TREATED, terms: { ...rows, bandWidth: "band width" } },
  "area.beds.ground": { found: GROUND, terms: { ...beds, bedSpacing: "bed spacing" } },
  "area.beds.fraction": { found: PART, terms: { bedWidth: "bed width", bedSpacing: "bed spacing" } },
  "area.beds.treated": { found: TREATED, terms: { ...beds, bedWidth: "bed width" } },
  "area.treeRows.ground": { found: GROUND, terms: { ...rows, rowSpacing: ROW_SPACING } },
  "area.treeRows.fraction": { found: PART, terms: { ...strips, rowSpacing: ROW_SPACING } },
  "area.treeRows.treated": { found: TREATED, terms: { ...rows, ...strips } },
  "area.spots": {
    found: TREATED,
    terms: {
      n: "spots of size {n}",
      d: "diameter of size {n}",
      x: "area of one spot of size {n}",
      a: "length of size {n}",
      b: "width of size {n}",
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
  "area.plantedGround": {
    found: GROUND,
    terms: { plants: "number of plants", rowSpacing: ROW_SPACING, plantSpacing: "plant spacing in the row" },
  },
  "area.cropRate": {
    found: "rate per ground area",
    terms: { treatedRate: "rate per treated area", bandWidth: "band width", rowSpacing: ROW_SPACING },
  },
  "area.treatedRate": {
    found: "rate per treated area",
    terms: { cropRate: "rate per ground area", bandWidth: "band width", rowSpacing: ROW_SPACING },
  },
}))();
