import { describe, expect, it } from "vitest";
import { groundArea, treatedArea } from "../../../src/area/index.ts";
import * as rates from "../../../src/output-rate/index.ts";
import { type Quantity, qty } from "../../../src/units/index.ts";
import type { WorkingLine } from "../../../src/units/working-line.ts";
import * as working from "../../../src/working/index.ts";
import { OUTPUT_RATE_WORDS } from "../../../src/worksheet/words/output-rate.ts";
import { CONDITIONS, MEASUREMENTS } from "../../helpers/output-rate-samples.ts";
import { expectLinesTrue } from "../../helpers/working.ts";

const densities = { density: qty(11.4, "lb/gal"), waterDensity: qty(1, "kg/L") };
const pressed = { output: qty(0.2, "gal/min"), pressure: qty(20, "psi") };
const boom = { catches: [30, 31, 27].map((v) => qty(v, "fl_oz")), time: qty(30, "s") } as const;
const canopy = { height: qty(3, "m"), width: qty(6, "ft"), rowSpacing: qty(15, "ft") };
const passes = [
  { distance: qty(200, "ft"), time: qty(45, "s") },
  { distance: qty(60, "m"), time: qty(0.7, "min") },
];
const timed = [
  { caught: qty(75, "fl_oz"), time: qty(45, "s") },
  { caught: qty(2, "L"), time: qty(0.7, "min") },
] as const;
const runs = {
  runs: [2, 2.1, 2.5].map((v) => ({ used: qty(v, "L"), swath: qty(2, "m"), distance: qty(50, "yd") })),
};
const row = {
  used: qty(10, "L"),
  sides: 1,
  rowLength: qty(100, "m"),
  rowSpacing: qty(12, "ft"),
  plantSpacing: qty(2, "m"),
} as const;
const pair = { catchUnit: "fl_oz", rateUnit: "gal/ac" } as const;
const solved = {
  rate: qty(20, "gal/ac"),
  flow: qty(12, "fl_oz/s"),
  speed: qty(3, "mph"),
  width: qty(20, "in"),
};
const record = rates.calibrationRecord({
  date: "2025-04-12",
  measurement: MEASUREMENTS.strip,
  conditions: CONDITIONS,
});
const today = {
  date: "2025-06-01",
  conditions: {
    nozzleSpacing: qty(20, "in"),
    pressure: qty(40, "psi"),
    speed: qty(3, "mph"),
    density: qty(1.2, "kg/L"),
  },
};

const spread = {
  used: qty(9, "oz"),
  swath: qty(2, "ft"),
  distance: qty(50, "ft"),
  target: qty(10, "lb/1000ft2"),
  directions: 2,
} as const;

const PLOT = {
  kind: "hand",
  used: { ...qty(40, "fl_oz"), resolution: qty(1, "fl_oz") },
  area: { ...qty(340, "ft2"), of: "treated", uncertainty: qty(5, "ft2") },
} as const;

const { rate: _rate, ...noRate } = solved;
const { flow: _flow, ...noFlow } = solved;
const { speed: _speed, ...noSpeed } = solved;
const { width: _width, ...noWidth } = solved;

