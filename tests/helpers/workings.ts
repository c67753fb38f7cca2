import * as area from "../../src/area/index.ts";
import * as household from "../../src/household/index.ts";
import * as rates from "../../src/output-rate/index.ts";
import * as plan from "../../src/plan/index.ts";
import * as swath from "../../src/swath/index.ts";
import * as mix from "../../src/tank-mix/index.ts";
import { qty } from "../../src/units/index.ts";
import type { WorkingLine } from "../../src/units/working.ts";
import { TWO_PRODUCTS } from "./jobs.ts";
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

/** Samples of what every `...Working` function of the library gives, by the function's name. */
export const WORKINGS: Readonly<Record<string, readonly (readonly WorkingLine[])[]>> = {
  rectangleAreaWorking: [area.rectangleAreaWorking({ length: ft, width: m })],
  triangleAreaWorking: [
    area.triangleAreaWorking({ base: ft, height: m }),
    area.triangleAreaWorking({ sides: [ft, ft, m] }),
  ],
  trapezoidAreaWorking: [area.trapezoidAreaWorking({ base: ft, top: m, height: m })],
  circleAreaWorking: [area.circleAreaWorking({ diameter: ft })],
  ellipseAreaWorking: [area.ellipseAreaWorking({ length: ft, width: m })],
  ringAreaWorking: [area.ringAreaWorking({ outerDiameter: ft, innerDiameter: m })],
  sectorAreaWorking: [area.sectorAreaWorking({ radius: ft, angleDegrees: 90 })],
  compositeAreaWorking: [
    area.compositeAreaWorking({ add: [ground, ground], subtract: [area.groundArea(qty(1, "m2"))] }),
  ],
  boundaryAreaWorking: [
    area.boundaryAreaWorking({
      corners: [
        [-3, 0],
        [10, -2],
        [12, 11],
        [1, 9],
      ],
      unit: "yd",
    }),
  ],
  offsetsAreaWorking: [
    area.offsetsAreaWorking({ offsets: [ft, m], spacing: ft, rule: "trapezoidal" }),
    area.offsetsAreaWorking({ offsets: [ft, m, ft], spacing: ft, rule: "simpson" }),
  ],
  unequalOffsetsAreaWorking: [
    area.unequalOffsetsAreaWorking({
      stations: [
        [0, 1],
        [2, 3],
      ],
      unit: "ft",
    }),
  ],
  treatPartWorking: [area.treatPartWorking({ ground, fraction: 0.5 })],
  treatedFractionWorking: [area.treatedFractionWorking({ ground, treated })],
  rowBandsAreaWorking: [
    area.rowBandsAreaWorking({ rows: 3, rowLength: m, ...bands }),
    area.rowBandsAreaWorking({ rowLengths: [ft, m], ...bands }),
  ],
  bedsAreaWorking: [
    area.bedsAreaWorking({ beds: 3, bedLength: m, bedWidth: m, bedSpacing: ft }),
    area.bedsAreaWorking({ bedLengths: [ft, m], bedWidth: m, bedSpacing: ft }),
  ],
  treeRowsAreaWorking: [
    area.treeRowsAreaWorking({ rows: 3, rowLength: m, stripWidth: qty(1, "ft"), sides: 2, rowSpacing: ft }),
    area.treeRowsAreaWorking({ rowLengths: [ft, m], stripWidth: m, sides: 1, rowSpacing: ft }),
  ],
  spotsAreaWorking: [
    area.spotsAreaWorking({
      spots: [
        { count: 2, diameter: m },
        { count: 3, each: qty(1, "m2") },
        { count: 4, length: ft, width: m },
      ],
    }),
  ],
  rowLengthOnWorking: [area.rowLengthOnWorking({ ground, rowSpacing: ft })],
  plantCountWorking: [area.plantCountWorking({ ground, rowSpacing: ft, plantSpacing: m })],
  cropRateWorking: [area.cropRateWorking({ ...bands, treatedRate: qty(1, "gal/ac") })],
  treatedRateWorking: [area.treatedRateWorking({ ...bands, cropRate: qty(1, "gal/ac") })],

  boomWidthWorking: [swath.boomWidthWorking({ nozzles: 2, nozzleSpacing: ft })],
  bandsWidthWorking: [swath.bandsWidthWorking({ bands: 2, ...bands })],
  widthPerNozzleWorking: [swath.widthPerNozzleWorking({ width: ft, nozzles: 2 })],
  treeRowWidthWorking: [swath.treeRowWidthWorking({ rowSpacing: ft, sides: 1 })],
  effectiveWidthWorking: [swath.effectiveWidthWorking({ width: ft, overlap: m })],
  passesOverWorking: [
    swath.passesOverWorking({
      length: ft,
      width: m,
      swath: qty(5, "ft"),
      overlap: qty(1, "in"),
      speed: qty(1, "mph"),
    }),
  ],
  boomHeightWorking: [
    swath.boomHeightWorking({ angleDegrees: 80, nozzleSpacing: qty(20, "in"), overlap: qty(30, "%") }),
  ],
  boomCoverageWorking: [
    swath.boomCoverageWorking({ angleDegrees: 80, nozzleSpacing: ft, height: qty(50, "ft") }),
    swath.boomCoverageWorking({ angleDegrees: 80, nozzleSpacing: ft, height: qty(1, "ft") }),
  ],
  patternUniformityWorking: [
    swath.patternUniformityWorking({
      catches: [qty(1, "mL"), qty(3, "mL")],
      spacing: m,
      travel: "one-way",
      swath: qty(2, "m"),
    }),
  ],

  rateOfWorking: Object.values(MEASUREMENTS).map((one) => rates.rateOfWorking(one)),
  rateUncertaintyWorking: [
    ...Object.values(MEASUREMENTS).map((one) => rates.rateUncertaintyWorking(one)),
    rates.rateUncertaintyWorking(handPlot),
  ],
  stripRateWorking: [rates.stripRateWorking(runs.runs[0] as (typeof runs.runs)[number])],
  stripRunsWorking: [rates.stripRunsWorking(runs)],
  stripRunsSpreadWorking: [rates.stripRunsSpreadWorking(runs)],
  speedFromWorking: [rates.speedFromWorking(passes[1])],
  averageSpeedWorking: [rates.averageSpeedWorking({ passes })],
  timeForWorking: [rates.timeForWorking({ distance: qty(200, "ft"), speed: qty(4, "km/h") })],
  rateAtSpeedWorking: [
    rates.rateAtSpeedWorking({ rate: qty(20, "gal/ac"), speed: qty(3, "mph"), newSpeed: qty(4, "km/h") }),
  ],
  catchRateWorking: [rates.catchRateWorking({ ...boom, speed: qty(3, "mph"), width: qty(20, "in") })],
  directStripAreaWorking: [rates.directStripAreaWorking(pair)],
  directStripDistanceWorking: [rates.directStripDistanceWorking({ ...pair, width: qty(50, "cm") })],
  directStripRateWorking: [rates.directStripRateWorking({ ...pair, caught: qty(450, "mL") })],
  treeRowRateWorking: [rates.treeRowRateWorking(row)],
  handRateWorking: [
    rates.handRateWorking({ used: qty(40, "fl_oz"), area: { ...qty(3, "m2"), of: "treated" } }),
    rates.handRateWorking({
      used: qty(1, "gal"),
      rowLength: qty(60, "ft"),
      plantSpacing: qty(1, "m"),
      rowSpacing: qty(8, "ft"),
    }),
    rates.handRateWorking({ used: qty(4, "L"), plants: 20, plantSpacing: m, rowSpacing: ft }),
  ],
  solveOutputWorking: [noRate, noFlow, noSpeed, noWidth].map((input) =>
    rates.solveOutputWorking(input as never),
  ),
  outputAtPressureWorking: [rates.outputAtPressureWorking({ ...pressed, newPressure: qty(2, "bar") })],
  pressureForOutputWorking: [rates.pressureForOutputWorking({ ...pressed, wanted: qty(1, "L/min") })],
  densityFactorWorking: [rates.densityFactorWorking(densities)],
  waterForSolutionWorking: [rates.waterForSolutionWorking({ solution: qty(20, "gal/ac"), ...densities })],
  solutionForWaterWorking: [rates.solutionForWaterWorking({ water: qty(0.2, "gal/min"), ...densities })],
  checkNozzlesWorking: [
    rates.checkNozzlesWorking({ ...boom, against: "others" }),
    rates.checkNozzlesWorking({ ...boom, against: "rated", rated: qty(1.7, "L/min") }),
  ],
  checkAgainstTargetWorking: [
    rates.checkAgainstTargetWorking({ rate: qty(20, "gal/ac"), target: qty(200, "L/ha") }),
  ],
  whatChangedWorking: [
    rates.whatChangedWorking(record, {
      date: "2025-06-01",
      conditions: {
        nozzleSpacing: qty(20, "in"),
        pressure: qty(40, "psi"),
        speed: qty(3, "mph"),
        density: qty(1.2, "kg/L"),
      },
    }),
  ],

  carrierForWorking: [
    mix.carrierForWorking(carrier),
    mix.carrierForWorking({ ...carrier, reserve: { percent: 7.5 } }),
    mix.carrierForWorking({ ...carrier, reserve: { volume: qty(3, "pt") } }),
    mix.carrierForWorking({ ...carrier, reserve: { roundUpTo: qty(3, "qt") } }),
  ],
  splitLoadsWorking: [
    mix.splitLoadsWorking({ ...loads, split: "full-then-part" }),
    mix.splitLoadsWorking({ ...loads, split: { pieces: 14, extra: qty(1, "qt") } }),
  ],
  productAmountWorking: [
    mix.productAmountWorking({ ...product, rate: qty(1.3, "pt/ac") }),
    mix.productAmountWorking({ ...product, form: "dry", rate: { rate: qty(700, "g/ha"), per: "ground" } }),
    mix.productAmountWorking({ ...product, rate: qty(3, "mL/m") }),
    mix.productAmountWorking({ ...product, rate: { value: 0.75, unit: "%", basis: "v/v" } }),
    mix.productAmountWorking({ ...product, rate: { parts: 1, to: 64, of: "water" } }),
    mix.productAmountWorking({
      ...product,
      rate: { activeIngredient: qty(0.4, "lb/ac"), contains: qty(360, "g/L") },
    }),
  ],
  productRateWorking: [
    mix.productRateWorking({
      activeIngredient: qty(0.7, "lb/ac"),
      contains: { value: 36, unit: "%", basis: "w/w" },
      density: qty(9, "lb/gal"),
      form: "liquid",
    }),
  ],
  activeIngredientRateWorking: [
    mix.activeIngredientRateWorking({
      product: qty(3, "pt/ac"),
      contains: { value: 36, unit: "%", basis: "w/w" },
      density: qty(9, "lb/gal"),
    }),
  ],
  productInLoadsWorking: [mix.productInLoadsWorking({ amount: qty(11, "fl_oz"), loads: twoLoads })],
  waterWorking: [
    mix.waterWorking(
      mix.mixLoads({ loads: twoLoads, amounts: [qty(11, "fl_oz"), qty(200, "mL")] }).loads[0] as never,
    ),
  ],
  jarTestWorking: [
    mix.jarTestWorking({ jar: qty(1, "pt"), mix: qty(300, "L"), amounts: [qty(1, "kg"), qty(3, "pt")] }),
  ],
  diluteWorking: [
    mix.diluteWorking({
      from: { value: 0.75, unit: "%", basis: "w/v" },
      to: { value: 20, unit: "ppm", basis: "w/v" },
      volume: qty(3, "pt"),
    }),
  ],
  stockForWorking: [
    mix.stockForWorking({ amount: qty(10, "mL"), volume: qty(1, "qt"), dose: qty(0.1, "tsp") }),
  ],
  rinseWorking: [mix.rinseWorking({ residual: qty(3, "pt"), water: qty(7, "L"), rinses: 3 })],
  strengthOfWorking: [
    mix.strengthOfWorking({ mix: qty(3, "gal"), addedWater: qty(2, "L"), product: qty(5, "oz") }),
  ],
  leftoverAreaWorking: [mix.leftoverAreaWorking({ volume: qty(2, "L"), rate: qty(31, "gal/ac") })],

  measureOutWorking: [household.measureOutWorking(dose)],
  volumeOfWeightWorking: [
    household.volumeOfWeightWorking({ mass: qty(12, "oz"), bulkDensity: qty(0.6, "kg/L") }),
  ],
  stockDilutionWorking: [
    household.stockDilutionWorking({
      amount: qty(0.06, "tsp"),
      tools: "us-cups-and-spoons",
      rule: "never-over",
      labelPermitsDilution: true,
    }),
  ],

  planWorking: [
    plan
      .planWorking(
        plan.planApplication({
          ...TWO_PRODUCTS,
          plot: [
            { kind: "treated-area", treated },
            { kind: "rectangle", length: ft, width: ft },
          ],
        }),
      )
      .flatMap(({ lines }) => lines),
  ],
};
