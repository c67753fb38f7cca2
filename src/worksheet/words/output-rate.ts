import type { LineWords } from "./types.js";

const USED = "amount used";
const SWATH = "width of the pass";
const DISTANCE = "distance travelled";
const WIDTH = "width that the nozzles treat";
const SPEED = "speed";
const ROW_LENGTH = "length of row";
const ROW_SPACING = "distance from row to row";
const PLANT_SPACING = "distance from plant to plant";
const DENSITY_FACTOR = "density factor";
const NOZZLE_FLOW = "flow of a nozzle";
const PER_AREA = "rate per area";

const words = (found: string, terms: Readonly<Record<string, string>>): LineWords => ({ found, terms });

const row = { used: USED, sides: "sides sprayed", rowLength: ROW_LENGTH };
const catches = {
  total: "caught under all nozzles",
  time: "time of the catch",
  rows: "rows or nozzle spacings",
  width: WIDTH,
};
const deviations = (what: string): Record<string, string> => ({ x: what, mean: "mean", n: "how many" });
const part = (what: string): LineWords =>
  words(`what the ${what} adds to the uncertainty, as a part of the rate`, {
    w: "weight in the rate",
    u: `standard uncertainty of the ${what}`,
    x: what,
  });
const changed = (what: string): LineWords =>
  words(`what the rate is multiplied by for the ${what}`, {
    before: `${what} at the calibration`,
    now: `${what} now`,
  });

/** The wording of every line that the output-rate module works out. */
export const OUTPUT_RATE_WORDS: Record<string, LineWords> = {
  "output-rate.strip": words("rate over the test strip", { used: USED, swath: SWATH, distance: DISTANCE }),
  "output-rate.strip-runs": words("mean rate of the runs", { x: "rate of run", n: "number of runs" }),
  "output-rate.strip-runs-spread": words("standard deviation of the runs", deviations("rate of run")),
  "output-rate.strip-runs-cv": words("coefficient of variation of the runs", {
    spread: "standard deviation of the runs",
    mean: "mean rate of the runs",
  }),
  "output-rate.catch-total": words("caught under all nozzles", { x: "caught under nozzle" }),
  "output-rate.catch": words("rate from the catch", {
    ...catches,
    speed: SPEED,
    travelTime: "time for the staked distance",
    travelled: "staked distance",
  }),
  "output-rate.speed": words(SPEED, { distance: "distance", time: "time" }),
  "output-rate.time-for": words("time for the distance", { distance: "distance", speed: SPEED }),
  "output-rate.average-speed-distance": words("distance of all passes", { x: "distance of pass" }),
  "output-rate.average-speed-time": words("time of all passes", { x: "time of pass" }),
  "output-rate.rate-at-speed": words("rate at the new speed", {
    rate: "rate at the old speed",
    speed: "old speed",
    newSpeed: "new speed",
  }),
  "output-rate.direct-strip-area": words("area on which the catch reads as the rate", {
    caught: "one unit caught",
    rate: "one unit of rate",
  }),
  "output-rate.direct-strip": words("distance over which the catch reads as the rate", {
    area: "area on which the catch reads as the rate",
    width: WIDTH,
  }),
  "output-rate.direct-strip-rate": words("rate read off the catch", {
    caught: "amount caught",
    reading: "rate that one unit caught stands for",
  }),
  "output-rate.tree-row-length": words("volume per length of row", row),
  "output-rate.tree-row-plant": words("volume per plant", { ...row, plantSpacing: PLANT_SPACING }),
  "output-rate.tree-row": words(PER_AREA, { ...row, rowSpacing: ROW_SPACING }),
  "output-rate.hand-area": words(PER_AREA, {
    used: USED,
    area: "treated area",
    rowLength: ROW_LENGTH,
    plants: "number of plants",
    plantSpacing: PLANT_SPACING,
    rowSpacing: ROW_SPACING,
  }),
  "output-rate.hand-length": words("volume per length of row", {
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
  "output-rate.pressure-for-output": words("pressure for the output wanted", {
    pressure: "pressure now",
    wanted: "output wanted",
    output: "output now",
  }),
  "output-rate.density-factor": words(DENSITY_FACTOR, {
    density: "density of the liquid",
    waterDensity: "density of water",
  }),
  "output-rate.water-for-solution": words("output to look for with water", {
    solution: "output of the solution",
    factor: DENSITY_FACTOR,
  }),
  "output-rate.solution-for-water": words("output of the solution", {
    water: "output of water",
    factor: DENSITY_FACTOR,
  }),
  "output-rate.nozzle-flow": words(NOZZLE_FLOW, { caught: "amount caught", time: "time of the catch" }),
  "output-rate.nozzle-mean": words("mean flow of a nozzle", {
    x: "flow of nozzle",
    n: "number of nozzles",
  }),
  "output-rate.nozzle-deviation": words("how far a nozzle is off, in per cent", {
    flow: NOZZLE_FLOW,
    reference: "flow it is held against",
  }),
  "output-rate.nozzle-spread": words("standard deviation of the nozzles", deviations("flow of nozzle")),
  "output-rate.nozzle-cv": words("coefficient of variation of the boom", {
    spread: "standard deviation of the nozzles",
    mean: "mean flow of a nozzle",
  }),
  "output-rate.target-check": words("how far the rate is off, in per cent", {
    rate: "rate measured",
    target: "rate wanted",
  }),
  "output-rate.resolution": words("standard uncertainty of a reading", {
    resolution: "smallest step that can be read",
  }),
  "output-rate.uncertainty-used": part(USED),
  "output-rate.uncertainty-swath": part(SWATH),
  "output-rate.uncertainty-distance": part("distance"),
  "output-rate.uncertainty-caught": part("amount caught"),
  "output-rate.uncertainty-catches": part("amount caught under one nozzle"),
  "output-rate.uncertainty-time": part("time"),
  "output-rate.uncertainty-speed": part(SPEED),
  "output-rate.uncertainty-width": part(WIDTH),
  "output-rate.uncertainty-area": part("treated area"),
  "output-rate.uncertainty-rowLength": part(ROW_LENGTH),
  "output-rate.uncertainty-rowSpacing": part(ROW_SPACING),
  "output-rate.uncertainty-plantSpacing": part(PLANT_SPACING),
  "output-rate.uncertainty-flow": part("flow"),
  "output-rate.uncertainty-rate": part("known rate"),
  "output-rate.uncertainty-scatter": words("what the scatter of the runs adds to the uncertainty", {
    spread: "standard deviation of the runs",
    mean: "mean rate of the runs",
    n: "number of runs",
  }),
  "output-rate.uncertainty-relative": words("combined standard uncertainty, as a part of the rate", {
    p: "part of reading",
  }),
  "output-rate.uncertainty": words("combined standard uncertainty of the rate", {
    rate: "rate",
    relative: "combined standard uncertainty, as a part of the rate",
  }),
  "output-rate.changed-nozzleSpacing": changed("nozzle spacing"),
  "output-rate.changed-pressure": changed("pressure"),
  "output-rate.changed-speed": changed(SPEED),
  "output-rate.changed-density": changed("density of the liquid"),
  "output-rate.changed": words("rate to expect", { rate: "rate as measured", x: "factor" }),
};