// Each working, and what its function gives.
// Worked out when they are asked for, so that a test is seen to cover what it calls.
const workings = (): [string, WorkingLine[], Quantity | number][] => [
  ...Object.values(MEASUREMENTS)
    .filter(({ kind }) => kind !== "known")
    .map((one): [string, WorkingLine[], Quantity] => [
      `rateOf ${one.kind}`,
      working.rateOf(one),
      rates.rateOf(one),
    ]),
  ...Object.values(MEASUREMENTS).map((one): [string, WorkingLine[], Quantity] => [
    `rateUncertainty ${one.kind}`,
    working.rateUncertainty(one),
    rates.rateUncertainty(one).standardUncertainty,
  ]),
  [
    "rateUncertainty on a plot",
    working.rateUncertainty(PLOT),
    rates.rateUncertainty(PLOT).standardUncertainty,
  ],
  ["stripRuns", working.stripRuns(runs), rates.stripRuns(runs).rate],
  ["stripRuns CV", working.stripRunsSpread(runs), rates.stripRuns(runs).coefficientOfVariation],
  ["speedFrom", working.speedFrom(passes[1] as never), rates.speedFrom(passes[1] as never)],
  ["averageSpeed", working.averageSpeed({ passes }), rates.averageSpeed({ passes })],
  [
    "timeFor",
    working.timeFor({ distance: qty(200, "ft"), speed: qty(4, "km/h") }),
    rates.timeFor({ distance: qty(200, "ft"), speed: qty(4, "km/h") }),
  ],
  ["flowFrom", working.flowFrom(timed[0]), rates.flowFrom(timed[0])],
  ["averageFlow", working.averageFlow({ catches: timed }), rates.averageFlow({ catches: timed })],
  ...[timed[1], qty(0.5, "gal/min")].flatMap((flow): [string, WorkingLine[], Quantity][] => {
    const plant = { flow, time: qty(0.1, "min") };
    const each = { flow, each: qty(9, "fl_oz") };
    const tank = { flow, volume: qty(4, "gal") };
    return [
      ["volumePerPlant", working.volumePerPlant(plant), rates.volumePerPlant(plant)],
      ["timePerPlant", working.timePerPlant(each), rates.timePerPlant(each)],
      ["timeToSpray", working.timeToSpray(tank), rates.timeToSpray(tank)],
    ];
  }),
  ...[qty(3, "mph"), passes[1] as never].flatMap((speed) =>
    [{}, { efficiencyPercent: 65 }].map((more): [string, WorkingLine[], Quantity] => {
      const plot = { area: treatedArea(qty(2000, "m2")), width: qty(9, "ft"), speed, ...more };
      return ["timeToCover", working.timeToCover(plot), rates.timeToCover(plot)];
    }),
  ),
  ["treeRowVolume", working.treeRowVolume(canopy), rates.treeRowVolume(canopy)],
  ...[canopy, qty(9000, "m3/ha")].map((one): [string, WorkingLine[], Quantity] => {
    const dilute = { canopy: one, spray: qty(0.7, "gal/1000ft3") };
    return ["diluteRate", working.diluteRate(dilute), rates.diluteRate(dilute)];
  }),
  ...[
    { rowSpacing: qty(18, "ft"), plantSpacing: qty(3, "m") },
    { plants: 250, ground: groundArea(qty(0.4, "ha")) },
  ].map((trees): [string, WorkingLine[], Quantity] => {
    const given = { rate: qty(90, "gal/ac"), ...trees };
    return ["ratePerPlant", working.ratePerPlant(given), rates.ratePerPlant(given)];
  }),
  [
    "rateAtSpeed",
    working.rateAtSpeed({ rate: qty(20, "gal/ac"), speed: qty(3, "mph"), newSpeed: qty(4, "km/h") }),
    rates.rateAtSpeed({ rate: qty(20, "gal/ac"), speed: qty(3, "mph"), newSpeed: qty(4, "km/h") }),
  ],
  [
    "catchRate at a speed",
    working.catchRate({ ...boom, speed: qty(3, "mph"), width: qty(20, "in") }),
    rates.catchRate({ ...boom, speed: qty(3, "mph"), width: qty(20, "in") }),
  ],
  ...[
    { used: qty(9, "oz"), swath: qty(2, "ft"), distance: qty(50, "ft") },
    { used: qty(300, "g"), area: { ...qty(3, "m2"), of: "treated" } as const },
    { used: qty(2, "oz"), rowLength: qty(80, "m") },
  ].map((test): [string, WorkingLine[], Quantity] => [
    "spreaderRate",
    working.spreaderRate(test),
    rates.spreaderRate(test),
  ]),
  ...[
    { target: qty(50, "kg/ha"), swath: qty(2, "ft"), distance: qty(50, "ft") },
    { target: qty(50, "kg/ha"), area: { ...qty(3, "m2"), of: "treated" } as const },
    { target: qty(8, "oz/1000ft"), rowLength: qty(80, "m") },
  ].map((aim): [string, WorkingLine[], Quantity] => [
    "spreaderCatch",
    working.spreaderCatch({ ...aim, directions: 2 } as rates.SpreaderCatchInput),
    rates.spreaderCatch({ ...aim, directions: 2 } as rates.SpreaderCatchInput),
  ]),
  ["checkSpreader", working.checkSpreader(spread), rates.checkSpreader(spread).deviation],
  ["directStripArea", working.directStripArea(pair), rates.directStripArea(pair)],
  [
    "directStripDistance",
    working.directStripDistance({ ...pair, width: qty(50, "cm") }),
    rates.directStripDistance({ ...pair, width: qty(50, "cm") }),
  ],
  [
    "treeRowRate without plants",
    working.treeRowRate({
      used: row.used,
      sides: 2,
      rowLength: row.rowLength,
      rowSpacing: row.rowSpacing,
    }),
    rates.treeRowRate({ ...row, sides: 2 }).perArea,
  ],
  ["treeRowRate", working.treeRowRate(row), rates.treeRowRate(row).perArea],
  [
    "handSprayRates on a plot",
    working.handSprayRates({ used: qty(40, "fl_oz"), area: { ...qty(3, "m2"), of: "treated" } }),
    rates.handSprayRates({ used: qty(40, "fl_oz"), area: { ...qty(3, "m2"), of: "treated" } })
      .perArea as Quantity,
  ],
  [
    "handSprayRates on a row",
    working.handSprayRates({
      used: qty(1, "gal"),
      rowLength: qty(60, "ft"),
      plantSpacing: qty(1, "m"),
      rowSpacing: qty(8, "ft"),
    }),
    rates.handSprayRates({ used: qty(1, "gal"), rowLength: qty(60, "ft"), rowSpacing: qty(8, "ft") })
      .perArea as Quantity,
  ],
  ...[noRate, noFlow, noSpeed, noWidth].map((input): [string, WorkingLine[], Quantity] => {
    const result = rates.solveOutput(input as never);
    return [`solveOutput ${result.found}`, working.solveOutput(input as never), result[result.found]];
  }),
  [
    "outputAtPressure",
    working.outputAtPressure({ ...pressed, newPressure: qty(2, "bar") }),
    rates.outputAtPressure({ ...pressed, newPressure: qty(2, "bar") }).output,
  ],
  [
    "pressureForOutput",
    working.pressureForOutput({ ...pressed, newOutput: qty(1, "L/min") }),
    rates.pressureForOutput({ ...pressed, newOutput: qty(1, "L/min") }).pressure,
  ],
  ["densityFactor", working.densityFactor(densities), rates.densityFactor(densities)],
  [
    "waterForSolution",
    working.waterForSolution({ solution: qty(20, "gal/ac"), ...densities }),
    rates.waterForSolution({ solution: qty(20, "gal/ac"), ...densities }),
  ],
  [
    "solutionForWater",
    working.solutionForWater({ water: qty(0.2, "gal/min"), ...densities }),
    rates.solutionForWater({ water: qty(0.2, "gal/min"), ...densities }),
  ],
  [
    "checkNozzles",
    working.checkNozzles({ ...boom, against: "others" }),
    rates.checkNozzles({ ...boom, against: "others" }).coefficientOfVariation,
  ],
  [
    "checkNozzles against a rated flow",
    working.checkNozzles({ ...boom, against: "rated", rated: qty(1.7, "L/min") }),
    rates.checkNozzles({ ...boom, against: "rated", rated: qty(1.7, "L/min") }).coefficientOfVariation,
  ],
  [
    "checkAgainstTarget",
    working.checkAgainstTarget({ rate: qty(20, "gal/ac"), target: qty(200, "L/ha") }),
    rates.checkAgainstTarget({ rate: qty(20, "gal/ac"), target: qty(200, "L/ha") }).deviation,
  ],
  ["whatChanged", working.whatChanged(record, today), rates.whatChanged(record, today).expected],
];

