import type { Messages } from "./messages.js";
import { AREA_WORDS } from "./words/area.js";
import { HOUSEHOLD_WORDS } from "./words/household.js";
import { OUTPUT_RATE_WORDS } from "./words/output-rate.js";
import { PLAN_WORDS } from "./words/plan.js";
import { SWATH_WORDS } from "./words/swath.js";
import { TANK_MIX_WORDS } from "./words/tank-mix.js";
import { UNITS_WORDS } from "./words/units.js";

/** The worksheet in English. */
export const ENGLISH: Messages = {
  lines: {
    ...UNITS_WORDS,
    ...AREA_WORDS,
    ...SWATH_WORDS,
    ...OUTPUT_RATE_WORDS,
    ...TANK_MIX_WORDS,
    ...HOUSEHOLD_WORDS,
    ...PLAN_WORDS,
  },
  functions: {
    sqrt: "√({x})",
    ceil: "round up({x})",
    floor: "round down({x})",
    min: "smallest of({x})",
    max: "largest of({x})",
    sin: "sin({x})",
    cos: "cos({x})",
    tan: "tan({x})",
  },
  steps: {
    area: "Treated area",
    rate: "Output rate",
    carrier: "Spray mix",
    loads: "Tank loads",
    product: "{product}",
    dose: "{product}, measured for load {load}",
  },
  cautions: {},
  tools: {},
  text: {
    title: "Spray job worksheet",
    summary: "The job",
    treatedArea: "Treated area",
    groundArea: "Ground area",
    outputRate: "Output rate",
    mixInAll: "Spray mix in all",
    sprayed: "on the plot",
    reserve: "reserve",
    lines: "in the lines",
    leftover: "Left when the plot is done",
    leftoverArea: "which could still treat",
    load: "Load {number} of {count}",
    fillTo: "fill the tank to {carrier}",
    waterFor: "{water} of water and the products below; enough for {area}",
    mixingOrder:
      "Pour in this order, each stirred in before the next, unless the label says otherwise: {order}.",
    exactly: "exact",
    under: "{percent} under",
    over: "{percent} over",
    fillOf: "{count} × {tool}",
    toMark: "{count} × {tool} to the {mark} mark",
    doNotMeasure: "not measurable with these tools",
    totalInLoads: "In all loads",
    working: "Working",
    rounding: "Numbers are rounded for reading; every step goes on with the unrounded number.",
    source: "Source",
    cautions: "Cautions",
    warnings: "Look at this first",
    severityNote: "Note",
    severityWarning: "Warning",
    severityRefusal: "Do not spray",
  },
};
