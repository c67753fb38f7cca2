import * as area from "../../src/area/index.ts";
import * as rates from "../../src/output-rate/index.ts";
import * as mix from "../../src/tank-mix/index.ts";
import { NUTRIENTS } from "../../src/tank-mix/nutrients.ts";
import { qty } from "../../src/units/index.ts";
import type * as working from "../../src/working/index.ts";
import { CONDITIONS, MEASUREMENTS } from "./output-rate-samples.ts";

const ft = qty(9, "ft");
const m = qty(1.3, "m");
const ground = area.groundArea(qty(1.5, "ac"));
const treated = area.treatedArea(qty(2000, "m2"));
const bands = { bandWidth: m, rowSpacing: ft };
const passes = [
  { distance: qty(200, "ft"), time: qty(45, "s") },
  { distance: qty(60, "m"), time: qty(0.7, "min") },
] as const;
const timed = [
  { caught: qty(75, "fl_oz"), time: qty(45, "s") },
  { caught: qty(2, "L"), time: qty(0.7, "min") },
] as const;
const runs = {
  runs: [2, 2.1, 2.5].map((v) => ({ used: qty(v, "L"), swath: qty(2, "m"), distance: qty(50, "yd") })),
};
const pair = { catchUnit: "fl_oz", rateUnit: "gal/ac" } as const;
const boom = { catches: [30, 31, 27].map((v) => qty(v, "fl_oz")), time: qty(30, "s") } as const;
const row = {
  used: qty(10, "L"),
  sides: 1,
  rowLength: qty(100, "m"),
  rowSpacing: qty(12, "ft"),
  plantSpacing: qty(2, "m"),
} as const;
const solved = {
  rate: qty(20, "gal/ac"),
  flow: qty(12, "fl_oz/s"),
  speed: qty(3, "mph"),
  width: qty(20, "in"),
};
const { rate: _rate, ...noRate } = solved;
const { flow: _flow, ...noFlow } = solved;
const { speed: _speed, ...noSpeed } = solved;
const { width: _width, ...noWidth } = solved;
const densities = { density: qty(11.4, "lb/gal"), waterDensity: qty(1, "kg/L") };
const pressed = { output: qty(0.2, "gal/min"), pressure: qty(20, "psi") };
const record = rates.calibrationRecord({
  date: "2025-04-12",
  measurement: MEASUREMENTS.strip,
  conditions: CONDITIONS,
});
const handPlot = {
  kind: "hand",
  used: { ...qty(40, "fl_oz"), resolution: qty(1, "fl_oz") },
  area: { ...qty(340, "ft2"), of: "treated", uncertainty: qty(5, "ft2") },
} as const;
const dose = { amount: qty(1.3, "fl_oz"), tools: "us-spoons", rule: "never-over", perArea: treated } as const;
const carrier = { rate: qty(37, "fl_oz/1000ft2"), area: treated, lineVolume: qty(31, "fl_oz") };
const loads = { total: qty(17, "gal"), tank: qty(15, "L") };
const product = {
  form: "liquid",
  carrier: qty(13, "gal"),
  carrierRate: qty(240, "L/ha"),
  area: treated,
  ground,
  rowLength: qty(900, "ft"),
} as const;
const twoLoads = [{ carrier: qty(4, "gal") }, { carrier: qty(9, "qt") }];

type Sampled = Exclude<keyof typeof working, "planApplication" | "planSpreading">;

