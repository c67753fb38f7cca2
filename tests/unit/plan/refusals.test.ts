import { describe, expect, it } from "vitest";
import type { ErrorCode } from "../../../src/errors.ts";
import { planApplication, reconcile } from "../../../src/plan/index.ts";
import { qty } from "../../../src/units/index.ts";
import { refusal } from "../../helpers/refusal.ts";

const PRODUCT = { name: "Product A", form: "liquid", rate: qty(2, "L/ha") } as const;
const JOB = {
  plot: { kind: "rectangle", length: qty(100, "m"), width: qty(50, "m") },
  calibration: { kind: "known", rate: qty(200, "L/ha") },
  sprayer: { tank: qty(120, "L") },
  products: [PRODUCT],
  tools: "cylinders",
} as const;
const BANDS = { kind: "row-bands", rows: 4, rowLength: qty(50, "m"), bandWidth: qty(1, "m") } as const;
const UNEVEN = {
  kind: "row-bands",
  rowLengths: [qty(50, "m"), qty(30, "m")],
  bandWidth: qty(1, "m"),
} as const;
const treated = { value: 100, unit: "m2", of: "treated" };
const ground = { value: 100, unit: "m2", of: "ground" };

const plan = (change: object): unknown => planApplication({ ...JOB, ...change } as never);
const plot = (one: unknown): unknown => plan({ plot: one });
const product = (change: object): unknown => plan({ products: [{ ...PRODUCT, ...change }] });
const price = (one: object, currency?: object): unknown =>
  plan({ products: [{ ...PRODUCT, price: one }], ...(currency && { currency }) });
const PLAN = planApplication({ ...JOB, plot: [JOB.plot, JOB.plot], sprayer: { tank: qty(250, "L") } });
const done = (actual: unknown, from: unknown = PLAN): unknown => reconcile(from as never, actual as never);
const finished = "2026-05-02T22:30";
const left = qty(10, "L");
const record = (change: object, products: object = {}): unknown =>
  reconcile(planApplication({ ...JOB, products: [{ ...PRODUCT, ...products }] } as never), {
    finished,
    left,
    ...change,
  } as never);