describe("the working of output-rate", () => {
  it("is true line by line and ends at what the function gives", () => {
    for (const [name, lines, result] of workings()) {
      expectLinesTrue(lines);
      expect(lines.at(-1)?.result, name).toEqual(result);
    }
  });

  it("has words for each line and each of its terms", () => {
    const lines = workings().flatMap(([, some]) => some);
    for (const line of lines.filter(({ id }) => id !== "units.convert")) {
      const words = OUTPUT_RATE_WORDS[line.id];
      expect(words, line.id).toBeDefined();
      for (const symbol of Object.keys(line.terms)) {
        expect(
          words?.terms[symbol] ?? words?.terms[symbol.replace(/\d+$/, "")],
          `${line.id} ${symbol}`,
        ).toBeDefined();
      }
    }
  });

  it("shows every formula that has words", () => {
    const shown = new Set(workings().flatMap(([, lines]) => lines.map(({ id }) => id)));
    expect(Object.keys(OUTPUT_RATE_WORDS).filter((id) => !shown.has(id))).toEqual([]);
  });

  it("has no line for a rate that is known already", () => {
    expect(working.rateOf(MEASUREMENTS.known)).toEqual([]);
  });

  it("has no line for changes that cannot be computed", () => {
    expect(working.whatChanged(record, { date: "2025-06-01", conditions: { operator: "Ana" } })).toEqual([]);
  });

  it("shows no more of a reading than its value and unit", () => {
    const terms = Object.values(MEASUREMENTS).flatMap((one) =>
      working.rateOf(one).flatMap((line) => Object.values(line.terms)),
    );
    for (const term of terms) if (typeof term !== "number") expect(term).not.toHaveProperty("uncertainty");
  });
});
