import type { LineTable } from "./line-table.js";

/** The lines that the output-rate module works out: each one's id, and the symbols of its terms. */
export interface OutputRateLines {
  "output-rate.strip": "used" | "swath" | "distance";
  "output-rate.strip-runs": "x" | "n";
  "output-rate.strip-runs-spread": "x" | "mean" | "n";
  "output-rate.strip-runs-cv": "spread" | "mean";
  "output-rate.catch-total": "x";
  "output-rate.catch": "total" | "time" | "rows" | "width" | "speed" | "travelTime" | "travelled";
  "output-rate.speed": "distance" | "time";
  "output-rate.time-for": "distance" | "speed";
  "output-rate.average-speed-distance": "x";
  "output-rate.average-speed-time": "x";
  "output-rate.flow": "caught" | "time";
  "output-rate.average-flow-caught": "x";
  "output-rate.average-flow-time": "x";
  "output-rate.plant-volume": "flow" | "time" | "caught" | "catchTime";
  "output-rate.plant-time": "volume" | "flow" | "caught" | "catchTime";
  "output-rate.spray-time": "volume" | "flow" | "caught" | "catchTime";
  "output-rate.cover-time": "area" | "width" | "speed" | "travelTime" | "travelled" | "efficiency";
  "output-rate.rate-at-speed": "rate" | "speed" | "newSpeed";
  "output-rate.direct-strip-area": "caught" | "rate";
  "output-rate.direct-strip": "area" | "width";
  "output-rate.direct-strip-rate": "caught" | "reading";
  "output-rate.tree-row-length": "used" | "sides" | "rowLength";
  "output-rate.tree-row-plant": "used" | "sides" | "rowLength" | "plantSpacing";
  "output-rate.tree-row": "used" | "sides" | "rowLength" | "rowSpacing";
  "output-rate.tree-row-volume": "height" | "width" | "rowSpacing";
  "output-rate.dilute-rate": "canopy" | "spray";
  "output-rate.per-plant": "rate" | "rowSpacing" | "plantSpacing" | "ground" | "plants";
  "output-rate.hand-area": "used" | "area" | "rowLength" | "plants" | "plantSpacing" | "rowSpacing";
  "output-rate.hand-length": "used" | "rowLength" | "plants" | "plantSpacing";
  "output-rate.hand-plant": "used" | "plants" | "rowLength" | "plantSpacing";
  "output-rate.solve-rate": "flow" | "speed" | "width";
  "output-rate.solve-flow": "rate" | "speed" | "width";
  "output-rate.solve-speed": "flow" | "rate" | "width";
  "output-rate.solve-width": "flow" | "rate" | "speed";
  "output-rate.output-at-pressure": "output" | "newPressure" | "pressure";
  "output-rate.pressure-for-output": "pressure" | "newOutput" | "output";
  "output-rate.density-factor": "density" | "waterDensity";
  "output-rate.water-for-solution": "solution" | "factor";
  "output-rate.solution-for-water": "water" | "factor";
  "output-rate.nozzle-flow": "caught" | "time";
  "output-rate.nozzle-mean": "x" | "n";
  "output-rate.nozzle-deviation": "flow" | "reference";
  "output-rate.nozzle-spread": "x" | "mean" | "n";
  "output-rate.nozzle-cv": "spread" | "mean";
  "output-rate.target-check": "rate" | "target";
  "output-rate.spreader-strip": "used" | "swath" | "distance";
  "output-rate.spreader-area": "used" | "area";
  "output-rate.spreader-row": "used" | "rowLength";
  "output-rate.spreader-pass": "target" | "directions";
  "output-rate.spreader-catch-strip": "target" | "swath" | "distance" | "directions";
  "output-rate.spreader-catch-area": "target" | "area" | "directions";
  "output-rate.spreader-catch-row": "target" | "rowLength" | "directions";
  "output-rate.resolution": "resolution";
  "output-rate.uncertainty-used": "w" | "u" | "x";
  "output-rate.uncertainty-swath": "w" | "u" | "x";
  "output-rate.uncertainty-distance": "w" | "u" | "x";
  "output-rate.uncertainty-caught": "w" | "u" | "x";
  "output-rate.uncertainty-catches": "w" | "u" | "x";
  "output-rate.uncertainty-time": "w" | "u" | "x";
  "output-rate.uncertainty-speed": "w" | "u" | "x";
  "output-rate.uncertainty-width": "w" | "u" | "x";
  "output-rate.uncertainty-area": "w" | "u" | "x";
  "output-rate.uncertainty-rowLength": "w" | "u" | "x";
  "output-rate.uncertainty-rowSpacing": "w" | "u" | "x";
  "output-rate.uncertainty-plantSpacing": "w" | "u" | "x";
  "output-rate.uncertainty-flow": "w" | "u" | "x";
  "output-rate.uncertainty-rate": "w" | "u" | "x";
  "output-rate.uncertainty-scatter": "spread" | "mean" | "n";
  "output-rate.uncertainty-relative": "p";
  "output-rate.uncertainty": "rate" | "relative";
  "output-rate.changed-nozzleSpacing": "before" | "now";
  "output-rate.changed-pressure": "before" | "now";
  "output-rate.changed-speed": "before" | "now";
  "output-rate.changed-density": "before" | "now";
  "output-rate.changed": "rate" | "x";
}

