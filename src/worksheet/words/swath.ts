import type { LineTable } from "./line-table.js";

/** The lines that the swath module works out: each one's id, and the symbols of its terms. */
export interface SwathLines {
  "swath.boom": "nozzles" | "nozzleSpacing";
  "swath.bands.ground": "bands" | "rowSpacing";
  "swath.bands.treated": "bands" | "bandWidth";
  "swath.perNozzle": "width" | "nozzles";
  "swath.treeRow": "rowSpacing" | "sides";
  "swath.effective": "width" | "overlap";
  "swath.passes.count": "side" | "swath" | "overlap";
  "swath.passes.lastOverlap": "side" | "swath" | "overlap" | "passes";
  "swath.passes.pastEdge": "side" | "swath";
  "swath.passes.distance": "passes" | "run";
  "swath.passes.time": "distance" | "speed";
  "swath.boomHeight": "nozzleSpacing" | "overlap" | "angleDegrees";
  "swath.fanWidth": "height" | "angleDegrees";
  "swath.overlap": "fanWidth" | "nozzleSpacing";
  "swath.gap": "fanWidth" | "nozzleSpacing";
  "swath.uniformity.mean": "w" | "x";
  "swath.uniformity.cv": "w" | "x" | "mean";
}

const SIDE = "side of the plot across the passes";
const SWATH = "width of one pass";

/** The wording of every line that the swath module works out. */
export const SWATH_WORDS: LineTable<SwathLines> = {
  "swath.boom": {
    found: "treated width of the boom",
    terms: { nozzles: "number of nozzles", nozzleSpacing: "nozzle spacing" },
  },
  "swath.bands.ground": {
    found: "ground width of one pass",
    terms: { bands: "bands in one pass", rowSpacing: "row spacing" },
  },
  "swath.bands.treated": {
    found: "treated width of all bands",
    terms: { bands: "bands in one pass", bandWidth: "band width" },
  },
  "swath.perNozzle": {
    found: "width that one nozzle covers",
    terms: { width: "width that the nozzles share", nozzles: "number of nozzles" },
  },
  "swath.treeRow": {
    found: "ground width of one pass",
    terms: { rowSpacing: "row spacing", sides: "open sides of the sprayer" },
  },
  "swath.effective": {
    found: "effective width of one pass",
    terms: { width: "measured width of one pass", overlap: "overlap" },
  },
  "swath.passes.count": {
    found: "number of passes",
    terms: { side: SIDE, swath: SWATH, overlap: "planned overlap" },
  },
  "swath.passes.lastOverlap": {
    found: "overlap of the last pass",
    terms: { side: SIDE, swath: SWATH, overlap: "planned overlap", passes: "number of passes" },
  },
  "swath.passes.pastEdge": { found: "width past the edge of the plot", terms: { side: SIDE, swath: SWATH } },
  "swath.passes.distance": {
    found: "distance covered while spraying",
    terms: { passes: "number of passes", run: "length of one pass" },
  },
  "swath.passes.time": {
    found: "time spent spraying",
    terms: { distance: "distance covered while spraying", speed: "speed" },
  },
  "swath.boomHeight": {
    found: "height of the boom above the target",
    terms: {
      nozzleSpacing: "nozzle spacing",
      overlap: "overlap as a fraction of the nozzle spacing",
      angleDegrees: "fan angle, degrees",
    },
  },
  "swath.fanWidth": {
    found: "width of one fan at the target",
    terms: { height: "height of the boom above the target", angleDegrees: "fan angle, degrees" },
  },
  "swath.overlap": {
    found: "overlap as a fraction of the nozzle spacing",
    terms: { fanWidth: "width of one fan", nozzleSpacing: "nozzle spacing" },
  },
  "swath.gap": {
    found: "unsprayed strip between two fans",
    terms: { fanWidth: "width of one fan", nozzleSpacing: "nozzle spacing" },
  },
  "swath.uniformity.mean": {
    found: "mean spray on the ground",
    terms: { w: "width of strip {n} in catch spacings", x: "spray on strip {n}" },
  },
  "swath.uniformity.cv": {
    found: "coefficient of variation",
    terms: {
      w: "width of strip {n} in catch spacings",
      x: "spray on strip {n}",
      mean: "mean spray on the ground",
    },
  },
};
