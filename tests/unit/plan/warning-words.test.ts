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
describe("more mix than the tank is filled with", () => {
  it("is a note, by the fill that was entered", () => {
    // 5,400 sq ft at 20 gal/ac are 2.48 gal.
    const { warnings } = planApplication({
      ...QUIET,
      sprayer: { tank: qty(4, "gal"), workingFill: qty(2, "gal") },
    });
    expect(warnings.find(({ code }) => code === "mix-over-tank")?.message).toBe(
      "You need 2.48 gal of mix and fill the tank to 2 gal: mix 2 loads and measure product for each.",
    );
  });
});

describe("a plan warns, word for word, of", () => {
  it("a tool that is filled so often that one loses count, in each load", () => {
    // 1.01 pt/ac on 5,400 sq ft: 2.003 fl oz, 12.02 teaspoons.
    const { warnings, loads } = planApplication({
      ...QUIET,
      products: [{ name: "Product A", form: "liquid", rate: qty(1.01, "pt/ac") }],
      tools: [{ name: "blue scoop", capacity: qty(1, "tsp") }],
    });
    expect(loads).toHaveLength(1);
    expect(warnings).toEqual([
      {
        code: "long-count",
        key: "long-count",
        severity: "note",
        message:
          "Product A: this dose fills the blue scoop 12 times. It's easy to lose count: use a larger tool.",
        path: "loads[0].products[0]",
        figures: { product: "Product A", count: 12, tool: "blue scoop" },
      },
    ]);
    // Of several loads the first that is counted so long is named: beside another warning "this dose" could be of any.
    const several = planApplication({
      size: { kind: "count", count: qty(300, "pot"), each: qty(4, "fl_oz/pot") },
      sprayer: { tank: qty(720, "fl_oz") },
      products: [{ name: "Product B", form: "liquid", rate: qty(5, "mL/pot") }],
      tools: "syringes",
    }).warnings.map(({ key, message }) => [key, message]);
    expect(several).toContainEqual([
      "long-count-load",
      "Product B: the dose of load 2 fills the 50 mL syringe 12 times. It's easy to lose count: use a larger tool.",
    ]);
  });

  it("a strip as wide as several rows: it matches nothing", () => {
    const rows = { kind: "row-bands", rows: 9, rowLength: qty(90, "ft"), rowSpacing: qty(3, "ft") } as const;
    const said = (input: Partial<PlanInput>) =>
      planApplication({ ...QUIET, ...input })
        .warnings.filter(({ code }) => code === "swath-is-spacing")
        .map(({ key, message }) => [key, message]);
    const wide = { ...STRIP, swath: qty(18, "ft"), distance: qty(60.5, "ft") };
    expect(said({ plot: { ...rows, bandWidth: qty(18, "in") }, calibration: wide })).toEqual([
      [
        "swath-is-spacings-strong",
        "The strip is 18 ft wide, but one pass treats 18 in. If only 18 in was sprayed, enter that, or the mix is 12 times too strong.",
      ],
    ]);
    const narrow = { ...STRIP, swath: qty(6, "ft"), distance: qty(181.5, "ft") };
    const sprayer = { tank: qty(20, "gal"), rowsPerPass: 4 };
    expect(said({ plot: { ...rows, bandWidth: qty(2, "ft") }, calibration: narrow, sprayer })).toEqual([
      [
        "swath-is-spacings-weak",
        "The strip is 6 ft wide, but one pass treats 8 ft. If only 8 ft was sprayed, enter that, or the mix is 1.3 times too weak.",
      ],
    ]);
  });

  it("a run that stands out, where the first took the most and another is further off", () => {
    const said = (ounces: readonly number[]) =>
      planApplication({ ...QUIET, calibration: { kind: "strip-runs", runs: ounces.map(run) } }).warnings.map(
        ({ key, path }) => [key, path],
      );
    expect(said([70, 66, 58])).toEqual([["runs-disagree-one", "calibration.runs[2]"]]);
    expect(said([80, 60, 58])).toEqual([["runs-disagree-first", "calibration.runs[0]"]]);
  });

  it("mix that isn't meant for the plot", () => {
    const said = (change: Partial<PlanInput>) =>
      planApplication({ ...QUIET, ...change })
        .warnings.filter(({ code }) => code === "reserve-large" || code === "lines-large")
        .map(({ code, severity, path, message, figures }) => [code, severity, path, message, figures]);
    // 5,400 ft² at 20 gal/ac take 2.479 gal: 10 gal to spare are 403% of that.
    expect(said({ reserve: { volume: qty(10, "gal") } })).toEqual([
      [
        "reserve-large",
        "warning",
        "reserve",
        "The extra mix is 10 gal for a job that takes 2.48 gal: all of it would be left over. Check the extra mix and its unit.",
        expect.objectContaining({ percent: { value: 403, unit: "%" } }),
      ],
    ]);
    // Nobody entered extra mix: the tank's mark is where it comes from, or the fill.
    const marks = [
      "To reach the tank's mark, the extra mix is 1.52 gal for a job that takes 2.48 gal. Check the marks or fills, or use a smaller tank.",
      expect.objectContaining({ percent: { value: 61, unit: "%" } }),
    ];
    expect(said({ sprayer: { tank: qty(4, "gal"), marks: qty(4, "gal") } })).toEqual([
      ["reserve-large", "warning", "sprayer.marks", ...marks],
    ]);
    expect(said({ split: { fills: [qty(4, "gal")] } })).toEqual([
      ["reserve-large", "warning", "split", ...marks],
    ]);
    expect(
      said({ sprayer: { tank: qty(8, "gal"), marks: qty(8, "gal") }, reserve: { percent: 60 } }),
    ).toEqual([expect.arrayContaining(["reserve"])]);
    expect(said({ sprayer: { tank: qty(4, "gal"), lineVolume: qty(2, "gal") } })).toEqual([
      [
        "lines-large",
        "warning",
        "sprayer.lineVolume",
        "The hose and boom hold 2 gal, which is 50% of the 4 gal tank. Check that number and its unit.",
        { lines: qty(2, "gal"), tank: qty(4, "gal"), percent: { value: 50, unit: "%" } },
      ],
    ]);
  });

  it.each<[string, object, object[]]>([
    [
      "a band's width and all the ground",
      {
        calibration: { ...STRIP, swath: qty(30, "in"), distance: qty(435.6, "ft") },
        sprayer: { tank: qty(4, "gal"), rowsPerPass: 1 },
      },
      [
        {
          code: "all-ground-treated",
          key: "all-ground-treated",
          severity: "warning",
          path: "plot",
          message:
            "All 5,400 sq ft counts as treated, but your strip was only 30 in wide, like a band. Choose bands, beds or spots, or whole block if you spray it all.",
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
          key: "swath-is-spacing-strong",
          severity: "warning",
          path: "calibration.swath",
          message:
            "The strip's 60 in matches the row or bed spacing, but one pass treats 2 ft. If only 2 ft was sprayed, enter that, or the mix is 2.5 times too strong.",
          figures: {
            width: { value: 60, unit: "in" },
            pass: { value: 2, unit: "ft" },
            band: { value: 2, unit: "ft" },
            times: 2.5,
            spacing: { value: 5, unit: "ft" },
          },
        },
      ],
    ],
    [
      "a strip as wide as one row is from the next, where one pass sprays the bands of three",
      {
        plot: {
          kind: "row-bands",
          rows: 9,
          rowLength: qty(90, "ft"),
          bandWidth: qty(4, "ft"),
          rowSpacing: qty(5, "ft"),
        },
        calibration: { ...STRIP, swath: qty(60, "in"), distance: qty(217.8, "ft") },
        sprayer: { tank: qty(20, "gal"), rowsPerPass: 3 },
      },
      [
        {
          code: "swath-is-spacing",
          key: "swath-is-spacing-weak",
          severity: "warning",
          path: "calibration.swath",
          message:
            "The strip's 60 in matches the row or bed spacing, but one pass treats 12 ft. If only 12 ft was sprayed, enter that, or the mix is 2.4 times too weak.",
          figures: {
            width: { value: 60, unit: "in" },
            pass: { value: 12, unit: "ft" },
            band: { value: 4, unit: "ft" },
            times: 2.4,
            spacing: { value: 5, unit: "ft" },
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
        sprayer: { tank: qty(4, "gal"), rowsPerPass: 1 },
      },
      [
        {
          code: "all-ground-treated",
          key: "all-ground-treated",
          severity: "warning",
          path: "plot",
          message:
            "All 5,400 sq ft counts as treated, but your strip was only 30 in wide, like a band. Choose bands, beds or spots, or whole block if you spray it all.",
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
          key: "rate-low",
          severity: "warning",
          path: "calibration",
          message:
            "The output rate is 2 gal/ac, less than usual for backpacks and small booms (5 gal/ac or more). Check the units, then calibrate again.",
          figures: { rate: { value: 2, unit: "gal/ac" }, limit: { value: 5, unit: "gal/ac" } },
        },
        {
          code: "strength-unusual",
          key: "strength-unusual",
          severity: "warning",
          path: "products[0].rate",
          message:
            "Product A: The mix is 12.5% product, and labels rarely ask for more than 10%. Check the label rate, its unit and the output rate.",
          figures: {
            strength: { value: 12.5, unit: "%" },
            limit: { value: 10, unit: "%" },
            product: "Product A",
          },
        },
      ],
    ],
    [
      "too much to the area",
      { calibration: { kind: "known", rate: qty(250, "gal/ac") } },
      [
        {
          code: "rate-implausible",
          key: "rate-high",
          severity: "warning",
          path: "calibration",
          message:
            "The output rate is 250 gal/ac, more than usual for a broadcast spray (up to 200 gal/ac). Check the units of the calibration, and the kind of spraying.",
          figures: {
            rate: { value: 250, unit: "gal/ac" },
            limit: { value: 200, unit: "gal/ac" },
            application: "broadcast",
          },
        },
        {
          code: "mix-over-tank",
          key: "mix-over-tank",
          severity: "note",
          path: "sprayer.tank",
          message:
            "You need 31 gal of mix and the tank holds 4 gal: mix 8 loads and measure product for each.",
          figures: {
            total: { value: 31, unit: "gal" },
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
          key: "speed-low",
          severity: "warning",
          path: "calibration",
          message: "The speed is 0.5 mph, slower than a steady walk (1 mph). Time the distance again.",
          figures: { speed: { value: 0.5, unit: "mph" }, limit: { value: 1, unit: "mph" } },
        },
        {
          code: "mix-over-tank",
          key: "mix-over-tank",
          severity: "note",
          path: "sprayer.tank",
          message:
            "You need 12.3 gal of mix and the tank holds 4 gal: mix 4 loads and measure product for each.",
          figures: {
            total: { value: 12.3, unit: "gal" },
            tank: { value: 4, unit: "gal" },
            loads: 4,
          },
        },
        {
          code: "last-load-small",
          key: "last-load-small",
          severity: "warning",
          path: "loads[3]",
          message:
            "The last load is only 35 fl oz: hard to measure for, and the pump may not pick it all up. Split the mix into equal loads.",
          figures: {
            last: { value: 35, unit: "fl_oz" },
            full: { value: 4, unit: "gal" },
            percent: { value: 6.8, unit: "%" },
          },
        },
        {
          code: "dose-not-measurable",
          key: "closest-under",
          severity: "warning",
          path: "loads[3].products[0]",
          message:
            "Product A: These tools can't measure 0.0881 fl oz within 5% (closest: 5.5% under). Use finer tools, or dilute it first if the label allows.",
          figures: {
            amount: { value: 0.0881, unit: "fl_oz" },
            limit: { value: 5, unit: "%" },
            off: { value: 5.5, unit: "%" },
            product: "Product A",
          },
        },
      ],
    ],
    [
      "a run",
      { calibration: { ...flow, speed: qty(8, "mph") } },
      [
        {
          code: "speed-implausible",
          key: "speed-high",
          severity: "warning",
          path: "calibration",
          message: "The speed is 8 mph, faster than a steady walk (5 mph). Time the distance again.",
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
          key: "strip-too-short",
          severity: "warning",
          path: "calibration.used",
          message:
            "Your jug is marked every 4 fl oz, which is 6.3% of the 64 fl oz used. Use a longer strip or a finer jug.",
          figures: {
            used: { value: 64, unit: "fl_oz", resolution: { value: 4, unit: "fl_oz" } },
            resolution: { value: 4, unit: "fl_oz" },
            percent: { value: 6.3, unit: "%" },
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
          key: "runs-disagree",
          severity: "warning",
          path: "calibration.runs",
          message: "The runs differ by more than 5%: 20 gal/ac to 25 gal/ac. Repeat the runs.",
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
          key: "runs-disagree-one",
          severity: "warning",
          path: "calibration.runs[1]",
          message: "The runs differ by more than 5%: 20 gal/ac to 25 gal/ac. Repeat run 2, which stands out.",
          figures: {
            lowest: { value: 20, unit: "gal/ac" },
            highest: { value: 25, unit: "gal/ac" },
            limit: { value: 5, unit: "%" },
            run: 2,
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
          key: "runs-disagree-first",
          severity: "warning",
          path: "calibration.runs[0]",
          message:
            "The runs differ by over 5% (20 gal/ac to 25 gal/ac), and the first used the most. If the hose and boom started empty, fill them and repeat that run.",
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
          key: "lines-uncharged",
          severity: "note",
          path: "calibration.used",
          message:
            "The hose and boom hold 6.4 fl oz, 10% of the 64 fl oz used. If they started empty, the mix will be too weak: fill them and repeat the strip.",
          figures: {
            used: { value: 64, unit: "fl_oz" },
            lines: { value: 6.4, unit: "fl_oz" },
            percent: { value: 10, unit: "%" },
          },
        },
      ],
    ],
    [
      "another operator",
      rec({ operator: "Kim" }),
      [
        {
          code: "calibration-stale",
          key: "calibration-stale",
          severity: "warning",
          path: "calibration",
          message: "Changed since calibration: the operator. Calibrate again.",
          figures: {
            rate: { value: 20, unit: "gal/ac" },
            expected: { value: 20, unit: "gal/ac" },
            changed: ["operator"],
          },
        },
      ],
    ],
    [
      "another operator, gear and pressure",
      rec({ operator: "Kim", gear: "third", pressure: qty(10, "psi") }),
      [
        {
          code: "calibration-stale",
          key: "calibration-stale-part",
          severity: "warning",
          path: "calibration",
          message:
            "Changed since calibration: the operator, the pressure, the gear. Calibrate again: counting only the pressure, expect 10 gal/ac instead of 20 gal/ac.",
          figures: {
            rate: { value: 20, unit: "gal/ac" },
            expected: { value: 10, unit: "gal/ac" },
            changed: ["operator", "pressure", "gear"],
            counted: ["pressure"],
          },
        },
      ],
    ],
    [
      "another pressure alone",
      rec({ pressure: qty(10, "psi") }),
      [
        {
          code: "calibration-stale",
          key: "calibration-stale-rate",
          severity: "warning",
          path: "calibration",
          message:
            "Changed since calibration: the pressure. Calibrate again: expect 10 gal/ac instead of 20 gal/ac.",
          figures: {
            rate: { value: 20, unit: "gal/ac" },
            expected: { value: 10, unit: "gal/ac" },
            changed: ["pressure"],
          },
        },
      ],
    ],
    [
      "an old calibration",
      rec({}, "2026-08-20"),
      [
        {
          code: "calibration-old",
          key: "calibration-old",
          severity: "warning",
          path: "calibration",
          message: "The calibration is 141 days old, and nozzles wear. Calibrate again.",
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
          key: "rate-over-max",
          severity: "refusal",
          path: "products[0].rate",
          message:
            "Product A: The rate of 2 pt/ac is over the label maximum of 1.5 pt/ac. Use no more than the label allows.",
          figures: {
            rate: { value: 2, unit: "pt/ac" },
            max: { value: 1.5, unit: "pt/ac" },
            product: "Product A",
          },
        },
        {
          code: "carrier-under-least",
          key: "carrier-under-least",
          severity: "refusal",
          path: "calibration",
          message:
            "Product A: The sprayer puts out 20 gal/ac, below the label minimum of 25 gal/ac. Slow down or use larger nozzles, then recalibrate.",
          figures: {
            carrierRate: { value: 20, unit: "gal/ac" },
            least: { value: 25, unit: "gal/ac" },
            product: "Product A",
          },
        },
      ],
    ],
    [
      "a liquid named with ounces",
      named("Product A, 8 oz bottle", "liquid", qty(2, "pt/ac")),
      [
        {
          code: "ounces-confusable",
          key: "ounces-confusable-liquid",
          severity: "note",
          path: "products[0].name",
          message:
            "Product A, 8 oz bottle has ounces in its name and is planned in fluid ounces, not ounces by weight. Check which one the label means.",
          figures: { product: "Product A, 8 oz bottle" },
        },
      ],
    ],
    [
      "a dry product named with ounces",
      { ...named("Product A, 1 ounce bags", "dry", qty(20, "oz/ac")), tools: "us-scales" },
      [
        {
          code: "ounces-confusable",
          key: "ounces-confusable-dry",
          severity: "note",
          path: "products[0].name",
          message:
            "Product A, 1 ounce bags has ounces in its name and is planned in ounces by weight, not fluid ounces. Check which one the label means.",
          figures: { product: "Product A, 1 ounce bags" },
        },
      ],
    ],
    [
      "a small last load",
      { sprayer: { tank: qty(2.4, "gal") } },
      [
        {
          code: "mix-over-tank",
          key: "mix-over-tank",
          severity: "note",
          path: "sprayer.tank",
          message:
            "You need 2.48 gal of mix and the tank holds 2.4 gal: mix 2 loads and measure product for each.",
          figures: {
            total: { value: 2.48, unit: "gal" },
            tank: { value: 2.4, unit: "gal" },
            loads: 2,
          },
        },
        {
          code: "last-load-small",
          key: "last-load-small",
          severity: "warning",
          path: "loads[1]",
          message:
            "The last load is only 10.2 fl oz: hard to measure for, and the pump may not pick it all up. Split the mix into equal loads.",
          figures: {
            last: { value: 10.2, unit: "fl_oz" },
            full: { value: 2.4, unit: "gal" },
            percent: { value: 3.3, unit: "%" },
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
          key: "water-without-product",
          severity: "warning",
          path: "addedWater",
          message:
            "Adding 1 gal of water without product weakens the mix to 71.3% strength: the plot is under-dosed. Add product for that water too, or leave the water out.",
          figures: {
            water: { value: 1, unit: "gal" },
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
          key: "amount-too-small-other",
          severity: "warning",
          path: "loads[0].products[0]",
          message:
            "Product A: 3.96 fl oz (0.247 pt) is too small to measure with these tools, which start at 1 pt. Use finer tools, or dilute it first if the label allows.",
          figures: {
            amount: { value: 3.96, unit: "fl_oz" },
            least: { value: 1, unit: "pt" },
            same: { value: 0.247, unit: "pt" },
            product: "Product A",
          },
        },
      ],
    ],
    [
      "a dry product and no scale",
      named("Product B", "dry", qty(20, "oz/ac")),
      [
        {
          code: "scale-needed",
          key: "scale-needed",
          severity: "note",
          path: "tools",
          message:
            "Product B is a dry product and no scale is listed. Weigh it on a scale that reads 0.1 g, don't spoon it.",
          figures: { product: "Product B", marks: { value: 0.1, unit: "g" } },
        },
      ],
    ],
    [
      "bands as wide as their rows are apart",
      {
        plot: {
          kind: "row-bands",
          rows: 9,
          rowLength: qty(90, "ft"),
          bandWidth: qty(4, "ft"),
          rowSpacing: qty(4, "ft"),
        },
      },
      [
        {
          code: "bands-without-gap",
          key: "bands-without-gap",
          severity: "warning",
          path: "plot",
          message:
            "Bands 4 ft wide and 4 ft apart leave no gap, so all of the ground is treated. Check the band's width, or choose whole block if you spray it all.",
          figures: { band: { value: 4, unit: "ft" }, spacing: { value: 4, unit: "ft" } },
        },
      ],
    ],
    ...(
      [
        [
          "a strip twice as wide as the band",
          2,
          "strong",
          "Your test strip was 4 ft wide, but one pass treats 2 ft: the mix may be 2 times too strong. Check both widths, and the rows or beds per pass.",
        ],
        [
          "a strip half as wide as the band",
          8,
          "weak",
          "Your test strip was 4 ft wide, but one pass treats 8 ft: the mix may be 2 times too weak. Check both widths, and the rows or beds per pass.",
        ],
      ] as const
    ).map(([what, width, way, message]): [string, object, object[]] => [
      what,
      {
        plot: {
          kind: "row-bands",
          rows: 9,
          rowLength: qty(90, "ft"),
          bandWidth: qty(width, "ft"),
          rowSpacing: qty(11, "ft"),
        },
      },
      [
        {
          code: "swath-is-not-band",
          key: `swath-is-not-band-${way}`,
          severity: "warning",
          path: "plot",
          message,
          figures: {
            width: { value: 4, unit: "ft" },
            pass: { value: width, unit: "ft" },
            band: { value: width, unit: "ft" },
            times: 2,
            spacing: { value: 11, unit: "ft" },
          },
        },
      ],
    ]),
    [
      "a calibration of some day, and no day of spraying",
      { calibration: { kind: "record", record } },
      [
        {
          code: "calibration-age-unknown",
          key: "calibration-age-unknown",
          severity: "note",
          path: "today",
          message:
            "This calibration is from 2026-04-01 and today's date is missing. Enter it, so its age and conditions can be checked.",
          figures: { date: "2026-04-01" },
        },
      ],
    ],
  ])("%s", (_, change, warnings) => {
    expect(planApplication({ ...QUIET, ...change } as PlanInput).warnings).toEqual(warnings);
  });
});