const USED = "amount used";
const SWATH = "width of the pass";
const DISTANCE = "distance traveled";
const TOTAL_CATCH = "total catch";
const WIDTH = "treated width";
const SPEED = "speed";
const ROW_LENGTH = "row length";
const ROW_SPACING = "row spacing";
const PLANT_SPACING = "plant spacing";
const DENSITY_FACTOR = "density factor";
const NOZZLE_FLOW = "nozzle flow";
const PER_AREA = "rate per area";
const SPREAD = "amount spread";
const TARGET = "target rate";
const DIRECTIONS = "number of directions";
const TO_CATCH = "amount to catch";
const COMBINED = "combined standard uncertainty, as a fraction of the rate";

interface Words<T extends string> {
  readonly found: string;
  readonly terms: Readonly<Record<T, string>>;
}
const words = <T extends string>(found: string, terms: Readonly<Record<T, string>>): Words<T> => ({
  found,
  terms,
});

const row = { used: USED, sides: "sides sprayed", rowLength: ROW_LENGTH };
const catches = {
  total: TOTAL_CATCH,
  time: "catch time",
  rows: "number of nozzles or rows",
  width: "width per nozzle or row",
};
const flow = { flow: "flow", caught: "amount caught", catchTime: "catch time" };
const deviations = (what: string): Record<"x" | "mean" | "n", string> => ({
  x: what,
  mean: "mean",
  n: "how many",
});
const part = (what: string): Words<"w" | "u" | "x"> =>
  words(`uncertainty from the ${what}, as a fraction of the rate`, {
    w: "effect of reading {n} on the rate",
    u: `standard uncertainty of the ${what}, reading {n}`,
    x: `${what}, reading {n}`,
  });
const changed = (what: string): Words<"before" | "now"> =>
  words(`rate factor for the ${what}`, {
    before: `${what} at the calibration`,
    now: `${what} now`,
  });

