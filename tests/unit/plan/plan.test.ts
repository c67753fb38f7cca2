import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import { type MeasuringTool, suggestMeasures } from "../../../src/household/index.ts";
import { calibrationRecord } from "../../../src/output-rate/index.ts";
import { doseRequest } from "../../../src/plan/dose.ts";
import { type PlanInput, type Product, planApplication } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { QUIET, STRIP } from "../../helpers/jobs.ts";
import { expectRefused, refusal } from "../../helpers/refusal.ts";

const JOB: PlanInput = {
  plot: {
    kind: "row-bands",
    rows: 10,
    rowLength: qty(100, "ft"),
    bandWidth: qty(2, "ft"),
    rowSpacing: qty(4, "ft"),
  },
  calibration: { kind: "strip", used: qty(64, "fl_oz"), swath: qty(2, "ft"), distance: qty(544.5, "ft") },
  sprayer: { tank: qty(1, "gal") },
  products: [
    { name: "Product A", form: "liquid", rate: qty(2, "pt/ac") },
    { name: "Product B", form: "dry", rate: qty(16, "oz/ac") },
  ],
  tools: "us-spoons",
};

describe("planApplication", () => {
  it("follows one job by hand from plot to load (plane geometry and the definition of a rate)", () => {
    const plan = planApplication(JOB);
    // 10 rows × 100 ft × 2 ft = 2,000 ft² treated on 4,000 ft² of ground.
    expect(plan.area).toMatchObject({
      treated: { value: 2000, unit: "ft2", of: "treated" },
      ground: { value: 4000, unit: "ft2", of: "ground" },
      fraction: 0.5,
    });
    // 64 fl oz = 1/2 gal on 2 ft × 544.5 ft = 1,089 ft² = 1/40 ac is 20 gal/ac.
    expect(plan.rate).toEqual({ value: 20, unit: "gal/ac" });
    // 2,000 / 43,560 ac × 20 gal/ac = 40,000 / 43,560 gal = 0.918… gal: one load.
    expect(plan.carrier.sprayed.value).toBeCloseTo(40_000 / 43_560, 14);
    expect(plan.loads).toHaveLength(1);
    // 2 pt/ac = 32 fl oz/ac; 16 oz/ac.
    expect(plan.totals.products.map(({ amount }) => amount.unit)).toEqual(["fl_oz", "oz"]);
    expect(plan.totals.products[0]?.amount.value).toBeCloseTo((32 * 2000) / 43_560, 9);
    expect(plan.totals.products[1]?.amount.value).toBeCloseTo((16 * 2000) / 43_560, 9);
    expect(plan.leftover).toEqual({ carrier: { value: 0, unit: "gal" } });
  });

  it("treats all of a rectangle, and never the ground between bands", () => {
    const broadcast = planApplication({
      ...JOB,
      plot: { kind: "rectangle", length: qty(100, "ft"), width: qty(40, "ft") },
    });
    const banded = planApplication(JOB);
    expect(broadcast.area.ground).toMatchObject({ value: 4000 });
    expect(banded.area.ground).toMatchObject({ value: 4000 });
    expect(broadcast.carrier.sprayed.value).toBeCloseTo(2 * banded.carrier.sprayed.value, 12);
  });

  it("takes several plots in one job, in mixed units", () => {
    const plan = planApplication({
      ...JOB,
      plot: [
        { kind: "rectangle", length: qty(10, "m"), width: qty(10, "m") },
        { kind: "rectangle", length: qty(1000, "cm"), width: qty(20, "m") },
      ],
    });
    expect(plan.area.treated).toEqual({ value: 300, unit: "m2", of: "treated" });
    expect(plan.area.plots).toHaveLength(2);
  });

  it("mixes reserve and line volume at the strength of the rest, and says what is left and what it treats", () => {
    const plan = planApplication({
      ...JOB,
      sprayer: { tank: qty(1, "gal"), lineVolume: qty(12.8, "fl_oz") },
      reserve: { volume: qty(0.25, "gal") },
    });
    const { sprayed, total } = plan.carrier;
    expect(total.value).toBeCloseTo(sprayed.value + 0.1 + 0.25, 14);
    expect(plan.leftover.carrier.value).toBeCloseTo(0.35, 14);
    // 0.25 gal at 20 gal/ac treats 1/80 ac = 544.5 ft².
    expect(plan.leftover.area).toMatchObject({ unit: "ft2", of: "treated" });
    expect(plan.leftover.area?.value).toBeCloseTo(544.5, 9);
    for (const load of plan.loads) {
      expect((load.products[0]?.amount.value ?? 0) / load.carrier.value).toBeCloseTo(32 / 20, 9);
    }
  });

  it("parts the mix into equal loads where that is asked", () => {
    const plan = planApplication({ ...JOB, sprayer: { tank: qty(64, "fl_oz") }, split: "equal" });
    const [first, second] = plan.loads;
    expect(plan.loads).toHaveLength(2);
    expect(first?.carrier.value).toBeCloseTo(second?.carrier.value ?? 0, 10);
  });

  it("weighs a dry product also where the tools hold no scale, and says so", () => {
    const plan = planApplication(JOB);
    const dose = plan.loads[0]?.products[1]?.measured;
    expect(dose).toMatchObject({ ok: true, scaleAssumed: true });
    expect(plan.warnings.map(({ code }) => code)).toEqual(["scale-needed"]);
  });

  it("takes a rate per area of ground for all of the ground", () => {
    const calibration = {
      kind: "tree-row",
      used: qty(2, "gal"),
      sides: 2,
      rowLength: qty(100, "ft"),
      rowSpacing: qty(14, "ft"),
    } as const;
    const ground = { value: 5600, unit: "ft2", of: "ground" } as const;
    for (const plot of [
      { kind: "rectangle", length: qty(100, "ft"), width: qty(56, "ft") },
      { kind: "treated-area", treated: { ...ground, of: "treated" } },
      { kind: "treated-area", treated: { ...ground, of: "treated" }, ground },
      {
        kind: "tree-rows",
        rows: 4,
        rowLength: qty(100, "ft"),
        stripWidth: qty(7, "ft"),
        sides: 2,
        rowSpacing: qty(14, "ft"),
      },
    ] as const) {
      // Four rows of 2 gal each. Trees that fill their rows are no bands without a gap.
      const { carrier, warnings } = planApplication({ ...JOB, plot, calibration });
      expect(carrier.sprayed.value).toBeCloseTo(8, 9);
      expect(warnings.map(({ code }) => code)).not.toContain("bands-without-gap");
    }
  });

  it("measures with the tools as they are, also where their list has changed since the last plan", () => {
    const tools: MeasuringTool[] = [{ name: "jug", capacity: qty(1, "pt") }];
    const measured = (): boolean[] =>
      planApplication({ ...JOB, tools }).loads.flatMap(({ products }) =>
        products.map((one) => one.measured.ok),
      );
    expect(measured()).toEqual([false, true]);
    tools.push({ name: "dropper", capacity: qty(0.1, "mL") });
    tools.push({
      name: "syringe",
      capacity: qty(10, "mL"),
      graduation: qty(0.1, "mL"),
    });
    expect(measured()).toEqual([true, true]);
    tools.splice(0, 2, { name: "bucket", capacity: qty(1, "gal") });
    tools[1] = { name: "ladle", capacity: qty(3, "fl_oz") };
    expect(measured()).toEqual([false, true]);
  });

  it("warns once of a dose that the tools cannot measure, and changes no number for it", () => {
    const tools = [{ name: "jug", capacity: qty(1, "pt") }];
    const plan = planApplication({ ...JOB, tools });
    expect(plan.warnings).toContainEqual(
      expect.objectContaining({
        code: "dose-not-measurable",
        severity: "warning",
        path: "loads[0].products[0]",
      }),
    );
    expect(plan.loads[0]?.products[0]?.amount).toEqual(planApplication(JOB).loads[0]?.products[0]?.amount);
  });

  it("takes an area that only its kind says what it is of, and no shape too many", () => {
    const half = qty(0.5, "ac");
    const treated = (plot: object) => planApplication({ ...QUIET, plot } as PlanInput).area.treated.value;
    expect(treated({ kind: "ground-area", ground: half })).toBe(0.5);
    expect(treated({ kind: "treated-area", treated: half, ground: qty(1, "ac") })).toBe(0.5);
    const shape = { kind: "rectangle", length: qty(90, "ft"), width: qty(60, "ft") };
    expect(treated({ kind: "composite", add: [shape], subtract: [] })).toBe(5400);
    const many = Array.from({ length: 1001 }, () => shape);
    for (const shapes of [{ add: many }, { add: [shape], subtract: many }])
      expect(refusal(() => treated({ kind: "composite", ...shapes }))).toMatchObject({
        code: "out-of-range",
      });
  });

  it("refuses a day of spraying before the calibration", () => {
    const record = calibrationRecord({
      date: "2026-04-20",
      measurement: STRIP,
      conditions: { operator: "Robin" },
    });
    const calibration = { kind: "record", record } as const;
    const day = (date: string) => () =>
      planApplication({ ...QUIET, calibration, today: { date, conditions: { operator: "Robin" } } });
    expect(refusal(day("2026-04-19")).path).toBe("today.date");
    expect(day("2026-04-20")).not.toThrow();
  });

  it("asks for a stock solution only where the label permits one", () => {
    const kinds = (labelPermitsDilution?: boolean) => {
      const product = { name: "Product A", form: "liquid", rate: qty(0.5, "fl_oz/ac") } as const;
      const products = [
        { ...product, ...(labelPermitsDilution !== undefined && { labelPermitsDilution }) },
      ] as const;
      const { loads, input } = planApplication({ ...JOB, products });
      const [load] = loads;
      const [dose] = load?.products ?? [];
      if (load === undefined || dose === undefined) throw new Error("no dose");
      expect(dose.measured.ok).toBe(false);
      const request = doseRequest(dose.amount, input.products[0] as Product, input.tools, load.area);
      return suggestMeasures(request.input).map(({ kind }) => kind);
    };
    expect(kinds(true)).toContain("stock");
    for (const none of [kinds(false), kinds()]) expect(none).not.toContain("stock");
  });

  it("gives plain data, the same each time, with the input echoed and its default filled in", () => {
    const plan = planApplication(JOB);
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    expect(planApplication(JSON.parse(JSON.stringify(JOB)))).toEqual(plan);
    expect(plan.input).toEqual({ ...JOB, split: "full-then-part" });
    expect(plan.cautions.map(({ code }) => code)).toContain("label");
  });
});

