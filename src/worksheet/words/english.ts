import { frozen } from "../../frozen.js";
import { CAUTIONS, SPREADING_CAUTIONS } from "../../plan/cautions.js";
import { NAMES } from "../../units/names.js";
import { ENGLISH_LINES } from "./known-lines.js";
import type { Messages, PhraseWords, ToolNames } from "./messages.js";

const TEXT: Messages["text"] = {
  title: "Spray job worksheet",
  cardTitle: "Field card",
  summary: "The job",
  what: "What",
  howMuch: "How much",
  treatedArea: "Treated area",
  groundArea: "Ground area",
  outputRate: "Output rate",
  number: "How many",
  eachGets: "Each gets",
  rowLength: "Length of row",
  perLength: "Mix per length of row",
  totalMix: "Total spray mix",
  totalOf: "{total} ({parts})",
  mixForPlot: "{volume} for the plot",
  mixForJob: "{volume} for the job",
  mixExtra: "{volume} extra",
  mixInHose: "{volume} in the hose",
  leftover: "Left over when the plot is done",
  leftoverJob: "Left over when the job is done",
  leftoverWithArea: "{leftover}, of which the extra would cover another {area}",
  rateOf: "{product} rate",
  rateOfActive: "{rate} of active ingredient",
  rateOfMix: "{parts} in {to} parts of mix",
  rateOfWater: "{parts} to {to} parts of water",
  rateOnGround: "{rate} of ground",
  load: "Load {number} of {count}",
  loads: "Tank loads",
  product: "Product",
  amount: "Amount",
  measure: "Measure",
  fillTo: "fill the tank to {carrier}",
  waterFor: "{water} of water plus the products below. Covers {area}.",
  waterOnly: "{water} of water plus the products below.",
  areaWithRows: "{area} (about {rows} rows)",
  mixingOrder: "Add in this order, mixing each in before the next, unless the label says otherwise: {order}.",
  doNotMix: "Do not mix. See the warning at the top.",
  halfFill: "Add about {half} of clean water and start agitating (backpack: close and shake).",
  pour: "{product}: {amount}. Measure {measures} ({remark}).",
  pourOtherwise: "{product}: {amount}. Can't be measured with these tools. Get a smaller or larger measure.",
  topUp: "Top up with water to {carrier} (total water {water}).",
  spray: "Spray. This load covers {area}.",
  use: "Apply this load by spraying or drenching. It is enough for {area}.",
  useAll: "Apply this load by spraying or drenching.",
  loadsAlike: "{loads} loads of {load}",
  fillingOrder:
    "Half the water first, then {products:one=the product;other=the products}, then top up to the mark, unless the label says otherwise.",
  exactly: "exact",
  under: "{percent} under",
  over: "{percent} over",
  fills: "{count} {tools}",
  fillsOf: "fills of the {tool}",
  toMark: "{mark} in the {tool}",
  toMarkTimes: "{count} times {mark} in the {tool}",
  weigh: "{mark} on the {tool}",
  weighTimes: "{count} times {mark} on the {tool}",
  doNotMeasure: "can't be measured with these tools",
  totalProduct: "Total product, all loads",
  working: "Working",
  rounding:
    "Numbers are rounded for display; product amounts are rounded down. Each step uses the unrounded number.",
  sources: "Sources",
  cautions: "Cautions",
  warnings: "Check these first",
  severityNote: "Note",
  severityWarning: "Warning",
  severityRefusal: "Do not spray",
  ofProduct: "{product}: {issue}",
  ofProductOnPlot: "{product} on {plot}: {issue}",
  perPass: "Rate for one pass",
  testResult: "Spreader put out in the test",
  nutrient: "{nutrient} that this brings",
  totalOfProduct: "Total {product}",
  bags: "Bags to buy",
  bagsAndRest: "{bags} ({rest} left over)",
  reEntry: "Keep people out for",
  fillsAndPlots: "Fills and plots",
  spreadIt: "Fill and spread",
  lengthwise: "Lengthwise: {perDirection}",
  crosswise: "Crosswise: {perDirection}",
  fillHopper: "Fill the hopper with {hopper} and spread it. Do this {times} {times:one=time;other=times}.",
  lastFill: "For the last fill, weigh out {lastFill} and spread it.",
  onlyFill: "Weigh out {lastFill}, fill the hopper and spread it.",
  byPlot: "How much goes where",
  onPlot: "{plot}: {amount}.",
  plotInPieces: "{plot}: {amount}, which is {each} for each of the {pieces} rows or beds.",
  doNotSpread: "Do not spread",
  doNotFill: "Do not fill the hopper. See the warning at the top.",
  spreadingTitle: "Spreader job worksheet",
};

/** What single phrases need: an app that prints a dose or a warning takes no more along. */
export const ENGLISH_PHRASES: PhraseWords = /* @__PURE__ */ frozen(
  (() => ({
    language: "en",
    issues: {},
    names: NAMES,
    tools: toolNames(),
    units: {},
    text: TEXT,
  }))(),
);

/** Worksheet and field card in English. */
export const ENGLISH_WORDS: Messages = /* @__PURE__ */ frozen(
  (() => ({
    ...ENGLISH_PHRASES,
    lines: ENGLISH_LINES,
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
      size: "Mix for the job",
      carrier: "Spray mix",
      loads: "Tank loads",
      product: "{product}",
      dose: "{product}, measured for load {load}",
      fertilizer: "Fertilizer for the nutrient",
      amount: "Product for the job",
      hopper: "Hopper fills",
      bags: "Bags to buy",
      test: "Spreader test",
    },
    cautions: Object.fromEntries(
      [...CAUTIONS, ...SPREADING_CAUTIONS].map(({ code, message }) => [code, message]),
    ) as Messages["cautions"],
    // A grower reads "no source" as "made up".
    sources: {
      "common practice, no source": "common practice",
      "metric kitchen measure: common practice, no source": "metric kitchen measure: common practice",
    },
  }))(),
);

/** The tools that are filled whole, one and several of them. A name that begins with a number is not counted by. */
function toolNames(): Record<string, ToolNames> {
  const several: readonly (readonly [one: string, other: string])[] = [
    ...["teaspoon", "tablespoon", "cup", "Australian teaspoon", "Australian tablespoon"].map(withS),
    ...["metric teaspoon", "metric tablespoon", "metric cup"].map(withS),
    ...["pint measure", "quart measure", "gallon measure", "imperial fluid ounce measure"].map(withS),
    ...["imperial pint measure", "imperial quart measure", "imperial gallon measure"].map(withS),
    ["teaspoon (5 mL)", "teaspoons (5 mL)"],
    ["tablespoon (15 mL)", "tablespoons (15 mL)"],
    ["cup (240 mL)", "cups (240 mL)"],
  ];
  return Object.fromEntries(several.map(([one, other]) => [one, { one, other }]));
}

function withS(name: string): readonly [string, string] {
  return [name, `${name}s`];
}