/** The wording of every line that the output-rate module works out. */
export const OUTPUT_RATE_WORDS: LineTable<OutputRateLines> = /* @__PURE__ */ (() => ({
  "output-rate.strip": words("output rate on the test strip", {
    used: USED,
    swath: SWATH,
    distance: DISTANCE,
  }),
  "output-rate.strip-runs": words("mean rate of the runs", { x: "rate of run {n}", n: "number of runs" }),
  "output-rate.strip-runs-spread": words("standard deviation of the runs", deviations("rate of run {n}")),
  "output-rate.strip-runs-cv": words("coefficient of variation of the runs", {
    spread: "standard deviation of the runs",
    mean: "mean rate of the runs",
  }),
  "output-rate.catch-total": words(TOTAL_CATCH, { x: "catch of nozzle {n}" }),
  "output-rate.catch": words("output rate from the catch", {
    ...catches,
    speed: SPEED,
    travelTime: "travel time",
    travelled: "staked distance",
  }),
  "output-rate.speed": words(SPEED, { distance: "distance", time: "time" }),
  "output-rate.time-for": words("time for the distance", { distance: "distance", speed: SPEED }),
  "output-rate.average-speed-distance": words("total distance of the passes", { x: "distance of pass {n}" }),
  "output-rate.average-speed-time": words("total time of the passes", { x: "time of pass {n}" }),
  "output-rate.flow": words("flow", { caught: "amount caught", time: "catch time" }),
  "output-rate.average-flow-caught": words(TOTAL_CATCH, { x: "catch {n}" }),
  "output-rate.average-flow-time": words("total time of the catches", { x: "time of catch {n}" }),
  "output-rate.plant-volume": words("volume per plant", { ...flow, time: "time on each plant" }),
  "output-rate.plant-time": words("time on each plant", { ...flow, volume: "volume per plant" }),
  "output-rate.spray-time": words("spraying time", { ...flow, volume: "volume to spray" }),
  "output-rate.cover-time": words("time for the plot", {
    area: "treated area",
    width: SWATH,
    speed: SPEED,
    travelTime: "travel time",
    travelled: "staked distance",
    efficiency: "time spent spraying, %",
  }),
  "output-rate.rate-at-speed": words("rate at the new speed", {
    rate: "rate at the old speed",
    speed: "old speed",
    newSpeed: "new speed",
  }),
  "output-rate.direct-strip-area": words("area where one unit caught means one unit of rate", {
    caught: "one unit caught",
    rate: "one unit of rate",
  }),
  "output-rate.direct-strip": words("distance over which the catch reads as the rate", {
    area: "area where one unit caught means one unit of rate",
    width: WIDTH,
  }),
  "output-rate.direct-strip-rate": words("output rate read from the catch", {
    caught: "catch in the time for the strip",
    reading: "rate per unit caught",
  }),
  "output-rate.tree-row-length": words("volume per row length", row),
  "output-rate.tree-row-plant": words("volume per plant", { ...row, plantSpacing: PLANT_SPACING }),
  "output-rate.tree-row": words(PER_AREA, { ...row, rowSpacing: ROW_SPACING }),
  "output-rate.tree-row-volume": words("tree-row volume", {
    height: "canopy height",
    width: "canopy width",
    rowSpacing: ROW_SPACING,
  }),
  "output-rate.dilute-rate": words("dilute rate", {
    canopy: "tree-row volume",
    spray: "spray per volume of canopy",
  }),
  "output-rate.per-plant": words("amount per plant", {
    rate: PER_AREA,
    rowSpacing: ROW_SPACING,
    plantSpacing: PLANT_SPACING,
    ground: "ground area",
    plants: "number of plants",
  }),
  "output-rate.hand-area": words(PER_AREA, {
    used: USED,
    area: "treated area",
    rowLength: ROW_LENGTH,
    plants: "number of plants",
    plantSpacing: PLANT_SPACING,
    rowSpacing: ROW_SPACING,
  }),
  "output-rate.hand-length": words("volume per row length", {
    used: USED,
    rowLength: ROW_LENGTH,
    plants: "number of plants",
    plantSpacing: PLANT_SPACING,
  }),
  "output-rate.hand-plant": words("volume per plant", {
    used: USED,
    plants: "number of plants",
    rowLength: ROW_LENGTH,
    plantSpacing: PLANT_SPACING,
  }),
  "output-rate.solve-rate": words("rate", { flow: "flow", speed: SPEED, width: WIDTH }),
  "output-rate.solve-flow": words("flow", { rate: "rate", speed: SPEED, width: WIDTH }),
  "output-rate.solve-speed": words(SPEED, { flow: "flow", rate: "rate", width: WIDTH }),
  "output-rate.solve-width": words(WIDTH, { flow: "flow", rate: "rate", speed: SPEED }),
  "output-rate.output-at-pressure": words("output at the new pressure", {
    output: "output at the old pressure",
    newPressure: "new pressure",
    pressure: "old pressure",
  }),
  "output-rate.pressure-for-output": words("pressure for the new output", {
    pressure: "pressure now",
    newOutput: "new output",
    output: "output now",
  }),
  "output-rate.density-factor": words(DENSITY_FACTOR, {
    density: "density of the liquid",
    waterDensity: "density of water",
  }),
  "output-rate.water-for-solution": words("output with water", {
    solution: "output of the solution",
    factor: DENSITY_FACTOR,
  }),
  "output-rate.solution-for-water": words("output of the solution", {
    water: "output of water",
    factor: DENSITY_FACTOR,
  }),
  "output-rate.nozzle-flow": words(NOZZLE_FLOW, { caught: "amount caught", time: "catch time" }),
  "output-rate.nozzle-mean": words("mean nozzle flow", {
    x: "flow of nozzle {n}",
    n: "number of nozzles",
  }),
  "output-rate.nozzle-deviation": words("deviation of the nozzle", {
    flow: NOZZLE_FLOW,
    reference: "flow it is compared with",
  }),
  "output-rate.nozzle-spread": words("standard deviation of the nozzles", deviations("flow of nozzle {n}")),
  "output-rate.nozzle-cv": words("coefficient of variation of the boom", {
    spread: "standard deviation of the nozzles",
    mean: "mean nozzle flow",
  }),
  "output-rate.target-check": words("deviation from the target rate", {
    rate: "measured rate",
    target: TARGET,
  }),
  "output-rate.spreader-strip": words("rate of the spreader", {
    used: SPREAD,
    swath: SWATH,
    distance: DISTANCE,
  }),
  "output-rate.spreader-area": words("rate of the spreader", { used: SPREAD, area: "area of the test" }),
  "output-rate.spreader-row": words("rate of the spreader along the row", {
    used: SPREAD,
    rowLength: ROW_LENGTH,
  }),
  "output-rate.spreader-pass": words("target rate for one direction", {
    target: TARGET,
    directions: DIRECTIONS,
  }),
  "output-rate.spreader-catch-strip": words(TO_CATCH, {
    target: TARGET,
    swath: SWATH,
    distance: DISTANCE,
    directions: DIRECTIONS,
  }),
  "output-rate.spreader-catch-area": words(TO_CATCH, {
    target: TARGET,
    area: "area of the test",
    directions: DIRECTIONS,
  }),
  "output-rate.spreader-catch-row": words(TO_CATCH, {
    target: TARGET,
    rowLength: ROW_LENGTH,
    directions: DIRECTIONS,
  }),
  "output-rate.resolution": words("standard uncertainty of a reading", {
    resolution: "smallest step that can be read",
  }),
  "output-rate.uncertainty-used": part(USED),
  "output-rate.uncertainty-swath": part(SWATH),
  "output-rate.uncertainty-distance": part("distance"),
  "output-rate.uncertainty-caught": part("amount caught"),
  "output-rate.uncertainty-catches": part("catch of one nozzle"),
  "output-rate.uncertainty-time": part("time"),
  "output-rate.uncertainty-speed": part(SPEED),
  "output-rate.uncertainty-width": part(WIDTH),
  "output-rate.uncertainty-area": part("treated area"),
  "output-rate.uncertainty-rowLength": part(ROW_LENGTH),
  "output-rate.uncertainty-rowSpacing": part(ROW_SPACING),
  "output-rate.uncertainty-plantSpacing": part(PLANT_SPACING),
  "output-rate.uncertainty-flow": part("flow"),
  "output-rate.uncertainty-rate": part("known rate"),
  "output-rate.uncertainty-scatter": words(
    "uncertainty from the scatter of the runs, as a fraction of the rate",
    {
      spread: "standard deviation of the runs",
      mean: "mean rate of the runs",
      n: "number of runs",
    },
  ),
  "output-rate.uncertainty-relative": words(COMBINED, {
    p: "uncertainty from source {n}",
  }),
  "output-rate.uncertainty": words("combined standard uncertainty of the rate", {
    rate: "rate",
    relative: COMBINED,
  }),
  "output-rate.changed-nozzleSpacing": changed("nozzle spacing"),
  "output-rate.changed-pressure": changed("pressure"),
  "output-rate.changed-speed": changed(SPEED),
  "output-rate.changed-density": changed("density of the liquid"),
  "output-rate.changed": words("expected rate", { rate: "measured rate", x: "factor {n}" }),
}))();