describe("planApplication, given nothing for what may be left out", () => {
  it("plans as if it were not there", () => {
    const { input, ...plan } = planApplication({
      ...JOB,
      sprayer: { tank: qty(4, "gal"), lineVolume: null },
    } as never);
    const { input: same, ...without } = planApplication({ ...JOB, sprayer: { tank: qty(4, "gal") } });
    expect(plan).toEqual(without);
    expect(input.sprayer.tank).toEqual(same.sprayer.tank);
  });
});

describe("planApplication, given what cannot be", () => {
  const bad = (change: object): unknown => ({ ...JOB, ...change });
  const plot = (change: object): unknown => bad({ plot: { ...JOB.plot, ...change } });
  const strip = (change: object): unknown => bad({ calibration: { ...JOB.calibration, ...change } });
  const product = (change: object): unknown =>
    bad({ products: [JOB.products[1], { ...JOB.products[0], ...change }] });

  it.each<[string, unknown, ErrorCode, string]>([
    ["nothing", undefined, "missing", ""],
    ["text", "a job", "not-a-quantity", ""],
    ["no plot", bad({ plot: undefined }), "missing", "plot"],
    ["an empty list of plots", bad({ plot: [] }), "too-few", "plot"],
    ["a plot of an unknown kind", plot({ kind: "blob" }), "unknown-choice", "plot.kind"],
    ["a plot kind off the prototype", plot({ kind: "constructor" }), "unknown-choice", "plot.kind"],
    [
      "a row length as text",
      plot({ rowLength: { value: "100", unit: "ft" } }),
      "not-a-quantity",
      "plot.rowLength.value",
    ],
    ["a row length without a unit", plot({ rowLength: 100 }), "not-a-quantity", "plot.rowLength"],
    [
      "NaN for a row length",
      plot({ rowLength: { value: Number.NaN, unit: "ft" } }),
      "not-finite",
      "plot.rowLength.value",
    ],
    [
      "an unknown unit",
      plot({ rowLength: { value: 100, unit: "feet" } }),
      "unknown-unit",
      "plot.rowLength.unit",
    ],
    ["half a row", plot({ rows: 2.5 }), "out-of-range", "plot.rows"],
    ["a band wider than its spacing", plot({ bandWidth: qty(5, "ft") }), "conflict", "plot.bandWidth"],
    [
      "a second plot at fault",
      bad({ plot: [JOB.plot, { kind: "rectangle", length: qty(1, "ft") }] }),
      "missing",
      "plot[1].width",
    ],
    ["no calibration", bad({ calibration: null }), "missing", "calibration"],
    ["a weight used on the strip", strip({ used: qty(5, "oz") }), "wrong-dimension", "calibration.used"],
    ["nothing used on the strip", strip({ used: qty(0, "fl_oz") }), "out-of-range", "calibration.used"],
    ["a negative distance", strip({ distance: qty(-1, "ft") }), "out-of-range", "calibration.distance"],
    [
      "an infinite swath",
      strip({ swath: { value: Number.POSITIVE_INFINITY, unit: "ft" } }),
      "not-finite",
      "calibration.swath.value",
    ],
    ["no sprayer", bad({ sprayer: undefined }), "missing", "sprayer"],
    ["a tank of nothing", bad({ sprayer: { tank: qty(0, "gal") } }), "out-of-range", "sprayer.tank"],
    [
      "a fill over the tank",
      bad({ sprayer: { tank: qty(1, "gal"), workingFill: qty(2, "gal") } }),
      "conflict",
      "sprayer.workingFill",
    ],
    ["a reserve of 200 %", bad({ reserve: { percent: 200 } }), "out-of-range", "reserve.percent"],
    ["two reserves", bad({ reserve: { percent: 5, volume: qty(1, "gal") } }), "conflict", "reserve.volume"],
    ["an unknown split", bad({ split: "halves" }), "unknown-choice", "split"],
    ["no products", bad({ products: [] }), "too-few", "products"],
    ["products as an object", bad({ products: {} }), "not-a-quantity", "products"],
    ["a product without a name", product({ name: " " }), "missing", "products[1].name"],
    ["two products of one name", product({ name: "Product B" }), "conflict", "products[1].name"],
    ["a product of no form", product({ form: "gas" }), "unknown-choice", "products[1].form"],
    [
      "a weight rate for a liquid",
      product({ rate: qty(12, "oz/ac") }),
      "wrong-dimension",
      "products[1].rate",
    ],
    ["a rate of zero", product({ rate: qty(0, "pt/ac") }), "out-of-range", "products[1].rate"],
    ["a rate of no unit", product({ rate: { value: 2 } }), "missing", "products[1].rate.unit"],
    [
      "a rate per area of ground, for bands",
      bad({
        calibration: {
          kind: "hand",
          used: qty(1, "gal"),
          rowLength: qty(100, "ft"),
          rowSpacing: qty(4, "ft"),
        },
      }),
      "conflict",
      "calibration",
    ],
    [
      "the same from plants, for a part of the ground",
      bad({
        plot: { kind: "rectangle", length: qty(100, "ft"), width: qty(40, "ft"), fraction: 0.5 },
        calibration: {
          kind: "hand",
          used: qty(1, "gal"),
          plants: 50,
          plantSpacing: qty(2, "ft"),
          rowSpacing: qty(4, "ft"),
        },
      }),
      "conflict",
      "calibration",
    ],
    [
      "tree rows with their alleys, for strips along them",
      bad({
        plot: [
          { kind: "rectangle", length: qty(100, "ft"), width: qty(40, "ft") },
          { kind: "tree-rows", rowLengths: [qty(100, "ft")], stripWidth: qty(3, "ft"), sides: 2 },
        ],
        calibration: {
          kind: "tree-row",
          used: qty(2, "gal"),
          sides: 1,
          rowLength: qty(100, "ft"),
          rowSpacing: qty(14, "ft"),
        },
      }),
      "conflict",
      "calibration",
    ],
    ["no tools", bad({ tools: [] }), "too-few", "tools"],
    ["a scale alone, for a liquid", bad({ tools: "scales" }), "wrong-dimension", "tools"],
    ["an unknown set of tools", bad({ tools: "ladles" }), "unknown-choice", "tools"],
  ])("refuses %s and says where", (_, input, code, path) => {
    expectRefused(() => planApplication(input as PlanInput), code, path);
  });
});