// A form shows these sentences as they are: each says what was given, what is wanted, and what may be wrong.
describe("what plan says of input that cannot be", () => {
  it.each<[() => unknown, ErrorCode, string, string]>([
    [
      () => plot({ ...JOB.plot, length: qty(5, "gal") }),
      "wrong-dimension",
      "plot.length",
      "Given 5 gal, a volume; wanted a length, such as ft.",
    ],
    [
      () => plot([JOB.plot, { ...JOB.plot, width: qty(0, "m") }]),
      "out-of-range",
      "plot[1].width",
      "Given 0 m; wanted more than 0.",
    ],
    [
      () => plot({ kind: "treated-area", treated: ground }),
      "wrong-area",
      "plot.treated",
      "Given ground area; wanted an area that is not marked, or marked as treated. Only the part of the ground that is sprayed is treated.",
    ],
    [
      () => plot({ kind: "treated-area", treated, ground: { ...ground, value: 50 } }),
      "conflict",
      "plot.treated",
      "Given 100 m2 treated on 50 m2 of ground; wanted no more than the ground. A plot sprayed twice is two jobs on the same area.",
    ],
    [
      () => plot({ kind: "ground-area", ground: treated }),
      "wrong-area",
      "plot.ground",
      "Given treated area; wanted an area that is not marked, or marked as ground. Only the part of the ground that is sprayed is treated.",
    ],
    [
      () => plot({ kind: "composite", add: [] }),
      "too-few",
      "plot.add",
      "Given 0 of them; wanted at least 1.",
    ],
    [
      () => plot({ kind: "composite", add: [{ ...JOB.plot, length: qty(5, "gal") }] }),
      "wrong-dimension",
      "plot.add[0].length",
      "Given 5 gal, a volume; wanted a length, such as ft.",
    ],
    [
      () => plot({ kind: "composite", add: [{ kind: "blob" }] }),
      "unknown-choice",
      "plot.add[0].kind",
      'Given "blob"; wanted one of: rectangle, triangle, trapezoid, circle, ellipse, ring, sector, offsets, unequal-offsets, boundary.',
    ],
    [
      () => plot({ kind: "composite", add: [5] }),
      "not-a-quantity",
      "plot.add[0]",
      "Given 5; wanted an object with its fields.",
    ],
    [
      () =>
        plot({
          kind: "composite",
          add: [JOB.plot],
          subtract: [JOB.plot, { kind: "circle", diameter: qty(1, "gal") }],
        }),
      "wrong-dimension",
      "plot.subtract[1].diameter",
      "Given 1 gal, a volume; wanted a length, such as ft.",
    ],
    [
      () => plot({ kind: "composite", add: [JOB.plot], subtract: 5 }),
      "not-a-quantity",
      "plot.subtract",
      "Given 5; wanted a list.",
    ],
    [
      () => plot({ ...JOB.plot, fraction: 0 }),
      "out-of-range",
      "plot.fraction",
      "Given 0; wanted more than 0.",
    ],
    [
      () => plan({ calibration: { kind: "known", rate: qty(5, "gal") } }),
      "wrong-dimension",
      "calibration.rate",
      "5 gal is a volume. Enter a volume per area, such as 5 gal/ac.",
    ],
    [
      () =>
        plan({
          calibration: { kind: "known", rate: qty(1e75, "L/ha") },
          plot: { ...JOB.plot, length: qty(1e250, "m") },
        }),
      "not-finite",
      "plot",
      "Given 1e+75 L/ha on 4.999999999999999e+251 m2, which is too large to compute with.",
    ],
    [
      () => plan({ calibration: { kind: "known", rate: qty(1e308, "L/ha") } }),
      "not-finite",
      "calibration.rate",
      "This is too large to compute with.",
    ],
    [
      () => plan({ sprayer: { tank: qty(5, "kg") } }),
      "wrong-dimension",
      "sprayer.tank",
      "Given 5 kg, a weight; wanted a volume, such as L.",
    ],
    [
      () => plan({ sprayer: { tank: qty(5, "L"), workingFill: qty(6, "L") } }),
      "conflict",
      "sprayer.workingFill",
      "Given 6 L in a tank of 5 L; wanted no more than the tank holds.",
    ],
    [
      () => plan({ sprayer: { tank: qty(120, "L"), leastLoad: qty(121, "L") } }),
      "conflict",
      "sprayer.leastLoad",
      "Given 121 L; wanted no more than one load, 120 L.",
    ],
    [
      () => plan({ sprayer: { tank: qty(120, "L"), lineVolume: qty(-1, "L") } }),
      "out-of-range",
      "sprayer.lineVolume",
      "Given -1 L; wanted 0 or more.",
    ],
    [
      () => plan({ sprayer: { tank: qty(1, "mL") } }),
      "out-of-range",
      "plot",
      "Given 100 L in loads of 0.001 L, which makes 100000 loads; wanted 10000 or fewer. Check the units of the rate, the area and the tank.",
    ],
    [
      () => plan({ reserve: { percent: 101 } }),
      "out-of-range",
      "reserve.percent",
      "Given 101; wanted 100 or less.",
    ],
    [
      () => plan({ split: "rows" }),
      "unknown-choice",
      "split",
      'Given "rows"; wanted one of: full-then-part, equal, whole-rows, whole-plots.',
    ],
    [
      () => plan({ split: "whole-rows" }),
      "conflict",
      "split",
      "Given whole rows to a load; wanted one plot of rows that are all of one length. Part the mix into equal loads instead.",
    ],
    [
      () => plan({ split: "whole-rows", plot: UNEVEN }),
      "conflict",
      "split",
      "Given whole rows to a load; wanted one plot of rows that are all of one length. Part the mix into equal loads instead.",
    ],
    [
      () => plan({ split: "whole-rows", plot: [BANDS, BANDS] }),
      "conflict",
      "split",
      "Given whole rows to a load; wanted one plot of rows that are all of one length. Part the mix into equal loads instead.",
    ],
    [
      () => plan({ split: "whole-plots", plot: [BANDS, BANDS, JOB.plot] }),
      "conflict",
      "split",
      "Given whole plots to a load; wanted plots of one treated area. Part the mix into equal loads instead.",
    ],
    [
      () => plan({ split: "whole-plots", plot: [JOB.plot, BANDS, BANDS] }),
      "conflict",
      "split",
      "Given whole plots to a load; wanted plots of one treated area. Part the mix into equal loads instead.",
    ],
    [
      () => plan({ split: "whole-plots", sprayer: { tank: qty(40, "L") } }),
      "conflict",
      "split",
      "Given 1 rows or plots of 100 L each; wanted one of them at least to fit into a load of 40 L. Part the mix into equal loads instead.",
    ],
    [
      () => product({ name: undefined }),
      "missing",
      "products[0].name",
      "Given undefined; wanted the product's name.",
    ],
    [() => product({ name: 7 }), "missing", "products[0].name", "Given 7; wanted the product's name."],
    [() => product({ name: "  " }), "missing", "products[0].name", 'Given "  "; wanted the product\'s name.'],
    [
      () => plan({ products: [PRODUCT, PRODUCT] }),
      "conflict",
      "products[1].name",
      'Given "Product A" a second time; wanted one entry a product.',
    ],
    [
      () => product({ rate: qty(2, "kg/ha") }),
      "wrong-dimension",
      "products[0].rate",
      "Given 2 kg/ha, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ha. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () =>
        plan({
          plot: { kind: "treated-area", treated },
          products: [{ ...PRODUCT, rate: { rate: qty(2, "L/ha"), per: "ground" } }],
        }),
      "missing",
      "products[0].rate",
      "Nothing given; wanted for a rate per ground area.",
    ],
    [
      () => product({ rate: qty(2, "mL/m") }),
      "missing",
      "products[0].rate",
      "Nothing given; wanted for a rate per row length.",
    ],
    [
      () => product({ rate: qty(201, "L/ha") }),
      "conflict",
      "products[0].rate",
      "That's 1005 mL of product in each 1 L of mix, which leaves no room for water. Check the rate's unit and the output rate.",
    ],
    [
      () =>
        plan({
          products: [
            { ...PRODUCT, rate: qty(150, "L/ha") },
            { ...PRODUCT, name: "Product B", rate: qty(150, "L/ha") },
          ],
        }),
      "conflict",
      "products",
      "Given 150 L of liquid products in load 1 of 100 L; wanted no more product than mix. Check the units of the rates, or put out more carrier per area.",
    ],
    [
      () => product({ form: "dry", rate: qty(2, "kg/ha"), bulkDensity: qty(2, "m"), tools: 1 }),
      "wrong-dimension",
      "products[0].bulkDensity",
      "2 m is a length. Enter a weight per volume, such as 5 kg/L.",
    ],
    [
      () =>
        plan({
          tools: "us-spoons",
          products: [{ ...PRODUCT, form: "dry", rate: qty(2, "kg/ha"), bulkDensity: qty(2, "m") }],
        }),
      "wrong-dimension",
      "products[0].bulkDensity",
      "2 m is a length. Enter a weight per volume, such as 5 kg/L.",
    ],
    [
      () => product({ labelPermitsDilution: "yes" }),
      "not-a-quantity",
      "products[0].labelPermitsDilution",
      'Enter true or false, not "yes".',
    ],
    [
      () => product({ label: 5 }),
      "not-a-quantity",
      "products[0].label",
      "Given 5; wanted an object with its fields.",
    ],
    [
      () => product({ label: { max: qty(1, "kg/ha") } }),
      "wrong-dimension",
      "products[0].label.max",
      "Given 1 kg/ha, a weight per area, for a liquid product; wanted a volume, such as fl_oz/ha. An ounce of weight (oz) is not a fluid ounce (fl_oz): see how the label tells the rate.",
    ],
    [
      () => product({ soFar: 5 }),
      "not-a-quantity",
      "products[0].soFar",
      "Given 5; wanted an object with its fields.",
    ],
    [
      () => product({ formulation: "QQ" }),
      "unknown-choice",
      "products[0].formulation",
      'Given "QQ", which is not an international formulation code; wanted one of: WP, WG, WT, EG, EP, SC, CS, SE, ZC, ZE, ZW, DC, EC, EW, GL, ME, OD, GW, SL, SG, SP, ST, adjuvant, fertilizer. Letters after a trade name can mean other things.',
    ],
    [
      () => product({ formulation: "EC", inSolubleBag: 1 }),
      "not-a-quantity",
      "products[0].inSolubleBag",
      "Given 1; wanted true or false.",
    ],
    [
      () => price({ amount: -1, per: qty(1, "L") }),
      "out-of-range",
      "products[0].price.amount",
      "Given -1; wanted 0 or more.",
    ],
    [
      () => price({ amount: "1", per: qty(1, "L") }),
      "not-a-quantity",
      "products[0].price.amount",
      'Given "1"; wanted a number, not text.',
    ],
    [
      () => price({ amount: 1, per: qty(1, "kg") }),
      "wrong-dimension",
      "products[0].price.per",
      "Given 1 kg, a weight; wanted a volume, such as mL.",
    ],
    [
      () => price({ amount: 1, per: { value: 1, unit: "litre" } }),
      "unknown-unit",
      "products[0].price.per.unit",
      'The unit "litre" isn\'t known here. Did you mean L?',
    ],
    [
      () => price({ amount: 1, per: qty(0, "L") }),
      "out-of-range",
      "products[0].price.per",
      "Given 0; wanted more than 0.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "L") }, { code: "EUR", decimals: 5 }),
      "out-of-range",
      "currency.decimals",
      "Given 5; wanted 4 or less.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "L") }, { code: "EUR", decimals: 1.5 }),
      "out-of-range",
      "currency.decimals",
      "Given 1.5; wanted a whole number, 0 or more.",
    ],
    [
      () => price({ amount: 1, per: qty(1, "L") }, []),
      "not-a-quantity",
      "currency",
      "Given a list; wanted an object with its fields.",
    ],
    [
      () => plan({ thresholds: 5 }),
      "not-a-quantity",
      "thresholds",
      "Given 5; wanted an object with its fields.",
    ],
    [
      () => plan({ thresholds: { mostSpeed: qty(9, "mph") } }),
      "unknown-choice",
      "thresholds.mostSpeed",
      "Given a threshold that is not known here; wanted one of: leastRate, mostRate, slowest, fastest, readingPercent, calibrationDays, lastLoadPercent, bandSwath.",
    ],
    [
      () => plan({ thresholds: { lastLoadPercent: 0 } }),
      "out-of-range",
      "thresholds.lastLoadPercent",
      "Given 0; wanted more than 0.",
    ],
    [
      () => plan({ thresholds: { mostRate: qty(9, "mph") } }),
      "wrong-dimension",
      "thresholds.mostRate",
      "Given 9 mph, a speed; wanted a volume per area, such as gal/ac.",
    ],
    [
      () => done({ finished, left }, 5),
      "not-a-quantity",
      "plan",
      "Given 5; wanted an object with its fields.",
    ],
    [() => done(undefined), "missing", "actual", "Nothing given; wanted an object with its fields."],
    [
      () => done({ finished }),
      "missing",
      "actual.left",
      'Nothing given; wanted a number with its unit, such as { value: 5, unit: "L" }.',
    ],
    [
      () => done({ finished, left, used: [left, left] }),
      "conflict",
      "actual.left",
      "Given both what was left and what was used on each plot; wanted one of them.",
    ],
    [
      () => done({ finished, left: qty(-1, "L") }),
      "out-of-range",
      "actual.left",
      "Given -1 L; wanted 0 or more.",
    ],
    [
      () => done({ finished, left: qty(500, "L") }),
      "conflict",
      "actual.left",
      "Given 500 L of the 200 L that was mixed; wanted less. Tell how much was mixed, if it was more.",
    ],
    [
      () => done({ finished, left, mixed: qty(0, "L") }),
      "out-of-range",
      "actual.mixed",
      "Given 0 L; wanted more than 0.",
    ],
    [
      () => done({ finished, left, mixed: qty(5, "kg") }),
      "wrong-dimension",
      "actual.mixed",
      "Given 5 kg, a weight; wanted a volume, such as L.",
    ],
    [
      () => done({ finished, left, addedWater: qty(-1, "L") }),
      "out-of-range",
      "actual.addedWater",
      "Given -1 L; wanted 0 or more.",
    ],
    [
      () => done({ finished, used: [left] }),
      "conflict",
      "actual.used",
      "Given 1 amounts for 2 plots; wanted one for each, in the order of the plan.",
    ],
    [
      () => done({ finished, used: [left, qty(-1, "L")] }),
      "out-of-range",
      "actual.used[1]",
      "Given -1 L; wanted 0 or more.",
    ],
    [
      () => done({ finished, used: [left, qty(300, "L")] }),
      "conflict",
      "actual.used",
      "Given 310 L of the 200 L that was mixed; wanted less. Tell how much was mixed, if it was more.",
    ],
    [() => done({ finished, used: 5 }), "not-a-quantity", "actual.used", "Given 5; wanted a list."],
    [
      () => record({ finished: undefined }),
      "missing",
      "actual.finished",
      "Enter a local time, such as 2026-05-02T09:30.",
    ],
    [
      () => record({ finished: null }),
      "missing",
      "actual.finished",
      "Enter a local time, such as 2026-05-02T09:30.",
    ],
    [
      () => record({ finished: 20260502 }),
      "unreadable",
      "actual.finished",
      "Couldn't read 20260502. Enter a local time, such as 2026-05-02T09:30.",
    ],
    [
      () => record({ finished: "2026-05-02" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "on 2026-05-02T22:30" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "on 2026-05-02T22:30". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-05-02T22:30+25:00" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02T22:30+25:00". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-05-02T24:00" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02T24:00". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-05-02T22:60" }),
      "unreadable",
      "actual.finished",
      'Couldn\'t read "2026-05-02T22:60". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [
      () => record({ finished: "2026-02-30T22:30" }),
      "unreadable",
      "actual.finished",
      'There is no date "2026-02-30". Write year-month-day, such as 2025-04-12.',
    ],
    [
      () => record({ started: "2026-05-02T22:31" }),
      "conflict",
      "actual.started",
      "The start, 2026-05-02T22:31, is after the end, 2026-05-02T22:30.",
    ],
    [
      () => record({ started: "at 9" }),
      "unreadable",
      "actual.started",
      'Couldn\'t read "at 9". Enter a local time, such as 2026-05-02T09:30.',
    ],
    [() => record({ weather: 5 }), "not-a-quantity", "actual.weather", "Given 5; wanted text."],
    [
      () => record({}, { reEntryHours: -1 }),
      "out-of-range",
      "plan.input.products[0].reEntryHours",
      "Given -1; wanted 0 or more.",
    ],
    [
      () => record({}, { reEntryHours: 24_001 }),
      "out-of-range",
      "plan.input.products[0].reEntryHours",
      "Given 24001; wanted 24000 or less.",
    ],
    [
      () => record({}, { preHarvestDays: 1001 }),
      "out-of-range",
      "plan.input.products[0].preHarvestDays",
      "Given 1001; wanted 1000 or less.",
    ],
    [
      () => record({}, { preHarvestDays: 1.5 }),
      "out-of-range",
      "plan.input.products[0].preHarvestDays",
      "Given 1.5; wanted a whole number, 0 or more.",
    ],
  ])("%s", (call, code, path, message) => {
    const error = refusal(call);
    expect({ code: error.code, path: error.path, message: error.message }).toEqual({ code, path, message });
  });
});