/** Samples of what every function that shows its working is given, by the function's name. A plan's has a plan: see workings.ts. */
export const SAMPLES: { readonly [N in Sampled]: readonly Readonly<Parameters<(typeof working)[N]>>[] } = {
  rectangleArea: [[{ length: ft, width: m }]],
  triangleArea: [[{ base: ft, height: m }], [{ sides: [ft, ft, m] }]],
  trapezoidArea: [[{ base: ft, top: m, height: m }]],
  circleArea: [[{ diameter: ft }]],
  ellipseArea: [[{ length: ft, width: m }]],
  ringArea: [[{ outerDiameter: ft, innerDiameter: m }]],
  sectorArea: [[{ radius: ft, angleDegrees: 90 }]],
  compositeArea: [[{ add: [ground, ground], subtract: [area.groundArea(qty(1, "m2"))] }]],
  boundaryArea: [
    [
      {
        corners: [
          [-3, 0],
          [10, -2],
          [12, 11],
          [1, 9],
        ],
        unit: "yd",
      },
    ],
  ],
  offsetsArea: [
    [{ offsets: [ft, m], spacing: ft, rule: "trapezoidal" }],
    [{ offsets: [ft, m, ft], spacing: ft, rule: "simpson" }],
  ],
  unequalOffsetsArea: [
    [
      {
        stations: [
          [0, 1],
          [2, 3],
        ],
        unit: "ft",
      },
    ],
  ],
  treatPart: [[{ ground, fraction: 0.5 }]],
  treatedFraction: [[{ ground, treated }]],
  rowBandsArea: [[{ rows: 3, rowLength: m, ...bands }], [{ rowLengths: [ft, m], ...bands }]],
  bedsArea: [
    [{ beds: 3, bedLength: m, bedWidth: m, bedSpacing: ft }],
    [{ bedLengths: [ft, m], bedWidth: m, bedSpacing: ft }],
  ],
  treeRowsArea: [
    [{ rows: 3, rowLength: m, stripWidth: qty(1, "ft"), sides: 2, rowSpacing: ft }],
    [{ rowLengths: [ft, m], stripWidth: m, sides: 1, rowSpacing: ft }],
  ],
  spotsArea: [
    [
      {
        spots: [
          { count: 2, diameter: m },
          { count: 3, each: qty(1, "m2") },
          { count: 4, length: ft, width: m },
        ],
      },
    ],
  ],
  rowLengthOn: [[{ ground, rowSpacing: ft }]],
  plantedGround: [[{ plants: 300, rowSpacing: ft, plantSpacing: m }]],
  plantCount: [[{ ground, rowSpacing: ft, plantSpacing: m }]],
  cropRate: [[{ ...bands, treatedRate: qty(1, "gal/ac") }]],
  treatedRate: [[{ ...bands, cropRate: qty(1, "gal/ac") }]],

  boomWidth: [[{ nozzles: 2, nozzleSpacing: ft }]],
  bandsWidth: [[{ bands: 2, ...bands }]],
  widthPerNozzle: [[{ width: ft, nozzles: 2 }]],
  treeRowWidth: [[{ rowSpacing: ft, sides: 1 }]],
  effectiveWidth: [[{ width: ft, overlap: m }]],
  passesOver: [
    [
      {
        length: ft,
        width: m,
        swath: qty(5, "ft"),
        overlap: qty(1, "in"),
        speed: qty(1, "mph"),
      },
    ],
  ],
  boomHeight: [[{ angleDegrees: 80, nozzleSpacing: qty(20, "in"), overlap: qty(30, "%") }]],
  boomCoverage: [
    [{ angleDegrees: 80, nozzleSpacing: ft, height: qty(50, "ft") }],
    [{ angleDegrees: 80, nozzleSpacing: ft, height: qty(1, "ft") }],
  ],
  patternUniformity: [
    [
      {
        catches: [qty(1, "mL"), qty(3, "mL")],
        spacing: m,
        travel: "one-way",
        swath: qty(2, "m"),
      },
    ],
  ],

  rateOf: Object.values(MEASUREMENTS).map((one) => [one] as const),
  rateUncertainty: [...Object.values(MEASUREMENTS).map((one) => [one] as const), [handPlot]],
  stripRate: [[runs.runs[0] as (typeof runs.runs)[number]]],
  stripRuns: [[runs]],
  stripRunsSpread: [[runs]],
  speedFrom: [[passes[1]]],
  averageSpeed: [[{ passes }]],
  timeFor: [[{ distance: qty(200, "ft"), speed: qty(4, "km/h") }]],
  flowFrom: [[timed[0]]],
  averageFlow: [[{ catches: timed }]],
  volumePerPlant: [
    [{ flow: timed[0], time: qty(0.1, "min") }],
    [{ flow: qty(0.5, "gal/min"), time: qty(4, "s") }],
  ],
  timePerPlant: [
    [{ flow: timed[1], each: qty(9, "fl_oz") }],
    [{ flow: qty(0.5, "gal/min"), each: qty(90, "mL") }],
  ],
  timeToSpray: [
    [{ flow: timed[1], volume: qty(4, "gal") }],
    [{ flow: qty(0.5, "gal/min"), volume: qty(15, "L") }],
  ],
  timeToCover: [
    [{ area: treated, width: ft, speed: qty(3, "mph") }],
    [{ area: treated, width: ft, speed: passes[1], efficiencyPercent: 65 }],
  ],
  treeRowVolume: [[{ height: m, width: m, rowSpacing: ft }]],
  diluteRate: [
    [{ canopy: { height: m, width: m, rowSpacing: ft }, spray: qty(10, "L/100m3") }],
    [{ canopy: qty(150_000, "ft3/ac"), spray: qty(10, "L/100m3") }],
  ],
  ratePerPlant: [
    [{ rate: qty(90, "gal/ac"), rowSpacing: ft, plantSpacing: m }],
    [{ rate: qty(50, "kg/ha"), plants: 250, ground }],
  ],
  rateAtSpeed: [[{ rate: qty(20, "gal/ac"), speed: qty(3, "mph"), newSpeed: qty(4, "km/h") }]],
  catchRate: [[{ ...boom, speed: qty(3, "mph"), width: qty(20, "in") }]],
  directStripArea: [[pair]],
  directStripDistance: [[{ ...pair, width: qty(50, "cm") }]],
  directStripRate: [[{ ...pair, caught: qty(450, "mL") }]],
  treeRowRate: [[row]],
  handSprayRates: [
    [{ used: qty(40, "fl_oz"), area: { ...qty(3, "m2"), of: "treated" } }],
    [
      {
        used: qty(1, "gal"),
        rowLength: qty(60, "ft"),
        plantSpacing: qty(1, "m"),
        rowSpacing: qty(8, "ft"),
      },
    ],
    [{ used: qty(4, "L"), plants: 20, plantSpacing: m, rowSpacing: ft }],
  ],
  solveOutput: [noRate, noFlow, noSpeed, noWidth].map((input) => [input as never]),
  outputAtPressure: [[{ ...pressed, newPressure: qty(2, "bar") }]],
  pressureForOutput: [[{ ...pressed, newOutput: qty(1, "L/min") }]],
  densityFactor: [[densities]],
  waterForSolution: [[{ solution: qty(20, "gal/ac"), ...densities }]],
  solutionForWater: [[{ water: qty(0.2, "gal/min"), ...densities }]],
  checkNozzles: [[{ ...boom, against: "others" }], [{ ...boom, against: "rated", rated: qty(1.7, "L/min") }]],
  checkAgainstTarget: [[{ rate: qty(20, "gal/ac"), target: qty(200, "L/ha") }]],
  whatChanged: [
    [
      record,
      {
        date: "2025-06-01",
        conditions: {
          nozzleSpacing: qty(20, "in"),
          pressure: qty(40, "psi"),
          speed: qty(3, "mph"),
          density: qty(1.2, "kg/L"),
        },
      },
    ],
  ],

  carrierFor: [
    [carrier],
    [{ ...carrier, reserve: { percent: 7.5 } }],
    [{ ...carrier, reserve: { volume: qty(3, "pt") } }],
    [{ ...carrier, reserve: { roundUpTo: qty(3, "qt") } }],
  ],
  batchVolume: [
    [{ kind: "volume", volume: qty(300, "fl_oz") }],
    [{ kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz") }],
    [{ kind: "count", count: qty(9, "tree"), each: { used: qty(7, "L"), plants: 3 } }],
    [{ kind: "count", count: qty(9, "tree"), each: { flow: timed[0], time: qty(9, "s") } }],
    [{ kind: "row-length", length: ft, rate: qty(5, "gal/1000ft") }],
    [{ kind: "row-length", length: ft, rate: { used: qty(7, "L"), length: m } }],
  ],
  splitLoads: [
    [{ ...loads, split: "full-then-part" }],
    [{ ...loads, split: { pieces: 14, lines: qty(1, "qt"), reserve: qty(3, "pt") } }],
    [{ ...loads, split: { pieces: 14, perLoad: 2 } }],
    [
      {
        ...loads,
        split: {
          fills: [qty(15, "L"), qty(15, "L"), qty(3.5, "gal"), qty(15, "L"), qty(2, "gal"), qty(3, "gal")],
        },
      },
    ],
    [{ ...loads, marks: qty(0.4, "L"), split: "full-then-part" }],
    [{ ...loads, marks: qty(1, "pt"), split: "equal" }],
    [{ ...loads, marks: qty(0.5, "L"), leastLoad: qty(12, "L"), split: "full-then-part" }],
    [{ ...loads, marks: [qty(14, "L"), qty(3, "gal"), qty(1, "gal")], split: "equal" }],
    [{ ...loads, marks: qty(0.5, "L"), split: { pieces: 14, lines: qty(1, "qt"), reserve: qty(3, "pt") } }],
  ],
  productAmount: [
    [{ ...product, rate: qty(1.3, "pt/ac") }],
    [{ ...product, form: "dry", rate: { rate: qty(700, "g/ha"), per: "ground" } }],
    [{ ...product, rate: qty(3, "mL/m") }],
    [{ ...product, rate: { value: 0.75, unit: "%", basis: "v/v" } }],
    [{ ...product, rate: { parts: 1, to: 64, of: "water" } }],
    [{ ...product, form: "dry", rate: { value: 0.75, unit: "%", basis: "w/v" } }],
    [{ ...product, rate: qty(0.5, "mL/pot"), carrierPerCount: qty(4, "fl_oz/pot") }],
    [{ ...product, rate: qty(0.5, "mL/m"), carrierPerLength: qty(4, "fl_oz/ft") }],
    [
      {
        ...product,
        rate: { activeIngredient: qty(0.4, "lb/ac"), contains: qty(360, "g/L") },
      },
    ],
  ],
  productRate: [
    [
      {
        activeIngredient: qty(0.7, "lb/ac"),
        contains: { value: 36, unit: "%", basis: "w/w" },
        density: qty(9, "lb/gal"),
        form: "liquid",
      },
    ],
  ],
  activeIngredientRate: [
    [
      {
        product: qty(3, "pt/ac"),
        contains: { value: 36, unit: "%", basis: "w/w" },
        density: qty(9, "lb/gal"),
      },
    ],
  ],
  productInLoads: [[{ amount: qty(11, "fl_oz"), loads: twoLoads }]],
  loadWater: [
    [mix.mixLoads({ loads: twoLoads, amounts: [qty(11, "fl_oz"), qty(200, "mL")] }).loads[0] as never],
  ],
  jarTest: [[{ jar: qty(1, "pt"), mix: qty(300, "L"), amounts: [qty(1, "kg"), qty(3, "pt")] }]],
  concentrateSpray: [
    [{ dilute: qty(300, "gal/ac"), concentrate: qty(900, "L/ha") }],
    [
      {
        dilute: qty(300, "gal/ac"),
        factor: 3,
        product: { rate: qty(8, "fl_oz/100gal"), form: "liquid" },
      },
    ],
    [
      {
        dilute: qty(300, "gal/ac"),
        factor: 3,
        product: { rate: { parts: 1, to: 200, of: "mix" }, form: "liquid" },
      },
    ],
  ],
  injectorStock: [
    [
      {
        rate: {
          activeIngredient: { value: 200, unit: "ppm", basis: "w/v" },
          contains: { value: 20, unit: "%", basis: "w/w" },
        },
        form: "dry",
        ratio: { parts: 1, to: 100, of: "mix" },
        finished: qty(300, "qt"),
        errorPercent: 10,
      },
    ],
    [
      {
        rate: qty(2, "mL/L"),
        form: "liquid",
        ratio: { parts: 1, to: 64, of: "water" },
        stock: qty(5, "L"),
      },
    ],
  ],
  injectedStrength: [
    [
      {
        stock: { value: 2, unit: "%", basis: "w/v" },
        ratio: { parts: 1, to: 100, of: "water" },
        errorPercent: 5,
      },
    ],
  ],
  checkInjector: [
    [{ ratio: { parts: 1, to: 100, of: "mix" }, drawn: qty(5, "fl_oz"), caught: qty(15, "L") }],
    [{ ratio: { parts: 1, to: 100, of: "water" }, drawn: qty(5, "fl_oz"), caught: qty(15, "L") }],
  ],
  diluteMix: [
    [
      {
        from: { value: 0.75, unit: "%", basis: "w/v" },
        to: { value: 20, unit: "ppm", basis: "w/v" },
        volume: qty(3, "pt"),
      },
    ],
  ],
  stockFor: [[{ amount: qty(10, "mL"), volume: qty(1, "qt"), dose: qty(0.1, "tsp") }]],
  rinseTank: [[{ residual: qty(3, "pt"), water: qty(7, "L"), rinses: 3 }]],
  strengthOf: [[{ mix: qty(3, "gal"), addedWater: qty(2, "L"), product: qty(5, "oz") }]],
  leftoverArea: [[{ volume: qty(2, "L"), rate: qty(31, "gal/ac") }]],

  measureOut: [[dose]],
  volumeOfWeight: [[{ mass: qty(12, "oz"), bulkDensity: qty(0.6, "kg/L") }]],
  stockDilution: [
    [
      {
        amount: qty(0.06, "tsp"),
        tools: "us-cups-and-spoons",
        rule: "never-over",
        labelPermitsDilution: true,
      },
    ],
  ],
  spreaderRate: [
    [{ used: qty(20, "lb"), swath: ft, distance: m }],
    [{ used: qty(300, "g"), area: treated }],
    [{ used: qty(2, "oz"), rowLength: qty(250, "ft") }],
  ],
  checkSpreader: [
    [
      {
        used: qty(9, "oz"),
        swath: ft,
        distance: m,
        target: qty(5, "lb/1000ft2"),
        directions: 2,
      },
    ],
    [{ used: qty(40, "g"), rowLength: ft, target: qty(8, "oz/1000ft") }],
  ],
  spreaderCatch: [
    [{ target: qty(5, "lb/1000ft2"), swath: ft, distance: m, directions: 2 }],
    [{ target: qty(50, "kg/ha"), area: treated, directions: 2 }],
    [{ target: qty(8, "oz/1000ft"), rowLength: m, directions: 2 }],
  ],
  granulesFor: [
    [{ rate: qty(1.5, "lb/100ft2"), area: treated }],
    [{ rate: qty(8, "oz/1000ft"), rowLength: m }],
    [{ rate: qty(40, "g/1000plant"), plants: 45 }],
  ],
  granulesCover: [[{ amount: qty(25, "kg"), rate: qty(4, "lb/1000ft2") }]],
  hopperLoads: [[{ total: qty(90, "lb"), hopper: qty(9, "kg"), directions: 2 }]],
  bagsFor: [[{ total: qty(107, "lb"), bag: qty(20, "kg") }]],
  fertilizerFor: [
    ...NUTRIENTS.map(
      (nutrient) => [{ nutrient, amount: qty(1, "lb"), contains: { [nutrient]: 10 } }] as const,
    ),
    [
      {
        nutrient: "P",
        amount: qty(20, "kg/ha"),
        contains: { N: 10, P2O5: 20, K2O: 5, S: 4, MgO: 3, CaO: 2 },
      },
    ],
    [
      {
        nutrient: "P2O5",
        amount: qty(1, "lb"),
        contains: { P: 8.8, K: 3, SO3: 11, Mg: 1, Ca: 20 },
      },
    ],
  ],
  nutrientsFrom: [[{ product: qty(80, "lb"), contains: { N: 5, P2O5: 10 } }]],
  convertNutrient: [
    [{ amount: qty(20, "g/plant"), from: "P", to: "P2O5" }],
    [{ amount: qty(20, "kg/ha"), from: "K2O", to: "K" }],
  ],
};
