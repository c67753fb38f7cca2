import { describe, expect, it } from "vitest";
import { calibrationRecord } from "../../../src/output-rate/index.ts";
import { type PlanInput, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { QUIET, STRIP } from "../../helpers/jobs.ts";

const run = (ounces: number) => ({
  used: qty(ounces, "fl_oz"),
  swath: qty(4, "ft"),
  distance: qty(272.25, "ft"),
});
const conditions = { operator: "Robin", pressure: qty(40, "psi"), gear: "second" };
const record = calibrationRecord({ date: "2026-04-01", measurement: STRIP, conditions });
const rec = (change: object, date = "2026-04-20"): object => ({
  calibration: { kind: "record", record },
  today: { date, conditions: { ...conditions, ...change } },
});
const flow = { kind: "flow", flow: qty(1, "gal/min"), width: qty(10, "ft") } as const;
const named = (name: string, form: string, rate: object): object => ({ products: [{ name, form, rate }] });

// What a sheet prints: each says what was seen and what to do, with the figures beside it.
describe("a plan warns, word for word, of", () => {
  it.each<[string, object, object[]]>([
    [
      "a band's width and all the ground",
      { calibration: { ...STRIP, swath: qty(30, "in"), distance: qty(435.6, "ft") } },
      [
        {
          code: "all-ground-treated",
          severity: "warning",
          path: "plot",
          message:
            "All 5400 sq ft of ground is taken as treated, and the calibration sprayed a width of 30 in as in a band. Where only bands, beds or spots are sprayed, tell the plot so; where passes are laid side by side, give the plot a sprayed fraction of 1 to say so.",
          figures: {
            treated: { value: 5400, unit: "ft2", of: "treated" },
            ground: { value: 5400, unit: "ft2", of: "ground" },
            width: { value: 30, unit: "in" },
          },
        },
      ],
    ],
    [
      "a strip as wide as the rows are apart, for bands",
      {
        plot: {
          kind: "row-bands",
          rows: 9,
          rowLength: qty(90, "ft"),
          bandWidth: qty(2, "ft"),
          rowSpacing: qty(5, "ft"),
        },
        calibration: { ...STRIP, swath: qty(60, "in"), distance: qty(217.8, "ft") },
      },
      [
        {
          code: "swath-is-spacing",
          severity: "warning",
          path: "plot",
          message:
            "The calibration's width of 60 in is the distance from row to row (5 ft), and what is treated is 2 ft wide. Where only that was wetted on the strip, tell its width as the swath: the mix is too strong otherwise.",
          figures: {
            width: { value: 60, unit: "in" },
            spacing: { value: 5, unit: "ft" },
            band: { value: 2, unit: "ft" },
          },
        },
      ],
    ],
    [
      "runs as wide as a band and all the ground",
      {
        calibration: {
          kind: "strip-runs",
          runs: [run(64), run(64)].map((r) => ({ ...r, swath: qty(30, "in"), distance: qty(435.6, "ft") })),
        },
      },
      [
        {
          code: "all-ground-treated",
          severity: "warning",
          path: "plot",
          message:
            "All 5400 sq ft of ground is taken as treated, and the calibration sprayed a width of 30 in as in a band. Where only bands, beds or spots are sprayed, tell the plot so; where passes are laid side by side, give the plot a sprayed fraction of 1 to say so.",
          figures: {
            treated: { value: 5400, unit: "ft2", of: "treated" },
            ground: { value: 5400, unit: "ft2", of: "ground" },
            width: { value: 30, unit: "in" },
          },
        },
      ],
    ],
    [
      "too little to the area",
      { calibration: { kind: "known", rate: qty(2, "gal/ac") } },
      [
        {
          code: "rate-implausible",
          severity: "warning",
          path: "calibration",
          message:
            "The sprayer puts out 2 gal/ac, less than such sprayers do (5 gal/ac). Look at the units of the strip and the refill, and calibrate again.",
          figures: { rate: { value: 2, unit: "gal/ac" }, limit: { value: 5, unit: "gal/ac" } },
        },
      ],
    ],
    [
      "too much to the area",
      { calibration: { kind: "known", rate: qty(250, "gal/ac") } },
      [
        {
          code: "rate-implausible",
          severity: "warning",
          path: "calibration",
          message:
            "The sprayer puts out 250 gal/ac, more than such sprayers do (200 gal/ac). Look at the units of the strip and the refill, and calibrate again.",
          figures: { rate: { value: 250, unit: "gal/ac" }, limit: { value: 200, unit: "gal/ac" } },
        },
        {
          code: "mix-over-tank",
          severity: "note",
          path: "sprayer.tank",
          message:
            "The mix, 30.99 gal, is more than the tank of 4 gal holds: mix it in 8 loads, each with its own product.",
          figures: {
            total: { value: 30.991735537190085, unit: "gal" },
            tank: { value: 4, unit: "gal" },
            loads: 8,
          },
        },
      ],
    ],
    [
      "a crawl",
      { calibration: { ...flow, speed: qty(0.5, "mph") } },
      [
        {
          code: "speed-implausible",
          severity: "warning",
          path: "calibration",
          message: "The speed is 0.5 mph, slower than can be held evenly (1 mph). Time the distance again.",
          figures: { speed: { value: 0.5, unit: "mph" }, limit: { value: 1, unit: "mph" } },
        },
        {
          code: "mix-over-tank",
          severity: "note",
          path: "sprayer.tank",
          message:
            "The mix, 12.27 gal, is more than the tank of 4 gal holds: mix it in 4 loads, each with its own product.",
          figures: {
            total: { value: 12.272727272727273, unit: "gal" },
            tank: { value: 4, unit: "gal" },
            loads: 4,
          },
        },
        {
          code: "last-load-small",
          severity: "warning",
          path: "loads[3]",
          message:
            "The last load is only 0.2727 gal, which a pump may not draw and small doses are measured badly for. Part the mix into equal loads.",
          figures: {
            last: { value: 0.2727272727, unit: "gal" },
            full: { value: 4, unit: "gal" },
            percent: 6.8181818175,
          },
        },
        {
          code: "dose-not-measurable",
          severity: "warning",
          path: "loads[3].products[0]",
          message: "Product A: These tools can't measure 0.0882 fl oz within 5% (closest: 5.5% under).",
          figures: { amount: { value: 0.08815427, unit: "fl_oz" } },
        },
      ],
    ],
    [
      "a run",
      { calibration: { ...flow, speed: qty(8, "mph") } },
      [
        {
          code: "speed-implausible",
          severity: "warning",
          path: "calibration",
          message: "The speed is 8 mph, faster than can be held evenly (5 mph). Time the distance again.",
          figures: { speed: { value: 8, unit: "mph" }, limit: { value: 5, unit: "mph" } },
        },
      ],
    ],
    [
      "marks too coarse for the strip",
      { calibration: { ...STRIP, used: { ...qty(64, "fl_oz"), resolution: qty(4, "fl_oz") } } },
      [
        {
          code: "strip-too-short",
          severity: "warning",
          path: "calibration.used",
          message:
            "One mark of the measure is 6.25 % of the 64 fl oz used on the strip. Spray a longer strip, or refill with a finer measure.",
          figures: {
            used: { value: 64, unit: "fl_oz", resolution: { value: 4, unit: "fl_oz" } },
            resolution: { value: 4, unit: "fl_oz" },
            percent: 6.25,
          },
        },
      ],
    ],
    [
      "two runs that differ",
      { calibration: { kind: "strip-runs", runs: [run(64), run(80)] } },
      [
        {
          code: "runs-disagree",
          severity: "warning",
          path: "calibration.runs",
          message:
            "The runs differ from one another by more than 5 %: from 20 gal/ac to 25 gal/ac. Walk them again.",
          figures: {
            lowest: { value: 20, unit: "gal/ac" },
            highest: { value: 25, unit: "gal/ac" },
            limit: { value: 5, unit: "%" },
          },
        },
      ],
    ],
    [
      "one run of three that differs",
      { calibration: { kind: "strip-runs", runs: [run(64), run(80), run(65)] } },
      [
        {
          code: "runs-disagree",
          severity: "warning",
          path: "calibration.runs[1]",
          message:
            "The runs differ from one another by more than 5 %: from 20 gal/ac to 25 gal/ac. Run 2 stands out: walk it again.",
          figures: {
            lowest: { value: 20, unit: "gal/ac" },
            highest: { value: 25, unit: "gal/ac" },
            limit: { value: 5, unit: "%" },
          },
        },
      ],
    ],
    [
      "a first run that took the most",
      { calibration: { kind: "strip-runs", runs: [run(80), run(64), run(65)] } },
      [
        {
          code: "runs-disagree",
          severity: "warning",
          path: "calibration.runs[0]",
          message:
            "The runs differ from one another by more than 5 %: from 20 gal/ac to 25 gal/ac. Run 1 stands out: walk it again. It is the first and took the most, as where hoses and boom were empty: fill them before the start.",
          figures: {
            lowest: { value: 20, unit: "gal/ac" },
            highest: { value: 25, unit: "gal/ac" },
            limit: { value: 5, unit: "%" },
          },
        },
      ],
    ],
    [
      "hoses that hold much of what the strip used",
      { sprayer: { tank: qty(4, "gal"), lineVolume: qty(6.4, "fl_oz") } },
      [
        {
          code: "lines-uncharged",
          severity: "note",
          path: "calibration.used",
          message:
            "Hoses and boom hold 6.4 fl oz, which is 10 % of the 64 fl oz used on the strip. Had they been empty at the start, the rate would be told too high and the mix made too weak: fill them first, walk a second run, and give both.",
          figures: { used: { value: 64, unit: "fl_oz" }, lines: { value: 6.4, unit: "fl_oz" }, percent: 10 },
        },
      ],
    ],
    [
      "another operator",
      rec({ operator: "Kim" }),
      [
        {
          code: "calibration-stale",
          severity: "warning",
          path: "calibration",
          message: "Since the calibration these changed: the operator. Calibrate again.",
          figures: { rate: { value: 20, unit: "gal/ac" }, expected: { value: 20, unit: "gal/ac" } },
        },
      ],
    ],
    [
      "another operator, gear and pressure",
      rec({ operator: "Kim", gear: "third", pressure: qty(10, "psi") }),
      [
        {
          code: "calibration-stale",
          severity: "warning",
          path: "calibration",
          message:
            "Since the calibration these changed: the operator, the pressure, the gear. The rate to expect is 10 gal/ac and not 20 gal/ac. Calibrate again.",
          figures: { rate: { value: 20, unit: "gal/ac" }, expected: { value: 10, unit: "gal/ac" } },
        },
      ],
    ],
    [
      "an old calibration",
      rec({}, "2026-08-20"),
      [
        {
          code: "calibration-old",
          severity: "warning",
          path: "calibration",
          message: "The calibration is 141 days old, and nozzles wear: calibrate again.",
          figures: { age: 141, limit: 90 },
        },
      ],
    ],
    [
      "a label that allows less",
      {
        products: [
          {
            name: "Product A",
            form: "liquid",
            rate: qty(2, "pt/ac"),
            label: { max: qty(1.5, "pt/ac"), leastCarrier: qty(25, "gal/ac") },
          },
        ],
      },
      [
        {
          code: "rate-over-max",
          severity: "refusal",
          path: "products[0].rate",
          message:
            "Product A: The rate is 2 pt/ac, over the label's highest of 1.5 pt/ac: use no more than the label allows.",
          figures: { rate: { value: 2, unit: "pt/ac" }, max: { value: 1.5, unit: "pt/ac" } },
        },
        {
          code: "carrier-under-least",
          severity: "refusal",
          path: "calibration",
          message:
            "Product A: The sprayer puts out 20 gal/ac, under the label's least of 25 gal/ac: slow down, or fit larger nozzles, and calibrate again.",
          figures: { carrierRate: { value: 20, unit: "gal/ac" }, least: { value: 25, unit: "gal/ac" } },
        },
      ],
    ],
    [
      "a liquid named with ounces",
      named("Product A, 8 oz bottle", "liquid", qty(2, "pt/ac")),
      [
        {
          code: "ounces-confusable",
          severity: "note",
          path: "products[0].name",
          message:
            "Product A, 8 oz bottle has ounces in its name. It is planned in ounces of fluid (fl_oz), which are not ounces of weight: see which the label means.",
          figures: {},
        },
      ],
    ],
    [
      "a dry product named with ounces",
      { ...named("Product A, 1 ounce bags", "dry", qty(20, "oz/ac")), tools: "us-scales" },
      [
        {
          code: "ounces-confusable",
          severity: "note",
          path: "products[0].name",
          message:
            "Product A, 1 ounce bags has ounces in its name. It is planned in ounces of weight (oz), which are not ounces of fluid: see which the label means.",
          figures: {},
        },
      ],
    ],
    [
      "a small last load",
      { sprayer: { tank: qty(2.4, "gal") } },
      [
        {
          code: "mix-over-tank",
          severity: "note",
          path: "sprayer.tank",
          message:
            "The mix, 2.479 gal, is more than the tank of 2.4 gal holds: mix it in 2 loads, each with its own product.",
          figures: {
            total: { value: 2.479338842975207, unit: "gal" },
            tank: { value: 2.4, unit: "gal" },
            loads: 2,
          },
        },
        {
          code: "last-load-small",
          severity: "warning",
          path: "loads[1]",
          message:
            "The last load is only 0.07934 gal, which a pump may not draw and small doses are measured badly for. Part the mix into equal loads.",
          figures: {
            last: { value: 0.07933884298, unit: "gal" },
            full: { value: 2.4, unit: "gal" },
            percent: 3.3057851241666674,
          },
        },
      ],
    ],
    [
      "water without product",
      { addedWater: qty(1, "gal") },
      [
        {
          code: "water-without-product",
          severity: "warning",
          path: "addedWater",
          message:
            "1 gal of water without product leaves the mix at 71.26 % of its strength, so the plot gets too little. Add product for the water as well, or leave the water out.",
          figures: {
            strength: { value: 71.25890736342043, unit: "%" },
            weakBy: { value: 28.74109263657957, unit: "%" },
          },
        },
      ],
    ],
    ["no water added", { addedWater: qty(0, "gal") }, []],
    [
      "a dose the tools cannot measure",
      { tools: [{ name: "jug", capacity: qty(1, "pt") }] },
      [
        {
          code: "dose-not-measurable",
          severity: "warning",
          path: "loads[0].products[0]",
          message:
            "Product A: 3.97 fl oz is too small to measure with these tools: the least they measure is 1 pt.",
          figures: { amount: { value: 3.9669421487, unit: "fl_oz" } },
        },
      ],
    ],
    [
      "a dry product and no scale",
      named("Product B", "dry", qty(20, "oz/ac")),
      [
        {
          code: "scale-needed",
          severity: "note",
          path: "tools",
          message:
            "Product B is dry and the tools hold no scale: weigh it, a spoon does not measure a weight.",
          figures: { amount: { value: 2.4793388429, unit: "oz" } },
        },
      ],
    ],
  ])("%s", (_, change, warnings) => {
    expect(planApplication({ ...QUIET, ...change } as PlanInput).warnings).toEqual(warnings);
  });
});
