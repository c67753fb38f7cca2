// A job that touches every module, told as text: the same to the last digit wherever it runs.
import { rectangleArea, rowBandsArea } from "swath-to-spoon/area";
import { geodesicArea } from "swath-to-spoon/area/geodesic";
import { doseTable, measureOut } from "swath-to-spoon/household";
import { checkNozzles, outputAtPressure, stripRuns } from "swath-to-spoon/output-rate";
import { planApplication } from "swath-to-spoon/plan";
import { boomWidth, passesOver } from "swath-to-spoon/swath";
import { diluteMix, splitLoads } from "swath-to-spoon/tank-mix";
import { convert, parseQuantity, qty } from "swath-to-spoon/units";
import { planApplication as planLines } from "swath-to-spoon/working";

const run = (ounces) => ({ used: qty(ounces, "fl_oz"), swath: qty(30, "in"), distance: qty(120, "ft") });
const bands = { rows: 14, rowLength: qty(160, "ft"), bandWidth: qty(30, "in"), rowSpacing: qty(5, "ft") };
const ring = [
  [10, 50],
  [10.001, 50],
  [10.001, 50.001],
  [10, 50.001],
  [10, 50],
];

function refusal(work) {
  try {
    return work();
  } catch ({ name, code, path, message }) {
    return { name, code, path, message };
  }
}

/** Everything that is worked out, as JSON; without what is read from text, where a runtime knows no languages. */
export function job({ text = true } = {}) {
  const plan = planApplication({
    plot: { kind: "row-bands", ...bands },
    calibration: { kind: "strip-runs", runs: [run(34), run(33.5), run(34.25)] },
    sprayer: { tank: qty(4, "gal"), workingFill: qty(3.5, "gal"), lineVolume: qty(10, "fl_oz") },
    reserve: { percent: 5 },
    products: [
      { name: "Product A", form: "liquid", rate: qty(1.5, "pt/ac"), label: { max: qty(2, "pt/ac") } },
      { name: "Product B", form: "dry", rate: qty(12, "oz/ac") },
    ],
    tools: "us-spoons",
  });
  return JSON.stringify({
    units: [convert(qty(1, "psi"), "kPa"), convert(qty(20, "gal/ac"), "L/ha")],
    typed: text ? parseQuantity("1 1/2 pt/ac") : null,
    area: [rectangleArea({ length: qty(90, "ft"), width: qty(60, "yd") }), rowBandsArea(bands)],
    // Sines and logarithms may differ in the last digit from engine to engine.
    earth: geodesicArea({ type: "Polygon", coordinates: [ring] }).ground.value.toPrecision(10),
    swath: [
      boomWidth({ nozzles: 7, nozzleSpacing: qty(20, "in") }),
      passesOver({ length: qty(200, "ft"), width: qty(50, "ft"), swath: qty(4, "ft") }),
    ],
    rates: [
      stripRuns({ runs: [run(34), run(36)] }),
      outputAtPressure({
        output: qty(0.4, "gal/min"),
        pressure: qty(40, "psi"),
        newPressure: qty(30, "psi"),
      }),
      checkNozzles({
        catches: [30, 31, 36].map((ounces) => qty(ounces, "fl_oz")),
        time: qty(1, "min"),
        against: "mean",
      }),
    ],
    mix: [
      splitLoads({ total: qty(3.3000000000000003, "gal"), tank: qty(1.1, "gal"), split: "full-then-part" }),
      diluteMix({ from: qty(4, "lb/gal"), to: qty(1, "lb/gal"), volume: qty(2, "gal") }),
    ],
    dose: [
      measureOut({ amount: qty(1.6, "tbsp"), tools: "us-cups-and-spoons", rule: "never-over" }),
      doseTable({
        rates: [qty(2, "pt/100gal")],
        sizes: [qty(3, "gal")],
        tools: "us-spoons",
        rule: "never-over",
      }),
    ],
    plan,
    working: planLines(plan),
    refused: refusal(() => convert(qty(5, "oz"), "fl_oz")),
  });
}
